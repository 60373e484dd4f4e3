//! The next safe step from wherever a learner has got a drill, and what it is for.
//!
//! A copy of the drill is walked to its goal, by the same walk that proves that a drill has a safe way, and marked like any run.
//! Advice is the first step of a way that was so played to its end and adds no critical finding and leaves nothing undone; where none is found that is said, and never guessed at.
//! A way that was found is kept for every place that it leads through, and played again from wherever the clock has got to; from any other place a new one is looked for.
//! A search goes one way at a time, so that a front end can draw in between; until it is over it is said what is safe anyway.

use std::ops::ControlFlow::{self, Break, Continue};
use std::sync::Arc;

use crate::drill::{Action, Drill, Outcome, What};
use crate::marking::{Finding, Rule, Verdict, mark, mark_so_far, may_pass};
use crate::site::PositionId;
use crate::units::DrillTime;

use super::hurry::{before_any_deed, is_past};
use super::judge::Judge;
use super::kept::Kept;
use super::line_way::LineWalk;
use super::step::{Aim, Step, add};
use super::walk::{Care, Planned, Walk};
use super::way::turns;

/// States that a plan may look at, so that an answer comes at once: a tenth of what a proof may, which the largest shipped house doesn't need.
const MOST_STATES: usize = 200_000;

/// More steps than any way home has.
const MOST_STEPS: usize = 100;

/// What to do next.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Advice {
    /// The steps of a way home, the next one first; there is one at least.
    Steps(Vec<Step>),
    /// Everything is done: the drill can be ended.
    Finish,
    /// The alarm has sounded and no way is found: everybody out.
    GetOut,
    /// No way is found as things stand; the engine is stopped first.
    StopEngine(Action),
    /// No way is found as things stand, and the engine is still: hands off.
    HandsOff,
    /// Somebody has come to harm: only going back helps.
    GoBack,
    /// A way is still looked for; until it is found this is done first, or nothing is touched.
    Looking(Option<Action>),
}

/// Advice on a drill, kept as long as it holds, and the ways that were found on the way to it.
#[derive(Debug, Clone)]
pub struct Guide {
    advice: Advice,
    /// Actions of the run that are taken into account.
    n_actions: usize,
    /// What has happened that is taken into account.
    n_events: usize,
    /// Ways that were found, by where they lead from.
    kept: Kept,
    /// The search that isn't over yet.
    search: Option<Box<Search>>,
}

impl Guide {
    /// Advice from where a drill stands.
    pub fn new(drill: &Drill) -> Self {
        let mut guide = Self::begin(drill);
        while guide.look_on() {}
        guide
    }

    /// The same, worked out one slice at a time by [`Self::look_on`].
    pub fn begin(drill: &Drill) -> Self {
        let mut guide = Self {
            advice: Advice::HandsOff,
            n_actions: 0,
            n_events: 0,
            kept: Kept::default(),
            search: None,
        };
        guide.ask(drill);
        guide
    }

    /// What to do next, as last worked out.
    pub fn advice(&self) -> &Advice {
        &self.advice
    }

    /// Whether nothing has been done, has happened, or was waited for since.
    pub fn holds(&self, drill: &Drill) -> bool {
        let waited = matches!(&self.advice, Advice::Steps(steps) if is_waited_out(steps, drill));
        so_far(drill) == (self.n_actions, self.n_events) && !waited
    }

    /// Works out what to do next unless what was worked out holds.
    pub fn follow(&mut self, drill: &Drill) {
        self.turn_to(drill);
        while self.look_on() {}
    }

    /// The same, worked out one slice at a time by [`Self::look_on`]; at once where a way is kept that still leads home.
    pub fn turn_to(&mut self, drill: &Drill) {
        if self.holds(drill) {
            return;
        }
        let done = drill.run().actions.iter().skip(self.n_actions);
        let done: Vec<Action> = done.map(|timed| timed.action.clone()).collect();
        let followed = match &self.advice {
            Advice::Steps(steps) => left(steps, &done, drill),
            Advice::Finish
            | Advice::GetOut
            | Advice::StopEngine(_)
            | Advice::HandsOff
            | Advice::Looking(_)
            | Advice::GoBack => None,
        };
        let followed = followed.and_then(|(steps, done_at)| {
            if done_at == Some(drill.now()) {
                Some(as_advice(steps))
            } else {
                go_on(drill, steps)
            }
        });
        match followed {
            Some(advice) => self.told(drill, advice),
            None => self.ask(drill),
        }
    }

    /// The drill has gone back: what was said holds no more, what was found does.
    pub fn rewound(&mut self) {
        self.advice = Advice::HandsOff;
        self.n_actions = usize::MAX;
        self.search = None;
    }

    /// Goes on with a search that isn't over, by one way that is tried; says whether it still isn't.
    pub fn look_on(&mut self) -> bool {
        let Some(search) = self.search.as_mut() else {
            return false;
        };
        let Break(found) = search.try_one() else {
            return true;
        };
        let way = found.as_ref().map(|(s, walked)| (s.as_slice(), walked));
        self.kept.keep(&search.drill, way);
        self.advice = found.map_or_else(|| without_a_way(&search.drill), |(s, _)| as_advice(s));
        self.search = None;
        false
    }

    fn told(&mut self, drill: &Drill, advice: Advice) {
        self.advice = advice;
        (self.n_actions, self.n_events) = so_far(drill);
        self.search = None;
    }

    /// Asks anew from where a drill stands: what is plain is told at once, then what is kept, and else a search begins.
    fn ask(&mut self, drill: &Drill) {
        let before = mark_so_far(drill.scenario(), drill.trace());
        if is_harmed(&before) {
            return self.told(drill, Advice::GoBack);
        }
        if drill.over() {
            return self.told(drill, Advice::Finish);
        }
        if let Some(left) = self.kept.from(drill) {
            if left.is_from(drill) {
                let steps = left.steps.clone();
                return self.told(drill, steps.map_or_else(|| without_a_way(drill), as_advice));
            }
            let steps = left.steps.clone();
            let played = steps.and_then(|steps| played(drill, steps));
            if let Some((steps, _)) = played.filter(|(_, verdict)| is_clean(&before, verdict)) {
                return self.told(drill, as_advice(steps));
            }
        }
        self.told(drill, Advice::Looking(first_of_all(drill)));
        let found = before_any_deed(drill);
        self.search = Some(Box::new(Search {
            may_pass: may_pass(drill.scenario(), &found) && !is_past(drill),
            drill: drill.clone(),
            before: found,
            tried: 0,
            good: None,
            passes: false,
        }));
    }
}

/// How many actions were done and events have happened in a drill.
fn so_far(drill: &Drill) -> (usize, usize) {
    (drill.run().actions.len(), drill.trace().events().count())
}

/// Stopping the engine, where it runs and can be stopped.
fn stop(drill: &Drill) -> Option<Action> {
    let stop = Action::Set(drill.site().generator.engine, PositionId(0));
    let running = drill.conditions().engine.running_since.is_some();
    (running && drill.clone().act(&stop) == Outcome::Done).then_some(stop)
}

/// What is safe while a way is looked for: where a source feeds what it must not, the engine is stopped; else nothing is touched.
fn first_of_all(drill: &Drill) -> Option<Action> {
    let judge = Judge::new(drill.scenario());
    let fed_now = judge.stand(drill.positions()).breach();
    stop(drill).filter(|_| fed_now)
}

/// Does what the guide says until it has nothing more to say, and tells what it says last.
pub fn lead(drill: &mut Drill) -> Advice {
    let mut guide = Guide::new(drill);
    for _ in 0..MOST_STEPS {
        let action = match guide.advice() {
            Advice::Steps(steps) => steps.first().map(|s| s.action.clone()),
            Advice::StopEngine(action) => Some(action.clone()),
            Advice::Finish
            | Advice::GetOut
            | Advice::HandsOff
            | Advice::Looking(_)
            | Advice::GoBack => None,
        };
        let Some(action) = action else {
            break;
        };
        drill.act(&action);
        guide.follow(drill);
    }
    guide.advice
}

/// Whether the next step is a wait that is over.
fn is_waited_out(steps: &[Step], drill: &Drill) -> bool {
    let next = steps.first();
    next.is_some_and(|s| matches!(s.action, Action::Wait(_)) && s.at <= drill.now())
}

/// What is left of a way after these deeds, and when the last of its steps that were done was to be done, if all before it were done too; none if they leave it.
/// Waits go by on the clock; looking, testing, telling and calling leave no way.
fn left(steps: &[Step], done: &[Action], drill: &Drill) -> Option<(Vec<Step>, Option<DrillTime>)> {
    let mut steps = steps;
    let mut done_at = None;
    for action in done {
        let ahead = steps
            .iter()
            .position(|s| !matches!(s.action, Action::Wait(_)));
        let next = ahead.and_then(|at| steps.get(at));
        match action {
            Action::Wait(_) => {}
            _ if next.is_some_and(|s| s.action == *action) => {
                done_at = next.map(|s| s.at);
                steps = steps.get(ahead.map_or(0, |at| at + 1)..)?;
            }
            Action::Set(..) | Action::Refuel | Action::Say(..) | Action::Happen(_) => return None,
            Action::Look(_) | Action::Test(_) | Action::Call(_) | Action::Tell(_) => {}
        }
    }
    while is_waited_out(steps, drill) {
        done_at = steps.first().map(|s| s.at);
        steps = steps.get(1..)?;
    }
    Some((steps.to_vec(), done_at))
}

/// Goes on with steps that were planned, if they still lead home: as they are where the clock shows just what it showed when they were played, otherwise played again.
fn go_on(drill: &Drill, steps: Vec<Step>) -> Option<Advice> {
    let moments = drill.trace().moments.iter().rev();
    let mut deeds = moments.filter(|m| matches!(m.what, What::Did(_) | What::Refused(..)));
    if matches!(deeds.next().map(|m| &m.what), Some(What::Refused(..))) {
        return None;
    }
    let before = mark_so_far(drill.scenario(), drill.trace());
    if is_harmed(&before) {
        return Some(Advice::GoBack);
    }
    let (played, verdict) = played(drill, steps)?;
    (!spoils(&before, &verdict)).then(|| as_advice(played))
}

/// Plays steps from where a drill stands, and marks what comes of it; none if one of them can't be done.
fn played(drill: &Drill, steps: Vec<Step>) -> Option<(Vec<Step>, Verdict)> {
    let mut ahead = drill.clone();
    let mut played = Vec::new();
    for step in steps {
        let action = match (&step.action, step.aim) {
            // The story and what works by itself keep their own time, and so does a wait that has begun.
            (Action::Wait(_), aim) if played.is_empty() || keeps_time(aim) => {
                Action::Wait(step.at.since(ahead.now()))
            }
            (action, _) => action.clone(),
        };
        if action == Action::Wait(DrillTime::ZERO) {
            continue;
        }
        (ahead.act(&action) == Outcome::Done).then_some(())?;
        let at = ahead.now();
        add(&mut played, Step { action, at, ..step });
    }
    let verdict = ended(&mut ahead);
    Some((played, verdict))
}

/// Whether a wait is for something that comes at its own time.
fn keeps_time(aim: Aim) -> bool {
    matches!(
        aim,
        Aim::Outage | Aim::SafeStop | Aim::Return | Aim::ByItself
    )
}

fn as_advice(steps: Vec<Step>) -> Advice {
    if steps.is_empty() {
        Advice::Finish
    } else {
        Advice::Steps(steps)
    }
}

/// What is said where no way is found.
fn without_a_way(drill: &Drill) -> Advice {
    if drill.conditions().alarm {
        Advice::GetOut
    } else {
        stop(drill).map_or(Advice::HandsOff, Advice::StopEngine)
    }
}

/// A way, and the drill that was walked along it.
type Walked = (Vec<Step>, Drill);

/// A search for a way home, which tries one way after the other: as a plan by positions has it, where that is too much for the source, with loads held back, where it comes too late, without losing time, where all at once is too much, by turns, and where a drill may be stopped safely, feeding nothing.
/// The first way counts that passes and adds no breach, where no pass is possible any more one that adds none but that it is late; otherwise one that passes, or whose breaches are none that a pass can't do without.
#[derive(Debug, Clone)]
struct Search {
    /// Where it begins.
    drill: Drill,
    /// What was found by then, or is before anything that is done can have an effect.
    before: Vec<Finding>,
    /// How many ways were tried.
    tried: usize,
    /// Whether a pass is possible yet.
    may_pass: bool,
    /// The first way that will do, if no better one is found.
    good: Option<Walked>,
    /// Whether that passes.
    passes: bool,
}

impl Search {
    /// Tries one more way, and breaks with what came of the search once it is over.
    fn try_one(&mut self) -> ControlFlow<Option<Walked>> {
        let scenario = Arc::clone(self.drill.scenario());
        if let Some(work) = &scenario.site.line_work {
            let mut walk = LineWalk::new(&scenario, self.drill.clone());
            walk.home(&scenario, work);
            let verdict = ended(&mut walk.drill);
            let found = !spoils(&self.before, &verdict);
            return Break(found.then_some((walk.done, walk.drill)));
        }
        let n_turns = turns(&scenario);
        let manners = [Care::Plain, Care::Sparing, Care::Hurried];
        let with_each_cord = manners
            .into_iter()
            .flat_map(|c| (0..n_turns).map(move |t| (c, t)));
        // Whichever cord is first, one way feeds nothing.
        let stopping = scenario.goal.safe_stop.then_some((Care::Stopping, 0));
        let mut ways = with_each_cord.chain([(Care::InTurns, 0)]).chain(stopping);
        let Some((care, turn)) = ways.nth(self.tried) else {
            return Break(self.good.take());
        };
        self.tried += 1;
        let judge = Judge::new(&scenario);
        let drill = self.drill.clone();
        let mut walk = Walk::new(&scenario, &judge, drill, turn, MOST_STATES).caring(care);
        if walk.home() != Planned::Done {
            return Continue(());
        }
        let verdict = ended(&mut walk.drill);
        if spoils(&self.before, &verdict) {
            return Continue(());
        }
        let walked = (walk.done, walk.drill);
        let best = verdict.passed || !self.may_pass;
        if best && is_clean(&self.before, &verdict) {
            return Break(Some(walked));
        }
        if self.good.is_none() || verdict.passed && !self.passes {
            self.good = Some(walked);
            self.passes = verdict.passed;
        }
        Continue(())
    }
}

fn ended(drill: &mut Drill) -> Verdict {
    drill.end();
    mark(drill.scenario(), drill.trace())
}

/// What is found at the end that wasn't found before.
fn added<'a>(before: &'a [Finding], verdict: &'a Verdict) -> impl Iterator<Item = &'a Finding> {
    let known = |f: &Finding| before.iter().any(|b| (b.rule, b.at) == (f.rule, f.at));
    verdict.findings.iter().filter(move |f| !known(f))
}

/// Whether an end adds a critical finding, or leaves something that it should not; that a goal is late can't be helped any more.
fn spoils(before: &[Finding], verdict: &Verdict) -> bool {
    let late = |f: &Finding| matches!(f.rule, Rule::GoalLate | Rule::Lost);
    let needed = |f: &Finding| f.breach && f.rule.criterion().is_needed();
    added(before, verdict).any(|f| needed(f) && !late(f))
}

/// Whether an end adds no breach at all but that it is late.
fn is_clean(before: &[Finding], verdict: &Verdict) -> bool {
    let mut added = added(before, verdict);
    !spoils(before, verdict) && added.all(|f| !f.breach || f.rule.criterion().is_needed())
}

fn is_harmed(findings: &[Finding]) -> bool {
    findings.iter().any(|f| f.breach && f.rule.harms())
}
