drill-hands-off-title = Hands off
drill-hands-off-summary = The standby generator asks for oil. Make it safe before you open it. It does not know that you are there.
drill-hands-off-goal = Fill the oil with the set locked out. Then give it back to the house: cover shut, battery connected, breaker on, controller on auto.
drill-hands-off-note = An engine that starts by itself can hurt someone. Nothing is shown in detail. You can stop at any time.
