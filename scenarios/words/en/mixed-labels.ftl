drill-mixed-labels-title = Mixed labels
drill-mixed-labels-summary = A storm is on its way. The names on the panel were written long ago, and some are wrong. Find out which before you need them.
drill-mixed-labels-goal = Say what hangs on the four breakers. Get the fridge, the furnace and the sump pump running within 15 minutes of the outage. When the utility is back, switch back, stop the engine and put the cord away.
drill-mixed-labels-note = A wrong name can leave the wrong thing live. You can stop at any time.
