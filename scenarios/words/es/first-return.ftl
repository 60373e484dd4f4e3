drill-first-return-title = El primer regreso
drill-first-return-summary = La casa en hilera lleva horas con el generador. Las luces del dormitorio nunca se movieron. Ellas dicen cuándo hay red.
drill-first-return-goal = Devuelva las palancas cuando la red se mantenga. Deje enfriar el motor sin carga, párelo y guarde el cable.
drill-first-return-note = La línea puede probarse más de una vez antes de mantenerse. Puede detenerse cuando quiera.
