name-yard-pump = bomba del patio
    .of = de la bomba del patio
