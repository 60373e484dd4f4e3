//! Two branches of a drill side by side: as it was before the learner went back, and as it was tried otherwise.

use bevy_egui::egui::{
    Align2, CornerRadius, Grid, RichText, ScrollArea, Stroke, StrokeKind, Ui, vec2,
};

use crate::session::view::{CompareView, DifferView};
use crate::window::fonts;
use crate::window::theme;

use super::{Page, aside, body, subheading, words};

/// What comes out otherwise.
pub(crate) fn sheet(ui: &mut Ui, view: &CompareView, page: &mut Page<'_>) {
    words::head(ui, "window-branches", page);
    aside(ui, &page.say("window-branches-picture"));
    heads(ui, (&view.was, &view.tried), page);
    ScrollArea::vertical()
        .id_salt("branches")
        .auto_shrink([false, false])
        .show(ui, |ui| {
            for (id, rows) in [
                ("window-branches-people", &view.people),
                ("window-branches-positions", &view.positions),
                ("window-branches-volts", &view.volts),
            ] {
                table(ui, id, rows, page);
            }
            ui.add_space(6.0);
            found(ui, &page.say("window-branches-gone"), &view.gone);
            found(ui, &page.say("window-branches-come"), &view.come);
        });
}

fn found(ui: &mut Ui, title: &str, findings: &[String]) {
    if findings.is_empty() {
        return;
    }
    subheading(ui, title);
    for finding in findings {
        body(ui, finding);
    }
}

/// Three columns under the common heads: what, before, now.
fn table(ui: &mut Ui, id: &str, rows: &[DifferView], page: &Page<'_>) {
    if rows.is_empty() {
        return;
    }
    ui.add_space(4.0);
    subheading(ui, &page.say(id));
    let widths = widths(ui.available_width());
    Grid::new(id).num_columns(3).striped(true).show(ui, |ui| {
        for row in rows {
            let [what, was, tried] = widths;
            cell(ui, what, |ui| aside(ui, &row.label));
            cell(ui, was, |ui| body(ui, &row.was));
            cell(ui, tried, |ui| body(ui, &row.tried));
            ui.end_row();
        }
    });
}

/// What stands over the columns of all tables: the two tries, each with the moment to which it goes.
fn heads(ui: &mut Ui, (was, tried): (&str, &str), page: &Page<'_>) {
    let [what, before, now] = widths(ui.available_width() - SCROLL);
    Grid::new("branches-heads").num_columns(3).show(ui, |ui| {
        cell(ui, what, |_| {});
        for (width, id, clock) in [
            (before, "window-branches-before", was),
            (now, "window-branches-now", tried),
        ] {
            let head = RichText::new(format!("{} {clock}", page.say(id))).font(fonts::bold(14.0));
            cell(ui, width, |ui| {
                ui.label(head.color(theme::LEAD.egui()));
            });
        }
        ui.end_row();
    });
}

/// Widths of the three columns.
fn widths(all: f32) -> [f32; 3] {
    [0.42, 0.29, 0.29].map(|share| all * share - 8.0)
}

/// Width of the bar by which the tables are scrolled, points.
const SCROLL: f32 = 14.0;

/// Names the try that the picture shows, on the picture's lower edge.
pub(crate) fn beside(ui: &Ui, tried: &str, page: &Page<'_>) {
    let ink = theme::LEAD.egui();
    let text = format!("{} {tried}", page.say("window-branches-now"));
    let galley = ui.painter().layout_no_wrap(text, fonts::bold(17.0), ink);
    let room = ui.clip_rect();
    let middle = room.center_bottom() - vec2(0.0, 22.0);
    let rect = Align2::CENTER_CENTER.anchor_size(middle, galley.size());
    let ground = theme::INK.egui();
    ui.painter().rect(
        rect.expand2(vec2(10.0, 4.0)),
        CornerRadius::same(6),
        ground,
        Stroke::new(1.5, ink),
        StrokeKind::Inside,
    );
    ui.painter().galley(rect.min, galley, ink);
}

fn cell(ui: &mut Ui, width: f32, add: impl FnOnce(&mut Ui)) {
    ui.vertical(|ui| {
        ui.set_width(width);
        add(ui);
    });
}
