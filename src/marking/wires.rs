//! Wires in walls: none gets hotter than its insulation stands.
//!
//! Sources: NEC 240.4(D) for the breaker of a small wire (checked); 90 °C for the insulation of NM cable (NEC 334.112, from memory).
//! Not covered: a wire above 60 °C and below 90 °C, which ages and does not fail in a drill's time.

use crate::apparatus::ampacity::largest_breaker_a;
use crate::apparatus::branch_wire::INSULATION_C;
use crate::drill::{Moment, Trace};
use crate::scenario::Scenario;
use crate::words::{Arg, Unit, name_of};

use super::episode::episodes;
use super::finding::{Finding, Rule};

pub(super) fn findings(scenario: &Scenario, trace: &Trace) -> Vec<Finding> {
    let mut found = Vec::new();
    for (index, wire) in scenario.site.wires().enumerate() {
        let hot = |m: &Moment| m.conditions.wire_c(index);
        for episode in episodes(trace, |m| hot(m) > INSULATION_C) {
            let moments = episode.moments(trace);
            let most = |read: &dyn Fn(&Moment) -> f64| moments.iter().map(read).fold(0.0, f64::max);
            let amps = most(&|m| m.readings.amps_of(&wire.meter));
            let Some(breaker) = largest_breaker_a(wire.awg) else {
                continue;
            };
            found.push(
                Finding {
                    lasted: episode.length(),
                    ..Finding::breach(Rule::WireHot, episode.from, episode.first)
                }
                .with("wire", Arg::Said(Box::new(name_of(&wire.name))))
                .with("gauge", Arg::Verbatim(wire.awg.to_string()))
                .with("reached", Arg::Quantity(most(&hot), Unit::Celsius))
                .with("limit", Arg::Quantity(INSULATION_C, Unit::Celsius))
                .with("amps", Arg::Quantity(amps, Unit::Amps))
                .with("breaker", Arg::Quantity(breaker, Unit::Amps)),
            );
        }
    }
    found
}
