drill-dead-or-not-title = Viva o muerta
drill-dead-or-not-summary = Hay un cable caído y la calle está oscura. En el camión hay cuatro detectores. No en todos se puede confiar.
drill-dead-or-not-goal = Diga de los dos lados de la rotura si hay voltaje. Después haga que ningún cliente alimente la línea. No la toque.
drill-dead-or-not-note = En este simulacro puede morir una persona de la cuadrilla. No se muestra nada en detalle. Puede parar cuando quiera.
predict-sides-of-the-break = El tramo entre el poste 2 y el poste 3 está caído. ¿Cuáles tienen voltaje ahora: el poste 2, el poste 3?
