drill-one-plug-two-ends-title = One plug, two ends
drill-one-plug-two-ends-summary = You come home in an outage and the house is lit. The generator runs, and its cord goes into the wall outlet of the range.
drill-one-plug-two-ends-goal = End it at once. Take the cord away in the right order, and say what is live. When the utility is back, switch the house back on.
drill-one-plug-two-ends-note = People die of this cord. Nothing is shown in detail. You can stop at any time.
