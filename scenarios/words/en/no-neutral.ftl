drill-no-neutral-title = No neutral
drill-no-neutral-summary = A windy evening. The power is on, but something is wrong with it. Watch the lamps, and act.
drill-no-neutral-goal = Keep people and machines from harm. In the end the house is back on the utility, when that is safe.
drill-no-neutral-note = Wrong volts can start a fire. Nothing is shown in detail. You can stop at any time.
predict-volts-without-neutral = The lamps flicker. How many volts to neutral are at the living room outlet now?
