//! Small single-phase motors: what they draw at standstill, how long they take to start, and when they give up.
//!
//! Standstill current from the NEMA code letter (MG 1-10.37.2, checked in a copy that quotes it).
//! Torque goes with the square of the voltage, so a sagging source starts a motor slowly or not at all.
//! Not covered: the fall of current while the motor speeds up (it keeps its standstill current until it runs, the safe side), saturation, frequency.

use crate::units::Complex;

/// Power factor of a small motor at standstill; from memory, 0.5 to 0.85 are met.
pub const LOCKED_ROTOR_PF: f64 = 0.7;

/// Volts, per unit of the rated, below which a motor doesn't start.
/// From memory: starting torque about twice what the driven machine asks for, and torque ∝ V².
pub const LEAST_START_PU: f64 = 0.7;

/// Seconds after which the motor's own thermal protector opens at standstill and rated volts; from memory, 5 to 15 s are met.
pub const PROTECTOR_S: f64 = 10.0;

/// Seconds after which the protector closes again; common practice, no source, 2 to 10 min are met.
pub const PROTECTOR_RESET_S: f64 = 300.0;

/// A NEMA code letter for locked-rotor kilovolt-amperes per horsepower.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct CodeLetter(char);

impl CodeLetter {
    /// G, in the middle of the table for motors of a few horsepower.
    pub const G: Self = Self('G');

    /// The letter A to V; `None` for others (I, O and Q aren't used).
    pub fn new(letter: char) -> Option<Self> {
        CODE_LETTERS
            .iter()
            .any(|(known, ..)| *known == letter)
            .then_some(Self(letter))
    }

    /// Kilovolt-amperes per horsepower at standstill: least, and most if there is a limit.
    pub fn kva_per_hp(self) -> (f64, Option<f64>) {
        CODE_LETTERS
            .iter()
            .find(|(known, ..)| *known == self.0)
            .map_or((22.4, None), |(_, from, below)| (*from, *below))
    }

    /// The middle of the band; of V, which has no upper limit, the least.
    pub fn middle_kva_per_hp(self) -> f64 {
        match self.kva_per_hp() {
            (from, Some(below)) => f64::midpoint(from, below),
            (from, None) => from,
        }
    }
}

/// Amps at standstill of a single-phase motor at its rated volts, by the middle of its code letter's band.
pub fn locked_rotor_amps(hp: f64, volts: f64, letter: CodeLetter) -> f64 {
    hp * letter.middle_kva_per_hp() * 1000.0 / volts
}

/// A single-phase motor with what it drives.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Motor {
    /// Horsepower.
    pub hp: f64,
    /// Rated volts.
    pub volts: f64,
    /// Its code letter.
    pub letter: CodeLetter,
    /// Watts drawn while it runs.
    pub running_w: f64,
    /// Power factor while it runs, above 0 to 1.
    pub running_pf: f64,
    /// Seconds to reach speed at rated volts.
    pub accelerate_s: f64,
}

impl Motor {
    /// Amps at standstill and rated volts.
    pub fn locked_rotor_amps(&self) -> f64 {
        locked_rotor_amps(self.hp, self.volts, self.letter)
    }

    /// Impedance at standstill, ohms.
    pub fn locked_rotor_impedance(&self) -> Complex {
        let ohm = self.volts / self.locked_rotor_amps();
        Complex::new(
            LOCKED_ROTOR_PF,
            (1.0 - LOCKED_ROTOR_PF * LOCKED_ROTOR_PF).sqrt(),
        ) * ohm
    }

    /// Watts and reactive volt-amperes while it runs, as one complex number.
    pub fn running_va(&self) -> Complex {
        let sine = (1.0 - self.running_pf * self.running_pf).max(0.0).sqrt();
        Complex::new(self.running_w, self.running_w * sine / self.running_pf)
    }

    /// Seconds to reach speed with `v_pu` of its rated volts at the terminals; `None` if it doesn't start.
    pub fn acceleration_s(&self, v_pu: f64) -> Option<f64> {
        let least = LEAST_START_PU * LEAST_START_PU;
        let spare = v_pu * v_pu - least;
        (spare > 0.0).then(|| self.accelerate_s * (1.0 - least) / spare)
    }
}

/// Seconds until a motor's own protector opens at standstill with `v_pu` of its rated volts.
/// Heat goes with the square of the current, and that with the volts; no volts, no heat: infinite.
pub fn protector_s(v_pu: f64) -> f64 {
    PROTECTOR_S / (v_pu * v_pu)
}

/// NEMA MG 1-10.37.2: letter, from, below, kilovolt-amperes per horsepower.
const CODE_LETTERS: &[(char, f64, Option<f64>)] = &[
    ('A', 0.0, Some(3.15)),
    ('B', 3.15, Some(3.55)),
    ('C', 3.55, Some(4.0)),
    ('D', 4.0, Some(4.5)),
    ('E', 4.5, Some(5.0)),
    ('F', 5.0, Some(5.6)),
    ('G', 5.6, Some(6.3)),
    ('H', 6.3, Some(7.1)),
    ('J', 7.1, Some(8.0)),
    ('K', 8.0, Some(9.0)),
    ('L', 9.0, Some(10.0)),
    ('M', 10.0, Some(11.2)),
    ('N', 11.2, Some(12.5)),
    ('P', 12.5, Some(14.0)),
    ('R', 14.0, Some(16.0)),
    ('S', 16.0, Some(18.0)),
    ('T', 18.0, Some(20.0)),
    ('U', 20.0, Some(22.4)),
    ('V', 22.4, None),
];

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::portable;

    fn pump() -> Motor {
        Motor {
            hp: 0.5,
            volts: 120.0,
            letter: CodeLetter::new('L').unwrap(),
            running_w: 800.0,
            running_pf: 0.7,
            accelerate_s: 0.6,
        }
    }

    #[test]
    fn the_bands_of_the_code_letters_meet_without_gap_or_overlap() {
        for pair in CODE_LETTERS.windows(2) {
            assert_eq!(pair[0].2, Some(pair[1].1), "{} to {}", pair[0].0, pair[1].0);
        }
        for letter in ['I', 'O', 'Q', 'W', 'a', '1'] {
            assert!(
                CodeLetter::new(letter).is_none(),
                "{letter} isn't a code letter"
            );
        }
    }

    #[test]
    fn standstill_impedance_draws_the_standstill_current() {
        let motor = pump();
        let amps = motor.volts / portable::magnitude(motor.locked_rotor_impedance());
        assert!(
            (amps - motor.locked_rotor_amps()).abs() < 1e-9,
            "{amps} A, name plate {}",
            motor.locked_rotor_amps()
        );
    }

    #[test]
    fn standstill_power_factor_is_one_that_small_motors_have() {
        let z = pump().locked_rotor_impedance();
        let pf = z.re / portable::magnitude(z);
        assert!(
            (0.5..=0.85).contains(&pf) && z.im > 0.0,
            "power factor {pf}"
        );
    }

    #[test]
    fn the_running_power_has_the_running_power_factor() {
        let s = pump().running_va();
        assert!(
            (s.re / portable::magnitude(s) - 0.7).abs() < 1e-12 && s.im > 0.0,
            "{s}"
        );
    }

    #[test]
    fn a_sagging_source_starts_a_motor_slowly_and_then_not_at_all() {
        let motor = pump();
        assert!(
            (motor.acceleration_s(1.0).unwrap() - 0.6).abs() < 1e-12,
            "rated volts give the rated time"
        );
        assert!(motor.acceleration_s(0.8).unwrap() > 2.0 * 0.6);
        for v_pu in [0.7, 0.5, 0.0] {
            assert!(motor.acceleration_s(v_pu).is_none(), "starts at {v_pu}");
        }
    }

    #[test]
    fn a_stalled_motor_opens_its_protector_later_the_lower_the_volts() {
        assert!((protector_s(1.0) - PROTECTOR_S).abs() < 1e-12);
        assert!((protector_s(0.5) - 4.0 * PROTECTOR_S).abs() < 1e-9);
        assert!(protector_s(0.0).is_infinite());
    }
}
