name-heat-pump = heat pump
name-outlet-heat-pump = heat pump disconnect
name-side-yard = side yard
