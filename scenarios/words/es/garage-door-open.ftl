drill-garage-door-open-title = Con el garaje abierto
drill-garage-door-open-summary = Llueve. El generador está en el garaje y la vivienda queda justo encima. Todos dicen que basta con abrir la puerta.
drill-garage-door-open-goal = Haga funcionar el refrigerador y el calefactor del dormitorio en los 20 minutos tras el apagón. Mantenga limpio el aire de la vivienda. Apague el motor antes del final.
drill-garage-door-open-note = En este simulacro el gas puede desmayar a alguien. No se muestra con detalle. Puede parar cuando quiera.
predict-gas-in-ten-minutes = El motor ya arrancó. ¿Cuántas partes por millón de monóxido de carbono hay adentro en 10 minutos, si nadie toca nada?
