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
error-lent-house = Estos llegan al cableado de la casa: { $cords }. Donde un vecino presta “{ $lent }”, use solo cables que terminen en un conector o en una regleta.
error-strip-alone = Una regleta con dos enchufes necesita un cable donde entre el segundo. Dé al sitio un “neighbor_cord”.
error-adapter = Solo una máquina con enchufe para las dos fases puede tener adaptador. Quite “adapter”, o dele “plug: Plug” y un circuito de las dos fases.
error-code-letter = “{ $value }” no es una letra de código de un motor. Escriba una de 'A' a 'V'.
error-store-levels = Los niveles no cuadran. “off_level” debe ser menor que “on_level”, y ambos de 0 a 1.
error-no-battery = Este interruptor pasa una carga a la batería, pero el sitio no tiene “battery”. Añada una o nombre otra fuente.
error-cover-by-hand = Una “cover” es de un interruptor de transferencia que trabaja solo. Añada “automatic: true” o quite “cover”.
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
error-run-edited = Esta ejecución se cambió después de guardarla: contiene lo que ningún simulacro permite. Use el archivo tal como se guardó.
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
error-kind-inlet = entrada de corriente
error-kind-appliance = aparato
error-kind-transfer = interruptor de transferencia
error-kind-generator = generador
error-kind-transformer = transformador
error-kind-battery = batería

error-words-token = Aquí tiene que ir “{ $token }”.
error-words-token-after = Después de esto tiene que ir “{ $token }”.
error-words-value = “{ $id }” no dice nada. Escriba su texto después de “=”.
error-words-id = Aquí tiene que ir el nombre de un mensaje. Empieza con una letra de la a a la z.
error-words-inside = Entre estas llaves tiene que ir algo, como $name o un texto entre comillas.
error-words-brace = Esta llave no cierra nada. Bórrela, o abra otra antes.
error-words-quote = Las comillas de antes no se cierran. Escriba las segundas.
error-words-default = Una de las opciones tiene que empezar con “*”. Vale cuando ninguna otra sirve.
error-words-missing = Falta el mensaje “{ $id }”. Escríbalo en { $file }.
error-hint-misspelt = “{ $name }” se le parece. ¿Es un descuido?
error-hint-nearest = ¿Quiso decir “{ $name }”?
error-hint-known = Use uno de estos: { $names }.
error-hint-apparatus = Ningún archivo de “apparatus” nombra alguno. Añádalo allí bajo “{ $list }”.
error-like-circle = Esto vuelve a sí mismo: { $names }. Haga que uno de ellos no sea como ninguno de los otros.
error-level = El nivel es { $value }. Es un número de 1 a 5.
error-tracks = Nombre al menos uno de los públicos: Class, Apprentice, Home.
error-teaches = Nombre de una a cuatro cosas que enseña el simulacro.
error-heading = No se entiende esta línea del encabezado: { $line }
error-heading-passes = El encabezado dice si se aprueba: "# passes: yes" o "# passes: no".
error-kind-question = pregunta
error-kind-answer = respuesta
error-kind-turn = cambio
error-name-twice = Este nombre está dos veces: { $name }.
error-unknown-field = Aquí no hay ningún campo con este nombre: { $name }.
error-unknown-choice = Esta no es una de las opciones: { $name }.
error-double-field = Este campo está dos veces: { $name }.
error-missing-field = Falta un campo antes de este paréntesis: { $name }.
error-expected-number = Aquí tiene que haber un número.
error-number-bounds = Este número es demasiado grande o demasiado pequeño aquí.
error-expected-text = Aquí tiene que haber un texto entre comillas.
error-expected-true-false = Aquí tiene que decir true o false.
error-expected-list = Aquí tiene que haber una lista entre corchetes.
error-run-other = Esta ejecución es de otro simulacro, o de otro número de él. Compare dos ejecuciones del mismo.

# Lo que se dice de quienes hicieron una ejecución. $name es lo que se escribió.
error-day = “{ $text }” no es un día del calendario. Escriba uno como 2026-03-01.
error-seated = “{ $name }” no es una manera de sentarse. Use una de estas: { $known }.
error-learner-empty = El nombre de un participante está vacío. Escriba un nombre o no ponga ninguno.
error-learner-odd = El nombre de un participante tiene un signo que no cabe en una línea. Escríbalo de nuevo.
error-learner-long = El nombre de un participante es demasiado largo. Use { $most } letras como máximo.
error-learner-twice = El participante “{ $name }” aparece dos veces. Nombre a cada uno una sola vez.
error-handed = “{ $text }” no dice quién siguió y cuándo. Escriba el reloj y una persona ya nombrada arriba: handed 12:30 Ben.
error-handed-first = Todavía no hay nadie con nombre que pueda dar el relevo. Empiece con “play NAME --learner ANA”.
error-learners-many = Se nombran { $given } participantes, y así { $most ->
    [one] solo se sienta uno.
   *[other] se sientan { $most } como máximo.
} Nombre a menos, o elija otra manera de sentarse.
