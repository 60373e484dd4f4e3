//! Why the window or its pictures could not do their work, each with a message that says what helps.
//!
//! It does not cover an adapter that is lost later: the engine then stops.

use std::fmt;
use std::path::PathBuf;

use crate::words::{Arg, Message};

/// Why the window could not do its work.
#[derive(Debug, Clone, PartialEq, Eq)]
#[non_exhaustive]
pub enum WindowError {
    /// The environment names no display, or one that doesn't answer.
    NoDisplay,
    /// No graphics adapter answers, not even one in software.
    NoAdapter,
    /// The engine stopped with an error.
    Stopped,
    /// There is no screen of this name; those that there are.
    UnknownScreen(String, Vec<String>),
    /// The engine gave no picture of this screen back.
    NoPicture(String),
    /// A picture could not be written, with the reason.
    Unwritable(PathBuf, String),
}

impl WindowError {
    /// What to tell the learner.
    pub fn message(&self) -> Message {
        let verbatim = |text: &str| Arg::Verbatim(text.to_owned());
        match self {
            Self::NoDisplay => Message::new("window-no-display"),
            Self::NoAdapter => Message::new("window-no-adapter"),
            Self::Stopped => Message::new("window-stopped"),
            Self::UnknownScreen(name, known) => Message::new("window-no-screen")
                .with("name", verbatim(name))
                .with("known", verbatim(&known.join(", "))),
            Self::NoPicture(name) => Message::new("window-no-picture").with("name", verbatim(name)),
            Self::Unwritable(path, why) => Message::new("terminal-file-unwritable")
                .with("file", verbatim(&path.display().to_string()))
                .with("reason", verbatim(why)),
        }
    }
}

/// For logs: the message's id. People are told the message.
impl fmt::Display for WindowError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.message().id)
    }
}

impl std::error::Error for WindowError {}
