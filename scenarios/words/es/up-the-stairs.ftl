drill-up-the-stairs-title = Escalera arriba
drill-up-the-stairs-summary = Una vivienda sobre un garaje, un generador pequeño y tres cables. El tablero se queda como está.
drill-up-the-stairs-goal = Haga funcionar con cables el refrigerador y la lámpara del dormitorio en los 20 minutos tras el apagón. Cuando vuelva la red, enchúfelos a la pared, pare el motor y guarde los cables.
drill-up-the-stairs-note = En este simulacro el gas, el combustible y el calor pueden lastimar a alguien. Puede parar cuando quiera.
