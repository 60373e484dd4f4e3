//! A house battery that makes its own grid: it opens its switch to the utility when that fails, and feeds the house by itself.
//!
//! Energy changes at a constant rate while the power is constant, so any stretch is in closed form and may be cut anywhere.
//! Volts are held until its inverter's watts are used up: then it lasts seconds, or shuts off at once.
//! Full, it raises its frequency, so that a solar inverter beside it leaves, and keeps it raised until it has room again; common practice, no source.
//! Figures are typical, from memory, with the range that is met.
//! Accuracy: rounding only against a sum of small steps; the true efficiency varies with the load by a few percent.
//! Not covered: ageing, cold, cell voltages, reactive power, several batteries.

use super::interconnection::Profile;

/// A battery with its inverter and its own transfer.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Battery {
    /// Energy between empty and full, watt-hours.
    pub capacity_wh: f64,
    /// Share of it below which the inverter shuts off.
    pub shut_off_share: f64,
    /// Watts for hours.
    pub continuous_w: f64,
    /// Watts for the seconds of a motor's start.
    pub surge_w: f64,
    /// Seconds that it stands its surge watts.
    pub surge_s: f64,
    /// Watts at which it charges from the utility.
    pub charge_w: f64,
    /// Watts of its own electronics.
    pub idle_w: f64,
    /// Share of the energy that arrives, one way.
    pub efficiency: f64,
    /// Rated volts between the two hots.
    pub rated_v: f64,
    /// Frequency that it makes while it has room, hertz.
    pub rated_hz: f64,
    /// Seconds from the loss of the utility to its own volts.
    pub transfer_s: f64,
    /// The rules by which it leaves the utility and comes back.
    pub profile: Profile,
}

/// Share of the capacity at which it raises its frequency.
const FULL_SHARE: f64 = 0.98;
/// Share of the capacity below which it lowers it again.
const ROOM_SHARE: f64 = 0.90;
/// Frequency while it is raised, hertz: past what makes every solar inverter leave.
const RAISED_HZ: f64 = 62.5;
/// Seconds in which its bridge protects itself above its surge watts.
const BRIDGE_S: f64 = 0.02;

impl Battery {
    /// A typical house battery.
    ///
    /// From memory, with the range met: 10–14 kWh, 5–10 kW, surge 1.2–2 times for up to 10 s, 88–92 % there and back, transfer in 20–500 ms.
    pub fn typical() -> Self {
        Self {
            capacity_wh: 13_000.0,
            shut_off_share: 0.05,
            continuous_w: 5000.0,
            surge_w: 7500.0,
            surge_s: 10.0,
            charge_w: 3300.0,
            idle_w: 40.0,
            efficiency: 0.95,
            rated_v: 240.0,
            rated_hz: 60.0,
            transfer_s: 0.1,
            profile: Profile::CategoryIII,
        }
    }

    /// Watt-hours left `seconds` after `energy_wh`, while `watts` go out of its terminals; negative watts charge it.
    /// Not below empty and not above full.
    pub fn energy_after(&self, energy_wh: f64, watts: f64, seconds: f64) -> f64 {
        let after = energy_wh - self.drain_w(watts) * seconds / 3600.0;
        after.clamp(0.0, self.capacity_wh)
    }

    /// Watts that leave its cells while `watts` go out of its terminals.
    pub fn drain_w(&self, watts: f64) -> f64 {
        let cells = if watts >= 0.0 {
            watts / self.efficiency
        } else {
            watts * self.efficiency
        };
        cells + self.idle_w
    }

    /// Seconds until a level is reached at these watts; `None` if it moves away from it or stays.
    pub fn seconds_to(&self, level_wh: f64, energy_wh: f64, watts: f64) -> Option<f64> {
        let seconds = (energy_wh - level_wh) * 3600.0 / self.drain_w(watts);
        (seconds.is_finite() && seconds > 0.0).then_some(seconds)
    }

    /// Watt-hours below which it shuts off.
    pub fn shut_off_wh(&self) -> f64 {
        self.shut_off_share * self.capacity_wh
    }

    /// Seconds until its inverter shuts off under a steady load; `None` if it carries it.
    /// The energy above its rating is what it can stand, so the nearer to the rating, the longer.
    pub fn seconds_to_shut_off(&self, watts: f64) -> Option<f64> {
        if watts <= self.continuous_w {
            None
        } else if watts <= self.surge_w {
            let spare = self.surge_s * (self.surge_w - self.continuous_w);
            Some(spare / (watts - self.continuous_w))
        } else {
            Some(BRIDGE_S)
        }
    }

    /// Whether its frequency is raised at this energy, if it `was_raised` before.
    pub fn raised(&self, energy_wh: f64, was_raised: bool) -> bool {
        let share = if was_raised { ROOM_SHARE } else { FULL_SHARE };
        energy_wh >= share * self.capacity_wh
    }

    /// Watt-hours at which that changes.
    pub fn raising_wh(&self, was_raised: bool) -> f64 {
        let share = if was_raised { ROOM_SHARE } else { FULL_SHARE };
        share * self.capacity_wh
    }

    /// The frequency that it makes while it feeds the house alone, hertz.
    pub fn hz(&self, raised: bool) -> f64 {
        if raised { RAISED_HZ } else { self.rated_hz }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::apparatus::interconnection::Grid;

    #[test]
    fn energy_that_goes_in_and_comes_out_again_is_less_than_what_was_paid() {
        let battery = Battery {
            idle_w: 0.0,
            ..Battery::typical()
        };
        let start = 6000.0;
        let charged = battery.energy_after(start, -2000.0, 3600.0);
        let seconds = battery.seconds_to(start, charged, 2000.0).unwrap();
        let back = seconds / 3600.0;
        assert!(
            (back - 0.95 * 0.95).abs() < 1e-9,
            "{back} of what was put in"
        );
    }

    #[test]
    fn any_cut_of_a_stretch_ends_where_the_whole_does() {
        let battery = Battery::typical();
        for watts in [-3000.0, 0.0, 700.0, 4800.0] {
            let whole = battery.energy_after(7000.0, watts, 3000.0);
            let mut steps = 7000.0;
            for _ in 0..3000 {
                steps = battery.energy_after(steps, watts, 1.0);
            }
            assert!(
                (whole - steps).abs() < 1e-7,
                "{watts} W: {whole} Wh, in steps {steps} Wh"
            );
        }
    }

    #[test]
    fn the_level_is_reached_at_the_computed_instant() {
        let battery = Battery::typical();
        let seconds = battery
            .seconds_to(battery.shut_off_wh(), 6000.0, 1500.0)
            .unwrap();
        let then = battery.energy_after(6000.0, 1500.0, seconds);
        assert!((then - battery.shut_off_wh()).abs() < 1e-9, "{then} Wh");
        assert!(battery.seconds_to(1350.0, 900.0, -2000.0).is_some());
        assert!(
            battery
                .seconds_to(battery.shut_off_wh(), 600.0, 1500.0)
                .is_none(),
            "below it already"
        );
        assert!(
            battery.seconds_to(9000.0, 6000.0, 1500.0).is_none(),
            "moves away from it"
        );
    }

    #[test]
    fn it_is_never_emptier_than_empty_nor_fuller_than_full() {
        let battery = Battery::typical();
        assert!(battery.energy_after(100.0, 5000.0, 9000.0).abs() < 1e-12);
        let full = battery.energy_after(12_900.0, -3300.0, 9000.0);
        assert!((full - battery.capacity_wh).abs() < 1e-12);
    }

    #[test]
    fn its_rating_is_carried_and_more_load_never_lasts_longer() {
        let battery = Battery::typical();
        assert!(battery.seconds_to_shut_off(battery.continuous_w).is_none());
        let mut before = f64::INFINITY;
        for hundred in 51..120_i32 {
            let seconds = battery
                .seconds_to_shut_off(f64::from(hundred) * 100.0)
                .unwrap();
            assert!(
                seconds <= before && seconds > 0.0,
                "{hundred}00 W: {seconds} s"
            );
            before = seconds;
        }
        assert!((battery.seconds_to_shut_off(battery.surge_w).unwrap() - 10.0).abs() < 1e-12);
    }

    #[test]
    fn full_it_drives_a_solar_inverter_off_by_its_frequency_until_it_has_room_again() {
        let battery = Battery::typical();
        let grid = |raised| Grid {
            v_pu: 1.0,
            hz: battery.hz(raised),
        };
        let (full, room) = (battery.raising_wh(false), battery.raising_wh(true));
        assert!(room < full);
        assert!(!battery.raised(full - 1.0, false) && battery.raised(full, false));
        assert!(battery.raised(room, true) && !battery.raised(room - 1.0, true));
        assert!(battery.profile.comes_back().fits(grid(false)));
        for profile in [Profile::CategoryIII, Profile::Before2018] {
            assert_eq!(profile.clearing_s(grid(true)), Some(0.16), "{profile:?}");
        }
    }
}
