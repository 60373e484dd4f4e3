drill-delayed-check-title = Prueba aplazada
drill-delayed-check-summary = Han pasado meses desde su última práctica. De noche falla la electricidad en una casa que nunca vio. Usted conoce el método.
drill-delayed-check-goal = Ponga a funcionar la calefacción, la bomba de sumidero y el refrigerador en los 15 minutos que siguen al apagón. Regrese cuando la red se mantenga, pare el motor y guarde el cable. Nadie ayuda.
drill-delayed-check-note = Algo intentará distraerlo. Puede detenerse cuando quiera.
