//! The command line and the drill as text.
//!
//! Everything a learner can do in the window can be done here, by the same commands of the session; no rule lives here.
//! Lines are plain, so that a screen reader reads them as they are, and a machine without a display will do.
//! Exit status: 0 done or passed, 1 done and not passed, 2 bad input or usage.

mod arguments;
mod faults;
mod output;
mod play;
mod report;
mod reports;

use std::env;
use std::ffi::OsString;
use std::fs;
use std::io;
use std::io::BufRead;
use std::io::IsTerminal as _;
use std::io::Write;
use std::path::Path;
use std::path::PathBuf;

use clap::Parser as _;

use crate::file::Library;
use crate::session::Session;
use crate::words;
use crate::words::{Arg, Message, Words};

use arguments::{Arguments, Ask};
use output::Output;

/// Done, and passed if there was something to pass.
pub const DONE: u8 = 0;
/// Done, and not passed.
pub const NOT_PASSED: u8 = 1;
/// Bad input or usage; nothing was done.
pub const BAD_INPUT: u8 = 2;

/// The first drill, which is offered where no window can open.
const FIRST_DRILL: &str = "there-and-back";

/// What the machine around the program offers.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Surroundings {
    /// Language tags that the system asks for, the dearest first.
    pub languages: Vec<String>,
    /// Whether there is a display to open a window on.
    pub display: bool,
    /// Whether this build has a window.
    pub window: bool,
    /// Whether lines are typed by a person at a terminal.
    pub typed: bool,
}

impl Surroundings {
    /// Those of this machine.
    pub fn of_this_machine() -> Self {
        let named = |name: &str| env::var_os(name).is_some_and(|value| !value.is_empty());
        let needs_a_server = cfg!(all(unix, not(target_os = "macos")));
        Self {
            languages: sys_locale::get_locales().collect(),
            display: !needs_a_server || named("DISPLAY") || named("WAYLAND_DISPLAY"),
            window: cfg!(feature = "window"),
            typed: io::stdin().is_terminal(),
        }
    }
}

/// What is left to do after the command line has been read.
#[derive(Debug)]
pub enum Answer {
    /// Nothing: end with this status.
    Status(u8),
    /// Open the window on this session.
    Window(Box<Session>),
    /// Draw screens of this session into a folder.
    Pictures {
        /// The session.
        session: Box<Session>,
        /// Names of the screens.
        screens: Vec<String>,
        /// The folder.
        out: PathBuf,
    },
}

/// Reads the command line and does what it asks, as far as no window is needed.
pub fn run(
    arguments: impl IntoIterator<Item = OsString>,
    surroundings: &Surroundings,
    input: &mut dyn BufRead,
    out: &mut dyn Write,
    err: &mut dyn Write,
) -> Answer {
    let wishes: Vec<&str> = surroundings.languages.iter().map(String::as_str).collect();
    let mut output = Output::new(out, err, Words::new(words::choose(&wishes)));
    let arguments = match Arguments::try_parse_from(arguments) {
        Ok(arguments) => arguments,
        Err(usage) => return Answer::Status(usage_status(&usage, &mut output)),
    };
    if let Some(tag) = &arguments.language {
        let Some(language) = words::find(tag) else {
            return Answer::Status(unknown_language(tag, &mut output));
        };
        output.words = Words::new(language.tag);
    }
    let (library, faults) = Library::shipped();
    if !faults.is_empty() {
        return Answer::Status(faults::print_and_stop(&faults, &mut output));
    }
    match arguments.command {
        None if !surroundings.window => {
            Answer::Status(say_no_window("terminal-no-window", &mut output))
        }
        None if !surroundings.display => {
            Answer::Status(say_no_window("window-no-display", &mut output))
        }
        None => Answer::Window(Box::new(Session::new(library, output.words.tag()))),
        Some(Ask::Picture { screens, out }) if surroundings.window => Answer::Pictures {
            session: Box::new(Session::new(library, output.words.tag())),
            screens,
            out,
        },
        Some(ask) => Answer::Status(report(
            &ask,
            library,
            surroundings.typed,
            input,
            &mut output,
        )),
    }
}

/// Does what needs no window.
fn report(
    ask: &Ask,
    library: Library,
    typed: bool,
    input: &mut dyn BufRead,
    output: &mut Output<'_>,
) -> u8 {
    match ask {
        Ask::List => reports::list(library, output),
        Ask::Actions { name } => reports::actions(name, library, output),
        Ask::Play(ask) => play::run(ask, library, typed, input, output),
        Ask::Mark { files, json } => reports::mark(files, *json, &library, output),
        Ask::Check { paths, json } => reports::check(paths, *json, output),
        Ask::Read { site, sets, json } => reports::site(site, sets, *json, &library, output),
        Ask::Picture { .. } => say_no_window("terminal-no-window", output),
        Ask::Languages => reports::languages(output),
    }
}

/// Says why no window opens, by the id of the message, and how to play without one; the status to end with.
pub fn no_window(why: &str, language: &str, err: &mut dyn Write) -> u8 {
    let mut nowhere = io::sink();
    say_no_window(
        why,
        &mut Output::new(&mut nowhere, err, Words::new(language)),
    )
}

fn say_no_window(why: &str, output: &mut Output<'_>) -> u8 {
    output.say_error(&Message::new(why));
    let command = Arg::Verbatim(format!("outage-drill play {FIRST_DRILL}"));
    output.say_error(&Message::new("terminal-as-text").with("command", command));
    BAD_INPUT
}

/// The text of a file that was named; says so and gives nothing if it can't be read.
fn text_of(path: &Path, output: &mut Output<'_>) -> Option<String> {
    match fs::read_to_string(path) {
        Ok(text) => Some(text),
        Err(error) => {
            output.say_error(
                &Message::new("terminal-file-unreadable")
                    .with("file", Arg::Verbatim(path.display().to_string()))
                    .with("reason", Arg::Verbatim(error.to_string())),
            );
            None
        }
    }
}

/// Prints what the argument parser says: help on one stream, faults on the other.
fn usage_status(usage: &clap::Error, output: &mut Output<'_>) -> u8 {
    let text = usage.render().to_string();
    if usage.use_stderr() {
        output.error(text.trim_end());
        BAD_INPUT
    } else {
        output.line(text.trim_end());
        DONE
    }
}

fn unknown_language(tag: &str, output: &mut Output<'_>) -> u8 {
    let available: Vec<&str> = words::OFFERED.iter().map(|language| language.tag).collect();
    output.say_error(
        &Message::new("terminal-language-unknown")
            .with("tag", Arg::Verbatim(tag.to_owned()))
            .with("available", Arg::Verbatim(available.join(", "))),
    );
    BAD_INPUT
}
