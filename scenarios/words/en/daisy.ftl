drill-daisy-title = Daisy chain
drill-daisy-summary = Two thin cords, one plugged into the other, run from the generator to the space heater. The joint between them is loose.
drill-daisy-goal = Get the space heater running within 15 minutes of the outage with enough volts. When the utility is back, plug it into the wall, stop the engine and put the cords away.
drill-daisy-note = A plug can burn in this drill. Nothing is shown in detail. You can stop at any time.
