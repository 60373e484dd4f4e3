//! The inverter set: an engine at any speed charges a direct-current bus, and electronics make the 60 Hz from it.
//!
//! The voltage is held exactly until the current reaches a limit; then it sags, and after a time the electronics shut their output off and wait for a hand on the reset.
//! The engine runs on meanwhile, and it never stalls: the electronics let go first.
//! Two equal sets can be joined by the kit that is listed for them; both running, they carry twice the current, one alone carries its own.
//! Times and limits are typical, from memory, with the range they are met in; makers state them rarely.
//! Not covered: the bus's own dynamics, unequal sharing, a set whose engine is caught at its slow speed by a sudden load (the sag is told, the engine recovers).

/// What only an inverter set has.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Inverter {
    /// Seconds that it stands its surge watts before it shuts off; 5 to 20 is met.
    pub surge_s: f64,
    /// Seconds at the current limit, with the voltage sagging, before it shuts off; 0.1 to 1 is met.
    pub limit_s: f64,
    /// Total harmonic distortion of the voltage, percent; below 3 is met.
    pub distortion_pct: f64,
    /// Whether the engine slows with the load.
    pub eco: bool,
}

/// Share of the fuel at full speed without load that is burned at the slow speed; from memory, 0.4 to 0.7.
pub const ECO_IDLE_SHARE: f64 = 0.55;

impl Inverter {
    /// The usual electronics.
    pub const USUAL: Self = Self {
        surge_s: 10.0,
        limit_s: 0.3,
        distortion_pct: 2.0,
        eco: true,
    };

    /// Seconds until the output shuts off while `watts` are asked of a set of these rated and surge watts; `None` if it carries them.
    /// At its surge watts it lasts `surge_s`, longer in proportion the nearer the load is to its rating; above, the limit holds the current for `limit_s`.
    pub fn seconds_to_shut_off(&self, rated_w: f64, surge_w: f64, watts: f64) -> Option<f64> {
        if watts <= rated_w {
            None
        } else if watts <= surge_w {
            Some((self.surge_s * (surge_w - rated_w) / (watts - rated_w)).max(self.limit_s))
        } else {
            Some(self.limit_s)
        }
    }

    /// What is burned at a share of the rated load, as a share of what the same engine burns there at full speed.
    /// Slow without load, at full speed from rated load on, and in a straight line between.
    pub fn fuel_share(&self, load_share: f64) -> f64 {
        if self.eco {
            ECO_IDLE_SHARE + (1.0 - ECO_IDLE_SHARE) * load_share.clamp(0.0, 1.0)
        } else {
            1.0
        }
    }
}

/// How many times its own current and power a pair gives, with this many of its sets running and joined by the kit.
pub fn parallel_times(running: u8) -> f64 {
    f64::from(running.min(MOST_IN_PARALLEL))
}

/// Sets that a kit joins.
pub const MOST_IN_PARALLEL: u8 = 2;

#[cfg(test)]
mod tests {
    use super::*;

    const RATED_W: f64 = 3200.0;
    const SURGE_W: f64 = 4000.0;

    #[test]
    fn the_rating_is_carried_and_more_load_never_lasts_longer() {
        let inverter = Inverter::USUAL;
        let seconds = |watts| inverter.seconds_to_shut_off(RATED_W, SURGE_W, watts);
        assert_eq!(seconds(RATED_W), None);
        let mut before = f64::INFINITY;
        for fifty in 65..200_i32 {
            let now = seconds(f64::from(fifty) * 50.0).unwrap();
            assert!(now <= before && now >= 0.3, "{now} s after {before} s");
            before = now;
        }
        assert!((seconds(SURGE_W).unwrap() - 10.0).abs() < 1e-12);
        assert!((seconds(9000.0).unwrap() - 0.3).abs() < 1e-12);
    }

    #[test]
    fn the_slow_engine_saves_most_where_the_load_is_least() {
        let eco = Inverter::USUAL;
        assert!(eco.fuel_share(0.0) < eco.fuel_share(0.5));
        assert!((eco.fuel_share(1.0) - 1.0).abs() < 1e-12);
        let full = Inverter { eco: false, ..eco };
        assert!((full.fuel_share(0.0) - 1.0).abs() < 1e-12);
    }

    #[test]
    fn a_pair_gives_twice_and_one_alone_its_own() {
        assert!((parallel_times(1) - 1.0).abs() < 1e-12);
        assert!((parallel_times(2) - 2.0).abs() < 1e-12);
        assert!(parallel_times(0).abs() < 1e-12);
        assert!(
            (parallel_times(3) - 2.0).abs() < 1e-12,
            "no kit joins three"
        );
    }
}
