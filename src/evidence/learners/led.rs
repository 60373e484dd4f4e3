//! Whether guided help brings learners to a pass: from the middle of a run, where nothing is found yet that a pass can't do without, whatever the guide says is done to the end.
//!
//! The guide asks no judge but the marking; that what it says is safe is held here to the run that comes of it.
//! A state from which the goal can't be reached in time any more counts as one that doesn't pass.

use crate::drill::Drill;
use crate::marking::{Finding, mark, mark_so_far};
use crate::proof::lead;

use super::Outcome;

/// What came of doing what the guide says.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Led {
    /// The drill and its variant.
    pub drill: String,
    /// Whether it passed.
    pub passed: bool,
    /// Critical rules that were broken on the way.
    pub broken: Vec<&'static str>,
}

/// Plays the first half of a learner's run, then does what the guide says; none where it is too late for a pass already.
pub fn led(outcome: &Outcome) -> Option<Led> {
    let (scenario, run) = (&outcome.scenario, &outcome.run);
    let mut drill = Drill::start(scenario, run.seed).ok()?;
    for timed in run.actions.iter().take(run.actions.len() / 2) {
        drill.act_at(timed.at, &timed.action);
    }
    let needed = |f: &Finding| f.breach && f.rule.criterion().is_needed();
    if mark_so_far(scenario, drill.trace()).iter().any(needed) {
        return None;
    }
    lead(&mut drill);
    drill.end();
    let verdict = mark(scenario, drill.trace());
    Some(Led {
        drill: super::named(scenario),
        passed: verdict.passed,
        broken: super::critical(&verdict).into_iter().collect(),
    })
}
