drill-sun-on-the-set-title = Sol sobre el generador
drill-sun-on-the-set-summary = Una familia ha puesto su casa en el generador, con el principal apagado y la corredera pasada. Usted llega unos minutos después. El sol está alto, y hay paneles en el techo.
drill-sun-on-the-set-goal = Mantenga separados el sol y el generador mientras dure el apagón, y muéstrelo con un probador. Mantenga el refrigerador, la calefacción y la bomba de sumidero. Cuando vuelva la red, vuelva a ella, encienda otra vez los paneles solares, pare el motor y guarde el cable.
drill-sun-on-the-set-note = Tres fuentes alimentan esta casa, y dos de ellas pueden encontrarse. Puede parar en cualquier momento.
predict-what-the-roof-follows = No hay red. ¿Qué alimenta ahora los bornes del inversor del techo?
predict-set-with-the-sun-off = Usted abre el interruptor del techo. ¿Cuántos vatios se le piden entonces al generador?
