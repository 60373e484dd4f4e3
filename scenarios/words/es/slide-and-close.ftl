drill-slide-and-close-title = Deslizar y cerrar
drill-slide-and-close-summary = Una tormenta corta la electricidad por la noche. El tablero tiene una corredera entre el interruptor principal y el del generador. Pase la casa al generador.
drill-slide-and-close-goal = Ponga a funcionar la calefacción, la bomba de sumidero y el refrigerador en los 15 minutos que siguen al apagón. Arranque el motor sin carga. Conecte las cargas una por una.
drill-slide-and-close-note = Una cuadrilla va a trabajar en la calle. Puede detenerse cuando quiera.
predict-panel-or-street = Usted enciende el interruptor del generador. ¿Cuáles tienen voltaje entonces: el tablero, los cables de la calle?
predict-furnace-as-it-starts = Usted enciende el interruptor de la calefacción. ¿Cuántos vatios se le piden al generador en ese momento?
