drill-headache-title = Headache
drill-headache-summary = A quiet evening without power. You run no engine. A child sleeps upstairs.
drill-headache-goal = Bring everyone safely through the evening. Watch for signs, and act on them at once.
drill-headache-note = The gas can make people pass out in this drill. Nothing is shown in detail. You can stop at any time.
predict-gas-from-next-door = A neighbor’s engine runs below the vent. How many parts per million of carbon monoxide are indoors in an hour, if nobody touches anything?
