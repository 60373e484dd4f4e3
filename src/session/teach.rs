//! What an instructor needs beside the drill: turns of events, covered readings, and which moments have come.

use crate::drill::{Action, Event, write_action};
use crate::words::Message;

use super::view::DeedView;
use super::{Open, Session};

impl Session {
    /// The turns of events that can come in the open drill, each with the line that lets it come.
    /// None in a test: what is marked is the drill as it was written.
    pub fn turns(&self) -> Vec<DeedView> {
        let Some(open) = self.open.as_ref().filter(|o| o.may_be_turned()) else {
            return Vec::new();
        };
        let site = open.drill.site();
        let offer = |turn| DeedView {
            line: write_action(site, &Action::Happen(turn)),
            label: self
                .words
                .label(&Message::new(format!("turn-{}", turn.name()))),
            ..DeedView::default()
        };
        open.drill.turns().into_iter().map(offer).collect()
    }

    /// Whether readings that weren't tested are covered.
    pub fn covered(&self) -> bool {
        self.covered
    }

    /// Whether volts and amps are shown that weren't tested: not while just these may be what is asked.
    pub(super) fn numbers_are_shown(&self, open: &Open) -> bool {
        open.truth_is_shown() && !open.asking.hides() && !self.covered
    }

    /// Whether the drill of this name is open and this has happened in it.
    pub(super) fn has_come(&self, drill: &str, event: &Event) -> bool {
        self.open.as_ref().is_some_and(|open| {
            let mut events = open.drill.trace().events();
            open.drill.scenario().name == drill && events.any(|(_, e)| e == event)
        })
    }
}

impl Open {
    /// Whether an instructor may let turns of events come: in practice, not in a test, and not once it is over.
    pub(super) fn may_be_turned(&self) -> bool {
        self.practice != super::Practice::Assessed && self.verdict.is_none()
    }
}
