//! The shelf over an evening street: cautions first, then the drills.

use bevy_egui::egui;
use bevy_egui::egui::{Align, Layout, RichText, Ui};

use crate::window::fonts;
use crate::window::panels::{Page, body, shelf, top};
use crate::window::theme;

use super::{Scene, sheet};

pub(super) fn screen(ui: &mut Ui, scene: &Scene<'_>, page: &mut Page<'_>) {
    let view = &scene.views.shelf;
    let all = ui.max_rect().width();
    // In a narrow window there is room for nothing beside it.
    let width = if scene.narrow {
        all
    } else {
        (all * 0.5).clamp(460.0, 720.0).min(all)
    };
    let frame = egui::Frame::new()
        .fill(theme::INK.alpha(0.88).egui())
        .inner_margin(egui::Margin {
            left: 28,
            right: 22,
            top: if scene.narrow { 10 } else { 22 },
            bottom: if scene.narrow { 8 } else { 18 },
        });
    egui::Panel::left("shelf")
        .exact_size(width)
        .resizable(false)
        .show_separator_line(false)
        .frame(frame)
        .show(ui, |ui| {
            if scene.narrow {
                ui.horizontal_wrapped(|ui| {
                    let title = RichText::new(&view.title).font(fonts::bold(19.0));
                    ui.label(title.color(theme::LEAD.egui()));
                    top::ends(ui, &scene.views.languages, page);
                });
            } else {
                head(ui, scene, page);
            }
            ui.add_space(8.0);
            if sheet(ui, scene, page) {
                return;
            }
            if scene.desk.accepted {
                shelf::drills(ui, view, (scene.desk, scene.narrow), page);
            } else {
                shelf::cautions(ui, view, page);
            }
        });
}

/// The name of the program and what it is for, with language and keys.
fn head(ui: &mut Ui, scene: &Scene<'_>, page: &mut Page<'_>) {
    let view = &scene.views.shelf;
    let title = RichText::new(&view.title).font(fonts::bold(36.0));
    let title = title.color(theme::LEAD.egui());
    let languages = &scene.views.languages;
    if ui.available_width() < BESIDE {
        ui.label(title);
        ui.horizontal_wrapped(|ui| top::ends(ui, languages, page));
    } else {
        ui.horizontal(|ui| {
            ui.label(title);
            ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
                top::ends(ui, languages, page);
            });
        });
    }
    body(ui, &view.intro);
}

/// Least width in which language and keys stand beside the name, points.
const BESIDE: f32 = 560.0;
