//! Ampacity of building wire, and the largest breaker that may guard it.
//!
//! Copper in raceway, cable or earth, not more than three loaded conductors, 30 °C around it: NEC Table 310.16 (editions 2017 to 2023), with the small-conductor rule of 240.4(D).
//! These are the printed figures, exact where a row is printed and unknown elsewhere; there is no rule between rows.
//! Not covered: aluminum, hotter surroundings, more conductors in a bundle, wire in free air, motor and tap rules.

use super::conductor::Awg;

/// The temperature that insulation and terminals are rated for: a column of the table.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Column {
    /// 60 °C: cable of a house, and terminals up to 100 A (NEC 334.80 and 110.14(C), from memory).
    C60,
    /// 75 °C.
    C75,
    /// 90 °C.
    C90,
}

/// Standard ratings of breakers in amps, up to those of a house.
/// Source: NEC 240.6(A), from memory.
const STANDARD_A: [f64; 18] = [
    15.0, 20.0, 25.0, 30.0, 35.0, 40.0, 45.0, 50.0, 60.0, 70.0, 80.0, 90.0, 100.0, 110.0, 125.0,
    150.0, 175.0, 200.0,
];

/// Gauge number, and amps at 60, 75 and 90 °C.
/// Source: NEC Table 310.16; checked in a copy that quotes it, but for 14 and 12 AWG at 60 °C and 3 AWG at 90 °C, which are from memory.
const TABLE_310_16: [(i8, [Option<f64>; 3]); 12] = [
    (18, [None, None, Some(14.0)]),
    (16, [None, None, Some(18.0)]),
    (14, [Some(15.0), Some(20.0), Some(25.0)]),
    (12, [Some(20.0), Some(25.0), Some(30.0)]),
    (10, [Some(30.0), Some(35.0), Some(40.0)]),
    (8, [Some(40.0), Some(50.0), Some(55.0)]),
    (6, [Some(55.0), Some(65.0), Some(75.0)]),
    (4, [Some(70.0), Some(85.0), Some(95.0)]),
    (2, [Some(95.0), Some(115.0), Some(130.0)]),
    (0, [Some(125.0), Some(150.0), Some(170.0)]),
    (-1, [Some(145.0), Some(175.0), Some(195.0)]),
    (-3, [Some(195.0), Some(230.0), Some(260.0)]),
];

/// Amps that this wire may carry for good; `None` where no row is printed.
/// Source: NEC Table 310.16.
pub fn allowable_a(awg: Awg, column: Column) -> Option<f64> {
    let (_, [at_60, at_75, at_90]) = TABLE_310_16
        .into_iter()
        .find(|(number, _)| *number == awg.number())?;
    match column {
        Column::C60 => at_60,
        Column::C75 => at_75,
        Column::C90 => at_90,
    }
}

/// The largest device in amps that may guard a small conductor, whatever its ampacity; `None` for 8 AWG and thicker, which have no such limit, and for sizes that aren't named.
/// Source: NEC 240.4(D); 14 to 10 AWG checked in a copy that quotes it, 18 and 16 AWG from memory.
pub fn small_conductor_limit_a(awg: Awg) -> Option<f64> {
    match awg.number() {
        18 => Some(7.0),
        16 => Some(10.0),
        14 => Some(15.0),
        12 => Some(20.0),
        10 => Some(30.0),
        _ => None,
    }
}

/// The rating in amps of the largest breaker that may guard a wire of a house; `None` where no row is printed, or beyond 200 A.
///
/// It is the standard rating at or next above the 60 °C ampacity (NEC 240.4(B)), and no more than [`small_conductor_limit_a`].
pub fn largest_breaker_a(awg: Awg) -> Option<f64> {
    let ampacity = allowable_a(awg, Column::C60)?;
    let standard = STANDARD_A.into_iter().find(|rating| *rating >= ampacity)?;
    Some(small_conductor_limit_a(awg).map_or(standard, |limit| limit.min(standard)))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn sizes() -> impl Iterator<Item = Awg> {
        TABLE_310_16
            .into_iter()
            .map(|(number, _)| Awg::new(number).unwrap())
    }

    #[test]
    fn a_thicker_wire_and_a_hotter_column_never_carry_less() {
        let columns = [Column::C60, Column::C75, Column::C90];
        for column in columns {
            let amps: Vec<f64> = sizes().filter_map(|awg| allowable_a(awg, column)).collect();
            assert!(amps.is_sorted(), "{column:?}: {amps:?}");
        }
        for awg in sizes() {
            let amps: Vec<f64> = columns
                .iter()
                .filter_map(|column| allowable_a(awg, *column))
                .collect();
            assert!(amps.is_sorted(), "{awg}: {amps:?}");
        }
    }

    #[test]
    fn the_largest_breaker_is_at_most_one_standard_size_above_the_ampacity() {
        let pairs: Vec<(String, f64)> = sizes()
            .filter_map(|awg| Some((awg.to_string(), largest_breaker_a(awg)?)))
            .collect();
        let expected = [
            ("14", 15.0),
            ("12", 20.0),
            ("10", 30.0),
            ("8", 40.0),
            ("6", 60.0),
            ("4", 70.0),
            ("2", 100.0),
            ("1/0", 125.0),
            ("2/0", 150.0),
            ("4/0", 200.0),
        ];
        assert_eq!(
            pairs,
            expected.map(|(awg, amps): (&str, f64)| (awg.to_owned(), amps))
        );
    }

    #[test]
    fn a_size_that_is_not_printed_has_no_answer() {
        let odd = Awg::new(13).unwrap();
        assert_eq!(allowable_a(odd, Column::C75), None);
        assert_eq!(largest_breaker_a(odd), None);
    }
}
