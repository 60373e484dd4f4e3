//! The part of a site file that says what a crew has to work its line with.

use serde::Deserialize;

use super::site_file::{NeighborFile, TransformerFile};

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct LineWorkFile {
    /// Amps at which the switches at head and tie open by themselves.
    pub(super) trips_amps: f64,
    pub(super) breaks: Vec<BreakFile>,
    pub(super) taps: Vec<TapFile>,
    /// Poles at which a set of grounds can hang.
    pub(super) grounds_at: Vec<String>,
    /// One ground lead with its clamps.
    pub(super) lead_milliohm: f64,
    pub(super) testers: Vec<TesterFile>,
    /// Whether another crew works on the same line; false when left out.
    #[serde(default)]
    pub(super) second_crew: bool,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct BreakFile {
    pub(super) name: String,
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
    pub(super) pole: String,
    pub(super) transformer: TransformerFile,
    pub(super) customers: Vec<NeighborFile>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct TesterFile {
    pub(super) name: String,
    /// The least volts that it shows.
    pub(super) least_volts: f64,
    /// The most volts that it may be held to.
    pub(super) most_volts: f64,
}
