//! The slide between main and generator breaker, and the bar of a pair: what they do when a handle is moved, and why they stay where they are.
//!
//! Neither is a control: each goes with the handles, so that every move of one is told with the deed that moved it.
//! Not covered: a slide that doesn't block, which goes nowhere by itself.

use crate::drill::{Action, Moment};
use crate::scenario::Scenario;
use crate::site::{Constraint, ControlId, Interlock, PositionId, Site};
use crate::words::Message;

use super::command::Notice;
use super::log::did_message;
use super::log_line::taken_off;
use super::{Open, Session};

/// Where a breaker's handle stands that is on.
const ON: PositionId = PositionId(1);

/// What was done, and what a slide or a bar did with it, or which clamp came off.
pub(super) fn done_message(
    scenario: &Scenario,
    before: Option<&Moment>,
    action: &Action,
) -> Message {
    if let Some(taken) = taken_off(&scenario.site, before, action) {
        return taken;
    }
    let deed = did_message(scenario, action);
    match slid(&scenario.site, action) {
        Some(slide) => Message::new("log-slid")
            .said("deed", deed)
            .said("slide", slide),
        None => deed,
    }
}

/// What a slide or a bar does when a handle is moved.
fn slid(site: &Site, action: &Action) -> Option<Message> {
    let Action::Set(control, position) = action else {
        return None;
    };
    let (other, bar) = site.constraints.iter().find_map(|c| held_by(c, *control))?;
    let name = site.control(other).map_or("", |c| c.name.as_str());
    Some(match (*position == ON, bar) {
        (true, false) => Message::new("slide-holds").name("other", name),
        (true, true) => Message::new("bar-holds").name("other", name),
        (false, false) => Message::new("slide-frees"),
        (false, true) => Message::new("bar-frees"),
    })
}

/// The other breaker of a slide or a bar, and whether it is a bar.
fn held_by(constraint: &Constraint, control: ControlId) -> Option<(ControlId, bool)> {
    let Constraint::NotBoth { one, other, why } = constraint else {
        return None;
    };
    let bar = match why.as_str() {
        "refused-interlock" => false,
        "refused-pair" => true,
        _ => return None,
    };
    let both = [one.0, other.0];
    let beyond = both.into_iter().find(|id| *id != control)?;
    both.contains(&control).then_some((beyond, bar))
}

impl Session {
    /// The answer to a line that would move the slide by hand; `None` where the line is about something else or there is no slide.
    pub(super) fn slide_asked(&self, open: &Open, line: &str) -> Option<Vec<Notice>> {
        let mut words = line.split_whitespace().skip_while(|word| *word == "set");
        let site = open.drill.site();
        if words.next() != Some("slide") || site.control_id("slide").is_some() {
            return None;
        }
        let backfeed = site.panel.backfeed?;
        let id = match backfeed.interlock {
            Interlock::Missing => return None,
            Interlock::Misfitted | Interlock::Defeated => "slide-loose",
            Interlock::Fitted => stays(open, backfeed.breaker),
        };
        Some(vec![Notice::Answered(self.words.say_id(id))])
    }
}

/// Why a slide that blocks isn't moved by hand.
fn stays(open: &Open, generator: ControlId) -> &'static str {
    let on = |id: ControlId| open.drill.positions().get(id) == ON;
    if on(open.drill.site().panel.main) {
        "slide-stays-main"
    } else if on(generator) {
        "slide-stays-generator"
    } else {
        "slide-by-itself"
    }
}
