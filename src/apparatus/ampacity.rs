//! Ampacity of building wire, the largest breaker that may guard it, and the factors that ambient and company take.
//!
//! NEC Table 310.16 (60, 75 and 90 °C columns), 240.4(D) and 240.6(A), 310.15(B)(1) and (C)(1), 210.20(A); editions 2017 to 2023.
//! Checked in a copy that quotes them, but for rows marked from memory in their comments.
//! Not covered: free air, more than 2 000 V, sizes in kcmil, rooftops.
//! Accuracy: the figures are the tables'; what lies between printed sizes isn't guessed.

use super::conductor::Awg;
use super::conductor::Material;

/// A temperature column of the table.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Column {
    /// 60 °C: terminals of small equipment, NM cable.
    C60,
    /// 75 °C: most terminals of 100 A and above.
    C75,
    /// 90 °C: the insulation of most wire made today.
    C90,
}

impl Column {
    /// Conductor temperature that the column lets, °C.
    pub fn celsius(self) -> f64 {
        match self {
            Self::C60 => 60.0,
            Self::C75 => 75.0,
            Self::C90 => 90.0,
        }
    }
}

/// Ambient of the table, °C.
pub const TABLE_AMBIENT_C: f64 = 30.0;

/// Amps that a building wire may carry, three loaded conductors at most, in 30 °C; `None` where the table prints none.
/// NEC 310.16.
pub fn allowable_a(awg: Awg, material: Material, column: Column) -> Option<f64> {
    let table = match material {
        Material::Copper => COPPER,
        Material::Aluminum => ALUMINUM,
    };
    let (_, amps) = table.iter().find(|(number, _)| *number == awg.number())?;
    let amps = match column {
        Column::C60 => amps[0],
        Column::C75 => amps[1],
        Column::C90 => amps[2],
    };
    (amps > 0.0).then_some(amps)
}

/// The greatest breaker or fuse that a small conductor may have, amps; `None` for sizes the rule doesn't name.
/// NEC 240.4(D): copper 14, 12 and 10 AWG checked, 18 and 16 AWG and aluminum from memory.
pub fn small_conductor_limit_a(awg: Awg, material: Material) -> Option<f64> {
    let limits: &[(i8, f64)] = match material {
        Material::Copper => &[(18, 7.0), (16, 10.0), (14, 15.0), (12, 20.0), (10, 30.0)],
        Material::Aluminum => &[(12, 15.0), (10, 25.0)],
    };
    let (_, amps) = limits.iter().find(|(number, _)| *number == awg.number())?;
    Some(*amps)
}

/// The rating in amps of the largest breaker that may guard a copper wire of a house; `None` where no row is printed, or beyond 200 A.
///
/// It is the standard rating at or next above the 60 °C ampacity (NEC 240.4(B)), and no more than [`small_conductor_limit_a`].
pub fn largest_breaker_a(awg: Awg) -> Option<f64> {
    let ampacity = allowable_a(awg, Material::Copper, Column::C60)?;
    let standard = STANDARD_A.into_iter().find(|rating| *rating >= ampacity)?;
    let limit = small_conductor_limit_a(awg, Material::Copper);
    Some(limit.map_or(standard, |limit| limit.min(standard)))
}

/// Share of the tabled amps that is left when more than three current-carrying conductors lie together.
///
/// NEC 400.5(A)(3) for cords, 310.15(C)(1) for building wire, which print the same factors.
/// 4 to 20 conductors checked in a copy that quotes it, more from memory.
pub fn company_factor(n_loaded: u32) -> f64 {
    match n_loaded {
        0..=3 => 1.0,
        4..=6 => 0.80,
        7..=9 => 0.70,
        10..=20 => 0.50,
        21..=30 => 0.45,
        31..=40 => 0.40,
        _ => 0.35,
    }
}

/// Share of the tabled amps that is left in air of `ambient_c` °C for conductors rated `rated_c`; 0 where the air is as hot.
///
/// The formula from which NEC 310.15(B)(1) is computed, √((rated - ambient)/(rated - 30)); the table prints it for bands of 5 °C, at the upper end of each.
pub fn ambient_factor(ambient_c: f64, rated_c: f64) -> f64 {
    ((rated_c - ambient_c).max(0.0) / (rated_c - TABLE_AMBIENT_C)).sqrt()
}

/// Amps that may run for three hours or more on a breaker of `rating_a`: 80 % of it.
/// NEC 210.20(A): the breaker takes 125 % of a continuous load; checked.
pub fn continuous_a(rating_a: f64) -> f64 {
    rating_a / 1.25
}

/// Standard ratings of breakers in amps, up to those of a house; NEC 240.6(A), from memory.
const STANDARD_A: [f64; 18] = [
    15.0, 20.0, 25.0, 30.0, 35.0, 40.0, 45.0, 50.0, 60.0, 70.0, 80.0, 90.0, 100.0, 110.0, 125.0,
    150.0, 175.0, 200.0,
];

/// NEC 310.16, copper: gauge number, then amps at 60, 75 and 90 °C, 0 where none is printed.
/// The 15 and 20 A of the first column are the current edition's, from memory; so are 18 and 16 AWG and 3 AWG at 90 °C.
const COPPER: &[(i8, [f64; 3])] = &[
    (18, [0.0, 0.0, 14.0]),
    (16, [0.0, 0.0, 18.0]),
    (14, [15.0, 20.0, 25.0]),
    (12, [20.0, 25.0, 30.0]),
    (10, [30.0, 35.0, 40.0]),
    (8, [40.0, 50.0, 55.0]),
    (6, [55.0, 65.0, 75.0]),
    (4, [70.0, 85.0, 95.0]),
    (3, [85.0, 100.0, 115.0]),
    (2, [95.0, 115.0, 130.0]),
    (0, [125.0, 150.0, 170.0]),
    (-1, [145.0, 175.0, 195.0]),
    (-3, [195.0, 230.0, 260.0]),
];

/// NEC 310.16, aluminum: as [`COPPER`]; 12 AWG at 60 °C and 6 AWG at 90 °C are the current edition's, from memory.
const ALUMINUM: &[(i8, [f64; 3])] = &[
    (12, [15.0, 20.0, 25.0]),
    (10, [25.0, 30.0, 35.0]),
    (8, [35.0, 40.0, 45.0]),
    (6, [40.0, 50.0, 55.0]),
    (4, [55.0, 65.0, 75.0]),
    (2, [75.0, 90.0, 100.0]),
    (0, [100.0, 120.0, 135.0]),
    (-1, [115.0, 135.0, 150.0]),
    (-3, [150.0, 180.0, 205.0]),
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_hotter_column_and_a_thicker_wire_never_carry_less() {
        for table in [COPPER, ALUMINUM] {
            for (number, amps) in table {
                assert!(
                    amps[0] <= amps[1] && amps[1] < amps[2],
                    "{number}: {amps:?}"
                );
            }
            for pair in table.windows(2) {
                assert!(
                    pair[0].1[2] < pair[1].1[2],
                    "{} to {}",
                    pair[0].0,
                    pair[1].0
                );
            }
        }
    }

    #[test]
    fn a_small_conductor_has_a_breaker_that_its_sixty_degree_column_carries() {
        for material in [Material::Copper, Material::Aluminum] {
            for number in [14, 12, 10] {
                let awg = Awg::new(number).unwrap();
                let Some(limit) = small_conductor_limit_a(awg, material) else {
                    continue;
                };
                let carries = allowable_a(awg, material, Column::C60).unwrap();
                assert!(
                    limit <= carries,
                    "{awg} {material:?}: breaker {limit} A, carries {carries} A"
                );
            }
        }
        assert_eq!(
            small_conductor_limit_a(Awg::new(8).unwrap(), Material::Copper),
            None
        );
    }

    #[test]
    fn more_company_and_hotter_air_never_leave_more() {
        for n in 0..60 {
            assert!(company_factor(n + 1) <= company_factor(n), "{n} conductors");
        }
        assert!((ambient_factor(30.0, 60.0) - 1.0).abs() < 1e-12);
        assert!(ambient_factor(60.0, 60.0) < 1e-12 && ambient_factor(75.0, 60.0) < 1e-12);
        assert!(ambient_factor(20.0, 60.0) > 1.0);
    }

    #[test]
    fn the_largest_breaker_is_at_most_one_standard_size_above_the_ampacity() {
        let pairs: Vec<(String, f64)> = COPPER
            .iter()
            .filter_map(|(number, _)| Awg::new(*number))
            .filter_map(|awg| Some((awg.to_string(), largest_breaker_a(awg)?)))
            .collect();
        let expected = [
            ("14", 15.0),
            ("12", 20.0),
            ("10", 30.0),
            ("8", 40.0),
            ("6", 60.0),
            ("4", 70.0),
            ("3", 90.0),
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
        assert_eq!(allowable_a(odd, Material::Copper, Column::C75), None);
        assert_eq!(largest_breaker_a(odd), None);
    }
}
