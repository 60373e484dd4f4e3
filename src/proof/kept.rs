//! The ways home that were found in a drill, kept by where they lead from: how far from home each place is, and by what steps.
//!
//! A place is how every control stands, how much of the story is told, and how often somebody has looked, tested or spoken since something was moved.
//! A way is kept for every place that it leads through, and that there is none for where it was looked for.
//! What drifts is no part of a place, so it is kept too what was done until then and what the clock showed: where both are the same the way holds as it is, and anywhere else it has to be played before it is told.

use std::collections::BTreeMap;
use std::sync::Arc;

use crate::drill::{Action, Drill, Moment, Timed, What};
use crate::site::Positions;
use crate::units::DrillTime;

use super::step::Step;

/// A place that ways lead through.
type Place = (Positions, usize, usize);

/// What is left from a place.
#[derive(Debug, Clone)]
pub(super) struct Left {
    /// The steps home; none where no way was found.
    pub(super) steps: Option<Vec<Step>>,
    /// What was done in the run with which it was found.
    run: Arc<[Timed]>,
    /// How much of that led to the place.
    n_actions: usize,
    /// What the clock showed there.
    at: DrillTime,
}

impl Left {
    /// Whether a drill stands just where this was found.
    pub(super) fn is_from(&self, drill: &Drill) -> bool {
        let own = self.run.get(..self.n_actions);
        self.at == drill.now() && own == Some(drill.run().actions.as_slice())
    }
}

/// What is left from each place.
#[derive(Debug, Clone, Default)]
pub(super) struct Kept(BTreeMap<Place, Left>);

impl Kept {
    /// Keeps what came of a search from where `drill` stands: the way and the drill that was walked along it, or that there is none.
    /// Of a place that a way comes through twice the first time counts.
    pub(super) fn keep(&mut self, drill: &Drill, found: Option<(&[Step], &Drill)>) {
        let before = drill.trace().moments.len();
        if let Some((steps, walked)) = found {
            let (moments, run) = (
                &walked.trace().moments,
                Arc::from(walked.run().actions.as_slice()),
            );
            for index in (before..moments.len()).rev() {
                let (Some(up_to), Some(moment)) = (moments.get(..=index), moments.get(index))
                else {
                    continue;
                };
                let done = steps.partition_point(|s| s.at <= moment.at);
                let left = Left {
                    steps: steps.get(done..).map(<[Step]>::to_vec),
                    n_actions: walked.run().actions.partition_point(|a| a.at <= moment.at),
                    run: Arc::clone(&run),
                    at: moment.at,
                };
                self.0.insert(place(up_to, moment), left);
            }
        }
        if let Some(moment) = drill.trace().moments.last() {
            let left = Left {
                steps: found.map(|(steps, _)| steps.to_vec()),
                run: Arc::from(drill.run().actions.as_slice()),
                n_actions: drill.run().actions.len(),
                at: drill.now(),
            };
            self.0.insert(place(&drill.trace().moments, moment), left);
        }
    }

    /// What is left from the place where a drill stands, if it was looked for or a way leads through it.
    pub(super) fn from(&self, drill: &Drill) -> Option<&Left> {
        let moments = &drill.trace().moments;
        self.0.get(&place(moments, moments.last()?))
    }
}

/// The place that the last of these moments is at.
fn place(moments: &[Moment], last: &Moment) -> Place {
    let moved = |m: &&Moment| !matches!(&m.what, What::Did(Action::Set(..)));
    let since = moments.iter().rev().take_while(moved);
    let other = |m: &&Moment| matches!(&m.what, What::Did(a) if !matches!(a, Action::Wait(_)));
    let stage = last.conditions.story_done;
    (last.positions.clone(), stage, since.filter(other).count())
}
