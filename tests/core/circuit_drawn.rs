//! Networks drawn at random from realistic values, held to what another solver says of them.
//!
//! `tests/networks/compare.py` draws them and has an analog circuit simulator solve them; the program compares them itself, and what is allowed stands there.

use outage_drill::circuit::Solver;
use outage_drill::evidence::networks::{Drawn, Element, drawn};
use outage_drill::units::portable::magnitude;
use std::path::Path;

fn all() -> Vec<Drawn> {
    drawn().unwrap()
}

#[test]
fn drawn_networks_have_the_volts_and_amps_that_an_analog_simulator_finds() {
    let all = all();
    assert!(all.len() >= 25, "{} networks", all.len());
    let mut of_two_frequencies = 0;
    for network in &all {
        of_two_frequencies += usize::from(network.answers.len() > 1);
        let asked: usize = network
            .answers
            .iter()
            .map(|answer| answer.volts.len() + answer.amps.len())
            .sum();
        let pairs = network.pairs();
        assert_eq!(
            pairs.len(),
            asked,
            "{}: another number of answers",
            network.name
        );
        for pair in pairs {
            assert!(pair.apart() <= 1.0, "{pair:?}");
        }
    }
    assert!(of_two_frequencies >= 2, "{of_two_frequencies}");
}

#[test]
fn every_drawn_network_is_built_in_and_has_an_answer_for_each_node_and_emf() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/networks/drawn");
    assert_eq!(all().len(), std::fs::read_dir(folder).unwrap().count());
    for network in all() {
        let built = network.build().unwrap();
        for answer in &network.answers {
            assert_eq!(answer.volts.len(), built.nodes.len(), "{}", network.name);
            assert_eq!(answer.amps.len(), built.emfs.len(), "{}", network.name);
        }
    }
}

#[test]
fn volts_of_sources_out_of_step_are_the_root_sum_square_of_the_simulators_separate_answers() {
    for network in all().iter().filter(|network| network.answers.len() > 1) {
        let built = network.build().unwrap();
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
                (ours - theirs).abs() <= 1e-8 * theirs + 1e-11 * 7200.0,
                "{}, node {index}: {ours} V, the simulator says {theirs} V",
                network.name
            );
        }
    }
}

#[test]
fn a_simulators_answer_for_a_network_with_another_load_is_told_apart() {
    let mut network = all().swap_remove(0);
    for element in &mut network.elements {
        if let Element::Load { r, .. } = element {
            *r *= 1.001;
        }
    }
    let pairs = network.pairs();
    let emf = pairs
        .iter()
        .find(|pair| pair.what.contains("A of EMF"))
        .unwrap();
    assert!(emf.apart() > 10.0 && magnitude(emf.ours) > 0.0, "{emf:?}");
}
