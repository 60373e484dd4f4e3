//! Equipment and load: nothing was overloaded, starved or cooked.
//!
//! Sources: running load within the rating (common practice, 702.4 for what the user picks); motors within ±10 % of rated volts (NEMA MG 1-12.44, checked); cords within their rated temperature (NEC 400.5).

use crate::apparatus::cord::RATED_C;
use crate::drill::{Event, Moment, Phase, Trace, What};
use crate::scenario::Scenario;
use crate::site::Site;
use crate::units::DrillTime;
use crate::words::{Arg, Unit, name_of};

use super::episode::episodes;
use super::finding::{Finding, Rule};

/// How long a generator may be asked for more than it is rated for before that counts: starts are shorter.
const BRIEF: DrillTime = DrillTime::from_secs(10);
/// Least volts for a running motor or lamp, as a fraction of rated volts.
const LOW_PU: f64 = 0.9;

pub(super) fn findings(scenario: &Scenario, trace: &Trace) -> Vec<Finding> {
    let site = &scenario.site;
    let rated = site.generator.spec.rated_w;
    let mut found = Vec::new();
    for (index, moment) in trace.moments.iter().enumerate() {
        if let What::Happened(event) = &moment.what {
            found.extend(of_event(site, index, moment, event));
        }
    }
    for episode in episodes(trace, |m| {
        m.readings.generator.asked_w > rated && !m.readings.generator.tied
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
                .with("rated", Arg::Quantity(rated, Unit::Watts)),
            );
        }
    }
    for (index, cord) in site.cords.iter().enumerate() {
        let hot = |m: &Moment| m.conditions.cord_c.get(index).copied().unwrap_or_default();
        for episode in episodes(trace, |m| hot(m) > RATED_C) {
            let celsius = episode.moments(trace).iter().map(hot).fold(0.0, f64::max);
            found.push(
                Finding {
                    lasted: episode.length(),
                    ..Finding::breach(Rule::CordHot, episode.from, episode.first)
                }
                .with("cord", Arg::Said(Box::new(name_of(&cord.name))))
                .with("reached", Arg::Quantity(celsius, Unit::Celsius))
                .with("rated", Arg::Quantity(RATED_C, Unit::Celsius)),
            );
        }
    }
    found.extend(starved(site, trace));
    found
}

/// An appliance that runs on the generator with too little voltage, for longer than a start lasts.
fn starved(site: &Site, trace: &Trace) -> Vec<Finding> {
    let mut found = Vec::new();
    for (index, appliance) in site.appliances.iter().enumerate() {
        let low = |m: &Moment| {
            let runs = m.conditions.appliances.get(index).is_some_and(|c| {
                matches!(c.phase, Phase::Running | Phase::Starting | Phase::Stalled)
            });
            runs && m.conditions.engine.running_since.is_some()
                && m.readings.appliance(index).pu < LOW_PU
        };
        for episode in episodes(trace, low) {
            if episode.length() >= BRIEF {
                let lowest = episode
                    .moments(trace)
                    .iter()
                    .map(|m| m.readings.appliance(index).volts);
                found.push(
                    Finding {
                        lasted: episode.length(),
                        ..Finding::breach(Rule::Starved, episode.from, episode.first)
                    }
                    .with("appliance", Arg::Said(Box::new(name_of(&appliance.name))))
                    .with(
                        "volts",
                        Arg::Quantity(lowest.fold(f64::INFINITY, f64::min), Unit::Volts),
                    ),
                );
            }
        }
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
    if let Event::Tripped { control, amps } = event {
        let control = site.control(*control)?;
        let finding = Finding::breach(Rule::Tripped, moment.at, index)
            .with("breaker", Arg::Said(Box::new(name_of(&control.name))))
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
    let name = &site.appliances.get(*appliance)?.name;
    let volts = moment.readings.appliance(*appliance).volts;
    let finding = Finding::breach(Rule::Starved, moment.at, index)
        .with("appliance", Arg::Said(Box::new(name_of(name))))
        .with("volts", Arg::Quantity(volts, Unit::Volts));
    Some(finding)
}
