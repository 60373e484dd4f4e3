drill-cabin-in-the-cold-title = Cabin in the cold
drill-cabin-in-the-cold-summary = A cabin by a lake, a small panel, a small inverter. The heater and the fridge share one leg. Warm the cabin, and go back when the line holds.
drill-cabin-in-the-cold-goal = Get the heater and the fridge running within 15 minutes of the outage. When the utility is back for good, switch back, stop the engine and put the cord away.
drill-cabin-in-the-cold-note = A mistake can leave the cabin cold and dark. You can stop at any time.
