name-house-socket = tomacorriente de cuatro hilos del generador
name-washer = lavadora
