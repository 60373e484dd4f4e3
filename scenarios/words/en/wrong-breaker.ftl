drill-wrong-breaker-title = Wrong breaker
drill-wrong-breaker-summary = The slide in the panel is sound. The breaker of the inlet says 40. The jacket of its wire says 12 gauge.
drill-wrong-breaker-goal = Say whether the breaker is small enough for its wire. Get the fridge running within 25 minutes and harm nothing. When the utility is back, stop the engine and put the cords away.
drill-wrong-breaker-note = A wire in a wall can start a fire with no sign before. You can stop at any time.
