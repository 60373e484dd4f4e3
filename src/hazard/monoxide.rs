//! Carbon monoxide: from an engine into a room, from the air into the blood, and when the alarm sounds.
//!
//! Room: one well-mixed volume with a steady source and a steady change of air.
//! Blood: the Coburn–Forster–Kane equation with its oxyhemoglobin term kept (not the linear short form), solved exactly but for rounding.
//! Alarm: a dose that reaches 1 within the response times of UL 2034.
//! Not covered: several rooms, wind, the rise of emission from about 500 to nearly 4 000 g/h as a closed room runs out of oxygen, so a figure for a closed garage is a lower bound.
//! Accuracy: uptake depends strongly on breathing and build; the set used here fits light activity and clears a little faster than a resting person.

use crate::units::portable;

/// Carbon monoxide from a stock portable generator in fresh air, grams per hour.
/// NIST, checked: about 500 near ambient oxygen.
pub const STOCK_EMISSION_G_PER_H: f64 = 500.0;

/// Where the engine runs.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Placement {
    /// In the attached garage, with its big door open or not.
    Garage,
    /// Outdoors beside an open window, door or vent.
    NearOpening,
    /// Outdoors, 20 ft or more from the house, exhaust away from it, openings shut.
    TwentyFeetAway,
}

impl Placement {
    /// Share of what the engine emits that gets into the house.
    ///
    /// Assumptions, no published figure: garage 0.3 (0.05 to 0.6), near an opening 0.05 (0.005 to 0.2), 20 ft away 0.002 (0 to 0.02).
    /// Published garage tests span from below 10 to above 10 000 ppm indoors; 20 ft is a rule to keep and not a wall that gas respects.
    pub fn share_indoors(self) -> f64 {
        match self {
            Self::Garage => 0.3,
            Self::NearOpening => 0.05,
            Self::TwentyFeetAway => 0.002,
        }
    }
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

/// Carboxyhemoglobin after `seconds` of breathing `ppm`, from `cohb_pct`, percent of all hemoglobin, 0 to below 100.
///
/// d*x*/dt = α - β *x*/(*c* - *x*) has the implicit solution that is solved here by Newton's method.
/// Source: Coburn–Forster–Kane equation, checked; parameters from memory, of the usual published sizes.
pub fn cohb_after(cohb_pct: f64, ppm: f64, seconds: f64) -> f64 {
    let minutes = seconds / 60.0;
    let resistance = 1.0 / DIFFUSION_ML_PER_MIN_MMHG + DRY_PRESSURE_MMHG / VENTILATION_ML_PER_MIN;
    let inspired_mmhg = ppm * 1e-6 * DRY_PRESSURE_MMHG;
    let uptake = (OWN_CO_ML_PER_MIN + inspired_mmhg / resistance) / BLOOD_ML;
    let clearance = CAPILLARY_O2_MMHG / (AFFINITY * BLOOD_ML * resistance);
    let total = uptake + clearance;

    let now = cohb_pct / 100.0 * O2_CAPACITY;
    let settled = O2_CAPACITY * uptake / total;
    let gap = settled - now;
    let slope = O2_CAPACITY - settled;
    // gap (1 - e^-w) + slope w = total t, for w = ln(gap now / gap then).
    let mut w = 0.0;
    for _ in 0..MOST_STEPS {
        let left = portable::exp(-w);
        let miss = gap * (1.0 - left) + slope * w - total * minutes;
        let step = miss / (gap * left + slope);
        w -= step;
        if step.abs() <= 1e-15 * (1.0 + w.abs()) {
            break;
        }
    }
    (settled - gap * portable::exp(-w)) / O2_CAPACITY * 100.0
}

/// What an alarm has gathered after `seconds` at `ppm`, from `dose`: it sounds when it reaches 1.
///
/// UL 2034: 70 ppm 60–240 min, 150 ppm 10–50 min, 400 ppm 4–15 min, none at 30 ppm; checked in a copy that quotes it.
/// The middle of each band on a logarithmic scale, and straight between them; below 60 ppm it forgets with a time constant of 30 min (assumption).
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

/// What a level of carboxyhemoglobin does to a healthy adult as a rule; each begins at the level named.
/// Levels from memory, of the usual published tables; infants, the old and people with heart disease suffer earlier.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Symptoms {
    /// Below 10 %: nothing noticed.
    None,
    /// 10 %: slight headache.
    Headache,
    /// 20 %: throbbing headache, nausea.
    Nausea,
    /// 30 %: dizzy, confused, judgment fails: no longer sure to find the way out.
    Confusion,
    /// 40 %: collapse on effort.
    Collapse,
    /// 50 %: unconscious; death may follow.
    Unconscious,
}

/// The symptoms at a level of carboxyhemoglobin in percent.
pub fn symptoms(cohb_pct: f64) -> Symptoms {
    if cohb_pct >= 50.0 {
        Symptoms::Unconscious
    } else if cohb_pct >= 40.0 {
        Symptoms::Collapse
    } else if cohb_pct >= 30.0 {
        Symptoms::Confusion
    } else if cohb_pct >= 20.0 {
        Symptoms::Nausea
    } else if cohb_pct >= 10.0 {
        Symptoms::Headache
    } else {
        Symptoms::None
    }
}

/// Milligrams per cubic meter of one ppm at 25 °C and one atmosphere: 28.01 g/mol over 24.45 L/mol.
const MG_PER_M3_PER_PPM: f64 = 28.01 / 24.45;

/// Affinity of hemoglobin for carbon monoxide over that for oxygen (M).
const AFFINITY: f64 = 218.0;

/// Mean oxygen pressure in the capillaries of the lung.
const CAPILLARY_O2_MMHG: f64 = 100.0;

/// Carbon monoxide that the body makes itself.
const OWN_CO_ML_PER_MIN: f64 = 0.007;

/// Diffusing capacity of the lung.
const DIFFUSION_ML_PER_MIN_MMHG: f64 = 30.0;

/// Alveolar ventilation.
const VENTILATION_ML_PER_MIN: f64 = 6000.0;

/// Volume of blood.
const BLOOD_ML: f64 = 5500.0;

/// Barometric pressure less water vapor at body temperature.
const DRY_PRESSURE_MMHG: f64 = 713.0;

/// Oxygen that blood can bind, milliliters per milliliter.
const O2_CAPACITY: f64 = 0.20;

/// Newton's method needs below ten steps; this only bounds it.
const MOST_STEPS: usize = 60;

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
    fn the_blood_equation_holds_along_its_solution() {
        // dx/dt by a small difference against the right side, at several levels and concentrations.
        for (cohb, ppm) in [
            (0.8, 35.0),
            (5.0, 200.0),
            (30.0, 1600.0),
            (30.0, 0.0),
            (70.0, 12_800.0),
        ] {
            let (before, after) = (cohb_after(cohb, ppm, 0.0), cohb_after(cohb, ppm, 2.0));
            let slope = (after - before) / (2.0 / 60.0) / 100.0 * O2_CAPACITY;
            let x = f64::midpoint(before, after) / 100.0 * O2_CAPACITY;
            let b = 1.0 / 30.0 + 713.0 / 6000.0;
            let right = 0.007 / 5500.0
                + (ppm * 713e-6 - x * 100.0 / (218.0 * (O2_CAPACITY - x))) / (5500.0 * b);
            assert!(
                (slope - right).abs() < 1e-7 + 1e-4 * right.abs(),
                "{cohb} % at {ppm} ppm: {slope}, {right}"
            );
        }
    }

    #[test]
    fn breathing_in_two_parts_is_breathing_at_once() {
        for (cohb, ppm) in [
            (0.8, 0.0),
            (0.8, 400.0),
            (40.0, 0.0),
            (2.0, 20_000.0),
            (60.0, 200.0),
            (99.9, 0.0),
        ] {
            let parts = cohb_after(cohb_after(cohb, ppm, 731.0), ppm, 1469.0);
            let whole = cohb_after(cohb, ppm, 2200.0);
            assert!(
                (parts - whole).abs() < 1e-10,
                "{cohb} % at {ppm} ppm: {parts} in parts, {whole} at once"
            );
        }
    }

    #[test]
    fn blood_stays_between_empty_and_full_and_more_gas_is_never_better() {
        for hours in [0.1, 1.0, 10.0, 100.0] {
            let mut before = 0.0;
            for ppm in [0.0, 9.0, 35.0, 70.0, 400.0, 1600.0, 12_800.0, 100_000.0] {
                let cohb = cohb_after(0.8, ppm, hours * 3600.0);
                assert!(
                    cohb >= before && cohb < 100.0,
                    "{ppm} ppm for {hours} h: {cohb} % after {before} %"
                );
                before = cohb;
            }
        }
    }

    #[test]
    fn an_alarm_stays_quiet_at_thirty_ppm_for_a_month_and_forgets() {
        let dose = alarm_after(0.0, 30.0, 30.0 * 86_400.0);
        assert!(!alarm_due(dose) && alarm_in_s(0.5, 30.0).is_none());
        assert!(alarm_after(0.9, 0.0, 7200.0) < 0.05);
    }

    #[test]
    fn an_alarm_responds_in_the_middle_of_its_published_band() {
        for (ppm, from_s, to_s) in [
            (70.0, 3600.0, 14_400.0),
            (150.0, 600.0, 3000.0),
            (400.0, 240.0, 900.0),
        ] {
            let seconds = alarm_in_s(0.0, ppm).unwrap();
            let middle = f64::sqrt(from_s * to_s);
            assert!(
                (seconds / middle - 1.0).abs() < 1e-3,
                "{ppm} ppm: {seconds} s, middle {middle} s"
            );
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
    fn each_level_of_symptoms_begins_where_it_is_said_to() {
        let levels = [
            (10.0, Symptoms::None, Symptoms::Headache),
            (20.0, Symptoms::Headache, Symptoms::Nausea),
            (30.0, Symptoms::Nausea, Symptoms::Confusion),
            (40.0, Symptoms::Confusion, Symptoms::Collapse),
            (50.0, Symptoms::Collapse, Symptoms::Unconscious),
        ];
        for (cohb, below, from) in levels {
            assert_eq!(
                (symptoms(cohb - 0.01), symptoms(cohb)),
                (below, from),
                "at {cohb} %"
            );
        }
    }

    #[test]
    fn a_nearer_engine_lets_more_in() {
        assert!(Placement::Garage.share_indoors() > Placement::NearOpening.share_indoors());
        assert!(Placement::NearOpening.share_indoors() > Placement::TwentyFeetAway.share_indoors());
        assert!(
            Placement::TwentyFeetAway.share_indoors() > 0.0,
            "20 ft isn't a wall"
        );
    }
}
