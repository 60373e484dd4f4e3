//! What gas does to each person by themselves, to an alarm that can't sound, and to the home next door.
//!
//! Whoever sleeps breathes less than whoever is up, and is led out by others; the home next door is one well-mixed room.
//! A neighbor's engine beside an opening of this house gives what a household set gives at half load, and a share of it is drawn in.
//! Blood and alarms see the middle of a stretch, which is a second long at most, as in `air`.
//! Not covered: people next door by name, gas that comes back from next door, an alarm that wakes somebody.

use std::sync::Arc;

use crate::hazard::blood::{Activity, Symptoms, cohb_after, symptoms};
use crate::hazard::emission::{Engine, Make};
use crate::hazard::monoxide::{Placement, alarm_after, alarm_due, ppm_after};
use crate::site::{Positions, Readings, Site};

use super::air::GasFlow;
use super::conditions::{Conditions, OVERCOME_PCT, START_COHB_PCT};
use super::engine::Drill;
use super::event::Event;

/// Gallons an hour of a neighbor's set at half load: what a 5 kW set burns (makers' manuals, from memory, 0.4 to 0.6).
const NEIGHBOR_GAL_PER_H: f64 = 0.5;

/// What gas and people indoors do by themselves.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum IndoorsEvent {
    /// There is so much gas for so long that an alarm would sound, and none does.
    Unheard {
        /// Parts per million in the house.
        ppm: f64,
    },
    /// Those who are up in the house have a headache.
    Unwell {
        /// Carboxyhemoglobin, percent.
        cohb_pct: f64,
    },
    /// Somebody who sleeps in the house is overcome.
    PersonOvercome {
        /// Index of the person.
        person: usize,
        /// Carboxyhemoglobin, percent.
        cohb_pct: f64,
    },
    /// The alarm next door sounds.
    NextDoorAlarm {
        /// Parts per million there.
        ppm: f64,
    },
    /// A neighbor starts an engine beside an opening of this house.
    NeighborRuns,
}

/// What drifts indoors besides the air.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct IndoorsCondition {
    /// Whether a neighbor's engine runs beside an opening of this house.
    pub neighbor_runs: bool,
    /// Whether an alarm that doesn't work should have sounded.
    pub unheard: bool,
    /// Whether those who are up have had a headache.
    pub unwell: bool,
    /// Those who sleep, in the order of the site's.
    pub people: Vec<PersonCondition>,
    /// The home next door.
    pub next_door: NextDoorCondition,
}

/// What gas has done to somebody.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PersonCondition {
    /// Carboxyhemoglobin, percent.
    pub cohb_pct: f64,
    /// Whether they are overcome.
    pub overcome: bool,
}

/// The air next door.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct NextDoorCondition {
    /// Parts per million.
    pub ppm: f64,
    /// How near its alarm is to sounding, 1 where it does.
    pub alarm_dose: f64,
    /// Whether it has sounded.
    pub alarm: bool,
}

impl IndoorsCondition {
    /// How a site begins: everybody has breathed clean air.
    pub(super) fn begin(site: &Site) -> Self {
        let well = PersonCondition {
            cohb_pct: START_COHB_PCT,
            overcome: false,
        };
        Self {
            people: vec![well; site.indoors.people.len()],
            ..Self::default()
        }
    }

    /// What a neighbor's engine gives off beside an opening of this house, while one runs.
    pub fn neighbors_gas(&self) -> Option<GasFlow> {
        let set = Engine::gasoline(Make::Stock, NEIGHBOR_GAL_PER_H, NEIGHBOR_GAL_PER_H);
        let flow = GasFlow::outdoors(set, Placement::NearOpening.outlet());
        self.neighbor_runs.then_some(flow)
    }
}

impl Conditions {
    /// Lets those who sleep breathe the house's air, whose middle over the stretch is `house_ppm`, and the home next door fill.
    pub(super) fn drift_indoors(
        &mut self,
        site: &Site,
        positions: &Positions,
        engine: Option<Engine>,
        house_ppm: f64,
        seconds: f64,
    ) {
        let people = site.indoors.people.iter().zip(&mut self.indoors.people);
        for (person, condition) in people {
            let out = site.stands(positions, person.control, "outside");
            let breathed = if out { 0.0 } else { house_ppm };
            condition.cohb_pct = cohb_after(condition.cohb_pct, breathed, seconds, Activity::Rest);
        }
        let Some(home) = site.indoors.next_door else {
            return;
        };
        let flow = flow_next_door(site, positions, engine);
        let gas = flow.map_or(0.0, |flow| flow.enters_g_per_h);
        let next_door = &mut self.indoors.next_door;
        let before = next_door.ppm;
        next_door.ppm = ppm_after(before, gas, home.air_m3, home.changes_per_h, seconds);
        let middle = f64::midpoint(before, next_door.ppm);
        next_door.alarm_dose = alarm_after(next_door.alarm_dose, middle, seconds);
    }

    /// What the house's own engine gives off, while it runs where the home next door draws some of it in.
    pub fn gas_next_door(
        &self,
        site: &Site,
        positions: &Positions,
        readings: &Readings,
    ) -> Option<GasFlow> {
        let engine = self.exhaust(site, positions, readings);
        flow_next_door(site, positions, engine.map(|(engine, _)| engine))
    }
}

/// What an engine gives off as the opening next door has it.
fn flow_next_door(site: &Site, positions: &Positions, engine: Option<Engine>) -> Option<GasFlow> {
    let (_, placement) = site.generator_place(positions)?.next_door?;
    Some(GasFlow::outdoors(engine?, placement.outlet()))
}

impl Drill {
    /// Tells what gas has come to: for an alarm that works and one that doesn't, for each person, and next door.
    pub(super) fn fire_air(&mut self) {
        let site = Arc::clone(&self.scenario().site);
        let ppm = self.conditions.ppm();
        let due = alarm_due(self.conditions.alarm_dose);
        let works = site.alarm_works(&self.positions);
        if due && works && !self.conditions.alarm {
            self.conditions.alarm = true;
            self.happen(Event::Alarm { ppm });
        } else if due && !works && !self.conditions.indoors.unheard {
            self.conditions.indoors.unheard = true;
            self.happen(Event::Indoors(IndoorsEvent::Unheard { ppm }));
        }
        let cohb_pct = self.conditions.cohb_pct;
        let aches = symptoms(cohb_pct) >= Symptoms::Headache;
        let inside = site.household_inside(&self.positions);
        if aches && inside && !self.conditions.indoors.unwell {
            self.conditions.indoors.unwell = true;
            self.happen(Event::Indoors(IndoorsEvent::Unwell { cohb_pct }));
        }
        if !self.conditions.overcome && cohb_pct >= OVERCOME_PCT {
            self.conditions.overcome = true;
            self.happen(Event::Overcome { cohb_pct });
        }
        self.fire_people();
        let next_door = &mut self.conditions.indoors.next_door;
        if !next_door.alarm && alarm_due(next_door.alarm_dose) {
            next_door.alarm = true;
            let ppm = next_door.ppm;
            self.happen(Event::Indoors(IndoorsEvent::NextDoorAlarm { ppm }));
        }
    }

    fn fire_people(&mut self) {
        let mut overcome = Vec::new();
        for (person, condition) in self.conditions.indoors.people.iter_mut().enumerate() {
            if !condition.overcome && condition.cohb_pct >= OVERCOME_PCT {
                condition.overcome = true;
                overcome.push((person, condition.cohb_pct));
            }
        }
        for (person, cohb_pct) in overcome {
            let event = IndoorsEvent::PersonOvercome { person, cohb_pct };
            self.happen(Event::Indoors(event));
        }
    }
}
