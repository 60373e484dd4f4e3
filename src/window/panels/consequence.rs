//! A consequence, held and told stage by stage in the order in which energy travels.
//!
//! The ring on the scene shows where each stage is; the numbers are those of the view.
//! Plain words, no picture of harm.

use bevy_egui::egui::{RichText, ScrollArea, Sense, Stroke, Ui, vec2};

use crate::session::view::{ConsequenceView, LogKind, StageView};
use crate::session::{Command, Rewind};
use crate::window::both;
use crate::window::fonts;
use crate::window::link::Wish;
use crate::window::theme;

use super::{Page, body, card, log, subheading};

/// The consequence at a stage.
pub(crate) fn panel(ui: &mut Ui, view: &ConsequenceView, stage: usize, page: &mut Page<'_>) {
    let last = view.stages.len().saturating_sub(1);
    // What leads on stays in sight below what is read.
    let buttons = if page.is_in_two() { 160.0 } else { 84.0 };
    ScrollArea::vertical()
        .id_salt("consequence")
        .auto_shrink([false, false])
        .max_height((ui.available_height() - buttons).max(100.0))
        .stick_to_bottom(true)
        .show(ui, |ui| {
            subheading(ui, &page.say("window-held"));
            title(ui, view, page);
            if !view.now.is_empty() {
                card(ui, theme::LEAD, |ui| {
                    subheading(ui, &page.say("window-now"));
                    body(ui, &view.now);
                });
            }
            ui.add_space(2.0);
            if !view.heading.is_empty() {
                subheading(ui, &view.heading);
            }
            for (i, at) in view.stages.iter().enumerate() {
                if i <= stage {
                    one(ui, at, i, i == stage);
                }
            }
            if stage < last {
                return;
            }
            ui.add_space(4.0);
            card(ui, theme::OUTLINE, |ui| {
                subheading(ui, &page.say("window-why"));
                body(ui, &view.why);
            });
        });
    ui.add_space(4.0);
    if stage < last {
        ui.horizontal(|ui| {
            let next = page.say("window-next");
            page.lead(ui, &next, || Wish::Stage(stage + 1));
            let count = format!("{} / {}", stage + 1, last + 1);
            ui.label(
                RichText::new(count)
                    .font(fonts::regular(15.0))
                    .color(theme::MUTED.egui()),
            );
            others(ui, view, page);
        });
        return;
    }
    ui.horizontal_wrapped(|ui| {
        let understood = page.say("window-understood");
        page.lead(ui, &understood, || Wish::Do(Command::Understood));
        let back = page.say("window-go-back");
        page.button(ui, &back, || Wish::Do(Command::Rewind(Rewind::Mistake)));
        if last > 0 {
            let again = page.say("window-again");
            page.button(ui, &again, || Wish::Stage(0));
        }
        others(ui, view, page);
    });
}

/// What happened; harm with a mark and a word of its own, in the brightest ink, so that nobody has to tell it by its color.
fn title(ui: &mut Ui, view: &ConsequenceView, page: &Page<'_>) {
    let mut ink = theme::YELLOW;
    if view.harm {
        ink = theme::CREAM;
        ui.horizontal(|ui| {
            let (rect, _) = ui.allocate_exact_size(vec2(20.0, 20.0), Sense::hover());
            log::mark(ui.painter(), rect.center(), LogKind::Harm);
            ui.label(
                RichText::new(page.say("window-log-harm"))
                    .font(fonts::bold(17.0))
                    .color(theme::log_look(LogKind::Harm).0.egui()),
            );
        });
    }
    ui.label(both::written(&view.title, fonts::bold(19.0), ink));
}

/// Leaves what else followed from the same thing for the debrief.
fn others(ui: &mut Ui, view: &ConsequenceView, page: &mut Page<'_>) {
    if !view.others.is_empty() {
        page.button(ui, &view.others, || Wish::Do(Command::AllUnderstood));
    }
}

/// A stage: its number in a disk, the value that matters, the sentence. Earlier ones stay, smaller.
pub(super) fn one(ui: &mut Ui, stage: &StageView, index: usize, current: bool) {
    ui.horizontal_top(|ui| {
        let (rect, _) = ui.allocate_exact_size(vec2(26.0, 26.0), Sense::hover());
        let center = rect.center();
        let (fill, ink) = if current {
            (theme::LEAD, theme::DARK_TEXT)
        } else {
            (theme::RAISED, theme::MUTED)
        };
        ui.painter().circle(
            center,
            12.0,
            fill.egui(),
            Stroke::new(1.5, theme::OUTLINE.egui()),
        );
        ui.painter().text(
            center,
            bevy_egui::egui::Align2::CENTER_CENTER,
            index + 1,
            fonts::bold(14.0),
            ink.egui(),
        );
        ui.vertical(|ui| {
            ui.spacing_mut().item_spacing.y = 1.0;
            let size = if current { 27.0 } else { 16.0 };
            if !stage.value.is_empty() {
                ui.label(
                    RichText::new(&stage.value)
                        .font(fonts::bold(size))
                        .color(theme::CREAM.egui()),
                );
            }
            let ink = if current { theme::CREAM } else { theme::MUTED };
            let size = if current { 16.0 } else { 13.5 };
            ui.label(
                RichText::new(&stage.text)
                    .font(fonts::regular(size))
                    .color(ink.egui()),
            );
        });
    });
    ui.add_space(3.0);
}
