drill-storm-board-title = El tablero de la tormenta
drill-storm-board-summary = Catorce casas están sin electricidad en un anillo con dos alimentaciones. La tormenta dejó más de una trampa. Usted dirige la cuadrilla.
drill-storm-board-goal = Repare la línea desde el poste 4 y alimente a todos desde la cabecera. Deje abierto el enlace. No deje nada suyo atrás.
drill-storm-board-note = En este simulacro puede morir una persona de la cuadrilla. No se muestra nada en detalle. Puede parar cuando quiera.
