//! Carbon monoxide in the blood: the Coburn–Forster–Kane equation at rest, at light work and at heavy work.
//!
//! The oxyhemoglobin term is kept (not the linear short form) and the equation is solved exactly but for rounding, so a stretch at a steady concentration may be cut anywhere.
//! Accuracy: uptake depends strongly on breathing and build; between rest and heavy work it differs four times, which is more than any other doubt.
//! Not covered: children, pregnancy, smokers, air short of oxygen, treatment with oxygen.
//! Source: the equation and the resting set checked in copies that quote them; the sets of the three levels of work from memory (NIOSH criteria document of 1972).

use crate::units::portable;

/// What the body does while it breathes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Activity {
    /// Asleep or lying: 25 mL/min/mmHg, 4.2 L/min.
    Rest,
    /// Sitting or about the house: 30 mL/min/mmHg, 6 L/min.
    Sedentary,
    /// Light work: 40 mL/min/mmHg, 18 L/min.
    LightWork,
    /// Heavy work, the case that alarms are made for: 60 mL/min/mmHg, 30 L/min.
    HeavyWork,
}

impl Activity {
    /// Diffusing capacity of the lung in milliliters a minute and mmHg, and alveolar ventilation in milliliters a minute.
    pub fn breathing(self) -> (f64, f64) {
        match self {
            Self::Rest => (25.0, 4200.0),
            Self::Sedentary => (30.0, 6000.0),
            Self::LightWork => (40.0, 18_000.0),
            Self::HeavyWork => (60.0, 30_000.0),
        }
    }

    /// What holds the gas back on its way into the blood, mmHg minutes a milliliter.
    fn resistance(self) -> f64 {
        let (diffusion, ventilation) = self.breathing();
        1.0 / diffusion + DRY_PRESSURE_MMHG / ventilation
    }
}

/// Carboxyhemoglobin after `seconds` of breathing `ppm` at this activity, from `cohb_pct`, percent of all hemoglobin, 0 to below 100.
///
/// d*x*/dt = α - β *x*/(*c* - *x*) has the implicit solution that is solved here by Newton's method.
pub fn cohb_after(cohb_pct: f64, ppm: f64, seconds: f64, activity: Activity) -> f64 {
    let minutes = seconds / 60.0;
    let (total, settled) = settles(ppm, activity);
    let now = cohb_pct / 100.0 * O2_CAPACITY;
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

/// Seconds of breathing `ppm` at this activity until the blood has risen from `cohb_pct` to `to_pct`; none if it never gets there.
pub fn reaches_in_s(cohb_pct: f64, to_pct: f64, ppm: f64, activity: Activity) -> Option<f64> {
    let (total, settled) = settles(ppm, activity);
    let gap = |pct: f64| settled - pct / 100.0 * O2_CAPACITY;
    let (now, then) = (gap(cohb_pct), gap(to_pct));
    if then <= 0.0 || now < then {
        return None;
    }
    let minutes = (now - then + (O2_CAPACITY - settled) * portable::ln(now / then)) / total;
    Some(minutes * 60.0)
}

/// Rate of uptake and clearance together, a minute, and the carboxyhemoglobin at which the blood settles, milliliters a milliliter.
fn settles(ppm: f64, activity: Activity) -> (f64, f64) {
    let resistance = activity.resistance();
    let inspired_mmhg = ppm * 1e-6 * DRY_PRESSURE_MMHG;
    let uptake = (OWN_CO_ML_PER_MIN + inspired_mmhg / resistance) / BLOOD_ML;
    let clearance = CAPILLARY_O2_MMHG / (AFFINITY * BLOOD_ML * resistance);
    let total = uptake + clearance;
    (total, O2_CAPACITY * uptake / total)
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

impl Symptoms {
    /// The level at which they begin, percent.
    pub fn begin_pct(self) -> f64 {
        match self {
            Self::None => 0.0,
            Self::Headache => 10.0,
            Self::Nausea => 20.0,
            Self::Confusion => 30.0,
            Self::Collapse => 40.0,
            Self::Unconscious => 50.0,
        }
    }

    /// Their name in word files.
    pub fn name(self) -> &'static str {
        match self {
            Self::None => "none",
            Self::Headache => "headache",
            Self::Nausea => "nausea",
            Self::Confusion => "confusion",
            Self::Collapse => "collapse",
            Self::Unconscious => "unconscious",
        }
    }
}

/// The symptoms at a level of carboxyhemoglobin in percent.
pub fn symptoms(cohb_pct: f64) -> Symptoms {
    let all = [
        Symptoms::Headache,
        Symptoms::Nausea,
        Symptoms::Confusion,
        Symptoms::Collapse,
        Symptoms::Unconscious,
    ];
    let reached = all.into_iter().rfind(|s| cohb_pct >= s.begin_pct());
    reached.unwrap_or(Symptoms::None)
}

/// Affinity of hemoglobin for carbon monoxide over that for oxygen (M).
const AFFINITY: f64 = 218.0;

/// Mean oxygen pressure in the capillaries of the lung.
const CAPILLARY_O2_MMHG: f64 = 100.0;

/// Carbon monoxide that the body makes itself.
const OWN_CO_ML_PER_MIN: f64 = 0.007;

/// Volume of blood.
const BLOOD_ML: f64 = 5500.0;

/// Barometric pressure less water vapor at body temperature.
const DRY_PRESSURE_MMHG: f64 = 713.0;

/// Oxygen that blood can bind, milliliters per milliliter.
const O2_CAPACITY: f64 = 0.20;

/// Newton's method needs below ten steps; this only bounds it.
const MOST_STEPS: usize = 60;

#[cfg(test)]
mod tests {
    use super::*;

    const ALL: [Activity; 4] = [
        Activity::Rest,
        Activity::Sedentary,
        Activity::LightWork,
        Activity::HeavyWork,
    ];

    #[test]
    fn the_time_to_a_level_is_the_time_after_which_the_blood_has_it() {
        for activity in ALL {
            for (from, to, ppm) in [(0.8, 10.0, 300.0), (12.0, 40.0, 900.0), (5.0, 5.0, 400.0)] {
                let seconds = reaches_in_s(from, to, ppm, activity).unwrap();
                let then = cohb_after(from, ppm, seconds, activity);
                assert!((then - to).abs() < 1e-9, "{then} % for {to} %");
            }
            assert_eq!(reaches_in_s(0.8, 40.0, 50.0, activity), None);
            assert_eq!(reaches_in_s(20.0, 10.0, 900.0, activity), None);
        }
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
            for activity in ALL {
                let level = |seconds| cohb_after(cohb, ppm, seconds, activity);
                let (before, after) = (level(0.0), level(2.0));
                let slope = (after - before) / (2.0 / 60.0) / 100.0 * O2_CAPACITY;
                let x = f64::midpoint(before, after) / 100.0 * O2_CAPACITY;
                let (diffusion, ventilation) = activity.breathing();
                let b = 1.0 / diffusion + 713.0 / ventilation;
                let right = 0.007 / 5500.0
                    + (ppm * 713e-6 - x * 100.0 / (218.0 * (O2_CAPACITY - x))) / (5500.0 * b);
                assert!(
                    (slope - right).abs() < 1e-7 + 1e-4 * right.abs(),
                    "{cohb} % at {ppm} ppm, {activity:?}: {slope}, {right}"
                );
            }
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
            for activity in ALL {
                let part = cohb_after(cohb, ppm, 731.0, activity);
                let parts = cohb_after(part, ppm, 1469.0, activity);
                let whole = cohb_after(cohb, ppm, 2200.0, activity);
                assert!(
                    (parts - whole).abs() < 1e-10,
                    "{cohb} % at {ppm} ppm: {parts} in parts, {whole} at once"
                );
            }
        }
    }

    #[test]
    fn blood_stays_between_empty_and_full_and_more_gas_or_more_work_is_never_better() {
        for hours in [0.1, 1.0, 10.0, 100.0] {
            let mut before = [0.0; 4];
            for ppm in [35.0, 70.0, 400.0, 1600.0, 12_800.0, 100_000.0] {
                let now = ALL.map(|a| cohb_after(0.8, ppm, hours * 3600.0, a));
                for (now, before) in now.iter().zip(before) {
                    assert!(
                        *now >= before && *now < 100.0,
                        "{ppm} ppm, {hours} h: {now} %"
                    );
                }
                // Once settled, what the body makes itself weighs more at rest.
                let ordered = now.windows(2).all(|pair| pair[1] >= pair[0] - 0.05);
                assert!(ordered || hours > 1.0, "{ppm} ppm, {hours} h: {now:?}");
                before = now;
            }
        }
    }

    #[test]
    fn in_the_end_all_levels_of_work_settle_at_the_same_level_but_for_what_the_body_makes() {
        let ends = ALL.map(|a| cohb_after(0.8, 100.0, 1e7, a));
        assert!(
            ends.iter().all(|e| (e / ends[0] - 1.0).abs() < 0.03),
            "{ends:?}"
        );
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
}
