drill-mixed-labels-title = Nombres cambiados
drill-mixed-labels-summary = Viene una tormenta. Los nombres del tablero se escribieron hace mucho y algunos están mal. Averigüe cuáles antes de necesitarlos.
drill-mixed-labels-goal = Diga qué depende de los cuatro interruptores. Ponga en marcha el refrigerador, la calefacción y la bomba de sumidero en los 15 minutos después del apagón. Cuando vuelva la red, regrese a ella, pare el motor y guarde el cable.
drill-mixed-labels-note = Un nombre equivocado puede dejar con voltaje lo que no debe. Puede parar cuando quiera.
