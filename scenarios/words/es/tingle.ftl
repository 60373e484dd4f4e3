drill-tingle-title = Cosquilleo
drill-tingle-summary = Llueve y el patio está mojado. La bomba tiene que funcionar. El congelador del porche ya le dio un cosquilleo a alguien, y los cables están en el pasto.
drill-tingle-goal = Haga funcionar la bomba del patio en los 20 minutos tras el apagón. Deje desenchufado el congelador. Cuando vuelva la red, enchufe la bomba a la pared, pare el motor y guarde los cables.
drill-tingle-note = En este simulacro alguien puede recibir una descarga. No se muestra con detalle. Puede parar cuando quiera.
