//! The course of every conductor: along the poles, through walls and floors, over the yard.
//!
//! Branch circuits go in lanes of their own: see [`super::branches`].
//! It does not draw to scale, and knows no bend that a wire would refuse.

use std::collections::BTreeMap;

use bevy::math::Vec2;

use crate::session::view::{StreetView, WireKind, WireView};

use super::brush::{hang, rounded};
use super::plan::{GROUND, NEUTRAL, PHASE, Plan, count};
use super::rooms::{CELLAR_FLOOR, LEFT, RIGHT, UPPER_FLOOR};
use super::{branches, devices};

/// A conductor's course.
#[derive(Debug, Clone, Default)]
pub(crate) struct Route {
    /// Pieces: one; two where a span is broken; one to each thing of a branch.
    pub(crate) pieces: Vec<Vec<Vec2>>,
    /// What of a branch is drawn, apart from what another one of its lane draws.
    pub(super) stretches: Vec<Stretch>,
}

/// A part of a branch circuit's course.
#[derive(Debug, Clone, Default)]
pub(super) struct Stretch {
    pub(super) points: Vec<Vec2>,
    /// How far from the panel it begins.
    pub(super) from: f32,
    /// How far along it other circuits go with it.
    pub(super) thick: f32,
}

impl Route {
    fn one(points: Vec<Vec2>) -> Self {
        Self {
            pieces: vec![points],
            ..Self::default()
        }
    }

    /// A point on the first piece, in the middle of a hanging wire.
    pub(crate) fn middle(&self) -> Vec2 {
        self.pieces
            .first()
            .and_then(|p| p.get((p.len() / 2).min(9)))
            .copied()
            .unwrap_or_default()
    }
}

/// The courses of all conductors of a street whose things have their places.
pub(super) fn routes(street: &StreetView, plan: &Plan) -> BTreeMap<String, Route> {
    let mut routes = branches::routes(street, plan);
    let mut tracks: BTreeMap<WireKind, usize> = BTreeMap::new();
    for wire in &street.wires {
        let track = tracks.entry(wire.kind).or_default();
        if let Some(route) = route(plan, wire, *track, street) {
            routes.insert(wire.id.clone(), route);
        }
        *track += 1;
    }
    routes
}

fn route(plan: &Plan, wire: &WireView, track: usize, street: &StreetView) -> Option<Route> {
    let secondary = Vec2::new(plan.transformer + 20.0, NEUTRAL + 4.0);
    let head = plan.house.weatherhead();
    match wire.kind {
        WireKind::Span => span(plan, wire, street),
        WireKind::NeighborDrop => {
            let (i, _) = (street.neighbors.iter().enumerate()).find(|(_, n)| n.id == wire.to)?;
            let (x, scale) = plan.neighbors.get(i)?;
            let eaves = Vec2::new(x + 26.0 * scale, GROUND - 92.0 * scale);
            Some(Route::one(hang(secondary, eaves, 14.0)))
        }
        WireKind::Drop => {
            let mut points = hang(secondary, head, 16.0);
            let down = LEFT - 9.0;
            points.extend(rounded(
                &[
                    Vec2::new(down, head.y + 12.0),
                    Vec2::new(down, 608.0),
                    Vec2::new(plan.box_of(&wire.to).min.x, 608.0),
                ],
                6.0,
            ));
            Some(Route::one(points))
        }
        WireKind::Bus => {
            let inside = plan.box_of(&wire.to);
            let bars = vec![
                Vec2::new(inside.center().x, inside.min.y + 10.0),
                Vec2::new(inside.center().x, inside.max.y - 8.0),
            ];
            let mut pieces = vec![bars];
            if wire.from != wire.to {
                pieces.push(below(plan, wire, track));
            }
            Some(Route {
                pieces,
                ..Route::default()
            })
        }
        WireKind::Inlet => Some(from_outside(
            plan,
            *plan.inlets.get(&wire.from)?,
            wire,
            track,
        )),
        WireKind::Feeder if wire.from == "generator" => {
            let terminals = plan.generator + Vec2::new(-36.0, -14.0);
            Some(from_outside(plan, terminals, wire, track))
        }
        WireKind::Feeder if plan.box_of(&wire.from).min.x >= RIGHT => {
            let case = plan.box_of(&wire.from);
            let terminals = Vec2::new(case.min.x, case.max.y - 6.0);
            Some(from_outside(plan, terminals, wire, track))
        }
        WireKind::Feeder => Some(Route::one(below(plan, wire, track))),
        WireKind::Branch => None,
        WireKind::Cord => cord(plan, wire, street),
    }
}

/// From outside through the wall and over the basement to a box on its wall.
fn from_outside(plan: &Plan, from: Vec2, wire: &WireView, track: usize) -> Route {
    let to = plan.box_of(&wire.to);
    let inside = plan.house.right - 14.0;
    // Just under the ground floor's lanes; what comes from the yard goes below the grass.
    let over = GROUND + 10.0 + 2.0 * count(track);
    let down = to.max.x - 7.0 - 6.0 * count(track);
    let low = if from.x > plan.house.right + 20.0 {
        GROUND + 9.0
    } else {
        from.y
    };
    Route::one(rounded(
        &[
            from,
            Vec2::new(from.x, low),
            Vec2::new(inside, low),
            Vec2::new(inside, over),
            Vec2::new(down, over),
            Vec2::new(down, to.min.y),
        ],
        6.0,
    ))
}

/// From one box on the wall to another, below both.
fn below(plan: &Plan, wire: &WireView, track: usize) -> Vec<Vec2> {
    let (from, to) = (plan.box_of(&wire.from), plan.box_of(&wire.to));
    let side = if from.center().x < to.center().x {
        6.0
    } else {
        -6.0
    };
    let (start, end) = (from.center().x + side, to.center().x - side);
    let low = from.max.y + 4.0 + 2.0 * count(track % 3);
    rounded(
        &[
            Vec2::new(start, from.max.y),
            Vec2::new(start, low),
            Vec2::new(end, low),
            Vec2::new(end, to.max.y),
        ],
        3.0,
    )
}

fn span(plan: &Plan, wire: &WireView, street: &StreetView) -> Option<Route> {
    let tie = |id: &str| {
        let pole = plan.poles.iter().find(|(pole, _)| pole == id);
        pole.map(|(_, x)| Vec2::new(*x, PHASE))
    };
    // What comes from no pole comes from the substation.
    let tied = || tie(&wire.from).unwrap_or(Vec2::new(-20.0, PHASE - 8.0));
    let from = devices::beginning(street, plan, &wire.id).unwrap_or_else(tied);
    let to = tie(&wire.to)?;
    if !street.broken_spans.contains(&wire.id) {
        return Some(Route::one(hang(from, to, 20.0 * plan.pole_scale)));
    }
    // The storm took it down in the middle: each piece hangs from its pole.
    let width = to.x - from.x;
    let near = [
        from,
        from + Vec2::new(width * 0.10, 46.0),
        from + Vec2::new(width * 0.20, 210.0),
        Vec2::new(from.x + width * 0.30, GROUND + 2.0),
    ];
    let far = [
        to,
        to - Vec2::new(width * 0.12, -40.0),
        to - Vec2::new(width * 0.22, -150.0),
        to - Vec2::new(width * 0.24, -236.0),
    ];
    Some(Route {
        pieces: vec![rounded(&near, 40.0), rounded(&far, 40.0)],
        ..Route::default()
    })
}

/// A cord that is plugged in anywhere; a stowed one is out of sight.
fn cord(plan: &Plan, wire: &WireView, street: &StreetView) -> Option<Route> {
    if wire.from.is_empty() && wire.to.is_empty() {
        return None;
    }
    let cords = street.wires.iter().filter(|w| w.kind == WireKind::Cord);
    let number = |id: &str| cords.clone().position(|w| w.id == id).map(count);
    let nth = number(&wire.id).unwrap_or_default();
    // A loose end lies in the yard, and so does one cord's end in another's.
    let loose = |n: f32| Vec2::new(plan.house.right + 22.0 + 16.0 * n, GROUND - 4.0);
    let place = |id: &str| {
        if id == "generator" {
            return Some(plan.generator + Vec2::new(-22.0, -22.0 + 3.0 * nth));
        }
        number(id)
            .map(loose)
            .or_else(|| plan.anchors.get(id).copied())
    };
    let start = place(&wire.from).unwrap_or(loose(nth) + Vec2::X * 90.0);
    let spot = plan.house.spots.get(&wire.to);
    let end = if wire.to.is_empty() || number(&wire.to).is_some() {
        loose(nth)
    } else {
        spot.map(super::rooms::Spot::socket)
            .or_else(|| place(&wire.to))?
    };
    let floor = GROUND + 3.0 + 2.5 * nth;
    let down = Vec2::new(start.x - 14.0, floor);
    let along = if end.y > GROUND {
        let wall = RIGHT - 16.0 + 3.0 * nth;
        let low = spot.map_or(CELLAR_FLOOR - 20.0, |s| s.at.y - 8.0);
        vec![
            start,
            down,
            Vec2::new(wall, floor),
            Vec2::new(wall, low.min(end.y + 10.0)),
            end,
        ]
    } else if end.y < UPPER_FLOOR {
        let wall = RIGHT + 4.0 + 3.0 * nth;
        vec![
            start,
            down,
            Vec2::new(wall, floor),
            Vec2::new(wall, UPPER_FLOOR + 9.0),
            Vec2::new(end.x + 14.0, UPPER_FLOOR + 9.0),
            end,
        ]
    } else {
        vec![start, down, Vec2::new(end.x + 14.0, floor), end]
    };
    Some(Route::one(rounded(&along, 12.0)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::session::view::{ApplianceView, NeighborView, OutletView, PoleView, Room};

    fn street() -> StreetView {
        let wire = |id: &str, kind, from: &str, to: &str| WireView {
            id: id.to_owned(),
            kind,
            from: from.to_owned(),
            to: to.to_owned(),
            ..WireView::default()
        };
        let appliance = |id: &str, room| ApplianceView {
            id: id.to_owned(),
            room,
            ..ApplianceView::default()
        };
        let outlet = |id: &str, appliances: &[&str]| OutletView {
            id: id.to_owned(),
            room: Room::Living,
            appliances: appliances.iter().map(|a| (*a).to_owned()).collect(),
        };
        StreetView {
            poles: (0_u8..4)
                .map(|i| PoleView {
                    id: format!("pole-{}", i + 1),
                    at_ft: f32::from(i) * 150.0,
                    transformer: i == 3,
                    ..PoleView::default()
                })
                .collect(),
            wires: vec![
                wire("span-1", WireKind::Span, "pole-1", "pole-2"),
                wire("span-2", WireKind::Span, "pole-2", "pole-3"),
                wire("span-3", WireKind::Span, "pole-3", "pole-4"),
                wire("drop", WireKind::Drop, "transformer", "panel"),
                wire("inlet", WireKind::Inlet, "inlet", "panel"),
                wire("bus", WireKind::Bus, "panel", "panel"),
                wire("branch-a", WireKind::Branch, "panel", "outlet-a"),
                wire("branch-b", WireKind::Branch, "panel", "outlet-b"),
                wire(
                    "drop-neighbor-1",
                    WireKind::NeighborDrop,
                    "transformer",
                    "neighbor-1",
                ),
                wire("cord", WireKind::Cord, "generator", "radio"),
                wire("long", WireKind::Cord, "generator", ""),
            ],
            broken_spans: vec!["span-2".to_owned()],
            neighbors: vec![NeighborView {
                id: "neighbor-1".to_owned(),
                ..NeighborView::default()
            }],
            appliances: vec![
                appliance("radio", Room::Living),
                appliance("clock", Room::Bedroom),
            ],
            outlets: vec![
                outlet("outlet-a", &["radio", "clock"]),
                outlet("outlet-b", &[]),
            ],
            ..StreetView::default()
        }
    }

    #[test]
    fn every_conductor_of_the_street_has_a_course() {
        let street = street();
        let plan = Plan::new(&street);
        for wire in &street.wires {
            let route = plan.routes.get(&wire.id);
            assert!(
                route.is_some_and(|r| r.pieces.iter().all(|p| p.len() >= 2)),
                "{}",
                wire.id
            );
        }
    }

    #[test]
    fn a_broken_span_is_two_pieces_and_others_are_one() {
        let plan = Plan::new(&street());
        for (id, n) in [("span-1", 1), ("span-2", 2), ("span-3", 1)] {
            assert_eq!(plan.routes.get(id).map(|r| r.pieces.len()), Some(n), "{id}");
        }
    }

    #[test]
    fn a_branch_leads_to_each_of_its_things() {
        let plan = Plan::new(&street());
        for (id, n) in [("branch-a", 2), ("branch-b", 1)] {
            assert_eq!(plan.routes.get(id).map(|r| r.pieces.len()), Some(n), "{id}");
        }
    }

    #[test]
    fn a_cord_that_is_plugged_in_nowhere_is_out_of_sight() {
        let mut street = street();
        let stowed = WireView {
            id: "stowed".to_owned(),
            kind: WireKind::Cord,
            ..WireView::default()
        };
        street.wires.push(stowed);
        assert!(!Plan::new(&street).routes.contains_key("stowed"));
    }
}
