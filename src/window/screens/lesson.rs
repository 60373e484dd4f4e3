//! A lesson being taught: the plan at the left, the open page large at the right, over an evening street.
//!
//! With two languages every sentence has the other below it; the sheet for home is shown in one at a time.

use bevy_egui::egui;
use bevy_egui::egui::Ui;

use crate::session::view::LessonView;
use crate::window::link::Wish;
use crate::window::panels::{Page, above, aside, lesson, top};
use crate::window::teach::Teaching;
use crate::window::theme;

use super::{Scene, edge, sheet};

pub(super) fn screen(
    ui: &mut Ui,
    scene: &Scene<'_>,
    shown: (&LessonView, &Teaching),
    page: &mut Page<'_>,
) {
    page.in_both(scene.views.second.as_deref(), |page| {
        laid_out(ui, scene, shown, page);
    });
}

fn laid_out(
    ui: &mut Ui,
    scene: &Scene<'_>,
    (view, teaching): (&LessonView, &Teaching),
    page: &mut Page<'_>,
) {
    let width = ui.max_rect().width();
    let handout = teaching
        .step(view)
        .is_some_and(|step| step.kind == "handout");
    // The sheet for home has the whole window, and what stands below in one row.
    if !scene.narrow && !handout {
        egui::Panel::left("plan")
            .exact_size((width * 0.3).clamp(280.0, 460.0))
            .resizable(false)
            .show_separator_line(false)
            .frame(edge(16))
            .show(ui, |ui| lesson::plan(ui, view, teaching, page));
    }
    if !handout {
        let high = if page.is_in_two() { 64.0 } else { 46.0 };
        let bar = egui::Panel::bottom("ends").exact_size(high);
        bar.frame(edge(6))
            .show_separator_line(false)
            .show(ui, |ui| ui.horizontal(|ui| ends(ui, scene, page)));
    }
    let margin = if handout { 14 } else { 22 };
    let frame = egui::Frame::new()
        .fill(theme::INK.egui())
        .inner_margin(egui::Margin::same(margin));
    egui::CentralPanel::default().frame(frame).show(ui, |ui| {
        if sheet(ui, scene, page) {
            return;
        }
        let name = format!("lesson-{}", teaching.page);
        above(
            ui,
            &name,
            page,
            |ui, page| lesson::open(ui, view, teaching, page),
            |ui, page| {
                ui.add_space(4.0);
                ui.horizontal_wrapped(|ui| {
                    lesson::ways_on(ui, view, teaching, page);
                    if handout && page.is_in_two() {
                        // One row: the keys are on every other page.
                        lesson::languages(ui, &scene.views.languages, page);
                        room(ui, scene, page);
                    } else if handout {
                        ends(ui, scene, page);
                    }
                });
            },
        );
    });
}

/// Keys, language and what an instructor needs; and where a picture was kept.
fn ends(ui: &mut Ui, scene: &Scene<'_>, page: &mut Page<'_>) {
    top::ends(ui, &scene.views.languages, page);
    room(ui, scene, page);
}

fn room(ui: &mut Ui, scene: &Scene<'_>, page: &mut Page<'_>) {
    let room = page.say("window-room");
    page.button(ui, &room, || Wish::Room);
    if let Some(kept) = &scene.desk.kept {
        aside(ui, kept);
    }
}
