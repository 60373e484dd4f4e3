drill-first-light-title = Primera luz
drill-first-light-summary = Se va a ir la luz. Averigüe qué tiene voltaje y qué no, y dígalo. No hay que cambiar nada.
drill-first-light-goal = Responda a lo que pregunta el simulacro después del apagón. Mire y mida antes de decirlo.
drill-first-light-note = Un cable que se da por muerto y tiene voltaje puede matar. Puede parar cuando quiera.
