# The window.

window-title = Outage Drill
window-clock = Drill clock: minutes and seconds since the start
window-clock-unit = min:s
window-goal = Goal
window-practice-next = Practice
window-progress = So far
window-hint = Next
window-wait-short = Wait 10 s
window-wait-minute = Wait 1 min
window-wait-event = Until something happens
window-finish = Finish
window-keys = Keyboard
window-words = In words
window-back = Back
window-tester = Tester
window-tester-rests = Put the probes to a point below.
window-deeds = What you can do here
window-log = What happened so far
window-held = Time stands still
window-next = Next
window-again = From the start
window-why = Why it matters
window-now = If this were real, do this now
window-instead = Next time
window-source = Source
window-understood = Understood
window-asked = A question first
window-into-cord = Or into another cord:
window-asked-number-first = First write your number. Then say how sure you are.
window-asked-choice-first = First choose an answer. Then say how sure you are.
window-asked-sure = How sure are you? Choosing this sends your answer.
window-asked-room = With a class: count raised hands
window-asked-show = Show the room’s answer
window-asked-skip = Go on without an answer
window-asked-on = Go on
window-asked-right = this is right
window-go-back = Go back to before this
window-from-here = Try again from here
window-see-moment = Show it on the timeline
window-watch = Watch the run again
window-watch-moment = Watch this moment
window-watch-later = Next moment
window-watch-earlier = Moment before
window-watch-play = Play
window-watch-pause = Pause
window-watch-end = Back to the debrief
window-watch-found = Found at this moment
window-span-nearer = Closer
window-span-farther = Wider
window-span-earlier = Earlier
window-span-later = Later
window-span-all = The whole drill
window-retry = Try again
window-leave = Back to the drills
window-leave-drill = Leave
window-met = met
window-not-met = not met
window-critical = No run can pass without it
window-timeline = Timeline
window-timeline-pin = found here; the number with × says how many
window-findings = Findings
window-finding = Finding
window-finding-advice = Advice: this did not stand in the way of a pass.
window-finding-failed-already = Advice: the run had failed already, and this is not counted besides.
window-no-findings = Nothing to explain: every rule was kept.
window-open-guided = Step by step
window-guided-means = The next safe step is shown with its reason, from wherever you are.
window-open-assessed = Open as a test
window-assessed-means = No help, and only what you looked at or tested, until the end.
window-slide = interlock slide
window-slide-up = The slide is up, over the main breaker. It keeps it from going on.
window-slide-down = The slide is down, over the generator breaker. It keeps it from going on while the main breaker is on.
window-slide-free = The slide stands in the middle. It holds neither breaker.

# What feeds a conductor, in the legend.
window-fed-dead = no voltage
window-fed-utility = fed by the utility
window-fed-generator = fed by a generator
window-fed-at-rest = generator, no current flows
window-fed-solar = fed by solar panels
window-fed-battery = fed by a battery
window-fed-both = fed by two sources
window-fed-grounded = grounded by the crew
window-fed-unknown = not tested yet

# Kinds of log lines and answers.
window-log-did = Done
window-log-refused = Refused
window-log-happened = Happened
window-log-learnt = Learned
window-log-mistake = Danger
window-log-harm = Harm
window-log-unknown = Not understood

# The scene in words.
window-storm = It is raining hard, and the wind blows.
window-words-people = People and neighbors
window-words-house = Generator and house
window-words-wires = Wires

# Keys.
window-key-keys = Show or hide these keys
window-key-hint = Show the next safe step and why
window-key-words = The scene in words
window-key-language = Another language
window-key-motion = Motion on or off
window-key-back = Back
window-key-close = Close the window
window-key-places = Open a place
window-key-walk = Walk through what can be pressed, also with the arrow keys
window-key-press = Press, also with the space bar

# Said in the terminal when no window can open.
window-no-display = There is no display for a window here. Start it from a desktop, or install an X server.
window-no-adapter = No graphics adapter answers here, not even one in software. On Debian the package mesa-vulkan-drivers brings one.
window-stopped = The window stopped because of a fault in its engine.
window-no-screen = There is no screen named “{ $name }”. Use one of these: { $known }.
window-no-picture = The screen “{ $name }” was not drawn: no picture came back.
window-another = A variation

# The debrief.
window-onward = Go on
window-page-back = Previous page
window-said = Write here, if you like. It is not marked.
window-stood = At the start › at the end

# Words of the trade, in the order of the glossary.
window-terms = Words of the trade
window-terms-short = Terms
window-terms-here = On this screen
window-terms-others = All others
window-key-terms = What the words of the trade mean

# For somebody who teaches.
window-room = For the instructor
window-room-away = F11 puts this sheet away, and brings it back.
window-room-wall = On the wall
window-room-second = Two languages
window-room-cover = Cover the readings
window-room-hold = Hold the drill
window-room-size = Size of the text
window-room-turns = Make something happen
window-room-no-turns = Nothing can be changed here. In a test nothing ever can.
window-room-light = Spotlight: all else goes dim
window-room-light-equipment = Equipment
window-room-light-people = People
window-room-light-street = Street
window-room-light-house = Things in the house
window-room-lesson = Lesson
window-room-to-lesson = Back to the lesson
window-room-held = Hands off
window-room-look-here = Talk first. Nothing moves until you go on.
window-key-room = For the instructor
window-key-hold = Hold the drill, or let it go on
window-key-size = Larger or smaller text
window-key-nearer = Look at the street nearer
window-key-farther = Look from farther away
window-key-move = Move what you see: with an arrow key
window-detail-short = Detail
window-detail-live = Detail: what is live. Press to see the numbers.
window-detail-numbers = Detail: the numbers. Press to see phasors too.
window-detail-phasors = Detail: phasors too, at panel and generator. Press for less.
window-sight-all = All
window-key-whole = See the whole street
window-key-before = See what you saw before
window-keep = Keep this screen as a picture
window-kept = It is kept in { $file }.
window-not-kept = It was not written to { $file }. { $why }

# A lesson being taught.
window-teach = Teach this lesson
window-lesson-before = Before the lesson
window-lesson-prepare = Get ready
window-lesson-objectives = Afterward the learners can do this
window-lesson-prebrief = Say this first
window-lesson-ask = Ask the room
window-lesson-next = Next page
window-lesson-back = Previous page
window-lesson-drill = Open the drill
window-lesson-leave = End the lesson

# One thing at a time, where there is little room.
window-face-here = Now
window-face-scene = Street
window-face-bars = Time and places
window-face-story = What happened

# Who sits at a drill, and what is kept.
window-room-seats = Who sits at the drill
window-room-names = Names, with commas. They stay hidden here.
window-room-sign = Put this in the run
window-signed = The run says now who sits here.
window-seated-alone = alone
window-seated-in-turns = in turns
window-seated-as-a-team = as a team
window-seated-in-pairs = in pairs
window-record = Save this run

# Two branches of a drill.
window-phasors-volts = thick arrow: volts of leg 1 or 2
window-phasors-amps = thin line with a dot: amperes
window-phasors-see = The two thick arrows are the two live legs. When they point opposite ways, they make 240 volts together. Check that both reach the ring: that is 120 volts each.
window-breaker = Breaker
window-branches-picture = “Before” is the try that you left. “Now” is the one that goes on. The picture shows it.
window-branches-still = Nothing moves while you compare.
window-branches-on = Go on with the drill
window-branches = Compare both tries
window-branches-gone = Found before, and not any more
window-branches-come = Found now, and not before
window-branches-people = People and things
window-branches-positions = Positions
window-branches-volts = Volts
window-branches-before = Before, to
window-branches-now = Now, to

window-what-next = What next?
window-log-empty = Nothing yet. Look at the picture first. Then press something in it, or open a place below. Not sure? Press “What next?”.
window-settings-left = The window opens as usual. The file stays as it is until you mend it or remove it.
window-gauge-warmth = The bar shows how warm it has got inside.
window-gauge-water = The bar shows how high the water stands in the pit.
window-gauge-missed = The bar fills while it is missed.
window-gauge-load = The dial shows the load. Its thick end is too much.
