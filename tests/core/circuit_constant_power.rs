//! Constant-power loads against the closed form, near and beyond the most that the source can deliver.

use crate::circuit_networks::c;
use outage_drill::circuit::{
    BranchId, Ceiling, Conductor, FLOOR_PU, Group, Limit, Load, Network, NodeId, Port, Solver,
    SourceSpec,
};

/// One leg of the generator: 120 V behind this impedance, recovered from the table of exact volts below.
const R_OHM: f64 = 0.3452;
const X_OHM: f64 = 0.564_362_4;

/// A generator of two halves with `total_w` shared by both legs, as constant power with this floor.
fn loaded(
    total_w: f64,
    floor_pu: f64,
    ceiling: Option<Ceiling>,
) -> (Solver, [NodeId; 3], [BranchId; 3]) {
    let mut n = Network::new();
    let [leg_1, leg_2] = [(); 2].map(|()| n.node(120.0, Conductor::Ungrounded));
    let neutral = n.node(120.0, Conductor::Grounded);
    n.shunt(neutral, NodeId::EARTH, c(25.0, 0.0), true);
    let half = |a, b| Port {
        a,
        b,
        emf_v: c(120.0, 0.0),
        z: c(R_OHM, X_OHM),
    };
    let ports = vec![half(leg_1, neutral), half(neutral, leg_2)];
    let source = n.source(SourceSpec {
        ports,
        group: Group(0),
        on: true,
        ceiling,
    });
    let load = Load::ConstantPower {
        va: c(0.5 * total_w, 0.0),
        rated_v: 120.0,
        floor_pu,
    };
    let loads = [n.load(leg_1, neutral, load), n.load(neutral, leg_2, load)];
    (
        Solver::new(n).unwrap(),
        [leg_1, leg_2, neutral],
        [source, loads[0], loads[1]],
    )
}

/// Volts at a constant resistive power of `p` watts: V^4 + (2 P R - E^2) V^2 + P^2 |Z|^2 = 0, the higher root.
fn closed_form(p: f64) -> Option<f64> {
    let half_b = 0.5 * (120.0 * 120.0 - 2.0 * p * R_OHM);
    let discriminant = half_b * half_b - p * p * (R_OHM * R_OHM + X_OHM * X_OHM);
    (discriminant >= 0.0).then(|| f64::sqrt(half_b + discriminant.sqrt()))
}

#[test]
fn constant_power_meets_the_closed_form_up_to_the_nose() {
    // The volts in the table are the exact ones of an independent computation (checked), to its five decimals.
    let table = [
        (12.0, 91.524_05),
        (13.5, 82.539_40),
        (14.0, 77.345_91),
        (14.2, 73.822_32),
        (14.3, 69.685_51),
    ];
    for (total_kw, exact_v) in table {
        let (mut solver, [leg_1, leg_2, neutral], [_, load, _]) =
            loaded(1000.0 * total_kw, 0.5, None);
        let s = solver.solve();
        assert!(s.converged(), "{total_kw} kW: not converged");
        let ours = s.volts_between(leg_1, neutral);
        let by_formula = closed_form(500.0 * total_kw).unwrap();
        assert!(
            (ours / by_formula - 1.0).abs() < 1e-7,
            "{total_kw} kW: {ours} V, closed form {by_formula}"
        );
        assert!(
            (ours - exact_v).abs() < 2e-4,
            "{total_kw} kW: {ours} V, table {exact_v}"
        );
        assert!((s.volts_between(neutral, leg_2) - ours).abs() < 1e-9);
        assert!(
            (s.power(load).re - 500.0 * total_kw).abs() < 1e-6 * total_kw,
            "{total_kw} kW: takes {}",
            s.power(load)
        );
        assert!(
            s.kirchhoff_residual() <= 1e-9,
            "{total_kw} kW: residual {}",
            s.kirchhoff_residual()
        );
        assert!(!s.load_fell_back(load));
    }
}

#[test]
fn beyond_the_nose_no_load_is_said_to_take_its_power() {
    // The most is E^2 / (2 (|Z| + R)) a leg, 14.303 kW in all.
    // Either the iteration is seen not to settle, or the loads are seen to fall back far below.
    for total_w in [14_310.0, 14_350.0, 14_500.0] {
        assert_eq!(closed_form(0.5 * total_w), None);
        let (mut solver, _, [_, load, _]) = loaded(total_w, 0.3, None);
        let s = solver.solve();
        let is_honest = !s.converged() || s.load_fell_back(load);
        assert!(
            is_honest,
            "{total_w} W: a plausible number where there is no solution"
        );
    }
}

#[test]
fn below_its_floor_a_load_is_the_impedance_that_takes_its_power_there() {
    for total_kw in [12.0, 13.5, 14.0, 14.2, 14.3, 14.35, 15.0, 30.0] {
        let (mut solver, [leg_1, _, neutral], [_, load, _]) =
            loaded(1000.0 * total_kw, FLOOR_PU, None);
        let s = solver.solve();
        assert!(s.converged(), "{total_kw} kW");
        let volts = s.volts_between(leg_1, neutral);
        if volts >= FLOOR_PU * 120.0 {
            assert!(!s.load_fell_back(load));
            continue;
        }
        assert!(s.load_fell_back(load), "{total_kw} kW: {volts} V");
        let r = 96.0 * 96.0 / (500.0 * total_kw);
        let by_hand = 120.0 * r / f64::sqrt((R_OHM + r) * (R_OHM + r) + X_OHM * X_OHM);
        assert!(
            (volts - by_hand).abs() < 1e-9,
            "{total_kw} kW: {volts} V, by hand {by_hand}"
        );
    }
}

#[test]
fn a_load_that_fell_back_takes_its_power_again_when_the_voltage_returns() {
    let (mut solver, _, [_, first, second]) = loaded(15_000.0, FLOOR_PU, None);
    assert!(solver.solve().load_fell_back(first));
    solver.set_load(second, Load::Off);
    solver.set_load(first, Load::constant_power(c(2000.0, 500.0), 120.0));
    let s = solver.solve();
    assert!(s.converged() && !s.load_fell_back(first));
    assert!(
        (s.power(first) - c(2000.0, 500.0)).norm_sqr() < 1e-12,
        "{}",
        s.power(first)
    );
    assert!(s.amps(second) < 1e-300, "{}", s.amps(second));
}

#[test]
fn an_answer_does_not_depend_on_the_way_there() {
    let (mut solver, [leg_1, ..], [_, first, second]) = loaded(13_000.0, FLOOR_PU, None);
    for total_w in [15_000.0, 2000.0, 14_000.0] {
        for load in [first, second] {
            solver.set_load(load, Load::constant_power(c(0.5 * total_w, 0.0), 120.0));
        }
        let changed = solver.solve().phasor(leg_1, Group(0));
        let fresh = loaded(total_w, FLOOR_PU, None)
            .0
            .solve()
            .phasor(leg_1, Group(0));
        assert_eq!(
            (changed.re.to_bits(), changed.im.to_bits()),
            (fresh.re.to_bits(), fresh.im.to_bits())
        );
    }
}

#[test]
fn a_regulated_source_holds_its_voltage_under_constant_power() {
    let (mut solver, [leg_1, leg_2, _], [source, load, _]) =
        loaded(8000.0, FLOOR_PU, Some(Ceiling::field(240.0, 1.5)));
    let s = solver.solve();
    assert!(s.converged());
    assert!(
        (s.volts_between(leg_1, leg_2) - 240.0).abs() < 1e-8,
        "{} V",
        s.volts_between(leg_1, leg_2)
    );
    assert!((s.power(load).re - 4000.0).abs() < 1e-6);
    assert_eq!(s.limit(source), None);
}

#[test]
fn an_engine_too_small_for_its_constant_power_loads_drags_them_below_their_floor() {
    let ceiling = Ceiling {
        power_max_w: 5000.0,
        ..Ceiling::field(240.0, 1.5)
    };
    let (mut solver, [leg_1, _, neutral], [source, load, _]) =
        loaded(8000.0, FLOOR_PU, Some(ceiling));
    let s = solver.solve();
    assert!(s.converged());
    assert_eq!(s.limit(source), Some(Limit::Power));
    assert!(s.load_fell_back(load));
    // Each load is 96^2 / 4000 = 2.304 ohms; 2 500 W in it is sqrt(2500 x 2.304) = 75.894 663 84 V.
    assert!(
        (s.volts_between(leg_1, neutral) - 75.894_663_84).abs() < 1e-7,
        "{}",
        s.volts_between(leg_1, neutral)
    );
}
