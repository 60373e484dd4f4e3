//! The conductors of a street and a house, as views: where each leads, what feeds it, which way power goes.
//!
//! The truth where it is shown; what was tested where it is not.
//! A tester tells live from dead and nothing of the source.
//! It does not cover neutrals and equipment grounds, which no view shows.

use crate::drill::Drill;
use crate::scenario::question::is_live;
use crate::site::Fed as FedBy;
use crate::site::{
    Bus, FarEnd, Moved, OtherSide, PointReading, PositionId, Positions, Readings, Site, Transfer,
};
use crate::units::portable;
use crate::words::{Arg, Message, Unit};

use super::view::{Fed, Flow, WireKind, WireView};
use super::{Open, Session, furnish};

/// Amps below which no flow is shown.
const LEAST_FLOW_A: f64 = 0.05;
/// The share of the busier side's amps from which on the other's count as alike.
const ALIKE: f64 = 0.95;
/// Id of the equipment that all handles of single circuits sit in.
pub(super) const HANDLES: &str = "transfer";

/// A conductor to show: its id, what its ends are at, the point that tells its state, the thing that tells its amps.
struct Wire {
    id: String,
    kind: WireKind,
    from: String,
    to: String,
    point: String,
    thing: String,
    first_end: FirstEnd,
}

/// What is at the first end of a conductor.
#[derive(Clone, Copy, PartialEq, Eq)]
enum FirstEnd {
    /// The utility: a source of the house sends its power the other way.
    Utility,
    /// A source of the house: the utility's power comes the other way.
    Own,
    /// Whatever feeds it: power always goes to the second end.
    Source,
}

/// What may be told of a point.
pub(super) struct Told {
    /// What feeds it.
    pub(super) fed: Fed,
    /// Message id of the word for it.
    pub(super) said: &'static str,
    /// Volts with their unit; empty where they are not known or not worth saying.
    pub(super) volts: String,
}

impl Session {
    /// All conductors.
    pub(super) fn wires(&self, open: &Open) -> Vec<WireView> {
        let all = wires(open.drill.site(), open.drill.positions());
        all.iter().map(|w| self.wire(open, w)).collect()
    }

    /// What may be told of a point: the truth where it is shown, what is known otherwise.
    pub(super) fn told(&self, open: &Open, point: &str) -> Told {
        let readings = open.drill.readings();
        let (reading, fed, said) = if self.numbers_are_shown(open) {
            let reading = readings.point(point);
            let fed = fed_at(&open.drill, reading, point);
            (Some(reading), fed, fed_word(fed))
        } else {
            match open.known().points.get(point) {
                Some((_, reading)) if is_live(*reading) => {
                    (Some(*reading), Fed::Unknown, "fed-live")
                }
                Some((_, reading)) => (Some(*reading), Fed::Dead, fed_word(Fed::Dead)),
                None => (None, Fed::Unknown, fed_word(Fed::Unknown)),
            }
        };
        // A number that did not converge is not shown.
        let volts = reading
            .filter(|r| readings.converged && r.volts > 0.5)
            .map(|r| r.volts.max(r.volts_across));
        let volts = volts.map(|v| self.words.quantity(v, Unit::Volts));
        Told {
            fed,
            said,
            volts: volts.unwrap_or_default(),
        }
    }

    fn wire(&self, open: &Open, wire: &Wire) -> WireView {
        let readings = open.drill.readings();
        let mut told = self.told(open, &wire.point);
        let amps = if self.numbers_are_shown(open) && readings.converged {
            readings.amps_of(&wire.thing)
        } else {
            0.0
        };
        let flows = amps >= LEAST_FLOW_A;
        if told.fed == Fed::Dead && has_fallen(&open.drill, wire) {
            told.fed = Fed::Unknown;
            told.said = "fed-fallen";
        }
        if wire.from == "solar" && flows {
            // The sun's power goes out, whatever made the grid that it follows.
            told.fed = Fed::Solar;
            told.said = fed_word(Fed::Solar);
        }
        let shown_amps = if flows {
            self.amps_of_sides(readings, &wire.thing)
        } else {
            String::new()
        };
        let label = self.name(&wire.id);
        let sentence = self.words.say(&sentence(&label, &told, &shown_amps));
        let forward = match wire.first_end {
            FirstEnd::Utility => !is_own(told.fed),
            FirstEnd::Own => is_own(told.fed),
            FirstEnd::Source => true,
        };
        let flow = match (flows, forward) {
            (false, _) => Flow::None,
            (true, true) => Flow::Forward,
            (true, false) => Flow::Backward,
        };
        WireView {
            id: wire.id.clone(),
            label,
            kind: wire.kind,
            from: wire.from.clone(),
            to: wire.to.clone(),
            fed: told.fed,
            word: self.words.say_id(told.said),
            flow,
            volts: told.volts,
            amps: shown_amps,
            sentence,
        }
    }

    /// The amps of the busier side, or of both where they differ, leg 1 first: volts between the two times one alone would not be the watts.
    fn amps_of_sides(&self, readings: &Readings, thing: &str) -> String {
        let (more_a, less_a) = (readings.amps_of(thing), readings.less_of(thing));
        if less_a > ALIKE * more_a {
            return self.words.quantity(more_a, Unit::Amps);
        }
        let [one, two] = match readings.phasors_of(thing) {
            Some(legs) => legs.map(portable::magnitude),
            None => [more_a, less_a],
        };
        let both = Message::new("street-amps-of-sides")
            .quantity("one", one, Unit::Amps)
            .quantity("two", two, Unit::Amps);
        self.words.say(&both)
    }
}

/// What feeds a conductor, as a view says it.
pub(super) fn fed_by(fed: FedBy) -> Fed {
    match fed.word() {
        "nothing" => Fed::Dead,
        "utility" => Fed::Utility,
        "generator" => Fed::Generator,
        "battery" => Fed::Battery,
        _ => Fed::Both,
    }
}

/// Message id of the word for what feeds a conductor.
pub(super) fn fed_word(fed: Fed) -> &'static str {
    match fed {
        Fed::Dead => "fed-dead",
        Fed::Utility => "fed-utility",
        Fed::Generator => "fed-generator",
        Fed::Solar => "fed-solar",
        Fed::Battery => "fed-battery",
        Fed::Both => "fed-both",
        Fed::Grounded => "fed-grounded",
        Fed::Unknown => "fed-unknown",
    }
}

/// The equipment that a transfer switch sits in: a box of its own, or the one of all handles of single circuits.
pub(super) fn equipment_of(transfer: &Transfer) -> &str {
    match transfer.load {
        Moved::Circuit(_) => HANDLES,
        Moved::MainPanel | Moved::Subpanel(_) => &transfer.name,
    }
}

fn fed_at(drill: &Drill, reading: PointReading, point: &str) -> Fed {
    let (site, positions) = (drill.site(), drill.positions());
    let sets = site.line_work.as_ref().map_or(0, |w| w.sets_on(positions));
    let grounded = sets > 0 || site.stands(positions, site.line.grounds, "on");
    if grounded && site.line.poles.iter().any(|p| p.name == point) {
        Fed::Grounded
    } else {
        fed_by(reading.fed)
    }
}

/// Whether a wire lies on the ground, for somebody who is no line worker: it counts as live, whatever feeds it.
fn has_fallen(drill: &Drill, wire: &Wire) -> bool {
    let (site, line) = (drill.site(), &drill.site().line);
    let span = line.spans.get(line.broken_span);
    site.line_work.is_none()
        && span.is_some_and(|span| span.name == wire.id)
        && site.stands(drill.positions(), line.span_state, "broken")
}

/// Whether a source of the house feeds it, and nothing else.
fn is_own(fed: Fed) -> bool {
    matches!(fed, Fed::Generator | Fed::Solar | Fed::Battery)
}

fn sentence(label: &str, told: &Told, amps: &str) -> Message {
    let id = match (told.volts.is_empty(), amps.is_empty()) {
        (true, _) => "street-wire",
        (false, true) => "street-wire-volts",
        (false, false) => "street-wire-volts-amps",
    };
    let mut message = Message::new(id)
        .with("name", Arg::Verbatim(label.to_owned()))
        .said("fed", Message::new(told.said));
    if !told.volts.is_empty() {
        message = message.with("volts", Arg::Verbatim(told.volts.clone()));
        if !amps.is_empty() {
            message = message.with("amps", Arg::Verbatim(amps.to_owned()));
        }
    }
    message
}

/// The conductors of a site that a street shows.
fn wires(site: &Site, positions: &Positions) -> Vec<Wire> {
    let mut all = street_wires(site);
    all.extend(house_wires(site, positions));
    all.extend(source_wires(site));
    for (index, circuit) in site.circuits.iter().enumerate() {
        let own = |t: &&Transfer| t.load == Moved::Circuit(index);
        let own = site.transfers.iter().find(own);
        let from = match (own, circuit.bus) {
            (Some(transfer), _) => equipment_of(transfer),
            (None, Bus::Main) => "panel",
            (None, Bus::Sub(sub)) => site.subpanels.get(sub).map_or("panel", |s| s.name.as_str()),
        };
        let outlet = format!("outlet-{}", circuit.name);
        let id = format!("branch-{}", circuit.name);
        // A circuit with a transfer switch of its own is fed past its breaker when the other source feeds it.
        let thing = own.map_or(&circuit.guard, |transfer| &transfer.name);
        let first_end = branch_end(site, positions, index);
        let wire = Wire::new(&id, WireKind::Branch, (from, &outlet));
        all.push(wire.read(&outlet, thing, first_end));
    }
    for cord in &site.cords {
        // A cord shows the state of the end that is plugged in somewhere; the far end has it either way.
        let (from, to) = furnish::cord_ends(site, positions, cord);
        let point = format!("{}-far-end", cord.name);
        let wire = Wire::new(&cord.name, WireKind::Cord, (&from, &to));
        all.push(wire.read(&point, &cord.name, FirstEnd::Own));
    }
    if let Some(lent) = &site.lent {
        let from = site.neighbors.first().map_or("", |n| n.name.as_str());
        let to = furnish::lent_user(site, positions);
        let wire = Wire::new(&lent.name, WireKind::Cord, (from, &to));
        all.push(wire.read(&lent.name, &lent.name, FirstEnd::Own));
    }
    all
}

/// The line and what hangs on it.
fn street_wires(site: &Site) -> Vec<Wire> {
    let pole = |index: usize| site.line.poles.get(index).map_or("", |p| p.name.as_str());
    let spans = site.line.spans.iter().map(|span| {
        // A span's state is that of its far pole: a broken one is told by its own mark.
        let ends = (pole(span.from), pole(span.to));
        let wire = Wire::new(&span.name, WireKind::Span, ends);
        wire.read(pole(span.to), &span.name, FirstEnd::Utility)
    });
    let drops = site.neighbors.iter().map(|neighbor| {
        let id = format!("drop-{}", neighbor.name);
        let ends = ("transformer", neighbor.name.as_str());
        let wire = Wire::new(&id, WireKind::NeighborDrop, ends);
        wire.read(&neighbor.name, &id, FirstEnd::Source)
    });
    spans.chain(drops).collect()
}

/// From the drop to the buses.
fn house_wires(site: &Site, positions: &Positions) -> Vec<Wire> {
    let whole = site.transfers.iter().find(|t| t.load == Moved::MainPanel);
    let entry = whole.map_or("panel", |t| t.name.as_str());
    let drop = Wire::new("drop", WireKind::Drop, ("transformer", entry));
    let mut all = vec![drop.read("service", "drop", FirstEnd::Utility)];
    if let Some(transfer) = whole {
        let wire = Wire::new("feeder-panel", WireKind::Feeder, (&transfer.name, "panel"));
        all.push(wire.read("bus", &transfer.name, FirstEnd::Source));
    }
    let bus = Wire::new("bus", WireKind::Bus, ("panel", "panel"));
    all.push(bus.read("bus", feeds_bus(site, positions), FirstEnd::Utility));
    for (index, sub) in site.subpanels.iter().enumerate() {
        if let Some(pair) = sub.pair {
            // The chosen bus sits in the panel's own box, below the other.
            let id = format!("bus-{}", sub.name);
            let utility = site.stands(positions, pair.utility, "on");
            let side = if utility { "utility" } else { "generator" };
            let thing = format!("{}-{side}", sub.name);
            let bus = Wire::new(&id, WireKind::Bus, ("panel", &sub.name));
            all.push(bus.read(&id, &thing, FirstEnd::Utility));
            continue;
        }
        let moves = |t: &&Transfer| t.load == Moved::Subpanel(index);
        let Some(transfer) = site.transfers.iter().find(moves) else {
            continue;
        };
        let breaker = format!("breaker-{}", sub.name);
        // Behind an open breaker the feeder has no point of its own to read: it is as dead as nothing.
        let on = transfer
            .feeder
            .is_some_and(|f| site.stands(positions, f, "on"));
        let id = format!("feeder-{}", sub.name);
        let wire = Wire::new(&id, WireKind::Feeder, ("panel", &transfer.name));
        let point = if on { "bus" } else { "" };
        all.push(wire.read(point, &breaker, FirstEnd::Source));
        let bus = format!("bus-{}", sub.name);
        let wire = Wire::new(&bus, WireKind::Bus, (&transfer.name, &sub.name));
        all.push(wire.read(&bus, &transfer.name, FirstEnd::Source));
    }
    all
}

/// What the power of the main panel's bus comes through: with the main breaker off, the breaker that an inlet feeds, or a circuit that a cord feeds.
fn feeds_bus<'a>(site: &'a Site, positions: &Positions) -> &'a str {
    let fed = |index: &usize| branch_end(site, positions, *index) == FirstEnd::Utility;
    let circuit = (0..site.circuits.len()).find(fed);
    let circuit = circuit.and_then(|index| site.circuits.get(index));
    if site.stands(positions, site.panel.main, "on") {
        "main"
    } else if site.panel.backfeed.is_some() {
        "generator-breaker"
    } else {
        circuit.map_or("main", |circuit| &circuit.guard)
    }
}

/// From inlets, a generator wired for good, solar and battery to what they feed.
fn source_wires(site: &Site) -> Vec<Wire> {
    let fed_from = |other: OtherSide| site.transfers.iter().find(|t| t.other == other);
    let mut all = Vec::new();
    for (index, inlet) in site.inlets.iter().enumerate() {
        let to = match fed_from(OtherSide::Inlet(index)) {
            Some(transfer) => equipment_of(transfer),
            None => paired(site, index).unwrap_or("panel"),
        };
        let wire = Wire::new(&inlet.name, WireKind::Inlet, (&inlet.name, to));
        all.push(wire.read(&inlet.name, &inlet.name, FirstEnd::Own));
    }
    for (id, other, from, point, thing) in [
        (
            "feeder-generator",
            OtherSide::Generator,
            "generator",
            "generator-outlet",
            "generator-output",
        ),
        (
            "feeder-battery",
            OtherSide::Battery,
            "battery",
            "battery-outlet",
            "battery",
        ),
    ] {
        if let Some(transfer) = fed_from(other) {
            let ends = (from, equipment_of(transfer));
            let wire = Wire::new(id, WireKind::Feeder, ends);
            all.push(wire.read(point, thing, FirstEnd::Own));
        }
    }
    if let Some(solar) = &site.solar {
        let to = match solar.bus {
            Bus::Main => "panel",
            Bus::Sub(sub) => site.subpanels.get(sub).map_or("panel", |s| s.name.as_str()),
        };
        let wire = Wire::new("feeder-solar", WireKind::Feeder, ("solar", to));
        all.push(wire.read("solar-terminals", "solar-breaker", FirstEnd::Own));
    }
    all
}

/// The chosen bus that an inlet feeds through a pair of breakers.
fn paired(site: &Site, inlet: usize) -> Option<&str> {
    let mut chosen = site.subpanels.iter();
    let found = chosen.find(|s| s.pair.is_some_and(|p| p.inlet == inlet))?;
    Some(&found.name)
}

impl Wire {
    fn new(id: &str, kind: WireKind, (from, to): (&str, &str)) -> Self {
        Self {
            id: id.to_owned(),
            kind,
            from: from.to_owned(),
            to: to.to_owned(),
            point: String::new(),
            thing: String::new(),
            first_end: FirstEnd::Source,
        }
    }

    /// The same, told by a point's volts and a thing's amps.
    fn read(self, point: &str, thing: &str, first_end: FirstEnd) -> Self {
        Self {
            point: point.to_owned(),
            thing: thing.to_owned(),
            first_end,
            ..self
        }
    }
}

/// A branch leads from the panel to its outlet, unless a cord with bare blades is plugged in there.
fn branch_end(site: &Site, positions: &Positions, circuit: usize) -> FirstEnd {
    let backfed = site.cords.iter().any(|cord| match cord.far {
        FarEnd::Blades(end, at) => at == circuit && positions.get(end) != PositionId(0),
        FarEnd::Inlet(_) | FarEnd::Connector | FarEnd::Strip(_) => false,
    });
    if backfed {
        FirstEnd::Utility
    } else {
        FirstEnd::Source
    }
}
