//! The heading of a list of actions: which drill it plays and what has to come of it.
//!
//! ```text
//! # Why somebody would do this, in a sentence.
//! # drill: there-and-back
//! # variations: as-written dark-night
//! # seeds: 1 7 2026
//! # passes: no
//! # finds: LineFed LiveBlades BlindReturn?
//! # mistake: live-inlet
//! # recovers: there-and-back-put-right
//! ```
//!
//! A list without `# drill:` has no heading; other comments are for people.
//! Whether what it says is so is for those to ask who play it.

use std::sync::Arc;

use crate::scenario::Scenario;
use crate::scenario::variation::{AS_WRITTEN, named};
use crate::shipped;
use crate::words::{Arg, Message};

use super::diagnostic::{Diagnostic, Source};
use super::library::Library;

/// Seeds that a list is played with when it names none.
const SEEDS: [u64; 3] = [1, 7, 2_026];

/// What a list says of itself.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Heading {
    /// The drill it is for.
    pub drill: String,
    /// The variants of the drill it has to hold for; the drill as written if it names none.
    pub variations: Vec<String>,
    /// Seeds it has to hold for: of what is drawn within a variant.
    pub seeds: Vec<u64>,
    /// Whether the run passes.
    pub passes: bool,
    /// The rules that are found and no others, and whether each breaks its criterion.
    pub finds: Vec<(String, bool)>,
    /// The mistakes that it is the plainest way to make, by their names.
    pub mistakes: Vec<String>,
    /// The list that makes the same mistake and puts it right.
    pub recovers: Option<String>,
    /// The list that goes another way from before the mistake, and passes.
    pub rewinds: Option<String>,
}

impl Heading {
    /// The drills that the list is for: each variant that it names.
    ///
    /// # Errors
    /// The name of the drill or of the variant that isn't there.
    pub fn scenarios(&self, library: &Library) -> Result<Vec<Arc<Scenario>>, String> {
        let drill = library.scenario(&self.drill);
        let drill = drill.ok_or_else(|| self.drill.clone())?;
        let variant = |name: &String| named(drill, name).ok_or_else(|| name.clone());
        self.variations.iter().map(variant).collect()
    }
}

/// The shipped lists that say of themselves that they pass a drill, in some variant or other.
pub fn passing_lists(drill: &str) -> Vec<Source<'static>> {
    let sources = shipped::LISTS
        .iter()
        .map(|(file, text)| Source { file, text });
    let passes = |source: &Source<'static>| {
        let heading = read_heading(*source).ok().flatten();
        heading.is_some_and(|h| h.drill == drill && h.passes)
    };
    sources.filter(passes).collect()
}

/// Reads the heading of a list; none if it has none.
///
/// # Errors
/// Lines of the heading that are not understood, and those that are missing.
pub fn read_heading(source: Source<'_>) -> Result<Option<Heading>, Vec<Diagnostic>> {
    let mut drill = None;
    let mut passes = None;
    let mut heading = Heading {
        drill: String::new(),
        variations: vec![AS_WRITTEN.to_owned()],
        seeds: SEEDS.to_vec(),
        passes: false,
        finds: Vec::new(),
        mistakes: Vec::new(),
        recovers: None,
        rewinds: None,
    };
    let mut faults = Vec::new();
    for (index, line) in source.text.lines().enumerate() {
        let Some((word, value)) = line.strip_prefix("# ").and_then(|l| l.split_once(": ")) else {
            continue;
        };
        let value = value.trim();
        let names = || value.split_whitespace().map(str::to_owned);
        match word {
            "drill" => drill = Some(value.to_owned()),
            "variations" => heading.variations = names().collect(),
            "passes" if value == "yes" || value == "no" => passes = Some(value == "yes"),
            "finds" => heading.finds = names().map(found).collect(),
            "mistake" => heading.mistakes.extend(names()),
            "recovers" => heading.recovers = Some(value.to_owned()),
            "rewinds" => heading.rewinds = Some(value.to_owned()),
            "seeds" => match names().map(|n| n.parse()).collect() {
                Ok(seeds) => heading.seeds = seeds,
                Err(_) => faults.push(wrong(&source, index, line)),
            },
            "passes" => faults.push(wrong(&source, index, line)),
            _ => {}
        }
    }
    let Some(drill) = drill else {
        return Ok(None);
    };
    let Some(passes) = passes else {
        faults.push(source.whole(Message::new("error-heading-passes")));
        return Err(faults);
    };
    if faults.is_empty() {
        Ok(Some(Heading {
            drill,
            passes,
            ..heading
        }))
    } else {
        Err(faults)
    }
}

/// A rule's name; a question mark behind it says that it is told and breaks nothing.
fn found(name: String) -> (String, bool) {
    match name.strip_suffix('?') {
        Some(told) => (told.to_owned(), false),
        None => (name, true),
    }
}

fn wrong(source: &Source<'_>, index: usize, line: &str) -> Diagnostic {
    let message = Message::new("error-heading").with("line", Arg::Verbatim(line.to_owned()));
    source.at_line(index + 1, 1, line, message)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn heading(text: &str) -> Result<Option<Heading>, usize> {
        read_heading(Source { file: "list", text }).map_err(|faults| faults.len())
    }

    #[test]
    fn a_heading_says_what_has_to_come_of_a_list() {
        let read =
            heading("# drill: a\n# passes: no\n# finds: LineFed Touch?\n# seeds: 4\nwait 1s\n");
        let read = read.unwrap().unwrap();
        assert_eq!((read.drill.as_str(), read.passes), ("a", false));
        assert_eq!(read.seeds, [4]);
        assert_eq!(read.variations, [AS_WRITTEN]);
        assert_eq!(
            read.finds,
            [("LineFed".to_owned(), true), ("Touch".to_owned(), false)]
        );
    }

    #[test]
    fn a_list_without_a_drill_has_no_heading_and_a_torn_one_is_told() {
        assert_eq!(heading("# finds: nothing yet\nwait 1s\n"), Ok(None));
        assert_eq!(heading("# drill: a\nwait 1s\n"), Err(1));
        assert_eq!(heading("# drill: a\n# passes: perhaps\n"), Err(2));
        assert_eq!(heading("# drill: a\n# passes: yes\n# seeds: one\n"), Err(1));
    }
}
