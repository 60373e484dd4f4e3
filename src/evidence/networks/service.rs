//! A split-phase service, forwards and backwards: the network on which two other solvers were asked.
//!
//! The network and its values are invented for this project; tests and timings use it too.
//! Loads are impedances and the generator is one EMF behind an impedance, so that any circuit solver can be asked.

use serde::Deserialize;

use crate::circuit::{
    BranchId, CenterTapped, Conductor, Group, Load, Network, NodeId, Port, Solution, SourceSpec,
    Windings,
};
use crate::units::Complex;

use super::converged;

fn c(re: f64, im: f64) -> Complex {
    Complex::new(re, im)
}

const UNGROUNDED: Conductor = Conductor::Ungrounded;
const GROUNDED: Conductor = Conductor::Grounded;

/// The cases of the split-phase service.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
pub enum Case {
    /// Utility, all closed.
    Utility,
    /// The same with the drop neutral open.
    DropNeutralOpen,
    /// Lateral broken, generator on the panel, main closed.
    Backfeed,
    /// The same with two neighbors on the transformer.
    Neighbors,
    /// As backfeed, with a body from the line to earth.
    Body,
    /// As backfeed, with protective grounds on the line.
    ProtectiveGrounds,
    /// As backfeed, with the main open.
    MainOpen,
}

impl Case {
    fn has_utility(self) -> bool {
        matches!(self, Self::Utility | Self::DropNeutralOpen)
    }
}

/// The split-phase service: its nodes and the elements that the cases change.
#[derive(Debug, Clone)]
pub struct SplitPhase {
    /// All of it.
    pub network: Network,
    /// Leg 1, leg 2, neutral.
    pub panel: [NodeId; 3],
    /// Phase, neutral.
    pub pole: [NodeId; 2],
    /// Leg 1, leg 2, neutral.
    pub generator: [NodeId; 3],
    /// From leg 1 to neutral, from leg 2 to neutral, from leg to leg.
    pub loads: [BranchId; 3],
    /// A body from the line's phase to earth.
    pub body: BranchId,
    /// The utility.
    pub utility_source: BranchId,
    /// The generator.
    pub generator_source: BranchId,
    /// The poles of the main.
    pub main: [BranchId; 2],
}

/// What is read of a case.
#[derive(Debug, Deserialize)]
pub(super) enum Read {
    /// Volts from leg 1 to the neutral of the panel.
    Leg1V,
    /// Volts from leg 2 to the neutral of the panel.
    Leg2V,
    /// Volts from leg to leg of the panel.
    LegsV,
    /// Volts from the neutral of the panel to earth.
    NeutralV,
    /// Volts from the phase of the line to earth.
    LineV,
    /// Volts from the phase of the line to its neutral.
    LineToNeutralV,
    /// Volts across both halves of the generator.
    GeneratorV,
    /// Amps through the body.
    BodyA,
}

/// A reading of a case; NaN if the solver found no answer.
pub(super) fn ours(case: Case, read: &Read) -> f64 {
    let built = split_phase(case);
    let network = built.network.clone();
    converged(network, |solution| built.read(solution, read))
}

impl SplitPhase {
    fn read(&self, solution: &Solution, read: &Read) -> f64 {
        let [leg_1, leg_2, neutral] = self.panel;
        let [line, line_neutral] = self.pole;
        let to_earth = |node| solution.volts(node).unwrap_or(f64::NAN);
        match read {
            Read::Leg1V => solution.volts_between(leg_1, neutral),
            Read::Leg2V => solution.volts_between(leg_2, neutral),
            Read::LegsV => solution.volts_between(leg_1, leg_2),
            Read::NeutralV => to_earth(neutral),
            Read::LineV => to_earth(line),
            Read::LineToNeutralV => solution.volts_between(line, line_neutral),
            Read::GeneratorV => solution.volts_between(self.generator[0], self.generator[1]),
            Read::BodyA => solution.amps(self.body),
        }
    }
}

/// Builds a case of the split-phase service.
pub fn split_phase(case: Case) -> SplitPhase {
    let mut n = Network::new();
    let pole = [n.node(7200.0, UNGROUNDED), n.node(7200.0, GROUNDED)];
    let legs = |n: &mut Network| {
        [
            n.node(120.0, UNGROUNDED),
            n.node(120.0, UNGROUNDED),
            n.node(120.0, GROUNDED),
        ]
    };
    let (secondary, panel, generator) = (legs(&mut n), legs(&mut n), legs(&mut n));
    let utility_source = line_side(&mut n, case, pole);
    let main = service(&mut n, case, pole, secondary, panel);
    let loads = [(0, 2, 9.6), (1, 2, 48.0), (0, 1, 14.4)];
    let loads = loads.map(|(a, b, ohms)| n.load(panel[a], panel[b], Load::Impedance(c(ohms, 0.0))));
    let generator_source = generator_side(&mut n, case, generator, panel);
    if case == Case::Neighbors {
        for (a, b) in [(0, 2), (2, 1), (0, 2), (2, 1)] {
            n.load(secondary[a], secondary[b], Load::Impedance(c(14.4, 0.0)));
        }
    }
    let hand = n.node(7200.0, UNGROUNDED);
    let body = n.shunt(pole[0], hand, c(1000.0, 0.0), case == Case::Body);
    n.shunt(hand, NodeId::EARTH, c(200.0, 0.0), case == Case::Body);
    n.switch(pole[0], pole[1], 0.001, case == Case::ProtectiveGrounds);
    SplitPhase {
        network: n,
        panel,
        pole,
        generator,
        loads,
        body,
        utility_source,
        generator_source,
        main,
    }
}

/// Utility and lateral; returns the source.
fn line_side(n: &mut Network, case: Case, pole: [NodeId; 2]) -> BranchId {
    let start = [n.node(7200.0, UNGROUNDED), n.node(7200.0, GROUNDED)];
    let on = case.has_utility();
    let source = n.source(SourceSpec {
        on,
        ..fixed(start[0], start[1], 7200.0, c(0.1, 1.0))
    });
    n.shunt(start[1], NodeId::EARTH, c(1.0, 0.0), true);
    if case.has_utility() {
        n.series(start[0], pole[0], c(1.38, 0.76));
    }
    n.series(start[1], pole[1], c(1.38, 0.76));
    n.shunt(pole[1], NodeId::EARTH, c(25.0, 0.0), true);
    source
}

/// Transformer, drop and main; returns the poles of the main.
fn service(
    n: &mut Network,
    case: Case,
    pole: [NodeId; 2],
    secondary: [NodeId; 3],
    panel: [NodeId; 3],
) -> [BranchId; 2] {
    let [first, last, tap] = secondary;
    n.windings(transformer((pole[0], pole[1]), (first, tap, last)));
    excite(n, pole[0], pole[1]);
    n.series(pole[1], tap, c(0.001, 0.0));
    if case != Case::DropNeutralOpen {
        n.series(tap, panel[2], c(0.0268, 0.003));
    }
    n.shunt(panel[2], NodeId::EARTH, c(25.0, 0.0), true);
    [(first, panel[0]), (last, panel[1])].map(|(from, to)| {
        let service = n.node(120.0, UNGROUNDED);
        n.series(from, service, c(0.0168, 0.003));
        n.switch(service, to, 0.001, case != Case::MainOpen)
    })
}

/// Generator and cord; returns the source.
fn generator_side(
    n: &mut Network,
    case: Case,
    generator: [NodeId; 3],
    panel: [NodeId; 3],
) -> BranchId {
    let half = |a, b| Port {
        a,
        b,
        emf_v: c(120.0, 0.0),
        z: c(0.115, 0.23),
    };
    let ports = vec![
        half(generator[0], generator[2]),
        half(generator[2], generator[1]),
    ];
    let source = n.source(SourceSpec {
        ports,
        group: Group(0),
        on: !case.has_utility(),
        ceiling: None,
    });
    if !case.has_utility() {
        for (from, to) in generator.into_iter().zip(panel) {
            n.series(from, to, c(0.025, 0.002));
        }
    }
    source
}

/// A fixed EMF from `a` to `b`.
pub fn fixed(a: NodeId, b: NodeId, emf_v: f64, z: Complex) -> SourceSpec {
    SourceSpec {
        ports: vec![Port {
            a,
            b,
            emf_v: c(emf_v, 0.0),
            z,
        }],
        group: Group(0),
        on: true,
        ceiling: None,
    }
}

/// The 25 kVA transformer, from the leakage between its three windings.
pub fn transformer(primary: (NodeId, NodeId), secondary: (NodeId, NodeId, NodeId)) -> Windings {
    Windings::center_tapped(CenterTapped {
        primary,
        secondary,
        va: 25_000.0,
        primary_v: 7200.0,
        half_v: 120.0,
        r_pu: 0.012,
        x_pu: 0.017,
    })
}

/// Core loss and magnetizing current of that transformer, on the primary.
pub fn excite(network: &mut Network, a: NodeId, n: NodeId) -> [BranchId; 2] {
    [
        network.shunt(a, n, c(1_036_800.0, 0.0), true),
        network.shunt(a, n, c(0.0, 414_720.0), true),
    ]
}
