//! What the pointer finds on the scene: a sentence under it, a close view on a click where there is one.
//!
//! It does not cover the keyboard: places have keys of their own, and the same sentences can be listed.

use bevy::math::Vec2;
use bevy_egui::egui::{Id, Pos2, Rect, Response, Sense, Ui};

use crate::session::view::{ApplianceKind, StreetView, WireView};
use crate::window::both;
use crate::window::link::Wish;
use crate::window::panels::Page;

use super::callouts::point;
use super::frame::Frame;
use super::plan::Plan;
use super::taken;

/// Half the size of a house next door, as it is found.
const NEIGHBOR: Vec2 = Vec2::new(38.0, 60.0);
/// The least half of a person.
const PERSON: Vec2 = Vec2::new(20.0, 34.0);
/// How far from the pointer a conductor may be, and how much farther than the nearest one to be in the same lane, points.
const REACH: f32 = 9.0;
const LANE: f32 = 1.5;

/// Lets the pointer find everything.
pub(super) fn answer(ui: &Ui, street: &StreetView, plan: &Plan, frame: Frame, page: &mut Page<'_>) {
    conductors(ui, street, plan, frame);
    for appliance in &street.appliances {
        if let Some(spot) = plan.house.spots.get(&appliance.id) {
            let cover = spot.cover();
            let rect = around(frame, cover.center(), cover.half_size());
            let told = with_gauge(&appliance.sentence, gauge_of(appliance.kind), page);
            region(ui, &appliance.id, rect, &told, Sense::hover());
        }
    }
    for neighbor in &street.neighbors {
        if let Some(at) = plan.anchors.get(&neighbor.id) {
            let rect = around(frame, *at, NEIGHBOR);
            region(ui, &neighbor.id, rect, &neighbor.sentence, Sense::hover());
        }
    }
    for person in &street.people {
        if let Some(at) = plan.anchors.get(&person.id) {
            let rect = taken::person(person, *at);
            let half = rect.half_size().max(PERSON);
            let rect = around(frame, rect.center(), half);
            region(ui, &person.id, rect, &person.sentence, Sense::hover());
        }
    }
    for device in &street.devices {
        if let Some(rect) = plan.devices.get(&device.id) {
            let rect = around(frame, rect.center(), rect.half_size() + Vec2::splat(5.0));
            let id = format!("device-{}", device.id);
            region(ui, &id, rect, &device.sentence, Sense::hover());
        }
    }
    for equipment in &street.equipment {
        if let Some(rect) = plan.boxes.get(&equipment.id) {
            let rect = around(frame, rect.center(), rect.half_size() + Vec2::splat(3.0));
            let id = format!("open-{}", equipment.id);
            // Not walked to by Tab: the place's button is.
            let response = region(ui, &id, rect, &equipment.sentence, Sense::CLICK);
            page.on(&response, || Wish::Place(equipment.place.clone()));
        }
    }
    let generator = around(
        frame,
        plan.generator - Vec2::Y * 30.0,
        Vec2::new(42.0, 36.0),
    );
    if let Some(place) = street.places.iter().find(|p| p.id == "generator") {
        let response = region(
            ui,
            "open-generator",
            generator,
            &with_gauge(&place.sentence, Some("window-gauge-load"), page),
            Sense::CLICK,
        );
        page.on(&response, || Wish::Place(place.id.clone()));
    }
}

fn conductors(ui: &Ui, street: &StreetView, plan: &Plan, frame: Frame) {
    for wire in &street.wires {
        let Some(route) = plan.routes.get(&wire.id) else {
            continue;
        };
        for (i, piece) in route.pieces.iter().enumerate() {
            for (j, part) in piece.chunks(6).enumerate() {
                let (Some(a), Some(b)) = (part.first(), part.last()) else {
                    continue;
                };
                let rect = Rect::from_two_pos(point(frame, *a), point(frame, *b)).expand(7.0);
                let id = format!("{}/{i}/{j}", wire.id);
                let response = ui.interact(rect, Id::new(("scene", id)), Sense::hover());
                let pointer = ui.input(|input| input.pointer.hover_pos());
                if let Some(at) = pointer.filter(|_| response.hovered()) {
                    response.on_hover_text(lane(street, plan, frame, at));
                }
            }
        }
    }
}

/// What is told of every conductor in the lane under the pointer, a line each: circuits share lanes.
fn lane(street: &StreetView, plan: &Plan, frame: Frame, at: Pos2) -> String {
    let away = |wire: &WireView| {
        let pieces = plan
            .routes
            .get(&wire.id)
            .into_iter()
            .flat_map(|r| &r.pieces);
        let parts = pieces.flat_map(|piece| piece.windows(2));
        let distances = parts.map(|pair| match pair {
            [from, to] => distance(at, point(frame, *from), point(frame, *to)),
            _ => f32::INFINITY,
        });
        distances.fold(f32::INFINITY, f32::min)
    };
    let all = street.wires.iter().map(|wire| (away(wire), wire));
    let near: Vec<_> = all.filter(|(away, _)| *away <= REACH).collect();
    let nearest = near.iter().map(|(away, _)| *away).fold(REACH, f32::min);
    let mut told: Vec<&str> = Vec::new();
    for (away, wire) in near {
        if away <= nearest + LANE && !told.contains(&wire.sentence.as_str()) {
            told.push(&wire.sentence);
        }
    }
    told.join("\n")
}

/// How far a point is from a part of a line.
fn distance(at: Pos2, from: Pos2, to: Pos2) -> f32 {
    let along = to - from;
    let length = along.length_sq();
    let share = if length > 0.0 {
        ((at - from).dot(along) / length).clamp(0.0, 1.0)
    } else {
        0.0
    };
    at.distance(from + along * share)
}

/// Message id of what the gauge of a thing shows that has one.
fn gauge_of(kind: ApplianceKind) -> Option<&'static str> {
    use ApplianceKind as K;
    match kind {
        K::Fridge | K::Freezer => Some("window-gauge-warmth"),
        K::Sump => Some("window-gauge-water"),
        K::Medical => Some("window-gauge-missed"),
        K::Device
        | K::Lamp
        | K::Microwave
        | K::Countertop
        | K::Range
        | K::Furnace
        | K::WaterHeater
        | K::Heater
        | K::Drum
        | K::Well
        | K::AirConditioner
        | K::Fan
        | K::Television
        | K::Computer
        | K::Machine
        | K::Charger => None,
    }
}

/// What is told of a thing, and below it what its gauge shows.
fn with_gauge(sentence: &str, gauge: Option<&str>, page: &Page<'_>) -> String {
    let Some(gauge) = gauge else {
        return sentence.to_owned();
    };
    let gauge = page.say(gauge);
    both::each([sentence, &gauge], |parts| parts.join("\n"))
}

fn around(frame: Frame, at: Vec2, half: Vec2) -> Rect {
    Rect::from_two_pos(point(frame, at - half), point(frame, at + half))
}

fn region(ui: &Ui, id: &str, rect: Rect, sentence: &str, sense: Sense) -> Response {
    let response = ui.interact(rect, Id::new(("scene", id)), sense);
    if sentence.is_empty() {
        response
    } else {
        response.on_hover_text(sentence)
    }
}

#[cfg(test)]
mod tests {
    use bevy_egui::egui::pos2;

    use super::*;
    use crate::session::view::WireKind;
    use crate::window::scene::frame::Look;
    use crate::window::scene::routes::Route;

    #[test]
    fn all_circuits_of_a_lane_are_told_and_none_of_another() {
        let wire = |id: &str| WireView {
            id: id.to_owned(),
            kind: WireKind::Branch,
            sentence: format!("{id}: dead"),
            ..WireView::default()
        };
        let street = StreetView {
            wires: ["fridge", "sump", "lamps"].map(wire).to_vec(),
            ..StreetView::default()
        };
        let mut plan = Plan::new(&street);
        for (id, y) in [("fridge", 400.0), ("sump", 400.0), ("lamps", 412.0)] {
            let route = Route {
                pieces: vec![vec![Vec2::new(500.0, y), Vec2::new(700.0, y)]],
                ..Route::default()
            };
            plan.routes.insert(id.to_owned(), route);
        }
        let frame = Frame::new(Vec2::new(1280.0, 720.0), Look::default());
        let at = point(frame, Vec2::new(600.0, 401.0));
        let told = lane(&street, &plan, frame, pos2(at.x, at.y));
        assert_eq!(told, "fridge: dead\nsump: dead");
    }
}
