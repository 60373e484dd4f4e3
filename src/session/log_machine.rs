//! The messages of what a generator and its controller do by themselves.

use crate::apparatus::auto_transfer::{Fault, Phase};
use crate::drill::MachineEvent;
use crate::words::{Arg, Message, Unit};

/// What a set or its controller did by itself.
pub(super) fn machine_message(event: MachineEvent) -> Message {
    match event {
        MachineEvent::LowOil => Message::new("event-low-oil"),
        MachineEvent::NoStart => Message::new("event-no-start"),
        MachineEvent::EngineStarted => Message::new("event-engine-started"),
        MachineEvent::ShutOff {
            watts,
            most_a: None,
        } => Message::new("event-shut-off").quantity("watts", watts, Unit::Watts),
        MachineEvent::ShutOff {
            most_a: Some(most_a),
            ..
        } => Message::new("event-shut-off-leg").quantity("amps", most_a, Unit::Amps),
        MachineEvent::Dip {
            volts,
            recovery_s: Some(seconds),
        } => Message::new("event-dip")
            .with("lasts", Arg::Count(i64::from(seconds > 0.0)))
            .quantity("volts", volts, Unit::Volts)
            .quantity("seconds", (seconds * 100.0).ceil() / 100.0, Unit::Seconds),
        MachineEvent::Dip {
            volts,
            recovery_s: None,
        } => Message::new("event-dip-stays").quantity("volts", volts, Unit::Volts),
        MachineEvent::Controller(phase) => controller_message(phase),
        MachineEvent::CaughtByEngine => Message::new("event-caught-by-engine"),
    }
}

/// What the controller of an automatic transfer switch is about.
pub(super) fn controller_message(phase: Phase) -> Message {
    let id = match phase {
        Phase::Waiting => "event-controller-waiting",
        Phase::LossSeen => "event-controller-loss-seen",
        Phase::StartDelay => "event-controller-start-delay",
        Phase::Cranking(attempt) => {
            return Message::new("event-controller-cranking")
                .with("attempt", Arg::Count(i64::from(attempt)));
        }
        Phase::Resting(_) => "event-controller-resting",
        Phase::WarmingUp => "event-controller-warming-up",
        Phase::ToGenerator => "event-controller-to-generator",
        Phase::OnGenerator => "event-controller-on-generator",
        Phase::BackSeen => "event-controller-back-seen",
        Phase::RetransferDelay => "event-controller-retransfer-delay",
        Phase::ToUtility => "event-controller-to-utility",
        Phase::CoolingDown => "event-controller-cooling-down",
        Phase::Exercising => "event-controller-exercising",
        Phase::Failed(Fault::Overcrank) => "event-controller-overcrank",
        Phase::Failed(Fault::Stopped) => "event-controller-stopped",
        Phase::Failed(Fault::NotReady) => "event-controller-not-ready",
    };
    Message::new(id)
}
