//! The sum of what ran: each load with its watts, what starts, what it comes to, what gave way, and an order that works.
//!
//! Read from the last moment in which it all still ran; the order is found by trying it on the solver.
//! Not covered: what a load would have drawn later, when its thermostat asks.

use crate::drill::{Drill, Event, Moment, Phase, What};
use crate::marking::{Finding, Rule};
use crate::site::{ApplianceReading, Bus, CARRIES_A, ControlId, Legs};
use crate::units::DrillTime;
use crate::words::{Arg, Message, Unit, name_of};

use super::cause::halves;
use super::way::volts_at;
use super::{Stage, of_evidence, order, value};

/// The stages of a finding about what was asked for, and their heading, with their moment where it is not the finding's.
pub(super) fn stages(drill: &Drill, finding: &Finding) -> (Message, Vec<Stage>) {
    let second = |at: DrillTime| at.millis() / 1000;
    let headed = |at: DrillTime| {
        if second(at) == second(finding.at) {
            Message::new("told-sum")
        } else {
            Message::new("told-sum-at").with("at", Arg::Clock(at))
        }
    };
    let Some(found) = drill.trace().moments.get(finding.moment) else {
        return (headed(finding.at), Vec::new());
    };
    let stages = match cause(finding) {
        "halved" => halved(drill, finding, found),
        "neutral" => by_neutral(drill, finding, found),
        "cord" => by_cord(drill, finding, found, &LOST),
        "joined" => by_cord(drill, finding, found, &JOINED),
        "adapter" => by_adapter(drill, finding, found),
        _ => {
            let Some(short) = short(drill, finding) else {
                let (at, stages) = of_loads(drill, finding, found);
                return (headed(at), stages);
            };
            // A short that drags the volts down asks for few watts: only where they are too many are they told.
            let asked = total(drill, found).filter(|_| finding.rule == Rule::Overload);
            let ends = asked.into_iter().chain(of_guard(drill, found));
            [short].into_iter().chain(ends).collect()
        }
    };
    (headed(found.at), stages)
}

/// What ran and what it came to, and the time that this shows.
fn of_loads(drill: &Drill, finding: &Finding, found: &Moment) -> (DrillTime, Vec<Stage>) {
    let guard = tripped(found);
    // Where two sources met, no load is to blame.
    let met = finding.evidence.contains(&("met", Arg::Count(1)));
    let Some(moment) = busiest(drill, finding, guard).filter(|_| !met) else {
        return (found.at, of_guard(drill, found).into_iter().collect());
    };
    let ran = ran(drill, moment, guard);
    let shown = on_one_side(drill, finding, moment, ran.clone());
    let mut stages: Vec<Stage> = shown
        .iter()
        .map(|index| load(drill, moment, *index))
        .collect();
    stages.extend(borrowed(moment, &shown));
    stages.extend(street(drill, moment));
    if of_one_side(finding) {
        stages.extend(one_side(drill, moment, guard, &shown));
    } else {
        stages.extend(on_the_way(moment, &ran));
        stages.extend(total(drill, moment));
    }
    stages.extend(of_guard(drill, found));
    stages.extend(gave_way(finding));
    // No order makes it right to feed the street.
    let street = moment.readings.point("service").fed.customer();
    let wrong = street || moment.readings.generator.tied;
    if !wrong && finding.rule != Rule::BatterySpent {
        stages.extend(order::stages(drill, moment, &ran));
    }
    (moment.at, stages)
}

/// Watts for each volt and amp below which a load borrows current and gives it back.
const BORROWS: f64 = 0.95;

/// Why amps times volts are more than the watts of a motor, said once where one is among the loads.
fn borrowed(moment: &Moment, ran: &[usize]) -> Option<Stage> {
    let readings = ran.iter().map(|index| moment.readings.appliance(*index));
    let borrows = |r: &ApplianceReading| r.watts < BORROWS * r.amps * r.volts;
    let most = readings.filter(borrows).map(|r| r.amps).reduce(f64::max)?;
    Some(Stage {
        at: "house".to_owned(),
        text: Message::new("stage-borrowed"),
        value: value(most, Unit::Amps),
    })
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
    let ran = ran(drill, found, None);
    let loads = ran.iter().map(|index| load(drill, found, *index));
    let stages = ADAPTER.iter();
    let stages = stages.filter_map(|(id, shown)| of_evidence(finding, "cord", id, shown));
    loads.chain(borrowed(found, &ran)).chain(stages).collect()
}

fn said(name: &str) -> Arg {
    Arg::Said(Box::new(name_of(name)))
}

/// The cord whose wires have met and that takes the current, now or just before something opened.
fn short(drill: &Drill, finding: &Finding) -> Option<Stage> {
    let moments = drill.trace().moments.get(..=finding.moment)?;
    let (cord, amps, volts) = moments.iter().rev().take(2).find_map(|moment| {
        let cords = drill.site().cords.iter().zip(&moment.conditions.cords);
        let mut met = cords.filter(|(_, condition)| condition.state().shorted);
        met.find_map(|(cord, _)| {
            let amps = moment.readings.amps_of(&cord.name);
            let volts = volts_at(&moment.readings, &format!("{}-near-end", cord.name));
            (amps >= CARRIES_A).then_some((cord, amps, volts))
        })
    })?;
    Some(Stage {
        at: cord.name.clone(),
        text: Message::new("stage-cord-short")
            .name("name", &cord.name)
            .quantity("amps", amps, Unit::Amps)
            .quantity("volts", volts, Unit::Volts),
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
    let load = most.map(|(moment, index)| {
        let told = load(drill, moment, index);
        [Some(told), borrowed(moment, &[index])]
    });
    let on_half = |id: &str| of_evidence(finding, "cord", id, "volts");
    let mut stages: Vec<Stage> = on_half("stage-half-plug").into_iter().collect();
    stages.extend(load.into_iter().flatten().flatten());
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

/// The moment that shows what ran: the finding's own, or where something gave way in it, the last one before.
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
    let found = moments.get(finding.moment)?;
    let busy = |m: &&Moment| asked(m) > 0.0;
    // Where something gave way in the moment itself, it stands open already.
    let gone = matches!(&found.what, What::Happened(event) if event.gives_way());
    let own = Some(found).filter(|m| !gone && busy(m));
    own.or_else(|| moments.get(..finding.moment)?.iter().rev().find(busy))
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

/// Share of what is asked below which a source is held down by it.
const HELD_DOWN: f64 = 0.99;

/// Share of what a set delivers from which it is told what the wires on the way take.
const WORTH_TELLING: f64 = 0.01;

/// What the wires between a set and all that it feeds turn into heat, where nothing else feeds or takes anything.
fn on_the_way(moment: &Moment, ran: &[usize]) -> Option<Stage> {
    let readings = &moment.readings;
    let appliances = readings.appliances.iter();
    let fed = appliances.filter(|r| r.fed.customer() && r.amps >= CARRIES_A);
    let others = readings.battery.watts != 0.0 || readings.solar_w != 0.0;
    let street = readings.point("service").fed.customer() || readings.generator.tied;
    if others || street || fed.count() != ran.len() {
        return None;
    }
    let delivered = readings.generator.watts;
    let used: f64 = ran.iter().map(|i| readings.appliance(*i).watts).sum();
    let lost = delivered - used;
    (lost > WORTH_TELLING * delivered).then(|| Stage {
        at: "house".to_owned(),
        text: Message::new("stage-on-the-way").quantity("watts", lost, Unit::Watts),
        value: value(lost, Unit::Watts),
    })
}

/// What the house's own source is asked for in all, beside what it is made for; where it is held down, beside what it delivers too.
fn total(drill: &Drill, moment: &Moment) -> Option<Stage> {
    let site = drill.site();
    let (generator, battery) = (&moment.readings.generator, &moment.readings.battery);
    let (at, asked, watts, rated) = if generator.asked_w > 0.0 {
        let rated = site.generator.spec_at(&moment.positions).rated_w;
        ("generator", generator.asked_w, generator.watts, rated)
    } else if battery.asked_w > 0.0 {
        let rated = site.battery.as_ref()?.rated_w;
        ("battery", battery.asked_w, battery.watts, rated)
    } else {
        return None;
    };
    let surge = site.generator.spec_at(&moment.positions).surge_w;
    let street = moment.readings.point("service").fed.customer();
    let id = match (at, watts < HELD_DOWN * asked) {
        ("generator", true) if street => "stage-asked-street",
        ("generator", true) => "stage-asked-low",
        ("generator", false) if (rated..surge).contains(&asked) => "stage-asked-surge",
        ("generator", false) => "stage-asked",
        (_, true) => "stage-asked-battery-low",
        (_, false) => "stage-asked-battery",
    };
    Some(Stage {
        at: at.to_owned(),
        text: Message::new(id)
            .quantity("asked", asked, Unit::Watts)
            .quantity("watts", watts, Unit::Watts)
            .quantity("rated", rated, Unit::Watts)
            .quantity("surge", surge, Unit::Watts),
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

/// Of what ran, the loads on the side of the panel that carries more, where that side alone opened a breaker of both; else all.
fn on_one_side(drill: &Drill, finding: &Finding, moment: &Moment, ran: Vec<usize>) -> Vec<usize> {
    if !of_one_side(finding) {
        return ran;
    }
    let site = drill.site();
    let legs = |index: usize| {
        let circuit = site.appliances.get(index).map(|a| a.circuit);
        circuit.and_then(|c| site.circuits.get(c)).map(|c| c.legs)
    };
    let amps = |leg: Legs| -> f64 {
        let on_it = ran.iter().filter(|i| legs(**i) == Some(leg));
        on_it.map(|i| moment.readings.appliance(*i).amps).sum()
    };
    let leg = if amps(Legs::One) > amps(Legs::Two) {
        Legs::One
    } else {
        Legs::Two
    };
    let counts = |i: &usize| [Some(leg), Some(Legs::Both)].contains(&legs(*i));
    ran.into_iter().filter(counts).collect()
}

/// Whether one side of the panel alone opened a breaker of both.
fn of_one_side(finding: &Finding) -> bool {
    finding.evidence.contains(&("side", Arg::Count(1)))
}

/// Share of the plain sum of amps below which it is told why they come to less together.
const OUT_OF_STEP: f64 = 0.995;

/// What the loads of one side put through the breaker that they opened.
fn one_side(
    drill: &Drill,
    moment: &Moment,
    guard: Option<(ControlId, f64)>,
    on_it: &[usize],
) -> Option<Stage> {
    let (id, amps) = guard?;
    let control = drill.site().control(id)?;
    let plain: f64 = on_it
        .iter()
        .map(|i| moment.readings.appliance(*i).amps)
        .sum();
    let less = i64::from(amps < OUT_OF_STEP * plain);
    Some(Stage {
        at: "house".to_owned(),
        text: Message::new("stage-one-side")
            .name("name", &control.name)
            .quantity("amps", amps, Unit::Amps)
            .with("less", Arg::Count(less)),
        value: value(amps, Unit::Amps),
    })
}

/// Names as one list.
pub(super) fn listed(names: Vec<Message>) -> Option<Message> {
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
