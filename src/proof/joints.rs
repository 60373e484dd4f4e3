//! A second view of what hangs on what: places joined by conditions on controls, read from the parts of a site alone.
//!
//! It is written apart from the wiring and the solver, so that the marking has something else to be held against.
//! A place stands for all hots there; legs, neutrals and volts are left out.
//! So where a source reaches a place on one leg only, it counts as reaching it.

use std::collections::BTreeMap;

use crate::site::{
    At, Bus, ControlId, FarEnd, Moved, OtherSide, PositionId, Positions, Site, Spot, Transfer,
};

/// A place that electricity can reach.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub(super) enum Place {
    /// The generator's winding.
    Winding,
    /// Behind the breaker on its face.
    SetOutlet,
    /// An outlet on its face.
    Receptacle(usize),
    /// The battery's inverter.
    Battery,
    /// Behind its switch.
    BatteryOutlet,
    /// A cord's end toward the generator.
    Near(usize),
    /// A cord's other end.
    Far(usize),
    /// The end of the cord that a neighbor lends.
    Lent,
    /// The pins of an inlet.
    Inlet(usize),
    /// Ahead of the main breaker.
    Feed,
    /// The main panel's bus.
    Bus,
    /// A subpanel's feeder at its transfer switch.
    Feeder(usize),
    /// A subpanel's bus.
    Sub(usize),
    /// Behind a circuit's breaker.
    Branch(usize),
    /// The wire of a circuit behind its own transfer handle.
    Moved(usize),
    /// A circuit's outlet.
    Outlet(usize),
    /// The wires from the street.
    Service,
    /// A pole of the line.
    Pole(usize),
    /// The far side of the switch at the head of the line.
    Substation,
    /// The far side of a tie.
    SecondFeed,
}

impl Place {
    /// The place of a bus.
    pub(super) fn of(bus: Bus) -> Self {
        match bus {
            Bus::Main => Self::Bus,
            Bus::Sub(sub) => Self::Sub(sub),
        }
    }
}

/// Two places and what has to stand so that they are joined.
#[derive(Debug, Clone)]
struct Joint {
    a: usize,
    b: usize,
    closed: Vec<(ControlId, PositionId)>,
    /// The circuit it belongs to, if it is part of a branch.
    branch: Option<usize>,
}

/// All joints of a site.
#[derive(Debug, Clone)]
pub(super) struct Joints {
    places: BTreeMap<Place, usize>,
    joints: Vec<Joint>,
}

const FIRST: PositionId = PositionId(0);
const SECOND: PositionId = PositionId(1);
const THIRD: PositionId = PositionId(2);

impl Joints {
    /// Reads the joints off a site.
    pub(super) fn of(site: &Site) -> Self {
        let mut joints = Self {
            places: BTreeMap::new(),
            joints: Vec::new(),
        };
        joints.street(site);
        joints.sources(site);
        joints.panels(site);
        joints.circuits(site);
        joints.cords(site);
        joints
    }

    fn index(&mut self, place: Place) -> usize {
        let next = self.places.len();
        *self.places.entry(place).or_insert(next)
    }

    fn join(
        &mut self,
        a: Place,
        b: Place,
        closed: &[(ControlId, PositionId)],
        branch: Option<usize>,
    ) {
        let joint = Joint {
            a: self.index(a),
            b: self.index(b),
            closed: closed.to_vec(),
            branch,
        };
        self.joints.push(joint);
    }

    fn street(&mut self, site: &Site) {
        let line = &site.line;
        let head = [(line.feeder, SECOND)];
        self.join(Place::Substation, Place::Pole(0), &head, None);
        for (index, span) in line.spans.iter().enumerate() {
            let whole = [(line.span_state, FIRST)];
            let ends = (Place::Pole(span.from), Place::Pole(span.to));
            let own = site.line_work.iter().flat_map(|w| &w.breaks);
            let own = own.filter(|b| b.at == At::Span(index));
            let ways: Vec<_> = own
                .flat_map(|b| [(b.handle, FIRST), (b.jumper, SECOND)])
                .collect();
            if index == line.broken_span {
                self.join(ends.0, ends.1, &whole, None);
            } else if ways.is_empty() {
                self.join(ends.0, ends.1, &[], None);
            }
            for closed in ways {
                self.join(ends.0, ends.1, &[closed], None);
            }
        }
        let pole = Place::Pole(line.transformer_pole);
        let cutout = site.line_work.iter().map(|w| (w.home_cutout, FIRST));
        let closed: Vec<_> = cutout.collect();
        self.join(pole, Place::Service, &closed, None);
        self.line_work(site);
    }

    /// What a crew works besides: welded contacts at the head, a tie to a second feed.
    fn line_work(&mut self, site: &Site) {
        let Some(work) = &site.line_work else {
            return;
        };
        let welded = [(work.head_contacts, SECOND)];
        self.join(Place::Substation, Place::Pole(0), &welded, None);
        for own in &work.breaks {
            let At::Tie(pole) = own.at else {
                continue;
            };
            for closed in [(own.handle, FIRST), (own.jumper, SECOND)] {
                self.join(Place::SecondFeed, Place::Pole(pole), &[closed], None);
            }
        }
    }

    fn sources(&mut self, site: &Site) {
        let output = [(site.generator.output, SECOND)];
        self.join(Place::Winding, Place::SetOutlet, &output, None);
        for (index, receptacle) in site.generator.receptacles.iter().enumerate() {
            let own = [receptacle.breaker, receptacle.gfci];
            let closed: Vec<_> = own.into_iter().flatten().map(|c| (c, SECOND)).collect();
            self.join(Place::SetOutlet, Place::Receptacle(index), &closed, None);
        }
        if let Some(battery) = &site.battery {
            let on = [(battery.switch, SECOND)];
            self.join(Place::Battery, Place::BatteryOutlet, &on, None);
        }
    }

    fn panels(&mut self, site: &Site) {
        if !site.transfers.iter().any(|t| t.load == Moved::MainPanel) {
            self.join(Place::Service, Place::Feed, &[], None);
        }
        self.join(Place::Feed, Place::Bus, &[(site.panel.main, SECOND)], None);
        if let Some(backfeed) = site.panel.backfeed {
            let on = [(backfeed.breaker, SECOND)];
            self.join(Place::Inlet(backfeed.inlet), Place::Bus, &on, None);
        }
        for transfer in &site.transfers {
            self.transfer(transfer);
        }
        for (index, sub) in site.subpanels.iter().enumerate() {
            if let Some(pair) = sub.pair {
                let bus = Place::Sub(index);
                self.join(Place::Bus, bus, &[(pair.utility, SECOND)], None);
                let inlet = Place::Inlet(pair.inlet);
                self.join(inlet, bus, &[(pair.generator, SECOND)], None);
            }
        }
    }

    fn transfer(&mut self, transfer: &Transfer) {
        let (utility, load, branch) = match transfer.load {
            Moved::MainPanel => (Place::Service, Place::Feed, None),
            Moved::Subpanel(sub) => (Place::Feeder(sub), Place::Sub(sub), None),
            Moved::Circuit(c) => (Place::Branch(c), Place::Moved(c), Some(c)),
        };
        if let (Moved::Subpanel(sub), Some(feeder)) = (transfer.load, transfer.feeder) {
            self.join(Place::Bus, Place::Feeder(sub), &[(feeder, SECOND)], None);
        }
        self.join(utility, load, &[(transfer.handle, FIRST)], branch);
        let other = match transfer.other {
            OtherSide::Inlet(index) => Place::Inlet(index),
            OtherSide::Generator => Place::SetOutlet,
            OtherSide::Battery => Place::BatteryOutlet,
        };
        let mut closed = vec![(transfer.handle, THIRD)];
        closed.extend(transfer.breaker.map(|b| (b, SECOND)));
        self.join(other, load, &closed, branch);
    }

    fn circuits(&mut self, site: &Site) {
        for (index, circuit) in site.circuits.iter().enumerate() {
            let bus = Place::of(circuit.bus);
            let own = Some(index);
            self.join(bus, Place::Branch(index), &[(circuit.breaker, SECOND)], own);
            let moved = |t: &Transfer| t.load == Moved::Circuit(index);
            let start = if site.transfers.iter().any(moved) {
                Place::Moved(index)
            } else {
                Place::Branch(index)
            };
            let closed: Vec<_> = circuit.gfci.iter().map(|g| (*g, SECOND)).collect();
            self.join(start, Place::Outlet(index), &closed, own);
        }
    }

    fn cords(&mut self, site: &Site) {
        for (index, cord) in site.cords.iter().enumerate() {
            self.join(Place::Near(index), Place::Far(index), &[], None);
            for (spot, position) in cord.near_spots.iter().zip((0..).map(PositionId)) {
                let into = match *spot {
                    Spot::Stowed => continue,
                    Spot::Receptacle(i) => Place::Receptacle(i),
                    Spot::CordEnd(i) => Place::Far(i),
                    Spot::Outlet(i) => Place::Outlet(i),
                    Spot::Inlet(i) => Place::Inlet(i),
                    Spot::Lent => Place::Lent,
                };
                self.join(Place::Near(index), into, &[(cord.near, position)], None);
            }
            match cord.far {
                FarEnd::Inlet(end) => {
                    for (inlet, position) in (0..site.inlets.len()).zip((1..).map(PositionId)) {
                        self.join(
                            Place::Far(index),
                            Place::Inlet(inlet),
                            &[(end, position)],
                            None,
                        );
                    }
                }
                FarEnd::Blades(end, circuit) => {
                    let outlet = Place::Outlet(circuit);
                    self.join(Place::Far(index), outlet, &[(end, SECOND)], None);
                }
                FarEnd::Strip(end) => {
                    self.join(Place::Far(index), Place::Lent, &[(end, SECOND)], None);
                }
                FarEnd::Connector => {}
            }
        }
    }

    /// What `from` reaches over what is joined in these positions.
    pub(super) fn reach(&self, positions: &Positions, from: Place) -> Reached {
        let mut reached = vec![false; self.places.len()];
        let mut queue: Vec<usize> = self.places.get(&from).copied().into_iter().collect();
        if let Some(slot) = queue.first().and_then(|i| reached.get_mut(*i)) {
            *slot = true;
        }
        while let Some(here) = queue.pop() {
            for joint in &self.joints {
                let next = if joint.a == here {
                    joint.b
                } else if joint.b == here {
                    joint.a
                } else {
                    continue;
                };
                let closed = joint.closed.iter().all(|(c, p)| positions.get(*c) == *p);
                if let Some(slot) = reached.get_mut(next).filter(|slot| closed && !**slot) {
                    *slot = true;
                    queue.push(next);
                }
            }
        }
        Reached(reached)
    }

    /// Whether a place was reached.
    pub(super) fn has(&self, reached: &Reached, place: Place) -> bool {
        let index = self.places.get(&place);
        index
            .and_then(|i| reached.0.get(*i))
            .copied()
            .unwrap_or_default()
    }

    /// The controls that joints hang on: those of the trunk, and those of one branch.
    pub(super) fn controls(&self, branch: Option<usize>) -> Vec<ControlId> {
        let own = self.joints.iter().filter(|j| j.branch == branch);
        let mut controls: Vec<ControlId> = own.flat_map(|j| &j.closed).map(|(c, _)| *c).collect();
        controls.sort_unstable();
        controls.dedup();
        controls
    }

    /// The branches that touch the trunk at more than their panel: moved by a handle of their own, or with an outlet that takes a cord.
    pub(super) fn attached(site: &Site) -> Vec<usize> {
        let moved = |c: usize| is_moved(site, c);
        let corded = |c: usize| {
            site.cords.iter().any(|cord| {
                matches!(cord.far, FarEnd::Blades(_, at) if at == c)
                    || cord.near_spots.contains(&Spot::Outlet(c))
            })
        };
        (0..site.circuits.len())
            .filter(|c| moved(*c) || corded(*c))
            .collect()
    }
}

/// Whether a circuit has a transfer handle of its own.
pub(super) fn is_moved(site: &Site, circuit: usize) -> bool {
    site.transfers
        .iter()
        .any(|t| t.load == Moved::Circuit(circuit))
}

/// Places reached.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Reached(Vec<bool>);
