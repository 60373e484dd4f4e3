//! Rules of a line that a crew works, from positions, names and what testers showed.
//!
//! It walks forward through a run, where the marking looks back.

use std::collections::BTreeMap;

use crate::drill::{Action, Event, Learnt, LineEvent, Moment, What};
use crate::proof::{Model, State};
use crate::scenario::Scenario;
use crate::site::{ControlId, LineWork, PROVING_SOURCE};

use super::standing::as_driven;
use super::{Judgment, Stand, stands};

/// Volts that a tester has to show to be worth something where a small source may feed: one leg of a house.
const LOW_RANGE_V: f64 = 120.0;

pub(super) fn judge(scenario: &Scenario, moments: &[Moment], judgment: &mut Judgment) {
    let Some(work) = &scenario.site.line_work else {
        return;
    };
    let line = Line {
        scenario,
        work,
        model: Model::of(scenario),
    };
    for stand in stands(scenario, moments) {
        line.standing(stand, judgment);
    }
    let mut notes = Notes::default();
    let mut back = false;
    let all = stands(scenario, moments);
    for (old, new) in all.clone().zip(all.skip(1)) {
        if let What::Did(Action::Set(control, _)) = &new.moment.what
            && line.closes(new, *control)
        {
            notes = Notes::default();
        }
        notes.read(&new.moment.what);
        for pole in line.trusted(old, new) {
            let rule = notes.lacking(&pole, work);
            judgment.broken.extend(rule);
        }
        judgment.find("live-end", line.joins_live_end(old, new));
        back |= new.moment.what == What::Happened(Event::Line(LineEvent::CustomersBack));
        let (was, is) = (line.served(old), line.served(new));
        back &= is || !was;
        judgment.find("not-asked", is && !was && !back);
    }
}

/// A line with what is asked of it.
struct Line<'a> {
    scenario: &'a Scenario,
    work: &'a LineWork,
    model: Model<'a>,
}

impl Line<'_> {
    fn state(&self, stand: Stand<'_>) -> State {
        State {
            positions: as_driven(self.scenario, stand.moment),
            stage: 0,
        }
    }

    /// What shows in how things stand.
    fn standing(&self, stand: Stand<'_>, judgment: &mut Judgment) {
        let state = self.state(stand);
        let site = &self.scenario.site;
        let grounds = || self.work.grounds.iter();
        let on = |c: ControlId| stand.at(c, "both-ends") || stand.at(c, "line-end");
        let hands = stand.at(site.line.crew, "hands-on");
        let mut at_work = grounds().filter(|g| g.pole == site.line.crew_pole);
        let away = hands && !at_work.any(|g| stand.at(g.control, "both-ends"));
        let some = grounds().any(|g| on(g.control));
        judgment.find("not-grounded", away && !some);
        let wrong_end = grounds().any(|g| stand.at(g.control, "line-end"));
        judgment.find("grounds-wrong", away && some || wrong_end);
        let fault = grounds().any(|g| {
            stand.at(g.control, "both-ends") && self.model.utility_at_pole(&state, g.pole)
        });
        judgment.find("grounds-left", fault);
    }

    /// Whether the utility serves the house.
    fn served(&self, stand: Stand<'_>) -> bool {
        self.model.utility_serves(&self.state(stand))
    }

    /// Whether a deed on this control has closed something on the line.
    fn closes(&self, stand: Stand<'_>, control: ControlId) -> bool {
        let line = &self.scenario.site.line;
        let breaks = self.work.breaks.iter().map(|b| b.handle);
        let cutouts = self.work.taps.iter().map(|t| t.cutout);
        let mut all = breaks
            .chain(cutouts)
            .chain([line.feeder, self.work.home_cutout]);
        all.any(|c| c == control) && stand.at(control, "closed")
    }

    /// The end of the broken span beyond the gap: the one toward the head where the crew's way there leads over the gap.
    fn far_end(&self) -> Option<usize> {
        let line = &self.scenario.site.line;
        let broken = line.spans.get(line.broken_span)?;
        let toward_head = |pole: &usize| {
            let mut spans = line.spans.iter();
            spans.find(|s| s.to == *pole).map(|s| s.from)
        };
        let way = std::iter::successors(Some(line.crew_pole), toward_head);
        let over_gap = way.take(line.poles.len()).any(|pole| pole == broken.to);
        Some(if over_gap { broken.from } else { broken.to })
    }

    /// Whether hands have joined the wire to an end that a source still reached.
    /// Grounds there end what a small source can do, and what the utility can do only where the work hangs on the same neutral.
    fn joins_live_end(&self, old: Stand<'_>, new: Stand<'_>) -> bool {
        let line = &self.scenario.site.line;
        let own = matches!(new.moment.what, What::Did(Action::Set(c, _)) if c == line.span_state);
        let joined = own && old.at(line.span_state, "broken") && new.at(line.span_state, "whole");
        let Some(far) = self.far_end().filter(|_| joined) else {
            return false;
        };
        let grounded = |pole: usize| {
            let mut there = self.work.grounds.iter().filter(|g| g.pole == pole);
            there.any(|g| old.at(g.control, "both-ends"))
        };
        let state = self.state(old);
        let utility = self.model.utility_at_pole(&state, far);
        if grounded(far) {
            utility && !grounded(line.crew_pole)
        } else {
            utility || self.model.own_at_pole(&state, far)
        }
    }

    /// Poles at which the line was taken for dead: by hands, or by grounds that were put on it.
    fn trusted(&self, old: Stand<'_>, new: Stand<'_>) -> Vec<String> {
        let line = &self.scenario.site.line;
        let hands = |s: Stand<'_>| s.at(line.crew, "hands-on");
        let on = |s: Stand<'_>, c: ControlId| s.at(c, "both-ends") || s.at(c, "line-end");
        let taken = (hands(new) && !hands(old)).then_some(line.crew_pole);
        let clamped = self.work.grounds.iter();
        let clamped = clamped.filter(|g| on(new, g.control) && !on(old, g.control));
        let poles = taken.into_iter().chain(clamped.map(|g| g.pole));
        let names = poles.filter_map(|p| line.poles.get(p));
        names.map(|p| p.name.clone()).collect()
    }
}

/// The last test at a pole, with what the same tester showed on the proving source around it.
struct Test {
    tester: usize,
    lit: bool,
    before: Option<bool>,
    after: Option<bool>,
}

/// What the crew has learnt since the line was last closed anywhere.
#[derive(Default)]
struct Notes {
    tests: BTreeMap<String, Test>,
    proved: BTreeMap<usize, bool>,
}

impl Notes {
    fn read(&mut self, what: &What) {
        let What::Learnt(Learnt::Detected { point, tester, lit }) = what else {
            return;
        };
        if point == PROVING_SOURCE {
            self.proved.insert(*tester, *lit);
            for test in self.tests.values_mut().filter(|t| t.tester == *tester) {
                test.after.get_or_insert(*lit);
            }
        } else {
            let test = Test {
                tester: *tester,
                lit: *lit,
                before: self.proved.get(tester).copied(),
                after: None,
            };
            self.tests.insert(point.clone(), test);
        }
    }

    /// The rule that trusting a pole breaks.
    fn lacking(&self, pole: &str, work: &LineWork) -> Option<&'static str> {
        let Some(test) = self.tests.get(pole).filter(|t| !t.lit) else {
            return Some("not-tested");
        };
        let works = test.before == Some(true) && test.after == Some(true);
        let tester = work.testers.get(test.tester);
        let low = tester.is_some_and(|t| t.make.least_v <= LOW_RANGE_V);
        (!works || !low).then_some("tester-unproved")
    }
}
