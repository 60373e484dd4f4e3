//! The debrief: the pages and the learner's words at the left, and last the verdict; the facts at the right, and later the whole story.

use bevy_egui::egui;
use bevy_egui::egui::{Align, Layout, Ui};

use crate::session::view::Phase;
use crate::window::link::Sheet;
use crate::window::panels::{Page, debrief, story, top, words};
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
                    debrief::pages(ui, view);
                    ui.add_space(6.0);
                    if view.phase == Phase::Verdict {
                        debrief::verdict(ui, view, page);
                    } else {
                        debrief::reflection(ui, view, page);
                    }
                });
            });
        });
    let frame = egui::Frame::new()
        .fill(theme::INK.egui())
        .inner_margin(egui::Margin::same(16));
    egui::CentralPanel::default().frame(frame).show(ui, |ui| {
        if scene.desk.sheet == Some(Sheet::Keys) {
            words::keys(ui, page);
            return;
        }
        match view.phase {
            Phase::Happened | Phase::Felt => story::facts(ui, view, page),
            Phase::Next => debrief::next(ui, view, page),
            Phase::Why | Phase::Verdict => story::whole(ui, view, page),
        }
    });
}
