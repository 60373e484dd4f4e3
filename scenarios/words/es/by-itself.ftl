drill-by-itself-title = Por sí solo
drill-by-itself-summary = Un generador fijo arranca solo cuando falta la red. Hace mucho que nadie mira su aceite. Obsérvelo, y sepa qué hacer cuando se detiene.
drill-by-itself-goal = Mantenga en marcha el refrigerador, la calefacción y la bomba de sumidero. Al final el generador queda listo otra vez, con el aceite lleno.
drill-by-itself-note = Un motor que arranca solo puede herir a alguien. Puede parar en cualquier momento.
