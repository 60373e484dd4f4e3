//! The controller of an automatic transfer switch in a drill: what it sees, when it has to be asked, and what it moves.
//!
//! Its own logic and times are in `apparatus::auto_transfer`; here are its senses, its hands and its voice.
//! It senses the utility at the service and the set behind the set's own breaker, and it lives on the starter battery: without that it does nothing.
//! Not covered: a battery that runs down, a charger.

use std::sync::Arc;

use crate::apparatus::auto_transfer::{Contacts, Order, Phase, Sensed, State};
use crate::site::{Automatic, ControlId, PositionId, Site};
use crate::units::DrillTime;

use super::engine::Drill;
use super::event::Event;
use super::machine::MachineEvent;

/// Volts between the hots that both sources are measured by.
const FULL_V: f64 = 240.0;
/// How long a sound engine is cranked before it catches; from memory, 1 to 4 s are met.
const CATCHES: DrillTime = DrillTime::from_secs(2);
/// States that a controller may pass at one instant; a limit, never met.
const MOST_STATES: usize = 20;

impl Drill {
    /// When the controller has to be asked, if there is one and it lives.
    pub(super) fn controller_due(&self) -> Option<DrillTime> {
        let automatic = self.living_controller()?;
        let now = self.committed_at();
        let state = self.conditions().controller;
        let mode = automatic.mode(self.positions());
        let deadline = automatic.controller.deadline(state, mode, now);
        let catches = self.conditions().machine.catches_at.filter(|at| *at > now);
        deadline.into_iter().chain(catches).min()
    }

    /// Whether the controller has given up on an engine that didn't catch, or that stopped by itself.
    pub fn gave_up(&self) -> bool {
        matches!(self.conditions().controller.phase, Phase::Failed(_))
    }

    /// Asks the controller until it stays where it is; says whether it moved anything.
    pub(super) fn fire_controller(&mut self) -> bool {
        let site = Arc::clone(&self.scenario().site);
        let Some(automatic) = self.living_controller().copied() else {
            self.forget(&site);
            return false;
        };
        let now = self.committed_at();
        let mut changed = self.engine_catches(now);
        for _ in 0..MOST_STATES {
            let state = self.conditions.controller;
            let mode = automatic.mode(&self.positions);
            let sensed = self.sensed();
            let Some(next) = automatic.controller.next(state, mode, sensed, now) else {
                break;
            };
            self.enter(&site, &automatic, next);
            changed = true;
        }
        changed
    }

    fn living_controller(&self) -> Option<&Automatic> {
        let automatic = self.site().generator.machine.automatic.as_ref()?;
        (!automatic.asleep(&self.positions)).then_some(automatic)
    }

    /// A controller without its battery wakes up with nothing on its mind, but with its contacts where they are.
    fn forget(&mut self, site: &Site) {
        if site.generator.machine.automatic.is_some() {
            self.conditions.controller = State {
                contacts: self.conditions.controller.contacts,
                since: self.committed_at(),
                ..State::BEGIN
            };
            self.conditions.machine.catches_at = None;
        }
    }

    /// A controller feels where its contacts are when a hand has moved them.
    pub(super) fn moved_by_hand(&mut self, control: ControlId, position: PositionId) {
        let site = self.site();
        let automatic = site.generator.machine.automatic.as_ref();
        let transfer = automatic.and_then(|a| site.transfers.get(a.transfer));
        if transfer.is_some_and(|t| t.handle == control) {
            self.conditions.controller.contacts = match position {
                PositionId(0) => Contacts::Utility,
                PositionId(2) => Contacts::Generator,
                PositionId(_) => Contacts::Open,
            };
        }
    }

    fn sensed(&self) -> Sensed {
        let readings = self.readings();
        let pu = |point: &str| readings.point(point).volts_across / FULL_V;
        Sensed {
            utility_pu: if readings.point("service").fed.utility {
                pu("service")
            } else {
                0.0
            },
            generator_pu: pu("generator-outlet"),
            generator_hz: readings.generator.hz,
            engine_runs: self.conditions.engine.running_since.is_some(),
        }
    }

    fn engine_catches(&mut self, now: DrillTime) -> bool {
        let caught = self
            .conditions
            .machine
            .catches_at
            .is_some_and(|at| at <= now);
        if caught {
            self.conditions.machine.catches_at = None;
            self.start_engine();
            self.read(self.angle_deg());
            self.happen(Event::Machine(MachineEvent::EngineStarted));
        }
        caught
    }

    /// Goes to a state: moves the contacts, tells the engine, says so.
    fn enter(&mut self, site: &Site, automatic: &Automatic, next: State) {
        let before = self.conditions.controller;
        self.conditions.controller = next;
        if let Some(transfer) = site.transfers.get(automatic.transfer) {
            let position = match next.contacts {
                Contacts::Utility => PositionId(0),
                Contacts::Open => PositionId(1),
                Contacts::Generator => PositionId(2),
            };
            self.positions.set(transfer.handle, position);
        }
        if next.order != before.order {
            self.obey(next.order);
        }
        self.read(self.angle_deg());
        let told_before = next.fault.is_some() && next.fault == before.fault;
        if is_told(next.phase) && !told_before {
            self.happen(Event::Machine(MachineEvent::Controller(next.phase)));
        }
        if next.order == Order::Crank
            && next.order != before.order
            && automatic.open(&self.positions)
            && !self.conditions.machine.caught
        {
            self.conditions.machine.caught = true;
            self.happen(Event::Machine(MachineEvent::CaughtByEngine));
        }
    }

    fn obey(&mut self, order: Order) {
        match order {
            Order::Crank => {
                let misses = self.conditions.machine.misses;
                let catches = misses == 0 && self.engine_is_sound();
                self.conditions.machine.misses = misses.saturating_sub(1);
                self.conditions.machine.catches_at = catches.then(|| self.committed_at() + CATCHES);
            }
            Order::Stop => {
                self.conditions.machine.catches_at = None;
                if self.conditions.engine.running_since.is_some() {
                    self.stop_engine();
                }
            }
            Order::Run => {}
        }
    }
}

/// Whether a state is worth a line: those that last, and those that move the load.
fn is_told(phase: Phase) -> bool {
    match phase {
        Phase::StartDelay | Phase::ToGenerator | Phase::ToUtility | Phase::RetransferDelay => false,
        Phase::Waiting
        | Phase::LossSeen
        | Phase::Cranking(_)
        | Phase::Resting(_)
        | Phase::WarmingUp
        | Phase::OnGenerator
        | Phase::BackSeen
        | Phase::CoolingDown
        | Phase::Exercising
        | Phase::Failed(_) => true,
    }
}
