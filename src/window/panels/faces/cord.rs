//! A cord with its ends: what it carries, whether it lies coiled or flat, and what each end is in.
//!
//! An end is drawn by what it is in: an outlet's slots, another cord's jacket, an appliance's box, or nothing; the words stand below.
//! The color of the jacket is shown at both ends, as its name may speak of it.

use bevy_egui::egui::{
    Align, CornerRadius, Layout, Painter, Pos2, Rect, Sense, Stroke, StrokeKind, Ui, pos2, vec2,
};

use crate::session::view::{CloseView, ControlKind, ControlView, FaceView, Jacket};
use crate::window::panels::{aside, timeline};
use crate::window::theme;

/// What an end of a cord is in, or what is in it.
#[derive(Clone, Copy)]
enum Joined {
    Nothing,
    /// An outlet, of the set or of a wall, or the house's inlet.
    Outlet,
    /// Another cord, of this color.
    Cord(Jacket),
    Appliance,
}

/// Draws the cord from its generator's end to its other end.
pub(super) fn strip(ui: &mut Ui, face: &FaceView, controls: &[&ControlView], view: &CloseView) {
    let size = vec2(ui.available_width(), 36.0);
    let (rect, _) = ui.allocate_exact_size(size, Sense::hover());
    let painter = ui.painter();
    let y = rect.center().y;
    let fed = face.ends.first().map(|e| e.fed).unwrap_or_default();
    let (left, right) = (rect.left() + END, rect.right() - END);
    let coiled = controls
        .iter()
        .any(|c| c.kind == ControlKind::Lay && c.position_id == "coiled");
    if coiled {
        let middle = left.midpoint(right);
        for i in -2..=2_i8 {
            let at = pos2(middle + 9.0 * f32::from(i), y);
            let ink = theme::fed_ink(fed).egui();
            painter.circle_stroke(at, 10.0, Stroke::new(2.0, ink));
        }
        timeline::pattern(painter, pos2(left, y), middle - 28.0, fed);
        timeline::pattern(painter, pos2(middle + 28.0, y), right, fed);
    } else {
        timeline::pattern(painter, pos2(left, y), right, fed);
    }
    let [near, far] = joined(face, controls, view);
    for (at, side, end) in [(pos2(left, y), -1.0, near), (pos2(right, y), 1.0, far)] {
        self::end(painter, at, side, (face.jacket, end));
    }
}

/// How long an end is with what it is in, points, and how far the jacket is drawn beside it: between them lies what feeds the cord.
const END: f32 = 46.0;
const SLEEVE: f32 = 26.0;

/// What is said of each end, at its own side: where it is plugged in, or what is plugged into it.
pub(super) fn ends(ui: &mut Ui, face: &FaceView, controls: &[&ControlView]) {
    let mut plugs = controls.iter().filter(|c| c.kind == ControlKind::Plug);
    let near = plugs.next().map(|c| c.position.clone());
    let far = plugs.next().map(|c| c.position.clone());
    let taken = face.sockets.first().map(|s| s.plugged.clone());
    let half = ui.available_width() / 2.0 - 6.0;
    ui.horizontal_top(|ui| {
        for (text, align) in [(near, Align::LEFT), (far.or(taken), Align::RIGHT)] {
            let size = vec2(half, 0.0);
            ui.allocate_ui_with_layout(size, Layout::top_down(align), |ui| {
                ui.set_width(half);
                aside(ui, &text.unwrap_or_default());
            });
        }
    });
}

/// What both ends are in, the generator's first.
fn joined(face: &FaceView, controls: &[&ControlView], view: &CloseView) -> [Joined; 2] {
    let jacket = |id: &str| {
        let mut cords = view.faces.iter().filter(|f| f.id != face.id);
        cords.find(|f| f.id == id).map(|f| f.jacket)
    };
    let own = |control: &&ControlView| match control.position_id.as_str() {
        "stowed" | "unplugged" => Joined::Nothing,
        place => jacket(place).map_or(Joined::Outlet, Joined::Cord),
    };
    let mut plugs = controls.iter().filter(|c| c.kind == ControlKind::Plug);
    let near = plugs.next().map_or(Joined::Nothing, own);
    let user = face.sockets.first().map_or("", |s| s.user.as_str());
    let taken = match (user, jacket(user)) {
        ("", _) => Joined::Nothing,
        (_, Some(jacket)) => Joined::Cord(jacket),
        (_, None) => Joined::Appliance,
    };
    [near, plugs.next().map_or(taken, own)]
}

/// The end at a point, with what it is in at the side that is away from the cord.
fn end(painter: &Painter, at: Pos2, side: f32, (jacket, joined): (Jacket, Joined)) {
    let own = theme::jacket_ink(jacket).egui();
    let block = |x: f32, size| Rect::from_center_size(at + vec2(side * x, 0.0), size);
    let sleeve = block(-SLEEVE / 2.0, vec2(SLEEVE, 8.0));
    painter.rect_filled(sleeve, CornerRadius::same(3), own);
    let edge = Stroke::new(1.5, theme::PORCELAIN.egui());
    let plug = block(8.0, vec2(16.0, 18.0));
    painter.rect_filled(plug, CornerRadius::same(4), own);
    painter.rect_stroke(plug, CornerRadius::same(4), edge, StrokeKind::Inside);
    match joined {
        Joined::Nothing => {
            for dy in [-4.0, 4.0] {
                let from = at + vec2(side * 16.0, dy);
                painter.line_segment([from, from + vec2(side * 8.0, 0.0)], edge);
            }
        }
        Joined::Outlet => {
            let plate = block(31.0, vec2(28.0, 32.0));
            painter.rect_filled(plate, CornerRadius::same(4), theme::INK.egui());
            painter.rect_stroke(plate, CornerRadius::same(4), edge, StrokeKind::Inside);
            for dx in [-5.0, 5.0] {
                let slot = plate.center() + vec2(dx, -4.0);
                let slot = Rect::from_center_size(slot, vec2(2.6, 9.0));
                painter.rect_filled(slot, CornerRadius::same(1), theme::PORCELAIN.egui());
            }
            let earth = plate.center() + vec2(0.0, 8.0);
            painter.circle_filled(earth, 2.4, theme::PORCELAIN.egui());
        }
        Joined::Cord(other) => {
            let ink = theme::jacket_ink(other).egui();
            let connector = block(24.0, vec2(16.0, 18.0));
            painter.rect_filled(connector, CornerRadius::same(4), ink);
            painter.rect_stroke(connector, CornerRadius::same(4), edge, StrokeKind::Inside);
            let on = block(39.0, vec2(14.0, 8.0));
            painter.rect_filled(on, CornerRadius::same(3), ink);
        }
        Joined::Appliance => {
            let case = block(31.0, vec2(28.0, 32.0));
            painter.rect_filled(case, CornerRadius::same(4), theme::ENAMEL.egui());
            let ink = Stroke::new(2.0, theme::DARK_TEXT.egui());
            painter.circle_stroke(case.center(), 7.0, ink);
            let up = case.center() - vec2(0.0, 10.0);
            painter.line_segment([up, up + vec2(0.0, 8.0)], ink);
        }
    }
}
