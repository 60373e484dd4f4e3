drill-daisy-title = Cables en cadena
drill-daisy-summary = Dos cables delgados, uno enchufado en el otro, van del generador al calefactor. La unión entre ellos está floja.
drill-daisy-goal = Haga funcionar el calefactor en los 15 minutos tras el apagón con voltaje suficiente. Cuando vuelva la red, enchúfelo a la pared, pare el motor y guarde los cables.
drill-daisy-note = En este simulacro puede quemarse un enchufe. No se muestra con detalle. Puede parar cuando quiera.
