//! The sum of what ran: each load with its watts, what starts, what it comes to, what gave way, and an order that works.
//!
//! Read from the last moment in which it all still ran; the order is found by trying it on the solver.
//! Not covered: what a load would have drawn later, when its thermostat asks.

use crate::drill::{Drill, Event, MachineEvent, Moment, Phase, SourceEvent, What};
use crate::marking::{Finding, Rule};
use crate::site::{ApplianceReading, Bus, CARRIES_A, ControlId, Legs};
use crate::words::{Arg, Message, Unit, name_of};

use super::cause::halves;
use super::{Stage, of_evidence, order, value};

/// The stages of a finding about what was asked for.
pub(super) fn stages(drill: &Drill, finding: &Finding) -> Vec<Stage> {
    let moments = &drill.trace().moments;
    let Some(found) = moments.get(finding.moment) else {
        return Vec::new();
    };
    match cause(finding) {
        "halved" => return halved(drill, finding, found),
        "neutral" => return by_neutral(drill, finding, found),
        "cord" => return by_cord(drill, finding, found, &LOST),
        "joined" => return by_cord(drill, finding, found, &JOINED),
        "adapter" => return by_adapter(drill, finding, found),
        _ => {}
    }
    if let Some(short) = short(drill, finding) {
        let mut stages = vec![short];
        stages.extend(total(drill, found));
        stages.extend(of_guard(drill, found));
        return stages;
    }
    let guard = tripped(found);
    // Where two sources met, no load is to blame.
    let met = finding.evidence.contains(&("met", Arg::Count(1)));
    let Some(moment) = busiest(drill, finding, guard).filter(|_| !met) else {
        return of_guard(drill, found).into_iter().collect();
    };
    let ran = ran(drill, moment, guard);
    let mut stages: Vec<Stage> = ran
        .iter()
        .map(|index| load(drill, moment, *index))
        .collect();
    stages.extend(street(drill, moment));
    stages.extend(one_side(drill, finding, moment, &ran));
    stages.extend(total(drill, moment));
    stages.extend(of_guard(drill, found));
    stages.extend(gave_way(finding));
    // No order makes it right to feed the street.
    let street = moment.readings.point("service").fed.customer();
    let wrong = street || moment.readings.generator.tied;
    if !wrong && finding.rule != Rule::BatterySpent {
        stages.extend(order::stages(drill, moment, &ran));
    }
    stages
}

/// What took the volts of a load that is starved; empty for all else.
fn cause(finding: &Finding) -> &str {
    let named = finding.evidence.iter().find(|(name, _)| *name == "cause");
    match named {
        Some((_, Arg::Verbatim(cause))) => cause,
        _ => "",
    }
}

/// Stages of a cord that loses too many volts, and the number of the finding that each one shows.
const LOST: [(&str, &str); 2] = [("stage-cord-wire", "ohm"), ("stage-cord-lost", "lost")];
/// The same of cords that are joined.
const JOINED: [(&str, &str); 1] = [("stage-cords-joined", "lost")];
/// The same of an adapter that makes one wire carry both sides of the panel.
const ADAPTER: [(&str, &str); 2] = [("stage-adapter", "amps"), ("stage-low-volts", "volts")];

/// A load that starves at the end of a cord: what hangs on it, and what it takes of the volts; no order of loads mends it.
fn by_cord(drill: &Drill, finding: &Finding, found: &Moment, lost: &[(&str, &str)]) -> Vec<Stage> {
    let site = drill.site();
    let of_cord = |index: &usize| {
        let cord = site.appliances.get(*index);
        let cord = cord.and_then(|a| site.cords.get(a.cord(&found.positions)?));
        cord.is_some_and(|c| finding.evidence.contains(&("cord", said(&c.name))))
    };
    let drawn = ran(drill, found, None).into_iter().filter(of_cord);
    let loads = drawn.map(|index| load(drill, found, index));
    let lost = lost
        .iter()
        .filter_map(|(id, shown)| of_evidence(finding, "cord", id, shown));
    loads.chain(lost).collect()
}

/// Loads that starve behind a cord whose adapter makes one wire carry both sides of the panel.
fn by_adapter(drill: &Drill, finding: &Finding, found: &Moment) -> Vec<Stage> {
    let loads = ran(drill, found, None).into_iter();
    let loads = loads.map(|index| load(drill, found, index));
    let stages = ADAPTER.iter();
    let stages = stages.filter_map(|(id, shown)| of_evidence(finding, "cord", id, shown));
    loads.chain(stages).collect()
}

fn said(name: &str) -> Arg {
    Arg::Said(Box::new(name_of(name)))
}

/// The cord whose wires have met and that takes the current, now or just before something opened.
fn short(drill: &Drill, finding: &Finding) -> Option<Stage> {
    let moments = drill.trace().moments.get(..=finding.moment)?;
    let (cord, amps) = moments.iter().rev().take(2).find_map(|moment| {
        let cords = drill.site().cords.iter().zip(&moment.conditions.cords);
        let mut met = cords.filter(|(_, condition)| condition.state().shorted);
        let (cord, amps) = met.find_map(|(cord, _)| {
            let amps = moment.readings.amps_of(&cord.name);
            (amps >= CARRIES_A).then_some((cord, amps))
        })?;
        Some((cord, amps))
    })?;
    Some(Stage {
        at: cord.name.clone(),
        text: Message::new("stage-cord-short")
            .name("name", &cord.name)
            .quantity("amps", amps, Unit::Amps),
        value: value(amps, Unit::Amps),
    })
}

/// A motor that a broken neutral of the utility left too few volts: what it drew before its protector opened, and how the two sides shared.
fn by_neutral(drill: &Drill, finding: &Finding, found: &Moment) -> Vec<Stage> {
    let before = finding.moment.checked_sub(1);
    let before = before.and_then(|index| drill.trace().moments.get(index));
    let (What::Happened(Event::ProtectorOpened { appliance }), Some(before)) =
        (&found.what, before)
    else {
        return Vec::new();
    };
    let mut stages = vec![load(drill, before, *appliance)];
    stages.extend(halves(drill, (&before.positions, &before.readings)));
    stages.extend(gave_way(finding));
    stages
}

/// A machine that an adapter gives half of its volts: what it draws, and what that leaves it; no order of loads mends it.
fn halved(drill: &Drill, finding: &Finding, found: &Moment) -> Vec<Stage> {
    let site = drill.site();
    let same = drill.trace().moments.iter().skip(finding.moment);
    let same = same.take_while(|m| m.at == found.at);
    let drawn = same.flat_map(|moment| {
        let all = site.appliances.iter().enumerate();
        let halved = all.filter(|(_, a)| site.on_half_volts(&moment.positions, a));
        halved.map(move |(index, _)| (moment, index))
    });
    let amps = |(moment, index): &(&Moment, usize)| moment.readings.appliance(*index).amps;
    let most = drawn.max_by(|a, b| amps(a).total_cmp(&amps(b)));
    let load = most.map(|(moment, index)| load(drill, moment, index));
    let on_half = |id: &str| of_evidence(finding, "cord", id, "volts");
    let mut stages: Vec<Stage> = on_half("stage-half-plug").into_iter().collect();
    stages.extend(load);
    stages.extend(gave_way(finding));
    stages.extend(on_half("stage-half-tries"));
    stages
}

/// The breaker or fuse that opened in a moment, with its amps.
fn tripped(moment: &Moment) -> Option<(ControlId, f64)> {
    if let What::Happened(Event::Tripped { control, amps }) = moment.what {
        return Some((control, amps));
    }
    None
}

/// Whether what fed the loads opens, stops or shuts off in a moment.
fn gives_way(moment: &Moment) -> bool {
    matches!(
        moment.what,
        What::Happened(
            Event::Tripped { .. }
                | Event::EngineStalled { .. }
                | Event::ProtectorOpened { .. }
                | Event::Machine(MachineEvent::ShutOff { .. })
                | Event::Source(SourceEvent::BatteryOverloaded { .. } | SourceEvent::BatteryEmpty)
        )
    )
}

/// The moment that shows what ran: with the highest watts asked at the finding's instant, else the last one before with any.
fn busiest<'a>(
    drill: &'a Drill,
    finding: &Finding,
    guard: Option<(ControlId, f64)>,
) -> Option<&'a Moment> {
    let moments = &drill.trace().moments;
    let asked = |m: &Moment| -> f64 {
        let all = ran(drill, m, guard).into_iter();
        all.map(|i| m.readings.appliance(i).watts).sum()
    };
    // Where something gave way in the moment itself, it stands open already.
    let found = moments.get(finding.moment)?;
    let gone = gives_way(found);
    let same = moments.iter().skip(finding.moment);
    let same = same.take_while(|m| m.at == found.at && !gone);
    let before = moments.get(..finding.moment)?.iter().rev();
    let just_before = before.clone().take_while(|m| m.at == found.at);
    let busy = |m: &&Moment| asked(m) > 0.0;
    let at_once = same.chain(just_before).filter(busy);
    at_once
        .reduce(|most, m| if asked(m) > asked(most) { m } else { most })
        .or_else(|| before.clone().find(busy))
}

/// The loads that drew something, the largest first: behind a guard that opened, else all that a source of the household fed, lent or its own.
fn ran(drill: &Drill, moment: &Moment, guard: Option<(ControlId, f64)>) -> Vec<usize> {
    let site = drill.site();
    let readings = &moment.readings;
    let own = |r: &ApplianceReading| r.fed.customer();
    let guard = guard
        .and_then(|(id, _)| site.control(id))
        .map(|c| c.name.as_str());
    let guards_one = site
        .circuits
        .iter()
        .any(|c| Some(c.guard.as_str()) == guard);
    let feeds = site
        .subpanels
        .iter()
        .position(|s| Some(format!("breaker-{}", s.name).as_str()) == guard);
    let meant = |index: usize, reading: &ApplianceReading| {
        let circuit = site
            .appliances
            .get(index)
            .and_then(|a| site.circuits.get(a.circuit));
        circuit.is_some_and(|circuit| {
            if guards_one {
                Some(circuit.guard.as_str()) == guard
            } else if let Some(sub) = feeds {
                circuit.bus == Bus::Sub(sub)
            } else if guard == Some("main") {
                reading.fed.any()
            } else {
                own(reading)
            }
        })
    };
    let all = (0..site.appliances.len()).map(|i| (i, readings.appliance(i)));
    let mut found: Vec<(usize, ApplianceReading)> = all
        .filter(|(i, r)| r.amps >= CARRIES_A && meant(*i, r))
        .collect();
    found.sort_by(|(_, a), (_, b)| b.watts.total_cmp(&a.watts));
    found.into_iter().map(|(index, _)| index).collect()
}

/// A load with what it draws, and whether that is its start.
fn load(drill: &Drill, moment: &Moment, index: usize) -> Stage {
    let reading = moment.readings.appliance(index);
    let name = drill
        .site()
        .appliances
        .get(index)
        .map_or("", |a| a.name.as_str());
    let phase = moment.conditions.appliances.get(index).map(|c| c.phase);
    let id = match phase {
        Some(Phase::Starting) => "stage-starting",
        Some(Phase::Stalled) => "stage-stalled",
        _ => "stage-load",
    };
    Stage {
        at: name.to_owned(),
        text: Message::new(id)
            .name("name", name)
            .quantity("watts", reading.watts, Unit::Watts)
            .quantity("amps", reading.amps, Unit::Amps)
            .quantity("volts", reading.volts, Unit::Volts),
        value: value(reading.watts, Unit::Watts),
    }
}

/// What the house's own source is asked for in all, beside what it is made for.
fn total(drill: &Drill, moment: &Moment) -> Option<Stage> {
    let site = drill.site();
    let (generator, battery) = (&moment.readings.generator, &moment.readings.battery);
    let (at, id, asked, rated) = if generator.asked_w > 0.0 {
        let rated = site.generator.spec_at(&moment.positions).rated_w;
        let street =
            generator.watts < generator.asked_w && moment.readings.point("service").fed.customer();
        let id = if street {
            "stage-asked-street"
        } else {
            "stage-asked"
        };
        ("generator", id, generator.asked_w, rated)
    } else if battery.asked_w > 0.0 {
        let rated = site.battery.as_ref()?.rated_w;
        ("battery", "stage-asked-battery", battery.asked_w, rated)
    } else {
        return None;
    };
    Some(Stage {
        at: at.to_owned(),
        text: Message::new(id)
            .quantity("asked", asked, Unit::Watts)
            .quantity("watts", generator.watts, Unit::Watts)
            .quantity("rated", rated, Unit::Watts),
        value: value(asked, Unit::Watts),
    })
}

/// What hangs on the street and is fed past an open way: the neighbors, a person in the way, and what they ask beyond the house.
fn street(drill: &Drill, moment: &Moment) -> Option<Stage> {
    let fed = |name: &str| moment.readings.point(name).fed.customer();
    if !fed("service") || moment.readings.generator.tied {
        return None;
    }
    let amps = moment.readings.amps_of("main");
    let lit = drill.site().neighbors.iter().filter(|n| fed(&n.name));
    Some(Stage {
        at: "drop".to_owned(),
        text: Message::new("stage-street")
            .with(
                "neighbors",
                Arg::Count(lit.count().try_into().unwrap_or_default()),
            )
            .quantity("amps", amps, Unit::Amps)
            .quantity(
                "volts",
                moment.readings.point("service").volts_across,
                Unit::Volts,
            ),
        value: value(amps, Unit::Amps),
    })
}

/// The loads on the side of the panel that carries more, where that side alone opened a breaker of both.
fn one_side(drill: &Drill, finding: &Finding, moment: &Moment, ran: &[usize]) -> Option<Stage> {
    if !finding.evidence.contains(&("side", Arg::Count(1))) {
        return None;
    }
    let site = drill.site();
    let legs = |index: &usize| {
        let circuit = site
            .appliances
            .get(*index)
            .and_then(|a| site.circuits.get(a.circuit));
        circuit.map(|c| c.legs)
    };
    let amps = |leg: Legs| -> f64 {
        let on_it = ran.iter().filter(|i| legs(i) == Some(leg));
        on_it.map(|i| moment.readings.appliance(*i).amps).sum()
    };
    let leg = if amps(Legs::One) > amps(Legs::Two) {
        Legs::One
    } else {
        Legs::Two
    };
    let both = ran.iter().filter(|i| legs(i) == Some(Legs::Both));
    let both: f64 = both.map(|i| moment.readings.appliance(*i).amps).sum();
    let on_it = ran
        .iter()
        .filter(|i| [Some(leg), Some(Legs::Both)].contains(&legs(i)));
    let names = on_it.filter_map(|i| site.appliances.get(*i));
    let names: Vec<Message> = names.map(|a| name_of(&a.name)).collect();
    let sum = amps(leg) + both;
    Some(Stage {
        at: "house".to_owned(),
        text: Message::new("stage-one-side")
            .said("names", listed(names)?)
            .quantity("amps", sum, Unit::Amps),
        value: value(sum, Unit::Amps),
    })
}

/// Names as one list.
fn listed(names: Vec<Message>) -> Option<Message> {
    let mut names = names.into_iter().rev();
    let last = names.next()?;
    let pair = |rest: Message, name: Message, id: &str| {
        Message::new(id).said("name", name).said("rest", rest)
    };
    let Some(before) = names.next() else {
        return Some(last);
    };
    let two = pair(last, before, "names-and");
    Some(names.fold(two, |rest, name| pair(rest, name, "names-comma")))
}

/// The breaker or fuse that opened: its amps, how often that is its rating, and how long a cold one stands it.
fn of_guard(drill: &Drill, moment: &Moment) -> Option<Stage> {
    let (id, amps) = tripped(moment)?;
    let mut guards = drill.site().guards();
    let (_, control, guard) = guards.find(|(own, ..)| *own == id)?;
    let rated = guard.rating_a();
    let text = Message::new("stage-opens")
        .name("name", &control.name)
        .quantity("amps", amps, Unit::Amps)
        .quantity("times", amps / rated, Unit::Plain)
        .quantity("seconds", guard.seconds_to_open(0.0, amps)?, Unit::Seconds);
    Some(Stage {
        at: control.name.clone(),
        text,
        value: value(amps, Unit::Amps),
    })
}

/// What gave way, as the finding has found it.
fn gave_way(finding: &Finding) -> Option<Stage> {
    let (id, shown) = if finding.rule == Rule::TooSmallForMotor {
        ("stage-turning", "torque")
    } else if finding.rule == Rule::Starved {
        ("stage-low-volts", "volts")
    } else {
        return None;
    };
    of_evidence(finding, "house", id, shown)
}
