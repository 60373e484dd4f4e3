drill-one-plug-two-ends-title = Un cable, dos enchufes
drill-one-plug-two-ends-summary = Usted llega a casa durante un apagón y hay luz. El generador funciona y su cable va al tomacorriente de la estufa.
drill-one-plug-two-ends-goal = Termine con eso de inmediato. Retire el cable en el orden correcto y diga qué tiene voltaje. Cuando vuelva la red, encienda la casa.
drill-one-plug-two-ends-note = Hay gente que muere por este cable. No se muestra nada en detalle. Puede parar cuando quiera.
predict-outlet-or-street = Afuera funciona un generador, y un cable con dos enchufes está en el tomacorriente de la estufa. ¿Cuáles tienen voltaje ahora: ese tomacorriente, los cables de la calle?
predict-street-line-volts = Piense en la línea de los postes, calle arriba. ¿Cuántos voltios al neutro lleva ahora?
