//! The body as an impedance: ohms by touch voltage, share of the population and current path.
//!
//! IEC 60479-1:2018, total body impedance hand to hand, dry, large contact area, 50/60 Hz.
//! The 50 % column was checked in a copy that quotes it, the 5 % and 95 % columns are from memory; the 1994 edition differs.
//! Values hold for the first tenth of a second.
//! Wet skin is a factor on the table, drawn from what the standard says in words: good to about 10 %.
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
    /// One foot to the other: a step.
    FootToFoot,
    /// Left hand to the back.
    LeftHandToBack,
    /// Right hand to the back.
    RightHandToBack,
    /// Left hand to the chest.
    LeftHandToChest,
    /// Right hand to the chest.
    RightHandToChest,
    /// One or both hands to the seat.
    HandsToSeat,
}

/// How the skin is where it touches.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Skin {
    /// Dry.
    Dry,
    /// Wet with fresh water, as by rain.
    Wet,
    /// Wet with something that conducts well, as salt water.
    Salty,
}

impl Path {
    /// Heart-current factor: a current on this path endangers the heart as this multiple of it does from the left hand to the feet.
    ///
    /// IEC 60479-1: the first path, both hands to the feet and hand to hand checked in a copy that quotes it, the others from memory.
    pub fn heart_factor(self) -> f64 {
        match self {
            Self::LeftHandToFeet | Self::BothHandsToFeet => 1.0,
            Self::RightHandToFeet => 0.8,
            Self::HandToHand => 0.4,
            Self::FootToFoot => 0.04,
            Self::LeftHandToBack | Self::HandsToSeat => 0.7,
            Self::RightHandToBack => 0.3,
            Self::LeftHandToChest => 1.5,
            Self::RightHandToChest => 1.3,
        }
    }

    /// Impedance as a share of that from hand to hand.
    /// One hand to both feet 75 %, both hands to both feet or one hand to the trunk 50 %: IEC 60479-1, from memory, good to 20 %.
    pub fn impedance_factor(self) -> f64 {
        match self {
            Self::HandToHand | Self::FootToFoot => 1.0,
            Self::LeftHandToFeet | Self::RightHandToFeet => 0.75,
            Self::BothHandsToFeet
            | Self::LeftHandToBack
            | Self::RightHandToBack
            | Self::LeftHandToChest
            | Self::RightHandToChest
            | Self::HandsToSeat => 0.5,
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

impl Skin {
    /// Impedance as a share of that of dry skin at `touch_v` volts.
    ///
    /// Up to 50 V fresh water takes away 10 to 25 % and a conductive solution down to half; above 150 V wetness hardly matters.
    /// The middle of the first figure, straight lines between: IEC 60479-1, checked in a copy that quotes it.
    pub fn factor(self, touch_v: f64) -> f64 {
        let low = match self {
            Self::Dry => 1.0,
            Self::Wet => 0.825,
            Self::Salty => 0.5,
        };
        let share = ((touch_v - 50.0) / 100.0).clamp(0.0, 1.0);
        low + (1.0 - low) * share
    }
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
        for path in [Path::RightHandToFeet, Path::HandToHand, Path::FootToFoot] {
            assert!(path.heart_factor() < Path::LeftHandToFeet.heart_factor());
        }
        for path in [Path::LeftHandToChest, Path::RightHandToChest] {
            assert!(path.heart_factor() > Path::LeftHandToFeet.heart_factor());
        }
    }

    #[test]
    fn wet_skin_never_resists_more_than_dry_and_wetness_is_nothing_above_150_v() {
        for volts in 0..400_i32 {
            let volts = f64::from(volts);
            let [dry, wet, salty] = [Skin::Dry, Skin::Wet, Skin::Salty].map(|s| s.factor(volts));
            assert!(salty <= wet && wet <= dry, "{volts} V: {salty}, {wet}");
            assert!(volts < 150.0 || (salty - 1.0).abs() < 1e-12, "{volts} V");
        }
        let amps = |v: f64| v / (body_ohm(v, Percentile::P50) * Skin::Salty.factor(v));
        for volts in 1..400_i32 {
            let (less, more) = (f64::from(volts), f64::from(volts + 1));
            assert!(
                amps(more) > amps(less),
                "more volts, less current at {volts} V"
            );
        }
    }
}
