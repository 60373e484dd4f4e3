drill-big-three-title = Los tres grandes
drill-big-three-summary = La casa está con su generador y todos los circuitos están apagados. La calefacción, la bomba de sumidero y el refrigerador quieren arrancar.
drill-big-three-goal = Ponga a funcionar los tres en 8 minutos sin pasar la capacidad del generador. Piense primero en el orden.
drill-big-three-note = Puede detenerse cuando quiera.
