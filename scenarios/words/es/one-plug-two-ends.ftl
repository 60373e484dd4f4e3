drill-one-plug-two-ends-title = Un cable, dos enchufes
drill-one-plug-two-ends-summary = Usted llega a casa durante un apagón y hay luz. El generador funciona y su cable va a la toma de pared de la cocina eléctrica.
drill-one-plug-two-ends-goal = Termine con eso de inmediato. Retire el cable en el orden correcto y diga qué tiene tensión. Cuando vuelva la red, encienda la casa.
drill-one-plug-two-ends-note = Hay gente que muere por este cable. No se muestra nada en detalle. Puede parar cuando quiera.
