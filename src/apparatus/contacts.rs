//! A transfer by contacts that break before they make: one source, neither, the other.
//!
//! Between the two the load is dead; the gap is the mechanism's own time, or, by hand on two separate handles, the person's.
//! What the load's motors still hold of their volts dies away in it, in closed form, and turns away from the next source meanwhile.
//! Range: break before make only; a contact that closes before the other opens joins the sources, which `closing` covers.
//! Figures for the mechanism are typical, from memory, with their range.
//! Source of the limit for reconnecting motors: ANSI C50.41, 1.33 per unit volts per hertz (from memory).
//! Not covered: arcs, bounce, contacts of differing age, welded contacts.

use crate::units::portable;

use super::closing::angle_after;

/// Most difference between what motors still hold and the source they meet, per unit of volts per hertz.
pub const MOST_RESIDUAL_PU: f64 = 1.33;

/// Time constant with which a small motor's volts die away, seconds; from memory, 0.02 to 0.15 below five horsepower.
const RESIDUAL_S: f64 = 0.06;
/// Time constant with which such a motor slows down under load, seconds; from memory, 0.3 to 2.
const SLOWING_S: f64 = 0.5;

/// The times of a mechanism, counted from the start of its throw.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Throw {
    /// Seconds until the contacts of the source left have parted.
    pub parts_s: f64,
    /// Seconds until the contacts of the source taken meet; more than `parts_s`.
    pub meets_s: f64,
}

/// What the load hangs on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Hangs {
    /// The source that is left.
    Left,
    /// None.
    Dead,
    /// The source that is taken.
    Taken,
}

impl Throw {
    /// A handle thrown by hand from one side through off to the other: a good half second; from memory, 0.3 to 1 s.
    pub const BY_HAND: Self = Self {
        parts_s: 0.15,
        meets_s: 0.65,
    };
    /// A contactor or solenoid; from memory, 0.05 to 0.2 s dead.
    pub const BY_SOLENOID: Self = Self {
        parts_s: 0.02,
        meets_s: 0.12,
    };

    /// What the load hangs on `seconds` after the start of the throw.
    pub fn hangs(&self, seconds: f64) -> Hangs {
        if seconds < self.parts_s {
            Hangs::Left
        } else if seconds < self.meets_s {
            Hangs::Dead
        } else {
            Hangs::Taken
        }
    }

    /// Seconds without any source.
    pub fn dead_s(&self) -> f64 {
        self.meets_s - self.parts_s
    }

    /// What a running motor meets when the contacts close: the difference of its residual volts and the source's, per unit.
    /// `slip_hz` is how much slower than the new source the old one ran.
    pub fn motor_meets_pu(&self, angle_deg: f64, slip_hz: f64) -> f64 {
        let gap = self.dead_s();
        let left = portable::exp(-gap / RESIDUAL_S);
        let slowed_hz = 60.0 * 0.5 * gap / SLOWING_S;
        let angle = angle_after(angle_deg, -(slip_hz + slowed_hz), gap);
        portable::magnitude(crate::units::Complex::ONE - portable::phasor(left, angle))
    }

    /// Whether running motors may be taken along in this throw at any angle.
    pub fn spares_motors(&self) -> bool {
        1.0 + portable::exp(-self.dead_s() / RESIDUAL_S) <= MOST_RESIDUAL_PU
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn at_no_instant_does_the_load_hang_on_both() {
        for throw in [Throw::BY_HAND, Throw::BY_SOLENOID] {
            let mut seen = vec![];
            for ms in 0..1000_i32 {
                let now = throw.hangs(f64::from(ms) / 1000.0);
                if seen.last() != Some(&now) {
                    seen.push(now);
                }
            }
            assert_eq!(seen, [Hangs::Left, Hangs::Dead, Hangs::Taken], "{throw:?}");
            assert!(throw.dead_s() > 0.0);
        }
    }

    #[test]
    fn a_longer_gap_is_kinder_to_motors() {
        let mut before = f64::INFINITY;
        for ms in 1..400_i32 {
            let throw = Throw {
                parts_s: 0.0,
                meets_s: f64::from(ms) / 1000.0,
            };
            let worst = (0..36_i32)
                .map(|n| throw.motor_meets_pu(f64::from(n) * 10.0, 0.5))
                .fold(0.0, f64::max);
            assert!(worst <= before + 0.01, "{ms} ms: {worst} after {before}");
            before = worst;
        }
        assert!(
            (before - 1.0).abs() < 0.01,
            "in the end a motor meets the plain source"
        );
    }

    #[test]
    fn a_throw_by_hand_spares_motors_and_a_very_quick_one_does_not() {
        assert!(Throw::BY_HAND.spares_motors() && Throw::BY_SOLENOID.spares_motors());
        let quick = Throw {
            parts_s: 0.01,
            meets_s: 0.03,
        };
        assert!(!quick.spares_motors());
        let worst = quick.motor_meets_pu(180.0, 0.0);
        assert!(worst > MOST_RESIDUAL_PU, "{worst}");
    }
}
