//! A lesson as it is taught: the plan by the minute, and the page that is open, large enough for a wall.
//!
//! What is said and asked is the lesson's; nothing here knows a drill.
//! It does not cover the clock on the wall: an instructor keeps the time.

use bevy_egui::egui::{Align, Atom, Button, Frame, Layout, RichText, ScrollArea, Ui};

use crate::session::Command;
use crate::session::view::{HandoutView, LessonView, MomentView, PhaseView, StepView};
use crate::window::fonts;
use crate::window::link::Wish;
use crate::window::teach::{Teaching, steps};
use crate::window::theme;

use super::shelf::SEED;
use super::{Page, aside, card, heading, subheading};

/// All pages, the open one marked; pressing one turns to it.
pub(crate) fn plan(ui: &mut Ui, view: &LessonView, teaching: &Teaching, page: &mut Page<'_>) {
    heading(ui, &view.title);
    aside(ui, &format!("{} · {}", view.audience, view.minutes));
    let leave = 46.0;
    ScrollArea::vertical()
        .id_salt("plan")
        .auto_shrink([false, false])
        .max_height((ui.available_height() - leave).max(80.0))
        .show(ui, |ui| {
            ui.spacing_mut().item_spacing.y = 4.0;
            let before = page.say("window-lesson-before");
            line(ui, &before, 0, teaching, page);
            let mut number = 0;
            for session in &view.sessions {
                subheading(ui, &format!("{} · {}", session.title, session.minutes));
                for step in &session.steps {
                    number += 1;
                    let text = format!("{}–{}  {}", step.begins, step.ends, step.title);
                    line(ui, &text, number, teaching, page);
                }
            }
        });
    let leave = page.say("window-lesson-leave");
    page.button(ui, &leave, || Wish::EndLesson);
}

fn line(ui: &mut Ui, text: &str, number: usize, teaching: &Teaching, page: &mut Page<'_>) {
    let here = teaching.page == number;
    let (font, ink, fill) = if here {
        (fonts::bold(14.5), theme::LEAD, theme::RAISED)
    } else {
        (fonts::regular(14.5), theme::CREAM, theme::PANEL)
    };
    let text = RichText::new(text).font(font).color(ink.egui());
    let width = ui.available_width();
    let button = Button::new((text, Atom::grow())).fill(fill.egui()).wrap();
    let response = ui.add_sized([width, 0.0], button);
    page.on(&response, || Wish::Turn(number));
    if here && !ui.memory(|memory| memory.focused().is_some()) {
        response.scroll_to_me(None);
    }
}

/// The open page.
pub(crate) fn open(ui: &mut Ui, view: &LessonView, teaching: &Teaching, page: &mut Page<'_>) {
    let step = teaching.step(view);
    // Where there is little width the buttons take two rows.
    let buttons = if ui.available_width() < 560.0 {
        84.0
    } else {
        48.0
    };
    ScrollArea::vertical()
        .id_salt(("lesson", teaching.page))
        .auto_shrink([false, false])
        .max_height((ui.available_height() - buttons).max(100.0))
        .show(ui, |ui| match step {
            Some(step) => one(ui, view, step, page),
            None => before(ui, view, page),
        });
    ui.add_space(4.0);
    ways_on(ui, view, teaching, step, page);
}

/// What to get ready, what the learners can do afterwards, and what to say first.
fn before(ui: &mut Ui, view: &LessonView, page: &Page<'_>) {
    title(ui, &page.say("window-lesson-before"));
    large(ui, &view.about);
    list(ui, &page.say("window-lesson-prepare"), &view.prepare);
    let objectives: Vec<String> = view.objectives.iter().map(|o| o.text.clone()).collect();
    list(ui, &page.say("window-lesson-objectives"), &objectives);
}

fn one(ui: &mut Ui, view: &LessonView, step: &StepView, page: &Page<'_>) {
    let minutes = page.say("window-lesson-minutes");
    aside(ui, &format!("{minutes} {}–{}", step.begins, step.ends));
    // The sheet for home has a title of its own, and needs the room.
    if step.kind != "handout" {
        title(ui, &step.title);
    }
    large(ui, &step.say);
    if !step.note.is_empty() {
        let note = RichText::new(&step.note).font(fonts::regular(18.0));
        ui.label(note.color(theme::YELLOW.egui()));
    }
    match step.kind.as_str() {
        "prebrief" => list(ui, &page.say("window-lesson-prebrief"), &view.prebrief),
        "debrief" => prompts(ui, &view.debrief),
        "handout" => handout(ui, &view.handout),
        _ => {}
    }
    list(ui, &page.say("window-lesson-ask"), &step.ask);
    for moment in &step.moments {
        card(ui, theme::OUTLINE, |ui| {
            aside(ui, &moment.when);
            large(ui, &moment.ask);
        });
    }
}

/// The drill of the page if it has one, else the next page; and the page before.
fn ways_on(
    ui: &mut Ui,
    view: &LessonView,
    teaching: &Teaching,
    step: Option<&StepView>,
    page: &mut Page<'_>,
) {
    let here = teaching.page;
    let last = steps(view).count();
    ui.horizontal_wrapped(|ui| {
        let next = page.say("window-lesson-next");
        match step.and_then(|step| step.drill.clone()) {
            Some((drill, practice)) => {
                let open = page.say("window-lesson-drill");
                page.lead(ui, &open, || {
                    Wish::Do(Command::Open {
                        drill,
                        practice,
                        seed: SEED,
                    })
                });
                if here < last {
                    page.button(ui, &next, || Wish::Turn(here + 1));
                }
            }
            None if here < last => {
                page.lead(ui, &next, || Wish::Turn(here + 1));
            }
            None => {
                let leave = page.say("window-lesson-leave");
                page.lead(ui, &leave, || Wish::EndLesson);
            }
        }
        if here > 0 {
            let back = page.say("window-lesson-back");
            page.button(ui, &back, || Wish::Turn(here - 1));
        }
        if step.is_some_and(|step| step.kind == "handout") {
            let keep = page.say("window-keep");
            page.button(ui, &keep, || Wish::Keep);
        }
    });
}

/// What to ask when looking back.
fn prompts(ui: &mut Ui, phases: &[PhaseView]) {
    for phase in phases {
        list(ui, &phase.title, &phase.prompts);
    }
}

/// The sheet that goes home, on light ground as paper has it.
fn handout(ui: &mut Ui, view: &HandoutView) {
    let line = |ui: &mut Ui, text: &str, bold: bool, size: f32| {
        let font = if bold {
            fonts::bold(size)
        } else {
            fonts::regular(size)
        };
        ui.label(
            RichText::new(text)
                .font(font)
                .color(theme::DARK_TEXT.egui()),
        );
    };
    let lines = |ui: &mut Ui, texts: &[String]| {
        for text in texts {
            ui.horizontal_top(|ui| {
                line(ui, "•", true, 14.0);
                ui.vertical(|ui| line(ui, text, false, 14.0));
            });
        }
    };
    Frame::new()
        .fill(theme::PAPER.egui())
        .inner_margin(14)
        .show(ui, |ui| {
            ui.set_width(ui.available_width());
            ui.spacing_mut().item_spacing.y = 3.0;
            let left = Layout::top_down(Align::LEFT);
            line(ui, &view.title, true, 20.0);
            lines(ui, &view.lines);
            line(ui, &view.again, true, 14.0);
            ui.columns_const(|[facts, cautions]| {
                facts.with_layout(left, |ui| {
                    line(ui, &view.facts_title, true, 15.0);
                    lines(ui, &view.facts);
                });
                cautions.with_layout(left, |ui| {
                    line(ui, &view.cautions_title, true, 15.0);
                    lines(ui, &view.cautions);
                });
            });
        });
}

/// A moment of the lesson at which the drill stands still.
pub(crate) fn moment(ui: &mut Ui, view: &MomentView, page: &mut Page<'_>) {
    subheading(ui, &page.say("window-held"));
    aside(ui, &view.when);
    card(ui, theme::LEAD, |ui| large(ui, &view.ask));
    ui.add_space(8.0);
    let on = page.say("window-asked-on");
    page.lead(ui, &on, || Wish::Talked);
}

fn list(ui: &mut Ui, title: &str, texts: &[String]) {
    if texts.is_empty() {
        return;
    }
    ui.add_space(6.0);
    subheading(ui, title);
    for text in texts {
        ui.horizontal_top(|ui| {
            let dot = RichText::new("•").font(fonts::bold(18.0));
            ui.label(dot.color(theme::LEAD.egui()));
            ui.vertical(|ui| large(ui, text));
        });
    }
}

fn title(ui: &mut Ui, text: &str) {
    let text = RichText::new(text).font(fonts::bold(28.0));
    ui.label(text.color(theme::LEAD.egui()));
}

fn large(ui: &mut Ui, text: &str) {
    let text = RichText::new(text).font(fonts::regular(18.0));
    ui.label(text.color(theme::CREAM.egui()));
}
