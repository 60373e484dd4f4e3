drill-half-the-house-title = Half the house
drill-half-the-house-summary = The four-wire outlet of the generator is broken. An adapter brings one 120 V outlet to both sides of the panel.
drill-half-the-house-goal = Find what has to stay off. Get the furnace running within 25 minutes and harm no wire. When the utility is back, switch back, stop the engine and put the cord away.
drill-half-the-house-note = A wire in a wall can start a fire with no sign before. You can stop at any time.
predict-amps-of-both-legs = You turn the microwave’s breaker on. How many amps does the cord with the adapter carry then?
