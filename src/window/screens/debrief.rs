//! The debrief: the pages and the learner's words at the left, and last the verdict; the facts at the right, and later the whole story.

use bevy_egui::egui;
use bevy_egui::egui::{Align, Layout, ScrollArea, Ui};

use crate::session::view::{DebriefView, Phase};
use crate::window::desk::Face;
use crate::window::link::Wish;
use crate::window::panels::{Page, aside, debrief, story, top};
use crate::window::theme;

use super::{Scene, edge, faces, sheet};

pub(super) fn screen(ui: &mut Ui, scene: &Scene<'_>, page: &mut Page<'_>) {
    let Some(view) = &scene.views.debrief else {
        return;
    };
    if scene.narrow {
        let all = [
            (Face::Here, "window-face-here"),
            (Face::There, "window-face-story"),
        ];
        faces(ui, scene, &all, page);
        let frame = egui::CentralPanel::default().frame(edge(12));
        frame.show(ui, |ui| match scene.desk.face {
            Face::Here | Face::Bars => {
                let all = ScrollArea::vertical().auto_shrink([false, false]);
                all.show(ui, |ui| {
                    open_page(ui, view, page);
                    ends(ui, scene, page);
                });
            }
            Face::There => facts(ui, scene, view, page),
        });
        return;
    }
    let width = (ui.max_rect().width() * 0.33).clamp(330.0, 620.0);
    egui::Panel::left("verdict")
        .exact_size(width)
        .resizable(false)
        .show_separator_line(false)
        .frame(edge(18))
        .show(ui, |ui| pages(ui, scene, view, page));
    let frame = egui::Frame::new()
        .fill(theme::INK.egui())
        .inner_margin(egui::Margin::same(16));
    let rest = egui::CentralPanel::default().frame(frame);
    rest.show(ui, |ui| facts(ui, scene, view, page));
}

/// The page that is open, and the ends of the bar below it.
fn pages(ui: &mut Ui, scene: &Scene<'_>, view: &DebriefView, page: &mut Page<'_>) {
    ui.with_layout(Layout::bottom_up(Align::LEFT), |ui| {
        ends(ui, scene, page);
        ui.with_layout(Layout::top_down(Align::LEFT), |ui| {
            open_page(ui, view, page);
        });
    });
}

fn open_page(ui: &mut Ui, view: &DebriefView, page: &mut Page<'_>) {
    debrief::pages(ui, view);
    ui.add_space(6.0);
    if view.phase == Phase::Verdict {
        debrief::verdict(ui, view, page);
    } else {
        debrief::reflection(ui, view, page);
    }
}

fn ends(ui: &mut Ui, scene: &Scene<'_>, page: &mut Page<'_>) {
    ui.horizontal_wrapped(|ui| {
        top::ends(ui, &scene.views.languages, page);
        let terms = page.say("window-terms-short");
        page.button(ui, &terms, || Wish::Terms);
        if scene.views.branched {
            let branches = page.say("window-branches");
            page.button(ui, &branches, || Wish::Branches);
        }
        if let Some(kept) = &scene.desk.kept {
            aside(ui, kept);
        }
    });
}

/// What belongs to the page that is open.
fn facts(ui: &mut Ui, scene: &Scene<'_>, view: &DebriefView, page: &mut Page<'_>) {
    if sheet(ui, scene, page) {
        return;
    }
    match view.phase {
        Phase::Happened | Phase::Felt => story::facts(ui, view, scene.desk.span, page),
        Phase::Next => debrief::next(ui, view, page),
        Phase::Why | Phase::Verdict => story::whole(ui, view, scene.desk.span, page),
    }
}
