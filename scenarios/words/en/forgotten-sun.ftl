drill-forgotten-sun-title = Forgotten sun
drill-forgotten-sun-summary = A bright morning after the storm. A battery keeps a few circuits alive, but not the pump. Solar panels join any steady source they find, a generator too.
drill-forgotten-sun-goal = Within 20 minutes of the outage, get the sump pump running on the generator, without the solar panels. Keep the fridge and the furnace on. When the utility is back, switch back and turn the solar panels on again. Stop the engine and put the cord away.
drill-forgotten-sun-note = Three sources feed this house. Each one can hurt. You can stop at any time.
