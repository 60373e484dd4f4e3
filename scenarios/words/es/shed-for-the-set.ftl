drill-shed-for-the-set-title = Soltar carga
drill-shed-for-the-set-summary = Una mañana fría en la granja. La secadora trabaja y las resistencias calientan cuando se va la luz. El generador fijo no puede con todo.
drill-shed-for-the-set-goal = Ponga en marcha el refrigerador, la calefacción y la bomba de pozo en los 12 minutos después del apagón, y manténgalos. Al final el equipo queda listo otra vez.
drill-shed-for-the-set-note = Un error puede dejar la casa a oscuras. Puede parar cuando quiera.
