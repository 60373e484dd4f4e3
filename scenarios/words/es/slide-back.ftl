drill-slide-back-title = El regreso
drill-slide-back-summary = Es de mañana. La casa pasó la noche con su generador y la calle ya tiene luz. Devuelva la casa a la red.
drill-slide-back-goal = Apague primero los circuitos y luego corra la corredera. Revise el voltaje con una carga pequeña antes de darle todo a la casa. Al final la casa está en la red, el motor está parado y el cable está guardado.
drill-slide-back-note = Una tormenta también puede dañar los cables que llegan a la casa. Puede detenerse cuando quiera.
