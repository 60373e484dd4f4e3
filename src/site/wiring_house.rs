//! The house's part of the network: panel, circuits, generator, cords, appliances.
//!
//! Contacts and wires as in `wiring`; cords are solved at their rated temperature, while the drill's thermal model follows the true one.

use crate::apparatus::conductor::branch_wire_impedance;
use crate::apparatus::cord::RATED_C;
use crate::apparatus::generator::Reactance;
use crate::circuit::{BranchId, Load, NodeId, Port, SourceSpec};
use crate::units::Complex;

use super::control::{ControlId, PositionId};
use super::parts::{Appliance, Circuit, Cord, FarEnd, Legs, Plug};
use super::wiring::{Builder, CONTACT_OHM, Contact, End, OWN};

/// Temperature at which branch circuits are solved, °C: that of the resistance tables.
const WIRE_C: f64 = 75.0;
/// Temperature at which cords are solved, °C.
const CORD_C: f64 = RATED_C;

impl Builder<'_> {
    /// Main breaker, bus, neutral and ground bar with the bond, backfed breaker, inlet.
    pub(super) fn panel(&mut self, service: End) -> (End, End) {
        let panel = &self.site.panel;
        let (bus_one, bus_two, ground) = (self.hot(), self.hot(), self.grounded());
        let (inlet_one, inlet_two) = (self.hot(), self.hot());
        let (pad_one, pad_two) = (self.hot(), self.hot());
        let on = PositionId(1);
        let mut mains = Vec::new();
        let mut backs = Vec::new();
        let mut inlets = Vec::new();
        for (line, bus, pad, pin) in [
            (service.one, bus_one, pad_one, inlet_one),
            (service.two, bus_two, pad_two, inlet_two),
        ] {
            if let Some(line) = line {
                mains.push(self.contact(line, bus, (panel.main, on), "main"));
            }
            backs.push(self.contact(pad, bus, (panel.backfed, on), "generator-breaker"));
            let wire = branch_wire_impedance(panel.inlet_awg, panel.inlet_ft, WIRE_C);
            inlets.push(self.series(pin, pad, wire, "inlet"));
        }
        self.meter("main", mains);
        self.meter("inlet", inlets);
        self.meter("generator-breaker", backs);
        self.network
            .series(service.neutral, ground, Complex::new(CONTACT_OHM, 0.0));
        let bus = End {
            one: Some(bus_one),
            two: Some(bus_two),
            neutral: service.neutral,
            ground,
        };
        self.point("bus", vec![bus_one, bus_two], bus.neutral);
        self.point("inlet", vec![inlet_one, inlet_two], bus.neutral);
        (
            bus,
            End {
                one: Some(inlet_one),
                two: Some(inlet_two),
                ..bus
            },
        )
    }

    /// A branch circuit to its outlet.
    pub(super) fn circuit(&mut self, circuit: &Circuit, bus: End) -> End {
        let wire = branch_wire_impedance(circuit.awg, circuit.length_ft, WIRE_C);
        let thing = format!("branch-{}", circuit.name);
        let breaker = format!("breaker-{}", circuit.name);
        let neutral = self.grounded();
        let ground = self.grounded();
        self.network.series(bus.neutral, neutral, wire);
        self.network.series(bus.ground, ground, wire);
        let mut meters = Vec::new();
        let mut hots = [None, None];
        let taken = [
            (bus.one, matches!(circuit.legs, Legs::One | Legs::Both)),
            (bus.two, matches!(circuit.legs, Legs::Two | Legs::Both)),
        ];
        for (slot, (leg, used)) in hots.iter_mut().zip(taken) {
            if let (Some(leg), true) = (leg, used) {
                let (after, outlet) = (self.hot(), self.hot());
                meters.push(self.contact(leg, after, (circuit.breaker, PositionId(1)), &breaker));
                self.series(after, outlet, wire, &thing);
                *slot = Some(outlet);
            }
        }
        self.meter(&breaker, meters);
        self.point(
            &format!("outlet-{}", circuit.name),
            hots.iter().flatten().copied().collect(),
            neutral,
        );
        End {
            one: hots[0],
            two: hots[1],
            neutral,
            ground,
        }
    }

    /// The generator: two halves that share one regulator, a floating neutral, the breaker on its face.
    pub(super) fn generator(&mut self) -> (BranchId, [NodeId; 2], End) {
        let generator = &self.site.generator;
        let half = generator.spec.impedance(Reactance::Transient) * 0.5;
        let (one, two, neutral, frame) = (self.hot(), self.hot(), self.grounded(), self.grounded());
        let emf_v = Complex::new(generator.spec.set_v / 2.0, 0.0);
        let source = self.network.source(SourceSpec {
            ports: vec![
                Port {
                    a: one,
                    b: neutral,
                    emf_v,
                    z: half,
                },
                Port {
                    a: neutral,
                    b: two,
                    emf_v,
                    z: half,
                },
            ],
            group: OWN,
            on: false,
            ceiling: None,
        });
        let (out_one, out_two) = (self.hot(), self.hot());
        let on = (generator.output, PositionId(1));
        let meters = vec![
            self.contact(one, out_one, on, "generator-output"),
            self.contact(two, out_two, on, "generator-output"),
        ];
        self.meter("generator-output", meters);
        self.point("generator-outlet", vec![out_one, out_two], neutral);
        (
            source,
            [one, two],
            End {
                one: Some(out_one),
                two: Some(out_two),
                neutral,
                ground: frame,
            },
        )
    }

    /// Joins two ends by contacts that are closed together.
    fn join(&mut self, a: End, b: End, closed_in: (ControlId, PositionId), thing: &str) {
        for (x, y) in [(a.one, b.one), (a.two, b.two)] {
            if let (Some(x), Some(y)) = (x, y) {
                self.contact(x, y, closed_in, thing);
            }
        }
        for (x, y) in [(a.neutral, b.neutral), (a.ground, b.ground)] {
            let branch = self.network.switch(x, y, CONTACT_OHM, false);
            self.contacts.push(Contact {
                branch,
                closed_in,
                shunt: false,
            });
        }
    }

    /// A cord: contacts at the generator, the length of it, contacts at the far end.
    /// Returns its far end.
    pub(super) fn cord(
        &mut self,
        cord: &Cord,
        receptacle: End,
        inlet: End,
        outlets: &[End],
    ) -> End {
        let legs = [
            matches!(cord.legs, Legs::One | Legs::Both),
            matches!(cord.legs, Legs::Two | Legs::Both),
        ];
        let near = self.cord_end(legs);
        let far = self.cord_end(legs);
        let wire = cord.make.impedance_ohm(CORD_C);
        let mut meters = Vec::new();
        for (x, y) in [(near.one, far.one), (near.two, far.two)] {
            if let (Some(x), Some(y)) = (x, y) {
                meters.push(self.series(x, y, wire, &cord.name));
            }
        }
        self.network.series(near.neutral, far.neutral, wire);
        self.network.series(near.ground, far.ground, wire);
        self.meter(&cord.name, meters);
        let plugged = PositionId(1);
        self.join(near, receptacle, (cord.near, plugged), &cord.name);
        match cord.far {
            FarEnd::Inlet(control) => self.join(far, inlet, (control, plugged), &cord.name),
            FarEnd::Blades(control, circuit) => {
                if let Some(outlet) = outlets.get(circuit) {
                    self.join(far, *outlet, (control, plugged), &cord.name);
                }
            }
            FarEnd::Connector => {}
        }
        let hots = |end: End| [end.one, end.two].into_iter().flatten().collect::<Vec<_>>();
        self.point(&format!("{}-far-end", cord.name), hots(far), far.neutral);
        self.point(&format!("{}-near-end", cord.name), hots(near), near.neutral);
        far
    }

    fn cord_end(&mut self, legs: [bool; 2]) -> End {
        End {
            one: legs[0].then(|| self.hot()),
            two: legs[1].then(|| self.hot()),
            neutral: self.grounded(),
            ground: self.grounded(),
        }
    }

    /// An appliance's load, on its outlet or on whatever its plug is in.
    pub(super) fn appliance(
        &mut self,
        appliance: &Appliance,
        outlets: &[End],
        cord_ends: &[End],
    ) -> (BranchId, (NodeId, NodeId)) {
        let Some(outlet) = outlets.get(appliance.circuit).copied() else {
            return (
                self.network.load(NodeId::EARTH, NodeId::EARTH, Load::Off),
                (NodeId::EARTH, NodeId::EARTH),
            );
        };
        let own = match &appliance.plug {
            Plug::Wired => outlet,
            Plug::Cord {
                control,
                wall,
                cords,
            } => {
                let own = self.cord_end([outlet.one.is_some(), outlet.two.is_some()]);
                self.join(own, outlet, (*control, *wall), &appliance.name);
                for (cord, position) in cords {
                    if let Some(end) = cord_ends.get(*cord) {
                        let as_own = End {
                            one: own.one.and(hot_of(*end)),
                            two: own.two.and(hot_of(*end)),
                            ..*end
                        };
                        self.join(own, as_own, (*control, *position), &appliance.name);
                    }
                }
                own
            }
        };
        let between = match (own.one, own.two) {
            (Some(one), Some(two)) => (one, two),
            (Some(hot), None) | (None, Some(hot)) => (hot, own.neutral),
            (None, None) => (own.neutral, own.neutral),
        };
        (self.network.load(between.0, between.1, Load::Off), between)
    }
}

/// The hot of a two-pole extension cord, whichever leg feeds it.
fn hot_of(end: End) -> Option<NodeId> {
    end.one.or(end.two)
}
