//! Traps: where a plain rule of thumb and the physics part ways.
//!
//! Each is met by a drill and a list of actions; what the rule of thumb says is worked out from the same run, and has to be something else than what the engine says.

use std::collections::BTreeSet;

use outage_drill::drill::{Action, Event, Learnt, Moment, ProtectionEvent, What};
use outage_drill::file::{Library, Source, read_heading};
use outage_drill::marking::Rule;
use outage_drill::shipped;

use crate::playing::{Played, play_text};

/// Feet from the nearest opening that are taught as the least (CPSC, checked in a copy).
const TAUGHT_FT: f64 = 20.0;
/// Volts to neutral from which a line is no more called dead: far above what neighbors induce, far below a backfeed.
const LIVE_V: f64 = 500.0;

/// What is asked of a run, and both answers.
struct Trap {
    /// What the rule of thumb is.
    thumb: &'static str,
    /// The list that meets it.
    list: &'static str,
    /// What the rule of thumb says of the run.
    says: fn(&Played) -> String,
    /// What the engine and the marking say of it.
    is: fn(&Played) -> String,
    /// What that has to be.
    wanted: &'static str,
}

const TRAPS: &[Trap] = &[
    Trap {
        thumb: "with the main off, the line is safe",
        list: "main-off-one-handle",
        says: |p| verdict(moments(p).all(|m| !(fed_by_set(m) && stands(p, m, "main", "on")))),
        is: |p| verdict(!found(p).contains(&Rule::NoTransferEquipment)),
        wanted: "unsafe",
    },
    Trap {
        thumb: "twenty feet away is safe",
        list: "window-cord-wind",
        says: |p| verdict(moments(p).all(|m| !runs(m) || away(p, m))),
        is: |p| verdict(!found(p).contains(&Rule::Gas)),
        wanted: "unsafe",
    },
    Trap {
        thumb: "who lays the cord before the main is off is in danger",
        list: "slide-cord-first",
        says: |p| verdict(first(p, "main", "off") < first(p, "inlet-cord-house-end", "inlet")),
        is: |p| verdict(p.verdict.passed),
        wanted: "safe",
    },
    Trap {
        thumb: "who tries both handles has joined two sources",
        list: "ready-panel-both-blocked",
        says: |p| verdict(!tried_both(p)),
        is: |p| verdict(p.verdict.passed && moments(p).all(|m| !m.readings.generator.tied)),
        wanted: "safe",
    },
    Trap {
        thumb: "a cord without its pin gives a shock",
        list: "tingle-no-pin",
        says: |p| verdict(!pinless_carries(p)),
        is: |p| verdict(!found(p).contains(&Rule::Touch) && !found(p).contains(&Rule::Shock)),
        wanted: "safe",
    },
    Trap {
        thumb: "joined twice to ground, a set holds until a lamp draws current",
        list: "trips-at-the-lamp-again",
        says: |p| opens(moments(p).take_while(|m| !opened(m)).any(|m| carries(p, m))),
        is: |p| opens(moments(p).any(opened)),
        wanted: "opens",
    },
    Trap {
        thumb: "where no device opens there is no fault",
        list: "silent-frame-holds",
        says: |p| verdict(!moments(p).any(|m| opened(m) || tripped(m))),
        is: |p| verdict(!found(p).contains(&Rule::NothingBonds)),
        wanted: "unsafe",
    },
    Trap {
        thumb: "who keeps four things of five has passed",
        list: "lock-the-standby-off-is-not-locked",
        says: |p| verdict(share_kept(p) >= 0.8),
        is: |p| verdict(p.verdict.passed),
        wanted: "unsafe",
    },
    Trap {
        thumb: "a dark tester means a dead line",
        list: "dead-or-not-two-dark",
        says: |p| live(detected(p).iter().any(|(_, lit)| *lit)),
        is: |p| live(volts_where_detected(p) >= LIVE_V),
        wanted: "live",
    },
];

fn verdict(safe: bool) -> String {
    if safe { "safe" } else { "unsafe" }.to_owned()
}

fn live(live: bool) -> String {
    if live { "live" } else { "dead" }.to_owned()
}

fn opens(open: bool) -> String {
    if open { "opens" } else { "holds" }.to_owned()
}

fn moments(played: &Played) -> impl DoubleEndedIterator<Item = &Moment> {
    played.drill.trace().moments.iter()
}

fn found(played: &Played) -> BTreeSet<Rule> {
    played.found().into_iter().map(|(rule, _)| rule).collect()
}

/// Whether a ground-fault device opens in this moment.
fn opened(moment: &Moment) -> bool {
    let fault = |e: &Event| matches!(e, Event::Protection(ProtectionEvent::GroundFault { .. }));
    matches!(&moment.what, What::Happened(event) if fault(event))
}

/// Whether a breaker trips in this moment.
fn tripped(moment: &Moment) -> bool {
    matches!(&moment.what, What::Happened(Event::Tripped { .. }))
}

/// Whether anything in the house draws current from the set.
fn carries(played: &Played, moment: &Moment) -> bool {
    let n = played.drill.site().appliances.len();
    let mut read = (0..n).map(|index| moment.readings.appliance(index));
    read.any(|a| a.fed.generator && a.amps > 0.1)
}

/// Share of the criteria that a run met, as an average has it.
fn share_kept(played: &Played) -> f64 {
    let criteria = &played.verdict.criteria;
    let kept: f64 = criteria
        .iter()
        .map(|(_, met)| f64::from(u8::from(*met)))
        .sum();
    let all: f64 = criteria.iter().map(|_| 1.0).sum();
    kept / all
}

fn stands(played: &Played, moment: &Moment, control: &str, position: &str) -> bool {
    let site = played.drill.site();
    let id = site.control_id(control).unwrap();
    site.stands(&moment.positions, id, position)
}

fn fed_by_set(moment: &Moment) -> bool {
    moment.readings.point("bus").fed.generator
}

fn runs(moment: &Moment) -> bool {
    moment.conditions.engine.running_since.is_some()
}

fn away(played: &Played, moment: &Moment) -> bool {
    let place = played.drill.site().generator_place(&moment.positions);
    place.is_some_and(|p| p.opening_ft >= TAUGHT_FT)
}

/// When the learner first moved a control to a position, as an index of the trace; the last one if never.
fn first(played: &Played, control: &str, position: &str) -> usize {
    let site = played.drill.site();
    let id = site.control_id(control).unwrap();
    let to = site.control(id).unwrap().position(position).unwrap();
    let found = moments(played).position(|m| m.what == What::Did(Action::Set(id, to)));
    found.unwrap_or(usize::MAX)
}

/// Whether the second of two guarded handles was tried while the first was on.
fn tried_both(played: &Played) -> bool {
    moments(played).any(|m| matches!(m.what, What::Refused(Action::Set(..), _)))
}

/// Whether a cord without an equipment ground carried current.
fn pinless_carries(played: &Played) -> bool {
    let cords = played.drill.site().cords.iter().filter(|c| !c.grounded);
    let names: Vec<&str> = cords.map(|c| c.name.as_str()).collect();
    moments(played).any(|m| names.iter().any(|n| m.readings.amps_of(n) > 0.1))
}

/// What line testers showed, with where they were held.
fn detected(played: &Played) -> Vec<(String, bool)> {
    let shown = moments(played).filter_map(|m| {
        if let What::Learnt(Learnt::Detected { point, lit, .. }) = &m.what {
            Some((point.clone(), *lit))
        } else {
            None
        }
    });
    shown.collect()
}

/// The least volts that stood where a tester was held to the line.
fn volts_where_detected(played: &Played) -> f64 {
    let volts = moments(played).filter_map(|m| {
        if let What::Learnt(Learnt::Detected { point, .. }) = &m.what {
            Some(m.readings.point(point).volts)
        } else {
            None
        }
    });
    volts.fold(f64::INFINITY, f64::min)
}

#[test]
fn each_trap_is_met_by_a_drill_that_misleads_a_rule_of_thumb() {
    let (library, faults) = Library::shipped();
    assert!(faults.is_empty(), "{faults:?}");
    for trap in TRAPS {
        let end = format!("/{}.actions", trap.list);
        let (path, text) = shipped::LISTS
            .iter()
            .find(|(p, _)| p.ends_with(&end))
            .unwrap();
        let heading = read_heading(Source { file: path, text }).unwrap().unwrap();
        let scenario = &heading.scenarios(&library).unwrap()[0];
        for seed in &heading.seeds {
            let played = play_text(scenario, *seed, text);
            let (says, is) = ((trap.says)(&played), (trap.is)(&played));
            assert_ne!(says, is, "{}: {}", trap.thumb, trap.list);
            assert_eq!(is, trap.wanted, "{}: {}", trap.thumb, trap.list);
        }
    }
}
