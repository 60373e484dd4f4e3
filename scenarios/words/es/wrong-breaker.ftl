drill-wrong-breaker-title = Interruptor equivocado
drill-wrong-breaker-summary = La corredera del tablero está bien. El interruptor de la entrada dice 40. La funda de su cable dice calibre 12.
drill-wrong-breaker-goal = Diga si el interruptor es bastante pequeño para su cable. Ponga en marcha el refrigerador en 25 minutos sin dañar nada. Cuando vuelva la red, pare el motor y guarde los cables.
drill-wrong-breaker-note = Un cable en la pared puede causar un incendio sin aviso. Puede parar cuando quiera.
