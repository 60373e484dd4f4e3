//! When the drill has to look again: the next whole second, happening, timer or computed crossing.
//!
//! Computed from the committed state alone, so that it doesn't depend on who asks or when.

use crate::apparatus::motor::protector_s;
use crate::apparatus::motor_start::acceleration_s;
use crate::apparatus::tolerance;
use crate::site::{Demand, Work};
use crate::units::DrillTime;

use super::conditions::Phase;
use super::engine::Drill;
use super::protection::{stress_pu, supply};

/// The grid on which state is committed even if nothing happens, milliseconds.
const GRID_MS: u64 = 1000;

impl Drill {
    /// The next instant after the committed one at which state is committed.
    pub(super) fn next_stop(&self) -> DrillTime {
        let now = self.committed_at();
        let grid = DrillTime::from_millis((now.millis() / GRID_MS + 1) * GRID_MS);
        let story = self.next_happening_at().filter(|at| *at > now);
        let crossing = self.seconds_to_crossing().map(|s| now + whole_millis(s));
        let second = self.second_source_due().filter(|at| *at > now);
        let customers = self.conditions().line.customers_due.filter(|at| *at > now);
        [story, crossing, second, customers, self.controller_due()]
            .into_iter()
            .flatten()
            .fold(grid, DrillTime::min)
    }

    /// Seconds until the first threshold is crossed, if one is on its way.
    fn seconds_to_crossing(&self) -> Option<f64> {
        let breakers = self.breaker_crossing();
        let appliances = self.appliance_crossing();
        let engine = self.engine_crossing();
        [breakers, appliances, engine]
            .into_iter()
            .flatten()
            .reduce(f64::min)
    }

    fn breaker_crossing(&self) -> Option<f64> {
        let site = self.site();
        let readings = self.readings();
        let conditions = self.conditions();
        let seconds = site.guards().filter_map(|(id, control, breaker)| {
            breaker.seconds_to_open(conditions.heat_of(id), readings.amps_of(&control.name))
        });
        seconds.reduce(f64::min)
    }

    fn appliance_crossing(&self) -> Option<f64> {
        let site = self.site();
        let conditions = self.conditions();
        let mut first: Option<f64> = None;
        let mut consider = |seconds: f64| {
            if seconds > 0.0 && first.is_none_or(|f| seconds < f) {
                first = Some(seconds);
            }
        };
        for (index, (appliance, condition)) in site
            .appliances
            .iter()
            .zip(&conditions.appliances)
            .enumerate()
        {
            if let Demand::Reservoir(r) = &appliance.demand {
                if condition.phase == Phase::Running {
                    consider((condition.level - r.off_level) / r.fall_per_h * 3600.0);
                } else {
                    for level in [r.on_level, 1.0] {
                        consider((level - condition.level) / r.rise_per_h * 3600.0);
                    }
                }
            }
            let reading = self.readings().appliance(index);
            let stress = stress_pu(&appliance.work, condition, &reading);
            if let Some(s) =
                stress.and_then(|pu| tolerance::seconds_to_damage(condition.damage, pu))
            {
                consider(s);
            }
            if let Work::Motor(motor) = &appliance.work {
                let pu = reading.pu;
                match condition.phase {
                    Phase::Starting => {
                        let supply = supply(self.readings(), index);
                        if let Some(s) = acceleration_s(motor, supply) {
                            consider((1.0 - condition.progress) * s);
                        }
                    }
                    Phase::Stalled => consider((1.0 - condition.heat) * protector_s(pu)),
                    Phase::Protected => {
                        consider(condition.closed_again.since(self.committed_at()).seconds());
                    }
                    Phase::Resting | Phase::NoPower | Phase::Running => {}
                }
            }
        }
        first
    }
}

/// A length in whole milliseconds, rounded up, one at least: a crossing is seen at the first instant after it.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "clamped to a day first"
)]
pub fn whole_millis(seconds: f64) -> DrillTime {
    const DAY_MS: f64 = 86_400_000.0;
    DrillTime::from_millis((seconds * 1000.0).ceil().clamp(1.0, DAY_MS) as u64)
}
