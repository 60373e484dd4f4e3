//! A question that the drill holds for, and what the answer came to.
//!
//! One person says a number or chooses, and says how sure they are; a room's hands are counted choice by choice.
//! What is typed or chosen is kept by the toolkit until it is sent.
//! It does not cover who in a room said what.

use bevy_egui::egui::{
    Align2, Button, CollapsingHeader, DragValue, Id, Rect, RichText, ScrollArea, Sense, TextEdit,
    Ui, vec2,
};

use crate::session::Command;
use crate::session::view::{AskedView, BarView, RevealView};
use crate::window::both;
use crate::window::fonts;
use crate::window::link::Wish;
use crate::window::theme;

use super::consequence::{VALUE, one};
use super::{Page, aside, body, card, subheading};

/// Most hands that are counted for one choice.
const MOST_HANDS: u32 = 999;

/// The question, with what to answer it by.
pub(crate) fn question(ui: &mut Ui, view: &AskedView, page: &mut Page<'_>) {
    ScrollArea::vertical()
        .id_salt("asked")
        .auto_shrink([false, false])
        .show(ui, |ui| {
            subheading(ui, &page.say("window-asked"));
            aside(ui, &view.moment);
            title(ui, &view.question);
            ui.add_space(4.0);
            if !view.known.is_empty() {
                card(ui, theme::OUTLINE, |ui| {
                    for sentence in &view.known {
                        body(ui, sentence);
                    }
                });
            }
            card(ui, theme::LEAD, |ui| by_one(ui, view, page));
            by_a_room(ui, view, page);
            let skip = page.say("window-asked-skip");
            page.button(ui, &skip, || Wish::Do(Command::Understood));
        });
}

/// One person's answer: a number or a choice, then how sure.
fn by_one(ui: &mut Ui, view: &AskedView, page: &mut Page<'_>) {
    let id = Id::new(("answer", &view.name));
    let mut answer: String = ui.data(|d| d.get_temp(id)).unwrap_or_default();
    if let Some(label) = &view.number {
        ui.label(RichText::new(label).font(fonts::bold(15.5)));
        let field = TextEdit::singleline(&mut answer)
            .font(fonts::bold(22.0))
            .desired_width(140.0);
        let response = ui.add(field);
        page.focus_first(&response);
    } else {
        ui.horizontal_wrapped(|ui| {
            for choice in &view.choices {
                let chosen = answer == choice.id;
                let response = super::choice(ui, &choice.label, chosen);
                page.focus_first(&response);
                if response.clicked() {
                    answer.clone_from(&choice.id);
                }
            }
        });
    }
    ui.add_space(4.0);
    let ready = !answer.trim().is_empty();
    body(
        ui,
        &page.say(match (ready, &view.number) {
            (true, _) => "window-asked-sure",
            (false, Some(_)) => "window-asked-number-first",
            (false, None) => "window-asked-choice-first",
        }),
    );
    ui.horizontal_wrapped(|ui| {
        for sure in &view.sure {
            let text = format!("{sure} %");
            let response = ui.add_enabled(ready, Button::new(text));
            page.on(&response, || {
                Wish::Do(Command::Predict {
                    answer: answer.trim().to_owned(),
                    sure: *sure,
                })
            });
        }
    });
    ui.data_mut(|d| d.insert_temp(id, answer));
}

/// A room's hands, choice by choice.
fn by_a_room(ui: &mut Ui, view: &AskedView, page: &mut Page<'_>) {
    let id = Id::new(("hands", &view.name));
    let kept: Option<Vec<u32>> = ui.data(|d| d.get_temp(id));
    let mut hands = kept.unwrap_or_default();
    hands.resize(view.choices.len(), 0);
    CollapsingHeader::new(page.say("window-asked-room"))
        .id_salt(("room", &view.name))
        .show(ui, |ui| {
            for (choice, count) in view.choices.iter().zip(&mut hands) {
                ui.horizontal(|ui| {
                    ui.add(DragValue::new(count).range(0..=MOST_HANDS));
                    body(ui, &choice.label);
                });
            }
            let show = page.say("window-asked-show");
            let some = hands.iter().any(|n| *n > 0);
            let response = ui.add_enabled(some, Button::new(show));
            page.on(&response, || {
                let names = view.choices.iter().map(|c| c.id.clone());
                Wish::Do(Command::Counts(names.zip(hands.iter().copied()).collect()))
            });
        });
    ui.data_mut(|d| d.insert_temp(id, hands));
}

/// What it came to.
pub(crate) fn reveal(ui: &mut Ui, view: &RevealView, page: &mut Page<'_>) {
    let button = if page.is_in_two() { 68.0 } else { 48.0 };
    ScrollArea::vertical()
        .id_salt("reveal")
        .auto_shrink([false, false])
        .max_height((ui.available_height() - button).max(100.0))
        .show(ui, |ui| {
            subheading(ui, &view.question);
            title(ui, &view.truth);
            body(ui, &view.said);
            ui.add_space(6.0);
            for bar in &view.bars {
                one_bar(ui, bar, page);
            }
            ui.add_space(4.0);
            let last = view.stages.len().saturating_sub(1);
            for (index, stage) in view.stages.iter().enumerate() {
                one(ui, stage, index, (index == last).then_some(VALUE));
            }
        });
    ui.add_space(4.0);
    let next = page.say("window-asked-on");
    page.lead(ui, &next, || Wish::Do(Command::Understood));
}

/// One bar of a room's choices; the right one is told by a word as well as by its color.
fn one_bar(ui: &mut Ui, bar: &BarView, page: &Page<'_>) {
    let right = page.say("window-asked-right");
    let text = both::each([&bar.label, &right], |[label, right]| {
        let mark = if bar.right { " – " } else { "" };
        let right = if bar.right { right } else { "" };
        format!("{label}: {}{mark}{right}", bar.count)
    });
    body(ui, &text);
    let width = ui.available_width();
    let (space, _) = ui.allocate_exact_size(vec2(width, 14.0), Sense::hover());
    let size = vec2((width * bar.share).max(2.0), space.height());
    let rect = Align2::LEFT_TOP.align_size_within_rect(size, space);
    let ink = if bar.right { theme::LEAD } else { theme::MUTED };
    ui.painter().rect_filled(rect, 3.0, ink.egui());
    outline(ui, space, bar.right);
}

fn outline(ui: &Ui, rect: Rect, right: bool) {
    let width = if right { 2.0 } else { 1.0 };
    let stroke = bevy_egui::egui::Stroke::new(width, theme::OUTLINE.egui());
    ui.painter()
        .rect_stroke(rect, 3.0, stroke, bevy_egui::egui::StrokeKind::Inside);
}

fn title(ui: &mut Ui, text: &str) {
    ui.label(both::written(text, fonts::bold(19.0), theme::CREAM));
}
