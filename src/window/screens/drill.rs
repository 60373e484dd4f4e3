//! The drill: scene at the left, one column at the right for what is being dealt with, bars above and below.
//!
//! The column holds, in this order of precedence: what is held for the room, a consequence, a question or what it came to, a moment of the lesson,
//! a sheet, a close view, the log.
//! With two languages every label has two lines. In a narrow window column, scene and bars are shown one at a time.

use bevy_egui::egui;
use bevy_egui::egui::{ScrollArea, Ui};

use crate::session::view::{AgainView, StreetView};
use crate::window::both;
use crate::window::desk::{Face, Sheet};
use crate::window::mirror;
use crate::window::panels::{
    Page, again, asked, body, branches, close, consequence, lesson, log, room, top, words,
};
use crate::window::scene::frame::LEGEND_BAR;
use crate::window::scene::{callouts, goal, legend};
use crate::window::theme;

use super::{Scene, edge, faces, sheet};

pub(super) fn screen(ui: &mut Ui, scene: &Scene<'_>, page: &mut Page<'_>) {
    page.in_both(scene.views.second.as_deref(), |page| {
        if let Some(street) = &scene.views.street {
            laid_out(ui, scene, street, page);
        }
    });
}

fn laid_out(ui: &mut Ui, scene: &Scene<'_>, street: &StreetView, page: &mut Page<'_>) {
    if scene.narrow {
        narrow(ui, scene, street, page);
        return;
    }
    let held = scene.views.held(scene.desk);
    let look = scene.desk.look();
    let column = look.column(ui.max_rect().width());
    let line = |panel: egui::Panel| panel.show_separator_line(false).resizable(false);
    line(egui::Panel::top("top").exact_size(look.top_bar()))
        .frame(edge(8))
        .show(ui, |ui| {
            if held {
                ui.disable();
            }
            let (log, languages) = (&scene.views.log, &scene.views.languages);
            if scene.compares() {
                top::comparing(ui, street, log, languages, page);
            } else {
                top::bar(ui, street, log, languages, page);
            }
        });
    line(egui::Panel::bottom("bottom").exact_size(look.bottom_bar()))
        .frame(edge(10))
        .show(ui, |ui| {
            if held {
                ui.disable();
            }
            bottom(ui, scene, street, page);
        });
    if page.is_in_two() {
        let high = scene.drawn.frame.room().min.y - look.top_bar();
        line(egui::Panel::top("goal").exact_size(high))
            .frame(egui::Frame::new().fill(theme::INK.egui()))
            .show(ui, |ui| goal::band(ui, street, page));
    }
    line(egui::Panel::right("column").exact_size(column))
        .frame(edge(12))
        .show(ui, |ui| {
            self::column(ui, scene, page);
        });
    stage(ui, scene, street, page);
}

/// A run that is over, seen again in the room that the drill had.
pub(super) fn again(ui: &mut Ui, scene: &Scene<'_>, view: &AgainView, page: &mut Page<'_>) {
    let plays = scene.desk.again.is_some_and(|watched| watched.plays);
    if scene.narrow {
        let all = [
            (Face::Here, "window-face-here"),
            (Face::There, "window-face-scene"),
        ];
        faces(ui, scene, &all, page, |_, _| ());
        if scene.desk.face == Face::There {
            legend(ui, &view.street, page);
            stage(ui, scene, &view.street, page);
        } else {
            let frame = egui::CentralPanel::default().frame(edge(10));
            frame.show(ui, |ui| {
                again::head(ui, view, page);
                again::ways(ui, view, plays, page);
                ScrollArea::vertical()
                    .id_salt("told")
                    .auto_shrink([false, false])
                    .show(ui, |ui| again::told_in_page(ui, view, page));
            });
        }
        return;
    }
    let look = scene.desk.look();
    let line = |panel: egui::Panel| panel.show_separator_line(false).resizable(false);
    line(egui::Panel::top("top").exact_size(look.top_bar()))
        .frame(edge(8))
        .show(ui, |ui| again::head(ui, view, page));
    line(egui::Panel::bottom("bottom").exact_size(look.bottom_bar()))
        .frame(edge(10))
        .show(ui, |ui| again::ways(ui, view, plays, page));
    let column = look.column(ui.max_rect().width());
    line(egui::Panel::right("column").exact_size(column))
        .frame(edge(12))
        .show(ui, |ui| again::told(ui, view, page));
    stage(ui, scene, &view.street, page);
}

/// Words on the scene, and the light of the wall.
fn stage(ui: &mut Ui, scene: &Scene<'_>, street: &StreetView, page: &mut Page<'_>) {
    let stage = scene
        .views
        .consequence
        .as_ref()
        .and_then(|c| c.stages.get(scene.desk.stage));
    let clip = ui.available_rect_before_wrap();
    ui.set_clip_rect(clip);
    let place = (&scene.drawn.plan, scene.drawn.frame);
    let light = scene.desk.wall.light.as_ref();
    let shown = callouts::Shown {
        stage,
        lit: light.and_then(|id| scene.drawn.plan.anchors.get(id).copied()),
        narrow: scene.narrow,
        detail: scene.desk.detail,
    };
    mirror::steady_with_words(ui, |ui| callouts::paint(ui, street, place, &shown, page));
    if scene.desk.sheet == Some(Sheet::Branches)
        && let Some(view) = &scene.views.branches
    {
        branches::beside(ui, &view.tried, page);
    }
}

/// One thing at a time, with a row to change between them.
fn narrow(ui: &mut Ui, scene: &Scene<'_>, street: &StreetView, page: &mut Page<'_>) {
    let all = [
        (Face::Here, "window-face-here"),
        (Face::There, "window-face-scene"),
        (Face::Bars, "window-face-bars"),
    ];
    // Elsewhere it stands below the places.
    let asks = match scene.desk.face {
        Face::Here => scene.views.close.is_some(),
        Face::There => true,
        Face::Bars => false,
    };
    let asks = asks && !scene.views.held(scene.desk) && !scene.compares();
    faces(ui, scene, &all, page, |ui, page| {
        if asks {
            top::what_next_at_end(ui, page);
        }
    });
    let frame = egui::CentralPanel::default().frame(edge(10));
    match scene.desk.face {
        Face::Here => {
            frame.show(ui, |ui| column(ui, scene, page));
        }
        Face::There => {
            legend(ui, street, page);
            stage(ui, scene, street, page);
            log::over_scene(ui, &scene.views.log.clock);
        }
        Face::Bars => {
            frame.show(ui, |ui| {
                if scene.views.held(scene.desk) {
                    ui.disable();
                }
                ScrollArea::vertical()
                    .auto_shrink([false, false])
                    .show(ui, |ui| {
                        let (log, languages) = (&scene.views.log, &scene.views.languages);
                        if scene.compares() {
                            top::still(ui, log, page);
                            top::ends(ui, languages, page);
                        } else {
                            top::wrapped(ui, street, log, languages, page);
                        }
                        top::wrapped_places(ui, street, scene.desk.place.as_deref(), page);
                    });
            });
        }
    }
}

/// The legend below the scene of a narrow window.
fn legend(ui: &mut Ui, street: &StreetView, page: &Page<'_>) {
    egui::Panel::bottom("legend")
        .show_separator_line(false)
        .exact_size(LEGEND_BAR)
        .frame(edge(6))
        .show(ui, |ui| legend::row(ui, street, page));
}

fn bottom(ui: &mut Ui, scene: &Scene<'_>, street: &StreetView, page: &mut Page<'_>) {
    top::places(ui, (street, &scene.views.log), scene.desk, page);
}

/// What is being dealt with.
fn column(ui: &mut Ui, scene: &Scene<'_>, page: &mut Page<'_>) {
    let (views, desk) = (scene.views, scene.desk);
    if let Some(held) = views.consequence.as_ref().filter(|_| !desk.wall.held) {
        consequence::panel(ui, held, desk.stage, page);
    } else if let Some(question) = views.asked.as_ref().filter(|_| !desk.wall.held) {
        asked::question(ui, question, page);
    } else if let Some(reveal) = views.reveal.as_ref().filter(|_| !desk.wall.held) {
        asked::reveal(ui, reveal, page);
    } else if desk.sheet == Some(Sheet::Room) {
        room::sheet(ui, views, desk, page);
    } else if desk.wall.held {
        room::hold(ui, page);
    } else if let Some(moment) = views.moment(desk) {
        lesson::moment(ui, moment, page);
    } else {
        at_hand(ui, scene, page);
    }
}

/// A sheet, a close view, or the log.
fn at_hand(ui: &mut Ui, scene: &Scene<'_>, page: &mut Page<'_>) {
    let views = scene.views;
    if let (Some(Sheet::Words), Some(street)) = (scene.desk.sheet, &views.street) {
        words::scene(ui, street, page);
        return;
    }
    if sheet(ui, scene, page) {
        return;
    }
    let detail = scene.desk.detail;
    match (&views.close, &views.street) {
        (Some(view), Some(street)) if scene.narrow => {
            egui::Panel::bottom("said")
                .show_separator_line(false)
                .frame(egui::Frame::NONE)
                .show(ui, |ui| said(ui, scene, street, page));
            close::panel(ui, view, detail, page);
        }
        (Some(view), _) => close::panel(ui, view, detail, page),
        (None, Some(street)) if scene.narrow => start(ui, scene, street, page),
        (None, _) => log::panel(ui, &views.log, views.branched, page),
    }
}

/// What the bars say where they stand aside: the next step, or what was answered last.
fn said(ui: &mut Ui, scene: &Scene<'_>, street: &StreetView, page: &mut Page<'_>) {
    if street.hint.is_empty() {
        answered(ui, scene, page);
    } else {
        let next = page.say("window-hint");
        body(
            ui,
            &both::each([&next, &street.hint], |parts| parts.join("  ")),
        );
        top::hinted_wait(ui, street, page);
    }
}

/// What was answered last.
fn answered(ui: &mut Ui, scene: &Scene<'_>, page: &Page<'_>) {
    let notice = scene.desk.notice.as_ref();
    if notice.is_none() {
        return;
    }
    ui.horizontal_wrapped(|ui| top::answer(ui, notice, &scene.views.log, page));
}

/// Where a narrow window begins: what is asked for, where to go, what happened so far.
fn start(ui: &mut Ui, scene: &Scene<'_>, street: &StreetView, page: &mut Page<'_>) {
    let views = scene.views;
    ScrollArea::vertical()
        .id_salt("start")
        .auto_shrink([false, false])
        .show(ui, |ui| {
            answered(ui, scene, page);
            top::aim(ui, street, &views.log, page);
            top::wrapped_places(ui, street, None, page);
            log::whole(ui, &views.log, views.branched, page);
        });
}
