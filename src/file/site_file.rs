//! The site file as it is written: one type a section, units in the names.
//!
//! An unknown or misspelt field is refused, never ignored.

use serde::Deserialize;

use crate::apparatus::fuse::Delay;

use super::site_build_indoors::{AlarmFile, CanPlaceFile, NextDoorFile};
use super::site_build_machine::{KindFile, MachineFile};
use super::site_file_line::LineWorkFile;

/// The version of site files that this program reads.
pub(super) const SITE_VERSION: u32 = 1;

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct SiteFile {
    pub(super) version: u32,
    pub(super) name: String,
    pub(super) line: LineFile,
    /// What a crew has to work the line with; left out where the learner is a customer.
    #[serde(default)]
    pub(super) line_work: Option<LineWorkFile>,
    pub(super) service: ServiceFile,
    pub(super) neighbors: Vec<NeighborFile>,
    pub(super) panel: PanelFile,
    #[serde(default)]
    pub(super) subpanels: Vec<SubpanelFile>,
    pub(super) circuits: Vec<CircuitFile>,
    #[serde(default)]
    pub(super) inlets: Vec<InletFile>,
    #[serde(default)]
    pub(super) transfers: Vec<TransferFile>,
    pub(super) appliances: Vec<ApplianceFile>,
    pub(super) generator: GeneratorFile,
    #[serde(default)]
    pub(super) solar: Option<SolarFile>,
    #[serde(default)]
    pub(super) battery: Option<BatteryFile>,
    pub(super) cords: Vec<CordFile>,
    pub(super) air: AirFile,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct LineFile {
    pub(super) volts: f64,
    pub(super) source_r_ohm: f64,
    pub(super) source_x_ohm: f64,
    pub(super) source_electrode_ohm: f64,
    pub(super) poles: Vec<PoleFile>,
    pub(super) spans: Vec<SpanFile>,
    pub(super) breaks_at: String,
    pub(super) crew_at: String,
    pub(super) transformer_at: String,
    pub(super) transformer: TransformerFile,
    pub(super) footing_ohm: f64,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct PoleFile {
    pub(super) name: String,
    pub(super) electrode_ohm: f64,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct SpanFile {
    pub(super) name: String,
    pub(super) from: String,
    pub(super) to: String,
    pub(super) length_ft: f64,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct TransformerFile {
    pub(super) kva: f64,
    pub(super) resistance_percent: f64,
    pub(super) reactance_percent: f64,
    pub(super) no_load_loss_percent: f64,
    pub(super) magnetizing_percent: f64,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct ServiceFile {
    pub(super) drop_ft: f64,
    pub(super) electrode_ohm: f64,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct NeighborFile {
    pub(super) name: String,
    pub(super) drop_ft: f64,
    pub(super) electrode_ohm: f64,
    pub(super) leg_1_watts: f64,
    pub(super) leg_2_watts: f64,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct PanelFile {
    pub(super) main_amps: u16,
    /// The breaker that an inlet feeds; none where the house has other transfer equipment.
    #[serde(default)]
    pub(super) backfeed: Option<BackfeedFile>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct BackfeedFile {
    pub(super) breaker_amps: u16,
    pub(super) inlet: String,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct SubpanelFile {
    pub(super) name: String,
    /// The breaker in the main panel that feeds it, or of its pair the one that brings the utility.
    pub(super) feeder_amps: u16,
    pub(super) gauge: String,
    pub(super) length_ft: f64,
    pub(super) slot: (u8, u8),
    /// The other breaker of its pair, in a panel made ready for a generator; none behind a transfer switch.
    #[serde(default)]
    pub(super) pair: Option<BackfeedFile>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct InletFile {
    pub(super) name: String,
    pub(super) gauge: String,
    pub(super) length_ft: f64,
    /// States that its breaker is too large for its wire, a fault that drills are about; false when left out.
    #[serde(default)]
    pub(super) found_thin: bool,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct TransferFile {
    pub(super) name: String,
    pub(super) moves: MovesFile,
    pub(super) other: OtherFile,
    pub(super) neutral: NeutralFile,
    /// The switch's own breaker toward the other source.
    #[serde(default)]
    pub(super) breaker_amps: Option<u16>,
    /// Worked by a controller and not by a hand.
    #[serde(default)]
    pub(super) automatic: bool,
}

#[derive(Debug, Deserialize)]
pub(super) enum MovesFile {
    /// The whole house.
    MainPanel,
    /// A subpanel, by name.
    Subpanel(String),
    /// One circuit, by name.
    Circuit(String),
}

#[derive(Debug, Deserialize)]
pub(super) enum OtherFile {
    /// An inlet, by name.
    Inlet(String),
    /// The generator, wired for good.
    Generator,
    /// The battery.
    Battery,
}

#[derive(Debug, Clone, Copy, Deserialize)]
pub(super) enum NeutralFile {
    Solid,
    Switched,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct SolarFile {
    pub(super) watts: f64,
    pub(super) breaker_amps: u16,
    pub(super) slot: (u8, u8),
    /// The subpanel it feeds; the main panel when left out.
    #[serde(default)]
    pub(super) panel: Option<String>,
    /// The rules its inverter was built to; those of most since 2020 when left out.
    #[serde(default)]
    pub(super) built_to: ProfileFile,
}

#[derive(Debug, Clone, Copy, Default, Deserialize)]
pub(super) enum ProfileFile {
    CategoryI,
    CategoryII,
    #[default]
    CategoryIII,
    Before2018,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct BatteryFile {
    pub(super) rated_watts: f64,
    pub(super) surge_watts: f64,
    pub(super) kilowatt_hours: f64,
    /// Share of its energy that it holds when a drill begins, percent.
    pub(super) charged_percent: f64,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct CircuitFile {
    pub(super) name: String,
    pub(super) breaker_amps: u16,
    pub(super) gauge: String,
    pub(super) length_ft: f64,
    pub(super) leg: LegFile,
    pub(super) slot: (u8, u8),
    /// The subpanel its breaker sits in; the main panel when left out.
    #[serde(default)]
    pub(super) panel: Option<String>,
    /// The circuit named before it whose neutral wire it shares; its own when left out.
    #[serde(default)]
    pub(super) neutral_of: Option<String>,
    /// A plug fuse in place of the breaker.
    #[serde(default)]
    pub(super) fuse: Option<FuseFile>,
    /// Whether its outlet has a ground-fault device.
    #[serde(default)]
    pub(super) gfci: bool,
}

#[derive(Debug, Clone, Copy, Deserialize)]
pub(super) enum FuseFile {
    Fast,
    TimeDelay,
}

impl FuseFile {
    pub(super) fn delay(self) -> Delay {
        match self {
            Self::Fast => Delay::Fast,
            Self::TimeDelay => Delay::TimeDelay,
        }
    }
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
pub(super) enum LegFile {
    Leg1,
    Leg2,
    Both,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct ApplianceFile {
    pub(super) name: String,
    pub(super) circuit: String,
    pub(super) work: WorkFile,
    pub(super) demand: DemandFile,
    #[serde(default)]
    pub(super) plug: PlugFile,
    /// Whether its frame is on the equipment ground; true when left out.
    #[serde(default = "yes")]
    pub(super) grounded: bool,
    /// Worn insulation between hot and frame; none when left out.
    #[serde(default)]
    pub(super) leak_ohm: Option<f64>,
}

fn yes() -> bool {
    true
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) enum WorkFile {
    Resistive {
        watts: f64,
    },
    Electronic {
        watts: f64,
        power_factor: f64,
    },
    Motor {
        horsepower: f64,
        code_letter: char,
        running_watts: f64,
        power_factor: f64,
        seconds_to_speed: f64,
    },
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) enum DemandFile {
    Switch {
        on_at_start: bool,
    },
    Store {
        start: f64,
        rise_per_hour: f64,
        fall_per_hour: f64,
        on_level: f64,
        off_level: f64,
    },
}

#[derive(Debug, Default, Deserialize)]
pub(super) enum PlugFile {
    /// Wired to its circuit for good.
    #[default]
    HardWired,
    /// Has a plug that a person can move.
    Plug,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct GeneratorFile {
    pub(super) rated_watts: f64,
    pub(super) surge_watts: f64,
    pub(super) output_breaker_amps: u16,
    pub(super) tank_gallons: f64,
    pub(super) warm_up_seconds: f64,
    pub(super) cool_down_seconds: f64,
    /// Which kind of set it is; a plain one when left out.
    #[serde(default)]
    pub(super) kind: KindFile,
    /// Its own parts and switches; none when left out.
    #[serde(default)]
    pub(super) machine: MachineFile,
    /// Whether its neutral is joined to its frame; floating when left out.
    #[serde(default)]
    pub(super) neutral: BondFile,
    /// Ohms from its frame to earth where it stands on wet ground; none when left out, on dry rubber feet.
    #[serde(default)]
    pub(super) frame_to_earth_ohm: Option<f64>,
    /// Outlets on its face; one for the house, called `generator`, when left out.
    #[serde(default)]
    pub(super) receptacles: Option<Vec<ReceptacleFile>>,
    pub(super) places: Vec<PlaceFile>,
}

#[derive(Debug, Clone, Copy, Default, Deserialize)]
pub(super) enum BondFile {
    #[default]
    Floating,
    Bonded,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct ReceptacleFile {
    pub(super) name: String,
    pub(super) leg: LegFile,
    #[serde(default)]
    pub(super) breaker_amps: Option<u16>,
    #[serde(default)]
    pub(super) gfci: bool,
    /// Whether it takes one plug only; two or more when left out.
    #[serde(default)]
    pub(super) single: bool,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct PlaceFile {
    pub(super) name: String,
    pub(super) opening_ft: f64,
    /// Cord that it takes from there to the inlet; every cord reaches when left out.
    #[serde(default)]
    pub(super) inlet_ft: Option<f64>,
    pub(super) usable: bool,
    pub(super) gas_with_window_shut: GasFile,
    pub(super) gas_with_window_open: GasFile,
    /// How far a cord has to reach from there to the house; any cord does when left out.
    #[serde(default)]
    pub(super) cord_ft: Option<f64>,
    /// Distance to the nearest opening of the home next door; far when left out.
    #[serde(default)]
    pub(super) next_door_ft: Option<f64>,
}

#[derive(Debug, Clone, Copy, Deserialize)]
pub(super) enum GasFile {
    Indoors,
    NearOpening,
    FarAway,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct CordFile {
    pub(super) name: String,
    pub(super) letters: String,
    pub(super) gauge: String,
    pub(super) length_ft: f64,
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
    pub(super) house_end: HouseEndFile,
}

/// How a cord can lie.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
pub(super) enum RestFile {
    Coiled,
    HalfCoiled,
    Flat,
    UnderRug,
    Bundled,
    InPuddle,
}

fn coil_or_flat() -> Vec<RestFile> {
    vec![RestFile::Coiled, RestFile::Flat]
}

/// What is damaged along a cord.
#[derive(Debug, Clone, Copy, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) enum DamageFile {
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
    #[default]
    Sound,
    Loose,
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
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct AirFile {
    pub(super) cubic_meters: f64,
    pub(super) changes_per_hour_window_shut: f64,
    pub(super) changes_per_hour_window_open: f64,
    /// Air of the attached garage; none when left out.
    #[serde(default)]
    pub(super) garage_cubic_meters: Option<f64>,
    /// Whether its big door can stand half open; it is shut or open when left out.
    #[serde(default)]
    pub(super) garage_door_stops_half_way: bool,
    /// Air that comes up from a garage under the home, where it isn't beside it.
    #[serde(default)]
    pub(super) cubic_meters_per_hour_through_floor: Option<f64>,
    /// The carbon monoxide alarm; one that works and isn't handled when left out.
    #[serde(default)]
    pub(super) alarm: AlarmFile,
    /// People who sleep in the house, by name; nobody when left out.
    #[serde(default)]
    pub(super) sleepers: Vec<String>,
    /// A home wall to wall with this one; none when left out.
    #[serde(default)]
    pub(super) next_door: Option<NextDoorFile>,
    /// Whether cords come in through the window, which then can't be shut on them.
    #[serde(default)]
    pub(super) window_takes_cords: bool,
    /// Places where the can of fuel can be kept, the first at the start; none when left out.
    #[serde(default)]
    pub(super) fuel_can: Vec<CanPlaceFile>,
}
