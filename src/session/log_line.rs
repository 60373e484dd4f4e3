//! What a line crew's testers show and what happens on its line, as messages.

use crate::drill::{Event, LineEvent};
use crate::site::{ControlId, Site};
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
