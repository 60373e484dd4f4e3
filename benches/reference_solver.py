"""Times a general-purpose distribution solver (OpenDSS engine through dss-python) on the lateral of houses.

The same networks as benches/solve.rs: one load changed at random to 15-60 ohms, then solved.
Prints one line for each size: houses, nodes, then microseconds of the best batch for each way to do it, and the largest
difference of our volts where a file of ours is given.
The ways: the text command and a solve; the fastest direct calls found (property set on the object, symbolic
factorization reused, direct solution), without reading and with all voltages and currents read.
The cost of the calls themselves, measured on a call that does nothing, is taken off the direct ways.
A development check only: nothing of this is part of the program.
"""

import random
import sys
import time

from dss import DSS

LIB = DSS._api_util.lib
TEXT = DSS.Text
CIRCUIT = DSS.ActiveCircuit
BATCHES = 15
BATCH_S = 0.02


def command(line):
    TEXT.Command = line


def reactor(name, a, b, r, x):
    command(f"New Reactor.{name} phases=1 bus1={a} bus2={b} R={r!r} X={x!r}")


def build(houses):
    """The lateral; returns the names of its loads."""
    DSS.ClearAll()
    command("New Circuit.lateral phases=1 bus1=p0.1 bus2=p0.2 basekv=7.2 pu=1 angle=0 R1=0.1 X1=1 R0=0.1 X0=1")
    command("Set Maxiterations=100 Tolerance=1e-12 ControlMode=Off")
    reactor("e0", "p0.2", "p0.0", 1.0, 0.0)
    loads = []
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
            reactor(f"load{k}_{j}", f"h{k}.{4 + j}", f"h{k}.3", 20.0 + j, 0.0)
            loads.append(f"load{k}_{j}")
    command("Solve mode=direct")
    return loads


def best(call):
    """Microseconds of one call, the best of several batches."""
    count = 1
    while True:
        start = time.perf_counter()
        for _ in range(count):
            call()
        if time.perf_counter() - start > BATCH_S:
            break
        count *= 2
    times = []
    for _ in range(BATCHES):
        start = time.perf_counter()
        for _ in range(count):
            call()
        times.append((time.perf_counter() - start) / count)
    return 1e6 * min(times)


def draws(items):
    """Changes in advance, so that drawing them isn't timed."""
    pool = [(random.choice(items), 15.0 + 45.0 * random.random()) for _ in range(4096)]
    state = {"at": 0}

    def following():
        state["at"] = (state["at"] + 1) % len(pool)
        return pool[state["at"]]

    return following


def run(houses):
    loads = build(houses)
    nodes = CIRCUIT.NumNodes
    nothing = best(LIB.YMatrix_Get_Iteration)
    following = draws(loads)
    drawing = best(following)

    def by_text():
        name, ohms = following()
        LIB.Text_Set_Command(f"edit reactor.{name} R={ohms:.6f}".encode())
        LIB.Solution_Solve()

    text_us = best(by_text)

    # objects and the index of their R, for calls without names
    CIRCUIT.Reactors.First
    index_of = {name.lower(): i + 1 for i, name in enumerate(CIRCUIT.Reactors.AllNames)}
    indexed = draws([index_of[name] for name in loads])

    def direct(solve, option):
        LIB.YMatrix_Set_SolverOptions(option)

        def call():
            index, ohms = indexed()
            LIB.Reactors_Set_idx(index)
            LIB.Reactors_Set_R(ohms)
            solve()

        return call

    ways = {}
    for option in (0, 1, 2):
        for name, solve in (("solve", LIB.Solution_Solve), ("direct", LIB.Solution_SolveDirect)):
            ways[name, option] = best(direct(solve, option)) - drawing - 3 * nothing
    way = min(ways, key=ways.get)
    solve = LIB.Solution_Solve if way[0] == "solve" else LIB.Solution_SolveDirect
    change = direct(solve, way[1])

    def with_reading():
        change()
        LIB.Circuit_Get_AllBusVolts_GR()
        LIB.PDElements_Get_AllCurrents_GR()

    reading_us = best(with_reading) - drawing - 5 * nothing
    print(
        f"reference {houses} nodes {nodes} text {text_us - drawing - 2 * nothing:.3f} "
        f"direct {ways[way]:.3f} direct+read {reading_us:.3f} by {way[0]} option {way[1]}",
        flush=True,
    )


if __name__ == "__main__":
    random.seed(1)
    for n in [int(arg) for arg in sys.argv[1:]] or [1, 4, 10, 40, 100]:
        run(n)
