//! A cord with its ends: what it carries, whether it lies coiled or flat, and which end is plugged in.
//!
//! The color of the jacket is shown at both ends, as its name may speak of it.
//! A plugged end is a filled block, a loose one an outline; the words for both stand in the rows below.

use bevy_egui::egui::{
    CornerRadius, Painter, Pos2, Rect, Sense, Stroke, StrokeKind, Ui, pos2, vec2,
};

use crate::session::view::{ControlKind, ControlView, FaceView};
use crate::window::panels::timeline;
use crate::window::theme;

/// Draws the cord from its generator's end to its other end.
pub(super) fn strip(ui: &mut Ui, face: &FaceView, controls: &[&ControlView]) {
    let size = vec2(ui.available_width(), 30.0);
    let (rect, _) = ui.allocate_exact_size(size, Sense::hover());
    let painter = ui.painter();
    let y = rect.center().y;
    let fed = face.ends.first().map(|e| e.fed).unwrap_or_default();
    let (left, right) = (rect.left() + 18.0, rect.right() - 18.0);
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
    let mut plugs = controls.iter().filter(|c| c.kind == ControlKind::Plug);
    let near = plugs.next().is_some_and(|c| plugged(c));
    end(painter, pos2(left - 9.0, y), near);
    let taken = face.sockets.iter().any(|s| s.taken);
    let far = plugs.next().map_or(taken, |c| plugged(c));
    end(painter, pos2(right + 9.0, y), far);
    for sleeve in [left + SLEEVE / 2.0, right - SLEEVE / 2.0] {
        let sleeve = Rect::from_center_size(pos2(sleeve, y), vec2(SLEEVE, 8.0));
        let ink = theme::jacket_ink(face.jacket).egui();
        painter.rect_filled(sleeve, CornerRadius::same(3), ink);
    }
}

/// How far the jacket is drawn at each end, points: between them lies what feeds the cord.
const SLEEVE: f32 = 26.0;

fn plugged(control: &ControlView) -> bool {
    control.position_id != "stowed"
}

fn end(painter: &Painter, at: Pos2, plugged: bool) {
    let block = Rect::from_center_size(at, vec2(18.0, 16.0));
    if plugged {
        painter.rect_filled(block, CornerRadius::same(4), theme::CREAM.egui());
    } else {
        let stroke = Stroke::new(2.0, theme::OUTLINE.egui());
        painter.rect_stroke(block, CornerRadius::same(4), stroke, StrokeKind::Inside);
    }
}
