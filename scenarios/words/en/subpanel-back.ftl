drill-subpanel-back-title = Subpanel back
drill-subpanel-back-summary = The cabin’s small panel runs on the generator. The utility is tried this morning. It may not hold the first time.
drill-subpanel-back-goal = When the utility holds, put the small panel back on it, with every load. Then let the engine cool, stop it and put the cord away.
drill-subpanel-back-note = A mistake can leave the cabin dark. You can stop at any time.
