# What a session says to either front end.

clock = { $time }
value = { $value }
value-hourly = { $value }/h

shelf-title = Outage Drill
shelf-intro = Practice switching a home from the utility to a generator and back. Mistakes here hurt nobody.
shelf-cautions-title = Before you start
shelf-cautions-accept = I have read this
shelf-facts = { $way }. Up to { $minutes } minutes on the drill clock. A panel with { $circuits } circuits.
shelf-minutes = { $minutes } minutes
shelf-most-minutes = up to { $minutes } drill minutes
shelf-lessons = Lessons
track-home = At home
track-class = For a class
track-apprentice = For apprentices
level-1 = A first look
level-2 = With help
level-3 = Practice
level-4 = To show what you can do
level-5 = Several things at once
way-manual-switch = A transfer switch with handles
way-interlock = A generator breaker in the panel
way-ready-panel = A panel made ready for a generator
way-cords = Cords alone
way-standby = A transfer switch that works by itself
way-subpanel = A transfer switch for a panel
way-line = The line and its crew
way-other = Air, fuel and faults
directions-out = Over to your own source
directions-back = Back to the utility
directions-both = Over to your own source and back
directions-none = No switching over
shelf-open = Start this drill

session-no-drill = There is no drill named “{ $name }”.
session-no-language = There is no language “{ $name }” here.
session-nothing-open = No drill is running. Open one first.
session-broken-site = The file of this house holds a fault: { $detail }.

# How long a wait for something to happen was, and what ended it.
session-waited-happened = You waited { $time }. Then this happened: { $what }
session-waited-asked = You waited { $time }. Now there is a question.
session-waited-told = You waited { $time }. Now there is something to read.
session-waited-over = You waited { $time }. The drill is over.
session-waited-nothing = You waited { $time }. Nothing that you could see or hear happened.

# The slide between two breakers, and the bar of a pair: they go with the handles.
slide-holds = The slide moves with it. Now it keeps this off: { $other }.
slide-frees = The slide is free again and holds neither breaker.
bar-holds = The bar moves with it. Now it keeps this off: { $other }.
bar-frees = The bar is free again and holds neither breaker.
slide-loose = The slide moves, but it holds neither breaker. Do not trust it.
slide-stays-main = The slide cannot move while the main breaker is on. Turn the main breaker off first.
slide-stays-generator = The slide cannot move while the generator breaker is on. Turn the generator breaker off first.
slide-by-itself = The slide is free. It moves with the handle that you turn on.

place-panel = Panel
place-panel-about = The main breaker, the generator breaker and the branch breakers.
place-transfer = Transfer switch
place-transfer-about = Its handles bring a load to the utility or to the generator, never to both.
place-subpanel = Subpanel
place-subpanel-about = The breakers behind the transfer switch.
place-solar = Solar and battery
place-solar-about = The solar disconnect and the battery switch.
place-generator = Generator
place-generator-about = Move it, start it, stop it, fill it.
place-cords = Cords
place-cords-about = Lay the cords out, plug them in, put them away.
place-house = House
place-house-about = Switches, plugs, the window and the people inside.
place-line = Street
place-line-about = Look at the line, the crew and the neighbors' lights.
place-phone = Phone
place-phone-about = Call the utility, an electrician or the emergency number.

close-panel-interlock = A metal slide sits between the main breaker and the generator breaker. It lets only one of the two be on.
close-panel-no-interlock = Someone has added a generator breaker. There is no slide. Nothing keeps both breakers from being on.
close-panel-misfitted = A metal slide is there, but it does not reach. Both breakers can be on at once.
close-panel-defeated = The slide has lost its bar. Nothing keeps both breakers from being on.
close-panel-plain = The main breaker and the branch breakers. No breaker here takes a generator.
close-panel-pair = The main breaker and the branch breakers. The generator comes in at the lower part, by a pair of breakers. A bar lets that part have the utility or the generator, never both.
close-panel-pair-loose = The main breaker and the branch breakers. The generator comes in at the lower part, by a pair of breakers. The bar between the two does not hold.
close-panel-transfer = The main breaker and the branch breakers. No breaker here takes a generator. A transfer switch gives loads the utility or the generator, never both.
close-transfer = A transfer switch. A handle has three places: utility, off, generator.
close-subpanel = A small panel behind the transfer switch, for what matters in an outage.
close-pair = The lower part of the panel holds the chosen circuits. Two breakers can feed it: one brings the utility, one the generator. A bar lets only one be on.
close-pair-loose = The lower part of the panel holds the chosen circuits. Two breakers can feed it. The bar between them does not hold.
close-solar = The solar inverter and the battery. Each has its own switch. Solar joins any steady voltage it finds, a generator's too.
close-generator = A portable generator. Keep it at least 20 feet (6 meters) from doors, windows and vents.
close-generator-standby = A standby generator. It starts by itself. Lock it out before you open it.
close-cords = The cords of this house, and where each end is.
close-house = The rooms of the house. Some appliances have a plug, some are wired in.
close-line = The line along the street. Look, and stay away from it.
close-phone = Who do you want to talk to?
close-control = { $name }: { $position }
close-choice-plug = plugged in – { $position }
close-act-plug = plug in – { $position }
close-choice-reset = press reset: { $position }

deed-look = look at the { $place }
deed-test = test: { $point }
deed-call = call: { $who }
deed-tell = tell: { $who }
deed-refuel = fill the tank
turn-sooner = the next event comes now
turn-utility-fails = the utility fails
turn-utility-returns = the utility returns
turn-neutral-lost = the neutral of the drop comes loose
turn-leg-lost = one live wire of the drop comes loose
turn-drop-mended = the drop is mended
turn-tank-dry = the tank runs dry
close-test = This is a test: only what you looked at or tested is shown.
known-live = Tested at { $time }: live, { $volts }
known-dead = Tested at { $time }: no voltage
tester-live = live
tester-dead = no voltage
tester-at = at { $time }
known-seen = Seen at { $time }

gauge-generator = Meter: { $volts }, { $hertz }, { $amps }
gauge-piped = Fuel: piped gas
gauge-fuel-lasts = The fuel lasts, at this load: { $time }
cord-printed = { $cord }: { $letters }, { $gauge } AWG, { $length }, { $ground ->
    [one] with a ground wire
   *[other] no ground wire
}. { $meanings }.
cord-letter-h = H: for things that heat
cord-letter-s = S: service cord
cord-letter-j = J: junior, 300 V
cord-letter-v = V: light, as on a vacuum cleaner
cord-letter-p = P: side by side, as on a lamp
cord-letter-rd = RD: for a range or dryer
cord-letter-e = E: elastomer
cord-letter-t = T: plastic
cord-letter-o = O: its jacket stands oil
cord-letter-oo = OO: jacket and insulation stand oil
cord-letter-w = W: for outdoors
cord-seen-frayed = { $cord }: frayed where it has been bent
cord-seen-crushed = { $cord }: flat in one place, as if caught in a door
plug-seen-loose = { $cord }: its plug hangs loose
plug-seen-black = { $cord }: the blades of its plug are black
cord-feels-warm = { $cord }: warm to the hand
cord-feels-hot = { $cord }: too hot to hold
cord-feels-soft = { $cord }: soft; throw it away
cord-feels-burnt = { $cord }: burnt; do not touch it
plug-feels-warm = { $cord }: its plug is warm
plug-feels-hot = { $cord }: its plug is too hot to hold
plug-feels-scorched = { $cord }: its plug is scorched
generator-load = Load: { $watts } of { $rated }
generator-place = Place: { $place }. Nearest opening: { $feet }.
generator-place-indoors = Place: { $place }, indoors.
generator-sentence = Generator: { $state }. { $place } { $load }.

goal-had = { $thing }: got power
goal-waits = { $thing }: not yet
goal-left = { $time } left
phasor-both = { $point }: leg 1 { $one }, leg 2 { $two }, { $apart } apart, { $across } across
phasor-one = { $point }: one leg is live, { $volts }
phasor-drifting = { $point }: two sources meet here, and each swings in its own time
# The amps of a leg. $leg is 1 or 2, $turn how they stand to the volts of that leg.
phasor-amps = leg { $leg } carries { $amps }, { $turn }
phasor-uneven = Leg { $leg } carries more, so it has fewer volts. Even loads bring both legs close together.
phasor-behind = { $angle } behind its volts
phasor-ahead = { $angle } ahead of its volts
phasor-in-step = in step with its volts

street-wire = { $name }: { $fed }
street-wire-volts = { $name }: { $fed }, { $volts }
street-wire-volts-amps = { $name }: { $fed }, { $volts }, { $amps }
street-amps-of-sides = { $one } and { $two }
street-thing = { $name }: { $state }
street-neighbor-lit = { $name }: lights on
street-neighbor-dark = { $name }: dark
street-air = Carbon monoxide indoors: { $ppm }

street-title-test = Test: { $title }
fed-dead = no voltage
fed-utility = fed by the utility
fed-generator = fed by the generator
fed-solar = fed by the solar panels
fed-battery = fed by the battery
fed-both = fed by both
fed-grounded = grounded
fed-unknown = not tested yet
fed-fallen = down, to be treated as live
fed-live = tested live

state-well = well
state-unwell = feeling ill
state-harmed = badly hurt
state-crew-unseen = not seen yet
state-crew-away = not here
state-crew-testing = testing the line
state-crew-hands-on = at work, line in hand
state-crew-clear = clear of the line
state-no-power = no power
state-too-few = too few volts to run, { $volts }
state-ready = ready
state-starting = starting
state-running = running, { $watts }
state-strained = too few volts, { $volts }
state-too-high = too many volts, { $volts }
state-stalled = humming, not turning, { $volts }
state-protected = too hot, shut off by itself
state-broken = broken
state-engine-stopped = engine stopped
state-engine-warming = engine warming up
state-engine-idle = engine running, no load
state-engine-loaded = engine running, carrying load
state-engine-broken = engine damaged

# Leaves what else followed from the same thing. $count is a number of 1 or more.
consequence-others = { $count ->
    [one] Skip one other finding
   *[other] Skip { $count } other findings
}
debrief-passed = Passed
debrief-not-passed = Not passed yet
debrief-harm-hurt = Somebody was hurt.
debrief-harm-killed = Somebody may have been killed.
debrief-harm-burned = A fire broke out.
debrief-end-utility = Nobody was put at risk, and the house is back on the utility.
debrief-end-line = Nobody was put at risk, and the customers have power from the utility.
debrief-end-own = Nobody was put at risk, and the house runs on its own power.
debrief-end-asked = Nobody was put at risk, and all is as this drill asks.
debrief-summary-passed = { $findings ->
    [0] { $end }
    [one] The critical points are all met. One thing could go better.
   *[other] The critical points are all met. { $findings } things could go better.
}
debrief-summary-not-passed = { $findings ->
    [one] One thing stood in the way of a pass. It is explained.
   *[other] { $findings } things stood in the way of a pass. Each is explained.
}
track-line = Line at the crew's pole
track-house = Panel
track-inlet = Power inlet
series-load = Generator load
series-load-limit = rated load
series-line = Line at the crew's pole
series-air = Carbon monoxide indoors
series-air-limit = alarm point

# Equipment of the house, from afar and close.
equipment-main = main breaker { $position }
equipment-gives = gives { $watts }
equipment-waits = gives nothing, waits for a grid
equipment-battery-ready = ready, charged to { $charge }
equipment-battery-carries = carries its panel, charged to { $charge }
equipment-battery-shut = shut off, charged to { $charge }
side-utility = on the utility
side-off = off, on neither side
side-other = on the other source
side-both = on both at once
side-counts = { $utility } on the utility, { $off } off, { $other } on the generator
face-tag = Main breaker: locked and tagged. Do not operate.
face-utility-side = Utility side
face-generator-side = Generator side
face-battery-side = Battery side
face-load-side = Load side
light-yes = yes
light-no = no
light-utility = utility power
light-generator = generator power
light-on-utility = load on the utility
light-on-generator = load on the generator
light-battery = battery power
light-on-battery = load on the battery
light-carries = feeds its panel by itself
light-shut = shut itself off
light-grid = finds voltage on the house wires
light-gives = gives power
light-volts = makes voltage of its own
light-runs = engine runs
face-controller-dark = The controller is dark: its starter battery is off.
gauge-time-left = Time left
light-oil = low oil
light-overload = overload
gauge-volts = Volts
gauge-hertz = Frequency
gauge-amps = Current, busier side
gauge-of = { $value } of { $most }
gauge-load = Load
gauge-tank = Fuel
gauge-gives = Gives now
gauge-charge = Charge
gauge-follows = Works along with
follows-nothing = no source
follows-utility = the utility
follows-generator = the generator
follows-battery = the battery
gauge-most = Can give
socket-empty = Nothing is plugged in.
socket-plugged = Plugged in here: { $names }
session-no-rewind = In a test you cannot go back. Finish it first.
session-no-hint = In a test there are no hints. Finish it first, then practice with help.
session-no-turn = Nothing is made to happen in a test, or after the end.
session-no-mistake = There is no mistake to go back to.
session-rewound = You are back at { $clock }. Try another way.
again-place = Moment { $place } of { $of }
debrief-rewound = { $times ->
    [one] You went back once.
   *[other] You went back { $times } times.
 }
debrief-helped = { $times ->
    [one] The next step was shown to you once.
   *[other] The next step was shown to you { $times } times.
 }
place-answers = Answers
place-answers-about = Say what the drill asks.
close-answers = What do you say? You can change your mind. The last answer counts.
known-said = You said this at { $time }.
ask-live = Is it live or dead: { $subject }?
ask-fed-by = What feeds it: { $subject }?
ask-slide = Can you trust it: { $subject }?
ask-hangs-on = What hangs on it: { $subject }?
ask-bonds = How many are there: { $subject }?
answer-none = none
answer-one = one
answer-two = two
name-bonds = places that join the neutral of the generator to ground
ask-breaker-fits = Is it small enough for its wire: { $subject }?
answer-guards = small enough
answer-too-large = too large
answer-live = live
answer-dead = dead
answer-fit = yes
answer-unfit = no
answer-utility = the utility
answer-generator = the generator
answer-battery = the battery
answer-several = more than one source
answer-nothing = nothing

# The debrief, page by page: the learner's own words first, the verdict last.
debrief-happened-title = What happened
debrief-happened-ask = What happened, in your own words? The list shows what was done, and nothing more.
debrief-felt-title = How it felt
debrief-felt-ask = How did it feel? Where were you sure, and where were you not? Nothing you say here is marked.
debrief-why-title = Why
debrief-why-ask = Here is what was found, each at its moment, and what the machines did.
debrief-next-title = What next
debrief-next-ask = Practice these next.
debrief-next-new = The drill you just did does not ask for it. It comes next.
debrief-verdict-title = The verdict
debrief-verdict-ask = This is what the run comes to.

# Skills: what can be practiced next.
skill-place-engine = Place the engine and keep gas out
skill-isolate = Part the house from the line before you feed it
skill-show-source = Show what each part is fed by
skill-choose-loads = Choose loads that the source can carry, one after another
skill-choose-cords = Choose, lay and check cords
skill-run-engine = Start, load, refuel, cool and stop the engine
skill-go-back = Go back to the utility without an overlap
skill-recognize = Spot unsafe wiring, refuse it and make it safe
skill-grounding = Match neutral, ground and ground-fault devices
skill-emergency = Act in an emergency
skill-explain-harm = Explain how harm travels to others
skill-lock-out = Lock out and test before you service a set
skill-dead-line = Make a line dead, tagged, tested and grounded
skill-release = Take grounds off and give the line back
skill-second-source = Find a second source and part it
skill-hand-over = Brief others and hand over

# Curves.
series-battery = Battery load
series-solar = Solar output
series-leg-one = Panel, first leg
series-leg-two = Panel, second leg
series-frequency = Generator frequency
series-air-garage = Carbon monoxide in the garage
series-air-next-door = Carbon monoxide next door
series-heat-limit = most its insulation stands

# While an author writes

session-renewed = The scenario files have changed. They were read again.
session-renewed-drill = The files of this drill have changed. It begins again.
session-renewed-gone = The drill { $name } is no longer there. Choose another.
session-faults = { $count ->
    [one] The scenario files have a fault. Until it is mended you see them as they last were sound.
   *[other] The scenario files have { $count } faults. Until they are mended you see them as they last were sound.
}

# What became of an appliance.
compare-unharmed = unharmed
compare-lost = what it keeps is lost
mastery-switch = { $way }. { $direction }
