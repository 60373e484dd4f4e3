//! The tester: what it shows, and where its probes were last put.
//!
//! Its face is our own drawing and of no maker's instrument. Putting the probes to a point is a button, as every deed is.
//! It does not cover proving it on a source that is known to be live: that goes with every test and is said in the log.

use bevy_egui::egui;
use bevy_egui::egui::epaint::CubicBezierShape;
use bevy_egui::egui::{
    Align2, CornerRadius, Frame, Margin, Pos2, RichText, Sense, Shape, Stroke, StrokeKind, Ui,
    pos2, vec2,
};

use crate::session::Command;
use crate::session::view::{DeedView, ShownView};
use crate::window::fonts;
use crate::window::link::Wish;
use crate::window::theme;
use crate::window::theme::Ink;

use super::{Page, aside, card, subheading};

/// Width of the strip at the left in which the leads hang, points.
const STRIP: f32 = 34.0;
/// How far the two contacts of a point are from its middle.
const APART: f32 = 6.0;

/// The tester and the points that it can be put to.
pub(super) fn panel(ui: &mut Ui, points: &[&DeedView], page: &mut Page<'_>) {
    if points.is_empty() {
        return;
    }
    subheading(ui, &page.say("window-tester"));
    card(ui, theme::HAIRLINE, |ui| {
        let last = points.iter().find_map(|point| {
            let shown = point.shown.as_ref().filter(|shown| shown.last);
            shown.map(|shown| (*point, shown))
        });
        let from = case(ui, last, page);
        for point in points {
            let contact = self::point(ui, point, page);
            let touched = last.is_some_and(|(touched, _)| touched.line == point.line);
            if touched {
                leads(ui, from, contact);
            }
        }
    });
}

/// The case with its display; gives where the leads leave it.
fn case(ui: &mut Ui, last: Option<(&DeedView, &ShownView)>, page: &Page<'_>) -> Pos2 {
    let drawn = Frame::new()
        .fill(theme::RUBBER.mix(theme::INK, 0.35).egui())
        .stroke(Stroke::new(2.0, theme::STEEL.egui()))
        .corner_radius(CornerRadius::same(10))
        .inner_margin(Margin::symmetric(10, 8))
        .show(ui, |ui| {
            ui.set_width(ui.available_width());
            ui.horizontal(|ui| {
                let volts = last.map_or("– – –", |(_, shown)| shown.volts.as_str());
                display(ui, volts);
                ui.vertical(|ui| {
                    ui.spacing_mut().item_spacing.y = 1.0;
                    if let Some((point, shown)) = last {
                        strong(ui, &shown.word, 16.5, theme::CREAM);
                        strong(ui, &point.point, 13.5, theme::CREAM);
                        aside(ui, &shown.at);
                    } else {
                        aside(ui, &page.say("window-tester-rests"));
                    }
                });
            });
        });
    drawn.response.rect.left_bottom() + vec2(STRIP / 2.0 - 3.0, -1.0)
}

fn display(ui: &mut Ui, volts: &str) {
    let painter = ui.painter();
    let ink = theme::LEAD.egui();
    let shown = painter.layout_no_wrap(volts.to_owned(), fonts::bold(24.0), ink);
    let size = vec2((shown.size().x + 20.0).max(104.0), 48.0);
    let (rect, _) = ui.allocate_exact_size(size, Sense::hover());
    let painter = ui.painter();
    let corner = CornerRadius::same(4);
    painter.rect_filled(rect, corner, theme::INK.egui());
    let edge = Stroke::new(1.5, theme::HAIRLINE.egui());
    painter.rect_stroke(rect, corner, edge, StrokeKind::Inside);
    let at = Align2::CENTER_CENTER.anchor_size(rect.center(), shown.size());
    painter.galley(at.min, shown, ink);
}

fn strong(ui: &mut Ui, text: &str, size: f32, ink: Ink) {
    ui.label(
        RichText::new(text)
            .font(fonts::bold(size))
            .color(ink.egui()),
    );
}

/// A point with its two contacts; gives the middle between them.
fn point(ui: &mut Ui, point: &DeedView, page: &mut Page<'_>) -> Pos2 {
    ui.horizontal(|ui| {
        let (strip, _) = ui.allocate_exact_size(vec2(STRIP, 30.0), Sense::hover());
        let button = ui
            .vertical(|ui| {
                ui.spacing_mut().item_spacing.y = 1.0;
                let test = || Wish::Do(Command::Do(point.line.clone()));
                let response = page.button(ui, &point.label, test);
                page.focus_first(&response);
                aside(ui, &point.known);
                response.rect
            })
            .inner;
        let middle = pos2(strip.right() - 8.0, button.center().y);
        for side in [-APART, APART] {
            let at = middle + vec2(0.0, side);
            ui.painter().circle_filled(at, 3.6, theme::STEEL.egui());
            ui.painter().circle_filled(at, 1.6, theme::INK.egui());
        }
        middle
    })
    .inner
}

/// Two leads from the case to a point, each with its probe.
fn leads(ui: &Ui, from: Pos2, to: Pos2) {
    for (side, ink) in [(-APART, theme::VERMILION), (APART, theme::PORCELAIN)] {
        let start = from + vec2(side, 0.0);
        let tip = to + vec2(-3.0, side);
        let grip = tip - vec2(12.0, 0.0);
        let bow = CubicBezierShape::from_points_stroke(
            [start, pos2(start.x, grip.y), pos2(start.x, grip.y), grip],
            false,
            egui::Color32::TRANSPARENT,
            Stroke::new(2.2, ink.egui()),
        );
        ui.painter().add(Shape::CubicBezier(bow));
        let probe = Stroke::new(4.5, ink.egui());
        ui.painter()
            .line_segment([grip, grip + vec2(8.0, 0.0)], probe);
        let needle = Stroke::new(1.6, theme::CREAM.egui());
        ui.painter()
            .line_segment([grip + vec2(8.0, 0.0), tip], needle);
    }
}
