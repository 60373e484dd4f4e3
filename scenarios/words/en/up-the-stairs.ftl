drill-up-the-stairs-title = Up the stairs
drill-up-the-stairs-summary = A home over a garage, a small generator and three cords. The panel stays as it is.
drill-up-the-stairs-goal = Get the fridge and the bedroom lamp running on cords within 20 minutes of the outage. When the utility is back, plug them into the wall again, stop the engine and put the cords away.
drill-up-the-stairs-note = Gas, fuel and heat can hurt someone in this drill. You can stop at any time.
