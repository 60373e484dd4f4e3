drill-where-to-put-it-title = Dónde ponerlo
drill-where-to-put-it-summary = Una casa en hilera con paredes en común. El escalón de atrás queda a mano. La ventana está abierta y alguien le quitó la pila a la alarma.
drill-where-to-put-it-goal = Encienda el generador donde su gas no llegue a nadie, ni aquí ni al lado. Cierre la ventana. Tenga una alarma que usted probó. Deje el motor encendido.
drill-where-to-put-it-note = En este simulacro el gas puede llegar a la gente. Puede parar cuando quiera.
predict-gas-from-that-place = El motor ya arrancó. ¿Cuántas partes por millón de monóxido de carbono hay adentro en 30 minutos, si nadie toca nada?
