//! Service: nobody's hands are in a set that can start by itself or is live.
//!
//! Sources: a disconnect that locks open and a stop of the engine, NEC 445.18 (checked in a copy that quotes it); the starter battery off as well is common practice and what makers ask for.

use crate::drill::{Event, MachineEvent, Moment, Trace, What};
use crate::scenario::Scenario;
use crate::site::Site;
use crate::words::Arg;

use super::episode::episodes;
use super::finding::{Finding, Rule};

pub(super) fn findings(scenario: &Scenario, trace: &Trace) -> Vec<Finding> {
    let site = &scenario.site;
    let mut found = Vec::new();
    for episode in episodes(trace, |m| exposed(site, m)) {
        let Some(moment) = trace.moments.get(episode.first) else {
            continue;
        };
        found.push(
            Finding {
                lasted: episode.length(),
                ..Finding::breach(Rule::NotLockedOut, episode.from, episode.first)
            }
            .with("done", Arg::Count(steps_done(site, moment)))
            .with("lasted", Arg::lasting(episode.length())),
        );
    }
    for (index, moment) in trace.moments.iter().enumerate() {
        if matches!(
            &moment.what,
            What::Happened(Event::Machine(MachineEvent::CaughtByEngine))
        ) {
            found.push(Finding::breach(Rule::CaughtByEngine, moment.at, index));
        }
    }
    found
}

/// Whether the cover is open on a set that isn't locked out.
fn exposed(site: &Site, moment: &Moment) -> bool {
    let generator = &site.generator;
    generator.machine.automatic.is_some_and(|automatic| {
        let lock_out = automatic.lock_out(&moment.positions, generator.output);
        automatic.open(&moment.positions) && !lock_out.safe_for_service()
    })
}

/// How many of the three steps of a lock-out are done.
fn steps_done(site: &Site, moment: &Moment) -> i64 {
    let generator = &site.generator;
    generator.machine.automatic.map_or(0, |automatic| {
        let lock_out = automatic.lock_out(&moment.positions, generator.output);
        [
            lock_out.controller_off,
            lock_out.breaker_open,
            lock_out.battery_off,
        ]
        .into_iter()
        .map(i64::from)
        .sum()
    })
}
