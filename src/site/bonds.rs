//! How many places join a generator's neutral to ground as cords and switches stand: none, its own, the house's, or both.
//!
//! Read from the parts of a site; what current then does follows from the circuit.
//! The house's bond is at its service. A transfer switch that moves the neutral keeps the set away from it; one that leaves it solid does not.
//! Not covered: bonds made by mistake behind the service, and electrodes at the set.
//! Source: NEC 250.24(A), 250.30 and 702.11 (from memory).

use super::control::Positions;
use super::equipment::{Bond, FarEnd, NeutralPole, OtherSide, Spot};
use super::parts::Site;

impl Site {
    /// How many places join the generator's neutral to ground.
    pub fn set_bonds(&self, positions: &Positions) -> usize {
        let own = self.generator.bond == Bond::Bonded;
        usize::from(own) + usize::from(self.set_on_house_neutral(positions))
    }

    /// Whether a cord or a wire joins the generator to the house's wiring; appliances on cords of their own are not that.
    pub fn set_on_house(&self, positions: &Positions) -> bool {
        let mut cords = self.cords.iter();
        cords.any(|cord| {
            let at_set = matches!(cord.near_spot(positions), Spot::Receptacle(_));
            at_set
                && match cord.far {
                    FarEnd::Inlet(end) | FarEnd::Blades(end, _) => positions.get(end).0 != 0,
                    FarEnd::Connector | FarEnd::Strip(_) => false,
                }
        }) || self.set_by_wire().is_some()
    }

    fn set_on_house_neutral(&self, positions: &Positions) -> bool {
        let switched = |other: OtherSide| {
            let mut transfers = self.transfers.iter();
            transfers.any(|t| t.other == other && t.neutral == NeutralPole::Switched)
        };
        let mut cords = self.cords.iter();
        let by_cord = cords.any(|cord| {
            let at_set = matches!(cord.near_spot(positions), Spot::Receptacle(_));
            at_set
                && match cord.far {
                    FarEnd::Inlet(end) => {
                        let inlet = usize::from(positions.get(end).0).checked_sub(1);
                        inlet.is_some_and(|i| !switched(OtherSide::Inlet(i)))
                    }
                    FarEnd::Blades(end, _) => positions.get(end).0 != 0,
                    FarEnd::Connector | FarEnd::Strip(_) => false,
                }
        });
        by_cord || self.set_by_wire() == Some(NeutralPole::Solid)
    }

    /// The neutral pole of a switch that the generator is wired to for good, if there is one.
    fn set_by_wire(&self) -> Option<NeutralPole> {
        let mut transfers = self.transfers.iter();
        let wired = transfers.find(|t| t.other == OtherSide::Generator);
        wired.map(|t| t.neutral)
    }
}
