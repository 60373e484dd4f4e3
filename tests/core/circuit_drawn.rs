//! Networks drawn at random from realistic values, held to what another solver says of them.
//!
//! `tests/networks/compare.py` draws them and has an analog circuit simulator solve them, which works by another method
//! (modified nodal analysis with currents as unknowns, LU factors with pivoting); its answers are kept beside each network.
//! Every node voltage, as a phasor, and the current of every EMF is compared, group by group.
//! Allowed are 1e-8 of the number itself, and 1e-11 of the largest of its kind in the network, which counts where a
//! neutral carries microvolts beside 7 200 V.

use outage_drill::circuit::{
    BranchId, CenterTapped, Conductor, Group, Load, Network, NodeId, Port, Solver, SourceSpec,
    Windings,
};
use outage_drill::units::Complex;
use outage_drill::units::portable::magnitude;
use serde::Deserialize;
use std::collections::BTreeMap;
use std::path::Path;

const RELATIVE: f64 = 1e-8;
const OF_LARGEST: f64 = 1e-11;

/// A network and what the simulator says of it.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct Drawn {
    name: String,
    /// What it was drawn from.
    #[serde(rename = "seed")]
    _seed: u32,
    /// Name, class in volts, whether ungrounded.
    nodes: Vec<(String, f64, bool)>,
    elements: Vec<Element>,
    answers: Vec<Answer>,
}

/// An element between named nodes, in ohms and volts.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
enum Element {
    Series {
        a: String,
        b: String,
        r: f64,
        x: f64,
    },
    Shunt {
        a: String,
        b: String,
        r: f64,
        x: f64,
    },
    Load {
        a: String,
        b: String,
        r: f64,
        x: f64,
    },
    Switch {
        a: String,
        b: String,
        r: f64,
        closed: bool,
    },
    Coupled {
        ends: Vec<(String, String)>,
        r: Vec<Vec<f64>>,
        x: Vec<Vec<f64>>,
    },
    CenterTapped {
        primary: (String, String),
        secondary: (String, String, String),
        va: f64,
        primary_v: f64,
        half_v: f64,
        r_pu: f64,
        x_pu: f64,
    },
    Source {
        group: u8,
        ports: Vec<(String, String, (f64, f64), f64, f64)>,
    },
}

/// Phasors of one group: of every node, and of every EMF's current out of its positive terminal.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct Answer {
    group: u8,
    volts: Vec<(f64, f64)>,
    amps: Vec<(f64, f64)>,
}

/// A network with what is asked of it: its nodes, and its EMFs as source and port.
struct Built {
    network: Network,
    nodes: Vec<NodeId>,
    emfs: Vec<(BranchId, usize)>,
}

fn build(drawn: &Drawn) -> Built {
    let mut network = Network::new();
    let mut named = BTreeMap::from([("earth".to_owned(), NodeId::EARTH)]);
    let mut nodes = Vec::new();
    for (name, base_v, is_ungrounded) in &drawn.nodes {
        let conductor = if *is_ungrounded {
            Conductor::Ungrounded
        } else {
            Conductor::Grounded
        };
        let node = network.node(*base_v, conductor);
        assert_eq!(named.insert(name.clone(), node), None, "{name} twice");
        nodes.push(node);
    }
    let mut emfs = Vec::new();
    for element in &drawn.elements {
        add(&mut network, &named, element, &mut emfs);
    }
    Built {
        network,
        nodes,
        emfs,
    }
}

fn add(
    network: &mut Network,
    named: &BTreeMap<String, NodeId>,
    element: &Element,
    emfs: &mut Vec<(BranchId, usize)>,
) {
    let at = |name: &String| named[name];
    let z = |&r: &f64, &x: &f64| Complex::new(r, x);
    match element {
        Element::Series { a, b, r, x } => {
            network.series(at(a), at(b), z(r, x));
        }
        Element::Shunt { a, b, r, x } => {
            network.shunt(at(a), at(b), z(r, x), true);
        }
        Element::Load { a, b, r, x } => {
            network.load(at(a), at(b), Load::Impedance(z(r, x)));
        }
        Element::Switch { a, b, r, closed } => {
            network.switch(at(a), at(b), *r, *closed);
        }
        Element::Coupled { ends, r, x } => {
            let (from, to): (Vec<NodeId>, Vec<NodeId>) =
                ends.iter().map(|(a, b)| (at(a), at(b))).unzip();
            let pairs = r.iter().flatten().zip(x.iter().flatten());
            let matrix: Vec<Complex> = pairs.map(|(r, x)| z(r, x)).collect();
            network.coupled(&from, &to, &matrix, true);
        }
        Element::CenterTapped {
            primary,
            secondary,
            va,
            primary_v,
            half_v,
            r_pu,
            x_pu,
        } => {
            network.windings(Windings::center_tapped(CenterTapped {
                primary: (at(&primary.0), at(&primary.1)),
                secondary: (at(&secondary.0), at(&secondary.1), at(&secondary.2)),
                va: *va,
                primary_v: *primary_v,
                half_v: *half_v,
                r_pu: *r_pu,
                x_pu: *x_pu,
            }));
        }
        Element::Source { group, ports } => {
            let spec = ports.iter().map(|(a, b, emf, r, x)| Port {
                a: at(a),
                b: at(b),
                emf_v: z(&emf.0, &emf.1),
                z: z(r, x),
            });
            let source = network.source(SourceSpec {
                ports: spec.collect(),
                group: Group(*group),
                on: true,
                ceiling: None,
            });
            emfs.extend((0..ports.len()).map(|port| (source, port)));
        }
    }
}

/// Holds phasors to the simulator's.
#[track_caller]
fn compare(what: &str, ours: &[Complex], theirs: &[(f64, f64)]) {
    assert_eq!(
        ours.len(),
        theirs.len(),
        "{what}: another number of answers"
    );
    let theirs: Vec<Complex> = theirs
        .iter()
        .map(|&(re, im)| Complex::new(re, im))
        .collect();
    let largest = theirs.iter().copied().map(magnitude).fold(0.0, f64::max);
    for (index, (&ours, &theirs)) in ours.iter().zip(&theirs).enumerate() {
        let allowed = RELATIVE * magnitude(theirs) + OF_LARGEST * largest;
        let apart = magnitude(ours - theirs);
        assert!(
            apart <= allowed,
            "{what} {index}: {ours}, the simulator says {theirs}"
        );
    }
}

fn drawn() -> Vec<Drawn> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/networks/drawn");
    let mut paths: Vec<_> = std::fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .collect();
    paths.sort();
    let read = |path: &std::path::PathBuf| {
        let text = std::fs::read_to_string(path).unwrap();
        ron::from_str(&text).unwrap_or_else(|error| panic!("{}: {error}", path.display()))
    };
    paths.iter().map(read).collect()
}

#[test]
fn drawn_networks_have_the_volts_and_amps_that_an_analog_simulator_finds() {
    let all = drawn();
    assert!(all.len() >= 25, "{} networks", all.len());
    let mut of_two_frequencies = 0;
    for network in &all {
        let built = build(network);
        let mut solver = Solver::new(built.network).unwrap();
        let s = solver.solve();
        assert!(s.converged(), "{}: not converged", network.name);
        of_two_frequencies += usize::from(network.answers.len() > 1);
        for answer in &network.answers {
            let group = Group(answer.group);
            let what = |of: &str| format!("{}, group {}, {of}", network.name, answer.group);
            let volts: Vec<_> = built.nodes.iter().map(|&n| s.phasor(n, group)).collect();
            compare(&what("volts of node"), &volts, &answer.volts);
            let emfs = built.emfs.iter();
            let amps: Vec<_> = emfs.map(|&(b, p)| s.current_phasor(b, p, group)).collect();
            compare(&what("amps of EMF"), &amps, &answer.amps);
        }
    }
    assert!(of_two_frequencies >= 2, "{of_two_frequencies}");
}

#[test]
fn volts_of_sources_out_of_step_are_the_root_sum_square_of_the_simulators_separate_answers() {
    for network in drawn().iter().filter(|network| network.answers.len() > 1) {
        let built = build(network);
        let mut solver = Solver::new(built.network).unwrap();
        let s = solver.solve();
        for (index, &node) in built.nodes.iter().enumerate() {
            let squares = network.answers.iter().map(|answer| {
                let (re, im) = answer.volts[index];
                re * re + im * im
            });
            let theirs = squares.sum::<f64>().sqrt();
            let ours = s.volts(node).unwrap();
            assert!(
                (ours - theirs).abs() <= RELATIVE * theirs + OF_LARGEST * 7200.0,
                "{}, node {index}: {ours} V, the simulator says {theirs} V",
                network.name
            );
        }
    }
}

#[test]
fn a_simulators_answer_for_a_network_with_another_load_is_told_apart() {
    let mut network = drawn().swap_remove(0);
    for element in &mut network.elements {
        if let Element::Load { r, .. } = element {
            *r *= 1.001;
        }
    }
    let built = build(&network);
    let mut solver = Solver::new(built.network).unwrap();
    let s = solver.solve();
    let (source, port) = built.emfs[0];
    let ours = s.current_phasor(source, port, Group(0));
    let (re, im) = network.answers[0].amps[0];
    assert!(magnitude(ours - Complex::new(re, im)) > 10.0 * RELATIVE * magnitude(ours));
}
