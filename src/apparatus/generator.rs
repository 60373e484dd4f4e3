//! A portable generator of the conventional kind: one winding of 240 V with its middle brought out, an engine on a governor.
//!
//! What it is behind its terminals, how its speed sags under load, what it burns, how long it stands an overload, and how long its exhaust stays hot.
//! Makers publish few of these figures for household sets: all but volts, watts and amps here are typical values from memory, with the range they are met in.
//! So an answer that hangs on them is shown as a range.
//! Not covered: waveform distortion, the voltage regulator's dynamics, altitude and heat derating, inverter sets.

use crate::units::Complex;
use crate::units::portable;

/// What a conventional set is made of.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GeneratorSpec {
    /// Watts that it delivers for hours.
    pub rated_w: f64,
    /// Watts that it delivers for the seconds of a motor's start.
    pub surge_w: f64,
    /// Rated volts between the two hots.
    pub rated_v: f64,
    /// Volts that the regulator holds between the two hots while it can.
    pub set_v: f64,
    /// Reactance of the first cycles, per unit on rated watts and volts.
    pub x_subtransient_pu: f64,
    /// Reactance after the first cycles, per unit.
    pub x_transient_pu: f64,
    /// Winding resistance, per unit.
    pub r_pu: f64,
    /// Most EMF that the field can make, per unit of rated volts.
    pub field_max_pu: f64,
    /// Rating of the main breaker on the set, amps.
    pub main_breaker_a: f64,
    /// Seconds to run unloaded after the start.
    pub warmup_s: f64,
    /// Seconds to run unloaded before the stop.
    pub cooldown_s: f64,
    /// Fuel that the tank holds, US gallons.
    pub tank_gal: f64,
    /// Gasoline burned without load, US gallons per hour.
    pub idle_gal_per_h: f64,
    /// Gasoline burned at rated load, US gallons per hour.
    pub full_gal_per_h: f64,
    /// Frequency without load, hertz.
    pub no_load_hz: f64,
    /// Frequency at rated load, hertz.
    pub full_load_hz: f64,
}

/// Which reactance stands between a set's EMF and its terminals.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Reactance {
    /// For the first few cycles of a change.
    Subtransient,
    /// For the second or so after that, as in a motor's start.
    Transient,
}

impl GeneratorSpec {
    /// A typical household set of these rated and surge watts, with a 30 A outlet for the house.
    ///
    /// From memory, with the range met: x'' 0.10–0.20 and x' 0.20–0.30 pu; field ceiling 1.3–1.8 pu; 62–63 Hz without load and 58.5–60 Hz at full; fuel 0.06–0.08 gal/h per rated kW idling and 0.13–0.17 at full load.
    /// Warm-up and cool-down of a few minutes are common practice.
    pub fn conventional(rated_w: f64, surge_w: f64) -> Self {
        Self {
            rated_w,
            surge_w,
            rated_v: 240.0,
            set_v: 240.0,
            x_subtransient_pu: 0.15,
            x_transient_pu: 0.25,
            r_pu: 0.03,
            field_max_pu: 1.5,
            main_breaker_a: 30.0,
            warmup_s: 120.0,
            cooldown_s: 180.0,
            tank_gal: 7.0,
            idle_gal_per_h: 0.065 * rated_w / 1000.0,
            full_gal_per_h: 0.15 * rated_w / 1000.0,
            no_load_hz: 62.5,
            full_load_hz: 59.5,
        }
    }

    /// Rated amps at full volts and a power factor of one.
    pub fn rated_a(&self) -> f64 {
        self.rated_w / self.rated_v
    }

    /// Impedance between the EMF and the two hots, ohms; each half of the winding has half of it.
    pub fn impedance(&self, which: Reactance) -> Complex {
        let x_pu = match which {
            Reactance::Subtransient => self.x_subtransient_pu,
            Reactance::Transient => self.x_transient_pu,
        };
        Complex::new(self.r_pu, x_pu) * (self.rated_v * self.rated_v / self.rated_w)
    }

    /// Frequency at a steady load of `load_w` watts, hertz: a straight droop, carried on above the rating.
    pub fn frequency_hz(&self, load_w: f64) -> f64 {
        self.no_load_hz - (self.no_load_hz - self.full_load_hz) * load_w / self.rated_w
    }

    /// Gasoline burned at a steady load of `load_w` watts, US gallons per hour: a straight line from idle to full.
    pub fn fuel_gal_per_h(&self, load_w: f64) -> f64 {
        self.idle_gal_per_h
            + (self.full_gal_per_h - self.idle_gal_per_h) * (load_w / self.rated_w).max(0.0)
    }

    /// Seconds until the engine stalls under a steady load of `watts`; `None` if it carries them.
    ///
    /// Assumption: at its surge watts it lasts ten seconds, and longer in proportion the nearer the load is to its rating.
    /// Above its surge watts the flywheel alone covers the difference, so it slows to 70 % of its speed, where it stalls, in a second at most.
    pub fn seconds_to_stall(&self, watts: f64) -> Option<f64> {
        if watts <= self.rated_w {
            None
        } else if watts <= self.surge_w {
            Some(SURGE_S * (self.surge_w - self.rated_w) / (watts - self.rated_w))
        } else {
            let flywheel_j = FLYWHEEL_S * self.rated_w * (1.0 - STALL_SPEED * STALL_SPEED);
            Some((flywheel_j / (watts - self.surge_w)).min(LONGEST_STALL_S))
        }
    }
}

/// Surface temperature of the muffler `seconds_since_stop` after the engine stopped, °C, on a mild day.
///
/// Assumption: 400 °C at the stop, cooling with a time constant of 400 s, so that it takes the ten to fifteen minutes of common practice to be safe.
pub fn exhaust_c(seconds_since_stop: f64) -> f64 {
    portable::first_order(400.0, 20.0 / 400.0, 1.0 / 400.0, seconds_since_stop)
}

/// Whether spilled gasoline may flash or a hand be burned on the muffler that long after the stop: above 100 °C.
pub fn exhaust_hot(seconds_since_stop: f64) -> bool {
    exhaust_c(seconds_since_stop) > 100.0
}

/// Seconds that a set stands its surge watts.
const SURGE_S: f64 = 10.0;

/// Energy in the flywheel at full speed, as seconds of rated power; from memory, 0.4 to 1.2.
const FLYWHEEL_S: f64 = 0.8;

/// Share of full speed at which the engine dies.
const STALL_SPEED: f64 = 0.7;

/// Longest time above the surge watts, seconds.
const LONGEST_STALL_S: f64 = 1.0;

#[cfg(test)]
mod tests {
    use super::*;

    fn set() -> GeneratorSpec {
        GeneratorSpec::conventional(7200.0, 9000.0)
    }

    #[test]
    fn the_rating_is_carried_and_more_load_never_lasts_longer() {
        let set = set();
        assert!(set.seconds_to_stall(set.rated_w).is_none());
        let mut before = f64::INFINITY;
        for hundred in 73..400_i32 {
            let watts = f64::from(hundred) * 100.0;
            let seconds = set.seconds_to_stall(watts).unwrap();
            assert!(
                seconds <= before && seconds > 0.0,
                "{watts} W: {seconds} s after {before} s"
            );
            before = seconds;
        }
        assert!((set.seconds_to_stall(set.surge_w).unwrap() - 10.0).abs() < 1e-12);
        assert!(
            set.seconds_to_stall(set.surge_w + 1.0).unwrap() <= 1.0,
            "above the surge it stalls within a second"
        );
    }

    #[test]
    fn beyond_its_surge_the_flywheel_gives_one_store_of_energy_and_no_more() {
        let set = set();
        let given_j = |watts: f64| set.seconds_to_stall(watts).unwrap() * (watts - set.surge_w);
        let (twice, thrice) = (given_j(2.0 * set.surge_w), given_j(3.0 * set.surge_w));
        assert!(
            (twice - thrice).abs() < 1e-9,
            "{twice} J against {thrice} J"
        );
        // Half of the energy in a flywheel that holds 0.4 to 1.2 s of rated power is gone at 70 % of its speed.
        let seconds = twice / set.rated_w;
        assert!(
            (0.2..=0.62).contains(&seconds),
            "{seconds} s of rated power"
        );
    }

    #[test]
    fn speed_sags_and_fuel_rises_with_load() {
        let set = set();
        assert!(
            (set.frequency_hz(0.0) - 62.5).abs() < 1e-12
                && (set.frequency_hz(7200.0) - 59.5).abs() < 1e-12
        );
        assert!(set.fuel_gal_per_h(0.0) > 0.0, "idling burns fuel");
        assert!(set.fuel_gal_per_h(7200.0) > set.fuel_gal_per_h(3600.0));
    }

    #[test]
    fn a_tank_lasts_about_as_long_as_such_sets_do() {
        let set = set();
        let hours = set.tank_gal / set.fuel_gal_per_h(0.5 * set.rated_w);
        assert!((7.0..12.0).contains(&hours), "{hours} h at half load");
    }

    #[test]
    fn no_set_makes_more_electricity_than_a_third_of_its_fuel() {
        let set = set();
        let fuel_w = set.fuel_gal_per_h(set.rated_w) * 120_333.0 / 3.412_14;
        let efficiency = set.rated_w / fuel_w;
        assert!(
            (0.12..0.30).contains(&efficiency),
            "efficiency {efficiency} at full load"
        );
    }

    #[test]
    fn the_first_cycles_see_less_reactance_than_the_next_second() {
        let set = set();
        let (first, next) = (
            set.impedance(Reactance::Subtransient),
            set.impedance(Reactance::Transient),
        );
        assert!(first.im < next.im && first.re.to_bits() == next.re.to_bits());
        assert!(
            (first.im - 0.15 * 8.0).abs() < 1e-12,
            "base 240²/7200 = 8 ohm: {first}"
        );
    }

    #[test]
    fn the_exhaust_is_hot_at_the_stop_and_safe_after_a_quarter_of_an_hour() {
        assert!(exhaust_hot(0.0) && exhaust_hot(300.0));
        assert!(!exhaust_hot(900.0), "{} °C", exhaust_c(900.0));
    }
}
