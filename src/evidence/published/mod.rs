//! Published values against ours: one row a figure, each asked of the real function.
//!
//! The rows are `tests/published/<file>.ron`, built into the program; [`FILES`] says to which section each belongs.
//! A row is its quantity, what to ask, the published figure, its tolerance, its source and how far that was seen; `differs` and `follows` may be added.
//! It judges figures, not choices: that the right figure was looked up is for a reader of the source.
//!
//! **To add a row**, write it into the file of its section.
//! **To add a question**, add a variant to the family's `Ask` in the file of its trade beside this one, and the call that answers it; a question gives one number, and NaN where the model has no answer.
//! **To add a family**, add its file here, one `mod` line, one variant of [`Ask`] and one line of [`Ask::ours`].
//! **To add a file of rows**, add its line to [`FILES`].

mod air;
mod cord;
mod device;
mod line_work;
mod load;
mod machine;
mod people;
mod protection;
mod source;
mod transfer;
mod wire;
mod wiring;

use std::fmt::Display;
use std::str::FromStr;

use serde::Deserialize;
use serde::Deserializer;
use serde::de::Error as _;

use crate::file::Diagnostic;

use super::row::Compared;
use super::row::RowFile;
use super::row::ask_all;
use super::section::Section;

/// A file of `tests/published`, built in.
macro_rules! rows {
    ($name:literal, $section:ident) => {
        (
            concat!("tests/published/", $name, ".ron"),
            Section::$section,
            include_str!(concat!("../../../tests/published/", $name, ".ron")),
        )
    };
}

/// Every file of rows.
const FILES: &[RowFile<'_>] = &[
    rows!("ampacity", BuildingWire),
    rows!("backfeed", LineWork),
    rows!("body", Shock),
    rows!("breakers", Breakers),
    rows!("conductors", WireSizes),
    rows!("cords", Cords),
    rows!("fuses", Breakers),
    rows!("gfci", GroundFault),
    rows!("household-loads", HouseholdLoads),
    rows!("interconnection", Timing),
    rows!("fuel", Fuel),
    rows!("fuel-vapor", Fuel),
    rows!("line-work", LineWork),
    rows!("lines", UtilitySide),
    rows!("monoxide", CarbonMonoxide),
    rows!("motors", RideThrough),
    rows!("ride-through", RideThrough),
    rows!("shock", Shock),
    rows!("standby", Timing),
    rows!("transformers", UtilitySide),
    rows!("voltage-drop", BuildingWire),
];

/// What a row asks of the models.
#[derive(Debug, Deserialize)]
enum Ask {
    Wire(wire::Ask),
    Wiring(wiring::Ask),
    Cord(cord::Ask),
    Device(device::Ask),
    Load(load::Ask),
    Protection(protection::Ask),
    People(people::Ask),
    Source(source::Ask),
    Air(air::Ask),
    LineWork(line_work::Ask),
    Machine(machine::Ask),
    Transfer(transfer::Ask),
}

impl Ask {
    fn ours(&self) -> f64 {
        match self {
            Self::Wire(ask) => ask.ours(),
            Self::Wiring(ask) => ask.ours(),
            Self::Cord(ask) => ask.ours(),
            Self::Device(ask) => ask.ours(),
            Self::Load(ask) => ask.ours(),
            Self::Protection(ask) => ask.ours(),
            Self::People(ask) => ask.ours(),
            Self::Air(ask) => ask.ours(),
            Self::LineWork(ask) => ask.ours(),
            Self::Source(ask) => ask.ours(),
            Self::Machine(ask) => ask.ours(),
            Self::Transfer(ask) => ask.ours(),
        }
    }
}

/// Every row, asked and compared, section by section in the order of [`Section::ALL`].
///
/// # Errors
/// Every file that isn't a list of rows, with the place of its first fault.
pub fn published() -> Result<Vec<Compared>, Vec<Diagnostic>> {
    ask_all(FILES, Ask::ours)
}

/// The rows of one text, asked and compared.
///
/// # Errors
/// The place of the first fault, if the text isn't a list of rows.
pub fn compare(file: &str, section: Section, text: &str) -> Result<Vec<Compared>, Vec<Diagnostic>> {
    ask_all(&[(file, section, text)], Ask::ours)
}

/// A value that is written as text: a wire size, the letters of a cord.
fn parsed<'de, D, T>(file: D) -> Result<T, D::Error>
where
    D: Deserializer<'de>,
    T: FromStr<Err: Display>,
{
    String::deserialize(file)?.parse().map_err(D::Error::custom)
}
