drill-forgotten-sun-title = El sol olvidado
drill-forgotten-sun-summary = Una mañana clara después de la tormenta. Una batería mantiene vivos algunos circuitos. Hay paneles solares en el techo y un generador silencioso en el cobertizo.
drill-forgotten-sun-goal = Ponga en marcha la bomba de sumidero con el generador en los 20 minutos siguientes al apagón. Mantenga el refrigerador y la calefacción. Cuando vuelva la red, vuelva a ella, encienda otra vez los paneles solares, pare el motor y guarde el cable.
drill-forgotten-sun-note = Tres fuentes alimentan esta casa. Cada una puede hacer daño. Puede parar en cualquier momento.
