name-freezer = freezer
