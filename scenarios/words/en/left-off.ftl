drill-left-off-title = Left off
drill-left-off-summary = A farmhouse has a standby generator that starts by itself. Tonight the lights go out and nothing starts. Find out why.
drill-left-off-goal = Get the fridge, the furnace and the well pump running within 12 minutes of the outage. At the end the set stands ready for the next storm.
drill-left-off-note = An engine that starts by itself can hurt someone. Keep clear of it. You can stop at any time.
