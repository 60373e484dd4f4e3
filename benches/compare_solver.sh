#!/usr/bin/env bash
# Times our circuit solver and a general-purpose distribution solver on the same networks, in one run, and prints ratios.
# Usage: benches/compare_solver.sh [HOUSES...]
# Needs Python 3 and, the first time, the package index, for a private environment under target/reference-solver.
set -euo pipefail
cd "$(dirname "$0")/.."
[ $# -gt 0 ] || set -- 1 4 10 40 100
environment=${CARGO_TARGET_DIR:-target}/reference-solver
if [ ! -x "$environment/bin/python" ]; then
  python3 -m venv "$environment"
  "$environment/bin/pip" --quiet install dss-python==0.15.7
fi
ours=$(mktemp) reference=$(mktemp)
trap 'rm -f "$ours" "$reference"' EXIT
cargo bench --locked --quiet --no-default-features --bench solve | tee "$ours"
"$environment/bin/python" benches/reference_solver.py "$@" | tee "$reference"
awk '
  function value(name,   i) { for (i = 1; i < NF; i++) if ($i == name) return $(i + 1); return "" }
  FNR == NR { if ($1 == "lateral") for (i = 3; i < NF; i++) mine[$2, $i] = $(i + 1); next }
  FNR == 1 {
    print ""
    print "Times faster than the reference, everything read on our side; difference of the summed volts"
    printf "%6s %6s %12s %14s %14s %10s %12s\n", "houses", "nodes", "by text", "direct unread", "direct read", "switch", "difference"
  }
  {
    load = mine[$2, "load"]; difference = mine[$2, "sum"] / value("sum") - 1
    printf "%6d %6d %12.1f %14.1f %14.1f %10.1f %12.1e\n", $2, value("nodes"), value("text") / load,
      value("direct") / load, value("read") / load, value("switch") / mine[$2, "switch"], difference
  }
' "$ours" "$reference"
