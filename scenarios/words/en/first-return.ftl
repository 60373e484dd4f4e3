drill-first-return-title = First return
drill-first-return-summary = The townhouse has been on its generator for hours. The lights of the bedroom were never moved. They tell when the utility is there.
drill-first-return-goal = Move the handles back once the utility holds. Let the engine cool without load, stop it, and put the cord away.
drill-first-return-note = The line may be tried more than once before it holds. You can stop at any time.
