//! The way of gas from the engine into the home next door, in the order in which it travels.
//!
//! What the engine gives off at its load, what of it that home's opening draws in, what its air holds and when its alarm has to sound, what the blood of whoever sits in there holds.
//! All of it is of the moment at which its alarm sounds.
//! Nobody next door is followed by the drill: their blood is worked out from the air of the run, for somebody who has been in there from the start.
//! Not covered: who lives there, whether they sleep, people who open a window.

use crate::drill::{Drill, Moment, OVERCOME_PCT, whole_millis};
use crate::hazard::air::Outlet;
use crate::hazard::blood::{Activity, Symptoms, cohb_after, reaches_in_s, symptoms};
use crate::hazard::monoxide::alarm_band;
use crate::marking::Finding;
use crate::words::{Arg, Message, Unit};

use super::gas::{AHEAD, hourly, share_pct, stage};
use super::{Stage, value};

/// Where those stages are.
const THERE: &str = "neighbor-1";

/// The stages of a finding about the air next door, and their heading with the one moment that they show.
pub(super) fn stages(drill: &Drill, finding: &Finding) -> (Message, Vec<Stage>) {
    let moments = &drill.trace().moments;
    let heading = Message::new("told-gas-at").with("at", Arg::Clock(finding.at));
    let Some(moment) = moments.get(finding.moment) else {
        return (heading, Vec::new());
    };
    let until = moments.get(..=finding.moment).unwrap_or_default();
    let parts = [
        drawn_in(drill, moment),
        vec![air(until, moment), alarm(moment)],
        blood(until, moment),
    ];
    (heading, parts.concat())
}

/// What the engine gives off, and what of it the opening next door draws in.
fn drawn_in(drill: &Drill, moment: &Moment) -> Vec<Stage> {
    let site = drill.site();
    let Moment {
        positions,
        readings,
        conditions,
        ..
    } = moment;
    let Some(flow) = conditions.gas_next_door(site, positions, readings) else {
        return Vec::new();
    };
    let outlet = flow.outlet;
    let place = site.generator_place(positions).and_then(|p| p.next_door);
    let feet = place.map_or(0.0, |(feet, _)| feet);
    let gives = Message::new("stage-exhaust")
        .quantity("watts", readings.generator.watts.max(0.0), Unit::Watts)
        .quantity("fresh", flow.fresh_g_per_h, Unit::Grams);
    let enters = Message::new("stage-drawn-in-next-door")
        .quantity("feet", feet, Unit::Feet)
        .quantity("share", share_pct(outlet), Unit::Percent)
        .quantity("enters", flow.enters_g_per_h, Unit::Grams);
    let enters = stage(THERE, enters, hourly(flow.enters_g_per_h));
    let gives = stage("generator", gives, hourly(flow.fresh_g_per_h));
    let drawn = matches!(outlet, Outlet::Outdoors(_)).then_some(enters);
    [Some(gives), drawn].into_iter().flatten().collect()
}

fn ppm(moment: &Moment) -> f64 {
    moment.conditions.indoors.next_door.ppm
}

/// What the air next door has come to, and since when.
fn air(until: &[Moment], moment: &Moment) -> Stage {
    let gas = until.iter().rev().take_while(|m| ppm(m) > 0.0);
    let since = gas.last().unwrap_or(moment);
    let text = Message::new("stage-air-next-door")
        .quantity("ppm", ppm(moment), Unit::Ppm)
        .with("time", Arg::lasting(moment.at.since(since.at)));
    stage(THERE, text, value(ppm(moment), Unit::Ppm))
}

/// When an alarm has to sound by its standard, and when the one next door did.
fn alarm(moment: &Moment) -> Stage {
    let band = alarm_band(ppm(moment));
    let text = Message::new("stage-alarm-sounded")
        .with("at", Arg::Clock(moment.at))
        .quantity("level", band.ppm, Unit::Ppm)
        .with("from", Arg::Quantity(band.from_min, Unit::Plain))
        .with("to", Arg::Quantity(band.to_min, Unit::Plain));
    let latest = Arg::lasting(whole_millis(band.to_min * 60.0));
    stage(THERE, text, Message::new("value").with("value", latest))
}

/// What the blood of somebody who sits in there holds, and when they could no longer help themselves if the air stayed as it is.
fn blood(until: &[Moment], moment: &Moment) -> Vec<Stage> {
    let start = until.first().unwrap_or(moment).conditions.cohb_pct;
    let pairs = until
        .windows(2)
        .filter_map(|pair| pair.first().zip(pair.last()));
    let cohb = pairs.fold(start, |cohb, (before, after)| {
        let seconds = after.at.since(before.at).seconds();
        let breathed = f64::midpoint(ppm(before), ppm(after));
        cohb_after(cohb, breathed, seconds, Activity::Sedentary)
    });
    let felt = symptoms(cohb);
    let level = felt.max(Symptoms::Headache).begin_pct();
    let text = Message::new("stage-blood")
        .with("who", Arg::Verbatim("next-door".to_owned()))
        .name("name", THERE)
        .quantity("cohb", cohb, Unit::Percent)
        .quantity("start", start, Unit::Percent)
        .with("felt", Arg::Verbatim(felt.name().to_owned()))
        .quantity("level", level, Unit::Percent);
    let ahead = reaches_in_s(cohb, OVERCOME_PCT, ppm(moment), Activity::Sedentary);
    let ahead = ahead.map(|seconds| whole_millis((seconds / 60.0).round() * 60.0));
    let helpless = ahead.filter(|time| *time <= AHEAD).map(|time| {
        let text = Message::new("stage-helpless-ahead")
            .with("time", Arg::lasting(time))
            .quantity("level", OVERCOME_PCT, Unit::Percent);
        stage(THERE, text, value(OVERCOME_PCT, Unit::Percent))
    });
    let blood = stage(THERE, text, value(cohb, Unit::Percent));
    [Some(blood), helpless].into_iter().flatten().collect()
}
