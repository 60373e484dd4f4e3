//! What is wrong in a file: where, what, and what to do.

use serde::de::DeserializeOwned;

use crate::words::{Arg, Message};

use super::mend;
use super::mend::Misread;

/// A fault of a file.
#[derive(Debug, Clone, PartialEq)]
pub struct Diagnostic {
    /// The file's name, as it was given.
    pub file: String,
    /// Line, from 1; 0 if the fault is the file's as a whole.
    pub line: usize,
    /// Column in characters, from 1.
    pub column: usize,
    /// The offending text.
    pub text: String,
    /// The line it stands in, whole; empty if the fault is the file's as a whole.
    pub shown: String,
    /// What is wrong.
    pub message: Message,
    /// What to do: the nearest known name, or what was expected.
    pub hint: Option<Message>,
}

/// A file's name and text, for finding where a fault stands.
#[derive(Debug, Clone, Copy)]
pub struct Source<'a> {
    /// Name as given.
    pub file: &'a str,
    /// Text.
    pub text: &'a str,
}

impl Source<'_> {
    /// A fault of the file as a whole.
    pub fn whole(&self, message: Message) -> Diagnostic {
        Diagnostic {
            file: self.file.to_owned(),
            line: 0,
            column: 0,
            text: String::new(),
            shown: String::new(),
            message,
            hint: None,
        }
    }

    /// A fault at the place found by looking for one text after the other.
    /// The last one is the offending text.
    pub fn at(&self, trail: &[&str], message: Message) -> Diagnostic {
        let mut from = 0;
        for step in trail {
            let rest = self.text.get(from..).unwrap_or_default();
            match rest.find(step) {
                Some(offset) => from += offset,
                None => break,
            }
            if Some(step) != trail.last() {
                from += step.len();
            }
        }
        let (line, column) = self.line_column(from);
        let text = trail.last().copied().unwrap_or_default().to_owned();
        Diagnostic {
            file: self.file.to_owned(),
            line,
            column,
            text,
            shown: self.line(line),
            message,
            hint: None,
        }
    }

    /// A fault at a line and column.
    pub fn at_line(&self, line: usize, column: usize, text: &str, message: Message) -> Diagnostic {
        Diagnostic {
            file: self.file.to_owned(),
            line,
            column,
            text: text.to_owned(),
            shown: self.line(line),
            message,
            hint: None,
        }
    }

    /// Reads a file of one of our formats and checks its version.
    ///
    /// # Errors
    /// The faults of form, or that the file is of another version.
    pub(super) fn parse<T: DeserializeOwned>(
        &self,
        known: u32,
        version: impl Fn(&T) -> u32,
    ) -> Result<T, Misread<T>> {
        // What may be left out is written plainly where it is given.
        let options = ron::Options::default()
            .with_default_extension(ron::extensions::Extensions::IMPLICIT_SOME);
        let file: T = mend::read(self, &options).map_err(|misread| Misread {
            guess: misread
                .guess
                .filter(|guess| guess.values.iter().any(|file| version(file) == known)),
            ..misread
        })?;
        let found = version(&file);
        if found == known {
            return Ok(file);
        }
        let message = Message::new("error-version")
            .with("found", Arg::Count(i64::from(found)))
            .with("known", Arg::Count(i64::from(known)));
        Err(Misread {
            faults: vec![self.at(&["version", ":"], message)],
            guess: None,
        })
    }

    /// Reads data that is part of the program and so needs no version.
    ///
    /// # Errors
    /// The faults of form.
    pub(crate) fn data<T: DeserializeOwned>(&self) -> Result<T, Vec<Diagnostic>> {
        let options = ron::Options::default()
            .with_default_extension(ron::extensions::Extensions::IMPLICIT_SOME);
        mend::read(self, &options).map_err(|misread| misread.faults)
    }

    fn line_column(&self, offset: usize) -> (usize, usize) {
        let before = self.text.get(..offset).unwrap_or_default();
        let line = before.matches('\n').count() + 1;
        let column = before
            .rsplit('\n')
            .next()
            .unwrap_or_default()
            .chars()
            .count()
            + 1;
        (line, column)
    }

    /// A fault at a byte offset.
    pub(super) fn at_offset(&self, offset: usize, text: &str, message: Message) -> Diagnostic {
        let (line, column) = self.line_column(offset);
        self.at_line(line, column, text, message)
    }

    /// A line of the text, from 1.
    fn line(&self, line: usize) -> String {
        let found = line.checked_sub(1).and_then(|n| self.text.lines().nth(n));
        found.unwrap_or_default().to_owned()
    }
}

impl Diagnostic {
    /// Where it stands, as `file:line:column`, which editors and people both find.
    pub fn place(&self) -> String {
        if self.line == 0 {
            self.file.clone()
        } else {
            format!("{}:{}:{}", self.file, self.line, self.column)
        }
    }

    /// Its line in three: what comes before the offending text, that text, and what comes after; none for a fault without a place.
    pub fn marked(&self) -> Option<[&str; 3]> {
        let before = self.column.checked_sub(1)?;
        if self.line == 0 || self.shown.trim().is_empty() {
            return None;
        }
        let width = self.text.lines().next().map_or(1, |t| t.chars().count());
        let (start, rest) = self.shown.split_at(nth(&self.shown, before));
        let (text, end) = rest.split_at(nth(rest, width.max(1)));
        Some([start, text, end])
    }

    /// This fault with the nearest of the known names, or all of them if none is near.
    #[must_use]
    pub fn with_nearest<'a>(mut self, known: impl IntoIterator<Item = &'a str>) -> Self {
        let known: Vec<&str> = known.into_iter().collect();
        self.hint = nearest(&self.text, &known);
        self
    }
}

/// Byte offset of a line and column of a text.
pub(super) fn offset(text: &str, line: usize, column: usize) -> usize {
    let lines = text.split_inclusive('\n').take(line.saturating_sub(1));
    let line_start: usize = lines.map(str::len).sum();
    let rest = text.get(line_start..).unwrap_or_default();
    line_start + nth(rest, column.saturating_sub(1))
}

/// Where the character of this number begins, in bytes; the end if there are fewer.
fn nth(text: &str, number: usize) -> usize {
    let found = text.char_indices().nth(number);
    found.map_or(text.len(), |(at, _)| at)
}

/// The hint that names the nearest known name, or lists the known ones.
pub(super) fn nearest(wrong: &str, known: &[&str]) -> Option<Message> {
    const NEAR: f64 = 0.7;
    const MOST: usize = 24;
    let wrong = wrong.trim_matches('"');
    let best = known
        .iter()
        .map(|k| (strsim::jaro_winkler(wrong, k), *k))
        .max_by(|a, b| a.0.total_cmp(&b.0));
    match best {
        Some((near, name)) if near >= NEAR => {
            Some(Message::new("error-hint-nearest").with("name", Arg::Verbatim(name.to_owned())))
        }
        Some(_) => {
            let list = known
                .iter()
                .take(MOST)
                .copied()
                .collect::<Vec<_>>()
                .join(", ");
            Some(Message::new("error-hint-known").with("names", Arg::Verbatim(list)))
        }
        None => None,
    }
}
