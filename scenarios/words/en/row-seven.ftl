name-insulin-fridge = insulin fridge
name-back-step = back step
name-shared-green = shared green
name-short-cord = short generator cord
name-long-cord = long generator cord
