drill-tingle-title = Tingle
drill-tingle-summary = It rains and the yard is wet. The pump has to run. The freezer on the porch has given somebody a tingle before, and the cords lie in the grass.
drill-tingle-goal = Get the yard pump running within 20 minutes of the outage. Leave the freezer unplugged. When the utility is back, plug the pump into the wall, stop the engine and put the cords away.
drill-tingle-note = Somebody can get a shock in this drill. Nothing is shown in detail. You can stop at any time.
