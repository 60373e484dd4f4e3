drill-small-and-quiet-title = Pequeño y silencioso
drill-small-and-quiet-summary = Lo importante cuelga de un tablero pequeño con su propia transferencia. El generador es un inversor. Si se le pide demasiado, corta su salida.
drill-small-and-quiet-goal = Ponga en marcha el refrigerador, la calefacción y la bomba de sumidero en los 20 minutos después del apagón. Cuando vuelva la red, regrese a ella, pare los motores y guarde el cable.
drill-small-and-quiet-note = Un error puede dejar la casa a oscuras. Puede parar en cualquier momento.
