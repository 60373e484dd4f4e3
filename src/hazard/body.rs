//! The body as an impedance: ohms by touch voltage, share of the population and current path.
//!
//! IEC 60479-1:2018, total body impedance hand to hand, dry, large contact area, 50/60 Hz.
//! The 50 % column was checked in a copy that quotes it, the 5 % and 95 % columns are from memory; the 1994 edition differs.
//! Values hold for the first tenth of a second; wet skin is 10 to 25 % lower up to 50 V.
//! Not covered: small contact areas, gloves and boots, burns that change the skin, direct current.

/// Ohms that this share of people do not exceed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Percentile {
    /// 5 % of people: the worst case for current.
    P5,
    /// Half of them.
    P50,
    /// 95 % of people.
    P95,
}

/// The way of a current through a body.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Path {
    /// Left hand to one or both feet: the path that the zones of IEC 60479-1 are drawn for.
    LeftHandToFeet,
    /// Right hand to one or both feet.
    RightHandToFeet,
    /// Both hands to both feet.
    BothHandsToFeet,
    /// One hand to the other.
    HandToHand,
}

impl Path {
    /// Heart-current factor: a current on this path endangers the heart as this multiple of it does from the left hand to the feet.
    ///
    /// IEC 60479-1, checked in a copy that quotes it, but for the right hand, which is from memory.
    pub fn heart_factor(self) -> f64 {
        match self {
            Self::LeftHandToFeet | Self::BothHandsToFeet => 1.0,
            Self::RightHandToFeet => 0.8,
            Self::HandToHand => 0.4,
        }
    }

    /// Impedance as a share of that from hand to hand.
    /// One hand to both feet 75 %, both hands to both feet 50 %: IEC 60479-1, from memory.
    pub fn impedance_factor(self) -> f64 {
        match self {
            Self::HandToHand => 1.0,
            Self::LeftHandToFeet | Self::RightHandToFeet => 0.75,
            Self::BothHandsToFeet => 0.5,
        }
    }
}

/// Total body impedance from hand to hand at `touch_v` volts, ohms.
///
/// Between printed voltages by interpolation; below 25 V the value there, above 1 000 V the asymptote.
pub fn body_ohm(touch_v: f64, percentile: Percentile) -> f64 {
    let ohm = |row: &Row| match percentile {
        Percentile::P5 => row.p5,
        Percentile::P50 => row.p50,
        Percentile::P95 => row.p95,
    };
    let mut below: Option<&Row> = None;
    for row in TABLE {
        if touch_v <= row.touch_v {
            return below.map_or(ohm(row), |low| {
                let share = (touch_v - low.touch_v) / (row.touch_v - low.touch_v);
                ohm(low) + (ohm(row) - ohm(low)) * share
            });
        }
        below = Some(row);
    }
    below.map_or(f64::NAN, ohm)
}

/// Total body impedance on a path at `touch_v` volts, ohms.
pub fn path_ohm(touch_v: f64, percentile: Percentile, path: Path) -> f64 {
    body_ohm(touch_v, percentile) * path.impedance_factor()
}

struct Row {
    touch_v: f64,
    p5: f64,
    p50: f64,
    p95: f64,
}

const fn row(touch_v: f64, p5: f64, p50: f64, p95: f64) -> Row {
    Row {
        touch_v,
        p5,
        p50,
        p95,
    }
}

const TABLE: &[Row] = &[
    row(25.0, 1750.0, 3250.0, 6100.0),
    row(50.0, 1375.0, 2500.0, 4600.0),
    row(75.0, 1125.0, 2000.0, 3600.0),
    row(100.0, 990.0, 1725.0, 3125.0),
    row(125.0, 900.0, 1550.0, 2675.0),
    row(150.0, 850.0, 1400.0, 2350.0),
    row(175.0, 825.0, 1325.0, 2175.0),
    row(200.0, 800.0, 1275.0, 2050.0),
    row(225.0, 775.0, 1225.0, 1900.0),
    row(400.0, 700.0, 950.0, 1275.0),
    row(500.0, 625.0, 850.0, 1150.0),
    row(700.0, 575.0, 775.0, 1050.0),
    row(1000.0, 575.0, 775.0, 1050.0),
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn more_volts_never_meet_more_ohms_and_the_percentiles_keep_their_order() {
        let mut before = f64::INFINITY;
        for volts in 0..8000_i32 {
            let volts = f64::from(volts);
            let [low, middle, high] =
                [Percentile::P5, Percentile::P50, Percentile::P95].map(|p| body_ohm(volts, p));
            assert!(
                low < middle && middle < high,
                "{volts} V: {low}, {middle}, {high}"
            );
            assert!(middle <= before, "{volts} V: {middle} ohm after {before}");
            before = middle;
        }
    }

    #[test]
    fn more_volts_always_drive_more_current() {
        let mut before = -1.0;
        for volts in 1..1500_i32 {
            let amps = f64::from(volts) / body_ohm(f64::from(volts), Percentile::P50);
            assert!(amps > before, "{volts} V: {amps} A after {before} A");
            before = amps;
        }
    }

    #[test]
    fn a_line_at_thousands_of_volts_meets_the_inner_resistance_alone() {
        assert!((body_ohm(7200.0, Percentile::P50) - 775.0).abs() < 1e-9);
        assert!((path_ohm(7200.0, Percentile::P50, Path::LeftHandToFeet) - 581.25).abs() < 1e-9);
    }

    #[test]
    fn the_path_over_the_heart_is_the_reference() {
        for path in [Path::RightHandToFeet, Path::HandToHand] {
            assert!(path.heart_factor() < Path::LeftHandToFeet.heart_factor());
        }
    }
}
