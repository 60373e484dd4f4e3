//! What is built, how its movable things stand, and what a solver says about it.
//!
//! A [`Site`] is immutable and comes from a file: line, transformer, neighbors, service, panel, circuits, appliances, generator, cords.
//! [`Positions`] say how everything that can be moved stands; [`Plant`] turns both into a network and gives [`Readings`].
//! It covers one split-phase service on a single-phase lateral, with every neutral and equipment ground a conductor of its own.
//! It doesn't cover three-phase services, harmonics, inrush of transformers, or arcing.
//! Accuracy: that of `circuit`, with wire resistance held at 75 °C.

mod bonds;
mod control;
mod edges;
mod equipment;
mod guarded;
mod indoors;
mod lent;
mod line_work;
mod machine;
mod parts;
mod phasors;
mod plant;
mod readings;
mod rest;
mod returns;
mod touch;
mod way;
mod wiring;
mod wiring_house;
mod wiring_lent;
mod wiring_line;
mod wiring_sources;

pub use control::{Constraint, Control, ControlId, Kind, Operator, Plate, PositionId, Positions};
pub use edges::{Edge, Edges};
pub use equipment::{
    Backfeed, Battery, Bond, Bus, Cord, FarEnd, Garage, Generator, Inlet, Interlock, Moved,
    NeutralPole, OtherSide, Pair, Panel, Place, Receptacle, Solar, Spot, Subpanel, Transfer,
};
pub use indoors::{CanRoom, FuelCan, Indoors, NextDoor, Person};
pub use lent::Lent;
pub use line_work::{
    At, Break, CLAMPS, Clamps, Grounds, HandTester, LineWork, PROVING_SOURCE, Tap,
};
pub use machine::{Automatic, Machine, OIL_LOW, Oil};
pub use parts::{
    Appliance, Circuit, Demand, Legs, Line, Neighbor, Plug, Pole, Reservoir, Service, Site, Span,
    WallWire, Work,
};
pub use plant::{Body, Drive, LoadState, Plant};
pub use readings::{
    ApplianceReading, BatteryReading, Fed, GeneratorReading, PointReading, Range, Readings, Shock,
};
pub use rest::{CordState, Found, Rest};
pub use touch::{FEET_OHM, Felt};
pub use way::{CARRIES_A, Passed, Supply};
