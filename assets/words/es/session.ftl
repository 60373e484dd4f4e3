# Lo que una sesión dice en la ventana y en la terminal.

clock = { $time }
value = { $value }
value-hourly = { $value }/h

shelf-title = Simulacro de apagón
shelf-intro = Practique cómo pasar una casa de la red a un generador, y de vuelta. Aquí un error no lastima a nadie de verdad.
shelf-cautions-title = Antes de empezar
shelf-cautions-accept = Ya leí esto
shelf-facts = { $way }. Hasta { $minutes } minutos en el reloj del simulacro. Un tablero con { $circuits } circuitos.
shelf-minutes = { $minutes } minutos
shelf-most-minutes = hasta { $minutes } minutos
shelf-lessons = Lecciones
track-home = En casa
track-class = Para una clase
track-apprentice = Para aprendices
level-1 = Una primera mirada
level-2 = Con ayuda
level-3 = Práctica
level-4 = Para mostrar lo que sabe hacer
level-5 = Varias cosas a la vez
way-manual-switch = Un interruptor de transferencia con palancas
way-interlock = Un interruptor del generador en el tablero
way-ready-panel = Un tablero preparado para un generador
way-cords = Solo con cables
way-standby = Un interruptor de transferencia que trabaja solo
way-subpanel = Un interruptor de transferencia para un tablero
way-line = La línea y su cuadrilla
way-other = El aire, el combustible y las fallas
directions-out = De la red a su propia fuente
directions-back = De vuelta a la red
directions-both = De la red a su propia fuente y de vuelta
directions-none = Sin cambiar de fuente
shelf-open = Empezar este simulacro

session-no-drill = No existe ningún simulacro “{ $name }”.
session-no-language = Aquí no existe el idioma “{ $name }”.
session-nothing-open = No hay ningún simulacro en marcha. Primero abra uno.
session-broken-site = El archivo de esta casa tiene una falla: { $detail }.

# Cuánto duró la espera de que pasara algo, y qué la terminó.
session-waited-happened = Usted esperó { $time }. Entonces pasó esto: { $what }
session-waited-asked = Usted esperó { $time }. Ahora hay una pregunta.
session-waited-told = Usted esperó { $time }. Ahora hay algo que leer.
session-waited-over = Usted esperó { $time }. El simulacro terminó.
session-waited-nothing = Usted esperó { $time }. No pasó nada que se pudiera ver u oír.

# La corredera entre dos interruptores y la barra de un par: van con las palancas.
slide-holds = La corredera se mueve con él. Ahora impide encender esto: { $other }.
slide-frees = La corredera queda libre y no sujeta ninguno de los dos.
bar-holds = La barra se mueve con él. Ahora impide encender esto: { $other }.
bar-frees = La barra queda libre y no sujeta ninguno de los dos.
slide-loose = La corredera se mueve, pero no sujeta ninguno de los dos. No confíe en ella.
slide-stays-main = La corredera no se mueve con el interruptor principal encendido. Apague primero el principal.
slide-stays-generator = La corredera no se mueve con el interruptor del generador encendido. Apague primero ese.
slide-by-itself = La corredera está libre. Se mueve con la palanca que usted encienda.

place-panel = Tablero
place-panel-about = El interruptor principal, el del generador y los interruptores de circuito.
place-transfer = Interruptor de transferencia
place-transfer-about = Cada palanca lleva una carga a la red o al generador, nunca a los dos.
place-subpanel = Subtablero
place-subpanel-about = Los interruptores detrás del interruptor de transferencia.
place-solar = Solar y batería
place-solar-about = El seccionador solar y el interruptor de la batería.
place-generator = Generador
place-generator-about = Muévalo, arránquelo, deténgalo, llene el tanque.
place-cords = Cables
place-cords-about = Extienda los cables, enchúfelos, guárdelos.
place-house = Casa
place-house-about = Apagadores, enchufes, la ventana y las personas que están adentro.
place-line = Calle
place-line-about = Mire la línea, la cuadrilla y las luces de los vecinos.
place-phone = Teléfono
place-phone-about = Llame a la compañía eléctrica, a un electricista o al número de emergencias.

close-panel-interlock = Entre el interruptor principal y el del generador hay una corredera de metal. Solo deja que uno de los dos esté encendido.
close-panel-no-interlock = Alguien agregó un interruptor del generador. No hay corredera. Nada impide que los dos interruptores estén encendidos.
close-panel-misfitted = Hay una corredera de metal, pero no alcanza. Los dos interruptores pueden estar encendidos a la vez.
close-panel-defeated = A la corredera le falta la barra. Nada impide que los dos interruptores estén encendidos.
close-panel-plain = El interruptor principal y los de cada circuito. Ninguno recibe un generador.
close-panel-pair = El interruptor principal y los de cada circuito. El generador entra por la parte de abajo, con un par de interruptores. Una barra le deja a esa parte la red o el generador, nunca los dos.
close-panel-pair-loose = El interruptor principal y los de cada circuito. El generador entra por la parte de abajo, con un par de interruptores. La barra entre los dos no sujeta.
close-panel-transfer = El interruptor principal y los de cada circuito. Ninguno recibe un generador. Un interruptor de transferencia da a las cargas la red o el generador, nunca los dos.
close-transfer = Un interruptor de transferencia. Una palanca tiene tres posiciones: compañía eléctrica, apagado, generador.
close-subpanel = Un tablero pequeño detrás del interruptor de transferencia, para lo que importa en un apagón.
close-pair = La parte baja del tablero tiene los circuitos elegidos. Dos interruptores pueden alimentarla: uno trae la red, otro el generador. Una barra deja encender solo uno.
close-pair-loose = La parte baja del tablero tiene los circuitos elegidos. Dos interruptores pueden alimentarla. La barra entre ellos no sujeta.
close-solar = El inversor solar y la batería. Cada uno tiene su propio interruptor. Lo solar se suma a todo voltaje estable que encuentra, también al de un generador.
close-generator = Un generador portátil. Manténgalo a por lo menos 6 metros (20 pies) de puertas, ventanas y respiraderos.
close-generator-standby = Un generador fijo. Arranca solo. Asegúrelo antes de abrirlo.
close-cords = Los cables de esta casa, y dónde está cada extremo.
close-house = Los cuartos de la casa. Unos aparatos tienen enchufe, otros están conectados con cables fijos.
close-line = La línea a lo largo de la calle. Mire, y no se acerque.
close-phone = ¿Con quién quiere hablar?
close-control = { $name }: { $position }
close-choice-plug = enchufado – { $position }
close-act-plug = enchufar – { $position }
close-choice-reset = presionar el rearme: { $position }

deed-look = mirar: { $place }
deed-test = medir: { $point }
deed-call = llamar: { $who }
deed-tell = avisar: { $who }
deed-refuel = llenar el tanque
turn-sooner = el próximo suceso pasa ya
turn-utility-fails = falla la red
turn-utility-returns = vuelve la red
turn-neutral-lost = se suelta el neutro de la acometida
turn-leg-lost = se suelta un cable vivo de la acometida
turn-drop-mended = se repara la acometida
turn-tank-dry = se vacía el tanque
close-test = Esto es una prueba: solo se ve lo que usted miró o midió.
known-live = Medido en el minuto { $time }: con voltaje, { $volts }
known-dead = Medido en el minuto { $time }: sin voltaje
tester-live = con voltaje
tester-dead = sin voltaje
tester-at = en el minuto { $time }
known-seen = Visto en el minuto { $time }

gauge-generator = Medidor: { $volts }, { $hertz }, { $amps }
gauge-piped = Combustible: gas de tubería
gauge-fuel-lasts = El combustible dura, con esta carga: { $time }
cord-printed = { $cord }: { $letters }, calibre { $gauge } AWG, { $length }, { $ground ->
    [one] con conductor de tierra
   *[other] sin conductor de tierra
}. { $meanings }.
cord-letter-h = H: para aparatos que calientan
cord-letter-s = S: cable de servicio
cord-letter-j = J: menor, 300 V
cord-letter-v = V: ligero, como el de una aspiradora
cord-letter-p = P: conductores lado a lado, como el de una lámpara
cord-letter-rd = RD: para estufa o secadora
cord-letter-e = E: elastómero
cord-letter-t = T: plástico
cord-letter-o = O: su cubierta resiste el aceite
cord-letter-oo = OO: cubierta y aislamiento resisten el aceite
cord-letter-w = W: para el aire libre
cord-seen-frayed = { $cord }: deshilachado donde lo han doblado
cord-seen-crushed = { $cord }: aplastado en un lugar, como por una puerta
plug-seen-loose = { $cord }: el enchufe queda flojo
plug-seen-black = { $cord }: las patas del enchufe están negras
cord-feels-warm = { $cord }: tibio al tacto
cord-feels-hot = { $cord }: demasiado caliente para sostenerlo
cord-feels-soft = { $cord }: blando; deséchelo
cord-feels-burnt = { $cord }: quemado; no lo toque
plug-feels-warm = { $cord }: el enchufe está tibio
plug-feels-hot = { $cord }: el enchufe está demasiado caliente para sostenerlo
plug-feels-scorched = { $cord }: el enchufe está quemado
generator-load = Carga: { $watts } de { $rated }
generator-place = Lugar: { $place }. Abertura más cercana: a { $feet }.
generator-place-indoors = Lugar: { $place }, bajo techo.
generator-sentence = Generador: { $state }. { $place } { $load }.

goal-had = { $thing }: ya recibió corriente
goal-waits = { $thing }: todavía no
goal-left = quedan { $time }
phasor-both = { $point }: fase 1 { $one }, fase 2 { $two }, separadas { $apart }, { $across } entre ambas
phasor-one = { $point }: solo una fase con voltaje, { $volts }
phasor-drifting = { $point }: aquí se juntan dos fuentes, y cada una va a su propio ritmo
# The amps of a leg. $leg is 1 or 2, $turn how they stand to the volts of that leg.
phasor-amps = la fase { $leg } lleva { $amps }, { $turn }
phasor-uneven = La fase { $leg } lleva más, por eso tiene menos voltios. Con cargas parejas las dos se acercan.
phasor-behind = { $angle } detrás de su voltaje
phasor-ahead = { $angle } delante de su voltaje
phasor-in-step = al paso de su voltaje

street-wire = { $name }: { $fed }
street-wire-volts = { $name }: { $fed }, { $volts }
street-wire-volts-amps = { $name }: { $fed }, { $volts }, { $amps }
street-amps-of-sides = { $one } y { $two }
street-thing = { $name }: { $state }
street-neighbor-lit = { $name }: con luces encendidas
street-neighbor-dark = { $name }: a oscuras
street-air = Monóxido de carbono en la casa: { $ppm }

street-title-test = Prueba: { $title }
fed-dead = sin voltaje
fed-utility = con voltaje de la red
fed-generator = con voltaje del generador
fed-solar = con voltaje de los paneles solares
fed-battery = con voltaje de la batería
fed-both = con voltaje de la red y del generador
fed-grounded = con puesta a tierra
fed-unknown = sin medir todavía
fed-fallen = caída: cuenta como con voltaje
fed-live = con voltaje, según el medidor

state-well = bien
state-unwell = con malestar
state-harmed = con heridas graves
state-crew-unseen = aún sin ver
state-crew-away = no está aquí
state-crew-testing = mide la línea
state-crew-hands-on = trabaja con la línea en la mano
state-crew-clear = lejos de la línea
state-no-power = sin electricidad
state-too-few = voltaje muy bajo para funcionar, { $volts }
state-ready = con electricidad, en espera
state-starting = arrancando
state-running = funcionando, { $watts }
state-strained = voltaje muy bajo, { $volts }
state-too-high = voltaje muy alto, { $volts }
state-stalled = zumba y no gira, { $volts }
state-protected = demasiado caliente, se apagó por sí solo
state-broken = con daños
state-engine-stopped = motor detenido
state-engine-warming = motor calentándose
state-engine-idle = motor en marcha, sin carga
state-engine-loaded = motor en marcha, con carga
state-engine-broken = motor dañado

# Leaves what else followed from the same thing. $count is a number of 1 or more.
consequence-others = { $count ->
    [one] Saltar otro hallazgo
   *[other] Saltar otros { $count } hallazgos
}
debrief-passed = Aprobado
debrief-not-passed = Todavía no aprobado
debrief-harm-hurt = Alguien resultó herido.
debrief-harm-killed = Puede que alguien haya muerto.
debrief-harm-burned = Hubo un incendio.
debrief-end-utility = Nadie corrió peligro, y la casa está de nuevo en la red.
debrief-end-line = Nadie corrió peligro, y los clientes tienen electricidad de la red.
debrief-end-own = Nadie corrió peligro, y la casa funciona con su propia electricidad.
debrief-end-asked = Nadie corrió peligro, y todo está como pide este simulacro.
debrief-summary-passed = { $findings ->
    [0] { $end }
    [one] Se cumplieron todos los puntos críticos. Una cosa puede salir mejor.
   *[other] Se cumplieron todos los puntos críticos. { $findings } cosas pueden salir mejor.
}
debrief-summary-not-passed = { $findings ->
    [one] Una cosa impidió aprobar. Se explica.
   *[other] { $findings } cosas impidieron aprobar. Cada una se explica.
}
track-line = Línea en el poste de la cuadrilla
track-house = Tablero
track-inlet = Entrada de corriente
series-load = Carga del generador
series-load-limit = capacidad del generador
series-line = Línea en el poste de la cuadrilla
series-air = Monóxido de carbono en la casa
series-air-limit = punto de alarma

# Equipo de la casa, de lejos y de cerca.
equipment-main = interruptor principal: { $position }
equipment-gives = da { $watts }
equipment-waits = no da nada, espera una red
equipment-battery-ready = lista, carga: { $charge }
equipment-battery-carries = alimenta su tablero, carga: { $charge }
equipment-battery-shut = apagada, carga: { $charge }
side-utility = en la red
side-off = apagado, en ningún lado
side-other = en la otra fuente
side-both = en los dos a la vez
side-counts = { $utility } en la red, { $off } apagadas, { $other } en el generador
face-tag = Interruptor principal: con candado y etiqueta. No operar.
face-utility-side = Lado de la red
face-generator-side = Lado del generador
face-battery-side = Lado de la batería
face-load-side = Lado de la carga
light-yes = sí
light-no = no
light-utility = electricidad de la red
light-generator = electricidad del generador
light-on-utility = carga en la red
light-on-generator = carga en el generador
light-battery = electricidad de la batería
light-on-battery = carga en la batería
light-carries = alimenta sola su tablero
light-shut = se apagó sola
light-grid = encuentra voltaje en los cables de la casa
light-gives = da electricidad
light-volts = produce su propio voltaje
light-runs = el motor funciona
face-controller-dark = El controlador está sin luz: su batería de arranque está desconectada.
gauge-time-left = Tiempo que falta
light-oil = poco aceite
light-overload = sobrecarga
gauge-volts = Voltaje
gauge-hertz = Frecuencia
gauge-amps = Corriente, lado más cargado
gauge-of = { $value } de { $most }
gauge-load = Carga
gauge-tank = Combustible
gauge-gives = Da ahora
gauge-charge = Carga
gauge-follows = Funciona junto con
follows-nothing = ninguna fuente
follows-utility = la red
follows-generator = el generador
follows-battery = la batería
gauge-most = Puede dar
socket-empty = No hay nada enchufado.
socket-plugged = Enchufado aquí: { $names }
session-no-rewind = En una prueba no se puede volver atrás. Termínela primero.
session-no-hint = En una prueba no hay indicaciones. Termínela primero y después practique con ayuda.
session-no-turn = En una prueba, o después del final, no se hace pasar nada.
session-no-mistake = No hay ningún error al que volver.
session-rewound = Está de nuevo en { $clock }. Pruebe otra manera.
again-place = Momento { $place } de { $of }
debrief-rewound = { $times ->
    [one] Volvió atrás una vez.
   *[other] Volvió atrás { $times } veces.
 }
debrief-helped = { $times ->
    [one] Se le mostró el siguiente paso una vez.
   *[other] Se le mostró el siguiente paso { $times } veces.
 }
place-answers = Respuestas
place-answers-about = Diga lo que pregunta el simulacro.
close-answers = ¿Qué dice usted? Puede cambiar de idea. Cuenta la última respuesta.
known-said = Lo dijo en { $time }.
ask-live = ¿Tiene voltaje o no: { $subject }?
ask-fed-by = ¿Qué lo alimenta: { $subject }?
ask-slide = ¿Se puede confiar en esto: { $subject }?
ask-hangs-on = ¿Qué depende de esto: { $subject }?
ask-bonds = ¿Cuántos hay: { $subject }?
answer-none = ninguno
answer-one = uno
answer-two = dos
name-bonds = puntos que unen el neutro del generador a tierra
ask-breaker-fits = ¿Es bastante pequeño para su cable: { $subject }?
answer-guards = bastante pequeño
answer-too-large = demasiado grande
answer-live = con voltaje
answer-dead = sin voltaje
answer-fit = sí
answer-unfit = no
answer-utility = la red
answer-generator = el generador
answer-battery = la batería
answer-several = más de una fuente
answer-nothing = nada

# El repaso, página por página: primero las palabras de quien aprende, al final el resultado.
debrief-happened-title = Qué pasó
debrief-happened-ask = ¿Qué pasó, en sus palabras? La lista muestra lo que se hizo, y nada más.
debrief-felt-title = Cómo se sintió
debrief-felt-ask = ¿Cómo se sintió? ¿Dónde tenías seguridad y dónde no? Nada de lo que digas aquí se califica.
debrief-why-title = Por qué
debrief-why-ask = Aquí está lo que se encontró, cada cosa en su momento, y lo que hicieron las máquinas.
debrief-next-title = Qué sigue
debrief-next-ask = Practique esto ahora.
debrief-next-new = El simulacro que acaba de hacer no lo pide. Es lo que sigue.
debrief-verdict-title = El resultado
debrief-verdict-ask = Esto es lo que resulta de esta práctica.

# Destrezas: lo que se puede practicar después.
skill-place-engine = Ubicar el generador y no dejar entrar el gas
skill-isolate = Separar la casa de la línea antes de alimentarla
skill-show-source = Mostrar qué alimenta cada parte
skill-choose-loads = Elegir cargas que la fuente aguante, una tras otra
skill-choose-cords = Elegir, tender y revisar los cables
skill-run-engine = Arrancar, cargar, reabastecer, enfriar y parar el motor
skill-go-back = Volver a la red sin que se crucen las fuentes
skill-recognize = Reconocer una instalación insegura, rechazarla y dejarla segura
skill-grounding = Combinar bien neutro, tierra y protección contra fallas a tierra
skill-emergency = Actuar en una emergencia
skill-explain-harm = Explicar cómo llega el daño a otros
skill-lock-out = Bloquear y probar antes de dar servicio a un generador
skill-dead-line = Dejar una línea muerta, rotulada, probada y puesta a tierra
skill-release = Quitar las tierras y devolver la línea
skill-second-source = Encontrar otra fuente y separarla
skill-hand-over = Explicar a otros y entregar

# Curvas.
series-battery = Carga de la batería
series-solar = Producción solar
series-leg-one = Tablero, primera fase
series-leg-two = Tablero, segunda fase
series-frequency = Frecuencia del generador
series-air-garage = Monóxido de carbono en el garaje
series-air-next-door = Monóxido de carbono en la casa de al lado
series-heat-limit = lo más que aguanta su aislamiento

# Mientras un autor escribe

session-renewed = Los archivos de escenarios han cambiado. Se han leído de nuevo.
session-renewed-drill = Los archivos de este simulacro han cambiado. Empieza de nuevo.
session-renewed-gone = El simulacro { $name } ya no está. Elija otro.
session-faults = { $count ->
    [one] Los archivos de escenarios tienen una falta. Hasta que se corrija los ve como estaban cuando eran correctos.
   *[other] Los archivos de escenarios tienen { $count } faltas. Hasta que se corrijan los ve como estaban cuando eran correctos.
}

# Lo que pasó con un aparato.
compare-unharmed = sin daño
compare-lost = se perdió lo que guarda
mastery-switch = { $way }. { $direction }
