drill-left-off-title = Quedó apagado
drill-left-off-summary = Una granja tiene un generador fijo que arranca solo. Esta noche se va la luz y nada arranca. Averigüe por qué.
drill-left-off-goal = Ponga en marcha el refrigerador, la calefacción y la bomba de pozo en los 12 minutos después del apagón. Al final el equipo queda listo para la próxima tormenta.
drill-left-off-note = Un motor que arranca solo puede herir a alguien. No se acerque. Puede parar cuando quiera.
