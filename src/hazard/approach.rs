//! How near anyone may come to a line or to open live parts.
//!
//! For line workers 29 CFR 1910.269, Table R-6, the alternative minimum approach distances, to 900 m above the sea and to 72.5 kV.
//! For everybody else 29 CFR 1910.333(c)(3)(i); for booms and ladders' kin 29 CFR 1926.1408, Table A; for open panels NFPA 70E, Table 130.4(E)(a).
//! A three-phase line is judged by its phase-to-phase voltage, a single-phase system by its voltage to ground.
//! Not covered: altitude above 900 m, rubber insulating equipment, arc flash, and voltages above 72.5 kV for qualified people.

/// Between which conductors somebody may come.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Exposure {
    /// Phase to ground.
    PhaseToGround,
    /// Phase to phase.
    PhaseToPhase,
}

/// How near a person may come.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Nearest {
    /// No distance is given, but no contact.
    NoContact,
    /// So many feet.
    Feet(f64),
    /// The table ends below this voltage.
    NotCovered,
}

impl Nearest {
    /// The distance in feet: 0 where only contact is forbidden, `None` where the table ends.
    pub fn feet(self) -> Option<f64> {
        match self {
            Self::NoContact => Some(0.0),
            Self::Feet(feet) => Some(feet),
            Self::NotCovered => None,
        }
    }
}

/// Least distance of a qualified person without insulation from a conductor of a system of `nominal_kv` kilovolts, in feet.
///
/// 29 CFR 1910.269, Table R-6; checked in a copy that quotes it, the rows up to 0.75 kV part from memory.
pub fn qualified(nominal_kv: f64, exposure: Exposure) -> Nearest {
    match row(nominal_kv) {
        None => Nearest::NotCovered,
        Some(row) if row.meters.0 == 0.0 => Nearest::NoContact,
        Some(row) => Nearest::Feet(match exposure {
            Exposure::PhaseToGround => row.feet.0,
            Exposure::PhaseToPhase => row.feet.1,
        }),
    }
}

/// The same distance in meters, as the table prints it; 0 where only contact is forbidden, `None` where the table ends.
pub fn qualified_m(nominal_kv: f64, exposure: Exposure) -> Option<f64> {
    row(nominal_kv).map(|row| match exposure {
        Exposure::PhaseToGround => row.meters.0,
        Exposure::PhaseToPhase => row.meters.1,
    })
}

/// Least distance of a person who isn't qualified from an overhead line whose voltage to ground is `kv_to_ground` kilovolts, feet.
///
/// 10 ft up to 50 kV, and 4 in for every 10 kV above: 29 CFR 1910.333(c)(3)(i); the first part checked, the second from memory.
pub fn unqualified_ft(kv_to_ground: f64) -> f64 {
    10.0 + (kv_to_ground - 50.0).max(0.0) / 10.0 * (4.0 / 12.0)
}

/// Least clearance of a crane or boom from a line of `kv` kilovolts, feet; `None` above 1 000 kV.
///
/// 29 CFR 1926.1408, Table A; checked in a copy that quotes it.
pub fn equipment_ft(kv: f64) -> Option<f64> {
    let rows = [
        (50.0, 10.0),
        (200.0, 15.0),
        (350.0, 20.0),
        (500.0, 25.0),
        (750.0, 35.0),
        (1000.0, 45.0),
    ];
    rows.into_iter().find(|r| kv <= r.0).map(|r| r.1)
}

/// Boundaries around open live parts that are fixed in place, as inside a panel.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Boundaries {
    /// Nobody unqualified comes nearer.
    pub limited_ft: f64,
    /// Nobody comes nearer without insulation; `None`: avoid contact.
    pub restricted_ft: Option<f64>,
}

/// The boundaries around fixed open parts of `volts` between phases; `None` below 50 V and above 15 kV.
///
/// NFPA 70E, Table 130.4(E)(a), alternating current; 151 V to 750 V and 751 V to 15 kV checked in a copy that quotes it, 50 V to 150 V from memory.
pub fn boundaries(volts: f64) -> Option<Boundaries> {
    let at = |limited_ft, restricted_ft| {
        Some(Boundaries {
            limited_ft,
            restricted_ft,
        })
    };
    if !(50.0..=15_000.0).contains(&volts) {
        None
    } else if volts <= 150.0 {
        at(3.5, None)
    } else if volts <= 750.0 {
        at(3.5, Some(1.0))
    } else {
        at(5.0, Some(2.0 + 2.0 / 12.0))
    }
}

struct Row {
    to_kv: f64,
    meters: (f64, f64),
    feet: (f64, f64),
}

const fn table_row(to_kv: f64, meters: (f64, f64), feet: (f64, f64)) -> Row {
    Row {
        to_kv,
        meters,
        feet,
    }
}

/// Table R-6: nominal kilovolts up to which, phase to ground and phase to phase.
const TABLE: &[Row] = &[
    table_row(0.3, (0.0, 0.0), (0.0, 0.0)),
    table_row(0.75, (0.33, 0.33), (1.09, 1.09)),
    table_row(5.0, (0.63, 0.63), (2.07, 2.07)),
    table_row(15.0, (0.65, 0.68), (2.14, 2.24)),
    table_row(36.0, (0.77, 0.89), (2.53, 2.92)),
    table_row(46.0, (0.84, 0.98), (2.76, 3.22)),
    table_row(72.5, (1.00, 1.20), (3.29, 3.94)),
];

fn row(nominal_kv: f64) -> Option<&'static Row> {
    TABLE.iter().find(|r| nominal_kv <= r.to_kv)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_two_units_of_the_table_are_one_distance() {
        for row in TABLE {
            for (meters, feet) in [(row.meters.0, row.feet.0), (row.meters.1, row.feet.1)] {
                let ours = meters / 0.3048;
                assert!(
                    (ours - feet).abs() < 0.015,
                    "{meters} m: {ours} ft, printed {feet} ft"
                );
            }
        }
    }

    #[test]
    fn more_volts_never_let_anyone_nearer() {
        let mut before = (0.0, 0.0, 0.0);
        for tenth in 1..725_i32 {
            let kv = f64::from(tenth) / 10.0;
            let feet = |exposure| qualified(kv, exposure).feet().unwrap();
            let now = (
                feet(Exposure::PhaseToGround),
                feet(Exposure::PhaseToPhase),
                unqualified_ft(kv),
            );
            assert!(
                now.0 >= before.0 && now.1 >= before.1 && now.2 >= before.2,
                "{kv} kV"
            );
            assert!(now.0 <= now.1 && now.1 < now.2, "{kv} kV: {now:?}");
            before = now;
        }
        assert_eq!(
            qualified(73.0, Exposure::PhaseToGround),
            Nearest::NotCovered
        );
    }

    #[test]
    fn a_distribution_line_is_judged_by_its_row_and_a_panel_by_contact() {
        let line = qualified(12.47, Exposure::PhaseToGround);
        assert_eq!(line, Nearest::Feet(2.14));
        assert_eq!(qualified(0.24, Exposure::PhaseToGround), Nearest::NoContact);
        assert_eq!(boundaries(120.0).and_then(|b| b.restricted_ft), None);
        assert_eq!(boundaries(240.0).and_then(|b| b.restricted_ft), Some(1.0));
        assert_eq!((boundaries(24.0), boundaries(34_500.0)), (None, None));
    }

    #[test]
    fn a_boom_keeps_at_least_as_far_as_a_person_who_is_not_qualified_up_to_50_kv() {
        assert_eq!(equipment_ft(12.47), Some(unqualified_ft(7.2)));
        assert_eq!(equipment_ft(1001.0), None);
    }
}
