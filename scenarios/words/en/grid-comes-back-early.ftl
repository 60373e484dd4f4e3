drill-grid-comes-back-early-title = The grid comes back early
drill-grid-comes-back-early-summary = The house runs on a cord with two plugs. The radio says that power returns in your street within two minutes.
drill-grid-comes-back-early-goal = Keep the two sources apart. Then take the cord away in the right order and bring the house back to the utility.
drill-grid-comes-back-early-note = Two sources that meet can break an engine and hurt people. You can stop at any time.
