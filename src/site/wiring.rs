//! From what is built to a network: every conductor that matters, neutrals, equipment grounds and earth included.
//!
//! Nothing is assumed to be at 0 V but remote earth.
//! Contacts are 1 mΩ when closed; wires are taken at 75 °C (NEC Chapter 9 Tables 8 and 9).
//! The line is 2 AWG ACSR with a 4 AWG ACSR neutral 4 ft below it, the drop 1/0 triplex: common practice, invented for these sites.

use crate::apparatus::conductor::branch_wire_impedance;
use crate::apparatus::cord::RATED_C;
use crate::apparatus::generator::Reactance;
use crate::apparatus::line::{
    ACSR_2, ACSR_4, Placed, TRIPLEX_1_0, TRIPLEX_INSULATION_IN, overhead_impedance,
    triplex_impedance,
};
use crate::circuit::{
    BranchId, Conductor, Group, Load, Network, NodeId, Port, SourceSpec, Windings,
};
use crate::units::Complex;

use super::control::{ControlId, PositionId};
use super::edges::{Edge, Edges};
use super::parts::{Appliance, Circuit, Cord, FarEnd, Legs, Plug, Service, Site};

const CONTACT_OHM: f64 = 0.001;
const WIRE_C: f64 = 75.0;
/// Cords are solved at their rated temperature; the thermal model of the drill uses the true one.
const CORD_C: f64 = RATED_C;
const FEET_PER_MILE: f64 = 5280.0;
const HOUSE_V: f64 = 120.0;
/// How far the neutral hangs below the phase wire, feet: common practice.
const NEUTRAL_BELOW_FT: f64 = 4.0;
/// Resistance that stands for nothing connected to a body until one touches; replaced before each solve.
const BODY_OHM: f64 = 1000.0;

/// Group of the utility's source.
pub(super) const UTILITY: Group = Group(0);
/// Group of the generator while it isn't tied to the utility.
pub(super) const OWN: Group = Group(1);

/// A contact and when it is closed.
#[derive(Debug, Clone)]
pub(super) struct Contact {
    pub(super) branch: BranchId,
    pub(super) closed_in: (ControlId, PositionId),
    pub(super) shunt: bool,
}

/// A place where a tester can be held, or that a view colors.
#[derive(Debug, Clone)]
pub(super) struct Point {
    pub(super) name: String,
    pub(super) hots: Vec<NodeId>,
    pub(super) neutral: NodeId,
}

/// A thing whose current is of interest.
#[derive(Debug, Clone)]
pub(super) struct Meter {
    pub(super) thing: String,
    pub(super) branches: Vec<BranchId>,
}

/// The three or four conductors at one end of a cord or outlet.
#[derive(Debug, Clone, Copy)]
struct End {
    one: Option<NodeId>,
    two: Option<NodeId>,
    neutral: NodeId,
    ground: NodeId,
}

/// A network with the names of its parts.
#[derive(Debug, Clone)]
pub(super) struct Wiring {
    pub(super) network: Network,
    pub(super) contacts: Vec<Contact>,
    pub(super) points: Vec<Point>,
    pub(super) meters: Vec<Meter>,
    pub(super) edges: Edges,
    /// One load a house appliance, in the order of the site's.
    pub(super) loads: Vec<BranchId>,
    /// The nodes an appliance's load hangs between.
    pub(super) load_nodes: Vec<(NodeId, NodeId)>,
    pub(super) utility: BranchId,
    pub(super) generator: BranchId,
    pub(super) generator_hots: [NodeId; 2],
    pub(super) body: BranchId,
    pub(super) crew_node: NodeId,
}

struct Builder<'a> {
    site: &'a Site,
    network: Network,
    contacts: Vec<Contact>,
    points: Vec<Point>,
    meters: Vec<Meter>,
    edges: Edges,
}

/// Builds the network of a site.
pub(super) fn wire(site: &Site) -> Wiring {
    let mut b = Builder {
        site,
        network: Network::new(),
        contacts: Vec::new(),
        points: Vec::new(),
        meters: Vec::new(),
        edges: Edges::default(),
    };
    let (utility, poles) = b.line();
    let secondary = b.transformer(&poles);
    for neighbor in &site.neighbors {
        let end = b.drop(
            &neighbor.service,
            secondary,
            &neighbor.name,
            &format!("drop-{}", neighbor.name),
        );
        b.neighbor_loads(end, neighbor.leg_watts);
    }
    let service = b.drop(&site.service, secondary, "service", "drop");
    let (bus, inlet) = b.panel(service);
    let outlets: Vec<End> = site
        .panel
        .circuits
        .iter()
        .map(|c| b.circuit(c, bus))
        .collect();
    let (generator, generator_hots, receptacle) = b.generator();
    let cord_ends: Vec<End> = site
        .cords
        .iter()
        .map(|c| b.cord(c, receptacle, inlet, &outlets))
        .collect();
    let (loads, load_nodes) = site
        .appliances
        .iter()
        .map(|a| b.appliance(a, &outlets, &cord_ends))
        .unzip();
    let crew_node = poles
        .get(site.line.crew_pole)
        .map_or(NodeId::EARTH, |p| p.0);
    let body = b
        .network
        .shunt(crew_node, NodeId::EARTH, Complex::new(BODY_OHM, 0.0), false);
    Wiring {
        network: b.network,
        contacts: b.contacts,
        points: b.points,
        meters: b.meters,
        edges: b.edges,
        loads,
        load_nodes,
        utility,
        generator,
        generator_hots,
        body,
        crew_node,
    }
}

impl Builder<'_> {
    fn hot(&mut self) -> NodeId {
        self.network.node(HOUSE_V, Conductor::Ungrounded)
    }

    fn grounded(&mut self) -> NodeId {
        self.network.node(HOUSE_V, Conductor::Grounded)
    }

    fn electrode(&mut self, node: NodeId, ohm: f64) {
        self.network
            .shunt(node, NodeId::EARTH, Complex::new(ohm, 0.0), true);
    }

    fn edge(
        &mut self,
        a: NodeId,
        b: NodeId,
        thing: &str,
        closed_in: Option<(ControlId, PositionId)>,
    ) {
        self.edges.push(Edge {
            a,
            b,
            thing: thing.to_owned(),
            closed_in,
        });
    }

    fn series(&mut self, a: NodeId, b: NodeId, z: Complex, thing: &str) -> BranchId {
        self.edge(a, b, thing, None);
        self.network.series(a, b, z)
    }

    fn contact(
        &mut self,
        a: NodeId,
        b: NodeId,
        closed_in: (ControlId, PositionId),
        thing: &str,
    ) -> BranchId {
        self.edge(a, b, thing, Some(closed_in));
        let branch = self.network.switch(a, b, CONTACT_OHM, false);
        self.contacts.push(Contact {
            branch,
            closed_in,
            shunt: false,
        });
        branch
    }

    fn point(&mut self, name: &str, hots: Vec<NodeId>, neutral: NodeId) {
        self.points.push(Point {
            name: name.to_owned(),
            hots,
            neutral,
        });
    }

    fn meter(&mut self, thing: &str, branches: Vec<BranchId>) {
        self.meters.push(Meter {
            thing: thing.to_owned(),
            branches,
        });
    }

    /// The lateral: source, head switch, poles, spans, the broken one among them, the crew's grounds.
    fn line(&mut self) -> (BranchId, Vec<(NodeId, NodeId)>) {
        let line = &self.site.line;
        let src_a = self.network.node(line.volts, Conductor::Ungrounded);
        let src_n = self.network.node(line.volts, Conductor::Grounded);
        let utility = self.network.source(SourceSpec {
            ports: vec![Port {
                a: src_a,
                b: src_n,
                emf_v: Complex::new(line.volts, 0.0),
                z: Complex::new(line.source_ohm.0, line.source_ohm.1),
            }],
            group: UTILITY,
            on: true,
            ceiling: None,
        });
        self.electrode(src_n, line.source_electrode_ohm);
        let mut poles = Vec::new();
        for pole in &line.poles {
            let a = self.network.node(line.volts, Conductor::Ungrounded);
            let n = self.network.node(line.volts, Conductor::Grounded);
            self.electrode(n, pole.electrode_ohm);
            self.point(&pole.name, vec![a], n);
            poles.push((a, n));
        }
        if let Some(first) = poles.first() {
            let feeder = self.contact(src_a, first.0, (line.feeder, PositionId(1)), "feeder");
            self.meter("feeder", vec![feeder]);
            self.network
                .series(src_n, first.1, Complex::new(CONTACT_OHM, 0.0));
        }
        for (index, span) in line.spans.iter().enumerate() {
            if let (Some(from), Some(to)) =
                (poles.get(span.from).copied(), poles.get(span.to).copied())
            {
                self.span(index, span.length_ft, &span.name, from, to);
            }
        }
        if let Some((a, n)) = poles.get(line.crew_pole).copied() {
            let branch = self
                .network
                .shunt(a, n, Complex::new(CONTACT_OHM, 0.0), false);
            self.contacts.push(Contact {
                branch,
                closed_in: (line.grounds, PositionId(1)),
                shunt: true,
            });
        }
        (utility, poles)
    }

    fn span(
        &mut self,
        index: usize,
        length_ft: f64,
        name: &str,
        from: (NodeId, NodeId),
        to: (NodeId, NodeId),
    ) {
        let line = &self.site.line;
        let start = self.network.node(line.volts, Conductor::Ungrounded);
        let meter = if index == line.broken_span {
            self.contact(from.0, start, (line.span_state, PositionId(0)), name)
        } else {
            self.edge(from.0, start, name, None);
            self.network.switch(from.0, start, CONTACT_OHM, true)
        };
        self.meter(name, vec![meter]);
        let z = overhead_impedance(
            &[
                Placed {
                    conductor: ACSR_2,
                    x_ft: 0.0,
                    y_ft: NEUTRAL_BELOW_FT,
                },
                Placed {
                    conductor: ACSR_4,
                    x_ft: 0.0,
                    y_ft: 0.0,
                },
            ],
            length_ft / FEET_PER_MILE,
        );
        self.edge(start, to.0, name, None);
        self.network
            .coupled(&[start, from.1], &[to.0, to.1], &z, true);
    }

    /// The pole transformer: returns its two hots and its neutral.
    fn transformer(&mut self, poles: &[(NodeId, NodeId)]) -> [NodeId; 3] {
        let t = &self.site.line.transformer;
        let (a, n) = poles
            .get(self.site.line.transformer_pole)
            .copied()
            .unwrap_or((NodeId::EARTH, NodeId::EARTH));
        let (one, two, neutral) = (self.hot(), self.hot(), self.grounded());
        self.network.windings(Windings::from_pairs(
            &[(a, n), (one, neutral), (neutral, two)],
            &[t.primary_v, t.half_v, t.half_v],
            t.kva * 1000.0,
            &t.winding_r_pu(),
            &t.pair_leakage_pu(),
        ));
        self.network
            .shunt(a, n, Complex::new(t.core_loss_ohm(), 0.0), true);
        self.network
            .shunt(a, n, Complex::new(0.0, t.magnetizing_ohm()), true);
        self.network
            .series(n, neutral, Complex::new(CONTACT_OHM, 0.0));
        self.edge(a, one, "transformer", None);
        self.edge(a, two, "transformer", None);
        [one, two, neutral]
    }

    /// A service drop to a house with its electrode.
    fn drop(&mut self, service: &Service, from: [NodeId; 3], point: &str, thing: &str) -> End {
        let (one, two, neutral) = (self.hot(), self.hot(), self.grounded());
        let top_one = self.hot();
        let contact = self.network.switch(from[0], top_one, CONTACT_OHM, true);
        self.edge(from[0], one, thing, None);
        self.edge(from[1], two, thing, None);
        self.meter(thing, vec![contact]);
        let z = triplex_impedance(
            &TRIPLEX_1_0,
            &TRIPLEX_1_0,
            TRIPLEX_INSULATION_IN,
            service.drop_ft,
        );
        self.network
            .coupled(&[top_one, from[1], from[2]], &[one, two, neutral], &z, true);
        self.electrode(neutral, service.electrode_ohm);
        self.point(point, vec![one, two], neutral);
        End {
            one: Some(one),
            two: Some(two),
            neutral,
            ground: neutral,
        }
    }

    fn neighbor_loads(&mut self, end: End, leg_watts: (f64, f64)) {
        for (hot, watts) in [(end.one, leg_watts.0), (end.two, leg_watts.1)] {
            if let Some(hot) = hot {
                let ohm = HOUSE_V * HOUSE_V / watts.max(1.0);
                self.network
                    .load(hot, end.neutral, Load::Impedance(Complex::new(ohm, 0.0)));
            }
        }
    }

    /// Main breaker, bus, neutral and ground bar with the bond, backfed breaker, inlet.
    fn panel(&mut self, service: End) -> (End, End) {
        let panel = &self.site.panel;
        let (bus_one, bus_two, ground) = (self.hot(), self.hot(), self.grounded());
        let (inlet_one, inlet_two) = (self.hot(), self.hot());
        let (pad_one, pad_two) = (self.hot(), self.hot());
        let on = PositionId(1);
        let mut mains = Vec::new();
        let mut backs = Vec::new();
        for (line, bus, pad, pin) in [
            (service.one, bus_one, pad_one, inlet_one),
            (service.two, bus_two, pad_two, inlet_two),
        ] {
            if let Some(line) = line {
                mains.push(self.contact(line, bus, (panel.main, on), "main"));
            }
            backs.push(self.contact(pad, bus, (panel.backfed, on), "generator-breaker"));
            let wire = branch_wire_impedance(panel.inlet_awg, panel.inlet_ft, WIRE_C);
            self.series(pin, pad, wire, "inlet");
        }
        self.meter("main", mains);
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
    fn circuit(&mut self, circuit: &Circuit, bus: End) -> End {
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
    fn generator(&mut self) -> (BranchId, [NodeId; 2], End) {
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
    fn cord(&mut self, cord: &Cord, receptacle: End, inlet: End, outlets: &[End]) -> End {
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
    fn appliance(
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
