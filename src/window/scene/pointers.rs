//! What the pointer finds on the scene: a sentence under it, a close view on a click where there is one.
//!
//! It does not cover the keyboard: places have keys of their own, and the same sentences can be listed.

use bevy::math::Vec2;
use bevy_egui::egui::{Id, Rect, Response, Sense, Ui};

use crate::session::view::StreetView;
use crate::window::link::Wish;
use crate::window::panels::Page;

use super::callouts::point;
use super::frame::Frame;
use super::plan::Plan;

/// Half the size of what is found, and how far above its anchor it is.
const PERSON: (Vec2, Vec2) = (Vec2::new(26.0, 40.0), Vec2::ZERO);
const NEIGHBOR: (Vec2, Vec2) = (Vec2::new(38.0, 60.0), Vec2::ZERO);

/// Lets the pointer find everything.
pub(super) fn answer(ui: &Ui, street: &StreetView, plan: &Plan, frame: Frame, page: &mut Page<'_>) {
    conductors(ui, street, plan, frame);
    for appliance in &street.appliances {
        if let Some(spot) = plan.house.spots.get(&appliance.id) {
            let cover = spot.cover();
            let rect = around(frame, cover.center(), cover.half_size());
            region(ui, &appliance.id, rect, &appliance.sentence, Sense::hover());
        }
    }
    let people = street.people.iter().map(|p| (&p.id, &p.sentence, PERSON));
    let neighbors = street
        .neighbors
        .iter()
        .map(|n| (&n.id, &n.sentence, NEIGHBOR));
    for (id, sentence, (half, shift)) in people.chain(neighbors) {
        if let Some(at) = plan.anchors.get(id) {
            region(
                ui,
                id,
                around(frame, *at + shift, half),
                sentence,
                Sense::hover(),
            );
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
            &place.sentence,
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
                region(ui, &id, rect, &wire.sentence, Sense::hover());
            }
        }
    }
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
