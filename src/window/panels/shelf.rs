//! The shelf: what this is for, the cautions once per start, the drills.
//!
//! It does not cover lessons and records.

use bevy_egui::egui::{RichText, ScrollArea, Ui};

use crate::session::view::{DrillCard, ShelfView};
use crate::session::{Command, Practice};
use crate::window::fonts;
use crate::window::link::Wish;
use crate::window::theme;

use super::{Page, aside, body, card, heading};

/// What is drawn by chance in a drill that is opened from the shelf.
/// One value, so that a class sees the same drill on every machine.
const SEED: u64 = 1;

/// The cautions, until they have been read.
pub(crate) fn cautions(ui: &mut Ui, view: &ShelfView, page: &mut Page<'_>) {
    heading(ui, &view.cautions_title);
    let accept_room = 54.0;
    ScrollArea::vertical()
        .id_salt("cautions")
        .auto_shrink([false, true])
        .max_height((ui.available_height() - accept_room).max(80.0))
        .show(ui, |ui| {
            for caution in &view.cautions {
                ui.horizontal_top(|ui| {
                    ui.label(
                        RichText::new("•")
                            .font(fonts::bold(15.5))
                            .color(theme::LEAD.egui()),
                    );
                    ui.vertical(|ui| body(ui, caution));
                });
            }
        });
    ui.add_space(4.0);
    page.lead(ui, &view.cautions_accept, || Wish::Accept);
}

/// The drills.
pub(crate) fn drills(ui: &mut Ui, view: &ShelfView, page: &mut Page<'_>) {
    ScrollArea::vertical()
        .id_salt("drills")
        .auto_shrink([false, false])
        .show(ui, |ui| {
            for drill in &view.drills {
                card(ui, theme::OUTLINE, |ui| one(ui, drill, page));
                ui.add_space(4.0);
            }
        });
}

fn one(ui: &mut Ui, drill: &DrillCard, page: &mut Page<'_>) {
    heading(ui, &drill.title);
    body(ui, &drill.summary);
    aside(ui, &drill.facts);
    if !drill.content_note.is_empty() {
        ui.label(
            RichText::new(&drill.content_note)
                .font(fonts::regular(14.0))
                .color(theme::YELLOW.egui()),
        );
    }
    ui.horizontal_wrapped(|ui| {
        let open = |practice| {
            let drill = drill.name.clone();
            move || {
                Wish::Do(Command::Open {
                    drill,
                    practice,
                    seed: SEED,
                })
            }
        };
        page.lead(ui, &drill.open, open(Practice::Coached));
        let assessed = page.say("window-open-assessed");
        page.button(ui, &assessed, open(Practice::Assessed))
            .on_hover_text(page.say("window-assessed-means"));
    });
}
