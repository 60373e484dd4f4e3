//! Faults of files as lines: where, what, and what to do.

use serde_json::Value;
use serde_json::json;

use crate::file::Diagnostic;
use crate::words::{Arg, Message, Words};

use super::output::Output;

/// Prints every fault.
pub(super) fn print(faults: &[Diagnostic], output: &mut Output<'_>) {
    for fault in faults {
        output.error(&line(fault, &output.words));
        if let Some(lines) = underlined(fault) {
            for line in lines {
                output.error(&line);
            }
        } else if !fault.text.is_empty() {
            let text = Arg::Verbatim(fault.text.clone());
            let found = output
                .words
                .say(&Message::new("terminal-fault-found").with("text", text));
            output.error(&format!("  {found}"));
        }
        if let Some(hint) = &fault.hint {
            let hint = output.words.say(hint);
            output.error(&format!("  {hint}"));
        }
    }
}

/// A fault as one line: where and what.
pub(super) fn line(fault: &Diagnostic, words: &Words) -> String {
    format!("{}: {}", fault.place(), words.say(&fault.message))
}

/// Prints every fault, and that nothing was done because of them.
pub(super) fn print_and_stop(faults: &[Diagnostic], output: &mut Output<'_>) -> u8 {
    print(faults, output);
    let count = Arg::Count(i64::try_from(faults.len()).unwrap_or(i64::MAX));
    output.say_error(&Message::new("terminal-not-done").with("count", count));
    super::BAD_INPUT
}

/// A fault as JSON: `file`, `line`, `column`, `text`, `shown` (its line), `message`, `hint`.
pub(super) fn json(fault: &Diagnostic, words: &Words) -> Value {
    json!({
        "file": fault.file,
        "line": fault.line,
        "column": fault.column,
        "text": fault.text,
        "shown": fault.shown,
        "message": words.say(&fault.message),
        "hint": fault.hint.as_ref().map(|hint| words.say(hint)),
    })
}

/// The line with the fault, and below it the offending text underlined; none for a fault without a place.
fn underlined(fault: &Diagnostic) -> Option<[String; 2]> {
    let [before, text, _] = fault.marked()?;
    // Tabs stay tabs, so that the mark stands below what it marks.
    let lead: String = before
        .chars()
        .map(|c| if c == '\t' { '\t' } else { ' ' })
        .collect();
    let mark = "^".repeat(text.chars().count().max(1));
    Some([format!("  | {}", fault.shown), format!("  | {lead}{mark}")])
}
