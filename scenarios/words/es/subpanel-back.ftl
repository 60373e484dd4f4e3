drill-subpanel-back-title = Tablero pequeño: vuelta
drill-subpanel-back-summary = El tablero pequeño de la cabaña funciona con el generador. Esta mañana se prueba la red. Quizá no aguante la primera vez.
drill-subpanel-back-goal = Cuando la red aguante, vuelva a pasar a ella el tablero pequeño, con todas sus cargas. Después deje enfriar el motor, párelo y guarde el cable.
drill-subpanel-back-note = Un error puede dejar la cabaña a oscuras. Puede parar en cualquier momento.
