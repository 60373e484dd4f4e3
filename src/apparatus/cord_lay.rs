//! How a cord lies while it works, and what that leaves of its cooling.
//!
//! A coil or a bundle counts as so many loaded conductors lying together: NEC Table 400.5(A)(3) says what share of the amps is left, and a share *f* at the same temperature is 1/*f*² times the resistance to heat.
//! The code asks for a coil to be derated and gives no figure of its own: taking its turns for company is an assumption.
//! A rug's factor is an assumption too; the sun is counted as warmer air.
//! Not covered: wind, wet ground, a cord that lies partly so and partly so (the worst part decides), part turns.
//! Accuracy: of a bundle, the table's steps; of a coil a factor of 1.5 in the rise; of a rug a factor of 2.

use super::ampacity::company_factor;
use super::cord::Loaded;

/// How a cord lies.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Lay {
    /// Uncoiled in free air.
    Straight,
    /// Beside others that carry as much: in one hole, in one sleeve, tied together.
    Bundled {
        /// How many others.
        others: u32,
    },
    /// Under a rug or behind furniture.
    Covered,
    /// In a coil, or on its reel.
    Coil {
        /// How many turns lie against each other.
        turns: u32,
    },
}

impl Lay {
    /// The coil that a cord of this length makes when all of it is left coiled, in turns of 4 ft.
    pub fn all_coiled(length_ft: f64) -> Self {
        Self::Coil {
            turns: turns(length_ft),
        }
    }

    /// The coil that is left when half of its length is drawn off.
    pub fn half_coiled(length_ft: f64) -> Self {
        Self::Coil {
            turns: turns(length_ft / 2.0),
        }
    }

    /// Thermal resistance to the air as a multiple of that of a straight cord, 1 or more.
    pub fn heat_factor(self, loaded: Loaded) -> f64 {
        let together = |n: u32| {
            let share = company_factor(n.saturating_mul(loaded.count()));
            1.0 / (share * share)
        };
        match self {
            Self::Straight => 1.0,
            Self::Bundled { others } => together(others.saturating_add(1)),
            Self::Covered => COVERED,
            Self::Coil { turns } => together(turns.max(1)),
        }
    }
}

/// Warmer air that stands for the sun on a dark jacket, kelvin at most.
/// Assumption: 1 000 W/m² on a jacket 9 mm thick that takes nine tenths of it, less what a light wind takes; 10 to 25 K are plausible.
pub const SUN_K: f64 = 15.0;

/// Thermal resistance under a rug as a multiple of that in free air.
/// Assumption, 1.5 to 4: below the 4 that half the amps in thermal insulation mean (IEC 60364-5-52, from memory).
const COVERED: f64 = 2.5;

/// Feet of cord in a turn as people coil it; common practice.
const TURN_FT: f64 = 4.0;

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "clamped to what a reel can hold first"
)]
fn turns(length_ft: f64) -> u32 {
    (length_ft / TURN_FT).clamp(1.0, 1000.0) as u32
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn more_turns_and_more_company_never_cool_better() {
        for loaded in [Loaded::Two, Loaded::Three] {
            for n in 1..40 {
                let coil = |turns| Lay::Coil { turns }.heat_factor(loaded);
                let bundle = |others| Lay::Bundled { others }.heat_factor(loaded);
                assert!(
                    coil(n) <= coil(n + 1) && bundle(n) <= bundle(n + 1),
                    "{n} {loaded:?}"
                );
            }
        }
    }

    #[test]
    fn one_turn_and_no_company_is_a_straight_cord() {
        for lay in [
            Lay::Straight,
            Lay::Coil { turns: 1 },
            Lay::Bundled { others: 0 },
        ] {
            assert!(
                (lay.heat_factor(Loaded::Two) - 1.0).abs() < 1e-12,
                "{lay:?}"
            );
        }
    }

    #[test]
    fn a_coil_is_as_many_turns_as_the_cord_is_long() {
        assert_eq!(Lay::all_coiled(50.0), Lay::Coil { turns: 12 });
        assert_eq!(Lay::half_coiled(50.0), Lay::Coil { turns: 6 });
        assert_eq!(Lay::all_coiled(2.0), Lay::Coil { turns: 1 });
        assert_eq!(Lay::all_coiled(f64::INFINITY), Lay::Coil { turns: 1000 });
        let whole = Lay::all_coiled(100.0).heat_factor(Loaded::Two);
        assert!(whole > Lay::half_coiled(100.0).heat_factor(Loaded::Two));
    }
}
