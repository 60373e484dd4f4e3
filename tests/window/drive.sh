#!/usr/bin/env bash
# Drives the real window on a display by synthetic keys and pointer, and measures what it costs at rest.
#
# usage: tests/window/drive.sh [PROGRAM]     needs a display (or xvfb-run), xdotool and ImageMagick's import
#
# From the cautions to the debrief by keys alone, then back to the shelf by the pointer alone; then it is closed, and opened again as it was left.
# After each step the picture must have changed, and the program must still be there.
# It prints the time to the first usable frame, the processor time at rest and the memory.
# Whole drills are played, and marked, in rehearsal.rs; this shows that the real window takes keys and pointer.
set -euo pipefail

program=${1:-target/debug/outage-drill}
rest_s=${REST_S:-10}
folder=$(mktemp -d)
trap 'kill "$pid" 2>/dev/null || true; rm -rf "$folder"' EXIT

# What is kept of the window is kept here, not where the machine's own settings are.
export XDG_CONFIG_HOME="$folder"

open_window() {
  "$program" 2>"$folder/errors" &
  pid=$!
  window=
  for _ in $(seq 200); do
    window=$(xdotool search --onlyvisible --pid "$pid" 2>/dev/null | tail -n 1) && [ -n "$window" ] && break
    kill -0 "$pid" || { cat "$folder/errors"; echo "the program ended before its window opened"; exit 1; }
    sleep 0.05
  done
  [ -n "$window" ] || { echo "no window within ten seconds"; exit 1; }
}
started=$(date +%s%N)
open_window

shot() { import -silent -window "$window" "rgb:$folder/$1"; }
colors() { import -silent -window "$window" -format '%k' info:; }
for _ in $(seq 200); do
  [ "$(colors)" -gt 500 ] && break
  sleep 0.05
done
[ "$(colors)" -gt 500 ] || { echo "nothing was drawn within ten seconds"; exit 1; }
echo "first usable frame: $((($(date +%s%N) - started) / 1000000)) ms after the start"
xdotool windowfocus --sync "$window"

step=0
shot before
expect_change() {
  step=$((step + 1))
  for _ in $(seq 100); do
    sleep 0.05
    kill -0 "$pid" 2>/dev/null || { cat "$folder/errors"; echo "the program ended at step $step: $1"; exit 1; }
    shot after
    if ! cmp -s "$folder/before" "$folder/after"; then
      sleep 0.3
      shot before
      echo "step $step: $1"
      return
    fi
  done
  echo "nothing changed at step $step: $1"
  exit 1
}
key() { xdotool key "$1"; expect_change "$2"; }
click() { xdotool mousemove --window "$window" "$1" "$2" click 1; expect_change "$3"; }

# By keys alone.
key Return "the cautions are read"
key Return "the first drill opens"
key F3 "a minute passes, the street goes dark"
key 1 "the panel opens"
key Return "the main breaker goes off"
key Tab "the focus moves to the generator breaker"
key F8 "another language"
key F8 "and back"
key plus "the street comes nearer"
key shift+Right "it is moved"
key Home "all of it again"
key F6 "the scene in words"
key Escape "the panel again"
key Escape "the log again"
key F1 "the keys"
key Escape "the log again"
key F10 "the debrief, what happened"
key Return "how it felt"
key Return "why"
key Return "what next"
key Return "the verdict"

# At rest: motion has ended, nothing is asked for.
sleep 6
ticks() { awk '{ print $14 + $15 }' "/proc/$pid/stat"; }
before=$(ticks)
sleep "$rest_s"
share=$(awk -v t="$(($(ticks) - before))" -v s="$rest_s" -v hz="$(getconf CLK_TCK)" 'BEGIN { printf "%.1f", 100 * t / hz / s }')
echo "at rest: $share % of one core over $rest_s s"
echo "memory: $(($(awk '/VmRSS/ { print $2 }' "/proc/$pid/status") / 1024)) MiB"
awk -v share="$share" 'BEGIN { exit !(share <= 3.0) }' || { echo "at rest it may take 3 % at most"; exit 1; }

# By pointer alone: "Back to the drills" stands below "Try again" at the left.
shot before
click 184 648 "back to the shelf by the pointer"
click 107 440 "a drill opens by the pointer"

# Closed and opened again: larger texts and the language stay.
key ctrl+plus "larger texts"
key F8 "another language"
close_window() {
  xdotool key ctrl+q
  for _ in $(seq 100); do kill -0 "$pid" 2>/dev/null || return 0; sleep 0.05; done
  echo "the window did not close"
  exit 1
}
close_window
grep -q 'text_percent: 125' "$folder/outage-drill/window.ron"
grep -q 'language: Some("es")' "$folder/outage-drill/window.ron"
open_window
sleep 2
xdotool windowfocus --sync "$window"
sleep 0.3
shot before
key Return "the cautions are read in the language that was chosen"
close_window
echo "driven: $step steps"
