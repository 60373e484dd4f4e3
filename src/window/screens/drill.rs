//! The drill: scene at the left, one column at the right for what is being dealt with, bars above and below.
//!
//! The column holds, in this order of precedence: a consequence, a question or what it came to, the keys, the scene in words, a close view, the log.

use bevy_egui::egui;
use bevy_egui::egui::Ui;

use crate::window::link::Sheet;
use crate::window::panels::{Page, asked, close, consequence, log, top, words};
use crate::window::scene::callouts;
use crate::window::scene::frame::{BOTTOM_BAR, Frame, TOP_BAR};

use super::{Scene, edge};

pub(super) fn screen(ui: &mut Ui, scene: &Scene<'_>, page: &mut Page<'_>) {
    let Some(street) = &scene.views.street else {
        return;
    };
    let held = scene.views.held();
    let column = Frame::column(ui.max_rect().width());
    let line = |panel: egui::Panel| panel.show_separator_line(false).resizable(false);
    line(egui::Panel::top("top").exact_size(TOP_BAR))
        .frame(edge(8))
        .show(ui, |ui| {
            if held {
                ui.disable();
            }
            top::bar(ui, street, &scene.views.log, &scene.views.languages, page);
        });
    line(egui::Panel::bottom("bottom").exact_size(BOTTOM_BAR))
        .frame(edge(10))
        .show(ui, |ui| {
            if held {
                ui.disable();
            }
            top::places(
                ui,
                street,
                scene.desk.place.as_deref(),
                scene.desk.notice.as_ref(),
                page,
            );
        });
    line(egui::Panel::right("column").exact_size(column))
        .frame(edge(12))
        .show(ui, |ui| {
            self::column(ui, scene, page);
        });
    let stage = scene
        .views
        .consequence
        .as_ref()
        .and_then(|c| c.stages.get(scene.desk.stage));
    let clip = ui.available_rect_before_wrap();
    ui.set_clip_rect(clip);
    callouts::paint(
        ui,
        street,
        (&scene.drawn.plan, scene.drawn.frame),
        stage,
        page,
    );
}

fn column(ui: &mut Ui, scene: &Scene<'_>, page: &mut Page<'_>) {
    let (views, desk) = (scene.views, scene.desk);
    if let Some(held) = &views.consequence {
        consequence::panel(ui, held, desk.stage, page);
        return;
    }
    if let Some(question) = &views.asked {
        asked::question(ui, question, page);
        return;
    }
    if let Some(reveal) = &views.reveal {
        asked::reveal(ui, reveal, page);
        return;
    }
    match (desk.sheet, &views.street) {
        (Some(Sheet::Keys), _) => {
            words::keys(ui, page);
            return;
        }
        (Some(Sheet::Words), Some(street)) => {
            words::scene(ui, street, page);
            return;
        }
        (Some(Sheet::Words) | None, _) => {}
    }
    let Some(view) = &views.close else {
        log::panel(ui, &views.log, page);
        return;
    };
    close::panel(ui, view, page);
}
