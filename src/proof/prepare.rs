//! What a careful person sees to before anything is connected: the set where it is soundest, cords laid out flat and none joined to another, the alarm in order, fuel outside, what is to stay unplugged unplugged, the cords' window sealed.
//!
//! None of it moves a contact that the search is about but the joints of cords, which only come apart.
//! Whether what is prepared is enough is not said here: the way is played with it and marked.

use crate::drill::Action;
use crate::scenario::Scenario;
use crate::site::{ControlId, Place, Positions, Site, Spot};

/// What is to be done, in order; what stands right already is left out.
pub(super) fn preparations(scenario: &Scenario, positions: &Positions) -> Vec<Action> {
    let site = &scenario.site;
    let mut wanted: Vec<(ControlId, &str)> = Vec::new();
    for (control, positions) in &scenario.goal.at_end {
        if positions.iter().all(|p| p == "unplugged") {
            wanted.push((*control, "unplugged"));
        }
    }
    for cord in &site.cords {
        let joined = matches!(cord.near_spot(positions), Spot::CordEnd(_));
        wanted.extend(joined.then_some((cord.near, "stowed")));
        wanted.push((cord.lay, "flat"));
    }
    wanted.extend(site.indoors.alarm.map(|alarm| (alarm, "tested")));
    if let Some(can) = &site.indoors.can {
        let outside = can.rooms.iter().position(Option::is_none);
        let name = site.control(can.control).zip(outside);
        let name = name.and_then(|(control, at)| control.positions.get(at));
        wanted.extend(name.map(|name| (can.control, name.as_str())));
    }
    wanted.extend(site.control_id("window").map(|window| (window, "sealed")));
    wanted.extend(soundest(site).map(|name| (site.generator.placement, name)));
    let moves = wanted.into_iter().filter_map(|(control, name)| {
        let to = site.control(control)?.position(name)?;
        (positions.get(control) != to).then_some(Action::Set(control, to))
    });
    moves.collect()
}

/// The usable place that is farthest from every opening, if there is more than one.
fn soundest(site: &Site) -> Option<&str> {
    let usable = site.generator.places.iter().filter(|p| p.usable);
    let far = usable.reduce(|best, next| {
        let feet = |p: &Place| {
            p.next_door
                .map_or(p.opening_ft, |(ft, _)| ft.min(p.opening_ft))
        };
        if feet(next) > feet(best) { next } else { best }
    });
    far.map(|p| p.name.as_str())
}
