//! Cords: none gets hotter than it is made for, none burns, and each is fit for what it does.
//!
//! Sources: NEC Table 400.5(A)(1) for what a cord may carry; NEC Table 400.4, letter W, for use outdoors; OSHA 3277 for undamaged, grounded cords laid out flat (checked); CPSC on coils, rugs and joined cords (checked in part).
//! A hot cord is told with its whole chain: gauge, ohms, volts lost, watts, how long, the limit, and the cord that would do.
//! Not covered: cords on the utility alone, which no rule here looks at.

use std::cmp::Ordering;

use crate::apparatus::conductor::Awg;
use crate::apparatus::connection::{Contact, SCORCHED_C};
use crate::apparatus::cord_choice::{Need, TOTAL_DROP, cord_that_would_do, delivery};
use crate::apparatus::cord_damage::Damage;
use crate::apparatus::cord_lay::Lay;
use crate::apparatus::cord_letters::Service;
use crate::drill::{Event, Fate, Moment, Phase, Trace, What};
use crate::scenario::Scenario;
use crate::site::{CARRIES_A, Cord, FarEnd, Rest, Site, Spot};
use crate::units::DrillTime;
use crate::words::{Arg, Unit, name_of};

use super::episode::{Episode, episodes};
use super::finding::{Finding, Harm, Rule};

/// Amps from which a cord counts as in use.
const LEAST_A: f64 = 0.05;

pub(super) fn findings(scenario: &Scenario, trace: &Trace) -> Vec<Finding> {
    let site = &scenario.site;
    let mut found = Vec::new();
    for (index, moment) in trace.moments.iter().enumerate() {
        if let What::Happened(event) = &moment.what {
            found.extend(of_event(site, trace, index, moment, event));
        }
    }
    for (index, cord) in site.cords.iter().enumerate() {
        let hot = |m: &Moment| m.conditions.cord(index).hottest_c() > cord.make.rated_c();
        for episode in episodes(trace, hot) {
            found.push(too_hot(site, trace, &episode, cord, index));
        }
        found.extend(unfit(trace, cord, index));
    }
    found
}

fn of_event(
    site: &Site,
    trace: &Trace,
    index: usize,
    moment: &Moment,
    event: &Event,
) -> Option<Finding> {
    if let Event::CordFire {
        cord: which,
        celsius,
    } = event
    {
        let cord = site.cords.get(*which)?;
        let before = trace.moments.get(..index).unwrap_or_default();
        let hot = |m: &&Moment| m.conditions.cord(*which).hottest_c() > cord.make.rated_c();
        let since = before.iter().rev().take_while(hot).last();
        let lasted = moment.at.since(since.map_or(moment.at, |m| m.at));
        let finding = Finding::breach(Rule::CordFire, moment.at, index)
            .with("reached", Arg::Quantity(*celsius, Unit::Celsius))
            .with("lasted", Arg::lasting(lasted));
        return Some(with_chain(finding, site, cord, *which, before));
    }
    let Event::PlugScorched { cord, celsius } = event else {
        return None;
    };
    let which = *cord;
    let cord = site.cords.get(which)?;
    let amps = moment.readings.amps_of(&cord.name);
    let plug = cord.found.plug;
    let loaded = |m: &Moment| m.readings.amps_of(&cord.name) >= CARRIES_A;
    let from = since(trace, index, &loaded).unwrap_or(moment);
    Some(
        Finding::breach(Rule::PlugHot, moment.at, index)
            .with("cord", said(&cord.name))
            .with("outlet", said(outlet(site, moment, cord)))
            .with(
                "start",
                Arg::Quantity(from.conditions.cord(which).plug_c, Unit::Celsius),
            )
            .with("time", Arg::lasting(moment.at.since(from.at)))
            .with("reached", Arg::Quantity(*celsius, Unit::Celsius))
            .with("limit", Arg::Quantity(SCORCHED_C, Unit::Celsius))
            .with("ohm", Arg::Quantity(2.0 * plug.contact_ohm(), Unit::Ohms))
            .with("amps", Arg::Quantity(amps, Unit::Amps))
            .with("heat", Arg::Quantity(plug.heat_w(amps), Unit::Watts)),
    )
}

/// The outlet that a cord's plug is in, as people call it.
fn outlet<'a>(site: &'a Site, moment: &Moment, cord: &Cord) -> &'a str {
    let position = site.position_name(&moment.positions, cord.near);
    site.control(cord.near)
        .map_or(position, |control| control.said(position))
}

/// The moment from which something has held without a break up to the one at `index`.
pub(super) fn since<'a>(
    trace: &'a Trace,
    index: usize,
    holds: &dyn Fn(&Moment) -> bool,
) -> Option<&'a Moment> {
    let before = trace.moments.get(..index)?.iter().rev();
    before.take_while(|m| holds(m)).last()
}

/// A cord that is too hot, with its chain.
fn too_hot(site: &Site, trace: &Trace, episode: &Episode, cord: &Cord, index: usize) -> Finding {
    let moments = episode.moments(trace);
    let hottest = |m: &Moment| m.conditions.cord(index).hottest_c();
    let peak = trace.moments.get(episode.most(trace, hottest));
    let reached = peak.map_or(0.0, hottest);
    let apart = |m: &&Moment| m.conditions.cord(index).harm.fate == Fate::Whole;
    let whole = moments.iter().filter(apart).map(hottest);
    let whole = whole.fold(0.0, f64::max);
    let finding = Finding {
        lasted: episode.length(),
        ..Finding::breach(Rule::CordHot, episode.from, episode.first)
    }
    .with("whole", Arg::Quantity(whole, Unit::Celsius))
    .with(
        "shorted",
        Arg::Count(i64::from(!moments.iter().all(|m| apart(&m)))),
    )
    .with("reached", Arg::Quantity(reached, Unit::Celsius))
    .with("when", Arg::Clock(peak.map_or(episode.from, |m| m.at)))
    .with("lasted", Arg::lasting(episode.length()));
    let after = trace.moments.iter().skip(episode.first);
    let ruined = after.map(|m| m.conditions.cord(index).harm);
    let ruined = ruined.into_iter().any(|h| h.soft || h.fate > Fate::Whole);
    with_chain(finding, site, cord, index, moments).with("ruined", Arg::Count(i64::from(ruined)))
}

/// The chain of a cord, at the hottest of these moments with current and conductors apart.
fn with_chain(
    finding: Finding,
    site: &Site,
    cord: &Cord,
    index: usize,
    moments: &[Moment],
) -> Finding {
    let hottest = |m: &Moment| m.conditions.cord(index).hottest_c();
    let amps_at = |m: &Moment| m.readings.amps_of(&cord.name);
    let whole = |m: &&Moment| m.conditions.cord(index).harm.fate == Fate::Whole;
    let peak = moments
        .iter()
        .filter(|m| whole(m) && amps_at(m) > LEAST_A)
        .reduce(|a, b| if hottest(b) > hottest(a) { b } else { a });
    let finding = finding.with("rated", Arg::Quantity(cord.make.rated_c(), Unit::Celsius));
    let Some(peak) = peak.or(moments.first()) else {
        return finding;
    };
    let far_v = end_volts(peak, cord, "far-end");
    lost_on_the_way(finding, site, peak, &[index]).with("volts", Arg::Quantity(far_v, Unit::Volts))
}

/// What a cord loses in a moment, from its gauge to the watts it turns into heat, and the cord that would do laid out flat.
/// Of cords that are joined, by index and the load's own first, it is what they lose together, and one cord that would do for all of their length.
pub(super) fn lost_on_the_way(
    finding: Finding,
    site: &Site,
    moment: &Moment,
    joined: &[usize],
) -> Finding {
    let cords: Vec<&Cord> = joined.iter().filter_map(|i| site.cords.get(*i)).collect();
    let (Some(cord), Some(first)) = (cords.first(), cords.last()) else {
        return finding;
    };
    let amps = moment.readings.amps_of(&cord.name);
    let near_v = end_volts(moment, first, "near-end");
    let lost = (near_v - end_volts(moment, cord, "far-end")).max(0.0);
    let length_ft = cords.iter().map(|c| c.make.length_ft()).sum();
    let need = Need {
        amps,
        volts: near_v,
        length_ft,
        loaded: cord.make.loaded(),
        ambient_c: cord.air_c(site.ambient_c),
        drop: TOTAL_DROP,
    };
    let own = |does: Awg| cords.len() == 1 && does == cord.make.awg();
    let does = match cord_that_would_do(cord.make.kind(), &need) {
        Some(does) if own(does.awg) => Arg::Verbatim("same".to_owned()),
        Some(does) => awg(does.awg),
        None => Arg::Verbatim("none".to_owned()),
    };
    // A bad plug takes volts as well, and heats itself and not the cord.
    let plugs = cords.iter().map(|c| c.found.plug);
    let bad = plugs.filter(|p| p.contact != Contact::Sound);
    let plugs_ohm: f64 = bad.map(|p| 2.0 * p.contact_ohm()).sum();
    let ohm = if amps > 0.0 {
        (lost / amps - plugs_ohm).max(0.0)
    } else {
        0.0
    };
    // A wire that stands the amps and still loses too much is too long: the length at which it would have kept the volts.
    let most_lost = need.drop * near_v;
    let alone = cords.len() == 1 && plugs_ohm <= 0.0 && does != Arg::Verbatim("same".to_owned());
    let long = alone && amps <= cord.make.ampacity_a() && lost > most_lost;
    // Laid out flat, as it is to be laid: a cord that lies hot loses more.
    let flat = delivery(&cord.make, amps, near_v, need.ambient_c, Lay::Straight);
    let would_do = whole_ft(length_ft * most_lost / flat.lost_v.max(most_lost));
    let finding = finding
        .with("flat", Arg::Quantity(near_v - flat.lost_v, Unit::Volts))
        .with("drop", Arg::Quantity(100.0 * need.drop, Unit::Percent))
        .with("long", Arg::Count(i64::from(long)))
        .with("would", Arg::Quantity(would_do, Unit::Feet))
        .with("cord", said(&cord.name))
        .with("first", said(&first.name))
        .with("gauge", awg(cord.make.awg()))
        .with("length", Arg::Quantity(length_ft, Unit::Feet))
        .with("lies", said(cord.rest(&moment.positions).name()))
        .with("ohm", Arg::Quantity(ohm, Unit::Ohms))
        .with("amps", Arg::Quantity(amps, Unit::Amps))
        .with("near", Arg::Quantity(near_v, Unit::Volts))
        .with("lost", Arg::Quantity(lost, Unit::Volts))
        .with("heat", Arg::Quantity(ohm * amps * amps, Unit::Watts))
        .with("plug", Arg::Quantity(plugs_ohm * amps, Unit::Volts))
        .with("bad", Arg::Count(i64::from(plugs_ohm > 0.0)))
        .with("carries", Arg::Quantity(cord.make.ampacity_a(), Unit::Amps))
        .with("basis", Arg::Verbatim(basis(cord, moment, amps).to_owned()))
        .with("does", does);
    let other = if cords.len() == 1 {
        spare(site, moment, cord, &need)
    } else {
        None
    };
    let finding = finding.with("has", Arg::Count(i64::from(other.is_some())));
    match other {
        Some(other) => finding
            .with("fit", said(&other.name))
            .with("fit-gauge", awg(other.make.awg())),
        None => finding,
    }
}

/// Feet in fives, rounded down, as nobody cuts a cord to the inch.
fn whole_ft(feet: f64) -> f64 {
    (feet / 5.0).floor() * 5.0
}

/// A cord of this site that would do in place of another: sound, grounded, for outdoors, heavy enough as long as it is.
/// One that lies unused comes first, then the one that loses least.
fn spare<'a>(site: &'a Site, moment: &Moment, instead_of: &Cord, need: &Need) -> Option<&'a Cord> {
    let sound = |c: &&Cord| {
        let whole = c.is_fit() && c.found.plug.contact == Contact::Sound;
        let other = c.legs == instead_of.legs && c.name != instead_of.name;
        whole && other && c.far == FarEnd::Connector
    };
    let does = site.cords.iter().filter(sound).filter_map(|c| {
        let got = delivery(
            &c.make,
            need.amps,
            need.volts,
            need.ambient_c,
            Lay::Straight,
        );
        let carries = got.ampacity_a >= need.amps && got.settles_c <= c.make.rated_c();
        let used = c.near_spot(&moment.positions) != Spot::Stowed;
        (carries && got.lost <= need.drop).then_some((used, got.lost, c))
    });
    let best = does.min_by(|a, b| {
        (a.0, a.1)
            .partial_cmp(&(b.0, b.1))
            .unwrap_or(Ordering::Equal)
    });
    best.map(|(.., cord)| cord)
}

/// Why a cord gets hot: too thin for its load, no way for its heat to leave, a damaged place, or the heat around it.
fn basis(cord: &Cord, moment: &Moment, amps: f64) -> &'static str {
    if amps > cord.make.ampacity_a() {
        return "thin";
    }
    match cord.rest(&moment.positions) {
        Rest::Coiled | Rest::HalfCoiled | Rest::UnderRug | Rest::Bundled => "lay",
        Rest::Flat | Rest::InPuddle if cord.found.damage != Damage::Sound => "damage",
        Rest::Flat | Rest::InPuddle => "air",
    }
}

/// What a cord in use isn't made for: one finding a fault, from its first use to its last.
fn unfit(trace: &Trace, cord: &Cord, index: usize) -> Vec<Finding> {
    let used = |m: &Moment| in_use(m, cord);
    let joined = |m: &Moment| {
        matches!(cord.near_spot(&m.positions), Spot::CordEnd(_) | Spot::Lent) && in_use(m, cord)
    };
    let never = |_: &Moment| false;
    let wet = |m: &Moment| cord.rest(&m.positions) == Rest::InPuddle && in_use(m, cord);
    let faults: [(&str, bool, &dyn Fn(&Moment) -> bool); 5] = [
        (
            "indoor",
            true,
            if cord.make.kind().outdoor {
                &never
            } else {
                &used
            },
        ),
        (
            "no-ground",
            true,
            if cord.grounded { &never } else { &used },
        ),
        (
            "damaged",
            true,
            if cord.found.damage == Damage::Sound {
                &never
            } else {
                &used
            },
        ),
        ("wet", true, &wet),
        ("joined", false, &joined),
    ];
    let mut found = Vec::new();
    for (fault, breach, holds) in faults {
        let all = episodes(trace, holds);
        let Some(first) = all.first() else {
            continue;
        };
        let lasted = all.iter().fold(DrillTime::ZERO, |sum, e| sum + e.length());
        found.push(
            Finding {
                lasted,
                breach,
                // The type of a cord alone, and cords that are joined, put nobody at a live part.
                harm: ["no-ground", "damaged", "wet"]
                    .contains(&fault)
                    .then_some(Harm::CanHurt),
                ..Finding::breach(Rule::CordUnfit, first.from, steady(trace, first))
            }
            .with("cord", said(&cord.name))
            .with("fault", Arg::Verbatim(fault.to_owned()))
            .with("letters", Arg::Verbatim(cord.make.kind().to_string()))
            .with("pin", Arg::Count(i64::from(made_with_ground(cord))))
            .with_damage(trace, cord, index)
            .with("lasted", Arg::lasting(lasted))
            .reaching(format!("{}-far-end", cord.name)),
        );
    }
    found
}

/// The first moment of a stretch that lasts and in which no motor starts; its very first where there is none.
fn steady(trace: &Trace, stretch: &Episode) -> usize {
    let starts = |m: &Moment| {
        let phases = &m.conditions.appliances;
        phases.iter().any(|c| c.phase == Phase::Starting)
    };
    let moments = stretch.moments(trace);
    let pairs = (stretch.first..).zip(moments.iter().zip(moments.iter().skip(1)));
    let mut steady = pairs.filter(|(_, (m, next))| next.at > m.at && !starts(m));
    steady.next().map_or(stretch.first, |(index, _)| index)
}

/// Whether cords of this type are made with a ground wire, so that one without it has lost its pin; a lamp cord is not.
fn made_with_ground(cord: &Cord) -> bool {
    cord.make.kind().service != Service::Parallel
}

impl Finding {
    /// This finding with how a cord is damaged, and how warm its worst place got.
    fn with_damage(self, trace: &Trace, cord: &Cord, index: usize) -> Self {
        let hottest = trace
            .moments
            .iter()
            .map(|m| m.conditions.cord(index).hottest_c());
        let finding = self.with(
            "spot",
            Arg::Quantity(hottest.fold(0.0, f64::max), Unit::Celsius),
        );
        let (damage, left) = match cord.found.damage {
            Damage::Sound => ("none", 1.0),
            Damage::Strands { left } => ("strands", left),
            Damage::Crushed => ("crushed", 1.0),
        };
        finding
            .with("damage", Arg::Verbatim(damage.to_owned()))
            .with("left", Arg::Quantity(100.0 * left, Unit::Percent))
    }
}

/// Whether a cord carries current from a generator, the house's or a neighbor's.
fn in_use(moment: &Moment, cord: &Cord) -> bool {
    let fed = moment
        .readings
        .point(&format!("{}-near-end", cord.name))
        .fed;
    (fed.generator || fed.lent) && moment.readings.amps_of(&cord.name) > LEAST_A
}

pub(super) fn end_volts(moment: &Moment, cord: &Cord, end: &str) -> f64 {
    let reading = moment.readings.point(&format!("{}-{end}", cord.name));
    reading.volts_across.max(reading.volts)
}

fn said(name: &str) -> Arg {
    Arg::Said(Box::new(name_of(name)))
}

fn awg(awg: Awg) -> Arg {
    Arg::Verbatim(awg.to_string())
}
