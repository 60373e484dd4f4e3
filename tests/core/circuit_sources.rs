//! Sources under their ceilings, tied at an angle, and not synchronized with each other.

use crate::circuit_networks::{Case, c, fixed, split_phase};
use outage_drill::circuit::{
    BranchId, Ceiling, Conductor, Group, Limit, Load, Network, NodeId, Port, Solver, SourceSpec,
};
use proptest::prelude::*;

#[track_caller]
fn assert_close(what: &str, ours: f64, wanted: f64, relative: f64) {
    assert!(
        (ours - wanted).abs() <= relative * wanted.abs() + 1e-12,
        "{what}: {ours}, wanted {wanted}"
    );
}

/// The generator of the split-phase service, held to 240 V.
fn held(case: Case, ceiling: Ceiling) -> (Solver, BranchId, [NodeId; 3], BranchId) {
    let built = split_phase(case);
    let mut solver = Solver::new(built.network).unwrap();
    solver.set_source_ceiling(built.generator_source, Some(ceiling));
    (solver, built.generator_source, built.generator, built.body)
}

#[test]
fn a_regulator_holds_its_voltage_exactly_within_the_field() {
    // Fixed EMF gives 234.083 883 3 V in this case, so the scale is 240 / 234.083 883 3 in a linear island.
    let (mut solver, source, [gen_1, gen_2, _], _) =
        held(Case::Backfeed, Ceiling::field(240.0, 1.3));
    let s = solver.solve();
    assert!(s.converged());
    assert_close("volts", s.volts_between(gen_1, gen_2), 240.0, 1e-12);
    assert_close("scale", s.scale(source), 240.0 / 234.083_883_3, 1e-9);
    assert_eq!(s.limit(source), None);
}

#[test]
fn a_field_at_its_ceiling_lets_the_voltage_sag() {
    // With the body on the line 240 V would take 240 / 192.980 958 7 = 1.2436 times the EMF.
    let case = Case::Body;
    let (mut solver, source, [gen_1, gen_2, _], _) = held(case, Ceiling::field(240.0, 1.2));
    let s = solver.solve();
    assert!(s.converged());
    assert_eq!(
        (s.scale(source), s.limit(source)),
        (1.2, Some(Limit::Field))
    );
    assert_close(
        "volts",
        s.volts_between(gen_1, gen_2),
        1.2 * 192.980_958_7,
        1e-9,
    );
}

#[test]
fn an_engine_at_its_ceiling_delivers_just_that_power() {
    // All scales with the EMF in a linear island: power with its square, the body's current with the EMF itself.
    let case = Case::Body;
    let unlimited = {
        let (mut solver, source, _, body) = held(case, Ceiling::field(240.0, 1.2));
        let s = solver.solve();
        (s.power(source).re, s.amps(body))
    };
    assert!(
        unlimited.0 > 20_000.0,
        "the fixed EMF delivers {} W",
        unlimited.0
    );
    let ceiling = Ceiling {
        power_max_w: 5000.0,
        ..Ceiling::field(240.0, 1.2)
    };
    let (mut solver, source, _, body) = held(case, ceiling);
    let s = solver.solve();
    assert!(s.converged());
    assert_eq!(s.limit(source), Some(Limit::Power));
    assert_close("power", s.power(source).re, 5000.0, 1e-11);
    let share = f64::sqrt(5000.0 / unlimited.0);
    assert_close("scale", s.scale(source), 1.2 * share, 1e-9);
    assert_close("body", s.amps(body), unlimited.1 * share, 1e-9);
}

#[test]
fn a_current_at_its_ceiling_goes_no_higher_in_any_port() {
    let case = Case::ProtectiveGrounds;
    let ceiling = Ceiling {
        current_max_a: 60.0,
        ..Ceiling::field(240.0, 1.2)
    };
    let (mut solver, source, ..) = held(case, ceiling);
    let s = solver.solve();
    assert!(s.converged());
    assert_eq!(s.limit(source), Some(Limit::Current));
    assert_close("the higher port", s.amps(source), 60.0, 1e-11);
    assert!(s.port_amps(source, 0) <= 60.0 + 1e-9 && s.port_amps(source, 1) <= 60.0 + 1e-9);
}

#[test]
fn the_tighter_of_two_ceilings_is_the_one_that_holds() {
    let case = Case::Body;
    let ceiling = Ceiling {
        power_max_w: 5000.0,
        current_max_a: 10.0,
        ..Ceiling::field(240.0, 1.2)
    };
    let (mut solver, source, ..) = held(case, ceiling);
    let s = solver.solve();
    assert_eq!(s.limit(source), Some(Limit::Current));
    assert!(s.power(source).re < 5000.0 && s.amps(source) <= 10.0 + 1e-9);
}

/// A stiff 240 V line and a generator of 240 V, tied over one ohm.
fn tied(second_group: Group, ceiling: Option<Ceiling>) -> (Solver, [NodeId; 2], [BranchId; 3]) {
    let mut n = Network::new();
    let [line, set] = [(); 2].map(|()| n.node(240.0, Conductor::Ungrounded));
    let grid = n.source(fixed(line, NodeId::EARTH, 240.0, c(0.05, 0.1)));
    let port = Port {
        a: set,
        b: NodeId::EARTH,
        emf_v: c(240.0, 0.0),
        z: c(0.3, 0.6),
    };
    let generator = n.source(SourceSpec {
        ports: vec![port],
        group: second_group,
        on: true,
        ceiling,
    });
    let tie = n.series(line, set, c(0.2, 0.0));
    n.load(line, NodeId::EARTH, Load::Impedance(c(12.0, 0.0)));
    (Solver::new(n).unwrap(), [line, set], [grid, generator, tie])
}

#[test]
fn beside_a_stiff_line_the_regulator_finds_its_voltage_where_plain_scaling_would_not() {
    let (mut solver, [_, set], [_, generator, _]) =
        tied(Group(0), Some(Ceiling::field(244.0, 2.0)));
    let before = solver.solve().scale(generator);
    let s = solver.solve();
    assert!(s.converged());
    assert_close("volts", s.volts(set).unwrap(), 244.0, 1e-12);
    assert!(
        before > 244.0 / 240.0,
        "scaling alone would ask for {}, not {before}",
        244.0 / 240.0
    );
}

#[test]
fn tied_at_an_angle_the_loop_carries_the_chord_over_its_impedance() {
    // By hand, without the load: |E1 - E2| = 2 x 240 x sin(30 deg) = 240 V at 60 degrees;
    // loop 0.55 + j0.7 ohm, of magnitude 0.890 224 7: 269.594 8 A.
    let mut n = Network::new();
    let [line, set] = [(); 2].map(|()| n.node(240.0, Conductor::Ungrounded));
    n.source(fixed(line, NodeId::EARTH, 240.0, c(0.05, 0.1)));
    let generator = n.source(fixed(set, NodeId::EARTH, 240.0, c(0.3, 0.6)));
    let tie = n.series(line, set, c(0.2, 0.0));
    let mut solver = Solver::new(n).unwrap();
    assert!(solver.solve().amps(tie) < 1e-9, "in step, nothing flows");
    solver.set_source_angle(generator, 60.0);
    assert_close(
        "chord",
        solver.solve().amps(tie),
        240.0 / f64::sqrt(0.55 * 0.55 + 0.49),
        1e-9,
    );
    solver.set_source_angle(generator, 180.0);
    assert_close(
        "opposed",
        solver.solve().amps(tie),
        480.0 / f64::sqrt(0.55 * 0.55 + 0.49),
        1e-9,
    );
}

#[test]
fn sources_out_of_step_add_by_root_sum_square_of_two_separate_solves() {
    let (mut solver, [line, set], [grid, generator, tie]) = tied(Group(1), None);
    let both = solver.solve().clone();
    assert!(both.converged());
    // one EMF at zero at a time, its impedance kept
    solver.set_source_emf(generator, 0, c(0.0, 0.0));
    let first = solver.solve().clone();
    solver.set_source_emf(generator, 0, c(240.0, 0.0));
    solver.set_source_emf(grid, 0, c(0.0, 0.0));
    let second = solver.solve().clone();
    let root_sum_square = |a: f64, b: f64| f64::sqrt(a * a + b * b);
    for node in [line, set] {
        let (a, b) = (first.volts(node).unwrap(), second.volts(node).unwrap());
        assert_close(
            "volts",
            both.volts(node).unwrap(),
            root_sum_square(a, b),
            1e-12,
        );
    }
    assert_close(
        "amps",
        both.amps(tie),
        root_sum_square(first.amps(tie), second.amps(tie)),
        1e-12,
    );
    let power = first.power(grid) + second.power(grid);
    assert!(
        (both.power(grid) - power).norm_sqr() < 1e-12 * power.norm_sqr(),
        "{} {power}",
        both.power(grid)
    );
    assert!(both.power_imbalance() <= 1e-9 && both.kirchhoff_residual() <= 1e-9);
    assert_close(
        "in step again",
        {
            solver.set_source_emf(grid, 0, c(240.0, 0.0));
            solver.set_source_group(generator, Group(0));
            solver.solve().volts(line).unwrap()
        },
        tied(Group(0), None).0.solve().volts(line).unwrap(),
        1e-15,
    );
}

#[test]
fn a_stopped_source_neither_feeds_nor_loads() {
    let (mut solver, [line, set], [grid, generator, _]) = tied(Group(0), None);
    solver.set_source(generator, false);
    let s = solver.solve();
    assert!(s.converged());
    assert_eq!((s.amps(generator), s.scale(generator)), (0.0, 0.0));
    assert!(s.fed_by(set).contains(grid) && !s.fed_by(line).contains(generator));
    // nothing flows in the tie, so both ends stand at 240 V through 0.05 + j0.1 over 12.05 + j0.1
    assert_close(
        "volts",
        s.volts(set).unwrap(),
        240.0 * 12.0 / f64::sqrt(12.05 * 12.05 + 0.01),
        1e-12,
    );
}

#[test]
fn three_balanced_phases_regulate_the_sum_of_their_phases() {
    let mut n = Network::new();
    let nodes: [NodeId; 3] = [(); 3].map(|()| n.node(120.0, Conductor::Ungrounded));
    let turns = [
        c(1.0, 0.0),
        c(-0.5, -0.75_f64.sqrt()),
        c(-0.5, 0.75_f64.sqrt()),
    ];
    let ports = nodes.iter().zip(turns);
    let ports = ports
        .map(|(&a, turn)| Port {
            a,
            b: NodeId::EARTH,
            emf_v: turn * 120.0,
            z: c(0.1, 0.3),
        })
        .collect();
    let ceiling = Some(Ceiling::field(3.0 * 120.0, 1.5));
    n.source(SourceSpec {
        ports,
        group: Group(0),
        on: true,
        ceiling,
    });
    for a in nodes {
        n.load(a, NodeId::EARTH, Load::Impedance(c(5.0, 1.0)));
    }
    let mut solver = Solver::new(n).unwrap();
    let s = solver.solve();
    assert!(s.converged());
    for a in nodes {
        assert_close("phase", s.volts(a).unwrap(), 120.0, 1e-12);
    }
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn no_ceiling_is_ever_passed(
        set_v in 100.0..300.0_f64,
        power_max_w in 500.0..20_000.0_f64,
        current_max_a in 2.0..80.0_f64,
        load_ohm in 0.1..100.0_f64,
        angle in -180.0..180.0_f64,
        is_synchronized: bool,
    ) {
        let ceiling = Ceiling { power_max_w, current_max_a, ..Ceiling::field(set_v, 1.4) };
        let group = Group(u8::from(!is_synchronized));
        let mut n = Network::new();
        let [line, set] = [(); 2].map(|()| n.node(240.0, Conductor::Ungrounded));
        n.source(fixed(line, NodeId::EARTH, 100.0, c(4.0, 1.0)));
        let port = Port { a: set, b: NodeId::EARTH, emf_v: c(240.0, 0.0), z: c(0.3, 0.6) };
        let source = n.source(SourceSpec { ports: vec![port], group, on: true, ceiling: Some(ceiling) });
        n.series(line, set, c(0.2, 0.0));
        n.load(set, NodeId::EARTH, Load::Impedance(c(load_ohm, 0.0)));
        let mut solver = Solver::new(n).unwrap();
        solver.set_source_angle(source, angle);
        let s = solver.solve();
        prop_assert!(s.converged());
        prop_assert!((0.0..=1.4).contains(&s.scale(source)));
        prop_assert!(s.power(source).re <= power_max_w * (1.0 + 1e-9), "{} W", s.power(source).re);
        match s.limit(source) {
            None => prop_assert!(
                (s.volts(set).unwrap() - set_v).abs() < 1e-9 * set_v || s.volts(set).unwrap() > set_v,
                "{:?} V", s.volts(set)
            ),
            Some(Limit::Field) => prop_assert_eq!(s.scale(source).to_bits(), 1.4_f64.to_bits()),
            Some(Limit::Power) => prop_assert!((s.power(source).re / power_max_w - 1.0).abs() < 1e-9),
            // the line alone may push more through a stopped field than the ceiling allows
            Some(Limit::Current) => {
                let at_ceiling = (s.amps(source) / current_max_a - 1.0).abs() < 1e-9;
                prop_assert!(at_ceiling || s.amps(source) > current_max_a, "{} A", s.amps(source));
            }
        }
    }
}
