"""Reads the window through the accessibility bus, as a screen reader does, and presses what it finds there.

usage: reader.py        on a session bus with the accessibility bus started, the window open

From the cautions into the first drill, to the panel, and there one breaker is switched: by names and actions alone.
Prints what was read, and ends with an error at the first thing that can't be found.
"""

import sys
import time

import pyatspi

PATIENCE_S = 20


def everything(node):
    """A node and all below it; what vanishes while it is read is left out."""
    yield node
    try:
        children = [node.getChildAtIndex(i) for i in range(node.childCount)]
    except Exception:
        return
    for child in children:
        if child is not None:
            yield from everything(child)


def all_nodes():
    desktop = pyatspi.Registry.getDesktop(0)
    for i in range(desktop.childCount):
        app = desktop.getChildAtIndex(i)
        if app is not None:
            yield from everything(app)


def seen():
    """Role and name of everything, with the node."""
    found = []
    for node in all_nodes():
        try:
            found.append((node.getRoleName(), node.name, node))
        except Exception:
            continue
    return found


def find(role, part):
    """Waits for a node of a role whose name has a part."""
    ends = time.monotonic() + PATIENCE_S
    while time.monotonic() < ends:
        for its_role, name, node in seen():
            if role in its_role and part in name:
                return name, node
        time.sleep(0.3)
    names = sorted({f"{its_role}: {name}" for its_role, name, _ in seen() if name})
    sys.exit(f"no {role} with {part!r} in its name; there are:\n" + "\n".join(names))


def press(part):
    name, node = find("button", part)
    if not node.queryAction().doAction(0):
        sys.exit(f"{name!r} can't be pressed")
    print(f"pressed: {name}")


def read(part):
    ends = time.monotonic() + PATIENCE_S
    while time.monotonic() < ends:
        for _, name, _ in seen():
            if part in name:
                print(f"read: {name}")
                return
        time.sleep(0.3)
    names = sorted({name for _, name, _ in seen() if name})
    sys.exit(f"nothing with {part!r} in its name; there are:\n" + "\n".join(names))


find("frame", "Outage Drill")
press("I have read this")
press("Start this drill")
press("In words")
read("Generator: engine stopped")
press("Panel")
press("Main breaker")
read("Main breaker: off")
