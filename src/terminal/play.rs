//! A drill as text: typed line by line, or played from a file of actions.
//!
//! Besides the actions of the drill, a learner may type `help`, `status`, `at PLACE`, `log`, `rewind`, `predict`, `counts`, `skip`, `finish`, `another` and `quit`.
//! Typed by hand a drill holds for its predictions; played from a file it never stops.
//! Where the input ends, the drill is finished and marked, as at the end of a file of actions; a run that is left by `quit` is not marked and counts as not passed.
//! While a run is to be saved, its file is written after every line, so that a machine that stops loses nothing already done.

use std::fs;
use std::io::BufRead;
use std::path::Path;

use crate::file::{Library, Source, write_run};
use crate::session::{Command, Notice, Practice, Rewind, Session, parse_clock, play};
use crate::words::{Arg, Message};

use super::arguments::Play;
use super::output::Output;
use super::{BAD_INPUT, DONE, NOT_PASSED, faults, predict, report, variations};

/// The grammar of an action line.
const GRAMMAR: [&str; 9] = [
    "terminal-help",
    "terminal-help-set",
    "terminal-help-look",
    "terminal-help-test",
    "terminal-help-call",
    "terminal-help-say",
    "terminal-help-refuel",
    "terminal-help-wait",
    "terminal-help-clock",
];
/// What can be typed besides.
const OWN: [&str; 10] = [
    "terminal-help-own",
    "terminal-help-at",
    "terminal-help-status",
    "terminal-help-log",
    "terminal-help-rewind",
    "terminal-help-predict",
    "terminal-help-counts",
    "terminal-help-finish",
    "terminal-help-another",
    "terminal-help-quit",
];

/// Plays a drill; the status to end with.
pub(super) fn run(
    ask: &Play,
    library: Library,
    typed: bool,
    input: &mut dyn BufRead,
    output: &mut Output<'_>,
) -> u8 {
    match &ask.actions {
        Some(file) => from_file(ask, file, &library, output),
        None => by_hand(ask, library, typed, input, output),
    }
}

fn from_file(ask: &Play, file: &Path, library: &Library, output: &mut Output<'_>) -> u8 {
    let text = match super::text_of(file) {
        Ok(text) => text,
        Err(wrong) => return faults::print_and_stop(&[*wrong], output),
    };
    let name = file.display().to_string();
    let source = Source {
        file: &name,
        text: &text,
    };
    let seed = match seed(ask, library, output) {
        Ok(seed) => seed,
        Err(status) => return status,
    };
    match play(library, &ask.name, seed, output.words.tag(), source) {
        Ok(played) => {
            if let Some(view) = played.session.debrief() {
                for line in &view.log {
                    let line = report::log_line(&output.words, line);
                    output.line(&line);
                }
                output.blank();
            }
            end(&played.session, ask, output)
        }
        Err(wrong) => faults::print_and_stop(&wrong, output),
    }
}

/// Says that there is no such drill, and which there are.
pub(super) fn unknown_drill(name: &str, library: &Library, output: &mut Output<'_>) -> u8 {
    let missing = Message::new("session-no-drill").with("name", Arg::Verbatim(name.to_owned()));
    output.say_error(&missing);
    let names = Arg::Verbatim(library.names().join(", "));
    output.say_error(&Message::new("error-hint-known").with("names", names));
    BAD_INPUT
}

fn by_hand(
    ask: &Play,
    library: Library,
    typed: bool,
    input: &mut dyn BufRead,
    output: &mut Output<'_>,
) -> u8 {
    let seed = match seed(ask, &library, output) {
        Ok(seed) => seed,
        Err(status) => return status,
    };
    let practice = if ask.assessed {
        Practice::Assessed
    } else {
        Practice::Coached
    };
    let mut session = Session::new(library, output.words.tag()).asking();
    let open = Command::Open {
        drill: ask.name.clone(),
        practice,
        seed,
    };
    if let Some(Notice::Unknown(text)) = session.apply(open).first() {
        output.error(text);
        return BAD_INPUT;
    }
    // A folder that can't be written is found out before the work, not after it.
    if let Err(error) = save(&session, ask.save.as_deref()) {
        output.say_error(&error);
        return BAD_INPUT;
    }
    let opening = report::opening(&output.words, &session, practice);
    output.lines(&opening);
    predict::ask(&session, output);
    while session.verdict().is_none() {
        output.prompt(&session.log().clock);
        let line = next_line(input);
        if !typed {
            output.line(line.as_deref().unwrap_or_default());
        }
        match line.as_deref() {
            Some("another") => {
                session.apply(Command::Another);
                let opening = report::opening(&output.words, &session, practice);
                output.lines(&opening);
                predict::ask(&session, output);
            }
            Some("quit") => {
                output.say_id("terminal-left");
                return NOT_PASSED;
            }
            line => step(&mut session, line.unwrap_or("finish"), output),
        }
        // The last line's failure is told with the verdict.
        if session.verdict().is_none()
            && let Err(error) = save(&session, ask.save.as_deref())
        {
            output.say_error(&error);
        }
    }
    output.blank();
    end(&session, ask, output)
}

/// The seed that was asked for, outright or by a variant's name; otherwise the status to end with.
fn seed(ask: &Play, library: &Library, output: &mut Output<'_>) -> Result<u64, u8> {
    if library.scenario(&ask.name).is_none() {
        return Err(unknown_drill(&ask.name, library, output));
    }
    let Some(variant) = &ask.variation else {
        return Ok(ask.seed);
    };
    variations::seed_of(library, &ask.name, variant, output).map_err(|wrong| {
        output.say_error(&wrong);
        BAD_INPUT
    })
}

/// The next line without white space around it; `None` at the end of the input.
fn next_line(input: &mut dyn BufRead) -> Option<String> {
    let mut bytes = Vec::new();
    match input.read_until(b'\n', &mut bytes) {
        Ok(1..) => Some(String::from_utf8_lossy(&bytes).trim().to_owned()),
        Ok(0) | Err(_) => None,
    }
}

/// Does what one line asks, and tells what followed.
fn step(session: &mut Session, line: &str, output: &mut Output<'_>) {
    let words: Vec<&str> = line.split_whitespace().collect();
    let command = match words.as_slice() {
        ["help"] => {
            let lines = help(output);
            return output.lines(&lines);
        }
        ["status"] => {
            let lines = report::street(&output.words, &session.street().unwrap_or_default());
            return output.lines(&lines);
        }
        ["log"] => {
            for line in session.log().lines {
                let line = report::log_line(&output.words, &line);
                output.line(&line);
            }
            return;
        }
        ["at", place] => return at(session, place, output),
        ["at"] => return at(session, "", output),
        ["rewind"] => Command::Rewind(Rewind::Mistake),
        ["rewind", clock] => match parse_clock(clock) {
            Some(at) => Command::Rewind(Rewind::To(at)),
            None => Command::Do(line.to_owned()),
        },
        ["predict" | "counts" | "skip", ..] => return predict::answer(session, &words, output),
        ["finish"] => Command::Finish,
        ["wait"] => Command::WaitForEvent,
        _ => Command::Do(line.to_owned()),
    };
    let notices = carry_out(session, command, output);
    // What a picture shows at a glance is told when the learner looks there.
    let looked = notices.iter().any(|n| matches!(n, Notice::Learnt(_)));
    if let (["look", sight], true, false) = (words.as_slice(), looked, session.verdict().is_some())
        && let Some(view) = session.close(sight)
    {
        output.lines(&report::seen(&view));
    }
}

/// Carries out a command, tells what followed, and asks what is asked now.
pub(super) fn carry_out(
    session: &mut Session,
    command: Command,
    output: &mut Output<'_>,
) -> Vec<Notice> {
    let told = session.log().lines.len();
    let notices = session.apply(command);
    tell(session, told, &notices, output);
    predict::ask(session, output);
    notices
}

/// How an action line is written.
pub(super) fn grammar(output: &Output<'_>) -> Vec<String> {
    listed(output, &GRAMMAR)
}

fn help(output: &Output<'_>) -> Vec<String> {
    [grammar(output), listed(output, &OWN)].concat()
}

/// Messages as lines, all but the first set in.
fn listed(output: &Output<'_>, ids: &[&str]) -> Vec<String> {
    let lines = ids.iter().zip(0..);
    lines
        .map(|(id, n)| {
            let indent = if n == 0 { "" } else { "  " };
            format!("{indent}{}", output.words.say_id(id))
        })
        .collect()
}

fn at(session: &Session, place: &str, output: &mut Output<'_>) {
    if let Some(view) = session.close(place) {
        let lines = report::place(&output.words, &view);
        output.lines(&lines);
    } else {
        output.say_id("terminal-places");
        for place in session.street().unwrap_or_default().places {
            output.line(&format!("  at {}: {}", place.id, place.sentence));
        }
    }
}

/// Tells what followed a command: new lines of the log with their clock, and consequences from their first stage on.
///
/// Once the drill is over the log tells more than was seen in it, so the notices are told instead; the debrief follows.
fn tell(session: &mut Session, seen: usize, notices: &[Notice], output: &mut Output<'_>) {
    let over = session.verdict().is_some();
    for notice in notices {
        match notice {
            Notice::Unknown(text) => output.error(text),
            Notice::Done(text)
            | Notice::Refused(text)
            | Notice::Happened(text)
            | Notice::Learnt(text)
                if over =>
            {
                output.line(text);
            }
            Notice::Done(_)
            | Notice::Refused(_)
            | Notice::Happened(_)
            | Notice::Learnt(_)
            | Notice::Consequence
            | Notice::Over => {}
        }
    }
    if over {
        return;
    }
    for line in session.log().lines.iter().skip(seen) {
        let line = report::log_line(&output.words, line);
        output.line(&line);
    }
    while let Some(view) = session.consequence() {
        let lines = report::consequence(&output.words, &view);
        output.lines(&lines);
        session.apply(Command::Understood);
        if session.consequence().is_none() {
            output.blank();
        }
    }
}

/// Prints the debrief and saves the run; the status to end with.
fn end(session: &Session, ask: &Play, output: &mut Output<'_>) -> u8 {
    let view = session.debrief().unwrap_or_default();
    let lines = report::debrief(&output.words, &view);
    output.lines(&lines);
    if let Err(error) = save(session, ask.save.as_deref()) {
        output.say_error(&error);
        output.say_error(&Message::new("terminal-saved-not"));
        return BAD_INPUT;
    }
    if let Some(file) = &ask.save {
        let file = Arg::Verbatim(file.display().to_string());
        output.blank();
        output.say(&Message::new("terminal-saved").with("file", file));
    }
    if view.passed { DONE } else { NOT_PASSED }
}

/// Writes the run as far as it has come, if that was asked for; otherwise says what went wrong.
fn save(session: &Session, file: Option<&Path>) -> Result<(), Message> {
    let (Some(file), Some(drill)) = (file, session.drill()) else {
        return Ok(());
    };
    // Beside it first, then in its place: a machine that stops leaves the old file or the new one, never half of one.
    let mut beside = file.as_os_str().to_owned();
    beside.push(".part");
    let text = write_run(drill.run(), drill.scenario());
    let written = fs::write(&beside, text).and_then(|()| fs::rename(&beside, file));
    written.map_err(|error| super::unwritable(file, &error))
}
