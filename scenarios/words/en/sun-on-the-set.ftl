drill-sun-on-the-set-title = Sun on the set
drill-sun-on-the-set-summary = A family has put its house on the generator, main off, slide over. You come by a few minutes later. The sun is high, and there are panels on the roof.
drill-sun-on-the-set-goal = Keep the sun and the generator apart while the outage lasts, and show what you did with a tester. Keep the fridge, the furnace and the sump pump running. When the utility is back, switch back and turn the solar panels on again. Stop the engine and put the cord away.
drill-sun-on-the-set-note = Three sources feed this house, and two of them can meet. You can stop at any time.
predict-what-the-roof-follows = The utility is out. What feeds the terminals of the roof’s inverter now?
predict-set-with-the-sun-off = You open the breaker of the roof. How many watts is the generator asked for then?
