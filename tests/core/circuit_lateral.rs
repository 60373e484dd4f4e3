//! A lateral of houses, for timing and growth: spans, electrodes, transformers, drops and branches.
//!
//! The network and its values are invented for this project.

use crate::circuit_networks::{c, excite, fixed, transformer};
use outage_drill::circuit::{BranchId, Conductor, Load, Network, NodeId};

/// A lateral: everything in it that is read or changed.
#[derive(Debug, Clone)]
pub(crate) struct Lateral {
    pub(crate) network: Network,
    pub(crate) nodes: Vec<NodeId>,
    pub(crate) branches: Vec<BranchId>,
    /// The loads, four to a house.
    pub(crate) loads: Vec<BranchId>,
    /// The bonds of the poles' neutrals, one to a house, as switches.
    pub(crate) bonds: Vec<BranchId>,
}

/// Builds a lateral of `houses`, each with its own transformer, drop and four branches.
pub(crate) fn lateral(houses: usize) -> Lateral {
    let mut n = Network::new();
    let [phase, neutral] = line(&mut n);
    let source = n.source(fixed(phase, neutral, 7200.0, c(0.1, 1.0)));
    let electrode = n.shunt(neutral, NodeId::EARTH, c(1.0, 0.0), true);
    let mut built = Lateral {
        network: n,
        nodes: vec![phase, neutral],
        branches: vec![source, electrode],
        loads: Vec::new(),
        bonds: Vec::new(),
    };
    let mut from = [phase, neutral];
    for _ in 0..houses {
        from = house(&mut built, from);
    }
    built
}

fn line(n: &mut Network) -> [NodeId; 2] {
    [
        n.node(7200.0, Conductor::Ungrounded),
        n.node(7200.0, Conductor::Grounded),
    ]
}

/// Adds a span and the house at its end; returns the pole there.
fn house(built: &mut Lateral, from: [NodeId; 2]) -> [NodeId; 2] {
    let n = &mut built.network;
    let legs = |n: &mut Network| {
        let [first, last] = [(); 2].map(|()| n.node(120.0, Conductor::Ungrounded));
        [first, last, n.node(120.0, Conductor::Grounded)]
    };
    let (pole, secondary, panel) = (line(n), legs(n), legs(n));
    built
        .nodes
        .extend(pole.iter().chain(&secondary).chain(&panel));
    let bond = n.switch(pole[1], secondary[2], 0.001, true);
    built.bonds.push(bond);
    built.branches.extend([
        n.series(from[0], pole[0], c(0.138, 0.076)),
        n.series(from[1], pole[1], c(0.138, 0.076)),
        n.shunt(pole[1], NodeId::EARTH, c(25.0, 0.0), true),
        n.windings(transformer(
            (pole[0], pole[1]),
            (secondary[0], secondary[2], secondary[1]),
        )),
        bond,
        n.series(secondary[0], panel[0], c(0.0168, 0.003)),
        n.series(secondary[1], panel[1], c(0.0168, 0.003)),
        n.series(secondary[2], panel[2], c(0.0268, 0.003)),
        n.shunt(panel[2], NodeId::EARTH, c(25.0, 0.0), true),
    ]);
    built.branches.extend(excite(n, pole[0], pole[1]));
    for (leg, ohms) in [(0, 20.0), (1, 21.0), (0, 22.0), (1, 23.0)] {
        let end = n.node(120.0, Conductor::Ungrounded);
        let load = n.load(end, panel[2], Load::Impedance(c(ohms, 0.0)));
        built
            .branches
            .extend([n.series(panel[leg], end, c(0.1, 0.01)), load]);
        built.nodes.push(end);
        built.loads.push(load);
    }
    pole
}
