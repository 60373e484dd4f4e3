drill-there-and-back-title = There and back
drill-there-and-back-summary = A storm takes the power. Switch the house to the generator, then back to the utility. The panel has an interlock.
drill-there-and-back-goal = Get the fridge, the furnace and the sump pump running within 20 minutes of the outage. When the utility is back, switch back, stop the engine and put the cord away.
drill-there-and-back-note = A mistake on the line can hurt someone. You can stop at any time.
