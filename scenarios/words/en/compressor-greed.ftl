drill-compressor-greed-title = Compressor greed
drill-compressor-greed-summary = The workshop home is on its generator, with nothing switched on yet. The owner wants the compressor too. Its motor has 2 horsepower.
drill-compressor-greed-goal = Get the furnace, the fridge and the workshop lights running within 10 minutes and keep them running. Find out what the set can do, and leave out what it cannot.
drill-compressor-greed-note = You can stop at any time.
