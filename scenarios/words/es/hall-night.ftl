drill-hall-night-title = La noche del salón
drill-hall-night-summary = Una noche de tormenta en un salón comunal con 20 voluntarios. El tablero se hizo para un generador. Tres cafeteras piden electricidad y a las 2 llega otro equipo.
drill-hall-night-goal = Ponga a funcionar la calefacción, las lámparas, la mesa de teléfonos y la cafetera B en 20 minutos. Diga al nuevo equipo qué alimenta cada cosa. Regrese cuando haya red, pare el motor y guarde el cable.
drill-hall-night-note = Un equipo cansado le entrega el turno a otro con sueño. Puede detenerse cuando quiera.
