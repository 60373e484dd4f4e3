//! A lesson: drills and talks in the order in which a group or a household takes them, with the minutes each is given.
//!
//! It names drills and holds none of their parts, so that one drill serves many lessons.
//! What is said in a talk is in the word files.

use super::course::Track;

/// Drills and talks in order.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Lesson {
    /// Name; its title is `lesson-<name>-title`, what it is for `lesson-<name>-about`.
    pub name: String,
    /// Whom it is for.
    pub track: Track,
    /// The times at which people come together, in order.
    pub sittings: Vec<Sitting>,
}

impl Lesson {
    /// Minutes of all sittings together.
    pub fn minutes(&self) -> u32 {
        self.sittings.iter().map(Sitting::minutes).sum()
    }
}

/// What is done at one time.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Sitting {
    /// Name; its title is `sitting-<name>`.
    pub name: String,
    /// Its parts in order.
    pub parts: Vec<Part>,
}

impl Sitting {
    /// Minutes of all parts together.
    pub fn minutes(&self) -> u32 {
        self.parts.iter().map(|p| p.minutes).sum()
    }
}

/// One part of a sitting.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Part {
    /// Minutes of people's time it is given.
    pub minutes: u32,
    /// What is done.
    pub what: Doing,
}

/// What is done in a part.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Doing {
    /// Somebody speaks or people speak together; the words are `talk-<name>`.
    Talk(String),
    /// A drill with explanations as it goes.
    Practice(String),
    /// A drill as a test, without help.
    Test(String),
}

impl Doing {
    /// The drill, if it is one.
    pub fn drill(&self) -> Option<&str> {
        match self {
            Self::Talk(_) => None,
            Self::Practice(drill) | Self::Test(drill) => Some(drill),
        }
    }
}
