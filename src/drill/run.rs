//! A run: the only thing that is stored of a drill.
//!
//! Scenario digest, seed and timed actions; everything else is recomputed.
//! Beside it a file may keep what can't be: how it was practised, who sat at it and when, and the learner's own words.

use std::sync::Arc;

use crate::circuit::NetworkError;
use crate::scenario::Scenario;
use crate::units::DrillTime;

use super::action::Action;
use super::engine::Drill;
use super::signed::Signed;

/// An action and the instant of its effect.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Timed {
    /// When.
    pub at: DrillTime,
    /// What.
    pub action: Action,
}

/// How a drill is practised.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Default)]
pub enum Practice {
    /// Mistakes are explained as they happen, and the truth is shown.
    #[default]
    Coached,
    /// As coached, and the next safe step is shown with its reason.
    Guided,
    /// No help and no truth beyond what was looked at or tested, until the end.
    Assessed,
}

impl Practice {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::Coached, Self::Guided, Self::Assessed];

    /// Its name in run files.
    pub fn name(self) -> &'static str {
        match self {
            Self::Coached => "coached",
            Self::Guided => "guided",
            Self::Assessed => "assessed",
        }
    }
}

/// What a learner's file keeps beside a run; nothing of it changes how the run plays or is marked.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Beside {
    /// Who sat at it, how and when.
    pub signed: Signed,
    /// When another learner took over, and who, in order of time.
    pub handed: Vec<(DrillTime, String)>,
    /// How the drill was practised; none for a list of actions, or where the file doesn't say.
    pub practice: Option<Practice>,
    /// What happened, in the learner's own words, in one line.
    pub happened: String,
    /// How it felt, in one line.
    pub felt: String,
}

/// What was done in a drill.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Run {
    /// Name of the scenario.
    pub scenario: String,
    /// Digest of the scenario's files.
    pub digest: String,
    /// Seed.
    pub seed: u64,
    /// What was done, in order of time.
    pub actions: Vec<Timed>,
    /// The drill clock at the end.
    pub ended_at: DrillTime,
    /// What is kept beside it.
    pub beside: Beside,
}

impl Run {
    /// A run in which nothing has been done yet.
    pub fn new(scenario: &str, digest: &str, seed: u64) -> Self {
        Self {
            scenario: scenario.to_owned(),
            digest: digest.to_owned(),
            seed,
            actions: Vec::new(),
            ended_at: DrillTime::ZERO,
            beside: Beside::default(),
        }
    }

    /// The drill as it stood when the first `kept` actions were done and the clock showed `at`.
    ///
    /// # Errors
    /// When the site can't be wired, which a checked file rules out.
    pub fn until(
        &self,
        kept: usize,
        at: DrillTime,
        scenario: &Arc<Scenario>,
    ) -> Result<Drill, NetworkError> {
        let mut drill = Drill::start(scenario, self.seed)?;
        for timed in self.actions.iter().take(kept) {
            drill.act_at(timed.at, &timed.action);
        }
        drill.advance(at.since(drill.now()));
        Ok(drill)
    }

    /// Plays the run out again, to its end.
    ///
    /// # Errors
    /// When the site can't be wired, which a checked file rules out.
    pub fn replay(&self, scenario: &Arc<Scenario>) -> Result<Drill, NetworkError> {
        let mut drill = self.until(self.actions.len(), self.ended_at, scenario)?;
        drill.end();
        Ok(drill)
    }
}
