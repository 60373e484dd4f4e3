# La ventana.

window-title = Simulacro de apagón
window-clock = Reloj del simulacro: minutos y segundos desde el comienzo
window-clock-unit = min:s
window-goal = Meta
window-practice-next = Practicar
window-progress = Hasta ahora
window-hint = Siguiente paso
window-wait-short = Esperar 10 s
window-wait-minute = Esperar 1 min
window-wait-event = Hasta que pase algo
window-finish = Terminar
window-keys = Teclado
window-words = En palabras
window-back = Volver
window-tester = Probador
window-tester-rests = Ponga las puntas en un punto de abajo.
window-deeds = Qué se puede hacer aquí
window-log = Lo que ha pasado
window-held = El tiempo está detenido
window-next = Siguiente
window-again = Desde el principio
window-why = Por qué importa
window-now = Si fuera real, haga esto ahora
window-instead = La próxima vez
window-source = Fuente
window-understood = Entendido
window-asked = Antes, una pregunta
window-into-cord = O en otro cable:
window-asked-number-first = Primero escriba su número. Luego diga qué tan seguro está.
window-asked-choice-first = Primero elija una respuesta. Luego diga qué tan seguro está.
window-asked-sure = ¿Qué tan seguro está? Al elegirlo se envía su respuesta.
window-asked-room = Con una clase: contar manos levantadas
window-asked-show = Mostrar la respuesta de la sala
window-asked-skip = Seguir sin responder
window-asked-on = Seguir
window-asked-right = esto es correcto
window-go-back = Volver a antes de esto
window-from-here = Probar otra vez desde aquí
window-see-moment = Mostrarlo en la línea de tiempo
window-watch = Ver otra vez la práctica
window-watch-moment = Ver este momento
window-watch-later = Momento siguiente
window-watch-earlier = Momento anterior
window-watch-play = Reproducir
window-watch-pause = Pausar
window-watch-end = Volver al repaso
window-watch-found = Encontrado en este momento
window-span-nearer = Acercar
window-span-farther = Alejar
window-span-earlier = Antes
window-span-later = Después
window-span-all = Todo el simulacro
window-retry = Intentar de nuevo
window-leave = Volver a los simulacros
window-leave-drill = Salir
window-met = cumplido
window-not-met = no cumplido
window-critical = Sin esto no se aprueba
window-timeline = Línea de tiempo
window-timeline-pin = hallado aquí; el número con × dice cuántos
window-findings = Hallazgos
window-finding = Hallazgo
window-finding-advice = Consejo: esto no impidió aprobar.
window-finding-failed-already = Consejo: la práctica ya no podía aprobar, y esto no cuenta además.
window-no-findings = Nada que explicar: se cumplieron todas las reglas.
window-open-guided = Paso a paso
window-guided-means = Se muestra el siguiente paso seguro con su razón, desde donde esté.
window-open-assessed = Abrir como prueba
window-assessed-means = Sin ayuda, y solo lo que usted miró o midió, hasta el final.
window-slide = corredera de bloqueo
window-slide-up = La corredera está arriba, sobre el interruptor principal. No lo deja encender.
window-slide-down = La corredera está abajo, sobre el interruptor del generador. No lo deja encender mientras el principal está encendido.
window-slide-free = La corredera está en medio. No bloquea ninguno de los dos interruptores.

# Qué alimenta un conductor, en la leyenda.
window-fed-dead = sin voltaje
window-fed-utility = con voltaje de la red
window-fed-generator = con voltaje de un generador
window-fed-at-rest = generador, sin corriente
window-fed-solar = con voltaje de paneles solares
window-fed-battery = con voltaje de una batería
window-fed-both = con voltaje de dos fuentes
window-fed-grounded = con puesta a tierra de la cuadrilla
window-fed-unknown = sin medir todavía

# Tipos de líneas del registro y de respuestas.
window-log-did = Hecho
window-log-refused = No se pudo
window-log-happened = Sucedió
window-log-learnt = Se supo
window-log-mistake = Peligro
window-log-harm = Daño
window-log-unknown = No se entiende

# La escena en palabras.
window-storm = Llueve fuerte y sopla el viento.
window-words-people = Personas y vecinos
window-words-house = Generador y casa
window-words-wires = Cables

# Teclas.
window-key-keys = Mostrar u ocultar estas teclas
window-key-hint = Mostrar el siguiente paso seguro y por qué
window-key-words = La escena en palabras
window-key-language = Otro idioma
window-key-motion = Con movimiento o sin él
window-key-back = Volver
window-key-close = Cerrar la ventana
window-key-places = Abrir un lugar
window-key-walk = Recorrer lo que se puede oprimir, también con las flechas
window-key-press = Oprimir, también con la barra espaciadora

# Se dice en la terminal cuando no puede abrirse una ventana.
window-no-display = Aquí no hay pantalla para una ventana. Ábrala desde un escritorio o instale un servidor X.
window-no-adapter = Ningún adaptador gráfico responde aquí, ni siquiera por software. En Debian lo trae el paquete mesa-vulkan-drivers.
window-stopped = La ventana se detuvo por una falla de su motor gráfico.
window-no-screen = No existe la vista “{ $name }”. Use una de estas: { $known }.
window-no-picture = La vista “{ $name }” no se dibujó: no llegó ninguna imagen.
window-another = Una variación

# El repaso.
window-onward = Seguir
window-page-back = Página anterior
window-said = Escriba aquí, si quiere. No se califica.
window-stood = Al principio › al final

# Palabras del oficio, en el orden del glosario.
window-terms = Palabras del oficio
window-terms-short = Términos
window-terms-here = En esta pantalla
window-terms-others = Todas las demás
window-key-terms = Qué significan las palabras del oficio

# Para quien enseña.
window-room = Para quien enseña
window-room-away = F11 guarda esta hoja y la vuelve a mostrar.
window-room-wall = En la pared
window-room-second = Dos idiomas
window-room-cover = Tapar las lecturas
window-room-hold = Detener el simulacro
window-room-size = Tamaño del texto
window-room-turns = Hacer que pase algo
window-room-no-turns = Aquí no se puede cambiar nada. En una prueba, nunca.
window-room-light = Foco: lo demás se atenúa
window-room-light-equipment = Equipos
window-room-light-people = Personas
window-room-light-street = Calle
window-room-light-house = Aparatos de la casa
window-room-lesson = Lección
window-room-to-lesson = Volver a la lección
window-room-held = Alto: miren y hablen
window-room-look-here = Nada se mueve hasta que se pulse «Seguir».
window-key-room = Para quien enseña
window-key-hold = Detener el simulacro o seguir
window-key-size = Texto más grande o más pequeño
window-key-nearer = Mirar la calle de más cerca
window-key-farther = Mirar de más lejos
window-key-move = Mover lo que se ve: con una flecha
window-detail-short = Detalle
window-detail-live = Detalle: qué está energizado. Presione para ver los números.
window-detail-numbers = Detalle: los números. Presione para ver también los fasores.
window-detail-phasors = Detalle: también los fasores, en el tablero y el generador. Presione para ver menos.
window-sight-all = Todo
window-key-whole = Ver toda la calle
window-key-before = Volver a lo que se veía antes
window-keep = Guardar esta pantalla como imagen
window-kept = Está guardado en { $file }.
window-not-kept = No se escribió en { $file }. { $why }

# Una lección que se da.
window-teach = Dar esta lección
window-lesson-before = Antes de la lección
window-lesson-prepare = Prepare esto
window-lesson-objectives = Después podrán hacer esto
window-lesson-prebrief = Diga esto primero
window-lesson-ask = Pregunte al grupo
window-lesson-next = Página siguiente
window-lesson-back = Página anterior
window-lesson-drill = Abrir el simulacro
window-lesson-leave = Terminar la lección

# Una cosa a la vez, donde hay poco lugar.
window-face-here = Ahora
window-face-scene = Calle
window-face-bars = Tiempo y lugares
window-face-story = Lo que pasó

# Quién está en el simulacro, y qué se guarda.
window-room-seats = Quién está en el simulacro
window-room-names = Nombres, con comas. Aquí quedan ocultos.
window-room-sign = Ponerlo en el registro
window-signed = El registro ya dice quién está aquí.
window-seated-alone = a solas
window-seated-in-turns = por turnos
window-seated-as-a-team = en equipo
window-seated-in-pairs = en parejas
window-record = Guardar este simulacro

# Dos ramas de un simulacro.
window-phasors-volts = flecha gruesa: voltios de la fase 1 o 2
window-phasors-amps = línea fina con un punto: amperios
window-phasors-see = Las dos flechas gruesas son las dos fases. Si apuntan a lados opuestos, suman 240 voltios. Vea si las dos llegan al anillo: son 120 voltios cada una.
window-breaker = Interruptor
window-branches-picture = «Antes» es el intento que usted dejó. «Ahora» es el que sigue. El dibujo muestra este.
window-branches-still = Nada se mueve mientras compara.
window-branches-on = Seguir con el simulacro
window-branches = Comparar los dos intentos
window-branches-gone = Hallado antes, y ya no
window-branches-come = Hallado ahora, y antes no
window-branches-people = Personas y cosas
window-branches-positions = Posiciones
window-branches-volts = Voltios
window-branches-before = Antes, hasta
window-branches-now = Ahora, hasta

window-what-next = ¿Qué sigue?
window-log-empty = Todavía nada. Mire primero el dibujo. Luego pulse algo en él, o abra un lugar abajo. ¿No está seguro? Pulse «¿Qué sigue?».
window-settings-left = La ventana se abre como de costumbre. El archivo queda como está hasta que usted lo corrija o lo quite.
window-gauge-warmth = La barra muestra cuánto se ha calentado por dentro.
window-gauge-water = La barra muestra hasta dónde llega el agua en el pozo.
window-gauge-missed = La barra se llena mientras hace falta.
window-gauge-load = El indicador muestra la carga. Su extremo grueso es demasiado.
