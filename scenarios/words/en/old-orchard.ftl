name-neighbor-3 = house on the corner
name-range = range
name-range-outlet = range outlet
