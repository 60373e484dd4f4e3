//! Where lines go: plain text, one fact a line, as a screen reader reads it.
//!
//! No color, no cursor movement, no boxes.
//! A reader who closes the pipe early is no fault: what can't be written is dropped.

use std::io::Write;

use crate::words::Message;
use crate::words::Words;

/// The two streams, and the language that is spoken on them.
pub(super) struct Output<'a> {
    /// What was asked for.
    out: &'a mut dyn Write,
    /// What went wrong.
    err: &'a mut dyn Write,
    /// The words.
    pub(super) words: Words,
}

impl<'a> Output<'a> {
    pub(super) fn new(out: &'a mut dyn Write, err: &'a mut dyn Write, words: Words) -> Self {
        Self { out, err, words }
    }

    /// A finished line.
    pub(super) fn line(&mut self, text: &str) {
        drop(writeln!(self.out, "{}", plain(text)));
    }

    /// Finished lines.
    pub(super) fn lines(&mut self, texts: &[String]) {
        for text in texts {
            self.line(text);
        }
    }

    /// An empty line between two parts.
    pub(super) fn blank(&mut self) {
        self.line("");
    }

    /// A message as a line.
    pub(super) fn say(&mut self, message: &Message) {
        let text = self.words.say(message);
        self.line(&text);
    }

    /// A message without arguments as a line.
    pub(super) fn say_id(&mut self, id: &str) {
        self.say(&Message::new(id));
    }

    /// The drill clock and a mark that a line is awaited, on the same line.
    pub(super) fn prompt(&mut self, clock: &str) {
        drop(write!(self.out, "{clock}> ").and_then(|()| self.out.flush()));
    }

    /// A line about something that went wrong.
    pub(super) fn error(&mut self, text: &str) {
        drop(writeln!(self.err, "{}", plain(text)));
    }

    /// A message about something that went wrong.
    pub(super) fn say_error(&mut self, message: &Message) {
        let text = self.words.say(message);
        self.error(&text);
    }
}

/// The text without the marks that isolate the other writing direction; some terminals show them as boxes.
pub(super) fn plain(text: &str) -> String {
    text.chars()
        .filter(|c| !('\u{2066}'..='\u{2069}').contains(c))
        .collect()
}
