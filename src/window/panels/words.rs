//! The scene in words, and the list of keys: what pointing shows to a pointer, for everybody else.
//!
//! Sentences are those of the views, in the order in which energy travels.

use bevy_egui::egui::{RichText, ScrollArea, Ui};

use crate::session::view::StreetView;
use crate::window::both;
use crate::window::fonts;
use crate::window::input::{KEYS, SIGHT_KEYS};
use crate::window::theme;

use super::{Page, aside, body, subheading, titled, top};

/// Everything that can be pointed at, as sentences.
pub(crate) fn scene(ui: &mut Ui, street: &StreetView, page: &mut Page<'_>) {
    head(ui, "window-words", page);
    ScrollArea::vertical()
        .id_salt("words")
        .auto_shrink([false, false])
        .show(ui, |ui| {
            let aims = [
                ("window-goal", &street.goal),
                ("window-progress", &street.progress),
                ("window-hint", &street.hint),
            ];
            for (id, text) in aims.into_iter().filter(|(_, text)| !text.is_empty()) {
                let head = page.say(id);
                body(ui, &both::each([&head, text], |parts| parts.join("  ")));
            }
            top::hinted_wait(ui, street, page);
            if !street.variation.is_empty() {
                body(ui, &street.variation);
            }
            if street.storm {
                body(ui, &page.say("window-storm"));
            }
            let devices = street.devices.iter().map(|d| &d.sentence);
            let wires = devices.chain(street.wires.iter().map(|w| &w.sentence));
            let people = street.people.iter().map(|p| &p.sentence);
            let neighbors = street.neighbors.iter().map(|n| &n.sentence);
            let appliances = street.appliances.iter().map(|a| &a.sentence);
            let generator = std::iter::once(&street.generator.sentence);
            part(
                ui,
                &page.say("window-words-people"),
                people.chain(neighbors),
            );
            part(
                ui,
                &page.say("window-words-house"),
                generator.chain(appliances),
            );
            part(ui, &page.say("window-words-wires"), wires);
            if !street.air.is_empty() {
                body(ui, &street.air);
            }
        });
}

/// The keys.
pub(crate) fn keys(ui: &mut Ui, page: &mut Page<'_>) {
    head(ui, "window-keys", page);
    for (_, name, id) in KEYS {
        line(ui, name, &page.say(id));
    }
    for (name, id) in SIGHT_KEYS {
        line(ui, name, &page.say(id));
    }
    line(ui, "Ctrl ±", &page.say("window-key-size"));
    line(ui, "Ctrl Q", &page.say("window-key-close"));
    line(ui, "1–9", &page.say("window-key-places"));
    line(ui, "Tab", &page.say("window-key-walk"));
    line(ui, "Enter", &page.say("window-key-press"));
}

/// The head of a sheet: its title, and at the other end the way back.
pub(super) fn head(ui: &mut Ui, id: &str, page: &mut Page<'_>) {
    let response = titled(ui, &page.say(id), page);
    page.focus_first(&response);
}

fn line(ui: &mut Ui, key: &str, what: &str) {
    ui.horizontal_top(|ui| {
        ui.vertical(|ui| {
            ui.set_width(92.0);
            ui.label(
                RichText::new(key)
                    .font(fonts::bold(15.0))
                    .color(theme::LEAD.egui()),
            );
        });
        ui.vertical(|ui| body(ui, what));
    });
}

fn part<'a>(ui: &mut Ui, title: &str, sentences: impl Iterator<Item = &'a String>) {
    subheading(ui, title);
    for sentence in sentences.filter(|s| !s.is_empty()) {
        aside(ui, sentence);
    }
    ui.add_space(6.0);
}
