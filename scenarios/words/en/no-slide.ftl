drill-no-slide-title = No slide
drill-no-slide-summary = The same house, but someone added a generator breaker and left out the interlock. A cord with two plugs lies in the shed. Find the safe way.
drill-no-slide-goal = Get the fridge and the sump pump running within 20 minutes of the outage. Keep the street safe. When the utility is back, plug them into the wall again, stop the engine and put the cords away.
drill-no-slide-note = Mistakes in this drill can kill a line worker. Nothing is shown in detail. You can stop at any time.
