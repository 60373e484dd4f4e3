//! Faults of form in a word file: where, what stands there, and what was expected.
//!
//! The reader of Fluent leaves out what it can't read and goes on behind it, so that every fault is told in one pass.
//! Kinds of faults that an author of drills hardly meets are told in its own English words.

#![expect(
    clippy::wildcard_enum_match_arm,
    reason = "the reader knows many kinds of faults, and more may come; those not named are treated alike"
)]

use fluent_syntax::ast::Entry;
use fluent_syntax::parser;
use fluent_syntax::parser::{ErrorKind, ParserError};

use super::message::{Arg, Message};

/// A place in a word file that can't be read.
#[derive(Debug, Clone, PartialEq)]
pub struct Misread {
    /// Byte offset.
    pub at: usize,
    /// The offending text.
    pub text: String,
    /// What was expected.
    pub message: Message,
}

/// Every place of a text in Fluent syntax that can't be read.
pub fn misread(text: &str) -> Vec<Misread> {
    let errors = parser::parse(text).err().map(|(_, errors)| errors);
    let errors = errors.into_iter().flatten();
    errors.map(|error| told(text, &error)).collect()
}

/// The ids of the messages of a text in Fluent syntax that can be read.
pub fn ids(text: &str) -> Vec<String> {
    let resource = parser::parse(text).unwrap_or_else(|(resource, _)| resource);
    let id = |entry: &Entry<&str>| match entry {
        Entry::Message(message) => Some(message.id.name.to_owned()),
        _ => None,
    };
    resource.body.iter().filter_map(id).collect()
}

fn told(text: &str, error: &ParserError) -> Misread {
    let begin = error.slice.as_ref().map_or(0, |slice| slice.start);
    let until = |at: usize| text.get(..at).unwrap_or(text);
    let named = |id: &str, name: &'static str, value: &str| {
        Message::new(id).with(name, Arg::Verbatim(value.to_owned()))
    };
    if let ErrorKind::ExpectedMessageField { entry_id }
    | ErrorKind::ExpectedTermField { entry_id } = &error.kind
    {
        let rest = text.get(begin..).unwrap_or_default();
        return Misread {
            at: begin + rest.find(entry_id.as_str()).unwrap_or_default(),
            text: entry_id.clone(),
            message: named("error-words-value", "id", entry_id),
        };
    }
    let before = until(error.pos.start);
    let line = before.rsplit('\n').next().unwrap_or_default();
    let rest = text.get(before.len()..).unwrap_or_default();
    // What is missing at the end of a line is looked for up to the next one.
    let is_next_line = line.trim().is_empty() && before.len() - line.len() > begin;
    let ends = is_next_line || rest.trim().is_empty();
    let (at, word) = if ends {
        let before = before.trim_end();
        let word = before.split_whitespace().next_back().unwrap_or_default();
        (before.len() - word.len(), word)
    } else {
        let word = rest.split_whitespace().next().unwrap_or_default();
        (before.len(), word)
    };
    let message = match &error.kind {
        ErrorKind::ExpectedToken(token) if ends => {
            named("error-words-token-after", "token", &token.to_string())
        }
        ErrorKind::ExpectedToken(token) => named("error-words-token", "token", &token.to_string()),
        ErrorKind::ExpectedCharRange { .. } => Message::new("error-words-id"),
        ErrorKind::ExpectedInlineExpression => Message::new("error-words-inside"),
        ErrorKind::UnbalancedClosingBrace => Message::new("error-words-brace"),
        ErrorKind::UnterminatedStringLiteral => Message::new("error-words-quote"),
        ErrorKind::MissingDefaultVariant => Message::new("error-words-default"),
        other => named("error-syntax", "detail", &other.to_string()),
    };
    Misread {
        at,
        text: word.to_owned(),
        message,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The offending text of each fault, the text before it on its line, and the message.
    fn read(text: &str) -> Vec<(String, String, String)> {
        let told = |m: Misread| {
            assert!(text[m.at..].starts_with(&m.text), "{m:?}");
            let line = text[..m.at].rsplit('\n').next().unwrap();
            (m.text, line.to_owned(), m.message.id)
        };
        misread(text).into_iter().map(told).collect()
    }

    #[test]
    fn each_fault_is_at_the_text_that_offends_or_that_something_is_missing_after() {
        let cases = [
            ("a Cold\nb = B\n", "Cold", "a ", "error-words-token"),
            (
                "a = { $x\nb = B\n",
                "$x",
                "a = { ",
                "error-words-token-after",
            ),
            ("a = { $x", "$x", "a = { ", "error-words-token-after"),
            ("b = B\na =\n\nc = C\n", "a", "", "error-words-value"),
            ("a = x } y\n", "}", "a = x ", "error-words-brace"),
            ("a = { } y\n", "}", "a = { ", "error-words-inside"),
            ("a = { \"x }\n", "}", "a = { \"x ", "error-words-quote"),
            ("ñu = { $é\n", "ñu", "", "error-words-id"),
        ];
        for (text, offending, before, id) in cases {
            let told = read(text);
            let wanted = (offending.to_owned(), before.to_owned(), id.to_owned());
            assert_eq!(told, [wanted], "{text}");
        }
    }

    #[test]
    fn every_fault_is_told_and_what_can_be_read_is_kept() {
        let text = "a Cold\nb = B\nc = { $x\nd = D\n-e = E\n";
        assert_eq!(read(text).len(), 2);
        assert_eq!(ids(text), ["b", "d"]);
    }
}
