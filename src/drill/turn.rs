//! What an instructor makes happen while a drill runs: a turn of events that the drill's own story does not have.
//!
//! It is an action like any other, kept in the run, so that a run with turns plays back to the same bits.
//! The world's own laws go on: what follows from a turn is computed, and marked as ever.
//! It does not cover harm: no turn moves a person or puts power on a line that people work on.
//! The searches of the proof never take a turn.

use std::sync::Arc;

use crate::scenario::Happening;
use crate::site::PositionId;

use super::engine::Drill;
use super::story::{event_of, take_place};

/// A turn of events.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Turn {
    /// What the story has next comes now, and all that follows it so much earlier.
    Sooner,
    /// The utility fails once more.
    UtilityFails,
    /// The utility is back, after a turn in which it failed.
    UtilityReturns,
    /// The neutral of the house's drop comes loose.
    NeutralLost,
    /// One hot of the house's drop comes loose.
    LegLost,
    /// The drop is mended.
    DropMended,
    /// The generator's tank runs dry.
    TankDry,
}

/// All turns, in the order in which they are offered.
pub const TURNS: [Turn; 7] = [
    Turn::Sooner,
    Turn::UtilityFails,
    Turn::UtilityReturns,
    Turn::NeutralLost,
    Turn::LegLost,
    Turn::DropMended,
    Turn::TankDry,
];

impl Turn {
    /// Its name in the grammar and in word files.
    pub fn name(self) -> &'static str {
        match self {
            Self::Sooner => "sooner",
            Self::UtilityFails => "utility-fails",
            Self::UtilityReturns => "utility-returns",
            Self::NeutralLost => "neutral-lost",
            Self::LegLost => "leg-lost",
            Self::DropMended => "drop-mended",
            Self::TankDry => "tank-dry",
        }
    }
}

/// The positions of a wire of the drop that is whole.
const WHOLE: PositionId = PositionId(0);

impl Drill {
    /// The turns that can come now.
    pub fn turns(&self) -> Vec<Turn> {
        if self.over() {
            return Vec::new();
        }
        TURNS.into_iter().filter(|t| self.can_turn(*t)).collect()
    }

    /// Whether a turn can come as things stand.
    pub(super) fn can_turn(&self, turn: Turn) -> bool {
        let site = self.site();
        let line = &site.line;
        let stands = |control, position| site.stands(self.positions(), control, position);
        let whole = |wire| self.positions().get(wire) == WHOLE;
        let drop_is_whole = whole(line.drop_neutral) && whole(line.drop_leg);
        // Where the learner is the crew, the line's own parts are theirs to operate.
        let home = site.line_work.is_none();
        let lost_once = self.trace().outage_at().is_some();
        match turn {
            Turn::Sooner => self.next_happening_at().is_some(),
            Turn::UtilityFails => home && lost_once && stands(line.feeder, "closed"),
            Turn::UtilityReturns => {
                let crew_at_work = ["testing", "hands-on"]
                    .into_iter()
                    .any(|position| stands(line.crew, position));
                home && lost_once
                    && stands(line.feeder, "open")
                    && whole(line.span_state)
                    && !crew_at_work
                    && !self.is_to_come(Happening::UtilityReturns)
            }
            Turn::NeutralLost | Turn::LegLost => home && drop_is_whole,
            Turn::DropMended => home && !drop_is_whole && !self.is_to_come(Happening::DropMended),
            Turn::TankDry => {
                site.generator.spec.burn.fuel.is_poured() && self.conditions().fuel_gal > 0.0
            }
        }
    }

    /// Whether the story still has this to come.
    fn is_to_come(&self, what: Happening) -> bool {
        let done = self.conditions().story_done;
        let story = &self.scenario().story;
        story.iter().skip(done).any(|timed| timed.what == what)
    }

    /// Lets a turn come.
    pub(super) fn turn(&mut self, turn: Turn) {
        let happening = match turn {
            Turn::Sooner => {
                self.bring_forward();
                return;
            }
            Turn::TankDry => {
                self.conditions.fuel_gal = 0.0;
                return;
            }
            Turn::UtilityFails => Happening::UtilityFails,
            Turn::UtilityReturns => Happening::UtilityReturns,
            Turn::NeutralLost => Happening::NeutralLost,
            Turn::LegLost => Happening::LegLost,
            Turn::DropMended => Happening::DropMended,
        };
        let site = Arc::clone(&self.scenario().site);
        take_place(&site, happening, &mut self.positions);
        self.happen(event_of(happening));
    }

    /// Brings the rest of the story forward, so that its next happening is due now.
    fn bring_forward(&mut self) {
        let now = self.committed_at();
        let Some(next) = self.next_happening_at() else {
            return;
        };
        let by = next.since(now);
        let delay = std::mem::take(&mut self.conditions.delay);
        for at in self.story_at.iter_mut().skip(self.conditions.story_done) {
            *at = *at + delay - by;
        }
    }
}
