drill-oxygen-first-title = Primero el oxígeno
drill-oxygen-first-summary = En esta casa alguien vive con oxígeno. El concentrador tiene batería para un cuarto de hora. Hay dos generadores pequeños en el cobertizo.
drill-oxygen-first-goal = Ponga en marcha el oxígeno y la calefacción en los 12 minutos después del apagón, y que no paren. El apagón sigue.
drill-oxygen-first-note = Una persona depende de esta energía. Nada se muestra en detalle. Puede parar en cualquier momento.
