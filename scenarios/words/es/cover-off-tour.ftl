drill-cover-off-tour-title = Sin tapa
drill-cover-off-tour-summary = El tablero está sin tapa, y con ella salió la barra del bloqueo. Luego una tormenta corta la electricidad. Hay un generador listo.
drill-cover-off-tour-goal = Diga qué tiene corriente, qué alimenta las barras y si se puede confiar en la corredera. Decida si el tablero se puede alimentar. Si no, no alimente nada y llame a un electricista.
drill-cover-off-tour-note = Un equipo trabaja en la calle. Puede detenerse cuando quiera.
