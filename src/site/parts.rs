//! What is built: the parts of a site, as plain data with units in their names.
//!
//! A site file is checked before it becomes a [`Site`]; nothing here checks again.

use crate::apparatus::branch_wire::BranchWire;
use crate::apparatus::breaker::Breaker;
use crate::apparatus::conductor::Awg;
use crate::apparatus::fuse::Fuse;
use crate::apparatus::guard::Guard;
use crate::apparatus::motor::Motor;
use crate::apparatus::transformer::CenterTapped;

use super::control::{Constraint, Control, ControlId, PositionId, Positions};
use super::equipment::{
    Battery, Bus, Cord, Garage, Generator, Inlet, Interlock, Panel, Place, Solar, Subpanel,
    Transfer,
};
use super::indoors::Indoors;
use super::lent::Lent;
use super::line_work::LineWork;

/// Everything that is built.
#[derive(Debug, Clone, PartialEq)]
pub struct Site {
    /// Name, as in scenario files.
    pub name: String,
    /// The utility's line.
    pub line: Line,
    /// What a crew has to work that line with; none where the learner is a customer.
    pub line_work: Option<LineWork>,
    /// The house's own service.
    pub service: Service,
    /// Houses on the same transformer.
    pub neighbors: Vec<Neighbor>,
    /// The main panel.
    pub panel: Panel,
    /// Further panels, each fed through a transfer switch.
    pub subpanels: Vec<Subpanel>,
    /// Branch circuits of all panels.
    pub circuits: Vec<Circuit>,
    /// Power inlets on the outside wall.
    pub inlets: Vec<Inlet>,
    /// Transfer switches: a handle for the whole house, for a subpanel or for one circuit each.
    pub transfers: Vec<Transfer>,
    /// What uses power.
    pub appliances: Vec<Appliance>,
    /// The generator.
    pub generator: Generator,
    /// Solar panels with their inverter, if there are any.
    pub solar: Option<Solar>,
    /// A battery with its inverter, if there is one.
    pub battery: Option<Battery>,
    /// The cord that a neighbor lends, if one does.
    pub lent: Option<Lent>,
    /// Cords.
    pub cords: Vec<Cord>,
    /// Temperature of the air around cords and engine, °C.
    pub ambient_c: f64,
    /// The house's air, cubic meters.
    pub air_m3: f64,
    /// Air changes an hour with windows shut, and with the window open.
    pub air_changes_per_h: (f64, f64),
    /// The attached garage, if there is one.
    pub garage: Option<Garage>,
    /// What gas and fuel reach besides: the alarm, those who sleep, the home next door, the can of fuel.
    pub indoors: Indoors,
    /// Everything that can be moved.
    pub controls: Vec<Control>,
    /// What the build of things makes impossible.
    pub constraints: Vec<Constraint>,
}

/// The utility's side: a single-phase lateral with a multi-grounded neutral.
#[derive(Debug, Clone, PartialEq)]
pub struct Line {
    /// Volts, line to neutral.
    pub volts: f64,
    /// Source impedance, ohms: resistance and reactance.
    pub source_ohm: (f64, f64),
    /// The substation's electrode, ohms.
    pub source_electrode_ohm: f64,
    /// Poles, from the substation end on.
    pub poles: Vec<Pole>,
    /// Spans between them.
    pub spans: Vec<Span>,
    /// Index of the span that can be broken.
    pub broken_span: usize,
    /// Index of the pole the crew works at.
    pub crew_pole: usize,
    /// Index of the pole the transformer hangs on.
    pub transformer_pole: usize,
    /// The transformer.
    pub transformer: CenterTapped,
    /// The switch at the head of the lateral: open, closed.
    pub feeder: ControlId,
    /// The broken span's phase wire: whole, broken.
    pub span_state: ControlId,
    /// The neutral of the house's drop: whole, broken.
    pub drop_neutral: ControlId,
    /// The second hot of the house's drop: whole, broken.
    pub drop_leg: ControlId,
    /// What the crew does: away, testing, hands-on, clear.
    pub crew: ControlId,
    /// The crew's protective grounds: off, on.
    pub grounds: ControlId,
    /// Resistance from a lineworker's feet to remote earth, ohms.
    pub footing_ohm: f64,
}

/// A pole.
#[derive(Debug, Clone, PartialEq)]
pub struct Pole {
    /// Name.
    pub name: String,
    /// Its ground rod, ohms.
    pub electrode_ohm: f64,
}

/// A span of phase wire and neutral.
#[derive(Debug, Clone, PartialEq)]
pub struct Span {
    /// Name: `span-1` and so on.
    pub name: String,
    /// Index of the pole nearer the substation.
    pub from: usize,
    /// Index of the other pole.
    pub to: usize,
    /// Length, feet.
    pub length_ft: f64,
}

/// A service drop and the electrode it ends at.
#[derive(Debug, Clone, PartialEq)]
pub struct Service {
    /// Length of the drop, feet.
    pub drop_ft: f64,
    /// The house's ground rod, ohms.
    pub electrode_ohm: f64,
}

/// A house on the same transformer.
#[derive(Debug, Clone, PartialEq)]
pub struct Neighbor {
    /// Name: `neighbor-1` and so on.
    pub name: String,
    /// Its service.
    pub service: Service,
    /// What is switched on there, watts on each leg at 120 V.
    pub leg_watts: (f64, f64),
}

/// A branch circuit.
#[derive(Debug, Clone, PartialEq)]
pub struct Circuit {
    /// Name, and that of its breaker without `breaker-`.
    pub name: String,
    /// The bus its breaker sits on.
    pub bus: Bus,
    /// Its breaker or fuse.
    pub breaker: ControlId,
    /// The name of that: `breaker-` or `fuse-` and its own.
    pub guard: String,
    /// The ground-fault device at its outlet, where there is one.
    pub gfci: Option<ControlId>,
    /// Gauge.
    pub awg: Awg,
    /// One-way length, feet.
    pub length_ft: f64,
    /// How its wire warms; none for a size that no ampacity is printed for.
    pub heat: Option<BranchWire>,
    /// Legs it takes: 1, 2, or both.
    pub legs: Legs,
    /// The earlier circuit whose neutral wire it shares, by index: together they are one circuit of several wires.
    pub neutral_of: Option<usize>,
}

/// A wire in a wall.
#[derive(Debug, Clone, PartialEq)]
pub struct WallWire {
    /// Its name, as the thing that energy passes.
    pub name: String,
    /// The thing whose current is its own.
    pub meter: String,
    /// Its gauge.
    pub awg: Awg,
    /// How it warms; none for a size that no ampacity is printed for.
    pub heat: Option<BranchWire>,
}

/// Which hot legs a circuit or a load is on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Legs {
    /// Leg 1 to neutral, 120 V.
    One,
    /// Leg 2 to neutral, 120 V.
    Two,
    /// Leg to leg, 240 V.
    Both,
}

/// What an appliance does with power.
#[derive(Debug, Clone, PartialEq)]
pub enum Work {
    /// A resistor: watts at its rated volts.
    Resistive {
        /// Watts.
        watts: f64,
    },
    /// Electronics or a magnetron: constant power.
    Electronic {
        /// Watts.
        watts: f64,
        /// Power factor.
        power_factor: f64,
    },
    /// A motor.
    Motor(Motor),
}

/// When an appliance asks for power.
#[derive(Debug, Clone, PartialEq)]
pub enum Demand {
    /// When its switch is in its second position.
    Switch(ControlId),
    /// When its reservoir asks.
    Reservoir(Reservoir),
}

/// A store that fills while the appliance rests and empties while it runs: water in a pit, warmth in a fridge, cold in a house.
/// The level is 0 where all is well and 1 where the household has a loss.
/// Linear in time, so that crossings are exact.
#[derive(Debug, Clone, PartialEq)]
pub struct Reservoir {
    /// Level at the drill's start.
    pub start: f64,
    /// Rise an hour while the appliance does not run.
    pub rise_per_h: f64,
    /// Fall an hour while it runs.
    pub fall_per_h: f64,
    /// Level at which it asks for power.
    pub on_level: f64,
    /// Level at which it has had enough.
    pub off_level: f64,
}

/// How an appliance is connected.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Plug {
    /// Hard-wired to its circuit.
    Wired,
    /// By a plug, in one of these positions: the control, the position at the wall, and cords by index.
    Cord {
        /// The plug.
        control: ControlId,
        /// The position at the wall outlet.
        wall: PositionId,
        /// Positions at the end of a cord: the cord's index and the position.
        cords: Vec<(usize, PositionId)>,
        /// The position at the end of the cord that a neighbor lends.
        lent: Option<PositionId>,
    },
}

/// Something that uses power.
#[derive(Debug, Clone, PartialEq)]
pub struct Appliance {
    /// Name.
    pub name: String,
    /// Index of its circuit.
    pub circuit: usize,
    /// What it does.
    pub work: Work,
    /// When.
    pub demand: Demand,
    /// How it is connected.
    pub plug: Plug,
    /// Whether its frame is on the equipment ground.
    pub grounded: bool,
    /// Worn insulation between hot and frame, ohms.
    pub leak_ohm: Option<f64>,
}

impl Appliance {
    /// Whether its plug is in a cord.
    pub fn on_a_cord(&self, positions: &Positions) -> bool {
        let lent = match &self.plug {
            Plug::Wired => false,
            Plug::Cord { control, lent, .. } => *lent == Some(positions.get(*control)),
        };
        lent || self.cord(positions).is_some()
    }

    /// The cord of the site that its plug is in, by index.
    pub fn cord(&self, positions: &Positions) -> Option<usize> {
        let Plug::Cord { control, cords, .. } = &self.plug else {
            return None;
        };
        let at = positions.get(*control);
        cords.iter().find(|(_, p)| *p == at).map(|(cord, _)| *cord)
    }
}

impl Site {
    /// Whether a machine made for both legs hangs on a cord, which has one: an adapter is on its plug.
    pub fn on_half_volts(&self, positions: &Positions, appliance: &Appliance) -> bool {
        let circuit = self.circuits.get(appliance.circuit);
        circuit.is_some_and(|c| c.legs == Legs::Both) && appliance.on_a_cord(positions)
    }

    /// The control of this name.
    pub fn control_id(&self, name: &str) -> Option<ControlId> {
        let index = self.controls.iter().position(|c| c.name == name)?;
        u16::try_from(index).ok().map(ControlId)
    }

    /// A control.
    pub fn control(&self, id: ControlId) -> Option<&Control> {
        self.controls.get(usize::from(id.0))
    }

    /// Wires in walls: of the branch circuits, then of the inlets, in the order of the site's.
    pub fn wires(&self) -> impl Iterator<Item = WallWire> {
        let circuits = self.circuits.iter().map(|c| WallWire {
            name: format!("branch-{}", c.name),
            meter: c.guard.clone(),
            awg: c.awg,
            heat: c.heat,
        });
        let inlets = self.inlets.iter().map(|i| WallWire {
            name: i.name.clone(),
            meter: i.name.clone(),
            awg: i.awg,
            heat: i.heat,
        });
        let shared = self.shared_neutrals().map(|c| WallWire {
            name: format!("neutral-{}", c.name),
            meter: format!("neutral-{}", c.name),
            awg: c.awg,
            heat: c.heat,
        });
        circuits.chain(inlets).chain(shared)
    }

    /// Circuits whose neutral wire others share.
    pub(crate) fn shared_neutrals(&self) -> impl Iterator<Item = &Circuit> {
        let circuits = (0..).zip(&self.circuits);
        let shared = circuits.filter(|(index, _)| {
            let mut others = self.circuits.iter();
            others.any(|c| c.neutral_of == Some(*index))
        });
        shared.map(|(_, circuit)| circuit)
    }

    /// All breakers and fuses, with their controls.
    pub fn guards(&self) -> impl Iterator<Item = (ControlId, &Control, Guard)> {
        let numbered = (0..).map(ControlId).zip(&self.controls);
        numbered.filter(|(_, c)| c.is_breaker()).map(|(id, c)| {
            let rating_a = f64::from(c.plate.rating_a);
            let guard = match c.plate.fuse {
                Some(delay) => Guard::Fuse(Fuse { rating_a, delay }),
                None => Guard::Breaker(Breaker { rating_a }),
            };
            (id, c, guard)
        })
    }

    /// The name of the position a control stands in.
    pub fn position_name(&self, positions: &Positions, id: ControlId) -> &str {
        self.control(id)
            .and_then(|c| c.positions.get(usize::from(positions.get(id).0)))
            .map_or("", String::as_str)
    }

    /// Whether a control stands in the position of this name.
    pub fn stands(&self, positions: &Positions, id: ControlId, position: &str) -> bool {
        self.position_name(positions, id) == position
    }

    /// Inlets that a breaker on a bus is fed from, with what keeps that from meeting the utility's.
    pub fn backfed(&self) -> impl Iterator<Item = (usize, Interlock)> {
        let main = self.panel.backfeed.iter().map(|b| (b.inlet, b.interlock));
        let pairs = self.subpanels.iter().filter_map(|s| s.pair);
        main.chain(pairs.map(|p| (p.inlet, p.interlock)))
    }

    /// Whether a breaker that brings an inlet's power to a bus can be on together with the utility's: nothing sound keeps the two apart.
    pub fn has_unguarded_inlet(&self) -> bool {
        self.backfed().any(|(_, held)| !held.blocks())
    }

    /// Why a control can't be moved so, if something built makes it impossible.
    pub fn refusal(
        &self,
        positions: &Positions,
        id: ControlId,
        position: PositionId,
    ) -> Option<&str> {
        self.constraints
            .iter()
            .find_map(|c| c.refuses(positions, id, position))
    }

    /// Index of the appliance of this name.
    pub fn appliance_index(&self, name: &str) -> Option<usize> {
        self.appliances.iter().position(|a| a.name == name)
    }

    /// The place where the generator stands.
    pub fn generator_place(&self, positions: &Positions) -> Option<&Place> {
        self.generator
            .places
            .get(usize::from(positions.get(self.generator.placement).0))
    }
}
