name-house-socket = tomacorriente de cuatro hilos del generador
    .of = del tomacorriente de cuatro hilos del generador
name-washer = lavadora
    .of = de la lavadora
