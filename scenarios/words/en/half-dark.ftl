drill-half-dark-title = Half dark
drill-half-dark-summary = Half of the house has gone dark, the other half has light. A breaker? An outage? Something else?
drill-half-dark-goal = Say what is live. Keep machines from harm. In the end the house is on the utility again.
drill-half-dark-note = A dark lamp does not mean a dead wire. You can stop at any time.
