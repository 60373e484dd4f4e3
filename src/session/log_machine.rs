//! The messages of what a generator and its controller do by themselves.

use crate::apparatus::auto_transfer::{Fault, Phase};
use crate::drill::{Event, MachineEvent, Moment, What};
use crate::site::Site;
use crate::words::{Arg, Message, Unit};

/// Times that an appliance goes on or off in one instant from which that is told as one flicker.
const FLICKERS: usize = 4;

/// An appliance that goes on and off again and again in the first moment's instant: how many moments that is, and what is said of all of them.
pub(super) fn flickers(site: &Site, moments: &[Moment]) -> Option<(usize, Message)> {
    let goes = |m: &Moment| {
        if let What::Happened(Event::Running { appliance }) = m.what {
            Some((appliance, true))
        } else if let What::Happened(Event::LostPower { appliance }) = m.what {
            Some((appliance, false))
        } else {
            None
        }
    };
    let first = moments.first()?;
    let (own, _) = goes(first)?;
    let same = moments.iter().take_while(|m| m.at == first.at);
    let same: Vec<bool> = same
        .map_while(|m| goes(m).filter(|(appliance, _)| *appliance == own))
        .map(|(_, on)| on)
        .collect();
    let on = *same.last()?;
    let name = site.appliances.get(own)?.name.as_str();
    let message = Message::new("event-flickers")
        .name("appliance", name)
        .with("on", Arg::Count(i64::from(on)));
    (same.len() >= FLICKERS).then_some((same.len(), message))
}

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
