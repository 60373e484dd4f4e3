//! From what is built to a network: every conductor that matters, neutrals, equipment grounds and earth included.
//!
//! Nothing is assumed to be at 0 V but remote earth.
//! Contacts are 1 mΩ when closed; wires are taken at 75 °C (NEC Chapter 9 Tables 8 and 9).
//! The line is 2 AWG ACSR with a 4 AWG ACSR neutral 4 ft below it, the drop 1/0 triplex: common practice, invented for these sites.

use crate::apparatus::line::{
    ACSR_2, ACSR_4, Placed, TRIPLEX_1_0, TRIPLEX_INSULATION_IN, overhead_impedance,
    triplex_impedance,
};
use crate::apparatus::transformer::CenterTapped;
use crate::circuit::{
    BranchId, Conductor, Group, Load, Network, NodeId, Port, SourceSpec, Windings,
};
use crate::units::Complex;

use super::control::{ControlId, PositionId};
use super::edges::{Edge, Edges};
use super::parts::{Service, Site};
use super::returns::Returns;

/// A closed contact, ohms.
pub(super) const CONTACT_OHM: f64 = 0.001;
const FEET_PER_MILE: f64 = 5280.0;
const HOUSE_V: f64 = 120.0;
/// How far the neutral hangs below the phase wire, feet: common practice.
const NEUTRAL_BELOW_FT: f64 = 4.0;
/// Resistance that stands for nothing connected to a body until one touches; replaced before each solve.
pub(super) const BODY_OHM: f64 = 1000.0;

/// Group of the utility's source.
pub(super) const UTILITY: Group = Group(0);
/// Group of the generator while it isn't tied to the utility.
pub(super) const OWN: Group = Group(1);
/// Group of the battery's inverter while it isn't tied to the utility.
pub(super) const STORED: Group = Group(2);
/// Group of the set of a neighbor who lends a cord.
pub(super) const LENT: Group = Group(3);

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
    /// How many legs its branches are of: of a switch with two ways, those of the first way come first.
    pub(super) legs: usize,
}

/// A ground-fault device: the contacts whose currents sum to nothing unless some returns another way.
#[derive(Debug, Clone)]
pub(super) struct Gfci {
    pub(super) control: ControlId,
    pub(super) branches: Vec<BranchId>,
    /// A hot and the neutral on the side it is fed from.
    pub(super) line: (Option<NodeId>, NodeId),
    /// The neutral behind it.
    pub(super) load_neutral: NodeId,
}

/// Metal that a hand may be on, and the place of a body between it and earth.
#[derive(Debug, Clone)]
pub(super) struct Frame {
    pub(super) name: String,
    pub(super) body: BranchId,
}

/// The parts of a cord that change as it warms: its wires, and where its conductors may meet.
#[derive(Debug, Clone)]
pub(super) struct CordWires {
    /// Hots, neutral, ground; a damaged place is in the first.
    pub(super) wires: Vec<BranchId>,
    /// Closed when the first hot meets the neutral.
    pub(super) short: BranchId,
}

/// The three or four conductors at one end of a cord or outlet.
#[derive(Debug, Clone, Copy)]
pub(super) struct End {
    pub(super) one: Option<NodeId>,
    pub(super) two: Option<NodeId>,
    pub(super) neutral: NodeId,
    pub(super) ground: NodeId,
}

/// A network with the names of its parts.
#[derive(Debug, Clone)]
pub(super) struct Wiring {
    pub(super) network: Network,
    pub(super) contacts: Vec<Contact>,
    pub(super) points: Vec<Point>,
    pub(super) meters: Vec<Meter>,
    pub(super) edges: Edges,
    pub(super) returns: Returns,
    /// One load a house appliance, in the order of the site's.
    pub(super) loads: Vec<BranchId>,
    /// The nodes an appliance's load hangs between.
    pub(super) load_nodes: Vec<(NodeId, NodeId)>,
    /// What changes in each cord, in the order of the site's.
    pub(super) cords: Vec<CordWires>,
    /// Ground-fault devices, in the order in which they are wired.
    pub(super) gfcis: Vec<Gfci>,
    /// Metal that a hand may be on, with the place where a body can be put between it and earth.
    pub(super) frames: Vec<Frame>,
    pub(super) utility: BranchId,
    /// Where the utility's sources put their hots.
    pub(super) feeds: Vec<NodeId>,
    /// The second feed of a line that has one.
    pub(super) second: Option<BranchId>,
    /// The battery's inverter and its hots.
    pub(super) battery: Option<(BranchId, [NodeId; 2])>,
    /// The set of a neighbor who lends a cord, and its hot.
    pub(super) lent: Option<(BranchId, [NodeId; 1])>,
    /// The solar inverter, as a load that may be negative.
    pub(super) solar: Option<BranchId>,
    /// What the battery takes from the side of the utility to charge.
    pub(super) charger: Option<BranchId>,
    pub(super) generator: BranchId,
    pub(super) generator_hots: [NodeId; 2],
    pub(super) body: BranchId,
    pub(super) crew_node: NodeId,
}

pub(super) struct Builder<'a> {
    pub(super) site: &'a Site,
    pub(super) network: Network,
    pub(super) contacts: Vec<Contact>,
    points: Vec<Point>,
    meters: Vec<Meter>,
    edges: Edges,
    returns: Returns,
    gfcis: Vec<Gfci>,
    frames: Vec<Frame>,
    pub(super) feeds: Vec<NodeId>,
    pub(super) charger: Option<BranchId>,
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
        returns: Returns::default(),
        gfcis: Vec::new(),
        frames: Vec::new(),
        feeds: Vec::new(),
        charger: None,
    };
    let (utility, poles) = b.line();
    let second = b.line_work(&poles);
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
    let set = b.generator();
    let battery = b.battery();
    let house = b.house(service, set.out, battery.map(|b| b.out));
    let solar = b.solar(&house);
    let receptacles = b.receptacles(set.out);
    let lent = b.lent();
    let (cord_ends, cords) = b.cords(&receptacles, &house, lent.map(|(.., end)| end));
    let (loads, load_nodes) = site
        .appliances
        .iter()
        .map(|a| b.appliance(a, &house.outlets, &cord_ends, lent.map(|(.., end)| end)))
        .unzip();
    let (crew_node, crew_neutral) = poles
        .get(site.line.crew_pole)
        .copied()
        .unwrap_or((NodeId::EARTH, NodeId::EARTH));
    let body = b.worker(crew_node, crew_neutral);
    Wiring {
        network: b.network,
        contacts: b.contacts,
        points: b.points,
        meters: b.meters,
        edges: b.edges,
        returns: b.returns,
        loads,
        load_nodes,
        cords,
        gfcis: b.gfcis,
        frames: b.frames,
        utility,
        feeds: b.feeds,
        second,
        generator: set.branch,
        generator_hots: set.hots,
        battery: battery.map(|b| (b.branch, b.hots)),
        lent: lent.map(|(source, hot, _)| (source, [hot])),
        solar,
        charger: b.charger,
        body,
        crew_node,
    }
}

impl Builder<'_> {
    pub(super) fn hot(&mut self) -> NodeId {
        self.network.node(HOUSE_V, Conductor::Ungrounded)
    }

    pub(super) fn grounded(&mut self) -> NodeId {
        self.network.node(HOUSE_V, Conductor::Grounded)
    }

    pub(super) fn electrode(&mut self, node: NodeId, ohm: f64) {
        self.returns.push([node, NodeId::EARTH], ohm, None);
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

    pub(super) fn series(&mut self, a: NodeId, b: NodeId, z: Complex, thing: &str) -> BranchId {
        self.edge(a, b, thing, None);
        self.network.series(a, b, z)
    }

    pub(super) fn contact(
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

    pub(super) fn point(&mut self, name: &str, hots: Vec<NodeId>, neutral: NodeId) {
        self.points.push(Point {
            name: name.to_owned(),
            hots,
            neutral,
        });
    }

    pub(super) fn meter(&mut self, thing: &str, branches: Vec<BranchId>) {
        let legs = branches.len();
        self.meter_of_legs(thing, branches, legs);
    }

    /// A meter of a switch with two ways, of which only one carries: its legs, and not its contacts, are what differs.
    pub(super) fn meter_of_legs(&mut self, thing: &str, branches: Vec<BranchId>, legs: usize) {
        self.meters.push(Meter {
            thing: thing.to_owned(),
            branches,
            legs,
        });
    }

    /// A contact that carries no name on the way energy takes: a neutral's or a ground's.
    pub(super) fn return_contact(
        &mut self,
        a: NodeId,
        b: NodeId,
        closed_in: (ControlId, PositionId),
    ) -> BranchId {
        self.returns.push([a, b], CONTACT_OHM, Some(closed_in));
        let branch = self.network.switch(a, b, CONTACT_OHM, false);
        self.contacts.push(Contact {
            branch,
            closed_in,
            shunt: false,
        });
        branch
    }

    /// Joins two grounded conductors for good.
    pub(super) fn bond(&mut self, a: NodeId, b: NodeId) {
        self.grounded_wire(a, b, Complex::new(CONTACT_OHM, 0.0));
    }

    /// A neutral's or a ground's length of wire.
    pub(super) fn grounded_wire(&mut self, a: NodeId, b: NodeId, z: Complex) -> BranchId {
        self.returns.push([a, b], z.re, None);
        self.network.series(a, b, z)
    }

    /// Metal that a hand may be on: a point for the tester, and a place for a body.
    pub(super) fn frame(&mut self, name: &str, node: NodeId, neutral: NodeId) {
        let z = Complex::new(BODY_OHM, 0.0);
        let body = self.network.shunt(node, NodeId::EARTH, z, false);
        self.point(name, vec![node], neutral);
        self.frames.push(Frame {
            name: name.to_owned(),
            body,
        });
    }

    /// A ground-fault device between two ends: hots and neutral go through it, the ground passes by.
    pub(super) fn gfci(&mut self, from: End, to: End, control: ControlId, thing: &str) {
        const SET: PositionId = PositionId(1);
        let mut branches = Vec::new();
        for (a, b) in [(from.one, to.one), (from.two, to.two)] {
            if let (Some(a), Some(b)) = (a, b) {
                branches.push(self.contact(a, b, (control, SET), thing));
            }
        }
        branches.push(self.return_contact(from.neutral, to.neutral, (control, SET)));
        self.bond(from.ground, to.ground);
        self.gfcis.push(Gfci {
            control,
            branches,
            line: (from.one.or(from.two), from.neutral),
            load_neutral: to.neutral,
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
        self.feeds.push(src_a);
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
            let mut feeder =
                vec![self.contact(src_a, first.0, (line.feeder, PositionId(1)), "feeder")];
            feeder.extend(self.welded_head(src_a, first.0));
            self.meter("feeder", feeder);
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
        let meters = if index == line.broken_span {
            vec![self.contact(from.0, start, (line.span_state, PositionId(0)), name)]
        } else if let Some(contacts) = self.break_in(index, from.0, start) {
            contacts
        } else {
            self.edge(from.0, start, name, None);
            vec![self.network.switch(from.0, start, CONTACT_OHM, true)]
        };
        self.meter(name, meters);
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
        let site = self.site;
        let (a, n) = poles
            .get(site.line.transformer_pole)
            .copied()
            .unwrap_or((NodeId::EARTH, NodeId::EARTH));
        let top = match &site.line_work {
            Some(work) => self.cutout(a, work.home_cutout),
            None => a,
        };
        self.transformer_on(&site.line.transformer, (top, n))
    }

    /// A transformer on these two nodes.
    pub(super) fn transformer_on(
        &mut self,
        t: &CenterTapped,
        (a, n): (NodeId, NodeId),
    ) -> [NodeId; 3] {
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
    pub(super) fn drop(
        &mut self,
        service: &Service,
        from: [NodeId; 3],
        point: &str,
        thing: &str,
    ) -> End {
        let (one, two, neutral) = (self.hot(), self.hot(), self.grounded());
        let top_one = self.hot();
        let contact = self.network.switch(from[0], top_one, CONTACT_OHM, true);
        let mut legs = vec![contact];
        let (top_two, top_n) = if point == "service" {
            let (leg, ends) = self.loose_ends(from[1], from[2], thing);
            legs.push(leg);
            ends
        } else {
            (from[1], from[2])
        };
        self.edge(from[0], one, thing, None);
        self.edge(top_two, two, thing, None);
        self.meter(thing, legs);
        let z = triplex_impedance(
            &TRIPLEX_1_0,
            &TRIPLEX_1_0,
            TRIPLEX_INSULATION_IN,
            service.drop_ft,
        );
        self.network
            .coupled(&[top_one, top_two, top_n], &[one, two, neutral], &z, true);
        self.electrode(neutral, service.electrode_ohm);
        self.point(point, vec![one, two], neutral);
        End {
            one: Some(one),
            two: Some(two),
            neutral,
            ground: neutral,
        }
    }

    /// The two connections at the pole that can come loose, a hot's and the neutral's: the hot's contact, and what is behind both.
    fn loose_ends(
        &mut self,
        hot: NodeId,
        neutral: NodeId,
        thing: &str,
    ) -> (BranchId, (NodeId, NodeId)) {
        const WHOLE: PositionId = PositionId(0);
        let (leg, returns) = (self.site.line.drop_leg, self.site.line.drop_neutral);
        let (top_hot, top_neutral) = (self.hot(), self.grounded());
        let contact = self.contact(hot, top_hot, (leg, WHOLE), thing);
        self.return_contact(neutral, top_neutral, (returns, WHOLE));
        (contact, (top_hot, top_neutral))
    }

    pub(super) fn neighbor_loads(&mut self, end: End, leg_watts: (f64, f64)) {
        for (hot, watts) in [(end.one, leg_watts.0), (end.two, leg_watts.1)] {
            if let Some(hot) = hot {
                let ohm = HOUSE_V * HOUSE_V / watts.max(1.0);
                self.network
                    .load(hot, end.neutral, Load::Impedance(Complex::new(ohm, 0.0)));
            }
        }
    }
}
