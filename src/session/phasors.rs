//! Phasors at the points of a place: the volts of both legs to the neutral, and the amps that go with them.
//!
//! Only what may be seen: in a test, or while readings are covered, what the learner's own tester told last, which tells no amps.
//! Angles are those of the solved network, counterclockwise from the volts of leg 1; amps are taken the way that power goes.
//! It does not cover a point where sources that aren't synchronized meet: nothing there stands still.

use crate::drill::Drill;
use crate::site::PointReading;
use crate::units::{Complex, portable};
use crate::words::{Arg, Message, Unit, name_of};

use super::view::{PhasorView, TurnedView};
use super::{Open, Session};

/// Volts below which a leg is taken for dead.
const LIVE_V: f64 = 1.0;

/// Amps below which nothing flows.
const FLOWS_A: f64 = 0.05;

/// Volts by which two legs differ so much that it is worth a word, and by what factor one then carries more.
const UNEVEN_V: f64 = 5.0;
const UNEVEN: f64 = 1.2;

/// Degrees within which two phasors are in step.
const IN_STEP_DEG: f64 = 1.0;

/// The points of a place at which a tester meets both legs.
pub(super) fn points_at(place: &str) -> &'static [&'static str] {
    match place {
        "panel" => &["service", "bus"],
        "generator" => &["generator-outlet"],
        _ => &[],
    }
}

/// The things through which power may come to a point or go from it.
fn through(point: &str) -> &'static [&'static str] {
    match point {
        "service" => &["main"],
        "bus" => &["main", "generator-breaker"],
        "generator-outlet" => &["generator-output"],
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
        let amps = |point: &str| {
            let readings = open.drill.readings();
            let shown = through(point)
                .iter()
                .filter(|_| self.numbers_are_shown(open));
            let mut legs = shown.filter_map(|thing| readings.phasors_of(thing));
            legs.find(|legs| {
                legs.iter()
                    .any(|amps| portable::magnitude(*amps) >= FLOWS_A)
            })
        };
        points_at(place)
            .iter()
            .filter_map(|point| self.phasor(point, seen(&open.drill, point)?, amps(point)))
            .collect()
    }

    fn phasor(
        &self,
        point: &str,
        reading: PointReading,
        amps: Option<[Complex; 2]>,
    ) -> Option<PhasorView> {
        let [one, two] = reading.legs_v;
        let both = one >= LIVE_V && two >= LIVE_V;
        if one.max(two) < LIVE_V {
            return None;
        }
        let degrees = reading.phasors.filter(|_| both);
        let degrees = degrees.map(|[one, two]| turned(two, one));
        let name = Arg::Verbatim(self.words.label(&name_of(point)));
        let told = match degrees {
            Some(degrees) => Message::new("phasor-both")
                .quantity("one", one, Unit::Volts)
                .quantity("two", two, Unit::Volts)
                .quantity("apart", degrees.abs(), Unit::Degrees)
                .quantity("across", reading.volts_across, Unit::Volts),
            None if both => Message::new("phasor-drifting"),
            None => Message::new("phasor-one").quantity("volts", one.max(two), Unit::Volts),
        };
        let amps = reading.phasors.zip(amps);
        let amps = amps.map_or_else(Vec::new, |(volts, amps)| self.amps(volts, amps));
        let uneven = heavier(reading.legs_v, &amps).map(|leg| {
            let told = Message::new("phasor-uneven").with("leg", Arg::Count(leg));
            self.words.say(&told)
        });
        Some(PhasorView {
            uneven: uneven.unwrap_or_default(),
            legs_v: reading.legs_v,
            degrees,
            sentence: self.words.say(&told.with("point", name)),
            amps,
        })
    }

    /// The amps of each leg that carries any, in words and as an arrow.
    fn amps(&self, volts: [Complex; 2], amps: [Complex; 2]) -> Vec<TurnedView> {
        let power: f64 = volts
            .iter()
            .zip(&amps)
            .map(|(v, a)| (v * a.conj()).re)
            .sum();
        let way = if power < 0.0 { -1.0 } else { 1.0 };
        let [reference, _] = volts;
        let legs = (1..).zip(volts.iter().zip(&amps));
        legs.filter(|(_, (_, amps))| portable::magnitude(**amps) >= FLOWS_A)
            .map(|(leg, (volts, amps))| {
                let amps = amps * way;
                let ahead = turned(amps, *volts);
                let id = if ahead.abs() < IN_STEP_DEG {
                    "phasor-in-step"
                } else if ahead < 0.0 {
                    "phasor-behind"
                } else {
                    "phasor-ahead"
                };
                let turn = Message::new(id).quantity("angle", ahead.abs(), Unit::Degrees);
                let told = Message::new("phasor-amps")
                    .with("leg", Arg::Count(leg))
                    .quantity("amps", portable::magnitude(amps), Unit::Amps)
                    .said("turn", turn);
                TurnedView {
                    leg: usize::try_from(leg).unwrap_or_default(),
                    amps: portable::magnitude(amps),
                    degrees: turned(amps, reference),
                    sentence: self.words.say(&told),
                }
            })
            .collect()
    }
}

/// The leg that has clearly fewer volts than the other and carries clearly more, by its number.
fn heavier([one, two]: [f64; 2], amps: &[TurnedView]) -> Option<i64> {
    let carried = |leg: usize| {
        let mut own = amps.iter().filter(|a| a.leg == leg);
        own.next().map_or(0.0, |a| a.amps)
    };
    let (low, high, leg) = if one < two {
        (carried(1), carried(2), 1)
    } else {
        (carried(2), carried(1), 2)
    };
    let apart = (one - two).abs() >= UNEVEN_V;
    (apart && low > high * UNEVEN).then_some(leg)
}

/// How far one phasor stands counterclockwise of another, degrees above -180 up to 180.
fn turned(one: Complex, other: Complex) -> f64 {
    portable::angle_deg(one * other.conj())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_comes_first_is_ahead_and_what_comes_later_behind() {
        let [east, north] = [Complex::new(120.0, 0.0), Complex::new(0.0, 5.0)];
        assert!((turned(north, east) - 90.0).abs() < 1e-9);
        assert!((turned(east, north) + 90.0).abs() < 1e-9);
    }

    #[test]
    fn the_leg_that_carries_more_and_has_fewer_volts_is_named() {
        let carries = |leg: usize, amps: f64| TurnedView {
            leg,
            amps,
            ..TurnedView::default()
        };
        let amps = [carries(1, 2.4), carries(2, 15.5)];
        assert_eq!(heavier([125.0, 114.0], &amps), Some(2));
        assert_eq!(heavier([121.0, 119.0], &amps), None, "near enough");
        assert_eq!(heavier([114.0, 125.0], &amps), None, "something else");
    }

    #[test]
    fn a_split_phase_stands_half_a_turn_apart() {
        let [one, two] = [Complex::new(120.0, 0.0), Complex::new(-120.0, 0.0)];
        assert!((turned(two, one).abs() - 180.0).abs() < 1e-9);
    }
}
