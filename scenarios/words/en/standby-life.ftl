drill-standby-life-title = Standby life
drill-standby-life-summary = A frosty morning on a farm. The standby generator has its weekly run, and a storm is near. Watch what state it is in, and help it where it can’t help itself.
drill-standby-life-goal = Get the fridge, the furnace and the well pump running within 10 minutes of the outage. Don’t ask more of the set than it can carry. At the end it stands ready, and the heat strips are on again.
drill-standby-life-note = An engine that starts by itself can hurt someone. Keep clear of it. You can stop at any time.
predict-house-in-the-weekly-run = The generator begins its weekly run. What feeds the house’s panel now?
predict-house-as-the-set-begins = The engine has begun to turn. What feeds the house’s panel at this moment?
predict-house-as-the-street-is-lit = The street is lit again. What feeds the house’s panel at this moment?
