//! The shelf over an evening street: cautions first, then the drills.

use bevy_egui::egui;
use bevy_egui::egui::{Align, Layout, RichText, Ui};

use crate::window::fonts;
use crate::window::panels::{Page, body, shelf, top};
use crate::window::theme;

use super::{Scene, sheet};

pub(super) fn screen(ui: &mut Ui, scene: &Scene<'_>, page: &mut Page<'_>) {
    let view = &scene.views.shelf;
    let width = (ui.max_rect().width() * 0.5).clamp(460.0, 720.0);
    let frame = egui::Frame::new()
        .fill(theme::INK.alpha(0.88).egui())
        .inner_margin(egui::Margin {
            left: 28,
            right: 22,
            top: 22,
            bottom: 18,
        });
    egui::Panel::left("shelf")
        .exact_size(width)
        .resizable(false)
        .show_separator_line(false)
        .frame(frame)
        .show(ui, |ui| {
            ui.horizontal(|ui| {
                ui.label(
                    RichText::new(&view.title)
                        .font(fonts::bold(36.0))
                        .color(theme::LEAD.egui()),
                );
                ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
                    top::ends(ui, &scene.views.languages, page);
                });
            });
            if !scene.narrow {
                body(ui, &view.intro);
            }
            ui.add_space(8.0);
            if sheet(ui, scene, page) {
                return;
            }
            if scene.desk.accepted {
                shelf::drills(ui, view, scene.desk, page);
            } else {
                shelf::cautions(ui, view, page);
            }
        });
}
