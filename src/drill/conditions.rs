//! What drifts with time, and how far it drifts in a stretch during which nothing changes.
//!
//! Every law here is in closed form for constant readings, so a stretch can be cut anywhere.
//! Integration error against a cut at other points is rounding only; the engine cuts at fixed instants, so the bits agree too.

use crate::apparatus::auto_transfer;
use crate::apparatus::motor::protector_s;
use crate::apparatus::motor_start::acceleration_s;
use crate::apparatus::tolerance;
use crate::hazard::air::Air;
use crate::site::{ControlId, Positions, Readings, Site, Work};
use crate::units::DrillTime;

use super::cords::CordCondition;
use super::indoors::IndoorsCondition;
use super::line_work::LineCondition;
use super::machine::MachineCondition;
use super::protection::{stress_pu, supply};
use super::second_source::{BatteryCondition, SolarCondition};
use super::wires::WALL_C;

/// Air around cords and engine where a drill says nothing of it, °C: a cool evening, chosen for the sites shipped.
pub const AMBIENT_C: f64 = 15.0;
/// Carboxyhemoglobin of a person who breathes clean air, percent: the start value of the published parameter set.
pub(super) const START_COHB_PCT: f64 = 0.8;
/// Carboxyhemoglobin at which people are overcome, percent: published symptom tables, from memory.
pub const OVERCOME_PCT: f64 = 40.0;
/// Time in which an overload is forgotten by a motor, seconds: common practice.
const OVERLOAD_FORGOTTEN_S: f64 = 60.0;

/// How an appliance is doing.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub enum Phase {
    /// Asks for nothing.
    #[default]
    Resting,
    /// Asks and has no power.
    NoPower,
    /// A motor on its way to speed.
    Starting,
    /// Runs.
    Running,
    /// A motor that can't turn.
    Stalled,
    /// A motor whose own protector is open.
    Protected,
}

/// What drifts in an appliance.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct ApplianceCondition {
    /// How it is doing.
    pub phase: Phase,
    /// Level of its reservoir.
    pub level: f64,
    /// Whether its reservoir asks for power.
    pub asks: bool,
    /// How far a motor has come to speed, 0 to 1.
    pub progress: f64,
    /// Heat of a motor that can't turn, 1 where its protector opens.
    pub heat: f64,
    /// When the protector closes again.
    pub closed_again: DrillTime,
    /// Whether what it guards has been lost.
    pub lost: bool,
    /// How near its electronics are to being destroyed by high volts, 1 where they are.
    pub damage: f64,
    /// Whether they are.
    pub damaged: bool,
}

/// The engine.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct EngineCondition {
    /// When it was started last, while it runs.
    pub running_since: Option<DrillTime>,
    /// How long it had run by then, where it ran before the drill began.
    pub ran_before: DrillTime,
    /// When it stopped last.
    pub stopped_at: Option<DrillTime>,
    /// When it carried load last.
    pub loaded_at: Option<DrillTime>,
    /// Whether its warming up has been announced.
    pub announced: bool,
    /// Whether it is broken.
    pub broken: bool,
}

impl EngineCondition {
    /// How long it has run without a stop; none while it doesn't run.
    pub fn ran_for(&self, now: DrillTime) -> Option<DrillTime> {
        self.running_since
            .map(|since| now.since(since) + self.ran_before)
    }
}

/// What is joined that should not be, so that its beginning is told once.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Joined {
    /// The generator is tied to the utility, hot to hot.
    pub tied: bool,
    /// Current goes through the crew.
    pub shocked: bool,
}

/// Everything that drifts.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Conditions {
    /// Appliances, in the order of the site's.
    pub appliances: Vec<ApplianceCondition>,
    /// Heat of each control's trip element, 0 for those without.
    pub breaker_heat: Vec<f64>,
    /// Temperature of each wire in a wall, in the order of [`Site::wires`], °C.
    pub wires: Vec<f64>,
    /// Cords, in the order of the site's.
    pub cords: Vec<CordCondition>,
    /// The engine.
    pub engine: EngineCondition,
    /// What else drifts in the set.
    pub machine: MachineCondition,
    /// Where the controller of an automatic transfer switch stands; it begins at rest and stays there without one.
    pub controller: auto_transfer::State,
    /// How near the set is to giving way, 1 where it does.
    pub overload: f64,
    /// Fuel left, gallons.
    pub fuel_gal: f64,
    /// The air of house and garage.
    pub air: Air,
    /// Carboxyhemoglobin of the people in the house, percent.
    pub cohb_pct: f64,
    /// How near the alarm is to sounding, 1 where it does.
    pub alarm_dose: f64,
    /// Whether the alarm has sounded.
    pub alarm: bool,
    /// Whether people in the house are overcome.
    pub overcome: bool,
    /// What drifts indoors besides the air.
    pub indoors: IndoorsCondition,
    /// Whether the crew is harmed.
    pub crew_harmed: bool,
    /// What is joined that should not be.
    pub joined: Joined,
    /// What a line crew's drill has to remember.
    pub line: LineCondition,
    /// The solar inverter.
    pub solar: SolarCondition,
    /// The battery.
    pub battery: BatteryCondition,
    /// How much later than told the world's story runs.
    pub delay: DrillTime,
    /// How many of the story's happenings are done.
    pub story_done: usize,
}

impl Conditions {
    /// How a site begins: cool, rested, with a full tank.
    pub fn begin(site: &Site, start: &Positions) -> Self {
        let appliances = site.appliances.iter().map(|a| ApplianceCondition {
            level: match &a.demand {
                crate::site::Demand::Reservoir(r) => r.start,
                crate::site::Demand::Switch(_) => 0.0,
            },
            ..ApplianceCondition::default()
        });
        Self {
            appliances: appliances.collect(),
            breaker_heat: vec![0.0; site.controls.len()],
            wires: vec![WALL_C; site.wires().count()],
            cords: vec![CordCondition::rested(site.ambient_c); site.cords.len()],
            machine: MachineCondition::begin(site, start),
            fuel_gal: site.generator.spec.tank_gal,
            cohb_pct: START_COHB_PCT,
            indoors: IndoorsCondition::begin(site),
            battery: BatteryCondition::begin(site),
            ..Self::default()
        }
    }

    /// Heat of a control's trip element, 0 for those without.
    pub fn heat_of(&self, control: ControlId) -> f64 {
        let heat = self.breaker_heat.get(usize::from(control.0));
        heat.copied().unwrap_or_default()
    }

    /// Lets `seconds` pass with these positions and readings.
    pub fn drift(&mut self, site: &Site, positions: &Positions, readings: &Readings, seconds: f64) {
        self.drift_breakers(site, readings, seconds);
        self.drift_cords(site, positions, readings, seconds);
        self.drift_wires(site, readings, seconds);
        self.drift_appliances(site, readings, seconds);
        self.drift_engine(site, positions, readings, seconds);
        self.drift_air(site, positions, readings, seconds);
        self.drift_battery(site, readings, seconds);
    }

    fn drift_breakers(&mut self, site: &Site, readings: &Readings, seconds: f64) {
        for (id, control, breaker) in site.guards() {
            if let Some(heat) = self.breaker_heat.get_mut(usize::from(id.0)) {
                *heat = breaker.heat_after(*heat, readings.amps_of(&control.name), seconds);
            }
        }
    }

    fn drift_appliances(&mut self, site: &Site, readings: &Readings, seconds: f64) {
        for (index, (appliance, condition)) in
            site.appliances.iter().zip(&mut self.appliances).enumerate()
        {
            if let crate::site::Demand::Reservoir(r) = &appliance.demand {
                let rate = if condition.phase == Phase::Running {
                    -r.fall_per_h
                } else {
                    r.rise_per_h
                };
                condition.level = (condition.level + rate * seconds / 3600.0).max(0.0);
            }
            let reading = readings.appliance(index);
            if let Some(pu) = stress_pu(&appliance.work, condition, &reading) {
                condition.damage = tolerance::damage_after(condition.damage, pu, seconds);
            }
            if let Work::Motor(motor) = &appliance.work {
                let pu = reading.pu;
                match condition.phase {
                    Phase::Starting => {
                        let supply = supply(readings, index);
                        condition.progress +=
                            acceleration_s(motor, supply).map_or(0.0, |s| seconds / s);
                    }
                    Phase::Stalled => condition.heat += seconds / protector_s(pu),
                    Phase::Resting | Phase::NoPower | Phase::Running | Phase::Protected => {
                        condition.heat = (condition.heat - seconds / OVERLOAD_FORGOTTEN_S).max(0.0);
                    }
                }
            }
        }
    }
}
