drill-shed-for-the-set-title = Shed for the set
drill-shed-for-the-set-summary = A cold morning on the farm. The dryer runs and the heat strips glow when the power goes out. The standby set cannot carry it all.
drill-shed-for-the-set-goal = Get the fridge, the furnace and the well pump running within 12 minutes of the outage, and keep them running. At the end the set stands ready again.
drill-shed-for-the-set-note = A mistake can leave the house dark. You can stop at any time.
