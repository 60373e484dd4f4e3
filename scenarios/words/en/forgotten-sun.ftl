drill-forgotten-sun-title = Forgotten sun
drill-forgotten-sun-summary = A bright morning after the storm. A battery keeps a few circuits alive. There are solar panels on the roof and a quiet generator in the shed.
drill-forgotten-sun-goal = Get the sump pump running on the generator within 20 minutes of the outage. Keep the fridge and the furnace on. When the utility is back, switch back and turn the solar panels on again. Stop the engine and put the cord away.
drill-forgotten-sun-note = Three sources feed this house. Each one can hurt. You can stop at any time.
