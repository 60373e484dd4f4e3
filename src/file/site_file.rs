//! The site file as it is written: one type a section, units in the names.
//!
//! An unknown or misspelt field is refused, never ignored.

use serde::Deserialize;

use crate::apparatus::fuse::Delay;

use super::site_build_indoors::{AlarmFile, CanPlaceFile, NextDoorFile};
use super::site_build_machine::{KindFile, MachineFile};
pub(super) use super::site_file_cords::{
    ContactsFile, CordFile, DamageFile, HouseEndFile, LentFile, RestFile,
};
use super::site_file_line::LineWorkFile;

/// The version of site files that this program reads.
pub(super) const SITE_VERSION: u32 = 1;

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct SiteFile {
    /// Version of the format.
    pub(super) version: u32,
    /// Name, small letters and hyphens.
    pub(super) name: String,
    /// The utility's line, from the substation on.
    pub(super) line: LineFile,
    /// What a crew has to work the line with; left out where the learner is a customer.
    #[serde(default)]
    pub(super) line_work: Option<LineWorkFile>,
    /// The wires from the transformer to the house.
    pub(super) service: ServiceFile,
    /// Other houses on the same transformer.
    pub(super) neighbors: Vec<NeighborFile>,
    /// The main panel.
    pub(super) panel: PanelFile,
    /// Panels fed through a transfer switch; none when left out.
    #[serde(default)]
    pub(super) subpanels: Vec<SubpanelFile>,
    /// Branch circuits of all panels.
    pub(super) circuits: Vec<CircuitFile>,
    /// Power inlets; none when left out.
    #[serde(default)]
    pub(super) inlets: Vec<InletFile>,
    /// Transfer switches; none when left out.
    #[serde(default)]
    pub(super) transfers: Vec<TransferFile>,
    /// What uses power.
    pub(super) appliances: Vec<ApplianceFile>,
    /// The generator.
    pub(super) generator: GeneratorFile,
    /// Solar panels; none when left out.
    #[serde(default)]
    pub(super) solar: Option<SolarFile>,
    /// A battery; none when left out.
    #[serde(default)]
    pub(super) battery: Option<BatteryFile>,
    /// A cord that a neighbor lends; none when left out.
    #[serde(default)]
    pub(super) neighbor_cord: Option<LentFile>,
    /// Cords in the shed.
    pub(super) cords: Vec<CordFile>,
    /// The air of the rooms.
    pub(super) air: AirFile,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct LineFile {
    /// Volts from line to neutral.
    pub(super) volts: f64,
    /// Resistance of the source, ohms.
    pub(super) source_r_ohm: f64,
    /// Reactance of the source, ohms.
    pub(super) source_x_ohm: f64,
    /// Resistance of the substation's electrode, ohms.
    pub(super) source_electrode_ohm: f64,
    /// Poles in order.
    pub(super) poles: Vec<PoleFile>,
    /// Wires from pole to pole.
    pub(super) spans: Vec<SpanFile>,
    /// The span that the storm breaks.
    pub(super) breaks_at: String,
    /// The pole where the crew works.
    pub(super) crew_at: String,
    /// The pole with the house's transformer.
    pub(super) transformer_at: String,
    /// The transformer.
    pub(super) transformer: TransformerFile,
    /// From a lineworker's feet to remote earth, ohms.
    pub(super) footing_ohm: f64,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct PoleFile {
    /// Name, small letters and hyphens.
    pub(super) name: String,
    /// Resistance of its electrode to remote earth, ohms.
    pub(super) electrode_ohm: f64,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct SpanFile {
    /// Name, small letters and hyphens.
    pub(super) name: String,
    /// The pole it comes from.
    pub(super) from: String,
    /// The pole it goes to.
    pub(super) to: String,
    /// Length, feet.
    pub(super) length_ft: f64,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct TransformerFile {
    /// Rating, kilovolt-amperes.
    pub(super) kva: f64,
    /// Resistance, percent of its rating.
    pub(super) resistance_percent: f64,
    /// Reactance, percent.
    pub(super) reactance_percent: f64,
    /// Loss without load, percent.
    pub(super) no_load_loss_percent: f64,
    /// Magnetizing current, percent.
    pub(super) magnetizing_percent: f64,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct ServiceFile {
    /// Length of the wires from the transformer, feet.
    pub(super) drop_ft: f64,
    /// Resistance of its electrode to remote earth, ohms.
    pub(super) electrode_ohm: f64,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct NeighborFile {
    /// Name, small letters and hyphens.
    pub(super) name: String,
    /// Length of the wires from the transformer, feet.
    pub(super) drop_ft: f64,
    /// Resistance of its electrode to remote earth, ohms.
    pub(super) electrode_ohm: f64,
    /// Watts switched on on its first leg.
    pub(super) leg_1_watts: f64,
    /// Watts switched on on its second leg.
    pub(super) leg_2_watts: f64,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct PanelFile {
    /// Rating of the main breaker, amps.
    pub(super) main_amps: u16,
    /// The breaker that an inlet feeds; none where the house has other transfer equipment.
    #[serde(default)]
    pub(super) backfeed: Option<BackfeedFile>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct BackfeedFile {
    /// Rating of its breaker, amps.
    pub(super) breaker_amps: u16,
    /// The inlet that feeds it.
    pub(super) inlet: String,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct SubpanelFile {
    /// Name, small letters and hyphens.
    pub(super) name: String,
    /// The breaker in the main panel that feeds it, or of its pair the one that brings the utility.
    pub(super) feeder_amps: u16,
    /// Gauge of its wire, AWG.
    pub(super) gauge: String,
    /// Length, feet.
    pub(super) length_ft: f64,
    /// Column (1 left, 2 right) and row in its panel.
    pub(super) slot: (u8, u8),
    /// The other breaker of its pair, in a panel made ready for a generator; none behind a transfer switch.
    #[serde(default)]
    pub(super) pair: Option<BackfeedFile>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct InletFile {
    /// Name, small letters and hyphens.
    pub(super) name: String,
    /// Gauge of its wire, AWG.
    pub(super) gauge: String,
    /// Length, feet.
    pub(super) length_ft: f64,
    /// States that its breaker is too large for its wire, a fault that drills are about; false when left out.
    #[serde(default)]
    pub(super) found_thin: bool,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct TransferFile {
    /// Name, small letters and hyphens.
    pub(super) name: String,
    /// What it moves.
    pub(super) moves: MovesFile,
    /// What is on its other side.
    pub(super) other: OtherFile,
    /// Whether the neutral is moved along.
    pub(super) neutral: NeutralFile,
    /// The switch's own breaker toward the other source.
    #[serde(default)]
    pub(super) breaker_amps: Option<u16>,
    /// Worked by a controller and not by a hand.
    #[serde(default)]
    pub(super) automatic: bool,
    /// Whether the cover of one that works by itself can be opened; behind it are the lugs of both sources, and the contacts can be moved by hand.
    #[serde(default)]
    pub(super) cover: bool,
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
    /// The neutrals stay joined.
    Solid,
    /// The neutral goes with its hots.
    Switched,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct SolarFile {
    /// Watts it takes or gives at its rated volts.
    pub(super) watts: f64,
    /// Rating of its breaker, amps.
    pub(super) breaker_amps: u16,
    /// Column (1 left, 2 right) and row in its panel.
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
    /// IEEE 1547-2018, category I.
    CategoryI,
    /// IEEE 1547-2018, category II.
    CategoryII,
    /// IEEE 1547-2018, category III.
    #[default]
    CategoryIII,
    /// The rules before 2018.
    Before2018,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct BatteryFile {
    /// Watts it gives for hours.
    pub(super) rated_watts: f64,
    /// Watts it gives for seconds.
    pub(super) surge_watts: f64,
    /// Energy it holds, kilowatt-hours.
    pub(super) kilowatt_hours: f64,
    /// Share of its energy that it holds when a drill begins, percent.
    pub(super) charged_percent: f64,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct CircuitFile {
    /// Name, small letters and hyphens.
    pub(super) name: String,
    /// Rating of its breaker, amps.
    pub(super) breaker_amps: u16,
    /// Gauge of its wire, AWG.
    pub(super) gauge: String,
    /// Length, feet.
    pub(super) length_ft: f64,
    /// The leg it is on.
    pub(super) leg: LegFile,
    /// Column (1 left, 2 right) and row in its panel.
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
    /// Blows at a motor's start.
    Fast,
    /// Waits for a motor's start.
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
    /// The first leg, 120 V.
    Leg1,
    /// The second leg, 120 V.
    Leg2,
    /// Both legs, 240 V.
    Both,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct ApplianceFile {
    /// Name, small letters and hyphens.
    pub(super) name: String,
    /// The circuit it hangs on.
    pub(super) circuit: String,
    /// What it does with power.
    pub(super) work: WorkFile,
    /// When it wants power.
    pub(super) demand: DemandFile,
    /// How it is connected; wired for good when left out.
    #[serde(default)]
    pub(super) plug: PlugFile,
    /// Whether somebody has put an adapter on its plug for 240 V, so that it goes into cords of 120 V.
    #[serde(default)]
    pub(super) adapter: bool,
    /// Whether its frame is on the equipment ground; true when left out.
    #[serde(default = "yes")]
    pub(super) grounded: bool,
    /// Worn insulation between hot and frame; none when left out.
    #[serde(default)]
    pub(super) leak_ohm: Option<f64>,
}

pub(super) fn yes() -> bool {
    true
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) enum WorkFile {
    /// A heater.
    Resistive {
        /// Watts it takes or gives at its rated volts.
        watts: f64,
    },
    /// Electronics or lamps.
    Electronic {
        /// Watts it takes or gives at its rated volts.
        watts: f64,
        /// Power factor while it runs.
        power_factor: f64,
    },
    /// A motor.
    Motor {
        /// Horsepower.
        horsepower: f64,
        /// NEMA code letter of its locked rotor.
        code_letter: char,
        /// Watts while it runs.
        running_watts: f64,
        /// Power factor while it runs.
        power_factor: f64,
        /// Seconds it takes to its speed at full volts.
        seconds_to_speed: f64,
    },
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) enum DemandFile {
    /// A person switches it.
    Switch {
        /// Whether it is on at the start.
        on_at_start: bool,
    },
    /// It guards a store: 0 is well, 1 is a loss.
    Store {
        /// Level at the start.
        start: f64,
        /// How much worse it gets in an hour of rest.
        rise_per_hour: f64,
        /// How much better in an hour of running.
        fall_per_hour: f64,
        /// Level at which it switches on.
        on_level: f64,
        /// Level at which it switches off.
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
    /// Watts it gives for hours.
    pub(super) rated_watts: f64,
    /// Watts it gives for seconds.
    pub(super) surge_watts: f64,
    /// Rating of the breaker on its face, amps.
    pub(super) output_breaker_amps: u16,
    /// Tank, gallons.
    pub(super) tank_gallons: f64,
    /// Seconds until its volts are steady.
    pub(super) warm_up_seconds: f64,
    /// Seconds it has to run unloaded before it is stopped.
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
    /// Where it can stand; the first is where it is stored.
    pub(super) places: Vec<PlaceFile>,
}

#[derive(Debug, Clone, Copy, Default, Deserialize)]
pub(super) enum BondFile {
    /// Neutral and frame are apart.
    #[default]
    Floating,
    /// Neutral and frame are joined.
    Bonded,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct ReceptacleFile {
    /// Name, small letters and hyphens.
    pub(super) name: String,
    /// The leg it is on.
    pub(super) leg: LegFile,
    /// Rating of its own breaker, amps; none when left out.
    #[serde(default)]
    pub(super) breaker_amps: Option<u16>,
    /// Whether it has a ground-fault device; false when left out.
    #[serde(default)]
    pub(super) gfci: bool,
    /// Whether it takes one plug only; two or more when left out.
    #[serde(default)]
    pub(super) single: bool,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct PlaceFile {
    /// Name, small letters and hyphens.
    pub(super) name: String,
    /// Distance to the nearest opening, feet; 0 indoors.
    pub(super) opening_ft: f64,
    /// Cord that it takes from there to the inlet; every cord reaches when left out.
    #[serde(default)]
    pub(super) inlet_ft: Option<f64>,
    /// Whether the engine may be run there at all.
    pub(super) usable: bool,
    /// How exhaust gets in with the window shut.
    pub(super) gas_with_window_shut: GasFile,
    /// How exhaust gets in with the window open.
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
    /// Into the rooms.
    Indoors,
    /// In through an opening nearby.
    NearOpening,
    /// Hardly at all.
    FarAway,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct AirFile {
    /// Air in it, cubic meters.
    pub(super) cubic_meters: f64,
    /// Air changes an hour with the window shut.
    pub(super) changes_per_hour_window_shut: f64,
    /// Air changes an hour with the window open.
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
