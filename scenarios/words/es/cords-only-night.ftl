drill-cords-only-night-title = Una noche con cables
drill-cords-only-night-summary = La compañía dice que mañana temprano. Llueve. El tanque no alcanza para la noche, y un vecino llama a la puerta.
drill-cords-only-night-goal = Haga funcionar el refrigerador y el calefactor en los 30 minutos tras el apagón, y que pasen la noche. Llene el tanque a tiempo y con seguridad. Cuando vuelva la red, enchufe a la pared, pare el motor y guarde los cables.
drill-cords-only-night-note = En este simulacro el combustible y un cable malo pueden causar un incendio. No se muestra con detalle. Puede parar cuando quiera.
