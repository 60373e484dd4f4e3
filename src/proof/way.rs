//! A safe way to the goal: planned by positions, then played on the real drill and marked like any run.
//!
//! The plan takes the fewest moves among those that are careful: plugs are moved and the set is carried while the engine is still,
//! loads are taken one by one from a source that has settled, the engine is stopped without load, and nothing that the judge calls a breach is passed through.
//! What drifts is met by waiting: for the outage, for the engine to settle and to cool, for the utility to return.
//! The plan is not the only safe way and need not be the quickest; that it passes is not planned but played and marked.

use std::collections::{BTreeMap, VecDeque};
use std::sync::Arc;

use crate::drill::{Action, Drill, Event, Outcome, Sight, whole_millis};
use crate::marking::mark;
use crate::scenario::Scenario;
use crate::site::{Bus, ControlId, Kind, Plug, PositionId, Positions, Site};
use crate::units::DrillTime;

use super::joints::Place;
use super::judge::Judge;
use super::space::{Code, Move, Space};

/// Between two loads that are switched on, so that one motor is at speed before the next starts.
const BETWEEN_LOADS: DrillTime = DrillTime::from_secs(5);
/// Longer than the cool-down asked for.
const COOLING_MARGIN: DrillTime = DrillTime::from_secs(10);
/// States that a plan may look at.
const MOST_STATES: usize = 2_000_000;

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

/// Looks for a safe way with the story as this seed tells it.
pub(super) fn safe_way(scenario: &Arc<Scenario>, judge: &Judge<'_>, seed: u64) -> Way {
    let Ok(drill) = Drill::start(scenario, seed) else {
        return Way::None;
    };
    let mut walk = Walk {
        scenario,
        judge,
        drill,
        done: Vec::new(),
    };
    walk.wait_for(|e| matches!(e, Event::Outage));
    walk.shed();
    let there = walk.plan_and_do(Leg::There);
    let back = if there == Planned::Done {
        walk.wait_for(|e| matches!(e, Event::UtilityReturned));
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
    walk.drill.end();
    let passed = mark(scenario, walk.drill.trace()).passed;
    if passed {
        Way::Passed(walk.done)
    } else {
        Way::NotPassed(walk.done)
    }
}

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
}

impl Walk<'_> {
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

    /// Plans one thing after the other, each keeping what was reached before it, and does each plan.
    fn plan_and_do(&mut self, leg: Leg) -> Planned {
        let scenario = Arc::clone(self.scenario);
        let goal = &scenario.goal;
        let n_goals = match leg {
            Leg::There => goal.appliances.len(),
            Leg::Back => 2 + goal.at_end.len(),
        };
        self.let_it_work(leg, n_goals);
        for reached in 1..=n_goals {
            let here = self.drill.positions().clone();
            let stage = self.drill.conditions().story_done;
            let (branches, also) = (self.branches(), self.also());
            let Some(space) = Space::new(&scenario, self.judge, &branches, &also, &here) else {
                return Planned::TooLarge;
            };
            let at_goal = |p: &Positions| match leg {
                Leg::There => self.supplied(p, reached),
                Leg::Back => self.restored(p, reached),
            };
            let start = space.code(&here, stage);
            match plan(&space, self.judge, &scenario.site, start, at_goal) {
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

    /// Gives equipment that works by itself the time to do so, as long as the goal leaves.
    fn let_it_work(&mut self, leg: Leg, n_goals: usize) {
        const STEP: DrillTime = DrillTime::from_secs(30);
        let scenario = Arc::clone(self.scenario);
        if !scenario.site.transfers.iter().any(|t| t.automatic) {
            return;
        }
        let until = match leg {
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

    /// Controls that the plan needs besides: plugs of the goal, cords to plug them into, and what the end asks for.
    fn also(&self) -> Vec<ControlId> {
        let site = &self.scenario.site;
        let goal = &self.scenario.goal;
        let wanted = goal
            .appliances
            .iter()
            .filter_map(|a| site.appliances.get(*a));
        let plugs = wanted.filter_map(|a| match &a.plug {
            Plug::Cord { control, .. } => Some(*control),
            Plug::Wired => None,
        });
        let mut also: Vec<ControlId> = plugs.collect();
        if !also.is_empty() {
            also.extend(site.cords.iter().map(|c| c.near));
        }
        also.extend(goal.at_end.iter().map(|(control, _)| *control));
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
        self.act(Action::Set(control, position));
        if kind == Some(Kind::Engine) && position == PositionId(1) {
            self.wait(whole_millis(spec.warmup_s) + BETWEEN_LOADS);
        } else if matches!(kind, Some(Kind::Breaker | Kind::Transfer | Kind::Backfed)) {
            self.wait(BETWEEN_LOADS);
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

    /// Whether the first `reached` things hold of the end: on the utility if that is asked for, the engine still, then each control as it should stand.
    fn restored(&self, positions: &Positions, reached: usize) -> bool {
        let site = &self.scenario.site;
        let goal = &self.scenario.goal;
        let on = !goal.back_on_utility || self.judge.on_utility(positions);
        let still = reached < 2 || !self.judge.running(positions);
        let mut named = goal.at_end.iter().take(reached.saturating_sub(2));
        on && still
            && named.all(|(control, wanted)| {
                let stands = site.position_name(positions, *control);
                wanted.iter().any(|w| w == stands)
            })
    }
}

struct TooLarge;

/// The fewest careful moves to a state that is a goal.
fn plan(
    space: &Space<'_>,
    judge: &Judge<'_>,
    site: &Site,
    start: Code,
    goal: impl Fn(&Positions) -> bool,
) -> Result<Option<Vec<(ControlId, PositionId)>>, TooLarge> {
    let mut from: BTreeMap<Code, Option<(Code, ControlId, PositionId)>> = BTreeMap::new();
    from.insert(start, None);
    let mut queue = VecDeque::from([start]);
    while let Some(code) = queue.pop_front() {
        let (positions, _) = space.decode(code);
        if goal(&positions) {
            let mut way = Vec::new();
            let mut here = code;
            while let Some(Some((before, control, position))) = from.get(&here) {
                way.push((*control, *position));
                here = *before;
            }
            way.reverse();
            return Ok(Some(way));
        }
        for (step, next) in space.moves(code) {
            let Move::Set(control, position) = step else {
                continue;
            };
            if from.contains_key(&next) || !careful(judge, site, &positions, control, position) {
                continue;
            }
            if judge.stand(&space.decode(next).0).breach() {
                continue;
            }
            from.insert(next, Some((code, control, position)));
            queue.push_back(next);
        }
        if from.len() > MOST_STATES {
            return Err(TooLarge);
        }
    }
    Ok(None)
}

/// Whether a move is careful as things stand.
fn careful(
    judge: &Judge<'_>,
    site: &Site,
    positions: &Positions,
    control: ControlId,
    position: PositionId,
) -> bool {
    let running = judge.running(positions);
    let on = position == PositionId(1);
    match site.control(control).map(|c| c.kind) {
        Some(Kind::Plug | Kind::Placement) => !running,
        Some(Kind::Output | Kind::Backfed) => running || !on,
        // Stopped or started only while nothing hangs on it.
        Some(Kind::Engine) => !judge.joints.has(
            &judge.joints.reach(positions, Place::Winding),
            Place::SetOutlet,
        ),
        Some(Kind::Transfer) => position != PositionId(2) || running,
        Some(Kind::Lock) => false,
        _ => true,
    }
}
