//! Too few volts: nothing runs for long below what it is made for, and each time it is said what took the volts.
//!
//! Source: motors within ±10 % of rated volts (NEMA MG 1-12.44, checked in part).
//! What took them is read from the moment with the fewest volts: an adapter on the plug, the broken neutral of the utility, the cord or cords, a motor that starts, an adapter that makes one wire carry both sides, or else too much at once.

use crate::apparatus::motor_start::{Driven, Supply, keeps_turning};
use crate::apparatus::motor_voltage::at_low_voltage;
use crate::drill::{Event, Moment, Phase, Trace, What};
use crate::scenario::Scenario;
use crate::site::{Appliance, CARRIES_A, Cord, PositionId, Site, Spot, Work};
use crate::units::DrillTime;
use crate::words::{Arg, Unit, name_of};

use super::cords::{end_volts, lost_on_the_way};
use super::episode::episodes;
use super::finding::{Finding, Rule};
use super::load::BRIEF;

/// Least volts for a running motor or lamp, as a fraction of rated volts.
const LOW_PU: f64 = 0.9;
/// Amps of the largest outlet for 120 V in common use: NEMA L5-30 and TT-30, from memory.
const LARGEST_OUTLET_A: f64 = 30.0;
/// Share of its rating up to which a breaker may hold for an hour: UL 489, checked.
const HOLDS_AN_HOUR: f64 = 1.35;
/// Below this there is no power at all, and nothing is starved.
const DEAD_PU: f64 = 0.1;

pub(super) fn findings(scenario: &Scenario, trace: &Trace) -> Vec<Finding> {
    let site = &scenario.site;
    let mut found = Vec::new();
    for (index, moment) in trace.moments.iter().enumerate() {
        if let What::Happened(Event::ProtectorOpened { appliance }) = moment.what
            && let Some(built) = site.appliances.get(appliance)
            && !site.on_half_volts(&moment.positions, built)
        {
            let finding = Finding::breach(Rule::Starved, moment.at, index);
            found.push(at_low_volts(finding, (site, moment), appliance, built));
        }
    }
    for (index, appliance) in site.appliances.iter().enumerate() {
        found.extend(starved(site, trace, index, appliance));
        found.extend(half_volts(site, trace, index, appliance));
    }
    found
}

/// Whether an appliance asks for power and has some.
fn on_power(moment: &Moment, index: usize) -> bool {
    let asks = moment
        .conditions
        .appliances
        .get(index)
        .is_some_and(|c| matches!(c.phase, Phase::Running | Phase::Starting | Phase::Stalled));
    asks && moment.readings.appliance(index).pu >= DEAD_PU
}

/// An appliance that runs on a source of the household with too little voltage, for longer than a start lasts; shown at the fewest volts.
fn starved(site: &Site, trace: &Trace, index: usize, appliance: &Appliance) -> Vec<Finding> {
    let low = |m: &Moment| {
        let reading = m.readings.appliance(index);
        on_power(m, index)
            && reading.fed.customer()
            && reading.pu < LOW_PU
            && !site.on_half_volts(&m.positions, appliance)
    };
    let long = episodes(trace, low).into_iter();
    let long = long.filter(|e| e.length() >= BRIEF);
    let told = long.filter_map(|episode| {
        let moments = (episode.first..).zip(episode.moments(trace));
        let pu = |m: &Moment| m.readings.appliance(index).pu;
        let lowest = moments.filter(|(_, m)| low(m));
        let (shown, moment) = lowest.min_by(|(_, a), (_, b)| pu(a).total_cmp(&pu(b)))?;
        let finding = Finding {
            lasted: episode.length(),
            ..Finding::breach(Rule::Starved, episode.from, shown)
        };
        Some(at_low_volts(finding, (site, moment), index, appliance))
    });
    told.fold(Vec::new(), lasting_on)
}

/// Findings with one more: what a thermostat parts into stretches with one cause is told once, at its worst, for all of its time.
fn lasting_on(mut all: Vec<Finding>, next: Finding) -> Vec<Finding> {
    let arg = |f: &Finding, name: &str| {
        let found = f.evidence.iter().find(|(own, _)| *own == name);
        found.map(|(_, arg)| arg.clone())
    };
    let low = |f: &Finding| match arg(f, "volts") {
        Some(Arg::Quantity(volts, _)) => volts,
        _ => f64::INFINITY,
    };
    let same = |f: &&mut Finding| arg(f, "cause") == arg(&next, "cause");
    let Some(before) = all.iter_mut().find(same) else {
        all.push(next);
        return all;
    };
    before.lasted = before.lasted + next.lasted;
    if low(&next) < low(before) {
        before.moment = next.moment;
        before.evidence = next.evidence;
    }
    all
}

/// A machine made for both legs that asks for power while an adapter gives it one; shown at the most volts.
fn half_volts(site: &Site, trace: &Trace, index: usize, appliance: &Appliance) -> Option<Finding> {
    let halved = |m: &Moment| on_power(m, index) && site.on_half_volts(&m.positions, appliance);
    let all = episodes(trace, halved);
    let first = all.first()?;
    // Its own protector parts one mistake into many stretches.
    let lasted = all.iter().fold(DrillTime::ZERO, |sum, e| sum + e.length());
    let moments = all
        .iter()
        .flat_map(|e| (e.first..).zip(e.moments(trace)))
        .filter(|(_, m)| halved(m));
    let volts = |m: &Moment| m.readings.appliance(index).volts;
    let (shown, moment) = moments.max_by(|(_, a), (_, b)| volts(a).total_cmp(&volts(b)))?;
    let finding = Finding {
        lasted,
        ..Finding::breach(Rule::Starved, first.from, shown)
    };
    let opened = trace.moments.iter().filter(|m| {
        matches!(m.what, What::Happened(Event::ProtectorOpened { appliance }) if appliance == index)
    });
    let opened = i64::try_from(opened.count()).unwrap_or(i64::MAX);
    let cord = appliance.cord(&moment.positions);
    let cord = cord
        .and_then(|i| site.cords.get(i))
        .map(|c| c.name.as_str());
    let lent = site.lent.as_ref().map(|l| l.name.as_str());
    let cord = cord.or(lent).unwrap_or_default();
    let each = first.length();
    let finding = at_low_volts(finding, (site, moment), index, appliance);
    Some(
        finding
            .with("cord", Arg::Said(Box::new(name_of(cord))))
            .with("opened", Arg::Count(opened))
            .with("each", Arg::lasting(each))
            .with("lasted", Arg::lasting(lasted)),
    )
}

/// What the volts of a moment do to an appliance, and what took the rest of them.
/// Torque of a motor at rest and watts of a resistor both go with their square.
fn at_low_volts(
    finding: Finding,
    (site, moment): (&Site, &Moment),
    index: usize,
    appliance: &Appliance,
) -> Finding {
    let reading = moment.readings.appliance(index);
    let (volts, pu) = (reading.volts, reading.pu);
    let low = at_low_voltage(pu);
    let supply = Supply {
        v_pu: pu,
        f_pu: 1.0,
    };
    let turns = keeps_turning(Driven::Constant, supply);
    let motor = i64::from(matches!(appliance.work, Work::Motor(_)));
    let finding = finding
        .with("appliance", Arg::Said(Box::new(name_of(&appliance.name))))
        .with("volts", Arg::Quantity(volts, Unit::Volts))
        .with("rated", Arg::Quantity(volts / pu, Unit::Volts))
        .with("motor", Arg::Count(motor))
        .with("torque", Arg::Quantity(100.0 * low.torque, Unit::Percent))
        .with("turns", Arg::Count(i64::from(turns)))
        .with(
            "running",
            Arg::Quantity(100.0 * low.running_amps, Unit::Percent),
        );
    let cause = |name: &str| Arg::Verbatim(name.to_owned());
    if site.on_half_volts(&moment.positions, appliance) {
        return finding.with("cause", cause("halved"));
    }
    let broken = moment.positions.get(site.line.drop_neutral) != PositionId(0);
    if broken && !reading.fed.customer() {
        return finding.with("cause", cause("neutral"));
    }
    let cords = thin_cords(site, moment, appliance, volts / pu);
    if !cords.is_empty() {
        let finding = match cords.len() {
            1 => finding.with("cause", cause("cord")),
            _ => finding.with("cause", cause("joined")),
        };
        let finding = lost_on_the_way(finding, site, moment, &cords);
        let held = i64::from(held_its_heat(&finding, volts / pu));
        return finding.with("held", Arg::Count(held));
    }
    if motor_starts(moment) {
        return finding.with("cause", cause("start"));
    }
    if let Some(cord) = tied_legs(site, moment) {
        let amps = site.cords.get(cord);
        let amps = amps.map_or(0.0, |c| moment.readings.amps_of(&c.name));
        let finding = finding
            .with("cause", cause("adapter"))
            .with("over", Arg::Count(over_outlet(amps)))
            .with("outlet", Arg::Quantity(LARGEST_OUTLET_A, Unit::Amps));
        return lost_on_the_way(finding, site, moment, &[cord]);
    }
    finding.with("cause", cause("load"))
}

/// Whether an outlet is given more than the largest is made for: 1 so little more that its breaker may hold it, 2 more than that.
fn over_outlet(amps: f64) -> i64 {
    let above = |share: f64| i64::from(amps > share * LARGEST_OUTLET_A);
    above(1.0) + above(HOLDS_AN_HOUR)
}

/// Whether a cord that lay in a way that keeps its heat in would have left volts enough laid out flat.
fn held_its_heat(finding: &Finding, rated_v: f64) -> bool {
    let lay = ("basis", Arg::Verbatim("lay".to_owned()));
    finding.evidence.contains(&lay)
        && finding.evidence.iter().any(|(name, arg)| {
            matches!((*name, arg), ("flat", Arg::Quantity(volts, _)) if *volts >= LOW_PU * rated_v)
        })
}

/// Whether a motor on a source of the household is at a stand and draws what a start takes; one whose protector opens just now still does.
fn motor_starts(moment: &Moment) -> bool {
    let phases = moment.conditions.appliances.iter().enumerate();
    phases.into_iter().any(|(index, condition)| {
        let reading = moment.readings.appliance(index);
        let stands = matches!(
            condition.phase,
            Phase::Starting | Phase::Stalled | Phase::Protected
        );
        stands && reading.amps >= CARRIES_A && reading.fed.customer()
    })
}

/// The cords of an appliance, by index and its own first, if there were volts enough where the last of them is plugged in; none else.
fn thin_cords(site: &Site, moment: &Moment, appliance: &Appliance, rated_v: f64) -> Vec<usize> {
    let mut cords = Vec::new();
    let mut next = appliance.cord(&moment.positions);
    // No cord is behind itself.
    while let Some(index) = next.filter(|i| !cords.contains(i)) {
        cords.push(index);
        let spot = site
            .cords
            .get(index)
            .map(|c| c.near_spot(&moment.positions));
        next = if let Some(Spot::CordEnd(before)) = spot {
            Some(before)
        } else {
            None
        };
    }
    let first = cords.last().and_then(|i| site.cords.get(*i));
    let near_v = first.map_or(0.0, |c| end_volts(moment, c, "near-end"));
    if near_v < LOW_PU * rated_v {
        cords.clear();
    }
    cords
}

/// The cord, by index, whose adapter makes one wire feed both sides of the panel now.
pub(super) fn tied_legs(site: &Site, moment: &Moment) -> Option<usize> {
    let ties = |c: &Cord| c.ties_legs && moment.readings.amps_of(&c.name) >= CARRIES_A;
    site.cords.iter().position(ties)
}
