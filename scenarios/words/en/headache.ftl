drill-headache-title = Headache
drill-headache-summary = A quiet evening without power. You run no engine. A child sleeps upstairs.
drill-headache-goal = Bring everyone safely through the evening. Watch for signs, and act on them at once.
drill-headache-note = The gas can make people pass out in this drill. Nothing is shown in detail. You can stop at any time.
