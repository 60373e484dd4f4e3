//! The drill file as it is written.

use std::collections::BTreeMap;

use serde::Deserialize;

use super::drill_build_predictions::PredictionFile;
use super::drill_build_questions::QuestionFile;

use super::drill_vary::{VariationFile, WeatherFile};

/// The version of drill files that this program reads.
pub(super) const DRILL_VERSION: u32 = 1;

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct DrillFile {
    /// Version of the format.
    pub(super) version: u32,
    /// Name, small letters and hyphens.
    pub(super) name: String,
    /// How hard it is: 1 a first look, 2 guided, 3 practice, 4 assessed, 5 expert.
    pub(super) level: u8,
    /// For whom it is.
    pub(super) tracks: Vec<TrackFile>,
    /// The way it is about; none of the six and not the line when left out.
    #[serde(default)]
    pub(super) way: WayFile,
    /// In which directions the learner works that way's equipment; none when left out.
    #[serde(default)]
    pub(super) directions: Vec<DirectionFile>,
    /// What it teaches, one to four outcomes.
    pub(super) teaches: Vec<OutcomeFile>,
    /// Name of the site it is played on.
    pub(super) site: String,
    /// How the slide between main and generator breaker is found; fitted when left out.
    #[serde(default)]
    pub(super) interlock: InterlockFile,
    /// Which of the site's cords are in the shed.
    pub(super) cords: Vec<String>,
    /// Local time at the start: hour, minute.
    pub(super) starts_at: (u32, u32),
    /// When the drill ends by itself, minutes.
    pub(super) ends_after_minutes: u64,
    /// Hours of running that the oil has left; as the site says when left out.
    #[serde(default)]
    pub(super) oil_hours: Option<f64>,
    /// Most attempts to start the engine that fail, drawn from the seed.
    #[serde(default)]
    pub(super) start_misses_up_to: u32,
    /// Fewest of them; none when left out.
    #[serde(default)]
    pub(super) start_misses_from: u32,
    /// Whether a storm hangs over the street, which only the sky shows; false when left out.
    #[serde(default)]
    pub(super) storm: bool,
    /// Whether the panel stands in water; false when left out.
    #[serde(default)]
    pub(super) wet_panel: bool,
    /// Minutes for which the engine has run already in an outage that came before the start; the outage is still to come when left out.
    #[serde(default)]
    pub(super) engine_minutes: Option<f64>,
    /// Fuel in the tank at the start; full when left out.
    #[serde(default)]
    pub(super) fuel_gallons: Option<f64>,
    /// How far what an appliance guards has come, 0 well to 1 lost; as the site says when left out.
    #[serde(default)]
    pub(super) levels: BTreeMap<String, f64>,
    /// Pairs of circuits whose wires are swapped at their breakers: the panel's directory is wrong for both.
    #[serde(default)]
    pub(super) swapped: Vec<(String, String)>,
    /// The weather; a cool dry evening without wind when left out.
    #[serde(default)]
    pub(super) weather: WeatherFile,
    /// Controls found otherwise than in their first position.
    #[serde(default)]
    pub(super) start: BTreeMap<String, String>,
    /// What the world does, in order of time.
    pub(super) story: Vec<StoryFile>,
    /// What has to be reached.
    pub(super) goal: GoalFile,
    /// What the learner is asked to say; nothing when left out.
    #[serde(default)]
    pub(super) questions: Vec<QuestionFile>,
    /// What the learner is asked to foretell, which counts for nothing; nothing when left out.
    #[serde(default)]
    pub(super) predictions: Vec<PredictionFile>,
    /// Share of the criteria that fail no run by themselves (order, load) that has to be met, 0 to 1.
    pub(super) share: f64,
    /// Named changes, any of which makes it another drill; none when left out.
    #[serde(default)]
    pub(super) variations: Vec<VariationFile>,
    /// Which of them a seed draws together: one of each list, or none of it; all in one list when left out.
    #[serde(default)]
    pub(super) draw: Vec<Vec<String>>,
}

#[derive(Debug, Clone, Copy, Deserialize)]
pub(super) enum TrackFile {
    /// A class in a hall.
    Class,
    /// An apprentice of the trade.
    Apprentice,
    /// A household alone.
    Home,
}

#[derive(Debug, Clone, Copy, Default, Deserialize)]
pub(super) enum WayFile {
    /// A transfer switch with a handle for each of some circuits.
    ManualSwitch,
    /// A slide between main and generator breaker.
    Interlock,
    /// A panel built with a pair of breakers for the generator.
    ReadyPanel,
    /// Extension cords alone.
    Cords,
    /// A standby unit with an automatic transfer switch.
    Standby,
    /// An inverter generator with a subpanel of its own.
    Subpanel,
    /// The line of the utility.
    Line,
    /// None of these.
    #[default]
    Other,
}

#[derive(Debug, Clone, Copy, Deserialize)]
pub(super) enum DirectionFile {
    /// From the utility to the own source.
    Out,
    /// Back to the utility.
    Back,
}

#[derive(Debug, Clone, Copy, Deserialize)]
pub(super) enum OutcomeFile {
    /// Place the engine and keep gas out.
    PlaceEngine,
    /// Isolate the house from the line before feeding it.
    Isolate,
    /// Show which source each part is on.
    ShowSource,
    /// Choose and order loads.
    ChooseLoads,
    /// Choose, lay and check cords.
    ChooseCords,
    /// Start, load, refuel, cool and stop the engine.
    RunEngine,
    /// Go back to the utility with no overlap.
    GoBack,
    /// Recognize what is unsafe and make it safe.
    Recognize,
    /// Match neutral, grounding and ground-fault devices.
    Grounding,
    /// Act in an emergency.
    Emergency,
    /// Explain the path of harm.
    ExplainHarm,
    /// Isolate, lock and test for service.
    LockOut,
    /// Obtain a dead, tested, grounded line.
    DeadLine,
    /// Handle a customer's source, remove grounds, release.
    Release,
    /// Find and isolate a second source.
    SecondSource,
    /// Brief others and hand over.
    HandOver,
}

#[derive(Debug, Clone, Copy, Default, Deserialize)]
pub(super) enum InterlockFile {
    /// Listed for this panel, and it blocks.
    #[default]
    Fitted,
    /// There is none.
    Missing,
    /// It doesn't reach, so it doesn't block.
    Misfitted,
    /// Its bar has been taken off.
    Defeated,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct StoryFile {
    /// Minute of the drill clock.
    pub(super) minute: u64,
    /// Second within that minute; 0 when left out.
    #[serde(default)]
    pub(super) second: u64,
    /// Seconds by which it may come later, drawn from the seed; 0 when left out.
    #[serde(default)]
    pub(super) up_to_seconds_later: u32,
    /// What happens.
    pub(super) what: WhatFile,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
pub(super) enum WhatFile {
    /// The storm breaks the span, and the utility is lost.
    Outage,
    /// The crew arrives and tests the line.
    CrewArrives,
    /// The crew takes the line in hand, if it finds it dead.
    CrewTakesHold,
    /// The crew has mended the line and is clear of it.
    CrewLeaves,
    /// The utility is back.
    UtilityReturns,
    /// The utility is lost again.
    UtilityFails,
    /// A neighbor asks for power.
    NeighborAsks,
    /// A neighbor starts an engine.
    NeighborRuns,
    /// The neutral of the drop comes loose.
    NeutralLost,
    /// One live wire of the drop comes loose.
    LegLost,
    /// The drop is mended.
    DropMended,
    /// A customer on the line starts a generator.
    CustomerStarts,
    /// The tie to the other feed closes.
    TieCloses,
    /// The second crew gives up its clearance.
    SecondCrewClears,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct GoalFile {
    /// Appliances that have to get power in time.
    pub(super) powered: Vec<String>,
    /// How long after the outage that may take, minutes.
    pub(super) within_minutes: u64,
    /// Whether the house has to be on the utility at the end; true when left out.
    #[serde(default = "yes")]
    pub(super) back_on_utility: bool,
    /// How controls have to stand at the end; any one of the positions named will do.
    pub(super) at_end: BTreeMap<String, Vec<String>>,
    /// Whether it is as good as the goal to feed nothing and call an electrician; false when left out.
    #[serde(default)]
    pub(super) safe_stop: bool,
}

fn yes() -> bool {
    true
}
