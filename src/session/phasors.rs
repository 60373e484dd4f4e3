//! Phasors at the points of a place: the volts of both legs to the neutral, and how far apart they swing.
//!
//! Only what may be seen: in a test, or while readings are covered, what the learner's own tester told last.
//! The angle follows from the three volts by the law of cosines, so which leg leads isn't told.
//! It does not cover currents.

use crate::drill::Drill;
use crate::site::PointReading;
use crate::units::portable;
use crate::words::{Arg, Message, Unit, name_of};

use super::view::PhasorView;
use super::{Open, Session};

/// Volts below which a leg is taken for dead.
const LIVE_V: f64 = 1.0;

/// The points of a place at which a tester meets both legs.
pub(super) fn points_at(place: &str) -> &'static [&'static str] {
    match place {
        "panel" => &["service", "bus"],
        "generator" => &["generator-outlet"],
        _ => &[],
    }
}

impl Session {
    /// The phasors of a place, one for each point that is live as far as may be seen.
    pub(super) fn phasors(&self, open: &Open, place: &str) -> Vec<PhasorView> {
        let known = open.known();
        let seen = |drill: &Drill, point: &str| {
            if self.numbers_are_shown(open) {
                Some(drill.readings().point(point))
            } else {
                known.points.get(point).map(|(_, reading)| *reading)
            }
        };
        points_at(place)
            .iter()
            .filter_map(|point| self.phasor(point, seen(&open.drill, point)?))
            .collect()
    }

    fn phasor(&self, point: &str, reading: PointReading) -> Option<PhasorView> {
        let [one, two] = reading.legs_v;
        let both = one >= LIVE_V && two >= LIVE_V;
        if one.max(two) < LIVE_V {
            return None;
        }
        let degrees = both.then(|| apart(one, two, reading.volts_across));
        let name = Arg::Verbatim(self.words.label(&name_of(point)));
        let told = match degrees {
            Some(degrees) => Message::new("phasor-both")
                .quantity("one", one, Unit::Volts)
                .quantity("two", two, Unit::Volts)
                .quantity("apart", degrees, Unit::Degrees)
                .quantity("across", reading.volts_across, Unit::Volts),
            None => Message::new("phasor-one").quantity("volts", one.max(two), Unit::Volts),
        };
        Some(PhasorView {
            legs_v: reading.legs_v,
            degrees,
            sentence: self.words.say(&told.with("point", name)),
        })
    }
}

/// The angle between two phasors of these lengths whose difference has a third, degrees from 0 to 180.
fn apart(one: f64, two: f64, across: f64) -> f64 {
    let cosine = (one * one + two * two - across * across) / (2.0 * one * two);
    let cosine = cosine.clamp(-1.0, 1.0);
    let sine = (1.0 - cosine * cosine).sqrt();
    portable::angle_deg(crate::units::Complex::new(cosine, sine))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn legs_of_a_split_phase_swing_against_each_other() {
        assert!((apart(120.0, 120.0, 240.0) - 180.0).abs() < 1e-6);
    }

    #[test]
    fn legs_tied_to_one_hot_swing_together() {
        assert!(apart(120.0, 120.0, 0.0).abs() < 1e-6);
    }

    #[test]
    fn two_legs_of_a_three_phase_wye_are_a_third_of_a_turn_apart() {
        // 120 V to neutral and 208 V between phases: 120 V times the square root of 3.
        assert!((apart(120.0, 120.0, 120.0 * 3.0_f64.sqrt()) - 120.0).abs() < 1e-6);
    }
}
