//! What heat does to the insulation of a cord: it softens, it chars, what lies against it catches fire.
//!
//! Softening is a threshold; charring and ignition need time as well, and the hotter the sooner: a dose, full at 1, whose rate doubles every 10 K.
//! That halving of time every 10 K is the trade's rule for insulation (from memory); the two points it is hung on are assumptions, named where they stand.
//! The dose isn't in closed form where the temperature drifts: each step of the drill counts its middle temperature.
//! Integration error: at steps of 1 s, below 0.1 % against steps of 1 ms on the steepest runaway a cord here can have (tested).
//! Not covered: arcing, flame spread, what burns; rubber and elastomers, which soften later and are treated alike, the safe side.
//! Accuracy: the order of events is sure, their times are good to a factor of three.

use crate::units::portable;

/// Temperature at which a thermoplastic cord softens so that conductors can move through it, °C.
/// Assumption; published softening points of flexible PVC lie between 80 and 120 °C (from memory).
pub const SOFTENING_C: f64 = 100.0;

/// Temperature at which a cord with a crushed place is soft enough for its conductors to meet there, °C.
/// Assumption: pressed insulation gives way at the lower end of the published range.
pub const CRUSHED_SOFTENING_C: f64 = 80.0;

/// Temperature from which insulation chars in minutes, °C.
/// Assumption; flexible PVC decomposes from about 200 °C (from memory).
pub const CHARRING_C: f64 = 200.0;

/// Temperature below which charring isn't counted, °C; decomposition begins at about 160 °C, from memory.
pub const CHARRING_FROM_C: f64 = 160.0;

/// Temperature at which cloth, paper or wood that lies against a conductor catches fire in minutes, °C.
/// Assumption; long contact ignites wood and cotton from 200 to 250 °C (from memory).
pub const IGNITION_C: f64 = 250.0;

/// Temperature below which ignition isn't counted, °C; the lower end of what is published, from memory.
pub const IGNITION_FROM_C: f64 = 200.0;

/// Seconds in which insulation chars at [`CHARRING_C`], and what lies against it ignites at [`IGNITION_C`]; assumption, 2 to 30 min are plausible.
const DOSE_S: f64 = 300.0;

/// Kelvin for which the rate of a dose doubles.
const DOUBLING_K: f64 = 10.0;

/// How far insulation has charred after `seconds` at `t_c` °C, from `dose`: 1 is charred through.
pub fn charred_after(dose: f64, t_c: f64, seconds: f64) -> f64 {
    dose_after(dose, t_c, seconds, (CHARRING_FROM_C, CHARRING_C))
}

/// How near what lies against a conductor has come to fire after `seconds` at `t_c` °C, from `dose`: 1 is fire.
pub fn ignition_after(dose: f64, t_c: f64, seconds: f64) -> f64 {
    dose_after(dose, t_c, seconds, (IGNITION_FROM_C, IGNITION_C))
}

fn dose_after(dose: f64, t_c: f64, seconds: f64, (from_c, at_c): (f64, f64)) -> f64 {
    if t_c < from_c {
        return dose;
    }
    dose + seconds * rate(t_c, at_c)
}

/// Dose a second at `t_c` for what takes [`DOSE_S`] at `at_c`; hotter than 400 °C counts as 400 °C, where it takes a second or less.
fn rate(t_c: f64, at_c: f64) -> f64 {
    portable::power(2.0, (t_c.min(400.0) - at_c) / DOUBLING_K) / DOSE_S
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn insulation_softens_before_it_chars_and_chars_before_cloth_burns() {
        let order = [
            CRUSHED_SOFTENING_C,
            SOFTENING_C,
            CHARRING_FROM_C,
            CHARRING_C,
            IGNITION_C,
        ];
        assert!(order.is_sorted(), "{order:?}");
        assert!((80.0..=120.0).contains(&SOFTENING_C), "the published range");
    }

    #[test]
    fn ten_kelvin_more_halve_the_time() {
        for after in [charred_after, ignition_after] {
            let (slow, fast) = (after(0.0, 250.0, 1.0), after(0.0, 260.0, 1.0));
            assert!((fast / slow - 2.0).abs() < 1e-12, "{slow} and {fast}");
        }
    }

    #[test]
    fn a_dose_is_full_after_the_time_it_takes_and_never_shrinks() {
        for dose in [
            charred_after(0.0, CHARRING_C, DOSE_S),
            ignition_after(0.0, IGNITION_C, DOSE_S),
        ] {
            assert!((dose - 1.0).abs() < 1e-12, "{dose}");
        }
        assert!(
            (charred_after(0.4, 20.0, 3600.0) - 0.4).abs() < 1e-15,
            "cooling heals nothing"
        );
        let below = (
            charred_after(0.0, 159.0, 3600.0),
            ignition_after(0.0, 199.0, 3600.0),
        );
        assert!(below.0.abs() < 1e-15 && below.1.abs() < 1e-15, "{below:?}");
    }

    #[test]
    fn steps_of_a_second_follow_the_steepest_runaway_to_a_thousandth() {
        // 1.5 K/s: an 18 AWG cord at three times its tabled amps, behind a 30 A breaker.
        let dose = |step_s: f64, steps: u32| {
            (0..steps).fold(0.0, |dose, i| {
                let middle = 160.0 + 1.5 * step_s * (f64::from(i) + 0.5);
                charred_after(dose, middle, step_s)
            })
        };
        let (coarse, fine) = (dose(1.0, 60), dose(0.001, 60_000));
        assert!(
            (coarse / fine - 1.0).abs() < 1e-3,
            "steps of 1 s {coarse}, of 1 ms {fine}"
        );
    }
}
