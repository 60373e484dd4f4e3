//! What the proof's judge finds of a line that a crew works: from joints alone, never from the marking or the solver.
//!
//! Whether something bars the utility's way is asked of the joints with everything closed that no tag holds open.
//! Grounds anywhere on the same piece of line hold a customer's set down; only those at the work save a worker from the utility's fault too.

use crate::site::{Clamps, PositionId, Positions};

use super::joints::Place;
use super::judge::{Judge, Stand};

impl Judge<'_> {
    /// What holds of a line that a crew works.
    pub(super) fn stand_of_line(&self, positions: &Positions) -> Stand {
        let site = self.site;
        let Some(work) = &site.line_work else {
            return Stand::default();
        };
        let crew = site.line.crew_pole;
        let pole = Place::Pole(crew);
        let at_work = site.stands(positions, site.line.crew, "hands-on");
        let clamp = work.clamps_at(crew, positions);
        let held = at_work || clamp == Clamps::LineEnd;
        let here = self.joints.reach(positions, pole);
        let grounded = work.grounds.iter().any(|g| {
            g.clamps(positions) == Clamps::BothEnds && self.joints.has(&here, Place::Pole(g.pole))
        });
        let utility = self.utility_reaches(positions, pole);
        // The utility's fault current in grounds elsewhere lifts the neutral, and with it a wire that is clamped to it.
        let lifted = work.grounds.iter().any(|g| {
            g.clamps(positions) == Clamps::BothEnds
                && self.utility_reaches(positions, Place::Pole(g.pole))
        });
        let own = self.own_reaches(positions, pole);
        Stand {
            tied: self.tied(positions),
            shock: held && clamp != Clamps::BothEnds && (utility || own && (lifted || !grounded)),
            unbarred: at_work && self.utility_reaches(&self.unless_tagged(positions), pole),
            out_of_zone: at_work && clamp != Clamps::BothEnds,
            ..Stand::default()
        }
    }

    /// Everything on the line closed that no tag holds open.
    fn unless_tagged(&self, positions: &Positions) -> Positions {
        let site = self.site;
        let mut closed = positions.clone();
        closed.set(site.line.feeder, PositionId(1));
        closed.set(site.line.span_state, PositionId(0));
        for own in site.line_work.iter().flat_map(|w| &w.breaks) {
            if positions.get(own.tag) == PositionId(0) {
                closed.set(own.handle, PositionId(0));
            }
        }
        closed
    }
}
