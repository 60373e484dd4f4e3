//! The IEEE 4 Node Test Feeder: three phases, coupled lines by modified Carson, constant power well below 0.8 pu.
//!
//! Step-down 12.47/4.16 kV; grounded wye to grounded wye, and delta to grounded wye with the usual 30 degrees (IEEE PES, 4 Node Test Feeder; data checked in open test data of two projects).
//! Before the delta the line has three wires; behind it, and with grounded wye, it has its neutral, grounded at both ends.
//! Not covered: the other banks and the step-up of that publication.

use serde::Deserialize;

use crate::apparatus::line;
use crate::apparatus::line::Placed;
use crate::circuit::{
    BranchId, Conductor, Group, Load, Network, NodeId, Port, Solution, SourceSpec, Windings,
};
use crate::units::Complex;
use crate::units::portable;

use super::converged;

/// What the three phases take.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
pub enum Loading {
    /// 1 800 kW at 0.9 on each.
    Balanced,
    /// 1 275 kW at 0.85, 1 800 kW at 0.9, 2 375 kW at 0.95.
    Unbalanced,
}

/// How the transformers are connected.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
pub enum Bank {
    /// Grounded wye to grounded wye.
    WyeWye,
    /// Delta to grounded wye.
    DeltaWye,
}

/// The feeder: its nodes and loads.
#[derive(Debug, Clone)]
pub struct FourNode {
    /// All of it.
    pub network: Network,
    /// Phases a, b, c of nodes 2, 3 and 4.
    pub nodes: [[NodeId; 3]; 3],
    /// What each phase of node 4 feeds.
    pub loads: [BranchId; 3],
}

/// A phase; before the delta, from this one to the next.
#[derive(Debug, Clone, Copy, Deserialize)]
pub(super) enum Phase {
    A,
    B,
    C,
}

/// What is read of a phase.
#[derive(Debug, Clone, Copy, Deserialize)]
pub(super) enum Read {
    Volts,
    Degrees,
}

const HIGH_V: f64 = 7_199.558;
const LOW_V: f64 = 2_401.777;
const HIGH_LINE_V: f64 = 12_470.0;
/// Of each transformer.
const VA: f64 = 2_000_000.0;
const GROUP: Group = Group(0);

/// Builds the feeder.
pub fn four_node(loading: Loading, bank: Bank) -> FourNode {
    let mut n = Network::new();
    let mut three = |base_v: f64| [(); 3].map(|()| n.node(base_v, Conductor::Ungrounded));
    let (first, second, third, fourth) = (three(HIGH_V), three(HIGH_V), three(LOW_V), three(LOW_V));
    n.source(utility(first));
    match bank {
        Bank::WyeWye => four_wires(&mut n, first, second, 2000.0),
        Bank::DeltaWye => {
            n.coupled(&first, &second, &line_ohm(3, 2000.0), true);
        }
    }
    for (phase, low) in third.into_iter().enumerate() {
        let (to, rated_v) = match bank {
            Bank::WyeWye => (NodeId::EARTH, HIGH_V),
            // The low side lags by 30 degrees: each winding stands from its phase to the one before.
            Bank::DeltaWye => (second[(phase + 2) % 3], HIGH_LINE_V),
        };
        n.windings(Windings::from_pairs(
            &[(second[phase], to), (low, NodeId::EARTH)],
            &[rated_v, LOW_V],
            VA,
            &[0.005, 0.005],
            &[0.06],
        ));
    }
    four_wires(&mut n, third, fourth, 2500.0);
    let taken = match loading {
        Loading::Balanced => [(1800.0, 0.9); 3],
        Loading::Unbalanced => [(1275.0, 0.85), (1800.0, 0.9), (2375.0, 0.95)],
    };
    let loads = [0, 1, 2].map(|phase| {
        let (kw, factor): (f64, f64) = taken[phase];
        let kvar = kw * (1.0 - factor * factor).sqrt() / factor;
        let load = Load::ConstantPower {
            va: Complex::new(1000.0 * kw, 1000.0 * kvar),
            rated_v: LOW_V,
            floor_pu: 0.5,
        };
        n.load(fourth[phase], NodeId::EARTH, load)
    });
    FourNode {
        network: n,
        nodes: [second, third, fourth],
        loads,
    }
}

fn utility(phases: [NodeId; 3]) -> SourceSpec {
    let ports = phases.into_iter().zip([0.0, -120.0, 120.0]);
    let ports = ports.map(|(a, angle)| Port {
        a,
        b: NodeId::EARTH,
        emf_v: portable::phasor(HIGH_V, angle),
        z: Complex::new(1e-6, 1e-5),
    });
    SourceSpec {
        ports: ports.collect(),
        group: GROUP,
        on: true,
        ceiling: None,
    }
}

/// A line with its neutral, grounded at both ends.
fn four_wires(n: &mut Network, from: [NodeId; 3], to: [NodeId; 3], feet: f64) {
    let with_neutral = |[a, b, c]: [NodeId; 3]| [a, b, c, NodeId::EARTH];
    n.coupled(
        &with_neutral(from),
        &with_neutral(to),
        &line_ohm(4, feet),
        true,
    );
}

/// The first conductors of the feeder's pole top: phases 336.4 kcmil at 0, 2.5 and 7 ft, neutral 4/0 four feet below.
fn line_ohm(conductors: usize, feet: f64) -> Vec<Complex> {
    let placed = [
        (line::ACSR_336_4, 0.0, 28.0),
        (line::ACSR_336_4, 2.5, 28.0),
        (line::ACSR_336_4, 7.0, 28.0),
        (line::ACSR_4_0, 4.0, 24.0),
    ];
    let placed = placed.map(|(conductor, x_ft, y_ft)| Placed {
        conductor,
        x_ft,
        y_ft,
    });
    let own: Vec<Placed> = placed.into_iter().take(conductors).collect();
    line::overhead_impedance(&own, feet / 5280.0)
}

/// A reading at node 2, 3 or 4; NaN if there is no such node or the solver found no answer.
pub(super) fn ours(loading: Loading, bank: Bank, node: usize, phase: Phase, read: Read) -> f64 {
    let built = four_node(loading, bank);
    let Some(phases) = node.checked_sub(2).and_then(|at| built.nodes.get(at)) else {
        return f64::NAN;
    };
    let between = bank == Bank::DeltaWye && node == 2;
    converged(built.network.clone(), |solution| {
        let volts = phasor(solution, *phases, phase, between);
        match read {
            Read::Volts => portable::magnitude(volts),
            Read::Degrees => portable::angle_deg(volts),
        }
    })
}

/// Of a phase to earth, or from it to the next.
fn phasor(solution: &Solution, phases: [NodeId; 3], phase: Phase, between: bool) -> Complex {
    let [a, b, c] = phases;
    let (own, next) = match phase {
        Phase::A => (a, b),
        Phase::B => (b, c),
        Phase::C => (c, a),
    };
    let next = if between { next } else { NodeId::EARTH };
    solution.phasor(own, GROUP) - solution.phasor(next, GROUP)
}
