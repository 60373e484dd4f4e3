//! A house that has lost its service neutral or one of its legs: the volts that its loads get, and what those do.

use crate::circuit_networks::c;
use outage_drill::apparatus::resistive;
use outage_drill::apparatus::tolerance;
use outage_drill::apparatus::tolerance::Effect;
use outage_drill::circuit::{
    BranchId, Conductor, Group, Load, Network, NodeId, Port, Solver, SourceSpec,
};

/// Two halves of 120 V and three contacts to a panel, with loads in ohms: leg 1, leg 2, across.
struct Service {
    solver: Solver,
    leg_1: NodeId,
    leg_2: NodeId,
    neutral: NodeId,
    contacts: [BranchId; 3],
}

impl Service {
    fn new(loads_ohm: [f64; 3]) -> Self {
        let mut n = Network::new();
        let hot = Conductor::Ungrounded;
        let [source_1, source_2, leg_1, leg_2] = [(); 4].map(|()| n.node(120.0, hot));
        let [source_n, neutral] = [(); 2].map(|()| n.node(120.0, Conductor::Grounded));
        let half = |a, b| Port {
            a,
            b,
            emf_v: c(120.0, 0.0),
            z: c(1e-4, 0.0),
        };
        n.source(SourceSpec {
            ports: vec![half(source_1, source_n), half(source_n, source_2)],
            group: Group(0),
            on: true,
            ceiling: None,
        });
        n.shunt(source_n, NodeId::EARTH, c(1.0, 0.0), true);
        let contact = |n: &mut Network, from, to| n.switch(from, to, 1e-4, true);
        let contacts = [
            contact(&mut n, source_1, leg_1),
            contact(&mut n, source_2, leg_2),
            contact(&mut n, source_n, neutral),
        ];
        let [one, two, across] = loads_ohm.map(|ohm| Load::Impedance(c(ohm, 0.0)));
        n.load(leg_1, neutral, one);
        n.load(neutral, leg_2, two);
        n.load(leg_1, leg_2, across);
        Self {
            solver: Solver::new(n).unwrap(),
            leg_1,
            leg_2,
            neutral,
            contacts,
        }
    }

    /// Volts on leg 1, leg 2 and across, with this contact open.
    fn volts(&mut self, lost: Option<usize>) -> [f64; 3] {
        for (index, contact) in self.contacts.into_iter().enumerate() {
            self.solver.set_switch(contact, Some(index) != lost);
        }
        let [leg_1, leg_2, neutral] = [self.leg_1, self.leg_2, self.neutral];
        let s = self.solver.solve();
        assert!(s.converged());
        [(leg_1, neutral), (neutral, leg_2), (leg_1, leg_2)].map(|(a, b)| s.volts_between(a, b))
    }
}

#[track_caller]
fn assert_volts(ours: [f64; 3], by_hand: [f64; 3]) {
    for (ours, by_hand) in ours.into_iter().zip(by_hand) {
        assert!((ours - by_hand).abs() < 0.01, "{ours}, by hand {by_hand}");
    }
}

#[test]
fn without_its_neutral_a_house_divides_240_volts_as_its_loads_do() {
    // 1 500 W at 120 V is 9.6 ohms, 300 W is 48 ohms; the load across doesn't matter to the divider.
    // Leg 1: 240 x 9.6 / 57.6 = 40 V.  Leg 2: 240 x 48 / 57.6 = 200 V.
    let mut house = Service::new([9.6, 48.0, 14.4]);
    assert_volts(house.volts(None), [120.0, 120.0, 240.0]);
    let [heavy, light, across] = house.volts(Some(2));
    assert_volts([heavy, light, across], [40.0, 200.0, 240.0]);
    assert_eq!(tolerance::effect(light / 120.0, 1.0), Effect::Damage);
    assert_eq!(tolerance::effect(heavy / 120.0, 1.0), Effect::Stops);
    assert!(
        resistive::heater_watts(heavy / 120.0) < 0.12,
        "it hardly warms"
    );
}

#[test]
fn equal_loads_hide_a_lost_neutral_until_one_is_switched() {
    let mut balanced = Service::new([24.0, 24.0, 1e6]);
    assert_volts(balanced.volts(Some(2)), [120.0, 120.0, 240.0]);
    // One more lamp of 24 ohms on leg 1: 12 against 24.
    let mut switched = Service::new([12.0, 24.0, 1e6]);
    assert_volts(switched.volts(Some(2)), [80.0, 160.0, 240.0]);
}

#[test]
fn a_lost_leg_is_fed_through_the_loads_between_the_legs() {
    // From leg 1 through 14.4 ohms to what hangs on leg 2, 48 ohms: 120 x 48 / 62.4 = 92.307 7 V, in the phase of leg 1.
    let mut house = Service::new([9.6, 48.0, 14.4]);
    assert_volts(house.volts(Some(1)), [120.0, 92.307_7, 27.692_3]);
    assert_eq!(tolerance::effect(92.3 / 120.0, 20.0), Effect::Stops);
    // Nothing across: the leg is dead.
    let mut open = Service::new([9.6, 48.0, 1e9]);
    assert_volts(open.volts(Some(1)), [120.0, 0.0, 120.0]);
}
