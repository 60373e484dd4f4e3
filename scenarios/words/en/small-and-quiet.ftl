drill-small-and-quiet-title = Small and quiet
drill-small-and-quiet-summary = What matters hangs on a small panel with a transfer switch of its own. The generator is an inverter. Ask too much of it and it shuts its output off.
drill-small-and-quiet-goal = Get the fridge, the furnace and the sump pump running within 20 minutes of the outage. When the utility is back, switch back, stop the engines and put the cord away.
drill-small-and-quiet-note = A mistake can leave the house dark. You can stop at any time.
