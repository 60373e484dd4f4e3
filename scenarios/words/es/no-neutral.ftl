drill-no-neutral-title = Sin neutro
drill-no-neutral-summary = Una noche de viento. Hay luz, pero algo anda mal con ella. Mire las lámparas y actúe.
drill-no-neutral-goal = Evite daños a las personas y a los aparatos. Al final la casa vuelve a la red, cuando sea seguro.
drill-no-neutral-note = Un voltaje equivocado puede causar un incendio. No se muestra nada en detalle. Puede parar cuando quiera.
predict-volts-without-neutral = Las lámparas parpadean. ¿Cuántos voltios al neutro hay ahora en el tomacorriente de la sala?
