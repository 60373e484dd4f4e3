drill-ground-order-title = Pinza por pinza
drill-ground-order-summary = La línea está separada de la red y su etiqueta cuelga ahí. Hay que reparar un cable en el poste 3.
drill-ground-order-goal = Repare la línea desde el poste 3 y devuelva la electricidad a todos. No deje etiquetas ni puestas a tierra.
drill-ground-order-note = En este simulacro puede morir una persona de la cuadrilla. No se muestra nada en detalle. Puede parar cuando quiera.
