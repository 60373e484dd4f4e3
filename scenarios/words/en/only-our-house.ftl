drill-only-our-house-title = Only our house
drill-only-our-house-summary = The house is dark. Look before you carry a generator anywhere.
drill-only-our-house-goal = Find out whether this is an outage at all. Say whether the wires from the street are live. Then do what is needed.
drill-only-our-house-note = Wires from the street can be live while the house is dark. You can stop at any time.
