drill-lock-the-standby-title = Lock the standby
drill-lock-the-standby-summary = A farm has a standby generator, and its display asks for oil. A storm is near. You can’t pour oil while the engine runs, and it starts by itself.
drill-lock-the-standby-goal = Fill the oil with the set locked out. Have the fridge, the furnace and the well pump running within 25 minutes of the outage. At the end the set stands ready again.
drill-lock-the-standby-note = An engine that starts by itself can hurt someone. Nothing is shown in detail. You can stop at any time.
