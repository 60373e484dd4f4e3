name-yard-pump = bomba del patio
