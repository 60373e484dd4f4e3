name-lake-pump = bomba del lago
    .of = de la bomba del lago
name-outlet-lake-pump = desconectador de la bomba del lago
name-pipe-heater = calentador de tuberías
    .of = del calentador de tuberías
name-outlet-pipe-heater = calentador de tuberías
event-lost-lake-pump = El tanque de presión de la cabaña está vacío. No sale agua.
