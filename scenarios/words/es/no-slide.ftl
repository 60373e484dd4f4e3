drill-no-slide-title = Sin corredera
drill-no-slide-summary = La misma casa, pero alguien agregó un interruptor del generador y dejó fuera el bloqueo mecánico. En el cobertizo hay un cable de dos enchufes. Busque el camino seguro.
drill-no-slide-goal = Ponga a funcionar el refrigerador y la bomba de sumidero en los 20 minutos que siguen al apagón. Cuide que la calle siga segura. Cuando la red haya vuelto, enchúfelos otra vez en la pared, pare el motor y guarde los cables.
drill-no-slide-note = En este simulacro, un error puede matar a quien trabaja en la línea. Nada se muestra en detalle. Puede detenerse cuando quiera.
