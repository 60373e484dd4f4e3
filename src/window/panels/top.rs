//! The bar on top (title, clock, waits, finish, language, keys) and the bar below (what was answered last, places).
//!
//! It does not cover the log: see [`super::log`].

use bevy_egui::egui;
use bevy_egui::egui::{Align, Layout, RichText, Ui};

use crate::session::view::{LanguageView, LogView, StreetView};
use crate::session::{Command, Notice};
use crate::window::fonts;
use crate::window::input::{MINUTE, SHORT};
use crate::window::link::Wish;
use crate::window::theme;

use super::Page;

/// The bar on top.
pub(crate) fn bar(
    ui: &mut Ui,
    street: &StreetView,
    log: &LogView,
    languages: &[LanguageView],
    page: &mut Page<'_>,
) {
    ui.horizontal_centered(|ui| {
        ui.spacing_mut().item_spacing.x = 6.0;
        let clock = RichText::new(&log.clock)
            .font(fonts::bold(26.0))
            .color(theme::LEAD.egui());
        ui.add_sized([86.0, 32.0], egui::Label::new(clock))
            .on_hover_text(page.say("window-clock"));
        for (id, command) in [
            ("window-wait-short", Command::Wait(SHORT)),
            ("window-wait-minute", Command::Wait(MINUTE)),
            ("window-wait-event", Command::WaitForEvent),
        ] {
            let text = page.say(id);
            page.button(ui, &text, || Wish::Do(command));
        }
        let finish = page.say("window-finish");
        if log.goal_met || log.over {
            page.lead(ui, &finish, || Wish::Do(Command::Finish));
        } else {
            page.button(ui, &finish, || Wish::Do(Command::Finish));
        }
        ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
            ends(ui, languages, page);
            let title = RichText::new(&street.title)
                .font(fonts::bold(16.0))
                .color(theme::MUTED.egui());
            ui.add(egui::Label::new(title).truncate())
                .on_hover_text(&street.seed);
        });
    });
}

/// Language and keys, at the end of a bar.
pub(crate) fn ends(ui: &mut Ui, languages: &[LanguageView], page: &mut Page<'_>) {
    let keys = page.say("window-keys");
    page.button(ui, &keys, || Wish::Keys);
    if let Some(now) = languages.iter().position(|l| l.current)
        && let Some(next) = languages.get((now + 1) % languages.len())
    {
        let response = page.button(ui, &next.name, || {
            Wish::Do(Command::Speak(next.tag.clone()))
        });
        response.on_hover_text(page.say("window-key-language"));
    }
}

/// The bar below.
pub(crate) fn places(
    ui: &mut Ui,
    street: &StreetView,
    open: Option<&str>,
    notice: Option<&Notice>,
    page: &mut Page<'_>,
) {
    ui.spacing_mut().item_spacing.y = 5.0;
    ui.horizontal(|ui| {
        ui.set_height(26.0);
        answer(ui, notice, page);
    });
    ui.horizontal(|ui| {
        for (number, place) in (1..).zip(&street.places) {
            let text = format!("{number}  {}", place.label);
            let is_open = open == Some(place.id.as_str());
            let font = if is_open {
                fonts::bold(15.5)
            } else {
                fonts::regular(15.5)
            };
            let ink = if is_open {
                theme::DARK_TEXT
            } else {
                theme::CREAM
            };
            let mut button = egui::Button::new(RichText::new(text).font(font).color(ink.egui()));
            if is_open {
                button = button.fill(theme::SKY_BLUE.egui());
            }
            let response = ui.add(button);
            page.on(&response, || {
                if is_open {
                    Wish::Back
                } else {
                    Wish::Place(place.id.clone())
                }
            });
            response.on_hover_text(&place.sentence);
        }
        ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
            let words = page.say("window-words");
            page.button(ui, &words, || Wish::Words);
        });
    });
}

/// What the session answered last, with the word for what kind of answer it is.
fn answer(ui: &mut Ui, notice: Option<&Notice>, page: &Page<'_>) {
    let Some((id, ink, text)) = notice.and_then(look) else {
        return;
    };
    let word = RichText::new(page.say(id))
        .font(fonts::bold(15.0))
        .color(ink.egui());
    ui.label(word);
    let text = RichText::new(text)
        .font(fonts::regular(15.0))
        .color(theme::CREAM.egui());
    ui.add(egui::Label::new(text).truncate());
}

fn look(notice: &Notice) -> Option<(&'static str, theme::Ink, &str)> {
    match notice {
        Notice::Done(text) => Some(("window-log-did", theme::CREAM, text)),
        Notice::Refused(text) => Some(("window-log-refused", theme::YELLOW, text)),
        Notice::Happened(text) => Some(("window-log-happened", theme::SKY_BLUE, text)),
        Notice::Learnt(text) => Some(("window-log-learnt", theme::MUTED, text)),
        Notice::Unknown(text) => Some(("window-log-unknown", theme::YELLOW, text)),
        Notice::Consequence | Notice::Over => None,
    }
}
