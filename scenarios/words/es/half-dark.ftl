drill-half-dark-title = Media casa a oscuras
drill-half-dark-summary = Media casa se quedó a oscuras y la otra mitad tiene luz. ¿Un interruptor? ¿Un apagón? ¿Otra cosa?
drill-half-dark-goal = Diga qué tiene voltaje. Evite daños a los aparatos. Al final la casa está otra vez en la red.
drill-half-dark-note = Que una lámpara no encienda no quiere decir que el cable no tenga voltaje. Puede parar cuando quiera.
