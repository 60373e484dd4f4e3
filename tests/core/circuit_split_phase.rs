//! The split-phase service: what feeds what, and what its loads take.
//!
//! What other solvers say of every case stands in `tests/networks/split-phase.ron`.
//! RMS volts and amps at 60 Hz.

use crate::circuit_networks::{Case, split_phase};
use outage_drill::circuit::{NodeId, Solver};

#[track_caller]
fn assert_agrees(case: Case, what: &str, ours: f64, reference: f64) {
    let allowed = 1e-6 * reference.abs() + 1e-6;
    assert!(
        (ours - reference).abs() <= allowed,
        "{case:?}: {what} is {ours}, the reference says {reference}"
    );
}

#[test]
fn a_line_that_grounds_hold_at_millivolts_is_still_fed() {
    let with_grounds = split_phase(Case::ProtectiveGrounds);
    let mut solver = Solver::new(with_grounds.network).unwrap();
    let solution = solver.solve();
    assert!(solution.volts(with_grounds.pole[0]).unwrap() < 0.1);
    let fed = solution.fed_by(with_grounds.pole[0]);
    assert!(
        fed.contains(with_grounds.generator_source) && !fed.contains(with_grounds.utility_source)
    );
    assert!(
        solution.fed_by(with_grounds.pole[1]).is_empty(),
        "a neutral is never said to be fed"
    );
    assert!(solution.fed_by(NodeId::EARTH).is_empty());
}

#[test]
fn opening_the_main_takes_the_generator_off_the_line() {
    let built = split_phase(Case::Backfeed);
    let mut solver = Solver::new(built.network).unwrap();
    assert!(
        solver
            .solve()
            .fed_by(built.pole[0])
            .contains(built.generator_source)
    );
    for pole in built.main {
        solver.set_switch(pole, false);
    }
    let solution = solver.solve();
    assert!(solution.converged());
    assert!(solution.fed_by(built.pole[0]).is_empty());
    assert!(
        solution
            .fed_by(built.panel[0])
            .contains(built.generator_source)
    );
    assert_agrees(
        Case::MainOpen,
        "panel 1-n",
        solution.volts_between(built.panel[0], built.panel[2]),
        115.661_539,
    );
}

#[test]
fn the_loads_take_what_their_resistance_and_voltage_say() {
    let built = split_phase(Case::Backfeed);
    let mut solver = Solver::new(built.network).unwrap();
    let s = solver.solve();
    // 116.147 393 5^2 / 9.6, 116.752 456 6^2 / 48 and 232.899 771^2 / 14.4, from the reference volts
    let expected = [1_405.230_939, 283.982_002_5, 3_766.826_620];
    for (load, watts) in built.loads.into_iter().zip(expected) {
        assert_agrees(Case::Backfeed, "watts of a load", s.power(load).re, watts);
    }
}
