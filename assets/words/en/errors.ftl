# Faults of files and of what is typed: what is wrong; a hint says what to do.
# $detail is what the reader of the format says, in English.

error-syntax = This cannot be read: { $detail }.
error-unreadable = The file or folder cannot be read: { $detail }. Check the name.
error-version = The file has version { $found }. This program reads version { $known }.
error-not-positive = “{ $field }” is { $value }. It has to be more than zero.
error-unknown-name = There is no { $kind } named “{ $name }”.
error-missing-word = Something is missing here: { $kind }.
error-gauge = “{ $value }” is not a wire size for this. Write a gauge such as "12" or "10".
error-cord-letters = “{ $value }” is not a cord type. Write letters such as "SJTW" or "STW".
error-cord-lies = This cord has no way to lie. Name one or more in "lies".
error-lent-house = These reach the wiring of the house: { $cords }. Where a neighbor lends “{ $lent }”, use only cords that end in a connector or a strip.
error-strip-alone = A strip with two plugs needs a cord that its second plug goes into. Give the site a “neighbor_cord”.
error-adapter = Only a machine with a plug for both legs can have an adapter. Leave “adapter” out, or give it “plug: Plug” and a circuit on both legs.
error-code-letter = “{ $value }” is not a code letter of a motor. Write one from 'A' to 'V'.
error-store-levels = The levels do not fit. “off_level” has to be below “on_level”, and both from 0 to 1.
error-no-battery = This switch moves a load to the battery, but the site has no “battery”. Add one, or name another source.
error-cover-by-hand = A “cover” belongs to a transfer switch that works by itself. Add “automatic: true”, or take “cover” away.
error-fuse-two-legs = A fuse guards one leg. Give a circuit on both legs a breaker.
error-subpanel-transfer = The subpanel “{ $name }” has to hang on one transfer switch. Add it to “transfers” once.
error-moved-twice = Two transfer switches move “{ $name }”. One load hangs on one switch only.
error-share = The share is { $value }. It has to be from 0 to 1.
error-percent = The percentage is { $value }. It has to be from 0 to 100.
error-story-order = This happens before the line above it can be over. Put the story in order of time.

error-run-cut = The run file was cut short: its last line is missing. Save the run again.
error-run-head = This is not the head of a run file. Give a file that “--save” has written.
error-run-version = The run file has version { $found }. This program reads version { $known }.
error-run-changed = The drill “{ $name }” has changed since this run was saved. Play it again to mark it.
error-run-seed = The seed has to be a whole number.
error-run-line = This line does not belong here. Each line before the end needs a time, such as @0:48.
error-run-edited = This run was changed after it was saved: it has what no drill could hold. Use the file as it was saved.
error-run-backwards = The times of the actions run backwards. Use the file as it was saved.

# Kinds of names, as in “There is no … named …”.
error-kind-verb = action or control
error-kind-control = control
error-kind-position = position
error-kind-sight = place to look at
error-kind-point = point to test
error-kind-callee = person to call
error-kind-listener = person to tell
error-kind-time = length of time
error-kind-end = further word
error-kind-mistake = mistake
error-kind-drill = drill
error-kind-site = site
error-kind-cord = cord
error-kind-pole = pole
error-kind-span = span
error-kind-circuit = circuit
error-kind-subpanel = subpanel
error-kind-inlet = inlet
error-kind-appliance = appliance
error-kind-transfer = transfer switch
error-kind-generator = generator
error-kind-transformer = transformer
error-kind-battery = battery

error-words-token = “{ $token }” has to stand here.
error-words-token-after = “{ $token }” has to stand after this.
error-words-value = “{ $id }” says nothing. Write its text after “=”.
error-words-id = The name of a message has to stand here. It begins with a letter from a to z.
error-words-inside = Something has to stand between these braces, such as $name or a text in quotes.
error-words-brace = This brace closes nothing. Delete it, or open one before it.
error-words-quote = The quote before this has no end. Write a second one.
error-words-default = One of the choices has to begin with “*”. It is taken where no other fits.
error-words-missing = The message “{ $id }” is missing. Write it in { $file }.
error-hint-misspelt = “{ $name }” looks like it. Is that a slip?
error-hint-nearest = Did you mean “{ $name }”?
error-hint-known = Use one of these: { $names }.
error-hint-apparatus = No file in “apparatus” names any. Add it there under “{ $list }”.
error-like-circle = This leads back to itself: { $names }. Let one of them be like none of the others.
error-level = The level is { $value }. It is a number from 1 to 5.
error-tracks = Name at least one of the tracks: Class, Apprentice, Home.
error-teaches = Name one to four things that the drill teaches.
error-heading = This line of the heading is not understood: { $line }
error-heading-passes = A heading says whether the run passes: "# passes: yes" or "# passes: no".
error-kind-question = question
error-kind-answer = answer
error-kind-turn = turn of events
error-name-twice = This name is there twice: { $name }.
error-unknown-field = There is no field of this name here: { $name }.
error-unknown-choice = This is not one of the choices here: { $name }.
error-double-field = This field is there twice: { $name }.
error-missing-field = A field is missing before this bracket: { $name }.
error-expected-number = A number has to stand here.
error-number-bounds = This number is too large or too small here.
error-expected-text = A text between quotes has to stand here.
error-expected-true-false = Here has to stand true or false.
error-expected-list = A list in square brackets has to stand here.
error-run-other = This run is of another drill, or of another number of it. Compare two runs of the same one.

# What is said of the learners of a run. $name is what was typed.
error-day = “{ $text }” is no day of the calendar. Write one like 2026-03-01.
error-seated = “{ $name }” is no way to sit at a drill. Use one of these: { $known }.
error-learner-empty = A learner's name is empty. Type a name, or leave it out.
error-learner-odd = A learner's name has a sign that cannot be shown on one line. Type the name again.
error-learner-long = A learner's name is too long. Use { $most } letters at most.
error-learner-twice = The learner “{ $name }” is named twice. Name each learner once.
error-handed = “{ $text }” does not say who took over and when. Write the clock and a learner who is named above: handed 12:30 Ben.
error-handed-first = Nobody is named yet who could hand over. Begin with “play NAME --learner ANA”.
error-learners-many = { $given } learners are named, and { $most ->
    [one] only one sits like this.
   *[other] { $most } at most sit like this.
} Name fewer, or choose another way to sit.
