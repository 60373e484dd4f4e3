drill-card-writer-title = Card writer
drill-card-writer-summary = You write the card for the townhouse, for someone who has never done it. Then that person runs the house by it when the power fails.
drill-card-writer-goal = After the outage say what hangs on the breakers of the card and what shows that the utility is away. Then run the insulin fridge and the furnace, and go back, by the card alone.
drill-card-writer-note = A card that is wrong is worse than none. You can stop at any time.
