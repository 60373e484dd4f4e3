//! What a piece of equipment shows on its face: handles, lights, gauges, outlets, a tag.
//!
//! A face names its controls by id; a front end finds them in the close view that holds the face.
//! Everything on it is in words too, so that a listener misses nothing.

use super::Fed;

/// Equipment that is built into the house or stands beside it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Default)]
pub enum EquipmentKind {
    /// The main panel.
    #[default]
    Panel,
    /// A panel fed through a transfer switch.
    Subpanel,
    /// A transfer switch worked by hand.
    Transfer,
    /// A transfer switch worked by a controller.
    AutoTransfer,
    /// Solar panels with their inverter.
    Solar,
    /// A battery with its inverter.
    Battery,
}

/// The side that a transfer switch's handle is on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Default)]
pub enum Side {
    /// The utility's.
    Utility,
    /// Neither.
    #[default]
    Off,
    /// The other source's.
    Other,
}

/// A piece of equipment as it is seen from afar.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct EquipmentView {
    /// Id: `panel`, a subpanel's, a transfer switch's name, `solar`, `battery`.
    pub id: String,
    /// Label.
    pub label: String,
    /// Kind.
    pub kind: EquipmentKind,
    /// The place whose close view shows it.
    pub place: String,
    /// Where each of its transfer handles stands.
    pub sides: Vec<Side>,
    /// Whether it gives power, or its controller is awake.
    pub active: bool,
    /// Share of what it holds: a battery's charge; 0 where that means nothing.
    pub level: f32,
    /// Whether a lock and tag hang on it.
    pub tagged: bool,
    /// The word for how it stands.
    pub word: String,
    /// One sentence for pointer, focus and screen reader.
    pub sentence: String,
}

/// What a face is drawn as.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Default)]
pub enum FaceKind {
    /// Breakers in two columns.
    #[default]
    Panel,
    /// One or more handles between two sources.
    Transfer,
    /// A controller: mode, lights, timers.
    Controller,
    /// A generator's face: gauges and outlets.
    Generator,
    /// An inverter's face: lights and gauges.
    Inverter,
    /// A cord with its two ends.
    Cord,
}

/// The color of a cord's jacket.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Default)]
pub enum Jacket {
    /// None that its name speaks of.
    #[default]
    Plain,
    /// Yellow.
    Yellow,
    /// Orange.
    Orange,
    /// Red.
    Red,
    /// Blue.
    Blue,
    /// Green.
    Green,
    /// Brown.
    Brown,
    /// Gray.
    Gray,
    /// White.
    White,
}

/// The face of a piece of equipment.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct FaceView {
    /// Id of the equipment.
    pub id: String,
    /// Title.
    pub title: String,
    /// Kind.
    pub kind: FaceKind,
    /// Ids of its controls, in the order in which they sit.
    pub controls: Vec<String>,
    /// Lights.
    pub lights: Vec<LightView>,
    /// Gauges and timers.
    pub gauges: Vec<GaugeView>,
    /// Outlets.
    pub sockets: Vec<SocketView>,
    /// What comes in from the utility, from the other source, and what goes out, as far as it may be shown.
    pub ends: Vec<EndView>,
    /// What is printed on it and how it feels, a line each.
    pub notes: Vec<String>,
    /// The words on a tag that hangs on it; empty if none does.
    pub tag: String,
    /// Of a cord, the color of its jacket.
    pub jacket: Jacket,
}

/// A light on a face.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct LightView {
    /// Label.
    pub label: String,
    /// Whether it is lit.
    pub lit: bool,
    /// Whether it warns when lit.
    pub warns: bool,
    /// One sentence for pointer, focus and screen reader.
    pub sentence: String,
}

/// A gauge, or a timer that counts.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct GaugeView {
    /// Label.
    pub label: String,
    /// Value with its unit.
    pub value: String,
    /// Where it stands on its scale, 0 to 1; none where it has no scale.
    pub share: Option<f32>,
    /// Where on the scale a limit is marked.
    pub limit: Option<f32>,
}

/// An outlet on a face.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct SocketView {
    /// Id, as the position of a cord's end.
    pub id: String,
    /// Label.
    pub label: String,
    /// Volts and amps in words.
    pub rating: String,
    /// Whether it offers both legs.
    pub both_legs: bool,
    /// Whether anything is plugged in.
    pub taken: bool,
    /// What is plugged in, in words.
    pub plugged: String,
    /// Id of what is plugged into the end of a cord; empty where nothing is, and for outlets of an engine set.
    pub user: String,
    /// Id of its breaker; empty if it has none of its own.
    pub breaker: String,
    /// Id of its ground-fault device; empty if it has none.
    pub gfci: String,
}

/// One side of a transfer switch.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct EndView {
    /// Label.
    pub label: String,
    /// What feeds it.
    pub fed: Fed,
    /// The word for what feeds it, with volts where they are known.
    pub word: String,
}
