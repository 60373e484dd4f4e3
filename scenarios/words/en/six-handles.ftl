drill-six-handles-title = Six handles
drill-six-handles-summary = A small house has a transfer switch beside the panel. Each of its six handles moves one circuit. Take three of them to the generator and back.
drill-six-handles-goal = Get the fridge, the furnace and the sump pump running within 15 minutes of the outage. When the utility is back, move the handles back, stop the engine and put the cord away.
drill-six-handles-note = The switch keeps the line safe. The engine and its exhaust can still hurt people. You can stop at any time.
