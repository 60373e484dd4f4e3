//! Islands, what is fed by what, and answers that must not be believed.

use crate::circuit_networks::{c, excite, fixed, transformer};
use outage_drill::circuit::{
    Ceiling, Conductor, Group, Load, Network, NetworkError, NodeId, Solver, SourceSet, SourceSpec,
    Windings,
};

fn hot(n: &mut Network, base_v: f64) -> NodeId {
    n.node(base_v, Conductor::Ungrounded)
}

#[test]
fn being_fed_spreads_over_what_conducts_and_stops_at_what_does_not() {
    let mut n = Network::new();
    let [start, wired, switched, loaded, leaked, far] = [(); 6].map(|()| hot(&mut n, 120.0));
    let neutral = n.node(120.0, Conductor::Grounded);
    let source = n.source(fixed(start, neutral, 120.0, c(0.1, 0.0)));
    n.series(start, wired, c(0.1, 0.0));
    let switch = n.switch(wired, switched, 0.001, false);
    n.load(wired, loaded, Load::Impedance(c(10.0, 0.0)));
    n.shunt(wired, leaked, c(10.0, 0.0), true);
    // a grounded conductor in between carries no feed on
    n.series(wired, neutral, c(5.0, 0.0));
    n.series(neutral, far, c(5.0, 0.0));
    let mut solver = Solver::new(n).unwrap();
    let fed = |solver: &mut Solver| {
        let s = solver.solve();
        [start, wired, switched, loaded, leaked, neutral, far]
            .map(|node| s.fed_by(node).contains(source))
    };
    assert_eq!(
        fed(&mut solver),
        [true, true, false, false, false, false, false]
    );
    solver.set_switch(switch, true);
    assert_eq!(
        fed(&mut solver),
        [true, true, true, false, false, false, false]
    );
    solver.set_source(source, false);
    assert_eq!(fed(&mut solver), [false; 7]);
}

#[test]
fn coupled_conductors_carry_feed_along_each_and_not_across() {
    let mut n = Network::new();
    let [a, b, beside, beside_b] = [(); 4].map(|()| hot(&mut n, 7200.0));
    let z = [c(0.4, 1.2), c(0.1, 0.5), c(0.1, 0.5), c(0.4, 1.2)];
    let source = n.source(fixed(a, NodeId::EARTH, 7200.0, c(1.0, 0.0)));
    n.coupled(&[a, beside], &[b, beside_b], &z, true);
    let mut solver = Solver::new(n).unwrap();
    let s = solver.solve();
    assert!(s.converged());
    assert!(
        s.fed_by(b).contains(source)
            && s.fed_by(beside).is_empty()
            && s.fed_by(beside_b).is_empty()
    );
    assert!(!s.floating(b) && s.floating(beside));
}

#[test]
fn two_sources_that_meet_are_both_named() {
    let mut n = Network::new();
    let [a, b, between] = [(); 3].map(|()| hot(&mut n, 240.0));
    let first = n.source(fixed(a, NodeId::EARTH, 240.0, c(0.1, 0.0)));
    let second = n.source(SourceSpec {
        group: Group(1),
        ..fixed(b, NodeId::EARTH, 240.0, c(0.1, 0.0))
    });
    let near = n.switch(a, between, 0.001, true);
    n.switch(between, b, 0.001, true);
    let mut solver = Solver::new(n).unwrap();
    let both = solver.solve().fed_by(between);
    assert_eq!(both.iter().collect::<Vec<_>>(), [first, second]);
    assert_eq!(both.len(), 2);
    solver.set_switch(near, false);
    let s = solver.solve();
    assert_eq!(s.fed_by(between).iter().collect::<Vec<_>>(), [second]);
    assert_eq!(s.fed_by(a).union(s.fed_by(b)), both);
    assert!(!both.contains(near) && SourceSet::EMPTY.is_empty());
}

#[test]
fn opening_the_only_way_to_earth_leaves_an_island_afloat() {
    let mut n = Network::new();
    let a = hot(&mut n, 120.0);
    let neutral = n.node(120.0, Conductor::Grounded);
    n.source(fixed(a, neutral, 120.0, c(1.0, 0.0)));
    n.load(a, neutral, Load::Impedance(c(11.0, 0.0)));
    let bond = n.switch(neutral, NodeId::EARTH, 0.001, true);
    let mut solver = Solver::new(n).unwrap();
    assert!((solver.solve().volts(a).unwrap() - 110.0).abs() < 1e-9);
    solver.set_switch(bond, false);
    let s = solver.solve();
    assert!(s.converged() && s.floating(a) && s.volts(a).is_none());
    assert!((s.volts_between(a, neutral) - 110.0).abs() < 1e-9);
    assert!(
        s.phasor(neutral, Group(0)).norm_sqr() < 1e-24,
        "a grounded conductor is the island's reference"
    );
    solver.set_switch(bond, true);
    assert!(!solver.solve().floating(a));
}

#[test]
fn the_two_sides_of_a_transformer_are_islands_of_their_own() {
    let mut n = Network::new();
    let [line, leg_1, leg_2] = [hot(&mut n, 7200.0), hot(&mut n, 120.0), hot(&mut n, 120.0)];
    let tap = n.node(120.0, Conductor::Grounded);
    n.source(fixed(line, NodeId::EARTH, 7200.0, c(0.1, 1.0)));
    n.windings(transformer((line, NodeId::EARTH), (leg_1, tap, leg_2)));
    excite(&mut n, line, NodeId::EARTH);
    let mut solver = Solver::new(n).unwrap();
    let s = solver.solve();
    assert!(s.converged());
    assert!(!s.floating(line) && s.floating(leg_1) && s.floating(tap));
    assert!(
        (s.volts_between(leg_1, leg_2) - 240.0).abs() < 0.01,
        "{}",
        s.volts_between(leg_1, leg_2)
    );
}

#[test]
fn windings_that_nothing_magnetizes_give_no_answer_to_believe() {
    let build = |is_excited: bool| {
        let mut n = Network::new();
        let [line, leg_1, leg_2] = [hot(&mut n, 7200.0), hot(&mut n, 120.0), hot(&mut n, 120.0)];
        let [line_n, tap] = [7200.0, 120.0].map(|base_v| n.node(base_v, Conductor::Grounded));
        n.shunt(line_n, NodeId::EARTH, c(25.0, 0.0), true);
        n.shunt(tap, NodeId::EARTH, c(25.0, 0.0), true);
        n.windings(transformer((line, line_n), (leg_1, tap, leg_2)));
        if is_excited {
            excite(&mut n, line, line_n);
        }
        let mut solver = Solver::new(n).unwrap();
        let s = solver.solve();
        (s.converged(), s.volts(line))
    };
    assert!(!build(false).0, "nothing defines the volts per turn");
    assert_eq!(build(true), (true, Some(0.0)));
}

#[test]
fn a_value_out_of_range_is_never_part_of_an_answer() {
    let mut n = Network::new();
    let a = hot(&mut n, 120.0);
    n.source(fixed(a, NodeId::EARTH, 120.0, c(1.0, 0.0)));
    let load = n.load(a, NodeId::EARTH, Load::Impedance(c(11.0, 0.0)));
    let mut solver = Solver::new(n).unwrap();
    for wrong in [
        c(0.0, 0.0),
        c(f64::NAN, 0.0),
        c(-5.0, 0.0),
        c(f64::INFINITY, 1.0),
    ] {
        solver.set_load(load, Load::Impedance(wrong));
        assert!(!solver.solve().converged(), "{wrong}");
    }
    solver.set_load(load, Load::Impedance(c(11.0, 0.0)));
    assert!(solver.solve().converged());
}

/// What is said of a network of one sound element and what `add` adds.
fn wrong_with(add: impl Fn(&mut Network, NodeId)) -> Option<NetworkError> {
    let mut n = Network::new();
    let a = hot(&mut n, 120.0);
    n.series(a, NodeId::EARTH, c(1.0, 0.0));
    add(&mut n, a);
    Solver::new(n).err()
}

const SECOND: usize = 1;

#[test]
fn a_wrong_element_is_named_when_the_solver_is_made() {
    assert_eq!(wrong_with(|_, _| ()), None);
    let foreign = {
        let mut other = Network::new();
        hot(&mut other, 120.0);
        hot(&mut other, 120.0)
    };
    let unknown = wrong_with(|n, a| {
        n.series(a, foreign, c(1.0, 0.0));
    });
    assert_eq!(unknown, Some(NetworkError::UnknownNode { element: SECOND }));
    let same = wrong_with(|n, a| {
        n.switch(a, a, 0.001, true);
    });
    assert_eq!(same, Some(NetworkError::SameEnds { element: SECOND }));
    for z in [
        c(0.0, 0.0),
        c(-1.0, 0.0),
        c(f64::NAN, 1.0),
        c(f64::INFINITY, 0.0),
    ] {
        let wrong = wrong_with(|n, a| {
            n.shunt(a, NodeId::EARTH, z, true);
        });
        assert_eq!(
            wrong,
            Some(NetworkError::Impedance { element: SECOND }),
            "{z}"
        );
    }
    let class = wrong_with(|n, _| {
        n.node(0.0, Conductor::Grounded);
    });
    assert_eq!(class, Some(NetworkError::Class { node: 1 }));
}

#[test]
fn a_wrong_matrix_is_named_when_the_solver_is_made() {
    let earth = NodeId::EARTH;
    let wrong_size = wrong_with(|n, a| {
        n.coupled(&[a], &[earth], &[c(1.0, 0.0); 4], true);
    });
    let lopsided = wrong_with(|n, a| {
        let z = [c(1.0, 1.0), c(0.2, 0.0), c(0.1, 0.0), c(1.0, 1.0)];
        n.coupled(&[a, earth], &[earth, earth], &z, true);
    });
    let one_winding = wrong_with(|n, a| {
        n.windings(Windings::from_pairs(
            &[(a, earth)],
            &[120.0],
            1e3,
            &[0.01],
            &[],
        ));
    });
    for wrong in [wrong_size, lopsided, one_winding] {
        assert_eq!(wrong, Some(NetworkError::Matrix { element: SECOND }));
    }
}

#[test]
fn a_wrong_source_is_named_when_the_solver_is_made() {
    let no_ports = wrong_with(|n, _| {
        n.source(SourceSpec {
            ports: vec![],
            group: Group(0),
            on: true,
            ceiling: None,
        });
    });
    let no_group = wrong_with(|n, a| {
        n.source(SourceSpec {
            group: Group(4),
            ..fixed(a, NodeId::EARTH, 1.0, c(1.0, 0.0))
        });
    });
    let no_field = wrong_with(|n, a| {
        let ceiling = Some(Ceiling::field(120.0, 0.0));
        n.source(SourceSpec {
            ceiling,
            ..fixed(a, NodeId::EARTH, 1.0, c(1.0, 0.0))
        });
    });
    for wrong in [no_ports, no_group, no_field] {
        assert_eq!(wrong, Some(NetworkError::Source { source: 0 }));
    }
}
