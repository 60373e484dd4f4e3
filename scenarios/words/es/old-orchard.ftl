name-neighbor-3 = casa de la esquina
    .of = de la casa de la esquina
name-range = estufa
    .of = de la estufa
name-range-outlet = tomacorriente de la estufa
