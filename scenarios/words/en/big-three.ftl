drill-big-three-title = The big three
drill-big-three-summary = The house hangs on its generator, with every branch off. The furnace, the sump pump and the fridge all want to start.
drill-big-three-goal = Get all three running within 8 minutes and keep the set within its rating. Think about the order first.
drill-big-three-note = You can stop at any time.
