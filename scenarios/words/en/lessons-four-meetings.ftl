# The course for apprentices: four meetings of two hours.

lesson-four-meetings-title = Four meetings for apprentices
lesson-four-meetings-about = States and isolation, unsafe finds, service and second sources, the line. A test on the line ends it. Then comes the job, under supervision.
sitting-states = First meeting: what feeds what
sitting-unsafe-finds = Second meeting: faults
sitting-service = Third meeting: service and second sources
sitting-the-line = Fourth meeting: the line

step-recall = First from memory, in writing, books shut. Then say the lines of “before you begin” that are new.
step-read-the-street = Point at each wire and let one person say what feeds it. Then let the screen tell.
step-full-example = You do it once in full, and give the reason of each step. Then they do it.
step-half-example = You do the first half. They finish it, and give the reasons.
step-alone-with-help = They do all of it. Help is on. Ask for a reason whenever someone is quick.
step-prove-first = Nobody moves a breaker before its circuit is proved by a test.
step-find-it = Don't say what is wrong. Let them look, test, say it and decide.
step-one-leg = Let them add up both legs on paper before the drill shows them.
step-live-lugs = Show what stays live with the main off. Nobody in the room opens a real panel.
step-lock-it = Each one says aloud: off, locked, tested. Then the work begins.
step-count-sources = Let them write down every source of the house before they touch one.
step-three-testers = Each tester is checked on something live, before and after.
step-see-the-gap = A lever is no proof. Find the gap in the air at every break.
step-clamp-order = Let one read the order aloud while another one does it.
step-crew-work = Two work as a crew. One acts, one watches and may stop it at any time.
step-final = Each one alone, without help. Give every machine another seed.
step-log-book = Write the date and what was shown into the log book. Plan the check after three and six months.

question-what-feeds-it = What feeds this wire right now, and how do you know?
question-what-is-new = What is built in another way here? What is the same?
question-trust-labels = Would you trust this directory? What would it take?
question-what-guards-the-wire = What guards this wire? Is it the breaker, or luck?
question-where-does-it-go = Where does the current go that doesn't come back?
question-why-no-trip = There is a fault. Why does nothing open?
question-recall-finds = From memory: what were the unsafe finds, and what gave each away?
question-still-live = The main is off. What is still live in here?
question-who-opens-it = May you open this? If not, who can make it dead?
question-what-else-feeds = What else can feed this house? How would you find out?
question-recall-lock = From memory: which steps make a machine safe before you open it?
question-which-clamp-first = Which clamp goes on first? Which one comes off last? Why?
question-who-is-clear = Who has to say “clear” before it is closed?
moment-what-do-you-see = What do the lamps tell you? What is your first move?
moment-will-it-start = The utility fails while you work. Will the engine start? What holds it?
moment-who-made-it-live = The line was dead a minute ago. Who made it live, and what do you do now?

objective-bond-and-fault = Match neutral, ground and ground-fault devices, and say why one trips or doesn't.
objective-lost-neutral = Read the signs of a lost neutral and act on them.
objective-lock-and-test = Shut off, lock and test before service work.
objective-second-source = Find a second source and take it off too.
objective-dead-line = Get a line that is open to see, tagged, tested and grounded.
objective-give-it-back = Deal with a customer's source, take the grounds off in order, and give the line back.
