drill-dead-or-not-title = Dead or not
drill-dead-or-not-summary = A wire is down and the street is dark. Four testers lie in the truck. Not all of them can be trusted.
drill-dead-or-not-goal = Say for both sides of the break whether the line is live. Then see that no customer feeds it. Do not touch the line.
drill-dead-or-not-note = A worker can die in this drill. Nothing is shown in detail. You can stop at any time.
predict-sides-of-the-break = The span between pole 2 and pole 3 is down. Which of the two poles are live now: pole 2, pole 3?
