//! What the program is held against: published figures, each beside what ours gives, the mistakes that its drills must show, and thousands of runs of simulated learners.
//!
//! A row is compared with the real function; nothing here knows an answer of its own.
//! A row may say that ours differs, by how much and why; then it is the difference that is held, and a difference that heals is a fault too.
//! Rows that follow from one formula name it, and are counted once.
//! Whether the marking of a whole drill is right is for the second judge, which the learners' runs are put before.

pub mod learners;
pub mod mistakes;
pub mod networks;
mod published;
mod row;
pub mod second_judge;
mod section;

use std::sync::Arc;

use crate::drill::{Drill, Line};
use crate::scenario::Scenario;

pub use networks::networks;
pub use published::compare;
pub use published::published;
pub use row::{Compared, Difference, Judgement, Standing, Tolerance};
pub use section::{Section, Total, total, totals};

/// A list of actions played to its end; none where the site can't be wired, which a checked file rules out.
fn play(scenario: &Arc<Scenario>, seed: u64, lines: &[Line]) -> Option<Drill> {
    let mut drill = Drill::start(scenario, seed).ok()?;
    for line in lines {
        match line.at {
            Some(at) => drill.act_at(at, &line.action),
            None => drill.act(&line.action),
        };
    }
    drill.end();
    Some(drill)
}
