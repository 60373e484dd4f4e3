//! The scenarios there are: those that are shipped, or those of a folder.
//!
//! A folder has `sites/*.ron`, `drills/*.ron` and perhaps `apparatus/*.ron`, `lessons/*.ron`, `words/<language>/*.ftl` and `local.ron`; files are read in order of their names.
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

use super::apparatus::Apparatus;
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
use super::take_up::TakenUp;
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
    /// Shared pieces that no site takes up, so that only their form was judged.
    pub unused_pieces: Vec<Diagnostic>,
}

#[derive(Debug)]
pub(super) struct Text {
    pub(super) file: String,
    pub(super) text: String,
}

/// The files of scenarios, each kind in order of names.
struct Texts {
    apparatus: Vec<Text>,
    sites: Vec<Text>,
    drills: Vec<Text>,
    lessons: Vec<Text>,
    local: Vec<Text>,
}

struct ReadSite<'a> {
    taken: TakenUp<'a>,
    file: SiteFile,
}

/// Files of one kind whose own faults are told already.
#[derive(Debug, Default)]
pub(super) struct Broken {
    /// Those that could be read, by name.
    pub(super) named: Vec<String>,
    /// Whether there are others, whose names nobody knows.
    nameless: bool,
}

impl Broken {
    /// Whether something of this name may be among them.
    pub(super) fn may_be(&self, name: &str) -> bool {
        self.nameless || self.named.iter().any(|n| n == name)
    }
}

impl Library {
    /// The shipped scenarios, and whatever is wrong with them.
    pub fn shipped() -> (Self, Vec<Diagnostic>) {
        let own = |(file, text): &(&str, &str)| Text {
            file: (*file).to_owned(),
            text: (*text).to_owned(),
        };
        let all = |texts: &[(&str, &str)]| texts.iter().map(own).collect();
        let texts = Texts {
            apparatus: all(shipped::APPARATUS),
            sites: all(shipped::SITES),
            drills: all(shipped::DRILLS),
            lessons: all(shipped::LESSONS),
            local: all(shipped::LOCAL),
        };
        Self::read(texts, &[], Vec::new())
    }

    /// The scenarios of a folder, and everything that is wrong with them.
    pub fn load(folder: &Path) -> (Self, Vec<Diagnostic>) {
        let mut faults = Vec::new();
        let mut texts = Texts {
            sites: texts(&folder.join("sites"), &mut faults),
            drills: texts(&folder.join("drills"), &mut faults),
            apparatus: texts_if_there(&folder.join("apparatus"), &mut faults),
            lessons: texts_if_there(&folder.join("lessons"), &mut faults),
            local: texts(folder, &mut faults),
        };
        texts
            .local
            .retain(|t| Path::new(&t.file).ends_with("local.ron"));
        let folder = folder.join("words");
        let n_faults = faults.len();
        let words = read_words(&folder, &mut faults);
        if faults.len() > n_faults {
            // A message that a lesson names may be lost in what can't be read.
            texts.lessons.clear();
        }
        let (mut library, faults) = Self::read(texts, &words, faults);
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

    /// Reads all texts, and adds what is wrong with them to the faults there are.
    fn read(
        texts: Texts,
        words: &[WordText],
        mut faults: Vec<Diagnostic>,
    ) -> (Self, Vec<Diagnostic>) {
        let apparatus = Apparatus::read(texts.apparatus, &mut faults);
        let unused_pieces = apparatus.unused(&texts.sites);
        let (sites, broken) = read_sites(texts.sites, &apparatus, &mut faults);
        let mut scenarios = Vec::new();
        let mut unsound = Broken::default();
        for text in &texts.drills {
            match parse_drill(&source(text)) {
                Ok(file) => match scenario(source(text), &file, &sites, &broken) {
                    Ok(Some(scenario)) => scenarios.push(Arc::new(scenario)),
                    Ok(None) => unsound.named.push(file.name),
                    Err(mut wrong) => {
                        faults.append(&mut wrong);
                        unsound.named.push(file.name);
                    }
                },
                Err(misread) => {
                    let judge = |file: &DrillFile, own: Source<'_>| {
                        let scenario = scenario(own, file, &sites, &broken);
                        scenario.err().unwrap_or_default()
                    };
                    faults.append(&mut misread.told(&source(text), drill_loses_names, judge));
                    unsound.nameless = true;
                }
            }
        }
        let lessons = read_lessons(&texts.lessons, &scenarios, &unsound, words, &mut faults);
        let mut library = Self {
            // A lesson isn't given without drills that it names.
            lessons: if unsound.named.is_empty() && !unsound.nameless {
                lessons
            } else {
                Vec::new()
            },
            scenarios,
            unused_pieces,
            ..Self::default()
        };
        for text in &texts.local {
            match LocalFacts::read(source(text)) {
                Ok(local) => library.local = local,
                Err(mut wrong) => faults.append(&mut wrong),
            }
        }
        (library, faults)
    }
}

/// The sites with what they take up; a fault of something that several take up is told once.
fn read_sites<'a>(
    texts: Vec<Text>,
    apparatus: &'a Apparatus,
    faults: &mut Vec<Diagnostic>,
) -> (Vec<ReadSite<'a>>, Broken) {
    let mut sites = Vec::new();
    let mut broken = Broken::default();
    for text in texts {
        let mut taken = TakenUp::new(text, apparatus);
        let mut wrong = std::mem::take(&mut taken.faults);
        let own = source(&taken.whole);
        let read = parse_site(&own);
        match &read {
            Ok(file) => wrong.extend(taken.placed(site_faults(file, own))),
            Err(_) => broken.nameless = true,
        }
        match read {
            Ok(file) if wrong.is_empty() && !taken.is_unfilled() => {
                sites.push(ReadSite { taken, file });
            }
            Ok(file) => broken.named.push(file.name),
            Err(misread) => {
                let told = misread.told(&own, site_loses_names, site_faults);
                wrong.extend(taken.placed(told));
            }
        }
        wrong.sort_by_key(|f| (f.line, f.column));
        for fault in wrong {
            if !faults.contains(&fault) {
                faults.push(fault);
            }
        }
    }
    (sites, broken)
}

/// The lessons, each held to the drills and to the messages of any language; what hangs on a drill that is unsound isn't told.
fn read_lessons(
    texts: &[Text],
    scenarios: &[Arc<Scenario>],
    unsound: &Broken,
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
        unsound,
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
    sites: &[ReadSite<'_>],
    broken: &Broken,
) -> Result<Option<Scenario>, Vec<Diagnostic>> {
    let Some(site) = sites.iter().find(|s| s.file.name == file.site) else {
        let sound = sites.iter().map(|s| s.file.name.as_str());
        let known: Vec<&str> = sound
            .chain(broken.named.iter().map(String::as_str))
            .collect();
        return if broken.may_be(&file.site) {
            Ok(None)
        } else {
            let mut wrong = vec![unknown_site(&own, file, &known)];
            wrong.extend(faults_without_site(&own, file));
            Err(wrong)
        };
    };
    let cords: Vec<&str> = site.file.cords.iter().map(|c| c.name.as_str()).collect();
    let digest = digest(&[&site.taken.whole.text, own.text]);
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
        let whole = source(&site.taken.whole);
        let built = build_site(whole, &site.file, &fitted).map_err(|f| site.taken.placed(f))?;
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

/// The files of a folder that needn't be there.
fn texts_if_there(folder: &Path, faults: &mut Vec<Diagnostic>) -> Vec<Text> {
    if folder.is_dir() {
        texts(folder, faults)
    } else {
        Vec::new()
    }
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
