drill-there-and-back-title = Ida y vuelta
drill-there-and-back-summary = Una tormenta deja la casa sin electricidad. Pase la casa al generador y luego de vuelta a la red. El tablero tiene un bloqueo mecánico.
drill-there-and-back-goal = Ponga a funcionar el refrigerador, la calefacción y la bomba de sumidero en los 20 minutos que siguen al apagón. Cuando la red haya vuelto, regrese a ella, pare el motor y guarde el cable.
drill-there-and-back-note = Un error en la línea puede herir a alguien. Puede detenerse cuando quiera.
