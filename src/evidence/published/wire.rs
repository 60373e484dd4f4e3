//! Questions about wire and line.
//!
//! What `apparatus::conductor` and `apparatus::line` answer; how exact each answer is stands in the rows that ask.

use crate::apparatus::ampacity;
use crate::apparatus::ampacity::Column;
use crate::apparatus::conductor;
use crate::apparatus::conductor::Awg;
use crate::apparatus::conductor::Material;
use crate::apparatus::conductor::Strand;
use crate::apparatus::line;
use crate::apparatus::line::LineConductor;
use crate::apparatus::line::Placed;
use crate::units::Complex;
use serde::Deserialize;

use super::parsed;

#[derive(Debug, Deserialize)]
pub(super) enum Ask {
    DiameterMm(#[serde(deserialize_with = "parsed")] Awg),
    AreaMm2(#[serde(deserialize_with = "parsed")] Awg),
    AreaCmil(#[serde(deserialize_with = "parsed")] Awg),
    OhmPerKm {
        #[serde(deserialize_with = "parsed")]
        awg: Awg,
        #[serde(with = "MaterialName")]
        material: Material,
        #[serde(with = "StrandName")]
        strand: Strand,
        temperature_c: f64,
    },
    OhmPerKft {
        #[serde(deserialize_with = "parsed")]
        awg: Awg,
        #[serde(with = "MaterialName")]
        material: Material,
        #[serde(with = "StrandName")]
        strand: Strand,
        temperature_c: f64,
    },
    Table8 {
        #[serde(deserialize_with = "parsed")]
        awg: Awg,
        #[serde(with = "MaterialName")]
        material: Material,
        #[serde(with = "StrandName")]
        strand: Strand,
    },
    BranchOhm {
        #[serde(deserialize_with = "parsed")]
        awg: Awg,
        length_ft: f64,
        temperature_c: f64,
        part: Part,
    },
    EffectiveOhmPerKft {
        #[serde(deserialize_with = "parsed")]
        awg: Awg,
        power_factor: f64,
    },
    /// There and back.
    WireDropV {
        #[serde(deserialize_with = "parsed")]
        awg: Awg,
        #[serde(with = "MaterialName")]
        material: Material,
        #[serde(with = "StrandName")]
        strand: Strand,
        length_ft: f64,
        amps: f64,
        temperature_c: f64,
    },
    OhmCmilPerFt {
        #[serde(deserialize_with = "parsed")]
        awg: Awg,
        #[serde(with = "MaterialName")]
        material: Material,
    },
    AllowableA {
        #[serde(deserialize_with = "parsed")]
        awg: Awg,
        #[serde(with = "ColumnName")]
        column: Column,
    },
    SmallConductorLimitA(#[serde(deserialize_with = "parsed")] Awg),
    FeederOhmPerMile {
        configuration: u16,
        row: char,
        column: char,
        part: Part,
    },
    LineOhmPerMile(LineWire),
    LineGmrFt(LineWire),
    TriplexOhmPerMile {
        row: usize,
        column: usize,
        part: Part,
    },
}

#[derive(Deserialize)]
#[serde(remote = "Material")]
enum MaterialName {
    Copper,
    Aluminum,
}

#[derive(Deserialize)]
#[serde(remote = "Column")]
enum ColumnName {
    C60,
    C75,
    C90,
}

#[derive(Deserialize)]
#[serde(remote = "Strand")]
enum StrandName {
    Solid,
    Stranded,
}

/// A wire of overhead lines, by its size.
#[derive(Debug, Clone, Copy, Deserialize)]
pub(super) enum LineWire {
    Acsr336,
    Acsr4To0,
    Acsr1To0,
    Acsr2,
    Acsr4,
    Triplex1To0,
}

impl LineWire {
    fn conductor(self) -> LineConductor {
        match self {
            Self::Acsr336 => line::ACSR_336_4,
            Self::Acsr4To0 => line::ACSR_4_0,
            Self::Acsr1To0 => line::ACSR_1_0,
            Self::Acsr2 => line::ACSR_2,
            Self::Acsr4 => line::ACSR_4,
            Self::Triplex1To0 => line::TRIPLEX_1_0,
        }
    }
}

#[derive(Debug, Clone, Copy, Deserialize)]
pub(super) enum Part {
    Resistance,
    Reactance,
}

impl Part {
    fn of(self, z: Complex) -> f64 {
        match self {
            Self::Resistance => z.re,
            Self::Reactance => z.im,
        }
    }

    fn of_some(self, z: Option<Complex>) -> f64 {
        z.map_or(f64::NAN, |z| self.of(z))
    }
}

impl Ask {
    pub(super) fn ours(&self) -> f64 {
        match self {
            Self::DiameterMm(awg) => awg.diameter_mm(),
            Self::AreaMm2(awg) => awg.area_mm2(),
            Self::AreaCmil(awg) => awg.area_cmil(),
            Self::OhmPerKm {
                awg,
                material,
                strand,
                temperature_c,
            } => conductor::resistance_ohm_per_km(*awg, *material, *strand, *temperature_c),
            Self::OhmPerKft {
                awg,
                material,
                strand,
                temperature_c,
            } => per_foot(*awg, *material, *strand, *temperature_c) * 1000.0,
            Self::Table8 {
                awg,
                material,
                strand,
            } => conductor::table_8_ohm_per_kft(*awg, *material, *strand).unwrap_or(f64::NAN),
            Self::BranchOhm {
                awg,
                length_ft,
                temperature_c,
                part,
            } => part.of(conductor::branch_wire_impedance(
                *awg,
                *length_ft,
                *temperature_c,
            )),
            Self::EffectiveOhmPerKft { awg, power_factor } => {
                let z = conductor::branch_wire_impedance(*awg, 1000.0, 75.0);
                z.re * power_factor + z.im * (1.0 - power_factor * power_factor).sqrt()
            }
            Self::WireDropV {
                awg,
                material,
                strand,
                length_ft,
                amps,
                temperature_c,
            } => 2.0 * amps * length_ft * per_foot(*awg, *material, *strand, *temperature_c),
            Self::OhmCmilPerFt { awg, material } => {
                per_foot(*awg, *material, Strand::Stranded, 75.0) * awg.area_cmil()
            }
            Self::AllowableA { awg, column } => {
                ampacity::allowable_a(*awg, Material::Copper, *column).unwrap_or(f64::NAN)
            }
            Self::SmallConductorLimitA(awg) => {
                ampacity::small_conductor_limit_a(*awg, Material::Copper).unwrap_or(f64::NAN)
            }
            Self::FeederOhmPerMile {
                configuration,
                row,
                column,
                part,
            } => part.of_some(feeder(*configuration, *row, *column)),
            Self::LineOhmPerMile(wire) => wire.conductor().r_ohm_per_mile,
            Self::LineGmrFt(wire) => wire.conductor().gmr_ft,
            Self::TriplexOhmPerMile { row, column, part } => part.of_some(triplex(*row, *column)),
        }
    }
}

fn per_foot(awg: Awg, material: Material, strand: Strand, temperature_c: f64) -> f64 {
    conductor::resistance_ohm_per_km(awg, material, strand, temperature_c) / conductor::FEET_PER_KM
}

/// 556.5 kcmil 26/7 ACSR, phase conductor of the 13-node feeder: 0.1859 ohm/mile, GMR 0.0313 ft.
const ACSR_556_5: LineConductor = LineConductor {
    r_ohm_per_mile: 0.1859,
    gmr_ft: 0.0313,
    diameter_in: 0.927,
};

/// A configuration of the 13-node feeder, or 4 for the line of the 4-node feeder, its neutral (the last conductor) reduced away.
fn feeder(configuration: u16, row: char, column: char) -> Option<Complex> {
    // Spacing 500: three positions on the crossarm, the neutral 4 ft below; spacing 510: one phase, 5 ft below.
    let (order, phase, places, neutral) = match configuration {
        601 => (
            "BAC",
            ACSR_556_5,
            &[0.0, 2.5, 7.0][..],
            (line::ACSR_4_0, 4.0, 24.0),
        ),
        602 => (
            "CAB",
            line::ACSR_4_0,
            &[0.0, 2.5, 7.0][..],
            (line::ACSR_4_0, 4.0, 24.0),
        ),
        4 => (
            "ABC",
            line::ACSR_336_4,
            &[0.0, 2.5, 7.0][..],
            (line::ACSR_4_0, 4.0, 24.0),
        ),
        605 => ("C", line::ACSR_1_0, &[0.5][..], (line::ACSR_1_0, 0.0, 23.0)),
        _ => return None,
    };
    let mut conductors: Vec<Placed> = places
        .iter()
        .map(|x_ft| Placed {
            conductor: phase,
            x_ft: *x_ft,
            y_ft: 28.0,
        })
        .collect();
    conductors.push(Placed {
        conductor: neutral.0,
        x_ft: neutral.1,
        y_ft: neutral.2,
    });
    let z = line::overhead_impedance(&conductors, 1.0);
    reduced(&z, conductors.len(), order.find(row)?, order.find(column)?)
}

fn triplex(row: usize, column: usize) -> Option<Complex> {
    let z = line::triplex_impedance(
        &line::TRIPLEX_1_0,
        &line::TRIPLEX_1_0,
        line::TRIPLEX_INSULATION_IN,
        5280.0,
    );
    reduced(&z, 3, row.checked_sub(1)?, column.checked_sub(1)?)
}

/// One entry of an n × n matrix with its last conductor at zero volts all along.
fn reduced(z: &[Complex], n: usize, row: usize, column: usize) -> Option<Complex> {
    let at = |row: usize, column: usize| z.get(row * n + column).copied();
    let last = n - 1;
    Some(at(row, column)? - at(row, last)? * at(last, column)? / at(last, last)?)
}
