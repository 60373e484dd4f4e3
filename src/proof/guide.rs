//! The next safe step from wherever a learner has got a drill, and what it is for.
//!
//! A copy of the drill is walked to its goal, by the same walk that proves that a drill has a safe way, and marked like any run.
//! Advice is the first step of a way that was so played to its end and adds no critical finding and leaves nothing undone; where none is found that is said, and never guessed at.
//! A way that was found is kept while the learner goes it, and played again from wherever the clock has got to; any other deed asks for a new one.

use crate::drill::{Action, Drill, Outcome, What};
use crate::marking::{Finding, Rule, Verdict, mark, mark_so_far};
use crate::site::PositionId;
use crate::units::DrillTime;

use super::judge::Judge;
use super::line_way::LineWalk;
use super::step::{Aim, Step, add};
use super::walk::{Planned, Walk};
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
}

/// Advice on a drill, kept as long as it holds.
#[derive(Debug, Clone)]
pub struct Guide {
    advice: Advice,
    /// Actions of the run that are taken into account.
    n_actions: usize,
    /// What has happened that is taken into account.
    n_events: usize,
}

impl Guide {
    /// Advice from where a drill stands.
    pub fn new(drill: &Drill) -> Self {
        Self {
            advice: advise(drill),
            ..Self::at(drill)
        }
    }

    /// Takes into account what was done and has happened so far.
    fn at(drill: &Drill) -> Self {
        Self {
            advice: Advice::HandsOff,
            n_actions: drill.run().actions.len(),
            n_events: drill.trace().events().count(),
        }
    }

    /// What to do next, as last worked out.
    pub fn advice(&self) -> &Advice {
        &self.advice
    }

    /// Whether nothing has been done, has happened, or was waited for since.
    pub fn holds(&self, drill: &Drill) -> bool {
        let (n_actions, n_events) = (drill.run().actions.len(), drill.trace().events().count());
        let waited = matches!(&self.advice, Advice::Steps(steps) if is_waited_out(steps, drill));
        (n_actions, n_events) == (self.n_actions, self.n_events) && !waited
    }

    /// Works out what to do next unless what was worked out holds.
    pub fn follow(&mut self, drill: &Drill) {
        if self.holds(drill) {
            return;
        }
        let done = drill.run().actions.iter().skip(self.n_actions);
        let done: Vec<Action> = done.map(|timed| timed.action.clone()).collect();
        let kept = match &self.advice {
            Advice::Steps(steps) => left(steps, &done, drill),
            Advice::Finish
            | Advice::GetOut
            | Advice::StopEngine(_)
            | Advice::HandsOff
            | Advice::GoBack => None,
        };
        let kept = kept.and_then(|(steps, done_at)| {
            if done_at == Some(drill.now()) {
                Some(as_advice(steps))
            } else {
                go_on(drill, steps)
            }
        });
        *self = Self {
            advice: kept.unwrap_or_else(|| advise(drill)),
            ..Self::at(drill)
        };
    }
}

/// Does what the guide says until it has nothing more to say, and tells what it says last.
pub fn lead(drill: &mut Drill) -> Advice {
    let mut guide = Guide::new(drill);
    for _ in 0..MOST_STEPS {
        let action = match guide.advice() {
            Advice::Steps(steps) => steps.first().map(|s| s.action.clone()),
            Advice::StopEngine(action) => Some(action.clone()),
            Advice::Finish | Advice::GetOut | Advice::HandsOff | Advice::GoBack => None,
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
    (!spoils(&before, &verdict)).then(|| as_advice(played))
}

/// Whether a wait is for something that comes at its own time.
fn keeps_time(aim: Aim) -> bool {
    matches!(aim, Aim::Outage | Aim::Return | Aim::ByItself)
}

fn as_advice(steps: Vec<Step>) -> Advice {
    if steps.is_empty() {
        Advice::Finish
    } else {
        Advice::Steps(steps)
    }
}

/// Looks for a way home.
fn advise(drill: &Drill) -> Advice {
    let scenario = drill.scenario();
    let before = mark_so_far(scenario, drill.trace());
    if is_harmed(&before) {
        return Advice::GoBack;
    }
    if drill.over() {
        return Advice::Finish;
    }
    if let Some(steps) = way_home(drill, &before) {
        return as_advice(steps);
    }
    if drill.conditions().alarm {
        return Advice::GetOut;
    }
    let stop = Action::Set(scenario.site.generator.engine, PositionId(0));
    let running = drill.conditions().engine.running_since.is_some();
    if running && drill.clone().act(&stop) == Outcome::Done {
        Advice::StopEngine(stop)
    } else {
        Advice::HandsOff
    }
}

/// The first way home that adds no breach but those that it is too late to avoid; otherwise one whose breaches are none that a pass can't do without.
fn way_home(drill: &Drill, before: &[Finding]) -> Option<Vec<Step>> {
    let scenario = drill.scenario();
    if let Some(work) = &scenario.site.line_work {
        let mut walk = LineWalk::new(scenario, drill.clone());
        walk.home(scenario, work);
        let verdict = ended(&mut walk.drill);
        return (!spoils(before, &verdict)).then_some(walk.done);
    }
    let judge = Judge::new(scenario);
    let mut good = None;
    // As a plan by positions has it, and where that is too much for the source, with loads held back.
    let ways = [false, true].into_iter();
    for (sparing, turn) in ways.flat_map(|s| (0..turns(scenario)).map(move |t| (s, t))) {
        let mut walk = Walk::new(scenario, &judge, drill.clone(), turn, MOST_STATES);
        walk.sparing = sparing;
        if walk.home() != Planned::Done {
            continue;
        }
        let verdict = ended(&mut walk.drill);
        let clean = added(before, &verdict).all(|f| !f.breach || f.rule.criterion().is_needed());
        if spoils(before, &verdict) {
            continue;
        }
        if clean {
            return Some(walk.done);
        }
        good.get_or_insert(walk.done);
    }
    good
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

fn is_harmed(findings: &[Finding]) -> bool {
    findings.iter().any(|f| f.breach && f.rule.harms())
}
