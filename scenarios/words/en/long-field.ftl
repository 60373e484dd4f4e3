name-well-pump = well pump
name-outlet-well-pump = well pump disconnect
name-heat-strips = heat strips
name-outlet-heat-strips = heat strips
name-barn = barn
name-outlet-barn = barn outlet
name-barn-lights = barn lights
event-lost-well-pump = The pressure tank is empty. No water comes from the taps.
