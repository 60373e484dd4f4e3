drill-standby-side-yard-title = El patio lateral
drill-standby-side-yard-summary = Un generador fijo está en un patio lateral estrecho, entre dos casas. El viento sopla por el patio y una ventana está abierta. Se acerca una tormenta.
drill-standby-side-yard-goal = Mire el lugar antes de que el motor arranque. No deje entrar el gas y tenga una alarma que haya probado. No deje que la casa le pida demasiado. Al final todo queda como antes: bomba de calor encendida, controlador en automático.
drill-standby-side-yard-note = En este simulacro el gas puede enfermar a la gente. No se muestra nada en detalle. Puede parar en cualquier momento.
