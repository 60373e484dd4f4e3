//! Equipment and load: nothing was overloaded or starved; cords are in `cords`.
//!
//! Sources: running load within the rating (common practice, 702.4 for what the user picks); motors within ±10 % of rated volts (NEMA MG 1-12.44, checked).

use crate::apparatus::motor_voltage::at_low_voltage;
use crate::drill::{Event, MachineEvent, Moment, Phase, Trace, What};
use crate::scenario::Scenario;
use crate::site::{Appliance, ApplianceReading, Site, Work};
use crate::units::DrillTime;
use crate::words::{Arg, Unit, name_of};

use super::episode::episodes;
use super::finding::{Finding, Rule};

/// How long a generator may be asked for more than it is rated for before that counts: starts are shorter.
const BRIEF: DrillTime = DrillTime::from_secs(10);
/// Least volts for a running motor or lamp, as a fraction of rated volts.
const LOW_PU: f64 = 0.9;
/// Below this there is no power at all, and nothing is starved.
const DEAD_PU: f64 = 0.1;

pub(super) fn findings(scenario: &Scenario, trace: &Trace) -> Vec<Finding> {
    let site = &scenario.site;
    let rated = |m: &Moment| site.generator.spec_at(&m.positions).rated_w;
    let mut found = Vec::new();
    for (index, moment) in trace.moments.iter().enumerate() {
        if let What::Happened(event) = &moment.what {
            found.extend(of_event(site, index, moment, event));
        }
    }
    for episode in episodes(trace, |m| {
        m.readings.generator.asked_w > rated(m) && !m.readings.generator.tied
    }) {
        if episode.length() >= BRIEF {
            let asked = episode
                .moments(trace)
                .iter()
                .map(|m| m.readings.generator.asked_w)
                .fold(0.0, f64::max);
            found.push(
                Finding {
                    lasted: episode.length(),
                    ..Finding::breach(Rule::Overload, episode.from, episode.first)
                }
                .with("watts", Arg::Quantity(asked, Unit::Watts))
                .with(
                    "rated",
                    Arg::Quantity(
                        trace.moments.get(episode.first).map_or(0.0, rated),
                        Unit::Watts,
                    ),
                ),
            );
        }
    }
    found.extend(starved(site, trace));
    found.extend(half_volts(site, trace));
    found
}

/// Whether an appliance asks for power and has some.
fn on_power(moment: &Moment, index: usize) -> bool {
    let asks = moment
        .conditions
        .appliances
        .get(index)
        .is_some_and(|c| matches!(c.phase, Phase::Running | Phase::Starting | Phase::Stalled));
    asks && moment.readings.appliance(index).pu >= DEAD_PU
}

/// An appliance that runs on the generator with too little voltage, for longer than a start lasts.
fn starved(site: &Site, trace: &Trace) -> Vec<Finding> {
    let mut found = Vec::new();
    for (index, appliance) in site.appliances.iter().enumerate() {
        let low = |m: &Moment| {
            let reading = m.readings.appliance(index);
            let own = m.conditions.engine.running_since.is_some() || reading.fed.lent;
            on_power(m, index)
                && own
                && reading.pu < LOW_PU
                && !site.on_half_volts(&m.positions, appliance)
        };
        for episode in episodes(trace, low) {
            if episode.length() >= BRIEF {
                let lowest = |pick: fn(&ApplianceReading) -> f64| {
                    let moments = episode.moments(trace).iter().filter(|m| low(m));
                    let read = moments.map(|m| pick(&m.readings.appliance(index)));
                    read.fold(f64::INFINITY, f64::min)
                };
                let at = (lowest(|r| r.volts), lowest(|r| r.pu));
                found.push(at_low_volts(
                    Finding {
                        lasted: episode.length(),
                        ..Finding::breach(Rule::Starved, episode.from, episode.first)
                    },
                    appliance,
                    at,
                    false,
                ));
            }
        }
    }
    found
}

/// A machine made for both legs that asks for power while an adapter gives it one.
fn half_volts(site: &Site, trace: &Trace) -> Vec<Finding> {
    let mut found = Vec::new();
    for (index, appliance) in site.appliances.iter().enumerate() {
        let halved = |m: &Moment| on_power(m, index) && site.on_half_volts(&m.positions, appliance);
        let all = episodes(trace, halved);
        let Some(first) = all.first() else {
            continue;
        };
        // Its own protector parts one mistake into many stretches.
        let lasted = all.iter().fold(DrillTime::ZERO, |sum, e| sum + e.length());
        let readings = all.iter().flat_map(|e| e.moments(trace));
        let most = readings
            .map(|m| m.readings.appliance(index))
            .max_by(|a, b| a.volts.total_cmp(&b.volts))
            .unwrap_or_default();
        let finding = Finding {
            lasted,
            ..Finding::breach(Rule::Starved, first.from, first.first)
        };
        let at = (most.volts, most.pu);
        found.push(at_low_volts(finding, appliance, at, true));
    }
    found
}

fn of_event(site: &Site, index: usize, moment: &Moment, event: &Event) -> Option<Finding> {
    if let Event::EngineStalled { watts } = event {
        let finding = Finding::breach(Rule::Overload, moment.at, index)
            .with("watts", Arg::Quantity(*watts, Unit::Watts))
            .with(
                "rated",
                Arg::Quantity(site.generator.spec.rated_w, Unit::Watts),
            );
        return Some(finding);
    }
    if let Event::Machine(MachineEvent::ShutOff { watts, most_a }) = event {
        let spec = site.generator.spec_at(&moment.positions);
        let most_a_leg = spec.current_max_a();
        let finding = Finding::breach(Rule::ShutOff, moment.at, index)
            .with("leg", Arg::Count(i64::from(most_a.is_some())))
            .with("watts", Arg::Quantity(*watts, Unit::Watts))
            .with("rated", Arg::Quantity(spec.rated_w, Unit::Watts))
            .with("most", Arg::Quantity(most_a_leg, Unit::Amps));
        return Some(finding);
    }
    let low_oil = *event == Event::Machine(MachineEvent::LowOil);
    if low_oil || *event == Event::OutOfFuel {
        let oil = i64::from(low_oil);
        return Some(Finding::breach(Rule::RanDry, moment.at, index).with("oil", Arg::Count(oil)));
    }
    if let Event::Tripped { control, amps } = event {
        let control = site.control(*control)?;
        let (rule, thing) = match control.plate.fuse {
            Some(_) => (Rule::FuseBlown, "fuse"),
            None => (Rule::Tripped, "breaker"),
        };
        let finding = Finding::breach(rule, moment.at, index)
            .with(thing, Arg::Said(Box::new(name_of(&control.name))))
            .with("amps", Arg::Quantity(*amps, Unit::Amps))
            .with(
                "rated",
                Arg::Quantity(f64::from(control.plate.rating_a), Unit::Amps),
            );
        return Some(finding);
    }
    let Event::ProtectorOpened { appliance } = event else {
        return None;
    };
    let built = site.appliances.get(*appliance)?;
    if site.on_half_volts(&moment.positions, built) {
        return None;
    }
    let reading = moment.readings.appliance(*appliance);
    let finding = Finding::breach(Rule::Starved, moment.at, index);
    let at = (reading.volts, reading.pu);
    Some(at_low_volts(finding, built, at, false))
}

/// What these volts, also as a share of the rated ones, do to an appliance; `halved` where an adapter gives it one leg of two.
/// Torque of a motor at rest and watts of a resistor both go with their square.
fn at_low_volts(
    finding: Finding,
    appliance: &Appliance,
    (volts, pu): (f64, f64),
    halved: bool,
) -> Finding {
    let low = at_low_voltage(pu);
    let motor = i64::from(matches!(appliance.work, Work::Motor(_)));
    finding
        .with("appliance", Arg::Said(Box::new(name_of(&appliance.name))))
        .with("halved", Arg::Count(i64::from(halved)))
        .with("volts", Arg::Quantity(volts, Unit::Volts))
        .with("rated", Arg::Quantity(volts / pu, Unit::Volts))
        .with("motor", Arg::Count(motor))
        .with("torque", Arg::Quantity(100.0 * low.torque, Unit::Percent))
        .with(
            "running",
            Arg::Quantity(100.0 * low.running_amps, Unit::Percent),
        )
}
