//! Heat that opens a device: the inverse-time law that breakers and fuses share.
//!
//! An element warms as *dh/dt* = (*i*² - *h*)/τ, where *i* is the current as a multiple of the rating and *h* the heat as a multiple of what the rating itself settles at.
//! It opens at a heat of its own, and at once from a multiple of its own upwards.
//! Holds for steady RMS current; a motor's start or a stretch with another current is a stretch of its own.
//! Not covered: the shape of one cycle, let-through energy, a second time constant of the case.
//! Accuracy: exact for this law; how near the law comes to a device is said where its constants are.

use crate::units::portable;

/// When a device that meets its standard may open at a steady current.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TripWindow {
    /// Seconds until the quickest device opens; `None` if even that one holds.
    pub earliest_s: Option<f64>,
    /// Seconds until the slowest device opens; `None` if that one holds.
    pub latest_s: Option<f64>,
}

/// One member of a family of devices.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct InverseTime {
    /// Heat that opens it.
    pub(super) trip_heat: f64,
    /// Its time constant, seconds.
    pub(super) tau_s: f64,
    /// Multiple of the rating from which it opens at once.
    pub(super) at_once: f64,
    /// Seconds that opening at once takes, the arc included.
    pub(super) at_once_s: f64,
}

impl InverseTime {
    /// Heat after `seconds` at a multiple of the rating.
    pub(super) fn heat_after(&self, heat: f64, multiple: f64, seconds: f64) -> f64 {
        let rate = 1.0 / self.tau_s;
        portable::first_order(heat, multiple * multiple * rate, rate, seconds)
    }

    /// Seconds until it opens; `None` if it holds.
    pub(super) fn seconds_to_trip(&self, heat: f64, multiple: f64) -> Option<f64> {
        let at_once = (multiple >= self.at_once).then_some(self.at_once_s);
        let settled = multiple * multiple;
        let by_heat = if heat >= self.trip_heat {
            Some(0.0)
        } else if settled > self.trip_heat {
            Some(self.tau_s * portable::ln((settled - heat) / (settled - self.trip_heat)))
        } else {
            None
        };
        match (at_once, by_heat) {
            (Some(a), Some(b)) => Some(a.min(b)),
            (a, b) => a.or(b),
        }
    }

    /// Seconds without current until its heat has fallen from `heat` to `to`, above 0.
    pub(super) fn seconds_to_cool(&self, heat: f64, to: f64) -> f64 {
        if heat <= to {
            0.0
        } else {
            self.tau_s * portable::ln(heat / to)
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const DEVICE: InverseTime = InverseTime {
        trip_heat: 1.44,
        tau_s: 100.0,
        at_once: 10.0,
        at_once_s: 0.016,
    };

    #[test]
    fn it_opens_at_its_heat_and_cools_back_in_the_computed_time() {
        let seconds = DEVICE.seconds_to_trip(0.5, 2.0).unwrap();
        let heat = DEVICE.heat_after(0.5, 2.0, seconds);
        assert!((heat - 1.44).abs() < 1e-12, "{heat}");
        let cooled = DEVICE.heat_after(heat, 0.0, DEVICE.seconds_to_cool(heat, 0.9));
        assert!((cooled - 0.9).abs() < 1e-12, "{cooled}");
    }

    #[test]
    fn in_parts_it_warms_as_in_one_stretch() {
        let parts = DEVICE.heat_after(DEVICE.heat_after(0.3, 1.1, 40.0), 1.1, 60.0);
        let whole = DEVICE.heat_after(0.3, 1.1, 100.0);
        assert!((parts - whole).abs() < 1e-14, "{parts} and {whole}");
    }
}
