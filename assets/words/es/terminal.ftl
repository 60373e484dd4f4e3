# La terminal: el simulacro como texto, y los informes.

terminal-no-window = Esta versión no tiene ventana.
terminal-as-text = El simulacro también se hace como texto. Escriba: { $command }

terminal-language-unknown = Aquí no hay ningún idioma “{ $tag }”. Use uno de estos: { $available }.

terminal-drills = Simulacros. { $track }:
terminal-no-track = No existe ningún grupo “{ $name }”.
terminal-drill = { $level }. { $directions }.
terminal-place = Lugar: { $place }
terminal-stands = Ahora: { $position }.
terminal-hint = Siguiente paso: { $hint }
terminal-hint-line = Escriba: { $line }

terminal-wires = Cables:
terminal-appliances = En la casa:
terminal-people = Personas:
terminal-neighbors = Vecinos:
terminal-generator = Generador y aire:

terminal-kind-did = Hecho
terminal-kind-refused = No se pudo
terminal-kind-happened = Sucede
terminal-kind-learnt = Se supo
terminal-kind-mistake = Peligro
terminal-kind-harm = Daño

terminal-why = Por qué importa: { $text }
terminal-now = Ahora: { $text }
terminal-instead = La próxima vez: { $text }
terminal-source = Fuente: { $text }
terminal-finding-critical = Con esto basta para no aprobar.
terminal-finding-aside = Esto no impidió aprobar.
terminal-finding-failed-already = La práctica ya estaba fallida. Esto no cuenta además.

terminal-criteria = Lo que contaba:
terminal-criterion-met = { $title }: cumplido.
terminal-criterion-met-critical = { $title }: cumplido. Sin esto no se aprueba.
terminal-criterion-missed = { $title }: no cumplido.
terminal-criterion-missed-critical = { $title }: no cumplido. Sin esto no se aprueba.
terminal-findings = { $count ->
    [0] No se halló nada malo.
    [one] Se halló una cosa:
   *[other] Se hallaron { $count } cosas:
}

terminal-help = Una acción es una línea:
terminal-help-set = set MANDO POSICIÓN mueve algo. Puede omitir “set”.
terminal-help-look = look LUGAR muestra lo que hay allí.
terminal-help-test = test PUNTO mide el voltaje en un punto.
terminal-help-call = call QUIÉN, o tell QUIÉN, habla con alguien.
terminal-help-refuel = refuel echa combustible en el tanque.
terminal-help-wait = wait 2m30s deja pasar el tiempo.
terminal-help-own = También puede escribir:
terminal-left = Salió antes del final. No se evaluó nada. Así no se aprueba.

terminal-file-unwritable = No se puede escribir { $file }: { $reason }. Elija una carpeta donde usted pueda escribir.
terminal-saved = La ejecución quedó guardada en { $file }.
terminal-saved-not = El resultado de arriba vale, pero la ejecución no quedó guardada.

terminal-fault-found = Allí dice: { $text }
terminal-not-done = { $count ->
    [one] No se hizo nada: hay una falla.
   *[other] No se hizo nada: hay { $count } fallas.
}

terminal-grammar = Un archivo de acciones lleva una acción por línea. Cada una dura lo normal.

read-points = En los puntos que se pueden medir:
read-things = Corrientes:
read-thing = { $name }: { $amps }
read-cords = Cables, con la temperatura que alcanzan al final:
read-cord = { $name }: { $amps } de { $carries }, pierde { $lost }, se queda en { $celsius }
read-cord-burns = { $name }: { $amps } de { $carries }, pierde { $lost } y se carboniza antes de estabilizarse
read-gfcis = Dispositivos contra fallas a tierra:
read-gfci-holds = { $name }: aguanta, { $residual } toman otro camino
read-gfci-opens = { $name }: se abre, { $residual } toman otro camino
read-gfci-two-bonds = { $name }: se abre, el neutro detrás de él está a tierra; { $residual } toman otro camino
read-source = { $name }: da { $watts }
read-wave-clean = La onda es tan limpia como la de la red: { $distortion } fuera de una senoide. Calienta los devanados un { $heat }. Un reloj adelanta { $gain } por hora.
read-wave-rough = La onda es áspera: { $distortion } fuera de una senoide. Calienta los devanados un { $heat }. Un reloj adelanta { $gain } por hora.
read-wave-refused = La onda está { $distortion } fuera de una senoide. Un respaldo de batería sigue con su batería. Calienta los devanados un { $heat }. Un reloj adelanta { $gain } por hora.
read-taken = Todo aparato encendido se toma como en marcha.
read-not-converged = Estos números no valen: el cálculo no llegó a un resultado estable.


terminal-language = { $tag } ({ $name }): { $present } de { $wanted } mensajes.

terminal-goal = Meta: { $goal }
terminal-choices = Posiciones: { $choices }.
terminal-points = Puntos que puede medir: { $points }
terminal-places = Puede ir a estos lugares:
terminal-begin = Escriba “help” para ver lo que puede hacer. Escriba “status” para saber cómo está todo.
terminal-begin-coached = Los errores se explican en cuanto ocurren.
terminal-begin-guided = Se muestra el siguiente paso seguro y su porqué. Los errores se explican en cuanto ocurren.
terminal-begin-assessed = Esto es una prueba. No hay ayuda hasta el final, y usted solo sabe lo que mira o mide.
terminal-help-clock = @12:30 antes de una acción la deja para cuando el reloj marque 12:30. Con “#” empieza un comentario.
terminal-help-at = at LUGAR dice qué hay allí y qué puede hacer. Con “at” a secas se listan los lugares.
terminal-help-status = status dice cómo está todo. Con “wait” a secas se espera hasta que suceda algo, diez minutos a lo sumo.
terminal-help-log = log repite lo que se ha hecho y lo que ha sucedido.
terminal-help-over = over BEN pasa el simulacro a Ben. El registro guarda cuándo.
terminal-help-rewind = rewind vuelve a antes del último error; rewind 12:30 vuelve a esa hora.
terminal-help-what = what NEUTRO dice qué significa una palabra del oficio. Solo “what” enumera las palabras.
terminal-help-hint = hint muestra el siguiente paso seguro y su porqué. En una prueba no lo hay.
terminal-help-finish = finish termina el simulacro y lo evalúa.
terminal-help-quit = quit sale sin evaluar.

terminal-check-empty = Aquí no hay ningún simulacro. Indique una carpeta que contenga “sites” y “drills” con archivos terminados en “.ron”.
terminal-check-words = Estos nombres aún no tienen palabras en este idioma: { $ids }
terminal-check-unguarded = Demasiado grande para el cable que tiene detrás: { $ids }
check-wired = Los archivos se leen y la casa se puede cablear.
check-not-wired = La casa no se puede cablear.
check-guarded = Cada interruptor es bastante pequeño para su cable, o se declara como una falla que se encuentra.
check-not-guarded = Un interruptor es demasiado grande para su cable. El cable podría quemarse antes de que se dispare.
check-start = Los números del comienzo son estables.
check-not-start = Los números del comienzo no llegan a ser estables.
check-settles = Si no se hace nada, los números son estables en todo momento hasta el final.
check-not-settles = Si no se hace nada, en algún momento los números no llegan a ser estables.
check-idle = Sin hacer nada no se aprueba.
check-not-idle = Sin hacer nada se aprueba. Pida algo en la meta.
check-claim-safe-way = Un camino seguro lleva a la meta.
check-claim-goes-on = La meta sigue al alcance desde todo estado en que nadie sufre daño.
check-claim-marking-agrees = La evaluación halla toda falta en cómo están las cosas, y solo esas.
check-claim-by-construction = El equipo mantiene la casa fuera de la línea, se mueva lo que se mueva.
check-claim-sound-start = Al comienzo se puede llegar desde una casa en buen estado.
check-claim-fuel = El motor no se queda ni sin combustible ni sin aceite.
check-claim-overload = El generador sostiene todo lo que se encienda.
check-claim-gas = No se junta gas en la casa.
check-claim-heat = Ninguna extensión y ningún cable se calienta demasiado.
check-claim-order = Nada depende del orden de los movimientos ni del tiempo entre ellos.
check-shown = Probado, con este camino que se jugó y aprobó: { $claim }
check-proved = Probado: { $claim }
check-proved-positions = Probado solo para posiciones: { $claim }
check-broken = NO ES SEGURO. Esto no se cumple: { $claim }
check-broken-way = NO ES SEGURO. Esto no se cumple: { $claim } El camino más corto hasta donde falla:
check-declared = No es seguro por construcción, y así lo quiere este simulacro. El camino más corto para alimentar la línea:
check-not-covered = Sin cubrir: { $claim } Porque: { $why }
check-searched = Recorrido: { $states } estados, { $solves } de ellos resueltos. Tomó { $seconds } y { $megabytes } MB: { $rate } estados por segundo.
check-like = Ya recorrido: nada de lo que lee la búsqueda difiere de “{ $first }”.
check-kept = No se probó de nuevo: esta prueba se guardó de una revisión anterior.
check-alike = { $name }: cada propiedad como la tiene { $first }.
check-progress = { $done } de { $all } simulacros revisados; { $states } estados hallados hasta ahora.
check-counts = Revisados: { $drills } simulacros en { $variants } variantes, en { $elapsed }. Con la búsqueda de otra variante: { $like }.
check-total = En total: { $states } estados, { $solves } de ellos resueltos. Trabajo: { $seconds }, con { $megabytes } MB como mucho. En cada núcleo: { $rate } estados por segundo.
check-skipped = No se probaron de nuevo, sino que se guardaron de una revisión anterior: { $kept } variantes.
check-as-written = Se dejaron fuera todas las variantes. Cada simulacro se revisó tal como está escrito.
check-unused-piece = Ninguna casa usa “{ $name }”. Solo se revisó su forma: úselo en una casa para revisar lo demás.
check-written = Escrito: { $path }
check-replay = Se juega así: outage-drill play { $drill } --seed { $seed } --actions { $path }
proof-by-itself = lo que un controlador hace por sí mismo no se planifica. Puede haber un camino que no se halla.
proof-too-large = hay más estados de los que caben en esta máquina.
proof-fuel = el tanque puede vaciarse antes del final si el generador da todo lo que puede. Cada intento se evalúa por lo que gasta.
proof-oil = el aceite puede quedar bajo antes del final si el generador funciona todo el tiempo. Cada intento se evalúa por cuánto funcionó.
proof-overload = todo a la vez es más de lo que el generador sostiene. Cada intento se evalúa por lo que enciende.
proof-gas-near = el motor puede funcionar donde su gas entra. Cuánto entra depende de cuánto tiempo funciona.
proof-gas-far = cuánto gas entra desde lejos es una suposición. Cada intento se evalúa por lo que se junta.
proof-heat-cords = cuánto se calienta una extensión depende de lo que lleva y por cuánto tiempo.
proof-heat-wires = cuánto se calienta un cable depende de lo que lleva y por cuánto tiempo.
proof-order = un estado no dice lo que hubo antes. Cada intento se evalúa por lo que pasó y cuándo.
proof-way-not-passed = el camino hallado por posiciones no aprueba cuando se juega.

# El informe de `evidence`: cifras publicadas junto a lo que dan los modelos.
# Títulos de sus columnas; $source y $quantity van como los escribe la publicación.
evidence-section = Sección
evidence-quantity = Magnitud
evidence-published = Publicado
evidence-ours = Nuestro
evidence-difference = Diferencia
evidence-tolerance = Tolerancia
evidence-source = Fuente
evidence-standing = Cómo se sabe

# Qué tan cerca debe quedar lo nuestro, hasta dónde se vio la cifra y qué va donde no hay número.
evidence-at-least = al menos
evidence-at-most = como máximo
evidence-no-end = sin límite
evidence-no-answer = sin respuesta
evidence-checked = verificado
evidence-computed = calculado
evidence-from-memory = de memoria

# Lo que se dice debajo de una fila. $why es una razón en inglés, $stated un número.
evidence-differs = Lo nuestro difiere, como se declara: { $why }.
evidence-beyond = Lo nuestro no está dentro de la tolerancia.
evidence-differs-otherwise = Se declara que lo nuestro da aquí { $stated }, y no es así: { $why }.
evidence-healed = Se declara que lo nuestro difiere aquí, y no es así: { $why }.
evidence-wrong = { $section }: { $quantity }: publicado { $published }, nuestro { $ours }. Esta fila no se cumple.

# Lo que se contó.
evidence-counted = Contadas; las filas con la misma fórmula entre paréntesis cuentan una vez:
evidence-total = { $section }: { $counted } contadas de { $rows } filas; { $differ } difieren por una razón declarada; { $wrong } no se cumplen.
evidence-total-all = Todas las secciones: { $counted } contadas de { $rows } filas; { $differ } difieren por una razón declarada; { $wrong } no se cumplen.

# Las secciones de cifras publicadas.
evidence-section-wire-sizes = Calibres de cable
evidence-section-cords = Cordones flexibles
evidence-section-building-wire = Cableado de la casa
evidence-section-breakers = Interruptores y fusibles
evidence-section-ground-fault = Protección contra fallas a tierra
evidence-section-shock = Choque eléctrico
evidence-section-line-work = Trabajo en líneas
evidence-section-standby-rules = Reglas de respaldo
evidence-section-timing = Tiempos
evidence-section-utility-side = Lado de la compañía
evidence-section-ride-through = Motores y huecos de voltaje
evidence-section-household-loads = Cargas del hogar
evidence-section-carbon-monoxide = Monóxido de carbono
evidence-section-fuel = Combustible
evidence-section-split-phase = Servicio de fase partida
evidence-section-four-node = Alimentador de 4 nodos
evidence-section-drawn-networks = Redes al azar
terminal-help-say = say line-side dead responde a lo que pregunta el simulacro.

# El informe de los aprendices simulados: quién juega y qué resulta.
learners-kind-random = Aprendices que hacen lo que se les ocurre
learners-kind-careful-but-wrong = Aprendices cuidadosos con un error
learners-kind-forgetful = Aprendices olvidadizos
learners-kind-expert = Expertos
learners-progress = Van { $done } de { $all } partidas.
learners-runs = Se jugaron { $runs } partidas.
learners-kind = { $kind }: { $passed } aprobaron, { $failed } no.
# $mistake es un nombre, como en las listas de acciones.
learners-mistake = { $mistake }: { $passed } aprobaron, { $failed } no.

# Si la calificación y el segundo juez coinciden. $rule es un nombre.
learners-agreed = En { $rules } reglas, la calificación y el segundo juez coinciden { $agreed } de { $all } veces. El segundo juez duda { $unsure } veces.
learners-rule = { $rule }: la hallan los dos { $both } veces, ninguno { $neither } veces, en duda { $unsure } veces.
learners-not-judged = { $rule }: hallada en { $runs } partidas. El segundo juez no conoce esta regla.
learners-marked-alone = { $kind }, { $drill }, semilla { $seed }: solo la calificación halla { $rule }.
learners-judged-alone = { $kind }, { $drill }, semilla { $seed }: solo el segundo juez halla { $rule }.
learners-passed-with-a-breach = { $runs } partidas aprueban aunque se rompe una regla crítica.

# Reglas que se rompen a propósito.
learners-broken = Reglas rotas a propósito: se descubren { $caught } de { $all }.
learners-not-caught = { $rule }, { $how }: ninguna partida la delata. Quizás lo hagan más partidas.
learners-how-never-found = nunca hallada
learners-how-always-found = siempre hallada
learners-how-inverted = al revés
learners-again = { $runs } partidas se calificaron otra vez en { $elapsed }. { $same } dieron lo mismo.
learners-guided = La guía llevó a aprobar desde { $passed } de { $all } estados seguros dentro de partidas. Desde otros { $late } ya era demasiado tarde.
learners-not-led = { $drill }, semilla { $seed }, tras { $deeds } acciones: seguir la guía acaba con { $rules }.
learners-endangered = { $drill }: seguir la guía rompe { $rule }.

# The roster of many saved runs: headings, verdicts and counts.
roster-learner = Participante
roster-drill = Simulacro
roster-seed = Semilla
roster-practice = Práctica
roster-coached = con ayuda
roster-guided = guiado
roster-assessed = prueba
roster-unknown = no consta
roster-day = Fecha
roster-seated = Agrupación
roster-alone = a solas
roster-in-turns = por turnos
roster-as-a-team = en equipo
roster-in-pairs = en parejas
roster-handed = { $seated }, relevo a los { $clocks }
roster-verdict = Resultado
roster-findings = No se cumplió
roster-fault = Por qué no se evaluó
roster-seal = Sello
roster-seal-whole = como se guardó
roster-seal-broken = cambiada después de guardarla
roster-seal-missing = sin sello
terminal-seal-broken = Esta ejecución se cambió después de guardarla. Se evalúa tal como está ahora.
terminal-seal-missing = Esta ejecución no tiene sello. Nada dice si se cambió después de guardarla.
roster-fault-hidden = Evalúe esta carpeta con nombres para ver por qué.
roster-passed = aprobó
roster-not-passed = no aprobó
roster-progress = Se leyeron { $done } de { $all } archivos.
roster-marked = { $runs ->
    [one] Se evaluó una ejecución: { $passed } aprobaron.
   *[other] Se evaluaron { $runs } ejecuciones: { $passed } aprobaron.
}
roster-not-marked = { $files ->
    [one] No se pudo evaluar un archivo:
   *[other] No se pudieron evaluar { $files } archivos:
}

# El repaso, página por página. $title es el de la página, $text lo que dijo quien aprende.
terminal-debrief-page = { $number }. { $title }
terminal-debrief-said = Usted dijo: { $text }
terminal-debrief-on = Escriba lo que quiera decir, o nada. Luego oprima Intro. “back” vuelve una página. “again 8:30” muestra la calle como estaba entonces.
terminal-debrief-clock = Dé la hora en minutos y segundos, como “again 8:30”.
terminal-debrief-stood = Lo que al final está distinto que al principio:
terminal-debrief-curves = Los valores más altos, y cuándo llegaron:
terminal-debrief-peak = { $label }: como máximo { $value }, a los { $clock }.
terminal-debrief-peak-limit = { $label }: como máximo { $value }, a los { $clock }. Para comparar, { $what }: { $limit }.
# $skill es lo que se practica, $title y $drill el simulacro que lo enseña.
terminal-debrief-next = { $skill }: “{ $title }” ({ $drill }).

# Dos ramas de un simulacro, una al lado de la otra. $was y $tried son horas, o cómo está algo.
terminal-compare = Como fue, hasta { $was }, al lado de como se intentó, hasta { $tried }:
terminal-compare-row = { $label }. Antes: { $was }. Ahora: { $tried }.
terminal-compare-people = Lo que pasó con la gente y las cosas:
terminal-compare-gone = Encontrado antes, y ya no:
terminal-compare-come = Encontrado ahora, y antes no:
terminal-compare-positions = Lo que al final está distinto:
terminal-compare-volts = Voltios al final:
terminal-compare-none = nada
terminal-compare-nothing = Todavía no hay nada que comparar. Primero vuelva atrás con “rewind” e intente otra manera.
terminal-debrief-what-if = ¿Y si…? Escriba el número de un hallazgo para volver a antes de él e intentar otra manera.
terminal-debrief-no-number = Ningún hallazgo tiene ese número. Escriba un número de la lista, “compare”, o nada para seguir.
terminal-help-compare = compare dice qué sale distinto de antes de volver atrás.

# Lo que alguien ha mostrado sin ayuda. Los días se escriben como 2026-03-01.
mastery-head = { $learner }, el { $today }: { $runs ->
    [one] cuenta una ejecución.
   *[other] cuentan { $runs } ejecuciones.
}
mastery-no-run = Aquí no cuenta ninguna ejecución de { $learner }. Solo cuentan las pruebas hechas a solas en un día conocido, sin volver atrás. Con “--today 2026-03-01” ve por dónde empezar.
mastery-left-out = { $runs ->
    [one] Una ejecución no cuenta. Solo cuentan las pruebas hechas a solas en un día conocido, sin volver atrás.
   *[other] { $runs } ejecuciones no cuentan. Solo cuentan las pruebas hechas a solas en un día conocido, sin volver atrás.
}
mastery-seal = Sello: { $seal }. Se toma como está: { $files }
mastery-never = Todavía no se intentó sin ayuda.
mastery-tries = Mostrado { $passes }, fallado { $fails }, la última vez el { $last }. Recuerdo ahora: { $recall }.
mastery-due = El próximo repaso toca el { $day }.
mastery-due-now = Toca repasar ahora.
mastery-season = Para la temporada, practique el { $day }.
mastery-drill = Un simulacro para esto: { $drill }.
mastery-how = El recuerdo baja a la mitad con cada vida media. Un acierto duplica la vida media, un fallo la parte en dos. Son cifras de uso común, no ajustadas a nadie.
terminal-season-past = La temporada { $season } es antes de { $today }. Dé un día que todavía no haya pasado.
