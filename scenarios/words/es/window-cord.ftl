drill-window-cord-title = El cable por la ventana
drill-window-cord-summary = Una noche sin viento. Los cables entran por la ventana del dormitorio, detrás duerme un niño y alguien calló la alarma.
drill-window-cord-goal = Haga funcionar el refrigerador y el calefactor del dormitorio en los 25 minutos tras el apagón. Tape el hueco de los cables y tenga la alarma lista. Cuando vuelva la red, pare el motor, guarde los cables y cierre la ventana.
drill-window-cord-note = En este simulacro el gas puede desmayar a alguien. No se muestra con detalle. Puede parar cuando quiera.
predict-gas-in-an-hour = El motor ya arrancó. ¿Cuántas partes por millón de monóxido de carbono hay adentro en una hora, si nadie toca nada?
