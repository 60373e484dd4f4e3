drill-cover-off-tour-title = Cover off
drill-cover-off-tour-summary = The cover of the panel is off, and the bar of the interlock with it. Then a storm takes the power. A generator stands ready.
drill-cover-off-tour-goal = Say what is live, what feeds the bars and whether the slide can be trusted. Decide whether the panel may be fed. If not, feed nothing and call an electrician.
drill-cover-off-tour-note = A crew works on the street. You can stop at any time.
