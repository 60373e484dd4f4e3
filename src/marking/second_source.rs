//! Sun and battery: a solar inverter on a generator, power pushed back into a set, a battery that shuts off.
//!
//! Equipment rules: they judge what was joined and overloaded, not who might be hurt by it.
//! Sources: IEEE Std 1547-2018 (when an inverter leaves and comes back; checked in copies that quote it); keeping it off a generator is common practice.

use crate::drill::{Event, Follows, Moment, SourceEvent, Trace, What};
use crate::scenario::Scenario;
use crate::words::{Arg, Unit};

use super::finding::{Finding, Rule};

/// Share of the watts pushed back from which borrowed current shows on the cord.
const BORROWED: f64 = 0.3;

pub(super) fn findings(scenario: &Scenario, trace: &Trace) -> Vec<Finding> {
    let mut found = Vec::new();
    for (index, moment) in trace.moments.iter().enumerate() {
        if let What::Happened(Event::Source(event)) = &moment.what {
            found.extend(of_event(scenario, trace, index, (moment, event)));
        }
    }
    found
}

/// Whether what happened broke the generator at once.
fn broke(trace: &Trace, index: usize) -> bool {
    let later = trace.moments.iter().skip(index);
    let at = trace.moments.get(index).map(|m| m.at);
    let mut at_once = later.take_while(|m| Some(m.at) == at);
    at_once.any(|m| m.what == What::Happened(Event::GeneratorBroken))
}

fn of_event(
    scenario: &Scenario,
    trace: &Trace,
    index: usize,
    (moment, event): (&Moment, &SourceEvent),
) -> Option<Finding> {
    let breach = |rule: Rule| Finding::breach(rule, moment.at, index);
    match event {
        SourceEvent::SolarJoined {
            grid: Follows::Generator,
        } => {
            let rated = scenario.site.generator.spec.rated_w;
            let sun = scenario.site.solar.as_ref().map_or(0.0, |s| s.watts);
            let finding = breach(Rule::SunOnGenerator)
                .reaching("generator-outlet")
                .with("sun", Arg::Quantity(sun, Unit::Watts))
                .with("rated", Arg::Quantity(rated, Unit::Watts));
            Some(finding)
        }
        SourceEvent::GeneratorPushed { watts } => {
            let finding = breach(Rule::PushedBack).reaching("generator-outlet");
            // Motors in the house borrow current from the set while the sun pushes watts into it.
            let borrowed = moment.readings.generator.vars.abs() > BORROWED * watts;
            let finding = finding.with("borrowed", Arg::Count(i64::from(borrowed)));
            let finding = finding.with("broke", Arg::Count(i64::from(broke(trace, index))));
            Some(finding.with("watts", Arg::Quantity(*watts, Unit::Watts)))
        }
        SourceEvent::BatteryOverloaded { watts } => {
            let rated = scenario.site.battery.as_ref().map_or(0.0, |b| b.rated_w);
            let finding = breach(Rule::BatteryOverloaded)
                .with("watts", Arg::Quantity(*watts, Unit::Watts))
                .with("rated", Arg::Quantity(rated, Unit::Watts));
            Some(finding)
        }
        SourceEvent::BatteryEmpty => Some(breach(Rule::BatterySpent)),
        SourceEvent::SolarJoined { .. }
        | SourceEvent::SolarLeft { .. }
        | SourceEvent::BatteryTook
        | SourceEvent::BatteryGaveBack => None,
    }
}
