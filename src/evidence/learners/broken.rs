//! Markings that are wrong on purpose, one rule at a time: whether the second judge catches each on the runs that were played.
//!
//! Only rules that it judges can be caught; the others are told by [`super::not_judged`].

use std::collections::BTreeSet;

use crate::evidence::second_judge::COVERED;

use super::{Outcome, differing};

/// How the marking of a rule is broken.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum How {
    /// The rule is never found.
    NeverFound,
    /// The rule is found in every run.
    AlwaysFound,
    /// It is found where it isn't broken, and not where it is.
    Inverted,
}

impl How {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::NeverFound, Self::AlwaysFound, Self::Inverted];

    /// Its name, the same in every language.
    pub fn name(self) -> &'static str {
        self.message_id().trim_start_matches("learners-how-")
    }

    /// The message that names it.
    pub fn message_id(self) -> &'static str {
        match self {
            Self::NeverFound => "learners-how-never-found",
            Self::AlwaysFound => "learners-how-always-found",
            Self::Inverted => "learners-how-inverted",
        }
    }
}

/// A rule broken on purpose, and the runs that give it away.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Broken {
    /// The rule.
    pub rule: &'static str,
    /// How it is broken.
    pub how: How,
    /// Runs of which the second judge then says something else.
    pub caught_in: usize,
}

/// Breaks each rule in each way, and counts the runs that give it away.
pub fn broken_rules(outcomes: &[Outcome]) -> Vec<Broken> {
    let all = COVERED.into_iter().flat_map(|rule| {
        How::ALL.into_iter().map(move |how| {
            let differs = |o: &&Outcome| {
                let marked = marked_wrongly(&o.marked, rule, how);
                differing(&marked, &o.judgment).contains(&rule)
            };
            let caught_in = outcomes.iter().filter(differs).count();
            Broken {
                rule,
                how,
                caught_in,
            }
        })
    });
    all.collect()
}

/// What the marking would find with this rule broken so.
fn marked_wrongly(
    marked: &BTreeSet<&'static str>,
    rule: &'static str,
    how: How,
) -> BTreeSet<&'static str> {
    let mut wrong = marked.clone();
    let found = match how {
        How::NeverFound => false,
        How::AlwaysFound => true,
        How::Inverted => !marked.contains(rule),
    };
    if found {
        wrong.insert(rule);
    } else {
        wrong.remove(rule);
    }
    wrong
}
