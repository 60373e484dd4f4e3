//! Indoors: an alarm watches while the engine runs, nobody stays in bad air or goes back into it, help is called, fuel is kept outside, the neighbors' air is clean.
//!
//! A sign of gas is an alarm that sounds or a headache; from then on everybody has three minutes to be out (common practice: at once).
//! Sources: CPSC and NFPA, alarms with a battery on each level and outside bedrooms (checked); state health agencies, all out, call, nobody goes back (checked); OSHA 3277, never store fuel indoors (checked); UL 2034 for the alarm next door.
//! Not covered: whoever is next door, an alarm that nobody is there to hear.

use crate::drill::{Action, Callee, Event, IndoorsEvent, Moment, Trace, What};
use crate::hazard::fuel_vapor::{BURNS_PCT, Igniter, Pour, igniter, share_of_burnable};
use crate::hazard::monoxide::{CLEAN_PPM, alarm_in_s};
use crate::scenario::Scenario;
use crate::site::{CanRoom, Site};
use crate::units::DrillTime;
use crate::words::{Arg, Unit, name_of};

use super::episode::episodes;
use super::finding::{Finding, Rule};

/// Time that people have to be out after a sign of gas: common practice, rounded up.
const OUT_WITHIN: DrillTime = DrillTime::from_secs(180);
/// Time in which help has to be called after a sign of gas: common practice.
const CALL_WITHIN: DrillTime = DrillTime::from_secs(600);
/// What a can that tips over spills, grams of gasoline: a U.S. cup of 237 mL, at 0.74 g each, an assumption.
const SPILL_G: f64 = 175.0;

pub(super) fn findings(scenario: &Scenario, trace: &Trace) -> Vec<Finding> {
    let site = &scenario.site;
    let mut found = no_alarm(site, trace);
    found.extend(fuel_indoors(site, trace));
    for (index, moment) in trace.moments.iter().enumerate() {
        if let What::Happened(Event::Indoors(IndoorsEvent::NextDoorAlarm { ppm })) = moment.what {
            let feet = site.generator_place(&moment.positions);
            let feet = feet.and_then(|p| p.next_door).map_or(0.0, |(feet, _)| feet);
            found.push(
                Finding::breach(Rule::GasNextDoor, moment.at, index)
                    .with("ppm", Arg::Quantity(ppm, Unit::Ppm))
                    .with("feet", Arg::Quantity(feet, Unit::Feet)),
            );
        }
    }
    if let Some(sign) = trace.moments.iter().position(is_sign) {
        found.extend(stayed_in(site, trace, sign));
        found.extend(not_called(trace, sign));
    }
    found
}

/// The engine ran while no alarm could sound.
fn no_alarm(site: &Site, trace: &Trace) -> Vec<Finding> {
    let Some(alarm) = site.indoors.alarm else {
        return Vec::new();
    };
    let blind =
        |m: &Moment| m.conditions.engine.running_since.is_some() && !site.alarm_works(&m.positions);
    let all = episodes(trace, blind);
    let told = all.iter().filter_map(|episode| {
        let first = trace.moments.get(episode.first)?;
        let most = episode.moments(trace).iter().map(|m| m.conditions.ppm());
        let stands = site.position_name(&first.positions, alarm);
        // What an alarm would take at 150 ppm, where headaches take far longer.
        let sounds_s = alarm_in_s(0.0, 150.0).unwrap_or_default();
        Some(
            Finding {
                lasted: episode.length(),
                ..Finding::breach(Rule::NoAlarm, episode.from, episode.first)
            }
            .with("stands", Arg::Said(Box::new(name_of(stands))))
            .with("lasted", Arg::lasting(episode.length()))
            .with("ppm", Arg::Quantity(most.fold(0.0, f64::max), Unit::Ppm))
            .with(
                "would",
                Arg::Quantity((sounds_s / 60.0).round(), Unit::Plain),
            ),
        )
    });
    told.collect()
}

/// Fuel that somebody brought indoors, or left there to the end.
fn fuel_indoors(site: &Site, trace: &Trace) -> Vec<Finding> {
    let room = |m: &Moment| site.fuel_room(&m.positions);
    let all = episodes(trace, |m| room(m).is_some());
    let last = trace.moments.len().saturating_sub(1);
    let kept = all
        .iter()
        .filter(|e| e.first > 0 || trace.moments.get(last).is_some_and(|m| room(m).is_some()));
    let told = kept.filter_map(|episode| {
        let first = trace.moments.get(episode.first)?;
        let here = room(first)?;
        let can = site.indoors.can.as_ref()?;
        let place = site.position_name(&first.positions, can.control);
        Some(
            Finding {
                lasted: episode.length(),
                ..Finding::breach(Rule::FuelIndoors, episode.from, episode.first)
            }
            .with("lasted", Arg::lasting(episode.length()))
            .with("times", Arg::Quantity(times_burnable(here), Unit::Plain))
            .with("place", Arg::Said(Box::new(name_of(place))))
            .with("grams", Arg::Quantity(SPILL_G, Unit::Grams))
            .with(
                "mix",
                Arg::Quantity(BURNS_PCT.0 * times_burnable(here), Unit::Percent),
            )
            .with("burns", Arg::Quantity(BURNS_PCT.0, Unit::Percent))
            .with("lights", Arg::Verbatim(lights(here).to_owned())),
        )
    });
    told.collect()
}

/// How many times as rich as burns the lowest air of a room gets from a spill.
fn times_burnable(room: CanRoom) -> f64 {
    share_of_burnable(SPILL_G, room.floor_m2)
}

fn lights(room: CanRoom) -> &'static str {
    let pour = Pour {
        flame: room.flame,
        ..Pour::default()
    };
    match igniter(&pour) {
        Igniter::Flame => "flame",
        Igniter::Nothing | Igniter::HotSurface | Igniter::Engine => "spark",
    }
}

/// Whether a moment tells of gas: an alarm sounds, or heads ache.
fn is_sign(moment: &Moment) -> bool {
    matches!(
        moment.what,
        What::Happened(Event::Alarm { .. } | Event::Indoors(IndoorsEvent::Unwell { .. }))
    )
}

/// Somebody in bad air longer than it takes to get out after a sign of it, or back in it.
fn stayed_in(site: &Site, trace: &Trace, sign: usize) -> Option<Finding> {
    let sign_at = trace.moments.get(sign)?.at;
    let bad = |m: &Moment| m.conditions.ppm() >= CLEAN_PPM;
    let after = trace.moments.iter().enumerate().skip(sign);
    let mut least = usize::MAX;
    for (index, moment) in after {
        let inside = site.n_inside(&moment.positions);
        let back = inside > least;
        least = least.min(inside);
        let late = moment.at > sign_at + OUT_WITHIN && inside > 0;
        if bad(moment) && (back || late) {
            return Some(
                Finding::breach(Rule::StayedIn, moment.at, index)
                    .with(
                        "how",
                        Arg::Verbatim(if back { "back" } else { "late" }.to_owned()),
                    )
                    .with("ppm", Arg::Quantity(moment.conditions.ppm(), Unit::Ppm))
                    .with(
                        "cohb",
                        Arg::Quantity(most_inside(site, moment), Unit::Percent),
                    ),
            );
        }
    }
    None
}

/// Carboxyhemoglobin of the one inside who has most of it, percent.
fn most_inside(site: &Site, moment: &Moment) -> f64 {
    let conditions = &moment.conditions;
    let up = site.household_inside(&moment.positions);
    let people = site.indoors.people.iter().zip(&conditions.indoors.people);
    let inside = people.filter(|(p, _)| !site.stands(&moment.positions, p.control, "outside"));
    let up = up.then_some(conditions.cohb_pct);
    inside
        .map(|(_, own)| own.cohb_pct)
        .chain(up)
        .fold(0.0, f64::max)
}

/// No call for help in time after a sign of gas.
fn not_called(trace: &Trace, sign: usize) -> Option<Finding> {
    let sign_at = trace.moments.get(sign)?.at;
    let due = (sign_at + CALL_WITHIN).min(trace.end());
    let called = trace
        .moments
        .iter()
        .skip(sign)
        .any(|m| m.at <= due && matches!(m.what, What::Did(Action::Call(Callee::Emergency))));
    let moment = trace.moments.iter().rposition(|m| m.at <= due)?;
    (!called).then(|| Finding::breach(Rule::NotCalled, due, moment))
}
