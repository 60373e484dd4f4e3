//! Branch circuits in lanes: circuits of one panel that are fed alike share a lane through walls and floors until they part.
//!
//! Lanes lie apart by the width of their marks, so that each keeps its direction readable; a lane that many share is drawn thicker.
//! Where circuits part, each draws on alone: nothing is drawn twice.
//! It does not draw to scale, and knows no bend that a wire would refuse.

use std::collections::BTreeMap;

use bevy::math::{Rect, Vec2};

use crate::session::view::{Building, Fed, Flow, StreetView, WireKind, WireView};

use super::brush::rounded;
use super::plan::{GROUND, Plan};
use super::rooms::{CEILING, CELLAR_CEILING, FLOOR, LEFT, UPPER_CEILING, UPPER_FLOOR};
use super::routes::{Route, Stretch};
use super::sizes;
use super::sizes::{End, Plate};

/// Between two lanes with marks, and beside a lane without.
const APART: f32 = 10.5;
const APART_BARE: f32 = 4.5;
/// How much of the slabs and of the chase all lanes may take.
const MOST: f32 = 21.0;
/// The first lane under the cellar's ceiling.
const UNDER: f32 = CELLAR_CEILING + 8.5;
/// Radius of corners.
const BEND: f32 = 4.0;

/// The state that circuits of one lane share, ordered from the outer lane in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
struct Lane {
    bare: bool,
    nth_box: usize,
    fed: Fed,
}

/// A circuit's way to one of its ends.
struct Way<'a> {
    wire: &'a WireView,
    lane: Lane,
    corners: Vec<Vec2>,
}

/// The courses of all branch circuits.
pub(super) fn routes(street: &StreetView, plan: &Plan) -> BTreeMap<String, Route> {
    let mut ways = Vec::new();
    let shifts = shifts(street, plan);
    for wire in branches(street) {
        let lane = lane(plan, wire);
        let shift = shifts.get(&lane).copied().unwrap_or_default();
        let from = plan.box_of(&wire.from);
        for end in ends(street, plan, wire) {
            ways.push(Way {
                wire,
                lane,
                corners: corners(plan, from, (shift, riser(&shifts, lane)), end),
            });
        }
    }
    // What carries current is drawn along the whole way, and of that the longest.
    let rank = |way: &Way<'_>| (way.lane, way.wire.flow == Flow::None);
    ways.sort_by(|a, b| {
        let longer = length(&b.corners).total_cmp(&length(&a.corners));
        rank(a).cmp(&rank(b)).then(longer)
    });
    lay(&ways)
}

/// Draws each way from where it parts from those before it.
fn lay(ways: &[Way<'_>]) -> BTreeMap<String, Route> {
    let mut routes: BTreeMap<String, Route> = BTreeMap::new();
    for (i, way) in ways.iter().enumerate() {
        let with = |other: &&Way<'_>| other.lane == way.lane;
        let shared = |others: &[Way<'_>]| {
            let others = others.iter().filter(with);
            others
                .map(|other| common(&way.corners, &other.corners))
                .fold(0.0, f32::max)
        };
        let (before, after) = ways.split_at(i);
        let from = shared(before);
        let until = shared(after.get(1..).unwrap_or_default());
        let route = routes.entry(way.wire.id.clone()).or_default();
        route.pieces.push(rounded(&way.corners, BEND));
        let rest = beyond(&way.corners, from);
        if rest.len() > 1 {
            route.stretches.push(Stretch {
                points: rounded(&rest, BEND),
                from,
                thick: (until - from).max(0.0),
            });
        }
    }
    routes
}

fn branches(street: &StreetView) -> impl Iterator<Item = &WireView> {
    street.wires.iter().filter(|w| w.kind == WireKind::Branch)
}

fn lane(plan: &Plan, wire: &WireView) -> Lane {
    let left = plan.box_of(&wire.from).min.x;
    let before = plan.boxes.values().filter(|b| b.min.x < left);
    Lane {
        bare: wire.fed == Fed::Dead,
        nth_box: before.count(),
        fed: wire.fed,
    }
}

/// How far each lane lies from the first.
fn shifts(street: &StreetView, plan: &Plan) -> BTreeMap<Lane, f32> {
    let mut lanes: Vec<Lane> = branches(street).map(|w| lane(plan, w)).collect();
    lanes.sort();
    lanes.dedup();
    let mut shift = 0.0;
    let mut shifts = BTreeMap::new();
    for lane in lanes {
        shifts.insert(lane, shift);
        shift += if lane.bare { APART_BARE } else { APART };
    }
    let widest = shifts.values().copied().fold(0.0, f32::max);
    let tight = (MOST / widest.max(1.0)).min(1.0);
    for shift in shifts.values_mut() {
        *shift *= tight;
    }
    shifts
}

/// How far a lane leaves its own box from the first lane there.
fn riser(shifts: &BTreeMap<Lane, f32>, lane: Lane) -> f32 {
    let mut out = 0.0;
    for other in shifts.keys().filter(|l| l.nth_box == lane.nth_box) {
        if *other == lane {
            break;
        }
        out += if other.bare { APART_BARE } else { APART };
    }
    out.min(20.0)
}

/// Where a circuit's wire ends, at the edge of each plate.
fn ends(street: &StreetView, plan: &Plan, wire: &WireView) -> Vec<End> {
    let outlet = street.outlets.iter().find(|o| o.id == wire.to);
    let ends = match outlet {
        Some(outlet) => sizes::ends(street, plan, outlet),
        None => vec![sizes::on_wall(plan.anchors.get(&wire.to).copied())],
    };
    let to_edge = |end: End| {
        let below = end.at.y > GROUND + 10.0;
        let half = match end.plate {
            Plate::Outlet => 5.0,
            Plate::Box => 3.0,
            Plate::None => 0.0,
        };
        // Cellar wires come from above, all others from the floor below.
        let y = if below { -half } else { half };
        End {
            at: end.at + Vec2::Y * y,
            ..end
        }
    };
    ends.into_iter().map(to_edge).collect()
}

/// Corners of one way from a panel to where a circuit ends.
fn corners(plan: &Plan, from: Rect, (shift, riser): (f32, f32), end: End) -> Vec<Vec2> {
    let house = &plan.house;
    let to = end.at;
    let start = Vec2::new(from.min.x + 8.0 + riser, from.min.y);
    let under = UNDER + shift;
    let joist = FLOOR + 5.0 + shift * 0.8;
    let at = Vec2::new;
    if to.y > GROUND + 10.0 || to.x < LEFT {
        return vec![start, at(start.x, under), at(to.x, under), to];
    }
    if to.y > FLOOR {
        // In the yard a circuit goes below the grass.
        let (out, low) = (house.right - 5.0, GROUND + 9.0 + shift * 0.5);
        return vec![
            start,
            at(start.x, joist),
            at(out, joist),
            at(out, low),
            at(to.x, low),
            to,
        ];
    }
    let on_ground = !end.hangs && to.y > UPPER_FLOOR;
    if on_ground {
        return vec![start, at(start.x, joist), at(to.x, joist), to];
    }
    let chase = LEFT + 7.0 + shift;
    let upstairs = to.y <= UPPER_CEILING + 1.0;
    let slab = match (end.hangs, upstairs, house.building) {
        (true, true, _) => UPPER_CEILING - 7.0 - shift * 0.4,
        (true, false, Building::Hall) => CEILING - 3.0 - shift * 0.4,
        (true, false, Building::House) | (false, ..) => UPPER_FLOOR + 5.0 + shift * 0.8,
    };
    vec![
        start,
        at(start.x, under),
        at(chase, under),
        at(chase, slab),
        at(to.x, slab),
        to,
    ]
}

fn length(points: &[Vec2]) -> f32 {
    let pairs = points.iter().zip(points.iter().skip(1));
    pairs.map(|(a, b)| a.distance(*b)).sum()
}

/// How far two ways from one point go together.
fn common(one: &[Vec2], other: &[Vec2]) -> f32 {
    const NEAR: f32 = 0.01;
    if one.first() != other.first() {
        return 0.0;
    }
    let steps = |way: &[Vec2]| -> Vec<Vec2> {
        let pairs = way.iter().zip(way.iter().skip(1));
        pairs.map(|(a, b)| *b - *a).collect()
    };
    let mut shared = 0.0;
    for (a, b) in steps(one).iter().zip(&steps(other)) {
        let (far, near) = (a.length(), b.length());
        if far > NEAR && near > NEAR && a.normalize().distance(b.normalize()) > NEAR {
            break;
        }
        shared += far.min(near);
        if (far - near).abs() > NEAR {
            break;
        }
    }
    shared
}

/// What of a way lies beyond a length of it.
fn beyond(way: &[Vec2], mut skip: f32) -> Vec<Vec2> {
    let mut rest = Vec::new();
    for (a, b) in way.iter().zip(way.iter().skip(1)) {
        let step = a.distance(*b);
        if !rest.is_empty() {
            rest.push(*b);
        } else if skip < step - 0.01 {
            rest.push(*a + (*b - *a) * (skip / step));
            rest.push(*b);
        }
        skip = (skip - step).max(0.0);
    }
    rest
}

#[cfg(test)]
mod tests {
    use super::*;

    fn way() -> Vec<Vec2> {
        vec![
            Vec2::ZERO,
            Vec2::new(0.0, -20.0),
            Vec2::new(50.0, -20.0),
            Vec2::new(50.0, 0.0),
        ]
    }

    #[test]
    fn two_ways_part_where_one_turns() {
        let other = vec![Vec2::ZERO, Vec2::new(0.0, -20.0), Vec2::new(80.0, -20.0)];
        assert!((common(&way(), &other) - 70.0).abs() < 1e-3);
        let back = vec![Vec2::ZERO, Vec2::new(0.0, -20.0), Vec2::new(-8.0, -20.0)];
        assert!((common(&way(), &back) - 20.0).abs() < 1e-3);
        assert!(common(&way(), &[Vec2::X, Vec2::ZERO]) < 1e-3);
    }

    #[test]
    fn what_is_beyond_begins_where_the_shared_way_ends() {
        let rest = beyond(&way(), 30.0);
        assert_eq!(rest.first(), Some(&Vec2::new(10.0, -20.0)));
        assert_eq!(rest.last(), Some(&Vec2::new(50.0, 0.0)));
        assert!((length(&rest) - 60.0).abs() < 1e-3);
        assert_eq!(beyond(&way(), 0.0), way());
        assert!(beyond(&way(), 90.0).is_empty());
    }
}
