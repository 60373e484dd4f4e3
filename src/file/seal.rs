//! The seal of a run file: a digest of its lines, so that a file that was damaged or changed by hand is told.
//!
//! It guards against accidents and casual edits, and against nobody who works the digest out again: no secret goes into it.
//! Line endings don't count, so that a file may pass through a machine that writes its own.

use super::library::digest;

const SEAL: &str = "seal ";

/// What the seal of a run file tells.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Seal {
    /// The lines are those that were saved.
    Whole,
    /// A line was changed, added or left out since.
    Broken,
    /// There is none, as in files of older programs.
    Missing,
}

impl Seal {
    /// The seal of the text of a run file.
    pub fn of(text: &str) -> Self {
        match line(text) {
            None => Self::Missing,
            Some(line) if line == of_lines(text.lines()) => Self::Whole,
            Some(_) => Self::Broken,
        }
    }

    /// Its name in documents.
    pub fn name(self) -> &'static str {
        match self {
            Self::Whole => "whole",
            Self::Broken => "broken",
            Self::Missing => "missing",
        }
    }
}

/// A run file's text, sealed anew if `before` was whole: a seal that was broken stays so, and one that was missing isn't put on.
pub fn seal_as_before(text: &str, before: &str) -> String {
    match (Seal::of(before), line(before)) {
        (Seal::Broken, Some(seal)) => with(text, Some(seal)),
        (Seal::Missing, _) => with(text, None),
        (Seal::Whole | Seal::Broken, _) => text.to_owned(),
    }
}

/// The seal line of these lines.
pub(super) fn of_lines<'a>(lines: impl Iterator<Item = &'a str>) -> String {
    let sealed: Vec<&str> = lines.filter(|l| !is_seal(l)).collect();
    format!("{SEAL}{}", digest(&sealed))
}

/// Whether a line is a seal.
pub(super) fn is_seal(line: &str) -> bool {
    line.starts_with(SEAL)
}

fn line(text: &str) -> Option<&str> {
    text.lines().find(|l| is_seal(l))
}

/// A text with this in the place of its seal.
fn with(text: &str, seal: Option<&str>) -> String {
    let own = text
        .lines()
        .map(|l| if is_seal(l) { seal } else { Some(l) });
    let lines: Vec<&str> = own.flatten().collect();
    lines.join("\n") + "\n"
}
