//! What ground-fault devices and frames tell: a device that opened, one that was reset into the same fault, current on the ground of a cord.
//!
//! A device that opens has done its work, and two bonds are nobody's mistake in a drill: both are explained and break nothing.
//! To set a device again with the fault still there is a breach.
//! Sources: UL 943 for what a class A device does; NEC 250.30, 250.34 and 702.11 for where a neutral is bonded; NEC 250.6 for current on grounds (from memory).

use std::collections::BTreeSet;

use crate::apparatus::gfci;
use crate::apparatus::gfci::Gfci;
use crate::drill::{Astray, Event, Moment, ProtectionEvent, Trace, What};
use crate::scenario::Scenario;
use crate::site::Site;
use crate::words::{Arg, Unit, name_of};

use super::episode::episodes;
use super::finding::{Finding, Rule};

/// Amps on the ground of a cord that are more than leakage: common practice.
const GROUND_A: f64 = 0.5;

pub(super) fn findings(scenario: &Scenario, trace: &Trace) -> Vec<Finding> {
    let site = &scenario.site;
    let mut found = Vec::new();
    let mut opened = BTreeSet::new();
    for (index, moment) in trace.moments.iter().enumerate() {
        let What::Happened(Event::Protection(ProtectionEvent::GroundFault {
            control,
            residual_a,
            astray,
        })) = moment.what
        else {
            continue;
        };
        let rule = match astray {
            Astray::TwoBonds => Rule::TwoBonds,
            Astray::Fault if opened.insert(control) => Rule::GroundFault,
            Astray::Fault => Rule::ResetIntoFault,
        };
        let device = site.control(control).map_or("", |c| c.name.as_str());
        let longest = gfci::longest_s(residual_a.max(gfci::MUST_TRIP_A));
        let finding = Finding {
            breach: rule == Rule::ResetIntoFault,
            ..Finding::breach(rule, moment.at, index)
        };
        found.push(
            finding
                .with("device", Arg::Said(Box::new(name_of(device))))
                .with(
                    "residual",
                    Arg::Quantity(residual_a * 1000.0, Unit::Milliamps),
                )
                .with("took", Arg::Quantity(Gfci::USUAL.trip_s, Unit::Seconds))
                .with(
                    "longest",
                    Arg::Quantity(longest.unwrap_or_default(), Unit::Seconds),
                ),
        );
    }
    found.extend(grounds_that_carry(site, trace));
    found
}

/// A cord's ground that carries the load's current back, because neutral and ground are joined at both ends.
fn grounds_that_carry(site: &Site, trace: &Trace) -> Vec<Finding> {
    let mut found = Vec::new();
    for cord in site.cords.iter().filter(|c| c.grounded) {
        let thing = format!("{}-ground", cord.name);
        let amps = |m: &Moment| m.readings.amps_of(&thing);
        let carries = |m: &Moment| amps(m) >= GROUND_A && !m.readings.generator.tied;
        for episode in episodes(trace, carries) {
            let most = episode.moments(trace).iter().map(amps).fold(0.0, f64::max);
            let finding = Finding {
                lasted: episode.length(),
                breach: false,
                ..Finding::breach(Rule::GroundCarries, episode.from, episode.first)
            };
            found.push(
                finding
                    .with("cord", Arg::Said(Box::new(name_of(&cord.name))))
                    .with("amps", Arg::Quantity(most, Unit::Amps))
                    .with("lasted", Arg::lasting(episode.length())),
            );
        }
    }
    found
}
