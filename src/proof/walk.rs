//! A walk to the goal: planned by positions, and played on a real drill, from its start or from wherever a learner has got it.
//!
//! The plan takes few moves, one appliance and one thing of the end after the other, and only careful ones: plugs are moved and the set is carried while the engine is still,
//! loads are taken one by one from a source that has settled, the engine is stopped without load, and nothing that the judge calls a breach is passed through.
//! What drifts is met by waiting: for the outage, for the engine to settle and to cool, for the utility to return.
//! It is not the only safe way and need not be the quickest; that it passes is not planned but played and marked.

use std::sync::Arc;

use crate::drill::{Action, Drill, Event, Known, Moment, Outcome, Sight, What, whole_millis};
use crate::scenario::question::About;
use crate::scenario::{Happening, Scenario};
use crate::site::{Bus, Circuit, ControlId, Cord, Kind, PositionId, Positions};
use crate::units::DrillTime;

use super::joints::Place;
use super::judge::Judge;
use super::plan::{Manner, TooLarge, is_fed_by_hand, plan};
use super::space::Space;
use super::step::{Aim, Step, add, to_say};
use super::walk_care::{branch_handle, heaviest_first};

/// Between two loads that are switched on, so that one motor is at speed before the next starts.
const BETWEEN_LOADS: DrillTime = DrillTime::from_secs(5);
/// Longer than the cool-down asked for.
pub(super) const COOLING_MARGIN: DrillTime = DrillTime::from_secs(10);
/// Long enough for a battery to take over what hangs on it.
pub(super) const AT_ONCE: DrillTime = DrillTime::from_secs(90);
/// How often an engine that doesn't catch is pulled again.
const MOST_PULLS: usize = 5;

/// Which half of the way.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Leg {
    /// To the house's own source.
    There,
    /// Back to the utility and to the end.
    Back,
}

/// What became of planning.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Planned {
    /// It was planned and done.
    Done,
    /// By positions there is no way.
    None,
    /// The search was too large.
    TooLarge,
}

/// What a walk cares for beyond what positions ask for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Care {
    /// Nothing else.
    Plain,
    /// Loads are held back: branches on a battery, motors one by one and the heaviest first, a second set before the first load.
    Sparing,
    /// What has had power rests where the next is too much along with it.
    InTurns,
    /// Time is short: an engine warms up while handles and cords are brought where they belong, and no longer than it has to.
    Hurried,
    /// Nothing is fed, and an electrician is called: where a drill may be stopped safely.
    Stopping,
}

/// A drill that is walked to its goal.
pub(super) struct Walk<'a> {
    /// What is walked.
    pub(super) scenario: &'a Arc<Scenario>,
    /// Who judges how things stand.
    pub(super) judge: &'a Judge<'a>,
    /// How far it has come.
    pub(super) drill: Drill,
    /// What was done for that.
    pub(super) done: Vec<Step>,
    /// Which cord is thought of first.
    pub(super) turn: usize,
    /// States that a plan may look at.
    most_states: usize,
    /// What it cares for besides.
    pub(super) care: Care,
    /// The appliances of the goal, in the order in which they are brought to power.
    pub(super) asked: Vec<usize>,
    /// Those of them that have had power and rest.
    pub(super) resting: Vec<usize>,
    /// What is being done.
    pub(super) aim: Aim,
}

impl<'a> Walk<'a> {
    /// A walk from where a drill stands, thinking first of the cord that this `turn` gives, with plans that look at no more than `most_states`.
    pub(super) fn new(
        scenario: &'a Arc<Scenario>,
        judge: &'a Judge<'a>,
        drill: Drill,
        turn: usize,
        most_states: usize,
    ) -> Self {
        Self {
            scenario,
            judge,
            drill,
            done: Vec::new(),
            turn,
            most_states,
            care: Care::Plain,
            asked: scenario.goal.appliances.clone(),
            resting: Vec::new(),
            aim: Aim::Service,
        }
    }

    /// The same walk, caring for this besides.
    pub(super) fn caring(mut self, care: Care) -> Self {
        self.care = care;
        if self.spares() {
            self.asked = heaviest_first(&self.scenario.site, &self.asked);
        }
        self
    }

    /// Whether loads are held back.
    pub(super) fn spares(&self) -> bool {
        self.care == Care::Sparing
    }

    /// Whether time is short.
    pub(super) fn hurries(&self) -> bool {
        self.care == Care::Hurried
    }

    /// Goes on to the goal and to the end, leaving out what is behind.
    pub(super) fn home(&mut self) -> Planned {
        let outage = |e: &Event| matches!(e, Event::Outage);
        self.get_out();
        self.shut_covers();
        self.end_wrong_volts();
        if self.spares() {
            self.aim = Aim::Spare;
            self.spare_battery();
        }
        self.aim = Aim::Service;
        if !self.happened(outage) && self.is_serviced() == Planned::TooLarge {
            return Planned::TooLarge;
        }
        self.aim = Aim::Safe;
        if self.make_safe() == Planned::TooLarge {
            return Planned::TooLarge;
        }
        let spared = self.spare();
        self.aim = Aim::Outage;
        self.wait_for(outage);
        if self.only_asks() {
            self.aim = Aim::Answer;
            self.find_out();
            self.answer();
            return Planned::Done;
        }
        if self.care == Care::Stopping {
            self.stop_safely();
            self.wait_until_back(Aim::SafeStop);
        } else if !self.is_good_again() {
            self.prepare();
            self.aim = Aim::Service;
            self.hand_over();
            self.fill_up();
            self.aim = Aim::Shed;
            if !self.scenario.goal.appliances.is_empty() {
                self.shed();
                self.ready_set();
                self.start_early();
            }
            let there = self.plan_and_do(Leg::There);
            if there != Planned::Done {
                return there;
            }
            self.prepare_the_rest();
            self.wait_until_back(Aim::Return);
        }
        self.aim = Aim::Return;
        if !self.has_looked() {
            self.act(Action::Look(Sight::Street));
        }
        let back = self.plan_and_do(Leg::Back);
        for breaker in spared {
            self.step(breaker, PositionId(1));
        }
        if back == Planned::Done {
            self.put_back_tripped();
            // A set that has begun a run of its own meanwhile is let finish it.
            self.aim = Aim::ByItself;
            self.let_it_work(Leg::Back, 0);
            self.aim = Aim::Answer;
            self.answer();
        }
        back
    }

    pub(super) fn happened(&self, event: impl Fn(&Event) -> bool) -> bool {
        self.drill.trace().events().any(|(_, e)| event(e))
    }

    /// Turns off what has tripped and is to be off at the end: a plan by positions takes the one for the other.
    fn put_back_tripped(&mut self) {
        let scenario = Arc::clone(self.scenario);
        for (control, wanted) in &scenario.goal.at_end {
            let stands = scenario
                .site
                .position_name(self.drill.positions(), *control);
            let to = scenario
                .site
                .control(*control)
                .and_then(|c| c.position("off"));
            if let Some(off) =
                to.filter(|_| stands == "tripped" && wanted.iter().any(|w| w == "off"))
            {
                self.act(Action::Set(*control, off));
            }
        }
    }

    /// Whether nothing is to be powered or moved, and all that is left is to answer.
    fn only_asks(&self) -> bool {
        let goal = &self.scenario.goal;
        let at_end = |(control, wanted): &(ControlId, Vec<String>)| {
            let site = &self.scenario.site;
            let stands = site.position_name(self.drill.positions(), *control);
            wanted.iter().any(|w| w == stands)
        };
        let asks = !self.scenario.questions.is_empty() && !goal.back_on_utility;
        asks && goal.appliances.is_empty() && goal.at_end.iter().all(at_end)
    }

    /// Looks and tests, so that what the drill asks can be said.
    fn find_out(&mut self) {
        let known = Known::from_trace(self.drill.trace());
        let since = {
            let mut events = self.drill.trace().events();
            let outage = events.find(|(_, e)| matches!(e, Event::Outage));
            outage.map_or(DrillTime::ZERO, |(moment, _)| moment.at)
        };
        let unseen = |sight| known.seen.get(&sight).is_none_or(|at| *at < since);
        let untested = |point: &String| known.points.get(point).is_none_or(|(at, _)| *at < since);
        let scenario = Arc::clone(self.scenario);
        for question in &scenario.questions {
            let unsaid = to_say(&self.drill);
            let open = |say: &Action| matches!(say, Action::Say(name, _) if *name == question.name);
            let Some(say) = unsaid.into_iter().find(open) else {
                continue;
            };
            let by = match &question.about {
                About::Live(point) | About::FedBy(point) => {
                    untested(point).then(|| Action::Test(point.clone()))
                }
                About::SlideFit | About::BreakerFits(_) | About::HangsOn(_) => {
                    unseen(Sight::Panel).then_some(Action::Look(Sight::Panel))
                }
                About::Bonds => unseen(Sight::Generator).then_some(Action::Look(Sight::Generator)),
            };
            for action in by.into_iter().chain([say]) {
                self.act(action);
            }
        }
    }

    /// Says what the drill asks and hasn't been told, as it is.
    fn answer(&mut self) {
        for action in to_say(&self.drill) {
            self.act(action);
        }
    }

    pub(super) fn act(&mut self, action: Action) {
        if self.is_refused(&action, self.drill.positions()) {
            return;
        }
        if self.drill.act(&action) != Outcome::Done {
            return;
        }
        let step = Step {
            action,
            aim: self.aim,
            at: self.drill.now(),
        };
        add(&mut self.done, step);
    }

    /// Whether what is built doesn't let it be done.
    pub(super) fn is_refused(&self, action: &Action, positions: &Positions) -> bool {
        let Action::Set(control, to) = action else {
            return false;
        };
        let site = &self.scenario.site;
        site.refusal(positions, *control, *to).is_some()
    }

    /// Does something for another end, in the middle of what is being done.
    fn meanwhile(&mut self, aim: Aim, wait: DrillTime) {
        let before = std::mem::replace(&mut self.aim, aim);
        self.wait(wait);
        self.aim = before;
    }

    pub(super) fn wait(&mut self, time: DrillTime) {
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
        // A crew that found the line live comes back later than its story says.
        while !self.happened(&event) && self.drill.now() < latest + self.drill.conditions().delay {
            self.reset();
            self.keep_fueled();
            self.keep_oiled();
            self.wait(STEP);
        }
    }

    /// Waits until the utility is back for good.
    fn wait_until_back(&mut self, aim: Aim) {
        self.aim = aim;
        self.wait_for(|e| matches!(e, Event::UtilityReturned));
        self.wait_for_good();
    }

    /// Waits until the utility that has come back doesn't fail any more, as the story goes.
    fn wait_for_good(&mut self) {
        let told = self.told_for_good();
        while self.drill.conditions().story_done < told && !self.drill.over() {
            self.wait(BETWEEN_LOADS);
        }
    }

    /// How much of the story is told when the utility doesn't fail any more.
    fn told_for_good(&self) -> usize {
        let story = &self.scenario.story;
        let last = |what| story.iter().rposition(|t| t.what == what);
        // The return after the last failure is told with it.
        let fails = last(Happening::UtilityFails).map_or(0, |index| index + 2);
        let mended = last(Happening::DropMended).map_or(0, |index| index + 1);
        story.len().min(fails.max(mended))
    }

    /// Whether the utility has come back for good.
    pub(super) fn is_good_again(&self) -> bool {
        self.happened(|e| matches!(e, Event::UtilityReturned))
            && self.drill.conditions().story_done >= self.told_for_good()
    }

    /// Whether somebody has looked at the street since the utility came back, or was lost for good.
    fn has_looked(&self) -> bool {
        let trace = self.drill.trace();
        let since = trace.return_at().or(trace.outage_at());
        let looked = |m: &Moment| m.what == What::Did(Action::Look(Sight::Street));
        let mut later = trace.moments.iter().filter(|m| Some(m.at) >= since);
        later.any(looked)
    }

    /// A plan from here to where `goal` holds, leaving these controls `still`.
    pub(super) fn plan_to(
        &self,
        branches: &[usize],
        also: &[ControlId],
        still: &[Vec<ControlId>],
        goal: impl Fn(&Positions) -> bool,
    ) -> Result<Option<Vec<(ControlId, PositionId)>>, TooLarge> {
        let here = self.drill.positions();
        let space = Space::new(self.scenario, self.judge, branches, also, here);
        let space = space.ok_or(TooLarge)?;
        let start = space.code(here, self.drill.conditions().story_done);
        let manner = Manner {
            sparing: self.spares(),
            hurried: self.hurries(),
        };
        for still in still {
            let planned = plan(&space, start, still, manner, self.most_states, &goal)?;
            if planned.is_some() {
                return Ok(planned);
            }
        }
        Ok(None)
    }

    /// Turns off the branches of every bus that a generator will feed: they come back one by one.
    /// A sparing walk does so too with what a generator feeds already.
    fn shed(&mut self) {
        let site = Arc::clone(&self.scenario.site);
        let positions = self.drill.positions();
        let all = self.spares() && !site.transfers.iter().any(|t| t.automatic);
        let off = |(index, circuit): (usize, &Circuit)| {
            let handle = branch_handle(&site, positions, index)?;
            let fed = handle != circuit.breaker || self.is_fed(circuit.bus);
            let comes_back = is_fed_by_hand(&site, circuit.bus) && !fed || all && fed;
            comes_back.then_some(handle)
        };
        let off: Vec<ControlId> = site.circuits.iter().enumerate().filter_map(off).collect();
        for handle in off {
            self.turn_off(handle);
        }
    }

    /// Whether a source of the house's own feeds a bus already.
    fn is_fed(&self, bus: Bus) -> bool {
        self.judge
            .own_reaches(self.drill.positions(), Place::of(bus))
    }

    /// Lets equipment work that does so by itself, and plans what is left.
    fn plan_and_do(&mut self, leg: Leg) -> Planned {
        let scenario = Arc::clone(self.scenario);
        let goal = &scenario.goal;
        let n_goals = match leg {
            Leg::There => goal.appliances.len(),
            Leg::Back => 2 + goal.at_end.len(),
        };
        self.aim = Aim::ByItself;
        self.let_it_work(leg, n_goals);
        self.aim = match leg {
            Leg::There => Aim::There,
            Leg::Back => Aim::Back,
        };
        self.plan_all(leg)
    }

    /// Plans one thing after the other, each keeping what was reached before it, and does each plan at once.
    pub(super) fn plan_all(&mut self, leg: Leg) -> Planned {
        let goal = &self.scenario.goal;
        let n_goals = match leg {
            Leg::There => goal.appliances.len(),
            Leg::Back => 2 + goal.at_end.len(),
        };
        if leg == Leg::There {
            self.lay_cords();
        }
        for reached in 1..=n_goals {
            let (branches, also) = (self.branches(), self.also(leg, reached));
            let still = self.left_alone(leg, reached);
            let to =
                |goal: &dyn Fn(&Positions) -> bool| self.plan_to(&branches, &also, &still, goal);
            let planned = match leg {
                // By cords that are fit for it, if there is a way with them.
                Leg::There => match to(&|p| self.supplied(p, reached, Cord::is_fit)) {
                    Ok(None) => to(&|p| self.supplied(p, reached, |_| true)),
                    planned => planned,
                },
                Leg::Back => to(&|p| self.restored(p, reached)),
            };
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

    /// One move, with the waiting that it asks for before and after.
    pub(super) fn step(&mut self, control: ControlId, position: PositionId) {
        let site = Arc::clone(&self.scenario.site);
        let kind = site.control(control).map(|c| c.kind);
        let spec = &site.generator.spec;
        if kind == Some(Kind::Engine) && position == PositionId(0) {
            // An engine that carried nothing is cool.
            if let Some(at) = self.drill.conditions().engine.loaded_at {
                let asked = whole_millis(spec.cooldown_s) + COOLING_MARGIN;
                self.meanwhile(Aim::Cool, asked.since(self.drill.now().since(at)));
            }
        }
        // Machines on cords come on by plug or by the set's own output.
        let by_cord = self.spares() && self.judge.running(self.drill.positions());
        // Behind an output that is off nothing hangs on the engine yet; what a battery feeds settles all the same.
        let behind_off = self.hurries()
            && self.aim == Aim::There
            && site.position_name(self.drill.positions(), site.generator.output) == "off";
        let idle = behind_off && site.battery.is_none();
        let is_load = kind.is_some_and(|kind| is_load(kind, by_cord)) && !idle;
        if is_load && !behind_off || kind == Some(Kind::Output) {
            self.warm_up();
        }
        if is_load {
            self.settle();
        }
        let on = position == PositionId(1);
        if on && site.position_name(self.drill.positions(), control) == "tripped" {
            self.act(Action::Set(control, PositionId(0)));
        }
        let starts = kind == Some(Kind::Engine) && on;
        if is_load && self.aim == Aim::There {
            self.take_turns(control, position);
        }
        let held = self.hold(control, position);
        self.act(Action::Set(control, position));
        if starts {
            self.try_again(control, position);
            let second = site.generator.machine.second.filter(|_| self.spares());
            if let Some(second) = second {
                self.act(Action::Set(second, PositionId(1)));
            }
            if !self.hurries() {
                self.warm_up();
            }
        } else if is_load {
            self.settle();
        }
        for (handle, stood) in held {
            if self.drill.positions().get(handle) != stood {
                self.step(handle, stood);
            }
        }
    }

    /// Waits until a running engine has settled.
    fn warm_up(&mut self) {
        if let Some(since) = self.drill.conditions().engine.running_since {
            let margin = if self.hurries() {
                DrillTime::ZERO
            } else {
                BETWEEN_LOADS
            };
            let asked = whole_millis(self.scenario.site.generator.spec.warmup_s) + margin;
            let ran = self.drill.now().since(since);
            self.meanwhile(Aim::WarmUp, asked.since(ran));
        }
    }

    /// Waits until the load that was moved last has settled.
    fn settle(&mut self) {
        let site = &self.scenario.site;
        let is_load = |action: &Action| {
            let Action::Set(control, _) = action else {
                return false;
            };
            site.control(*control)
                .is_some_and(|c| is_load(c.kind, self.spares()))
        };
        let mut actions = self.drill.run().actions.iter().rev();
        let last = actions.find(|timed| is_load(&timed.action)).map(|t| t.at);
        if let Some(at) = last {
            let since = self.drill.now().since(at);
            self.meanwhile(Aim::Settle, BETWEEN_LOADS.since(since));
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
}

/// Whether moving a control of this kind moves load; `by_cord`, on cords too.
fn is_load(kind: Kind, by_cord: bool) -> bool {
    matches!(kind, Kind::Breaker | Kind::Transfer | Kind::Backfed)
        || by_cord && matches!(kind, Kind::Output | Kind::Plug)
}
