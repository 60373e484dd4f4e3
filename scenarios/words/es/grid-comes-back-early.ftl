drill-grid-comes-back-early-title = La red vuelve antes de tiempo
drill-grid-comes-back-early-summary = La casa funciona con un cable de dos enchufes. La radio dice que la luz vuelve a su calle en menos de dos minutos.
drill-grid-comes-back-early-goal = Mantenga separadas las dos fuentes. Luego retire el cable en el orden correcto y devuelva la casa a la red.
drill-grid-comes-back-early-note = Dos fuentes que se encuentran pueden romper un motor y herir a personas. Puede parar cuando quiera.
