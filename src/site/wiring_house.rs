//! The house's part of the network: transfer switches, panels, inlets, circuits, cords, appliances.
//!
//! Contacts and wires as in `wiring`; cords are solved at the temperature that they are told to have.
//! A transfer switch whose neutral is solid leaves the neutrals of both sources joined; one that switches it moves the neutral with the hots.
//! The bond between neutral and ground at the service is the only one in the house, ahead of a transfer switch for all of it; what a generator's own bond then does follows from the circuit.

use crate::apparatus::conductor::branch_wire_impedance;
use crate::apparatus::cord::RATED_C;
use crate::circuit::{BranchId, Load, NodeId};
use crate::units::Complex;

use super::control::{ControlId, PositionId};
use super::equipment::{Bus, Cord, FarEnd, Moved, NeutralPole, OtherSide, Pair, Spot, Transfer};
use super::parts::{Appliance, Circuit, Legs, Plug};
use super::rest::{CordState, Rest};
use super::wiring::{Builder, CordWires, End};

/// Temperature at which branch circuits are solved, °C: that of the resistance tables.
const WIRE_C: f64 = 75.0;
/// Temperature at which cords are solved until they are told to be warmer or cooler, °C.
const CORD_C: f64 = RATED_C;
/// Conductors that meet in a cord, ohms: metal on metal, common practice.
const MEET_OHM: f64 = 0.01;
/// From the hot of a connector in a puddle through the wet to earth, ohms: assumption, 2 000 to 20 000; half of it lies inside the connector.
const WET_OHM: f64 = 4000.0;

/// The house's ends once it is wired.
#[derive(Debug)]
pub(super) struct House {
    /// The main panel's bus.
    pub(super) bus: End,
    /// The buses of further panels.
    pub(super) subs: Vec<End>,
    /// The pins of each inlet.
    pub(super) inlets: Vec<End>,
    /// The outlet of each circuit.
    pub(super) outlets: Vec<End>,
}

/// What can be on the other side of a transfer switch.
struct Others<'a> {
    /// Behind each inlet's wire.
    pads: &'a [End],
    generator: End,
    battery: Option<End>,
}

impl Others<'_> {
    fn end(&self, other: OtherSide) -> Option<End> {
        match other {
            OtherSide::Inlet(index) => self.pads.get(index).copied(),
            OtherSide::Generator => Some(self.generator),
            OtherSide::Battery => self.battery,
        }
    }
}

impl Builder<'_> {
    /// Everything between the service and the outlets: transfer switches, panels, inlets, circuits.
    pub(super) fn house(&mut self, service: End, generator: End, battery: Option<End>) -> House {
        let site = self.site;
        let whole = site.transfers.iter().find(|t| t.load == Moved::MainPanel);
        let ground = self.grounded();
        let feed = match whole {
            Some(_) => self.end([true, true]),
            None => End { ground, ..service },
        };
        self.bond(service.neutral, ground);
        let bus = self.main_panel(feed, ground);
        let (inlets, pads): (Vec<End>, Vec<End>) =
            (0..site.inlets.len()).map(|i| self.inlet(i, bus)).unzip();
        self.backfeed(bus, &pads);
        if self.is_wired_for_good() {
            self.bond(generator.ground, bus.ground);
        }
        if let Some(battery) = battery {
            self.bond(battery.ground, bus.ground);
        }
        let others = Others {
            pads: &pads,
            generator,
            battery,
        };
        if let Some(transfer) = whole {
            self.transfer(transfer, service, feed, &others);
        }
        let subs: Vec<End> = (0..site.subpanels.len())
            .map(|i| self.subpanel(i, bus, &others))
            .collect();
        let mut outlets: Vec<End> = Vec::new();
        for index in 0..site.circuits.len() {
            let shared = site.circuits.get(index).and_then(|c| c.neutral_of);
            let shared = shared.and_then(|i| outlets.get(i)).map(|end| end.neutral);
            outlets.push(self.circuit(index, bus, &subs, &others, shared));
        }
        House {
            bus,
            subs,
            inlets,
            outlets,
        }
    }

    /// Whether the generator's terminals go to a transfer switch by wire and not by a cord.
    fn is_wired_for_good(&self) -> bool {
        let mut transfers = self.site.transfers.iter();
        transfers.any(|t| t.other == OtherSide::Generator)
    }

    /// Main breaker, bus, neutral and ground bar.
    fn main_panel(&mut self, feed: End, ground: NodeId) -> End {
        let main = (self.site.panel.main, PositionId(1));
        let bus = End {
            one: Some(self.hot()),
            two: Some(self.hot()),
            neutral: feed.neutral,
            ground,
        };
        let mut meters = Vec::new();
        for (line, to) in [(feed.one, bus.one), (feed.two, bus.two)] {
            if let (Some(line), Some(to)) = (line, to) {
                meters.push(self.contact(line, to, main, "main"));
            }
        }
        self.meter("main", meters);
        self.point("bus", hots(bus), bus.neutral);
        bus
    }

    /// An inlet: its pins, and the pads behind its wire.
    /// Its ground is the panel's; its neutral is the panel's too, unless a transfer switch moves the neutral along.
    fn inlet(&mut self, index: usize, bus: End) -> (End, End) {
        let site = self.site;
        let moved = site
            .transfers
            .iter()
            .any(|t| t.other == OtherSide::Inlet(index) && t.neutral == NeutralPole::Switched);
        let neutral = if moved { self.grounded() } else { bus.neutral };
        let ends = [(); 2].map(|()| End {
            one: Some(self.hot()),
            two: Some(self.hot()),
            neutral,
            ground: bus.ground,
        });
        let [pins, pads] = ends;
        let Some(inlet) = site.inlets.get(index) else {
            return (pins, pads);
        };
        let wire = branch_wire_impedance(inlet.awg, inlet.length_ft, WIRE_C);
        let mut meters = Vec::new();
        for (pin, pad) in [(pins.one, pads.one), (pins.two, pads.two)] {
            if let (Some(pin), Some(pad)) = (pin, pad) {
                meters.push(self.series(pin, pad, wire, &inlet.name));
            }
        }
        self.meter(&inlet.name, meters);
        self.point(&inlet.name, hots(pins), neutral);
        (pins, pads)
    }

    /// The breaker in the main panel that an inlet feeds.
    fn backfeed(&mut self, bus: End, pads: &[End]) {
        let Some(backfeed) = self.site.panel.backfeed else {
            return;
        };
        let Some(pads) = pads.get(backfeed.inlet).copied() else {
            return;
        };
        let on = (backfeed.breaker, PositionId(1));
        let mut meters = Vec::new();
        for (pad, to) in [(pads.one, bus.one), (pads.two, bus.two)] {
            if let (Some(pad), Some(to)) = (pad, to) {
                meters.push(self.contact(pad, to, on, "generator-breaker"));
            }
        }
        self.meter("generator-breaker", meters);
    }

    /// A transfer switch between the utility's side, the other source and what it moves.
    fn transfer(&mut self, transfer: &Transfer, utility: End, load: End, others: &Others<'_>) {
        let to_utility = (transfer.handle, PositionId(0));
        let to_other = (transfer.handle, PositionId(2));
        let mut meters = Vec::new();
        for (from, to) in [(utility.one, load.one), (utility.two, load.two)] {
            if let (Some(from), Some(to)) = (from, to) {
                meters.push(self.contact(from, to, to_utility, &transfer.name));
            }
        }
        let legs = meters.len();
        let Some(other) = others.end(transfer.other) else {
            return;
        };
        let other = match transfer.breaker {
            Some(breaker) => self.behind_breaker(other, load, breaker, transfer),
            None => other,
        };
        for (from, to) in [(other.one, load.one), (other.two, load.two)] {
            if let (Some(from), Some(to)) = (from, to) {
                meters.push(self.contact(from, to, to_other, &transfer.name));
            }
        }
        self.meter_of_legs(&transfer.name, meters, legs);
        match (transfer.neutral, transfer.load) {
            (NeutralPole::Switched, _) => {
                self.return_contact(utility.neutral, load.neutral, to_utility);
                self.return_contact(other.neutral, load.neutral, to_other);
            }
            (NeutralPole::Solid, Moved::Circuit(_)) => {}
            (NeutralPole::Solid, _) => self.bond(utility.neutral, load.neutral),
        }
        let own = matches!(transfer.other, OtherSide::Generator | OtherSide::Battery);
        if transfer.neutral == NeutralPole::Solid && own {
            self.bond(other.neutral, load.neutral);
        }
    }

    fn behind_breaker(
        &mut self,
        other: End,
        load: End,
        breaker: ControlId,
        transfer: &Transfer,
    ) -> End {
        let name = format!("{}-breaker", transfer.name);
        let mut end = other;
        let mut meters = Vec::new();
        for (hot, used) in [(&mut end.one, load.one), (&mut end.two, load.two)] {
            *hot = hot.filter(|_| used.is_some()).map(|before| {
                let after = self.hot();
                meters.push(self.contact(before, after, (breaker, PositionId(1)), &name));
                after
            });
        }
        self.meter(&name, meters);
        end
    }

    /// A further panel: its feeder from the main panel, its transfer switch, its bus.
    fn subpanel(&mut self, index: usize, main: End, others: &Others<'_>) -> End {
        let site = self.site;
        let Some(sub) = site.subpanels.get(index) else {
            return main;
        };
        let bus = self.end([true, true]);
        let wire = branch_wire_impedance(sub.awg, sub.length_ft, WIRE_C);
        self.grounded_wire(main.ground, bus.ground, wire);
        self.point(&format!("bus-{}", sub.name), hots(bus), bus.neutral);
        let transfer = site
            .transfers
            .iter()
            .find(|t| t.load == Moved::Subpanel(index));
        if let Some(pair) = sub.pair {
            self.pair(&sub.name, pair, main, bus, others);
            return bus;
        }
        let feeder = transfer.and_then(|t| t.feeder);
        let far = End {
            neutral: self.grounded(),
            ..self.feeder(main, feeder, wire, &sub.name)
        };
        self.grounded_wire(main.neutral, far.neutral, wire);
        let charges = transfer.is_some_and(|t| t.other == OtherSide::Battery);
        if let (true, Some(one), Some(two)) = (charges, far.one, far.two) {
            self.charger = Some(self.network.load(one, two, Load::Off));
        }
        if let Some(transfer) = transfer {
            self.transfer(transfer, far, bus, others);
        }
        bus
    }

    /// The two breakers of a chosen bus: one from the bus above, one from an inlet; the neutral goes straight through.
    fn pair(&mut self, name: &str, pair: Pair, main: End, bus: End, others: &Others<'_>) {
        self.bond(main.neutral, bus.neutral);
        let pads = others.end(OtherSide::Inlet(pair.inlet)).unwrap_or(main);
        for (from, breaker, side) in [
            (main, pair.utility, "utility"),
            (pads, pair.generator, "generator"),
        ] {
            let thing = format!("{name}-{side}");
            let mut meters = Vec::new();
            for (from, to) in [(from.one, bus.one), (from.two, bus.two)] {
                if let (Some(from), Some(to)) = (from, to) {
                    meters.push(self.contact(from, to, (breaker, PositionId(1)), &thing));
                }
            }
            self.meter(&thing, meters);
        }
    }

    /// The hots of a feeder: its breaker in the main panel and its wire.
    fn feeder(&mut self, main: End, breaker: Option<ControlId>, wire: Complex, name: &str) -> End {
        let thing = format!("breaker-{name}");
        let mut end = main;
        let mut meters = Vec::new();
        for hot in [&mut end.one, &mut end.two] {
            *hot = hot.zip(breaker).map(|(leg, breaker)| {
                let (after, far) = (self.hot(), self.hot());
                meters.push(self.contact(leg, after, (breaker, PositionId(1)), &thing));
                self.series(after, far, wire, &format!("feeder-{name}"));
                far
            });
        }
        self.meter(&thing, meters);
        end
    }

    /// A branch circuit to its outlet: breaker, transfer switch of its own if it has one, wire, ground-fault device.
    /// Its neutral is a wire of its own, or that of another circuit which is `shared`.
    fn circuit(
        &mut self,
        index: usize,
        main: End,
        subs: &[End],
        others: &Others<'_>,
        shared: Option<NodeId>,
    ) -> End {
        let site = self.site;
        let Some(circuit) = site.circuits.get(index) else {
            return main;
        };
        let bus = match circuit.bus {
            Bus::Main => main,
            Bus::Sub(sub) => subs.get(sub).copied().unwrap_or(main),
        };
        let wire = branch_wire_impedance(circuit.awg, circuit.length_ft, WIRE_C);
        let thing = format!("branch-{}", circuit.name);
        let transfer = site
            .transfers
            .iter()
            .find(|t| t.load == Moved::Circuit(index));
        let start = self.breaker(circuit, bus);
        let start = match transfer {
            Some(transfer) => {
                let moved = End {
                    one: start.one.map(|_| self.hot()),
                    two: start.two.map(|_| self.hot()),
                    neutral: match transfer.neutral {
                        NeutralPole::Solid => start.neutral,
                        NeutralPole::Switched => self.grounded(),
                    },
                    ..start
                };
                self.transfer(transfer, start, moved, others);
                moved
            }
            None => start,
        };
        let mut end = self.end([false, false]);
        if let Some(neutral) = shared {
            end.neutral = neutral;
        } else {
            let neutral = self.grounded_wire(start.neutral, end.neutral, wire);
            if site.shared_neutrals().any(|c| c.name == circuit.name) {
                self.meter(&format!("neutral-{}", circuit.name), vec![neutral]);
            }
        }
        self.grounded_wire(start.ground, end.ground, wire);
        for (from, to) in [(start.one, &mut end.one), (start.two, &mut end.two)] {
            *to = from.map(|from| {
                let outlet = self.hot();
                self.series(from, outlet, wire, &thing);
                outlet
            });
        }
        if let Some(gfci) = circuit.gfci {
            let protected = self.end([end.one.is_some(), end.two.is_some()]);
            self.gfci(end, protected, gfci, &format!("gfci-{}", circuit.name));
            end = protected;
        }
        self.point(&format!("outlet-{}", circuit.name), hots(end), end.neutral);
        end
    }

    /// The load side of a circuit's breaker.
    fn breaker(&mut self, circuit: &Circuit, bus: End) -> End {
        let name = circuit.guard.clone();
        let mut meters = Vec::new();
        let mut end = bus;
        for (hot, other_leg) in [(&mut end.one, Legs::Two), (&mut end.two, Legs::One)] {
            *hot = hot.filter(|_| circuit.legs != other_leg).map(|leg| {
                let after = self.hot();
                meters.push(self.contact(leg, after, (circuit.breaker, PositionId(1)), &name));
                after
            });
        }
        self.meter(&name, meters);
        end
    }

    /// Joins two ends by contacts that are closed together.
    /// Two single hots meet whatever their legs.
    fn join(&mut self, a: End, b: End, closed_in: (ControlId, PositionId), thing: &str) {
        let single = |end: End| match (end.one, end.two) {
            (Some(hot), None) | (None, Some(hot)) => Some(hot),
            _ => None,
        };
        let pairs = match (single(a), single(b)) {
            (Some(x), Some(y)) => vec![(Some(x), Some(y))],
            _ => vec![(a.one, b.one), (a.two, b.two)],
        };
        for (x, y) in pairs {
            if let (Some(x), Some(y)) = (x, y) {
                self.contact(x, y, closed_in, thing);
            }
        }
        self.return_contact(a.neutral, b.neutral, closed_in);
        self.return_contact(a.ground, b.ground, closed_in);
    }

    /// All cords: their ends first, so that one can be plugged into another; returns their far ends.
    pub(super) fn cords(
        &mut self,
        receptacles: &[End],
        house: &House,
        lent: Option<End>,
    ) -> (Vec<End>, Vec<CordWires>) {
        let site = self.site;
        let (ends, wires): (Vec<(End, End)>, Vec<CordWires>) =
            site.cords.iter().map(|c| self.cord(c)).unzip();
        let far: Vec<End> = ends.iter().map(|(_, far)| *far).collect();
        for (cord, (near_end, far_end)) in site.cords.iter().zip(&ends) {
            for (spot, position) in cord.near_spots.iter().zip((0..).map(PositionId)) {
                let into = match *spot {
                    Spot::Stowed => None,
                    Spot::Receptacle(i) => receptacles.get(i),
                    Spot::CordEnd(i) => far.get(i),
                    Spot::Outlet(i) => house.outlets.get(i),
                    Spot::Inlet(i) => house.inlets.get(i),
                    Spot::Lent => lent.as_ref(),
                };
                if let Some(into) = into {
                    self.join(*near_end, *into, (cord.near, position), &cord.name);
                }
            }
            match cord.far {
                FarEnd::Inlet(control) => {
                    for (inlet, position) in house.inlets.iter().zip((1..).map(PositionId)) {
                        self.join(*far_end, *inlet, (control, position), &cord.name);
                    }
                }
                FarEnd::Blades(control, circuit) => {
                    if let Some(outlet) = house.outlets.get(circuit) {
                        self.join(*far_end, *outlet, (control, PositionId(1)), &cord.name);
                    }
                }
                FarEnd::Strip(control) => {
                    if let Some(lent) = lent {
                        self.join(*far_end, lent, (control, PositionId(1)), &cord.name);
                    }
                }
                FarEnd::Connector => {}
            }
        }
        (far, wires)
    }

    /// The length of a cord: its near and its far end.
    fn cord(&mut self, cord: &Cord) -> ((End, End), CordWires) {
        let legs = [cord.legs != Legs::Two, cord.legs != Legs::One];
        let near = self.end([legs[0], legs[1] && !cord.ties_legs]);
        let far = self.end(legs);
        let at = CordState {
            celsius: CORD_C,
            spot_k: 0.0,
            shorted: false,
        };
        let wire = cord_wire_ohm(cord, at);
        let mut meters = Vec::new();
        let second = near.two.or(near.one.filter(|_| cord.ties_legs));
        for (x, y) in [(near.one, far.one), (second, far.two)] {
            if let (Some(x), Some(y)) = (x, y) {
                meters.push(self.series(x, y, wire, &cord.name));
            }
        }
        let mut wires = meters.clone();
        let neutral = self.grounded_wire(near.neutral, far.neutral, wire);
        wires.push(neutral);
        // What both legs carry comes back on one neutral.
        meters.extend(cord.ties_legs.then_some(neutral));
        if cord.grounded {
            let ground = self.grounded_wire(near.ground, far.ground, wire);
            wires.push(ground);
            self.meter(&format!("{}-ground", cord.name), vec![ground]);
        }
        let hot = far.one.or(far.two).unwrap_or(far.neutral);
        let short = self.network.switch(hot, far.neutral, MEET_OHM, false);
        self.wet_joint(cord, hot, far.neutral);
        self.meter(&cord.name, meters);
        self.point(&format!("{}-far-end", cord.name), hots(far), far.neutral);
        self.point(&format!("{}-near-end", cord.name), hots(near), near.neutral);
        ((near, far), CordWires { wires, short })
    }

    /// A connector in a puddle: through the wet the hot reaches its outside, where a hand may be, and from there earth.
    fn wet_joint(&mut self, cord: &Cord, hot: NodeId, neutral: NodeId) {
        let puddle = cord.rests.iter().position(|r| *r == Rest::InPuddle);
        let Some(at) = puddle.and_then(|at| u8::try_from(at).ok()) else {
            return;
        };
        let (inside, outside) = (self.hot(), self.hot());
        self.contact(hot, inside, (cord.lay, PositionId(at)), &cord.name);
        let half = Complex::new(WET_OHM / 2.0, 0.0);
        self.series(inside, outside, half, &format!("{}-joint", cord.name));
        self.network.series(outside, NodeId::EARTH, half);
        self.frame(&format!("{}-joint", cord.name), outside, neutral);
    }

    /// An end of its own.
    pub(super) fn end(&mut self, legs: [bool; 2]) -> End {
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
        lent: Option<End>,
    ) -> (BranchId, (NodeId, NodeId)) {
        let Some(outlet) = outlets.get(appliance.circuit).copied() else {
            return (
                self.network.load(NodeId::EARTH, NodeId::EARTH, Load::Off),
                (NodeId::EARTH, NodeId::EARTH),
            );
        };
        let own = match &appliance.plug {
            Plug::Wired if appliance.grounded => outlet,
            Plug::Wired => End {
                ground: self.grounded(),
                ..outlet
            },
            Plug::Cord {
                control,
                wall,
                cords,
                lent: at_lent,
            } => {
                let own = self.end([outlet.one.is_some(), outlet.two.is_some()]);
                // A plug without its ground pin mates with everything but the ground.
                let plugged = End {
                    ground: if appliance.grounded {
                        own.ground
                    } else {
                        self.grounded()
                    },
                    ..own
                };
                self.join(plugged, outlet, (*control, *wall), &appliance.name);
                let cords = cords.iter();
                let ends = cords.filter_map(|(cord, at)| Some((*cord_ends.get(*cord)?, *at)));
                for (end, at) in ends.chain(lent.zip(*at_lent)) {
                    let end = self.adapted(end, plugged);
                    self.join(plugged, end, (*control, at), &appliance.name);
                }
                own
            }
        };
        let between = match (own.one, own.two) {
            (Some(one), Some(two)) => (one, two),
            (Some(hot), None) | (None, Some(hot)) => (hot, own.neutral),
            (None, None) => (own.neutral, own.neutral),
        };
        if let Some(ohm) = appliance.leak_ohm {
            let worn = Complex::new(ohm, 0.0);
            let frame = format!("{}-frame", appliance.name);
            self.series(between.0, own.ground, worn, &frame);
        }
        if appliance.leak_ohm.is_some() || !appliance.grounded {
            self.frame(
                &format!("{}-frame", appliance.name),
                own.ground,
                own.neutral,
            );
        }
        (self.network.load(between.0, between.1, Load::Off), between)
    }
}

/// Impedance of one conductor of a cord in this state, the contacts of its plug included, ohms.
pub(super) fn cord_wire_ohm(cord: &Cord, state: CordState) -> Complex {
    cord.make.impedance_ohm(state.celsius) + cord.found.plug.contact_ohm()
}

/// The hots of an end, in order.
fn hots(end: End) -> Vec<NodeId> {
    end.one.into_iter().chain(end.two).collect()
}
