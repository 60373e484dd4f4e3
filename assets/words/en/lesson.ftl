# What a lesson says besides its own words: kinds of steps, phases, the sheet for home, the local facts.

doing-prebrief = Before we begin
doing-talk = Talk together
doing-demonstration = Watch
doing-predict = Predict, then see
doing-drill = Hands on
doing-assessment = Test
doing-debrief = Look back
doing-break = Break
doing-handout = To take home

lesson-step-minutes = { $from }–{ $to }{"\u00A0min"}

# $kind is one of the lines above, $drill the title of a drill.
lesson-step-drill = { $kind }: { $drill }
lesson-objectives = After it, learners can:
lesson-prepare = Get ready beforehand:
lesson-prebrief = Say before you begin:
lesson-debrief = Look back, in this order. Let the learners speak first:
# $note, $text and $command are finished.
lesson-note = Say first: { $note }
lesson-ask = Ask: { $text }
lesson-open = Open: { $command }
lesson-holds-itself = The drill stops here by itself. Count hands before you go on.
# $event is a sentence of the log.
lesson-hold-after = Stop when you read: { $event }

phase-happened = What happened
phase-felt = How it felt
phase-why = Why it came so
phase-next = What comes next

# The local facts. $fact is one of the lines below, $text what was filled in.
local-title = For your place
local-title-open = For your place. Write in what is missing.
local-fact = { $fact }: { $text }
local-not-filled-in = ______________________
local-permit-office = Permits for wiring
local-utility = Your utility
local-outage-number = To report an outage
local-line-down-number = To report a line that is down
local-generator-notice = Must the utility know of a generator
local-emergency-number = In an emergency

handout-title = To take home: { $lesson }

# When to practice again. $month is the month before $season, in which storms begin.
handout-again = Practice again in a month, and once more before the storms come.
handout-again-season = Practice again in a month, and once more in { $month }. Storms come from { $season } on.

month-1 = January
month-2 = February
month-3 = March
month-4 = April
month-5 = May
month-6 = June
month-7 = July
month-8 = August
month-9 = September
month-10 = October
month-11 = November
month-12 = December

# Faults of lesson files.
error-lesson-empty = This list is empty. Name at least one.
error-lesson-objective-bare = This objective has no drill. Name at least one that teaches it.
error-lesson-not-taught = This drill does not teach that. It teaches: { $taught }.
error-lesson-not-planned = This drill is in no session of the lesson. Plan it, or take it away here.
error-lesson-minute = The step before this one ends at minute { $wanted }. Begin this one there.
error-lesson-length = The steps end at minute { $sum }. Let the session take that long, or change a step.
error-lesson-prebrief = A session begins with what has to be said first: “Prebrief”.
error-lesson-debrief = A session looks back on what was done. Add a step “Debrief”.
error-lesson-assessment = A lesson shows who can do it alone. Add a step “Assessment”.
error-lesson-hold-test = A test is never stopped to ask. Take “hold” away, or make it a “Drill”.
error-lesson-hold-talk = There is no drill in this step that could be stopped. Take “hold” away.
error-lesson-event = “{ $name }” does not happen in this drill.
error-kind-message = message
error-kind-prediction = prediction
error-kind-lesson = lesson
error-kind-session = session
check-lessons = { $count ->
    [one] One lesson: all it names is there, and its minutes add up.
   *[other] { $count } lessons: all they name is there, and their minutes add up.
}
