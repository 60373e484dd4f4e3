//! Round wire by American Wire Gauge: geometry, resistance, and the impedance of a branch circuit.
//!
//! Geometry is the definition of the gauge (ASTM B258): No. 36 is 0.0050 in, No. 4/0 is 0.4600 in, 39 equal ratios between.
//! Resistance comes two ways: from that geometry, and from the printed table of NEC Chapter 9, Table 8 (editions 2017 to 2023).
//! The two agree within 0.5 % for solid copper; stranded wire is 2 % longer than its run, hence 2 % more ohms.
//! Direct-current resistance: skin effect at 60 Hz is below 1 % up to 4/0 and is left out.
//! Not covered: sizes in kcmil, conductors hotter than their insulation stands.

use core::fmt;
use core::str::FromStr;

use crate::units::Complex;
use crate::units::portable;

/// Feet in a kilometer.
pub const FEET_PER_KM: f64 = 1000.0 / 0.3048;

/// A wire size by American Wire Gauge: 14 is 14 AWG, 0 is 1/0, -3 is 4/0.
/// Ordered by its number, so a greater value is a thinner wire.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Awg(i8);

impl Awg {
    /// 12 AWG, the size of most branch circuits.
    pub const N12: Self = Self(12);

    /// The size of this gauge number, -3 (4/0) to 40; `None` outside.
    pub const fn new(number: i8) -> Option<Self> {
        if number >= -3 && number <= 40 {
            Some(Self(number))
        } else {
            None
        }
    }

    /// The gauge number: 14 for 14 AWG, 0 for 1/0, -3 for 4/0.
    pub const fn number(self) -> i8 {
        self.0
    }

    /// Diameter of the solid wire in millimeters.
    /// Source: ASTM B258, 0.127 mm × 92^((36 - n)/39); checked in a copy that quotes it.
    pub fn diameter_mm(self) -> f64 {
        0.127 * portable::power(92.0, (36.0 - f64::from(self.0)) / 39.0)
    }

    /// Cross-section of the metal in square millimeters.
    pub fn area_mm2(self) -> f64 {
        let diameter = self.diameter_mm();
        core::f64::consts::FRAC_PI_4 * diameter * diameter
    }

    /// Cross-section of the metal in circular mils: the square of the diameter in thousandths of an inch.
    pub fn area_cmil(self) -> f64 {
        let mils = self.diameter_mm() / 0.0254;
        mils * mils
    }
}

/// As the trade writes it: `14`, `2`, `1/0`, `4/0`.
impl fmt::Display for Awg {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if self.0 > 0 {
            write!(f, "{}", self.0)
        } else {
            write!(f, "{}/0", 1 - self.0)
        }
    }
}

/// What is wrong with a text that should be a wire size.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct NotAGauge;

impl fmt::Display for NotAGauge {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a wire size is a number from 1 to 40, or 1/0, 2/0, 3/0, 4/0")
    }
}

impl core::error::Error for NotAGauge {}

/// From `14`, `2`, `1/0`, `4/0`.
impl FromStr for Awg {
    type Err = NotAGauge;

    fn from_str(text: &str) -> Result<Self, NotAGauge> {
        let number = match text.trim().strip_suffix("/0") {
            Some(zeros) => match zeros.parse::<i8>() {
                Ok(zeros @ 1..=4) => 1 - zeros,
                Ok(_) | Err(_) => return Err(NotAGauge),
            },
            None => match text.trim().parse::<i8>() {
                Ok(number @ 1..=40) => number,
                Ok(_) | Err(_) => return Err(NotAGauge),
            },
        };
        Self::new(number).ok_or(NotAGauge)
    }
}

/// The metal of a conductor.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Material {
    /// Annealed copper, 100 % IACS.
    Copper,
    /// Electrical aluminum, 61 % IACS.
    Aluminum,
}

impl Material {
    /// Resistivity at 20 °C in ohm mm²/m.
    /// Copper 1/58 (ASTM B258, checked in a copy that quotes it); aluminum 61 % of that conductivity (from memory).
    fn resistivity_20(self) -> f64 {
        match self {
            Self::Copper => 0.017_241,
            Self::Aluminum => 0.017_241 / 0.61,
        }
    }

    /// Rise of resistance per kelvin, of the resistance at 20 °C.
    /// Copper checked in a copy, aluminum from memory; they give the 0.00323 and 0.00330 at 75 °C of NEC Chapter 9, Table 8, note 2.
    fn rise_per_k_at_20(self) -> f64 {
        match self {
            Self::Copper => 0.003_93,
            Self::Aluminum => 0.004_03,
        }
    }

    /// Resistance at `temperature_c` as a multiple of the resistance at `reference_c`.
    pub fn resistance_ratio(self, temperature_c: f64, reference_c: f64) -> f64 {
        let rise = self.rise_per_k_at_20();
        (1.0 + rise * (temperature_c - 20.0)) / (1.0 + rise * (reference_c - 20.0))
    }
}

/// How a conductor is made up.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Strand {
    /// One wire.
    Solid,
    /// Many wires twisted, 2 % longer than the run.
    Stranded,
}

/// Direct-current resistance from geometry, ohms per kilometer of run.
pub fn resistance_ohm_per_km(
    awg: Awg,
    material: Material,
    strand: Strand,
    temperature_c: f64,
) -> f64 {
    let lay = match strand {
        Strand::Solid => 1.0,
        Strand::Stranded => 1.02,
    };
    lay * 1000.0 * material.resistivity_20() / awg.area_mm2()
        * material.resistance_ratio(temperature_c, 20.0)
}

/// Resistance at 75 °C as NEC Chapter 9, Table 8 prints it, ohms per 1 000 ft; `None` where this table has no such row.
///
/// Two figures a size exist for copper from 14 to 8 AWG and printed copies mix them up: solid and stranded are kept apart here.
/// Checked in copies that quote it, but for 18 AWG and for solid 16 AWG, which are from memory.
pub fn table_8_ohm_per_kft(awg: Awg, material: Material, strand: Strand) -> Option<f64> {
    let row = TABLE_8.iter().find(|row| row.number == awg.0)?;
    match (material, strand) {
        (Material::Copper, Strand::Solid) => row.copper_solid,
        (Material::Copper, Strand::Stranded) => Some(row.copper_stranded),
        (Material::Aluminum, Strand::Solid) => row.aluminum_solid,
        (Material::Aluminum, Strand::Stranded) => row.aluminum_stranded,
    }
}

/// Impedance at 60 Hz of one conductor of a copper branch circuit, one way, in ohms.
///
/// Resistance from NEC Chapter 9, Table 8 corrected from 75 °C to `temperature_c`, solid up to 10 AWG and stranded above as branch wiring is made.
/// A size that Table 8 does not print takes the resistance of its geometry.
/// Reactance from NEC Chapter 9, Table 9, nonmetallic raceway; between printed sizes by interpolation, beyond them the nearest.
pub fn branch_wire_impedance(awg: Awg, length_ft: f64, temperature_c: f64) -> Complex {
    let strand = if awg.0 >= 10 {
        Strand::Solid
    } else {
        Strand::Stranded
    };
    conductor_impedance(awg, strand, length_ft, temperature_c)
}

/// Impedance at 60 Hz of one copper conductor, one way, in ohms: [`branch_wire_impedance`] with the make-up given.
pub fn conductor_impedance(
    awg: Awg,
    strand: Strand,
    length_ft: f64,
    temperature_c: f64,
) -> Complex {
    let at_75 = table_8_ohm_per_kft(awg, Material::Copper, strand).unwrap_or_else(|| {
        resistance_ohm_per_km(awg, Material::Copper, strand, 75.0) * 1000.0 / FEET_PER_KM
    });
    let resistance = at_75 * Material::Copper.resistance_ratio(temperature_c, 75.0);
    Complex::new(resistance, reactance_ohm_per_kft(awg)) * (length_ft / 1000.0)
}

/// One row of NEC Chapter 9, Table 8: uncoated copper and aluminum at 75 °C, ohms per 1 000 ft.
struct Table8Row {
    number: i8,
    copper_solid: Option<f64>,
    copper_stranded: f64,
    aluminum_solid: Option<f64>,
    aluminum_stranded: Option<f64>,
}

const fn both(number: i8, copper: [f64; 2], aluminum: Option<[f64; 2]>) -> Table8Row {
    let (aluminum_solid, aluminum_stranded) = match aluminum {
        Some([solid, stranded]) => (Some(solid), Some(stranded)),
        None => (None, None),
    };
    Table8Row {
        number,
        copper_solid: Some(copper[0]),
        copper_stranded: copper[1],
        aluminum_solid,
        aluminum_stranded,
    }
}

const fn stranded(number: i8, copper: f64, aluminum: f64) -> Table8Row {
    Table8Row {
        number,
        copper_solid: None,
        copper_stranded: copper,
        aluminum_solid: None,
        aluminum_stranded: Some(aluminum),
    }
}

#[expect(
    clippy::approx_constant,
    reason = "3.14 is what 14 AWG measures in ohms, not a circle"
)]
const TABLE_8: &[Table8Row] = &[
    both(18, [7.77, 7.95], None),
    both(16, [4.89, 4.99], None),
    both(14, [3.07, 3.14], Some([5.06, 5.17])),
    both(12, [1.93, 1.98], Some([3.18, 3.25])),
    both(10, [1.21, 1.24], Some([2.00, 2.04])),
    both(8, [0.764, 0.778], Some([1.26, 1.28])),
    stranded(6, 0.491, 0.808),
    stranded(4, 0.308, 0.508),
    stranded(2, 0.194, 0.319),
    stranded(0, 0.122, 0.201),
    stranded(-1, 0.0967, 0.159),
    stranded(-3, 0.0608, 0.100),
];

/// NEC Chapter 9, Table 9, reactance at 60 Hz in a nonmetallic or aluminum raceway, ohms per 1 000 ft by gauge number.
/// Checked in a copy that quotes it.
const TABLE_9_REACTANCE: &[(i8, f64)] = &[
    (-3, 0.041),
    (0, 0.044),
    (2, 0.045),
    (4, 0.048),
    (6, 0.051),
    (8, 0.052),
    (10, 0.050),
    (12, 0.054),
    (14, 0.058),
];

/// Reactance of Table 9 for any size, ohms per 1 000 ft.
fn reactance_ohm_per_kft(awg: Awg) -> f64 {
    let mut below = (i8::MIN, f64::NAN);
    for &(number, reactance) in TABLE_9_REACTANCE {
        if number >= awg.0 {
            if number == awg.0 || below.1.is_nan() {
                return reactance;
            }
            let share = f64::from(awg.0 - below.0) / f64::from(number - below.0);
            return below.1 + (reactance - below.1) * share;
        }
        below = (number, reactance);
    }
    below.1
}

#[cfg(test)]
mod tests {
    use super::*;

    fn awg(text: &str) -> Awg {
        text.parse().unwrap()
    }

    #[test]
    fn a_gauge_reads_and_prints_as_the_trade_writes_it() {
        for text in ["40", "18", "14", "10", "2", "1", "1/0", "2/0", "3/0", "4/0"] {
            assert_eq!(awg(text).to_string(), text);
        }
        for text in [
            "0", "-3", "41", "5/0", "0/0", "1/1", "", "ten", "14.5", "250",
        ] {
            assert_eq!(text.parse::<Awg>(), Err(NotAGauge), "{text:?} is no gauge");
        }
        assert!(Awg::new(-4).is_none() && Awg::new(41).is_none());
    }

    #[test]
    fn the_gauge_is_pinned_at_both_ends_of_its_definition() {
        let inches = |text: &str| awg(text).diameter_mm() / 25.4;
        assert!(
            (inches("36") - 0.0050).abs() < 1e-12,
            "36 AWG {} in",
            inches("36")
        );
        assert!(
            (inches("4/0") - 0.4600).abs() < 1e-12,
            "4/0 {} in",
            inches("4/0")
        );
    }

    #[test]
    fn geometry_and_the_printed_table_agree_within_half_a_percent_for_solid_copper() {
        for row in TABLE_8 {
            let size = Awg::new(row.number).unwrap();
            let Some(printed) = row.copper_solid else {
                continue;
            };
            let ours = resistance_ohm_per_km(size, Material::Copper, Strand::Solid, 75.0) * 1000.0
                / FEET_PER_KM;
            assert!(
                (ours / printed - 1.0).abs() < 0.005,
                "{size} AWG: geometry {ours}, table {printed}"
            );
        }
    }

    #[test]
    fn geometry_and_the_printed_table_agree_within_one_percent_for_stranded_wire() {
        for row in TABLE_8 {
            let size = Awg::new(row.number).unwrap();
            let pairs = [
                (Material::Copper, Some(row.copper_stranded)),
                (Material::Aluminum, row.aluminum_stranded),
            ];
            for (material, printed) in pairs {
                let Some(printed) = printed else { continue };
                let ours = resistance_ohm_per_km(size, material, Strand::Stranded, 75.0) * 1000.0
                    / FEET_PER_KM;
                assert!(
                    (ours / printed - 1.0).abs() < 0.01,
                    "{size} {material:?}: geometry {ours}, table {printed}"
                );
            }
        }
    }

    #[test]
    fn the_temperature_rise_is_the_one_of_the_table_note() {
        let copper = Material::Copper.resistance_ratio(76.0, 75.0) - 1.0;
        let aluminum = Material::Aluminum.resistance_ratio(76.0, 75.0) - 1.0;
        assert!(
            (copper - 0.003_23).abs() < 5e-6,
            "copper {copper} per K at 75 °C"
        );
        assert!(
            (aluminum - 0.003_30).abs() < 5e-6,
            "aluminum {aluminum} per K at 75 °C"
        );
    }

    #[test]
    fn a_thicker_or_shorter_or_cooler_wire_never_has_more_resistance() {
        for number in -3..18 {
            let (thick, thin) = (Awg::new(number).unwrap(), Awg::new(number + 1).unwrap());
            let (a, b) = (
                branch_wire_impedance(thick, 50.0, 60.0),
                branch_wire_impedance(thin, 50.0, 60.0),
            );
            assert!(
                a.re < b.re,
                "{thick} AWG {} ohm, {thin} AWG {} ohm",
                a.re,
                b.re
            );
        }
        let wire = awg("12");
        assert!(
            branch_wire_impedance(wire, 50.0, 60.0).re < branch_wire_impedance(wire, 51.0, 60.0).re
        );
        assert!(
            branch_wire_impedance(wire, 50.0, 60.0).re < branch_wire_impedance(wire, 50.0, 61.0).re
        );
    }

    #[test]
    fn sizes_between_printed_rows_lie_between_them() {
        let x = |text: &str| reactance_ohm_per_kft(awg(text));
        assert!((x("3") - 0.0465).abs() < 1e-12, "3 AWG {}", x("3"));
        assert!((x("3/0") - 0.042).abs() < 1e-12, "3/0 {}", x("3/0"));
        assert!((x("18") - 0.058).abs() < 1e-12 && (x("4/0") - 0.041).abs() < 1e-12);
    }
}
