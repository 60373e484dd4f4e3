//! What ground-fault devices, frames and high volts tell: a device that opened, one that was reset into the same fault, current on the ground of a cord, electronics destroyed.
//!
//! A device that opens has done its work, and two bonds are nobody's mistake in a drill: both are explained and break nothing.
//! To set a device again with the fault still there is a breach.
//! Electronics that a lost neutral destroys within a minute are nobody's mistake either; left on for longer, or on the household's own source, they are.
//! Sources: UL 943 for what a class A device does; NEC 250.30, 250.34 and 702.11 for where a neutral is bonded; NEC 250.6 for current on grounds (from memory).

use std::collections::BTreeSet;

use crate::apparatus::gfci;
use crate::apparatus::gfci::Gfci;
use crate::apparatus::motor::protector_s;
use crate::apparatus::tolerance;
use crate::drill::{Astray, Event, Moment, Phase, ProtectionEvent, Trace, What};
use crate::scenario::Scenario;
use crate::site::{ControlId, Cord, PositionId, Site, Spot};
use crate::units::DrillTime;
use crate::words::{Arg, Unit, name_of};

use super::episode::{Episode, episodes};
use super::finding::{Finding, Rule};

/// Amps on the ground of a cord that are more than leakage: common practice.
const GROUND_A: f64 = 0.5;

/// Volts of a leg that lamps and electronics stand for good: 110 % of 120 V, ITI (CBEMA) curve, 2000 (checked in a copy).
const LEG_MOST_V: f64 = 132.0;

/// How long one may take to see lamps flare and to switch the house off: common practice.
const TO_ACT: DrillTime = DrillTime::from_secs(60);

pub(super) fn findings(scenario: &Scenario, trace: &Trace) -> Vec<Finding> {
    let site = &scenario.site;
    let mut found = Vec::new();
    found.extend(wrong_volts(site, trace));
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
                .with(
                    "load",
                    Arg::Count(i64::from(residual_a >= gfci::MUST_TRIP_A)),
                )
                .with("took", Arg::Quantity(Gfci::USUAL.trip_s, Unit::Seconds))
                .reaching(guarded_point(site, moment, control))
                .with(
                    "longest",
                    Arg::Quantity(longest.unwrap_or_default(), Unit::Seconds),
                ),
        );
    }
    found.extend(grounds_that_carry(site, trace));
    found.extend(electronics_destroyed(site, trace));
    found
}

/// What a ground-fault device guards: the outlet of its circuit, or the cord in its outlet on the set.
fn guarded_point(site: &Site, moment: &Moment, device: ControlId) -> String {
    let circuit = site.circuits.iter().find(|c| c.gfci == Some(device));
    let in_it = |cord: &&Cord| match cord.near_spot(&moment.positions) {
        Spot::Receptacle(index) => {
            let outlet = site.generator.receptacles.get(index);
            outlet.is_some_and(|r| r.gfci == Some(device))
        }
        Spot::Stowed | Spot::CordEnd(_) | Spot::Outlet(_) | Spot::Inlet(_) | Spot::Lent => false,
    };
    match (circuit, site.cords.iter().find(in_it)) {
        (Some(circuit), _) => format!("outlet-{}", circuit.name),
        (None, Some(cord)) => format!("{}-near-end", cord.name),
        (None, None) => "generator-outlet".to_owned(),
    }
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
                    .with("lasted", Arg::lasting(episode.length()))
                    .reaching(format!("{}-far-end", cord.name)),
            );
        }
    }
    found
}

/// Electronics that high volts have destroyed, with how long they had stood them.
fn electronics_destroyed(site: &Site, trace: &Trace) -> Vec<Finding> {
    let mut found = Vec::new();
    for (index, moment) in trace.moments.iter().enumerate() {
        let What::Happened(Event::Protection(ProtectionEvent::Damaged { appliance, volts })) =
            moment.what
        else {
            continue;
        };
        let high = |m: &Moment| m.readings.appliance(appliance).pu > tolerance::MOST_PU;
        let before = trace.moments.get(..index).unwrap_or_default();
        let from = before.iter().rev().take_while(|m| high(m)).last();
        let stood = moment.at.since(from.map_or(moment.at, |m| m.at));
        let reading = moment.readings.appliance(appliance);
        let rated_v = reading.volts / reading.pu;
        let lost = before.iter().rev().find(|m| {
            let neutral = Event::Protection(ProtectionEvent::NeutralLost);
            matches!(&m.what, What::Happened(event) if *event == neutral)
        });
        let seen_for = lost.map_or(stood, |m| moment.at.since(m.at));
        let name = site.appliances.get(appliance);
        let finding = Finding {
            lasted: stood,
            breach: seen_for > TO_ACT || reading.fed.customer(),
            ..Finding::breach(Rule::Damaged, moment.at, index)
        };
        found.push(
            finding
                .with(
                    "appliance",
                    Arg::Said(Box::new(name_of(name.map_or("", |a| a.name.as_str())))),
                )
                .with("volts", Arg::Quantity(volts, Unit::Volts))
                .with(
                    "most",
                    Arg::Quantity(rated_v * tolerance::MOST_PU, Unit::Volts),
                )
                .with("stood", Arg::lasting(stood))
                .with("neutral", neutral_lost(site, moment))
                .with(
                    "allowed",
                    Arg::Quantity(tolerance::allowed_s(volts / rated_v), Unit::Seconds),
                )
                .reaching(outlet_of(site, appliance)),
        );
    }
    found
}

/// The outlet of an appliance's circuit.
fn outlet_of(site: &Site, appliance: usize) -> String {
    let circuit = site.appliances.get(appliance).map(|a| a.circuit);
    let circuit = circuit.and_then(|c| site.circuits.get(c));
    circuit.map_or_else(String::new, |c| format!("outlet-{}", c.name))
}

/// Stretches for which a leg of the main panel stands above what hangs on it is made for, and nobody switches it off: one cause, told once, at its highest.
fn wrong_volts(site: &Site, trace: &Trace) -> Option<Finding> {
    let volts = |m: &Moment| m.readings.point("bus").volts;
    let all = episodes(trace, |m| volts(m) > LEG_MOST_V);
    let long: Vec<Episode> = all.into_iter().filter(|e| e.length() > TO_ACT).collect();
    let from = long.first()?.from;
    let lasted = long.iter().fold(DrillTime::ZERO, |sum, e| sum + e.length());
    let highest = long.iter().map(|e| e.most(trace, volts));
    let highest = highest.filter_map(|index| Some((index, trace.moments.get(index)?)));
    let (shown, peak) = highest.reduce(|a, b| if volts(b.1) > volts(a.1) { b } else { a })?;
    let broken = |m: &Moment| m.positions.get(site.line.drop_neutral) != PositionId(0);
    let broke = trace.moments.iter().find(|m| broken(m));
    let (stalled, opens) = stalled(peak);
    let finding = Finding {
        lasted,
        ..Finding::breach(Rule::WrongVolts, from, shown)
    };
    Some(
        finding
            .with("volts", Arg::Quantity(volts(peak), Unit::Volts))
            .with("lasted", Arg::lasting(lasted))
            .with("broke", Arg::Clock(broke.map_or(from, |m| m.at)))
            .with("neutral", neutral_lost(site, peak))
            .with("stalled", Arg::Count(stalled))
            .with("opens", opens)
            .reaching("bus"),
    )
}

/// Whether the neutral of the house's drop is broken, as a count for the words.
fn neutral_lost(site: &Site, moment: &Moment) -> Arg {
    let broken = moment.positions.get(site.line.drop_neutral) != PositionId(0);
    Arg::Count(i64::from(broken))
}

/// How many motors hum without turning, and how long a cold one of them takes to open its own protector at the volts that it has.
fn stalled(moment: &Moment) -> (i64, Arg) {
    let motors = moment.conditions.appliances.iter().enumerate();
    let still = motors.filter(|(_, c)| c.phase == Phase::Stalled);
    let pu: Vec<f64> = still
        .map(|(index, _)| moment.readings.appliance(index).pu)
        .collect();
    let most = pu.iter().copied().fold(0.0, f64::max);
    let opens = DrillTime::from_hours(protector_s(most) / 3600.0);
    let count = i64::try_from(pu.len()).unwrap_or(i64::MAX);
    (count, Arg::lasting(opens.unwrap_or_default()))
}
