//! A close view: what is seen at a place, what can be operated there, and what else can be done.
//!
//! A panel's breakers are drawn as its face (see [`super::breakers`]); every other control is a row with its choices.
//! It does not cover dragging: every choice is a button.

use bevy_egui::egui::{RichText, ScrollArea, Sense, Ui, vec2};

use crate::session::view::{CloseView, ControlView, DeedView, LogKind};
use crate::session::{Command, Detail};
use crate::window::fonts;
use crate::window::link::Wish;
use crate::window::mirror;
use crate::window::theme;

use super::{Page, aside, body, breakers, card, faces, log, phasors, subheading, tester, titled};

/// A place seen close.
pub(crate) fn panel(ui: &mut Ui, view: &CloseView, detail: Detail, page: &mut Page<'_>) {
    titled(ui, &view.title, page);
    ScrollArea::vertical()
        .id_salt(&view.place)
        .auto_shrink([false, false])
        .show(ui, |ui| {
            tested(ui, view);
            // Two languages take much room: what is operated comes first.
            if !page.is_in_two() {
                aside(ui, &view.description);
            }
            faces::tag(ui, &view.tag);
            readings(ui, &view.readings);
            if detail == Detail::Phasors {
                phasors::panel(ui, &view.phasors, page);
            }
            let loose = view.controls.iter().filter(|c| {
                let mut faces = view.faces.iter();
                !faces.any(|f| f.controls.contains(&c.id))
            });
            let (face, rows): (Vec<_>, Vec<_>) = loose.partition(|c| breakers::on_face(c));
            if !face.is_empty() {
                mirror::steady(ui, |ui| breakers::face(ui, &face, view.interlock, page));
            }
            for face in &view.faces {
                faces::face(ui, face, view, page);
            }
            for control in rows {
                row(ui, control, page);
            }
            let is_test = |deed: &&DeedView| !deed.point.is_empty();
            let (tests, deeds): (Vec<_>, Vec<_>) = view.deeds.iter().partition(is_test);
            tester::panel(ui, &tests, page);
            if !deeds.is_empty() {
                subheading(ui, &page.say("window-deeds"));
                for deed in deeds {
                    self::deed(ui, deed, page);
                }
            }
            if page.is_in_two() {
                aside(ui, &view.description);
            }
        });
}

/// In a test, that it is one, and what has been found out here by testing.
fn tested(ui: &mut Ui, view: &CloseView) {
    if view.test.is_empty() {
        return;
    }
    subheading(ui, &view.test);
    for deed in view.deeds.iter().filter(|deed| deed.shown.is_some()) {
        card(ui, theme::LEAD, |ui| {
            ui.horizontal_top(|ui| {
                let (rect, _) = ui.allocate_exact_size(vec2(18.0, 20.0), Sense::hover());
                log::mark(ui.painter(), rect.center(), LogKind::Learnt);
                ui.vertical(|ui| {
                    ui.spacing_mut().item_spacing.y = 1.0;
                    body(ui, &deed.label);
                    ui.label(
                        RichText::new(&deed.known)
                            .font(fonts::bold(15.0))
                            .color(theme::LEAD.egui()),
                    );
                });
            });
        });
    }
}

/// What meters and gauges show, a line each.
fn readings(ui: &mut Ui, readings: &[String]) {
    ui.scope(|ui| {
        ui.spacing_mut().item_spacing.y = 2.0;
        for reading in readings {
            ui.label(
                RichText::new(reading)
                    .font(fonts::bold(14.5))
                    .color(theme::LEAD.egui()),
            );
        }
    });
}

/// A control on a card, with all its positions.
fn row(ui: &mut Ui, control: &ControlView, page: &mut Page<'_>) {
    card(ui, theme::HAIRLINE, |ui| {
        faces::positions(ui, control, page);
    });
}

/// The wish to bring a control into a position.
pub(super) fn operate(control: &ControlView, choice: &str) -> Wish {
    Wish::Do(Command::Do(["set", &control.id, choice].join(" ")))
}

fn deed(ui: &mut Ui, deed: &DeedView, page: &mut Page<'_>) {
    let response = page.button(ui, &deed.label, || Wish::Do(Command::Do(deed.line.clone())));
    page.focus_first(&response);
    if !deed.known.is_empty() {
        ui.indent(&deed.line, |ui| body(ui, &deed.known));
    }
}
