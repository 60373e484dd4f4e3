//! Damage along a cord: strands that are broken, insulation that is crushed.
//!
//! Where strands are broken, the current of all goes through those that are left: a short piece of higher resistance, a hot spot in a long fin of copper.
//! The spot's rise over the cord is *Q*/(2 √(*k A g*)): its own watts, carried off along the copper and given off by it.
//! It builds up as erf(√(*t*/τ)); here as a first-order lag of a third of the cord's τ, at most an eighth of the rise off that, and in closed form.
//! Crushed insulation holds until it softens, then conductors meet.
//! Not covered: leakage of a crushed place in the wet, breaks that open and close as the cord is moved, arcs.
//! Accuracy: a factor of two in the rise, from the length over which strands share current again.

use super::conductor::Material;
use super::cord::Cord;
use super::insulation::CRUSHED_SOFTENING_C;
use super::insulation::SOFTENING_C;
use crate::units::portable;

/// What is damaged somewhere along a cord.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub enum Damage {
    /// Nothing.
    #[default]
    Sound,
    /// Strands of one conductor are broken.
    Strands {
        /// Share of them that is left, above 0 to 1.
        left: f64,
    },
    /// The insulation is crushed: a door, a chair leg, a pinch.
    Crushed,
}

/// Length on which the current of broken strands goes through the others, meters: two lays of a fine-stranded cord, typical.
const SHARED_M: f64 = 0.04;

/// Heat that copper conducts, watts per kelvin and meter; handbook figure, from memory.
const COPPER_W_PER_K_M: f64 = 390.0;

impl Damage {
    /// Resistance that the damage adds to one conductor of `cord` at `t_c` °C, ohms.
    pub fn added_ohm(self, cord: &Cord, t_c: f64) -> f64 {
        match self {
            Self::Sound | Self::Crushed => 0.0,
            Self::Strands { left } => {
                let ohm_per_m = cord.resistance_ohm(t_c) / (cord.length_ft() * 0.3048);
                ohm_per_m * SHARED_M * (1.0 / left - 1.0)
            }
        }
    }

    /// Rise of the hot spot over the rest of the conductor at steady `amps`, the spot at `t_c` °C, kelvin.
    pub fn spot_rise_k(self, cord: &Cord, amps: f64, t_c: f64) -> f64 {
        let watts = amps * amps * self.added_ohm(cord, t_c);
        let along = COPPER_W_PER_K_M * cord.awg().area_mm2() * 1e-6 * cord.given_off_w_per_k_m();
        watts / (2.0 * along.sqrt())
    }

    /// Rise of the hot spot over the rest of the conductor after `seconds` at `amps`, from `rise_k`, the copper around it at `t_c` °C.
    /// Its resistance counts at its own temperature, so a spot can run away; a cord without broken strands has no spot.
    pub fn spot_after(self, cord: &Cord, rise_k: f64, amps: f64, t_c: f64, seconds: f64) -> f64 {
        if !matches!(self, Self::Strands { .. }) {
            return 0.0;
        }
        let tau = cord.time_constant_s() / 3.0;
        let settled = self.spot_rise_k(cord, amps, t_c);
        let per_k = Material::Copper.resistance_ratio(t_c + 1.0, t_c) - 1.0;
        portable::first_order(
            rise_k,
            settled / tau,
            (1.0 - settled * per_k) / tau,
            seconds,
        )
    }

    /// Temperature at which conductors can move through the insulation and meet, °C.
    pub fn softens_at_c(self) -> f64 {
        match self {
            Self::Sound | Self::Strands { .. } => SOFTENING_C,
            Self::Crushed => CRUSHED_SOFTENING_C,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::apparatus::cord::Loaded;
    use crate::apparatus::cord_lay::Lay;

    fn cord() -> Cord {
        Cord::new(
            "SJTW".parse().unwrap(),
            "16".parse().unwrap(),
            50.0,
            Loaded::Two,
        )
        .unwrap()
    }

    /// The copper as a row of cells, 2 mm each, warmed in the middle and giving off along its way: an explicit integration.
    fn cells(watts: f64, seconds: f64) -> f64 {
        let cord = cord();
        let (dx, dt) = (0.002, 0.004);
        let give = cord.given_off_w_per_k_m() * dx;
        let pass = COPPER_W_PER_K_M * cord.awg().area_mm2() * 1e-6 / dx;
        let store = cord.given_off_w_per_k_m() * cord.time_constant_s() * dx;
        let mut t = vec![0.0_f64; 121];
        let steps = (0..).take_while(|i| f64::from(*i) * dt < seconds);
        for _ in steps {
            let old = t.clone();
            for i in 1..120 {
                let source = if i == 60 { watts } else { 0.0 };
                let flow = pass * (old[i - 1] - 2.0 * old[i] + old[i + 1]);
                t[i] += dt / store * (flow - give * old[i] + source);
            }
        }
        t[60]
    }

    #[test]
    fn the_hot_spot_settles_where_a_row_of_cells_settles_and_lags_like_it() {
        let (cord, damage, amps) = (cord(), Damage::Strands { left: 0.1 }, 12.0);
        let watts = amps * amps * damage.added_ohm(&cord, 60.0);
        let settled = damage.spot_rise_k(&cord, amps, 60.0);
        let tau = cord.time_constant_s();
        for share in [0.1, 0.3, 1.0] {
            let fine = cells(watts, share * tau);
            let lag = settled * (1.0 - portable::exp(-3.0 * share));
            assert!(
                (fine - lag).abs() < 0.125 * settled,
                "after {share} τ: cells {fine} K, lag {lag} K, settled {settled} K"
            );
        }
    }

    #[test]
    fn few_broken_strands_are_hardly_felt_and_nearly_all_of_them_are_a_hot_spot() {
        let rise = |left| Damage::Strands { left }.spot_rise_k(&cord(), 12.5, 60.0);
        assert!(rise(1.0).abs() < 1e-12, "all strands: {} K", rise(1.0));
        let own = cord().settle_c(12.5, 30.0, Lay::Straight) - 30.0;
        assert!(
            rise(0.5) < own / 3.0,
            "half of them: {} K on top of {own} K",
            rise(0.5)
        );
        assert!(rise(0.04) > 60.0, "one of twenty-six: {} K", rise(0.04));
    }

    #[test]
    fn a_spot_warmed_in_two_parts_is_one_warmed_at_once() {
        let (cord, damage) = (cord(), Damage::Strands { left: 0.05 });
        let at = |rise, seconds| damage.spot_after(&cord, rise, 12.5, 55.0, seconds);
        let (parts, whole) = (at(at(0.0, 40.0), 80.0), at(0.0, 120.0));
        assert!(
            (parts - whole).abs() < 1e-11,
            "{parts} K in parts, {whole} K at once"
        );
    }

    #[test]
    fn crushed_insulation_gives_way_sooner_and_adds_no_ohms() {
        assert!(Damage::Crushed.softens_at_c() < Damage::Sound.softens_at_c());
        assert!(Damage::Crushed.added_ohm(&cord(), 60.0).abs() < 1e-15);
    }
}
