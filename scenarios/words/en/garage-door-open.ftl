drill-garage-door-open-title = Garage door open
drill-garage-door-open-summary = It rains. The generator stands in the garage, and the home is right above it. Everybody says that an open door will do.
drill-garage-door-open-goal = Get the fridge and the bedroom heater running within 20 minutes of the outage. Keep the air in the home clean. Stop the engine before the end.
drill-garage-door-open-note = The gas can make people pass out in this drill. Nothing is shown in detail. You can stop at any time.
predict-gas-in-ten-minutes = The engine has started. How many parts per million of carbon monoxide are indoors in 10 minutes, if nobody touches anything?
