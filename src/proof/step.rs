//! A step of a way, and what it is for.

use crate::drill::{Action, Drill, Event, What};
use crate::units::DrillTime;

/// What a step is for: its part of the way.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Aim {
    /// Before the outage, equipment that works by itself is seen to.
    Service,
    /// What is unsafe as it is found is ended.
    Safe,
    /// What a set can't carry along with all else is taken off before it has to.
    Spare,
    /// No way brings power in time: nothing is fed, an electrician is called, and the utility is waited for.
    SafeStop,
    /// There is gas in the house: everybody goes out, and help is called.
    GetOut,
    /// The outage is waited for.
    Outage,
    /// A controller that has given up is reset.
    Reset,
    /// The engine is brought to a stop, so that things can be moved.
    Halt,
    /// What drifts is seen to before anything is connected.
    Prepare,
    /// Branches are turned off, to come back one by one.
    Shed,
    /// The house's own source is brought to what is asked for.
    There,
    /// The engine warms up.
    WarmUp,
    /// A load settles before the next one.
    Settle,
    /// Equipment does by itself what it is built for.
    ByItself,
    /// The tank is filled before it is empty: the engine is stopped and cools first.
    Refuel,
    /// The oil is filled before it is low: the set is freed of its load, cooled and locked out first.
    Oil,
    /// The utility is waited for.
    Return,
    /// The engine cools down before it is stopped.
    Cool,
    /// The house goes back to the utility, and everything to its place.
    Back,
    /// What the drill asks is answered.
    Answer,
    /// A line crew cuts its line off and tags it.
    CutOff,
    /// It proves its tester and tests.
    Test,
    /// It grounds the line at the work.
    Ground,
    /// It works.
    Work,
    /// It steps off a line that isn't ready to be held.
    StepClear,
    /// It takes its grounds off.
    Unground,
    /// It asks the customers, and gives them time.
    Ask,
    /// It closes the line.
    Close,
}

/// One step of a way.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Step {
    /// What is done.
    pub action: Action,
    /// What for.
    pub aim: Aim,
    /// When its effect came, as it was played.
    pub at: DrillTime,
}

/// Adds a step; waits that follow each other for one end are one.
pub(super) fn add(steps: &mut Vec<Step>, step: Step) {
    match (steps.last_mut(), &step.action) {
        (
            Some(Step {
                action: Action::Wait(before),
                aim,
                at,
            }),
            Action::Wait(more),
        ) if *aim == step.aim => {
            *before = *before + *more;
            *at = step.at;
        }
        _ => steps.push(step),
    }
}

/// The actions of these steps; waits that follow each other are one.
pub(super) fn moves(steps: &[Step]) -> Vec<Action> {
    let mut moves: Vec<Action> = Vec::new();
    for step in steps {
        match (moves.last_mut(), &step.action) {
            (Some(Action::Wait(before)), Action::Wait(more)) => *before = *before + *more,
            _ => moves.push(step.action.clone()),
        }
    }
    moves
}

/// What is still to be said of what the drill asks, as it is now.
pub(super) fn to_say(drill: &Drill) -> Vec<Action> {
    let moments = &drill.trace().moments;
    // Nothing counts that was said before the outage.
    let outage = moments
        .iter()
        .position(|m| m.what == What::Happened(Event::Outage));
    let said = |name: &str| {
        let since = moments.iter().skip(outage.unwrap_or_default()).rev();
        since.into_iter().find_map(|m| {
            let What::Did(Action::Say(asked, answer)) = &m.what else {
                return None;
            };
            (asked == name).then(|| answer.clone())
        })
    };
    let questions = drill.scenario().questions.iter().filter_map(|question| {
        let about = &question.about;
        let truth = about.truth(drill.site(), drill.positions(), drill.readings());
        let open = said(&question.name).is_none_or(|answer| answer != truth);
        open.then(|| Action::Say(question.name.clone(), truth))
    });
    questions.collect()
}
