//! How the scene is brought nearer and moved by hand: wheel, drag, two fingers, and three buttons in its corner.
//!
//! It does not cover keys: see [`crate::window::input`].

use bevy::math::Vec2;
use bevy_egui::egui::{
    Button, Id, Rect, Sense, TextWrapMode, Ui, WidgetInfo, WidgetType, pos2, vec2,
};

use crate::session::Detail;
use crate::window::both;
use crate::window::link::Wish;
use crate::window::mirror;
use crate::window::panels::Page;

use super::callouts::screen;
use super::frame::Frame;
use super::sight::See;

/// Size of a button, and the gap between two, points.
const SIZE: Vec2 = Vec2::new(84.0, 34.0);
const GAP: f32 = 6.0;
/// Height of a button with two languages, points.
const TWO_LINES: f32 = 54.0;
/// Turns of the wheel in points that bring things nearer by the factor e.
const WHEEL: f32 = 400.0;

/// Lets the scene be moved; says where the buttons stand.
pub(super) fn answer(ui: &mut Ui, frame: Frame, detail: Detail, page: &mut Page<'_>) -> Rect {
    let room = screen(frame);
    let ground = ui.interact(room, Id::new("scene-ground"), Sense::DRAG);
    let sight = frame.sight();
    let (factor, fingers) = ui.input(|input| {
        let wheel = (input.smooth_scroll_delta().y / WHEEL).exp();
        let fingers = input.multi_touch().map(|touch| touch.translation_delta);
        (input.zoom_delta() * wheel, fingers)
    });
    if ground.contains_pointer()
        && (factor - 1.0).abs() > 1e-4
        && let Some(at) = ui.input(|input| input.pointer.hover_pos())
    {
        let about = frame.plan(Vec2::new(at.x, at.y));
        page.out
            .push(Wish::See(See::Nearer(sight.nearer(factor, about))));
    }
    let by = fingers.unwrap_or_else(|| ground.drag_delta());
    if ground.dragged() && by.length() > 0.0 && sight.is_part() {
        let by = Vec2::new(by.x, by.y) / frame.points(1.0);
        page.out.push(Wish::See(See::Moved(sight.moved(-by))));
    }
    buttons(ui, frame, detail, page)
}

/// Nearer, farther, all, detail: one above the other in the upper corner at the end of a line.
fn buttons(ui: &mut Ui, frame: Frame, detail: Detail, page: &mut Page<'_>) -> Rect {
    let room = screen(frame);
    let part = frame.sight().is_part();
    let corner = pos2(room.right() - SIZE.x - 10.0, room.top() + 10.0);
    let corner = Rect::from_min_size(corner, vec2(SIZE.x, SIZE.y));
    let corner = mirror::across(ui.ctx(), corner, room).min;
    let all = page.say("window-sight-all");
    let (level, told) = match detail {
        Detail::Live => (1, "window-detail-live"),
        Detail::Numbers => (2, "window-detail-numbers"),
        Detail::Phasors => (3, "window-detail-phasors"),
    };
    let short = page.say("window-detail-short");
    let detail = both::each([&short], |[short]| format!("{short} {level}"));
    let see = |change| Wish::See(change);
    let signs = [
        ("+", "window-key-nearer", see(See::step(&frame, true)), true),
        (
            "−",
            "window-key-farther",
            see(See::step(&frame, false)),
            part,
        ),
        (&all, "window-key-whole", see(See::Whole), part),
        (&detail, told, Wish::Detail, true),
    ];
    let mut taken = Rect::from_min_size(corner, vec2(SIZE.x, SIZE.y));
    for (sign, id, wish, can) in signs {
        // What would change nothing is left out, so that no key stroke is spent on it.
        if !can {
            continue;
        }
        let at = pos2(
            corner.x,
            if sign == "+" {
                corner.y
            } else {
                taken.bottom() + GAP
            },
        );
        let high = if both::is_both(sign) {
            TWO_LINES
        } else {
            SIZE.y
        };
        let rect = Rect::from_min_size(at, vec2(SIZE.x, high));
        let name = page.say(id);
        let response = ui.put(rect, Button::new(sign).wrap_mode(TextWrapMode::Extend));
        response.widget_info(|| WidgetInfo::labeled(WidgetType::Button, true, &name));
        page.on(&response, || wish);
        response.on_hover_text(name);
        taken = taken.union(rect);
    }
    taken
}
