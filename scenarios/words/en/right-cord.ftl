drill-right-cord-title = The right cord
drill-right-cord-summary = A small house with no way to connect a generator to it. A rack of cords hangs in the shed, good ones and bad ones.
drill-right-cord-goal = Run the fridge and the space heater on cords within 20 minutes of the outage. When the utility is back, plug them into the wall again, stop the engine and put the cords away.
drill-right-cord-note = A wrong cord can start a fire in this drill. Nothing is shown in detail. You can stop at any time.
predict-heater-on-the-set = You switch the heater on. How many watts is the set asked for then?
