drill-hall-night-title = La noche del salón
drill-hall-night-summary = Una noche de tormenta en un salón comunal con 20 voluntarios. El tablero se hizo para un generador. Tres cafeteras piden electricidad. A las 2 llega el turno siguiente de voluntarios.
drill-hall-night-goal = Ponga a funcionar la calefacción, las lámparas, la mesa de teléfonos y la cafetera B en 20 minutos. Diga en «Respuestas» qué alimenta cada cosa: el turno siguiente se guía por eso. Regrese cuando haya red, pare el motor y guarde el cable.
drill-hall-night-note = Un turno cansado le entrega el salón a otro con sueño. Puede detenerse cuando quiera.
