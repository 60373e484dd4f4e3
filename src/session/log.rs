//! Log and clock as a view, and the messages that a trace's moments are told in.

use crate::apparatus::gfci::MUST_TRIP_A;
use crate::drill::{
    Action, Event, Follows, IndoorsEvent, Learnt, LineEvent, MachineEvent, ProtectionEvent,
    SourceEvent, Touched, What,
};
use crate::hazard::shock::zone;
use crate::scenario::Scenario;
use crate::scenario::question::answer_said;
use crate::site::{ControlId, Site};
use crate::units::DrillTime;
use crate::words::{Arg, Message, Unit, name_of};

use super::close::seen_there;
use super::log_indoors::{indoors_message, kind_of_indoors};
use super::log_line::{crew_notices, detected_message, line_message};
use super::log_machine::machine_message;
use super::slide::done_message;
use super::view::{LogKind, LogLine, LogView};
use super::{Open, Session};

impl Session {
    /// Log and clock of the open drill.
    pub fn log(&self) -> LogView {
        let Some(open) = self.open.as_ref() else {
            return LogView::default();
        };
        LogView {
            clock: self.clock(open.drill.now()),
            clock_ms: open.drill.now().millis(),
            lines: self.log_lines(open),
            begun: open.drill.now() > DrillTime::ZERO || !open.drill.run().actions.is_empty(),
            over: open.verdict.is_some(),
            goal_met: goal_met(open),
        }
    }

    pub(super) fn log_lines(&self, open: &Open) -> Vec<LogLine> {
        let scenario = open.drill.scenario();
        let site = open.drill.site();
        let mut lines = Vec::new();
        let hidden = |e: &Event| !open.truth_is_shown() && !is_plain_to_see(site, e);
        let mut handed = open.beside.handed.iter().peekable();
        let mut before = None;
        for moment in &open.drill.trace().moments {
            let was = before.replace(moment);
            while let Some((at, name)) = handed.next_if(|(at, _)| *at < moment.at) {
                lines.push(self.handed_line(*at, name));
            }
            let (kind, message) = match &moment.what {
                What::Began | What::Sampled => continue,
                What::Happened(event) if hidden(event) => continue,
                What::Did(action) => (LogKind::Did, done_message(scenario, was, action)),
                What::Refused(action, why) => {
                    (LogKind::Refused, refused_message(scenario, action, why))
                }
                What::Learnt(learnt) => (LogKind::Learnt, learnt_message(site, learnt)),
                What::Happened(event) => (kind_of(event), event_message(site, event)),
            };
            lines.push(LogLine {
                clock: self.clock(moment.at),
                kind,
                text: self.words.label(&message),
            });
        }
        lines.extend(handed.map(|(at, name)| self.handed_line(*at, name)));
        lines
    }

    /// That another learner took over.
    fn handed_line(&self, at: DrillTime, name: &str) -> LogLine {
        let message = Message::new("log-handed").with("name", Arg::Verbatim(name.to_owned()));
        LogLine {
            clock: self.clock(at),
            kind: LogKind::Happened,
            text: self.words.say(&message),
        }
    }

    /// A drill clock in words.
    pub(super) fn clock(&self, at: DrillTime) -> String {
        self.words
            .say(&Message::new("clock").with("time", Arg::Clock(at)))
    }
}

/// Whether the appliances of the goal have had power since the outage, and everything stands as it should.
fn goal_met(open: &Open) -> bool {
    let drill = &open.drill;
    let verdict = crate::marking::mark(drill.scenario(), drill.trace());
    verdict
        .criteria
        .iter()
        .any(|(c, met)| *c == crate::scenario::Criterion::Restoration && *met)
}

fn kind_of(event: &Event) -> LogKind {
    match event {
        Event::Shock { .. }
        | Event::Overcome { .. }
        | Event::FuelFire { .. }
        | Event::CordFire { .. }
        | Event::Machine(MachineEvent::CaughtByEngine) => LogKind::Harm,
        Event::Indoors(event) => kind_of_indoors(event),
        Event::Touched(t) if zone(t.amps * 1000.0, t.seconds).harms() => LogKind::Harm,
        Event::Collision { .. }
        | Event::CrewFoundLive { .. }
        | Event::Alarm { .. }
        | Event::Line(LineEvent::OpenedOnFault { .. } | LineEvent::CannotOpen { .. }) => {
            LogKind::Mistake
        }
        Event::Outage
        | Event::CrewArrived
        | Event::CrewTookHold
        | Event::CrewLeft
        | Event::UtilityReturned
        | Event::UtilityFailed
        | Event::NeighborAsked
        | Event::Tripped { .. }
        | Event::Protection(_)
        | Event::Starting { .. }
        | Event::Running { .. }
        | Event::Stalled { .. }
        | Event::ProtectorOpened { .. }
        | Event::LostPower { .. }
        | Event::Lost { .. }
        | Event::EngineReady
        | Event::EngineStalled { .. }
        | Event::OutOfFuel
        | Event::Machine(_)
        | Event::Line(_)
        | Event::GeneratorBroken
        | Event::Source(_)
        | Event::CordSoft { .. }
        | Event::PlugScorched { .. }
        | Event::CordShorted { .. }
        | Event::Touched(_) => LogKind::Happened,
    }
}

/// Whether somebody at the house, or the crew where the learner is that, sees or hears it without looking for it.
pub(super) fn is_plain_to_see(site: &Site, event: &Event) -> bool {
    if site.line_work.is_some() {
        return crew_notices(event);
    }
    !matches!(
        event,
        Event::CrewArrived
            | Event::CrewTookHold
            | Event::CrewFoundLive { .. }
            | Event::CrewLeft
            | Event::UtilityReturned
            | Event::UtilityFailed
            | Event::Shock { .. }
            | Event::Overcome { .. }
            | Event::Indoors(
                IndoorsEvent::Unheard { .. }
                    | IndoorsEvent::PersonOvercome { .. }
                    | IndoorsEvent::NeighborRuns
            )
            | Event::CordSoft { .. }
            | Event::PlugScorched { .. }
            | Event::Source(SourceEvent::SolarJoined { .. } | SourceEvent::SolarLeft { .. })
    )
}

/// What was done.
pub(super) fn did_message(scenario: &Scenario, action: &Action) -> Message {
    let site = &scenario.site;
    match action {
        Action::Set(control, position) => {
            let control = site.control(*control);
            let position = control.and_then(|c| c.positions.get(usize::from(position.0)));
            Message::new("log-set")
                .name("control", control.map_or("", |c| c.name.as_str()))
                .name(
                    "position",
                    control.zip(position).map_or("", |(c, p)| c.said(p)),
                )
        }
        Action::Look(sight) => Message::new("log-look").name("place", sight.name()),
        Action::Test(point) => Message::new("log-test").name("point", point),
        Action::Call(callee) => Message::new("log-call").name("who", callee.name()),
        Action::Tell(listener) => Message::new("log-tell").name("who", listener.name()),
        Action::Say(question, answer) => {
            let asked = scenario.questions.iter().find(|q| q.name == *question);
            let asked = asked.map_or_else(|| name_of(question), |q| q.asked(&scenario.site));
            Message::new("log-say")
                .said("question", asked)
                .said("answer", answer_said(answer))
        }
        Action::Refuel => Message::new("log-refuel"),
        Action::Wait(time) => Message::new("log-wait").with("time", Arg::lasting(*time)),
        Action::Happen(turn) => Message::new(format!("log-happen-{}", turn.name())),
    }
}

/// What was refused, and why.
pub(super) fn refused_message(scenario: &Scenario, action: &Action, why: &str) -> Message {
    let did = did_message(scenario, action);
    let id = if why == "refused-already" {
        "log-refused-already"
    } else {
        "log-refused"
    };
    Message::new(id)
        .said("deed", did)
        .said("why", Message::new(why))
}

/// What was learnt.
pub(super) fn learnt_message(site: &Site, learnt: &Learnt) -> Message {
    match learnt {
        Learnt::Saw {
            sight,
            neighbors_lit,
        } => match (sight, neighbors_lit) {
            (crate::drill::Sight::Street, true) => Message::new("learnt-street-lit"),
            (crate::drill::Sight::Street, false) => Message::new("learnt-street-dark"),
            (other, _) => seen_there(site, other.name()),
        },
        Learnt::Tested { point, reading } => {
            let id = if reading.volts_across > 1.0 || reading.volts > 1.0 {
                "learnt-live"
            } else {
                "learnt-dead"
            };
            let volts = reading.volts.max(reading.volts_across);
            let message = Message::new(id).name("point", point);
            if id == "learnt-live" {
                message.quantity("volts", volts, Unit::Volts)
            } else {
                message
            }
        }
        Learnt::Detected { point, tester, lit } => detected_message(site, point, *tester, *lit),
        Learnt::Spread { .. } if site.line_work.is_some() => Message::new("learnt-customers-asked"),
        Learnt::Told {
            by,
            crew_at_work,
            in_service,
            drop_loose,
        } => match (by, crew_at_work, in_service) {
            (crate::drill::Callee::Utility, ..) if *drop_loose => Message::new("learnt-drop-loose"),
            (crate::drill::Callee::Utility, true, _) => Message::new("learnt-crew-at-work"),
            (crate::drill::Callee::Utility, false, true) => Message::new("learnt-in-service"),
            (crate::drill::Callee::Utility, false, false) => Message::new("learnt-line-down"),
            (crate::drill::Callee::Electrician, ..) => Message::new("learnt-electrician"),
            (crate::drill::Callee::Emergency, ..) => Message::new("learnt-emergency"),
        },
        Learnt::Spread { to } => Message::new("learnt-told").name("who", to.name()),
    }
}

/// What happened.
pub(super) fn event_message(site: &Site, event: &Event) -> Message {
    let appliance = |id: &str, index: usize| {
        Message::new(id).name(
            "appliance",
            site.appliances.get(index).map_or("", |a| a.name.as_str()),
        )
    };
    match event {
        Event::Outage => Message::new("event-outage"),
        Event::CrewArrived => Message::new("event-crew-arrived"),
        Event::CrewTookHold => Message::new("event-crew-took-hold"),
        Event::CrewFoundLive { volts } => {
            Message::new("event-crew-found-live").quantity("volts", *volts, Unit::Volts)
        }
        Event::CrewLeft => Message::new("event-crew-left"),
        Event::UtilityReturned => Message::new("event-utility-returned"),
        Event::UtilityFailed => Message::new("event-utility-failed"),
        Event::NeighborAsked => Message::new("event-neighbor-asked"),
        Event::Tripped { control, amps } => opened_message(site, *control, *amps),
        Event::Protection(event) => protection_message(site, event),
        Event::Starting {
            appliance: index,
            amps,
        } => appliance("event-starting", *index).quantity("amps", *amps, Unit::Amps),
        Event::Running { appliance: index } => appliance("event-running", *index),
        Event::Stalled {
            appliance: index,
            pu,
        } => appliance("event-stalled", *index).quantity("percent", pu * 100.0, Unit::Percent),
        Event::ProtectorOpened { appliance: index } => appliance("event-protector", *index),
        Event::LostPower { appliance: index } => appliance("event-lost-power", *index),
        Event::Lost { appliance: index } => Message::new(format!(
            "event-lost-{}",
            site.appliances.get(*index).map_or("", |a| a.name.as_str())
        )),
        Event::EngineReady => Message::new("event-engine-ready"),
        Event::EngineStalled { watts } => {
            Message::new("event-engine-stalled").quantity("watts", *watts, Unit::Watts)
        }
        Event::OutOfFuel => Message::new("event-out-of-fuel"),
        Event::Machine(event) => machine_message(*event),
        Event::Collision {
            angle_deg, amps, ..
        } => Message::new("event-collision")
            .quantity("angle", *angle_deg, Unit::Degrees)
            .quantity("amps", amps.low, Unit::Amps),
        Event::GeneratorBroken => Message::new("event-generator-broken"),
        Event::Source(event) => source_message(event),
        Event::Line(event) => line_message(site, event),
        Event::Shock { volts, amps } => Message::new("event-shock")
            .with("volts", Arg::Range(volts.low, volts.high, Unit::Volts))
            .with("amps", Arg::Range(amps.low, amps.high, Unit::Amps)),
        Event::Touched(touched) => touched_message(site, touched),
        Event::Alarm { ppm } => Message::new("event-alarm").quantity("ppm", *ppm, Unit::Ppm),
        Event::Overcome { cohb_pct } => {
            Message::new("event-overcome").quantity("cohb", *cohb_pct, Unit::Percent)
        }
        Event::Indoors(event) => indoors_message(site, event),
        Event::CordSoft { cord, celsius } => of_cord(site, "event-cord-soft", *cord, *celsius),
        Event::PlugScorched { cord, celsius } => {
            of_cord(site, "event-plug-scorched", *cord, *celsius)
        }
        Event::CordShorted { cord, celsius } => {
            of_cord(site, "event-cord-shorted", *cord, *celsius)
        }
        Event::CordFire { cord, celsius } => of_cord(site, "event-cord-fire", *cord, *celsius),
        Event::FuelFire { celsius } => {
            Message::new("event-fuel-fire").quantity("surface", *celsius, Unit::Celsius)
        }
    }
}

/// A breaker tripped, or a fuse blew.
fn opened_message(site: &Site, control: ControlId, amps: f64) -> Message {
    let fuse = site
        .control(control)
        .is_some_and(|c| c.plate.fuse.is_some());
    let message = if fuse {
        device(site, "event-fuse-blown", "fuse", control)
    } else {
        device(site, "event-tripped", "breaker", control)
    };
    message.quantity("amps", amps, Unit::Amps)
}

/// A message that names a control.
fn device(site: &Site, id: &str, arg: &'static str, control: ControlId) -> Message {
    Message::new(id).name(arg, site.control(control).map_or("", |c| c.name.as_str()))
}

/// What protection did by itself.
fn protection_message(site: &Site, event: &ProtectionEvent) -> Message {
    match event {
        ProtectionEvent::GroundFault {
            control,
            residual_a,
            ..
        } => device(site, "event-ground-fault", "device", *control)
            .with("load", Arg::Count(i64::from(*residual_a >= MUST_TRIP_A)))
            .quantity("residual", residual_a * 1000.0, Unit::Milliamps),
        ProtectionEvent::NeutralLost => Message::new("event-neutral-lost"),
        ProtectionEvent::LegLost => Message::new("event-leg-lost"),
        ProtectionEvent::DropMended => Message::new("event-drop-mended"),
        ProtectionEvent::Damaged { appliance, volts } => {
            let name = site.appliances.get(*appliance);
            Message::new("event-damaged")
                .name("appliance", name.map_or("", |a| a.name.as_str()))
                .quantity("volts", *volts, Unit::Volts)
        }
    }
}

/// What a hand on metal felt.
fn touched_message(site: &Site, touched: &Touched) -> Message {
    Message::new("event-touched")
        .name("metal", &touched.metal.point(site))
        .quantity("volts", touched.volts, Unit::Volts)
        .quantity("body", touched.amps * 1000.0, Unit::Milliamps)
        .quantity("seconds", touched.seconds, Unit::Seconds)
}
/// Volts below which an inverter has nothing at its terminals.
const DEAD_V: f64 = 10.0;

/// What solar or battery did by themselves.
fn source_message(event: &SourceEvent) -> Message {
    match event {
        SourceEvent::SolarJoined { grid } => Message::new(joined_id(*grid)),
        SourceEvent::SolarLeft { volts, .. } if *volts < DEAD_V => {
            Message::new("event-solar-left-dead")
        }
        SourceEvent::SolarLeft { volts, hz } => Message::new("event-solar-left")
            .quantity("volts", *volts, Unit::Volts)
            .quantity("hertz", *hz, Unit::Hertz),
        SourceEvent::GeneratorPushed { watts } => {
            Message::new("event-generator-pushed").quantity("watts", *watts, Unit::Watts)
        }
        SourceEvent::BatteryTook => Message::new("event-battery-took"),
        SourceEvent::BatteryGaveBack => Message::new("event-battery-gave-back"),
        SourceEvent::BatteryOverloaded { watts } => {
            Message::new("event-battery-overloaded").quantity("watts", *watts, Unit::Watts)
        }
        SourceEvent::BatteryEmpty => Message::new("event-battery-empty"),
    }
}

/// The message for a solar inverter that has joined what it takes for the grid.
fn joined_id(grid: Follows) -> &'static str {
    match grid {
        Follows::Generator => "event-solar-joined-generator",
        Follows::Battery => "event-solar-joined-battery",
        Follows::Utility | Follows::Nothing => "event-solar-joined-utility",
    }
}

/// What happens to a cord at a temperature.
fn of_cord(site: &Site, id: &str, cord: usize, celsius: f64) -> Message {
    let name = site.cords.get(cord).map_or("", |c| c.name.as_str());
    Message::new(id)
        .name("cord", name)
        .quantity("reached", celsius, Unit::Celsius)
}
