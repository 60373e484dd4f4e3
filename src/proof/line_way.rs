//! A safe way for a line crew: the usual order of the trade on the parts that a site has, played on the real drill and marked like any run.
//!
//! Cut off and tag, open cutouts, prove the tester and test, ground at the work, work, take the grounds off, ask the customers, close.
//! It is one safe way among many; that it passes is not planned but played and marked.
//! The order is that of 29 CFR 1926.961 and 1926.962, as the marking of line work names them.

use std::sync::Arc;

use crate::drill::{Action, Drill, Event, LineEvent, Listener, Moment, Outcome, What};
use crate::scenario::Scenario;
use crate::site::{
    At, Clamps, ControlId, Grounds, HandTester, LineWork, PROVING_SOURCE, PositionId, Site,
};
use crate::units::DrillTime;

use super::step::{Aim, Step, add, to_say};
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
    let mut walk = LineWalk::new(scenario, drill);
    walk.home(scenario, work);
    Way::marked(scenario, walk.drill, &walk.done)
}

/// A line crew's drill that is walked to its goal.
pub(super) struct LineWalk {
    site: Arc<Site>,
    /// How far it has come.
    pub(super) drill: Drill,
    /// What was done for that.
    pub(super) done: Vec<Step>,
    aim: Aim,
}

impl LineWalk {
    /// A walk from where a drill stands.
    pub(super) fn new(scenario: &Scenario, drill: Drill) -> Self {
        Self {
            site: Arc::clone(&scenario.site),
            drill,
            done: Vec::new(),
            aim: Aim::Answer,
        }
    }

    /// Goes on to the goal and to the end, leaving out what stands right already.
    pub(super) fn home(&mut self, scenario: &Scenario, work: &LineWork) {
        let line = &self.site.line;
        let (crew, span) = (line.crew, line.span_state);
        let asks = |control: ControlId, position: &str| {
            let mut asked = scenario.goal.at_end.iter();
            asked.any(|(c, names)| *c == control && names.iter().all(|n| n == position))
        };
        let works = asks(span, "whole") || asks(crew, "clear");
        self.answer();
        self.step_clear(works);
        let worked = works && self.has_worked();
        if !worked {
            self.aim = Aim::CutOff;
            self.cut_off(work);
        }
        if works && !worked {
            if !self.hands_on() {
                self.aim = Aim::Test;
                self.test(work);
                self.aim = Aim::Ground;
                self.ground(work);
            }
            self.aim = Aim::Work;
            self.work();
        }
        self.aim = Aim::Unground;
        self.unground(work);
        self.aim = Aim::Ask;
        self.ask();
        self.aim = Aim::Return;
        self.wait_out_the_story(scenario);
        self.aim = Aim::Close;
        self.close(scenario, work);
    }

    fn act(&mut self, action: Action) {
        if self.drill.act(&action) == Outcome::Done {
            let step = Step {
                action,
                aim: self.aim,
                at: self.drill.now(),
            };
            add(&mut self.done, step);
        }
    }

    fn set(&mut self, control: ControlId, position: u8) {
        if self.drill.positions().get(control) != PositionId(position) {
            self.act(Action::Set(control, PositionId(position)));
        }
    }

    /// Says what is so, once things have had time to begin.
    fn answer(&mut self) {
        if self.drill.now() < STEP && !to_say(&self.drill).is_empty() {
            self.act(Action::Wait(STEP.since(self.drill.now())));
        }
        for action in to_say(&self.drill) {
            self.act(action);
        }
    }

    fn hands_on(&self) -> bool {
        let positions = self.drill.positions();
        self.site.stands(positions, self.site.line.crew, "hands-on")
    }

    /// Takes hands off a line that isn't cut off and grounded, or that nothing is to be done on.
    fn step_clear(&mut self, works: bool) {
        let positions = self.drill.positions();
        let safe = self.site.in_zone(positions) && !self.site.way_left(positions);
        if self.hands_on() && !(works && safe) {
            self.aim = Aim::StepClear;
            self.set(self.site.line.crew, 3);
        }
    }

    /// Whether the span is whole and nobody's hands are on it.
    fn has_worked(&self) -> bool {
        let positions = self.drill.positions();
        let line = &self.site.line;
        positions.get(line.span_state) == PositionId(0) && positions.get(line.crew) == PositionId(3)
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
        let points = [PROVING_SOURCE, &pole, PROVING_SOURCE];
        let tested = self.tested(work);
        let done = (0..=points.len()).rev();
        let done = done.into_iter().find(|n| {
            let first = points.iter().take(*n);
            tested.ends_with(&first.map(|p| (*p).to_owned()).collect::<Vec<_>>())
        });
        for point in points.into_iter().skip(done.unwrap_or_default()) {
            self.act(Action::Test(point.to_owned()));
        }
    }

    /// Where the line was tested since anything but grounds was moved.
    fn tested(&self, work: &LineWork) -> Vec<String> {
        let grounds = |control: &ControlId| work.grounds.iter().any(|g| g.control == *control);
        let mut tested = Vec::new();
        for timed in &self.drill.run().actions {
            if let Action::Test(point) = &timed.action {
                tested.push(point.clone());
            } else if let Action::Set(control, _) = &timed.action
                && !grounds(control)
            {
                tested.clear();
            }
        }
        tested
    }

    /// Grounds at the work, earth end first.
    fn ground(&mut self, work: &LineWork) {
        let at = self.site.line.crew_pole;
        let here = |g: &&Grounds| g.pole == at;
        if let Some(grounds) = work.grounds.iter().find(here)
            && grounds.clamps(self.drill.positions()) != Clamps::BothEnds
        {
            self.set(grounds.control, 1);
            self.set(grounds.control, 2);
        }
    }

    /// Mends, and steps clear.
    fn work(&mut self) {
        let (crew, span) = (self.site.line.crew, self.site.line.span_state);
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

    /// Whether the customers have said that they are off their own sources since the utility left them last.
    fn have_answered(&self) -> bool {
        let moments = &self.drill.trace().moments;
        let served = |m: &Moment| m.readings.point("service").fed.utility;
        let leaves = |p: &[Moment]| matches!(p, [a, b] if served(a) && !served(b));
        let left = moments.windows(2).rposition(leaves);
        let back = What::Happened(Event::Line(LineEvent::CustomersBack));
        let mut since = moments.iter().skip(left.map_or(0, |index| index + 1));
        since.any(|m| m.what == back)
    }

    /// Asks the customers whether they are off their own sources, and gives them time.
    fn ask(&mut self) {
        if self.have_answered() {
            return;
        }
        if self.drill.conditions().line.customers_due.is_none() {
            self.act(Action::Tell(Listener::Neighbors));
        }
        self.act(Action::Wait(CUSTOMERS));
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
        // Nobody stands at the pole when the line is made live.
        let crew = site.line.crew;
        let mut asked = scenario.goal.at_end.iter();
        let asked = asked.any(|(control, _)| *control == crew);
        if asked || site.stands(self.drill.positions(), crew, "testing") {
            self.set(crew, wanted(crew, 3));
        }
        for own in &work.breaks {
            let usual = u8::from(matches!(own.at, At::Tie(_)));
            self.set(own.tag, wanted(own.tag, 0));
            self.set(own.jumper, wanted(own.jumper, 0));
            self.set(own.handle, wanted(own.handle, usual));
        }
        for tap in &work.taps {
            self.set(tap.cutout, wanted(tap.cutout, 0));
        }
        self.set(work.home_cutout, wanted(work.home_cutout, 0));
        self.set(site.line.feeder, wanted(site.line.feeder, 1));
    }
}
