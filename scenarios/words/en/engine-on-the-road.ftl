drill-engine-on-the-road-title = An engine on the road
drill-engine-on-the-road-summary = A wire is down between pole 2 and pole 3. The whole street is dark. Somebody up the road has a generator. You are the line crew.
drill-engine-on-the-road-goal = Mend the line from pole 3. Give every customer power again. Leave no tag and no grounds behind.
drill-engine-on-the-road-note = A worker can die in this drill. Nothing is shown in detail. You can stop at any time.
