drill-right-cord-title = El cable correcto
drill-right-cord-summary = Una casa pequeña sin manera de conectarle un generador. En el cobertizo cuelgan cables, buenos y malos.
drill-right-cord-goal = Haga funcionar con cables el refrigerador y el calefactor antes de 20 minutos desde el apagón. Cuando vuelva la electricidad, conéctelos a la pared, pare el motor y guarde los cables.
drill-right-cord-note = En este simulacro un cable equivocado puede causar un incendio. Nada se muestra en detalle. Puede parar cuando quiera.
predict-heater-on-the-set = Usted enciende el calefactor. ¿Cuántos vatios se le piden entonces al generador?
