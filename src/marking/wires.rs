//! Wires in walls: none gets hotter than its insulation stands.
//!
//! Sources: NEC 240.4(D) for the breaker of a small wire (checked); 90 °C for the insulation of NM cable (NEC 334.112, from memory).
//! A neutral that two circuits share carries their difference between two legs, and their sum on one: then it is told which adds what.
//! Not covered: a wire above 60 °C and below 90 °C, which ages and does not fail in a drill's time.

use crate::apparatus::ampacity::largest_breaker_a;
use crate::apparatus::branch_wire::INSULATION_C;
use crate::drill::{Moment, Trace};
use crate::scenario::Scenario;
use crate::site::{Backfeed, CARRIES_A, Circuit, Site};
use crate::words::{Arg, Unit, name_of};

use super::cords::{end_volts, since};
use super::episode::episodes;
use super::finding::{Finding, Rule};
use super::starved::tied_legs;

pub(super) fn findings(scenario: &Scenario, trace: &Trace) -> Vec<Finding> {
    let site = &scenario.site;
    let mut found = Vec::new();
    for (index, wire) in site.wires().enumerate() {
        let hot = |m: &Moment| m.conditions.wire_c(index);
        for episode in episodes(trace, |m| hot(m) > INSULATION_C) {
            let moments = episode.moments(trace);
            let most = |read: &dyn Fn(&Moment) -> f64| moments.iter().map(read).fold(0.0, f64::max);
            let own = |m: &Moment| m.readings.amps_of(&wire.meter);
            let peak = moments
                .iter()
                .reduce(|a, b| if own(b) > own(a) { b } else { a });
            let loaded = |m: &Moment| own(m) >= CARRIES_A;
            let from = since(trace, episode.first, &loaded);
            let (Some(peak), Some(breaker)) = (peak, largest_breaker_a(wire.awg)) else {
                continue;
            };
            let guard = guard_a(site, &wire.meter);
            let until = trace.moments.get(..=episode.first).unwrap_or_default();
            let finding = Finding {
                lasted: episode.length(),
                ..Finding::breach(Rule::WireHot, episode.from, episode.first)
            };
            let finding = finding
                .with("wire", said(&wire.name))
                .with("runs", runs(site, &wire.meter))
                .with("gauge", Arg::Verbatim(wire.awg.to_string()))
                .with(
                    "start",
                    Arg::Quantity(from.map_or(INSULATION_C, hot), Unit::Celsius),
                )
                .with(
                    "time",
                    Arg::lasting(episode.from.since(from.map_or(episode.from, |m| m.at))),
                )
                .with(
                    "climbs",
                    Arg::Count(i64::from(most(&hot) < INSULATION_C + 1.0)),
                )
                .with("reached", Arg::Quantity(most(&hot), Unit::Celsius))
                .with("limit", Arg::Quantity(INSULATION_C, Unit::Celsius))
                .with("amps", Arg::Quantity(heating_a(until, &own), Unit::Amps))
                .with("guarded", Arg::Count(i64::from(guard.is_some())))
                .with(
                    "guard",
                    Arg::Quantity(guard.unwrap_or_default(), Unit::Amps),
                )
                .with("breaker", Arg::Quantity(breaker, Unit::Amps));
            found.push(with_cause(finding, site, peak, &wire.name));
        }
    }
    found
}

/// Where a wire runs, from the meter of its current: from an inlet to the panel, or from there to the outlets of its circuit.
fn runs(site: &Site, meter: &str) -> Arg {
    let inlet = site.inlets.iter().any(|i| i.name == meter);
    Arg::Verbatim(if inlet { "inlet" } else { "circuit" }.to_owned())
}

/// The rating of what guards a wire: the breaker or fuse of its meter, or the breaker that an inlet feeds.
fn guard_a(site: &Site, meter: &str) -> Option<f64> {
    let backfeed = site.panel.backfeed.as_ref();
    let of_inlet = |b: &&Backfeed| site.inlets.get(b.inlet).is_some_and(|i| i.name == meter);
    let behind = backfeed.iter().copied().find(of_inlet).map(|b| b.breaker);
    let mut guards = site.guards();
    let own = guards.find(|(id, c, _)| c.name == meter || Some(*id) == behind);
    own.map(|(.., guard)| guard.rating_a())
}

/// The steady amps that would have made the heat of those that flowed, from the last pause on: a motor's start counts for as long as it lasts.
fn heating_a(until: &[Moment], own: &dyn Fn(&Moment) -> f64) -> f64 {
    let pause = until.iter().rposition(|m| own(m) < CARRIES_A);
    let flowed = until.get(pause.map_or(0, |i| i + 1)..).unwrap_or_default();
    let (mut seconds, mut heat) = (0.0, 0.0);
    for pair in flowed.windows(2) {
        let [a, b] = pair else { continue };
        let lasted = b.at.since(a.at).seconds();
        seconds += lasted;
        heat += lasted * own(a) * own(a);
    }
    if seconds > 0.0 {
        (heat / seconds).sqrt()
    } else {
        until.last().map_or(0.0, own)
    }
}

/// Why the wire carries so much: a breaker that is too large for it, or two circuits that add up on one neutral, by an adapter or on one leg.
fn with_cause(finding: Finding, site: &Site, moment: &Moment, wire: &str) -> Finding {
    let cause = |name: &str| Arg::Verbatim(name.to_owned());
    let shared = wire.strip_prefix("neutral-");
    let own = shared.and_then(|name| site.circuits.iter().position(|c| c.name == name));
    let Some(own) = own else {
        return finding.with("cause", cause("breaker"));
    };
    let amps = |c: &Circuit| moment.readings.amps_of(&c.guard);
    let circuits = site.circuits.iter().enumerate();
    let on_it = circuits.filter(|(index, c)| *index == own || c.neutral_of == Some(own));
    let mut on_it: Vec<&Circuit> = on_it.map(|(_, c)| c).collect();
    on_it.sort_by(|a, b| amps(b).total_cmp(&amps(a)));
    let [most, other, ..] = on_it.as_slice() else {
        return finding.with("cause", cause("breaker"));
    };
    let finding = finding
        .with("one", said(&format!("branch-{}", most.name)))
        .with("one-amps", Arg::Quantity(amps(most), Unit::Amps))
        .with("other", said(&format!("branch-{}", other.name)))
        .with("other-amps", Arg::Quantity(amps(other), Unit::Amps));
    match tied_legs(site, moment).and_then(|index| site.cords.get(index)) {
        Some(cord) => finding
            .with("cause", cause("adapter"))
            .with("cord", said(&cord.name))
            .with(
                "near",
                Arg::Quantity(end_volts(moment, cord, "near-end"), Unit::Volts),
            ),
        None => finding.with("cause", cause("shared")),
    }
}

fn said(name: &str) -> Arg {
    Arg::Said(Box::new(name_of(name)))
}
