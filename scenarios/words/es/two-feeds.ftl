drill-two-feeds-title = Dos alimentaciones
drill-two-feeds-summary = Hay un cable caído en el poste 4 de un anillo. Se alimenta desde la cabecera o por un enlace. Otra cuadrilla trabaja más cerca de la cabecera.
drill-two-feeds-goal = Repare la línea desde el poste 4 y alimente a todos desde la cabecera. Deje abierto el enlace. No deje etiquetas ni puestas a tierra.
drill-two-feeds-note = En este simulacro puede morir una persona de la cuadrilla. No se muestra nada en detalle. Puede parar cuando quiera.
