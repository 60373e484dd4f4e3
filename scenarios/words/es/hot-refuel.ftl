drill-hot-refuel-title = Combustible en caliente
drill-hot-refuel-summary = Una noche fría con el generador. El tanque está casi vacío y todos quieren que siga la calefacción.
drill-hot-refuel-goal = Llene el tanque sin incendio. Quite la carga, deje enfriar el motor, párelo, espere y vierta. Luego arránquelo sin carga y conecte otra vez la calefacción y el refrigerador.
drill-hot-refuel-note = El combustible sobre un escape caliente puede quemar a una persona. Puede detenerse cuando quiera.
