# Lo que comparten las lecciones: cómo empezar, cómo mirar atrás, qué se lleva a casa.

prepare-play-all = Juegue usted todos los simulacros del plan, como quien aprende. Apruebe la prueba antes de darla.
prepare-first-light-at-home = Pida que hagan el simulacro “Primera luz” antes de venir. Les toma cinco minutos.
prepare-room = Pruebe pantalla, sonido y asientos. Deje sitio para salir. Quienes comparten una máquina se turnan.
prepare-local-facts = Llene los datos locales: compañía eléctrica, oficina de permisos, teléfonos, época de tormentas.
prepare-job-rules = Traiga las reglas de candados y de línea de su empresa. Van antes que todo lo de aquí.
prepare-paper = Tenga papel y lápiz. Sepa dónde está su tablero.

prebrief-roles = Yo guío. Ustedes hacen los simulacros con sus manos. Una persona maneja; las otras miran y dicen por qué.
prebrief-alone = Usted guía y usted aprende. Nadie ve lo que hace. Tome una noche a la vez.
prebrief-plan = Diga cuánto dura, cuándo es la pausa y en qué orden se hace todo.
prebrief-goals = Lea en voz alta lo que podrán hacer después.
prebrief-marked = Solo una prueba da un resultado. Pregunta qué pasó: cualquier orden seguro vale. La práctica no cuenta.
prebrief-record = Este programa no guarda nombres ni envía nada. Dígalo, y diga si usted anota algo.
prebrief-room = Lo que pasa en esta sala se queda aquí. Nadie se ríe de un error. Ningún resultado va a la pantalla grande.
prebrief-real = Los voltios, los amperios y el gas se calculan. La casa y las personas son inventadas. Actúe como si fuera real.
prebrief-supervised = Aprobar aquí no es aprobar en el trabajo. Allí trabaja con supervisión hasta que su empresa diga otra cosa.
prebrief-step-back = Algunos simulacros hablan de personas muy heridas. Cualquiera puede parar o salir cuando quiera.
prebrief-questions = Pregunte: ¿qué más necesitan saber antes de empezar?

prompt-what-you-saw = Cuente lo que vio, paso a paso. Nadie dice todavía si estuvo bien.
prompt-what-you-did = ¿Qué hizo usted y qué resultó de eso?
prompt-how-it-felt = ¿Cómo fue trabajar a oscuras, con gente esperando?
prompt-when-unsure = ¿Cuándo dudó? ¿Qué le ayudó?
prompt-why-so = Vuelva a lo primero que salió mal. ¿Por qué fue así?
prompt-other-safe-order = ¿Qué otro orden habría sido igual de seguro? ¿Qué lo hace seguro?
prompt-what-if-night = ¿Qué sería más difícil a las dos de la mañana, con lluvia?
prompt-which-reading = ¿Qué lectura se lo dijo? ¿Cuál no tomó?
prompt-next-time = ¿Qué hará de otra manera la próxima vez?
prompt-one-thing-at-home = ¿Qué cosa cambiará en casa, y para cuándo?
prompt-on-the-job = ¿Dónde encontrará esto en el trabajo? ¿A quién pregunta primero?

handout-never-two-plugs = Nunca use un cable con dos enchufes. Pone voltaje en la calle apagada.
handout-engine-outside = El motor va afuera, a 6 metros (20 pies) o más de toda puerta y ventana. El escape apunta lejos de la casa.
handout-order-out = Para pasar al generador: apague primero el interruptor principal y luego encienda el del generador. Después, las cargas de una en una.
handout-order-back = Para volver a la red: apague las cargas y el interruptor del generador. Solo entonces encienda el principal. Deje enfriar el motor.
handout-cords-flat = Extienda los cables del todo, nunca enrollados. Un cable tibio lleva demasiada corriente.
handout-line-down = Una línea caída tiene voltaje. Aléjese, mantenga lejos a los demás y llame.
handout-test-before-touch = Mida antes de tocar: primero una parte con voltaje, luego la que no debe tenerlo, y otra vez la primera.
handout-lock-yourself = Ponga usted el candado y guarde la llave. Un equipo automático puede arrancar mientras usted tiene las manos adentro.
handout-line-is-live = Una línea tiene voltaje hasta que está abierta a la vista, marcada, medida y puesta a tierra.
handout-sim-is-not-field = Esto se demostró en un simulador. No da licencia, ni prueba que usted sepa hacerlo en el trabajo.

step-pause = Una pausa. Deje la calle en la pantalla, para que la gente hable de ella.
step-look-back = Haga las preguntas de abajo en su orden. Deje hablar primero a quienes aprenden; el resultado va al final.
step-welcome = Diga las líneas de “antes de empezar”. Tómese su tiempo: se aprende cuando no hay miedo a fallar.

question-which-way = ¿Cuál de las seis maneras tiene en casa? ¿Cuál necesita antes un electricista y un permiso?
question-recall-return = De memoria: ¿cuáles son los pasos de vuelta a la compañía, en orden?
question-one-change = ¿Qué cosa cambiará antes de la próxima tormenta?
moment-both-there = La compañía ha vuelto y el motor sigue en marcha. ¿Qué los mantiene separados ahora mismo?

objective-gas-out = Poner el motor de modo que su gas se quede afuera.
objective-tell-the-way = Contar el camino de la energía desde un error hasta la persona que hiere.
objective-refuse-unsafe = Reconocer una instalación insegura, dejarla apagada y hacerla segura.
objective-apart-first = Separar la casa de la línea antes de que otra cosa la alimente.
objective-back-clean = Volver a la compañía de modo que las dos fuentes nunca se encuentren.
objective-fit-cord = Elegir un cable, ponerlo y revisarlo mientras trabaja.
objective-say-what-feeds = Decir qué alimenta cada parte y mostrar qué lo indica.
