//! The catalog: what is on the shelf, for a reader or as JSON.
//!
//! The `--json` document is an array with one object for each drill, in the order in which to take them:
//! `name`, `title`, `level` (1 to 5), `tracks`, `way`, `directions` and `teaches` by their names, `site`, and `variations`, the names that `play --variation` takes.

use serde_json::Value;
use serde_json::json;

use crate::file::Library;
use crate::session::view::{DrillCard, LessonCard, ShelfView, TrackCard};
use crate::session::{Session, offered};
use crate::words::{Arg, Message};

use super::output::Output;
use super::{BAD_INPUT, DONE, faults, report, reports};

/// Prints the drills of a track, or of all; the status to end with.
pub(super) fn run(
    track: Option<&str>,
    as_json: bool,
    library: Library,
    output: &mut Output<'_>,
) -> u8 {
    let session = Session::new(library, output.words.tag());
    let mut view = session.shelf();
    if let Some(name) = track {
        if !view.tracks.iter().any(|t| t.name == name) {
            return unknown_track(name, &view.tracks, output);
        }
        view.tracks.retain(|t| t.name == name);
        view.lessons.retain(|l| l.track == name);
        view.drills.retain(|d| d.tracks.iter().any(|t| t == name));
    }
    if as_json {
        let drills = view.drills.iter();
        let drills: Vec<Value> = drills
            .filter_map(|card| drill_json(card, session.library(), output))
            .collect();
        reports::print_json(&json!(drills), output);
    } else {
        output.lines(&shelf(&view, output));
    }
    let missing = &session.library().missing_words;
    faults::print(missing, output);
    if missing.is_empty() { DONE } else { BAD_INPUT }
}

fn unknown_track(name: &str, tracks: &[TrackCard], output: &mut Output<'_>) -> u8 {
    let names: Vec<&str> = tracks.iter().map(|t| t.name.as_str()).collect();
    let missing = Message::new("terminal-no-track").with("name", Arg::Verbatim(name.to_owned()));
    output.say_error(&missing);
    let names = Arg::Verbatim(names.join(", "));
    output.say_error(&Message::new("error-hint-known").with("names", names));
    BAD_INPUT
}

/// The shelf: title, cautions, lessons, and the drills of each track.
fn shelf(view: &ShelfView, output: &Output<'_>) -> Vec<String> {
    let mut lines = vec![view.title.clone(), view.intro.clone(), String::new()];
    lines.extend(report::cautions(view));
    lines.push(String::new());
    lines.extend(lessons(&view.lessons, &view.lessons_title));
    for track in &view.tracks {
        let title = Arg::Verbatim(track.title.clone());
        let head = Message::new("terminal-drills").with("track", title);
        lines.push(output.words.say(&head));
        let own = view
            .drills
            .iter()
            .filter(|d| d.tracks.contains(&track.name));
        lines.extend(own.flat_map(|card| drill(card, output)));
    }
    lines
}

/// The lessons, each with its name, its length and what it is for.
pub(super) fn lessons(cards: &[LessonCard], title: &str) -> Vec<String> {
    let lines = cards.iter().flat_map(|lesson| {
        let head = format!("  {}", lesson.name);
        let title = format!("    {}, {}", lesson.title, lesson.minutes);
        [head, title, format!("    {}", lesson.about)]
    });
    let head = Some(format!("{title}:")).filter(|_| !cards.is_empty());
    head.into_iter().chain(lines).collect()
}

/// A drill: its name, and below it what it is about.
fn drill(card: &DrillCard, output: &Output<'_>) -> Vec<String> {
    let course = Message::new("terminal-drill")
        .with("level", Arg::Verbatim(card.level.clone()))
        .with("directions", Arg::Verbatim(card.directions.clone()));
    let course = output.words.say(&course);
    let about = [
        &card.title,
        &card.summary,
        &course,
        &card.facts,
        &card.content_note,
    ];
    let about = about.into_iter().filter(|line| !line.is_empty());
    let about = about.map(|line| format!("    {line}"));
    [format!("  {}", card.name)]
        .into_iter()
        .chain(about)
        .collect()
}

fn drill_json(card: &DrillCard, library: &Library, output: &Output<'_>) -> Option<Value> {
    let scenario = library.scenario(&card.name)?;
    let course = &scenario.course;
    let directions: Vec<&str> = course.directions.iter().map(|d| d.name()).collect();
    let teaches: Vec<&str> = course.teaches.iter().map(|o| o.name()).collect();
    let variations = offered(library, &card.name, &output.words)?;
    let variations: Vec<String> = variations.into_iter().map(|v| v.name).collect();
    Some(json!({
        "name": card.name, "title": card.title, "level": course.level.number(),
        "tracks": card.tracks, "way": course.way.name(), "directions": directions,
        "teaches": teaches, "site": scenario.site.name, "variations": variations,
    }))
}
