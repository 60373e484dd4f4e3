//! Service: nobody's hands are in a set that can start by itself, or behind the cover of a transfer switch with a live lug.
//!
//! A lug counts as live from 50 V on: 29 CFR 1910.303(g)(2) guards live parts from there, and 1910.333(a)(1) has them dead before anybody works on them (both from memory).
//! Sources: a disconnect that locks open and a stop of the engine, NEC 445.18 (checked in a copy that quotes it); the starter battery off as well is common practice and what makers ask for.

use crate::drill::{Action, Event, MachineEvent, Moment, Trace, What};
use crate::scenario::Scenario;
use crate::site::{CARRIES_A, Site, Transfer};
use crate::words::{Arg, Unit, name_of};

use super::episode::episodes;
use super::finding::{Finding, Harm, Rule};

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
            found.push(
                Finding::breach(Rule::CaughtByEngine, moment.at, index)
                    .harming(Some(Harm::Hurt))
                    .with("asked", Arg::Verbatim(asked(site, moment).to_owned())),
            );
        }
    }
    for transfer in &site.transfers {
        lugs(site, transfer, trace, &mut found);
    }
    found
}

/// What asked a controller for a start: somebody at its switch, its weekly run, or the street's power that went away.
fn asked(site: &Site, moment: &Moment) -> &'static str {
    let automatic = site.generator.machine.automatic;
    let test = |switch| site.stands(&moment.positions, switch, "test");
    if automatic.is_some_and(|own| test(own.switch)) {
        "test"
    } else if moment.readings.point("service").fed.utility {
        "weekly"
    } else {
        "street"
    }
}

/// Volts from which a lug counts as live.
const LIVE_LUG_V: f64 = 50.0;

/// An open cover over live lugs, and contacts that are moved by hand beside them.
fn lugs(site: &Site, transfer: &Transfer, trace: &Trace, found: &mut Vec<Finding>) {
    let Some(cover) = transfer.cover else {
        return;
    };
    let live = |m: &Moment| live_lug_v(m) >= LIVE_LUG_V;
    let open = |m: &Moment| site.stands(&m.positions, cover, "open");
    let told = |rule, at, index: usize, moment: &Moment| {
        Finding::breach(rule, at, index)
            .with("volts", Arg::Quantity(live_lug_v(moment), Unit::Volts))
            .with("side", Arg::Said(Box::new(name_of(live_side(moment)))))
            .reaching(match live_side(moment) {
                "utility" => "service",
                _ => "generator-outlet",
            })
    };
    for episode in episodes(trace, |m| open(m) && live(m)) {
        if let Some(moment) = trace.moments.get(episode.first) {
            found.push(
                Finding {
                    lasted: episode.length(),
                    ..told(Rule::LiveLugs, episode.from, episode.first, moment)
                }
                .with("lasted", Arg::lasting(episode.length())),
            );
        }
    }
    // What the contacts part is shown as it was just before.
    for (pair, index) in trace.moments.windows(2).zip(0..) {
        let [before, after] = pair else { continue };
        let moved = matches!(&after.what, What::Did(Action::Set(c, _)) if *c == transfer.handle);
        if moved && live(after) {
            let (shown, moment) = if live(before) {
                (index, before)
            } else {
                (index + 1, after)
            };
            let amps = moment.readings.amps_of(&transfer.name);
            found.push(
                told(Rule::HandTransferLive, after.at, shown, moment)
                    .with("amps", Arg::Quantity(amps, Unit::Amps))
                    .with("carried", Arg::Count(i64::from(amps >= CARRIES_A))),
            );
        }
    }
}

/// Where the higher volts behind the cover stand.
fn live_side(moment: &Moment) -> &'static str {
    if side_v(moment, "service") >= side_v(moment, "generator-outlet") {
        "utility"
    } else {
        "generator"
    }
}

/// The highest volts on the lugs behind the cover: what comes from the service, and what comes from the set.
fn live_lug_v(moment: &Moment) -> f64 {
    side_v(moment, "service").max(side_v(moment, "generator-outlet"))
}

/// The highest volts of a side, between the hots or to neutral: with one leg lost there are none between them.
fn side_v(moment: &Moment, point: &str) -> f64 {
    let reading = moment.readings.point(point);
    reading.volts.max(reading.volts_across)
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
