//! A lesson: what a group or a household shall be able to do, and the minute plan that gets them there.
//!
//! It names drills and holds none of their parts, so that one drill serves many lessons.
//! All that is said is in the word files; a lesson names the messages.

use super::Happening;
use super::course::{Outcome, Track};

/// A lesson pack.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Lesson {
    /// Name; its title is `lesson-<name>-title`, what it is for `lesson-<name>-about`.
    pub name: String,
    /// Whom it is for.
    pub track: Track,
    /// What the learners can do after it.
    pub objectives: Vec<Objective>,
    /// What to get ready beforehand: `prepare-<name>` each.
    pub prepare: Vec<String>,
    /// What is said before the first drill: `prebrief-<name>` each.
    pub prebrief: Vec<String>,
    /// Its sessions in order.
    pub sittings: Vec<Sitting>,
    /// What is asked in a debrief, phase by phase: `prompt-<name>` each.
    pub debrief: Vec<(Phase, Vec<String>)>,
    /// Lines of the sheet that goes home: `handout-<name>` each.
    pub handout: Vec<String>,
}

impl Lesson {
    /// Minutes of all sessions together.
    pub fn minutes(&self) -> u32 {
        self.sittings.iter().map(|s| s.minutes).sum()
    }

    /// All steps, in order.
    pub fn steps(&self) -> impl Iterator<Item = &Step> {
        self.sittings.iter().flat_map(|s| &s.steps)
    }
}

/// Something the learners can do after a lesson.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Objective {
    /// Name; in words it is `objective-<name>`.
    pub name: String,
    /// The outcome that the drills are marked for.
    pub outcome: Outcome,
    /// The drills of the lesson that teach it.
    pub drills: Vec<String>,
}

/// One session of a lesson: a time at which people come together.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Sitting {
    /// Name; its title is `sitting-<name>`.
    pub name: String,
    /// How long it takes; its steps add up to this.
    pub minutes: u32,
    /// Its steps in order.
    pub steps: Vec<Step>,
}

/// One step of a session.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Step {
    /// Minute of the session at which it begins.
    pub minute: u32,
    /// Minutes of people's time it is given.
    pub minutes: u32,
    /// What is done.
    pub what: Doing,
    /// What the instructor does or says: `step-<say>`.
    pub say: String,
    /// What the room is asked: `question-<name>` each.
    pub ask: Vec<String>,
    /// The moments of the drill at which to stop and ask.
    pub holds: Vec<Hold>,
}

/// What is done in a step.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Doing {
    /// The rules of the room, before anything else.
    Prebrief,
    /// People speak, sort or write.
    Talk,
    /// The instructor works the drill, and the room looks on.
    Demonstration(String),
    /// The room foretells what the drill then shows.
    Predict(String),
    /// The learners work the drill, with explanations as it goes.
    Drill(String),
    /// The learners work the drill as a test, without help.
    Assessment(String),
    /// Looking back together.
    Debrief,
    /// Rest.
    Break,
    /// The sheet for home.
    Handout,
}

impl Doing {
    /// The drill, if it is one.
    pub fn drill(&self) -> Option<&str> {
        match self {
            Self::Demonstration(drill)
            | Self::Predict(drill)
            | Self::Drill(drill)
            | Self::Assessment(drill) => Some(drill),
            Self::Prebrief | Self::Talk | Self::Debrief | Self::Break | Self::Handout => None,
        }
    }

    /// Its name in word files and documents.
    pub fn name(&self) -> &'static str {
        match self {
            Self::Prebrief => "prebrief",
            Self::Talk => "talk",
            Self::Demonstration(_) => "demonstration",
            Self::Predict(_) => "predict",
            Self::Drill(_) => "drill",
            Self::Assessment(_) => "assessment",
            Self::Debrief => "debrief",
            Self::Break => "break",
            Self::Handout => "handout",
        }
    }
}

/// A moment of a drill at which an instructor stops and asks.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Hold {
    /// The drill's prediction of this name, for which it holds by itself.
    Prediction(String),
    /// After the story has done this; what is asked then is `moment-<name>`.
    After(Happening, String),
}

/// A phase of a debrief.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Phase {
    /// What happened.
    Happened,
    /// How it felt.
    Felt,
    /// Why it came so.
    Why,
    /// What comes next.
    Next,
}

impl Phase {
    /// Its name in word files and documents.
    pub fn name(self) -> &'static str {
        match self {
            Self::Happened => "happened",
            Self::Felt => "felt",
            Self::Why => "why",
            Self::Next => "next",
        }
    }
}
