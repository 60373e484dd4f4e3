//! Solves single states for the marking to look at: the engine at speed or still, no load, hands on the line as the crew stands.

use std::sync::Arc;

use crate::circuit::NetworkError;
use crate::drill::{Conditions, EngineCondition, Moment, What};
use crate::scenario::Scenario;
use crate::site::{Body, Drive, LoadState, Plant, Positions};
use crate::units::DrillTime;

use super::judge::Judge;

/// A solver on the site of a drill.
#[derive(Debug)]
pub(super) struct Bench<'a> {
    pub(super) scenario: &'a Scenario,
    plant: Plant,
    loads: Vec<LoadState>,
    pub(super) solves: usize,
}

impl<'a> Bench<'a> {
    pub(super) fn new(scenario: &'a Scenario) -> Result<Self, NetworkError> {
        Ok(Self {
            scenario,
            plant: Plant::new(&scenario.site)?,
            loads: vec![LoadState::Off; scenario.site.appliances.len()],
            solves: 0,
        })
    }

    /// The moment of a run in which things stand so.
    pub(super) fn moment(&mut self, judge: &Judge<'_>, positions: &Positions) -> Moment {
        let site = &self.scenario.site;
        let running = judge.running(positions);
        let drive = Drive {
            running,
            battery: site.battery.is_some(),
            ..Drive::default()
        };
        let body = Body {
            touching: site.hands_on_line(positions),
        };
        self.solves += 1;
        let readings = self.plant.read(site, positions, &self.loads, drive, body);
        let conditions = Conditions {
            engine: EngineCondition {
                running_since: running.then_some(DrillTime::ZERO),
                ..EngineCondition::default()
            },
            ..Conditions::begin(site, positions)
        };
        Moment {
            at: DrillTime::ZERO,
            what: What::Began,
            positions: positions.clone(),
            readings: Arc::new(readings),
            conditions: Arc::new(conditions),
        }
    }
}
