drill-card-writer-title = La tarjeta
drill-card-writer-summary = Usted escribe la tarjeta de la casa en hilera para alguien que nunca lo hizo. Luego esa persona maneja la casa con ella cuando falla la electricidad.
drill-card-writer-goal = Después del apagón diga qué depende de los interruptores de la tarjeta y qué muestra que no hay red. Luego ponga a funcionar el refrigerador de la insulina y la calefacción, y regrese, solo con la tarjeta.
drill-card-writer-note = Una tarjeta equivocada es peor que ninguna. Puede detenerse cuando quiera.
