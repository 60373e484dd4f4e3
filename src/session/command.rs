//! What a front end may ask for, and what it is told at once.

use crate::units::DrillTime;

pub use crate::drill::Practice;

use super::rewind::Rewind;

/// A wish of the learner.
/// The window and the terminal send the same ones.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Command {
    /// Opens a drill of the shelf from its start.
    Open {
        /// Name of the drill.
        drill: String,
        /// How it is practised.
        practice: Practice,
        /// Seed of what is drawn by chance.
        seed: u64,
    },
    /// Does one action, written as a line of an action file.
    Do(String),
    /// Lets drill time pass.
    Wait(DrillTime),
    /// Lets drill time pass until something happens, ten minutes at most.
    WaitForEvent,
    /// Closes the consequence that is held; else what a prediction came to; else passes a question over without an answer.
    Understood,
    /// Closes every consequence that is held: those that were not read are told in the debrief.
    AllUnderstood,
    /// Answers what the drill asks to be foretold.
    Predict {
        /// A number in the unit asked, or a choice by name.
        answer: String,
        /// How sure the learner is to be right, percent.
        sure: u8,
    },
    /// Answers it for a room: how many hands each choice has, by the choice's name.
    Counts(Vec<(String, u32)>),
    /// Ends the drill and opens the debrief.
    Finish,
    /// Turns to the next page of the debrief.
    Onward,
    /// Turns to the page of the debrief before.
    Back,
    /// Keeps what the learner says in their own words on the page that is open.
    Reflect(String),
    /// Opens the same drill from its start with the same seed.
    Retry,
    /// Opens the same drill from its start with the next seed: another one of those that its file offers, or the same with other chances.
    Another,
    /// Goes back in the drill that is open, to try it another way.
    Rewind(Rewind),
    /// Shows the next safe step and its reason, in any practice that is not a test.
    Hint,
    /// Covers what wasn't tested on the lines, so that a room can be asked about it, or shows it again.
    Cover(bool),
    /// Goes back to the shelf.
    Leave,
    /// Speaks another language.
    Speak(String),
}

/// What a command led to, in words; the front end shows or reads it at once.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Notice {
    /// It was done.
    Done(String),
    /// The world refused it: an answer, not an error.
    Refused(String),
    /// Something happened.
    Happened(String),
    /// Something was seen, tested or told.
    Learnt(String),
    /// An answer that no line of the log holds: how long a wait was and what ended it, or why the slide stays as it is.
    Answered(String),
    /// A consequence is held and can be shown.
    Consequence,
    /// The drill is over; the debrief can be shown.
    Over,
    /// The command could not be understood: an unknown name, position or drill.
    /// Says what, and the nearest that is known.
    Unknown(String),
}
