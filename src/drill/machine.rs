//! The engine and its set as they drift: warmth, fuel, oil, overload, the slow speed; and what follows when one of them runs out.
//!
//! Closed forms over a stretch with constant readings: fuel and oil fall in straight lines, overload and warmth rise in straight lines.
//! The share of its power that a cold engine has is taken at the start of a stretch, which is a second long at most: an error of 0.4 % of its power at a warm-up of a minute.
//! Not covered: wear, a cold engine that stumbles without load, carburetor ice.

use crate::apparatus::auto_transfer::Phase;
use crate::apparatus::conventional::{IdleDown, warm_share};
use crate::apparatus::generator::{GeneratorKind, GeneratorSpec, GivesWay};
use crate::scenario::Scenario;
use crate::scenario::chance::{Purpose, draw};
use crate::site::{ControlId, GeneratorReading, OIL_LOW, PositionId, Positions, Readings, Site};
use crate::units::Complex;
use crate::units::DrillTime;

use super::conditions::Conditions;
use super::engine::Drill;
use super::event::Event;
use super::next::whole_millis;

/// Time in which an overload is forgotten by the engine, seconds: common practice.
const OVERLOAD_FORGOTTEN_S: f64 = 60.0;
/// How much slower an engine cools than it warms up: common practice.
const COOLS_SLOWER: f64 = 10.0;
/// Watts below which a set counts as unloaded.
const UNLOADED_W: f64 = 20.0;
/// How near to its limit something counts as there: crossings are computed to the millisecond.
const GRAIN: f64 = 1e-9;

/// What a set and its controller do by themselves.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum MachineEvent {
    /// The oil is low and the engine's own switch stops it.
    LowOil,
    /// The engine doesn't catch.
    NoStart,
    /// The engine is started by its controller and catches.
    EngineStarted,
    /// The electronics of an inverter set shut their output off.
    ShutOff {
        /// Watts they were asked for.
        watts: f64,
        /// Most amps of a leg, where one leg alone asked for more than that.
        most_a: Option<f64>,
    },
    /// The voltage dips as a motor starts.
    Dip {
        /// Lowest volts between the hots, in the first moment.
        volts: f64,
        /// Seconds until the field has brought them back; `None` if it can't.
        recovery_s: Option<f64>,
    },
    /// The controller of an automatic transfer switch comes to a state.
    Controller(Phase),
    /// The engine turns by itself while somebody's hands are in it.
    CaughtByEngine,
}

/// What drifts in a set, beside its engine.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct MachineCondition {
    /// Seconds of running that the engine's warmth is worth.
    pub warm_s: f64,
    /// Hours of running until the oil is low; infinite where nobody has to look at it.
    pub oil_h: f64,
    /// Whether the engine runs at its slow speed.
    pub slow: bool,
    /// Since when nothing has drawn.
    pub quiet_since: Option<DrillTime>,
    /// When load called the engine from its slow speed.
    pub woken_at: Option<DrillTime>,
    /// Attempts to start it that will still fail.
    pub misses: u32,
    /// Whether it has turned by itself while hands were in it.
    pub caught: bool,
    /// When the engine catches, while its starter turns.
    pub catches_at: Option<DrillTime>,
}

impl MachineCondition {
    /// How a set begins: cold, with oil as its control says.
    pub(super) fn begin(site: &Site, start: &Positions) -> Self {
        let machine = &site.generator.machine;
        let oil_h = match machine.oil {
            Some(_) if machine.oil_low(start) => 0.0,
            Some(oil) => oil.hours,
            None => f64::INFINITY,
        };
        Self {
            oil_h,
            ..Self::default()
        }
    }

    /// How the scenario leaves it: its oil, and how often it will miss.
    pub(super) fn found(&mut self, scenario: &Scenario, seed: u64) {
        let from = scenario.start_misses_from;
        let bound = scenario.start_misses_up_to.saturating_sub(from);
        let drawn = draw(seed, Purpose::Starting, &[bound]);
        self.misses = from + drawn.first().copied().unwrap_or_default();
        if let Some(hours) = scenario.oil_hours {
            self.oil_h = self.oil_h.min(hours);
        }
    }

    /// Share of its power that the engine has now.
    pub fn power_share(&self, spec: &GeneratorSpec) -> f64 {
        let slow = match (self.slow, idle(spec)) {
            (true, Some(idle)) => idle.hz / spec.no_load_hz,
            (true, None) | (false, _) => 1.0,
        };
        slow * warm_share(self.warm_s, spec.warmup_s)
    }
}

/// The idle control of a set that has one and on which it is switched on.
fn idle(spec: &GeneratorSpec) -> Option<IdleDown> {
    match spec.kind {
        GeneratorKind::Conventional(set) => set.idle,
        GeneratorKind::Inverter(_) | GeneratorKind::Standby(_) => None,
    }
}

/// Share of the held volts from which a dip is worth a line: below it lamps blink visibly (common practice, 3 to 5 %).
const DIP_PU: f64 = 0.95;

/// The dip that a step between two readings of the set makes, if it is worth a line.
fn dip(
    spec: &GeneratorSpec,
    before: &GeneratorReading,
    after: &GeneratorReading,
) -> Option<MachineEvent> {
    const ALIVE_V: f64 = 10.0;
    let alone = |r: &GeneratorReading| !r.tied && r.volts > ALIVE_V;
    if !alone(before) || !alone(after) {
        return None;
    }
    let drawn = |r: &GeneratorReading| (Complex::new(r.watts, r.vars), r.volts);
    let step = spec.load_step(drawn(before), drawn(after))?;
    let least_v = step.least_v().min(after.volts);
    // What its field or its engine can't lift stays where the solver finds it.
    let recovery_s = step.recovery_s().filter(|_| !after.limited);
    (least_v < DIP_PU * spec.set_v).then(|| MachineEvent::Dip {
        volts: recovery_s.map_or(after.volts, |_| least_v),
        recovery_s,
    })
}

/// What gives, and when, with the engine as warm and as fast as it is.
fn gives_way(
    spec: &GeneratorSpec,
    condition: &MachineCondition,
    readings: &Readings,
) -> Option<GivesWay> {
    let steady = spec.gives_way(readings.generator.asked_w / condition.power_share(spec));
    match spec.kind {
        // One leg alone at the limit of its electronics is enough, whatever the watts of both.
        GeneratorKind::Inverter(set) if readings.generator.limited => {
            Some(GivesWay::ShutOff(set.limit_s))
        }
        GeneratorKind::Inverter(_) | GeneratorKind::Conventional(_) | GeneratorKind::Standby(_) => {
            steady
        }
    }
}

/// Burned in an hour by the set whose tank is watched, of those that share the load.
fn burn_per_h(
    site: &Site,
    positions: &Positions,
    condition: &MachineCondition,
    readings: &Readings,
) -> f64 {
    let generator = &site.generator;
    let one = generator.machine.one(generator.spec, positions);
    let sets = f64::from(generator.machine.running(positions));
    let burnt = one.fuel_gal_per_h(readings.generator.watts.max(0.0) / sets);
    match (condition.slow, idle(&one)) {
        (true, Some(idle)) => burnt * idle.fuel_share(one.no_load_hz),
        (true, None) | (false, _) => burnt,
    }
}

impl Conditions {
    /// Hours that the fuel lasts at this load; infinite on piped gas, `None` while the engine stands.
    pub fn fuel_hours(
        &self,
        site: &Site,
        positions: &Positions,
        readings: &Readings,
    ) -> Option<f64> {
        self.engine.running_since?;
        let per_h = burn_per_h(site, positions, &self.machine, readings);
        Some(self.fuel_gal / per_h)
    }

    /// Lets the set drift.
    pub(super) fn drift_engine(
        &mut self,
        site: &Site,
        positions: &Positions,
        readings: &Readings,
        seconds: f64,
    ) {
        let spec = site.generator.spec_at(positions);
        if self.engine.running_since.is_none() {
            self.overload = 0.0;
            self.machine.warm_s = (self.machine.warm_s - seconds / COOLS_SLOWER).max(0.0);
            return;
        }
        match gives_way(&spec, &self.machine, readings) {
            Some(gives) => self.overload += seconds / gives.seconds(),
            None => self.overload = (self.overload - seconds / OVERLOAD_FORGOTTEN_S).max(0.0),
        }
        let hours = seconds / 3600.0;
        let burnt = burn_per_h(site, positions, &self.machine, readings) * hours;
        self.fuel_gal = (self.fuel_gal - burnt).max(0.0);
        self.machine.oil_h = (self.machine.oil_h - hours).max(0.0);
        self.machine.warm_s = (self.machine.warm_s + seconds).min(spec.warmup_s);
    }
}

impl Drill {
    /// Seconds until the set crosses something: warmed up, slowed down, giving way, dry, out of oil.
    pub(super) fn engine_crossing(&self) -> Option<f64> {
        let conditions = self.conditions();
        let machine = &conditions.machine;
        let ran = conditions.engine.ran_for(self.committed_at())?;
        let spec = self.site().generator.spec_at(self.positions());
        let until = |at: DrillTime| Some(at.since(self.committed_at()).seconds());
        let warm_in = Some(whole_millis(spec.warmup_s).since(ran).seconds());
        let gives_in = gives_way(&spec, machine, self.readings())
            .map(|gives| (1.0 - conditions.overload) * gives.seconds());
        let speed_in = idle(&spec).and_then(|idle| match (machine.woken_at, machine.quiet_since) {
            (Some(at), _) => until(at + whole_millis(idle.rise_s)),
            (None, Some(at)) if !machine.slow => until(at + whole_millis(idle.after_s)),
            (None, _) => None,
        });
        [warm_in, gives_in, speed_in]
            .into_iter()
            .flatten()
            .filter(|s| *s > 0.0)
            .reduce(f64::min)
    }

    /// Lets happen what is due in the set.
    pub(super) fn fire_engine(&mut self) -> bool {
        let now = self.committed_at();
        let Some(ran) = self.conditions.engine.ran_for(now) else {
            return false;
        };
        let spec = self.site().generator.spec_at(&self.positions);
        if self.readings().generator.watts > 1.0 {
            self.conditions.engine.loaded_at = Some(now);
        }
        if !self.conditions.engine.announced && whole_millis(spec.warmup_s) <= ran {
            self.conditions.engine.announced = true;
            self.happen(Event::EngineReady);
        }
        self.pace(&spec, now);
        if self.conditions.overload >= 1.0 - GRAIN {
            self.give_way(&spec);
            return true;
        }
        if self.conditions.fuel_gal <= 0.0 {
            self.stop_engine();
            self.happen(Event::OutOfFuel);
            return true;
        }
        if self.conditions.machine.oil_h <= 0.0 {
            self.stop_engine();
            if let Some(oil) = self.site().generator.machine.oil {
                self.positions.set(oil.level, OIL_LOW);
            }
            self.happen(Event::Machine(MachineEvent::LowOil));
            return true;
        }
        false
    }

    /// The idle control: slow after a while without load, fast again a while after load comes.
    fn pace(&mut self, spec: &GeneratorSpec, now: DrillTime) {
        let unloaded = self.readings().generator.watts < UNLOADED_W;
        let machine = &mut self.conditions.machine;
        let Some(idle) = idle(spec) else {
            (machine.slow, machine.quiet_since, machine.woken_at) = (false, None, None);
            return;
        };
        if unloaded {
            machine.woken_at = None;
            let quiet_since = *machine.quiet_since.get_or_insert(now);
            machine.slow |= quiet_since + whole_millis(idle.after_s) <= now;
        } else {
            machine.quiet_since = None;
            if machine.slow {
                let woken_at = *machine.woken_at.get_or_insert(now);
                machine.slow = woken_at + whole_millis(idle.rise_s) > now;
            } else {
                machine.woken_at = None;
            }
        }
    }

    fn give_way(&mut self, spec: &GeneratorSpec) {
        let watts = self.readings().generator.asked_w;
        self.conditions.overload = 0.0;
        let output = self.site().generator.machine.output_switch;
        match (spec.kind, output) {
            (GeneratorKind::Inverter(_), Some(output)) => {
                self.positions.set(output, PositionId(1));
                let leg = self.readings().generator.limited && watts <= spec.surge_w;
                let most_a = leg.then(|| spec.current_max_a());
                self.happen(Event::Machine(MachineEvent::ShutOff { watts, most_a }));
            }
            (
                GeneratorKind::Inverter(_)
                | GeneratorKind::Conventional(_)
                | GeneratorKind::Standby(_),
                _,
            ) => {
                self.stop_engine();
                self.happen(Event::EngineStalled { watts });
            }
        }
    }

    /// Sets the engine going; the caller has seen that it can run.
    pub(super) fn start_engine(&mut self) {
        let engine = self.site().generator.engine;
        self.positions.set(engine, PositionId(1));
        self.conditions.engine.running_since = Some(self.committed_at());
        self.conditions.engine.ran_before = DrillTime::ZERO;
        self.conditions.engine.loaded_at = None;
        self.conditions.engine.announced = false;
    }

    /// A set that has run for this long when the drill begins, warm as far as that has made it.
    /// Not covered: how warm cords, wires and breakers have become by then, and what gas has come in: they begin cool and clear.
    pub(super) fn has_run(&mut self, ran: DrillTime) {
        self.start_engine();
        let spec = self.site().generator.spec_at(&self.positions);
        self.conditions.engine.ran_before = ran;
        self.conditions.engine.announced = whole_millis(spec.warmup_s) <= ran;
        self.conditions.machine.warm_s = ran.seconds().min(spec.warmup_s);
    }

    /// Whether the engine runs once it is cranked, but for an attempt that misses.
    pub(super) fn engine_is_sound(&self) -> bool {
        let machine = &self.conditions.machine;
        !self.conditions.engine.broken && self.conditions.fuel_gal > 0.0 && machine.oil_h > 0.0
    }

    /// Says how far the voltage dips when something starts; `before` is the set as it stood until then.
    pub(super) fn tell_dip(&mut self, before: &GeneratorReading) {
        let spec = self.site().generator.spec_at(&self.positions);
        if let Some(event) = dip(&spec, before, &self.readings().generator) {
            self.happen(Event::Machine(event));
        }
    }

    /// Oil that has been poured is there.
    pub(super) fn fill_oil(&mut self, control: ControlId) {
        let oil = self.site().generator.machine.oil;
        let filled = oil.filter(|oil| oil.level == control);
        if let Some(oil) = filled.filter(|_| self.positions.get(control) == PositionId(0)) {
            self.conditions.machine.oil_h = oil.hours;
        }
    }

    /// A start by hand that doesn't catch: said after the deed, with the switch back where it was.
    pub(super) fn miss_start(&mut self) {
        let engine = self.site().generator.engine;
        let switched_on = self.positions.get(engine) == PositionId(1);
        if !switched_on || self.conditions.engine.running_since.is_some() {
            return;
        }
        self.conditions.machine.misses = self.conditions.machine.misses.saturating_sub(1);
        self.positions.set(engine, PositionId(0));
        self.happen(Event::Machine(MachineEvent::NoStart));
    }
}
