drill-one-plug-two-ends-title = One cord, two plugs
drill-one-plug-two-ends-summary = You come home in an outage and the house is lit. The generator runs, and its cord goes into the wall outlet of the range.
drill-one-plug-two-ends-goal = End it at once. Take the cord away in the right order, and say what is live. When the utility is back, switch the house back on.
drill-one-plug-two-ends-note = People die of this cord. Nothing is shown in detail. You can stop at any time.
predict-outlet-or-street = A generator runs outside, and a cord with two plugs is in the range outlet. Which of the two are live now: the range outlet, the wires from the street?
predict-street-line-volts = Think of the line on the poles, up the street. How many volts to neutral does it carry now?
