//! A safe way for a line crew: the usual order of the trade on the parts that a site has, played on the real drill and marked like any run.
//!
//! Cut off and tag, open cutouts, prove the tester and test, ground at the work, work, take the grounds off, ask the customers, close.
//! It is one safe way among many; that it passes is not planned but played and marked.
//! The order is that of 29 CFR 1926.961 and 1926.962, as the marking of line work names them.

use std::sync::Arc;

use crate::drill::{Action, Drill, Listener, Outcome};
use crate::marking::mark;
use crate::scenario::Scenario;
use crate::site::{
    At, Clamps, ControlId, Grounds, HandTester, LineWork, PROVING_SOURCE, PositionId, Site,
};
use crate::units::DrillTime;

use super::way::Way;

/// Longer than customers take to go back.
const CUSTOMERS: DrillTime = DrillTime::from_secs(240);
/// Between two looks at a story that isn't at its end.
const STEP: DrillTime = DrillTime::from_secs(30);

/// Plays the usual order of the trade with the story as this seed tells it.
pub(super) fn safe_way(scenario: &Arc<Scenario>, work: &LineWork, seed: u64) -> Way {
    let Ok(drill) = Drill::start(scenario, seed) else {
        return Way::None;
    };
    let site = Arc::clone(&scenario.site);
    let mut walk = Walk {
        site: Arc::clone(&site),
        drill,
        done: Vec::new(),
    };
    let asks = |control: ControlId, position: &str| {
        let mut asked = scenario.goal.at_end.iter();
        asked.any(|(c, names)| *c == control && names.iter().all(|n| n == position))
    };
    walk.answer(scenario);
    walk.cut_off(work);
    if asks(site.line.span_state, "whole") || asks(site.line.crew, "clear") {
        walk.test(work);
        walk.work(work);
    }
    walk.unground(work);
    walk.act(Action::Tell(Listener::Neighbors));
    walk.act(Action::Wait(CUSTOMERS));
    walk.wait_out_the_story(scenario);
    walk.close(scenario, work);
    walk.drill.end();
    if mark(scenario, walk.drill.trace()).passed {
        Way::Passed(walk.done)
    } else {
        Way::NotPassed(walk.done)
    }
}

struct Walk {
    site: Arc<Site>,
    drill: Drill,
    done: Vec<Action>,
}

impl Walk {
    fn act(&mut self, action: Action) {
        if self.drill.act(&action) == Outcome::Done {
            self.done.push(action);
        }
    }

    fn set(&mut self, control: ControlId, position: u8) {
        if self.drill.positions().get(control) != PositionId(position) {
            self.act(Action::Set(control, PositionId(position)));
        }
    }

    /// Says what is so, once things have had time to begin.
    fn answer(&mut self, scenario: &Scenario) {
        if !scenario.questions.is_empty() {
            self.act(Action::Wait(STEP));
        }
        for question in &scenario.questions {
            let truth =
                question
                    .about
                    .truth(&self.site, self.drill.positions(), self.drill.readings());
            self.act(Action::Say(question.name.clone(), truth));
        }
    }

    /// Opens head, breaks and cutouts, and hangs tags.
    fn cut_off(&mut self, work: &LineWork) {
        let feeder = self.site.line.feeder;
        self.set(feeder, 0);
        for own in &work.breaks {
            self.set(own.handle, 1);
            self.set(own.jumper, 0);
            self.set(own.tag, 1);
        }
        self.set(work.home_cutout, 1);
        for tap in &work.taps {
            self.set(tap.cutout, 1);
        }
    }

    /// Tests the conductor at the work with the tester that shows the least, of those that work.
    fn test(&mut self, work: &LineWork) {
        let positions = self.drill.positions();
        let good = |t: &&HandTester| positions.get(t.battery) == PositionId(0);
        let best = work.testers.iter().filter(good);
        let best = best.min_by(|a, b| a.make.least_v.total_cmp(&b.make.least_v));
        let index = best.and_then(|best| work.testers.iter().position(|t| t.name == best.name));
        if let Some(index) = index.and_then(|i| u8::try_from(i).ok()) {
            self.set(work.tester, index);
        }
        let pole = self.site.line.poles.get(self.site.line.crew_pole);
        let pole = pole.map_or_else(String::new, |p| p.name.clone());
        for point in [PROVING_SOURCE, &pole, PROVING_SOURCE] {
            self.act(Action::Test(point.to_owned()));
        }
    }

    /// Grounds at the work, mends, and steps clear.
    fn work(&mut self, work: &LineWork) {
        let (crew, span) = (self.site.line.crew, self.site.line.span_state);
        let at = self.site.line.crew_pole;
        let here = |g: &&Grounds| g.pole == at;
        if let Some(grounds) = work.grounds.iter().find(here) {
            self.set(grounds.control, 1);
            self.set(grounds.control, 2);
        }
        self.set(crew, 2);
        self.set(span, 0);
        self.set(crew, 3);
    }

    /// Takes every set off, line end first.
    fn unground(&mut self, work: &LineWork) {
        for grounds in &work.grounds {
            if grounds.clamps(self.drill.positions()) == Clamps::BothEnds {
                self.set(grounds.control, 1);
            }
            self.set(grounds.control, 0);
        }
    }

    fn wait_out_the_story(&mut self, scenario: &Scenario) {
        let told = |drill: &Drill| drill.conditions().story_done >= scenario.story.len();
        while !told(&self.drill) && self.drill.now() + STEP < scenario.ends_at {
            self.act(Action::Wait(STEP));
        }
    }

    /// Closes as the drill asks, and as is usual where it doesn't say: the head last.
    fn close(&mut self, scenario: &Scenario, work: &LineWork) {
        let site = Arc::clone(&self.site);
        let wanted = |control: ControlId, usual: u8| {
            let asked = scenario.goal.at_end.iter().find(|(c, _)| *c == control);
            let name = asked.and_then(|(_, names)| names.first());
            let position = name.and_then(|n| site.control(control)?.position(n));
            position.map_or(usual, |p| p.0)
        };
        for own in &work.breaks {
            let usual = u8::from(matches!(own.at, At::Tie(_)));
            self.set(own.tag, wanted(own.tag, 0));
            self.set(own.handle, wanted(own.handle, usual));
        }
        for tap in &work.taps {
            self.set(tap.cutout, wanted(tap.cutout, 0));
        }
        self.set(work.home_cutout, wanted(work.home_cutout, 0));
        self.set(site.line.feeder, wanted(site.line.feeder, 1));
    }
}
