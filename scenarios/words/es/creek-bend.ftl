name-yard-pump = bomba del patio
name-freezer = congelador
