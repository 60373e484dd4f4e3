# What the lessons share: how to begin, how to look back, what goes home.

prepare-play-all = Play every drill of the plan yourself, as a learner. Pass the test before you give it.
prepare-first-light-at-home = Ask learners to play the drill “First light” before they come. It takes them five minutes.
prepare-room = Try screen, sound and seats. Leave room to step outside. Learners who share a machine take turns.
prepare-local-facts = Fill in the local facts: utility, permit office, phone numbers, storm season.
prepare-job-rules = Bring the lockout and line rules of your own company. They come before anything here.
prepare-paper = Have paper and a pen. Know where your panel is.

prebrief-roles = I lead. You work the drills with your own hands. One person drives, the others watch and say why.
prebrief-alone = You lead and you learn. Nobody sees what you do. Take one evening at a time.
prebrief-plan = Tell how long it takes, when the break is, and what is done in which order.
prebrief-goals = Read out what learners can do after it.
prebrief-marked = Only a test gives a verdict. It asks what happened, so any safe order passes. Practice counts for nothing.
prebrief-record = This program keeps no names and sends nothing away. Say so, and say if you write anything down.
prebrief-room = What happens in this room stays here. Nobody laughs at a mistake. No verdict goes on the big screen.
prebrief-real = The volts, amps and gas are computed. The house and the people are made up. Act as if it were real.
prebrief-supervised = A pass here is not a pass on the job. There you work under supervision until your employer says otherwise.
prebrief-step-back = Some drills speak of people who are badly hurt. Anyone may stop or step outside at any time.
prebrief-questions = Ask: what else do you need to know before we begin?

prompt-what-you-saw = Tell what you saw, step by step. No one says yet if it was right.
prompt-what-you-did = What did you do, and what came of it?
prompt-how-it-felt = How was it to work in the dark, with people waiting?
prompt-when-unsure = When were you not sure? What helped?
prompt-why-so = Go back to the first thing that went wrong. What made it so?
prompt-other-safe-order = Which other order would have been as safe? What makes it safe?
prompt-what-if-night = What would be harder at two in the morning, in the rain?
prompt-which-reading = Which reading told you so? Which one did you not take?
prompt-next-time = What will you do in another way next time?
prompt-one-thing-at-home = Which one thing at home will you change, and by when?
prompt-on-the-job = Where on the job will you meet this? Whom do you ask first?

handout-never-two-plugs = Never use a cord with two plugs. It makes the dead street live.
handout-engine-outside = Run the engine outside, at least 20 feet (6 meters) from every opening, with its exhaust away from the house.
handout-order-out = Over to the generator: main off first, then the generator breaker on. Then one load after the other.
handout-order-back = Back to the utility: loads off, generator breaker off, and only then the main on. Let the engine cool.
handout-cords-flat = Lay cords flat and open, never coiled. A cord that is warm carries too much.
handout-line-down = A line on the ground is live. Keep away from it, keep others away, and call.
handout-test-before-touch = Test before you touch: first a live part, then the dead one, then the live part again.
handout-lock-yourself = Lock it yourself, and keep the key. A machine with a controller can start while your hands are in it.
handout-line-is-live = A line is live until it is open where you see it, tagged, tested and grounded.
handout-sim-is-not-field = This was shown in simulation. It is no license, and no proof of skill on the job.

step-pause = A break. Leave the screen on the street, so that people talk about it.
step-look-back = Ask the prompts below in their order. Let the learners speak first, and the verdict last.
step-welcome = Say the lines of “before you begin”. Take your time: people learn when they feel safe to be wrong.

question-which-way = Which of the six ways do you have at home? Which one needs an electrician and a permit first?
question-recall-return = From memory: what are the steps back to the utility, in order?
question-one-change = What is the one thing that you change before the next storm?
moment-both-there = The utility is back, and the engine still runs. What keeps the two apart right now?

objective-gas-out = Place the engine so that its gas stays out.
objective-tell-the-way = Tell the way that energy takes from a mistake to the person it hurts.
objective-refuse-unsafe = Know an unsafe installation when you see it, leave it off, and make it safe.
objective-apart-first = Take the house off the line before anything else feeds it.
objective-back-clean = Go back to the utility so that the two sources never meet.
objective-fit-cord = Choose a cord, lay it, and check it while it works.
objective-say-what-feeds = Say what feeds each part, and show what tells you.
