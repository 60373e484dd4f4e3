//! How far a set's voltage is from a clean sine at 60 Hz, and what that does to what hangs on it.
//!
//! Total harmonic distortion is data of the set: household sets with a plain winding are met from 5 to 25 %, inverters below 3 % (from memory, makers' figures).
//! What follows here is arithmetic on it: heat in windings, clocks that run fast, a battery backup that refuses the supply.
//! Not covered: the shape itself, crest factor, flicker, what the loads' own currents add to the distortion.

/// The voltage as its user sees it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Waveform {
    /// Hertz.
    pub hz: f64,
    /// Total harmonic distortion of the voltage, percent of the fundamental.
    pub distortion_pct: f64,
}

/// Distortion up to which the utility's own voltage may go, percent; IEEE 519-2014 at 1 kV and below, from memory.
pub const UTILITY_LIMIT_PCT: f64 = 8.0;
/// Hertz off 60 beyond which a battery backup stays on its battery; makers' figures, from memory, 3 and 5 Hz are met.
const BACKUP_HZ: f64 = 3.0;
/// Distortion beyond which a battery backup stays on its battery, percent; from memory, 8 to 15 are met.
const BACKUP_PCT: f64 = 10.0;
/// Nominal frequency, hertz.
pub const NOMINAL_HZ: f64 = 60.0;

impl Waveform {
    /// Heat in a winding's copper as a multiple of what a clean wave of the same fundamental makes.
    /// The square of the effective value is 1 + THD²; skin effect and iron loss, which add to it, are left out.
    pub fn copper_heat(&self) -> f64 {
        let share = self.distortion_pct / 100.0;
        1.0 + share * share
    }

    /// Seconds that a clock which counts cycles gains in an hour; negative if it loses.
    pub fn clock_gain_s_per_h(&self) -> f64 {
        (self.hz / NOMINAL_HZ - 1.0) * 3600.0
    }

    /// Whether a battery backup takes it as a supply.
    pub fn backup_accepts(&self) -> bool {
        (self.hz - NOMINAL_HZ).abs() <= BACKUP_HZ && self.distortion_pct <= BACKUP_PCT
    }

    /// Whether it is as clean as the utility's own has to be.
    pub fn clean(&self) -> bool {
        self.distortion_pct <= UTILITY_LIMIT_PCT
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_clean_wave_at_sixty_hertz_harms_nothing() {
        let utility = Waveform {
            hz: 60.0,
            distortion_pct: 0.0,
        };
        assert!((utility.copper_heat() - 1.0).abs() < 1e-15);
        assert!(utility.clock_gain_s_per_h().abs() < 1e-12);
        assert!(utility.backup_accepts() && utility.clean());
    }

    #[test]
    fn an_unloaded_plain_set_is_refused_by_a_backup_and_makes_clocks_run_fast() {
        let set = Waveform {
            hz: 62.5,
            distortion_pct: 15.0,
        };
        assert!(!set.backup_accepts() && !set.clean());
        assert!(
            (set.clock_gain_s_per_h() - 150.0).abs() < 1e-9,
            "2.5 minutes an hour"
        );
        assert!((set.copper_heat() - 1.0225).abs() < 1e-12);
        let slow = Waveform { hz: 50.0, ..set };
        assert!(slow.clock_gain_s_per_h() < 0.0);
    }
}
