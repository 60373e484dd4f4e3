drill-headache-title = Dolor de cabeza
drill-headache-summary = Una noche tranquila sin electricidad. Usted no usa ningún motor. Un niño duerme arriba.
drill-headache-goal = Que todos pasen bien la noche. Fíjese en las señales y actúe enseguida.
drill-headache-note = En este simulacro el gas puede desmayar a alguien. No se muestra con detalle. Puede parar cuando quiera.
predict-gas-from-next-door = El motor de un vecino funciona bajo la ventilación. ¿Cuántas partes por millón de monóxido de carbono hay adentro en una hora, si nadie toca nada?
