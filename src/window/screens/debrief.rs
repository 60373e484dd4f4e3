//! The debrief: verdict and criteria at the left, the story at the right.

use bevy_egui::egui;
use bevy_egui::egui::{Align, Layout, Ui};

use crate::window::link::Sheet;
use crate::window::panels::{Page, debrief, top, words};
use crate::window::theme;

use super::{Scene, edge};

pub(super) fn screen(ui: &mut Ui, scene: &Scene<'_>, page: &mut Page<'_>) {
    let Some(view) = &scene.views.debrief else {
        return;
    };
    let width = (ui.max_rect().width() * 0.33).clamp(330.0, 620.0);
    egui::Panel::left("verdict")
        .exact_size(width)
        .resizable(false)
        .show_separator_line(false)
        .frame(edge(18))
        .show(ui, |ui| {
            ui.with_layout(Layout::bottom_up(Align::LEFT), |ui| {
                ui.horizontal(|ui| top::ends(ui, &scene.views.languages, page));
                ui.with_layout(Layout::top_down(Align::LEFT), |ui| {
                    debrief::verdict(ui, view, page);
                });
            });
        });
    let frame = egui::Frame::new()
        .fill(theme::INK.egui())
        .inner_margin(egui::Margin::same(16));
    egui::CentralPanel::default().frame(frame).show(ui, |ui| {
        if scene.desk.sheet == Some(Sheet::Keys) {
            words::keys(ui, page);
        } else {
            debrief::story(ui, view, page);
        }
    });
}
