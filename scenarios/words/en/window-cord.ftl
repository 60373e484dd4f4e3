drill-window-cord-title = The window cord
drill-window-cord-summary = A still night. Cords come in through the bedroom window, a child sleeps behind it, and somebody has silenced the alarm.
drill-window-cord-goal = Get the fridge and the bedroom heater running within 25 minutes of the outage. Close the gap around the cords and have the alarm working. When the utility is back, stop the engine, put the cords away and shut the window.
drill-window-cord-note = The gas can make people pass out in this drill. Nothing is shown in detail. You can stop at any time.
predict-gas-in-an-hour = The engine has started. How many parts per million of carbon monoxide are indoors in an hour, if nobody touches anything?
