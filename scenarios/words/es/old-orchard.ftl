name-neighbor-3 = casa de la esquina
name-range = cocina eléctrica
name-range-outlet = toma de la cocina eléctrica
