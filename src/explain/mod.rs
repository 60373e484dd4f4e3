//! Explanations: a finding and the trace it comes from, turned into messages with numbers.
//!
//! What happened, what to do now, how it came about, why it matters, what to do next time, and the source.
//! How it came about is the way of energy to the harm or to where it is cut, the way of gas into the blood, the chain of a conductor that gets hot or of fuel that catches fire, what was in store, or the sum of what ran.
//! Nothing of it is scripted: ways are walked over the solved network, sums are read from it, and every number is a reading, a rating or a cited value.

mod advice;
mod cause;
mod chain;
mod cut;
mod fuel;
mod gas;
mod harm;
mod next_door;
mod order;
pub mod reveal;
mod starter;
mod stopped;
mod store;
mod sum;
mod way;

use crate::drill::Drill;
use crate::marking::{Finding, Rule};
use crate::words::{Arg, Message, Unit, name_of};

/// How a finding's coming about is told.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Told {
    /// The way of energy from its source to the harm.
    Way,
    /// The way of gas from the engine into the blood, where the air of a home got bad.
    Gas,
    /// One thing after the other, from a conductor's gauge to its heat.
    Chain,
    /// One thing after the other, from fuel or hot metal to what lights it.
    Fire,
    /// The way that power should take, and where it is cut.
    Cut,
    /// What was in store, and how it ran out.
    Store,
    /// The way by which an engine comes to turn under somebody's hands.
    Starter,
    /// What ran, and what came of it.
    Sum,
    /// No stages: what happened says it all.
    Plainly,
}

/// One stage of how it came about.
#[derive(Debug, Clone, PartialEq)]
pub struct Stage {
    /// The thing it passes.
    pub at: String,
    /// What happens there.
    pub text: Message,
    /// The number that matters there; an empty text where there is none.
    pub value: Message,
}

/// A finding, explained.
#[derive(Debug, Clone, PartialEq)]
pub struct Explanation {
    /// What happened.
    pub what: Message,
    /// What to do now.
    pub now: Message,
    /// What its stages are headed with.
    pub heading: Message,
    /// How it came about.
    pub path: Vec<Stage>,
    /// Why it matters.
    pub why: Message,
    /// What to do instead, next time.
    pub instead: Message,
    /// Where the rule comes from.
    pub source: Message,
}

/// Explains a finding of a drill.
pub fn explain(drill: &Drill, finding: &Finding) -> Explanation {
    let part = |part: &str| {
        let id = format!("finding-{}-{part}", finding.rule.name());
        Message {
            id,
            args: finding.evidence.clone(),
        }
    };
    let headed = |id: &str, path| (Message::new(id), path);
    let (heading, path) = match told(finding.rule) {
        Told::Way => way::stages(drill, finding),
        Told::Gas if finding.rule == Rule::GasNextDoor => next_door::stages(drill, finding),
        Told::Gas => gas::stages(drill, finding),
        Told::Chain if finding.rule == Rule::NoCoolDown => {
            headed("told-stopped", stopped::stages(drill, finding))
        }
        Told::Chain => headed("told-chain", chain::stages(drill, finding)),
        Told::Fire if finding.rule == Rule::FuelIndoors => {
            headed("told-can", fuel::kept(drill, finding))
        }
        Told::Fire => headed("told-fire", fuel::stages(drill, finding)),
        Told::Cut => cut::stages(drill, finding),
        Told::Store if finding.rule == Rule::Lost => store::lost(drill, finding),
        Told::Store => store::ran_dry(drill, finding),
        Told::Starter => starter::stages(drill, finding),
        Told::Sum => sum::stages(drill, finding),
        Told::Plainly => headed("told-way", Vec::new()),
    };
    let left_off = path
        .iter()
        .filter(|s| s.text.id.starts_with("stage-leave-"));
    let left_off: Vec<Message> = left_off.map(|s| name_of(&s.at)).collect();
    let some = Arg::Count(i64::from(!left_off.is_empty()));
    let names = sum::listed(left_off);
    let leaving = |message: Message| {
        let message = message.with("leaves", some.clone());
        match names.clone() {
            Some(names) => message.said("leave", names),
            None => message,
        }
    };
    Explanation {
        what: part("what"),
        now: advice::now(drill, finding, leaving(part("now"))),
        heading,
        path,
        why: part("why"),
        instead: leaving(part("instead")),
        source: Message {
            id: format!("source-{}", finding.rule.name()),
            args: finding.evidence.clone(),
        },
    }
}

/// How findings of a rule are told.
pub fn told(rule: Rule) -> Told {
    match rule {
        Rule::LineFed
        | Rule::NoTransferEquipment
        | Rule::Collision
        | Rule::SourcesMeet
        | Rule::Shock
        | Rule::Touch
        | Rule::NothingBonds
        | Rule::LiveBlades
        | Rule::WetPanel
        | Rule::LiveLugs
        | Rule::HandTransferLive
        | Rule::NotTested
        | Rule::TesterUnproved
        | Rule::NotGrounded
        | Rule::GroundsWrong
        | Rule::NoVisibleBreak
        | Rule::LiveEnd
        | Rule::GroundsLeft
        | Rule::NotAsked
        | Rule::PlugUnderLoad
        | Rule::LivePlug
        | Rule::WrongEndFirst
        | Rule::SaidDead
        | Rule::WrongVolts
        | Rule::Damaged
        | Rule::GroundFault
        | Rule::ResetIntoFault
        | Rule::TwoBonds
        | Rule::GroundCarries
        | Rule::SunOnGenerator
        | Rule::PushedBack
        | Rule::BlindReturn
        | Rule::CordUnfit => Told::Way,
        Rule::CordHot | Rule::CordFire | Rule::PlugHot | Rule::WireHot | Rule::NoCoolDown => {
            Told::Chain
        }
        Rule::StartUnderLoad
        | Rule::NotSettled
        | Rule::AllAtOnce
        | Rule::Overload
        | Rule::TooSmallForMotor
        | Rule::ShutOff
        | Rule::Tripped
        | Rule::FuseBlown
        | Rule::Starved
        | Rule::BatteryOverloaded
        | Rule::BatterySpent => Told::Sum,
        Rule::Indoors
        | Rule::Gas
        | Rule::Overcome
        | Rule::NoAlarm
        | Rule::StayedIn
        | Rule::GasNextDoor
        | Rule::TooNear => Told::Gas,
        Rule::FuelFire | Rule::FuelIndoors => Told::Fire,
        Rule::GoalLate | Rule::NotRestored | Rule::NotBack => Told::Cut,
        Rule::Lost | Rule::RanDry => Told::Store,
        Rule::NotLockedOut | Rule::CaughtByEngine => Told::Starter,
        Rule::NotCalled | Rule::SaidFit | Rule::SaidWrong | Rule::Unanswered => Told::Plainly,
    }
}

/// A stage that says what the finding has found, and the number of it that is shown; none where that number is missing.
fn of_evidence(finding: &Finding, at: &str, id: &str, shown: &str) -> Option<Stage> {
    let (_, number) = finding.evidence.iter().find(|(name, _)| *name == shown)?;
    Some(Stage {
        at: at.to_owned(),
        text: Message {
            id: id.to_owned(),
            args: finding.evidence.clone(),
        },
        value: Message::new("value").with("value", number.clone()),
    })
}

fn value(value: f64, unit: Unit) -> Message {
    Message::new("value").quantity("value", value, unit)
}

/// What a stage shows that has no number.
fn no_value() -> Message {
    Message::new("value").with("value", Arg::Verbatim(String::new()))
}
