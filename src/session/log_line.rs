//! What a line crew's testers show, which clamp it took off and what happens on its line, as messages.

use crate::drill::{Action, Event, LineEvent, Moment};
use crate::site::{CLAMPS, Clamps, ControlId, Site};
use crate::words::{Message, Unit};

/// Whether a crew on the line notices it without looking for it: what happens in the customers' houses it doesn't.
pub(super) fn crew_notices(event: &Event) -> bool {
    matches!(
        event,
        Event::Shock { .. }
            | Event::Collision { .. }
            | Event::Line(
                LineEvent::OpenedOnFault { .. }
                    | LineEvent::CannotOpen { .. }
                    | LineEvent::CustomersBack
                    | LineEvent::SecondCrewClear
            )
    )
}

/// What a tester shows.
pub(super) fn detected_message(site: &Site, point: &str, tester: usize, lit: bool) -> Message {
    let testers = site.line_work.as_ref().map(|w| &w.testers);
    let name = testers.and_then(|t| t.get(tester));
    let id = if lit {
        "learnt-tester-lit"
    } else {
        "learnt-tester-dark"
    };
    Message::new(id)
        .name("tester", name.map_or("", |t| t.name.as_str()))
        .name("point", point)
}

/// Which clamp of grounds came off where both were on; where they stand then says it the wrong way around.
pub(super) fn taken_off(site: &Site, before: Option<&Moment>, action: &Action) -> Option<Message> {
    let Action::Set(control, position) = action else {
        return None;
    };
    let mut all = site.line_work.as_ref()?.grounds.iter();
    let own = all.find(|g| g.control == *control)?;
    if own.clamps(&before?.positions) != Clamps::BothEnds {
        return None;
    }
    let stands = CLAMPS.get(usize::from(position.0)).copied()?;
    let off = if stands == Clamps::EarthEnd {
        "line-end-off"
    } else if stands == Clamps::LineEnd {
        "earth-end-off"
    } else {
        return None;
    };
    let name = site.control(*control).map_or("", |c| c.name.as_str());
    let set = Message::new("log-set").name("control", name);
    Some(set.name("position", off))
}

/// What happens on the line.
pub(super) fn line_message(site: &Site, event: &LineEvent) -> Message {
    let fault = |id: &str, control: ControlId, amps: f64| {
        let name = site.control(control).map_or("", |c| c.name.as_str());
        Message::new(id)
            .name("switch", name)
            .quantity("amps", amps, Unit::Amps)
    };
    match event {
        LineEvent::OpenedOnFault { control, amps } => {
            fault("event-opened-on-fault", *control, *amps)
        }
        LineEvent::CannotOpen { control, amps } => fault("event-cannot-open", *control, *amps),
        LineEvent::CustomerStarted => Message::new("event-customer-started"),
        LineEvent::CustomersBack => Message::new("event-customers-back"),
        LineEvent::TieClosed => Message::new("event-tie-closed"),
        LineEvent::TieHeld => Message::new("event-tie-held"),
        LineEvent::SecondCrewClear => Message::new("event-second-crew-clear"),
    }
}
