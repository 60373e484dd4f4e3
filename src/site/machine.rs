//! What a generator has besides its terminals: oil, speed control, output switch, a second set beside it, a controller that starts it.
//!
//! Plain data; a part that a set lacks isn't there.
//! Which figures hold in given positions (two sets joined, a slow engine allowed) is worked out here, so that circuit and drill ask for the same.
//! Not covered: three sets, a controller for more than one transfer switch.

use crate::apparatus::auto_transfer::{Controller, Mode};
use crate::apparatus::conventional::IdleDown;
use crate::apparatus::generator::{GeneratorKind, GeneratorSpec};
use crate::apparatus::transfer_timers::LockOut;

use super::control::{ControlId, PositionId, Positions};
use super::equipment::Generator;

/// The parts of a set that a hand or a controller works.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Machine {
    /// Its oil.
    pub oil: Option<Oil>,
    /// The switch that lets the engine slow down while little or nothing draws: off, on.
    pub idle: Option<ControlId>,
    /// The switch of the electronics' output, which is also its reset: on, off.
    pub output_switch: Option<ControlId>,
    /// A second set of the same kind, joined by the kit that is listed for the two: stopped, running.
    pub second: Option<ControlId>,
    /// What starts it without a hand.
    pub automatic: Option<Automatic>,
}

/// The position of the oil at which the engine's own switch stops it.
pub const OIL_LOW: PositionId = PositionId(2);

/// The oil of an engine.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Oil {
    /// How it stands: full, down on the stick, low.
    pub level: ControlId,
    /// Hours of running from full to low.
    pub hours: f64,
}

/// A controller with what belongs to it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Automatic {
    /// Its switch: auto, off, test.
    pub switch: ControlId,
    /// The starter battery: connected, disconnected.
    pub battery: ControlId,
    /// The cover over engine and wires: shut, open.
    pub cover: ControlId,
    /// Index of the transfer switch it works.
    pub transfer: usize,
    /// Its times.
    pub controller: Controller,
}

impl Automatic {
    /// How its switch stands.
    pub fn mode(&self, positions: &Positions) -> Mode {
        match positions.get(self.switch) {
            PositionId(0) => Mode::Auto,
            PositionId(2) => Mode::Test,
            PositionId(_) => Mode::Off,
        }
    }

    /// What keeps the set from starting, with the breaker on it given.
    pub fn lock_out(&self, positions: &Positions, breaker: ControlId) -> LockOut {
        LockOut {
            controller_off: self.mode(positions) == Mode::Off,
            breaker_open: positions.get(breaker) != PositionId(1),
            battery_off: self.asleep(positions),
        }
    }

    /// Whether its battery is off, so that it does nothing.
    pub fn asleep(&self, positions: &Positions) -> bool {
        positions.get(self.battery) == PositionId(1)
    }

    /// Whether its cover is open, so that hands are in it.
    pub fn open(&self, positions: &Positions) -> bool {
        positions.get(self.cover) == PositionId(1)
    }
}

impl Machine {
    /// Sets that run when the first one does.
    pub fn running(&self, positions: &Positions) -> u8 {
        let second = self
            .second
            .is_some_and(|id| positions.get(id) == PositionId(1));
        1 + u8::from(second)
    }

    /// Whether the electronics let their volts out; a set without them always does.
    pub fn lets_out(&self, positions: &Positions) -> bool {
        self.output_switch
            .is_none_or(|id| positions.get(id) == PositionId(0))
    }

    /// Whether the oil is low.
    pub fn oil_low(&self, positions: &Positions) -> bool {
        self.oil
            .is_some_and(|oil| positions.get(oil.level) == OIL_LOW)
    }

    /// One set's figures with its speed control as it stands.
    pub fn one(&self, spec: GeneratorSpec, positions: &Positions) -> GeneratorSpec {
        let slows = self
            .idle
            .is_some_and(|id| positions.get(id) == PositionId(1));
        let kind = match spec.kind {
            GeneratorKind::Conventional(mut set) => {
                set.idle = slows.then_some(IdleDown::USUAL);
                GeneratorKind::Conventional(set)
            }
            GeneratorKind::Inverter(mut set) => {
                set.eco = slows;
                GeneratorKind::Inverter(set)
            }
            standby @ GeneratorKind::Standby(_) => standby,
        };
        GeneratorSpec { kind, ..spec }
    }

    /// The figures of all sets that run, as one.
    pub fn all(&self, spec: GeneratorSpec, positions: &Positions) -> GeneratorSpec {
        self.one(spec, positions).times(self.running(positions))
    }
}

impl Generator {
    /// The figures of all its sets that run, as one, with its switches as they stand.
    pub fn spec_at(&self, positions: &Positions) -> GeneratorSpec {
        self.machine.all(self.spec, positions)
    }
}
