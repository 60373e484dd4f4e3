//! The split-phase service held to reference answers: forwards, with an open neutral, and fed backwards.
//!
//! The reference answers are those of two independent general-purpose solvers of different formulation (a distribution
//! solver and an analog circuit simulator) on the same network; they agree with each other to ten digits (checked).
//! RMS volts and amps at 60 Hz.

use crate::circuit_networks::{Case, SplitPhase, split_phase};
use outage_drill::circuit::{NodeId, Solver};

/// What the two solvers say of a case.
struct Expected {
    case: Case,
    /// Volts panel 1-n, 2-n, 1-2, panel neutral to earth, pole to earth, pole to its neutral.
    volts: [f64; 6],
    /// Volts across both halves of the generator, where it runs.
    generator_v: Option<f64>,
    body_a: Option<f64>,
}

const EXPECTED: [Expected; 7] = [
    Expected {
        case: Case::Utility,
        volts: [
            118.816_403_1,
            119.588_154_7,
            238.404_524_6,
            1.298_488_269,
            7_198.682_383,
            7_197.732_131,
        ],
        generator_v: None,
        body_a: None,
    },
    Expected {
        case: Case::DropNeutralOpen,
        volts: [
            58.065_808_6,
            180.602_696_4,
            238.667_915_4,
            57.152_478_67,
            7_196.771_873,
            7_200.865_458,
        ],
        generator_v: None,
        body_a: None,
    },
    Expected {
        case: Case::Backfeed,
        volts: [
            116.147_393_5,
            116.752_456_6,
            232.899_771,
            0.198_176_346_2,
            6_985.909_035,
            6_985.924_784,
        ],
        generator_v: Some(234.083_883_3),
        body_a: None,
    },
    Expected {
        case: Case::Neighbors,
        volts: [
            113.795_584_6,
            114.388_382,
            228.183_889_1,
            0.194_168_045_8,
            6_827.575_566,
            6_827.590_992,
        ],
        generator_v: Some(230.134_351),
        body_a: None,
    },
    Expected {
        case: Case::Body,
        volts: [
            92.453_282_96,
            92.949_536_11,
            185.402_749_7,
            9.088_100_17,
            5_298.036_025,
            5_306.997_152,
        ],
        generator_v: Some(192.980_958_7),
        body_a: Some(4.415_030_021),
    },
    Expected {
        case: Case::ProtectiveGrounds,
        volts: [
            15.067_191_03,
            15.145_682_69,
            30.212_863_46,
            0.025_708_376_28,
            0.012_151_432_78,
            0.012_957_781_59,
        ],
        generator_v: Some(48.139_949_74),
        body_a: None,
    },
    Expected {
        case: Case::MainOpen,
        volts: [115.661_539, 117.518_348_3, 233.169_138_3, 0.0, 0.0, 0.0],
        generator_v: Some(234.341_350_3),
        body_a: None,
    },
];

#[track_caller]
fn assert_agrees(case: Case, what: &str, ours: f64, reference: f64) {
    let allowed = 1e-6 * reference.abs() + 1e-6;
    assert!(
        (ours - reference).abs() <= allowed,
        "{case:?}: {what} is {ours}, the reference says {reference}"
    );
}

#[test]
fn the_split_phase_service_agrees_with_two_independent_solvers() {
    for Expected {
        case,
        volts,
        generator_v,
        body_a,
    } in EXPECTED
    {
        let SplitPhase {
            network,
            panel,
            pole,
            generator,
            body,
            ..
        } = split_phase(case);
        let mut solver = Solver::new(network).unwrap();
        let solution = solver.solve();
        assert!(solution.converged(), "{case:?}: not converged");
        let [panel_1, panel_2, panel_n] = panel;
        let ours = [
            solution.volts_between(panel_1, panel_n),
            solution.volts_between(panel_2, panel_n),
            solution.volts_between(panel_1, panel_2),
            solution.volts(panel_n).unwrap(),
            solution.volts(pole[0]).unwrap(),
            solution.volts_between(pole[0], pole[1]),
        ];
        let places = [
            "panel 1-n",
            "panel 2-n",
            "panel 1-2",
            "panel n-earth",
            "pole-earth",
            "pole-neutral",
        ];
        for ((ours, reference), what) in ours.into_iter().zip(volts).zip(places) {
            assert_agrees(case, what, ours, reference);
        }
        if let Some(reference) = generator_v {
            assert_agrees(
                case,
                "generator 1-2",
                solution.volts_between(generator[0], generator[1]),
                reference,
            );
        }
        if let Some(reference) = body_a {
            assert_agrees(case, "body", solution.amps(body), reference);
        }
        assert!(
            solution.kirchhoff_residual() <= 1e-9,
            "{case:?}: residual {}",
            solution.kirchhoff_residual()
        );
        assert!(
            solution.power_imbalance() <= 1e-9,
            "{case:?}: imbalance {}",
            solution.power_imbalance()
        );
    }
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
