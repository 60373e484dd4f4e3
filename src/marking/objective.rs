//! What a run shows of a learner: for each objective whether it was met, missed, or not shown either way.
//!
//! Objectives are the six sound ways of bringing another source to a house, each in both directions, and the skills that rules ask for.
//! A drill's file says which it asks for; only a run that passes shows that one is met, so that doing nothing shows nothing.
//! A breach before the utility's last return counts against switching over, one from then on against going back.

use crate::drill::Trace;
use crate::scenario::Scenario;
use crate::scenario::course::{Course, Direction, OUTCOMES, Outcome, SOUND_WAYS, Way};

use super::{Finding, Verdict};

/// Something to be mastered.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Objective {
    /// Switching over, or back, one of the sound ways.
    Switch(Way, Direction),
    /// A skill.
    Skill(Outcome),
}

impl Objective {
    /// All, in the order of a course.
    pub fn all() -> Vec<Self> {
        let directions = [Direction::Out, Direction::Back];
        let ways = SOUND_WAYS.into_iter();
        let switches = ways.flat_map(|way| directions.map(|d| Self::Switch(way, d)));
        switches.chain(OUTCOMES.map(Self::Skill)).collect()
    }

    /// Whether a drill asks for it.
    pub fn is_asked(self, course: &Course) -> bool {
        match self {
            Self::Switch(way, direction) => {
                course.way == way && course.directions.contains(&direction)
            }
            Self::Skill(skill) => course.teaches.contains(&skill),
        }
    }

    /// What a run that is over shows of it; nothing where its drill doesn't ask for it, or something else kept it from passing.
    pub fn shown(self, scenario: &Scenario, trace: &Trace, verdict: &Verdict) -> Option<bool> {
        let back = |f: &Finding| trace.return_at().is_some_and(|at| f.at >= at);
        let against = |f: &Finding| match self {
            Self::Switch(_, Direction::Out) => !back(f),
            Self::Switch(_, Direction::Back) => back(f),
            Self::Skill(skill) => f.rule.skill() == skill,
        };
        if !self.is_asked(&scenario.course) {
            return None;
        }
        let broken = verdict.findings.iter().any(|f| f.breach && against(f));
        match (broken, self) {
            // A run may pass with a breach that isn't critical: the switching was shown, the skill was not.
            (true, Self::Switch(..)) => Some(verdict.passed),
            (true, Self::Skill(_)) => Some(false),
            (false, _) => verdict.passed.then_some(true),
        }
    }
}
