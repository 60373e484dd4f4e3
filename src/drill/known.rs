//! What this learner has seen, tested or been told: kept apart from what is true.
//!
//! Derived from the trace alone.
//! A test or a look says how things were at that moment; once the learner has changed something or the street changes before their eyes, it has to be done again.

use std::collections::BTreeMap;

use crate::site::PointReading;
use crate::units::DrillTime;

use super::action::{Action, Callee, Listener, Sight};
use super::event::Event;
use super::trace::{Moment, Trace, What};

/// One thing learnt.
#[derive(Debug, Clone, PartialEq)]
pub enum Learnt {
    /// A look at a place, and whether the street was seen lit by the utility then.
    Saw {
        /// Where.
        sight: Sight,
        /// Neighbors' lamps were on.
        neighbors_lit: bool,
    },
    /// A tester's answer at a point.
    Tested {
        /// Where.
        point: String,
        /// Volts between its hots, to neutral.
        reading: PointReading,
    },
    /// What a line tester shows at a point.
    Detected {
        /// Where.
        point: String,
        /// Index of the tester.
        tester: usize,
        /// Whether it lights.
        lit: bool,
    },
    /// What somebody on the phone said.
    Told {
        /// Who.
        by: Callee,
        /// Whether the utility says its people are at work on the line.
        crew_at_work: bool,
        /// Whether the utility says the line is in service.
        in_service: bool,
        /// Whether a wire of the house's own drop is loose: whoever answers asks what the lamps do.
        drop_loose: bool,
    },
    /// Somebody now knows what is going on.
    Spread {
        /// Who.
        to: Listener,
    },
}

/// What is known at the end of a trace.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Known {
    /// Points tested, with the answer and the time.
    pub points: BTreeMap<String, (DrillTime, PointReading)>,
    /// Sights seen, with the time.
    pub seen: BTreeMap<Sight, DrillTime>,
    /// What was answered last to each question, with the time.
    pub said: BTreeMap<String, (DrillTime, String)>,
    /// Whether the utility is known to be back, by lamps in the street or by its word.
    pub utility_back: Option<DrillTime>,
}

impl Known {
    /// What a learner knows after a trace.
    pub fn from_trace(trace: &Trace) -> Self {
        Self::from_moments(&trace.moments)
    }

    /// What a learner knows after these moments, from the first of a run on.
    pub fn from_moments(moments: &[Moment]) -> Self {
        let mut known = Self::default();
        let mut returned = false;
        for moment in moments {
            returned |= matches!(moment.what, What::Happened(Event::UtilityReturned));
            if matches!(moment.what, What::Happened(Event::UtilityFailed)) {
                (returned, known.utility_back) = (false, None);
            }
            match &moment.what {
                What::Did(Action::Set(..)) => known.points.clear(),
                What::Did(Action::Say(question, answer)) => {
                    let said = (moment.at, answer.clone());
                    known.said.insert(question.clone(), said);
                }
                What::Learnt(learnt) => known.learn(moment.at, learnt, returned),
                What::Began
                | What::Did(_)
                | What::Refused(..)
                | What::Happened(_)
                | What::Sampled => {}
            }
        }
        known
    }

    fn learn(&mut self, at: DrillTime, learnt: &Learnt, after_return: bool) {
        match learnt {
            Learnt::Saw {
                sight,
                neighbors_lit,
            } => {
                self.seen.insert(*sight, at);
                if *sight == Sight::Street && *neighbors_lit && after_return {
                    self.utility_back.get_or_insert(at);
                }
            }
            Learnt::Tested { point, reading } => {
                self.points.insert(point.clone(), (at, *reading));
            }
            Learnt::Told { in_service, .. } => {
                if *in_service && after_return {
                    self.utility_back.get_or_insert(at);
                }
            }
            Learnt::Spread { .. } | Learnt::Detected { .. } => {}
        }
    }
}
