#!/usr/bin/env bash
# Times our circuit solver and a general-purpose distribution solver on the same networks, in turns, and prints ratios.
# Usage: benches/compare_solver.sh [HOUSES...]
# Both are run ROUNDS times (5 where nothing is set) for each size, one after the other, and the best of each counts.
# Needs Python 3 and, the first time, the package index, for a private environment under target/reference-solver.
set -euo pipefail
cd "$(dirname "$0")/.."
[ $# -gt 0 ] || set -- 1 3 10 40 100
environment=${CARGO_TARGET_DIR:-target}/reference-solver
if [ ! -x "$environment/bin/python" ]; then
  python3 -m venv "$environment"
  "$environment/bin/pip" --quiet install dss-python==0.15.7
fi
times=$(mktemp)
trap 'rm -f "$times"' EXIT
for houses in "$@"; do
  for _ in $(seq "${ROUNDS:-5}"); do
    cargo bench --locked --quiet --no-default-features --bench solve -- "$houses"
    "$environment/bin/python" benches/reference_solver.py "$houses"
  done | tee -a "$times"
done
awk '
  { for (i = 3; i < NF; i += 2) if (!(($1, $2, $i) in best) || $(i + 1) < best[$1, $2, $i]) best[$1, $2, $i] = $(i + 1) }
  $1 == "reference" && !($2 in seen) { seen[$2]; order[++n] = $2 }
  END {
    print ""
    print "Times faster than the reference, everything read on our side; difference of the summed volts"
    printf "%6s %6s %8s %14s %12s %14s %10s %11s\n", "houses", "nodes", "by text", "direct unread", "direct read",
      "switch", "refactored", "difference"
    for (i = 1; i <= n; i++) {
      h = order[i]
      load = best["lateral", h, "load"]; switched = best["reference", h, "switch"]
      printf "%6d %6d %8.1f %14.1f %12.1f %14.1f %10.1f %11.1e\n", h, best["reference", h, "nodes"],
        best["reference", h, "text"] / load, best["reference", h, "direct"] / load, best["reference", h, "read"] / load,
        switched / best["lateral", h, "switch"], switched / best["lateral", h, "full"],
        best["lateral", h, "sum"] / best["reference", h, "sum"] - 1
    }
  }
' "$times"
