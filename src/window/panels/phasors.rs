//! Phasors at a place: a dial for each point, with an arrow for the volts of each leg and a thin line for its amps, and the same in words.
//!
//! Volts and amps differ in ink, width and head, and what stands at the tip, the sign of the unit with the number of the leg, says which: what a conductor is fed by has inks of its own.
//! The volts of leg 1 point to the right; what stands counterclockwise of them comes earlier.
//! An arrow of volts that reaches the ring stands for 120 V; the larger of the two of amps reaches three quarters of it.

use bevy_egui::egui::{Align2, Painter, Pos2, Sense, Stroke, Ui, Vec2, vec2};

use crate::session::view::PhasorView;
use crate::window::fonts;
use crate::window::mirror;
use crate::window::theme;

use super::{Page, aside, body};

/// Size of a dial, and of the ring that stands for the volts of a leg, points.
const DIAL: Vec2 = Vec2::new(196.0, 160.0);
const RING: f32 = 58.0;
const RING_V: f64 = 120.0;
/// Degrees within which two arrows lie on one another.
const NEAR: f64 = 30.0;
/// The longest arrow, as a share of the ring: a leg that gets twice its volts reaches the dial's edge.
const MOST: f64 = 1.35;

/// What to look for, the key by marks and words, and a dial for each point.
pub(crate) fn panel(ui: &mut Ui, views: &[PhasorView], page: &Page<'_>) {
    if views.is_empty() {
        return;
    }
    body(ui, &page.say("window-phasors-see"));
    ui.scope(|ui| key(ui, page));
    mirror::steady_with_words(ui, |ui| dials(ui, views));
}

/// What the marks stand for.
fn key(ui: &mut Ui, page: &Page<'_>) {
    ui.spacing_mut().interact_size.y = 18.0;
    for (id, of) in [
        ("window-phasors-volts", Of::Volts),
        ("window-phasors-amps", Of::Amps),
    ] {
        ui.horizontal(|ui| {
            let (rect, _) = ui.allocate_exact_size(vec2(SAMPLE, 18.0), Sense::hover());
            let (from, to) = (rect.left_center(), rect.right_center() - vec2(4.0, 0.0));
            match of {
                Of::Volts => thick(ui.painter(), from, to),
                Of::Amps => thin(ui.painter(), from, to),
            }
            aside(ui, &page.say(id));
        });
    }
}

/// Length of a sample in the key, points.
const SAMPLE: f32 = 44.0;

/// What an arrow stands for.
enum Of {
    Volts,
    Amps,
}

/// A dial for each point.
fn dials(ui: &mut Ui, views: &[PhasorView]) {
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
        aside(ui, &view.uneven);
    }
}

fn dial(painter: &Painter, middle: Pos2, view: &PhasorView) {
    let faint = Stroke::new(1.0, theme::OUTLINE.egui());
    painter.circle_stroke(middle, RING, faint);
    for arm in [vec2(RING, 0.0), vec2(0.0, RING)] {
        painter.line_segment([middle - arm, middle + arm], faint);
    }
    let [one, two] = view.legs_v;
    let turned = view.degrees.unwrap_or(if one > two { 180.0 } else { 0.0 });
    let apart = turned.abs() > NEAR;
    volts(painter, middle, (one, 0.0), ("V1", apart));
    volts(painter, middle, (two, turned), ("V2", apart));
    let most = view.amps.iter().map(|a| a.amps).fold(0.0, f64::max);
    for turned in &view.amps {
        let name = if turned.leg == 1 { "A1" } else { "A2" };
        amps(painter, middle, (turned.amps / most, turned.degrees), name);
    }
}

/// A thin line with a disk at its end.
fn thin(painter: &Painter, from: Pos2, tip: Pos2) {
    let ink = theme::YELLOW.egui();
    painter.line_segment([from, tip], Stroke::new(1.6, ink));
    painter.circle_filled(tip, 3.4, ink);
}

/// A thick arrow with two barbs.
fn thick(painter: &Painter, from: Pos2, tip: Pos2) {
    let along = (tip - from).normalized();
    let stroke = Stroke::new(3.0, theme::CREAM.egui());
    painter.line_segment([from, tip], stroke);
    for side in [along.rot90(), -along.rot90()] {
        painter.line_segment([tip, tip - along * 9.0 + side * 5.0], stroke);
    }
}

/// The line of amps, as a share of the larger.
#[expect(clippy::cast_possible_truncation, reason = "a screen is coarser")]
fn amps(painter: &Painter, from: Pos2, (share, degrees): (f64, f64), name: &str) {
    let along = Vec2::angled(-(degrees as f32).to_radians());
    let tip = from + along * RING * 0.75 * share as f32;
    thin(painter, from, tip);
    painter.text(
        tip + along * 14.0,
        Align2::CENTER_CENTER,
        name,
        fonts::regular(13.5),
        theme::YELLOW.egui(),
    );
}

/// The arrow of volts, turned counterclockwise by degrees, with the leg's number at its tip.
#[expect(clippy::cast_possible_truncation, reason = "a screen is coarser")]
fn volts(painter: &Painter, from: Pos2, (volts, degrees): (f64, f64), (name, apart): (&str, bool)) {
    if volts < 1.0 {
        return;
    }
    let length = RING * (volts / RING_V).min(MOST) as f32;
    let along = Vec2::angled(-(degrees as f32).to_radians());
    let tip = from + along * length;
    thick(painter, from, tip);
    // Beyond the ring a number lies on no line; of two arrows on one another each has its own side.
    let aside = match (apart, name) {
        (true, _) => 0.0,
        (false, "V1") => -9.0,
        (false, _) => 9.0,
    };
    painter.text(
        from + along * (length.max(RING) + 15.0) + vec2(0.0, aside),
        Align2::CENTER_CENTER,
        name,
        fonts::bold(15.0),
        theme::CREAM.egui(),
    );
}
