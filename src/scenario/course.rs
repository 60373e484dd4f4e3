//! Where a drill stands in a course: for whom, how hard, which way, what it teaches.
//!
//! Data only, for the catalog and for choosing what to practice; nothing of it changes how a drill plays or is marked.
//! The outcomes are this project's own list; that each is marked follows from the drill's goal and criteria.

/// Where a drill stands in a course.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Course {
    /// How hard it is.
    pub level: Level,
    /// For whom it is, in the order in which the file names them.
    pub tracks: Vec<Track>,
    /// The way of bringing another source to a house that it is about.
    pub way: Way,
    /// The directions in which the learner works that way's equipment.
    pub directions: Vec<Direction>,
    /// What it teaches.
    pub teaches: Vec<Outcome>,
}

/// How hard a drill is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Level {
    /// Look, and say what is there.
    FirstLook,
    /// With help at each step.
    Guided,
    /// Alone, with time to try.
    Practice,
    /// To be shown unaided.
    Assessed,
    /// Several things at once.
    Expert,
}

/// All levels, the easiest first.
pub const LEVELS: [Level; 5] = [
    Level::FirstLook,
    Level::Guided,
    Level::Practice,
    Level::Assessed,
    Level::Expert,
];

impl Level {
    /// Its number in files and on the shelf, from 1.
    pub fn number(self) -> u8 {
        match self {
            Self::FirstLook => 1,
            Self::Guided => 2,
            Self::Practice => 3,
            Self::Assessed => 4,
            Self::Expert => 5,
        }
    }

    /// The level of a number; none for one outside 1 to 5.
    pub fn of(number: u8) -> Option<Self> {
        LEVELS.into_iter().find(|l| l.number() == number)
    }
}

/// Whom a drill is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Track {
    /// A class in a hall.
    Class,
    /// An apprentice of the trade, on the customer's side or the utility's.
    Apprentice,
    /// A household alone.
    Home,
}

/// All tracks, in the order in which they are listed.
pub const TRACKS: [Track; 3] = [Track::Home, Track::Class, Track::Apprentice];

impl Track {
    /// Its name in word files.
    pub fn name(self) -> &'static str {
        match self {
            Self::Class => "class",
            Self::Apprentice => "apprentice",
            Self::Home => "home",
        }
    }
}

/// A way of bringing another source to a house, in the order in which the shelf has them.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Way {
    /// A transfer switch with a handle for each of some circuits.
    ManualSwitch,
    /// A main panel with a slide between main and generator breaker.
    Interlock,
    /// A panel built with a pair of breakers for the generator.
    ReadyPanel,
    /// Extension cords alone.
    Cords,
    /// A standby unit with an automatic transfer switch.
    Standby,
    /// An inverter generator with a subpanel of its own.
    Subpanel,
    /// The utility's side.
    Line,
    /// None of these: air, fuel, second sources, unsound installations.
    Other,
}

/// The six sound ways, in the order of [`Way`].
pub const SOUND_WAYS: [Way; 6] = [
    Way::ManualSwitch,
    Way::Interlock,
    Way::ReadyPanel,
    Way::Cords,
    Way::Standby,
    Way::Subpanel,
];

impl Way {
    /// Its name in word files.
    pub fn name(self) -> &'static str {
        match self {
            Self::ManualSwitch => "manual-switch",
            Self::Interlock => "interlock",
            Self::ReadyPanel => "ready-panel",
            Self::Cords => "cords",
            Self::Standby => "standby",
            Self::Subpanel => "subpanel",
            Self::Line => "line",
            Self::Other => "other",
        }
    }
}

/// A direction of switching over.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Direction {
    /// From the utility to the house's own source.
    Out,
    /// Back to the utility.
    Back,
}

impl Direction {
    /// Its name in documents.
    pub fn name(self) -> &'static str {
        match self {
            Self::Out => "out",
            Self::Back => "back",
        }
    }
}

/// What a learner can do, unaided, after a drill.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Outcome {
    /// Place the engine and keep gas out.
    PlaceEngine,
    /// Isolate the house from the line before feeding it.
    Isolate,
    /// Show by evidence which source each part is on.
    ShowSource,
    /// Choose and order loads within the rating, on both legs.
    ChooseLoads,
    /// Choose, lay and check cords.
    ChooseCords,
    /// Start, load, refuel, cool and stop the engine.
    RunEngine,
    /// Go back to the utility with no overlap.
    GoBack,
    /// Recognize an unsafe installation, refuse it, make it safe.
    Recognize,
    /// Match neutral, grounding and ground-fault devices of set and transfer equipment.
    Grounding,
    /// Act in an emergency.
    Emergency,
    /// Explain the path of harm downstream.
    ExplainHarm,
    /// Isolate, lock and test for service work.
    LockOut,
    /// Obtain a dead, visible, tagged, tested, grounded line.
    DeadLine,
    /// Handle a suspected customer's source, remove grounds, release.
    Release,
    /// Find and isolate a second source.
    SecondSource,
    /// Brief others, hand over, leave a usable card.
    HandOver,
}

/// All outcomes, in the order in which a course takes them.
pub const OUTCOMES: [Outcome; 16] = [
    Outcome::PlaceEngine,
    Outcome::Isolate,
    Outcome::ShowSource,
    Outcome::ChooseLoads,
    Outcome::ChooseCords,
    Outcome::RunEngine,
    Outcome::GoBack,
    Outcome::Recognize,
    Outcome::Grounding,
    Outcome::Emergency,
    Outcome::ExplainHarm,
    Outcome::LockOut,
    Outcome::DeadLine,
    Outcome::Release,
    Outcome::SecondSource,
    Outcome::HandOver,
];

impl Outcome {
    /// Its name in documents.
    pub fn name(self) -> &'static str {
        match self {
            Self::PlaceEngine => "place-engine",
            Self::Isolate => "isolate",
            Self::ShowSource => "show-source",
            Self::ChooseLoads => "choose-loads",
            Self::ChooseCords => "choose-cords",
            Self::RunEngine => "run-engine",
            Self::GoBack => "go-back",
            Self::Recognize => "recognize",
            Self::Grounding => "grounding",
            Self::Emergency => "emergency",
            Self::ExplainHarm => "explain-harm",
            Self::LockOut => "lock-out",
            Self::DeadLine => "dead-line",
            Self::Release => "release",
            Self::SecondSource => "second-source",
            Self::HandOver => "hand-over",
        }
    }
}
