name-heat-pump = bomba de calor
    .of = de la bomba de calor
name-outlet-heat-pump = desconectador de la bomba de calor
name-side-yard = patio lateral
