//! The debrief, page by page.

use crate::words::{Numbers, Unit};

use super::{CalibrationView, Fed, LogLine, StageView, StreetView};

/// A criterion of the debrief.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct CriterionView {
    /// Name.
    pub title: String,
    /// Met or not.
    pub met: bool,
    /// Whether a breach of it fails the run by itself.
    pub critical: bool,
    /// What it asks, in a sentence.
    pub text: String,
}

/// A finding, explained.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct FindingView {
    /// Rule id.
    pub rule: String,
    /// Drill clock.
    pub clock: String,
    /// Drill clock in milliseconds.
    pub clock_ms: u64,
    /// The moment that its stages show, in milliseconds: a highest value may come later than the beginning.
    pub shown_ms: u64,
    /// Whether it belongs to a critical criterion.
    pub critical: bool,
    /// Whether it is advice alone and did not stand in the way of a pass.
    pub aside: bool,
    /// Whether it was left off because somebody was hurt or something burned: the run had failed by that.
    pub after_harm: bool,
    /// What happened.
    pub what: String,
    /// What to do now, of a danger that still stood when the drill ended; else empty.
    pub now: String,
    /// Which of several states of one second its stages show; empty where there is but one.
    pub step: String,
    /// What its stages are headed with; empty where there are none.
    pub heading: String,
    /// How it came about, stage by stage, with numbers.
    pub path: Vec<StageView>,
    /// Why it matters.
    pub why: String,
    /// What to do instead.
    pub instead: String,
    /// Source: standard or publication with its section, and how it is known.
    /// Notes on how it is known stand in angle brackets.
    pub source: String,
}

impl FindingView {
    /// The source as a learner reads it: without the notes on how it is known.
    pub fn source_name(&self) -> String {
        without_notes(&self.source)
    }
}

/// A source without what stands in angle brackets.
pub(super) fn without_notes(source: &str) -> String {
    let mut named = String::new();
    for (place, part) in source.split('‹').enumerate() {
        let part = match (place, part.split_once('›')) {
            (0, _) => part,
            (_, None) => {
                named.push('‹');
                part
            }
            (_, Some((_, rest))) => {
                named.truncate(named.trim_end().len());
                rest
            }
        };
        named.push_str(part);
    }
    named.trim().to_owned()
}

/// A row of the timeline: one thing over time.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct TrackView {
    /// Label.
    pub label: String,
    /// Stretches: from and to in milliseconds, what feeds it, the word.
    pub stretches: Vec<(u64, u64, Fed, String)>,
}

/// A curve of the debrief: one reading at whole seconds of the drill clock.
///
/// A second whose value is that of the seconds before and after it is left out.
#[derive(Debug, Clone, PartialEq)]
pub struct SeriesView {
    /// Its name, as the head of a column.
    pub name: String,
    /// What it is of.
    pub label: String,
    /// The sign of its unit.
    pub unit: &'static str,
    /// Its unit.
    pub of: Unit,
    /// Seconds and value.
    pub points: Vec<(u64, f64)>,
    /// The rating or limit to compare with, if there is one.
    pub limit: Option<f64>,
    /// What that is.
    pub limit_label: String,
    /// How its values are written.
    pub numbers: Numbers,
}

impl SeriesView {
    /// The value at a second.
    pub fn at(&self, second: u64) -> f64 {
        let until = self.points.partition_point(|(at, _)| *at <= second);
        let last = until.checked_sub(1).and_then(|i| self.points.get(i));
        last.map_or(0.0, |(_, value)| *value)
    }
}

/// A page of the debrief, in the order in which a learner comes to them: their own words first, the verdict last.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub enum Phase {
    /// What happened, in the learner's words, beside the facts.
    #[default]
    Happened,
    /// How it felt.
    Felt,
    /// Why: what was found, at its moment, and the curves.
    Why,
    /// What to practice next.
    Next,
    /// The verdict.
    Verdict,
}

/// All pages, in their order.
pub const PHASES: [Phase; 5] = [
    Phase::Happened,
    Phase::Felt,
    Phase::Why,
    Phase::Next,
    Phase::Verdict,
];

impl Phase {
    /// Its name in word files.
    pub fn name(self) -> &'static str {
        match self {
            Self::Happened => "happened",
            Self::Felt => "felt",
            Self::Why => "why",
            Self::Next => "next",
            Self::Verdict => "verdict",
        }
    }
}

/// What stands at the head of a page of the debrief.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct PageView {
    /// The page.
    pub phase: Phase,
    /// Its title.
    pub title: String,
    /// What the learner is asked there, or what the page tells.
    pub ask: String,
    /// Whether the learner answers in their own words.
    pub answers: bool,
    /// What they said; it isn't marked.
    pub said: String,
}

/// A moment of a run that is over, seen again.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct AgainView {
    /// Its place among all moments, from 0.
    pub place: usize,
    /// The place of the last one.
    pub last: usize,
    /// Both in words.
    pub said: String,
    /// Drill clock.
    pub clock: String,
    /// Drill clock in milliseconds.
    pub clock_ms: u64,
    /// The street as it stood then.
    pub street: StreetView,
    /// What had been done and had happened until then.
    pub log: Vec<LogLine>,
    /// What was found then, once the debrief has come to why.
    pub found: Vec<String>,
}

/// How something stood at the start and stands at the end.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct StoodView {
    /// What.
    pub label: String,
    /// At the start.
    pub start: String,
    /// At the end.
    pub end: String,
}

/// Where a finding is pinned to the curves.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct PinView {
    /// The whole second of the drill clock in which it began.
    pub second: u64,
    /// Its place among the findings: `Rewind::Finding` goes back to before it.
    pub finding: usize,
}

/// Something to practice next.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct NextView {
    /// Name of the skill.
    pub skill: String,
    /// The skill in words.
    pub title: String,
    /// Why it is named here.
    pub because: String,
    /// Name of the drill that trains it.
    pub drill: String,
    /// Its title.
    pub drill_title: String,
}

/// Something that two branches of a drill leave otherwise.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct DifferView {
    /// What.
    pub label: String,
    /// As it was.
    pub was: String,
    /// As it was tried otherwise.
    pub tried: String,
}

impl DifferView {
    /// Whether it does differ.
    pub fn differs(&self) -> bool {
        self.was != self.tried
    }
}

/// Two branches of a drill side by side; only what differs is named.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct CompareView {
    /// The clock at the end of the branch that was left.
    pub was: String,
    /// The clock at the end of the one that was tried.
    pub tried: String,
    /// How controls stand.
    pub positions: Vec<DifferView>,
    /// Volts at the legs, the outlets and the line.
    pub volts: Vec<DifferView>,
    /// What became of people and things.
    pub people: Vec<DifferView>,
    /// Findings that only the branch that was left has.
    pub gone: Vec<String>,
    /// Findings that only the other has.
    pub come: Vec<String>,
}

/// The debrief.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct DebriefView {
    /// The page that is open; what belongs to a later one isn't shown yet.
    pub phase: Phase,
    /// The head of each page, in their order.
    pub pages: Vec<PageView>,
    /// What stands otherwise at the end than at the start.
    pub stood: Vec<StoodView>,
    /// Where the findings are pinned to the curves.
    pub pins: Vec<PinView>,
    /// What to practice next, three things at most.
    pub next: Vec<NextView>,
    /// Who or what came to harm, if anyone did, then passed or not.
    pub heading: String,
    /// Passed or not.
    pub passed: bool,
    /// One or two sentences that sum it up.
    pub summary: String,
    /// The number under which exactly this drill can be asked for again.
    pub seed: String,
    /// Everything that was varied in it; empty when nothing was.
    pub variation: String,
    /// How often the learner went back; empty if never.
    pub rewound: String,
    /// How often the next step was shown; empty when it never was.
    pub helped: String,
    /// Criteria.
    pub criteria: Vec<CriterionView>,
    /// Findings, first things first.
    pub findings: Vec<FindingView>,
    /// What was foretold; it counts for nothing.
    pub predictions: CalibrationView,
    /// Timeline rows.
    pub tracks: Vec<TrackView>,
    /// Curves.
    pub series: Vec<SeriesView>,
    /// The moments that can be seen again, drill clock in milliseconds.
    pub moments: Vec<u64>,
    /// Length of the drill in milliseconds.
    pub length_ms: u64,
    /// What was done, line by line.
    pub log: Vec<LogLine>,
}

#[cfg(test)]
mod tests {
    use super::without_notes;

    #[test]
    fn a_source_is_named_without_the_notes_on_how_it_is_known() {
        for (whole, named) in [
            ("UL 943 ‹checked in part›.", "UL 943."),
            (
                "IEC ‹median checked›. NEC 250.6 ‹from memory›.",
                "IEC. NEC 250.6.",
            ),
            (
                "Equation ‹checked›. ‹The level is from memory.› NIST.",
                "Equation. NIST.",
            ),
            ("Common practice.", "Common practice."),
            ("Half ‹open", "Half ‹open"),
        ] {
            assert_eq!(without_notes(whole), named);
        }
    }
}
