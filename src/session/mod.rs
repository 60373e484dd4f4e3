//! The boundary between the model and the front ends.

mod command;
pub mod view;

pub use command::{Command, Notice, Practice};
