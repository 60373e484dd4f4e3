drill-battery-night-title = Noche de batería
drill-battery-night-summary = Se va la luz de noche y una batería se hace cargo de unos circuitos. No está hecha para todo lo que hay encendido.
drill-battery-night-goal = Mantenga el refrigerador y la calefacción hasta que vuelva la red. No deje que la batería se agote.
drill-battery-night-note = La batería mantiene cables con voltaje aunque la calle esté a oscuras. Puede parar cuando quiera.
