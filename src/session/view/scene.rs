//! What a scene is drawn from, apart from what it says: kinds of things, the rooms they stand in, and which conductor leads where.
//!
//! Nothing here is a position on a picture: a front end lays things out by kind and room.
//! A kind is for the drawing alone; no rule hangs on it.

/// What an appliance is drawn as.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Default)]
pub enum ApplianceKind {
    /// Electronics in a box: whatever is of no kind below.
    #[default]
    Device,
    /// A lamp, or the lamps of a room.
    Lamp,
    /// A refrigerator.
    Fridge,
    /// A chest freezer.
    Freezer,
    /// A microwave oven.
    Microwave,
    /// Something small that stands on a counter: a kettle, a toaster.
    Countertop,
    /// A range or an oven.
    Range,
    /// A furnace or its blower.
    Furnace,
    /// A water heater.
    WaterHeater,
    /// A heater that stands in a room.
    Heater,
    /// A washer or a dryer.
    Drum,
    /// A sump pump in its pit.
    Sump,
    /// A well pump, seen as its wellhead.
    Well,
    /// An air conditioner or heat pump out of doors.
    AirConditioner,
    /// A fan that stands in a room.
    Fan,
    /// A television.
    Television,
    /// A computer, a router.
    Computer,
    /// A medical device that somebody depends on.
    Medical,
    /// A motor or a tool.
    Machine,
    /// A charger for a vehicle or tools, on a wall.
    Charger,
}

/// A part of the house or what is around it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Default)]
pub enum Room {
    /// The living room: where a thing is when nothing else is known of it.
    #[default]
    Living,
    /// The kitchen.
    Kitchen,
    /// A bedroom.
    Bedroom,
    /// A bathroom upstairs.
    Bathroom,
    /// The basement.
    Basement,
    /// The garage.
    Garage,
    /// Out of doors.
    Outside,
}

/// What part of the way of energy a conductor is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Default)]
pub enum WireKind {
    /// A span of the line.
    #[default]
    Span,
    /// The drop of a house next door.
    NeighborDrop,
    /// The service drop.
    Drop,
    /// Bars inside a panel.
    Bus,
    /// The wire behind an inlet.
    Inlet,
    /// A feeder between panels, transfer equipment and sources inside the house.
    Feeder,
    /// A branch circuit.
    Branch,
    /// A cord.
    Cord,
}

/// What a generator is drawn as.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Default)]
pub enum GeneratorForm {
    /// A frame on wheels.
    #[default]
    Portable,
    /// A case with a handle.
    Inverter,
    /// A cabinet on a pad.
    Standby,
}

/// An outlet or switch box at the end of a branch circuit.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct OutletView {
    /// Id: `outlet-` and the circuit's name, as a point to test.
    pub id: String,
    /// The room it is in.
    pub room: Room,
    /// Ids of the appliances that belong there, plugged in or not.
    pub appliances: Vec<String>,
}

/// A place where the generator can stand.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct StandView {
    /// Id, as the position of its placement.
    pub id: String,
    /// Distance to the nearest opening, feet; 0 indoors.
    pub opening_ft: f32,
    /// Whether it is only kept there.
    pub store: bool,
    /// The room, or outside.
    pub room: Room,
}

/// How a door stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Default)]
pub enum Doorway {
    /// There is none, or nothing hangs on it.
    #[default]
    None,
    /// Shut.
    Shut,
    /// Half open.
    Half,
    /// Open.
    Open,
}

/// What kind of building the power is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Default)]
pub enum Building {
    /// A house where people live.
    #[default]
    House,
    /// A hall where people meet.
    Hall,
}

/// What opens the line is drawn as this.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum DeviceKind {
    /// A recloser in its tank, which opens by itself on a fault.
    #[default]
    Recloser,
    /// Blades whose break can be seen.
    Switch,
}

/// How it stands, as far as this learner may be shown it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum DeviceState {
    /// Closed.
    Closed,
    /// Open.
    Open,
    /// This learner is not shown it.
    #[default]
    Unknown,
}

/// A device on a pole that opens the line.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct DeviceView {
    /// Id: `recloser`, `disconnect`, `tie`.
    pub id: String,
    /// Label.
    pub label: String,
    /// What it is drawn as.
    pub kind: DeviceKind,
    /// Id of its pole.
    pub pole: String,
    /// Id of the span at whose near end it sits; empty where it sits elsewhere.
    pub span: String,
    /// How it stands.
    pub state: DeviceState,
    /// Whether a jumper goes around it.
    pub jumped: bool,
    /// Whether a tag hangs there.
    pub tagged: bool,
    /// One sentence for pointer, focus and screen reader.
    pub sentence: String,
}
