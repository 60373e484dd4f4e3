//! What the world's happenings do to how things stand: one place for the drill that is played and for the search through all that can be reached.

use crate::scenario::Happening;
use crate::site::{ControlId, PositionId, Positions, Site};

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
        Happening::NeighborAsks => {}
        Happening::UtilityReturns => positions.set(line.feeder, PositionId(1)),
        Happening::NeutralLost => positions.set(line.drop_neutral, PositionId(1)),
        Happening::LegLost => positions.set(line.drop_leg, PositionId(1)),
        Happening::DropMended => {
            positions.set(line.drop_neutral, PositionId(0));
            positions.set(line.drop_leg, PositionId(0));
        }
    }
}

fn stand(site: &Site, positions: &mut Positions, control: ControlId, position: &str) {
    if let Some(position) = site.control(control).and_then(|c| c.position(position)) {
        positions.set(control, position);
    }
}
