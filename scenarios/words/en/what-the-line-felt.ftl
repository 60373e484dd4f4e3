drill-what-the-line-felt-title = What the line felt
drill-what-the-line-felt-summary = The utility is out. One house has plugged its generator into its panel. You stand under the line with a tester.
drill-what-the-line-felt-goal = Say whether the line at pole 3 is live, and what feeds it. Then cut that source off. Do not touch the line.
drill-what-the-line-felt-note = A worker can die in this drill. Nothing is shown in detail. You can stop at any time.
predict-line-from-one-house = One house runs a small set of 240 volts, and its main is on. How many volts to neutral are on the line at pole 3?
predict-line-past-the-cutout = You open the cutout at pole 5. Is the line at pole 3 live or dead after that?
