//! Motors that a generator can't start: tried alone and tried again, and never at speed.
//!
//! Torque at standstill goes with the square of the volts, so a set that sags far enough can't turn a motor however often it is asked.
//! One failed start is how somebody finds that out; from the second on it is a breach.
//! Not covered: a motor that fails because others start with it, which is another rule's.
//! Source: torque and volts of the induction motor, textbook theory (from memory); starting as a check of a source's size, common practice.

use crate::apparatus::motor_voltage::at_low_voltage;
use crate::drill::{Event, Moment, Phase, Trace, What};
use crate::scenario::Scenario;
use crate::site::Work;
use crate::words::{Arg, Unit, name_of};

use super::finding::{Finding, Rule};

/// Failed starts of one motor from which its being too large for the set has been seen and ignored.
const SEEN: usize = 2;

pub(super) fn findings(scenario: &Scenario, trace: &Trace) -> Vec<Finding> {
    let site = &scenario.site;
    let mut found = Vec::new();
    for (index, appliance) in site.appliances.iter().enumerate() {
        let failed = failed_starts(scenario, trace, index);
        let (Some((moment, _)), n_failed) = (failed.get(SEEN - 1), failed.len()) else {
            continue;
        };
        let Some(at) = trace.moments.get(*moment).map(|m| m.at) else {
            continue;
        };
        let lowest = failed.iter().map(|(_, pu)| *pu).fold(1.0, f64::min);
        let count = i64::try_from(n_failed).unwrap_or(i64::MAX);
        let torque = 100.0 * at_low_voltage(lowest).torque;
        found.push(
            Finding::breach(Rule::TooSmallForMotor, at, *moment)
                .with("appliance", Arg::Said(Box::new(name_of(&appliance.name))))
                .with("starts", Arg::Count(count))
                .with("torque", Arg::Quantity(torque, Unit::Percent)),
        );
    }
    found
}

/// Moments in which this motor, starting alone on a source of the house, could not turn, with its volts of rated.
fn failed_starts(scenario: &Scenario, trace: &Trace, index: usize) -> Vec<(usize, f64)> {
    let mut failed = Vec::new();
    let site = &scenario.site;
    // On half of its volts a motor says nothing of the set: that is a finding of its own.
    let halved = |m: &Moment| {
        let appliance = site.appliances.get(index);
        appliance.is_some_and(|a| site.on_half_volts(&m.positions, a))
    };
    for (at, moment) in trace.moments.iter().enumerate() {
        let What::Happened(Event::Stalled { appliance, pu }) = moment.what else {
            continue;
        };
        let own = moment.readings.appliance(index).fed.customer();
        if appliance == index && own && !halved(moment) && is_alone(scenario, moment, index) {
            failed.push((at, pu));
        }
    }
    failed
}

/// Whether no other motor is on its way to speed.
fn is_alone(scenario: &Scenario, moment: &Moment, index: usize) -> bool {
    let appliances = scenario.site.appliances.iter();
    let mut numbered = appliances.zip(&moment.conditions.appliances).enumerate();
    numbered.all(|(other, (appliance, condition))| {
        let starts = matches!(condition.phase, Phase::Starting | Phase::Stalled);
        other == index || !starts || !matches!(appliance.work, Work::Motor(_))
    })
}
