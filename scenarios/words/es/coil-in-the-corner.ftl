drill-coil-in-the-corner-title = El rollo en la esquina
drill-coil-in-the-corner-summary = Está por helar. Alguien conectó el calefactor a un cable largo y delgado. El resto del cable queda en un rollo en la esquina.
drill-coil-in-the-corner-goal = Haga funcionar el calefactor en los 15 minutos tras el apagón, y que siga hasta que vuelva la red. Después enchúfelo a la pared, pare el motor y guarde los cables.
drill-coil-in-the-corner-note = En este simulacro un cable puede causar un incendio. No se muestra con detalle. Puede parar cuando quiera.
predict-watts-in-the-cord = Usted enciende el calefactor. ¿Cuántos vatios convierte al principio el cable anaranjado mismo en calor?
predict-cord-in-half-an-hour = El calefactor sigue encendido 30 minutos y nadie toca nada. ¿Se queda el cable anaranjado dentro de lo que aguanta su aislamiento?
