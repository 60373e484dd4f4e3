drill-neighbor-helps-title = El vecino ayuda
drill-neighbor-helps-summary = Hace calor y no hay luz. El generador del vecino ya funciona, y le pasan la punta de un cable. En el cobertizo cuelga una regleta con un enchufe en cada extremo. Alguien ha puesto un adaptador en el enchufe del aire acondicionado.
drill-neighbor-helps-goal = Haga funcionar el refrigerador y el congelador en los 20 minutos tras el apagón. Use su generador y el cable del vecino, y nunca una los dos. Deje fuera lo que no puede funcionar. Cuando vuelva la red, enchufe a la pared, pare el motor y guarde los cables.
drill-neighbor-helps-note = En este simulacro puede tener en la mano patas con corriente. No se muestra con detalle. Puede parar cuando quiera.
