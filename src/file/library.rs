//! The scenarios there are: those that are shipped, or those of a folder.
//!
//! A folder has `sites/*.ron`, `drills/*.ron` and perhaps `lessons/*.ron`, `words/<language>/*.ftl` and `local.ron`; files are read in order of their names.
//! The shipped ones are part of the program, so that the terminal needs no folder beside it.

use std::collections::BTreeSet;
use std::fs;
use std::io;
use std::path::{Path, PathBuf};
use std::sync::Arc;

use sha2::{Digest as _, Sha256};

use crate::scenario::Scenario;
use crate::scenario::lesson::Lesson;
use crate::shipped;
use crate::site::Interlock;
use crate::words;
use crate::words::{Arg, Message, REFERENCE, word_files};

use super::diagnostic::{Diagnostic, Source};
use super::drill_build::{
    build_drill, drill_loses_names, faults_without_site, parse_drill, unknown_cords, unknown_site,
};
use super::drill_build_variants::variants;
use super::drill_file::{DrillFile, InterlockFile};
use super::lesson_build::{Known, build_lesson};
use super::lesson_file::{LessonFile, parse_lesson};
use super::local_facts::LocalFacts;
use super::site_build::{Fitted, build_site, parse_site, site_loses_names};
use super::site_file::SiteFile;
use super::words_folder::{WordText, missing_words, read_words};

/// Scenarios by name, in the order in which to take them.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Library {
    /// The scenarios that could be read.
    pub scenarios: Vec<Arc<Scenario>>,
    /// The lessons that could be read.
    pub lessons: Vec<Arc<Lesson>>,
    /// What is known of the place where it is taught.
    pub local: LocalFacts,
    /// Words that came with a folder: a language's folder and a text in Fluent syntax.
    pub words: Vec<(String, String)>,
    /// Messages that the drills of a folder need and that are missing; the drills can be played all the same.
    pub missing_words: Vec<Diagnostic>,
}

pub(super) struct Text {
    pub(super) file: String,
    pub(super) text: String,
}

struct ReadSite {
    text: Text,
    file: SiteFile,
}

/// Sites whose own faults are told already.
#[derive(Default)]
struct Broken {
    /// Those that could be read, by name.
    named: Vec<String>,
    /// Whether there are others, whose names nobody knows.
    nameless: bool,
}

impl Library {
    /// The shipped scenarios, and whatever is wrong with them.
    pub fn shipped() -> (Self, Vec<Diagnostic>) {
        let own = |(file, text): &(&str, &str)| Text {
            file: (*file).to_owned(),
            text: (*text).to_owned(),
        };
        Self::read(
            shipped::SITES.iter().map(own).collect(),
            shipped::DRILLS.iter().map(own).collect(),
            shipped::LESSONS.iter().map(own).collect(),
            &shipped::LOCAL.iter().map(own).collect::<Vec<_>>(),
            &[],
        )
    }

    /// The scenarios of a folder, and everything that is wrong with them.
    pub fn load(folder: &Path) -> (Self, Vec<Diagnostic>) {
        let mut faults = Vec::new();
        let sites = texts(&folder.join("sites"), &mut faults);
        let drills = texts(&folder.join("drills"), &mut faults);
        let lessons = folder.join("lessons");
        let mut lessons = if lessons.is_dir() {
            texts(&lessons, &mut faults)
        } else {
            Vec::new()
        };
        let mut local = texts(folder, &mut faults);
        local.retain(|t| Path::new(&t.file).ends_with("local.ron"));
        let folder = folder.join("words");
        let n_faults = faults.len();
        let words = read_words(&folder, &mut faults);
        if faults.len() > n_faults {
            // A message that a lesson names may be lost in what can't be read.
            lessons.clear();
        }
        let (mut library, mut found) = Self::read(sites, drills, lessons, &local, &words);
        faults.append(&mut found);
        // What can't be read may hold what is missing.
        if faults.is_empty() {
            library.missing_words = missing_words(&folder, &words, &library);
        }
        library.words = words.iter().map(WordText::said).collect();
        (library, faults)
    }

    /// The scenario of this name.
    pub fn scenario(&self, name: &str) -> Option<&Arc<Scenario>> {
        self.scenarios.iter().find(|s| s.name == name)
    }

    /// The names of all scenarios.
    pub fn names(&self) -> Vec<&str> {
        self.scenarios.iter().map(|s| s.name.as_str()).collect()
    }

    fn read(
        site_texts: Vec<Text>,
        drill_texts: Vec<Text>,
        lesson_texts: Vec<Text>,
        local_texts: &[Text],
        words: &[WordText],
    ) -> (Self, Vec<Diagnostic>) {
        let mut faults = Vec::new();
        let mut sites = Vec::new();
        let mut broken = Broken::default();
        for text in site_texts {
            match parse_site(&source(&text)) {
                Ok(file) => {
                    let mut wrong = site_faults(&file, source(&text));
                    if wrong.is_empty() {
                        sites.push(ReadSite { text, file });
                    } else {
                        faults.append(&mut wrong);
                        broken.named.push(file.name);
                    }
                }
                Err(misread) => {
                    faults.append(&mut misread.told(&source(&text), site_loses_names, site_faults));
                    broken.nameless = true;
                }
            }
        }
        let mut scenarios = Vec::new();
        for text in &drill_texts {
            match parse_drill(&source(text)) {
                Ok(file) => match scenario(source(text), &file, &sites, &broken) {
                    Ok(scenario) => scenarios.extend(scenario.map(Arc::new)),
                    Err(mut wrong) => faults.append(&mut wrong),
                },
                Err(misread) => {
                    let judge = |file: &DrillFile, own: Source<'_>| {
                        let scenario = scenario(own, file, &sites, &broken);
                        scenario.err().unwrap_or_default()
                    };
                    faults.append(&mut misread.told(&source(text), drill_loses_names, judge));
                }
            }
        }
        let mut library = Self {
            scenarios,
            ..Self::default()
        };
        // A lesson may name a drill whose own faults are told already.
        if faults.is_empty() {
            let read = read_lessons(&lesson_texts, &library.scenarios, words, &mut faults);
            library.lessons = read;
        }
        for text in local_texts {
            match LocalFacts::read(source(text)) {
                Ok(local) => library.local = local,
                Err(mut wrong) => faults.append(&mut wrong),
            }
        }
        (library, faults)
    }
}

/// The lessons, each held to the drills and to the messages of any language.
fn read_lessons(
    texts: &[Text],
    scenarios: &[Arc<Scenario>],
    words: &[WordText],
    faults: &mut Vec<Diagnostic>,
) -> Vec<Arc<Lesson>> {
    let shipped = word_files(REFERENCE).into_iter().map(|f| f.text);
    let all = shipped.chain(words.iter().map(|w| w.text.text.as_str()));
    // Reading all words takes a while, and only lessons need it.
    let all = all.filter(|_| !texts.is_empty());
    let ids: BTreeSet<String> = all.flat_map(words::ids).collect();
    let known = Known {
        scenarios,
        ids: &ids,
    };
    let mut lessons = Vec::new();
    for text in texts {
        let lesson = parse_lesson(&source(text)).map_err(|misread| {
            let judge = |file: &LessonFile, own: Source<'_>| {
                let lesson = build_lesson(&own, file, known);
                lesson.err().unwrap_or_default()
            };
            misread.told(&source(text), |_, _| false, judge)
        });
        match lesson.and_then(|file| build_lesson(&source(text), &file, known)) {
            Ok(lesson) => lessons.push(Arc::new(lesson)),
            Err(mut wrong) => faults.append(&mut wrong),
        }
    }
    lessons
}

/// The faults of a site, every part of it looked at, whichever cords a drill takes.
fn site_faults(file: &SiteFile, own: Source<'_>) -> Vec<Diagnostic> {
    let cords: Vec<String> = file.cords.iter().map(|c| c.name.clone()).collect();
    let fitted = Fitted {
        interlock: Interlock::Fitted,
        cords: &cords,
    };
    build_site(own, file, &fitted).err().unwrap_or_default()
}

/// A scenario; none if its site is among those that are broken, whose own faults are told already.
fn scenario(
    own: Source<'_>,
    file: &DrillFile,
    sites: &[ReadSite],
    broken: &Broken,
) -> Result<Option<Scenario>, Vec<Diagnostic>> {
    let Some(site) = sites.iter().find(|s| s.file.name == file.site) else {
        let sound = sites.iter().map(|s| s.file.name.as_str());
        let known: Vec<&str> = sound
            .chain(broken.named.iter().map(String::as_str))
            .collect();
        return if broken.nameless || known.contains(&file.site.as_str()) {
            Ok(None)
        } else {
            let mut wrong = vec![unknown_site(&own, file, &known)];
            wrong.extend(faults_without_site(&own, file));
            Err(wrong)
        };
    };
    let cords: Vec<&str> = site.file.cords.iter().map(|c| c.name.as_str()).collect();
    let digest = digest(&[&site.text.text, own.text]);
    let build = |file: &DrillFile| {
        let mut wrong = unknown_cords(&own, file, &cords);
        if !wrong.is_empty() {
            wrong.extend(faults_without_site(&own, file));
            return Err(wrong);
        }
        let fitted = Fitted {
            interlock: interlock(file.interlock),
            cords: &file.cords,
        };
        let built = build_site(source(&site.text), &site.file, &fitted)?;
        build_drill(own, file, built, digest.clone())
    };
    let mut scenario = build(file)?;
    scenario.variants = variants(&own, file, build)?;
    Ok(Some(scenario))
}

pub(super) fn source(text: &Text) -> Source<'_> {
    Source {
        file: &text.file,
        text: &text.text,
    }
}

/// SHA-256 over texts or bytes, each with its length before it, in hexadecimal.
pub fn digest<T: AsRef<[u8]>>(parts: &[T]) -> String {
    let mut hash = Sha256::new();
    for part in parts {
        let bytes = part.as_ref();
        // Eight bytes on every platform.
        let length = u64::try_from(bytes.len()).unwrap_or(u64::MAX);
        hash.update(length.to_le_bytes());
        hash.update(bytes);
    }
    let mut text = String::new();
    for byte in hash.finalize() {
        for half in [byte >> 4, byte & 15] {
            text.push(char::from_digit(u32::from(half), 16).unwrap_or('0'));
        }
    }
    text
}

fn texts(folder: &Path, faults: &mut Vec<Diagnostic>) -> Vec<Text> {
    files(folder, "ron", faults)
}

pub(super) fn files(folder: &Path, ending: &str, faults: &mut Vec<Diagnostic>) -> Vec<Text> {
    let mut paths: Vec<PathBuf> = match fs::read_dir(folder) {
        Ok(entries) => entries.filter_map(Result::ok).map(|e| e.path()).collect(),
        Err(error) => {
            faults.push(unreadable(folder, &error));
            return Vec::new();
        }
    };
    paths.retain(|p| p.extension().is_some_and(|e| e == ending));
    paths.sort();
    let mut texts = Vec::new();
    for path in paths {
        match fs::read_to_string(&path) {
            Ok(text) => texts.push(Text {
                file: path.display().to_string(),
                text,
            }),
            Err(error) => faults.push(unreadable(&path, &error)),
        }
    }
    texts
}

/// The fault of a file or folder that can't be read.
pub(super) fn unreadable(path: &Path, error: &io::Error) -> Diagnostic {
    let file = path.display().to_string();
    Source {
        file: &file,
        text: "",
    }
    .whole(Message::new("error-unreadable").with("detail", Arg::Verbatim(error.to_string())))
}

fn interlock(file: InterlockFile) -> Interlock {
    match file {
        InterlockFile::Fitted => Interlock::Fitted,
        InterlockFile::Missing => Interlock::Missing,
        InterlockFile::Misfitted => Interlock::Misfitted,
        InterlockFile::Defeated => Interlock::Defeated,
    }
}
