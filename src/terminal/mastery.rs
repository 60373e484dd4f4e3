//! What a learner has shown unaided, from a folder of saved runs, and what to practice when.
//!
//! The `--json` document has `version`, `today`, `runs` (how many count), `left_out` (file names), `seals` (of runs that are not as they were saved: `file`, and `seal`, which is `broken` or `missing`) and `objectives`, each with `title`, `passes`, `fails`, `last`, `recall` (0 to 1), `half_life_days`, `due`, `is_due`, `for_season` and `drill`; what isn't known is null.

use std::fs;
use std::path::Path;

use serde_json::Value;
use serde_json::json;

use crate::file::{Diagnostic, Library, Seal, learners_in, read_day};
use crate::session::{MasteryRead, Shown};
use crate::units::Day;
use crate::words::{Arg, Message, Unit, Words};

use super::arguments::Mastery;
use super::output::Output;
use super::{BAD_INPUT, DONE, JSON_VERSION, faults, reports, roster};

/// What there is of a learner in a folder.
#[derive(Default)]
struct Gathered {
    shown: Shown,
    /// Files of runs that don't count.
    left_out: Vec<String>,
    /// Files of runs, whether they count or not, whose seal isn't whole.
    unsealed: Vec<(String, Seal)>,
    faults: Vec<Diagnostic>,
}

/// Prints how each objective stands for a learner; the status to end with.
pub(super) fn run(ask: &Mastery, library: &Library, output: &mut Output<'_>) -> u8 {
    let gathered = match gathered(ask, library, output.words.tag()) {
        Ok(gathered) => gathered,
        Err(wrong) => return faults::print_and_stop(&[*wrong], output),
    };
    let days = days(ask, &gathered.shown);
    let told = days.map(|(today, season)| {
        let read = gathered.shown.read(library, &output.words, today, season);
        if ask.json {
            reports::print_json(&document(&read, today, &gathered), output);
        } else {
            let lines = told(&output.words, &read, (&ask.learner, today), &gathered);
            output.lines(&lines);
        }
    });
    if let Err(wrong) = &told {
        output.say_error(wrong);
    }
    faults::print(&gathered.faults, output);
    if told.is_ok() && gathered.faults.is_empty() {
        DONE
    } else {
        BAD_INPUT
    }
}

/// The runs of a learner in a folder.
///
/// # Errors
/// That the folder can't be read.
fn gathered(ask: &Mastery, library: &Library, language: &str) -> Result<Gathered, Box<Diagnostic>> {
    fs::read_dir(&ask.folder).map_err(|error| super::unreadable(&ask.folder, &error))?;
    let mut all = Gathered::default();
    let files = roster::files(std::slice::from_ref(&ask.folder))?;
    for path in files {
        // A file that can't be read is told if it is called by the learner.
        let text = super::text_of(&path).unwrap_or_default();
        if !is_of(&ask.learner, &path, &text) {
            continue;
        }
        let file = path.display().to_string();
        let seal = Seal::of(&text);
        if seal != Seal::Whole {
            all.unsealed.push((file.clone(), seal));
        }
        match reports::replayed(&path, &file, library, language) {
            Ok(played) if all.shown.add(&played) => {}
            Ok(_) => all.left_out.push(file),
            Err(mut wrong) => all.faults.append(&mut wrong),
        }
    }
    Ok(all)
}

/// The day to tell it for, and that of the season.
///
/// # Errors
/// That a day is none, isn't known, or that the season is over.
fn days(ask: &Mastery, shown: &Shown) -> Result<(Day, Option<Day>), Message> {
    let today = ask
        .today
        .as_deref()
        .map(read_day)
        .transpose()?
        .or(shown.last);
    let today = today.ok_or_else(|| {
        let learner = Arg::Verbatim(ask.learner.clone());
        Message::new("mastery-no-run").with("learner", learner)
    })?;
    let season = ask.season.as_deref().map(read_day).transpose()?;
    match season.filter(|season| *season < today) {
        Some(past) => Err(Message::new("terminal-season-past")
            .with("season", Arg::Verbatim(past.to_string()))
            .with("today", Arg::Verbatim(today.to_string()))),
        None => Ok((today, season)),
    }
}

/// Whether a run is a learner's: by the names that it keeps, and otherwise by its file's.
fn is_of(learner: &str, path: &Path, text: &str) -> bool {
    let names = learners_in(text);
    let called = roster::called(path);
    let more = called.strip_prefix(learner);
    names.contains(&learner)
        || names.is_empty() && more.is_some_and(|more| more.is_empty() || numbered(more))
}

/// Whether the rest of a file's name is a dash with a number or a day.
fn numbered(more: &str) -> bool {
    let number = more.strip_prefix('-');
    number.is_some_and(|n| n.starts_with(|c: char| c.is_ascii_digit()))
}

fn count(n: usize) -> Arg {
    Arg::Count(i64::try_from(n).unwrap_or(i64::MAX))
}

fn told(
    words: &Words,
    read: &[MasteryRead],
    (learner, today): (&str, Day),
    gathered: &Gathered,
) -> Vec<String> {
    let head = Message::new("mastery-head")
        .with("learner", Arg::Verbatim(learner.to_owned()))
        .with("today", Arg::Verbatim(today.to_string()))
        .with("runs", count(gathered.shown.runs));
    let mut lines = vec![words.say(&head)];
    let left_out = gathered.left_out.len();
    if left_out > 0 {
        lines.push(words.say(&Message::new("mastery-left-out").with("runs", count(left_out))));
    }
    for (seal, id) in [
        (Seal::Broken, "roster-seal-broken"),
        (Seal::Missing, "roster-seal-missing"),
    ] {
        let files = gathered.unsealed.iter().filter(|(_, own)| *own == seal);
        let files: Vec<&str> = files.map(|(file, _)| file.as_str()).collect();
        if !files.is_empty() {
            let message = Message::new("mastery-seal")
                .said("seal", Message::new(id))
                .with("files", Arg::Verbatim(files.join(", ")));
            lines.push(words.say(&message));
        }
    }
    for objective in read {
        lines.push(format!("{}:", objective.title));
        let parts = [
            Some(stands(objective)),
            due(objective),
            for_season(objective),
            drill(objective),
        ];
        let parts = parts.into_iter().flatten();
        lines.extend(parts.map(|part| format!("  {}", words.say(&part))));
    }
    lines.push(words.say_id("mastery-how"));
    lines
}

fn stands(objective: &MasteryRead) -> Message {
    let Some(memory) = objective.memory else {
        return Message::new("mastery-never");
    };
    Message::new("mastery-tries")
        .with("passes", count(objective.passes))
        .with("fails", count(objective.fails))
        .with("last", Arg::Verbatim(memory.last.to_string()))
        .quantity("recall", objective.recall * 100.0, Unit::Percent)
}

fn due(objective: &MasteryRead) -> Option<Message> {
    let memory = objective.memory?;
    let message = if objective.is_due {
        Message::new("mastery-due-now")
    } else {
        Message::new("mastery-due").with("day", Arg::Verbatim(memory.due().to_string()))
    };
    Some(message)
}

fn for_season(objective: &MasteryRead) -> Option<Message> {
    let day = Arg::Verbatim(objective.for_season?.to_string());
    Some(Message::new("mastery-season").with("day", day))
}

fn drill(objective: &MasteryRead) -> Option<Message> {
    let drill = Some(objective.drill.clone()).filter(|d| !d.is_empty())?;
    Some(Message::new("mastery-drill").with("drill", Arg::Verbatim(drill)))
}

fn document(read: &[MasteryRead], today: Day, gathered: &Gathered) -> Value {
    let objectives: Vec<Value> = read.iter().map(as_json).collect();
    let seal = |(file, seal): &(String, Seal)| json!({"file": file, "seal": seal.name()});
    let seals: Vec<Value> = gathered.unsealed.iter().map(seal).collect();
    json!({
        "version": JSON_VERSION, "today": today.to_string(), "runs": gathered.shown.runs,
        "left_out": gathered.left_out, "seals": seals, "objectives": objectives,
    })
}

fn as_json(m: &MasteryRead) -> Value {
    let day = |day: Option<Day>| day.map(|d| d.to_string());
    json!({
        "title": m.title, "passes": m.passes, "fails": m.fails,
        "last": day(m.memory.map(|k| k.last)), "recall": m.memory.map(|_| m.recall),
        "half_life_days": m.memory.map(|k| k.half_life_days), "due": day(m.memory.map(|k| k.due())),
        "is_due": m.is_due, "for_season": day(m.for_season), "drill": m.drill,
    })
}
