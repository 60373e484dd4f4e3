//! The mistakes and the drills that show them: each made by a list of actions, found by the marking, and put right.
//!
//! A list says in its heading which mistake it is the plainest way to make; here it is played and held to what it says.
//! Where nobody was harmed another list makes the same mistake and puts it right; where somebody was, another list of the same drill goes a better way from before it, and passes.
//! What the explanation of a mistake says is not judged here.

mod names;

use std::collections::BTreeSet;

use crate::file::{Diagnostic, Heading, Library, Source, read_actions, read_heading};
use crate::marking::{Rule, Verdict, mark, standing};
use crate::shipped;
use crate::words::{Arg, Message};

pub use names::{MISTAKES, Risk};

/// A list of actions with its heading.
#[derive(Debug, Clone)]
pub(super) struct List {
    pub(super) name: String,
    pub(super) text: &'static str,
    pub(super) heading: Heading,
}

/// How a mistake is put right.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Remedy {
    /// By this list, which makes it too and ends with nobody harmed and nothing left in the way of harm.
    Recovers(String),
    /// Somebody is harmed: by going another way from before it, as this list does, which passes.
    Rewinds(String),
}

/// A mistake as a drill shows it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Shown {
    /// The drill.
    pub drill: String,
    /// The list that makes it.
    pub list: String,
    /// What is found, in the order of the rules.
    pub finds: Vec<Rule>,
    /// How it is put right; none if no list does.
    pub remedy: Option<Remedy>,
    /// Whether the lists give what they say.
    pub holds: bool,
}

/// A mistake and how it is shown.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Mistake {
    /// Its name.
    pub name: &'static str,
    /// What it puts at risk.
    pub risks: &'static [Risk],
    /// How it is shown, by each list that makes it.
    pub shown: Vec<Shown>,
}

impl Mistake {
    /// Whether it is shown at all, found each time and put right.
    pub fn holds(&self) -> bool {
        !self.shown.is_empty() && self.shown.iter().all(|s| s.holds && s.remedy.is_some())
    }
}

/// Plays every list that makes a mistake, and tells each mistake with what came of it.
///
/// # Errors
/// Faults of the shipped scenarios and lists.
pub fn mistakes() -> Result<Vec<Mistake>, Vec<Diagnostic>> {
    let (library, faults) = Library::shipped();
    if !faults.is_empty() {
        return Err(faults);
    }
    let lists = lists()?;
    let shown = |name: &'static str| -> Result<Vec<Shown>, Vec<Diagnostic>> {
        let of = lists
            .iter()
            .filter(|l| l.heading.mistakes.iter().any(|m| m == name));
        of.map(|list| show(&library, &lists, list)).collect()
    };
    MISTAKES
        .iter()
        .map(|(name, risks)| {
            Ok(Mistake {
                name,
                risks,
                shown: shown(name)?,
            })
        })
        .collect()
}

/// The lists that have a heading; a mistake that none of ours is called is a fault.
pub(super) fn lists() -> Result<Vec<List>, Vec<Diagnostic>> {
    let mut lists = Vec::new();
    let mut faults = Vec::new();
    for (path, text) in shipped::LISTS {
        let source = Source { file: path, text };
        let heading = match read_heading(source) {
            Ok(Some(heading)) => heading,
            Ok(None) => continue,
            Err(mut found) => {
                faults.append(&mut found);
                continue;
            }
        };
        let known = |m: &String| MISTAKES.iter().any(|(name, _)| name == m);
        for mistake in heading.mistakes.iter().filter(|m| !known(m)) {
            let message = Message::new("error-unknown-name")
                .with("name", Arg::Verbatim(mistake.clone()))
                .said("kind", Message::new("error-kind-mistake"));
            faults.push(
                source
                    .at(&["# mistake", mistake], message)
                    .with_nearest(MISTAKES.iter().map(|(name, _)| *name)),
            );
        }
        let name = path.rsplit('/').next().unwrap_or(path);
        lists.push(List {
            name: name.trim_end_matches(".actions").to_owned(),
            text,
            heading,
        });
    }
    if faults.is_empty() {
        Ok(lists)
    } else {
        Err(faults)
    }
}

fn show(library: &Library, lists: &[List], list: &List) -> Result<Shown, Vec<Diagnostic>> {
    let made = play(library, list)?;
    let rules: BTreeSet<Rule> = made.verdict.findings.iter().map(|f| f.rule).collect();
    let of = |name: &String| lists.iter().find(|l| l.name == *name);
    let mut holds = made.as_said;
    let mut remedy = None;
    if let Some(other) = list.heading.recovers.as_ref().and_then(of) {
        let right = play(library, other)?;
        let again = right
            .verdict
            .findings
            .iter()
            .any(|f| rules.contains(&f.rule));
        let harmed = right
            .verdict
            .findings
            .iter()
            .any(|f| f.breach && f.rule.harms());
        holds &= again && !harmed && right.sound_at_end;
        remedy = Some(Remedy::Recovers(other.name.clone()));
    } else if let Some(other) = list.heading.rewinds.as_ref().and_then(of) {
        holds &= play(library, other)?.verdict.passed;
        remedy = Some(Remedy::Rewinds(other.name.clone()));
    }
    Ok(Shown {
        drill: list.heading.drill.clone(),
        list: list.name.clone(),
        finds: rules.into_iter().collect(),
        remedy,
        holds,
    })
}

/// A list played out.
struct Played {
    verdict: Verdict,
    /// Whether the verdict and what is found are those of the heading.
    as_said: bool,
    /// Whether nothing stands in the way of harm at the end.
    sound_at_end: bool,
}

fn play(library: &Library, list: &List) -> Result<Played, Vec<Diagnostic>> {
    let source = Source {
        file: &list.name,
        text: list.text,
    };
    let not_there = |name: &str| {
        let message = Message::new("error-unknown-name")
            .with("name", Arg::Verbatim(name.to_owned()))
            .said("kind", Message::new("error-kind-drill"));
        vec![
            source
                .at(&["# drill"], message)
                .with_nearest(library.names()),
        ]
    };
    let scenarios = list.heading.scenarios(library);
    let scenarios = scenarios.map_err(|name| not_there(&name))?;
    let Some(scenario) = scenarios.first() else {
        return Err(not_there(&list.heading.drill));
    };
    let lines = read_actions(source, scenario)?;
    let seed = list.heading.seeds.first().copied().unwrap_or(1);
    // A checked scenario can be wired.
    let Some(drill) = super::play(scenario, seed, &lines) else {
        return Err(not_there(&list.heading.drill));
    };
    let verdict = mark(scenario, drill.trace());
    let found: BTreeSet<(String, bool)> = verdict
        .findings
        .iter()
        .map(|f| (format!("{:?}", f.rule), f.breach))
        .collect();
    let wanted: BTreeSet<(String, bool)> = list.heading.finds.iter().cloned().collect();
    let last = drill.trace().moments.last();
    Ok(Played {
        as_said: found == wanted && verdict.passed == list.heading.passes,
        sound_at_end: last.is_none_or(|m| standing(&scenario.site, m).is_empty()),
        verdict,
    })
}
