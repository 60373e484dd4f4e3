//! How near anyone may come to a line that isn't proved dead.
//!
//! 29 CFR 1910.269, Table R-6 (the alternative minimum approach distances, to 900 m above the sea), and 1926.1408 and 1910.333 for people who aren't qualified.
//! A 12.47/7.2 kV line is judged by its phase-to-phase voltage; the table before 2014 differs.
//! Not covered: other voltages, altitude, rubber-insulating protective equipment.

/// Least distance of a qualified person without insulation from a phase conductor of 5.1 to 15.0 kV, phase to ground, meters (2.14 ft).
/// 29 CFR 1910.269, Table R-6; checked in a copy that quotes it.
pub const QUALIFIED_M: f64 = 0.65;

/// The same in feet.
pub const QUALIFIED_FT: f64 = 2.14;

/// Least distance of a person who isn't qualified from an overhead line up to 50 kV, feet.
/// 29 CFR 1910.333(c)(3)(i); checked in a copy that quotes it.
pub const UNQUALIFIED_FT: f64 = 10.0;

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_two_columns_of_the_table_are_one_distance() {
        assert!(
            (QUALIFIED_M / 0.3048 - QUALIFIED_FT).abs() < 0.01,
            "{} ft",
            QUALIFIED_M / 0.3048
        );
        const { assert!(UNQUALIFIED_FT > QUALIFIED_FT) };
    }
}
