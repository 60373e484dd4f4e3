//! Faults of files as lines: where, what, and what to do.
//!
//! The place comes first and in the form `file:line:column`, which editors and people both find.

use serde_json::Value;
use serde_json::json;

use crate::file::Diagnostic;
use crate::words::{Arg, Message, Words};

use super::output::Output;

/// Prints every fault.
pub(super) fn print(faults: &[Diagnostic], output: &mut Output<'_>) {
    for fault in faults {
        let what = output.words.say(&fault.message);
        output.error(&format!("{}: {what}", place(fault)));
        if !fault.text.is_empty() {
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

/// Prints every fault, and that nothing was done because of them.
pub(super) fn print_and_stop(faults: &[Diagnostic], output: &mut Output<'_>) -> u8 {
    print(faults, output);
    let count = Arg::Count(i64::try_from(faults.len()).unwrap_or(i64::MAX));
    output.say_error(&Message::new("terminal-not-done").with("count", count));
    super::BAD_INPUT
}

/// A fault as JSON: `file`, `line`, `column`, `text`, `message`, `hint`.
pub(super) fn json(fault: &Diagnostic, words: &Words) -> Value {
    json!({
        "file": fault.file,
        "line": fault.line,
        "column": fault.column,
        "text": fault.text,
        "message": words.say(&fault.message),
        "hint": fault.hint.as_ref().map(|hint| words.say(hint)),
    })
}

fn place(fault: &Diagnostic) -> String {
    if fault.line == 0 {
        fault.file.clone()
    } else {
        format!("{}:{}:{}", fault.file, fault.line, fault.column)
    }
}
