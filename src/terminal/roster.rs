//! Saved runs of many learners marked at once: a row for each, as a table and as a file for a spreadsheet.
//!
//! Runs are shared among the machine's cores; rows stand in the order of the files.
//! A learner is called by the name in the run, where it keeps one, and otherwise by the file's.
//! Without names a number stands for each, and faults, which tell file and text, are only counted.
//! What can't be marked is told with its reason, on the error stream and in the file's last column, and keeps nothing else from it.

use std::collections::BTreeSet;
use std::fs;
use std::io;
use std::path::{Path, PathBuf};

use crate::file::{Diagnostic, Library, Seal, Source};
use crate::session::{Practice, Seated, Signed, remark};
use crate::units::DrillTime;
use crate::words::{Arg, Message, Words};

use super::arguments::Mark;
use super::output::{Output, plain};
use super::work::{cores, share};
use super::{BAD_INPUT, DONE, NOT_PASSED, faults, reports, table};

/// Columns: the message of the heading, and whether numbers stand in it. The file has one more, for faults.
const COLUMNS: [(&str, bool); 9] = [
    ("roster-learner", false),
    ("roster-drill", false),
    ("roster-seed", true),
    ("roster-practice", false),
    ("roster-day", false),
    ("roster-seated", false),
    ("roster-seal", false),
    ("roster-verdict", false),
    ("roster-findings", false),
];

/// What a run came to.
struct Row {
    drill: String,
    seed: u64,
    practice: Option<Practice>,
    signed: Signed,
    /// When another learner took over.
    handed: Vec<DrillTime>,
    seal: Seal,
    passed: bool,
    /// The rules that were broken, each once.
    broken: BTreeSet<&'static str>,
}

/// A file, and what came of it.
struct Marked {
    file: PathBuf,
    came: Result<Row, Vec<Diagnostic>>,
}

/// The files that are meant: of a folder all that aren't hidden or half written, by name.
///
/// # Errors
/// What can't be listed.
pub(super) fn files(paths: &[PathBuf]) -> Result<Vec<PathBuf>, Box<Diagnostic>> {
    let mut all = Vec::new();
    for path in paths {
        if path.is_dir() {
            let found = listed(path).map_err(|error| super::unreadable(path, &error))?;
            all.extend(found);
        } else {
            all.push(path.clone());
        }
    }
    Ok(all)
}

fn listed(folder: &Path) -> io::Result<Vec<PathBuf>> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder)? {
        let path = entry?.path();
        let hidden = path
            .file_name()
            .is_some_and(|n| n.to_string_lossy().starts_with('.'));
        let half = path.extension().is_some_and(|e| e == "part");
        if path.is_file() && !hidden && !half {
            found.push(path);
        }
    }
    found.sort();
    Ok(found)
}

/// Marks saved runs: as a roster if that is asked for or a folder is given, and otherwise each in full.
pub(super) fn mark(ask: &Mark, library: &Library, output: &mut Output<'_>) -> u8 {
    let sheet = ask.roster.as_deref();
    let mut files = match files(&ask.paths) {
        Ok(files) => files,
        Err(fault) => return faults::print_and_stop(&[*fault], output),
    };
    // The sheet of last time may lie in the same folder.
    files.retain(|f| Some(f.as_path()) != sheet);
    let folder = ask.paths.iter().any(|p| p.is_dir());
    if ask.json || sheet.is_none() && !folder && !ask.without_names {
        reports::mark(&files, ask.json, library, output)
    } else {
        in_rows(&files, ask, library, output)
    }
}

/// Marks saved runs and prints a row for each.
fn in_rows(files: &[PathBuf], ask: &Mark, library: &Library, output: &mut Output<'_>) -> u8 {
    let mark = |number: usize, _: &dyn Fn(usize)| {
        let file = files.get(number)?.clone();
        let came = marked(&file, library);
        Some(Marked { file, came })
    };
    let all = share(files.len(), cores(), mark, |progress| {
        let done = counted("roster-progress", "done", progress.done);
        output.say_error(&done.with("all", count(files.len())));
    });
    let all: Vec<Marked> = all.into_iter().flatten().collect();
    let who = who(&all, ask.without_names);
    say(&all, &who, ask.without_names, output);
    let written = ask.roster.as_deref().map_or(Ok(()), |file| {
        let text = sheet_of(&all, &who, ask.without_names, &output.words);
        text.and_then(|bytes| fs::write(file, bytes))
            .map_err(|e| super::unwritable(file, &e))
    });
    if let Err(why) = &written {
        output.say_error(why);
    }
    let failed = all.iter().any(|m| m.came.as_ref().is_ok_and(|r| !r.passed));
    match (
        written.is_err() || all.iter().any(|m| m.came.is_err()),
        failed,
    ) {
        (true, _) => BAD_INPUT,
        (false, true) => NOT_PASSED,
        (false, false) => DONE,
    }
}

/// Plays a run out again and marks it.
fn marked(path: &Path, library: &Library) -> Result<Row, Vec<Diagnostic>> {
    let text = super::text_of(path).map_err(|wrong| vec![*wrong])?;
    let file = path.display().to_string();
    let source = Source {
        file: &file,
        text: &text,
    };
    let (drill, verdict, beside) = remark(library, source)?;
    let breaches = verdict.findings.iter().filter(|f| f.breach);
    Ok(Row {
        drill: drill.scenario().name.clone(),
        seed: drill.run().seed,
        practice: beside.practice,
        signed: beside.signed,
        handed: beside.handed.into_iter().map(|(at, _)| at).collect(),
        seal: Seal::of(&text),
        passed: verdict.passed,
        broken: breaches.map(|f| f.rule.name()).collect(),
    })
}

/// What the learners of each file are called: by their names, or by numbers in their place.
fn who(all: &[Marked], without_names: bool) -> Vec<String> {
    let mut known: Vec<String> = Vec::new();
    let mut number = |name: String| {
        let at = known.iter().position(|k| *k == name);
        let at = at.unwrap_or_else(|| {
            known.push(name);
            known.len() - 1
        });
        (at + 1).to_string()
    };
    let mut shown = |of: &Marked| {
        let names = match &of.came {
            Ok(row) if !row.signed.learners().is_empty() => row.signed.learners().to_vec(),
            Ok(_) | Err(_) => vec![called(&of.file)],
        };
        let names: Vec<String> = if without_names {
            names.into_iter().map(&mut number).collect()
        } else {
            names
        };
        names.join(", ")
    };
    all.iter().map(&mut shown).collect()
}

fn say(all: &[Marked], who: &[String], without_names: bool, output: &mut Output<'_>) {
    let rows = || {
        let named = all.iter().zip(who);
        named.filter_map(|(of, who)| Some((who, of.came.as_ref().ok()?)))
    };
    let mut lines = vec![COLUMNS.map(|(id, _)| output.words.say_id(id))];
    lines.extend(rows().map(|(who, row)| cells(who, row, &output.words)));
    let lines = table::aligned(&lines, COLUMNS.map(|(_, number)| number));
    output.lines(&lines);
    output.blank();
    let passed = rows().filter(|(_, row)| row.passed).count();
    let marked = counted("roster-marked", "runs", rows().count());
    output.say(&marked.with("passed", count(passed)));
    let wrong: Vec<&Vec<Diagnostic>> = all.iter().filter_map(|m| m.came.as_ref().err()).collect();
    if !wrong.is_empty() {
        output.say_error(&counted("roster-not-marked", "files", wrong.len()));
    }
    if without_names && !wrong.is_empty() {
        output.say_error(&Message::new("roster-fault-hidden"));
        return;
    }
    for faults in wrong {
        faults::print(faults, output);
    }
}

fn cells(who: &str, row: &Row, words: &Words) -> [String; COLUMNS.len()] {
    let verdict = if row.passed {
        "roster-passed"
    } else {
        "roster-not-passed"
    };
    let practice = match row.practice {
        Some(Practice::Coached) => "roster-coached",
        Some(Practice::Guided) => "roster-guided",
        Some(Practice::Assessed) => "roster-assessed",
        None => "roster-unknown",
    };
    let seated = match row.signed.seated() {
        Some(Seated::Alone) => "roster-alone",
        Some(Seated::InTurns) => "roster-in-turns",
        Some(Seated::AsATeam) => "roster-as-a-team",
        Some(Seated::InPairs) => "roster-in-pairs",
        None => "roster-unknown",
    };
    let seal = match row.seal {
        Seal::Whole => "roster-seal-whole",
        Seal::Broken => "roster-seal-broken",
        Seal::Missing => "roster-seal-missing",
    };
    let day = row.signed.day();
    let day = day.map_or_else(|| words.say_id("roster-unknown"), |day| day.to_string());
    let broken: Vec<&str> = row.broken.iter().copied().collect();
    [
        who.to_owned(),
        row.drill.clone(),
        row.seed.to_string(),
        words.say_id(practice),
        day,
        seated_said(seated, &row.handed, words),
        words.say_id(seal),
        words.say_id(verdict),
        broken.join(", "),
    ]
}

/// How they sat, and when another of them took over; by the clock alone, so that it names nobody.
fn seated_said(seated: &str, handed: &[DrillTime], words: &Words) -> String {
    let seated = words.say_id(seated);
    if handed.is_empty() {
        return seated;
    }
    let clocks: Vec<String> = handed.iter().map(DrillTime::to_string).collect();
    let message = Message::new("roster-handed")
        .with("seated", Arg::Verbatim(seated))
        .with("clocks", Arg::Verbatim(clocks.join(", ")));
    words.say(&message)
}

/// What a learner is called who isn't named: the file's name without its ending.
pub(super) fn called(file: &Path) -> String {
    let name = file.file_stem().unwrap_or_default();
    name.to_string_lossy().into_owned()
}

/// The roster as comma-separated values.
fn sheet_of(
    all: &[Marked],
    who: &[String],
    without_names: bool,
    words: &Words,
) -> io::Result<Vec<u8>> {
    let mut sheet = csv::Writer::from_writer(Vec::new());
    let heads = COLUMNS.iter().map(|(id, _)| *id).chain(["roster-fault"]);
    sheet.write_record(heads.map(|id| cell(&words.say_id(id))))?;
    for (of, who) in all.iter().zip(who) {
        let (cells, fault) = match &of.came {
            Ok(row) => (cells(who, row, words), String::new()),
            Err(faults) => {
                let mut cells = COLUMNS.map(|_| String::new());
                cells[0].clone_from(who);
                let told = faults.iter().map(|f| faults::line(f, words));
                let told = told.collect::<Vec<_>>().join("; ");
                let hidden = without_names.then(|| words.say_id("roster-fault-hidden"));
                (cells, hidden.unwrap_or(told))
            }
        };
        sheet.write_record(cells.iter().chain([&fault]).map(|text| cell(text)))?;
    }
    sheet.into_inner().map_err(csv::IntoInnerError::into_error)
}

/// A cell that no spreadsheet takes for a formula.
fn cell(text: &str) -> String {
    let text = plain(text);
    if text.starts_with(['=', '+', '-', '@', '\t', '\r']) {
        format!("'{text}")
    } else {
        text
    }
}

fn count(n: usize) -> Arg {
    Arg::Count(i64::try_from(n).unwrap_or(i64::MAX))
}

fn counted(id: &'static str, name: &'static str, n: usize) -> Message {
    Message::new(id).with(name, count(n))
}
