//! Order: what happened came in an order that spares people and things.
//!
//! Checked on what happened and not on which control was touched.
//! Sources: no live mating of cords, starting and stopping without load, cool-down: common practice, in many makers' manuals; at least 20 ft from openings: CPSC, checked.

use std::collections::BTreeSet;

use crate::apparatus::generator::{EXHAUST_COOL_C, exhaust_c, exhaust_hot_s};
use crate::drill::{Action, Event, Known, Moment, Trace, What, whole_millis};
use crate::scenario::Scenario;
use crate::site::{CARRIES_A, Control, ControlId, Cord, FarEnd, Kind, Place, Site, Spot};
use crate::units::DrillTime;
use crate::words::{Arg, Unit, name_of};

use super::episode::{at_rest, episodes};
use super::finding::{Finding, Rule};
use super::isolation::{line_fed, unguarded_volts};
use super::load::BRIEF;

/// Watts from which a generator counts as loaded.
const LOADED_W: f64 = 50.0;
/// Volts from which mating or parting a cord counts as live.
const LIVE_V: f64 = 50.0;
/// Amps through a cord from which a plug that is parted or mated draws an arc: assumption; air keeps one burning from about half an amp at 120 V, from memory.
const ARCING_A: f64 = 0.5;
/// The published distance to openings, feet: CPSC, checked.
const OPENING_FT: f64 = 20.0;

pub(super) fn findings(scenario: &Scenario, trace: &Trace) -> Vec<Finding> {
    let site = &scenario.site;
    let mut found = Vec::new();
    for (index, pair) in trace.moments.windows(2).enumerate() {
        let [before, after] = pair else { continue };
        if let What::Did(Action::Set(control, _)) = &after.what {
            found.extend(of_move(site, trace, index + 1, before, after, *control));
        }
    }
    let since_the_start = |first: usize| {
        let before = first.checked_sub(1).and_then(|i| trace.moments.get(i));
        before.is_some_and(started_into)
    };
    for episode in episodes(trace, |m| early_load(site, m)) {
        if since_the_start(episode.first) {
            continue;
        }
        let watts = |m: &Moment| m.readings.generator.watts;
        let shown = episode.most(trace, watts);
        let most = trace.moments.get(shown).map_or(0.0, watts);
        found.push(
            Finding {
                lasted: episode.length(),
                ..Finding::breach(Rule::NotSettled, episode.from, shown)
            }
            .with("watts", Arg::Quantity(most, Unit::Watts))
            .with(
                "settle",
                Arg::Quantity(site.generator.spec.warmup_s, Unit::Seconds),
            ),
        );
    }
    for episode in episodes(trace, |m| near(site, m).is_some()) {
        let feet = trace
            .moments
            .get(episode.first)
            .and_then(|m| near(site, m))
            .unwrap_or_default();
        found.push(
            Finding {
                lasted: episode.length(),
                ..Finding::breach(Rule::TooNear, episode.from, episode.first)
            }
            .with("feet", Arg::Quantity(feet, Unit::Feet))
            .with("rule", Arg::Quantity(OPENING_FT, Unit::Feet))
            .with("far", Arg::Count(i64::from(far_place(site).is_some())))
            .with(
                "place",
                Arg::Said(Box::new(name_of(far_place(site).unwrap_or_default()))),
            ),
        );
    }
    found
}

/// The place of this site where an engine may stand and is farthest from every opening, if any is far enough.
fn far_place(site: &Site) -> Option<&str> {
    let places = site.generator.places.iter().filter(|p| p.usable);
    let far = places.filter(|p| opening_ft(p) >= OPENING_FT && !p.lets_gas_in());
    let far = far.max_by(|a, b| opening_ft(a).total_cmp(&opening_ft(b)));
    far.map(|p| p.name.as_str())
}

/// Feet from a place to the nearest opening of any home.
fn opening_ft(place: &Place) -> f64 {
    let next_door = place.next_door.map(|(feet, _)| feet);
    next_door.map_or(place.opening_ft, |feet| feet.min(place.opening_ft))
}

/// Load on an engine in the instant of its start.
fn started_into(moment: &Moment) -> bool {
    let ran = moment.conditions.engine.ran_for(moment.at);
    ran == Some(DrillTime::ZERO) && moment.readings.generator.watts > LOADED_W
}

/// An engine that is started into a load, with all that begins to draw at once.
fn start_under_load(trace: &Trace, index: usize, after: &Moment) -> Option<Finding> {
    let loaded = at_once(trace, index, after).filter(|(_, m)| started_into(m));
    let (shown, watts) = most(loaded.map(|(i, m)| (i, m.readings.generator.watts)))?;
    Some(
        Finding::breach(Rule::StartUnderLoad, after.at, shown)
            .with("watts", Arg::Quantity(watts, Unit::Watts)),
    )
}

/// Load on an engine that has not settled.
fn early_load(site: &Site, moment: &Moment) -> bool {
    let Some(ran) = moment.conditions.engine.ran_for(moment.at) else {
        return false;
    };
    let runs_s = ran.seconds();
    moment.readings.generator.watts > LOADED_W
        && runs_s > 0.0
        && runs_s < site.generator.spec.warmup_s
}

fn near(site: &Site, moment: &Moment) -> Option<f64> {
    moment.conditions.engine.running_since?;
    site.generator_place(&moment.positions)
        .map(opening_ft)
        .filter(|feet| *feet > 0.0 && *feet < OPENING_FT)
}

fn of_move(
    site: &Site,
    trace: &Trace,
    index: usize,
    before: &Moment,
    after: &Moment,
    control: ControlId,
) -> Vec<Finding> {
    let Some(moved) = site.control(control) else {
        return Vec::new();
    };
    let mut found = Vec::new();
    found.extend(live_plug(site, index, before, after, control, moved));
    found.extend(all_at_once(site, trace, (index, after), moved));
    let now = site.position_name(&after.positions, control);
    match (moved.kind, now) {
        (Kind::Engine, "running") => found.extend(start_under_load(trace, index, after)),
        (Kind::Engine, "stopped") => found.extend(no_cool_down(site, index, before, after)),
        (Kind::Main, "on") => found.extend(blind_return(trace, index, after)),
        _ => {}
    }
    found
}

/// A cord's end moved while its contacts were live: out of order, and a danger to the hand on it where they carry load.
fn live_plug(
    site: &Site,
    index: usize,
    before: &Moment,
    after: &Moment,
    control: ControlId,
    moved: &Control,
) -> Option<Finding> {
    let (cord, point) = site.cords.iter().find_map(|cord| {
        if cord.near == control {
            let at_set = |m: &Moment| {
                let spot = cord.near_spot(&m.positions);
                matches!(spot, Spot::Stowed | Spot::Receptacle(_))
            };
            let point = if at_set(before) && at_set(after) {
                "generator-outlet".to_owned()
            } else {
                format!("{}-near-end", cord.name)
            };
            Some((cord, point))
        } else if cord.far.control() == Some(control) {
            Some((cord, format!("{}-far-end", cord.name)))
        } else {
            None
        }
    })?;
    let live = |m: &Moment| {
        m.readings
            .point(&point)
            .volts_across
            .max(m.readings.point(&point).volts)
    };
    let amps = |m: &Moment| m.readings.amps_of(&cord.name);
    let loaded = if amps(after) > amps(before) {
        after
    } else {
        before
    };
    let (volts, amps) = (live(before).max(live(after)), amps(loaded));
    let rule = if amps >= ARCING_A {
        Rule::PlugUnderLoad
    } else {
        Rule::LivePlug
    };
    // Load on one side alone has that side's volts: it pulls them down, and lifts those of the other side by as much as the neutral loses.
    let one_side = rule == Rule::PlugUnderLoad && loaded.readings.less_of(&cord.name) < CARRIES_A;
    let told = if one_side {
        let legs_v = loaded.readings.point(&point).legs_v.into_iter();
        legs_v
            .filter(|v| *v >= LIVE_V)
            .reduce(f64::min)
            .unwrap_or(volts)
    } else {
        volts
    };
    // A plug that was dead until it went in is safe in the hand; what it makes live is the other plug of its strip.
    let passes_on = matches!(cord.far, FarEnd::Strip(_)) && live(before) < LIVE_V;
    (volts >= LIVE_V).then(|| {
        Finding::breach(rule, after.at, index)
            .with("plug", Arg::Said(Box::new(name_of(&moved.name))))
            .with("volts", Arg::Quantity(told, Unit::Volts))
            .with("amps", Arg::Quantity(amps, Unit::Amps))
            .with("strip", Arg::Count(i64::from(passes_on)))
            .with("transfer", Arg::Count(i64::from(by_hand(site, cord))))
            .reaching(point)
    })
}

/// Whether what a cord feeds is taken off it by the handles of a transfer switch.
fn by_hand(site: &Site, cord: &Cord) -> bool {
    let automatic = site.generator.machine.automatic.is_some();
    matches!(cord.far, FarEnd::Inlet(_)) && !site.transfers.is_empty() && !automatic
}

/// Motors that start at the same instant because the learner closed one switch on all of them.
/// A house that is fed past all transfer equipment is not to be fed so again, one by one or not.
fn all_at_once(
    site: &Site,
    trace: &Trace,
    (index, after): (usize, &Moment),
    moved: &Control,
) -> Option<Finding> {
    if !(moved.is_breaker() || moved.kind == Kind::Engine) {
        return None;
    }
    let started = at_once(trace, index + 1, after).filter_map(|(_, moment)| {
        let What::Happened(Event::Starting { appliance, .. }) = moment.what else {
            return None;
        };
        Some(appliance)
    });
    let motors: BTreeSet<usize> = started.collect();
    if motors.len() < 2 {
        return None;
    }
    // All together, at the moment in which they draw most with all else that is on, and nothing has given way.
    let holds = |m: &Moment| !matches!(&m.what, What::Happened(event) if event.gives_way());
    let drawn = |m: &Moment| motors.iter().map(|i| m.readings.appliance(*i).amps).sum();
    let moments = at_once(trace, index, after).filter(|(_, m)| holds(m));
    let (most, _) = most(moments.map(|(i, m)| (i, drawn(m))))?;
    let shown = at_rest(trace, most, |m| holds(m) && drawn(m) > 0.0);
    let amps = trace.moments.get(shown).map_or(0.0, drawn);
    let count = Arg::Count(i64::try_from(motors.len()).unwrap_or(i64::MAX));
    Some(
        Finding::breach(Rule::AllAtOnce, after.at, shown)
            .with("motors", count)
            .with("amps", Arg::Quantity(amps, Unit::Amps))
            .with(
                "well",
                Arg::Count(i64::from(!at_once_gave_way(trace, index, after))),
            )
            .with(
                "unguarded",
                Arg::Count(i64::from(unguarded_volts(site, after).is_some())),
            ),
    )
}

/// Whether something stalled, tripped or stopped while several motors started.
fn at_once_gave_way(trace: &Trace, index: usize, after: &Moment) -> bool {
    let moments = trace.moments.iter().skip(index);
    let mut moments = moments.take_while(|m| m.at <= after.at + BRIEF);
    let stalls = |event: &Event| event.gives_way() || matches!(event, Event::Stalled { .. });
    moments.any(|m| matches!(&m.what, What::Happened(event) if stalls(event)))
}

/// The moments from `index` on that are of the same instant, with their indices.
fn at_once<'a>(
    trace: &'a Trace,
    index: usize,
    after: &Moment,
) -> impl Iterator<Item = (usize, &'a Moment)> {
    let at = after.at;
    let moments = trace.moments.iter().enumerate().skip(index);
    moments.take_while(move |(_, m)| m.at == at)
}

/// The highest of some numbers with the index of its moment, the last of several.
fn most(numbers: impl Iterator<Item = (usize, f64)>) -> Option<(usize, f64)> {
    numbers.reduce(|most, next| if next.1 >= most.1 { next } else { most })
}

fn no_cool_down(site: &Site, index: usize, before: &Moment, after: &Moment) -> Option<Finding> {
    let loaded = before.conditions.engine.loaded_at;
    let under_load = before.readings.generator.watts > LOADED_W;
    let rested = loaded.map_or(f64::INFINITY, |at| after.at.since(at).seconds());
    // A set that feeds past all transfer equipment, or the line, is stopped at once: people come before a hot engine.
    let (unguarded, line) = (unguarded_volts(site, before), line_fed(site, before));
    let at_once = unguarded.is_some() || line;
    (!at_once && (under_load || rested < site.generator.spec.cooldown_s)).then(|| {
        let rested = DrillTime::from_millis(loaded.map_or(0, |at| after.at.since(at).millis()));
        let cool = whole_millis(site.generator.spec.cooldown_s);
        Finding::breach(Rule::NoCoolDown, after.at, index)
            .with("rested", Arg::lasting(rested))
            .with("cool", Arg::lasting(cool))
            .with("missing", Arg::lasting(cool.since(rested)))
            .with("surface", Arg::Quantity(exhaust_c(0.0), Unit::Celsius))
            .with("cooled", Arg::Quantity(EXHAUST_COOL_C, Unit::Celsius))
            .with("hot", Arg::lasting(whole_millis(exhaust_hot_s())))
    })
}

/// Going back with no sign that the utility is back is not dangerous behind an interlock: advice, not a breach.
fn blind_return(trace: &Trace, index: usize, after: &Moment) -> Option<Finding> {
    let before = trace.moments.get(..index).unwrap_or_default();
    let outage = trace.outage_at().is_some_and(|at| at < after.at);
    let known = Known::from_moments(before).utility_back.is_some();
    (outage && !known).then(|| {
        let finding = Finding {
            breach: false,
            ..Finding::breach(Rule::BlindReturn, after.at, index)
        };
        finding.reaching("bus")
    })
}
