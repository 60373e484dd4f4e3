//! A lesson as it is taught: the plan by the minute, and the page that is open, large enough for a wall.
//!
//! What is said and asked is the lesson's; nothing here knows a drill.
//! It does not cover the clock on the wall: an instructor keeps the time.

use bevy_egui::egui::{
    Align, Align2, Atom, AtomExt as _, Atoms, Button, Frame, Id, Layout, Rect, RichText,
    ScrollArea, TextStyle, TextWrapMode, Ui, Vec2,
};

use crate::session::Command;
use crate::session::view::{
    HandoutView, LanguageView, LessonView, MomentView, PhaseView, StepView,
};
use crate::window::both;
use crate::window::fonts;
use crate::window::link::Wish;
use crate::window::teach::{Teaching, steps};
use crate::window::theme;

use super::shelf::SEED;
use super::{Page, aside, body, card, end_whole, heading, subheading};

/// All pages, the open one marked; pressing one turns to it.
pub(crate) fn plan(ui: &mut Ui, view: &LessonView, teaching: &Teaching, page: &mut Page<'_>) {
    heading(ui, &view.title);
    let parts = [view.audience.as_str(), &view.minutes];
    aside(ui, &both::each(parts, |parts| parts.join(" · ")));
    let leave = if page.is_in_two() { 66.0 } else { 46.0 };
    ScrollArea::vertical()
        .id_salt("plan")
        .auto_shrink([false, false])
        .max_height((ui.available_height() - leave).max(80.0))
        .show(ui, |ui| {
            ui.spacing_mut().item_spacing.y = 4.0;
            let column = minutes_column(ui, view);
            let before = page.say("window-lesson-before");
            let mut tops = vec![ui.cursor().top()];
            line(ui, ("", &before), (0, column), teaching, page);
            let mut number = 0;
            for session in &view.sessions {
                let parts = [session.title.as_str(), &session.minutes];
                subheading(ui, &both::each(parts, |parts| parts.join(" · ")));
                for step in &session.steps {
                    number += 1;
                    tops.push(ui.cursor().top());
                    let texts = (step.minutes.as_str(), step.title.as_str());
                    line(ui, texts, (number, column), teaching, page);
                    if teaching.page == number {
                        turn_to(ui, number, &tops);
                    }
                }
            }
            end_whole(ui, &tops);
        });
    let leave = page.say("window-lesson-leave");
    page.button(ui, &leave, || Wish::EndLesson);
}

/// Room for the minutes of any page, so that all titles begin below one another.
fn minutes_column(ui: &Ui, view: &LessonView) -> Vec2 {
    let steps = view.sessions.iter().flat_map(|session| &session.steps);
    let size = |step: &StepView| {
        let font = fonts::bold(14.5);
        let written = both::written(&step.minutes, font, theme::CREAM);
        let galley = written.into_galley(
            ui,
            Some(TextWrapMode::Extend),
            f32::INFINITY,
            TextStyle::Body,
        );
        galley.size()
    };
    steps.map(size).fold(Vec2::ZERO, Vec2::max)
}

/// Brings the open page into sight once, below the one before it, so that no page is cut above it.
fn turn_to(ui: &Ui, number: usize, tops: &[f32]) {
    let turned = Id::new("lesson-turned-to");
    let before: Option<usize> = ui.data_mut(|data| {
        let before = data.get_temp(turned);
        data.insert_temp(turned, number);
        before
    });
    if before == Some(number) {
        return;
    }
    if let Some(top) = tops.iter().rev().nth(1) {
        let x = ui.min_rect().x_range();
        let part = Rect::from_x_y_ranges(x, *top..=*top + 1.0);
        ui.scroll_to_rect(part, Some(Align::TOP));
        ui.ctx().request_repaint();
    }
}

/// A page of the plan: its minutes in their column, and its title.
fn line(
    ui: &mut Ui,
    (minutes, text): (&str, &str),
    (number, column): (usize, Vec2),
    teaching: &Teaching,
    page: &mut Page<'_>,
) {
    let here = teaching.page == number;
    let (font, ink, fill) = if here {
        (fonts::bold(14.5), theme::LEAD, theme::RAISED)
    } else {
        (fonts::regular(14.5), theme::CREAM, theme::PANEL)
    };
    let width = ui.available_width();
    let mut written = Atoms::default();
    if !minutes.is_empty() {
        let minutes = both::written(minutes, font.clone(), ink);
        let minutes = minutes.atom_size(column);
        written.push_right(minutes.atom_align(Align2::LEFT_CENTER));
    }
    // What is long goes on below itself, not below the minutes.
    written.push_right(both::written(text, font, ink).atom_shrink(true));
    written.push_right(Atom::grow());
    let button = Button::new(written).fill(fill.egui()).wrap();
    let response = ui.add_sized([width, 0.0], button);
    page.on(&response, || Wish::Turn(number));
}

/// The open page.
pub(crate) fn open(ui: &mut Ui, view: &LessonView, teaching: &Teaching, page: &Page<'_>) {
    match teaching.step(view) {
        Some(step) if step.kind == "handout" => to_take_home(ui, &view.handout, step, page),
        Some(step) => one(ui, view, step, page),
        None => before(ui, view, page),
    }
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
    aside(ui, &step.minutes);
    title(ui, &step.title);
    large(ui, &step.say);
    if !step.note.is_empty() {
        let note = both::written(&step.note, fonts::regular(18.0), theme::YELLOW);
        ui.label(note);
    }
    match step.kind.as_str() {
        "prebrief" => list(ui, &page.say("window-lesson-prebrief"), &view.prebrief),
        "debrief" => prompts(ui, &view.debrief),
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
pub(crate) fn ways_on(ui: &mut Ui, view: &LessonView, teaching: &Teaching, page: &mut Page<'_>) {
    let (step, here) = (teaching.step(view), teaching.page);
    let last = steps(view).count();
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
}

/// What to ask when looking back.
fn prompts(ui: &mut Ui, phases: &[PhaseView]) {
    for phase in phases {
        list(ui, &phase.title, &phase.prompts);
    }
}

/// The language of the sheet, where two are spoken: each has a sheet of its own, to be kept by itself.
pub(crate) fn languages(ui: &mut Ui, all: &[LanguageView], page: &mut Page<'_>) {
    if !page.is_in_two() {
        return;
    }
    for language in all {
        page.choice(ui, (&language.name, language.current), || {
            Wish::Do(Command::Speak(language.tag.clone()))
        });
    }
}

/// The page with the sheet that goes home: what to say and ask in a few lines, so that the sheet is seen whole.
fn to_take_home(ui: &mut Ui, view: &HandoutView, step: &StepView, page: &Page<'_>) {
    // Two languages are enlarged already.
    sheet(ui, view, if page.is_in_two() { 12.8 } else { 16.5 });
    let said = [step.minutes.as_str(), &step.say];
    body(ui, &both::each(said, |parts| parts.join("  ")));
    let ask = page.say("window-lesson-ask");
    for question in &step.ask {
        let asked = both::each([&ask, question], |parts| parts.join(": "));
        body(ui, &both::in_one_line(&asked));
    }
}

/// The sheet that goes home, on light ground as paper has it.
fn sheet(ui: &mut Ui, view: &HandoutView, size: f32) {
    let line = |ui: &mut Ui, text: &str, font| {
        ui.label(both::written(text, font, theme::DARK_TEXT));
    };
    let heading = |ui: &mut Ui, text: &str| line(ui, text, fonts::bold(size + 1.0));
    let lines = |ui: &mut Ui, texts: &[String]| {
        for text in texts {
            ui.horizontal_top(|ui| {
                line(ui, "•", fonts::bold(size));
                ui.vertical(|ui| line(ui, text, fonts::regular(size)));
            });
        }
    };
    Frame::new()
        .fill(theme::PAPER.egui())
        .inner_margin(10)
        .show(ui, |ui| {
            ui.set_width(ui.available_width());
            ui.spacing_mut().item_spacing.y = 3.0;
            ui.spacing_mut().interact_size.y = 0.0;
            let left = Layout::top_down(Align::LEFT);
            line(ui, &view.title, fonts::bold(size * 1.25));
            ui.columns_const(|[first, second]| {
                first.with_layout(left, |ui| {
                    lines(ui, &view.lines);
                    line(ui, &view.again, fonts::bold(size));
                    ui.add_space(4.0);
                    heading(ui, &view.facts_title);
                    lines(ui, &view.facts);
                });
                second.with_layout(left, |ui| {
                    heading(ui, &view.cautions_title);
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
    ui.label(both::written(text, fonts::bold(28.0), theme::LEAD));
}

fn large(ui: &mut Ui, text: &str) {
    ui.label(both::written(text, fonts::regular(18.0), theme::CREAM));
}
