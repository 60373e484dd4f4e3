drill-visible-break-title = A break you can see
drill-visible-break-summary = The operator says that the recloser is open. The disconnect is on your way. A wire has to be mended at pole 3.
drill-visible-break-goal = Mend the line from pole 3 and give every customer power again. Leave no tag, no grounds and no jumper behind.
drill-visible-break-note = A worker can die in this drill. Nothing is shown in detail. You can stop at any time.
