//! The set of the plain kind: an engine on a governor turns a wound machine whose field a regulator feeds.
//!
//! Its voltage when a motor starts, its speed under load, when it stalls, how much it carries cold, and its idle control.
//! Voltage after a step: behind the transient reactance the EMF stands where it was, then the regulator drives the field to its ceiling and the EMF rises towards that with one time constant, until the voltage is back.
//! That is the closed form of a first-order field; the machine's subtransient and the regulator's overshoot are left out, so a dip of the first cycles is a little deeper and the end a little rounder than here.
//! All figures are typical for household sets, from memory, with the range they are met in.
//! Integration error: none but rounding, since the law is solved exactly; a test holds it against a fine step-by-step solution.

use crate::units::Complex;
use crate::units::portable;

/// What only a set of the plain kind has.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Conventional {
    /// Time constant of the field under load, seconds; 0.2 to 1 is met.
    pub field_s: f64,
    /// Total harmonic distortion of the voltage, percent; 5 to 25 is met.
    pub distortion_pct: f64,
    /// Its idle control, if it has one and it is on.
    pub idle: Option<IdleDown>,
}

/// Slows the engine while nothing draws.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct IdleDown {
    /// Frequency at the slow speed, hertz; 35 to 45 is met.
    pub hz: f64,
    /// Seconds without load until it slows.
    pub after_s: f64,
    /// Seconds back to full speed once something draws.
    pub rise_s: f64,
}

impl IdleDown {
    /// The usual one.
    pub const USUAL: Self = Self {
        hz: 42.0,
        after_s: 5.0,
        rise_s: 2.0,
    };

    /// What is burned slow without load, as a share of what is burned at full speed without load: friction goes about with speed.
    pub fn fuel_share(&self, full_hz: f64) -> f64 {
        self.hz / full_hz
    }
}

/// A step of load on a machine behind its transient impedance.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LoadStep {
    /// Impedance between EMF and terminals, ohms.
    pub source: Complex,
    /// Admittance of what was on before, siemens.
    pub before: Complex,
    /// Admittance of all that is on after, siemens.
    pub after: Complex,
    /// Volts that the regulator holds.
    pub set_v: f64,
    /// The EMF at the field's ceiling, volts.
    pub emf_max_v: f64,
    /// Time constant of the field, seconds.
    pub field_s: f64,
}

impl LoadStep {
    /// Volts in the first moment: the EMF stands where it was.
    pub fn least_v(&self) -> f64 {
        self.volts_of(self.emf_before_v())
    }

    /// Volts `seconds` after the step.
    pub fn volts_at(&self, seconds: f64) -> f64 {
        let start = self.emf_before_v();
        let needed = self.emf_needed_v(self.after);
        let emf = if needed <= start {
            // Load went off: the regulator lets the field fall towards what is needed.
            portable::first_order(start, needed / self.field_s, 1.0 / self.field_s, seconds)
        } else {
            let rate = 1.0 / self.field_s;
            portable::first_order(start, self.emf_max_v * rate, rate, seconds).min(needed)
        };
        self.volts_of(emf)
    }

    /// Seconds until the voltage is back; `None` if the field can't bring it back.
    pub fn recovery_s(&self) -> Option<f64> {
        let start = self.emf_before_v();
        let needed = self.emf_needed_v(self.after);
        if needed <= start {
            return Some(0.0);
        }
        (needed < self.emf_max_v).then(|| {
            self.field_s * portable::ln((self.emf_max_v - start) / (self.emf_max_v - needed))
        })
    }

    /// Volts where it settles.
    pub fn settled_v(&self) -> f64 {
        self.volts_of(self.emf_needed_v(self.after).min(self.emf_max_v))
    }

    fn emf_before_v(&self) -> f64 {
        self.emf_needed_v(self.before).min(self.emf_max_v)
    }

    fn emf_needed_v(&self, load: Complex) -> f64 {
        self.set_v * portable::magnitude(Complex::ONE + self.source * load)
    }

    fn volts_of(&self, emf_v: f64) -> f64 {
        emf_v / portable::magnitude(Complex::ONE + self.source * self.after)
    }
}

/// Seconds until an engine of these rated and surge watts stalls under a steady load of `watts`; `None` if it carries them.
///
/// Assumption: at its surge watts it lasts ten seconds, and longer in proportion the nearer the load is to its rating.
/// Above its surge watts the flywheel alone covers the difference, so it slows to 70 % of its speed, where it stalls, in a second at most.
pub fn seconds_to_stall(rated_w: f64, surge_w: f64, watts: f64) -> Option<f64> {
    if watts <= rated_w {
        None
    } else if watts <= surge_w {
        Some(SURGE_S * (surge_w - rated_w) / (watts - rated_w))
    } else {
        let flywheel_j = FLYWHEEL_S * rated_w * (1.0 - STALL_SPEED * STALL_SPEED);
        Some((flywheel_j / (watts - surge_w)).min(LONGEST_STALL_S))
    }
}

/// Share of its power that an engine has `seconds` after a cold start that takes `warmup_s` to warm up: from 75 % in a straight line.
/// Common practice, no source: a cold engine on its choke stumbles under a load that it carries warm.
pub fn warm_share(seconds: f64, warmup_s: f64) -> f64 {
    if seconds >= warmup_s {
        1.0
    } else {
        COLD_SHARE + (1.0 - COLD_SHARE) * (seconds.max(0.0) / warmup_s)
    }
}

/// Seconds that a set stands its surge watts.
const SURGE_S: f64 = 10.0;
/// Energy in the flywheel at full speed, as seconds of rated power; from memory, 0.4 to 1.2.
pub const FLYWHEEL_S: f64 = 0.8;
/// Share of full speed at which the engine dies.
const STALL_SPEED: f64 = 0.7;
/// Longest time above the surge watts, seconds.
const LONGEST_STALL_S: f64 = 1.0;
/// Share of its power that a cold engine has.
const COLD_SHARE: f64 = 0.75;

#[cfg(test)]
mod tests {
    use super::*;

    /// A 7.2 kW set with 1.2 kW on, and a motor of 40 kVA-per-unit standstill current coming on.
    fn step(motor_s: Complex) -> LoadStep {
        LoadStep {
            source: Complex::new(0.24, 2.0),
            before: Complex::new(1200.0 / 57_600.0, 0.0),
            after: Complex::new(1200.0 / 57_600.0, 0.0) + motor_s,
            set_v: 240.0,
            emf_max_v: 360.0,
            field_s: 0.5,
        }
    }

    fn motor() -> Complex {
        // 40 A at 240 V and a power factor of 0.7.
        Complex::new(0.7, -0.714) * (40.0 / 240.0)
    }

    #[test]
    fn a_motor_start_dips_the_voltage_at_once_and_the_field_brings_it_back() {
        let step = step(motor());
        let dip = step.least_v();
        assert!((150.0..230.0).contains(&dip), "{dip} V");
        assert!((step.volts_at(0.0) - dip).abs() < 1e-9);
        let back = step.recovery_s().unwrap();
        assert!((0.05..1.5).contains(&back), "{back} s");
        assert!((step.volts_at(back) - 240.0).abs() < 1e-6);
        assert!(
            (step.volts_at(back + 5.0) - 240.0).abs() < 1e-9,
            "and holds it there"
        );
        assert!(step.volts_at(0.5 * back) < 240.0);
    }

    #[test]
    fn a_load_beyond_the_field_never_comes_back() {
        let step = step(motor() * 4.0);
        assert_eq!(step.recovery_s(), None);
        assert!(step.settled_v() < 230.0, "{} V", step.settled_v());
        assert!((step.volts_at(60.0) - step.settled_v()).abs() < 1e-9);
    }

    #[test]
    fn load_thrown_off_swells_the_voltage_until_the_field_has_fallen() {
        let off = LoadStep {
            before: motor(),
            after: Complex::ZERO,
            ..step(Complex::ZERO)
        };
        assert!(off.least_v() > 245.0, "{} V", off.least_v());
        assert!((off.volts_at(10.0) - 240.0).abs() < 1e-4);
    }

    #[test]
    fn the_closed_form_is_the_fine_solution_of_the_field() {
        const STEPS: u32 = 200_000;
        let step = step(motor());
        let until = 0.8 * step.recovery_s().unwrap();
        let dt = until / f64::from(STEPS);
        let mut emf = step.emf_before_v();
        for _ in 0..STEPS {
            // Midpoint rule.
            let half = emf + 0.5 * dt * (step.emf_max_v - emf) / step.field_s;
            emf += dt * (step.emf_max_v - half) / step.field_s;
        }
        let fine = step.volts_of(emf);
        assert!((fine - step.volts_at(until)).abs() < 1e-8, "{fine} V");
    }

    #[test]
    fn the_rating_is_carried_and_more_load_never_lasts_longer() {
        let (rated, surge) = (7200.0, 9000.0);
        assert_eq!(seconds_to_stall(rated, surge, rated), None);
        let mut before = f64::INFINITY;
        for hundred in 73..400_i32 {
            let watts = f64::from(hundred) * 100.0;
            let seconds = seconds_to_stall(rated, surge, watts).unwrap();
            assert!(
                seconds <= before && seconds > 0.0,
                "{watts} W: {seconds} s after {before} s"
            );
            before = seconds;
        }
        assert!((seconds_to_stall(rated, surge, surge).unwrap() - 10.0).abs() < 1e-12);
        assert!(
            seconds_to_stall(rated, surge, surge + 1.0).unwrap() <= 1.0,
            "above the surge it stalls within a second"
        );
    }

    #[test]
    fn beyond_its_surge_the_flywheel_gives_one_store_of_energy_and_no_more() {
        let (rated, surge) = (7200.0, 9000.0);
        let given_j = |watts: f64| seconds_to_stall(rated, surge, watts).unwrap() * (watts - surge);
        let (twice, thrice) = (given_j(2.0 * surge), given_j(3.0 * surge));
        assert!(
            (twice - thrice).abs() < 1e-9,
            "{twice} J against {thrice} J"
        );
        // Half of the energy in a flywheel that holds 0.4 to 1.2 s of rated power is gone at 70 % of its speed.
        let seconds = twice / rated;
        assert!(
            (0.2..=0.62).contains(&seconds),
            "{seconds} s of rated power"
        );
    }

    #[test]
    fn a_cold_engine_gains_power_until_it_is_warm() {
        assert!((warm_share(0.0, 120.0) - 0.75).abs() < 1e-12);
        assert!((warm_share(60.0, 120.0) - 0.875).abs() < 1e-12);
        assert!((warm_share(120.0, 120.0) - 1.0).abs() < 1e-12);
        assert!((warm_share(0.0, 0.0) - 1.0).abs() < 1e-12, "needs none");
    }
}
