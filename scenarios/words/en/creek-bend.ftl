name-yard-pump = yard pump
name-freezer = freezer
