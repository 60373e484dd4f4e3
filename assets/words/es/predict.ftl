# Preguntar antes de contar: lo que se pide prever y lo que resultó.

predict-before = Está por hacer esto: { $deed }
predict-now = El simulacro espera aquí.
predict-number-volts = Su número, en voltios
predict-number-amps = Su número, en amperios
predict-number-watts = Su número, en vatios
predict-number-ppm = Su número, en partes por millón
foretell-volts = ¿Cuántos voltios al neutro hay entonces? El lugar: { $point }.
foretell-amps = ¿Cuántos amperios pasan entonces? La parte: { $thing }.
foretell-watts = ¿Cuántos vatios se le piden entonces al generador?
foretell-heat = ¿Cuántos vatios convierte el cable mismo en calor entonces? El cable: { $cord }.
foretell-ppm = ¿Cuántas partes por millón de monóxido de carbono hay adentro en { $time }, si nadie toca nada?
foretell-holds = En { $time }, ¿sigue dentro de lo que aguanta su aislamiento, si nadie toca nada? El cable: { $cord }.
foretell-live-of = ¿Cuáles de estos dos tienen voltaje entonces: { $one }, { $other }?
answer-holds = se queda dentro
answer-too-hot = se calienta demasiado
answer-both = los dos
answer-neither = ninguno
predict-known-rated = El generador está hecho para { $rated }.
predict-known-cord = Cable: { $cord }. Son { $length } de calibre { $gauge } AWG; está así: { $lies }. Extendido puede llevar { $carries }.
predict-said-right = Usted dijo { $answer }, con { $sure } de seguridad. Acertó.
predict-said-wrong = Usted dijo { $answer }, con { $sure } de seguridad. No es así.
predict-counted = En la sala acertaron { $right } de { $all }.
predict-truth = Es así: { $truth }.
predict-score = Acertó { $right } de { $all } predicciones, con { $sure } de seguridad en promedio. Su puntaje de Brier es { $score }: 0 es lo mejor, y { $guess } es lo que da adivinar.
predict-too-sure = Estuvo más seguro de lo que acertó. Pruebe antes de confiar.
predict-too-shy = Sabe más de lo que cree.
predict-fits = Sabe bien lo que sabe.

stage-ratio = La línea tiene { $ratio } veces el voltaje del lado de la casa.
stage-halves = Aquí el neutro está roto. Las cargas se reparten los { $across } entre las dos fases: { $high } de un lado, { $rest } del otro. { $more ->
    [one] Un motor corre la onda, así que los dos suman un poco más.{" "}
   *[other] {""}
}La diferencia entre los dos lados vuelve por la tierra.
stage-reading = El probador marca { $volts } aquí: { $name }. Lo alimenta: { $fed }.
stage-load = Esto toma { $amps } a { $volts } y usa { $watts }: { $name }.
stage-asked = En total se le piden { $asked } al generador. Está hecho para { $rated }.
stage-passes = Pasan { $amps }: { $name }. Está hecho para { $rated }.
stage-room = El motor funciona aquí: { $place }. Adentro hay ahora { $ppm } de gas.
stage-room-still = El motor está parado aquí: { $place }. Adentro hay ahora { $ppm } de gas.
stage-gas = Después de { $time } hay { $ppm }.
stage-cord-loses = Lleva { $amps } y pierde { $lost } en el camino: { $name }. Las dos cosas juntas dan { $heat } de calor.
stage-cord-warm = Su lugar más caliente está a { $celsius }. Su aislamiento está hecho para { $rated }.

session-predict-first = Primero la pregunta: responda, o siga sin respuesta.
session-nothing-asked = Ahora no se pregunta nada.
session-how-sure = Diga qué tan seguro está: 50, 70 o 90.
session-not-a-number = Dé un número que no sea menor que cero, como 240. Sin coma y sin unidad.
session-not-a-choice = Esta no es una de las opciones: { $answer }. Son: { $choices }.
session-no-hands = Cuente al menos una mano.

terminal-predictions = Lo que usted previó. No cuenta más que para su propio ojo:
terminal-prediction = { $clock } { $question } { $said } { $truth }
terminal-ask-number = Escriba “predict NÚMERO sure 70”; la seguridad puede ser 50, 70 o 90.
terminal-ask-choice = Escriba “predict OPCIÓN sure 70”; la seguridad puede ser 50, 70 o 90. Las opciones: { $choices }.
terminal-ask-room = Para una sala escriba “counts” y las manos de cada una: { $choices }.
terminal-ask-skip = Para seguir sin respuesta, escriba “skip”.
terminal-bar = { $label }: { $count }
terminal-bar-right = { $label }: { $count } – esto es lo correcto
terminal-how = Cómo se llega a eso:
terminal-help-predict = predict 240 sure 70 responde lo que el simulacro le pide prever. “skip” sigue sin respuesta.
terminal-help-counts = counts 3 5 2 lo responde por una sala: las manos de cada opción.
