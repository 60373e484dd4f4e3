drill-subpanel-out-title = Subpanel out
drill-subpanel-out-summary = A winter outage at a lake cabin. A small panel has its own transfer switch. The generator has little to give on each leg.
drill-subpanel-out-goal = Get the fridge and the lake pump running within 15 minutes of the outage. The outage goes on, so the small panel stays on the generator.
drill-subpanel-out-note = A mistake can leave the cabin dark. You can stop at any time.
