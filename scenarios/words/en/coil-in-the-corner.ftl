drill-coil-in-the-corner-title = The coil in the corner
drill-coil-in-the-corner-summary = It is near freezing. Somebody has put the space heater on a long thin cord. The rest of the cord lies in a neat coil in the corner.
drill-coil-in-the-corner-goal = Get the space heater running within 15 minutes of the outage, and keep it running until the utility is back. Then plug it into the wall, stop the engine and put the cords away.
drill-coil-in-the-corner-note = A cord can start a fire in this drill. Nothing is shown in detail. You can stop at any time.
predict-watts-in-the-cord = You switch the heater on. How many watts does the orange cord itself turn into heat at first?
predict-cord-in-half-an-hour = The heater stays on for 30 minutes and nobody touches anything. Does the orange cord stay within what its insulation is made for?
