"""Times a general-purpose distribution solver (OpenDSS engine through dss-python) on the lateral of houses.

The same networks as benches/solve.rs: one load changed at random to 15-60 ohms, or one switch operated, then solved.
Prints one line for each size, in microseconds of a change:
  text         a load changed by text command, and a solve
  direct       the same by the fastest direct call whose answer is right
  read         the same with all node voltages and the currents of all its delivery elements read
  switch       an element taken out or in by the fastest direct call, with everything read
  sum          volts to earth, summed over all nodes before any change: to hold ours against
A way counts only if its answer is that of a solve from nothing: a direct solution after a change of a load's power, for
one, gives the answer of the change before.
The cost of the calls themselves, measured on a call that does nothing, is taken off the direct ways.
A development check only: nothing of this is part of the program.
"""

import gc
import math
import random
import sys
import time

from dss import DSS

LIB = DSS._api_util.lib
CIRCUIT = DSS.ActiveCircuit
# changes in a row, how often they are made, and seconds of a stretch of them: as in benches/solve.rs
CHANGES = 64
REPEATS = 20
STRETCH_S = 0.0003


def command(line):
    DSS.Text.Command = line


def reactor(name, a, b, r, x):
    command(f"New Reactor.{name} phases=1 bus1={a} bus2={b} R={r!r} X={x!r}")


def build(houses, as_impedance):
    """The lateral, its loads as impedances or as load elements; returns the loads' names."""
    DSS.ClearAll()
    command("New Circuit.lateral phases=1 bus1=p0.1 bus2=p0.2 basekv=7.2 pu=1 angle=0 R1=0.1 X1=1 R0=0.1 X0=1")
    command("Set Maxiterations=100 Tolerance=1e-9 ControlMode=Off")
    reactor("e0", "p0.2", "p0.0", 1.0, 0.0)
    names = []
    for k in range(1, houses + 1):
        reactor(f"phase{k}", f"p{k - 1}.1", f"p{k}.1", 0.138, 0.076)
        reactor(f"neutral{k}", f"p{k - 1}.2", f"p{k}.2", 0.138, 0.076)
        reactor(f"pole{k}", f"p{k}.2", f"p{k}.0", 25.0, 0.0)
        command(
            f"New Transformer.t{k} phases=1 windings=3 xhl=2.04 xht=2.04 xlt=1.36 %noloadloss=0 %imag=0 ppm_antifloat=0"
            f" wdg=1 bus=p{k}.1.2 kv=7.2 kva=25 %r=0.6"
            f" wdg=2 bus=s{k}.1.3 kv=0.12 kva=25 %r=1.2 wdg=3 bus=s{k}.3.2 kv=0.12 kva=25 %r=1.2"
        )
        reactor(f"core{k}", f"p{k}.1", f"p{k}.2", 1036800.0, 0.0)
        reactor(f"magnet{k}", f"p{k}.1", f"p{k}.2", 0.0, 414720.0)
        reactor(f"bond{k}", f"p{k}.2", f"s{k}.3", 0.001, 0.0)
        reactor(f"drop1_{k}", f"s{k}.1", f"h{k}.1", 0.0168, 0.003)
        reactor(f"drop2_{k}", f"s{k}.2", f"h{k}.2", 0.0168, 0.003)
        reactor(f"dropn_{k}", f"s{k}.3", f"h{k}.3", 0.0268, 0.003)
        reactor(f"rod{k}", f"h{k}.3", f"h{k}.0", 25.0, 0.0)
        for j, leg in enumerate((1, 2, 1, 2)):
            reactor(f"wire{k}_{j}", f"h{k}.{leg}", f"h{k}.{4 + j}", 0.1, 0.01)
            name = f"load{k}_{j}"
            if as_impedance:
                reactor(name, f"h{k}.{4 + j}", f"h{k}.3", 20.0 + j, 0.0)
            else:
                command(
                    f"New Load.{name} phases=1 bus1=h{k}.{4 + j}.3 kv=0.12 kw={14.4 / (20 + j)!r} pf=1 model=2"
                    " vminpu=0.01 vmaxpu=10"
                )
            names.append(name)
    return names


class Draws:
    """Changes drawn in advance, so that drawing isn't timed: the second half at the same places with other ohms."""

    def __init__(self, items):
        pool = [(random.choice(items), random.random()) for _ in range(CHANGES // 2)]
        self.changes = [(item, 15.0 + 45.0 * ((share + shift) % 1.0)) for shift in (0.0, 0.5) for item, share in pool]
        self.at = -1

    def __call__(self):
        self.at = (self.at + 1) % CHANGES
        return self.changes[self.at]


def best(call, draws=None):
    """Microseconds of one call: the mean over all changes of the best that each stretch of them took."""

    def repeat(stretch):
        if draws:
            draws.at = -1
        times = []
        for _ in range(CHANGES // stretch):
            start = time.perf_counter()
            for _ in range(stretch):
                call()
            times.append(time.perf_counter() - start)
        return times

    whole, stretch = repeat(CHANGES)[0], CHANGES
    while stretch > 1 and whole * stretch / CHANGES > STRETCH_S:
        stretch //= 2
    repeats = [repeat(stretch) for _ in range(REPEATS)]
    return 1e6 * sum(min(times) for times in zip(*repeats)) / CHANGES


def volts():
    values = CIRCUIT.AllBusVolts
    return [math.hypot(values[i], values[i + 1]) for i in range(0, len(values), 2)]


def is_right(call, mode):
    """Whether the answer after a change is that of a solve from nothing."""
    for _ in range(3):
        call()
        ours = volts()
        LIB.YMatrix_Set_SystemYChanged(1)
        command(f"Solve mode={mode}")
        if any(abs(a - b) > 1e-6 * b + 1e-6 for a, b in zip(ours, volts())):
            return False
    return True


def impedance_ways(houses):
    """Ways to change a load that is an impedance: as (call, draws, mode, option)."""
    names = build(houses, as_impedance=True)
    index_of = {name.lower(): i + 1 for i, name in enumerate(CIRCUIT.Reactors.AllNames)}
    following = Draws([index_of[name] for name in names])

    def way(solve, option):
        def call():
            index, ohms = following()
            LIB.Reactors_Set_idx(index)
            LIB.Reactors_Set_R(ohms)
            solve()

        return call, following, "direct", option

    return [way(solve, option) for option in (0, 1, 2) for solve in (LIB.Solution_Solve, LIB.Solution_SolveDirect)]


def load_ways(houses):
    """Ways to change a load that is a load element."""
    names = build(houses, as_impedance=False)
    index_of = {name.lower(): i + 1 for i, name in enumerate(CIRCUIT.Loads.AllNames)}
    following = Draws([index_of[name] for name in names])

    def way(solve, mode):
        def call():
            index, ohms = following()
            LIB.Loads_Set_idx(index)
            LIB.Loads_Set_kW(14.4 / ohms)
            solve()

        return call, following, mode, 0

    solves = (LIB.Solution_Solve, LIB.Solution_SolveNoControl, LIB.Solution_SolveDirect)
    return [way(solve, mode) for mode in ("snap", "direct") for solve in solves]


def timed(ways, overhead):
    """The best time of those ways that give the right answer, without and with reading."""
    found = []
    for call, following, mode, option in ways:
        LIB.YMatrix_Set_SolverOptions(option)
        command(f"Solve mode={mode}")
        if not is_right(call, mode):
            continue

        def with_reading():
            call()
            LIB.Circuit_Get_AllBusVolts_GR()
            LIB.PDElements_Get_AllCurrents_GR()

        found.append((best(call, following) - overhead, best(with_reading, following) - 5.0 / 3.0 * overhead))
    return [min(values) for values in zip(*found)]


def run(houses):
    names = build(houses, as_impedance=True)
    command("Solve mode=direct")
    nodes, total = CIRCUIT.NumNodes, sum(volts())
    following = Draws(names)
    overhead = 3.0 * best(LIB.YMatrix_Get_Iteration)

    def by_text():
        name, ohms = following()
        LIB.Text_Set_Command(f"edit reactor.{name} R={ohms:.6f}".encode())
        LIB.Solution_Solve()

    text = best(by_text, following) - 2.0 / 3.0 * overhead
    switch, switch_read = timed(impedance_ways(houses), overhead)
    load, load_read = timed(load_ways(houses), overhead)
    direct, direct_read = min(switch, load), min(switch_read, load_read)
    print(
        f"reference {houses} nodes {nodes} text {text:.3f} direct {direct:.3f} read {direct_read:.3f} "
        f"switch {switch_read:.3f} sum {total:.9f}",
        flush=True,
    )


if __name__ == "__main__":
    gc.disable()
    random.seed(1)
    for n in [int(arg) for arg in sys.argv[1:]] or [1, 3, 10, 40, 100]:
        run(n)
