//! Words: messages in the learner's language.

mod message;

pub use message::{Arg, Message, Unit, name_of};
