//! The log: what was done and what happened, newest last, each kind with a mark and a word of its own.
//!
//! It does not cover rewinding; once the learner went back, a button shows both branches.

use bevy_egui::egui;
use bevy_egui::egui::{
    CornerRadius, Pos2, Rect, RichText, ScrollArea, Sense, Stroke, Ui, pos2, vec2,
};

use crate::session::view::{LogKind, LogLine, LogView};
use crate::window::both;
use crate::window::fonts;
use crate::window::link::Wish;
use crate::window::theme;

use super::{Page, body, end_whole, heading};

/// The whole log, scrolled to its end.
pub(crate) fn panel(ui: &mut Ui, view: &LogView, branched: bool, page: &mut Page<'_>) {
    head(ui, branched, page);
    if view.lines.is_empty() {
        body(ui, &page.say("window-log-empty"));
    }
    lines(ui, &view.lines, page);
}

/// Lines with marks. At their end what is seen begins with a whole line, and nothing fades there.
pub(crate) fn lines(ui: &mut Ui, lines: &[LogLine], page: &Page<'_>) {
    let place = ui.id().with("log-at-end");
    let at_end = ui.data(|data| data.get_temp(place)).unwrap_or(true);
    let shown = ui.scope(|ui| {
        if at_end {
            ui.spacing_mut().scroll.fade.strength = 0.0;
        }
        ScrollArea::vertical()
            .id_salt("log")
            .auto_shrink([false, false])
            .stick_to_bottom(true)
            .show(ui, |ui| {
                let mut tops = Vec::new();
                for line in lines {
                    tops.push(ui.cursor().top());
                    one(ui, line, page);
                }
                end_whole(ui, &tops);
            })
    });
    let shown = shown.inner;
    let below = shown.content_size.y - shown.inner_rect.height() - shown.state.offset.y;
    let now = below < 1.0;
    if now != at_end {
        ui.data_mut(|data| data.insert_temp(place, now));
        ui.ctx().request_repaint();
    }
}

/// The whole log as a part of a page, newest first; nothing before anything has happened.
pub(crate) fn whole(ui: &mut Ui, view: &LogView, branched: bool, page: &mut Page<'_>) {
    if view.lines.is_empty() {
        return;
    }
    head(ui, branched, page);
    for line in view.lines.iter().rev() {
        one(ui, line, page);
    }
}

fn head(ui: &mut Ui, branched: bool, page: &mut Page<'_>) {
    heading(ui, &page.say("window-log"));
    if branched {
        let branches = page.say("window-branches");
        page.button(ui, &branches, || Wish::Branches);
    }
}

/// The clock, in the sky of a scene that has the window to itself.
pub(crate) fn over_scene(ui: &Ui, clock: &str) {
    let ink = theme::LEAD.egui();
    let galley = ui
        .painter()
        .layout_no_wrap(clock.to_owned(), fonts::bold(17.0), ink);
    let rect = Rect::from_min_size(ui.clip_rect().min + vec2(14.0, 8.0), galley.size());
    let around = rect.expand2(vec2(8.0, 2.0));
    ui.painter()
        .rect_filled(around, CornerRadius::same(5), theme::INK.egui());
    ui.painter().galley(rect.min, galley, ink);
}

pub(super) fn one(ui: &mut Ui, line: &LogLine, page: &Page<'_>) {
    let (ink, word) = theme::log_look(line.kind);
    ui.horizontal_top(|ui| {
        ui.spacing_mut().item_spacing.x = 7.0;
        let (rect, _) = ui.allocate_exact_size(vec2(16.0, 20.0), Sense::hover());
        mark(ui.painter(), rect.center(), line.kind);
        ui.vertical(|ui| {
            ui.spacing_mut().item_spacing.y = 1.0;
            let word = both::in_one_line(&page.say(word));
            let head = format!("{}  {word}", line.clock);
            ui.label(
                RichText::new(head)
                    .font(fonts::bold(12.5))
                    .color(ink.egui()),
            );
            ui.label(both::written(
                &line.text,
                fonts::regular(14.5),
                theme::CREAM,
            ));
        });
    });
}

/// A mark for each kind, of a shape of its own.
pub(super) fn mark(painter: &egui::Painter, at: Pos2, kind: LogKind) {
    let ink = theme::log_look(kind).0.egui();
    let stroke = Stroke::new(2.2, ink);
    let p = |x: f32, y: f32| pos2(at.x + x, at.y + y);
    match kind {
        LogKind::Did => {
            painter.circle_filled(at, 5.0, ink);
        }
        LogKind::Refused => {
            painter.circle_stroke(at, 6.0, stroke);
            painter.line_segment([p(-4.2, 4.2), p(4.2, -4.2)], stroke);
        }
        LogKind::Happened => {
            painter.line(vec![p(-3.0, -6.0), p(4.0, 0.0), p(-3.0, 6.0)], stroke);
        }
        LogKind::Learnt => {
            painter.circle_stroke(p(-1.0, -1.0), 5.0, stroke);
            painter.line_segment([p(2.6, 2.6), p(6.5, 6.5)], stroke);
        }
        LogKind::Mistake => {
            let corners = vec![p(0.0, -7.0), p(7.0, 6.0), p(-7.0, 6.0)];
            painter.add(egui::Shape::convex_polygon(corners, ink, Stroke::NONE));
        }
        LogKind::Harm => {
            painter.circle_stroke(at, 6.0, Stroke::new(3.0, ink));
            painter.circle_filled(at, 2.2, ink);
        }
    }
}
