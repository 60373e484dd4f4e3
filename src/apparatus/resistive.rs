//! Loads that only get warm: heaters, and lamps with a filament.
//!
//! A heater keeps its ohms: watts go with the square of its volts.
//! A filament's ohms grow as it glows: its watts, light and life follow the powers 1.6, 3.4 and -13 of its volts (lamp rerating; from memory, exponents of 12 to 16 are met for life).
//! Holds for a heater from 0 to 1.2 of its rated volts and a filament from 0.7 to 1.3; beyond, the filament fails within minutes at most.
//! Lamps with a driver (light-emitting diodes) take constant power and belong to electronics: see `tolerance`.
//! Not covered: halogen cycle, inrush of a cold filament, thermostats.
//! Accuracy: watts ± 3 %, light ± 5 %, life a factor of two.

use crate::units::portable;

/// What a filament does, of what it does at rated volts.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Filament {
    /// Its watts.
    pub watts: f64,
    /// Its light.
    pub light: f64,
    /// How long it lasts.
    pub life: f64,
}

/// Watts of a heater at `v_pu` of its rated volts, of those at rated volts.
pub fn heater_watts(v_pu: f64) -> f64 {
    v_pu * v_pu
}

/// What a filament does at `v_pu` of its rated volts, above 0.
pub fn filament(v_pu: f64) -> Filament {
    Filament {
        watts: portable::power(v_pu, 1.6),
        light: portable::power(v_pu, 3.4),
        life: portable::power(v_pu, -13.0),
    }
}

/// Wear of a filament after `seconds` at `v_pu`, from `wear`: it breaks at 1, after `rated_h` hours at rated volts.
pub fn wear_after(wear: f64, rated_h: f64, v_pu: f64, seconds: f64) -> f64 {
    if v_pu > 0.0 {
        wear + seconds / (rated_h * 3600.0 * filament(v_pu).life)
    } else {
        wear
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn at_rated_volts_everything_is_as_rated() {
        let rated = filament(1.0);
        for share in [rated.watts, rated.light, rated.life, heater_watts(1.0)] {
            assert!((share - 1.0).abs() < 1e-12, "{rated:?}");
        }
    }

    #[test]
    fn low_volts_dim_a_lamp_more_than_they_save_and_high_volts_cost_its_life() {
        let low = filament(0.9);
        assert!(low.light < low.watts && low.life > 3.0, "{low:?}");
        let high = filament(1.1);
        assert!(high.life < 0.3, "{high:?}");
        assert!(
            heater_watts(0.9) < filament(0.9).watts,
            "ohms fall with the glow"
        );
    }

    #[test]
    fn an_open_neutral_burns_a_lamp_out_within_two_hours_and_a_dark_one_keeps() {
        let worn = wear_after(0.0, 1000.0, 1.6, 7_200.0);
        assert!(worn > 0.9, "{worn}");
        assert!(wear_after(0.2, 1000.0, 0.0, 1e9) < 0.21);
        let parts = wear_after(wear_after(0.0, 1000.0, 1.2, 50.0), 1000.0, 1.2, 70.0);
        let whole = wear_after(0.0, 1000.0, 1.2, 120.0);
        assert!((parts - whole).abs() < 1e-15);
    }
}
