//! Phasors at a place: a dial for each point, with an arrow for the volts of each leg and a thin one for its amps, and the same in words.
//!
//! Volts and amps differ in ink, width and head, and what stands at the tip, the sign of the unit with the number of the leg, says which: what a conductor is fed by has inks of its own.
//! The volts of leg 1 point to the right; what stands counterclockwise of them comes earlier.
//! An arrow of volts that reaches the ring stands for 120 V; the larger of the two of amps reaches three quarters of it.

use bevy_egui::egui::{Align2, Painter, Pos2, Sense, Stroke, Ui, Vec2, vec2};

use crate::session::view::PhasorView;
use crate::window::fonts;
use crate::window::theme;

use super::aside;

/// Size of a dial, and of the ring that stands for the volts of a leg, points.
const DIAL: Vec2 = Vec2::new(176.0, 136.0);
const RING: f32 = 50.0;
const RING_V: f64 = 120.0;
/// The longest arrow, as a share of the ring: a leg that gets twice its volts reaches the dial's edge.
const MOST: f64 = 1.35;

/// A dial for each point.
pub(crate) fn dials(ui: &mut Ui, views: &[PhasorView]) {
    for view in views {
        ui.horizontal(|ui| {
            let (rect, _) = ui.allocate_exact_size(DIAL, Sense::hover());
            dial(&ui.painter_at(rect), rect.center(), view);
            ui.vertical(|ui| {
                aside(ui, &view.sentence);
                for amps in &view.amps {
                    aside(ui, &amps.sentence);
                }
            });
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
    arrow(painter, middle, (one, 0.0), "V1");
    let turned = view.degrees.unwrap_or(if one > two { 180.0 } else { 0.0 });
    arrow(painter, middle, (two, turned), "V2");
    let most = view.amps.iter().map(|a| a.amps).fold(0.0, f64::max);
    for amps in &view.amps {
        let name = if amps.leg == 1 { "A1" } else { "A2" };
        thin(painter, middle, (amps.amps / most, amps.degrees), name);
    }
}

/// A thin arrow with a disk for its head, for amps as a share of the larger.
#[expect(clippy::cast_possible_truncation, reason = "a screen is coarser")]
fn thin(painter: &Painter, from: Pos2, (share, degrees): (f64, f64), name: &str) {
    let along = Vec2::angled(-(degrees as f32).to_radians());
    let tip = from + along * RING * 0.75 * share as f32;
    let ink = theme::YELLOW.egui();
    painter.line_segment([from, tip], Stroke::new(1.6, ink));
    painter.circle_filled(tip, 3.4, ink);
    let beside = tip + along * 13.0;
    painter.text(
        beside,
        Align2::CENTER_CENTER,
        name,
        fonts::regular(11.0),
        ink,
    );
}

/// An arrow of a length in volts, turned counterclockwise by degrees, with the leg's number at its tip.
#[expect(clippy::cast_possible_truncation, reason = "a screen is coarser")]
fn arrow(painter: &Painter, from: Pos2, (volts, degrees): (f64, f64), name: &str) {
    if volts < 1.0 {
        return;
    }
    let length = RING * (volts / RING_V).min(MOST) as f32;
    let along = Vec2::angled(-(degrees as f32).to_radians());
    let tip = from + along * length;
    let stroke = Stroke::new(3.0, theme::CREAM.egui());
    painter.line_segment([from, tip], stroke);
    for side in [along.rot90(), -along.rot90()] {
        painter.line_segment([tip, tip - along * 9.0 + side * 5.0], stroke);
    }
    // Two arrows on one another keep their numbers apart.
    let aside = if name == "V1" { -8.0 } else { 8.0 };
    painter.text(
        tip + along * 11.0 + vec2(0.0, aside),
        Align2::CENTER_CENTER,
        name,
        fonts::bold(14.0),
        theme::CREAM.egui(),
    );
}
