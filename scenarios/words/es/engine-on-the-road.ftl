drill-engine-on-the-road-title = Un motor en el camino
drill-engine-on-the-road-summary = Hay un cable caído entre el poste 2 y el poste 3. Toda la calle está oscura. Alguien más arriba tiene un generador. Usted es la cuadrilla.
drill-engine-on-the-road-goal = Repare la línea desde el poste 3. Devuelva la electricidad a todos los clientes. No deje etiquetas ni puestas a tierra.
drill-engine-on-the-road-note = En este simulacro puede morir una persona de la cuadrilla. No se muestra nada en detalle. Puede parar cuando quiera.
