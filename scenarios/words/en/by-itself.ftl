drill-by-itself-title = By itself
drill-by-itself-summary = A standby generator starts by itself when the utility drops out. Nobody has looked at its oil for a long time. Watch it, and know what to do when it stops.
drill-by-itself-goal = Keep the fridge, the furnace and the sump pump running. At the end the generator stands ready again, with full oil.
drill-by-itself-note = An engine that starts by itself can hurt someone. You can stop at any time.
