//! How a motor starts and holds when volts and frequency sag together.
//!
//! Standstill reactance goes with the frequency, resistance doesn't: a slow source starts a motor with more amps per volt.
//! Torque at standstill goes with *V*²/*f* over the square of the standstill impedance; breakdown torque with (*V*/*f*)² (textbook theory of the induction motor, from memory).
//! What it drives asks for the same torque at every speed (a compressor) or for the square of the speed (a fan, a pump with little head).
//! Holds from 0.5 to 1.2 of rated volts and 0.8 to 1.1 of 60 Hz, at which NEMA MG 1-12.44 asks for ± 10 % volts, ± 5 % frequency, 10 % together (checked, part from memory).
//! Not covered: the start switch and capacitor, the falling current on the way to speed, saturation at high volts over frequency.
//! Accuracy: times ± 30 %, limits ± 5 % of rated volts.

use super::motor::LEAST_START_PU;
use super::motor::LOCKED_ROTOR_PF;
use super::motor::Motor;

/// Breakdown volts at rated frequency, of rated: below, a running motor comes to a stand.
/// From memory: breakdown torque is about 2.8 times the running one.
pub const BREAKDOWN_PU: f64 = 0.6;

/// What a motor drives.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Driven {
    /// The same torque at every speed: compressors, hoists, pumps with much head.
    Constant,
    /// Torque with the square of the speed: fans, pumps with little head.
    Square,
}

/// What a source gives a motor.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Supply {
    /// Volts at its terminals, of rated.
    pub v_pu: f64,
    /// Frequency, of rated; above 0.
    pub f_pu: f64,
}

/// Torque at standstill, of that at rated volts and frequency.
pub fn start_torque_pu(supply: Supply) -> f64 {
    let resistance = LOCKED_ROTOR_PF * LOCKED_ROTOR_PF;
    let reactance = (1.0 - resistance) * supply.f_pu * supply.f_pu;
    supply.v_pu * supply.v_pu / (supply.f_pu * (resistance + reactance))
}

/// Breakdown torque, of that at rated volts and frequency.
pub fn breakdown_torque_pu(supply: Supply) -> f64 {
    let flux = supply.v_pu / supply.f_pu;
    flux * flux
}

/// Torque that the driven machine asks for, of that at rated frequency.
pub fn asked_torque_pu(driven: Driven, f_pu: f64) -> f64 {
    match driven {
        Driven::Constant => 1.0,
        Driven::Square => f_pu * f_pu,
    }
}

/// Whether a running motor keeps turning.
pub fn keeps_turning(driven: Driven, supply: Supply) -> bool {
    breakdown_torque_pu(supply)
        >= BREAKDOWN_PU * BREAKDOWN_PU * asked_torque_pu(driven, supply.f_pu)
}

/// Whether a motor at standstill begins to turn.
pub fn starts(supply: Supply) -> bool {
    start_torque_pu(supply) >= LEAST_START_PU * LEAST_START_PU
}

/// Seconds to reach the speed of this frequency; `None` if it doesn't start.
/// The way is shorter by the frequency, and the torque to spare is what the volts leave.
pub fn acceleration_s(motor: &Motor, supply: Supply) -> Option<f64> {
    let least = LEAST_START_PU * LEAST_START_PU;
    let spare = start_torque_pu(supply) - least;
    (spare > 0.0).then(|| motor.accelerate_s * supply.f_pu * (1.0 - least) / spare)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::apparatus::motor::CodeLetter;

    const RATED: Supply = Supply {
        v_pu: 1.0,
        f_pu: 1.0,
    };

    fn compressor() -> Motor {
        Motor {
            hp: 0.25,
            volts: 120.0,
            letter: CodeLetter::G,
            running_w: 300.0,
            running_pf: 0.7,
            accelerate_s: 0.5,
        }
    }

    #[test]
    fn at_rated_frequency_it_starts_as_the_law_of_volts_says() {
        let motor = compressor();
        for v_pu in [0.75, 0.8, 0.9, 1.0, 1.1] {
            let ours = acceleration_s(&motor, Supply { v_pu, ..RATED }).unwrap();
            let known = motor.acceleration_s(v_pu).unwrap();
            assert!(
                (ours / known - 1.0).abs() < 1e-12,
                "{v_pu}: {ours}, {known}"
            );
        }
        assert!(acceleration_s(&motor, Supply { v_pu: 0.7, ..RATED }).is_none());
    }

    #[test]
    fn a_slow_source_starts_a_motor_sooner_at_the_same_volts() {
        let motor = compressor();
        let slow = Supply {
            v_pu: 0.8,
            f_pu: 0.95,
        };
        let rated = Supply { v_pu: 0.8, ..RATED };
        assert!(acceleration_s(&motor, slow) < acceleration_s(&motor, rated));
    }

    #[test]
    fn a_running_motor_comes_to_a_stand_at_breakdown_and_a_fan_holds_longer_when_slow() {
        assert!(keeps_turning(Driven::Constant, RATED));
        let at = |v_pu, f_pu| Supply { v_pu, f_pu };
        assert!(keeps_turning(Driven::Constant, at(0.61, 1.0)));
        assert!(!keeps_turning(Driven::Constant, at(0.59, 1.0)));
        assert!(keeps_turning(Driven::Constant, at(0.59, 0.95)));
        assert!(!keeps_turning(Driven::Constant, at(0.56, 0.95)));
        assert!(keeps_turning(Driven::Square, at(0.56, 0.95)));
        assert!(
            !keeps_turning(Driven::Constant, at(0.61, 1.05)),
            "too fast for its volts"
        );
    }
}
