# Variations: faults of files, and what is said of the variant that is open.

error-kind-variation = variación
error-variation-taken = Cada variación tiene un nombre propio, y “as-written” no lo es: { $name }.
error-variation-drawn = Cada variación aparece una vez en “draw”, o se omite “draw”: { $name }.
error-variations-many = Esto ofrece más simulacros de los que caben en un archivo: { $most }.
error-swapped = No se pueden cruzar los cables de estos dos: { $one }, { $other }. Nombre dos circuitos de un mismo tablero y un mismo voltaje.
error-out-of-range = { $field } no puede ser { $value } aquí.

# $seed is a whole number.
session-seed = Simulacro número { $seed }. El mismo número da el mismo simulacro.

# Variants of a drill. $name is as in the file, $seed a whole number.
terminal-variant = { $name }: semilla { $seed }
terminal-no-variant = No hay aquí una variación “{ $name }”. Use una de estas: { $names }.
terminal-help-another = another abre el siguiente simulacro de esta clase.
