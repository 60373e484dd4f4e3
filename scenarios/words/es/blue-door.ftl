name-freezer = congelador
