drill-subpanel-out-title = Tablero pequeño: ida
drill-subpanel-out-summary = Un apagón de invierno en una cabaña junto al lago. Un tablero pequeño tiene su propia transferencia. El generador da poco en cada fase.
drill-subpanel-out-goal = Ponga en marcha el refrigerador y la bomba del lago en los 15 minutos después del apagón. El apagón sigue, así que el tablero pequeño queda en el generador.
drill-subpanel-out-note = Un error puede dejar la cabaña a oscuras. Puede parar en cualquier momento.
