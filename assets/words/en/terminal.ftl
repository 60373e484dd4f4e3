# The terminal: the drill as text, and the reports.

# No window. $command is what to type instead.
terminal-no-window = This build has no window.
terminal-as-text = The drill also runs as text. Type: { $command }

# $tag is what was asked for, $available a list of tags.
terminal-language-unknown = There is no language “{ $tag }” here. Use one of these: { $available }.

# Lists.
terminal-drills = Drills. { $track }:
terminal-no-track = There is no track named “{ $name }”.
# A drill: how hard it is, and in which directions the source changes.
terminal-drill = { $level }. { $directions }.
terminal-place = At { $place }:
terminal-stands = Now: { $position }.
terminal-hint = Next: { $hint }
terminal-hint-line = Type: { $line }

# How everything stands.
terminal-wires = Wires:
terminal-appliances = In the house:
terminal-people = People:
terminal-neighbors = Neighbors:
terminal-generator = Generator and air:

# What sort of thing a line of the log tells.
terminal-kind-did = Done
terminal-kind-refused = Refused
terminal-kind-happened = It happens
terminal-kind-learnt = You learn
terminal-kind-mistake = Danger
terminal-kind-harm = Harm

# A consequence and a finding. $text is a finished sentence or more.
terminal-why = Why it matters: { $text }
terminal-now = Now: { $text }
terminal-instead = Next time: { $text }
terminal-source = Source: { $text }
terminal-finding-critical = This alone fails the run.
terminal-finding-aside = This did not stand in the way of a pass.
terminal-finding-failed-already = The run had failed already. This is not counted besides.

# The debrief. $title names a criterion.
terminal-criteria = What counted:
terminal-criterion-met = { $title }: met.
terminal-criterion-met-critical = { $title }: met. No run can pass without it.
terminal-criterion-missed = { $title }: not met.
terminal-criterion-missed-critical = { $title }: not met. No run can pass without it.
terminal-findings = { $count ->
    [0] Nothing was found wrong.
    [one] One thing was found:
   *[other] { $count } things were found:
}

# The drill by keyboard.
terminal-help = An action is one line:
terminal-help-set = set CONTROL POSITION moves something. You may leave out “set”.
terminal-help-look = look PLACE shows you what is there.
terminal-help-test = test POINT holds your tester to a point.
terminal-help-call = call WHO, or tell WHO, speaks to someone.
terminal-help-refuel = refuel pours fuel into the tank.
terminal-help-wait = wait 2m30s lets time pass.
terminal-help-own = You can also type:
terminal-left = You left before the end. Nothing was marked. This is no pass.

# Files. $file is a path, $reason is the system's own words.
terminal-file-unwritable = { $file } cannot be written: { $reason }. Choose a folder that you may write to.
terminal-saved = The run is saved in { $file }.
terminal-saved-not = The verdict above stands, but the run is not saved.

# Faults of files. $text is what stands there.
terminal-fault-found = Found there: { $text }
terminal-not-done = { $count ->
    [one] Nothing was done: there is one fault.
   *[other] Nothing was done: there are { $count } faults.
}

# The grammar of an action file.
terminal-grammar = An action file has one action on a line. Each takes its usual time.

# The report of `read`.
read-points = At points to test:
read-things = Currents:
read-thing = { $name }: { $amps }
read-cords = Cords, as warm as they get in the end:
read-cord = { $name }: { $amps } of { $carries }, loses { $lost }, settles at { $celsius }
read-cord-burns = { $name }: { $amps } of { $carries }, loses { $lost } and chars before it settles
read-gfcis = Ground-fault devices:
read-gfci-holds = { $name }: holds, { $residual } goes another way
read-gfci-opens = { $name }: opens, { $residual } goes another way
read-gfci-two-bonds = { $name }: opens, the neutral behind it is grounded; { $residual } goes another way
read-source = { $name }: gives { $watts }
read-wave-clean = The wave is as clean as the utility's: { $distortion } off a sine. It heats windings by { $heat }. A clock gains { $gain } an hour.
read-wave-rough = The wave is rough: { $distortion } off a sine. It heats windings by { $heat }. A clock gains { $gain } an hour.
read-wave-refused = The wave is { $distortion } off a sine. A battery backup stays on its battery. It heats windings by { $heat }. A clock gains { $gain } an hour.
read-taken = Every machine that is switched on counts as running.
read-not-converged = These numbers do not count: the solution did not settle.

# The report of `check`.

# The report of `languages`.
terminal-language = { $tag } ({ $name }): { $present } of { $wanted } messages.

# The drill by keyboard, continued.
terminal-goal = Goal: { $goal }
terminal-choices = Positions: { $choices }.
terminal-points = Points you can test: { $points }
terminal-places = You can go to these places:
terminal-begin = Type “help” to see what you can do. Type “status” to hear how things stand.
terminal-begin-coached = Mistakes are explained as you make them.
terminal-begin-guided = The next safe step is shown with its reason. Mistakes are explained as you make them.
terminal-begin-assessed = This is a test. You get no help until the end, and you know only what you look at or test.
terminal-help-clock = @12:30 before an action holds it until the clock shows 12:30. A “#” begins a comment.
terminal-help-at = at PLACE tells what is there and what you can do. A plain “at” lists the places.
terminal-help-status = status tells how things stand. A plain “wait” waits until something happens, ten minutes at most.
terminal-help-log = log tells again what has been done and what has happened.
terminal-help-over = over BEN hands the drill over to Ben. The run keeps when.
terminal-help-rewind = rewind goes back to before the last mistake; rewind 12:30 goes back to that time.
terminal-help-what = what NEUTRAL tells what a trade word means. A plain “what” lists the words.
terminal-help-hint = hint shows the next safe step and why. In a test there is none.
terminal-help-finish = finish ends the drill and marks it.
terminal-help-quit = quit leaves without marks.

# The report of `check`. What holds of a drill, what does not, and what is not looked at. $ids is a list of message ids.
terminal-check-empty = There is no drill here. Give a folder that holds “sites” and “drills” with files that end in “.ron”.
terminal-check-words = These names have no words in this language yet: { $ids }
terminal-check-unguarded = Too large for the wire behind it: { $ids }
check-wired = The files are read, and the house can be wired.
check-not-wired = The house cannot be wired.
check-guarded = Each breaker is small enough for its wire, or said to be a fault that is found.
check-not-guarded = A breaker is too large for its wire. The wire could burn before it trips.
check-start = The numbers at the start settle.
check-not-start = The numbers at the start do not settle.
check-settles = When nothing is done, the numbers settle at every moment to the end.
check-not-settles = When nothing is done, the numbers at some moment do not settle.
check-idle = Doing nothing is not a pass.
check-not-idle = Doing nothing is a pass. Ask for something in the goal.
check-claim-safe-way = A safe way leads to the goal.
check-claim-goes-on = The goal stays in reach from every state in which nobody is harmed.
check-claim-marking-agrees = The marking finds every breach of how things stand, and only those.
check-claim-by-construction = The equipment keeps the house off the line, whatever is moved.
check-claim-sound-start = The start can come about from a sound house.
check-claim-fuel = The engine runs out of neither fuel nor oil.
check-claim-overload = The set carries whatever is switched on.
check-claim-gas = No gas gathers in the house.
check-claim-heat = No cord and no wire grows too warm.
check-claim-order = Nothing hangs on the order of moves and the time between them.
check-shown = Proved, by this way that was played and passed: { $claim }
check-proved = Proved: { $claim }
check-proved-positions = Proved for positions only: { $claim }
check-broken = UNSOUND. This does not hold: { $claim }
check-broken-way = UNSOUND. This does not hold: { $claim } The shortest way to where it breaks:
check-declared = Not safe by construction, as this drill means it. The shortest way to feed the line:
check-not-covered = Not covered: { $claim } Because: { $why }
check-searched = Searched: { $states } states, { $solves } of them solved. It took { $seconds } and { $megabytes } MB: { $rate } states a second.
check-like = Searched before: nothing that the searches read differs from “{ $first }”.
check-kept = Not proved again: this proof was kept from an earlier check.
check-alike = { $name }: each property as { $first } has it.
check-progress = { $done } of { $all } drills checked; { $states } states met so far.
check-counts = Checked: { $drills } drills in { $variants } variants, in { $elapsed }. By the searches of another variant: { $like }.
check-total = In all: { $states } states, { $solves } of them solved. Work: { $seconds }, with { $megabytes } MB at most. On each core: { $rate } states a second.
check-skipped = Not proved again, but kept from an earlier check: { $kept } variants.
check-as-written = Left out: every variant. Each drill was checked as it is written.
check-unused-piece = No home takes up “{ $name }”. Only its form was checked: use it in a home to check the rest.
check-written = Written: { $path }
check-replay = Play it: outage-drill play { $drill } --seed { $seed } --actions { $path }
proof-by-itself = what a controller does by itself is not planned. A way may be there and not be found.
proof-too-large = there are more states than fit in this machine.
proof-fuel = the tank may be empty before the end if the set gives all it can. Runs are marked by what they burn.
proof-oil = the oil may be low before the end if the set runs all the time. Runs are marked by how long it ran.
proof-overload = everything at once is more than the set is rated for. Runs are marked by what they switch on.
proof-gas-near = the engine can be run where its gas gets in. How much depends on how long it runs.
proof-gas-far = how much gas comes in from far away is an assumption. Runs are marked by what gathers.
proof-heat-cords = how warm a cord grows depends on what it carries and for how long.
proof-heat-wires = how warm a wire grows depends on what it carries and for how long.
proof-order = a state does not tell what came before it. Runs are marked by what happened when.
proof-way-not-passed = the way that was found by positions does not pass when it is played.

# The report of `evidence`: published figures beside what the models give.
# Headings of its columns; $source and $quantity are as the publication writes them.
evidence-section = Section
evidence-quantity = Quantity
evidence-published = Published
evidence-ours = Ours
evidence-difference = Difference
evidence-tolerance = Tolerance
evidence-source = Source
evidence-standing = How known

# How near ours has to come, how far a figure was seen, and what stands where there is no number.
evidence-at-least = at least
evidence-at-most = at most
evidence-no-end = no limit
evidence-no-answer = no answer
evidence-checked = checked
evidence-computed = computed
evidence-from-memory = from memory

# What is said under a row. $why is a reason in English, $stated a number.
evidence-differs = Ours differs, as stated: { $why }.
evidence-beyond = Ours is not within the tolerance.
evidence-differs-otherwise = Ours is stated to be { $stated } here, and is not: { $why }.
evidence-healed = Ours is stated to differ here, and does not: { $why }.
evidence-wrong = { $section }: { $quantity }: published { $published }, ours { $ours }. This row does not hold.

# What was counted.
evidence-counted = Counted; rows with the same formula in brackets count once:
evidence-total = { $section }: { $counted } counted of { $rows } rows; { $differ } differ for a stated reason; { $wrong } do not hold.
evidence-total-all = All sections: { $counted } counted of { $rows } rows; { $differ } differ for a stated reason; { $wrong } do not hold.

# The sections of published figures.
evidence-section-wire-sizes = Wire sizes
evidence-section-cords = Flexible cords
evidence-section-building-wire = Building wire
evidence-section-breakers = Breakers and fuses
evidence-section-ground-fault = Ground-fault devices
evidence-section-shock = Shock
evidence-section-line-work = Line work
evidence-section-standby-rules = Standby rules
evidence-section-timing = Timing
evidence-section-utility-side = Utility side
evidence-section-ride-through = Motors and ride-through
evidence-section-household-loads = Household loads
evidence-section-carbon-monoxide = Carbon monoxide
evidence-section-fuel = Fuel
evidence-section-split-phase = Split-phase service
evidence-section-four-node = 4-node feeder
evidence-section-drawn-networks = Drawn networks
terminal-help-say = say line-side dead answers what the drill asks.

# The report of simulated learners: who plays, and what came of it.
learners-kind-random = Learners who do whatever comes to hand
learners-kind-careful-but-wrong = Careful learners with one mistake
learners-kind-forgetful = Forgetful learners
learners-kind-expert = Experts
learners-progress = { $done } of { $all } runs are played.
learners-runs = { $runs } runs were played.
learners-kind = { $kind }: { $passed } passed, { $failed } did not.
# $mistake is a name, as lists of actions have it.
learners-mistake = { $mistake }: { $passed } passed, { $failed } did not.

# Whether the marking and the second judge agree. $rule is a name.
learners-agreed = On { $rules } rules the marking and the second judge agree { $agreed } of { $all } times. The second judge is unsure { $unsure } times.
learners-rule = { $rule }: found by both { $both } times, by neither { $neither } times, unsure { $unsure } times.
learners-not-judged = { $rule }: found in { $runs } runs. The second judge does not know this rule.
learners-marked-alone = { $kind }, { $drill }, seed { $seed }: only the marking finds { $rule }.
learners-judged-alone = { $kind }, { $drill }, seed { $seed }: only the second judge finds { $rule }.
learners-passed-with-a-breach = { $runs } runs pass although a critical rule is broken.

# Rules that are broken on purpose.
learners-broken = Rules broken on purpose: { $caught } of { $all } are caught.
learners-not-caught = { $rule }, { $how }: no run gives it away. More runs may.
learners-how-never-found = never found
learners-how-always-found = always found
learners-how-inverted = turned around
learners-again = { $runs } runs were marked again in { $elapsed }. { $same } came to the same.
learners-guided = Guided help led to a pass from { $passed } of { $all } safe states within runs. From { $late } more it was too late already.
learners-not-led = { $drill }, seed { $seed }, after { $deeds } deeds: following the guide ends with { $rules }.
learners-endangered = { $drill }: following the guide breaks { $rule }.

# The roster of many saved runs: headings, verdicts and counts.
roster-learner = Learner
roster-drill = Drill
roster-seed = Seed
roster-practice = Practice
roster-coached = coached
roster-guided = guided
roster-assessed = test
roster-unknown = not known
roster-day = Date
roster-seated = Seated
roster-alone = alone
roster-in-turns = in turns
roster-as-a-team = as a team
roster-in-pairs = in pairs
roster-handed = { $seated }, handed over at { $clocks }
roster-verdict = Verdict
roster-findings = Broken
roster-fault = Why it is not marked
roster-seal = Seal
roster-seal-whole = as saved
roster-seal-broken = changed after it was saved
roster-seal-missing = not sealed
terminal-seal-broken = This run was changed after it was saved. It is marked as it stands now.
terminal-seal-missing = This run is not sealed. Nothing tells whether it was changed after it was saved.
roster-fault-hidden = Mark this folder with names to see why.
roster-passed = passed
roster-not-passed = not passed
roster-progress = { $done } of { $all } files are read.
roster-marked = { $runs ->
    [one] One run was marked: { $passed } passed.
   *[other] { $runs } runs were marked: { $passed } passed.
}
roster-not-marked = { $files ->
    [one] One file could not be marked:
   *[other] { $files } files could not be marked:
}

# The debrief, page by page. $title is the page's own, $text what the learner said.
terminal-debrief-page = { $number }. { $title }
terminal-debrief-said = You said: { $text }
terminal-debrief-on = Type what you want to say, or nothing. Then press Enter. “back” goes back a page. “again 8:30” shows the street as it stood then.
terminal-debrief-clock = Give the time as minutes and seconds, such as “again 8:30”.
terminal-debrief-stood = What is not as it was at the start:
terminal-debrief-curves = The highest values, and when they came:
terminal-debrief-peak = { $label }: { $value } at most, at { $clock }.
terminal-debrief-peak-limit = { $label }: { $value } at most, at { $clock }. For comparison, { $what }: { $limit }.
# $skill is what to practice, $title and $drill the drill that trains it.
terminal-debrief-next = { $skill }: “{ $title }” ({ $drill }).

# Two branches of a drill side by side. $was and $tried are clocks, or how something stands.
terminal-compare = As it was, to { $was }, beside as it was tried, to { $tried }:
terminal-compare-row = { $label }. Before: { $was }. Now: { $tried }.
terminal-compare-people = What became of people and things:
terminal-compare-gone = Found then, and not any more:
terminal-compare-come = Found now, and not then:
terminal-compare-positions = What is different at the end:
terminal-compare-volts = Volts at the end:
terminal-compare-none = nothing
terminal-compare-nothing = There is nothing to compare yet. Go back with “rewind” and try another way first.
terminal-debrief-what-if = What if? Type the number of a finding to go back to before it and try another way.
terminal-debrief-no-number = No finding has this number. Type a number from the list, “compare”, or nothing to go on.
terminal-help-compare = compare tells what comes out otherwise than before you went back.

# What a learner has shown unaided. Days are written as 2026-03-01.
mastery-head = { $learner }, on { $today }: { $runs ->
    [one] one run counts.
   *[other] { $runs } runs count.
}
mastery-no-run = No run of { $learner } counts here. Only tests done alone on a known day count, without going back. With “--today 2026-03-01” you see where to start.
mastery-left-out = { $runs ->
    [one] One run does not count. Only tests done alone on a known day count, without going back.
   *[other] { $runs } runs do not count. Only tests done alone on a known day count, without going back.
}
mastery-seal = Seal: { $seal }. It is taken as it stands: { $files }
mastery-never = Not tried unaided yet.
mastery-tries = Shown { $passes }, missed { $fails }, last on { $last }. Recall now: { $recall }.
mastery-due = The next refresher is due on { $day }.
mastery-due-now = A refresher is due now.
mastery-season = For the season, practice on { $day }.
mastery-drill = A drill for it: { $drill }.
mastery-how = Recall halves with each half-life. A pass doubles the half-life, a fail halves it. These figures are common practice and fitted to nobody.
terminal-season-past = The season { $season } is before { $today }. Give a day that is still to come.
