#!/usr/bin/env python3
"""Draws networks of realistic values, has an analog circuit simulator solve them, and keeps its answers as test data.

Usage: tests/networks/compare.py            draws all networks anew and writes one file each into drawn/
       tests/networks/compare.py --check    solves them and says how far the kept answers are from the simulator's
Needs Python 3 and `ngspice` on the path (written with ngspice 39; package `ngspice` of the usual distributions).

The simulator works by another method than ours: modified nodal analysis of the whole circuit, with a current as an
unknown of its own for every inductor, source and ideal winding, and LU factors with pivoting (AC analysis at 60 Hz).
A transformer is given to it as windings with series impedances around ideal ratios of turns (controlled sources), coupled
conductors as inductors with mutual inductance and controlled sources for the resistance that they share in earth.
Sources that aren't synchronized are solved one group at a time, the EMFs of the others at zero, reactances as at 60 Hz.
All networks and their values are invented for this project; a seed draws the same ones again.
A development check only: nothing of this is part of the program, and no test needs the simulator.
"""

import cmath
import math
import pathlib
import random
import re
import subprocess
import sys
import tempfile

KEPT = pathlib.Path(__file__).resolve().parent / "drawn"
OMEGA = 2.0 * math.pi * 60.0
EARTH = "earth"
PER_FAMILY = 4


class Net:
    """A network under construction; elements are dictionaries in the order in which they were added."""

    def __init__(self, name, seed):
        self.name, self.seed = name, seed
        self.random = random.Random(seed)
        self.nodes, self.elements = [], []

    def draw(self, low, high):
        """Evenly over the decades, four digits."""
        return float(f"{low * (high / low) ** self.random.random():.4g}")

    def node(self, name, base_v, ungrounded=True):
        self.nodes.append((name, base_v, ungrounded))
        return name

    def add(self, kind, **values):
        self.elements.append({"kind": kind, **values})

    def series(self, a, b, r, x=0.0):
        self.add("Series", a=a, b=b, r=r, x=x)

    def shunt(self, a, b, r, x=0.0):
        self.add("Shunt", a=a, b=b, r=r, x=x)

    def load(self, a, b, r, x=0.0):
        self.add("Load", a=a, b=b, r=r, x=x)

    def switch(self, a, b, closed, r=0.001):
        self.add("Switch", a=a, b=b, r=r, closed=closed)

    def source(self, group, ports):
        self.add("Source", group=group, ports=ports)


# ---- parts of networks ---------------------------------------------------------------------------------------------


def line(net, spans, utility):
    """A lateral of phase and neutral with a rod at each pole; returns the last pole. Unbroken only with a utility."""
    phase, neutral = net.node("line0", 7200.0), net.node("line0n", 7200.0, False)
    if utility:
        z = (net.draw(0.05, 0.5), net.draw(0.5, 3.0))
        net.source(0, [(phase, neutral, 7200.0 + 0.0j, *z)])
        net.shunt(neutral, EARTH, net.draw(0.5, 3.0))
    for k in range(1, spans + 1):
        ends = (net.node(f"line{k}", 7200.0), net.node(f"line{k}n", 7200.0, False))
        km = net.draw(0.05, 0.5)
        r = [[0.45 * km, 0.059 * km], [0.059 * km, 0.62 * km]]
        x = [[0.86 * km, 0.45 * km], [0.45 * km, 0.93 * km]]
        net.add("Coupled", ends=[(phase, ends[0]), (neutral, ends[1])], r=r, x=x)
        phase, neutral = ends
        net.shunt(neutral, EARTH, net.draw(10.0, 100.0))
    return phase, neutral


def transformer(net, tag, pole):
    """A center-tapped transformer with its core and the bond of its tap; returns its secondary."""
    out = [net.node(f"{tag}x1", 120.0), net.node(f"{tag}x2", 120.0), net.node(f"{tag}xn", 120.0, False)]
    va = net.random.choice([15000.0, 25000.0, 37500.0, 50000.0])
    net.add("CenterTapped", primary=pole, secondary=(out[0], out[2], out[1]), va=va, primary_v=7200.0, half_v=120.0,
            r_pu=net.draw(0.009, 0.016), x_pu=net.draw(0.012, 0.024))
    net.shunt(*pole, net.draw(5e5, 2e6))
    net.shunt(*pole, 0.0, net.draw(2e5, 8e5))
    net.series(pole[1], out[2], 0.001)
    return out


def house(net, tag, secondary, main=True, drop_neutral=True):
    """A drop, a panel with its electrode, and branch circuits; returns the panel's bars."""
    feet = net.draw(40.0, 200.0)
    panel = [net.node(f"{tag}1", 120.0), net.node(f"{tag}2", 120.0), net.node(f"{tag}n", 120.0, False)]
    for k in (0, 1):
        inside = net.node(f"{tag}service{k + 1}", 120.0)
        net.series(secondary[k], inside, 0.00017 * feet, 0.00003 * feet)
        net.switch(inside, panel[k], main)
    if drop_neutral:
        net.series(secondary[2], panel[2], 0.00027 * feet, 0.00003 * feet)
    net.shunt(panel[2], EARTH, net.draw(8.0, 120.0))
    branches(net, tag, panel, net.random.randint(2, 5))
    return panel


def branches(net, tag, panel, count):
    """Branch circuits: heaters, motors, a corrected lamp, and one load on both legs."""
    for k in range(count):
        leg, ohm = net.random.randint(0, 1), net.draw(0.05, 0.6)
        end, back = net.node(f"{tag}b{k}", 120.0), net.node(f"{tag}b{k}n", 120.0, False)
        net.series(panel[leg], end, ohm, 0.04 * ohm)
        net.series(panel[2], back, ohm, 0.04 * ohm)
        r = net.draw(8.0, 400.0)
        net.load(end, back, r, r * net.random.choice([0.0, 0.0, 0.5, 0.9, -0.2]))
    net.load(panel[0], panel[1], net.draw(5.0, 60.0), net.draw(0.2, 10.0))


def generator(net, group, bonded, electrode, angle=0.0):
    """A 120/240 V set; a floating neutral hangs on its frame by insulation alone. Returns legs, neutral, frame."""
    legs = [net.node("gen1", 120.0), net.node("gen2", 120.0), net.node("genn", 120.0, False)]
    frame = net.node("genframe", 120.0, False)
    z = (net.draw(0.05, 0.2), net.draw(0.15, 0.5))
    emf = cmath.rect(net.draw(116.0, 128.0), math.radians(angle))
    net.source(group, [(legs[0], legs[2], emf, *z), (legs[2], legs[1], emf, *z)])
    net.shunt(frame, EARTH, net.draw(*electrode))
    net.shunt(legs[2], frame, 0.002 if bonded else net.draw(2e4, 2e5))
    return [*legs, frame]


def cord(net, tag, start, ends, feet, ohm_per_1000_ft):
    """A cord's conductors between matching ends."""
    r = float(f"{feet * ohm_per_1000_ft / 1000.0:.5g}")
    for k, (a, b) in enumerate(zip(start, ends)):
        net.series(a, b, r, float(f"{0.05 * r:.4g}"))


def feed_panel(net, panel, bonded, ground_wire):
    """A generator on a panel through a cord, with or without its ground wire."""
    legs_and_frame = generator(net, 0, bonded, (20.0, 500.0))
    feet, ohm = net.draw(15.0, 60.0), net.random.choice([1.02, 1.62, 2.58])
    cord(net, "inlet", legs_and_frame[:3], panel, feet, ohm)
    if ground_wire:
        cord(net, "inletground", legs_and_frame[3:], panel[2:], feet, ohm)


# ---- families of networks ------------------------------------------------------------------------------------------


def service(net):
    pole = line(net, net.random.randint(1, 4), utility=True)
    secondary = transformer(net, "t", pole)
    for k in range(net.random.randint(1, 3)):
        house(net, f"h{k}", secondary)


def open_neutral(net):
    pole = line(net, net.random.randint(1, 3), utility=True)
    secondary = transformer(net, "t", pole)
    house(net, "h", secondary, drop_neutral=False)
    house(net, "next", secondary)


def backfed(net):
    pole = line(net, net.random.randint(1, 4), utility=False)
    secondary = transformer(net, "t", pole)
    panel = house(net, "h", secondary)
    feed_panel(net, panel, bonded=net.random.random() < 0.5, ground_wire=True)
    for k in range(net.random.randint(0, 2)):
        house(net, f"next{k}", secondary)


def grounded_line(net):
    pole = line(net, net.random.randint(2, 3), utility=False)
    secondary = transformer(net, "t", pole)
    panel = house(net, "h", secondary)
    feed_panel(net, panel, bonded=False, ground_wire=True)
    net.switch("line1", "line1n", True, net.draw(0.0005, 0.005))
    if net.random.random() < 0.5:
        net.shunt("line0", EARTH, net.draw(5.0, 50.0))
    net.shunt("line1", EARTH, net.draw(700.0, 3000.0))


def island(net):
    pole = line(net, 1, utility=True)
    secondary = transformer(net, "t", pole)
    panel = house(net, "h", secondary, main=False)
    feed_panel(net, panel, bonded=True, ground_wire=net.random.random() < 0.7)


def cords(net):
    bonded = net.random.random() < 0.5
    legs = generator(net, 0, bonded, (20.0, 1000.0))
    for k in range(net.random.randint(2, 4)):
        at = [legs[net.random.randint(0, 1)], legs[2], legs[3]]
        for j in range(net.random.randint(1, 3)):
            ends = [net.node(f"c{k}{j}", 120.0), net.node(f"c{k}{j}n", 120.0, False), net.node(f"c{k}{j}g", 120.0, False)]
            cord(net, f"c{k}{j}", at, ends, net.draw(10.0, 100.0), net.random.choice([1.62, 2.58, 4.09, 6.51]))
            at = ends
        r = net.draw(10.0, 200.0)
        net.load(at[0], at[1], r, r * net.random.choice([0.0, 0.6]))
        # worn insulation to the frame, and somebody who touches it
        frame = net.node(f"c{k}frame", 120.0, False)
        net.shunt(at[0], frame, net.draw(500.0, 5e4))
        net.switch(frame, at[2], net.random.random() < 0.5, 0.01)
        net.shunt(frame, EARTH, net.draw(800.0, 5000.0))


def out_of_step(net):
    pole = line(net, net.random.randint(1, 3), utility=True)
    secondary = transformer(net, "t", pole)
    panel = house(net, "h", secondary)
    legs = generator(net, 1, False, (20.0, 500.0), angle=net.draw(5.0, 170.0))
    cord(net, "inlet", [*legs[:3], legs[3]], [*panel, panel[2]], net.draw(15.0, 60.0), 1.62)
    house(net, "next", secondary)


FAMILIES = [service, open_neutral, backfed, grounded_line, island, cords, out_of_step]


# ---- the analog circuit simulator ----------------------------------------------------------------------------------


class Deck:
    """A circuit as the simulator reads it."""

    def __init__(self):
        self.lines, self.count = [], 0

    def name(self, kind):
        self.count += 1
        return f"{kind}{self.count}"

    def inner(self):
        self.count += 1
        return f"m{self.count}"

    def impedance(self, a, b, r, x):
        """A resistance and a reactance in series."""
        if r != 0.0 and x != 0.0:
            middle = self.inner()
            self.impedance(a, middle, r, 0.0)
            self.impedance(middle, b, 0.0, x)
        elif x > 0.0:
            self.lines.append(f"{self.name('L')} {a} {b} {x / OMEGA!r}")
        elif x < 0.0:
            self.lines.append(f"{self.name('C')} {a} {b} {-1.0 / (x * OMEGA)!r}")
        else:
            self.lines.append(f"{self.name('R')} {a} {b} {r!r}")

    def windings(self, e):
        """Star of the windings' own impedances around ideal ratios, one controlled pair for each half."""
        base = [e["primary_v"] ** 2 / e["va"], e["half_v"] ** 2 / e["va"]]
        r, x = e["r_pu"], e["x_pu"]
        (a, b), (first, tap, last) = [tuple(spice(n) for n in e[key]) for key in ("primary", "secondary")]
        core = self.inner()
        self.impedance(a, core, 0.5 * r * base[0], 0.8 * x * base[0])
        ratio = e["half_v"] / e["primary_v"]
        for plus, minus in ((first, tap), (tap, last)):
            inside, sensed = self.inner(), self.inner()
            sense = self.name("V")
            self.lines.append(f"{self.name('E')} {inside} {minus} {core} {b} {ratio!r}")
            self.lines.append(f"{sense} {inside} {sensed} 0")
            self.lines.append(f"{self.name('F')} {core} {b} {sense} {ratio!r}")
            self.impedance(sensed, plus, r * base[1], 0.4 * x * base[1])

    def coupled(self, e):
        ends = [(spice(a), spice(b)) for a, b in e["ends"]]
        senses, coils = [], []
        for (a, b), r, x, i in zip(ends, e["r"], e["x"], range(len(ends))):
            at, sense = self.inner(), self.name("V")
            self.lines.append(f"{sense} {a} {at} 0")
            senses.append(sense)
            after = self.inner()
            self.impedance(at, after, r[i], 0.0)
            for j in range(len(ends)):
                if j != i:
                    following = self.inner()
                    # filled in when every sense is known
                    self.lines.append((self.name("H"), after, following, j, r[j]))
                    after = following
            coil = self.name("L")
            self.lines.append(f"{coil} {after} {b} {x[i] / OMEGA!r}")
            coils.append(coil)
        self.lines = [
            f"{one[0]} {one[1]} {one[2]} {senses[one[3]]} {one[4]!r}" if isinstance(one, tuple) else one
            for one in self.lines
        ]
        for i in range(len(ends)):
            for j in range(i):
                factor = e["x"][i][j] / math.sqrt(e["x"][i][i] * e["x"][j][j])
                self.lines.append(f"{self.name('K')} {coils[i]} {coils[j]} {factor!r}")


def spice(node):
    return "0" if node == EARTH else node


def solve(net, group):
    """Phasors of all node voltages and of all source currents (out of the positive terminal) for one group's EMFs."""
    deck, senses = Deck(), []
    for e in net.elements:
        kind = e["kind"]
        if kind in ("Series", "Shunt", "Load"):
            deck.impedance(spice(e["a"]), spice(e["b"]), e["r"], e["x"])
        elif kind == "Switch":
            if e["closed"]:
                deck.impedance(spice(e["a"]), spice(e["b"]), e["r"], 0.0)
        elif kind == "CenterTapped":
            deck.windings(e)
        elif kind == "Coupled":
            deck.coupled(e)
        else:
            for a, b, emf, r, x in e["ports"]:
                inside, sense = deck.inner(), deck.name("V")
                size, angle = (abs(emf), math.degrees(cmath.phase(emf))) if e["group"] == group else (0.0, 0.0)
                deck.lines.append(f"{sense} {inside} {spice(b)} dc 0 ac {size!r} {angle!r}")
                deck.impedance(inside, spice(a), r, x)
                senses.append(sense)
    wanted = [f"v({name})" for name, _, _ in net.nodes] + [f"i({sense})" for sense in senses]
    control = [".control", "set numdgt=16", "ac lin 1 60 60", *(f"print {one}" for one in wanted), "quit", ".endc"]
    with tempfile.TemporaryDirectory() as folder:
        path = pathlib.Path(folder) / "network.cir"
        path.write_text("\n".join([f"* {net.name}", *deck.lines, *control, ".end", ""]))
        said = subprocess.run(["ngspice", "-b", str(path)], capture_output=True, text=True, check=False)
    found = {}
    for match in re.finditer(r"^([vi]\(\w+\)) = (\S+?),\s*(\S+)$", said.stdout, re.MULTILINE):
        found[match[1]] = complex(float(match[2]), float(match[3]))
    missing = [one for one in wanted if one.lower() not in found]
    if missing:
        raise SystemExit(f"{net.name}: no answer for {missing[:3]}\n{said.stdout}\n{said.stderr}")
    values = [found[one.lower()] for one in wanted]
    count = len(net.nodes)
    return values[:count], [-current for current in values[count:]]


# ---- files -----------------------------------------------------------------------------------------------------------


def ron(value):
    """A value as the tests read it."""
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, complex):
        return f"({value.real!r}, {value.imag!r})"
    if isinstance(value, str):
        return f'"{value}"'
    if isinstance(value, tuple):
        return f"({', '.join(ron(v) for v in value)})"
    if isinstance(value, list):
        return f"[{', '.join(ron(v) for v in value)}]"
    return repr(value)


def text(net, answers):
    out = [
        "// Drawn and solved by compare.py with an analog circuit simulator (ngspice, AC analysis at 60 Hz); not edited by hand.",
        "(",
        f"    name: {ron(net.name)},",
        f"    seed: {net.seed},",
        "    // name, class in volts, ungrounded",
        "    nodes: [",
        *(f"        {ron(node)}," for node in net.nodes),
        "    ],",
        "    elements: [",
    ]
    for e in net.elements:
        fields = ", ".join(f"{key}: {ron(value)}" for key, value in e.items() if key != "kind")
        out.append(f"        {e['kind']}({fields}),")
    out.append("    ],")
    out.append("    // phasors by node and by port of the sources, group by group, with the EMFs of other groups at zero")
    out.append("    answers: [")
    for group, (volts, amps) in answers.items():
        out.append(f"        (group: {group}, volts: [")
        out.extend(f"            {ron(v)}," for v in volts)
        out.append("        ], amps: [")
        out.extend(f"            {ron(a)}," for a in amps)
        out.append("        ]),")
    return "\n".join([*out, "    ],", ")", ""])


def networks():
    for number, family in enumerate(FAMILIES):
        for turn in range(PER_FAMILY):
            net = Net(f"{family.__name__}_{turn + 1}", 100 * (number + 1) + turn)
            family(net)
            groups = sorted({e["group"] for e in net.elements if e["kind"] == "Source"})
            yield net, {group: solve(net, group) for group in groups}


def numbers(kept):
    return [float(n) for n in re.findall(r"-?\d+\.\d+(?:e[-+]?\d+)?", kept[kept.index("answers:"):])]


def main():
    check = "--check" in sys.argv[1:]
    for net, answers in networks():
        path = KEPT / f"{net.name}.ron"
        fresh = text(net, answers)
        if check:
            kept = path.read_text()
            if kept[: kept.index("answers:")] != fresh[: fresh.index("answers:")]:
                raise SystemExit(f"{path.name} is another network than the one drawn now")
            pairs = list(zip(numbers(kept), numbers(fresh), strict=True))
            largest = max(abs(a) for a, _ in pairs)
            apart = max(abs(a - b) for a, b in pairs) / largest
            print(f"{net.name}: {len(pairs)} numbers, apart by {apart:.1e} of the largest")
        else:
            path.write_text(fresh)
            print(f"{net.name}: {len(net.nodes)} nodes, {len(net.elements)} elements")


if __name__ == "__main__":
    main()
