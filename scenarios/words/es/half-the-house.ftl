drill-half-the-house-title = Media casa
drill-half-the-house-summary = El tomacorriente de cuatro hilos del generador está roto. Un adaptador lleva un tomacorriente de 120 V a los dos lados del tablero.
drill-half-the-house-goal = Averigüe qué debe quedar apagado. Ponga en marcha la calefacción en 25 minutos sin dañar ningún cable. Cuando vuelva la red, regrese a ella, pare el motor y guarde el cable.
drill-half-the-house-note = Un cable en la pared puede causar un incendio sin aviso. Puede parar cuando quiera.
predict-amps-of-both-legs = Usted enciende el interruptor del microondas. ¿Cuántos amperios lleva entonces el cable con el adaptador?
