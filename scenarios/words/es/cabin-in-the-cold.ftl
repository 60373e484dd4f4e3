drill-cabin-in-the-cold-title = Cabaña en el frío
drill-cabin-in-the-cold-summary = Una cabaña junto a un lago, un tablero pequeño, un inversor pequeño. La calefacción y el refrigerador comparten una fase. Caliente la cabaña y regrese cuando la línea aguante.
drill-cabin-in-the-cold-goal = Ponga en marcha la calefacción y el refrigerador en 15 minutos desde el apagón. Cuando la red vuelva del todo, regrese, pare el motor y guarde el cable.
drill-cabin-in-the-cold-note = Un error puede dejar la cabaña fría y a oscuras. Puede parar en cualquier momento.
