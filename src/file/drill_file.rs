//! The drill file as it is written.

use std::collections::BTreeMap;

use serde::Deserialize;

use super::drill_build_questions::QuestionFile;

use super::drill_vary::{VariationFile, WeatherFile};

/// The version of drill files that this program reads.
pub(super) const DRILL_VERSION: u32 = 1;

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct DrillFile {
    pub(super) version: u32,
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
    pub(super) site: String,
    /// How the slide between main and generator breaker is found; fitted when left out.
    #[serde(default)]
    pub(super) interlock: InterlockFile,
    /// Which of the site's cords are in the shed.
    pub(super) cords: Vec<String>,
    pub(super) starts_at: (u32, u32),
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
    #[serde(default)]
    pub(super) start: BTreeMap<String, String>,
    pub(super) story: Vec<StoryFile>,
    pub(super) goal: GoalFile,
    /// What the learner is asked to say; nothing when left out.
    #[serde(default)]
    pub(super) questions: Vec<QuestionFile>,
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
    Class,
    Apprentice,
    Home,
}

#[derive(Debug, Clone, Copy, Default, Deserialize)]
pub(super) enum WayFile {
    ManualSwitch,
    Interlock,
    ReadyPanel,
    Cords,
    Standby,
    Subpanel,
    Line,
    #[default]
    Other,
}

#[derive(Debug, Clone, Copy, Deserialize)]
pub(super) enum DirectionFile {
    Out,
    Back,
}

#[derive(Debug, Clone, Copy, Deserialize)]
pub(super) enum OutcomeFile {
    PlaceEngine,
    Isolate,
    ShowSource,
    ChooseLoads,
    ChooseCords,
    RunEngine,
    GoBack,
    Recognize,
    Grounding,
    Emergency,
    ExplainHarm,
    LockOut,
    DeadLine,
    Release,
    SecondSource,
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
    pub(super) minute: u64,
    #[serde(default)]
    pub(super) second: u64,
    #[serde(default)]
    pub(super) up_to_seconds_later: u32,
    pub(super) what: WhatFile,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
pub(super) enum WhatFile {
    Outage,
    CrewArrives,
    CrewTakesHold,
    CrewLeaves,
    UtilityReturns,
    UtilityFails,
    NeighborAsks,
    NeighborRuns,
    NeutralLost,
    LegLost,
    DropMended,
    CustomerStarts,
    TieCloses,
    SecondCrewClears,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct GoalFile {
    pub(super) powered: Vec<String>,
    pub(super) within_minutes: u64,
    /// Whether the house has to be on the utility at the end; true when left out.
    #[serde(default = "yes")]
    pub(super) back_on_utility: bool,
    pub(super) at_end: BTreeMap<String, Vec<String>>,
    /// Whether it is as good as the goal to feed nothing and call an electrician; false when left out.
    #[serde(default)]
    pub(super) safe_stop: bool,
}

fn yes() -> bool {
    true
}
