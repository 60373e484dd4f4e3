//! The check of scenario files: every fault with its place, then what holds of each drill that could be read.
//!
//! Of a drill it is checked that its house can be wired, that each breaker is small enough for its wire, that its first answer settles, and that a run in which nothing is done settles at every moment and is no pass.
//! Each variant that a drill's file offers is checked like a drill of its own, called by both names with a plus sign.
//! Then everything that can be reached in it is searched, and each property is told as proved, proved for positions only, unsound or not covered.
//! Drills are checked side by side on the machine's cores; what is told of them, and in which order, doesn't hang on that.
//!
//! The `--json` document has `version`, `faults` (see [`faults::json`]), `unused_pieces` in the same form, `lessons`, each sound one with its `name`, `audience`, `minutes` in all and `drills`, and `drills`.
//! Each of `drills` has `name`, `seed`, `properties` (`id`, `holds`), `unguarded`, the names of breakers too large for their wires, `without_words`, the ids of messages that its names would need in the language spoken, `kept`, whether its proof is from an earlier check,
//! and `proof`: `states`, `solves`, `bytes`, `seconds`, `like` (the variant whose searches hold for this one) and `properties` (`id`, `standing`, `because`, `way`, the lines of an action file).

mod drill;
mod kept;
mod told;
mod ways;

use std::collections::BTreeSet;
use std::path::Path;
use std::path::PathBuf;

use serde_json::{Value, json};

use crate::file::{Diagnostic, Library};
use crate::words::{Arg, Message, Unit, Words};

use super::arguments::Check;
use super::output::Output;
use super::work::{Progress, cores, now, share};
use super::{BAD_INPUT, DONE, JSON_VERSION, NOT_PASSED, faults};

use drill::Checked;
use kept::Kept;
use told::{Figures, count, drill_json, figures, say_all};

/// The properties that are checked, in order: the id, what is said where it holds, and where it does not.
const PROPERTIES: [(&str, &str, &str); 5] = [
    ("wired", "check-wired", "check-not-wired"),
    ("guarded", "check-guarded", "check-not-guarded"),
    ("start", "check-start", "check-not-start"),
    ("settles", "check-settles", "check-not-settles"),
    ("idle", "check-idle", "check-not-idle"),
];

/// Reads scenario files and checks what can be checked; the status to end with.
pub(super) fn run(ask: &Check, output: &mut Output<'_>) -> u8 {
    let (libraries, found) = read_all(&ask.paths);
    let began = now();
    let drills = check_all(&libraries, ask, output);
    let seconds = began.elapsed().as_secs_f64();
    let flat = || drills.iter().flatten();
    faults::print(&found, output);
    for library in &libraries {
        faults::print(&library.unused_pieces, output);
    }
    if ask.json {
        let drills: Vec<_> = flat().map(drill_json).collect();
        let faults: Vec<_> = found
            .iter()
            .map(|fault| faults::json(fault, &output.words))
            .collect();
        let lessons = lessons_json(&libraries);
        let unused = libraries.iter().flat_map(|l| &l.unused_pieces);
        let unused: Vec<_> = unused
            .map(|piece| faults::json(piece, &output.words))
            .collect();
        let document = json!({
            "version": JSON_VERSION, "drills": drills, "lessons": lessons, "faults": faults,
            "unused_pieces": unused,
        });
        output.line(&format!("{document:#}"));
    } else if !drills.is_empty() {
        for variants in &drills {
            say_all(variants, output);
        }
        say_totals(&drills, seconds, ask.as_written, output);
        let n_lessons = libraries.iter().map(|l| l.lessons.len()).sum();
        if n_lessons > 0 {
            output.say(&Message::new("check-lessons").with("count", count(n_lessons)));
        }
    }
    let all: Vec<Checked> = drills.into_iter().flatten().collect();
    if let Some(folder) = &ask.counterexamples
        && !write_ways(&all, folder, output)
    {
        return BAD_INPUT;
    }
    match (found.is_empty(), all.iter().all(Checked::sound)) {
        (false, _) => BAD_INPUT,
        (true, false) => NOT_PASSED,
        (true, true) => DONE,
    }
}

/// The sound lessons of the libraries.
fn lessons_json(libraries: &[Library]) -> Vec<Value> {
    let lessons = libraries.iter().flat_map(|library| &library.lessons);
    let told = lessons.map(|lesson| {
        let minutes: u32 = lesson.sittings.iter().map(|s| s.minutes).sum();
        let drills: BTreeSet<&str> = lesson.steps().filter_map(|s| s.what.drill()).collect();
        json!({
            "name": lesson.name, "audience": lesson.track.name(), "minutes": minutes,
            "drills": drills,
        })
    });
    told.collect()
}

/// Checks every drill of the libraries, in their order, with its variants.
fn check_all(libraries: &[Library], ask: &Check, output: &mut Output<'_>) -> Vec<Vec<Checked>> {
    let jobs: Vec<(&Library, &str)> = libraries
        .iter()
        .flat_map(|library| library.names().into_iter().map(move |name| (library, name)))
        .collect();
    let kept = ask.cache.as_ref().and_then(|f| Kept::open(f.clone()));
    let n_threads = ask.threads.unwrap_or_else(cores);
    let tag = output.words.tag();
    let work = |index: usize, watch: &dyn Fn(usize)| {
        let (library, name) = jobs.get(index).copied()?;
        let words = Words::new(tag).with(&library.words);
        let all = !ask.as_written;
        Some(drill::check(
            library,
            name,
            all,
            &words,
            kept.as_ref(),
            watch,
        ))
    };
    let tell = |progress: Progress| {
        output.say_error(
            &Message::new("check-progress")
                .with("done", count(progress.done))
                .with("all", count(jobs.len()))
                .with("states", count(progress.states)),
        );
    };
    let checked = share(jobs.len(), n_threads, work, tell);
    checked.into_iter().flatten().collect()
}

/// What was searched in all, and what was left out.
fn say_totals(drills: &[Vec<Checked>], seconds: f64, as_written: bool, output: &mut Output<'_>) {
    let all: Vec<&Checked> = drills.iter().flatten().collect();
    let n_kept = all.iter().filter(|d| d.kept).count();
    let like = |d: &&&Checked| !d.kept && d.proof.as_ref().is_some_and(|p| p.like.is_some());
    let n_like = all.iter().filter(like).count();
    let counts = Message::new("check-counts")
        .with("drills", count(drills.len()))
        .with("variants", count(all.len()))
        .with("like", count(n_like))
        .quantity("elapsed", seconds, Unit::Seconds);
    output.say(&counts);
    output.say(&figures("check-total", Figures::sum(&all)));
    if n_kept > 0 {
        output.say(&Message::new("check-skipped").with("kept", count(n_kept)));
    }
    if as_written {
        output.say_id("check-as-written");
    }
}

/// Writes the ways to where properties break; says whether that went well.
fn write_ways(drills: &[Checked], folder: &Path, output: &mut Output<'_>) -> bool {
    match ways::write(drills, folder, &output.words) {
        Ok(written) => {
            for path in written {
                let path = Arg::Verbatim(path.display().to_string());
                output.say_error(&Message::new("check-written").with("path", path));
            }
            true
        }
        Err((path, error)) => {
            faults::print(&[super::unreadable(&path, &error)], output);
            false
        }
    }
}

/// The libraries of the paths, or the one that is shipped, and every fault.
fn read_all(paths: &[PathBuf]) -> (Vec<Library>, Vec<Diagnostic>) {
    let mut libraries = Vec::new();
    let mut found = Vec::new();
    let mut keep = |(library, mut faults): (Library, Vec<Diagnostic>)| {
        found.append(&mut faults);
        found.extend(library.missing_words.iter().cloned());
        libraries.push(library);
    };
    if paths.is_empty() {
        keep(Library::shipped());
    }
    let mut folders: Vec<&Path> = Vec::new();
    for path in paths {
        match path.metadata() {
            Ok(_) if folders.contains(&folder_of(path)) => {}
            Ok(_) => {
                folders.push(folder_of(path));
                let (library, mut faults) = Library::load(folder_of(path));
                if library.scenarios.is_empty() && faults.is_empty() {
                    faults.push(super::whole(path, Message::new("terminal-check-empty")));
                }
                keep((library, faults));
            }
            Err(error) => keep((Library::default(), vec![super::unreadable(path, &error)])),
        }
    }
    (libraries, found)
}

/// The scenario folder of a path: itself, or of a file in its `sites` or `drills` the folder above them.
fn folder_of(path: &Path) -> &Path {
    let levels = if path.is_file() { 2 } else { 0 };
    path.ancestors().nth(levels).unwrap_or(path)
}
