//! Going back in a drill and trying it another way.
//!
//! A run is a seed and timed actions, so going back is playing it again with fewer of them: what was before comes out the same, to the bit.
//! A drill that is open as a test can't be rewound until it is over; then it goes on with explanations.
//! The branch that is left is kept for comparison: the last one that was over, or else the last.

use crate::drill::{Action, Beside};
use crate::units::DrillTime;
use crate::words::{Arg, Message};

use super::command::{Notice, Practice};
use super::view::Phase;
use super::{Open, Session};

/// How far to go back.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Rewind {
    /// To before the deed that led to the mistake that is held, or else to the latest one that was told.
    Mistake,
    /// To before this finding of the debrief, by its place in the list.
    Finding(usize),
    /// To this time of the drill clock.
    To(DrillTime),
}

impl Session {
    /// Goes back in the drill that is open.
    pub(super) fn rewind(&mut self, rewind: Rewind) -> Vec<Notice> {
        let Some(open) = self.open.as_mut() else {
            return vec![Notice::Unknown(self.words.say_id("session-nothing-open"))];
        };
        if open.practice == Practice::Assessed && open.verdict.is_none() {
            return vec![Notice::Unknown(self.words.say_id("session-no-rewind"))];
        }
        let Some((kept, at)) = back_to(open, rewind) else {
            return vec![Notice::Unknown(self.words.say_id("session-no-mistake"))];
        };
        let drill = match open.drill.run().until(kept, at, open.drill.scenario()) {
            Ok(drill) => drill,
            Err(error) => {
                let detail = Arg::Verbatim(error.to_string());
                let message = Message::new("session-broken-site").with("detail", detail);
                return vec![Notice::Unknown(self.words.say(&message))];
            }
        };
        // What was tried since is left for good once a branch that was over is kept.
        let whole = |o: &Open| o.verdict.is_some();
        if whole(open) || !open.left.as_deref().is_some_and(whole) {
            open.left = Some(Box::new(Open {
                left: None,
                ..open.clone()
            }));
        }
        open.told.retain(|(_, told)| *told <= drill.now());
        open.held.clear();
        open.verdict = None;
        if open.practice == Practice::Assessed {
            open.practice = Practice::Coached;
        }
        open.phase = Phase::default();
        open.beside = Beside {
            signed: open.beside.signed.clone(),
            practice: Some(open.practice),
            handed: std::mem::take(&mut open.beside.handed),
            ..Beside::default()
        };
        open.beside.handed.retain(|(at, _)| *at <= drill.now());
        open.help.rewound();
        open.rewound += 1;
        let clock = Arg::Clock(drill.now());
        open.asking.rewound(&drill);
        open.drill = drill;
        let message = Message::new("session-rewound").with("clock", clock);
        vec![Notice::Done(self.words.say(&message))]
    }
}

/// How many actions are kept, and the time to which the drill goes back; none if there is no such mistake.
fn back_to(open: &Open, rewind: Rewind) -> Option<(usize, DrillTime)> {
    let actions = &open.drill.run().actions;
    let mistake = match rewind {
        Rewind::To(at) => {
            let kept = actions.iter().filter(|a| a.at < at).count();
            return Some((kept, at.min(open.drill.now())));
        }
        Rewind::Mistake => {
            let held = open.held.first().map(|f| f.at);
            held.or_else(|| open.told.iter().map(|(_, at)| *at).max())?
        }
        Rewind::Finding(index) => open.verdict.as_ref()?.findings.get(index)?.at,
    };
    let deed = |a: &&crate::drill::Timed| {
        a.at <= mistake && !matches!(a.action, Action::Wait(_) | Action::Look(_))
    };
    let kept = actions.iter().filter(deed).count().saturating_sub(1);
    let kept = actions
        .iter()
        .enumerate()
        .filter(|(_, a)| deed(a))
        .nth(kept)
        .map_or(0, |(index, _)| index);
    let before = actions.get(..kept).and_then(<[_]>::last);
    Some((kept, before.map_or(DrillTime::ZERO, |a| a.at)))
}
