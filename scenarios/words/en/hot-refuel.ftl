drill-hot-refuel-title = Hot refuel
drill-hot-refuel-summary = A cold night on the generator. The tank is nearly empty, and everybody wants the heat to stay on.
drill-hot-refuel-goal = Fill the tank without a fire. Take the load off, let the engine cool, stop it, wait, pour. Then start it without load and bring the furnace and the fridge back.
drill-hot-refuel-note = Fuel on a hot muffler can burn a person. You can stop at any time.
