drill-six-handles-title = Seis palancas
drill-six-handles-summary = Una casa pequeña tiene un interruptor de transferencia junto al tablero. Cada una de sus seis palancas mueve un circuito. Lleve tres al generador y de vuelta.
drill-six-handles-goal = Ponga en marcha el refrigerador, la calefacción y la bomba de sumidero en los 15 minutos siguientes al apagón. Cuando vuelva la red, devuelva las palancas, pare el motor y guarde el cable.
drill-six-handles-note = El interruptor protege la línea. El motor y sus gases aún pueden hacer daño. Puede parar en cualquier momento.
