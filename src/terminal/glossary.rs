//! Words of the trade, explained: all of them, one that is asked for, for a reader or as JSON.
//!
//! The `--json` document is an object with `version` and `terms`, each with its `name`, other `forms`, `meaning` and `source`.

use serde_json::Value;
use serde_json::json;

use crate::words::{Arg, Message, Term, Words};

use super::output::Output;
use super::{BAD_INPUT, DONE, JSON_VERSION, reports};

/// Prints the glossary, or the term that is asked for; the status to end with.
pub(super) fn run(term: &[String], as_json: bool, output: &mut Output<'_>) -> u8 {
    let asked = term.join(" ");
    let terms = if asked.is_empty() {
        output.words.glossary()
    } else {
        asked_for(&output.words, &asked)
    };
    if terms.is_empty() {
        for text in unknown(&output.words, &asked) {
            output.error(&text);
        }
        return BAD_INPUT;
    }
    if as_json {
        let terms: Vec<Value> = terms.iter().map(term_json).collect();
        reports::print_json(&json!({ "version": JSON_VERSION, "terms": terms }), output);
    } else {
        let lines: Vec<String> = terms.iter().map(|t| line(&output.words, t)).collect();
        output.lines(&lines);
    }
    DONE
}

/// What a term means, inside a drill; all their names where none is asked for.
pub(super) fn meaning(words: &Words, asked: &str) -> Vec<String> {
    if asked.is_empty() {
        return vec![words.say(&known(words))];
    }
    let terms = asked_for(words, asked);
    if terms.is_empty() {
        return unknown(words, asked);
    }
    terms.iter().map(|term| line(words, term)).collect()
}

/// The terms that have this form.
fn asked_for(words: &Words, asked: &str) -> Vec<Term> {
    let asked = asked.to_lowercase();
    let is_asked = |form: &str| form.to_lowercase() == asked;
    let mut terms = words.glossary();
    terms.retain(|term| {
        term.forms.iter().any(|form| is_asked(form)) || term.signs.iter().any(|s| is_asked(s))
    });
    terms
}

fn unknown(words: &Words, asked: &str) -> Vec<String> {
    let missing = Message::new("terminal-no-term").with("name", Arg::Verbatim(asked.to_owned()));
    vec![words.say(&missing), words.say(&known(words))]
}

fn known(words: &Words) -> Message {
    let names = words.glossary().into_iter();
    let names: Vec<String> = names.filter_map(|t| t.forms.into_iter().next()).collect();
    Message::new("terminal-terms").with("names", Arg::Verbatim(names.join(", ")))
}

fn line(words: &Words, term: &Term) -> String {
    let name = term.forms.first().cloned().unwrap_or_default();
    words.say(
        &Message::new("terminal-term")
            .with("name", Arg::Verbatim(name))
            .with("meaning", Arg::Verbatim(term.meaning.clone()))
            .with("source", Arg::Verbatim(term.source.clone())),
    )
}

fn term_json(term: &Term) -> Value {
    let mut forms = term.forms.iter();
    let name = forms.next();
    json!({
        "name": name, "forms": forms.collect::<Vec<&String>>(),
        "meaning": term.meaning, "source": term.source,
    })
}
