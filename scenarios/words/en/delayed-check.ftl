drill-delayed-check-title = Delayed check
drill-delayed-check-summary = It is months since your last practice. In the night the power fails, in a house that you have not seen before. You know the method.
drill-delayed-check-goal = Get the furnace, the sump pump and the fridge running within 15 minutes of the outage. Go back once the utility holds, stop the engine and put the cord away. Nobody helps.
drill-delayed-check-note = Something will try to distract you. You can stop at any time.
