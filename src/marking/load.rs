//! Equipment and load: nothing was overloaded; too few volts are in `starved`, cords in `cords`.
//!
//! Sources: running load within the rating (common practice, 702.4 for what the user picks).

use crate::drill::{Event, MachineEvent, Moment, Trace, What};
use crate::scenario::Scenario;
use crate::site::{CARRIES_A, Site};
use crate::units::DrillTime;
use crate::words::{Arg, Unit, name_of};

use super::episode::episodes;
use super::finding::{Finding, Rule};

/// How long a generator may be asked for more than it is rated for before that counts: starts are shorter.
pub(super) const BRIEF: DrillTime = DrillTime::from_secs(10);

pub(super) fn findings(scenario: &Scenario, trace: &Trace) -> Vec<Finding> {
    let site = &scenario.site;
    let rated = |m: &Moment| site.generator.spec_at(&m.positions).rated_w;
    let mut found = Vec::new();
    for (index, moment) in trace.moments.iter().enumerate() {
        if let What::Happened(event) = &moment.what {
            found.extend(of_event(site, trace, (index, moment), event));
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
                )
                .with("short", shorted(site, trace, episode.first)),
            );
        }
    }
    found
}

fn of_event(
    site: &Site,
    trace: &Trace,
    (index, moment): (usize, &Moment),
    event: &Event,
) -> Option<Finding> {
    if let Event::EngineStalled { watts } = event {
        let finding = Finding::breach(Rule::Overload, moment.at, index)
            .with("watts", Arg::Quantity(*watts, Unit::Watts))
            .with(
                "rated",
                Arg::Quantity(site.generator.spec.rated_w, Unit::Watts),
            )
            .with("short", shorted(site, trace, index));
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
            )
            .with("short", shorted(site, trace, index))
            .with("met", Arg::Count(i64::from(met(trace, index))));
        return Some(finding);
    }
    None
}

/// Whether two sources met out of step in the same instant, just before something opened.
fn met(trace: &Trace, index: usize) -> bool {
    let before = trace.moments.get(..=index).unwrap_or_default();
    let now = before.last().map(|m| m.at);
    let mut same = before.iter().rev().take_while(|m| Some(m.at) == now);
    same.any(|m| matches!(m.what, What::Happened(Event::Collision { .. })))
}

/// Whether the wires of a cord have met and take the current, now or just before something opened, as a count for the words.
fn shorted(site: &Site, trace: &Trace, index: usize) -> Arg {
    let moments = trace.moments.get(index.saturating_sub(1)..=index);
    let met = moments.unwrap_or_default().iter().any(|moment| {
        let mut cords = site.cords.iter().zip(&moment.conditions.cords);
        cords.any(|(cord, condition)| {
            condition.state().shorted && moment.readings.amps_of(&cord.name) >= CARRIES_A
        })
    });
    Arg::Count(i64::from(met))
}
