#!/usr/bin/env bash
# Opens the real window on a session bus of its own and reads it through the accessibility bus of Linux.
#
# usage: tests/window/reader.sh [PROGRAM]     needs a display (or xvfb-run), at-spi2-core, dbus and python3-pyatspi
#
# What is read and pressed: see reader.py beside this file.
set -euo pipefail

program=$(realpath "${1:-target/debug/outage-drill}")
here=$(realpath "$(dirname "${BASH_SOURCE[0]}")")
if [ "${OWN_BUS:-}" != yes ]; then
  OWN_BUS=yes exec dbus-run-session -- bash "$here/reader.sh" "$program"
fi
folder=$(mktemp -d)
export XDG_CONFIG_HOME="$folder" XDG_RUNTIME_DIR="$folder"
trap 'kill "${pid:-}" "${bus:-}" 2>/dev/null || true; rm -rf "$folder"' EXIT

/usr/libexec/at-spi-bus-launcher --launch-immediately --a11y=1 --screen-reader=1 2>"$folder/bus" &
bus=$!
sleep 2
"$program" --language en 2>"$folder/errors" &
pid=$!
timeout 150 /usr/bin/python3 "$here/reader.py" || { cat "$folder/errors"; exit 1; }
kill -0 "$pid" || { cat "$folder/errors"; echo "the program ended while it was read"; exit 1; }
