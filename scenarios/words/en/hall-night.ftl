drill-hall-night-title = Hall night
drill-hall-night-summary = A storm night in a community hall with 20 volunteers. The panel was made for a generator. Three coffee urns want power. At 2 the next shift of volunteers takes over.
drill-hall-night-goal = Get the heat, the lamps, the phone table and coffee urn B running within 20 minutes. Say under “Answers” what feeds what: the next shift goes by it. Switch back when the utility is there, stop the engine and put the cord away.
drill-hall-night-note = A tired shift hands over to a sleepy one. You can stop at any time.
