//! Action files and run files.
//!
//! An action file is what a person writes: one action a line, in the grammar of `drill`.
//! A run file is what is stored of a drill: a head with version, scenario, digest and seed, then the same lines, each with its instant, then an end.
//!
//! ```text
//! outage-drill run 1
//! scenario there-and-back
//! digest 6f0c…
//! seed 1
//! practice coached
//! learner Ana
//! day 2026-11-26
//! @0:48.000 set generator-place yard
//! happened I turned the main off late.
//! seal 03ab…
//! end 41:07.250
//! ```
//!
//! What stands beside the run is in `run_beside`: `practice`, who sat at it and when, and what the learner said.
//! The seal is in `seal`; a broken one is told where the run is marked, and keeps nothing from it.
//! The end line is how a file that was cut short is told from a whole one.

use std::sync::Arc;

use crate::drill::{
    Expected, Line, NotAnAction, Run, Timed, parse_clock, parse_line, write_action,
};
use crate::scenario::Scenario;
use crate::scenario::variation;
use crate::words::{Arg, Message};

use super::diagnostic::{Diagnostic, Source, nearest};
use super::library::Library;
use super::run_beside;
use super::seal;

/// The version of run files that this program writes and reads.
pub const RUN_VERSION: u32 = 1;

const MAGIC: &str = "outage-drill run ";

/// Reads an action file; every line that isn't understood is reported.
///
/// # Errors
/// The faults, with line, column and what would be understood.
pub fn read_actions(source: Source<'_>, scenario: &Scenario) -> Result<Vec<Line>, Vec<Diagnostic>> {
    let points = scenario.site.point_names();
    let mut lines = Vec::new();
    let mut faults = Vec::new();
    for (index, text) in source.text.lines().enumerate() {
        match parse_line(scenario, &points, text) {
            Ok(Some(line)) => lines.push(line),
            Ok(None) => {}
            Err(wrong) => faults.push(not_an_action(&source, index + 1, text, &wrong)),
        }
    }
    if faults.is_empty() {
        Ok(lines)
    } else {
        Err(faults)
    }
}

/// The text of a run file.
pub fn write_run(run: &Run, scenario: &Scenario) -> String {
    let mut lines = vec![
        format!("{MAGIC}{RUN_VERSION}"),
        format!("scenario {}", run.scenario),
        format!("digest {}", run.digest),
        format!("seed {}", run.seed),
    ];
    lines.extend(run_beside::head(&run.beside));
    for timed in &run.actions {
        let action = write_action(&scenario.site, &timed.action);
        lines.push(format!("@{} {action}", timed.at));
    }
    lines.extend(run_beside::own_words(&run.beside));
    let end = format!("end {}", run.ended_at);
    let sealed = lines.iter().chain([&end]).map(String::as_str);
    let seal = seal::of_lines(sealed);
    lines.extend([seal, end, String::new()]);
    lines.join("\n")
}

/// Reads a run file against the scenarios there are.
///
/// # Errors
/// When the file is of another version, was cut short, belongs to a scenario that isn't there or has changed, or has a line that isn't understood.
pub fn read_run(source: Source<'_>, library: &Library) -> Result<Run, Vec<Diagnostic>> {
    let mut lines = source.text.lines().enumerate();
    let mut head = |key: &str| -> Result<String, Vec<Diagnostic>> {
        let (index, line) = lines
            .next()
            .ok_or_else(|| vec![source.whole(Message::new("error-run-cut"))])?;
        let value = line.strip_prefix(key);
        let wrong = || vec![source.at_line(index + 1, 1, line, Message::new("error-run-head"))];
        value.map(|v| v.trim().to_owned()).ok_or_else(wrong)
    };
    let version = head(MAGIC)?;
    if version != RUN_VERSION.to_string() {
        let message = Message::new("error-run-version")
            .with("found", Arg::Verbatim(version.clone()))
            .with("known", Arg::Count(i64::from(RUN_VERSION)));
        return Err(vec![source.at_line(1, MAGIC.len() + 1, &version, message)]);
    }
    let name = head("scenario ")?;
    let digest = head("digest ")?;
    let seed_text = head("seed ")?;
    let known = library.names();
    let scenario = library.scenario(&name).ok_or_else(|| {
        let message = Message::new("error-unknown-name")
            .with("name", Arg::Verbatim(name.clone()))
            .said("kind", Message::new("error-kind-drill"));
        vec![Diagnostic {
            hint: nearest(&name, &known),
            ..source.at_line(2, 10, &name, message)
        }]
    })?;
    if digest != scenario.digest {
        let message = Message::new("error-run-changed").with("name", Arg::Verbatim(name));
        return Err(vec![source.at_line(3, 8, &digest, message)]);
    }
    let Ok(seed) = seed_text.parse() else {
        let message = Message::new("error-run-seed");
        return Err(vec![source.at_line(4, 6, &seed_text, message)]);
    };
    read_body(&source, lines, scenario, seed)
}

fn read_body<'a>(
    source: &Source<'_>,
    lines: impl Iterator<Item = (usize, &'a str)>,
    scenario: &Arc<Scenario>,
    seed: u64,
) -> Result<Run, Vec<Diagnostic>> {
    let mut run = Run::new(&scenario.name, &scenario.digest, seed);
    let variant = variation::variant(scenario, seed);
    let points = variant.site.point_names();
    let mut ended = false;
    let mut faults = Vec::new();
    for (index, text) in lines {
        let beside = if ended || seal::is_seal(text) {
            Ok(!ended)
        } else {
            run_beside::take(&mut run.beside, text)
        };
        match beside {
            Ok(false) => {}
            Ok(true) => continue,
            Err(wrong) => {
                faults.push(source.at_line(index + 1, 1, text, wrong));
                continue;
            }
        }
        let end = text
            .strip_prefix("end ")
            .and_then(|t| parse_clock(t.trim()));
        match end {
            Some(at) => {
                run.ended_at = at;
                ended = true;
            }
            None => match parse_line(&variant, &points, text) {
                Ok(Some(Line {
                    at: Some(at),
                    action,
                })) if !ended => run.actions.push(Timed { at, action }),
                Ok(None) => {}
                Ok(Some(_)) => {
                    faults.push(source.at_line(index + 1, 1, text, Message::new("error-run-line")));
                }
                Err(wrong) => faults.push(not_an_action(source, index + 1, text, &wrong)),
            },
        }
    }
    let backwards = run
        .actions
        .windows(2)
        .any(|w| matches!(w, [a, b] if b.at < a.at));
    let ends_early = ended && run.actions.last().is_some_and(|t| t.at > run.ended_at);
    if backwards || ends_early {
        faults.push(source.whole(Message::new("error-run-backwards")));
    }
    // The last line's own end tells that its clock is whole.
    if !ended || !source.text.ends_with('\n') {
        faults.push(source.whole(Message::new("error-run-cut")));
    }
    if faults.is_empty() {
        Ok(run)
    } else {
        Err(faults)
    }
}

fn not_an_action(source: &Source<'_>, line: usize, text: &str, wrong: &NotAnAction) -> Diagnostic {
    let column = text.find(&wrong.word).map_or(1, |offset| {
        text.get(..offset).unwrap_or_default().chars().count() + 1
    });
    let (message, hint) = not_understood(wrong);
    Diagnostic {
        hint,
        ..source.at_line(line, column, &wrong.word, message)
    }
}

/// What to say of a line that is not an action, and the hint that goes with it.
pub fn not_understood(wrong: &NotAnAction) -> (Message, Option<Message>) {
    let kind = match wrong.expected {
        Expected::Verb => "verb",
        Expected::Control => "control",
        Expected::Position => "position",
        Expected::Sight => "sight",
        Expected::Point => "point",
        Expected::Callee => "callee",
        Expected::Listener => "listener",
        Expected::Question => "question",
        Expected::Answer => "answer",
        Expected::Turn => "turn",
        Expected::Time => "time",
        Expected::End => "end",
    };
    let kind = Message::new(format!("error-kind-{kind}"));
    let message = if wrong.word.is_empty() {
        Message::new("error-missing-word")
    } else {
        Message::new("error-unknown-name").with("name", Arg::Verbatim(wrong.word.clone()))
    };
    let known: Vec<&str> = wrong.known.iter().map(String::as_str).collect();
    (message.said("kind", kind), nearest(&wrong.word, &known))
}
