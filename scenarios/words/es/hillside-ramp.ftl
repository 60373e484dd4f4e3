name-oxygen = concentrador de oxígeno
name-outlet-oxygen = tomacorriente del oxígeno
name-stair-lift = silla salvaescaleras
name-outlet-stair-lift = silla salvaescaleras
name-powered-bed = cama eléctrica
name-outlet-powered-bed = tomacorriente de la cama
event-lost-oxygen = La batería del concentrador de oxígeno está vacía. Alguien se queda sin oxígeno.
