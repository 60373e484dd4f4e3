//! Step and touch: volts that somebody on the ground bridges near a grounded thing, what may be borne, and what grounds at a pole leave over.
//!
//! Bearable volts by IEEE Std 80 (1 000 Ω of body, footing on a thin surface layer, body weight) and by BS EN 50522:2022, Table B.3.
//! The ground's potential around a driven rod by the line-charge formula of a uniform soil; shares are of the rod's own rise.
//! What a lineworker touches with grounds in place follows from the current through them: between grounds at the neighboring poles, or within an equipotential zone.
//! Accuracy: real soil is layered, so shares are good to about a fifth; the surface factor is the standard's own approximation, within 5 % of its integral.
//! Not covered: grids, several rods that share a current, boots, mats.

use crate::hazard::shock::fibrillation_limit_ma;
use crate::units::portable;

/// What somebody stands on.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Surface {
    /// Resistivity of the soil, ohm-meters.
    pub soil_ohm_m: f64,
    /// Resistivity of the layer on it, ohm-meters; that of the soil where there is none.
    pub layer_ohm_m: f64,
    /// Thickness of the layer, centimeters.
    pub layer_cm: f64,
}

impl Surface {
    /// Bare soil.
    pub fn bare(soil_ohm_m: f64) -> Self {
        Self {
            soil_ohm_m,
            layer_ohm_m: soil_ohm_m,
            layer_cm: 0.0,
        }
    }

    /// Share of the layer's resistivity that a foot on it meets, because the soil below is better or worse.
    ///
    /// IEEE Std 80, Cs = 1 - 0.09 (1 - ρ/ρs) / (2 h + 0.09); from memory, met in two open implementations.
    pub fn derating(&self) -> f64 {
        1.0 - 0.09 * (1.0 - self.soil_ohm_m / self.layer_ohm_m)
            / (2.0 * self.layer_cm / 100.0 + 0.09)
    }

    /// Volts from hand to feet that a body of `body_kg` kilograms bears for `duration_s` seconds.
    ///
    /// IEEE Std 80: (1000 + 1.5 Cs ρs) times the current of its fibrillation law; checked in a copy that quotes it, part from memory.
    pub fn bearable_touch_v(&self, duration_s: f64, body_kg: f64) -> f64 {
        self.bearable_v(1.5, duration_s, body_kg)
    }

    /// Volts from one foot to the other, 1 m apart, that are borne: (1000 + 6 Cs ρs) times that current.
    pub fn bearable_step_v(&self, duration_s: f64, body_kg: f64) -> f64 {
        self.bearable_v(6.0, duration_s, body_kg)
    }

    fn bearable_v(&self, footing: f64, duration_s: f64, body_kg: f64) -> f64 {
        let ohm = BODY_OHM + footing * self.derating() * self.layer_ohm_m;
        ohm * fibrillation_limit_ma(duration_s, body_kg) / 1000.0
    }
}

/// Volts of touch that may stand for `duration_s` seconds, whatever the soil.
///
/// BS EN 50522:2022, the table of permissible touch voltages; checked in a copy that quotes it.
/// Straight between its points on logarithmic axes, flat beyond them.
pub fn permissible_touch_v(duration_s: f64) -> f64 {
    portable::log_curve(PERMISSIBLE, duration_s)
}

/// A rod driven into uniform soil, its head at the surface.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rod {
    /// Length, meters.
    pub length_m: f64,
    /// Radius, millimeters.
    pub radius_mm: f64,
    /// Resistivity of the soil, ohm-meters.
    pub soil_ohm_m: f64,
}

impl Rod {
    /// The usual rod of 8 ft by 5/8 in, in the soil in which it has `ohm` ohms to remote earth.
    pub fn usual(ohm: f64) -> Self {
        let mut rod = Self {
            length_m: 8.0 * 0.3048,
            radius_mm: 25.4 * 5.0 / 16.0,
            soil_ohm_m: 1.0,
        };
        rod.soil_ohm_m = ohm / rod.resistance_ohm();
        rod
    }

    /// Resistance to remote earth, ohms: ρ/(2πL) (ln(4L/a) - 1), the formula for one driven rod (IEEE Std 142; from memory).
    pub fn resistance_ohm(&self) -> f64 {
        self.soil_ohm_m / (core::f64::consts::TAU * self.length_m) * self.form()
    }

    /// Potential of the surface at `distance_m` meters from the rod, as a share of the rod's own rise, 0 to 1.
    pub fn surface_share(&self, distance_m: f64) -> f64 {
        let far = distance_m.max(self.radius_mm / 1000.0);
        let reach = self.length_m + (self.length_m * self.length_m + far * far).sqrt();
        (portable::ln(reach / far) / self.form()).min(1.0)
    }

    /// Share of the rise that a person bridges who stands 1 m away with a hand on the grounded thing.
    pub fn touch_share(&self) -> f64 {
        1.0 - self.surface_share(REACH_M)
    }

    /// Share of the rise between the feet of a person with the nearer foot at `distance_m` meters.
    pub fn step_share(&self, distance_m: f64) -> f64 {
        self.surface_share(distance_m) - self.surface_share(distance_m + STRIDE_M)
    }

    fn form(&self) -> f64 {
        portable::ln(4.0 * self.length_m / (self.radius_mm / 1000.0)) - 1.0
    }
}

/// A current that somebody sends into a line while a crew has grounds on it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Grounded {
    /// Amps into the line.
    pub fault_a: f64,
    /// One ground lead with its clamps, ohms.
    pub lead_ohm: f64,
    /// Rise of the pole grounds and the neutral against remote earth, volts.
    pub rise_v: f64,
}

impl Grounded {
    /// Volts between the conductor and the worker's pole where the leads hang on `n_sets` neighboring poles and the worker's pole has no bond to them: leads and rise.
    pub fn between_brackets_v(&self, n_sets: f64) -> f64 {
        self.fault_a * self.lead_ohm / n_sets + self.rise_v
    }

    /// Volts between the conductor and the pole band where conductor, neutral and band are joined at the worker's own pole: the lead alone.
    ///
    /// The rise lifts worker and pole together; 29 CFR 1926.962(c) asks for this (checked).
    pub fn within_zone_v(&self) -> f64 {
        self.fault_a * self.lead_ohm
    }
}

/// Amps through a body of `body_ohm` ohms on a footing of `footing_ohm` ohms that bridges `touch_v` volts.
pub fn body_a(touch_v: f64, body_ohm: f64, footing_ohm: f64) -> f64 {
    touch_v / (body_ohm + footing_ohm)
}

/// One ground lead of No. 2 AWG copper, the least that 29 CFR 1926.962(d)(1)(ii) allows (checked), 15 ft with two clamps, ohms; clamps from memory.
pub const LEAD_OHM: f64 = 0.194e-3 * 15.0 + 2.0 * 0.3e-3;

/// Resistance of a body by IEEE Std 80, ohms.
const BODY_OHM: f64 = 1000.0;

/// An arm's reach by IEEE Std 80, meters.
const REACH_M: f64 = 1.0;

/// A step by IEEE Std 80, meters.
const STRIDE_M: f64 = 1.0;

/// Seconds and permissible touch volts.
const PERMISSIBLE: &[(f64, f64)] = &[
    (0.05, 725.0),
    (0.1, 655.0),
    (0.2, 525.0),
    (0.5, 225.0),
    (1.0, 115.0),
    (2.0, 95.0),
    (5.0, 85.0),
    (10.0, 85.0),
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_layer_of_the_soil_itself_is_no_layer() {
        let bare = Surface::bare(100.0);
        assert!((bare.derating() - 1.0).abs() < 1e-12);
        let same = Surface {
            layer_cm: 15.0,
            ..bare
        };
        let (a, b) = (
            bare.bearable_touch_v(0.5, 50.0),
            same.bearable_touch_v(0.5, 50.0),
        );
        assert!((a - b).abs() < 1e-9, "{a} V, {b} V");
    }

    #[test]
    fn crushed_stone_lets_a_person_bear_more_and_more_of_it_still_more() {
        let mut before = Surface::bare(100.0).bearable_touch_v(0.5, 50.0);
        for centimeters in 1..30_i32 {
            let stone = Surface {
                soil_ohm_m: 100.0,
                layer_ohm_m: 2500.0,
                layer_cm: f64::from(centimeters),
            };
            let now = stone.bearable_touch_v(0.5, 50.0);
            assert!(now > before, "{centimeters} cm: {now} V after {before} V");
            assert!(
                stone.bearable_step_v(0.5, 50.0) > now,
                "a step is borne more easily"
            );
            before = now;
        }
    }

    #[test]
    fn what_may_stand_falls_with_time() {
        let mut before = f64::INFINITY;
        for step in 0..200_i32 {
            let seconds = 0.02 * portable::power(1.04, f64::from(step));
            let volts = permissible_touch_v(seconds);
            assert!(volts <= before, "{seconds} s: {volts} V after {before} V");
            before = volts;
        }
    }

    #[test]
    fn the_ground_falls_off_fast_from_a_rod_and_never_rises() {
        let rod = Rod::usual(25.0);
        assert!((rod.resistance_ohm() - 25.0).abs() < 1e-9);
        let mut before = 1.0;
        for step in 0..400_i32 {
            let meters = 0.01 * portable::power(1.03, f64::from(step));
            let share = rod.surface_share(meters);
            assert!(
                (0.0..=before).contains(&share),
                "{meters} m: {share} after {before}"
            );
            before = share;
        }
        assert!(rod.surface_share(0.0) > 0.94, "{}", rod.surface_share(0.0));
        assert!(rod.surface_share(100.0) < 0.01);
    }

    #[test]
    fn far_from_a_rod_the_ground_stands_as_around_a_point() {
        // ρ I / (2π r), with I = rise / R.
        let rod = Rod::usual(25.0);
        let point = rod.soil_ohm_m / (core::f64::consts::TAU * 200.0) / rod.resistance_ohm();
        let ours = rod.surface_share(200.0);
        assert!((ours / point - 1.0).abs() < 1e-4, "{ours}, {point}");
    }

    #[test]
    fn steps_add_up_to_what_a_touch_leaves() {
        let rod = Rod::usual(25.0);
        let steps: f64 = (1..2000_i32).map(|m| rod.step_share(f64::from(m))).sum();
        let rest = rod.surface_share(2000.0);
        let whole = rod.touch_share() + steps + rest;
        assert!((whole - 1.0).abs() < 1e-9, "{whole}");
        assert!(
            rod.step_share(1.0) > rod.step_share(3.0),
            "a step nearer the rod bridges more"
        );
    }

    #[test]
    fn a_zone_at_the_work_leaves_only_the_drop_of_a_lead() {
        let fault = Grounded {
            fault_a: 130.0,
            lead_ohm: LEAD_OHM,
            rise_v: 400.0,
        };
        assert!(fault.within_zone_v() < 1.0, "{} V", fault.within_zone_v());
        let brackets = fault.between_brackets_v(2.0);
        assert!(brackets > fault.rise_v && brackets > 100.0 * fault.within_zone_v());
        let amps = body_a(brackets, 1000.0, 200.0);
        assert!(amps * 1000.0 > fibrillation_limit_ma(1.0, 70.0), "{amps} A");
    }
}
