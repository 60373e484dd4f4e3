drill-cords-only-night-title = A night on cords
drill-cords-only-night-summary = The utility says tomorrow morning. It rains. The tank will not last the night, and a neighbor comes to the door.
drill-cords-only-night-goal = Get the fridge and the space heater running within 30 minutes of the outage, and bring them through the night. Fill the tank safely in time. When the utility is back, plug in at the wall, stop the engine and put the cords away.
drill-cords-only-night-note = Fuel and a bad cord can start a fire in this drill. Nothing is shown in detail. You can stop at any time.
