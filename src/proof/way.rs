//! A safe way from a drill's start to its goal: a walk that is played to its end and marked like any run.

use std::sync::Arc;

use crate::drill::{Action, Drill};
use crate::marking::mark;
use crate::scenario::Scenario;
use crate::site::Plug;

use super::judge::Judge;
use super::step::{Step, moves};
use super::walk::{Planned, Walk};

/// Choices of the first cord that are tried when a way does not pass.
const MOST_TURNS: usize = 6;

/// States that a plan may look at in a proof.
const MOST_STATES: usize = 2_000_000;

/// How many choices of the first cord there are to try: after as many turns as every machine that is asked for has cords to go into, each comes to its first cord again.
pub(super) fn turns(scenario: &Scenario) -> usize {
    let site = &scenario.site;
    let cords = |appliance: &usize| match site.appliances.get(*appliance).map(|a| &a.plug) {
        Some(Plug::Cord { cords, .. }) => cords.len(),
        Some(Plug::Wired) | None => 0,
    };
    let all: Vec<usize> = scenario.goal.appliances.iter().map(cords).collect();
    let most = site.cords.len().clamp(1, MOST_TURNS);
    let again = |turns: &usize| all.iter().all(|n| *n == 0 || turns.is_multiple_of(*n));
    (1..most).find(again).unwrap_or(most)
}

/// What became of looking for a safe way.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Way {
    /// It was found, played and passed: its actions.
    Passed(Vec<Action>),
    /// By positions there is no way.
    None,
    /// A way was found by positions; played, it does not pass.
    NotPassed(Vec<Action>),
    /// The search was too large.
    TooLarge,
}

impl Way {
    /// What became of a walk that came to its end.
    pub(super) fn marked(scenario: &Scenario, mut drill: Drill, done: &[Step]) -> Self {
        drill.end();
        if mark(scenario, drill.trace()).passed {
            Self::Passed(moves(done))
        } else {
            Self::NotPassed(moves(done))
        }
    }
}

/// Looks for a safe way with the story as this seed tells it, beginning with another cord each time until one passes.
pub(super) fn safe_way(scenario: &Arc<Scenario>, judge: &Judge<'_>, seed: u64) -> Way {
    let n_turns = turns(scenario);
    let mut first = None;
    for turn in 0..n_turns {
        let way = way_from(scenario, judge, seed, turn);
        // Where there is no way, another cord is none either.
        if !matches!(way, Way::NotPassed(_)) {
            return way;
        }
        first.get_or_insert(way);
    }
    first.unwrap_or(Way::None)
}

fn way_from(scenario: &Arc<Scenario>, judge: &Judge<'_>, seed: u64, turn: usize) -> Way {
    let Ok(drill) = Drill::start(scenario, seed) else {
        return Way::None;
    };
    let mut walk = Walk::new(scenario, judge, drill, turn, MOST_STATES);
    match walk.home() {
        Planned::Done => Way::marked(scenario, walk.drill, &walk.done),
        Planned::None => Way::None,
        Planned::TooLarge => Way::TooLarge,
    }
}

/// Whether these actions pass when they are played with the story as this seed tells it.
pub(super) fn passes(scenario: &Arc<Scenario>, way: &[Action], seed: u64) -> bool {
    let Ok(mut drill) = Drill::start(scenario, seed) else {
        return false;
    };
    for action in way {
        drill.act(action);
    }
    drill.end();
    mark(scenario, drill.trace()).passed
}
