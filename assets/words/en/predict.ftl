# Ask before telling: what is asked to be foretold, and what it came to.

predict-before = You are about to do it: { $deed }
predict-now = The drill holds here.
predict-number-volts = Your number, in volts
predict-number-amps = Your number, in amps
predict-number-watts = Your number, in watts
predict-number-ppm = Your number, in parts per million
foretell-volts = How many volts to neutral are there then? The place: { $point }.
foretell-amps = How many amps go through it then? The part: { $thing }.
foretell-watts = How many watts is the generator asked for then?
foretell-heat = How many watts does the cord itself turn into heat then? The cord: { $cord }.
foretell-ppm = How many parts per million of carbon monoxide are indoors in { $time }, if nobody touches anything?
foretell-holds = In { $time }, is it still within what its insulation is made for, if nobody touches anything? The cord: { $cord }.
foretell-live-of = Which of these two are live then: { $one }, { $other }?
answer-holds = it stays within
answer-too-hot = it gets too hot
answer-both = both
answer-neither = neither
predict-known-rated = The generator is made for { $rated }.
predict-known-cord = The { $cord }: { $length } of { $gauge } AWG, { $lies }. It may carry { $carries } laid out flat.
predict-said-right = You said { $answer } and were { $sure } sure. That is right.
predict-said-wrong = You said { $answer } and were { $sure } sure. That is not so.
predict-counted = { $right } of { $all } in the room had it right.
predict-truth = It is so: { $truth }.
predict-score = You were right in { $right } of { $all } predictions, and { $sure } sure on average. Your Brier score is { $score }: 0 is best, and { $guess } is what pure guessing gets.
predict-too-sure = You were more sure than right. Test before you trust.
predict-too-shy = You know more than you think.
predict-fits = You know well what you know.

stage-ratio = The line has { $ratio } times the volts of the house’s side.
stage-halves = Here the neutral wire is broken. The loads share the { $across } between the hot wires: { $high } on one side, { $rest } on the other. { $more ->
    [one] A motor shifts the wave, so the two add up to a little more.{" "}
   *[other] {""}
}The difference between the two sides comes back through the earth.
stage-reading = At the { $name } a tester shows { $volts }. What feeds it: { $fed }.
stage-load = The { $name }: { $amps } at { $volts }. It uses { $watts }.
stage-asked = All in all the generator is asked for { $asked }. It is made for { $rated }.
stage-passes = Through the { $name } go { $amps }. It is made for { $rated }.
stage-room = The engine runs here: { $place }. Indoors there are { $ppm } of gas now.
stage-room-still = The engine stands still, here: { $place }. Indoors there are { $ppm } of gas now.
stage-gas = After { $time } there are { $ppm }.
stage-cord-loses = The { $name } carries { $amps } and loses { $lost } on the way. Both together make { $heat } of heat.
stage-cord-warm = Its hottest place is at { $celsius }. Its insulation is made for { $rated }.

session-predict-first = First the question: predict it, or go on without an answer.
session-nothing-asked = Nothing is asked now.
session-how-sure = Say how sure you are: 50, 70 or 90.
session-not-a-number = Give a plain number that is not below zero, such as 240. No comma and no unit.
session-not-a-choice = This is not one of the choices: { $answer }. They are: { $choices }.
session-no-hands = Count at least one hand.

terminal-predictions = What you foresaw. It counts for nothing but your own eye:
terminal-prediction = { $clock } { $question } { $said } { $truth }
terminal-ask-number = Type “predict NUMBER sure 70”; how sure can be 50, 70 or 90.
terminal-ask-choice = Type “predict CHOICE sure 70”; how sure can be 50, 70 or 90. The choices: { $choices }.
terminal-ask-room = For a room type “counts” and the hands for each of: { $choices }.
terminal-ask-skip = To go on without an answer, type “skip”.
terminal-bar = { $label }: { $count }
terminal-bar-right = { $label }: { $count } – this is right
terminal-how = How it comes about:
terminal-help-predict = predict 240 sure 70 answers what the drill asks you to foresee. “skip” goes on without an answer.
terminal-help-counts = counts 3 5 2 answers it for a room: the hands for each choice.
