//! Simulated learners: thousands of drills played at random, carefully but wrong, forgetfully and by experts, each marked and put before the second judge.
//!
//! One function answers each question: [`Stock::play`] what a learner's run came to, [`counts`] how many passed, [`agreement`] whether marking and second judge agree, [`broken::broken_rules`] whether a marking that is wrong on purpose is caught, [`mark_again`] whether a stored run is marked the same again.
//! A run hangs on the seed and its number alone, so that runs can be shared among threads and come out the same.
//! Learners are simple: they know lists that pass, chance, and the ways to go wrong of `deeds`; none learns from what it sees.

pub mod broken;
mod deeds;
pub mod led;

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use crate::drill::{Line, Run};
use crate::file::{Diagnostic, Library, Source, read_actions};
use crate::marking::{Verdict, mark};
use crate::scenario::chance::{Purpose, draw};
use crate::scenario::{Scenario, variation};

use super::mistakes::{List, lists};
use super::second_judge::{COVERED, Judgment, judge};

/// How a learner goes about a drill.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Kind {
    /// Begins as some list does and goes on with whatever comes to hand.
    Random,
    /// Does what a list does that fails, or what one does that passes but for one known mistake.
    CarefulButWrong,
    /// Does what an expert does, and leaves out one thing in ten.
    Forgetful,
    /// Does what a list does that passes.
    Expert,
}

impl Kind {
    /// All of them, in the order in which they take turns.
    pub const ALL: [Self; 4] = [
        Self::Random,
        Self::CarefulButWrong,
        Self::Forgetful,
        Self::Expert,
    ];

    /// Its name, the same in every language.
    pub fn name(self) -> &'static str {
        self.message_id().trim_start_matches("learners-kind-")
    }

    /// The message that names it.
    pub fn message_id(self) -> &'static str {
        match self {
            Self::Random => "learners-kind-random",
            Self::CarefulButWrong => "learners-kind-careful-but-wrong",
            Self::Forgetful => "learners-kind-forgetful",
            Self::Expert => "learners-kind-expert",
        }
    }
}

/// A list, the variant it is played in and its seed.
#[derive(Debug)]
struct Play {
    scenario: Arc<Scenario>,
    lines: Vec<Line>,
    seed: u64,
    passes: bool,
    mistake: Option<String>,
}

/// What learners draw from: every kept list, in each variant and with each seed that it is kept for.
#[derive(Debug)]
pub struct Stock {
    seed: u64,
    plays: Vec<Play>,
}

/// What a learner's run came to.
#[derive(Debug, Clone, PartialEq)]
pub struct Outcome {
    /// Who played.
    pub kind: Kind,
    /// The mistake that was meant, where it has a name.
    pub way: Option<String>,
    /// The drill, as the variant that was played.
    pub scenario: Arc<Scenario>,
    /// What is stored of it.
    pub run: Run,
    /// Whether it passed.
    pub passed: bool,
    /// The critical rules that the marking found broken.
    pub marked: BTreeSet<&'static str>,
    /// What the second judge says of them.
    pub judgment: Judgment,
}

impl Stock {
    /// The kept lists.
    ///
    /// # Errors
    /// Faults of the shipped scenarios and lists.
    pub fn of(seed: u64) -> Result<Self, Vec<Diagnostic>> {
        let (library, faults) = Library::shipped();
        if !faults.is_empty() {
            return Err(faults);
        }
        // Each list once, in its first variant and with its first seed, then each once more, and so on.
        let mut plays = Vec::new();
        for list in lists()? {
            plays.extend(plays_of(&library, &list)?.into_iter().enumerate());
        }
        plays.sort_by_key(|(round, _)| *round);
        let plays = plays.into_iter().map(|(_, play)| play).collect();
        Ok(Self { seed, plays })
    }

    /// Plays, marks and judges the run of this number; none where there is no list to go by.
    pub fn play(&self, number: usize) -> Option<Outcome> {
        let kind = *Kind::ALL.get(number % Kind::ALL.len())?;
        let turn = number / Kind::ALL.len();
        let mut chance = Chance::of(self.seed, number);
        let passing = |turn: usize| nth(self.plays.iter().filter(|p| p.passes), turn);
        let (play, way, lines) = match kind {
            Kind::Random => {
                let play = nth(self.plays.iter(), chance.below(self.plays.len()))?;
                let lines = deeds::at_random(&play.scenario, &play.lines, &mut chance);
                (play, None, lines)
            }
            // Three of four take a list that fails, so that few runs come by each of them.
            Kind::CarefulButWrong if turn % 4 < 3 => {
                let made = self.plays.iter().filter(|p| !p.passes);
                let play = nth(made, turn - turn / 4)?;
                (play, play.mistake.clone(), play.lines.clone())
            }
            Kind::CarefulButWrong => {
                let first = chance.below(self.plays.len());
                // The next list that gives room for the mistake.
                (first..first + self.plays.len()).find_map(|number| {
                    let play = passing(number)?;
                    let (way, lines) = deeds::wrong(&play.scenario, &play.lines, turn / 4)?;
                    Some((play, Some(way.to_owned()), lines))
                })?
            }
            Kind::Forgetful => {
                let play = passing(turn)?;
                let kept = play.lines.iter().filter(|_| chance.below(10) > 0);
                (play, None, kept.cloned().collect())
            }
            Kind::Expert => {
                let play = passing(turn)?;
                (play, None, play.lines.clone())
            }
        };
        let drill = super::play(&play.scenario, play.seed, &lines)?;
        let (scenario, trace) = (drill.scenario(), drill.trace());
        let verdict = mark(scenario, trace);
        Some(Outcome {
            kind,
            way,
            scenario: Arc::clone(scenario),
            run: drill.run().clone(),
            passed: verdict.passed,
            marked: critical(&verdict),
            judgment: judge(scenario, &trace.moments),
        })
    }
}

/// A list in each variant and with each seed that it is kept for.
fn plays_of(library: &Library, list: &List) -> Result<Vec<Play>, Vec<Diagnostic>> {
    let heading = &list.heading;
    let source = Source {
        file: &list.name,
        text: list.text,
    };
    // Tests hold every list to name what is there.
    let scenarios = heading.scenarios(library).unwrap_or_default();
    let mut plays = Vec::new();
    for scenario in scenarios {
        let lines = read_actions(source, &scenario)?;
        plays.extend(heading.seeds.iter().map(|seed| Play {
            scenario: Arc::clone(&scenario),
            lines: lines.clone(),
            seed: *seed,
            passes: heading.passes,
            mistake: heading.mistakes.first().cloned(),
        }));
    }
    Ok(plays)
}

/// The one of this number, from the first again after the last.
fn nth<'a>(of: impl Iterator<Item = &'a Play> + Clone, number: usize) -> Option<&'a Play> {
    let many = of.clone().count();
    of.clone().nth(number.checked_rem(many)?)
}

/// Numbers for one run, from the generator of all chance.
struct Chance {
    drawn: std::vec::IntoIter<u32>,
}

/// More numbers than a run asks for.
const MOST_DRAWN: usize = 500;

impl Chance {
    fn of(seed: u64, number: usize) -> Self {
        let number = u64::try_from(number).unwrap_or(u64::MAX);
        let own = seed.wrapping_mul(1 << 32).wrapping_add(number);
        let drawn = draw(own, Purpose::Learner, &[u32::MAX; MOST_DRAWN]);
        Self {
            drawn: drawn.into_iter(),
        }
    }

    /// A whole number below `bound`.
    fn below(&mut self, bound: usize) -> usize {
        let drawn = self.drawn.next().unwrap_or_default();
        usize::try_from(drawn).unwrap_or_default() % bound.max(1)
    }
}

/// The critical rules that a verdict finds broken, by name.
fn critical(verdict: &Verdict) -> BTreeSet<&'static str> {
    let breaches = verdict.findings.iter().filter(|f| f.breach);
    let critical = breaches.filter(|f| f.rule.criterion().is_critical());
    critical.map(|f| f.rule.name()).collect()
}

/// How many runs passed, and how many didn't.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Count {
    /// Runs that passed.
    pub passed: usize,
    /// Runs that didn't.
    pub failed: usize,
}

/// How many runs of each kind passed, with each mistake that was meant.
pub fn counts(outcomes: &[Outcome]) -> BTreeMap<(Kind, Option<&str>), Count> {
    let mut counts: BTreeMap<(Kind, Option<&str>), Count> = BTreeMap::new();
    for outcome in outcomes {
        let count = counts.entry((outcome.kind, outcome.way.as_deref()));
        let count = count.or_default();
        if outcome.passed {
            count.passed += 1;
        } else {
            count.failed += 1;
        }
    }
    counts
}

/// What marking and second judge say of a rule, over all runs.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Agreement {
    /// The rule.
    pub rule: &'static str,
    /// Runs in which both find it broken.
    pub both: usize,
    /// Runs in which neither does.
    pub neither: usize,
    /// Runs in which the second judge is unsure.
    pub unsure: usize,
}

/// A run of which marking and second judge say different things.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Disagreement {
    /// Who played.
    pub kind: Kind,
    /// The drill and its variant.
    pub drill: String,
    /// The seed.
    pub seed: u64,
    /// The rule.
    pub rule: &'static str,
    /// Whether it is the marking that finds it broken.
    pub marked: bool,
}

/// Whether marking and second judge agree, rule by rule, and every run in which they don't.
pub fn agreement(outcomes: &[Outcome]) -> (Vec<Agreement>, Vec<Disagreement>) {
    let of_rule = |rule| {
        let unsure = |o: &&Outcome| o.judgment.unsure.contains(rule);
        let count = |found: bool| {
            let sure = outcomes.iter().filter(|o| !unsure(o));
            let says = sure.filter(|o| {
                o.marked.contains(rule) == found && o.judgment.broken.contains(rule) == found
            });
            says.count()
        };
        Agreement {
            rule,
            both: count(true),
            neither: count(false),
            unsure: outcomes.iter().filter(unsure).count(),
        }
    };
    let agreements = COVERED.into_iter().map(of_rule).collect();
    let differ = outcomes.iter().flat_map(|outcome| {
        let rules = differing(&outcome.marked, &outcome.judgment);
        rules.into_iter().map(move |rule| Disagreement {
            kind: outcome.kind,
            drill: named(&outcome.scenario),
            seed: outcome.run.seed,
            rule,
            marked: outcome.marked.contains(rule),
        })
    });
    (agreements, differ.collect())
}

/// The rules of which the two say different things, those left out that are too near their limit.
fn differing(marked: &BTreeSet<&'static str>, judgment: &Judgment) -> Vec<&'static str> {
    let sure = COVERED.into_iter().filter(|r| !judgment.unsure.contains(r));
    sure.filter(|r| marked.contains(r) != judgment.broken.contains(r))
        .collect()
}

/// Runs that pass although something critical was found in them: the second judge is believed as much as the marking.
pub fn passed_with_a_breach(outcomes: &[Outcome]) -> usize {
    let breach = |o: &&Outcome| !o.marked.is_empty() || !o.judgment.broken.is_empty();
    outcomes.iter().filter(|o| o.passed).filter(breach).count()
}

/// Critical rules that the marking found and the second judge doesn't know, with the number of runs.
pub fn not_judged(outcomes: &[Outcome]) -> BTreeMap<&'static str, usize> {
    let mut runs = BTreeMap::new();
    let marked = outcomes.iter().flat_map(|o| &o.marked);
    for rule in marked.filter(|r| !COVERED.contains(r)) {
        *runs.entry(*rule).or_default() += 1;
    }
    runs
}

/// Whether a stored run, played out and marked again, comes to the same.
pub fn mark_again(outcome: &Outcome) -> bool {
    let Ok(drill) = outcome.run.replay(&outcome.scenario) else {
        return false;
    };
    let verdict = mark(&outcome.scenario, drill.trace());
    verdict.passed == outcome.passed && critical(&verdict) == outcome.marked
}

/// A drill and its variant, as they are called.
fn named(scenario: &Scenario) -> String {
    format!("{}, {}", scenario.name, variation::name(scenario))
}
