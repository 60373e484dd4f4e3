//! The drill as text: line by line from the keyboard, or from a file of actions.
//!
//! While a run is to be saved, its file is written after every line, so that a machine that stops loses nothing already done.

use std::fs;
use std::io::BufRead;
use std::path::Path;

use crate::file::{Library, Source, write_run};
use crate::session::{Command, Notice, Practice, Session, play};
use crate::words::{Arg, Message};

use super::arguments::Play;
use super::output::Output;
use super::{BAD_INPUT, DONE, NOT_PASSED, faults, report};

/// Plays a drill as asked.
pub(super) fn run(
    ask: &Play,
    library: Library,
    typed: bool,
    input: &mut dyn BufRead,
    output: &mut Output<'_>,
) -> u8 {
    match &ask.actions {
        Some(actions) => from_file(ask, actions, &library, output),
        None => by_hand(ask, library, typed, input, output),
    }
}

fn from_file(ask: &Play, actions: &Path, library: &Library, output: &mut Output<'_>) -> u8 {
    let Some(text) = super::text_of(actions, output) else {
        return BAD_INPUT;
    };
    let file = actions.display().to_string();
    let source = Source {
        file: &file,
        text: &text,
    };
    match play(library, &ask.name, ask.seed, output.words.tag(), source) {
        Err(found) => faults::print_and_stop(&found, output),
        Ok(played) => {
            let log = played.session.log();
            let lines: Vec<String> = log
                .lines
                .iter()
                .map(|line| report::log_line(&output.words, line))
                .collect();
            output.lines(&lines);
            output.blank();
            end(ask, &played.session, output)
        }
    }
}

fn by_hand(
    ask: &Play,
    library: Library,
    typed: bool,
    input: &mut dyn BufRead,
    output: &mut Output<'_>,
) -> u8 {
    let mut session = Session::new(library, output.words.tag());
    let practice = if ask.assessed {
        Practice::Assessed
    } else {
        Practice::Coached
    };
    let drill = ask.name.clone();
    let seed = ask.seed;
    for notice in session.apply(Command::Open {
        drill,
        practice,
        seed,
    }) {
        if let Notice::Unknown(text) = notice {
            output.error(&text);
            let names = Arg::Verbatim(session.library().names().join(", "));
            output.say_error(&Message::new("error-hint-known").with("names", names));
            return BAD_INPUT;
        }
    }
    if let Some(status) = saved(ask, &session, output) {
        return status;
    }
    greet(&session, output);
    let mut told = tell(&session, 0, output);
    while !session.log().over {
        let command = match ask_for_line(typed, input, output) {
            None => Command::Finish,
            Some(line) => match line.trim() {
                "" => continue,
                "quit" => {
                    output.say_id("terminal-left");
                    return NOT_PASSED;
                }
                "help" => {
                    help(&session, output);
                    continue;
                }
                "status" => {
                    status(&session, output);
                    continue;
                }
                "finish" => Command::Finish,
                "wait" => Command::WaitForEvent,
                line => Command::Do(line.to_owned()),
            },
        };
        let notices = session.apply(command);
        told = tell(&session, told, output);
        answer(&mut session, &notices, output);
        if let Some(status) = saved(ask, &session, output) {
            return status;
        }
    }
    output.blank();
    end(ask, &session, output)
}

/// The next line; nothing at the end of the input.
fn ask_for_line(typed: bool, input: &mut dyn BufRead, output: &mut Output<'_>) -> Option<String> {
    if typed {
        output.prompt();
    }
    let mut line = String::new();
    let read = input.read_line(&mut line).ok()?;
    (read > 0).then_some(line)
}

fn greet(session: &Session, output: &mut Output<'_>) {
    output.lines(&report::cautions(&session.shelf()));
    output.blank();
    if let Some(street) = session.street() {
        output.line(&street.title);
        output.line(&street.goal);
    }
    output.blank();
    for id in HELP {
        output.say_id(id);
    }
    output.blank();
}

const HELP: [&str; 9] = [
    "terminal-help",
    "terminal-help-set",
    "terminal-help-look",
    "terminal-help-test",
    "terminal-help-call",
    "terminal-help-refuel",
    "terminal-help-wait",
    "terminal-help-event",
    "terminal-help-own",
];

fn help(session: &Session, output: &mut Output<'_>) {
    for id in HELP {
        output.say_id(id);
    }
    places(session, output);
}

/// Everything that can be operated and done, place by place.
pub(super) fn places(session: &Session, output: &mut Output<'_>) {
    let places = session
        .street()
        .map(|street| street.places)
        .unwrap_or_default();
    for place in places.iter().filter_map(|place| session.close(&place.id)) {
        output.blank();
        let lines = report::place(&output.words, &place);
        output.lines(&lines);
    }
}

fn status(session: &Session, output: &mut Output<'_>) {
    if let Some(street) = session.street() {
        let lines = report::street(&output.words, &street);
        output.lines(&lines);
    }
}

/// Prints the lines of the log from this one on; how many there are now.
fn tell(session: &Session, from: usize, output: &mut Output<'_>) -> usize {
    let lines = session.log().lines;
    for line in lines.iter().skip(from) {
        let text = report::log_line(&output.words, line);
        output.line(&text);
    }
    lines.len()
}

/// What the log does not hold: words that were not understood, and consequences.
fn answer(session: &mut Session, notices: &[Notice], output: &mut Output<'_>) {
    for notice in notices {
        match notice {
            Notice::Unknown(text) => output.error(text),
            Notice::Consequence => {
                while let Some(view) = session.consequence() {
                    let lines = report::consequence(&output.words, &view);
                    output.lines(&lines);
                    session.apply(Command::Understood);
                }
            }
            Notice::Done(_)
            | Notice::Refused(_)
            | Notice::Happened(_)
            | Notice::Learnt(_)
            | Notice::Over => {}
        }
    }
}

/// The verdict, and the run's file.
fn end(ask: &Play, session: &Session, output: &mut Output<'_>) -> u8 {
    let Some(view) = session.debrief() else {
        return NOT_PASSED;
    };
    let lines = report::debrief(&output.words, &view);
    output.lines(&lines);
    if let Some(status) = saved(ask, session, output) {
        output.say_error(&Message::new("terminal-saved-not"));
        return status;
    }
    if let Some(path) = &ask.save {
        let file = Arg::Verbatim(path.display().to_string());
        output.blank();
        output.say(&Message::new("terminal-saved").with("file", file));
    }
    if view.passed { DONE } else { NOT_PASSED }
}

/// Writes the run as far as it has come; the status to end with when that fails.
fn saved(ask: &Play, session: &Session, output: &mut Output<'_>) -> Option<u8> {
    let (path, drill) = (ask.save.as_ref()?, session.drill()?);
    // Beside it first, then in its place: a machine that stops leaves the old file or the new one, never half of one.
    let mut beside = path.clone().into_os_string();
    beside.push(".part");
    let text = write_run(drill.run(), drill.scenario());
    let error = fs::write(&beside, text)
        .and_then(|()| fs::rename(&beside, path))
        .err()?;
    output.say_error(
        &Message::new("terminal-file-unwritable")
            .with("file", Arg::Verbatim(path.display().to_string()))
            .with("reason", Arg::Verbatim(error.to_string())),
    );
    Some(BAD_INPUT)
}
