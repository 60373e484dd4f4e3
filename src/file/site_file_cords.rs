//! The cords of a site file as they are written.

use serde::Deserialize;

use super::site_file::{LegFile, yes};

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct CordFile {
    /// Name, small letters and hyphens.
    pub(super) name: String,
    /// Type letters on its jacket.
    pub(super) letters: String,
    /// Gauge of its wire, AWG.
    pub(super) gauge: String,
    /// Length, feet.
    pub(super) length_ft: f64,
    /// The leg it is on.
    pub(super) leg: LegFile,
    /// Whether an adapter ties both its legs to one 120 V outlet; false when left out.
    #[serde(default)]
    pub(super) ties_legs: bool,
    /// Whether it has an equipment ground from end to end; true when left out.
    #[serde(default = "yes")]
    pub(super) grounded: bool,
    /// Ways it can lie, the first at the start; coiled and flat when left out.
    #[serde(default = "coil_or_flat")]
    pub(super) lies: Vec<RestFile>,
    /// Whether it lies in the sun; false when left out.
    #[serde(default)]
    pub(super) in_sun: bool,
    /// What is damaged along it; nothing when left out.
    #[serde(default)]
    pub(super) damage: DamageFile,
    /// How the contacts of its plug are; sound when left out.
    #[serde(default)]
    pub(super) contacts: ContactsFile,
    /// What its other end is.
    pub(super) house_end: HouseEndFile,
}

/// How a cord can lie.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
pub(super) enum RestFile {
    /// In a coil.
    Coiled,
    /// Half of it in a coil.
    HalfCoiled,
    /// Flat.
    Flat,
    /// Under a rug.
    UnderRug,
    /// In a bundle.
    Bundled,
    /// Flat, with its joint in a puddle.
    InPuddle,
}

fn coil_or_flat() -> Vec<RestFile> {
    vec![RestFile::Coiled, RestFile::Flat]
}

/// What is damaged along a cord.
#[derive(Debug, Clone, Copy, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) enum DamageFile {
    /// Nothing.
    #[default]
    Sound,
    /// This share of the strands of one conductor is left.
    Strands { left: f64 },
    /// Crushed insulation.
    Crushed,
}

/// The contacts of a plug.
#[derive(Debug, Clone, Copy, Default, Deserialize)]
pub(super) enum ContactsFile {
    /// Sound.
    #[default]
    Sound,
    /// Loose.
    Loose,
    /// Burnt.
    Burnt,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) enum HouseEndFile {
    /// A connector that fits the inlet.
    Inlet,
    /// A second plug with bare blades, that fits the outlet of this circuit.
    BareBlades { outlet: String },
    /// A connector that takes an appliance's plug.
    Connector,
    /// A strip that takes several, with a second plug of its own: a thing that somebody made.
    TwoPlugStrip,
}

/// A cord that a neighbor lends, from a small inverter set of their own.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct LentFile {
    /// Name of the cord, small letters and hyphens.
    pub(super) name: String,
    /// Watts that their set delivers for hours.
    pub(super) rated_watts: f64,
    /// Watts that it delivers for seconds.
    pub(super) surge_watts: f64,
    /// Type letters on the cord's jacket.
    pub(super) letters: String,
    /// Gauge of its wire, AWG.
    pub(super) gauge: String,
    /// Length, feet.
    pub(super) length_ft: f64,
}
