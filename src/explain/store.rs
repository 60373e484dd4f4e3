//! What was in store and how it ran out: the time that an appliance can do without power, the fuel of a tank, the hours of an engine's oil.
//!
//! Levels, fuel and oil are what the drill's own conditions held at those moments; rates are what the drill used, or what its fuel curve gives for that load.
//! A level is 0 where all is well and 1 where the household has a loss; it is told as the time that is left without power.
//! Not covered: what the temperature or the water stood at, which the drill doesn't follow.

use crate::drill::{Drill, Moment, Phase, whole_millis};
use crate::marking::Finding;
use crate::site::{CARRIES_A, Demand};
use crate::units::DrillTime;
use crate::words::{Arg, Message, Unit, name_of};

use super::Stage;
use super::cut::{named_in, to_appliance};
use super::sum::listed;

/// Watts for each watt told before by which a load has to differ to be told again.
const AS_BEFORE: f64 = 0.05;

fn stage(at: &str, text: Message, shown: Arg) -> Stage {
    Stage {
        at: at.to_owned(),
        text,
        value: Message::new("value").with("value", shown),
    }
}

/// The stages of goods or an appliance that was lost: when it ran last, what it could do without, where its power was cut.
pub(super) fn lost(drill: &Drill, finding: &Finding) -> (Message, Vec<Stage>) {
    let heading = Message::new("told-lost");
    let site = drill.site();
    let names = site.appliances.iter().map(|a| a.name.as_str());
    let name = named_in(finding, "appliance", names).unwrap_or_default();
    let moments = drill.trace().moments.get(..=finding.moment);
    let index = site.appliance_index(name);
    let (Some(moments), Some(index)) = (moments, index) else {
        return (heading, Vec::new());
    };
    let reservoir = site.appliances.get(index).map(|a| &a.demand);
    let (Some(Demand::Reservoir(reservoir)), Some(at)) = (reservoir, moments.last()) else {
        return (heading, Vec::new());
    };
    let condition = |m: &Moment| m.conditions.appliances.get(index).copied();
    let runs = |m: &&Moment| condition(m).is_some_and(|c| c.phase == Phase::Running);
    let last = moments.iter().rposition(|m| runs(&m));
    let since = last.and_then(|i| moments.get(i + 1)).or(moments.first());
    let Some(since) = since else {
        return (heading, Vec::new());
    };
    let ran = last.and_then(|i| moments.get(..=i)).unwrap_or_default();
    let drew = |m: &&Moment| m.readings.appliance(index).amps >= CARRIES_A;
    let ran = ran.iter().rfind(|m| runs(m) && drew(m));
    let watts = ran.map_or(0.0, |m| m.readings.appliance(index).watts);
    let ended = Message::new("stage-last-ran")
        .name("name", name)
        .with("ran", Arg::Count(i64::from(ran.is_some())))
        .with("at", Arg::Clock(since.at))
        .quantity("watts", watts, Unit::Watts);
    let level = condition(since).map_or(0.0, |c| c.level);
    let whole = whole_millis(3600.0 / reservoir.rise_per_h);
    let goes = Message::new("stage-can-wait")
        .with("whole", Arg::lasting(whole))
        .with("at", Arg::Clock(since.at))
        .quantity("share", 100.0 * level, Unit::Percent);
    let rest = at.at.since(since.at);
    let lasts = Message::new("stage-rest-lasted")
        .with("time", Arg::lasting(rest))
        .with("at", Arg::Clock(at.at));
    let mut stages = vec![
        stage(name, ended, Arg::Quantity(watts, Unit::Watts)),
        stage(name, goes, Arg::Quantity(100.0 * level, Unit::Percent)),
        stage(name, lasts, Arg::lasting(rest)),
    ];
    stages.extend(to_appliance(drill, at, index));
    (heading, stages)
}

/// The stages of an engine that ran dry: what was there, how fast it went and at which load, and what went dark.
pub(super) fn ran_dry(drill: &Drill, finding: &Finding) -> (Message, Vec<Stage>) {
    let oil = finding.evidence.contains(&("oil", Arg::Count(1)));
    let heading = Message::new(if oil { "told-oil" } else { "told-fuel" });
    let held = |m: &Moment| {
        if oil {
            m.conditions.machine.oil_h
        } else {
            m.conditions.fuel_gal
        }
    };
    let moments = drill.trace().moments.get(..=finding.moment);
    let moments = moments.unwrap_or_default();
    // What was filled in last is where it begins.
    let pairs = moments.windows(2).rev();
    let falls = |pair: &&[Moment]| matches!(pair, [a, b] if held(a) >= held(b));
    let n_falls = pairs.take_while(falls).count();
    let first = moments.len().saturating_sub(n_falls + 1);
    let since = moments.get(first..).unwrap_or_default();
    let Some(begin) = since.first() else {
        return (heading, Vec::new());
    };
    let (ran, mean_w) = ran_for(since);
    let at = Arg::Clock(begin.at);
    let mut stages = if oil {
        of_oil(held(begin), (at, ran, mean_w))
    } else {
        of_fuel(drill, since, (at, ran, mean_w))
    };
    stages.push(went_dark(drill, since));
    (heading, stages)
}

/// How long an engine ran in these moments, and the watts that it delivered on average.
fn ran_for(moments: &[Moment]) -> (DrillTime, f64) {
    let mut ran = DrillTime::ZERO;
    let mut joules = 0.0;
    for pair in moments.windows(2) {
        let [from, to] = pair else { continue };
        if from.conditions.engine.running_since.is_some() {
            let lasts = to.at.since(from.at);
            ran = ran + lasts;
            joules += from.readings.generator.watts.max(0.0) * lasts.seconds();
        }
    }
    let seconds = ran.seconds();
    let mean_w = if seconds > 0.0 { joules / seconds } else { 0.0 };
    (ran, mean_w)
}

/// What the tank held, what the engine burned of it and at which load.
fn of_fuel(
    drill: &Drill,
    since: &[Moment],
    (at, ran, mean_w): (Arg, DrillTime, f64),
) -> Vec<Stage> {
    let held = since.first().map_or(0.0, |m| m.conditions.fuel_gal);
    let hours = ran.seconds() / 3600.0;
    let tank = Message::new("stage-tank")
        .with("at", at)
        .quantity("held", held, Unit::Gallons);
    let burned = Message::new("stage-burned")
        .with("time", Arg::lasting(ran))
        .quantity("watts", mean_w, Unit::Watts)
        .quantity("rate", held / hours, Unit::Gallons);
    let gallons = |g: f64| Arg::Quantity(g, Unit::Gallons);
    let mut stages = vec![
        stage("generator", tank, gallons(held)),
        stage("generator", burned, gallons(held / hours)),
    ];
    let runs =
        |m: &&Moment| m.conditions.engine.running_since.is_some() && m.conditions.fuel_gal > 0.0;
    let last = since.iter().rev().find(runs).and_then(|m| {
        let lasts = m
            .conditions
            .fuel_hours(drill.site(), &m.positions, &m.readings)?;
        Some((m.readings.generator.watts, m.conditions.fuel_gal / lasts))
    });
    if let Some((watts, rate)) = last
        && (watts - mean_w).abs() > AS_BEFORE * mean_w
    {
        let now = Message::new("stage-burns-then")
            .quantity("watts", watts, Unit::Watts)
            .quantity("rate", rate, Unit::Gallons);
        stages.push(stage("generator", now, gallons(rate)));
    }
    stages
}

/// How long the oil was good for, and how long the engine ran on it.
fn of_oil(hours: f64, (at, ran, mean_w): (Arg, DrillTime, f64)) -> Vec<Stage> {
    let good = Arg::lasting(whole_millis(3600.0 * hours));
    let oil = Message::new("stage-oil")
        .with("at", at)
        .with("time", good.clone());
    let used = Message::new("stage-oil-used")
        .with("time", Arg::lasting(ran))
        .quantity("watts", mean_w, Unit::Watts);
    vec![
        stage("generator", oil, good),
        stage("generator", used, Arg::lasting(ran)),
    ]
}

/// What hung on the engine just before it stopped.
fn went_dark(drill: &Drill, since: &[Moment]) -> Stage {
    let runs = |m: &&Moment| m.conditions.engine.running_since.is_some();
    let last = since.iter().rev().find(runs);
    let site = drill.site();
    let drew = |index: &usize| {
        let reading = last.map(|m| m.readings.appliance(*index));
        reading.is_some_and(|r| r.fed.generator && r.amps >= CARRIES_A)
    };
    let loads: Vec<usize> = (0..site.appliances.len()).filter(drew).collect();
    let watts = last.map_or(0.0, |m| m.readings.generator.watts.max(0.0));
    let names = loads
        .iter()
        .filter_map(|i| site.appliances.get(*i))
        .map(|a| name_of(&a.name));
    let count = i64::try_from(loads.len()).unwrap_or_default();
    let mut text = Message::new("stage-went-dark")
        .with("loads", Arg::Count(count))
        .quantity("watts", watts, Unit::Watts);
    if let Some(names) = listed(names.collect()) {
        text = text.said("names", names);
    }
    stage("house", text, Arg::Quantity(watts, Unit::Watts))
}
