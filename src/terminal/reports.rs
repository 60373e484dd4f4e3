//! Reports that need no drill in progress: the shelf, saved runs, scenario files, readings, languages.
//!
//! Each `--json` document has a `version`, which changes when its shape does:
//!
//! - `mark`: `runs`, each with `file`, `passed`, `criteria` (`title`, `met`, `critical`) and `findings` (`rule`, `clock_ms`, `critical`, `what`, `path`, `why`, `instead`, `source`; a stage of the path has `at`, `text`, `value`).
//! - `check`: `drills` (names), `faults` (`file`, `line`, `column`, `text`, `message`, `hint`) and `proved` (a list of properties, empty in this version).
//! - `read`: `site`, `converged`, `generator_watts`, `points` (`id`, `volts`, `volts_across`, `volts_to_earth`, `utility`, `generator`) and `things` (`id`, `amps`).

use std::path::Path;
use std::path::PathBuf;

use serde_json::Value;
use serde_json::json;

use crate::file::{Diagnostic, Library, Source};
use crate::session::view::{DebriefView, StageView};
use crate::session::{Command, Notice, Practice, Session, SiteRead, read, replay};
use crate::words::audit;
use crate::words::{Arg, Message};

use super::output::Output;
use super::{BAD_INPUT, DONE, NOT_PASSED, faults, play, report};

/// The version of every `--json` document.
const JSON_VERSION: u32 = 1;

/// The drills on the shelf.
pub(super) fn list(library: Library, output: &mut Output<'_>) -> u8 {
    let session = Session::new(library, output.words.tag());
    let lines = report::shelf(&output.words, &session.shelf());
    output.lines(&lines);
    DONE
}

/// What can be operated in a drill, and how it is written.
pub(super) fn actions(name: &str, library: Library, output: &mut Output<'_>) -> u8 {
    let mut session = Session::new(library, output.words.tag());
    let opened = session.apply(Command::Open {
        drill: name.to_owned(),
        practice: Practice::Coached,
        seed: 1,
    });
    if let Some(Notice::Unknown(text)) = opened.first() {
        output.error(text);
        let names = Arg::Verbatim(session.library().names().join(", "));
        output.say_error(&Message::new("error-hint-known").with("names", names));
        return BAD_INPUT;
    }
    for id in [
        "terminal-grammar",
        "terminal-grammar-comment",
        "terminal-grammar-time",
        "terminal-help-wait",
    ] {
        output.say_id(id);
    }
    play::places(&session, output);
    DONE
}

/// Recomputes saved runs and prints their verdicts.
pub(super) fn mark(
    files: &[PathBuf],
    as_json: bool,
    library: &Library,
    output: &mut Output<'_>,
) -> u8 {
    let mut status = DONE;
    let mut runs = Vec::new();
    for path in files {
        let Some(text) = super::text_of(path, output) else {
            return BAD_INPUT;
        };
        let file = path.display().to_string();
        let source = Source {
            file: &file,
            text: &text,
        };
        let played = match replay(library, output.words.tag(), source) {
            Ok(played) => played,
            Err(found) => return faults::print_and_stop(&found, output),
        };
        let Some(view) = played.session.debrief() else {
            continue;
        };
        if !view.passed {
            status = NOT_PASSED;
        }
        if as_json {
            runs.push(verdict_json(&file, &view));
        } else {
            output.line(&file);
            let lines = report::debrief(&output.words, &view);
            output.lines(&lines);
            output.blank();
        }
    }
    if as_json {
        print_json(&json!({ "version": JSON_VERSION, "runs": runs }), output);
    }
    status
}

/// Reads scenario files and reports every fault.
pub(super) fn check(paths: &[PathBuf], as_json: bool, output: &mut Output<'_>) -> u8 {
    let (names, found) = read_all(paths);
    let status = if found.is_empty() { DONE } else { BAD_INPUT };
    if as_json {
        let found: Vec<Value> = found
            .iter()
            .map(|fault| faults::json(fault, output))
            .collect();
        let document = json!({
            "version": JSON_VERSION, "drills": names, "faults": found, "proved": [],
        });
        print_json(&document, output);
        return status;
    }
    for name in &names {
        let name = Arg::Verbatim(name.clone());
        output.say(&Message::new("terminal-check-sound").with("name", name));
    }
    output.say_id("terminal-check-proof");
    faults::print(&found, output);
    status
}

/// The names of the drills that could be read, and every fault; the shipped ones if no path is given.
fn read_all(paths: &[PathBuf]) -> (Vec<String>, Vec<Diagnostic>) {
    let libraries: Vec<(Library, Vec<Diagnostic>)> = if paths.is_empty() {
        vec![Library::shipped()]
    } else {
        paths
            .iter()
            .map(|path| Library::load(folder_of(path)))
            .collect()
    };
    let mut names = Vec::new();
    let mut found = Vec::new();
    for (library, mut faults) in libraries {
        names.extend(library.names().into_iter().map(str::to_owned));
        found.append(&mut faults);
    }
    (names, found)
}

/// The scenario folder of a path: itself, or of a file in its `sites` or `drills` the folder above them.
fn folder_of(path: &Path) -> &Path {
    let is_file = path.extension().is_some_and(|ending| ending == "ron");
    path.ancestors()
        .nth(if is_file { 2 } else { 0 })
        .unwrap_or(path)
}

/// The readings of a site.
pub(super) fn site(
    name: &str,
    sets: &[String],
    as_json: bool,
    library: &Library,
    output: &mut Output<'_>,
) -> u8 {
    let view = match read(library, name, sets, &output.words) {
        Ok(view) => view,
        Err(found) => return faults::print_and_stop(&found, output),
    };
    if as_json {
        print_json(&readings_json(&view), output);
    } else {
        output.say_id("read-points");
        for point in &view.points {
            output.line(&format!("  {} ({})", point.sentence, point.id));
        }
        output.say_id("read-things");
        for thing in view
            .things
            .iter()
            .filter(|thing| !thing.sentence.is_empty())
        {
            output.line(&format!("  {} ({})", thing.sentence, thing.id));
        }
        output.say_id("read-taken");
    }
    if !view.converged {
        output.say_error(&Message::new("read-not-converged"));
        return NOT_PASSED;
    }
    DONE
}

/// How far each language is translated; not passed if one of them is incomplete.
pub(super) fn languages(output: &mut Output<'_>) -> u8 {
    let mut status = DONE;
    for language in audit::coverage() {
        let count = |n: usize| Arg::Count(i64::try_from(n).unwrap_or(i64::MAX));
        output.say(
            &Message::new("terminal-language")
                .with("tag", Arg::Verbatim(language.tag.to_owned()))
                .with("name", Arg::Verbatim(language.name.to_owned()))
                .with("present", count(language.present))
                .with("wanted", count(language.wanted)),
        );
        for fault in &language.faults {
            output.error(&fault.to_string());
            status = NOT_PASSED;
        }
    }
    status
}

fn verdict_json(file: &str, view: &DebriefView) -> Value {
    let stage =
        |stage: &StageView| json!({ "at": stage.at, "text": stage.text, "value": stage.value });
    let criteria: Vec<Value> = view
        .criteria
        .iter()
        .map(|c| json!({ "title": c.title, "met": c.met, "critical": c.critical }))
        .collect();
    let findings: Vec<Value> = view
        .findings
        .iter()
        .map(|f| {
            json!({
                "rule": f.rule, "clock_ms": f.clock_ms, "critical": f.critical, "what": f.what,
                "path": f.path.iter().map(stage).collect::<Vec<Value>>(),
                "why": f.why, "instead": f.instead, "source": f.source,
            })
        })
        .collect();
    json!({ "file": file, "passed": view.passed, "criteria": criteria, "findings": findings })
}

fn readings_json(view: &SiteRead) -> Value {
    let points: Vec<Value> = view
        .points
        .iter()
        .map(|p| {
            json!({
                "id": p.id, "volts": p.volts, "volts_across": p.volts_across,
                "volts_to_earth": p.volts_to_earth, "utility": p.utility, "generator": p.generator,
            })
        })
        .collect();
    let things: Vec<Value> = view
        .things
        .iter()
        .map(|t| json!({ "id": t.id, "amps": t.amps }))
        .collect();
    json!({
        "version": JSON_VERSION, "site": view.site, "converged": view.converged,
        "generator_watts": view.generator_watts, "points": points, "things": things,
    })
}

fn print_json(value: &Value, output: &mut Output<'_>) {
    output.line(&format!("{value:#}"));
}
