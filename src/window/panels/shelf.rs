//! The shelf: what this is for, the cautions once per start, the drills.
//!
//! It does not cover lessons and records.

use bevy_egui::egui::{Atom, Button, RichText, ScrollArea, Ui, vec2};

use crate::session::view::{DrillCard, ShelfView};
use crate::session::{Command, Practice};
use crate::window::fonts;
use crate::window::link::{Desk, Wish};
use crate::window::theme;

use super::{Page, aside, body, card, heading, subheading};

/// What is drawn by chance in a drill that is opened from the shelf.
/// One value, so that a class sees the same drill on every machine.
const SEED: u64 = 1;

/// The cautions, until they have been read.
pub(crate) fn cautions(ui: &mut Ui, view: &ShelfView, page: &mut Page<'_>) {
    heading(ui, &view.cautions_title);
    let accept_room = 54.0;
    ScrollArea::vertical()
        .id_salt("cautions")
        .auto_shrink([false, true])
        .max_height((ui.available_height() - accept_room).max(80.0))
        .show(ui, |ui| {
            for caution in &view.cautions {
                ui.horizontal_top(|ui| {
                    ui.label(
                        RichText::new("•")
                            .font(fonts::bold(15.5))
                            .color(theme::LEAD.egui()),
                    );
                    ui.vertical(|ui| body(ui, caution));
                });
            }
        });
    ui.add_space(4.0);
    page.lead(ui, &view.cautions_accept, || Wish::Accept);
}

/// The drills of one track, under how hard each is; one is unfolded, the first if none was chosen.
pub(crate) fn drills(ui: &mut Ui, view: &ShelfView, desk: &Desk, page: &mut Page<'_>) {
    let track = desk.track.as_deref();
    let track = track.or_else(|| view.tracks.first().map(|t| t.name.as_str()));
    tracks(ui, view, track, page);
    let own = |drill: &&DrillCard| track.is_some_and(|t| drill.tracks.iter().any(|d| d == t));
    let drills: Vec<&DrillCard> = view.drills.iter().filter(own).collect();
    let chosen = desk.chosen.as_deref();
    let known = chosen.filter(|name| drills.iter().any(|d| d.name == *name));
    let chosen = known.or_else(|| drills.first().map(|d| d.name.as_str()));
    let mut level = "";
    ScrollArea::vertical()
        .id_salt("drills")
        .auto_shrink([false, false])
        .show(ui, |ui| {
            ui.spacing_mut().item_spacing.y = 5.0;
            for drill in drills {
                if drill.level != level {
                    level = &drill.level;
                    subheading(ui, level);
                }
                if chosen == Some(drill.name.as_str()) {
                    card(ui, theme::LEAD, |ui| one(ui, drill, page));
                } else {
                    folded(ui, drill, page);
                }
            }
        });
}

/// Whom the drills are for, side by side; the one that is shown is bold and underlined.
fn tracks(ui: &mut Ui, view: &ShelfView, shown: Option<&str>, page: &mut Page<'_>) {
    ui.horizontal_wrapped(|ui| {
        for track in &view.tracks {
            let label = RichText::new(format!("{} ({})", track.title, track.drills));
            let (label, fill) = if shown == Some(track.name.as_str()) {
                let label = label.font(fonts::bold(15.0)).underline();
                (label.color(theme::LEAD.egui()), theme::RAISED)
            } else {
                let label = label.font(fonts::regular(15.0));
                (label.color(theme::CREAM.egui()), theme::INK)
            };
            let response = ui.add(Button::new(label).fill(fill.egui()));
            page.on(&response, || Wish::Track(track.name.clone()));
        }
    });
    ui.add_space(4.0);
}

/// A drill of which only the title shows; pressing it unfolds it.
fn folded(ui: &mut Ui, drill: &DrillCard, page: &mut Page<'_>) {
    let title = RichText::new(&drill.title)
        .font(fonts::bold(16.0))
        .color(theme::CREAM.egui());
    let facts = RichText::new(&drill.minutes)
        .font(fonts::regular(13.5))
        .color(theme::MUTED.egui());
    let size = vec2(ui.available_width(), 34.0);
    let button = Button::new((title, Atom::grow(), facts))
        .fill(theme::RAISED.egui())
        .truncate();
    let response = ui.add_sized(size, button);
    page.on(&response, || Wish::Choose(drill.name.clone()));
    response.on_hover_text(&drill.summary);
}

fn one(ui: &mut Ui, drill: &DrillCard, page: &mut Page<'_>) {
    heading(ui, &drill.title);
    body(ui, &drill.summary);
    aside(ui, &drill.facts);
    if !drill.content_note.is_empty() {
        ui.label(
            RichText::new(&drill.content_note)
                .font(fonts::regular(14.0))
                .color(theme::YELLOW.egui()),
        );
    }
    ui.horizontal_wrapped(|ui| {
        let open = |practice| {
            let drill = drill.name.clone();
            move || {
                Wish::Do(Command::Open {
                    drill,
                    practice,
                    seed: SEED,
                })
            }
        };
        page.lead(ui, &drill.open, open(Practice::Coached));
        let assessed = page.say("window-open-assessed");
        page.button(ui, &assessed, open(Practice::Assessed))
            .on_hover_text(page.say("window-assessed-means"));
    });
}
