name-house-socket = toma de cuatro hilos del generador
name-washer = lavadora
