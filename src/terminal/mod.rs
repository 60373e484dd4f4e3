//! The command line and the drill as text.
//!
//! Everything a learner can do in the window can be done here, by the same commands of the session; no rule lives here.
//! Lines are plain, so that a screen reader reads them as they are, and a machine without a display will do.
//! Exit status: 0 done or passed, 1 done and not passed, 2 bad input or usage.

mod actions;
mod arguments;
mod check;
mod debrief;
mod evidence;
mod faults;
mod glossary;
mod learners;
mod lesson;
mod list;
mod mastery;
mod mistakes;
mod output;
mod play;
mod predict;
mod report;
mod reports;
mod roster;
mod table;
mod variations;
mod work;

use std::env;
use std::ffi::OsString;
use std::fmt;
use std::fs;
use std::io;
use std::io::BufRead;
use std::io::IsTerminal as _;
use std::io::Write;
use std::path::{Path, PathBuf};

use clap::Parser as _;
use etcetera::BaseStrategy as _;

use crate::file::{Diagnostic, Library, LocalFacts, Settings, Source};
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

/// The version of every `--json` document; it changes when a shape does.
const JSON_VERSION: u32 = 1;
/// The first drill, which is offered where no window can open.
const FIRST_DRILL: &str = "there-and-back";

/// What the machine around the program offers.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Surroundings {
    /// Language tags that the system asks for, the dearest first.
    pub languages: Vec<String>,
    /// Whether there is a display to open a window on.
    pub display: bool,
    /// Whether lines are typed by a person at a terminal.
    pub typed: bool,
    /// Where it is kept how a person last had the window.
    pub settings: Option<PathBuf>,
}

impl Surroundings {
    /// Those of this machine.
    pub fn of_this_machine() -> Self {
        let named = |name: &str| env::var_os(name).is_some_and(|value| !value.is_empty());
        let needs_a_server = cfg!(all(unix, not(target_os = "macos")));
        Self {
            languages: sys_locale::get_locales().collect(),
            display: !needs_a_server || named("DISPLAY") || named("WAYLAND_DISPLAY"),
            typed: io::stdin().is_terminal(),
            settings: etcetera::choose_base_strategy()
                .map(|base| base.config_dir().join("outage-drill/window.ron"))
                .ok(),
        }
    }
}

/// The window of this build, as functions, so that the command line needs to know nothing of it.
/// What goes wrong comes back as a message.
#[derive(Debug, Clone, Copy)]
pub struct Window {
    /// Opens it as a person last had it and stays until it is closed.
    /// Scenarios from the first folder are read again as they change; the other path is where settings are kept.
    pub open: fn(Session, Option<&Path>, Settings, Option<&Path>) -> Result<(), Message>,
    /// Draws the screens of these names into a folder.
    pub draw: fn(&Session, &[String], &Path) -> Result<(), Message>,
}

/// The streams of the process.
pub struct Streams<'a> {
    /// What is typed.
    pub input: &'a mut dyn BufRead,
    /// What was asked for.
    pub out: &'a mut dyn Write,
    /// What went wrong.
    pub err: &'a mut dyn Write,
}

impl fmt::Debug for Streams<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Streams").finish_non_exhaustive()
    }
}

/// Reads the command line and does what it asks; the status to end with.
pub fn run(
    arguments: impl IntoIterator<Item = OsString>,
    surroundings: &Surroundings,
    window: Option<Window>,
    streams: Streams<'_>,
) -> u8 {
    let wishes: Vec<&str> = surroundings.languages.iter().map(String::as_str).collect();
    let words = Words::new(words::choose(&wishes));
    let mut output = Output::new(streams.out, streams.err, words);
    let arguments = match Arguments::try_parse_from(arguments) {
        Ok(arguments) => arguments,
        Err(usage) => return usage_status(&usage, &mut output),
    };
    if let Some(tag) = &arguments.language {
        let Some(language) = words::find(tag) else {
            return unknown_language(tag, &mut output);
        };
        output.words = Words::new(language.tag);
    }
    let (mut library, mut faults) = match &arguments.scenarios {
        Some(folder) => Library::load(folder),
        None => Library::shipped(),
    };
    if let Some(path) = &arguments.local_facts {
        match local_facts(path) {
            Ok(local) => library.local = local,
            Err(mut wrong) => faults.append(&mut wrong),
        }
    }
    output.words = output.words.with(&library.words);
    if !faults.is_empty() {
        return faults::print_and_stop(&faults, &mut output);
    }
    match (arguments.command, window) {
        (None, None) => no_window(&Message::new("terminal-no-window"), &mut output),
        (None, Some(_)) if !surroundings.display => {
            no_window(&Message::new("window-no-display"), &mut output)
        }
        (None, Some(window)) => {
            let (settings, kept) = settings(surroundings, &mut output);
            if arguments.language.is_none()
                && let Some(language) = settings.language.as_deref().and_then(words::find)
            {
                output.words = Words::new(language.tag).with(&library.words);
            }
            let session = Session::new(library, output.words.tag()).asking();
            let opened = (window.open)(session, arguments.scenarios.as_deref(), settings, kept);
            opened.map_or_else(|why| no_window(&why, &mut output), |()| DONE)
        }
        (Some(Ask::Picture { screens, out }), Some(window)) => {
            let session = Session::new(library, output.words.tag()).asking();
            let drawn = (window.draw)(&session, &screens, &out);
            drawn.map_or_else(
                |why| {
                    output.say_error(&why);
                    BAD_INPUT
                },
                |()| DONE,
            )
        }
        (Some(ask), _) => report(
            &ask,
            library,
            surroundings.typed,
            streams.input,
            &mut output,
        ),
    }
}

/// How a person last had the window, and where to keep it.
/// What can't be read is told and left as it is.
fn settings<'a>(
    surroundings: &'a Surroundings,
    output: &mut Output<'_>,
) -> (Settings, Option<&'a Path>) {
    let Some(path) = surroundings.settings.as_deref() else {
        return (Settings::default(), None);
    };
    match Settings::read(path) {
        Ok(settings) => (settings, Some(path)),
        Err(faults) => {
            faults::print(&faults, output);
            output.say_error(&Message::new("window-settings-left"));
            (Settings::default(), None)
        }
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
        Ask::List { track, json } => list::run(track.as_deref(), *json, library, output),
        Ask::Lesson(ask) => lesson::run(ask, library, output),
        Ask::Actions { name } => actions::run(name, library, output),
        Ask::Variations { name } => variations::run(name, &library, output),
        Ask::Play(ask) => play::run(ask, library, typed, input, output),
        Ask::Mark(ask) => roster::mark(ask, &library, output),
        Ask::Mastery(ask) => mastery::run(ask, &library, output),
        Ask::Compare { was, tried } => debrief::compare_files(was, tried, &library, output),
        Ask::Debrief(ask) => debrief::run(ask, &library, typed, input, output),
        Ask::Check(ask) => check::run(ask, output),
        Ask::Read { site, sets, json } => reports::site(site, sets, *json, &library, output),
        Ask::Evidence { what } => evidence::run(what, output),
        Ask::Picture { .. } => no_window(&Message::new("terminal-no-window"), output),
        Ask::Glossary { term, json } => glossary::run(term, *json, output),
        Ask::Languages => reports::languages(output),
    }
}

/// Says why no window is open, and how to play without one.
fn no_window(why: &Message, output: &mut Output<'_>) -> u8 {
    output.say_error(why);
    let command = Arg::Verbatim(format!("outage-drill play {FIRST_DRILL}"));
    output.say_error(&Message::new("terminal-as-text").with("command", command));
    BAD_INPUT
}

/// The local facts of a file.
fn local_facts(path: &Path) -> Result<LocalFacts, Vec<Diagnostic>> {
    let text = text_of(path).map_err(|fault| vec![*fault])?;
    let file = path.display().to_string();
    LocalFacts::read(Source {
        file: &file,
        text: &text,
    })
}

/// The text of a file that was named, whatever bytes stand in it.
fn text_of(path: &Path) -> Result<String, Box<Diagnostic>> {
    fs::read(path)
        .map(|bytes| String::from_utf8_lossy(&bytes).into_owned())
        .map_err(|error| Box::new(unreadable(path, &error)))
}

/// Says that a file can't be written.
fn unwritable(file: &Path, error: &io::Error) -> Message {
    Message::new("terminal-file-unwritable")
        .with("file", Arg::Verbatim(file.display().to_string()))
        .with("reason", Arg::Verbatim(error.to_string()))
}

/// The fault of a file or folder that can't be read.
fn unreadable(path: &Path, error: &io::Error) -> Diagnostic {
    let detail = Arg::Verbatim(error.to_string());
    whole(
        path,
        Message::new("error-unreadable").with("detail", detail),
    )
}

/// A fault of a file or folder as a whole.
fn whole(path: &Path, message: Message) -> Diagnostic {
    let file = path.display().to_string();
    let source = Source {
        file: &file,
        text: "",
    };
    source.whole(message)
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
