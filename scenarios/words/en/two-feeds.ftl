drill-two-feeds-title = Two feeds
drill-two-feeds-summary = A wire is down at pole 4 of a loop. It can be fed from its head and over a tie. Another crew works nearer the head.
drill-two-feeds-goal = Mend the line from pole 4 and give every customer power from the head. Leave the tie open. Leave no tag and no grounds behind.
drill-two-feeds-note = A worker can die in this drill. Nothing is shown in detail. You can stop at any time.
