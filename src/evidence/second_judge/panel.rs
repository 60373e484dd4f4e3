//! Rules of panels, covers and neutrals, by raw volts: water in the panel, legs that stand too high, hands in a set or at live lugs, no bond.

use crate::apparatus::auto_transfer::Order;
use crate::drill::{Action, Moment, What};
use crate::scenario::Scenario;
use crate::units::DrillTime;

use super::{Judgment, Stand, lasted, stands};

/// Volts from which parts are live enough to be guarded.
const LIVE_V: f64 = 50.0;
/// Volts of a leg that all on it stands for good, and how long one may take to act on more.
const LEG_MOST_V: f64 = 132.0;
const TO_ACT: DrillTime = DrillTime::from_secs(60);

pub(super) fn judge(scenario: &Scenario, moments: &[Moment], judgment: &mut Judgment) {
    let all = stands(scenario, moments);
    let high = all
        .clone()
        .map(|s| s.moment.readings.point("bus").volts > LEG_MOST_V);
    let high: Vec<bool> = high.collect();
    judgment.find("wrong-volts", lasted(moments, &high, TO_ACT));
    judgment.find("nothing-bonds", all.clone().any(|s| floats(&s)));
    for (before, after) in all.clone().zip(all.skip(1)) {
        if let What::Did(Action::Set(control, _)) = &after.moment.what {
            let moved = scenario.site.control(*control);
            let in_panel = moved.is_some_and(|c| c.place == "panel");
            let live = panel_v(&before).max(panel_v(&after)) >= LIVE_V;
            judgment.find("wet-panel", scenario.wet_panel && in_panel && live);
        }
        in_the_set(&before, &after, judgment);
        at_the_lugs(&before, &after, judgment);
    }
}

/// The highest volts in the panels.
fn panel_v(stand: &Stand<'_>) -> f64 {
    let subs = stand.scenario.site.subpanels.iter();
    let buses = subs.map(|s| stand.volts(&format!("bus-{}", s.name)));
    buses.fold(stand.volts("service").max(stand.volts("bus")), f64::max)
}

/// Whether the set feeds an inlet while nothing ties its wires to earth.
fn floats(stand: &Stand<'_>) -> bool {
    let readings = &stand.moment.readings;
    let makes_volts = readings.generator.hz > 0.0;
    let inlets = stand.scenario.site.inlets.iter();
    let mut fed = inlets.map(|i| readings.point(&i.name));
    makes_volts && fed.any(|p| p.volts_across.max(p.volts) > 1.0 && p.volts_to_earth.is_none())
}

/// Hands in a set that isn't locked out, or that begins to turn.
fn in_the_set(before: &Stand<'_>, after: &Stand<'_>, judgment: &mut Judgment) {
    let set = &after.scenario.site.generator;
    let Some(automatic) = set.machine.automatic else {
        return;
    };
    let open = |s: &Stand<'_>| s.at(automatic.cover, "open");
    let locked = |s: &Stand<'_>| {
        let parted = !s.at(set.output, "on") && s.at(automatic.battery, "disconnected");
        parted && s.at(automatic.switch, "off")
    };
    for stand in [before, after] {
        judgment.find("not-locked-out", open(stand) && !locked(stand));
    }
    let cranks = |s: &Stand<'_>| s.moment.conditions.controller.order == Order::Crank;
    let begins = cranks(after) && !cranks(before);
    judgment.find("caught-by-engine", open(after) && begins);
}

/// A transfer switch that stands open beside what is live, or is moved by hand there.
fn at_the_lugs(before: &Stand<'_>, after: &Stand<'_>, judgment: &mut Judgment) {
    let live = |s: &Stand<'_>| s.volts("service").max(s.volts("generator-outlet")) >= LIVE_V;
    for transfer in &after.scenario.site.transfers {
        let Some(cover) = transfer.cover else {
            continue;
        };
        for stand in [before, after] {
            let bare = stand.at(cover, "open") && live(stand);
            judgment.find("live-lugs", bare);
        }
        let deed = &after.moment.what;
        let by_hand = matches!(deed, What::Did(Action::Set(c, _)) if *c == transfer.handle);
        let beside = live(before) || live(after);
        judgment.find("hand-transfer-live", by_hand && beside);
    }
}
