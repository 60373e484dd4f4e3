drill-inlet-surprise-title = Sorpresa en la toma
drill-inlet-surprise-summary = Una tarde tranquila, con electricidad. La tapa de la toma de afuera está rota. Las clavijas quedan a la altura de un niño.
drill-inlet-surprise-goal = Averigüe si las clavijas tienen corriente y hágalas seguras en 3 minutos. Diga si ya no tienen, y si se puede confiar en la corredera.
drill-inlet-surprise-note = Unas clavijas con corriente pueden matar. Puede detenerse cuando quiera.
