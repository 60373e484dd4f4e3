drill-ground-order-title = Clamp by clamp
drill-ground-order-summary = The line is cut off from the utility, and your tag hangs there. A wire has to be mended at pole 3.
drill-ground-order-goal = Mend the line from pole 3 and give every customer power again. Leave no tag and no grounds behind.
drill-ground-order-note = A worker can die in this drill. Nothing is shown in detail. You can stop at any time.
