# The track for a household: six short evenings.

lesson-six-evenings-title = Six evenings at home
lesson-six-evenings-about = Fifteen to twenty minutes each, for one person or a family. The last two evenings test you. Then practice twice a year.
sitting-my-house = First evening: my house
sitting-air-and-fuel = Second evening: air and fuel
sitting-cords = Third evening: cords
sitting-way-back = Fourth evening: the way back
sitting-my-loads = Fifth evening: my loads
sitting-storm-night = Sixth evening: storm night

step-home-start = Read the lines of “before you begin”. Here a mistake costs nothing.
step-home-recall = Before you look anything up, answer from memory. Then compare.
step-home-back = Answer the questions below, aloud or in writing. Look at the verdict last.
step-look-around = Point at wires, outlets and lamps. Say what feeds them, then test.
step-my-house = Go to your panel with paper and pen, and only look. Write down what you find.
step-guess-first = The drill asks you before it shows. Make a guess and say how sure you are.
step-try-it = Take your time. When something goes wrong, go back and try another way.
step-found-so = Somebody left it so. You did not build it. You only make it safe.
step-home-alone = This is a test: no help until the end. Any safe order passes.
step-write-card = Write the card so that somebody else can work by it at night.
step-home-card = Put the sheet beside your panel. Put the dates for practice into your calendar.

question-must-run = What has to run in an outage? What can wait until morning?
question-recall-house = What feeds your house on a normal day? Where is the main?
question-recall-gas = From memory: how far from the house does the engine stand?

objective-fuel-cold = Fill fuel only when the engine is off and cool.
objective-get-out = Act right when there is gas, shock, or two sources about to meet.
objective-loads-in-turn = Choose loads and start them one after the other.
objective-leave-a-card = Leave a card that another person can work by.
