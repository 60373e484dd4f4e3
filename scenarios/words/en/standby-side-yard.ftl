drill-standby-side-yard-title = The side yard
drill-standby-side-yard-summary = A standby generator stands in a narrow side yard, between two homes. The wind blows along the yard, and a window stands open. A storm is near.
drill-standby-side-yard-goal = Look at the place before the engine runs. Keep its gas out, and have an alarm that you have tested. Don’t let the house ask too much of it. At the end all is as it was: heat pump on, controller on auto.
drill-standby-side-yard-note = The gas can make people sick in this drill. Nothing is shown in detail. You can stop at any time.
