//! A scenario: a site, how it stands at the start, what happens, what to reach and what counts.
//!
//! All of it is data; the drill engine and the marking give it life.
//! Chance enters only through [`chance`], so that a seed means the same drill everywhere.

pub mod chance;
pub mod course;
pub mod lesson;
pub mod prediction;
pub mod question;
pub mod variation;

use std::sync::Arc;

use crate::site::{ControlId, Positions, Site};
use crate::units::DrillTime;

use course::Course;
use prediction::Prediction;
use question::Question;
use variation::{Change, Variants};

/// A drill that can be played.
#[derive(Debug, Clone, PartialEq)]
pub struct Scenario {
    /// Name, as on the command line; its words are `drill-<name>-…`.
    pub name: String,
    /// Digest of the files it was read from, in hexadecimal: a run belongs to exactly this scenario.
    pub digest: String,
    /// For whom it is and what it teaches.
    pub course: Course,
    /// What is built.
    pub site: Arc<Site>,
    /// How everything stands in the house as it was left sound, before the drill changes anything.
    pub as_built: Positions,
    /// How everything stands at the start.
    pub start: Positions,
    /// Time of day at the start, minutes after midnight.
    pub minute_of_day: u32,
    /// Whether a storm hangs over the street: it changes the sky and nothing else.
    pub storm: bool,
    /// What the world does, in order.
    pub story: Vec<Timed>,
    /// What to reach.
    pub goal: Goal,
    /// What counts.
    pub criteria: Vec<Criterion>,
    /// What the learner is asked to say.
    pub questions: Vec<Question>,
    /// What the learner is asked to foretell; it counts for nothing.
    pub predictions: Vec<Prediction>,
    /// The share of the criteria that are not needed by themselves which a pass asks for, 0 to 1.
    pub share: f64,
    /// Hours of running that the oil has left at the start, if it isn't as the site says.
    pub oil_hours: Option<f64>,
    /// Most attempts to start the engine that fail, drawn from the seed.
    pub start_misses_up_to: u32,
    /// Fewest of them; what is drawn is at least this.
    pub start_misses_from: u32,
    /// Whether the panel stands in water, so that nobody may touch it.
    pub wet_panel: bool,
    /// How long the engine has run when the drill begins in the middle of an outage; none if the outage is still to come.
    pub ran_before: Option<DrillTime>,
    /// Fuel in the tank at the start, gallons, if it isn't full.
    pub fuel_gal: Option<f64>,
    /// When the drill ends by itself.
    pub ends_at: DrillTime,
    /// What is changed in it from what its file has as written.
    pub changes: Vec<Change>,
    /// What else its file offers; nothing in a variant.
    pub variants: Variants,
}

/// Something the world does at a time.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Timed {
    /// The earliest time.
    pub at: DrillTime,
    /// How much later it may be, drawn from the seed in whole seconds.
    pub spread_s: u32,
    /// What happens.
    pub what: Happening,
}

/// What the world can do.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Happening {
    /// The storm breaks the span; the switch at the head of the lateral opens.
    Outage,
    /// The crew arrives and tests the line at its pole.
    CrewArrives,
    /// The crew takes the line in hand; if it finds the line live it stands back and tries again later.
    CrewTakesHold,
    /// The crew has mended the span and is clear of it.
    CrewLeaves,
    /// The switch at the head of the lateral closes.
    UtilityReturns,
    /// The switch at the head of the lateral opens again: a line that was tried and didn't hold.
    UtilityFails,
    /// A neighbor comes and asks for a cord.
    NeighborAsks,
    /// A neighbor starts an engine beside an opening of this house.
    NeighborRuns,
    /// The neutral of the house's drop comes loose.
    NeutralLost,
    /// One hot of the house's drop comes loose.
    LegLost,
    /// The utility has mended the house's drop.
    DropMended,
    /// A customer on the line starts a set, unless the utility serves the house.
    CustomerStarts,
    /// The remote control of the tie closes it, unless a tag holds it.
    TieCloses,
    /// The second crew on the line is clear of it.
    SecondCrewClears,
}

/// What to reach.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Goal {
    /// Indices of the appliances that have to get power in time.
    pub appliances: Vec<usize>,
    /// How long after the outage that may take.
    pub within: DrillTime,
    /// Whether the house has to be on the utility at the end.
    pub back_on_utility: bool,
    /// Whether it is as good as the goal to leave the house off its own sources and call an electrician.
    pub safe_stop: bool,
    /// How controls have to stand at the end: the control and the positions that will do.
    pub at_end: Vec<(ControlId, Vec<String>)>,
}

/// The five kinds of criteria.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Criterion {
    /// No customer's source ever reaches the utility's side, nor hangs on one unguarded handle: critical.
    Isolation,
    /// Nobody is harmed or put in the way of harm: critical.
    People,
    /// What happened came in an order that spares people and things.
    Order,
    /// Nothing was overloaded, starved or cooked.
    Load,
    /// The goal was met, and everything stands as it should at the end: needed.
    Restoration,
}

impl Criterion {
    /// Whether a breach of it fails the run by itself.
    pub fn is_critical(self) -> bool {
        matches!(self, Self::Isolation | Self::People)
    }

    /// Whether a pass can't do without it.
    pub fn is_needed(self) -> bool {
        self.is_critical() || self == Self::Restoration
    }

    /// Its name in word files.
    pub fn name(self) -> &'static str {
        match self {
            Self::Isolation => "isolation",
            Self::People => "people",
            Self::Order => "order",
            Self::Load => "load",
            Self::Restoration => "restoration",
        }
    }
}
