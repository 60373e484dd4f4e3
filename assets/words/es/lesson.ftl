# Lo que dice una lección además de sus propias palabras: clases de pasos, fases, la hoja para la casa, los datos locales.

doing-prebrief = Antes de empezar
doing-talk = Hablar juntos
doing-demonstration = Mirar
doing-predict = Predecir y luego ver
doing-drill = Manos a la obra
doing-assessment = Prueba
doing-debrief = Mirar atrás
doing-break = Pausa
doing-handout = Para llevar a casa

lesson-step-minutes = { $from }–{ $to }{"\u00A0min"}
lesson-step-drill = { $kind }: { $drill }
lesson-objectives = Después de ella, quien aprende puede:
lesson-prepare = Preparar antes:
lesson-prebrief = Decir antes de empezar:
lesson-debrief = Mirar atrás, en este orden. Deje que hablen primero quienes aprenden:
lesson-note = Diga primero: { $note }
lesson-ask = Pregunte: { $text }
lesson-open = Abra: { $command }
lesson-holds-itself = El simulacro se detiene aquí por sí solo. Cuente manos antes de seguir.
lesson-hold-after = Deténgase cuando lea: { $event }

phase-happened = Qué pasó
phase-felt = Cómo se sintió
phase-why = Por qué fue así
phase-next = Qué sigue

local-title = Para su lugar
local-title-open = Para su lugar. Escriba lo que falta.
local-fact = { $fact }: { $text }
local-not-filled-in = ______________________
local-permit-office = Permisos para instalaciones
local-utility = Su compañía eléctrica
local-outage-number = Para avisar de un apagón
local-line-down-number = Para avisar de una línea caída
local-generator-notice = Si hay que avisar del generador a la compañía
local-emergency-number = En una emergencia

handout-title = Para llevar a casa: { $lesson }
handout-again = Practique otra vez en un mes, y una vez más antes de la época de tormentas.
handout-again-season = Practique otra vez en un mes, y una vez más en { $month }. Las tormentas llegan desde { $season }.

month-1 = enero
month-2 = febrero
month-3 = marzo
month-4 = abril
month-5 = mayo
month-6 = junio
month-7 = julio
month-8 = agosto
month-9 = septiembre
month-10 = octubre
month-11 = noviembre
month-12 = diciembre

error-lesson-empty = Esta lista está vacía. Nombre al menos uno.
error-lesson-objective-bare = Este objetivo no tiene simulacro. Nombre al menos uno que lo enseñe.
error-lesson-not-taught = Este simulacro no enseña eso. Enseña: { $taught }.
error-lesson-not-planned = Este simulacro no está en ninguna sesión de la lección. Inclúyalo en el plan, o quítelo de aquí.
error-lesson-minute = El paso anterior termina en el minuto { $wanted }. Empiece este ahí.
error-lesson-length = Los pasos terminan en el minuto { $sum }. Dé esa duración a la sesión, o cambie un paso.
error-lesson-prebrief = Una sesión empieza con lo que hay que decir primero: “Prebrief”.
error-lesson-debrief = Una sesión mira atrás a lo que se hizo. Añada un paso “Debrief”.
error-lesson-assessment = Una lección muestra quién puede hacerlo sin ayuda. Añada un paso “Assessment”.
error-lesson-hold-test = Una prueba nunca se detiene para preguntar. Quite “hold”, o use “Drill”.
error-lesson-hold-talk = En este paso no hay simulacro que detener. Quite “hold”.
error-lesson-event = “{ $name }” no pasa en este simulacro.
error-kind-message = mensaje
error-kind-prediction = predicción
error-kind-lesson = lección
error-kind-session = sesión
check-lessons = { $count ->
    [one] Una lección: todo lo que nombra está, y sus minutos suman bien.
   *[other] { $count } lecciones: todo lo que nombran está, y sus minutos suman bien.
}
