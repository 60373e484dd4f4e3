//! A drill as text: typed line by line, or played from a file of actions.
//!
//! Besides the actions of the drill, a learner may type `help`, `status`, `at PLACE`, `log`, `what TERM`, `rewind`, `compare`, `hint`, `predict`, `counts`, `skip`, `finish`, `another` and `quit`.
//! Typed by hand a drill holds for its predictions; played from a file it never stops.
//! Where the input ends, the drill is finished and marked, as at the end of a file of actions; a run that is left by `quit` is not marked and counts as not passed.
//! While a run is to be saved, its file is written after every line, so that a machine that stops loses nothing already done.

use std::fs;
use std::io::BufRead;
use std::path::Path;

use crate::file::{Library, Source, read_day};
use crate::session::{
    Command, Notice, Practice, Rewind, Seated, Session, Signed, parse_clock, play,
};
use crate::words::{Arg, Message};

use super::arguments::Play;
use super::output::Output;
use super::{BAD_INPUT, DONE, NOT_PASSED, debrief, faults, glossary, predict, report, variations};

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
const OWN: [&str; 14] = [
    "terminal-help-own",
    "terminal-help-at",
    "terminal-help-status",
    "terminal-help-log",
    "terminal-help-over",
    "terminal-help-what",
    "terminal-help-rewind",
    "terminal-help-compare",
    "terminal-help-hint",
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
    let signed = match signed(ask) {
        Ok(signed) => signed,
        Err(wrong) => {
            output.say_error(&wrong);
            return BAD_INPUT;
        }
    };
    if let Some(file) = &ask.actions {
        return from_file(ask, signed, file, &library, output);
    }
    let mut session = Session::new(library, output.words.tag()).asking();
    session.sign(signed);
    by_hand(ask, session, Lines { input, typed }, output)
}

/// Who sits at the drill, how and when.
///
/// # Errors
/// What is wrong with a name, a way to sit or a day.
fn signed(ask: &Play) -> Result<Signed, Message> {
    let seated = ask.seated.as_deref().map(Seated::named).transpose()?;
    let day = ask.on.as_deref().map(read_day).transpose()?;
    Signed::new(&ask.learner, seated, day)
}

fn from_file(
    ask: &Play,
    signed: Signed,
    file: &Path,
    library: &Library,
    output: &mut Output<'_>,
) -> u8 {
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
        Ok(mut played) => {
            played.session.sign(signed);
            if let Some(view) = played.session.debrief() {
                for line in &view.log {
                    let line = report::log_line(&output.words, line);
                    output.line(&line);
                }
                output.blank();
            }
            let view = played.session.debrief().unwrap_or_default();
            let lines = report::debrief(&output.words, &view);
            output.lines(&lines);
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

fn by_hand(ask: &Play, mut session: Session, mut lines: Lines<'_>, output: &mut Output<'_>) -> u8 {
    let seed = match seed(ask, session.library(), output) {
        Ok(seed) => seed,
        Err(status) => return status,
    };
    let practice = match (ask.assessed, ask.guided) {
        (true, _) => Practice::Assessed,
        (false, true) => Practice::Guided,
        (false, false) => Practice::Coached,
    };
    let command = Command::Open {
        drill: ask.name.clone(),
        practice,
        seed,
    };
    if let Some(Notice::Unknown(text)) = session.apply(command).first() {
        output.error(text);
        return BAD_INPUT;
    }
    // A folder that can't be written is found out before the work, not after it.
    if let Err(error) = save(&session, ask.save.as_deref()) {
        output.say_error(&error);
        return BAD_INPUT;
    }
    begin(&session, practice, output);
    if rehearse(
        &mut session,
        practice,
        ask.save.as_deref(),
        &mut lines,
        output,
    ) {
        return end(&session, ask, output);
    }
    output.say_id("terminal-left");
    NOT_PASSED
}

/// Tells what a drill that was opened just now is about, and asks what is asked.
fn begin(session: &Session, practice: Practice, output: &mut Output<'_>) {
    let opening = report::opening(&output.words, session, practice);
    output.lines(&opening);
    predict::ask(session, output);
}

/// Plays line by line to the verdict and through the debrief, as often as the learner goes back from there; says whether they stayed to its end.
pub(super) fn rehearse(
    session: &mut Session,
    practice: Practice,
    file: Option<&Path>,
    lines: &mut Lines<'_>,
    output: &mut Output<'_>,
) -> bool {
    loop {
        while session.verdict().is_none() {
            output.prompt(&session.log().clock);
            let line = lines.next(output);
            match line.as_deref() {
                Some("another") => {
                    session.apply(Command::Another);
                    begin(session, practice, output);
                }
                Some("quit") => return false,
                line => step(session, line.unwrap_or("finish"), output),
            }
            // The last line's failure is told with the verdict.
            if session.verdict().is_none()
                && let Err(error) = save(session, file)
            {
                output.say_error(&error);
            }
        }
        output.blank();
        if debrief::walk(session, lines, output) {
            return true;
        }
    }
}

/// Lines as they are typed, or as they are piped in.
pub(super) struct Lines<'a> {
    /// Where they come from.
    pub(super) input: &'a mut dyn BufRead,
    /// Whether a person types them, so that they stand on the screen already.
    pub(super) typed: bool,
}

impl Lines<'_> {
    /// The next line without white space around it; `None` at the end of the input.
    pub(super) fn next(&mut self, output: &mut Output<'_>) -> Option<String> {
        let mut bytes = Vec::new();
        let line = match self.input.read_until(b'\n', &mut bytes) {
            Ok(1..) => Some(String::from_utf8_lossy(&bytes).trim().to_owned()),
            Ok(0) | Err(_) => None,
        };
        if !self.typed {
            output.line(line.as_deref().unwrap_or_default());
        }
        line
    }
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
        ["over", name @ ..] => return over(session, &name.join(" "), output),
        ["what", term @ ..] => {
            let lines = glossary::meaning(&output.words, &term.join(" "));
            return output.lines(&lines);
        }
        ["compare"] => return debrief::compared(session, output),
        ["at", place] => return at(session, place, output),
        ["at"] => return at(session, "", output),
        ["rewind"] => Command::Rewind(Rewind::Mistake),
        ["rewind", clock] => match parse_clock(clock) {
            Some(at) => Command::Rewind(Rewind::To(at)),
            None => Command::Do(line.to_owned()),
        },
        ["predict" | "counts" | "skip", ..] => return predict::answer(session, &words, output),
        ["hint"] => Command::Hint,
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
    let shown = hint(session, output);
    let asked = command == Command::Hint;
    let notices = session.apply(command);
    tell(session, told, &notices, output);
    predict::ask(session, output);
    let hint = hint(session, output);
    if asked || hint != shown {
        output.lines(&hint);
    }
    notices
}

/// The hint that is shown, if one is.
fn hint(session: &Session, output: &Output<'_>) -> Vec<String> {
    let street = session.street().unwrap_or_default();
    report::hint(&output.words, &street)
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

/// Hands the drill over to another learner.
fn over(session: &mut Session, name: &str, output: &mut Output<'_>) {
    match session.hand_over(name) {
        Ok(()) => {
            let name = Arg::Verbatim(name.to_owned());
            output.say(&Message::new("log-handed").with("name", name));
        }
        Err(wrong) => output.say_error(&wrong),
    }
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
            | Notice::Answered(text)
                if over =>
            {
                output.line(text);
            }
            Notice::Done(_)
            | Notice::Refused(_)
            | Notice::Happened(_)
            | Notice::Learnt(_)
            | Notice::Answered(_)
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
    for notice in notices {
        if let Notice::Answered(text) = notice {
            output.line(text);
        }
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

/// Saves the run; the status to end with.
fn end(session: &Session, ask: &Play, output: &mut Output<'_>) -> u8 {
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
    passed(session)
}

/// The status of a drill that is over.
pub(super) fn passed(session: &Session) -> u8 {
    if session.verdict().is_some_and(|v| v.passed) {
        DONE
    } else {
        NOT_PASSED
    }
}

/// Writes the run as far as it has come, if that was asked for; otherwise says what went wrong.
fn save(session: &Session, file: Option<&Path>) -> Result<(), Message> {
    let (Some(file), Some(text)) = (file, session.saved()) else {
        return Ok(());
    };
    write(file, &text)
}

/// Writes a file whole or not at all; otherwise says what went wrong.
pub(super) fn write(file: &Path, text: &str) -> Result<(), Message> {
    // Beside it first, then in its place: a machine that stops leaves the old file or the new one, never half of one.
    let mut beside = file.as_os_str().to_owned();
    beside.push(".part");
    let written = fs::write(&beside, text).and_then(|()| fs::rename(&beside, file));
    written.map_err(|error| super::unwritable(file, &error))
}
