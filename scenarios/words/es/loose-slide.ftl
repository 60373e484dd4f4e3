drill-loose-slide-title = Corredera suelta
drill-loose-slide-summary = Otra vez la casa del primer simulacro. Alguien cambió la corredera del tablero. Decida en qué se puede confiar.
drill-loose-slide-goal = Ponga en marcha el refrigerador y la bomba de sumidero en los 20 minutos siguientes al apagón. Al final pare el motor y guarde los cables. O no alimente nada y llame a un electricista. Ese también es un buen final.
drill-loose-slide-note = Los errores de este simulacro pueden matar a quien trabaja en la línea. Nada se muestra en detalle. Puede parar en cualquier momento.
predict-line-past-the-slide = Usted enciende el interruptor del generador. ¿Cuántos voltios al neutro hay entonces en la línea, en el poste 2?
