//! The words that come with a folder of scenarios: read, and held to what its drills and lessons need.
//!
//! A fault of form is told with its place.
//! A drill can be played without words, so a message that it lacks is told apart from the other faults.
//! Each language that has a folder is held to all drills and lessons; without any folder it is the reference.

use std::fs;
use std::path::{Path, PathBuf};
use std::sync::Arc;

use crate::scenario::Scenario;
use crate::scenario::lesson::{Hold, Lesson};
use crate::scenario::variation::variants;
use crate::words;
use crate::words::{Arg, Language, Message, OFFERED, Words};

use super::diagnostic::{Diagnostic, Source};
use super::library::{Library, Text, files, source};

/// Most letters by which a misspelt id differs from the one that was meant: assumption.
const MISSPELT_BY: usize = 2;

/// A word file, with the name of its language's folder.
pub(super) struct WordText {
    pub(super) language: String,
    pub(super) text: Text,
}

/// The words in `<language>/*.ftl` of a folder, with every fault of form; none if there is no such folder.
pub(super) fn read_words(folder: &Path, faults: &mut Vec<Diagnostic>) -> Vec<WordText> {
    let languages = fs::read_dir(folder).into_iter().flatten();
    let mut languages: Vec<PathBuf> = languages.filter_map(Result::ok).map(|e| e.path()).collect();
    languages.retain(|p| p.is_dir());
    languages.sort();
    let mut read = Vec::new();
    for path in languages {
        let name = path.file_name().unwrap_or_default().to_string_lossy();
        for text in files(&path, "ftl", faults) {
            let own = source(&text);
            let wrong = words::misread(&text.text).into_iter();
            faults.extend(wrong.map(|m| own.at_offset(m.at, &m.text, m.message)));
            read.push(WordText {
                language: name.to_string(),
                text,
            });
        }
    }
    read
}

/// The messages that the drills and lessons need and that no word file has, each with the file in which it has to stand.
pub(super) fn missing_words(
    folder: &Path,
    texts: &[WordText],
    library: &Library,
) -> Vec<Diagnostic> {
    let all: Vec<(String, String)> = texts.iter().map(WordText::said).collect();
    let has_folder = |l: &&Language| texts.iter().any(|t| t.language == l.tag);
    let mut languages: Vec<&Language> = OFFERED.iter().filter(has_folder).collect();
    if languages.is_empty() {
        languages.extend(OFFERED.first());
    }
    let scenarios = library.scenarios.iter();
    let mut wanted: Vec<(String, String)> = scenarios.flat_map(needed).collect();
    wanted.extend(library.lessons.iter().flat_map(|l| needed_by_lesson(l)));
    wanted.sort_by(|a, b| a.0.cmp(&b.0));
    wanted.dedup_by(|a, b| a.0 == b.0);
    let mut faults = Vec::new();
    for language in languages {
        let shipped = Words::new(language.tag);
        let spoken = shipped.with(&all);
        // A message that nobody asks for may be one that is missing, misspelt.
        let mut spare: Vec<(&Text, String)> = Vec::new();
        for own in texts.iter().filter(|t| t.language == language.tag) {
            let ids = words::ids(&own.text.text).into_iter();
            let ids = ids.filter(|id| !shipped.has(id) && wanted.iter().all(|w| w.0 != *id));
            spare.extend(ids.map(|id| (&own.text, id)));
        }
        for (id, of) in wanted.iter().filter(|(id, _)| !spoken.has(id)) {
            let file = folder.join(language.tag).join(format!("{of}.ftl"));
            faults.push(missing(id, &file, &spare));
        }
    }
    faults
}

impl WordText {
    /// The language's folder and the text, as words take them.
    pub(super) fn said(&self) -> (String, String) {
        (self.language.clone(), self.text.text.clone())
    }
}

/// The ids that a drill needs, and the file for them.
fn needed(scenario: &Arc<Scenario>) -> impl Iterator<Item = (String, String)> {
    let name = scenario.name.as_str();
    let parts = ["title", "summary", "goal"].into_iter();
    let parts = parts.map(move |part| format!("drill-{name}-{part}"));
    let variants = variants(scenario).into_iter();
    let changes = variants.flat_map(|v| v.changes.clone());
    let changes = changes.map(|change| format!("variation-{}", change.name));
    parts.chain(changes).map(move |id| (id, name.to_owned()))
}

/// The ids that a lesson needs, and the file for them.
fn needed_by_lesson(lesson: &Lesson) -> Vec<(String, String)> {
    let named = |begin: &str, names: &[String]| -> Vec<String> {
        names.iter().map(|name| format!("{begin}-{name}")).collect()
    };
    let mut ids = vec![
        format!("lesson-{}-title", lesson.name),
        format!("lesson-{}-about", lesson.name),
    ];
    ids.extend(named("prepare", &lesson.prepare));
    ids.extend(named("prebrief", &lesson.prebrief));
    ids.extend(named("handout", &lesson.handout));
    let objectives = lesson.objectives.iter();
    ids.extend(objectives.map(|o| format!("objective-{}", o.name)));
    let sittings = lesson.sittings.iter();
    ids.extend(sittings.map(|s| format!("sitting-{}", s.name)));
    ids.extend(lesson.debrief.iter().flat_map(|(_, p)| named("prompt", p)));
    for step in lesson.steps() {
        ids.push(format!("step-{}", step.say));
        ids.extend(named("question", &step.ask));
        let moments = step.holds.iter().filter_map(|hold| match hold {
            Hold::After(_, ask) => Some(format!("moment-{ask}")),
            Hold::Prediction(_) => None,
        });
        ids.extend(moments);
    }
    let file = format!("lessons-{}", lesson.name);
    ids.into_iter().map(|id| (id, file.clone())).collect()
}

/// The fault of a message that is missing: at the one that looks like it, misspelt, if there is one.
fn missing(id: &str, file: &Path, spare: &[(&Text, String)]) -> Diagnostic {
    let path = file.display().to_string();
    let message = Message::new("error-words-missing")
        .with("id", Arg::Verbatim(id.to_owned()))
        .with("file", Arg::Verbatim(path.clone()));
    let plain = |id: &str| id.to_lowercase().replace('_', "-");
    let apart = |other: &str| strsim::damerau_levenshtein(&plain(id), &plain(other));
    let near = spare
        .iter()
        .map(|s| (apart(&s.1), s))
        .min_by_key(|(by, _)| *by);
    let Some((_, (text, name))) = near.filter(|(by, _)| *by <= MISSPELT_BY) else {
        let own = Source {
            file: &path,
            text: "",
        };
        return own.whole(message);
    };
    let begins = |line: &str| {
        line.strip_prefix(name.as_str())
            .is_some_and(|r| r.trim_start().starts_with('='))
    };
    let line = text
        .text
        .lines()
        .position(begins)
        .map_or(1, |index| index + 1);
    Diagnostic {
        hint: Some(Message::new("error-hint-misspelt").with("name", Arg::Verbatim(name.clone()))),
        ..source(text).at_line(line, 1, name, message)
    }
}
