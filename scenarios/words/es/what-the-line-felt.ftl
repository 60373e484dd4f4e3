drill-what-the-line-felt-title = Lo que sintió la línea
drill-what-the-line-felt-summary = La red no está. Una casa conectó su generador al tablero. Usted está debajo de la línea con un detector.
drill-what-the-line-felt-goal = Diga si la línea en el poste 3 tiene voltaje y qué la alimenta. Después separe esa fuente. No toque la línea.
drill-what-the-line-felt-note = En este simulacro puede morir una persona de la cuadrilla. No se muestra nada en detalle. Puede parar cuando quiera.
predict-line-from-one-house = Una casa usa un generador pequeño de 240 voltios, con el principal encendido. ¿Cuántos voltios al neutro hay en la línea en el poste 3?
predict-line-past-the-cutout = Usted abre el cortacircuito del poste 5. ¿La línea en el poste 3 queda con voltaje o sin voltaje?
