//! How cords are left to lie, and the state they are found in.
//!
//! Positions of a cord's own control, and what they mean to its heat; see `apparatus::cord_lay` for the factors and their accuracy.
//! The first position a cord file names is how it lies at the start of a drill that says nothing else.
//! Not covered: a cord that lies partly so and partly so, wet ground, the hour of the sun.

use crate::apparatus::connection::Connection;
use crate::apparatus::cord_damage::Damage;
use crate::apparatus::cord_lay::{Lay, SUN_K};

use super::control::Positions;
use super::equipment::Cord;
use super::parts::Site;

/// How a cord lies.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Rest {
    /// All of it in one coil.
    Coiled,
    /// Half of it drawn off, the rest still coiled.
    HalfCoiled,
    /// Laid out, nothing on it.
    Flat,
    /// Under a rug.
    UnderRug,
    /// Tied together with the others that are tied.
    Bundled,
    /// Laid out, with its connector in a puddle.
    InPuddle,
}

impl Rest {
    /// Every way, in the order in which a cord's control offers them.
    pub const ALL: [Self; 6] = [
        Self::Coiled,
        Self::HalfCoiled,
        Self::Flat,
        Self::UnderRug,
        Self::Bundled,
        Self::InPuddle,
    ];

    /// Its name as a position.
    pub fn name(self) -> &'static str {
        match self {
            Self::Coiled => "coiled",
            Self::HalfCoiled => "half-coiled",
            Self::Flat => "flat",
            Self::UnderRug => "under-rug",
            Self::Bundled => "bundled",
            Self::InPuddle => "in-puddle",
        }
    }

    /// Whether something lies against the cord that may catch fire: other turns, a rug, other cords.
    pub fn touches(self) -> bool {
        !matches!(self, Self::Flat | Self::InPuddle)
    }
}

/// The state a cord is found in.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Found {
    /// Damage somewhere along it.
    pub damage: Damage,
    /// Its plug, in whatever it is plugged into.
    pub plug: Connection,
    /// Whether it lies in the sun.
    pub in_sun: bool,
}

/// What the solver has to know of a cord beyond what is built.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CordState {
    /// Conductor temperature along it, °C.
    pub celsius: f64,
    /// Rise of a damaged place over that, kelvin.
    pub spot_k: f64,
    /// Whether its conductors meet.
    pub shorted: bool,
}

impl Cord {
    /// Whether it is made for work outdoors and fit for it: sound, grounded from end to end, in a jacket for outdoors.
    pub fn is_fit(&self) -> bool {
        self.grounded && self.make.kind().outdoor && self.found.damage == Damage::Sound
    }

    /// Whether its connector can lie in a puddle.
    pub fn can_be_wet(&self) -> bool {
        self.rests.contains(&Rest::InPuddle)
    }

    /// Temperature of the air that it gives its heat to, °C, where the air is at `ambient_c`.
    pub fn air_c(&self, ambient_c: f64) -> f64 {
        if self.found.in_sun {
            ambient_c + SUN_K
        } else {
            ambient_c
        }
    }

    /// How it lies.
    pub fn rest(&self, positions: &Positions) -> Rest {
        let at = usize::from(positions.get(self.lay).0);
        self.rests.get(at).copied().unwrap_or(Rest::Flat)
    }
}

impl Site {
    /// How the cord of this index lies, with the company it has.
    pub fn lay_of(&self, positions: &Positions, index: usize) -> Lay {
        let Some(cord) = self.cords.get(index) else {
            return Lay::Straight;
        };
        match cord.rest(positions) {
            Rest::Coiled => Lay::all_coiled(cord.make.length_ft()),
            Rest::HalfCoiled => Lay::half_coiled(cord.make.length_ft()),
            Rest::Flat | Rest::InPuddle => Lay::Straight,
            Rest::UnderRug => Lay::Covered,
            Rest::Bundled => {
                let tied = |c: &&Cord| c.rest(positions) == Rest::Bundled;
                let n_tied = self.cords.iter().filter(tied).count();
                Lay::Bundled {
                    others: u32::try_from(n_tied.saturating_sub(1)).unwrap_or(u32::MAX),
                }
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_way_to_lie_has_a_name_of_its_own() {
        let mut names: Vec<&str> = Rest::ALL.iter().map(|rest| rest.name()).collect();
        names.sort_unstable();
        names.dedup();
        assert_eq!(names.len(), Rest::ALL.len());
    }
}
