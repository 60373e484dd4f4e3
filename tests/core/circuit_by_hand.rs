//! Networks worked out by hand, step by step, without any solver.

use crate::circuit_networks::{c, fixed, transformer};
use outage_drill::circuit::{Conductor, Group, Load, Network, NodeId, Port, Solver, SourceSpec};

#[track_caller]
fn assert_close(what: &str, ours: f64, by_hand: f64, relative: f64) {
    assert!(
        (ours - by_hand).abs() <= relative * by_hand.abs() + 1e-12,
        "{what}: {ours}, by hand {by_hand}"
    );
}

#[test]
fn an_open_neutral_puts_the_legs_in_series() {
    // Two EMFs of 120 V in series, 0.1 ohm each; 9.6 ohms on leg 1, 48 ohms on leg 2; their midpoint hangs free.
    // One loop: I = 240 / (0.1 + 0.1 + 9.6 + 48) = 240 / 57.8 = 4.152 249 135 A.
    // Leg 1: 9.6 x I = 39.861 591 70 V.  Leg 2: 48 x I = 199.307 958 5 V.
    // Midpoint against the source's neutral, which is earthed: 120 - 0.1 I - 39.861 591 70 = 79.723 183 39 V.
    let mut n = Network::new();
    let [leg_1, leg_2] = [(); 2].map(|()| n.node(120.0, Conductor::Ungrounded));
    let [neutral, midpoint] = [(); 2].map(|()| n.node(120.0, Conductor::Grounded));
    let half = |a, b| Port {
        a,
        b,
        emf_v: c(120.0, 0.0),
        z: c(0.1, 0.0),
    };
    let ports = vec![half(leg_1, neutral), half(neutral, leg_2)];
    let source = n.source(SourceSpec {
        ports,
        group: Group(0),
        on: true,
        ceiling: None,
    });
    n.shunt(neutral, NodeId::EARTH, c(25.0, 0.0), true);
    let load_1 = n.load(leg_1, midpoint, Load::Impedance(c(9.6, 0.0)));
    n.load(midpoint, leg_2, Load::Impedance(c(48.0, 0.0)));
    let mut solver = Solver::new(n).unwrap();
    let s = solver.solve();
    assert!(s.converged());
    assert_close("current", s.amps(load_1), 4.152_249_135, 1e-9);
    assert_close(
        "leg 1",
        s.volts_between(leg_1, midpoint),
        39.861_591_70,
        1e-9,
    );
    assert_close(
        "leg 2",
        s.volts_between(midpoint, leg_2),
        199.307_958_5,
        1e-9,
    );
    assert_close("midpoint", s.volts(midpoint).unwrap(), 79.723_183_39, 1e-9);
    // Delivered at the terminals: 240 I - 0.2 I^2 = 996.539 792 4 - 3.448 234 576 = 993.091 557 8 W.
    assert_close("power", s.power(source).re, 993.091_557_8, 1e-9);
    assert_close("of one port", s.port_amps(source, 1), 4.152_249_135, 1e-9);
}

#[test]
fn a_backfed_transformer_gives_thirty_times_the_volts_to_a_thousand_ohms() {
    // 25 kVA, 7 200 : 240 V, 0.012 + j0.017 pu across the full secondary; the center tap hangs free.
    // Fed with 240 V behind 0.1 ohm. Ratio 30, so impedances count 900 times on the primary side.
    // Base there: 7 200^2 / 25 000 = 2 073.6 ohms; transformer 24.8832 + j35.2512; source 0.1 x 900 = 90.
    // I = 7 200 / |1 000 + 90 + 24.8832 + j35.2512| = 7 200 / sqrt(1 114.8832^2 + 35.2512^2).
    //   1 114.8832^2 = 1 242 964.549 6; 35.2512^2 = 1 242.647 1; sum 1 244 207.196 7; root 1 115.440 360 2.
    // I = 6.454 849 814 A; volts on the 1 000 ohms 6 454.849 814; low side current 30 I = 193.645 494 4 A.
    let mut n = Network::new();
    let [line, leg_1, leg_2] =
        [7200.0, 120.0, 120.0].map(|base_v| n.node(base_v, Conductor::Ungrounded));
    let [line_n, tap] = [7200.0, 120.0].map(|base_v| n.node(base_v, Conductor::Grounded));
    n.shunt(line_n, NodeId::EARTH, c(1.0, 0.0), true);
    n.shunt(leg_2, NodeId::EARTH, c(1.0, 0.0), true);
    let source = n.source(fixed(leg_1, leg_2, 240.0, c(0.1, 0.0)));
    let windings = n.windings(transformer((line, line_n), (leg_1, tap, leg_2)));
    let touched = n.shunt(line, line_n, c(1000.0, 0.0), true);
    let mut solver = Solver::new(n).unwrap();
    let s = solver.solve();
    assert!(s.converged());
    assert_close("line current", s.amps(touched), 6.454_849_814, 1e-9);
    assert_close(
        "line volts",
        s.volts_between(line, line_n),
        6_454.849_814,
        1e-9,
    );
    assert_close("source current", s.amps(source), 193.645_494_4, 1e-9);
    assert_close(
        "primary winding",
        s.port_amps(windings, 0),
        6.454_849_814,
        1e-9,
    );
    assert_close("first half", s.port_amps(windings, 1), 193.645_494_4, 1e-9);
    assert!(s.fed_by(line).contains(source));
}

#[test]
fn a_floating_source_has_no_return_through_earth() {
    // 120 V behind 1 ohm into 11 ohms: I = 10 A, 110 V across the load.
    // Nothing refers it to earth: volts to earth are not defined.
    // A body of 1 000 ohms from one terminal to earth is the only way to earth: it carries nothing and pins that
    // terminal at 0 V, so the other is at 110 V.
    let mut n = Network::new();
    let hot = n.node(120.0, Conductor::Ungrounded);
    let neutral = n.node(120.0, Conductor::Grounded);
    n.source(fixed(hot, neutral, 120.0, c(1.0, 0.0)));
    let load = n.load(hot, neutral, Load::Impedance(c(11.0, 0.0)));
    let body = n.shunt(hot, NodeId::EARTH, c(1000.0, 0.0), false);
    let mut solver = Solver::new(n).unwrap();
    let s = solver.solve();
    assert!(s.converged());
    assert_eq!((s.volts(hot), s.volts(neutral)), (None, None));
    assert!(s.floating(hot) && s.floating(neutral) && !s.floating(NodeId::EARTH));
    assert_close(
        "across the load",
        s.volts_between(hot, neutral),
        110.0,
        1e-12,
    );
    assert_close("load", s.amps(load), 10.0, 1e-12);

    solver.set_shunt(body, true);
    let s = solver.solve();
    assert!(s.converged());
    assert!(s.amps(body) < 1e-12, "body {} A", s.amps(body));
    assert!(
        s.volts(hot).unwrap() < 1e-9,
        "touched terminal {:?}",
        s.volts(hot)
    );
    assert_close("other terminal", s.volts(neutral).unwrap(), 110.0, 1e-9);
}

/// Amps through a bolted fault across part of the secondary, 7 200 V stiff on the primary.
fn fault_amps(across_full: bool) -> f64 {
    let mut n = Network::new();
    let [line, leg_1, leg_2] =
        [7200.0, 120.0, 120.0].map(|base_v| n.node(base_v, Conductor::Ungrounded));
    let tap = n.node(120.0, Conductor::Grounded);
    n.source(fixed(line, NodeId::EARTH, 7200.0, c(1e-6, 0.0)));
    n.shunt(tap, NodeId::EARTH, c(1.0, 0.0), true);
    n.windings(transformer((line, NodeId::EARTH), (leg_1, tap, leg_2)));
    let fault = n.switch(leg_1, if across_full { leg_2 } else { tap }, 1e-7, true);
    let mut solver = Solver::new(n).unwrap();
    let s = solver.solve();
    assert!(s.converged());
    s.amps(fault)
}

#[test]
fn faults_at_a_center_tapped_transformer_follow_from_its_impedances() {
    // 25 kVA. Across 240 V: base current 25 000 / 240 = 104.1667 A, impedance 0.012 + j0.017 pu, of magnitude
    // 0.020 808 7: 5 006 A. Across 120 V: 208.3333 A, 1.5 R + j1.2 X = 0.018 + j0.0204 pu, 0.027 205 9: 7 658 A.
    // Both as computed by an independent distribution solver (checked).
    let full = 104.166_666_67 / f64::sqrt(0.012 * 0.012 + 0.017 * 0.017);
    let half = 208.333_333_33 / f64::sqrt(0.018 * 0.018 + 0.0204 * 0.0204);
    assert_close("240 V fault", fault_amps(true), full, 1e-5);
    assert_close("120 V fault", fault_amps(false), half, 1e-5);
    assert!(
        (full - 5006.0).abs() < 0.5 && (half - 7658.0).abs() < 0.5,
        "{full} {half}"
    );
}

#[test]
fn coupled_conductors_drop_what_their_impedance_matrix_says() {
    // Two conductors, Z = [[0.4 + j1.2, 0.1 + j0.5], [0.1 + j0.5, 0.3 + j1.0]]; 10 A at 0 degrees go out on the first
    // and return on the second: drops 10 x (0.3 + j0.7) and -10 x (0.2 + j0.5).
    // 100 V behind nothing but a load that makes exactly 10 A: E = 10 x (R + 0.5 + j1.2), R = 8 ohms.
    let mut n = Network::new();
    let [send, receive] = [(); 2].map(|()| n.node(100.0, Conductor::Ungrounded));
    let back = n.node(100.0, Conductor::Grounded);
    let mut spec = fixed(send, NodeId::EARTH, 0.0, c(0.5, 0.0));
    // the source's own 0.5 ohm takes 5 V more
    spec.ports[0].emf_v = c(90.0, 12.0);
    n.source(spec);
    let z = [c(0.4, 1.2), c(0.1, 0.5), c(0.1, 0.5), c(0.3, 1.0)];
    let pair = n.coupled(&[send, NodeId::EARTH], &[receive, back], &z, true);
    n.load(receive, back, Load::Impedance(c(8.0, 0.0)));
    let mut solver = Solver::new(n).unwrap();
    let s = solver.solve();
    assert!(s.converged());
    assert_close("out", s.conductor_amps(pair, 0), 10.0, 1e-12);
    assert_close("back", s.conductor_amps(pair, 1), 10.0, 1e-12);
    let drop = s.phasor(send, Group(0)) - s.phasor(receive, Group(0));
    assert!((drop - c(3.0, 7.0)).norm_sqr() < 1e-20, "drop {drop}");
    assert!((s.phasor(back, Group(0)) - c(2.0, 5.0)).norm_sqr() < 1e-20);

    solver.set_coupled(pair, false);
    let s = solver.solve();
    assert!(s.converged() && s.floating(receive) && s.amps(pair) == 0.0);
}
