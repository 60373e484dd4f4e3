name-yard-pump = yard pump
