drill-flood-pumps-title = Bombas en la inundación
drill-flood-pumps-summary = Antes del amanecer hay agua alrededor del tablero del sótano. Todavía hay electricidad, pero no por mucho tiempo. A las dos bombas se llega por la escalera seca.
drill-flood-pumps-goal = Ponga a funcionar las dos bombas en los 15 minutos que siguen al apagón, una después de otra. No toque el tablero mojado. Llame a la compañía eléctrica.
drill-flood-pumps-note = Un tablero mojado puede matar. Puede detenerse cuando quiera.
