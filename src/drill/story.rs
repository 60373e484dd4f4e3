//! What the world's happenings do to how things stand: one place for the drill that is played and for the search through all that can be reached.

use crate::scenario::Happening;
use crate::site::{At, ControlId, PositionId, Positions, Site};

use super::event::Event;
use super::indoors::IndoorsEvent;
use super::line_work::LineEvent;
use super::protection::ProtectionEvent;

/// Brings everything to where it stands once this has happened.
pub fn take_place(site: &Site, what: Happening, positions: &mut Positions) {
    let line = &site.line;
    match what {
        Happening::Outage => {
            positions.set(line.span_state, PositionId(1));
            positions.set(line.feeder, PositionId(0));
        }
        Happening::CrewArrives => stand(site, positions, line.crew, "testing"),
        Happening::CrewTakesHold => stand(site, positions, line.crew, "hands-on"),
        Happening::CrewLeaves => {
            stand(site, positions, line.crew, "clear");
            positions.set(line.span_state, PositionId(0));
        }
        Happening::UtilityFails => positions.set(line.feeder, PositionId(0)),
        Happening::NeighborAsks | Happening::NeighborRuns => {}
        Happening::UtilityReturns => positions.set(line.feeder, PositionId(1)),
        Happening::NeutralLost => positions.set(line.drop_neutral, PositionId(1)),
        Happening::LegLost => positions.set(line.drop_leg, PositionId(1)),
        Happening::DropMended => {
            positions.set(line.drop_neutral, PositionId(0));
            positions.set(line.drop_leg, PositionId(0));
        }
        Happening::CustomerStarts => positions.set(site.generator.engine, PositionId(1)),
        Happening::TieCloses => {
            let breaks = site.line_work.iter().flat_map(|w| &w.breaks);
            for tie in breaks.filter(|b| matches!(b.at, At::Tie(_))) {
                // A tag means that the remote control is made inoperable too.
                if positions.get(tie.tag) == PositionId(0) {
                    positions.set(tie.handle, PositionId(0));
                }
            }
        }
        Happening::SecondCrewClears => {
            if let Some(crew) = site.line_work.as_ref().and_then(|w| w.second_crew) {
                stand(site, positions, crew, "clear");
            }
        }
    }
}

fn stand(site: &Site, positions: &mut Positions, control: ControlId, position: &str) {
    if let Some(position) = site.control(control).and_then(|c| c.position(position)) {
        positions.set(control, position);
    }
}

/// The event that tells that the story has done this.
pub fn event_of(what: Happening) -> Event {
    match what {
        Happening::Outage => Event::Outage,
        Happening::CrewArrives => Event::CrewArrived,
        Happening::CrewTakesHold => Event::CrewTookHold,
        Happening::CrewLeaves => Event::CrewLeft,
        Happening::UtilityReturns => Event::UtilityReturned,
        Happening::UtilityFails => Event::UtilityFailed,
        Happening::NeighborAsks => Event::NeighborAsked,
        Happening::NeighborRuns => Event::Indoors(IndoorsEvent::NeighborRuns),
        Happening::NeutralLost => Event::Protection(ProtectionEvent::NeutralLost),
        Happening::LegLost => Event::Protection(ProtectionEvent::LegLost),
        Happening::DropMended => Event::Protection(ProtectionEvent::DropMended),
        Happening::CustomerStarts => Event::Line(LineEvent::CustomerStarted),
        Happening::TieCloses => Event::Line(LineEvent::TieClosed),
        Happening::SecondCrewClears => Event::Line(LineEvent::SecondCrewClear),
    }
}
