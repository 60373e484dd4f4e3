name-lake-pump = lake pump
name-outlet-lake-pump = lake pump disconnect
name-pipe-heater = pipe heater
name-outlet-pipe-heater = pipe heater
event-lost-lake-pump = The pressure tank of the cabin is empty. No water comes.
