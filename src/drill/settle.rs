//! What follows at once from a change: motors that start or stall, breakers that snap open, sources that collide.
//!
//! Each pass asks the solver, applies the first consequence it finds, and asks again, until nothing more follows.
//! The order of consequences is fixed: collision, a shock with the appliances that draw beside the body, the breaker furthest above its instantaneous trip, then appliances in order.

use std::sync::Arc;

use crate::apparatus::guard::Guard;
use crate::apparatus::motor::PROTECTOR_RESET_S;
use crate::apparatus::motor_start::{Driven, Supply, keeps_turning, starts};
use crate::site::{ControlId, Demand, Kind, LoadState, PositionId, Shock, Site, Work};

use crate::units::DrillTime;

use super::conditions::{ApplianceCondition, Phase};
use super::engine::Drill;
use super::event::Event;
use super::next::whole_millis;
use super::protection::supply;
use super::trace::What;

/// Consequences that may follow from one change; more than any drill comes to, because what answers what another did has a dead band or a delay.
const MOST_CONSEQUENCES: usize = 200;
/// Below this fraction of rated volts an outlet counts as dead to an appliance.
const DEAD_PU: f64 = 0.1;
/// The same for one that is on already, and may pull a weak source down by itself.
const PULLED_DOWN_PU: f64 = 0.01;

impl Drill {
    /// Whether the crew's hands are on the line.
    pub(super) fn crew_touches(&self) -> bool {
        self.site().hands_on_line(&self.positions)
    }

    /// How each load stands electrically.
    pub(super) fn load_states(&self) -> Vec<LoadState> {
        let appliances = self
            .site()
            .appliances
            .iter()
            .zip(&self.conditions.appliances);
        let state = |work: &Work, phase: Phase| match (phase, work) {
            (Phase::Starting | Phase::Stalled, Work::Motor(_)) => LoadState::LockedRotor,
            (Phase::Running | Phase::Starting | Phase::Stalled, _) => LoadState::Running,
            (Phase::Resting | Phase::NoPower | Phase::Protected, _) => LoadState::Off,
        };
        appliances.map(|(a, c)| state(&a.work, c.phase)).collect()
    }

    /// Brings the start into a state from which nothing more follows, with motors at speed and nothing told.
    pub(super) fn settle_quietly(&mut self) {
        self.read(0.0);
        let site = Arc::clone(&self.scenario().site);
        for index in 0..site.appliances.len() {
            let asks = self.asks(&site, index);
            let powered = self.readings().appliance(index).pu > DEAD_PU;
            if let Some(condition) = self.conditions.appliances.get_mut(index) {
                condition.asks = asks;
                condition.phase = match (asks, powered) {
                    (true, true) => Phase::Running,
                    (true, false) => Phase::NoPower,
                    (false, _) => Phase::Resting,
                };
                condition.progress = 1.0;
            }
        }
        self.read(0.0);
        self.begin_second_sources();
    }

    /// Lets everything follow that follows at once, and records where that ends if nothing told of it did.
    pub(super) fn settle(&mut self) {
        self.follow_up();
        let told = self.trace().moments.last();
        if told.is_some_and(|m| *m.readings != *self.readings()) {
            self.record(What::Sampled);
        }
    }

    fn follow_up(&mut self) {
        let site = Arc::clone(&self.scenario().site);
        let rests = (0..MOST_CONSEQUENCES).any(|_| !self.follow_one(&site));
        debug_assert!(
            rests,
            "{}: devices answer each other without end",
            site.name
        );
    }

    /// Asks the solver and applies the first consequences it finds; says whether there were any.
    fn follow_one(&mut self, site: &Site) -> bool {
        self.read(self.angle_deg());
        let tied = self.readings().generator.tied;
        if tied && !self.conditions.joined.tied {
            self.collide();
            while self.readings().generator.tied && self.snap_open(site) {
                self.read(self.closing_angle_deg);
            }
            self.conditions.joined.tied = self.readings().generator.tied;
            return true;
        }
        self.conditions.joined.tied = tied;
        let felt = self.readings().shock;
        if let Some(felt) = felt.filter(|_| !self.conditions.joined.shocked) {
            self.conditions.joined.shocked = true;
            self.shock(site, felt);
            return true;
        }
        self.conditions.joined.shocked = felt.is_some();
        if self.open_on_fault(site)
            || self.snap_open(site)
            || self.open_ground_fault(site)
            || self.follow_second_sources()
        {
            return true;
        }
        self.follow_all(site)
    }

    /// Follows every appliance; says whether anything changed.
    fn follow_all(&mut self, site: &Site) -> bool {
        let mut changed = false;
        for index in 0..site.appliances.len() {
            changed |= self.follow(site, index);
        }
        changed
    }

    /// The angle between the two sources: the one drawn while they meet, none once they are tied.
    pub(super) fn angle_deg(&self) -> f64 {
        if self.conditions.joined.tied {
            0.0
        } else {
            self.closing_angle_deg
        }
    }

    /// A body on the line, told with what is left for it once all that is switched on draws in the same instant.
    fn shock(&mut self, site: &Site, felt: Shock) {
        for _ in 0..MOST_CONSEQUENCES {
            if !self.follow_all(site) {
                break;
            }
            self.read(self.angle_deg());
        }
        let Shock { volts, amps } = self.readings().shock.unwrap_or(felt);
        self.conditions.crew_harmed = true;
        self.happen(Event::Shock { volts, amps });
    }

    /// Opens the breaker that is furthest above its instantaneous trip, if any is.
    fn snap_open(&mut self, site: &Site) -> bool {
        let weakest = self.weakest_breaker(site, |_, breaker, amps| {
            let over = amps / breaker.at_once_a();
            (over >= 1.0).then_some(over)
        });
        let Some((control, amps)) = weakest else {
            return false;
        };
        self.trip(control, amps);
        true
    }

    /// The closed breaker for which `over` is highest, with the amps it sees.
    /// Of two that are equally far over, as equal breakers in one line are, the one on the generator's face goes first: the smaller device, common practice.
    pub(super) fn weakest_breaker(
        &self,
        site: &Site,
        over: impl Fn(ControlId, Guard, f64) -> Option<f64>,
    ) -> Option<(ControlId, f64)> {
        const EQUAL: f64 = 1.0 + 1e-9;
        let mut weakest: Option<(f64, ControlId, f64)> = None;
        for (id, control, breaker) in site.guards() {
            if self.positions.get(id) != PositionId(1) {
                continue;
            }
            let amps = self.readings().amps_of(&control.name);
            let Some(over) = over(id, breaker, amps) else {
                continue;
            };
            let margin = if control.kind == Kind::Output {
                1.0 / EQUAL
            } else {
                EQUAL
            };
            if weakest.is_none_or(|(most, _, _)| over > most * margin) {
                weakest = Some((over, id, amps));
            }
        }
        weakest.map(|(_, control, amps)| (control, amps))
    }

    /// A breaker opens by itself, all its poles together; its bimetal stays as hot as it is.
    pub(super) fn trip(&mut self, control: ControlId, amps: f64) {
        const TRIPPED: PositionId = PositionId(2);
        self.positions.set(control, TRIPPED);
        self.happen(Event::Tripped { control, amps });
    }

    /// The engine comes to a stand.
    pub(super) fn stop_engine(&mut self) {
        let at = self.committed_at();
        self.conditions.engine.running_since = None;
        self.conditions.engine.stopped_at = Some(at);
        let generator = &self.scenario().site.generator;
        let (engine, second) = (generator.engine, generator.machine.second);
        self.positions.set(engine, PositionId(0));
        // The pair is worked as one: without the first the second is stopped as well.
        if let Some(second) = second {
            self.positions.set(second, PositionId(0));
        }
    }

    /// Whether an appliance asks for power, with the memory of its thermostat or float.
    fn asks(&self, site: &Site, index: usize) -> bool {
        let (Some(appliance), Some(condition)) = (
            site.appliances.get(index),
            self.conditions.appliances.get(index),
        ) else {
            return false;
        };
        if condition.damaged {
            return false;
        }
        match &appliance.demand {
            Demand::Switch(control) => self.positions.get(*control) == PositionId(1),
            Demand::Reservoir(r) if condition.asks => condition.level > r.off_level + GRAIN,
            Demand::Reservoir(r) => condition.level >= r.on_level - GRAIN,
        }
    }

    /// Whether some appliance's phase is about to change.
    pub(super) fn wants_following(&self) -> bool {
        let site = self.site();
        let at = self.committed_at();
        site.appliances
            .iter()
            .zip(&self.conditions.appliances)
            .enumerate()
            .any(|(index, (appliance, c))| {
                let supply = supply(self.readings(), index);
                let asks = self.asks(site, index);
                next_phase(c, &appliance.work, asks, supply, at) != c.phase
            })
    }

    /// Follows one appliance; says whether its electrical state changed.
    fn follow(&mut self, site: &Site, index: usize) -> bool {
        let asks = self.asks(site, index);
        let supply = supply(self.readings(), index);
        let at = self.committed_at();
        let (Some(appliance), Some(condition)) = (
            site.appliances.get(index),
            self.conditions.appliances.get_mut(index),
        ) else {
            return false;
        };
        condition.asks = asks;
        let before = condition.phase;
        let next = next_phase(condition, &appliance.work, asks, supply, at);
        if next == before {
            return false;
        }
        if next == Phase::Starting && before != Phase::Stalled {
            condition.progress = 0.0;
        }
        if next == Phase::Protected {
            condition.closed_again = at + whole_millis(PROTECTOR_RESET_S);
            condition.heat = 0.0;
        }
        condition.phase = next;
        self.tell_phase(index, before, next);
        true
    }

    fn tell_phase(&mut self, index: usize, before: Phase, next: Phase) {
        let (appliance, reading) = (index, self.readings().appliance(index));
        match next {
            Phase::Starting if before != Phase::Stalled => {
                let set = self.readings().generator;
                self.read(self.angle_deg());
                let amps = self.readings().appliance(index).amps;
                self.happen(Event::Starting { appliance, amps });
                self.tell_dip(&set);
            }
            Phase::Running => self.happen(Event::Running { appliance }),
            Phase::Stalled => self.happen(Event::Stalled {
                appliance,
                pu: reading.pu,
            }),
            Phase::Protected => self.happen(Event::ProtectorOpened { appliance }),
            Phase::NoPower
                if matches!(before, Phase::Running | Phase::Starting | Phase::Stalled) =>
            {
                self.happen(Event::LostPower { appliance });
            }
            Phase::Starting | Phase::NoPower | Phase::Resting => {}
        }
    }
}

/// Levels and fractions closer than this are equal: crossings are computed to the millisecond.
const GRAIN: f64 = 1e-9;

/// The phase that follows from how things are at `at`.
fn next_phase(
    condition: &ApplianceCondition,
    work: &Work,
    asks: bool,
    supply: Supply,
    at: DrillTime,
) -> Phase {
    if condition.phase == Phase::Protected && condition.closed_again > at {
        return Phase::Protected;
    }
    if !asks {
        return Phase::Resting;
    }
    let on = matches!(
        condition.phase,
        Phase::Running | Phase::Starting | Phase::Stalled
    );
    if supply.v_pu < if on { PULLED_DOWN_PU } else { DEAD_PU } {
        return Phase::NoPower;
    }
    if !matches!(work, Work::Motor(_)) {
        return Phase::Running;
    }
    match condition.phase {
        Phase::Running if keeps_turning(Driven::Constant, supply) => Phase::Running,
        Phase::Starting if condition.progress >= 1.0 - GRAIN => Phase::Running,
        Phase::Stalled if condition.heat >= 1.0 - GRAIN => Phase::Protected,
        Phase::Resting | Phase::NoPower | Phase::Protected => Phase::Starting,
        Phase::Running | Phase::Starting | Phase::Stalled => {
            if starts(supply) {
                Phase::Starting
            } else {
                Phase::Stalled
            }
        }
    }
}
