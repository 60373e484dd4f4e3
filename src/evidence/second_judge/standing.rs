//! Rules that show in what reaches what: the line fed, no transfer equipment, two sources tied or brought together, hands on a fed line, bare contacts.

use crate::drill::Moment;
use crate::proof;
use crate::proof::{Model, State};
use crate::scenario::Scenario;
use crate::site::{PositionId, Positions};
use crate::units::DrillTime;

use super::{Judgment, made};

/// How long somebody may take to end what they find so: a minute for what feeds where it shouldn't, three for bare contacts.
const TO_END: DrillTime = DrillTime::from_secs(60);
const TO_COVER: DrillTime = DrillTime::from_secs(180);

pub(super) fn judge(scenario: &Scenario, moments: &[Moment], judgment: &mut Judgment) {
    let stands = stands(&Model::of(scenario), scenario, moments);
    let all = |holds: fn(&proof::Stand) -> bool| stands.iter().map(holds).collect::<Vec<_>>();
    let ever = |holds: fn(&proof::Stand) -> bool| stands.iter().any(holds);
    // Where a neighbor's set meets the house's, that is the rule, tied or not.
    judgment.find("collision", ever(|s| s.tied && !s.meets));
    let meets = made(moments, &all(|s| s.meets), TO_END);
    judgment.find("sources-meet", meets);
    judgment.find("shock", ever(|s| s.shock));
    let fed = made(moments, &all(|s| s.line_fed), TO_END);
    judgment.find("line-fed", fed);
    let unguarded = made(moments, &all(|s| s.unguarded), TO_END);
    judgment.find("no-transfer-equipment", unguarded);
    let bare = made(moments, &all(|s| s.bare), TO_COVER);
    judgment.find("live-blades", bare);
    judgment.find("no-visible-break", ever(|s| s.unbarred));
}

/// What holds at each moment; asked once for each stretch in which nothing moves.
fn stands(model: &Model<'_>, scenario: &Scenario, moments: &[Moment]) -> Vec<proof::Stand> {
    let mut last: Option<(Positions, proof::Stand)> = None;
    let stand = moments.iter().map(|moment| {
        let positions = as_driven(scenario, moment);
        if let Some((_, stand)) = last.as_ref().filter(|(p, _)| *p == positions) {
            return *stand;
        }
        let state = State {
            positions,
            stage: 0,
        };
        let stand = model.stand(&state);
        last = Some((state.positions, stand));
        stand
    });
    stand.collect()
}

/// How things stand, with a source that makes no volts taken for one that is switched off.
pub(super) fn as_driven(scenario: &Scenario, moment: &Moment) -> Positions {
    let site = &scenario.site;
    let mut positions = moment.positions.clone();
    let makes_volts = moment.readings.generator.hz > 0.0;
    positions.set(site.generator.engine, PositionId(u8::from(makes_volts)));
    let battery = site.battery.as_ref();
    if let Some(battery) = battery.filter(|_| !moment.conditions.battery.carries) {
        positions.set(battery.switch, PositionId(0));
    }
    positions
}
