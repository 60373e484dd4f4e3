name-neighbor-3 = casa de la esquina
name-range = estufa
name-range-outlet = tomacorriente de la estufa
