# Variations: faults of files, and what is said of the variant that is open.

error-kind-variation = variation
error-variation-taken = Each variation has a name of its own, and “as-written” is none: { $name }.
error-variation-drawn = Each variation stands once in “draw”, or “draw” is left out: { $name }.
error-variations-many = This offers more drills than one file may: { $most }.
error-swapped = The wires of these two can't be swapped: { $one }, { $other }. Name two circuits of one panel and one voltage.
error-out-of-range = { $field } can't be { $value } here.

# $seed is a whole number.
session-seed = Drill number { $seed }. The same number gives the same drill.

# Variants of a drill. $name is as in the file, $seed a whole number.
terminal-variant = { $name }: seed { $seed }
terminal-no-variant = There is no variation “{ $name }” here. Use one of these: { $names }.
terminal-help-another = another opens the next drill of this kind.
