//! What happens without anybody doing it at that moment.

use crate::site::{ControlId, Range};

use super::indoors::IndoorsEvent;
use super::line_work::LineEvent;
use super::machine::MachineEvent;

use super::protection::ProtectionEvent;
use super::second_source::SourceEvent;
use super::touch::Touched;

/// One thing that happens.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Event {
    /// The storm breaks the span and the utility is lost.
    Outage,
    /// The crew has arrived at its pole.
    CrewArrived,
    /// The crew has tested the line dead and has it in hand.
    CrewTookHold,
    /// The crew found the line live and stands back.
    CrewFoundLive {
        /// Volts to neutral on the line at the crew's pole.
        volts: f64,
    },
    /// The crew is clear of the mended span.
    CrewLeft,
    /// The utility feeds the street again.
    UtilityReturned,
    /// The utility's line has not held: the street is dark again.
    UtilityFailed,
    /// A neighbor stands at the door and asks for a cord.
    NeighborAsked,
    /// A breaker opens by itself.
    Tripped {
        /// Which.
        control: ControlId,
        /// Amps it saw.
        amps: f64,
    },
    /// A ground-fault device or a fault of the house's supply does something.
    Protection(ProtectionEvent),
    /// A motor asks for power and begins to turn.
    Starting {
        /// Index of the appliance.
        appliance: usize,
        /// Amps it draws at a standstill.
        amps: f64,
    },
    /// An appliance runs.
    Running {
        /// Index of the appliance.
        appliance: usize,
    },
    /// A motor gets too little voltage to turn.
    Stalled {
        /// Index of the appliance.
        appliance: usize,
        /// Volts as a fraction of rated volts.
        pu: f64,
    },
    /// A motor's own protector opens.
    ProtectorOpened {
        /// Index of the appliance.
        appliance: usize,
    },
    /// An appliance that ran has lost its power.
    LostPower {
        /// Index of the appliance.
        appliance: usize,
    },
    /// What an appliance guards is lost: food warm, pit over, house cold.
    Lost {
        /// Index of the appliance.
        appliance: usize,
    },
    /// The engine has warmed up; its voltage is steady.
    EngineReady,
    /// The engine is pulled down and stops.
    EngineStalled {
        /// Watts it was asked for.
        watts: f64,
    },
    /// The tank is empty.
    OutOfFuel,
    /// The set or its controller does something by itself.
    Machine(MachineEvent),
    /// Two sources that aren't in step are tied together.
    Collision {
        /// Angle between them, degrees.
        angle_deg: f64,
        /// How much faster than the utility the generator turned, hertz.
        slip_hz: f64,
        /// Amps through the generator at that angle, and at the worst angle.
        amps: Range,
        /// Torque on its shaft as a multiple of the rated, at that angle and at the worst angle.
        torque: Range,
    },
    /// The generator is damaged.
    GeneratorBroken,
    /// Current passes through a worker who holds the line.
    Shock {
        /// Touch voltage.
        volts: Range,
        /// Amps through the body.
        amps: Range,
    },
    /// Somebody who handles a thing feels current from its metal.
    Touched(Touched),
    /// The carbon monoxide alarm sounds.
    Alarm {
        /// Parts per million in the house.
        ppm: f64,
    },
    /// People in the house are overcome by gas.
    Overcome {
        /// Carboxyhemoglobin, percent.
        cohb_pct: f64,
    },
    /// Gas and people indoors do something by themselves.
    Indoors(IndoorsEvent),
    /// A cord's insulation softens.
    CordSoft {
        /// Index of the cord.
        cord: usize,
        /// Conductor temperature, °C.
        celsius: f64,
    },
    /// Something happens on a line that a crew works.
    Line(LineEvent),
    /// Solar or battery do something by themselves.
    Source(SourceEvent),
    /// A plug scorches.
    PlugScorched {
        /// Index of the cord whose plug it is.
        cord: usize,
        /// Temperature of the plug, °C.
        celsius: f64,
    },
    /// The conductors of a cord meet.
    CordShorted {
        /// Index of the cord.
        cord: usize,
        /// Conductor temperature, °C.
        celsius: f64,
    },
    /// What lies against a cord burns.
    CordFire {
        /// Index of the cord.
        cord: usize,
        /// Conductor temperature, °C.
        celsius: f64,
    },
    /// Fuel meets a hot engine and burns.
    FuelFire {
        /// Surface temperature, °C.
        celsius: f64,
    },
}

impl Event {
    /// Whether what fed the loads opens, stops or shuts off in it.
    pub fn gives_way(&self) -> bool {
        matches!(
            self,
            Self::Tripped { .. }
                | Self::EngineStalled { .. }
                | Self::ProtectorOpened { .. }
                | Self::Machine(MachineEvent::ShutOff { .. })
                | Self::Source(SourceEvent::BatteryOverloaded { .. } | SourceEvent::BatteryEmpty)
        )
    }
}
