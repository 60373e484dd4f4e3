//! Lesson files: as they are written, and from there to a [`Lesson`], with every fault named on the way.
//!
//! A lesson names drills by their names; one that isn't there is a fault.

use serde::Deserialize;

use crate::scenario::lesson::{Doing, Lesson, Part, Sitting};
use crate::words::{Arg, Message};

use super::diagnostic::{Diagnostic, Source};
use super::drill_build_course::track;
use super::drill_file::TrackFile;

/// The version of lesson files that this program reads.
const LESSON_VERSION: u32 = 1;

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct LessonFile {
    /// Version of the format.
    version: u32,
    /// Name, small letters and hyphens.
    name: String,
    /// Whom it is for.
    track: TrackFile,
    /// The times at which people come together.
    sittings: Vec<SittingFile>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct SittingFile {
    /// Name, small letters and hyphens.
    name: String,
    /// Its parts in order.
    parts: Vec<PartFile>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct PartFile {
    /// Minutes of people's time it is given.
    minutes: u32,
    /// What is done.
    what: DoingFile,
}

#[derive(Debug, Deserialize)]
enum DoingFile {
    /// Words of this name are said or talked about.
    Talk(String),
    /// The drill of this name, with explanations.
    Practice(String),
    /// The drill of this name, without help.
    Test(String),
}

/// Reads a lesson; the drills it names have to be among these.
///
/// # Errors
/// Every fault of the file.
pub(super) fn read_lesson(source: Source<'_>, drills: &[&str]) -> Result<Lesson, Vec<Diagnostic>> {
    let parsed = source.parse(LESSON_VERSION, |file: &LessonFile| file.version);
    let file = parsed.map_err(|misread| {
        let judge = |file: &LessonFile, source: Source<'_>| {
            build_lesson(&source, file, drills)
                .err()
                .unwrap_or_default()
        };
        misread.told(&source, |_, _| false, judge)
    })?;
    build_lesson(&source, &file, drills)
}

fn build_lesson(
    source: &Source<'_>,
    file: &LessonFile,
    drills: &[&str],
) -> Result<Lesson, Vec<Diagnostic>> {
    let mut faults = Vec::new();
    let mut sittings = Vec::new();
    for sitting in &file.sittings {
        if sitting.parts.is_empty() {
            faults.push(source.at(&[&sitting.name], Message::new("error-empty-sitting")));
        }
        let parts = sitting.parts.iter().map(|part| Part {
            minutes: part.minutes,
            what: doing(&part.what),
        });
        let parts: Vec<Part> = parts.collect();
        for drill in parts.iter().filter_map(|p| p.what.drill()) {
            if !drills.contains(&drill) {
                faults.push(unknown_drill(source, drill, drills));
            }
        }
        sittings.push(Sitting {
            name: sitting.name.clone(),
            parts,
        });
    }
    let track = track(file.track);
    if faults.is_empty() {
        Ok(Lesson {
            name: file.name.clone(),
            track,
            sittings,
        })
    } else {
        Err(faults)
    }
}

fn doing(file: &DoingFile) -> Doing {
    match file {
        DoingFile::Talk(name) => Doing::Talk(name.clone()),
        DoingFile::Practice(drill) => Doing::Practice(drill.clone()),
        DoingFile::Test(drill) => Doing::Test(drill.clone()),
    }
}

fn unknown_drill(source: &Source<'_>, drill: &str, drills: &[&str]) -> Diagnostic {
    let quoted = format!("\"{drill}\"");
    let message = Message::new("error-unknown-name")
        .with("name", Arg::Verbatim(drill.to_owned()))
        .said("kind", Message::new("error-kind-drill"));
    source
        .at(&["sittings", &quoted], message)
        .with_nearest(drills.iter().copied())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(text: &str) -> Result<Lesson, Vec<Diagnostic>> {
        let source = Source {
            file: "lesson",
            text,
        };
        read_lesson(source, &["there-and-back", "no-slide"])
    }

    #[test]
    fn a_lesson_adds_up_the_minutes_of_its_parts() {
        let lesson = read(
            "(version: 1, name: \"a\", track: Class, sittings: [(name: \"first\", parts: [\
             (minutes: 8, what: Talk(\"welcome\")), (minutes: 20, what: Practice(\"no-slide\"))])])",
        );
        let lesson = lesson.unwrap();
        assert_eq!(lesson.minutes(), 28);
        let drills: Vec<_> = lesson.sittings[0]
            .parts
            .iter()
            .map(|p| p.what.drill())
            .collect();
        assert_eq!(drills, [None, Some("no-slide")]);
    }

    #[test]
    fn a_drill_that_is_not_there_and_a_sitting_without_parts_are_both_told_with_their_line() {
        let faults = read(
            "(version: 1, name: \"a\", track: Home, sittings: [\n(name: \"empty\", parts: []),\n\
             (name: \"first\", parts: [(minutes: 5, what: Test(\"no-slid\"))])])",
        );
        let lines: Vec<usize> = faults.unwrap_err().iter().map(|f| f.line).collect();
        assert_eq!(lines, [2, 3]);
    }

    #[test]
    fn a_number_that_is_none_does_not_hide_a_drill_that_is_not_there() {
        let faults = read(
            "(version: 1, name: \"a\", track: Home, sittings: [\n\
             (name: \"first\", parts: [(minutes: few, what: Talk(\"welcome\")),\n\
             (minutes: 5, what: Test(\"no-slid\"))])])",
        );
        let faults = faults.unwrap_err();
        let told = faults.iter().map(|f| (f.line, f.text.as_str()));
        assert_eq!(told.collect::<Vec<_>>(), [(2, "few"), (3, "\"no-slid\"")]);
    }
}
