#!/usr/bin/env bash
# Times our solver and a general-purpose distribution solver on the same networks, in one run, and prints the ratios.
#
#   benches/compare_solver.sh
#
# Needs Python 3 and the package index; the reference solver goes into an environment of its own below target/.
# Nothing of it is part of the program.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
place="${CARGO_TARGET_DIR:-target}/reference-solver"
[ -x "$place/bin/python" ] || python3 -m venv "$place"
"$place/bin/python" -c 'import dss' 2>/dev/null || "$place/bin/pip" install --quiet 'dss-python==0.15.7'
ours=$(cargo bench --locked --quiet --no-default-features --bench solve)
theirs=$("$place/bin/python" benches/reference_solver.py)
printf '%s\n%s\n\n' "$ours" "$theirs"
awk '
  $1 == "lateral"   { load[$2] = $6; bare[$2] = $9 + 0; nodes[$2] = $4 }
  $1 == "reference" { n = $2
    printf "%4d nodes: load change, all answers: %.2f us against %.2f (text, %.0f times), %.2f (direct, %.0f times), %.2f (direct, read, %.0f times)\n",
      nodes[n], load[n], $6, $6 / load[n], $8, $8 / load[n], $10, $10 / load[n] }
' <<<"$ours"$'\n'"$theirs"
