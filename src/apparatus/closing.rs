//! A generator closed onto a live utility out of step: current, torque, volts, and what that does to the set.
//!
//! Two EMFs behind one impedance: the current is their difference over it, and the torque follows from the same picture in closed form.
//! The torque is that of a single-phase machine at the worst instant of the cycle, without resistance: an upper bound, for a shaft that is stiff.
//! Angles are electrical degrees between the EMFs; slip is the difference of their frequencies.
//! Range: any angle, any two EMFs; the first cycles only, for reactance and field change after that.
//! Accuracy: against small steps of the differential equation, torque within 0.1 %; the first crest within 1 % of the worst instant for X/R of 1 or more.
//! Not covered: saturation (more current), shaft resonance (up to twice the torque), the load before closing, damper windings.
//! Source of the crest: IEC 60909-0, peak factor κ (from memory).
//! Source of the limits for closing in step: IEEE Std 1547-2018, Table 5 (checked in a copy that quotes it).
//! Source of what a set must stand: a short circuit at its own terminals, NEMA MG 1, part 32 (from memory); beyond that damage is taken as certain, common practice.

use crate::units::Complex;
use crate::units::portable;

/// Angle at which the current is worst, degrees.
pub const WORST_CURRENT_DEG: f64 = 180.0;
/// Angle at which the torque of a single-phase machine is worst for equal EMFs, degrees.
pub const WORST_TORQUE_DEG: f64 = 135.0;

/// Two EMFs about to be joined.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Closing {
    /// EMF of the utility, volts.
    pub utility_v: f64,
    /// EMF of the generator, volts.
    pub set_v: f64,
    /// Everything between the two EMFs, ohms, the generator's subtransient reactance included.
    pub between: Complex,
}

/// How a set comes out of it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Harm {
    /// Within what a machine of this size may be closed with.
    None,
    /// Beyond that, but less than a short circuit at its own terminals.
    Strained,
    /// More than a short circuit at its terminals.
    Damaged,
}

/// The most difference with which a source may be closed onto the utility.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct InStep {
    /// Hertz.
    pub hz: f64,
    /// Volts, per unit.
    pub v_pu: f64,
    /// Degrees.
    pub deg: f64,
}

impl InStep {
    /// For a source of this size; IEEE Std 1547-2018, Table 5.
    pub fn of_kva(kva: f64) -> Self {
        let (hz, v_pu, deg) = if kva <= 500.0 {
            (0.3, 0.10, 20.0)
        } else if kva <= 1500.0 {
            (0.2, 0.05, 15.0)
        } else {
            (0.1, 0.03, 10.0)
        };
        Self { hz, v_pu, deg }
    }
}

impl Closing {
    /// Volts across the open contact at this angle.
    pub fn volts_across(&self, angle_deg: f64) -> f64 {
        portable::magnitude(self.difference(angle_deg))
    }

    /// Amps after closing, RMS without the offset of the first cycles.
    pub fn amps(&self, angle_deg: f64) -> f64 {
        self.volts_across(angle_deg) / portable::magnitude(self.between)
    }

    /// The highest crest of the first cycle, amps, at the worst instant of closing.
    pub fn first_crest_a(&self, angle_deg: f64) -> f64 {
        self.amps(angle_deg) * crest_times(self.x_over_r())
    }

    /// RMS amps of the first half cycle with its full offset, which an instantaneous trip sees.
    pub fn first_rms_a(&self, angle_deg: f64) -> f64 {
        self.amps(angle_deg) * rms_times(self.x_over_r())
    }

    /// Volts on the set's side of the contact after closing, if `own` of the impedance is the set's.
    pub fn volts_after(&self, angle_deg: f64, own: Complex) -> f64 {
        let emf = portable::phasor(self.set_v, angle_deg);
        let amps = self.difference(angle_deg) / self.between;
        portable::magnitude(emf + amps * own)
    }

    /// The highest torque on the shaft at the worst instant of closing, as a multiple of the mean torque at `rated_w`.
    pub fn torque_times(&self, angle_deg: f64, rated_w: f64) -> f64 {
        let emf = portable::phasor(self.set_v, angle_deg);
        let amps =
            self.difference(angle_deg) / Complex::new(0.0, portable::magnitude(self.between));
        4.0 * worst_pulse(emf, amps) / rated_w
    }

    /// What it does to a set of `rated_w` whose own subtransient impedance is `own`.
    pub fn harm(&self, angle_deg: f64, slip_hz: f64, rated_w: f64, own: Complex) -> Harm {
        let limits = InStep::of_kva(rated_w / 1000.0);
        let apart = folded_deg(angle_deg);
        let volts = (self.set_v - self.utility_v).abs() / self.utility_v;
        if apart <= limits.deg && slip_hz.abs() <= limits.hz && volts <= limits.v_pu {
            return Harm::None;
        }
        let at_terminals = Self {
            utility_v: 0.0,
            between: own,
            ..*self
        };
        let torque = self.torque_times(angle_deg, rated_w);
        let crest = self.first_crest_a(angle_deg);
        if torque > at_terminals.torque_times(0.0, rated_w)
            || crest > at_terminals.first_crest_a(0.0)
        {
            Harm::Damaged
        } else {
            Harm::Strained
        }
    }

    /// Whether the set falls into step after closing at this angle and slip, or slips on and on.
    ///
    /// The energy of the slip against the hill of the power-angle curve, by equal areas; `flywheel_s` is the energy at full speed as seconds of rated power.
    pub fn falls_into_step(
        &self,
        angle_deg: f64,
        slip_hz: f64,
        rated_w: f64,
        flywheel_s: f64,
    ) -> bool {
        let most_w = self.utility_v * self.set_v / portable::magnitude(self.between);
        let hill = most_w / rated_w * (1.0 + portable::phasor(1.0, angle_deg).re);
        let tau = 2.0 * core::f64::consts::PI;
        let slip = tau * slip_hz;
        flywheel_s * slip * slip / (tau * 60.0) < hill
    }

    fn difference(&self, angle_deg: f64) -> Complex {
        Complex::new(self.utility_v, 0.0) - portable::phasor(self.set_v, angle_deg)
    }

    fn x_over_r(&self) -> f64 {
        self.between.im / self.between.re
    }
}

/// An angle as the distance from being in step, 0 to 180 degrees.
pub fn folded_deg(angle_deg: f64) -> f64 {
    let angle = angle_deg.rem_euclid(360.0);
    angle.min(360.0 - angle)
}

/// First crest over RMS amps at the worst instant for this X/R: from little over 1.414 without reactance to 2.828 without resistance.
/// IEC 60909-0, the factor κ of the peak short-circuit current, times the root of two; from memory.
pub fn crest_times(x_over_r: f64) -> f64 {
    core::f64::consts::SQRT_2 * (1.02 + 0.98 * portable::exp(-3.0 / x_over_r))
}

/// RMS of the first half cycle over RMS amps for this X/R: 1 to 1.732.
pub fn rms_times(x_over_r: f64) -> f64 {
    (1.0 + 2.0 * portable::exp(-2.0 * core::f64::consts::PI / x_over_r)).sqrt()
}

/// The highest |e i| of a cycle over twice the product of RMS values and of the offset's worst case, volt-amperes.
///
/// With β between EMF and current, e i is 2 E I cos x (cos(x + β) - c) with an offset c of -1 to 1; at its worst it is 4 E I cos³(β/3), β folded into a quarter turn.
fn worst_pulse(emf: Complex, amps: Complex) -> f64 {
    let product = portable::magnitude(emf) * portable::magnitude(amps);
    if product <= 0.0 {
        return 0.0;
    }
    let apart = folded_deg(portable::angle_deg(amps * emf.conj()));
    let quarter = apart.min(180.0 - apart);
    let cosine = portable::phasor(1.0, quarter / 3.0).re;
    product * cosine * cosine * cosine
}

#[cfg(test)]
mod tests {
    use super::*;
    use core::f64::consts::PI;
    use core::f64::consts::SQRT_2;

    /// 240 V on both sides of 1.2 ohms of reactance; rated 7200 W, so 0.15 per unit.
    const STIFF: Closing = Closing {
        utility_v: 240.0,
        set_v: 240.0,
        between: Complex::new(0.0, 1.2),
    };
    const RATED_W: f64 = 7200.0;

    fn cos(radians: f64) -> f64 {
        portable::phasor(1.0, radians * 180.0 / PI).re
    }

    fn sin(radians: f64) -> f64 {
        portable::phasor(1.0, radians * 180.0 / PI).im
    }

    /// Crest of the current and of the pulse e i over two cycles, by small steps of *L di/dt = u - e - R i*, at the worst of many instants.
    fn stepped(closing: &Closing, angle_deg: f64) -> (f64, f64) {
        const STEPS: i32 = 500;
        let angle = angle_deg * PI / 180.0;
        let (r, x) = (closing.between.re, closing.between.im);
        let (mut crest, mut pulse) = (0.0_f64, 0.0_f64);
        for instant in 0..120_i32 {
            let start = f64::from(instant) * PI / 60.0;
            let emf = |t: f64| SQRT_2 * closing.set_v * cos(t + start + angle);
            let drive = |t: f64| SQRT_2 * closing.utility_v * cos(t + start) - emf(t);
            let slope = |t: f64, i: f64| (drive(t) - r * i) / x;
            let step = 2.0 * PI / f64::from(STEPS);
            let mut amps = 0.0;
            for n in 0..2 * STEPS {
                let t = f64::from(n) * step;
                let k1 = slope(t, amps);
                let k2 = slope(t + step / 2.0, amps + step / 2.0 * k1);
                let k3 = slope(t + step / 2.0, amps + step / 2.0 * k2);
                let k4 = slope(t + step, amps + step * k3);
                amps += step / 6.0 * (k1 + 2.0 * k2 + 2.0 * k3 + k4);
                crest = crest.max(amps.abs());
                pulse = pulse.max((amps * emf(t + step)).abs());
            }
        }
        (crest, pulse)
    }

    #[test]
    fn equal_volts_meet_with_twice_their_volts_at_half_a_turn_and_their_own_at_sixty_degrees() {
        assert!((STIFF.volts_across(180.0) - 480.0).abs() < 1e-9);
        assert!((STIFF.amps(180.0) - 400.0).abs() < 1e-9);
        assert!((STIFF.volts_across(60.0) - 240.0).abs() < 1e-9);
        assert!((STIFF.amps(60.0) - 200.0).abs() < 1e-9);
        assert!(STIFF.amps(0.0) < 1e-9);
        for degrees in 0..180_i32 {
            let angle = f64::from(degrees);
            let chord = 2.0 * 240.0 * sin(angle * PI / 360.0) / 1.2;
            assert!((STIFF.amps(angle) - chord).abs() < 1e-9);
            assert!((STIFF.amps(angle) - STIFF.amps(-angle)).abs() < 1e-9);
        }
    }

    #[test]
    fn the_torque_agrees_with_small_steps_of_the_differential_equation() {
        for angle in [15.0, 60.0, 90.0, 135.0, 180.0, 250.0] {
            for set_v in [200.0, 240.0] {
                let closing = Closing { set_v, ..STIFF };
                let (_, pulse) = stepped(&closing, angle);
                let closed = closing.torque_times(angle, RATED_W) * RATED_W;
                assert!(
                    (closed / pulse - 1.0).abs() < 1e-3,
                    "{angle} degrees, {set_v} V: {closed} W, by steps {pulse} W"
                );
            }
        }
    }

    #[test]
    fn the_first_crest_agrees_with_small_steps() {
        for x_over_r in [1.0, 2.0, 5.0, 20.0] {
            let between = Complex::new(1.2 / x_over_r, 1.2);
            let closing = Closing { between, ..STIFF };
            let (crest, _) = stepped(&closing, 120.0);
            let closed = closing.first_crest_a(120.0);
            assert!(
                (closed / crest - 1.0).abs() < 0.01,
                "X/R {x_over_r}: {closed} A, by steps {crest} A"
            );
        }
    }

    #[test]
    fn the_worst_torque_of_equal_volts_is_at_135_degrees_and_three_plus_twice_root_two_over_x() {
        let x_pu = 0.15;
        let worst = STIFF.torque_times(WORST_TORQUE_DEG, RATED_W);
        assert!(
            (worst * x_pu - (3.0 + 2.0 * SQRT_2)).abs() < 1e-9,
            "{worst}"
        );
        for degrees in 0..360_i32 {
            assert!(STIFF.torque_times(f64::from(degrees), RATED_W) <= worst + 1e-9);
        }
    }

    #[test]
    fn a_short_circuit_at_the_terminals_pulls_as_the_published_expression_says() {
        // sin x - sin(2x)/2 over the reactance peaks at 3 root 3 / 4; a single-phase machine's rated torque pulses to twice its mean.
        let short = Closing {
            utility_v: 0.0,
            ..STIFF
        };
        let torque = short.torque_times(0.0, RATED_W);
        assert!(
            (torque * 0.15 - 1.5 * 3.0_f64.sqrt()).abs() < 1e-9,
            "{torque}"
        );
    }

    #[test]
    fn harm_grows_with_the_angle_and_no_closing_is_worse_for_being_softer() {
        let own = Complex::new(0.24, 1.2);
        let between = own + Complex::new(0.08, 0.05);
        let closing = Closing { between, ..STIFF };
        let mut before = Harm::None;
        for degrees in 0..=120_i32 {
            let harm = closing.harm(f64::from(degrees), 0.1, RATED_W, own);
            assert!(
                harm >= before,
                "{degrees} degrees: {harm:?} after {before:?}"
            );
            before = harm;
        }
        assert_eq!(closing.harm(10.0, 0.1, RATED_W, own), Harm::None);
        assert_eq!(closing.harm(25.0, 0.1, RATED_W, own), Harm::Strained);
        assert_eq!(
            closing.harm(10.0, 2.0, RATED_W, own),
            Harm::Strained,
            "in angle, but slipping"
        );
        assert_eq!(closing.harm(180.0, 0.1, RATED_W, own), Harm::Damaged);
        let far = Closing {
            between: own * 4.0,
            ..STIFF
        };
        assert_eq!(
            far.harm(120.0, 0.1, RATED_W, own),
            Harm::Strained,
            "a long way between"
        );
    }

    #[test]
    fn falling_into_step_agrees_with_small_steps_of_the_swing() {
        let flywheel_s = 0.8;
        for (angle, slip) in [
            (10.0, 2.0),
            (10.0, 12.0),
            (10.0, 14.0),
            (150.0, 2.0),
            (150.0, 4.0),
            (179.0, 0.5),
        ] {
            let most = 240.0 * 240.0 / 1.2 / RATED_W;
            let (mut delta, mut speed): (f64, f64) = (angle * PI / 180.0, 2.0 * PI * slip);
            for _ in 0..100_000 {
                speed -= 2e-5 * 2.0 * PI * 60.0 / (2.0 * flywheel_s) * most * sin(delta);
                delta += 2e-5 * speed;
            }
            let stepped = delta.abs() < PI;
            assert_eq!(
                STIFF.falls_into_step(angle, slip, RATED_W, flywheel_s),
                stepped,
                "{angle} degrees, {slip} Hz"
            );
        }
    }

    #[test]
    fn an_angle_counts_by_its_distance_from_being_in_step() {
        assert!(
            (folded_deg(350.0) - 10.0).abs() < 1e-12 && (folded_deg(-190.0) - 170.0).abs() < 1e-12
        );
    }

    #[test]
    fn after_closing_the_volts_lie_between_the_two_by_the_share_of_impedance() {
        let stiff = STIFF.volts_after(180.0, STIFF.between);
        assert!(
            (stiff - 240.0).abs() < 1e-9,
            "all impedance is the set's: the utility's volts"
        );
        let middle = STIFF.volts_after(180.0, STIFF.between * 0.5);
        assert!(
            middle < 1e-9,
            "half way in opposition: nothing is left, {middle} V"
        );
    }
}
