//! A second judge of the critical rules, written from positions, raw readings and what testers showed, for the marking to be held against.
//!
//! It never asks the marking and calls rules by their names alone; a test of the fence holds it to that.
//! What reaches what it takes from the proof's joints, which are read off the parts of a site and neither off the wiring nor off the solver.
//! Air, blood and the cooling of the muffler it reckons by itself, in small steps.
//! What comes too near a limit for other arithmetic to tell is unsure and counts for nobody.
//! Not covered: a fire at a cord, and everything that is not critical.

mod air;
mod hands;
mod indoors;
mod line;
mod panel;
mod standing;

use std::collections::BTreeSet;

use crate::drill::{Action, Event, Moment, What};
use crate::scenario::Scenario;
use crate::scenario::question::About;
use crate::site::{ControlId, Interlock};
use crate::units::DrillTime;

/// The rules that it judges, by name: isolation first, then people, then the line.
pub const COVERED: [&str; 33] = [
    "line-fed",
    "no-transfer-equipment",
    "collision",
    "sources-meet",
    "said-fit",
    "shock",
    "touch",
    "nothing-bonds",
    "live-blades",
    "wet-panel",
    "indoors",
    "gas",
    "overcome",
    "gas-next-door",
    "no-alarm",
    "stayed-in",
    "fuel-indoors",
    "fuel-fire",
    "plug-under-load",
    "wrong-volts",
    "not-locked-out",
    "caught-by-engine",
    "live-lugs",
    "hand-transfer-live",
    "said-dead",
    "no-visible-break",
    "not-tested",
    "tester-unproved",
    "not-grounded",
    "grounds-wrong",
    "live-end",
    "grounds-left",
    "not-asked",
];

/// What it says of a run.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Judgment {
    /// Rules that are broken.
    pub broken: BTreeSet<&'static str>,
    /// Rules that come too near their limit to be judged by other arithmetic.
    pub unsure: BTreeSet<&'static str>,
}

impl Judgment {
    /// Notes a rule as broken where it is.
    fn find(&mut self, rule: &'static str, broken: bool) {
        if broken {
            self.broken.insert(rule);
        }
    }

    /// Notes how far something came toward its limit of 1; 3 % on either side of it nothing can be said.
    fn weigh(&mut self, rule: &'static str, reached: f64) {
        if (0.97..1.03).contains(&reached) {
            self.unsure.insert(rule);
        } else {
            self.find(rule, reached >= 1.0);
        }
    }
}

/// Judges a run.
pub fn judge(scenario: &Scenario, moments: &[Moment]) -> Judgment {
    let mut judgment = Judgment::default();
    answers(scenario, moments, &mut judgment);
    standing::judge(scenario, moments, &mut judgment);
    if scenario.site.line_work.is_some() {
        line::judge(scenario, moments, &mut judgment);
        return judgment;
    }
    hands::judge(scenario, moments, &mut judgment);
    indoors::judge(scenario, moments, &mut judgment);
    panel::judge(scenario, moments, &mut judgment);
    air::judge(scenario, moments, &mut judgment);
    judgment
}

/// How things stand at a moment, by name.
#[derive(Clone, Copy)]
struct Stand<'a> {
    scenario: &'a Scenario,
    moment: &'a Moment,
}

impl Stand<'_> {
    fn at(&self, control: ControlId, position: &str) -> bool {
        let site = &self.scenario.site;
        site.position_name(&self.moment.positions, control) == position
    }

    fn is(&self, control: &str, position: &str) -> bool {
        let id = self.scenario.site.control_id(control);
        id.is_some_and(|id| self.at(id, position))
    }

    fn running(&self) -> bool {
        self.moment.conditions.engine.running_since.is_some()
    }

    /// The higher of a point's volts, to neutral or between its hots.
    fn volts(&self, point: &str) -> f64 {
        let reading = self.moment.readings.point(point);
        reading.volts.max(reading.volts_across)
    }
}

/// Every moment of a run by name.
fn stands<'a>(
    scenario: &'a Scenario,
    moments: &'a [Moment],
) -> impl DoubleEndedIterator<Item = Stand<'a>> + Clone {
    moments.iter().map(move |moment| Stand { scenario, moment })
}

/// Whether something was brought about, or was found at the start and left so for longer than `grace`.
fn made(moments: &[Moment], holds: &[bool], grace: DrillTime) -> bool {
    let found = holds.iter().take_while(|h| **h).count();
    let ended = moments.get(found).or(moments.last());
    let lasted = ended.map_or(DrillTime::ZERO, |m| m.at);
    holds.iter().skip(found).any(|h| *h) || found > 0 && lasted > grace
}

/// Whether something held for longer than `grace` at a stretch.
fn lasted(moments: &[Moment], holds: &[bool], grace: DrillTime) -> bool {
    let mut since: Option<DrillTime> = None;
    moments.iter().zip(holds).any(|(moment, holds)| {
        let long = since.is_some_and(|from| moment.at.since(from) > grace);
        since = holds.then_some(since.unwrap_or(moment.at));
        long
    })
}

/// The last answer to each question since the outage: a live point called dead, a slide that doesn't block called fit.
fn answers(scenario: &Scenario, moments: &[Moment], judgment: &mut Judgment) {
    let outage = moments
        .iter()
        .position(|m| m.what == What::Happened(Event::Outage));
    for question in &scenario.questions {
        let said = moments
            .iter()
            .skip(outage.unwrap_or(0))
            .rev()
            .find_map(|m| {
                let What::Did(Action::Say(name, answer)) = &m.what else {
                    return None;
                };
                (*name == question.name).then_some((m, answer.as_str()))
            });
        match (&question.about, said) {
            (About::Live(point), Some((moment, "dead"))) => {
                let live = Stand { scenario, moment }.volts(point) >= 1.0;
                judgment.find("said-dead", live);
            }
            (About::SlideFit, Some((_, "fit"))) => {
                let held = scenario.site.panel.backfeed.map(|b| b.interlock);
                judgment.find("said-fit", held != Some(Interlock::Fitted));
            }
            _ => {}
        }
    }
}
