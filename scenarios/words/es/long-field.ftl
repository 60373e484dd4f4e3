name-well-pump = bomba de pozo
name-outlet-well-pump = desconectador de la bomba de pozo
name-heat-strips = resistencias de calefacción
name-outlet-heat-strips = resistencias de calefacción
name-barn = granero
name-outlet-barn = tomacorriente del granero
name-barn-lights = luces del granero
event-lost-well-pump = El tanque de presión está vacío. No sale agua de los grifos.
