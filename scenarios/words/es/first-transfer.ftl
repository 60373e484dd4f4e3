drill-first-transfer-title = El primer traspaso
drill-first-transfer-summary = Una casa en hilera se queda sin electricidad. Junto al tablero hay un interruptor con seis palancas. Un refrigerador pequeño guarda insulina.
drill-first-transfer-goal = Ponga a funcionar la calefacción, el refrigerador de la insulina y las luces de la cocina en los 15 minutos que siguen al apagón. Conecte las cargas una por una. Deje el motor lejos de toda ventana, también de las vecinas.
drill-first-transfer-note = Los gases del escape pueden enfermar a los vecinos. Puede detenerse cuando quiera.
predict-blower-as-it-starts = Usted pasa la palanca de la calefacción al generador. ¿Cuántos vatios se le piden al generador en ese momento?
