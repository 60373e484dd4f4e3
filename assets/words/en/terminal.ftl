# The terminal: the drill as text, and the reports.

# No window. $command is what to type instead.
terminal-no-window = This build has no window.
terminal-as-text = The drill also runs as text. Type: { $command }

# $tag is what was asked for, $available a list of tags.
terminal-language-unknown = There is no language “{ $tag }” here. Use one of these: { $available }.

# Lists.
terminal-drills = Drills:
terminal-place = At { $place }:
terminal-stands = Now: { $position }.
terminal-hint = Next: { $hint }

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
terminal-kind-mistake = Mistake
terminal-kind-harm = Harm

# A consequence and a finding. $text is a finished sentence or more.
terminal-path = The way the energy takes:
terminal-why = Why it matters: { $text }
terminal-now = Now: { $text }
terminal-instead = Next time: { $text }
terminal-source = Source: { $text }
terminal-finding-critical = This alone fails the run.

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
terminal-help = Type one action on a line:
terminal-help-set = set CONTROL POSITION moves something. You may leave out “set”.
terminal-help-look = look PLACE shows you what is there.
terminal-help-test = test POINT holds your tester to a point.
terminal-help-call = call WHO, or tell WHO, speaks to someone.
terminal-help-refuel = refuel pours fuel into the tank.
terminal-help-wait = wait 2m30s lets time pass.
terminal-help-event = wait alone waits until something happens.
terminal-help-own = help shows this. status tells how things stand. finish ends the drill and marks it. quit leaves without marks.
terminal-left = You left before the end. Nothing was marked.

# Files. $file is a path, $reason is the system's own words.
terminal-file-unreadable = { $file } cannot be read: { $reason }. Check the name and try again.
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
terminal-grammar = An action file has one action on a line, written as below. Each takes its usual time.
terminal-grammar-comment = What follows a # is a remark. You may leave out “set”.
terminal-grammar-time = Put @12:30 before an action to do it when the drill clock shows 12:30.

# The report of `read`.
read-points = At points to test:
read-things = Currents:
read-thing = { $name }: { $amps }
read-taken = Every machine that is switched on counts as running.
read-not-converged = These numbers do not count: the solution did not settle.

# The report of `check`.
terminal-check-sound = { $name }: read, no fault.
terminal-check-proof = Not proved yet: that a safe way leads to the goal. This version only reads the files.

# The report of `languages`.
terminal-language = { $tag } ({ $name }): { $present } of { $wanted } messages.
