//! The utility's side as a crew works it: switches, visible breaks, tags, cutouts, testers, protective grounds.
//!
//! Plain data, checked while a file is read.
//! A remote switch is worked by the system operator and shows what it was told to do; whether its contacts followed is another matter.
//! A break is seen when its blades hang open; it counts when a tag hangs there too, because then nobody closes it.
//! It covers one crew on one conductor; it doesn't cover three phases, reclosing (blocked for line work), or cover-up.
//! Sources: 29 CFR 1910.269(m) and (n), 29 CFR 1926.961 and 1926.962 (checked in digests).

use crate::hazard::tester::Tester;

use super::control::{ControlId, PositionId, Positions};
use super::parts::{Neighbor, Site};
use crate::apparatus::transformer::CenterTapped;

/// Where the tester is tried: a source that the crew carries and knows to be live.
pub const PROVING_SOURCE: &str = "proving-source";

/// How a place of protective grounds stands, in the order of its control's positions.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Clamps {
    /// Nothing hangs there.
    Off,
    /// The earth end is on, the line end is not.
    EarthEnd,
    /// Both ends are on.
    BothEnds,
    /// The line end is on, the earth end is not: its clamp is what the line is.
    LineEnd,
}

/// All of them, in the order of the control's positions.
pub const CLAMPS: [Clamps; 4] = [
    Clamps::Off,
    Clamps::EarthEnd,
    Clamps::BothEnds,
    Clamps::LineEnd,
];

impl Clamps {
    /// Its name as a position.
    pub fn name(self) -> &'static str {
        match self {
            Self::Off => "off",
            Self::EarthEnd => "earth-end",
            Self::BothEnds => "both-ends",
            Self::LineEnd => "line-end",
        }
    }
}

/// What a crew has to work with.
#[derive(Debug, Clone, PartialEq)]
pub struct LineWork {
    /// The operator's switch at the head: its contacts may be welded (sound, welded).
    pub head_contacts: ControlId,
    /// Amps at which the switches at head and tie open by themselves.
    pub trips_a: f64,
    /// The breaks between the line and the utility's sources.
    pub breaks: Vec<Break>,
    /// The cutout over the transformer of the house: closed, open.
    pub home_cutout: ControlId,
    /// Further transformers with customers.
    pub taps: Vec<Tap>,
    /// Places where grounds can hang.
    pub grounds: Vec<Grounds>,
    /// One ground lead with its clamps, ohms.
    pub lead_ohm: f64,
    /// Which tester is in hand.
    pub tester: ControlId,
    /// The testers, in the order of that control's positions.
    pub testers: Vec<HandTester>,
    /// A second crew on the same line: away, working, clear.
    pub second_crew: Option<ControlId>,
}

/// Where a break sits.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum At {
    /// At the near end of a span, by index.
    Span(usize),
    /// Between a pole, by index, and a second feed.
    Tie(usize),
}

/// A break that can be seen, with what may hide that it isn't one.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Break {
    /// Name of its handle.
    pub name: String,
    /// Where it sits.
    pub at: At,
    /// Its handle and blades: closed, open.
    pub handle: ControlId,
    /// The tag that hangs there: off, on.
    pub tag: ControlId,
    /// A jumper around it: absent, present.
    pub jumper: ControlId,
}

impl Break {
    /// Whether it is open for everybody to see, with a tag on it.
    pub fn holds(&self, positions: &Positions) -> bool {
        !self.conducts(positions) && positions.get(self.tag) == PositionId(1)
    }

    /// Whether it stands open while a jumper carries the current around it.
    pub fn is_jumped(&self, positions: &Positions) -> bool {
        positions.get(self.handle) != PositionId(0) && self.conducts(positions)
    }

    /// Whether current can pass.
    pub fn conducts(&self, positions: &Positions) -> bool {
        positions.get(self.handle) == PositionId(0) || positions.get(self.jumper) == PositionId(1)
    }
}

/// A transformer with customers who have nothing to do with the house.
#[derive(Debug, Clone, PartialEq)]
pub struct Tap {
    /// Index of its pole.
    pub pole: usize,
    /// The transformer.
    pub transformer: CenterTapped,
    /// Its cutout: closed, open.
    pub cutout: ControlId,
    /// Its customers.
    pub customers: Vec<Neighbor>,
}

/// A place where a set of protective grounds can hang.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Grounds {
    /// Index of the pole.
    pub pole: usize,
    /// How the set hangs, in the order of [`CLAMPS`].
    pub control: ControlId,
}

impl Grounds {
    /// How they hang.
    pub fn clamps(&self, positions: &Positions) -> Clamps {
        let at = usize::from(positions.get(self.control).0);
        CLAMPS.get(at).copied().unwrap_or(Clamps::Off)
    }
}

/// A tester in the truck.
#[derive(Debug, Clone, PartialEq)]
pub struct HandTester {
    /// Name.
    pub name: String,
    /// What it shows when its battery is good.
    pub make: Tester,
    /// Its battery: good, spent.
    pub battery: ControlId,
}

impl LineWork {
    /// The tester in hand, as it is.
    pub fn in_hand(&self, positions: &Positions) -> Option<(usize, Tester)> {
        let index = usize::from(positions.get(self.tester).0);
        let tester = self.testers.get(index)?;
        let powered = positions.get(tester.battery) == PositionId(0);
        Some((
            index,
            Tester {
                powered,
                ..tester.make
            },
        ))
    }

    /// How the grounds at a pole hang.
    pub fn clamps_at(&self, pole: usize, positions: &Positions) -> Clamps {
        let there = self.grounds.iter().find(|g| g.pole == pole);
        there.map_or(Clamps::Off, |g| g.clamps(positions))
    }

    /// How many sets hang by their line end.
    pub fn sets_on(&self, positions: &Positions) -> usize {
        let on = |g: &&Grounds| matches!(g.clamps(positions), Clamps::BothEnds | Clamps::LineEnd);
        self.grounds.iter().filter(on).count()
    }
}

impl Site {
    /// Whether the worker stands at the same potential as the grounded conductor: both ends on at the pole of the work.
    pub fn in_zone(&self, positions: &Positions) -> bool {
        let work = self.line_work.as_ref();
        work.is_some_and(|w| w.clamps_at(self.line.crew_pole, positions) == Clamps::BothEnds)
    }

    /// Whether a worker's hand is on the conductor, or on a clamp that hangs on it by its line end alone.
    pub fn hands_on_line(&self, positions: &Positions) -> bool {
        let clamp = self
            .line_work
            .as_ref()
            .is_some_and(|w| w.clamps_at(self.line.crew_pole, positions) == Clamps::LineEnd);
        clamp || self.stands(positions, self.line.crew, "hands-on")
    }

    /// Whether a way for the utility's power to the work is left that no tagged and visible break bars.
    pub fn way_left(&self, positions: &Positions) -> bool {
        let Some(work) = &self.line_work else {
            return false;
        };
        // A wire that is down bars nothing: it is there to be mended.
        let reached = self.reached_by_spans(|index| {
            let mut breaks = work.breaks.iter();
            !breaks.any(|b| b.at == At::Span(index) && b.holds(positions))
        });
        let tie = |b: &Break| match b.at {
            At::Tie(pole) => reached.contains(&pole) && !b.holds(positions),
            At::Span(_) => false,
        };
        reached.contains(&0) || work.breaks.iter().any(tie)
    }

    /// The pole at the far end of the span that breaks: the one that the crew's pole reaches by no other span.
    /// `None` where other spans lead around the gap.
    pub fn far_pole(&self) -> Option<usize> {
        let broken = self.line.broken_span;
        let own = self.reached_by_spans(|index| index != broken);
        let span = self.line.spans.get(broken)?;
        let mut ends = [span.from, span.to].into_iter();
        ends.find(|pole| !own.contains(pole))
    }

    /// The poles that are reached from the crew's by spans, by index, that count as whole.
    fn reached_by_spans(&self, whole: impl Fn(usize) -> bool) -> Vec<usize> {
        let mut reached = vec![self.line.crew_pole];
        let mut next = 0;
        while let Some(here) = reached.get(next).copied() {
            next += 1;
            for (index, span) in self.line.spans.iter().enumerate() {
                let other = if span.from == here {
                    span.to
                } else if span.to == here {
                    span.from
                } else {
                    continue;
                };
                if whole(index) && !reached.contains(&other) {
                    reached.push(other);
                }
            }
        }
        reached
    }
}
