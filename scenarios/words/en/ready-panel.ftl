drill-ready-panel-title = Ready panel
drill-ready-panel-summary = This panel was made for a generator. Its lower part holds the chosen circuits. Two breakers can feed it, and a bar lets only one of them be on.
drill-ready-panel-goal = Get the furnace, the fridge and the kitchen lights running within 15 minutes of the outage. When the upper part has the utility again, switch back, stop the engine and put the cord away.
drill-ready-panel-note = The compressor asks for power as soon as it can. You can stop at any time.
