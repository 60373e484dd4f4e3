//! What a file with faults of form means all the same, so that its faults of meaning are told in the same pass.
//!
//! It is the text that was mended, with something standing in for what was missing or wrong.
//! Nothing is told that may hang on a stand-in: no fault at it or of its field, none that goes away with another number, and none at all where names may have been lost with it.
//! So fewer faults are told than there may be, never one that isn't there.

use std::ops::Range;

use ron::Options;
use ron::error::Position;
use serde::de::DeserializeOwned;

use super::diagnostic::{Diagnostic, Source};
use super::mend::{Mended, Misread};

/// A number that stands in for one that is missing or wrong, and another one of the same length.
const NUMBERS: [&str; 2] = ["0", "1"];

/// Something that stands in for what is missing or wrong.
#[derive(Debug, Clone)]
pub(super) struct StandIn {
    /// All that was put in, as bytes of the mended text.
    pub(super) stretch: Range<usize>,
    /// Its value.
    pub(super) value: Range<usize>,
}

/// Whether names that others hang on may be lost where this field has this value as its stand-in.
pub(super) type LosesNames = fn(field: &str, value: &str) -> bool;

/// What a text may mean.
#[derive(Debug)]
pub(super) struct Guess<T> {
    mended: Mended,
    /// The values that the text gives, with one number and the other as a stand-in.
    pub(super) values: Vec<T>,
}

impl<T: DeserializeOwned> Guess<T> {
    /// Reads a text that was mended to its end.
    pub(super) fn read(mended: Mended, options: &Options) -> Option<Self> {
        let [number, other] = NUMBERS;
        let mut text = mended.text.clone();
        for stand_in in &mended.stand_ins {
            if text.get(stand_in.value.clone()) == Some(number) {
                text.replace_range(stand_in.value.clone(), other);
            }
        }
        let mut values = vec![options.from_str(&mended.text).ok()?];
        values.extend(options.from_str(&text));
        Some(Self { mended, values })
    }
}

impl<T> Guess<T> {
    /// The faults of meaning that hang on no stand-in, at their places in the text as it was written.
    fn faults(
        &self,
        source: &Source<'_>,
        loses_names: LosesNames,
        judge: impl Fn(&T, Source<'_>) -> Vec<Diagnostic>,
    ) -> Vec<Diagnostic> {
        let text = self.mended.text.as_str();
        let lost = |s: &StandIn| {
            let value = text.get(s.value.clone()).unwrap_or_default();
            loses_names(field_of(text, s.value.start), value)
        };
        if self.mended.stand_ins.iter().any(lost) {
            return Vec::new();
        }
        let own = Source { text, ..*source };
        let mut found = self.values.iter().map(|value| judge(value, own));
        let mut faults = found.next().unwrap_or_default();
        for others in found {
            faults.retain(|fault| others.contains(fault));
        }
        let as_written = faults
            .into_iter()
            .filter_map(|f| self.as_written(source, f));
        as_written.collect()
    }

    /// A fault at its place in the text as it was written; none if it is of a stand-in.
    fn as_written(&self, source: &Source<'_>, fault: Diagnostic) -> Option<Diagnostic> {
        let at = self.mended.offset(Position {
            line: fault.line,
            col: fault.column,
        });
        let end = at + fault.text.len();
        let is_of = |s: &StandIn| {
            let between = self.mended.text.get(end..s.value.start);
            let is_field = between.is_some_and(|b| b.trim_matches([':', ' ', '\n']).is_empty());
            is_field || at < s.stretch.end && s.stretch.start < end
        };
        let original = self.mended.original(at);
        let stands_there = source.text.get(original..)?.starts_with(&fault.text);
        let tellable = fault.file == source.file && !fault.text.is_empty() && stands_there;
        (tellable && !self.mended.stand_ins.iter().any(is_of)).then(|| Diagnostic {
            hint: fault.hint,
            ..source.at_offset(original, &fault.text, fault.message)
        })
    }
}

impl<T> Misread<T> {
    /// The faults of form, and those of meaning that `judge` finds and that hang on no stand-in, in the order in which they stand.
    pub(super) fn told(
        self,
        source: &Source<'_>,
        loses_names: LosesNames,
        judge: impl Fn(&T, Source<'_>) -> Vec<Diagnostic>,
    ) -> Vec<Diagnostic> {
        let mut faults = self.faults;
        let meant = self.guess.map(|g| g.faults(source, loses_names, judge));
        faults.extend(meant.into_iter().flatten());
        faults.sort_by_key(|f| (f.line, f.column));
        faults
    }
}

/// The field whose value begins at a place or, in a list, holds it; empty if there is none.
fn field_of(text: &str, at: usize) -> &str {
    let before = text.get(..at).unwrap_or_default();
    let mut depth = 0_usize;
    for (i, c) in before.char_indices().rev() {
        match c {
            ')' | ']' | '}' => depth += 1,
            '(' | '[' | '{' => depth = depth.saturating_sub(1),
            ':' if depth == 0 => {
                let name = before.get(..i).unwrap_or_default().trim_end();
                let word = |c: char| !c.is_alphanumeric() && c != '_';
                return name.rsplit(word).next().unwrap_or_default();
            }
            _ => {}
        }
    }
    ""
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_field_is_the_nearest_that_holds_the_place() {
        let text = "(a: [(b: 1), (c: X, d: (2, Y))], e: \"f\", g: Z)";
        let field = |place: &str| field_of(text, text.find(place).unwrap());
        assert_eq!(["X", "Y", "Z", "[("].map(field), ["c", "d", "g", "a"]);
        assert_eq!(field("(c"), "a");
    }
}
