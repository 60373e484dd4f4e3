//! The run played out: every change, with how things stood and what the solver said.

use std::sync::Arc;

use crate::site::{Positions, Readings};
use crate::units::DrillTime;

use super::action::Action;
use super::conditions::Conditions;
use super::event::Event;
use super::known::Learnt;

/// What a moment records.
#[derive(Debug, Clone, PartialEq)]
pub enum What {
    /// The drill begins.
    Began,
    /// The learner did it.
    Did(Action),
    /// The learner tried it and the world refused; the message id says why.
    Refused(Action, String),
    /// The learner saw, tested or was told it.
    Learnt(Learnt),
    /// It happened.
    Happened(Event),
    /// Nothing to tell of: taken every ten seconds for curves, and when readings have come to rest.
    Sampled,
}

/// One moment of a run.
#[derive(Debug, Clone, PartialEq)]
pub struct Moment {
    /// When.
    pub at: DrillTime,
    /// What.
    pub what: What,
    /// How everything stands after it.
    pub positions: Positions,
    /// What the solver says after it.
    pub readings: Arc<Readings>,
    /// What has drifted how far.
    pub conditions: Arc<Conditions>,
}

/// A run played out.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Trace {
    /// Moments, in order of time.
    pub moments: Vec<Moment>,
}

impl Trace {
    /// The moments at which this happened.
    pub fn events(&self) -> impl Iterator<Item = (&Moment, &Event)> {
        self.moments.iter().filter_map(|m| match &m.what {
            What::Happened(event) => Some((m, event)),
            What::Began | What::Did(_) | What::Refused(..) | What::Learnt(_) | What::Sampled => {
                None
            }
        })
    }

    /// When the utility was lost.
    pub fn outage_at(&self) -> Option<DrillTime> {
        self.events()
            .find(|(_, e)| matches!(e, Event::Outage))
            .map(|(m, _)| m.at)
    }

    /// When the utility came back for the last time.
    pub fn return_at(&self) -> Option<DrillTime> {
        self.events()
            .filter(|(_, e)| matches!(e, Event::UtilityReturned))
            .last()
            .map(|(m, _)| m.at)
    }

    /// When the run ends so far.
    pub fn end(&self) -> DrillTime {
        self.moments.last().map_or(DrillTime::ZERO, |m| m.at)
    }
}
