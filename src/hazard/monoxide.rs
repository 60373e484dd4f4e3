//! Carbon monoxide: from an engine outdoors into a house, limits, and when the alarm sounds.
//!
//! Room: one well-mixed volume with a steady source and a steady change of air; two rooms are in `air`, the blood is in `blood`.
//! Alarm: a dose that reaches 1 within the response times of UL 2034.
//! Not covered: wind, which carries gas in by chance.

use crate::hazard::air::Outlet;
use crate::units::portable;

/// Where the engine runs.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Placement {
    /// In the attached garage, with its big door open or not.
    Garage,
    /// In the house itself: a basement, a kitchen, an enclosed porch.
    House,
    /// Outdoors beside an open window, door or vent.
    NearOpening,
    /// Outdoors, 20 ft or more from the house, exhaust away from it, openings shut.
    TwentyFeetAway,
}

impl Placement {
    /// Where the exhaust goes from here.
    ///
    /// Outdoors a share of it is drawn into the house.
    /// Assumptions, no published figure, with as much air as cracks and gaps let in: near an opening 0.05 (0.005 to 0.2), 20 ft away 0.002 (0 to 0.02); 20 ft is a rule to keep and not a wall that gas respects.
    pub fn outlet(self) -> Outlet {
        match self {
            Self::Garage => Outlet::Garage,
            Self::House => Outlet::House,
            Self::NearOpening => Outlet::Outdoors(0.05),
            Self::TwentyFeetAway => Outlet::Outdoors(0.002),
        }
    }
}

/// Share of the exhaust that is drawn in once `times` as much air comes in, of a share at the air that came in before.
///
/// Air that comes in carries the gas that stands before the openings, so the share goes with that air: a balance of mass.
/// That all of it comes in where the gas stands is an assumption, on the safe side: an opening that is made wider near an engine never clears the air.
pub fn drawn_in(share: f64, times: f64) -> f64 {
    (share * times).min(1.0)
}

/// Concentration in a room after `seconds`, parts per million by volume.
///
/// From `ppm` now, with `generation_g_per_h` grams an hour let into `volume_m3` cubic meters whose air is changed `air_changes_per_h` times an hour for clean air.
pub fn ppm_after(
    ppm: f64,
    generation_g_per_h: f64,
    volume_m3: f64,
    air_changes_per_h: f64,
    seconds: f64,
) -> f64 {
    let source = generation_g_per_h * 1000.0 / MG_PER_M3_PER_PPM / volume_m3 / 3600.0;
    portable::first_order(ppm, source, air_changes_per_h / 3600.0, seconds)
}

/// What an alarm has gathered after `seconds` at `ppm`, from `dose`: it sounds when it reaches 1.
///
/// The middle of each of [`ALARM_BANDS`] on a logarithmic scale, and straight between them; below 60 ppm it forgets with a time constant of 30 min (assumption).
pub fn alarm_after(dose: f64, ppm: f64, seconds: f64) -> f64 {
    if ppm < ALARM_FLOOR_PPM {
        portable::first_order(dose, 0.0, 1.0 / 1800.0, seconds)
    } else {
        dose + seconds / alarm_response_s(ppm)
    }
}

/// Whether an alarm with this dose sounds.
pub fn alarm_due(dose: f64) -> bool {
    dose >= 1.0
}

/// Seconds until an alarm with this dose sounds if `ppm` stays as it is; `None` if it won't.
pub fn alarm_in_s(dose: f64, ppm: f64) -> Option<f64> {
    if alarm_due(dose) {
        Some(0.0)
    } else {
        (ppm >= ALARM_FLOOR_PPM).then(|| (1.0 - dose) * alarm_response_s(ppm))
    }
}

/// Below this an alarm never sounds, parts per million: UL 2034, checked in a copy that quotes it.
pub const CLEAN_PPM: f64 = 30.0;

/// When an alarm has to sound at a steady concentration.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AlarmBand {
    /// Parts per million.
    pub ppm: f64,
    /// No sooner than this, minutes.
    pub from_min: f64,
    /// No later than this, minutes.
    pub to_min: f64,
}

/// The levels at which an alarm has to sound: UL 2034, checked in a copy that quotes it.
pub const ALARM_BANDS: [AlarmBand; 3] = [
    AlarmBand {
        ppm: 70.0,
        from_min: 60.0,
        to_min: 240.0,
    },
    AlarmBand {
        ppm: 150.0,
        from_min: 10.0,
        to_min: 50.0,
    },
    AlarmBand {
        ppm: 400.0,
        from_min: 4.0,
        to_min: 15.0,
    },
];

/// The band of the highest level that this concentration has reached, or of the lowest level below all of them.
pub fn alarm_band(ppm: f64) -> AlarmBand {
    let [lowest, ..] = ALARM_BANDS;
    let reached = ALARM_BANDS.into_iter().rfind(|band| ppm >= band.ppm);
    reached.unwrap_or(lowest)
}

/// Milligrams per cubic meter of one ppm at 25 °C and one atmosphere: 28.01 g/mol over 24.45 L/mol.
pub const MG_PER_M3_PER_PPM: f64 = 28.01 / 24.45;

/// Below this an alarm gathers nothing.
const ALARM_FLOOR_PPM: f64 = 60.0;

/// Parts per million, and seconds to respond: √(60·240), √(10·50) and √(4·15) minutes.
const ALARM_POINTS: [(f64, f64); 3] = [(70.0, 7200.0), (150.0, 1341.6), (400.0, 464.8)];

/// Seconds that an alarm takes at a steady concentration: straight on logarithmic axes, carried on beyond its ends.
fn alarm_response_s(ppm: f64) -> f64 {
    let [low, middle, high] = ALARM_POINTS;
    let (a, b) = if ppm < middle.0 {
        (low, middle)
    } else {
        (middle, high)
    };
    let share = portable::ln(ppm / a.0) / portable::ln(b.0 / a.0);
    a.1 * portable::power(b.1 / a.1, share)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_room_settles_where_the_air_carries_off_what_the_engine_gives() {
        // 25 g/h into 300 m³ at half an air change: 25 000 mg over 150 m³ of fresh air an hour.
        let ppm = ppm_after(0.0, 25.0, 300.0, 0.5, 1e6);
        assert!(
            (ppm - 25_000.0 / 150.0 * 24.45 / 28.01).abs() < 1e-9,
            "{ppm} ppm"
        );
    }

    #[test]
    fn a_sealed_room_fills_in_a_straight_line_and_an_aired_one_empties() {
        let one = ppm_after(0.0, 500.0, 60.0, 0.0, 600.0);
        let two = ppm_after(0.0, 500.0, 60.0, 0.0, 1200.0);
        assert!((two - 2.0 * one).abs() < 1e-9, "{one} then {two} ppm");
        assert!(ppm_after(1000.0, 0.0, 60.0, 10.0, 3600.0) < 0.1);
    }

    #[test]
    fn an_alarm_stays_quiet_at_thirty_ppm_for_a_month_and_forgets() {
        let dose = alarm_after(0.0, 30.0, 30.0 * 86_400.0);
        assert!(!alarm_due(dose) && alarm_in_s(0.5, 30.0).is_none());
        assert!(alarm_after(0.9, 0.0, 7200.0) < 0.05);
    }

    #[test]
    fn an_alarm_responds_in_the_middle_of_its_published_band() {
        for band in ALARM_BANDS {
            let seconds = alarm_in_s(0.0, band.ppm).unwrap();
            let middle = f64::sqrt(band.from_min * band.to_min) * 60.0;
            assert!(
                (seconds / middle - 1.0).abs() < 1e-3,
                "{} ppm: {seconds} s, middle {middle} s",
                band.ppm
            );
        }
    }

    #[test]
    fn the_band_that_is_quoted_is_of_the_highest_level_that_was_reached() {
        for (ppm, level) in [(31.0, 70.0), (149.0, 70.0), (150.0, 150.0), (9000.0, 400.0)] {
            assert!((alarm_band(ppm).ppm - level).abs() < 1e-12, "{ppm} ppm");
        }
    }

    #[test]
    fn an_alarm_sounds_at_the_computed_instant() {
        for ppm in [70.0, 100.0, 400.0, 5000.0] {
            let seconds = alarm_in_s(0.2, ppm).unwrap();
            let dose = alarm_after(0.2, ppm, seconds);
            assert!(
                (dose - 1.0).abs() < 1e-12,
                "{ppm} ppm after {seconds} s: dose {dose}"
            );
        }
    }

    #[test]
    fn a_nearer_engine_lets_more_in_and_20_ft_is_no_wall() {
        let share = |placement: Placement| match placement.outlet() {
            Outlet::Garage | Outlet::House => 1.0,
            Outlet::Outdoors(share) => share,
        };
        assert!(share(Placement::Garage) > share(Placement::NearOpening));
        assert!(share(Placement::NearOpening) > share(Placement::TwentyFeetAway));
        assert!(share(Placement::TwentyFeetAway) > 0.0);
    }

    #[test]
    fn a_wider_opening_near_a_steady_engine_never_gives_less_gas_at_any_time() {
        let at = |times: f64, minute: i32| {
            let gas = 500.0 * drawn_in(0.05, times);
            ppm_after(0.0, gas, 140.0, 0.5 * times, 60.0 * f64::from(minute))
        };
        for minute in [1, 10, 60, 240, 2000] {
            let all = [1.0, 1.5, 2.0, 5.0, 10.0].map(|times| at(times, minute));
            let grows = all.windows(2).all(|p| p[1] >= p[0] * (1.0 - 1e-12));
            assert!(grows, "{minute} min: {all:?}");
        }
        // A share never exceeds the whole.
        assert!((drawn_in(0.05, 100.0) - 1.0).abs() < 1e-12);
    }
}
