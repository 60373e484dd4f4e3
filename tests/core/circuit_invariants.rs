//! Laws that every network must obey, on random networks: floating ones and ones with every winding open included.

use crate::circuit_lateral::lateral;
use crate::circuit_networks::{c, excite, transformer};
use outage_drill::circuit::{
    BranchId, Conductor, Group, Load, Network, NodeId, Port, Solver, SourceSpec,
};
use outage_drill::units::Complex;
use outage_drill::units::portable;
use proptest::prelude::*;

/// One element: what kind, between which places, and two numbers in 0 to 1 that its values are made of.
#[derive(Debug, Clone, Copy)]
struct Piece {
    kind: u8,
    at: [usize; 5],
    size: f64,
    angle: f64,
    is_on: bool,
}

const N_KINDS: u8 = 7;

/// How far rounding may part two answers that are one in exact arithmetic, as a share of the base.
/// Milliohms stand beside kilohms behind windings of 60 to 1: conditions of a few thousand million times the 2.2e-16 of a double.
/// One network in tens of thousands is worse than 1e-9; a node that is mixed up is wrong by the whole base.
const ROUNDING: f64 = 1e-6;

impl Piece {
    /// An impedance whose resistance is between `low` and `high`, evenly over the decades.
    fn z(&self, low: f64, high: f64) -> Complex {
        let r = low * portable::power(high / low, self.size);
        c(r, 2.0 * r * self.angle)
    }

    fn load(&self) -> Load {
        if self.is_on {
            Load::Impedance(self.z(1.0, 100.0))
        } else {
            Load::Off
        }
    }

    fn emf_v(&self) -> Complex {
        c(50.0, 100.0 * self.size)
    }
}

#[derive(Debug, Clone)]
struct Recipe {
    /// Voltage class and conductor of each node.
    nodes: Vec<(bool, bool)>,
    pieces: Vec<Piece>,
}

fn recipe() -> impl Strategy<Value = Recipe> {
    let piece = (
        0..N_KINDS,
        prop::array::uniform5(0_usize..1000),
        0.0..1.0_f64,
        0.0..1.0_f64,
        any::<bool>(),
    );
    let piece = piece.prop_map(|(kind, at, size, angle, is_on)| Piece {
        kind,
        at,
        size,
        angle,
        is_on,
    });
    let nodes = prop::collection::vec((any::<bool>(), any::<bool>()), 5..14);
    (nodes, prop::collection::vec(piece, 4..30))
        .prop_map(|(nodes, pieces)| Recipe { nodes, pieces })
}

/// Builds the recipe; node i of the recipe is made as number `order[i]`.
/// The branches are those of the pieces, none for a piece whose places coincide.
fn build(recipe: &Recipe, order: &[usize]) -> (Network, Vec<NodeId>, Vec<Option<BranchId>>) {
    let mut network = Network::new();
    let mut nodes = vec![NodeId::EARTH; recipe.nodes.len()];
    let mut made: Vec<usize> = (0..order.len()).collect();
    made.sort_by_key(|&i| order[i]);
    for i in made {
        let (is_primary, is_open) = recipe.nodes[i];
        let conductor = if is_open {
            Conductor::Ungrounded
        } else {
            Conductor::Grounded
        };
        nodes[i] = network.node(if is_primary { 7200.0 } else { 120.0 }, conductor);
    }
    let branches = recipe
        .pieces
        .iter()
        .map(|piece| add(&mut network, &nodes, piece))
        .collect();
    (network, nodes, branches)
}

/// Adds a piece, where its places differ.
fn add(network: &mut Network, nodes: &[NodeId], piece: &Piece) -> Option<BranchId> {
    // earth is one of the places
    let place = |k: usize| match piece.at[k] % (nodes.len() + 1) {
        0 => NodeId::EARTH,
        i => nodes[i - 1],
    };
    let [a, b, d, e, f] = [0, 1, 2, 3, 4].map(place);
    let is_wound = piece.kind == 5;
    if a == b || (is_wound && (d == e || e == f)) {
        return None;
    }
    Some(match piece.kind {
        0 => network.series(a, b, piece.z(0.01, 10.0)),
        1 => network.switch(a, b, 0.001, piece.is_on),
        2 => network.shunt(a, b, piece.z(10.0, 1000.0), piece.is_on),
        3 => network.load(a, b, piece.load()),
        4 => {
            let (own, mutual) = (c(0.3, 1.2), c(0.1, 0.5));
            network.coupled(&[a, d], &[b, e], &[own, mutual, mutual, own], piece.is_on)
        }
        5 => {
            excite(network, a, b);
            network.windings(transformer((a, b), (d, e, f)))
        }
        _ => {
            let port = Port {
                a,
                b,
                emf_v: piece.emf_v(),
                z: piece.z(0.1, 2.0),
            };
            let group = Group(u8::from(piece.angle > 0.7));
            network.source(SourceSpec {
                ports: vec![port],
                group,
                on: piece.is_on,
                ceiling: None,
            })
        }
    })
}

fn in_order(recipe: &Recipe) -> Vec<usize> {
    (0..recipe.nodes.len()).collect()
}

fn phasors(solver: &mut Solver, nodes: &[NodeId]) -> Vec<Complex> {
    let s = solver.solve();
    nodes
        .iter()
        .flat_map(|&node| [s.phasor(node, Group(0)), s.phasor(node, Group(1))])
        .collect()
}

fn bits(values: &[Complex]) -> Vec<(u64, u64)> {
    // +0 and -0 are the same answer
    values
        .iter()
        .map(|v| ((v.re + 0.0).to_bits(), (v.im + 0.0).to_bits()))
        .collect()
}

/// Changes one piece of the recipe and the same of the solver: its size, and whether it is on.
fn change(
    solver: &mut Solver,
    recipe: &mut Recipe,
    branches: &[Option<BranchId>],
    to: (usize, f64, bool),
) {
    let index = to.0 % recipe.pieces.len();
    let Some(branch) = branches[index] else {
        return;
    };
    let piece = &mut recipe.pieces[index];
    if piece.kind != 6 {
        piece.size = to.1;
    }
    piece.is_on = to.2;
    match piece.kind {
        0 => solver.set_series_impedance(branch, piece.z(0.01, 10.0)),
        1 => solver.set_switch(branch, piece.is_on),
        2 => {
            solver.set_shunt_impedance(branch, piece.z(10.0, 1000.0));
            solver.set_shunt(branch, piece.is_on);
        }
        3 => solver.set_load(branch, piece.load()),
        4 => solver.set_coupled(branch, piece.is_on),
        6 => solver.set_source(branch, piece.is_on),
        _ => {}
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 1000, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn currents_and_powers_add_up_in_every_network(recipe in recipe()) {
        let (network, ..) = build(&recipe, &in_order(&recipe));
        let mut solver = Solver::new(network).unwrap();
        let s = solver.solve();
        prop_assert!(s.converged(), "not converged, residual {}", s.kirchhoff_residual());
        prop_assert!(s.kirchhoff_residual() <= 1e-9, "residual {}", s.kirchhoff_residual());
        prop_assert!(s.power_imbalance() <= 1e-9, "imbalance {}", s.power_imbalance());
    }

    #[test]
    fn a_changed_solver_gives_the_bits_of_a_fresh_one(
        recipe in recipe(),
        changes in prop::collection::vec((0_usize..1000, 0.0..1.0_f64, any::<bool>()), 1..8),
    ) {
        let (network, nodes, branches) = build(&recipe, &in_order(&recipe));
        let mut solver = Solver::new(network).unwrap();
        solver.solve();
        let mut recipe = recipe;
        for to in changes {
            change(&mut solver, &mut recipe, &branches, to);
            let ours = phasors(&mut solver, &nodes);
            let mut fresh = Solver::new(build(&recipe, &in_order(&recipe)).0).unwrap();
            prop_assert_eq!(bits(&ours), bits(&phasors(&mut fresh, &nodes)));
        }
        let before = phasors(&mut solver, &nodes);
        solver.restart();
        prop_assert_eq!(bits(&before), bits(&phasors(&mut solver, &nodes)));
    }

    #[test]
    fn numbering_the_nodes_otherwise_changes_nothing(recipe in recipe(), keys in prop::collection::vec(any::<u32>(), 14)) {
        let (network, nodes, branches) = build(&recipe, &in_order(&recipe));
        let mut order = in_order(&recipe);
        order.sort_by_key(|&i| keys[i]);
        let (other_network, other_nodes, other_branches) = build(&recipe, &order);
        let (mut first, mut second) = (Solver::new(network).unwrap(), Solver::new(other_network).unwrap());
        let (s, t) = (first.solve(), second.solve());
        for (i, (&n, &m)) in nodes.iter().zip(&other_nodes).enumerate() {
            prop_assert_eq!(s.floating(n), t.floating(m));
            let base_v: f64 = if recipe.nodes[i].0 { 7200.0 } else { 120.0 };
            if let (Some(ours), Some(others)) = (s.volts(n), t.volts(m)) {
                prop_assert!((ours - others).abs() <= ROUNDING * base_v.max(ours), "{} {}", ours, others);
            }
            let fed = |s: &outage_drill::circuit::Solution, n| s.fed_by(n).iter().collect::<Vec<_>>();
            prop_assert_eq!(fed(s, n), fed(t, m));
        }
        for (b, d) in branches.iter().flatten().zip(other_branches.iter().flatten()) {
            let (ours, others) = (s.amps(*b), t.amps(*d));
            prop_assert!((ours - others).abs() <= ROUNDING * ours.max(100.0), "{:?} {} {}", b, ours, others);
        }
    }

    #[test]
    fn what_a_source_sends_through_another_comes_back_the_same(
        recipe in recipe(),
        at in prop::array::uniform4(0_usize..1000),
    ) {
        let (mut network, nodes, _) = build(&recipe, &in_order(&recipe));
        // two places each, never the same twice
        let pair = |i: usize, j: usize| {
            let first = i % nodes.len();
            (nodes[first], nodes[(first + 1 + j % (nodes.len() - 1)) % nodes.len()])
        };
        let ((a, b), (d, e)) = (pair(at[0], at[1]), pair(at[2], at[3]));
        let port = |a, b| Port { a, b, emf_v: c(0.0, 0.0), z: c(0.5, 0.2) };
        let spec = |a, b| SourceSpec { ports: vec![port(a, b)], group: Group(2), on: true, ceiling: None };
        let (first, second) = (network.source(spec(a, b)), network.source(spec(d, e)));
        let mut solver = Solver::new(network).unwrap();
        solver.set_source_emf(first, 0, c(100.0, 0.0));
        let there = solver.solve().current_phasor(second, 0, Group(2));
        solver.set_source_emf(first, 0, c(0.0, 0.0));
        solver.set_source_emf(second, 0, c(100.0, 0.0));
        let back = solver.solve().current_phasor(first, 0, Group(2));
        // against the 200 A that the port itself can carry at most
        prop_assert!((there - back).norm_sqr().sqrt() <= 1e-9 * 200.0, "{} {}", there, back);
    }

    #[test]
    fn the_answer_to_all_sources_is_the_sum_of_the_answers_to_each(recipe in recipe()) {
        let (network, nodes, branches) = build(&recipe, &in_order(&recipe));
        let mut solver = Solver::new(network).unwrap();
        let all = phasors(&mut solver, &nodes);
        let mut sum = vec![Complex::ZERO; all.len()];
        let pieces = recipe.pieces.iter().zip(&branches).filter(|(piece, _)| piece.kind == 6);
        let sources: Vec<_> = pieces.filter_map(|(piece, branch)| Some(((*branch)?, piece.emf_v()))).collect();
        for &(alone, emf) in &sources {
            for &(other, _) in &sources {
                solver.set_source_emf(other, 0, if other == alone { emf } else { Complex::ZERO });
            }
            for (total, part) in sum.iter_mut().zip(phasors(&mut solver, &nodes)) {
                *total += part;
            }
        }
        for (total, sum) in all.iter().zip(&sum) {
            prop_assert!((total - sum).norm_sqr().sqrt() <= 1e-9 * 7200.0_f64.max(total.norm_sqr().sqrt()), "{} {}", total, sum);
        }
    }
}

#[test]
fn a_load_changed_far_down_a_lateral_gives_the_bits_of_a_fresh_solver() {
    let built = lateral(7);
    let mut solver = Solver::new(built.network.clone()).unwrap();
    solver.solve();
    for (turn, &load) in built.loads.iter().enumerate() {
        solver.set_load(
            load,
            Load::Impedance(c(15.0 + 1.5 * f64::from(u8::try_from(turn).unwrap()), 2.0)),
        );
        solver.set_switch(built.bonds[turn % 7], turn % 3 != 0);
        let ours = phasors(&mut solver, &built.nodes);
        let mut fresh = solver.clone();
        fresh.restart();
        assert_eq!(
            bits(&ours),
            bits(&phasors(&mut fresh, &built.nodes)),
            "after change {turn}"
        );
        assert!(solver.solve().converged());
    }
    assert!(
        built
            .branches
            .iter()
            .all(|&branch| solver.solve().amps(branch).is_finite())
    );
}
