//! Every fault of form in a file of ours, in one pass.
//!
//! The reader of the format stops at the first fault.
//! So the fault is told, the text is mended in memory just enough for the reader to get past it, and it is read again, until nothing more is found: a field that isn't known is blanked, a missing one and a value of the wrong kind get a stand-in.
//! What was mended is never used for anything but finding more faults.
//! A bracket or a comma that is missing ends the search: from there on nothing in the text can be relied on.
//! A text that was mended to its end is judged by its meaning too (a name that isn't there, a minute out of order), as far as that doesn't hang on what was put in: see `guess.rs`.

#![expect(
    clippy::wildcard_enum_match_arm,
    reason = "the reader knows many kinds of faults, and more may come; those not named are treated alike"
)]

use ron::Options;
use ron::error::{Error, Position, SpannedError};
use serde::de::DeserializeOwned;

use crate::words::{Arg, Message};

use super::diagnostic::{Diagnostic, Source, nearest, offset};
use super::guess::{Guess, StandIn};
use super::outline::value_end;

/// Most faults of form that are told of one file.
const MOST_FAULTS: usize = 40;

/// Values of each kind, to stand in for one that is missing or wrong.
const STAND_INS: [&str; 9] = [
    "0", "1.5", "true", "\"\"", "[]", "{}", "()", "(0, 0)", "'a'",
];

/// A text that is being mended, with what was put into it.
#[derive(Debug, Clone)]
pub(super) struct Mended {
    pub(super) text: String,
    /// Byte offsets at which something was put in, and how many bytes.
    added: Vec<(usize, usize)>,
    /// What stands in for something missing or wrong.
    pub(super) stand_ins: Vec<StandIn>,
}

/// What is wrong with the form of a text, and what it may mean all the same.
#[derive(Debug)]
pub(super) struct Misread<T> {
    /// The faults, in the order in which they stand.
    pub(super) faults: Vec<Diagnostic>,
    /// The text mended to its end; none if it could not be.
    pub(super) guess: Option<Guess<T>>,
}

/// Reads a value; every fault of form that is found otherwise.
///
/// # Errors
/// The faults, and what the text may mean.
pub(super) fn read<T: DeserializeOwned>(
    source: &Source<'_>,
    options: &Options,
) -> Result<T, Misread<T>> {
    let mut error = match options.from_str::<T>(source.text) {
        Ok(value) => return Ok(value),
        Err(error) => error,
    };
    let mut mended = Mended {
        text: source.text.to_owned(),
        added: Vec::new(),
        stand_ins: Vec::new(),
    };
    let mut faults: Vec<Diagnostic> = Vec::new();
    let guess = loop {
        faults.push(told(source, &mended, &error));
        if faults.len() >= MOST_FAULTS {
            break None;
        }
        let ways = mended.ways(&error);
        let next = ways.into_iter().find_map(|way| {
            let after = options.from_str::<T>(&way.text).err();
            match after {
                None => Some((way, None)),
                Some(next) => is_past(&mended, &error, &way, &next).then_some((way, Some(next))),
            }
        });
        match next {
            Some((way, Some(next))) => {
                mended = way;
                error = next;
            }
            Some((whole, None)) => break Guess::read(whole, options),
            None => break None,
        }
    };
    faults.sort_by_key(|f| (f.line, f.column));
    Err(Misread { faults, guess })
}

/// Whether mending got the reader on: the next fault is another one, not before this one.
fn is_past(before: &Mended, error: &SpannedError, after: &Mended, next: &SpannedError) -> bool {
    let was = before.original(before.offset(error.span.start));
    let is = after.original(after.offset(next.span.start));
    is > was || (is == was && next.code != error.code && is_field(&next.code))
}

fn is_field(code: &Error) -> bool {
    matches!(code, Error::MissingStructField { .. })
}

impl Mended {
    /// Byte offset of a place in this text.
    pub(super) fn offset(&self, at: Position) -> usize {
        offset(&self.text, at.line, at.col)
    }

    /// The offset in the text as it was written.
    pub(super) fn original(&self, offset: usize) -> usize {
        let before = self.added.iter().filter(|(at, _)| *at < offset);
        offset.saturating_sub(before.map(|(_, bytes)| bytes).sum())
    }

    /// The texts that may get the reader past this fault, the likeliest first.
    fn ways(&self, error: &SpannedError) -> Vec<Self> {
        let at = self.offset(error.span.start);
        match &error.code {
            Error::NoSuchStructField { .. } | Error::DuplicateStructField { .. } => {
                vec![self.without_field(at)]
            }
            Error::MissingStructField { field, .. } => {
                let stand_in = |value: &&str| self.with_field(at, field, value);
                STAND_INS.iter().map(stand_in).collect()
            }
            Error::NoSuchEnumVariant { expected, .. } => {
                let end = value_end(&self.text, at);
                let choice = |name: &&'static str| {
                    let with =
                        |value: &str| self.stood_in(at, end, ["", &format!("{name}({value})"), ""]);
                    let plain = self.stood_in(at, end, ["", name, ""]);
                    [vec![plain], STAND_INS.iter().map(|v| with(v)).collect()].concat()
                };
                expected.iter().flat_map(choice).collect()
            }
            Error::ExpectedComma
            | Error::ExpectedStructLikeEnd
            | Error::ExpectedArrayEnd
            | Error::ExpectedMapEnd
            | Error::Eof => Vec::new(),
            _ => {
                let end = value_end(&self.text, at);
                let stand_in = |value: &&str| self.stood_in(at, end, ["", value, ""]);
                STAND_INS.iter().map(stand_in).collect()
            }
        }
    }

    /// The text with a stretch replaced by what stands in for it: its value, and what comes before and after that.
    fn stood_in(&self, from: usize, to: usize, [before, value, after]: [&str; 3]) -> Self {
        let mut mended = self.replaced(from, to, &[before, value, after].concat());
        let begin = from + before.len();
        let end = begin + value.len();
        mended.stand_ins.push(StandIn {
            stretch: from..end + after.len(),
            value: begin..end,
        });
        mended
    }

    /// The text with a stretch replaced.
    fn replaced(&self, from: usize, to: usize, by: &str) -> Self {
        let (before, rest) = self.text.split_at(from);
        let (gone, after) = rest.split_at(to.saturating_sub(from).min(rest.len()));
        // Lines are kept, so that what comes later stays where it was.
        let kept: String = gone.chars().filter(|c| *c == '\n').collect();
        let text = format!("{before}{by}{kept}{after}");
        let mut added = self.added.clone();
        let grown = (by.len() + kept.len()).saturating_sub(gone.len());
        if grown > 0 {
            added.push((from, grown));
        }
        let shrunk = gone.len().saturating_sub(by.len() + kept.len());
        let padded = if shrunk > 0 {
            let at = from + by.len();
            let (head, tail) = text.split_at(at);
            format!("{head}{}{tail}", " ".repeat(shrunk))
        } else {
            text
        };
        // What is put into a stand-in is a part of it.
        let mut stand_ins = self.stand_ins.clone();
        for outer in stand_ins.iter_mut().filter(|s| from < s.value.end) {
            outer.value.end += grown;
            outer.stretch.end += grown;
        }
        Self {
            text: padded,
            added,
            stand_ins,
        }
    }

    /// The text with the field whose name begins at `at` blanked, and its comma.
    fn without_field(&self, at: usize) -> Self {
        let colon = self.text.get(at..).and_then(|t| t.find(':'));
        let value = at + colon.map_or(0, |c| c + 1);
        let mut end = value_end(&self.text, value);
        if self.text.get(end..).is_some_and(|t| t.starts_with(',')) {
            end += 1;
        }
        self.replaced(at, end, "")
    }

    /// The text with a field put in before the bracket at `at`.
    fn with_field(&self, at: usize, field: &str, value: &str) -> Self {
        let before = self.text.get(..at).unwrap_or_default();
        let last = before.trim_end().chars().last();
        let comma = if matches!(last, Some(',' | '(') | None) {
            ""
        } else {
            ", "
        };
        self.stood_in(at, at, [&format!("{comma}{field}: "), value, ", "])
    }
}

/// The fault in words, at its place in the file as it was written.
fn told(source: &Source<'_>, mended: &Mended, error: &SpannedError) -> Diagnostic {
    let from = mended.original(mended.offset(error.span.start));
    let text = source.text.get(from..).unwrap_or_default();
    // A value that is none is told by the reader where the space before it begins.
    let from = from + text.len() - text.trim_start_matches(' ').len();
    let text = text.trim_start_matches(' ');
    let word = |c: char| c.is_alphanumeric() || "_-.\"'".contains(c);
    let word: String = text.chars().take_while(|c| word(*c)).collect();
    let named =
        |id: &str, name: &str| Message::new(id).with("name", Arg::Verbatim(name.to_owned()));
    let (message, hint) = match &error.code {
        Error::NoSuchStructField {
            expected, found, ..
        } => (
            named("error-unknown-field", found),
            nearest(found, expected),
        ),
        Error::NoSuchEnumVariant {
            expected, found, ..
        } => (
            named("error-unknown-choice", found),
            nearest(found, expected),
        ),
        Error::DuplicateStructField { field, .. } => (named("error-double-field", field), None),
        Error::MissingStructField { field, .. } => (named("error-missing-field", field), None),
        Error::ExpectedFloat | Error::ExpectedInteger | Error::InvalidIntegerDigit { .. } => {
            (Message::new("error-expected-number"), None)
        }
        Error::IntegerOutOfBounds => (Message::new("error-number-bounds"), None),
        Error::ExpectedString => (Message::new("error-expected-text"), None),
        Error::ExpectedBoolean => (Message::new("error-expected-true-false"), None),
        Error::ExpectedArray => (Message::new("error-expected-list"), None),
        other => {
            let detail = Arg::Verbatim(other.to_string());
            (Message::new("error-syntax").with("detail", detail), None)
        }
    };
    Diagnostic {
        hint,
        ..source.at_offset(from, &word, message)
    }
}
