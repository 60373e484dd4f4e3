//! A curve over the drill with the limit it is held to.
//!
//! It does not cover more than one curve in a plot.

use bevy_egui::egui;
use bevy_egui::egui::{Align2, CornerRadius, Rect, Sense, Shape, Stroke, Ui, pos2, vec2};

use crate::session::view::SeriesView;
use crate::window::fonts;
use crate::window::theme;

use super::subheading;
use super::timeline::{LABEL, Scale, axis};

const HEIGHT: f32 = 118.0;

/// One curve.
pub(crate) fn panel(ui: &mut Ui, view: &SeriesView, length_ms: u64) {
    subheading(ui, &format!("{}, {}", view.label, view.unit));
    let (rect, _) = ui.allocate_exact_size(vec2(ui.available_width(), HEIGHT), Sense::hover());
    let painter = ui.painter_at(rect);
    let area = Rect::from_min_max(
        pos2(rect.left() + LABEL, rect.top() + 6.0),
        pos2(rect.right() - 6.0, rect.bottom() - 18.0),
    );
    painter.rect_filled(area, CornerRadius::same(4), theme::INK.egui());
    let high = view
        .points
        .iter()
        .map(|(_, v)| *v)
        .chain(view.limit)
        .fold(0.0, f64::max);
    if high <= 0.0 {
        return;
    }
    let top = high * 1.12;
    let scale = Scale {
        left: area.left(),
        width: area.width(),
        length_ms: length_ms.max(1),
    };
    let y = |value: f64| area.bottom() - share(value, top) * area.height();
    if let Some(limit) = view.limit {
        let at = y(limit);
        let dashes = Shape::dashed_line(
            &[pos2(area.left(), at), pos2(area.right(), at)],
            Stroke::new(2.0, theme::YELLOW.egui()),
            8.0,
            5.0,
        );
        painter.extend(dashes);
        painter.text(
            pos2(area.left() - 6.0, at),
            Align2::RIGHT_CENTER,
            &view.limit_label,
            fonts::regular(12.5),
            theme::YELLOW.egui(),
        );
    }
    let line: Vec<egui::Pos2> = view
        .points
        .iter()
        .map(|(second, value)| pos2(scale.x(*second * 1000), y(*value)))
        .collect();
    painter.line(line, Stroke::new(2.2, theme::ORANGE.egui()));
    axis(&painter, area, &scale);
}

#[expect(clippy::cast_possible_truncation, reason = "a screen is coarser")]
fn share(value: f64, top: f64) -> f32 {
    (value / top).clamp(0.0, 1.0) as f32
}
