//! What electronics stand of high and low volts, and for how long.
//!
//! The envelope is the ITI (CBEMA) curve of 2000 for 120 V single-phase equipment (checked in a copy that quotes it, the shortest times from memory): inside it equipment works on; above it damage may follow; below it, it stops without harm.
//! The envelope says nothing of how long a device lasts above it.
//! The usual device here takes the time of `usual_s`, an assumption that never lies below the envelope's; the envelope itself is the early bound.
//! Damage adds up: each stretch counts its share of the time that its volts leave.
//! Holds from 0 to 5 times rated volts, at 60 Hz, on RMS volts.
//! Not covered: surges of lightning, ratings for two voltages (100 to 240 V), waveform, repeated dips.
//! Accuracy: the envelope is exact to its print; the usual device is a guess within a factor of ten.

use crate::units::portable;

/// Volts, of rated, that equipment stands forever, the most.
pub const MOST_PU: f64 = 1.1;
/// Volts, of rated, that equipment works with forever, the least.
pub const LEAST_PU: f64 = 0.9;

/// Seconds in which the usual device is destroyed at half as much again as its rated volts; an assumption.
const AT_HALF_MORE_S: f64 = 10.0;
/// How steeply that time falls with the excess over [`MOST_PU`]; an assumption.
const STEEPNESS: f64 = 4.0;

/// What a stretch of volts does.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Effect {
    /// Works on.
    None,
    /// Too low for too long: stops or starts again, unharmed.
    Stops,
    /// Too high for too long: may be damaged.
    Damage,
}

/// What `v_pu` of its rated volts for `seconds` do to a device that lives by the envelope.
pub fn effect(v_pu: f64, seconds: f64) -> Effect {
    if v_pu > highest_pu(seconds) {
        Effect::Damage
    } else if v_pu < lowest_pu(seconds) {
        Effect::Stops
    } else {
        Effect::None
    }
}

/// The most volts, of rated, that the envelope allows for `seconds`.
pub fn highest_pu(seconds: f64) -> f64 {
    step(UPPER, seconds, MOST_PU)
}

/// The least volts, of rated, with which equipment works on for `seconds`.
pub fn lowest_pu(seconds: f64) -> f64 {
    step(LOWER, seconds, LEAST_PU)
}

/// Seconds that the envelope allows at `v_pu`; infinite up to [`MOST_PU`], 0 above five times.
pub fn allowed_s(v_pu: f64) -> f64 {
    if v_pu <= MOST_PU {
        return f64::INFINITY;
    }
    let within = UPPER.iter().rev().find(|(_, most)| v_pu <= *most);
    within.map_or(0.0, |(until, _)| *until)
}

/// Seconds in which the usual device is destroyed at `v_pu`; infinite up to [`MOST_PU`].
pub fn usual_s(v_pu: f64) -> f64 {
    if v_pu <= MOST_PU {
        return f64::INFINITY;
    }
    let excess = (1.5 - MOST_PU) / (v_pu - MOST_PU);
    AT_HALF_MORE_S * portable::power(excess, STEEPNESS)
}

/// Damage after `seconds` at `v_pu`, from `damage`; the usual device is destroyed at 1, and nothing heals.
pub fn damage_after(damage: f64, v_pu: f64, seconds: f64) -> f64 {
    damage + seconds / usual_s(v_pu)
}

/// Seconds until the usual device is destroyed if its volts stay; `None` if they do no harm.
pub fn seconds_to_damage(damage: f64, v_pu: f64) -> Option<f64> {
    let seconds = (1.0 - damage).max(0.0) * usual_s(v_pu);
    (v_pu > MOST_PU).then_some(seconds)
}

/// Until how many seconds, the most volts of rated.
const UPPER: &[(f64, f64)] = &[(0.01 / 60.0, 5.0), (0.001, 2.0), (0.003, 1.4), (0.5, 1.2)];

/// Until how many seconds, the least volts of rated.
const LOWER: &[(f64, f64)] = &[(0.02, 0.0), (0.5, 0.7), (10.0, 0.8)];

fn step(edge: &[(f64, f64)], seconds: f64, steady: f64) -> f64 {
    let within = edge.iter().find(|(until, _)| seconds <= *until);
    within.map_or(steady, |(_, pu)| *pu)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_longer_it_lasts_the_less_is_stood() {
        let times = [1e-4, 5e-4, 2e-3, 0.01, 0.1, 0.6, 5.0, 20.0, 1e4];
        for pair in times.windows(2) {
            assert!(highest_pu(pair[1]) <= highest_pu(pair[0]), "{pair:?}");
            assert!(lowest_pu(pair[1]) >= lowest_pu(pair[0]), "{pair:?}");
        }
        for seconds in times {
            assert_eq!(
                effect(1.0, seconds),
                Effect::None,
                "rated volts, {seconds} s"
            );
        }
    }

    #[test]
    fn an_open_neutral_burns_what_hangs_on_the_light_leg_and_only_stops_the_other() {
        // 195 V and 45 V where 120 V belong.
        assert_eq!(effect(195.0 / 120.0, 1.0), Effect::Damage);
        assert_eq!(effect(45.0 / 120.0, 1.0), Effect::Stops);
        assert!(seconds_to_damage(0.0, 195.0 / 120.0).unwrap() < 10.0);
        assert!(seconds_to_damage(0.0, 45.0 / 120.0).is_none());
    }

    #[test]
    fn the_usual_device_never_fails_while_the_envelope_holds_it_safe() {
        for hundredth in 111..500_i32 {
            let v_pu = f64::from(hundredth) / 100.0;
            let (usual, allowed) = (usual_s(v_pu), allowed_s(v_pu));
            assert!(usual >= allowed, "{v_pu}: {usual} s, envelope {allowed} s");
        }
        assert!(usual_s(1.1).is_infinite() && allowed_s(1.1).is_infinite());
    }

    #[test]
    fn damage_adds_up_and_arrives_at_the_computed_instant() {
        let parts = damage_after(damage_after(0.1, 1.4, 3.0), 1.4, 2.0);
        let whole = damage_after(0.1, 1.4, 5.0);
        assert!((parts - whole).abs() < 1e-15, "{parts} and {whole}");
        let seconds = seconds_to_damage(0.1, 1.4).unwrap();
        assert!((damage_after(0.1, 1.4, seconds) - 1.0).abs() < 1e-12);
        assert_eq!(
            damage_after(0.3, 1.0, 1e9).to_bits(),
            0.3_f64.to_bits(),
            "rated volts do no harm"
        );
    }

    #[test]
    fn the_allowed_time_is_where_the_envelope_falls_below_the_volts() {
        for v_pu in [1.15, 1.2, 1.3, 1.4, 1.8, 2.0, 4.0] {
            let allowed = allowed_s(v_pu);
            assert_eq!(effect(v_pu, allowed), Effect::None, "{v_pu}");
            assert_eq!(effect(v_pu, allowed * 1.001), Effect::Damage, "{v_pu}");
        }
    }
}
