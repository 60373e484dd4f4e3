//! The debrief: the pages in a row, below it what is the open page's own at the left and the run itself at the right.

use bevy_egui::egui;
use bevy_egui::egui::{Align, Layout, Ui};

use crate::session::view::{DebriefView, Phase};
use crate::window::desk::Face;
use crate::window::fonts;
use crate::window::link::Wish;
use crate::window::panels::{Page, aside, debrief, story, top};
use crate::window::theme;

use super::{Scene, edge, faces, sheet};

pub(super) fn screen(ui: &mut Ui, scene: &Scene<'_>, page: &mut Page<'_>) {
    let Some(view) = &scene.views.debrief else {
        return;
    };
    if scene.narrow {
        narrow(ui, scene, view, page);
        return;
    }
    let top = egui::Panel::top("steps").show_separator_line(false);
    top.frame(edge(12))
        .show(ui, |ui| head(ui, scene, view, page));
    let width = ui.max_rect().width() * share(view.phase);
    egui::Panel::left("verdict")
        .exact_size(width.max(330.0))
        .resizable(false)
        .show_separator_line(false)
        .frame(edge(18))
        .show(ui, |ui| {
            debrief::open_page(ui, view, scene.desk.kept.as_deref(), page);
        });
    let frame = egui::Frame::new()
        .fill(theme::INK.egui())
        .inner_margin(egui::Margin::same(16));
    let rest = egui::CentralPanel::default().frame(frame);
    rest.show(ui, |ui| facts(ui, scene, view, page));
}

/// The part of the window's width that a page has for what is its own; the run itself has the rest.
fn share(phase: Phase) -> f32 {
    match phase {
        Phase::Why | Phase::Next => 0.48,
        Phase::Happened | Phase::Felt | Phase::Verdict => 0.38,
    }
}

/// The page and the run, one at a time.
fn narrow(ui: &mut Ui, scene: &Scene<'_>, view: &DebriefView, page: &mut Page<'_>) {
    let all = [
        (Face::Here, "window-face-here"),
        (Face::There, "window-face-story"),
    ];
    faces(ui, scene, &all, page, |_, _| ());
    let frame = egui::CentralPanel::default().frame(edge(12));
    frame.show(ui, |ui| match scene.desk.face {
        Face::Here | Face::Bars => debrief::narrow_page(ui, view, page, |ui, page| {
            ui.horizontal_wrapped(|ui| ends(ui, scene, page));
            if let Some(kept) = &scene.desk.kept {
                aside(ui, kept);
            }
        }),
        Face::There => facts(ui, scene, view, page),
    });
}

/// All pages in a row, and at its other end what every screen has; below one another where the row is too short.
fn head(ui: &mut Ui, scene: &Scene<'_>, view: &DebriefView, page: &mut Page<'_>) {
    let font = fonts::bold(16.0);
    let wide = |text: &String| {
        let galley = ui
            .painter()
            .layout_no_wrap(text.clone(), font.clone(), theme::LEAD.egui());
        galley.size().x + STEP
    };
    let steps: f32 = view.pages.iter().map(|p| wide(&p.title)).sum();
    if steps + ENDS <= ui.available_width() {
        ui.horizontal(|ui| {
            debrief::steps(ui, view);
            ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
                ends(ui, scene, page);
            });
        });
    } else {
        ui.horizontal_wrapped(|ui| debrief::steps(ui, view));
        ui.horizontal_wrapped(|ui| ends(ui, scene, page));
    }
}

/// What a step takes beside its name, and what the buttons at the other end take, points.
const STEP: f32 = 38.0;
const ENDS: f32 = 300.0;

fn ends(ui: &mut Ui, scene: &Scene<'_>, page: &mut Page<'_>) {
    top::ends(ui, &scene.views.languages, page);
    let terms = page.say("window-terms-short");
    page.button(ui, &terms, || Wish::Terms);
    if scene.views.branched {
        let branches = page.say("window-branches");
        page.button(ui, &branches, || Wish::Branches);
    }
}

/// What belongs to the page that is open.
fn facts(ui: &mut Ui, scene: &Scene<'_>, view: &DebriefView, page: &mut Page<'_>) {
    if sheet(ui, scene, page) {
        return;
    }
    let span = scene.desk.span;
    match view.phase {
        Phase::Happened | Phase::Felt => story::facts(ui, view, span, page),
        // Where there is room, what was found stands beside this, or has been told.
        Phase::Why if scene.narrow => story::whole(ui, view, span, page),
        Phase::Next if scene.narrow => debrief::next_page(ui, view, page),
        Phase::Why | Phase::Next => story::run(ui, view, span, page),
        Phase::Verdict => story::whole(ui, view, span, page),
    }
}
