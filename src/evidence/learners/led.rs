//! Whether guided help brings learners to a pass: from states within a run in which a pass is possible yet, whatever the guide says is done to the end.
//!
//! The guide asks no judge but the marking; that what it says is safe is held here to the run that comes of it.
//! A state counts as too late only where that is computed: something is lost, or even the quickest moves, without any waiting, bring power after it is due.

use crate::drill::Drill;
use crate::marking::{mark, mark_so_far, may_pass};
use crate::proof::{before_any_deed, lead, too_late};

use super::Outcome;

/// Shares of a run, percent, after which the guide is asked.
pub const AFTER_PCT: [usize; 3] = [25, 50, 75];

/// What came of doing what the guide says.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Led {
    /// The drill and its variant.
    pub drill: String,
    /// The seed.
    pub seed: u64,
    /// How many of the learner's deeds came before.
    pub n_deeds: usize,
    /// What it came to.
    pub end: End,
    /// Critical rules that were broken on the way, but for those that were before anything could be done.
    pub broken: Vec<&'static str>,
}

/// What a run with guided help came to.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum End {
    /// It passed.
    Passed,
    /// It didn't, and nobody could have any more.
    TooLate,
    /// It didn't: the rules that were broken.
    Failed(Vec<&'static str>),
}

/// Plays so much of a learner's run, then does what the guide says; none where what is found by then rules a pass out.
pub fn led(outcome: &Outcome, after_pct: usize) -> Option<Led> {
    let (scenario, run) = (&outcome.scenario, &outcome.run);
    let mut drill = Drill::start(scenario, run.seed).ok()?;
    let n_deeds = run.actions.len() * after_pct / 100;
    for timed in run.actions.iter().take(n_deeds) {
        drill.act_at(timed.at, &timed.action);
    }
    if !may_pass(scenario, &mark_so_far(scenario, drill.trace())) {
        return None;
    }
    let stood = drill.clone();
    lead(&mut drill);
    drill.end();
    let verdict = mark(scenario, drill.trace());
    let breaches = verdict.findings.iter().filter(|f| f.breach);
    let end = if verdict.passed {
        End::Passed
    } else if too_late(&stood) {
        End::TooLate
    } else {
        End::Failed(breaches.map(|f| f.rule.name()).collect())
    };
    let fated = before_any_deed(&stood);
    let is_fated = |rule: &&str| fated.iter().any(|f| f.breach && f.rule.name() == *rule);
    let broken = super::critical(&verdict).into_iter();
    let broken = broken.filter(|rule| !is_fated(rule));
    Some(Led {
        drill: super::named(scenario),
        seed: run.seed,
        n_deeds,
        end,
        broken: broken.collect(),
    })
}
