//! The messages of what gas and people indoors do by themselves.

use crate::drill::IndoorsEvent;
use crate::site::Site;
use crate::words::{Message, Unit, name_of};

use super::view::LogKind;

/// What somebody sees, hears or feels of it.
pub(super) fn indoors_message(site: &Site, event: &IndoorsEvent) -> Message {
    match event {
        IndoorsEvent::Unheard { ppm } => {
            Message::new("event-unheard").quantity("ppm", *ppm, Unit::Ppm)
        }
        IndoorsEvent::Unwell { cohb_pct } => {
            Message::new("event-unwell").quantity("cohb", *cohb_pct, Unit::Percent)
        }
        IndoorsEvent::PersonOvercome { person, cohb_pct } => {
            let name = site.indoors.people.get(*person);
            let name = name_of(name.map_or("", |p| p.name.as_str()));
            Message::new("event-person-overcome")
                .said("person", name)
                .quantity("cohb", *cohb_pct, Unit::Percent)
        }
        IndoorsEvent::NextDoorAlarm { ppm } => {
            Message::new("event-next-door-alarm").quantity("ppm", *ppm, Unit::Ppm)
        }
        IndoorsEvent::NeighborRuns => Message::new("event-neighbor-runs"),
    }
}

/// How it is listed.
pub(super) fn kind_of_indoors(event: &IndoorsEvent) -> LogKind {
    match event {
        IndoorsEvent::PersonOvercome { .. } => LogKind::Harm,
        IndoorsEvent::Unheard { .. } | IndoorsEvent::NextDoorAlarm { .. } => LogKind::Mistake,
        IndoorsEvent::Unwell { .. } | IndoorsEvent::NeighborRuns => LogKind::Happened,
    }
}
