drill-slide-and-close-title = Slide and close
drill-slide-and-close-summary = An evening storm takes the power. The panel has a slide between the main breaker and the generator breaker. Take the house to the generator.
drill-slide-and-close-goal = Get the furnace, the sump pump and the fridge running within 15 minutes of the outage. Start the engine with no load. Bring loads on one at a time.
drill-slide-and-close-note = A crew will work on the street. You can stop at any time.
predict-panel-or-street = You turn the generator breaker on. Which of the two are live then: the panel, the wires from the street?
predict-furnace-as-it-starts = You turn the furnace breaker on. How many watts is the set asked for at that moment?
