//! The times and thresholds of an automatic transfer controller, its exerciser, and what keeps a set from starting under somebody's hands.
//!
//! All of it is data: a table for small home controllers and one for supplies under NFPA 110.
//! Figures marked checked were read in a copy that quotes a maker's manual or the standard; the rest are typical, from memory.
//! Not covered: load shedding by the controller, signals to other equipment, in-phase monitors.

use crate::units::DrillTime;

/// Times and thresholds of a controller.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Timers {
    /// Volts, per unit, below which the utility counts as lost.
    pub loss_pu: f64,
    /// How long it must be lost before anything is done.
    pub sense: DrillTime,
    /// From the decision to the first turn of the starter.
    pub start_delay: DrillTime,
    /// Longest turn of the starter in one attempt.
    pub crank: DrillTime,
    /// Rest between attempts.
    pub rest: DrillTime,
    /// Attempts before it gives up.
    pub attempts: u8,
    /// How long the set must run before it gets load.
    pub warm_up: DrillTime,
    /// Volts, per unit, that the set must hold before it gets load.
    pub ready_pu: f64,
    /// Hertz that the set must hold before it gets load.
    pub ready_hz: f64,
    /// How long after the warm-up it may fall short of these before the controller gives up.
    pub not_ready: DrillTime,
    /// How long the load hangs on neither side while the contacts go over.
    pub dead_gap: DrillTime,
    /// Volts, per unit, at which the utility counts as back.
    pub back_pu: f64,
    /// How long it must be back before that is believed.
    pub back_sense: DrillTime,
    /// How long the load stays on the set after that.
    pub retransfer_delay: DrillTime,
    /// How long a test carries load at least.
    pub test_at_least: DrillTime,
    /// How long the set runs unloaded before it stops.
    pub cool_down: DrillTime,
}

impl Timers {
    /// A small home controller.
    ///
    /// Lost below 65 % for 10 s, back above 75 % for 15 s, warm-up 5 to 15 s for small units: maker's manual, checked in a copy that quotes it.
    /// Cool-down 1 min: at the short end of the 1 to 10 min met (checked likewise).
    /// Cranking, limits of readiness and a contactor's gap of 0.1 s are typical, from memory.
    pub const HOME: Self = Self {
        loss_pu: 0.65,
        sense: DrillTime::from_secs(10),
        start_delay: DrillTime::ZERO,
        crank: DrillTime::from_secs(15),
        rest: DrillTime::from_secs(10),
        attempts: 5,
        warm_up: DrillTime::from_secs(10),
        ready_pu: 0.9,
        ready_hz: 57.0,
        not_ready: DrillTime::from_secs(60),
        dead_gap: DrillTime::from_millis(100),
        back_pu: 0.75,
        back_sense: DrillTime::from_secs(15),
        retransfer_delay: DrillTime::ZERO,
        test_at_least: DrillTime::ZERO,
        cool_down: DrillTime::from_secs(60),
    };

    /// A supply under NFPA 110.
    ///
    /// Start delay 1 s, return 30 min (bypassed if the set fails), test 20 min under load, cool-down 5 min: checked in a copy that quotes the standard.
    /// Lost below 85 %, back above 90 %, three turns of 15 s with rests of 15 s, ready at 90 % of volts and 95 % of speed: from memory.
    pub const NFPA_110: Self = Self {
        loss_pu: 0.85,
        sense: DrillTime::ZERO,
        start_delay: DrillTime::from_secs(1),
        crank: DrillTime::from_secs(15),
        rest: DrillTime::from_secs(15),
        attempts: 3,
        warm_up: DrillTime::ZERO,
        ready_pu: 0.9,
        ready_hz: 57.0,
        not_ready: DrillTime::from_secs(60),
        dead_gap: DrillTime::from_millis(500),
        back_pu: 0.9,
        back_sense: DrillTime::ZERO,
        retransfer_delay: DrillTime::from_secs(1800),
        test_at_least: DrillTime::from_secs(1200),
        cool_down: DrillTime::from_secs(300),
    };
}

/// Runs the set at fixed times, so that it starts when it is needed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Exerciser {
    /// When it runs first.
    pub first: DrillTime,
    /// How often after that; more than it lasts.
    pub every: DrillTime,
    /// For how long.
    pub lasts: DrillTime,
    /// Least load, percent of the plate; 0 where it runs without load.
    pub least_load_pct: u8,
}

/// An hour.
const HOUR: u64 = 3600;

impl Exerciser {
    /// Weekly, a quarter of an hour, without load: what small home sets are delivered with, from memory; 5 to 20 min are met.
    pub const WEEKLY: Self = Self {
        first: DrillTime::from_secs(7 * 24 * HOUR),
        every: DrillTime::from_secs(7 * 24 * HOUR),
        lasts: DrillTime::from_secs(900),
        least_load_pct: 0,
    };

    /// NFPA 110: monthly, half an hour, at 30 % of the plate at least; checked in a copy that quotes it.
    pub const NFPA_110: Self = Self {
        first: DrillTime::from_secs(30 * 24 * HOUR),
        every: DrillTime::from_secs(30 * 24 * HOUR),
        lasts: DrillTime::from_secs(1800),
        least_load_pct: 30,
    };

    /// When the run begins that is going on at `now`, if one is.
    pub fn running_since(&self, now: DrillTime) -> Option<DrillTime> {
        let begun = self.latest_start(now)?;
        (now < begun + self.lasts).then_some(begun)
    }

    /// When the next run after `now` begins.
    pub fn next_after(&self, now: DrillTime) -> DrillTime {
        self.latest_start(now)
            .map_or(self.first, |begun| begun + self.every)
    }

    fn latest_start(&self, now: DrillTime) -> Option<DrillTime> {
        let gone = now.millis().checked_sub(self.first.millis())?;
        let every = self.every.millis().max(1);
        Some(self.first + DrillTime::from_millis(gone / every * every))
    }
}

/// What keeps a set from starting, and its wires from being live, while somebody works on it.
/// NEC 445.18 asks for a disconnect that locks open and a stop for the engine (checked in a copy that quotes it); the battery is common practice.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct LockOut {
    /// The controller is switched off.
    pub controller_off: bool,
    /// The breaker on the set is open.
    pub breaker_open: bool,
    /// The starter battery is off.
    pub battery_off: bool,
}

impl LockOut {
    /// Whether the engine can turn, by the controller's own decision or by somebody's hand on it.
    /// Off on the controller is one switch that somebody can turn back; only the battery takes the starter its power.
    pub fn can_crank(self) -> bool {
        !self.battery_off
    }

    /// Whether the engine can start by itself, with nobody doing anything.
    pub fn starts_by_itself(self) -> bool {
        !self.controller_off && self.can_crank()
    }

    /// Whether hands may go into the set: nothing starts it, nothing feeds it, and not on one switch alone.
    pub fn safe_for_service(self) -> bool {
        self.controller_off && self.breaker_open && self.battery_off
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_utility_is_back_at_more_than_it_was_lost_at() {
        for timers in [Timers::HOME, Timers::NFPA_110] {
            assert!(
                timers.back_pu > timers.loss_pu,
                "else it would go to and fro"
            );
            assert!(timers.dead_gap > DrillTime::ZERO, "never both");
        }
    }

    #[test]
    fn a_run_begins_at_its_times_and_lasts_as_long_as_it_says() {
        let second = DrillTime::from_secs;
        let weekly = Exerciser {
            first: second(100),
            every: second(1000),
            lasts: second(60),
            least_load_pct: 0,
        };
        assert_eq!(weekly.running_since(second(99)), None);
        assert_eq!(weekly.running_since(second(100)), Some(second(100)));
        assert_eq!(weekly.running_since(second(159)), Some(second(100)));
        assert_eq!(weekly.running_since(second(160)), None);
        assert_eq!(weekly.running_since(second(3110)), Some(second(3100)));
        assert_eq!(weekly.next_after(second(0)), second(100));
        assert_eq!(weekly.next_after(second(100)), second(1100));
        assert_eq!(weekly.next_after(second(1099)), second(1100));
    }

    #[test]
    fn only_all_three_make_it_safe_for_hands() {
        for bits in 0..8_u8 {
            let lock_out = LockOut {
                controller_off: bits & 1 != 0,
                breaker_open: bits & 2 != 0,
                battery_off: bits & 4 != 0,
            };
            assert_eq!(lock_out.safe_for_service(), bits == 7, "{lock_out:?}");
            if lock_out.safe_for_service() {
                assert!(!lock_out.can_crank() && !lock_out.starts_by_itself());
            }
        }
    }
}
