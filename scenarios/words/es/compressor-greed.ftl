drill-compressor-greed-title = El antojo del compresor
drill-compressor-greed-summary = La casa con taller está con su generador y todavía nada está encendido. El dueño quiere también el compresor. Su motor tiene 2 caballos de fuerza.
drill-compressor-greed-goal = Ponga a funcionar la calefacción, el refrigerador y las luces del taller en 10 minutos y manténgalos así. Averigüe qué puede el generador y deje fuera lo que no puede.
drill-compressor-greed-note = Puede detenerse cuando quiera.
