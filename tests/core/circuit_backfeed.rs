//! A generator that feeds a house whose main is closed: into a line left alone, into neighbors, into applied grounds, and when the utility comes back.
//!
//! Nothing here is told what happens; the circuit, the set's ceilings and its devices are asked.
//! The network is the lateral of houses that the solver is timed on; the set is a typical conventional one.

use crate::circuit_lateral::{Lateral, lateral};
use crate::circuit_networks::c;
use outage_drill::apparatus::breaker::Breaker;
use outage_drill::apparatus::closing::{Closing, Harm, WORST_CURRENT_DEG};
use outage_drill::apparatus::generator::{GeneratorSpec, Reactance};
use outage_drill::apparatus::transformer::CenterTapped;
use outage_drill::circuit::{
    BranchId, Ceiling, Group, Load, NodeId, Port, Solution, Solver, SourceSpec,
};
use outage_drill::units::portable::magnitude;

/// Nodes that a house has in a lateral: pole, secondary, panel, four branch ends.
const HOUSE_NODES: usize = 12;
const CORD: (f64, f64) = (0.025, 0.002);

/// A lateral with a set on the first house, the utility gone or there.
struct Backfed {
    solver: Solver,
    utility: BranchId,
    set: BranchId,
    set_hots: [NodeId; 2],
    /// Phase and neutral of the first pole.
    pole: [NodeId; 2],
    grounds: BranchId,
    body: BranchId,
    spec: GeneratorSpec,
}

fn typical() -> GeneratorSpec {
    GeneratorSpec::conventional(7200.0, 9000.0)
}

/// `neighbors` more houses of about 2.7 kW each; the house itself takes as much, or nothing.
fn backfed(neighbors: usize, own_load: bool, reactance: Reactance) -> Backfed {
    let spec = typical();
    let Lateral {
        mut network,
        nodes,
        branches,
        loads,
        ..
    } = lateral(neighbors + 1);
    let pole = [nodes[2], nodes[3]];
    let panel = [nodes[7], nodes[8], nodes[9]];
    assert_eq!(nodes.len(), 2 + HOUSE_NODES * (neighbors + 1));
    let hots = [(); 2].map(|()| network.node(120.0, outage_drill::circuit::Conductor::Ungrounded));
    let half = |a, b| Port {
        a,
        b,
        emf_v: c(120.0, 0.0),
        z: spec.impedance(reactance) * 0.5,
    };
    let set = network.source(SourceSpec {
        ports: vec![half(hots[0], panel[2]), half(panel[2], hots[1])],
        group: Group(0),
        on: true,
        ceiling: None,
    });
    for (hot, leg) in hots.into_iter().zip(panel) {
        network.series(hot, leg, c(CORD.0, CORD.1));
    }
    let grounds = network.switch(pole[0], pole[1], 0.001, false);
    let body = network.shunt(pole[0], NodeId::EARTH, c(1200.0, 0.0), false);
    let mut solver = Solver::new(network).unwrap();
    if !own_load {
        for load in &loads[..4] {
            solver.set_load(*load, Load::Off);
        }
    }
    Backfed {
        solver,
        utility: branches[0],
        set,
        set_hots: hots,
        pole,
        grounds,
        body,
        spec,
    }
}

impl Backfed {
    /// The utility's end of the line is open, and the set is held by its regulator, its field and its engine.
    fn alone(mut self) -> Self {
        self.solver.set_source(self.utility, false);
        self.solver.set_source_ceiling(
            self.set,
            Some(Ceiling {
                set_v: self.spec.set_v,
                emf_max_pu: self.spec.field_max_pu,
                power_max_w: self.spec.surge_w,
                current_max_a: f64::INFINITY,
            }),
        );
        self
    }

    fn solved(&mut self) -> &Solution {
        let solution = self.solver.solve();
        assert!(solution.converged());
        solution
    }

    fn line_v(&mut self) -> f64 {
        let [phase, neutral] = self.pole;
        self.solved().volts_between(phase, neutral)
    }

    fn set_v(&mut self) -> f64 {
        let [one, two] = self.set_hots;
        self.solved().volts_between(one, two)
    }

    fn set_a(&mut self) -> f64 {
        let set = self.set;
        let solution = self.solved();
        solution.port_amps(set, 0).max(solution.port_amps(set, 1))
    }

    /// Watts that the loads would take at the set's rated volts.
    fn asked_w(&mut self) -> f64 {
        let (set, rated_v) = (self.set, self.spec.set_v);
        let pu = self.set_v() / rated_v;
        self.solved().power(set).re / (pu * pu)
    }

    /// Seconds until the set's own breaker or its engine gives up; `None` if both carry it.
    fn gives_up_s(&mut self) -> Option<f64> {
        let breaker = Breaker {
            rating_a: self.spec.main_breaker_a,
        };
        let trips = breaker.seconds_to_trip(0.0, self.set_a());
        let watts = self.asked_w();
        let stalls = self.spec.seconds_to_stall(watts);
        [trips, stalls].into_iter().flatten().reduce(f64::min)
    }
}

#[test]
fn a_line_left_alone_is_raised_to_its_full_volts_for_a_few_amps_and_nothing_trips() {
    let mut house = backfed(0, false, Reactance::Transient).alone();
    let volts = house.line_v();
    assert!((volts / 7200.0 - 1.0).abs() < 0.01, "{volts} V");
    let amps = house.set_a();
    assert!(amps < 2.0, "{amps} A hum along");
    assert_eq!(
        house.gives_up_s(),
        None,
        "nothing tells that the line is live"
    );
}

#[test]
fn a_person_on_that_line_gets_a_deadly_current_from_a_portable_set() {
    let mut house = backfed(0, true, Reactance::Transient).alone();
    let body = house.body;
    house.solver.set_shunt(body, true);
    let milliamps = house.solved().amps(body) * 1000.0;
    let zone = outage_drill::hazard::shock::zone(milliamps, 0.5);
    assert!(
        zone >= outage_drill::hazard::shock::Zone::Ac42 && milliamps > 1000.0,
        "{milliamps} mA: {zone:?}"
    );
}

#[test]
fn neighbors_drag_the_set_down_and_then_trip_or_stall_it() {
    let mut before = (f64::INFINITY, f64::INFINITY);
    let mut given_up = vec![];
    for neighbors in [0, 1, 2, 5, 10] {
        let mut house = backfed(neighbors, true, Reactance::Transient).alone();
        let now = (house.set_v(), house.line_v());
        assert!(
            now.0 <= before.0 + 1e-6 && now.1 < before.1,
            "{neighbors} neighbors: {now:?} after {before:?}"
        );
        before = now;
        given_up.push(house.gives_up_s());
    }
    assert_eq!(given_up[0], None, "one house is within its rating");
    assert!(given_up[1].is_none(), "so are two small ones: {given_up:?}");
    let last = given_up[4].unwrap();
    assert!(
        last <= 1.0,
        "ten neighbors stall it within a second: {last} s"
    );
    let mut shortest = f64::INFINITY;
    for seconds in &given_up[2..] {
        let seconds = seconds.unwrap();
        assert!(seconds <= shortest, "{given_up:?}");
        shortest = seconds;
    }
    assert!(
        before.0 < 0.7 * 240.0 && before.1 > 50.0,
        "stalling is luck, not protection: {before:?}"
    );
}

#[test]
fn grounds_on_the_line_are_a_short_circuit_for_the_set() {
    let mut house = backfed(0, false, Reactance::Subtransient).alone();
    house.solver.set_source_ceiling(house.set, None);
    let (grounds, body) = (house.grounds, house.body);
    house.solver.set_switch(grounds, true);
    let times = house.set_a() / house.spec.rated_a();
    assert!(
        (4.0..9.0).contains(&times),
        "{times} times the rated current"
    );
    let trip = house.gives_up_s().unwrap();
    assert!(trip < 10.0, "{trip} s");
    assert!(house.line_v() < 1.0, "{} V are left", house.line_v());
    let set = house.set;
    let pole = house.pole[0];
    assert!(
        house.solved().fed_by(pole).contains(set),
        "still fed, though hardly any volts are left"
    );
    house.solver.set_shunt(body, true);
    let milliamps = house.solved().amps(body) * 1000.0;
    assert!(
        milliamps < 5.0,
        "{milliamps} mA through a person at the grounded pole"
    );
}

/// Everything between the EMF of the utility and that of the set, on the house's side, without loads: by hand.
fn between(spec: &GeneratorSpec) -> outage_drill::units::Complex {
    let line = c(0.1, 1.0) + c(0.138, 0.076) * 1.5;
    let pole = CenterTapped::POLE_25_KVA;
    let whole = pole.turns_ratio() / 2.0;
    let base = 240.0 * 240.0 / 25_000.0;
    let transformer = c(0.012, 0.017) * base;
    let drop = c(0.0168, 0.003) * 2.0;
    spec.impedance(Reactance::Subtransient)
        + c(CORD.0, CORD.1) * 2.0
        + drop
        + transformer
        + line / (whole * whole)
}

#[test]
fn the_utility_that_comes_back_meets_the_set_as_the_closed_form_says_at_every_angle() {
    let spec = typical();
    let closing = Closing {
        utility_v: 240.0,
        set_v: 240.0,
        between: between(&spec),
    };
    let mut house = backfed(0, false, Reactance::Subtransient);
    let mut worst = (0.0, 0.0);
    for step in 0..24_i32 {
        let angle = f64::from(step) * 15.0;
        house.solver.set_source_angle(house.set, angle);
        let amps = house.set_a();
        let closed = closing.amps(angle);
        assert!(
            (amps - closed).abs() < 0.01 * closed + 1.5,
            "{angle} degrees: {amps} A, closed form {closed} A"
        );
        if amps > worst.1 {
            worst = (angle, amps);
        }
    }
    assert!(
        (worst.0 - WORST_CURRENT_DEG).abs() < 1e-9,
        "worst at {} degrees",
        worst.0
    );
    let times = worst.1 / spec.rated_a();
    assert!(
        (10.0..14.0).contains(&times),
        "{times} times the rated current"
    );
}

#[test]
fn what_opens_first_is_the_sets_own_breaker_and_half_a_turn_breaks_the_machine() {
    let spec = typical();
    let closing = Closing {
        utility_v: 240.0,
        set_v: 240.0,
        between: between(&spec),
    };
    let own = spec.impedance(Reactance::Subtransient);
    let seconds = |rating_a: f64, angle: f64| {
        Breaker { rating_a }.seconds_to_trip(0.0, closing.first_rms_a(angle))
    };
    let set = seconds(spec.main_breaker_a, 180.0).unwrap();
    let main = seconds(200.0, 180.0).unwrap();
    assert!(
        set < 0.02 && main > 10.0 * set,
        "set {set} s, main {main} s"
    );
    assert_eq!(closing.harm(180.0, 1.0, spec.rated_w, own), Harm::Damaged);
    assert_eq!(closing.harm(5.0, 0.1, spec.rated_w, own), Harm::None);
    assert!(
        closing.torque_times(135.0, spec.rated_w) > closing.torque_times(180.0, spec.rated_w),
        "the shaft has it worse before half a turn"
    );
    assert!(
        magnitude(own) > 0.8 * magnitude(closing.between),
        "the set itself is most of what holds the current"
    );
}
