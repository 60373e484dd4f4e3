drill-standby-life-title = La vida de un generador fijo
drill-standby-life-summary = Una mañana helada en una granja. El generador fijo hace su marcha semanal, y se acerca una tormenta. Observe en qué estado está, y ayúdelo donde no puede ayudarse solo.
drill-standby-life-goal = Ponga en marcha el refrigerador, la calefacción y la bomba del pozo en los 10 minutos siguientes al apagón. No le pida al generador más de lo que puede dar. Al final queda listo, y las resistencias de calefacción están conectadas otra vez.
drill-standby-life-note = Un motor que arranca solo puede herir a alguien. Manténgase lejos. Puede parar en cualquier momento.
predict-house-in-the-weekly-run = El generador empieza su marcha semanal. ¿Qué alimenta ahora el tablero de la casa?
predict-house-as-the-set-begins = El motor ha empezado a girar. ¿Qué alimenta el tablero de la casa en este momento?
predict-house-as-the-street-is-lit = La calle tiene luz otra vez. ¿Qué alimenta el tablero de la casa en este momento?
