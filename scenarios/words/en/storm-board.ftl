drill-storm-board-title = The storm board
drill-storm-board-summary = Fourteen homes are out on a loop with two feeds. The storm has left more than one trap. You lead the crew.
drill-storm-board-goal = Mend the line from pole 4 and give every customer power from the head. Leave the tie open. Leave nothing of yours behind.
drill-storm-board-note = A worker can die in this drill. Nothing is shown in detail. You can stop at any time.
