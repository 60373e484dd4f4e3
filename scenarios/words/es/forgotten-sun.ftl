drill-forgotten-sun-title = El sol olvidado
drill-forgotten-sun-summary = Una mañana clara después de la tormenta. Una batería mantiene vivos algunos circuitos, pero no la bomba. Los paneles solares se suman a toda fuente estable que encuentran, también a un generador.
drill-forgotten-sun-goal = Ponga en marcha la bomba de sumidero con el generador, sin los paneles solares, en los 20 minutos siguientes al apagón. Mantenga el refrigerador y la calefacción. Cuando vuelva la red, vuelva a ella, encienda otra vez los paneles solares, pare el motor y guarde el cable.
drill-forgotten-sun-note = Tres fuentes alimentan esta casa. Cada una puede hacer daño. Puede parar en cualquier momento.
