//! What a hand does and meets: a plug moved under load, metal that is live, fuel poured on a hot engine.

use crate::drill::{Action, Moment, What};
use crate::scenario::Scenario;
use crate::site::{ControlId, Cord, Demand, Plug, Site, Spot};
use crate::units::portable;

use super::{Judgment, Stand};

/// Volts to earth that drive some 17 mA through a body on damp ground, and some 4 mA; 5 mA may hold the hand.
const HOLDS_V: f64 = 40.0;
const FELT_V: f64 = 12.0;
/// A body on damp ground at such volts, ohms.
const BODY_OHM: f64 = 2_350.0;

pub(super) fn judge(scenario: &Scenario, moments: &[Moment], judgment: &mut Judgment) {
    let site = &scenario.site;
    for (index, moment) in moments.iter().enumerate() {
        let What::Did(action) = &moment.what else {
            continue;
        };
        // Just before the deed, and all that follows it at once.
        let before = index.checked_sub(1).and_then(|i| moments.get(i));
        let after = moments.iter().skip(index);
        let after = after.take_while(|m| m.at == moment.at);
        let seen: Vec<&Moment> = before.into_iter().chain(after).collect();
        if let Action::Set(control, _) = action {
            plug(site, *control, seen.get(..=seen.len().min(2) - 1), judgment);
        }
        touch(site, action, &seen, judgment);
        if *action == Action::Refuel {
            let hot = hot(&Stand { scenario, moment });
            judgment.find("fuel-fire", hot);
        }
    }
}

/// Whether an engine is hot enough to light fuel: 20 °C + 380 K e^(-t/400 s) stays above 100 °C for 623 s.
fn hot(stand: &Stand<'_>) -> bool {
    let stopped = stand.moment.conditions.engine.stopped_at;
    let rests_s = stopped.map(|at| stand.moment.at.since(at).seconds());
    stand.running() || rests_s.is_some_and(|s| s < 400.0 * portable::ln(380.0 / 80.0))
}

/// Half an amp in a cord whose end is moved, with volts enough to keep an arc.
fn plug(site: &Site, control: ControlId, seen: Option<&[&Moment]>, judgment: &mut Judgment) {
    let seen = seen.unwrap_or_default();
    let is_end = |c: &&Cord| c.near == control || c.far.control() == Some(control);
    let Some(cord) = site.cords.iter().find(is_end) else {
        return;
    };
    let at_set = |m: &&Moment| {
        let spot = cord.near_spot(&m.positions);
        matches!(spot, Spot::Stowed | Spot::Receptacle(_))
    };
    let point = if cord.near != control {
        format!("{}-far-end", cord.name)
    } else if seen.iter().all(at_set) {
        "generator-outlet".to_owned()
    } else {
        format!("{}-near-end", cord.name)
    };
    let most = |of: &dyn Fn(&Moment) -> f64| seen.iter().map(|m| of(m)).fold(0.0, f64::max);
    let amps = most(&|m| m.readings.amps_of(&cord.name));
    let volts = most(&|m| {
        let reading = m.readings.point(&point);
        reading.volts.max(reading.volts_across)
    });
    if volts >= 50.0 {
        judgment.weigh("plug-under-load", amps / 0.5);
    }
}

/// Volts to earth on the metal of what is handled.
fn touch(site: &Site, action: &Action, seen: &[&Moment], judgment: &mut Judgment) {
    let Some(frame) = frame(site, action) else {
        return;
    };
    let volts = seen
        .iter()
        .filter_map(|m| m.readings.point(&frame).volts_to_earth)
        .fold(0.0, f64::max);
    // Worn insulation lies in the way of the current as the body does.
    let worn = site.appliances.iter().filter_map(|a| a.leak_ohm);
    let worn_ohm = worn.fold(0.0, f64::max);
    let sockets = site.generator.receptacles.iter().filter_map(|r| r.gfci);
    let mut devices = sockets.chain(site.circuits.iter().filter_map(|c| c.gfci));
    let moves = |device: ControlId| {
        let mut stood = seen.iter().map(|m| m.positions.get(device));
        let first = stood.next();
        stood.any(|now| Some(now) != first)
    };
    let cut_short = devices.any(moves);
    if volts * BODY_OHM / (BODY_OHM + worn_ohm) >= HOLDS_V && !cut_short {
        judgment.find("touch", true);
    } else if volts >= FELT_V {
        judgment.unsure.insert("touch");
    }
}

/// The metal that an action puts a hand on.
fn frame(site: &Site, action: &Action) -> Option<String> {
    let Action::Set(control, _) = action else {
        return (*action == Action::Refuel).then(|| "generator-frame".to_owned());
    };
    let set = &site.generator;
    let outlets = set.receptacles.iter().flat_map(|r| [r.breaker, r.gfci]);
    let mut at_set = outlets.flatten().chain([set.engine, set.output]);
    let plugs_in = |c: &Cord| {
        let mut spots = c.near_spots.iter();
        c.near == *control && spots.any(|s| matches!(s, Spot::Receptacle(_)))
    };
    if at_set.any(|c| c == *control) || site.cords.iter().any(plugs_in) {
        return Some("generator-frame".to_owned());
    }
    let lifted = site.cords.iter().find(|c| c.lay == *control);
    if let Some(cord) = lifted.filter(|c| c.can_be_wet()) {
        return Some(format!("{}-joint", cord.name));
    }
    let handled = site.appliances.iter().find(|a| {
        let by_plug = matches!(&a.plug, Plug::Cord { control: plug, .. } if plug == control);
        by_plug || matches!(&a.demand, Demand::Switch(switch) if switch == control)
    });
    handled.map(|a| format!("{}-frame", a.name))
}
