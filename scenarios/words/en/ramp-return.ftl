drill-ramp-return-title = Ramp return
drill-ramp-return-summary = Two generators feed a home where somebody lives on oxygen. The battery of the concentrator is nearly empty. The utility is about to return.
drill-ramp-return-goal = Go back to the utility without a long break. Then let the engines cool, stop them and put the cord away.
drill-ramp-return-note = A person depends on this power. Nothing is shown in detail. You can stop at any time.
