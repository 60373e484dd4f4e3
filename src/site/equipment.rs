//! What is built to connect, move and feed: panels, inlets, transfer switches, generator, solar, battery, cords.
//!
//! Plain data with units in their names, checked while a file is read.
//! A transfer switch has contacts that can't be closed to both sides; an interlock is a constraint of the site and may be missing.

use crate::apparatus::battery;
use crate::apparatus::branch_wire::BranchWire;
use crate::apparatus::conductor::Awg;
use crate::apparatus::cord;
use crate::apparatus::generator::GeneratorSpec;
use crate::apparatus::interconnection::Profile;
use crate::apparatus::solar;
use crate::hazard::monoxide::Placement;

use super::control::{ControlId, Positions};
use super::machine::Machine;
use super::parts::Legs;
use super::rest::{Found, Rest};

/// Volts between the two hots of a house.
const HOUSE_V: f64 = 240.0;

/// A main panel.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Panel {
    /// The main breaker.
    pub main: ControlId,
    /// The breaker that an inlet feeds, where there is one.
    pub backfeed: Option<Backfeed>,
}

impl Panel {
    /// Whether a slide that blocks is fitted between main and backfed breaker.
    pub fn has_slide(&self) -> bool {
        self.backfeed.is_some_and(|b| b.interlock.blocks())
    }
}

/// A breaker in the main panel that an inlet feeds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Backfeed {
    /// The breaker.
    pub breaker: ControlId,
    /// Index of the inlet.
    pub inlet: usize,
    /// What keeps it from being on together with the main.
    pub interlock: Interlock,
}

/// The slide between main and backfed breaker, or the bar of a pair, as it is found.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Interlock {
    /// Listed for this panel, and it blocks.
    Fitted,
    /// There is none.
    Missing,
    /// There is one that doesn't reach: made for another panel, or bent.
    Misfitted,
    /// There was one, and somebody has taken its bar off.
    Defeated,
}

impl Interlock {
    /// Whether it keeps the two breakers from being on together.
    pub fn blocks(self) -> bool {
        self == Self::Fitted
    }
}

/// A bus of chosen circuits: fed through a transfer switch, or by a pair of breakers of its own.
#[derive(Debug, Clone, PartialEq)]
pub struct Subpanel {
    /// Name.
    pub name: String,
    /// Gauge of its feeder.
    pub awg: Awg,
    /// Length of its feeder, feet.
    pub length_ft: f64,
    /// The pair that feeds it in a panel that was made ready for a generator; none behind a transfer switch.
    pub pair: Option<Pair>,
}

/// Two breakers on one bus, one fed from the utility's bus and one from an inlet, with a bar of their own between them.
/// The neutral of such a panel is solid: nothing parts it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Pair {
    /// The breaker that brings the utility.
    pub utility: ControlId,
    /// The breaker that brings the generator.
    pub generator: ControlId,
    /// Index of the inlet.
    pub inlet: usize,
    /// What keeps the two from being on together.
    pub interlock: Interlock,
}

/// A power inlet: male pins on the outside wall and the wire behind them.
#[derive(Debug, Clone, PartialEq)]
pub struct Inlet {
    /// Name, as the position of a cord's end.
    pub name: String,
    /// Gauge of its wire.
    pub awg: Awg,
    /// Length of its wire, feet.
    pub length_ft: f64,
    /// How its wire warms; none for a size that no ampacity is printed for.
    pub heat: Option<BranchWire>,
    /// Whether it is stated that the breaker ahead of its wire is too large: a fault that drills are about.
    pub found_thin: bool,
}

/// A switch that brings a load to the utility or to another source, and never to both.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Transfer {
    /// Name.
    pub name: String,
    /// Its handle or contactor: `utility`, `off`, `generator`.
    pub handle: ControlId,
    /// Whether its neutral is moved along.
    pub neutral: NeutralPole,
    /// What it moves.
    pub load: Moved,
    /// The breaker in the main panel that feeds its utility side; none where that is the service itself or the circuit's own breaker.
    pub feeder: Option<ControlId>,
    /// What is on its other side.
    pub other: OtherSide,
    /// The breaker between the other source and its contacts, where it has one.
    pub breaker: Option<ControlId>,
    /// Whether a controller works it by itself.
    pub automatic: bool,
    /// The cover over its lugs and contacts, where that can be opened: shut, open.
    pub cover: Option<ControlId>,
}

/// Whether a transfer switch moves the neutral along.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum NeutralPole {
    /// The neutrals of both sources stay joined.
    Solid,
    /// The load's neutral goes with its hots.
    Switched,
}

/// What a transfer switch moves.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Moved {
    /// The whole main panel.
    MainPanel,
    /// A subpanel, by index.
    Subpanel(usize),
    /// One circuit, by index.
    Circuit(usize),
}

/// The source on the other side of a transfer switch.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum OtherSide {
    /// An inlet, by index.
    Inlet(usize),
    /// The generator's terminals, wired for good.
    Generator,
    /// The battery's inverter.
    Battery,
}

/// A panel's bus.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Bus {
    /// The main panel's.
    Main,
    /// That of a subpanel, by index.
    Sub(usize),
}

/// A place where the generator can stand.
#[derive(Debug, Clone, PartialEq)]
pub struct Place {
    /// Name, as its position is called.
    pub name: String,
    /// Distance to the nearest opening, feet; 0 indoors.
    pub opening_ft: f64,
    /// How exhaust gets into the house from here: with the window shut, and with it open.
    pub exposure: (Placement, Placement),
    /// Distance to the nearest opening of the home next door, feet, and how exhaust gets in there; `None` where it is far.
    pub next_door: Option<(f64, Placement)>,
    /// Whether cords reach and the engine may be run at all: a shed is a store.
    pub usable: bool,
}

impl Place {
    /// Whether an engine here sends its exhaust into a home, by an opening or from within, as the windows and the wind may be.
    pub fn lets_gas_in(&self) -> bool {
        let (shut, open) = self.exposure;
        let next_door = self.next_door.map(|(_, placement)| placement);
        let mut ways = [Some(shut), Some(open), next_door].into_iter().flatten();
        ways.any(|placement| placement != Placement::TwentyFeetAway)
    }
}

/// A portable generator with its controls.
#[derive(Debug, Clone, PartialEq)]
pub struct Generator {
    /// What its plate says.
    pub spec: GeneratorSpec,
    /// Engine switch: stopped, running.
    pub engine: ControlId,
    /// What it has besides its terminals.
    pub machine: Machine,
    /// Breaker on its face.
    pub output: ControlId,
    /// Whether its neutral is joined to its frame.
    pub bond: Bond,
    /// From its frame to earth where it stands, ohms; `None` on dry rubber feet.
    pub frame_earth_ohm: Option<f64>,
    /// Outlets on its face; none on a unit that is wired for good.
    pub receptacles: Vec<Receptacle>,
    /// Where it stands.
    pub placement: ControlId,
    /// Places, in the order of the placement's positions.
    pub places: Vec<Place>,
}

/// Whether a generator's neutral is joined to its frame.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Bond {
    /// Neutral and frame are apart.
    Floating,
    /// Neutral and frame are joined.
    Bonded,
}

/// An outlet on a generator's face.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Receptacle {
    /// Name, as the position of a cord's end.
    pub name: String,
    /// Legs it offers.
    pub legs: Legs,
    /// Its own breaker, behind the main one.
    pub breaker: Option<ControlId>,
    /// Its ground-fault device.
    pub gfci: Option<ControlId>,
}

/// Solar panels with an inverter that follows the grid.
#[derive(Debug, Clone, PartialEq)]
pub struct Solar {
    /// Watts it gives when the sun is on it.
    pub watts: f64,
    /// The bus it feeds.
    pub bus: Bus,
    /// Its breaker.
    pub breaker: ControlId,
    /// Its own disconnect on the wall: open, closed.
    pub disconnect: ControlId,
    /// The rules its inverter was built to.
    pub profile: Profile,
}

impl Solar {
    /// Its inverter as a device.
    pub fn inverter(&self) -> solar::Solar {
        solar::Solar {
            rated_w: self.watts,
            rated_v: HOUSE_V,
            profile: self.profile,
        }
    }
}

/// A battery with an inverter that makes a grid of its own.
#[derive(Debug, Clone, PartialEq)]
pub struct Battery {
    /// Watts it delivers for hours.
    pub rated_w: f64,
    /// Watts it delivers for seconds.
    pub surge_w: f64,
    /// Energy it holds, kilowatt-hours.
    pub energy_kwh: f64,
    /// Share of it that it holds when a drill begins.
    pub charged_share: f64,
    /// Its switch: off, on.
    pub switch: ControlId,
}

impl Battery {
    /// The battery as a device; what its plate doesn't say is that of a typical one.
    pub fn device(&self) -> battery::Battery {
        battery::Battery {
            capacity_wh: self.energy_kwh * 1000.0,
            continuous_w: self.rated_w,
            surge_w: self.surge_w,
            rated_v: HOUSE_V,
            ..battery::Battery::typical()
        }
    }
}

/// An attached garage: a room of its own behind a door of the house.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Garage {
    /// Its air, cubic meters.
    pub air_m3: f64,
    /// Air changes an hour with its big door shut, and with it open.
    pub changes_per_h: (f64, f64),
    /// The same with the big door half-way, where it stops there.
    pub half_changes_per_h: f64,
    /// Cubic meters an hour that it exchanges with the house, with the door between them shut, and with it open.
    pub to_house_m3_per_h: (f64, f64),
    /// The big door: shut, open; or shut, half, open.
    pub big_door: ControlId,
    /// The door to the house: shut, open.
    pub house_door: ControlId,
}

/// Where an end of a cord can be.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Spot {
    /// In nothing.
    Stowed,
    /// In an outlet on the generator, by index.
    Receptacle(usize),
    /// In another cord's connector, by index.
    CordEnd(usize),
    /// In the outlet of a circuit, by index.
    Outlet(usize),
    /// On an inlet, by index.
    Inlet(usize),
    /// In the end of the cord that a neighbor lends.
    Lent,
}

/// A cord with two ends.
#[derive(Debug, Clone, PartialEq)]
pub struct Cord {
    /// Name.
    pub name: String,
    /// Type, gauge and length.
    pub make: cord::Cord,
    /// Legs it carries.
    pub legs: Legs,
    /// Whether an adapter at the generator's end ties both its legs to one 120 V outlet.
    pub ties_legs: bool,
    /// Whether it has an equipment ground from end to end.
    pub grounded: bool,
    /// The end that goes to the generator; its first position is in nothing.
    pub near: ControlId,
    /// Where that end is in each position of its control.
    pub near_spots: Vec<Spot>,
    /// What the other end is.
    pub far: FarEnd,
    /// How it lies.
    pub lay: ControlId,
    /// What each position of that control means.
    pub rests: Vec<Rest>,
    /// The state it is found in.
    pub found: Found,
}

/// The house end of a cord.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FarEnd {
    /// A connector for an inlet; the control's positions from the second on are the inlets, in order.
    Inlet(ControlId),
    /// A plug with bare blades; the control's second position is the outlet of a circuit, by index.
    Blades(ControlId, usize),
    /// A female connector for an appliance's plug.
    Connector,
    /// A strip for appliances' plugs with a second plug of its own; the control's second position is the end of the cord that a neighbor lends.
    Strip(ControlId),
}

impl FarEnd {
    /// The control of what it plugs into something; none for a connector, which is plugged into.
    pub fn control(self) -> Option<ControlId> {
        match self {
            Self::Inlet(end) | Self::Blades(end, _) | Self::Strip(end) => Some(end),
            Self::Connector => None,
        }
    }

    /// Whether an appliance's plug goes into it.
    pub fn takes_plugs(self) -> bool {
        matches!(self, Self::Connector | Self::Strip(_))
    }
}

impl Cord {
    /// Where the end that goes to the generator is.
    pub fn near_spot(&self, positions: &Positions) -> Spot {
        let at = usize::from(positions.get(self.near).0);
        self.near_spots.get(at).copied().unwrap_or(Spot::Stowed)
    }
}
