//! Phasors at a place: a dial for each point, with an arrow for each leg, and the same in words.
//!
//! Leg 1 points to the right; leg 2 is drawn counterclockwise from it, as which one leads isn't known.
//! An arrow that reaches the ring stands for 120 V.

use bevy_egui::egui::{Align2, Painter, Pos2, Sense, Stroke, Ui, Vec2, vec2};

use crate::session::view::PhasorView;
use crate::window::fonts;
use crate::window::theme;
use crate::window::theme::Ink;

use super::aside;

/// Size of a dial, and of the ring that stands for the volts of a leg, points.
const DIAL: Vec2 = Vec2::new(150.0, 112.0);
const RING: f32 = 40.0;
const RING_V: f64 = 120.0;
/// The longest arrow, as a share of the ring: a leg that gets twice its volts reaches the dial's edge.
const MOST: f64 = 1.35;

/// A dial for each point.
pub(crate) fn dials(ui: &mut Ui, views: &[PhasorView]) {
    for view in views {
        ui.horizontal(|ui| {
            let (rect, _) = ui.allocate_exact_size(DIAL, Sense::hover());
            dial(&ui.painter_at(rect), rect.center(), view);
            ui.vertical(|ui| aside(ui, &view.sentence));
        });
    }
}

fn dial(painter: &Painter, middle: Pos2, view: &PhasorView) {
    let faint = Stroke::new(1.0, theme::OUTLINE.egui());
    painter.circle_stroke(middle, RING, faint);
    for arm in [vec2(RING, 0.0), vec2(0.0, RING)] {
        painter.line_segment([middle - arm, middle + arm], faint);
    }
    let [one, two] = view.legs_v;
    arrow(painter, middle, (one, 0.0), ("1", theme::ORANGE));
    let turned = view.degrees.unwrap_or(if one > two { 180.0 } else { 0.0 });
    arrow(painter, middle, (two, turned), ("2", theme::SKY_BLUE));
}

/// An arrow of a length in volts, turned counterclockwise by degrees, with the leg's number at its tip.
#[expect(clippy::cast_possible_truncation, reason = "a screen is coarser")]
fn arrow(painter: &Painter, from: Pos2, (volts, degrees): (f64, f64), (name, ink): (&str, Ink)) {
    if volts < 1.0 {
        return;
    }
    let length = RING * (volts / RING_V).min(MOST) as f32;
    let along = Vec2::angled(-(degrees as f32).to_radians());
    let tip = from + along * length;
    let stroke = Stroke::new(3.0, ink.egui());
    painter.line_segment([from, tip], stroke);
    for side in [along.rot90(), -along.rot90()] {
        painter.line_segment([tip, tip - along * 9.0 + side * 5.0], stroke);
    }
    // Two arrows on one another keep their numbers apart.
    let aside = if name == "1" { -8.0 } else { 8.0 };
    painter.text(
        tip + along * 9.0 + vec2(0.0, aside),
        Align2::CENTER_CENTER,
        name,
        fonts::bold(14.0),
        theme::CREAM.egui(),
    );
}
