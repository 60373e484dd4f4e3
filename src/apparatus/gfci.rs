//! The ground-fault circuit interrupter of class A: it opens when what goes out doesn't come back.
//!
//! It sees the phasor sum of the currents through its window: hots and neutral, never the equipment ground.
//! UL 943: it must not trip below 4 mA and must trip at 6 mA or more (checked); the longest time permitted is *t* = (20/*I* in mA)^1.43 s, from 6 to 264 mA (weak: quoted in the trade); about 25 ms is typical (checked).
//! A neutral that is grounded on its load side must trip it too, by the same formula (UL 943 of 2006, weak).
//! It sends a small signal along the neutral and sees it come back through the ground; that a loop of 2 ohms or less is seen is common practice.
//! What it can't see: a body from hot to neutral, an overload, a short circuit from hot to neutral, a fault ahead of it, and any fault of a source that has no path back through ground or earth.
//! Not covered: class B (20 mA), devices that protect equipment only (30 mA and more), self-test, failure, surge.
//! Accuracy: the band of 4 to 6 mA is left to the maker; the usual device here picks up at 5 mA.

use crate::units::Complex;
use crate::units::portable;

use super::inverse_time::TripWindow;

/// Residual amps below which no class A device may trip.
pub const MAY_TRIP_A: f64 = 0.004;
/// Residual amps at which every class A device must trip.
pub const MUST_TRIP_A: f64 = 0.006;
/// Residual milliamps where the published formula ends.
const FORMULA_TO_MA: f64 = 264.0;
/// Ohms of the loop of neutral and ground at or below which a grounded neutral is seen; common practice.
pub const GROUNDED_NEUTRAL_OHM: f64 = 2.0;

/// A class A device.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Gfci {
    /// Residual amps from which it trips: [`MAY_TRIP_A`] to [`MUST_TRIP_A`].
    pub pickup_a: f64,
    /// Seconds it takes, the opening of its contacts included; never more than the published longest.
    pub trip_s: f64,
}

impl Gfci {
    /// The usual device: 5 mA, 25 ms.
    pub const USUAL: Self = Self {
        pickup_a: 0.005,
        trip_s: 0.025,
    };

    /// Seconds until this device trips at `residual_a`; `None` if it holds.
    pub fn seconds_to_trip(self, residual_a: f64) -> Option<f64> {
        (residual_a >= self.pickup_a).then(|| {
            let longest = longest_s(residual_a).unwrap_or(self.trip_s);
            self.trip_s.min(longest)
        })
    }

    /// Between what times class A devices may trip at `residual_a`; the quickest takes this device's own time.
    pub fn trip_window(self, residual_a: f64) -> TripWindow {
        TripWindow {
            earliest_s: (residual_a >= MAY_TRIP_A).then_some(self.trip_s),
            latest_s: longest_s(residual_a),
        }
    }
}

/// The longest time that UL 943 permits at `residual_a`, seconds; `None` below 6 mA, where a device may hold forever.
/// Above 264 mA it stays at what the formula ends with.
pub fn longest_s(residual_a: f64) -> Option<f64> {
    let milliamps = residual_a * 1000.0;
    let must = residual_a >= MUST_TRIP_A;
    must.then(|| portable::power(20.0 / milliamps.min(FORMULA_TO_MA), 1.43))
}

/// The residual current: what doesn't come back through the window, from the currents of all conductors in it, one direction positive, amps.
pub fn residual(through: impl IntoIterator<Item = Complex>) -> Complex {
    through.into_iter().sum()
}

/// Whether a load-side path from neutral to ground is seen without any load on: its loop through neutral and ground has `loop_ohm`.
pub fn sees_grounded_neutral(loop_ohm: f64) -> bool {
    loop_ohm <= GROUNDED_NEUTRAL_OHM
}

#[cfg(test)]
mod tests {
    use super::*;

    fn astray_a(amps: &[f64]) -> f64 {
        let through = amps.iter().map(|a| Complex::new(*a, 0.0));
        portable::magnitude(residual(through))
    }

    #[test]
    fn below_four_milliamps_none_trips_and_from_six_on_each_does() {
        let window = Gfci::USUAL.trip_window(0.0039);
        assert_eq!((window.earliest_s, window.latest_s), (None, None));
        let between = Gfci::USUAL.trip_window(0.005);
        assert!(between.earliest_s.is_some() && between.latest_s.is_none());
        assert!(Gfci::USUAL.seconds_to_trip(0.0049).is_none());
        for milliamps in [6.0, 10.0, 100.0, 264.0, 5000.0] {
            let longest = longest_s(milliamps / 1000.0).unwrap();
            let usual = Gfci::USUAL.seconds_to_trip(milliamps / 1000.0).unwrap();
            assert!(usual <= longest, "{milliamps} mA: {usual} s, {longest} s");
        }
    }

    #[test]
    fn more_residual_current_never_gets_more_time() {
        let mut before = f64::INFINITY;
        for tenth in 60..6000_i32 {
            let longest = longest_s(f64::from(tenth) / 10_000.0).unwrap();
            assert!(longest <= before, "{tenth}");
            before = longest;
        }
    }

    #[test]
    fn a_body_from_hot_to_neutral_leaves_no_residual() {
        let load = 8.0;
        let body = 0.12;
        let astray = astray_a(&[load + body, -(load + body)]);
        assert!(Gfci::USUAL.seconds_to_trip(astray).is_none(), "{astray}");
        let to_ground = astray_a(&[load + body, -load]);
        assert!((to_ground - body).abs() < 1e-12);
        assert!(Gfci::USUAL.seconds_to_trip(to_ground).is_some());
    }

    #[test]
    fn unequal_legs_of_a_four_wire_outlet_leave_no_residual() {
        let astray = astray_a(&[12.0, -5.0, -7.0]);
        assert!(astray < 1e-12, "{astray}");
    }

    #[test]
    fn a_short_loop_of_neutral_and_ground_is_seen_without_load_and_a_long_one_is_not() {
        assert!(sees_grounded_neutral(0.1) && !sees_grounded_neutral(25.0));
    }
}
