# Fallas de los archivos y de lo que se escribe.

error-syntax = Esto no se puede leer: { $detail }.
error-unreadable = El archivo o la carpeta no se puede leer: { $detail }. Revise el nombre.
error-version = El archivo tiene la versión { $found }. Este programa lee la versión { $known }.
error-not-positive = “{ $field }” es { $value }. Debe ser mayor que cero.
error-unknown-name = No existe “{ $name }” ({ $kind }).
error-missing-word = Aquí falta una palabra: { $kind }.
error-gauge = “{ $value }” no es un calibre de cable que sirva aquí. Escriba un calibre como "12" o "10".
error-cord-letters = “{ $value }” no es un tipo de cable. Escriba letras como "SJTW" o "STW".
error-cord-lies = Este cable no tiene ninguna manera de estar. Nombre una o más en "lies".
error-code-letter = “{ $value }” no es una letra de código de un motor. Escriba una de 'A' a 'V'.
error-store-levels = Los niveles no cuadran. “off_level” debe ser menor que “on_level”, y ambos de 0 a 1.
error-no-battery = Este interruptor pasa una carga a la batería, pero el sitio no tiene “battery”. Añada una o nombre otra fuente.
error-fuse-two-legs = Un fusible protege un solo cable activo. Dé un interruptor al circuito de 240 voltios.
error-subpanel-transfer = El subtablero “{ $name }” debe colgar de un interruptor de transferencia. Añádalo una vez en “transfers”.
error-moved-twice = Dos interruptores de transferencia mueven “{ $name }”. Una carga cuelga de un solo interruptor.
error-share = La parte es { $value }. Debe ser de 0 a 1.
error-percent = El porcentaje es { $value }. Debe ser de 0 a 100.
error-story-order = Esto sucede antes de que pueda terminar lo de la línea anterior. Ponga la historia en orden de tiempo.

error-run-cut = El archivo de ejecución está cortado: le falta la última línea. Guarde la ejecución otra vez.
error-run-head = Así no empieza un archivo de ejecución. Use un archivo escrito con “--save”.
error-run-version = El archivo de ejecución tiene la versión { $found }. Este programa lee la versión { $known }.
error-run-changed = El simulacro “{ $name }” cambió desde que se guardó esta ejecución. Hágalo de nuevo para evaluarlo.
error-run-seed = La semilla debe ser un número entero.
error-run-line = Esta línea no va aquí. Cada línea antes del final lleva una hora, como @0:48.
error-run-backwards = Las horas de las acciones van hacia atrás. Use el archivo tal como se guardó.

error-kind-verb = acción o mando
error-kind-control = mando
error-kind-position = posición
error-kind-sight = lugar que mirar
error-kind-point = punto que medir
error-kind-callee = persona a quien llamar
error-kind-listener = persona a quien avisar
error-kind-time = cantidad de tiempo
error-kind-end = palabra de más
error-kind-mistake = error
error-kind-drill = simulacro
error-kind-site = sitio
error-kind-cord = cable
error-kind-pole = poste
error-kind-span = tramo
error-kind-circuit = circuito
error-kind-subpanel = subtablero
error-kind-inlet = toma de entrada
error-kind-appliance = aparato

error-hint-nearest = ¿Quiso decir “{ $name }”?
error-hint-known = Use uno de estos: { $names }.
error-level = El nivel es { $value }. Es un número de 1 a 5.
error-tracks = Nombre al menos uno de los públicos: Class, Apprentice, Home.
error-teaches = Nombre de una a cuatro cosas que enseña el simulacro.
error-heading = No se entiende esta línea del encabezado: { $line }
error-heading-passes = El encabezado dice si se aprueba: "# passes: yes" o "# passes: no".
error-empty-sitting = Cada reunión tiene al menos una parte.
