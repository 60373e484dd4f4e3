//! The way by which a set that starts by itself comes to turn under somebody's hands: what asks for the start, what gives the order, what turns the starter.
//!
//! Read from the controller's times and from how its switch, its battery and the set's breaker stood at that moment.
//! Not covered: what the hands meet, and the volts of the starter battery, which the drill doesn't follow.

use crate::drill::{Drill, Event, Moment, What};
use crate::marking::{Finding, Rule};
use crate::site::Automatic;
use crate::units::DrillTime;
use crate::words::{Arg, Message, Unit};

use super::{Stage, no_value, value};

/// The stages of a finding about hands in a set, and their heading with the one moment that they show.
pub(super) fn stages(drill: &Drill, finding: &Finding) -> (Message, Vec<Stage>) {
    let heading = Message::new("told-starter-at").with("at", Arg::Clock(finding.at));
    let automatic = drill.site().generator.machine.automatic.as_ref();
    let moment = drill.trace().moments.get(finding.moment);
    let (Some(automatic), Some(moment)) = (automatic, moment) else {
        return (heading, Vec::new());
    };
    let own = Own {
        drill,
        automatic,
        moment,
    };
    let stages = if finding.rule == Rule::CaughtByEngine {
        own.caught(finding)
    } else {
        own.exposed(finding)
    };
    (heading, stages)
}

/// A set with what starts it, at one moment.
struct Own<'a> {
    drill: &'a Drill,
    automatic: &'a Automatic,
    moment: &'a Moment,
}

fn timed(at: &str, text: Message, shown: Arg) -> Stage {
    Stage {
        at: at.to_owned(),
        text,
        value: Message::new("value").with("value", shown),
    }
}

impl Own<'_> {
    fn name(&self, id: crate::site::ControlId) -> &str {
        let control = self.drill.site().control(id);
        control.map_or("generator", |c| c.name.as_str())
    }

    /// What could start it, and what would be live, while hands are in it.
    fn exposed(&self, finding: &Finding) -> Vec<Stage> {
        let lasted = Arg::lasting(finding.lasted);
        let runs = self.moment.conditions.engine.running_since.is_some();
        let hands = Message::new("stage-hands-in")
            .with("runs", Arg::Count(i64::from(runs)))
            .with("lasted", lasted.clone());
        vec![
            self.controller(),
            self.battery(),
            self.breaker(),
            timed("hand", hands, lasted),
        ]
    }

    /// What the controller would do by itself, and how soon.
    fn controller(&self) -> Stage {
        let positions = &self.moment.positions;
        let controller = &self.automatic.controller;
        let output = self.drill.site().generator.output;
        let off = self.automatic.lock_out(positions, output).controller_off;
        let timers = &controller.timers;
        let delay = Arg::lasting(timers.sense + timers.start_delay);
        let next = controller.exerciser.as_ref();
        let next = next.map(|run| run.next_after(self.moment.at));
        let text = Message::new("stage-controller")
            .with("off", Arg::Count(i64::from(off)))
            .with("delay", delay.clone())
            .quantity("loss", 100.0 * timers.loss_pu, Unit::Percent)
            .with("weekly", Arg::Count(i64::from(next.is_some())))
            .with(
                "next",
                Arg::lasting(next.unwrap_or_default().since(self.moment.at)),
            );
        timed(self.name(self.automatic.switch), text, delay)
    }

    /// What turns the starter.
    fn battery(&self) -> Stage {
        let id = self.automatic.battery;
        let asleep = self.automatic.asleep(&self.moment.positions);
        let text = Message::new("stage-starter-battery").with("off", Arg::Count(i64::from(asleep)));
        let stands = self.drill.site().position_name(&self.moment.positions, id);
        let shown = Arg::Said(Box::new(crate::words::name_of(stands)));
        timed(self.name(id), text, shown)
    }

    /// What would stand on the set's wires once it runs.
    fn breaker(&self) -> Stage {
        let generator = &self.drill.site().generator;
        let output = generator.output;
        let lock_out = self.automatic.lock_out(&self.moment.positions, output);
        let volts = generator.spec_at(&self.moment.positions).set_v;
        let text = Message::new("stage-set-breaker")
            .with("off", Arg::Count(i64::from(lock_out.breaker_open)))
            .quantity("volts", volts, Unit::Volts);
        Stage {
            at: self.name(output).to_owned(),
            text,
            value: value(volts, Unit::Volts),
        }
    }

    /// How it came to turn.
    fn caught(&self, finding: &Finding) -> Vec<Stage> {
        let moments = self.drill.trace().moments.get(..=finding.moment);
        let before = moments.unwrap_or_default();
        let why = finding.evidence.iter().find(|(name, _)| *name == "asked");
        let Some((_, Arg::Verbatim(why))) = why else {
            return Vec::new();
        };
        let asked = self.asked_at(before, why);
        let text = Message::new("stage-start-asked")
            .with("why", Arg::Verbatim(why.clone()))
            .with("at", Arg::Clock(asked));
        let mut stages = vec![timed(
            self.name(self.automatic.switch),
            text,
            Arg::Clock(asked),
        )];
        let waited = finding.at.since(asked);
        if waited > DrillTime::ZERO {
            let text = Message::new("stage-controller-waits").with("time", Arg::lasting(waited));
            let at = self.name(self.automatic.switch);
            stages.push(timed(at, text, Arg::lasting(waited)));
        }
        stages.push(self.battery());
        if self.moment.conditions.machine.oil_h <= 0.0 {
            stages.push(Stage {
                at: "generator".to_owned(),
                text: Message::new("stage-oil-kept"),
                value: no_value(),
            });
        }
        let open = |m: &&Moment| self.automatic.open(&m.positions);
        let since = before.iter().rev().take_while(open).last();
        let since = since.map_or(DrillTime::ZERO, |m| finding.at.since(m.at));
        let text = Message::new("stage-caught").with("time", Arg::lasting(since));
        stages.push(timed("hand", text, Arg::lasting(since)));
        stages
    }

    /// When the start was asked for: the weekly run that is due, the switch that was set to test, or the street's power that went away.
    fn asked_at(&self, before: &[Moment], why: &str) -> DrillTime {
        let now = before.last().map(|m| m.at).unwrap_or_default();
        let exerciser = self.automatic.controller.exerciser;
        let due = exerciser.and_then(|run| run.running_since(now));
        let gone =
            |m: &&Moment| matches!(m.what, What::Happened(Event::Outage | Event::UtilityFailed));
        let gone = before.iter().rev().find(gone).map(|m| m.at);
        let asked = if why == "weekly" { due } else { gone };
        asked.filter(|_| why != "test").unwrap_or(now)
    }
}
