//! A lesson being taught: the plan at the left, the open page large at the right, over an evening street.

use bevy_egui::egui;
use bevy_egui::egui::Ui;

use crate::session::view::LessonView;
use crate::window::link::{Spoken, Wish};
use crate::window::panels::{Page, aside, lesson, top};
use crate::window::teach::Teaching;
use crate::window::theme;

use super::{Scene, edge, sheet};

pub(super) fn screen(
    ui: &mut Ui,
    scene: &Scene<'_>,
    (view, teaching): (&LessonView, &Teaching),
    page: &mut Page<'_>,
) {
    let room = ui.max_rect().size();
    let handout = teaching
        .step(view)
        .is_some_and(|step| step.kind == "handout");
    if !scene.narrow && !handout {
        egui::Panel::left("plan")
            .exact_size((room.x * 0.3).clamp(280.0, 460.0))
            .resizable(false)
            .show_separator_line(false)
            .frame(edge(16))
            .show(ui, |ui| lesson::plan(ui, view, teaching, page));
    }
    let bar = egui::Panel::bottom("ends").exact_size(46.0);
    bar.frame(edge(6))
        .show_separator_line(false)
        .show(ui, |ui| {
            ui.horizontal(|ui| {
                top::ends(ui, &scene.views.languages, page);
                let room = page.say("window-room");
                page.button(ui, &room, || Wish::Room);
                if let Some(kept) = &scene.desk.kept {
                    aside(ui, kept);
                }
            });
        });
    let frame = egui::Frame::new()
        .fill(theme::INK.egui())
        .inner_margin(egui::Margin::same(22));
    egui::CentralPanel::default().frame(frame).show(ui, |ui| {
        if sheet(ui, scene, page) {
            return;
        }
        match &scene.views.second {
            Some(spoken) => both(ui, (view, spoken), teaching, page),
            None => lesson::open(ui, view, teaching, page),
        }
    });
}

/// The page in two languages, side by side.
fn both(
    ui: &mut Ui,
    (view, spoken): (&LessonView, &Spoken),
    teaching: &Teaching,
    page: &mut Page<'_>,
) {
    let gap = 26.0;
    let size = egui::vec2((ui.available_width() - gap) / 2.0, ui.available_height());
    let below = egui::Layout::top_down(egui::Align::LEFT);
    ui.horizontal_top(|ui| {
        ui.spacing_mut().item_spacing.x = gap;
        ui.allocate_ui_with_layout(size, below, |ui| {
            ui.spacing_mut().item_spacing.x = 8.0;
            lesson::open(ui, view, teaching, page);
        });
        let Some(view) = &spoken.views.lesson else {
            return;
        };
        page.in_other(&spoken.session, |page| {
            ui.push_id("second", |ui| {
                ui.allocate_ui_with_layout(size, below, |ui| {
                    ui.spacing_mut().item_spacing.x = 8.0;
                    lesson::open(ui, view, teaching, page);
                });
            });
        });
    });
}
