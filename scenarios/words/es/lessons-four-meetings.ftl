# El curso para aprendices: cuatro reuniones de dos horas.

lesson-four-meetings-title = Cuatro reuniones para aprendices
lesson-four-meetings-about = Estados y separación, hallazgos inseguros, servicio y segundas fuentes, la línea. Lo cierra una prueba en la línea. Después viene el trabajo, con supervisión.
sitting-states = Primera reunión: qué alimenta qué
sitting-unsafe-finds = Segunda reunión: las fallas
sitting-service = Tercera reunión: servicio y segundas fuentes
sitting-the-line = Cuarta reunión: la línea

step-recall = Primero de memoria, por escrito, sin mirar. Luego diga las líneas nuevas de “antes de empezar”.
step-read-the-street = Señale cada cable y que una persona diga qué lo alimenta. Después lo dice la pantalla.
step-full-example = Usted lo hace una vez entero y da la razón de cada paso. Luego lo hacen ellos.
step-half-example = Usted hace la primera mitad. Ellos terminan y dan las razones.
step-alone-with-help = Ellos lo hacen todo, con ayuda. Pida una razón cuando alguien va rápido.
step-prove-first = Nadie mueve un interruptor antes de probar su circuito con una medición.
step-find-it = No diga qué está mal. Que miren, midan, lo digan y decidan.
step-one-leg = Que sumen los dos cables activos en papel antes de que el simulacro las muestre.
step-live-lugs = Muestre lo que sigue con voltaje con el principal apagado. Nadie en la sala abre un tablero real.
step-lock-it = Cada uno dice en voz alta: apagado, con candado, medido. Entonces empieza el trabajo.
step-count-sources = Que escriban todas las fuentes de la casa antes de tocar una.
step-three-testers = Cada medidor se revisa en algo con voltaje, antes y después.
step-see-the-gap = Una palanca no es prueba. Encuentren el espacio de aire en cada corte.
step-clamp-order = Que uno lea el orden en voz alta mientras otro lo hace.
step-crew-work = Dos trabajan como cuadrilla. Uno actúa; el otro mira y puede pararlo en todo momento.
step-final = Cada uno a solas, sin ayuda. Dé a cada máquina otra semilla.
step-log-book = Escriba la fecha y lo que se mostró en el libro de registro. Planee la revisión a los tres y seis meses.

question-what-feeds-it = ¿Qué alimenta este cable ahora mismo, y cómo lo sabe?
question-what-is-new = ¿Qué está construido de otra manera aquí? ¿Qué es igual?
question-trust-labels = ¿Confiaría en este directorio? ¿Qué haría falta?
question-what-guards-the-wire = ¿Qué protege este cable? ¿El interruptor, o la suerte?
question-where-does-it-go = ¿Adónde va la corriente que no regresa?
question-why-no-trip = Hay una falla. ¿Por qué no se abre nada?
question-recall-finds = De memoria: ¿cuáles eran los hallazgos inseguros y qué delató a cada uno?
question-still-live = El principal está apagado. ¿Qué sigue con voltaje aquí adentro?
question-who-opens-it = ¿Puede usted abrir esto? Si no, ¿quién puede dejarlo sin voltaje?
question-what-else-feeds = ¿Qué más puede alimentar esta casa? ¿Cómo lo averiguaría?
question-recall-lock = De memoria: ¿qué pasos hacen segura una máquina antes de abrirla?
question-which-clamp-first = ¿Qué pinza va primero? ¿Cuál sale al final? ¿Por qué?
question-who-is-clear = ¿Quién tiene que decir “libre” antes de cerrar?
moment-what-do-you-see = ¿Qué le dicen las lámparas? ¿Qué hace primero?
moment-will-it-start = La compañía falla mientras usted trabaja. ¿Arrancará el motor? ¿Qué lo detiene?
moment-who-made-it-live = La línea no tenía voltaje hace un minuto. ¿Quién se lo puso, y qué hace usted ahora?

objective-bond-and-fault = Combinar neutro, tierra y protección contra fallas a tierra, y decir por qué un dispositivo se dispara o no.
objective-lost-neutral = Leer las señales de un neutro perdido y actuar.
objective-lock-and-test = Apagar, poner candado y medir antes de un servicio.
objective-second-source = Encontrar una segunda fuente y separarla también.
objective-dead-line = Dejar una línea abierta a la vista, marcada, medida y puesta a tierra.
objective-give-it-back = Resolver la fuente de un cliente, quitar las puestas a tierra en orden y devolver la línea.
