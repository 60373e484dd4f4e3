drill-lock-the-standby-title = Asegure el generador fijo
drill-lock-the-standby-summary = Una granja tiene un generador fijo, y su pantalla pide aceite. Se acerca una tormenta. No se echa aceite con el motor en marcha, y el motor arranca solo.
drill-lock-the-standby-goal = Llene el aceite con el generador asegurado. Tenga el refrigerador, la calefacción y la bomba de pozo en marcha en los 25 minutos después del apagón. Al final el generador queda listo otra vez.
drill-lock-the-standby-note = Un motor que arranca solo puede herir a alguien. No se muestra nada en detalle. Puede parar en cualquier momento.
