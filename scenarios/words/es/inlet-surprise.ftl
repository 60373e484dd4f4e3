drill-inlet-surprise-title = Sorpresa en la entrada
drill-inlet-surprise-summary = Una tarde tranquila, con electricidad. La tapa de la entrada de corriente está rota. Las patas quedan a la altura de un niño.
drill-inlet-surprise-goal = Averigüe si las patas tienen corriente y hágalas seguras en 3 minutos. Diga si ya no tienen, y si se puede confiar en la corredera.
drill-inlet-surprise-note = Unas patas con corriente pueden matar. Puede detenerse cuando quiera.
predict-pins-on-the-wall = No hay tormenta ni generador. ¿Las patas desnudas de la entrada en la pared tienen voltaje o no?
predict-above-the-main = Usted apaga el principal. ¿Los cables que llegan de la calle quedan con voltaje o sin voltaje?
