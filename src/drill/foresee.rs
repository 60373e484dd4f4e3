//! What will come of a deed: the drill played on from now in a copy, and read there.
//!
//! Nothing here is scripted: the copy does the deed, lets time pass and is asked, and the drill itself stays where it is.
//! Nothing can be foretold of a deed that the world refuses, of a time after the drill's end, or where the solver found no answer.

use crate::scenario::prediction::{Cue, Foretold, Prediction, Truth};
use crate::scenario::question::is_live;
use crate::units::DrillTime;

use super::action::Action;
use super::engine::{Drill, Outcome};
use super::run::Timed;
use super::story::event_of;
use super::trace::What;

impl Drill {
    /// The truth of a prediction after this deed, or as things stand without one; and the copy that it was read from.
    pub fn foresee(&self, about: &Foretold, deed: Option<&Timed>) -> Option<(Truth, Self)> {
        let mut ahead = self.clone();
        if let Some(deed) = deed
            && ahead.act_at(deed.at, &deed.action) != Outcome::Done
        {
            return None;
        }
        let target = ahead.now() + about.wait();
        ahead.advance(about.wait());
        if ahead.now() < target || !ahead.readings().converged {
            return None;
        }
        Some((ahead.truth(about), ahead))
    }

    /// What is so as the drill stands now.
    fn truth(&self, about: &Foretold) -> Truth {
        let readings = self.readings();
        let choice = |name: &str| Truth::Choice(name.to_owned());
        match about {
            Foretold::Volts(point) => Truth::Number(readings.point(point).volts),
            Foretold::Amps(thing) => Truth::Number(readings.amps_of(thing)),
            Foretold::Watts => Truth::Number(readings.generator.asked_w.max(0.0)),
            Foretold::Heat(cord) => Truth::Number(self.cord_heat_w(*cord)),
            Foretold::Ppm(_) => Truth::Number(self.conditions().ppm()),
            Foretold::Holds(index, _) => {
                let rated = self.site().cords.get(*index).map(|c| c.make.rated_c());
                let hottest = self.conditions().cord(*index).hottest_c();
                let holds = rated.is_none_or(|rated| hottest <= rated);
                choice(if holds { "holds" } else { "too-hot" })
            }
            Foretold::LiveOf(one, other) => {
                match (
                    one,
                    is_live(readings.point(one)),
                    is_live(readings.point(other)),
                ) {
                    (_, true, true) => choice("both"),
                    (one, true, false) => choice(one),
                    (_, false, true) => choice(other),
                    (_, false, false) => choice("neither"),
                }
            }
            Foretold::Answer(about) => {
                Truth::Choice(about.truth(self.site(), self.positions(), readings))
            }
        }
    }

    /// Watts that a cord turns into heat as it carries what it carries, as warm as it is.
    pub fn cord_heat_w(&self, index: usize) -> f64 {
        self.site().cords.get(index).map_or(0.0, |cord| {
            let amps = self.readings().amps_of(&cord.name);
            let celsius = self.conditions().cord(index).celsius;
            cord.make.heat_w(amps, celsius)
        })
    }

    /// The predictions whose moment has come since a drill had `seen` moments, in the order of the file.
    pub fn cued(&self, seen: usize) -> impl Iterator<Item = (usize, &Prediction)> {
        let predictions = self.scenario().predictions.iter().enumerate();
        predictions.filter(move |(_, p)| self.has_come(p.at, seen))
    }

    fn has_come(&self, cue: Cue, seen: usize) -> bool {
        let moments = &self.trace().moments;
        let mut new = (seen..).zip(moments.iter().skip(seen));
        match cue {
            Cue::Before(..) => false,
            Cue::At(at) => self.now() >= at,
            Cue::After(happening) => {
                let told = What::Happened(event_of(happening));
                new.any(|(_, moment)| moment.what == told)
            }
            Cue::EngineStarts => new.any(|(index, moment)| {
                let before = index.checked_sub(1).and_then(|i| moments.get(i));
                let stood = before.is_some_and(|m| m.conditions.engine.running_since.is_none());
                stood && moment.conditions.engine.running_since.is_some()
            }),
        }
    }

    /// The predictions that are asked before this deed.
    pub fn cued_before(&self, action: &Action) -> impl Iterator<Item = (usize, &Prediction)> {
        let predictions = self.scenario().predictions.iter().enumerate();
        predictions.filter(move |(_, p)| match (p.at, action) {
            (Cue::Before(control, position), Action::Set(set, to)) => {
                (control, position) == (*set, *to)
            }
            _ => false,
        })
    }

    /// Lets time pass up to this instant, but not past the moment of a prediction that is not among `posed`; the prediction, if one has come.
    pub fn advance_to_cue(
        &mut self,
        target: DrillTime,
        seen: usize,
        posed: &[usize],
    ) -> Option<usize> {
        loop {
            let mut open = self.cued(seen).filter(|(index, _)| !posed.contains(index));
            if let Some((index, _)) = open.next() {
                return Some(index);
            }
            drop(open);
            let left = target.since(self.now());
            if left == DrillTime::ZERO || self.over() {
                return None;
            }
            let minutes = self
                .scenario()
                .predictions
                .iter()
                .filter_map(|p| match p.at {
                    Cue::At(at) if at > self.now() => Some(at.since(self.now())),
                    Cue::At(_) | Cue::Before(..) | Cue::After(_) | Cue::EngineStarts => None,
                });
            let step = minutes.fold(left, DrillTime::min);
            self.advance_to_event(step);
        }
    }
}
