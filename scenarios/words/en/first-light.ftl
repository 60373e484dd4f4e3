drill-first-light-title = First light
drill-first-light-summary = The lights are about to go out. Find out what is live and what is not, and say so. Nothing has to be switched over.
drill-first-light-goal = Answer what the drill asks, after the outage. Look and test before you say.
drill-first-light-note = A wire that people call dead may be live. It can kill. You can stop at any time.
