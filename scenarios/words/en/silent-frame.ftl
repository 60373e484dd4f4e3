drill-silent-frame-title = Silent frame
drill-silent-frame-summary = The breaker of the washing machine trips at once, so it was left off. The generator and its switch were bought one by one.
drill-silent-frame-goal = Say how many places join its neutral to ground. Get the fridge running within 22 minutes without harm. When the utility is back, stop the engine and put the cords away.
drill-silent-frame-note = A frame can be live with no sign of it. Nothing is shown in detail. You can stop at any time.
