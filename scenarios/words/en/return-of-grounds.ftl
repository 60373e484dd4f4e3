drill-return-of-grounds-title = Giving the line back
drill-return-of-grounds-summary = It is before dawn and the wire is mended. Three sets of grounds hang on the line. A generator hums at pole 5.
drill-return-of-grounds-goal = Give every customer power again. Leave no tag and no grounds behind.
drill-return-of-grounds-note = A worker can die in this drill. Nothing is shown in detail. You can stop at any time.
