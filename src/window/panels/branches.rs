//! Two branches of a drill side by side: as it was before the learner went back, and as it was tried otherwise.

use bevy_egui::egui::{Grid, RichText, ScrollArea, Ui};

use crate::session::view::{CompareView, DifferView};
use crate::window::fonts;
use crate::window::theme;

use super::{Page, aside, body, subheading, words};

/// What comes out otherwise.
pub(crate) fn sheet(ui: &mut Ui, view: &CompareView, page: &mut Page<'_>) {
    words::head(ui, "window-branches", page);
    ScrollArea::vertical()
        .id_salt("branches")
        .auto_shrink([false, false])
        .show(ui, |ui| {
            for (id, rows) in [
                ("window-branches-people", &view.people),
                ("window-branches-positions", &view.positions),
                ("window-branches-volts", &view.volts),
            ] {
                table(ui, id, rows, (&view.was, &view.tried), page);
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

/// Three columns: what, before, now.
fn table(ui: &mut Ui, id: &str, rows: &[DifferView], (was, tried): (&str, &str), page: &Page<'_>) {
    if rows.is_empty() {
        return;
    }
    ui.add_space(6.0);
    let width = ui.available_width() / 3.0 - 8.0;
    Grid::new(id).num_columns(3).striped(true).show(ui, |ui| {
        let heads = [
            page.say(id),
            format!("{} {was}", page.say("window-branches-before")),
            format!("{} {tried}", page.say("window-branches-now")),
        ];
        for head in heads {
            let head = RichText::new(head).font(fonts::bold(14.0));
            cell(ui, width, |ui| {
                ui.label(head.color(theme::LEAD.egui()));
            });
        }
        ui.end_row();
        for row in rows {
            cell(ui, width, |ui| aside(ui, &row.label));
            cell(ui, width, |ui| body(ui, &row.was));
            cell(ui, width, |ui| body(ui, &row.tried));
            ui.end_row();
        }
    });
}

fn cell(ui: &mut Ui, width: f32, add: impl FnOnce(&mut Ui)) {
    ui.vertical(|ui| {
        ui.set_width(width);
        add(ui);
    });
}
