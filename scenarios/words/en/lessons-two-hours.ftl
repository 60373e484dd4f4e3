# The lesson for a class of two hours.

lesson-two-hours-title = Two hours with a class
lesson-two-hours-about = What exhaust gas and a street line do, then hands on, then a short test. For a hall with one screen or many.
sitting-evening = One evening

step-what-tonight = Let each write two lines, alone. Don't correct anything: you read them again at the end.
step-gas-indoors = Run it on the screen. Let people bet before each number shows.
step-move-it = Let the room choose the place, by hands. Show what each place does to the air indoors.
step-two-ends = The room finds a cord with two plugs. Let it bet on the street before you show it.
step-up-the-line = Now stand under the line, where the crew stands. One house is enough.
step-six-ways = Hand out the names of the six sound ways. Each person sorts: mine, not mine, not sure.
step-pairs-out = In pairs, one drives and one says why. Change places when the main is off.
step-pairs-back = The other one drives now. Each has done one way by the end of it.
step-pick-a-cord = Pass real cords from hand to hand, unplugged. Then let the screen choose with you.
step-hot-coil = Half of the cord lies in a coil. Ask before you wait.
step-alone = Each one alone, without help. Give every machine another seed. Any safe order passes.
step-go-home = Hand out the sheet. Each one says one change aloud. Local code and your utility come first.

question-who-owns-what = Who has a generator? Who has cords? Who has a carbon monoxide alarm on each level?
question-tonight = What would you do tonight if the power went out?
question-smell = Would you smell it? Who would wake up first?
question-who-is-hurt = Who is hurt by this? Is it the person who plugged it in?
moment-crew-in-danger = The crew has its hands on the line. What in this house could reach them?
