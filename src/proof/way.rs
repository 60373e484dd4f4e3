//! A safe way to the goal: planned by positions, then played on the real drill and marked like any run.
//!
//! The plan takes few moves, one appliance and one thing of the end after the other, and only careful ones: plugs are moved and the set is carried while the engine is still,
//! loads are taken one by one from a source that has settled, the engine is stopped without load, and nothing that the judge calls a breach is passed through.
//! What drifts is met by waiting: for the outage, for the engine to settle and to cool, for the utility to return.
//! The plan is not the only safe way and need not be the quickest; that it passes is not planned but played and marked.

use std::sync::Arc;

use crate::drill::{Action, Drill, Event, Outcome, Sight, whole_millis};
use crate::marking::mark;
use crate::scenario::{Happening, Scenario};
use crate::site::{Bus, ControlId, Kind, Plug, PositionId, Positions};
use crate::units::DrillTime;

use super::joints::Place;
use super::judge::Judge;
use super::plan::{TooLarge, plan};
use super::prepare::preparations;
use super::space::Space;

/// Between two loads that are switched on, so that one motor is at speed before the next starts.
const BETWEEN_LOADS: DrillTime = DrillTime::from_secs(5);
/// Longer than the cool-down asked for.
const COOLING_MARGIN: DrillTime = DrillTime::from_secs(10);
/// Long enough for a battery to take over what hangs on it.
const AT_ONCE: DrillTime = DrillTime::from_secs(60);
/// Choices of the first cord that are tried when a way does not pass.
const MOST_TURNS: usize = 6;

/// What became of looking for a safe way.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Way {
    /// It was found, played and passed: its actions.
    Passed(Vec<Action>),
    /// By positions there is no way.
    None,
    /// A way was found by positions; played, it does not pass.
    NotPassed(Vec<Action>),
    /// The search was too large.
    TooLarge,
}

/// Looks for a safe way with the story as this seed tells it, beginning with another cord each time until one passes.
pub(super) fn safe_way(scenario: &Arc<Scenario>, judge: &Judge<'_>, seed: u64) -> Way {
    let n_turns = scenario.site.cords.len().clamp(1, MOST_TURNS);
    let mut first = None;
    for turn in 0..n_turns {
        let way = way_from(scenario, judge, seed, turn);
        // Where there is no way, another cord is none either.
        if !matches!(way, Way::NotPassed(_)) {
            return way;
        }
        first.get_or_insert(way);
    }
    first.unwrap_or(Way::None)
}

fn way_from(scenario: &Arc<Scenario>, judge: &Judge<'_>, seed: u64, turn: usize) -> Way {
    let Ok(drill) = Drill::start(scenario, seed) else {
        return Way::None;
    };
    let mut walk = Walk {
        scenario,
        judge,
        drill,
        done: Vec::new(),
        turn,
    };
    if walk.is_serviced() == Planned::TooLarge {
        return Way::TooLarge;
    }
    if walk.make_safe() == Planned::TooLarge {
        return Way::TooLarge;
    }
    walk.wait_for(|e| matches!(e, Event::Outage));
    walk.prepare();
    walk.shed();
    let there = walk.plan_and_do(Leg::There);
    let back = if there == Planned::Done {
        walk.wait_for(|e| matches!(e, Event::UtilityReturned));
        walk.wait_for_good();
        walk.act(Action::Look(Sight::Street));
        walk.plan_and_do(Leg::Back)
    } else {
        there
    };
    if back != Planned::Done {
        return if back == Planned::TooLarge {
            Way::TooLarge
        } else {
            Way::None
        };
    }
    walk.answer();
    walk.drill.end();
    let verdict = mark(scenario, walk.drill.trace());
    if verdict.passed {
        Way::Passed(walk.done)
    } else {
        Way::NotPassed(walk.done)
    }
}

/// Whether these actions pass when they are played with the story as this seed tells it.
pub(super) fn passes(scenario: &Arc<Scenario>, way: &[Action], seed: u64) -> bool {
    let Ok(mut drill) = Drill::start(scenario, seed) else {
        return false;
    };
    for action in way {
        drill.act(action);
    }
    drill.end();
    mark(scenario, drill.trace()).passed
}

/// How often an engine that doesn't catch is pulled again.
const MOST_PULLS: usize = 5;

/// Which half of the way.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Leg {
    There,
    Back,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Planned {
    Done,
    None,
    TooLarge,
}

struct Walk<'a> {
    scenario: &'a Arc<Scenario>,
    judge: &'a Judge<'a>,
    drill: Drill,
    done: Vec<Action>,
    /// Which cord is thought of first.
    turn: usize,
}

impl Walk<'_> {
    /// Says what the drill asks, as it is.
    fn answer(&mut self) {
        for question in &self.scenario.questions {
            let about = &question.about;
            let truth = about.truth(
                &self.scenario.site,
                self.drill.positions(),
                self.drill.readings(),
            );
            self.act(Action::Say(question.name.clone(), truth));
        }
    }

    fn act(&mut self, action: Action) {
        if self.drill.act(&action) != Outcome::Done {
            return;
        }
        match (self.done.last_mut(), &action) {
            (Some(Action::Wait(before)), Action::Wait(more)) => *before = *before + *more,
            _ => self.done.push(action),
        }
    }

    fn wait(&mut self, time: DrillTime) {
        if time > DrillTime::ZERO {
            self.act(Action::Wait(DrillTime::from_secs(
                time.millis().div_ceil(1000),
            )));
        }
    }

    /// Waits until an event has happened, unless the story has none such.
    fn wait_for(&mut self, event: impl Fn(&Event) -> bool) {
        const STEP: DrillTime = DrillTime::from_secs(30);
        let last = self.scenario.story.last();
        let latest = last.map_or(DrillTime::ZERO, |t| {
            t.at + DrillTime::from_secs(u64::from(t.spread_s))
        });
        while !self.drill.trace().events().any(|(_, e)| event(e)) && self.drill.now() < latest {
            self.wait(STEP);
        }
    }

    /// Waits until the utility that has come back doesn't fail any more, as the story goes.
    fn wait_for_good(&mut self) {
        let story = &self.scenario.story;
        let last = story
            .iter()
            .rposition(|t| t.what == Happening::UtilityFails);
        // The return after the last failure is told with it.
        let told = last.map_or(0, |index| story.len().min(index + 2));
        while self.drill.conditions().story_done < told && !self.drill.over() {
            self.wait(BETWEEN_LOADS);
        }
    }

    /// Sees to equipment that works by itself before the outage: what the end asks of it can be done while the utility feeds the house.
    fn is_serviced(&mut self) -> Planned {
        if self.scenario.site.generator.machine.automatic.is_none() {
            return Planned::Done;
        }
        self.plan_all(Leg::Back)
    }

    /// Ends at once what is found unsafe.
    fn make_safe(&mut self) -> Planned {
        let here = self.drill.positions().clone();
        if !self.judge.stand(&here).breach() {
            return Planned::Done;
        }
        let scenario = Arc::clone(self.scenario);
        let (branches, also) = (self.branches(), self.also(Leg::There, 0));
        let Some(space) = Space::new(&scenario, self.judge, &branches, &also, &here) else {
            return Planned::TooLarge;
        };
        let start = space.code(&here, self.drill.conditions().story_done);
        let safe = |p: &Positions| !self.judge.stand(p).breach();
        match plan(&space, start, &[], safe) {
            Ok(Some(way)) => {
                for (control, position) in way {
                    self.act(Action::Set(control, position));
                }
                Planned::Done
            }
            Ok(None) => Planned::None,
            Err(TooLarge) => Planned::TooLarge,
        }
    }

    /// Sees to what drifts: where the set stands, how cords lie, the alarm, the fuel, the window.
    fn prepare(&mut self) {
        for action in preparations(self.scenario, self.drill.positions()) {
            self.act(action);
        }
    }

    /// Turns off the branches of every bus that a generator will feed: they come back one by one.
    fn shed(&mut self) {
        let site = Arc::clone(&self.scenario.site);
        let fed_by_hand = |bus: Bus| bus != Bus::Main || site.panel.has_slide();
        let off = site.circuits.iter().filter(|c| fed_by_hand(c.bus));
        for breaker in off.map(|c| c.breaker) {
            if self.drill.positions().get(breaker) == PositionId(1) {
                self.act(Action::Set(breaker, PositionId(0)));
            }
        }
    }

    /// Lets equipment work that does so by itself, and plans what is left.
    fn plan_and_do(&mut self, leg: Leg) -> Planned {
        let scenario = Arc::clone(self.scenario);
        let goal = &scenario.goal;
        let n_goals = match leg {
            Leg::There => goal.appliances.len(),
            Leg::Back => 2 + goal.at_end.len(),
        };
        self.let_it_work(leg, n_goals);
        self.plan_all(leg)
    }

    /// Plans one thing after the other, each keeping what was reached before it, and does each plan at once.
    fn plan_all(&mut self, leg: Leg) -> Planned {
        let scenario = Arc::clone(self.scenario);
        let goal = &scenario.goal;
        let n_goals = match leg {
            Leg::There => goal.appliances.len(),
            Leg::Back => 2 + goal.at_end.len(),
        };
        for reached in 1..=n_goals {
            let here = self.drill.positions().clone();
            let stage = self.drill.conditions().story_done;
            let (branches, also) = (self.branches(), self.also(leg, reached));
            let Some(space) = Space::new(&scenario, self.judge, &branches, &also, &here) else {
                return Planned::TooLarge;
            };
            let at_goal = |p: &Positions| match leg {
                Leg::There => self.supplied(p, reached),
                Leg::Back => self.restored(p, reached),
            };
            let start = space.code(&here, stage);
            let mut planned = Ok(None);
            for still in self.left_alone(leg, reached) {
                planned = plan(&space, start, &still, at_goal);
                if !matches!(planned, Ok(None)) {
                    break;
                }
            }
            match planned {
                Ok(Some(way)) => {
                    for (control, position) in way {
                        self.step(control, position);
                    }
                }
                Ok(None) => return Planned::None,
                Err(TooLarge) => return Planned::TooLarge,
            }
        }
        Planned::Done
    }

    /// Cord ends and plugs that are left where they are, one choice after the other; at last none.
    /// With few of them in hand a plan is found at once where it would be lost among all ways to lay all cords.
    fn left_alone(&self, leg: Leg, reached: usize) -> Vec<Vec<ControlId>> {
        let site = &self.scenario.site;
        let goal = &self.scenario.goal;
        let plugs = site.appliances.iter().filter_map(|a| match &a.plug {
            Plug::Cord { control, .. } => Some(*control),
            Plug::Wired => None,
        });
        let all: Vec<ControlId> = plugs.chain(site.cords.iter().map(|c| c.near)).collect();
        let but = |wanted: &[ControlId]| -> Vec<ControlId> {
            let others = all.iter().filter(|c| !wanted.contains(c));
            others.copied().collect()
        };
        let mut choices = Vec::new();
        match leg {
            Leg::There => {
                let appliance = reached.checked_sub(1).and_then(|i| goal.appliances.get(i));
                let plug = appliance
                    .and_then(|a| site.appliances.get(*a))
                    .map(|a| &a.plug);
                if let Some(Plug::Cord { control, cords, .. }) = plug {
                    let n_cords = cords.len();
                    let turned = cords.iter().cycle().skip(self.turn).take(n_cords);
                    let ends = turned.filter_map(|(cord, _)| site.cords.get(*cord));
                    choices.extend(ends.map(|cord| but(&[*control, cord.near])));
                }
            }
            Leg::Back => {
                let asked = reached.checked_sub(3).and_then(|i| goal.at_end.get(i));
                choices.extend(asked.map(|(control, _)| but(&[*control])));
            }
        }
        choices.push(Vec::new());
        choices
    }

    /// Gives equipment that works by itself the time to do so, as long as the goal leaves.
    fn let_it_work(&mut self, leg: Leg, n_goals: usize) {
        const STEP: DrillTime = DrillTime::from_secs(30);
        let scenario = Arc::clone(self.scenario);
        let site = &scenario.site;
        if !site.transfers.iter().any(|t| t.automatic) {
            return;
        }
        // A controller that starts an engine needs its time; a battery's transfer is done at once.
        let until = match leg {
            _ if site.generator.machine.automatic.is_none() => self.drill.now() + AT_ONCE,
            Leg::There => self.drill.now() + scenario.goal.within,
            Leg::Back => scenario.ends_at,
        };
        while self.drill.now() + STEP < until {
            let done = match leg {
                Leg::There => self.supplied(self.drill.positions(), n_goals),
                Leg::Back => self.restored(self.drill.positions(), 2),
            };
            if done {
                return;
            }
            self.wait(STEP);
        }
    }

    /// Controls that the plan needs besides, for as much of the goal as is to be reached: plugs and the cords to plug them into, what the end asks for, the sun's own breakers, and what locks a set out.
    fn also(&self, leg: Leg, reached: usize) -> Vec<ControlId> {
        let site = &self.scenario.site;
        let goal = &self.scenario.goal;
        let mut also = Vec::new();
        let n_appliances = match leg {
            Leg::There => reached,
            Leg::Back => goal.appliances.len(),
        };
        for index in goal.appliances.iter().take(n_appliances) {
            if let Some(Plug::Cord { control, cords, .. }) =
                site.appliances.get(*index).map(|a| &a.plug)
            {
                also.push(*control);
                let cords = cords.iter().filter_map(|(cord, _)| site.cords.get(*cord));
                also.extend(cords.map(|c| c.near));
            }
        }
        if leg == Leg::Back {
            let asked = goal.at_end.iter().take(reached.saturating_sub(2));
            also.extend(asked.map(|(control, _)| *control));
        }
        also.extend(site.solar.iter().flat_map(|s| [s.breaker, s.disconnect]));
        let automatic = site.generator.machine.automatic.iter();
        also.extend(automatic.flat_map(|a| [a.switch, a.battery, a.cover]));
        also
    }

    /// One move, with the waiting that it asks for before and after.
    fn step(&mut self, control: ControlId, position: PositionId) {
        let site = Arc::clone(&self.scenario.site);
        let kind = site.control(control).map(|c| c.kind);
        let spec = &site.generator.spec;
        if kind == Some(Kind::Engine) && position == PositionId(0) {
            let since = self.drill.conditions().engine.loaded_at;
            let rested = since.map_or(DrillTime::ZERO, |at| self.drill.now().since(at));
            let asked = whole_millis(spec.cooldown_s) + COOLING_MARGIN;
            self.wait(asked.since(rested));
        }
        let starts = kind == Some(Kind::Engine) && position == PositionId(1);
        self.act(Action::Set(control, position));
        if starts {
            self.try_again(control, position);
            self.wait(whole_millis(spec.warmup_s) + BETWEEN_LOADS);
        } else if matches!(kind, Some(Kind::Breaker | Kind::Transfer | Kind::Backfed)) {
            self.wait(BETWEEN_LOADS);
        }
    }

    /// Pulls an engine that didn't catch until it does, a few times.
    fn try_again(&mut self, control: ControlId, position: PositionId) {
        for _ in 0..MOST_PULLS {
            if self.drill.conditions().engine.running_since.is_some() {
                return;
            }
            self.act(Action::Set(control, position));
        }
    }

    /// Circuits that the plan has to move: those of the goal, and those that touch the trunk twice.
    fn branches(&self) -> Vec<usize> {
        let site = &self.scenario.site;
        let goal = &self.scenario.goal;
        let mut branches: Vec<usize> = goal
            .appliances
            .iter()
            .filter_map(|a| site.appliances.get(*a))
            .map(|a| a.circuit)
            .collect();
        let named = |c: usize| {
            let breaker = site.circuits.get(c).map(|c| c.breaker);
            goal.at_end
                .iter()
                .any(|(control, _)| Some(*control) == breaker)
        };
        branches.extend((0..site.circuits.len()).filter(|c| named(*c)));
        branches.sort_unstable();
        branches.dedup();
        branches
    }

    /// Whether the first `reached` appliances of the goal hang on a source of the house's own.
    fn supplied(&self, positions: &Positions, reached: usize) -> bool {
        let site = &self.scenario.site;
        let mut goal = self.scenario.goal.appliances.iter().take(reached);
        goal.all(|index| {
            let appliance = site.appliances.get(*index);
            appliance.is_some_and(|a| {
                let place = match &a.plug {
                    Plug::Wired => Some(Place::Outlet(a.circuit)),
                    Plug::Cord { control, wall, .. } if positions.get(*control) == *wall => {
                        Some(Place::Outlet(a.circuit))
                    }
                    Plug::Cord { control, cords, .. } => {
                        let at = cords.iter().find(|(_, p)| positions.get(*control) == *p);
                        at.map(|(cord, _)| Place::Far(*cord))
                    }
                };
                place.is_some_and(|p| self.judge.own_reaches(positions, p))
            })
        })
    }

    /// Whether the first `reached` things hold of the end: on the utility if that is asked for, the engine still unless the end asks for it, then each control as it should stand.
    fn restored(&self, positions: &Positions, reached: usize) -> bool {
        let site = &self.scenario.site;
        let goal = &self.scenario.goal;
        let on = !goal.back_on_utility || self.judge.on_utility(positions);
        let engine = site.generator.engine;
        let goes_on = |(control, wanted): &(ControlId, Vec<String>)| {
            *control == engine && wanted.iter().any(|w| w == "running")
        };
        let still =
            reached < 2 || goal.at_end.iter().any(goes_on) || !self.judge.running(positions);
        let mut named = goal.at_end.iter().take(reached.saturating_sub(2));
        on && still
            && named.all(|(control, wanted)| {
                let stands = site.position_name(positions, *control);
                wanted.iter().any(|w| w == stands)
            })
    }
}
