//! Rules of what is done indoors, by names of positions: where the engine runs, the alarm, those who stay in, the can of fuel.

use crate::drill::{Event, IndoorsEvent, Moment, What};
use crate::hazard::monoxide::Placement;
use crate::scenario::Scenario;
use crate::units::DrillTime;

use super::{Judgment, Stand, stands};

/// Below this an alarm never sounds, parts per million.
const CLEAN_PPM: f64 = 30.0;
/// How long one may take to be out after a sign of gas.
const TO_LEAVE: DrillTime = DrillTime::from_secs(180);

pub(super) fn judge(scenario: &Scenario, moments: &[Moment], judgment: &mut Judgment) {
    let all = stands(scenario, moments);
    let alarm = scenario.site.indoors.alarm;
    let mute = |s: &Stand<'_>| alarm.is_some_and(|id| !s.at(id, "tested"));
    judgment.find("no-alarm", all.clone().any(|s| s.running() && mute(&s)));
    judgment.find("indoors", all.clone().any(|s| s.running() && inside(&s)));
    let kept: Vec<bool> = all.clone().map(|s| fuel_inside(&s)).collect();
    let brought = kept.windows(2).any(|pair| pair == [false, true]);
    let left = kept.last().is_some_and(|inside| *inside);
    judgment.find("fuel-indoors", brought || left);
    judgment.find("stayed-in", stayed(all));
}

/// Whether the set stands where its exhaust has no way to the open.
fn inside(stand: &Stand<'_>) -> bool {
    let set = &stand.scenario.site.generator;
    let place = set.places.iter().find(|p| stand.at(set.placement, &p.name));
    place.is_some_and(|p| matches!(p.exposure.0, Placement::Garage | Placement::House))
}

fn fuel_inside(stand: &Stand<'_>) -> bool {
    let site = &stand.scenario.site;
    site.indoors.can.as_ref().is_some_and(|can| {
        let at = usize::from(stand.moment.positions.get(can.control).0);
        can.rooms.get(at).is_some_and(Option::is_some)
    })
}

/// Whether anybody stays in bad air after a sign of it, or goes back.
fn stayed<'a>(all: impl Iterator<Item = Stand<'a>>) -> bool {
    let mut sign: Option<(DrillTime, usize)> = None;
    for stand in all {
        let moment = stand.moment;
        let inside = n_inside(&stand);
        let tells = matches!(
            moment.what,
            What::Happened(Event::Alarm { .. } | Event::Indoors(IndoorsEvent::Unwell { .. }))
        );
        if sign.is_none() && !tells {
            continue;
        }
        let (since, fewest) = sign.unwrap_or((moment.at, inside));
        let late = inside > 0 && moment.at.since(since) > TO_LEAVE;
        if moment.conditions.ppm() >= CLEAN_PPM && (late || inside > fewest) {
            return true;
        }
        sign = Some((since, fewest.min(inside)));
    }
    false
}

/// How many are in the house; those who are awake are one, and are in where they can't be sent out.
fn n_inside(stand: &Stand<'_>) -> usize {
    let people = stand.scenario.site.indoors.people.iter();
    let asleep = people.filter(|p| !stand.at(p.control, "outside")).count();
    let awake = stand.scenario.site.control_id("household");
    asleep + usize::from(awake.is_none_or(|id| stand.at(id, "inside")))
}
