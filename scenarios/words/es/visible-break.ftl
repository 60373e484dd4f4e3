drill-visible-break-title = Un corte que se ve
drill-visible-break-summary = El operador dice que el reconectador está abierto. El seccionador queda en su camino. Hay que reparar un cable en el poste 3.
drill-visible-break-goal = Repare la línea desde el poste 3 y devuelva la electricidad a todos. No deje etiquetas, puestas a tierra ni puentes.
drill-visible-break-note = En este simulacro puede morir una persona de la cuadrilla. No se muestra nada en detalle. Puede parar cuando quiera.
