//! What a current through a body means: the zones of IEC 60479-1 and the fibrillation limit of IEEE Std 80.
//!
//! Alternating current, 15 to 100 Hz, left hand to both feet; other paths are brought to it by the heart-current factor.
//! Curve c2 is the point table of BS EN 50522:2022, Table B.1 (checked in a copy that quotes it).
//! Curve a and the ends of b and c1 are checked in copies that quote them; what lies between on c1 and the whole of c3 are read from the figure from memory, good to about 20 %.
//! Points are joined by straight lines on logarithmic axes, as the figure is drawn.
//! Not covered: direct current, impulses, burns (from about 1 A whatever the zone).

use crate::hazard::body::Path;
use crate::units::portable;

/// A zone of the time/current figure of IEC 60479-1, from harmless to deadly.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Zone {
    /// AC-1: perhaps felt, no reaction.
    Ac1,
    /// AC-2: felt, muscles may contract, no harm as a rule.
    Ac2,
    /// AC-3: can't let go, breathing difficult; no lasting harm to organs as a rule.
    Ac3,
    /// AC-4.1: heart may fibrillate, up to about 5 % of people.
    Ac41,
    /// AC-4.2: up to about half of people.
    Ac42,
    /// AC-4.3: more than half of people.
    Ac43,
}

impl Zone {
    /// Whether it holds the hand or endangers the heart: beyond curve b.
    pub fn harms(self) -> bool {
        self > Self::Ac2
    }

    /// Whether the heart may fibrillate: beyond curve c1.
    pub fn may_stop_heart(self) -> bool {
        self > Self::Ac3
    }

    /// Its name in word files.
    pub fn name(self) -> &'static str {
        match self {
            Self::Ac1 => "zone-ac-1",
            Self::Ac2 => "zone-ac-2",
            Self::Ac3 => "zone-ac-3",
            Self::Ac41 => "zone-ac-4-1",
            Self::Ac42 => "zone-ac-4-2",
            Self::Ac43 => "zone-ac-4-3",
        }
    }
}

/// The zone of `current_ma` milliamps from the left hand to the feet for `duration_s` seconds.
pub fn zone(current_ma: f64, duration_s: f64) -> Zone {
    if current_ma <= CURVE_A_MA {
        Zone::Ac1
    } else if current_ma <= portable::log_curve(CURVE_B, duration_s) {
        Zone::Ac2
    } else if current_ma <= portable::log_curve(CURVE_C1, duration_s) {
        Zone::Ac3
    } else if current_ma <= portable::log_curve(CURVE_C2, duration_s) {
        Zone::Ac41
    } else if current_ma <= portable::log_curve(CURVE_C3, duration_s) {
        Zone::Ac42
    } else {
        Zone::Ac43
    }
}

/// The current from the left hand to the feet that endangers the heart as `current_ma` does on `path`.
pub fn reference_ma(current_ma: f64, path: Path) -> f64 {
    current_ma * path.heart_factor()
}

/// Current that half a percent of people of `body_kg` kilograms may fibrillate at, milliamps, for `duration_s` seconds.
///
/// IEEE Std 80: 116 mA/√t for 50 kg (checked in a copy that quotes it) and 157 mA/√t for 70 kg (part from memory); in proportion between, and by the nearest beyond.
/// The law is stated from 0.03 s to 3 s (IEEE Std 80, from memory); outside, the value at the nearer end.
pub fn fibrillation_limit_ma(duration_s: f64, body_kg: f64) -> f64 {
    let at_one_second = 116.0 + (157.0 - 116.0) * ((body_kg - 50.0) / 20.0).clamp(0.0, 1.0);
    at_one_second / stated_s(duration_s).sqrt()
}

/// The duration for which the law of the limit is stated that is nearest to this one, seconds.
pub fn stated_s(duration_s: f64) -> f64 {
    duration_s.clamp(0.03, 3.0)
}

/// How many times the fibrillation limit `current_ma` is.
pub fn times_lethal(current_ma: f64, duration_s: f64, body_kg: f64) -> f64 {
    current_ma / fibrillation_limit_ma(duration_s, body_kg)
}

/// Curve a: threshold of reaction, whatever the time.
const CURVE_A_MA: f64 = 0.5;

/// Curve b: seconds and milliamps.
/// About 5 mA above 6 s, about 200 mA at 10 ms (2005 and later editions).
const CURVE_B: &[(f64, f64)] = &[(0.01, 200.0), (6.0, 5.0)];

/// Curve c1: about 500 mA at 10 ms, 50 mA at 1 s, 40 mA from 3 s on; 0.1 s from memory.
const CURVE_C1: &[(f64, f64)] = &[(0.01, 500.0), (0.1, 400.0), (1.0, 50.0), (3.0, 40.0)];

/// Curve c2: BS EN 50522:2022, Table B.1.
const CURVE_C2: &[(f64, f64)] = &[
    (0.05, 900.0),
    (0.10, 800.0),
    (0.20, 600.0),
    (0.50, 200.0),
    (1.0, 80.0),
    (2.0, 60.0),
    (5.0, 51.0),
    (10.0, 50.0),
];

/// Curve c3: from memory.
const CURVE_C3: &[(f64, f64)] = &[
    (0.01, 1500.0),
    (0.1, 1200.0),
    (0.2, 900.0),
    (0.5, 350.0),
    (1.0, 150.0),
    (2.0, 95.0),
    (10.0, 80.0),
];

#[cfg(test)]
mod tests {
    use super::*;

    const DURATIONS_S: [f64; 12] = [
        0.0, 0.01, 0.025, 0.05, 0.1, 0.2, 0.4, 0.5, 1.0, 2.5, 10.0, 3600.0,
    ];

    #[test]
    fn the_curves_never_cross() {
        for t in DURATIONS_S {
            let curves =
                [CURVE_B, CURVE_C1, CURVE_C2, CURVE_C3].map(|curve| portable::log_curve(curve, t));
            assert!(
                CURVE_A_MA < curves[0] && curves.is_sorted(),
                "at {t} s: {curves:?}"
            );
        }
    }

    #[test]
    fn more_current_or_more_time_is_never_a_milder_zone() {
        for pair in DURATIONS_S.windows(2) {
            let mut before = Zone::Ac1;
            for step in 0..400_i32 {
                let ma = 0.1 * portable::power(1.03, f64::from(step));
                let now = zone(ma, pair[0]);
                assert!(
                    now >= before,
                    "{ma} mA at {} s: {now:?} after {before:?}",
                    pair[0]
                );
                assert!(
                    zone(ma, pair[1]) >= now,
                    "{ma} mA is milder at {} s than at {} s",
                    pair[1],
                    pair[0]
                );
                before = now;
            }
        }
    }

    #[test]
    fn a_printed_point_of_a_curve_is_on_it() {
        for curve in [CURVE_B, CURVE_C1, CURVE_C2, CURVE_C3] {
            for &(seconds, milliamps) in curve {
                let ours = portable::log_curve(curve, seconds);
                assert!(
                    (ours / milliamps - 1.0).abs() < 1e-12,
                    "{seconds} s: {ours} mA, printed {milliamps} mA"
                );
            }
        }
    }

    #[test]
    fn two_amps_through_a_worker_are_far_beyond_the_limit_in_any_second() {
        let times = times_lethal(2000.0, 1.0, 70.0);
        assert!((12.0..13.0).contains(&times), "{times} times");
        assert_eq!(zone(2000.0, 1.0), Zone::Ac43);
        assert_eq!(
            zone(reference_ma(2000.0, Path::HandToHand), 1.0),
            Zone::Ac43
        );
    }

    #[test]
    fn the_curve_of_half_the_people_lies_above_that_of_one_in_twenty_by_a_third_to_twice() {
        for t in DURATIONS_S.into_iter().filter(|t| *t >= 0.05) {
            let ratio = portable::log_curve(CURVE_C3, t) / portable::log_curve(CURVE_C2, t);
            assert!((1.3..=2.0).contains(&ratio), "at {t} s: {ratio}");
        }
    }

    #[test]
    fn the_fibrillation_law_is_not_stretched_beyond_its_stated_times() {
        for (beyond, end) in [(60.0, 3.0), (0.001, 0.03)] {
            let (a, b) = (
                fibrillation_limit_ma(beyond, 50.0),
                fibrillation_limit_ma(end, 50.0),
            );
            assert!((a - b).abs() < 1e-12, "{beyond} s: {a} mA, {end} s: {b} mA");
        }
    }

    #[test]
    fn a_heavier_body_or_a_shorter_touch_stands_more() {
        assert!(fibrillation_limit_ma(1.0, 60.0) > fibrillation_limit_ma(1.0, 50.0));
        assert!(fibrillation_limit_ma(0.1, 50.0) > fibrillation_limit_ma(1.0, 50.0));
        assert!(
            (fibrillation_limit_ma(1.0, 20.0) - 116.0).abs() < 1e-12,
            "a child is judged no milder than 50 kg"
        );
    }
}
