//! What a line crew's drill has besides a house's: testers that show more or less, switches that open on a fault, customers who start a set and go back when asked.
//!
//! A tester shows what its model makes of the solver's volts; nobody reads volts that a lamp doesn't give.
//! The switches at head and tie open at once above their setting and stay open: reclosing is blocked for line work (common practice). Welded contacts stay closed, and it is told that they do.
//! Customers need a few minutes to go back once they are asked; they start no set after that, nor while the utility serves them.
//! Not covered: what protects the line upstream of its head, the arc at a clamp that is taken off under current, volts induced by other lines, reclosing, customers who forget what they were told.

use std::sync::Arc;

use crate::hazard::tester::{Held, Shown, shows};
use crate::site::{At, ControlId, LineWork, PROVING_SOURCE, PositionId, Site};
use crate::units::DrillTime;

use super::engine::Drill;
use super::event::Event;
use super::known::Learnt;
use super::trace::What;

/// How long customers take to go back to the utility once they are asked: an assumption.
const CUSTOMERS_TAKE: DrillTime = DrillTime::from_secs(180);

/// How far above a tester's least volts the proving source goes: an assumption.
const PROVES_TIMES: f64 = 1.5;

/// What happens on a line that a crew works.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum LineEvent {
    /// A switch at head or tie opens on a fault.
    OpenedOnFault {
        /// Which.
        control: ControlId,
        /// Amps that it saw.
        amps: f64,
    },
    /// The switch at the head says open and its welded contacts carry a fault that they cannot open on.
    CannotOpen {
        /// Which.
        control: ControlId,
        /// Amps that it carries.
        amps: f64,
    },
    /// A customer has started a set.
    CustomerStarted,
    /// All customers who were asked are off their own sources.
    CustomersBack,
    /// The tie closes by its remote control.
    TieClosed,
    /// The tie's remote control wants to close it, and the tag holds it.
    TieHeld,
    /// The second crew is clear, with its grounds and tags gone.
    SecondCrewClear,
}

/// What the crew's drill has to remember.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct LineCondition {
    /// When the customers who were asked will be off their own sources.
    pub customers_due: Option<DrillTime>,
    /// Whether they were asked: then none of them starts a set any more.
    pub customers_asked: bool,
    /// Whether welded contacts carry a fault, and it has been seen that they don't open.
    pub cannot_open: bool,
}

impl Drill {
    /// Holds the tester in hand to a point; says what it shows.
    pub(super) fn test_line(&mut self, point: &str) -> bool {
        let site = Arc::clone(&self.scenario().site);
        let Some(work) = &site.line_work else {
            return false;
        };
        let Some((tester, make)) = work.in_hand(&self.positions) else {
            return false;
        };
        let reading = self.readings().point(point);
        let held = if point == PROVING_SOURCE {
            // It gives each tester what that is made for: so it shows that a tester works, and not that it is the right one.
            let volts = site.line.volts.max(PROVES_TIMES * make.least_v);
            Held {
                across_v: volts,
                to_earth_v: Some(volts),
                shielded: false,
            }
        } else {
            Held {
                across_v: reading.volts,
                to_earth_v: reading.volts_to_earth,
                shielded: false,
            }
        };
        self.record(What::Learnt(Learnt::Detected {
            point: point.to_owned(),
            tester,
            lit: shows(&make, held) == Some(Shown::Light),
        }));
        true
    }

    /// Opens a switch at head or tie that sees a fault; says whether one did.
    pub(super) fn open_on_fault(&mut self, site: &Site) -> bool {
        let Some(work) = &site.line_work else {
            return false;
        };
        let ties = work.breaks.iter().filter(|b| matches!(b.at, At::Tie(_)));
        let ties = ties.map(|b| (b.handle, PositionId(0), PositionId(1)));
        let head = (site.line.feeder, PositionId(1), PositionId(0));
        for (control, closed, open) in ties.chain([head]) {
            let name = site.control(control).map_or("", |c| c.name.as_str());
            let amps = self.readings().amps_of(name);
            if self.positions.get(control) == closed && amps >= work.trips_a {
                self.positions.set(control, open);
                self.happen(Event::Line(LineEvent::OpenedOnFault { control, amps }));
                return true;
            }
        }
        self.welded_on_fault(site, work)
    }

    /// Welded contacts that carry a fault can't open on it; says whether that is seen just now.
    fn welded_on_fault(&mut self, site: &Site, work: &LineWork) -> bool {
        let control = site.line.feeder;
        let welded = self.positions.get(work.head_contacts) != PositionId(0);
        let name = site.control(control).map_or("", |c| c.name.as_str());
        let amps = self.readings().amps_of(name);
        let cannot = welded && amps >= work.trips_a;
        let seen = std::mem::replace(&mut self.conditions.line.cannot_open, cannot);
        if cannot && !seen {
            self.happen(Event::Line(LineEvent::CannotOpen { control, amps }));
        }
        cannot && !seen
    }

    /// Customers who were asked go back: set stopped and off, main on; says whether anything changed.
    pub(super) fn fire_customers(&mut self) -> bool {
        let due = self.conditions.line.customers_due;
        if due.is_none_or(|at| at > self.committed_at()) {
            return false;
        }
        self.conditions.line.customers_due = None;
        let site = Arc::clone(&self.scenario().site);
        self.positions.set(site.generator.output, PositionId(0));
        if let Some(backfeed) = site.panel.backfeed {
            self.positions.set(backfeed.breaker, PositionId(0));
        }
        self.positions.set(site.panel.main, PositionId(1));
        if self.conditions.engine.running_since.is_some() {
            self.stop_engine();
        }
        self.happen(Event::Line(LineEvent::CustomersBack));
        true
    }

    /// Asks the customers on the line to go back to the utility.
    pub(super) fn ask_customers(&mut self) {
        if self.site().line_work.is_some() {
            let due = self.committed_at() + CUSTOMERS_TAKE;
            self.conditions.line.customers_due = Some(due);
            self.conditions.line.customers_asked = true;
        }
    }

    /// Whether a customer would start a set now: not while the utility serves the house, and not with a set that won't run.
    pub(super) fn customer_starts(&self) -> bool {
        let asked = self.conditions.line.customers_asked;
        !asked && !self.readings().point("bus").fed.utility && self.engine_is_sound()
    }

    /// What the tie's remote control makes of it: it closes, unless a tag holds it.
    pub(super) fn tie_event(&self) -> LineEvent {
        let work = self.site().line_work.as_ref();
        let mut breaks = work.iter().flat_map(|w| &w.breaks);
        let held = breaks
            .any(|b| matches!(b.at, At::Tie(_)) && self.positions.get(b.tag) == PositionId(1));
        if held {
            LineEvent::TieHeld
        } else {
            LineEvent::TieClosed
        }
    }
}
