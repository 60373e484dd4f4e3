//! What of the scene cards keep off, and how much: people and the engine most, then things, the house, the line.
//!
//! It is told as shapes of the plan, from the same places that they are drawn at.
//! It does not cover words, which keep off each other: see [`super::callouts`].

use bevy::math;
use bevy::math::Vec2;
use bevy_egui::egui::{Pos2, Rect, pos2};

use crate::session::view::{PersonState, PersonView, StreetView, WireKind};

use super::callouts::{point, screen};
use super::coverage::{Coverage, Weight};
use super::frame::Frame;
use super::plan::{GROUND, NEUTRAL, PHASE, Plan, crew_side};
use super::rooms::{CELLAR_FLOOR, LEFT, RIGHT, SHED};
use super::wires;

/// How far the generator reaches from its anchor: to each side, up and down, in the plan's units.
const GENERATOR: (f32, f32, f32) = (42.0, 36.0, 32.0);
/// The same of a sign at a broken wire.
const SIGN: (f32, f32, f32) = (17.0, 18.0, 12.0);
/// The meter on the outer wall.
const METER: math::Rect = math::Rect {
    min: Vec2::new(436.0, 442.0),
    max: Vec2::new(456.0, 470.0),
};

/// What a person takes, whose place is at an anchor: all of them, and in the bucket that too.
pub(super) fn person(view: &PersonView, at: Vec2) -> math::Rect {
    let up = match view.state {
        PersonState::Working | PersonState::Harmed | PersonState::Unwell => at.y < GROUND - 100.0,
        PersonState::Well | PersonState::Back => false,
    };
    let (left, right, top, bottom) = match (view.id.as_str(), up) {
        ("crew", true) => (18.0, 18.0, PHASE + 2.0, PHASE + 88.0),
        ("crew", false) => (14.0, 14.0, GROUND - 70.0, GROUND),
        ("learner", _) => (14.0, 14.0, at.y - 70.0, at.y),
        // With a child at their side.
        _ => (34.0, 14.0, at.y - 66.0, at.y),
    };
    math::Rect::new(at.x - left, top, at.x + right, bottom)
}

/// Everything that is drawn, as heavy as it is to lie on it.
pub(super) fn coverage(street: &StreetView, plan: &Plan, frame: Frame) -> Coverage {
    let mut all = Coverage::new(screen(frame));
    line(&mut all, street, plan, frame);
    house(&mut all, plan, frame);
    things(&mut all, street, plan, frame);
    all
}

/// A rectangle of the plan as it is seen.
fn seen(frame: Frame, min: Vec2, max: Vec2) -> Rect {
    Rect::from_two_pos(point(frame, min), point(frame, max))
}

/// Poles with what hangs on them, wires out of doors, the crew's truck, houses next door.
fn line(all: &mut Coverage, street: &StreetView, plan: &Plan, frame: Frame) {
    for (x, size) in &plan.neighbors {
        let half = Vec2::new(38.0, 100.0) * *size;
        let min = Vec2::new(x - half.x, GROUND - half.y);
        let max = Vec2::new(x + half.x, GROUND);
        all.lay(seen(frame, min, max), Weight::Drawn);
    }
    for (_, x) in &plan.poles {
        let arm = 26.0 * plan.pole_scale;
        let (foot, top) = (Vec2::new(x + 5.0, GROUND), PHASE - 46.0);
        all.lay(seen(frame, Vec2::new(x - 5.0, top), foot), Weight::Light);
        let arm = (
            Vec2::new(x - arm, PHASE - 8.0),
            Vec2::new(x + arm, PHASE + 14.0),
        );
        all.lay(seen(frame, arm.0, arm.1), Weight::Drawn);
    }
    if street.poles.iter().any(|pole| pole.transformer) {
        let x = plan.transformer;
        let can = (
            Vec2::new(x + 2.0, NEUTRAL - 76.0),
            Vec2::new(x + 42.0, NEUTRAL + 6.0),
        );
        all.lay(seen(frame, can.0, can.1), Weight::Thing);
    }
    for rect in plan.devices.values() {
        all.lay(seen(frame, rect.min, rect.max), Weight::Thing);
    }
    truck(all, street, plan, frame);
    for wire in &street.wires {
        let outside = match wire.kind {
            WireKind::Span | WireKind::Drop | WireKind::NeighborDrop | WireKind::Cord => true,
            WireKind::Feeder | WireKind::Inlet | WireKind::Branch | WireKind::Bus => false,
        };
        let route = plan.routes.get(&wire.id).filter(|_| outside);
        for piece in route.iter().flat_map(|route| &route.pieces) {
            for pair in piece.windows(2) {
                if let (Some(from), Some(to)) = (pair.first(), pair.last()) {
                    all.lay_line(point(frame, *from), point(frame, *to), Weight::Drawn);
                }
            }
        }
    }
}

/// The crew's truck and, while somebody is up, its boom.
fn truck(all: &mut Coverage, street: &StreetView, plan: &Plan, frame: Frame) {
    let Some(crew) = street.people.iter().find(|person| person.id == "crew") else {
        return;
    };
    let pole = plan.poles.iter().find(|(id, _)| *id == crew.place);
    let Some((_, x)) = pole else {
        return;
    };
    let to = |dx: f32, y: f32| Vec2::new(x + dx * crew_side(*x), y);
    let body = seen(frame, to(14.0, GROUND - 60.0), to(120.0, GROUND));
    all.lay(body, Weight::Drawn);
    let up = match crew.state {
        PersonState::Working | PersonState::Harmed | PersonState::Unwell => true,
        PersonState::Well | PersonState::Back => false,
    };
    if up {
        let (foot, elbow, bucket) = (
            to(40.0, GROUND - 46.0),
            to(78.0, PHASE + 190.0),
            to(34.0, PHASE + 62.0),
        );
        for (a, b) in [(foot, elbow), (elbow, bucket)] {
            all.lay_line(point(frame, a), point(frame, b), Weight::Drawn);
        }
    }
}

/// The house with its roof and garage, and the shed.
fn house(all: &mut Coverage, plan: &Plan, frame: Frame) {
    let house = &plan.house;
    let eaves = house.eaves();
    let body = seen(
        frame,
        Vec2::new(LEFT, eaves),
        Vec2::new(RIGHT, CELLAR_FLOOR + 10.0),
    );
    all.lay(body, Weight::Drawn);
    let (low, high) = (eaves + 7.0, eaves - 114.0);
    let roof = seen(frame, Vec2::new(430.0, high), Vec2::new(806.0, low));
    all.lay_where(roof, Weight::Drawn, |at| {
        let down = (at.y - roof.top()) / roof.height().max(1.0);
        (at.x - roof.center().x).abs() <= roof.width() / 2.0 * down
    });
    if house.right > RIGHT {
        let (min, max) = (
            Vec2::new(RIGHT, 404.0),
            Vec2::new(house.right + 12.0, GROUND),
        );
        all.lay(seen(frame, min, max), Weight::Drawn);
    }
    if house.shed {
        let (min, max) = (
            Vec2::new(SHED - 4.0, GROUND - 116.0),
            Vec2::new(SHED + 70.0, GROUND),
        );
        all.lay(seen(frame, min, max), Weight::Light);
    }
    all.lay(seen(frame, METER.min, METER.max), Weight::Kept);
    let head = house.weatherhead();
    let (min, max) = (head - Vec2::new(12.0, 14.0), head + Vec2::new(8.0, 22.0));
    all.lay(seen(frame, min, max), Weight::Kept);
}

/// Things in the house, boxes on its walls, the engine, people, and signs at broken wires.
fn things(all: &mut Coverage, street: &StreetView, plan: &Plan, frame: Frame) {
    for thing in &street.appliances {
        if let Some(spot) = plan.house.spots.get(&thing.id) {
            let cover = spot.cover();
            all.lay(seen(frame, cover.min, cover.max), Weight::Thing);
        }
    }
    for rect in plan.boxes.values() {
        all.lay(seen(frame, rect.min, rect.max), Weight::Kept);
    }
    for view in &street.people {
        if let Some(at) = plan.anchors.get(&view.id) {
            let rect = person(view, *at);
            all.lay(seen(frame, rect.min, rect.max), Weight::Kept);
        }
    }
    let engine = plan.anchors.get("generator").map(|at| (*at, GENERATOR));
    let signs = wires::signs(street, plan).into_iter();
    let signs = signs.map(|(_, at)| (at, SIGN));
    for (at, (dx, above, below)) in engine.into_iter().chain(signs) {
        let (min, max) = (at - Vec2::new(dx, above), at + Vec2::new(dx, below));
        all.lay(seen(frame, min, max), Weight::Kept);
    }
}

/// Where words lie already.
pub(super) fn words(all: &mut Coverage, taken: &[Rect]) {
    for rect in taken {
        all.lay(*rect, Weight::Words);
    }
}

/// A disk that stays free.
pub(super) fn disk(all: &mut Coverage, center: Pos2, radius: f32) {
    let around = Rect::from_center_size(center, bevy_egui::egui::Vec2::splat(radius * 2.0));
    all.lay_where(around, Weight::Words, |at| {
        pos2(at.x, at.y).distance(center) <= radius
    });
}
