//! The part of a site file that says what a crew has to work its line with.

use serde::Deserialize;

use super::site_file::{NeighborFile, TransformerFile};

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct LineWorkFile {
    /// Amps at which the switches at head and tie open by themselves.
    pub(super) trips_amps: f64,
    /// Places where the line can be opened.
    pub(super) breaks: Vec<BreakFile>,
    /// Transformers along the line and who hangs on them.
    pub(super) taps: Vec<TapFile>,
    /// Poles at which a set of grounds can hang.
    pub(super) grounds_at: Vec<String>,
    /// One ground lead with its clamps.
    pub(super) lead_milliohm: f64,
    /// Testers in the truck.
    pub(super) testers: Vec<TesterFile>,
    /// Whether another crew works on the same line; false when left out.
    #[serde(default)]
    pub(super) second_crew: bool,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct BreakFile {
    /// Name, small letters and hyphens.
    pub(super) name: String,
    /// Where it is.
    pub(super) at: AtFile,
}

#[derive(Debug, Deserialize)]
pub(super) enum AtFile {
    /// At the near end of a span, by name.
    Span(String),
    /// Between a pole, by name, and a second feed.
    Tie(String),
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct TapFile {
    /// Its pole.
    pub(super) pole: String,
    /// The transformer.
    pub(super) transformer: TransformerFile,
    /// Who hangs on it.
    pub(super) customers: Vec<NeighborFile>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct TesterFile {
    /// Name, small letters and hyphens.
    pub(super) name: String,
    /// The least volts that it shows.
    pub(super) least_volts: f64,
    /// The most volts that it may be held to.
    pub(super) most_volts: f64,
}
