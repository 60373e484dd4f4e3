//! A run that is over, seen again: the moment that is shown, what had happened until then, and the way to the next one.
//!
//! It does not cover the street beside it: that is drawn as in the drill.

use bevy_egui::egui::{RichText, Slider, Ui};

use crate::session::view::AgainView;
use crate::session::{Command, Rewind};
use crate::units::DrillTime;
use crate::window::fonts;
use crate::window::link::Wish;
use crate::window::theme;

use super::{Page, body, card, follow_focus, log, outline_focus, subheading};

/// The clock of the moment.
pub(crate) fn head(ui: &mut Ui, view: &AgainView, page: &Page<'_>) {
    ui.horizontal_wrapped(|ui| {
        let clock = RichText::new(&view.clock).font(fonts::bold(26.0));
        ui.label(clock.color(theme::LEAD.egui()));
        body(ui, &page.say("window-watch"));
    });
}

/// Which moment it is, and the way to any other.
fn moments(ui: &mut Ui, view: &AgainView, page: &mut Page<'_>) {
    let mut place = view.place;
    let said = RichText::new(&view.said).font(fonts::regular(14.0));
    let room = ui.available_width() - SAID;
    ui.spacing_mut().slider_width = room.clamp(LEAST_SLIDER, MOST_SLIDER);
    let slider = Slider::new(&mut place, 0..=view.last)
        .show_value(false)
        .text(said.color(theme::CREAM.egui()));
    let response = ui.add(slider);
    outline_focus(ui, &response);
    follow_focus(&response);
    if place != view.place {
        page.out.push(Wish::Again(Some(place)));
    }
}

/// Room for the words beside the slider, and how long that may be, points.
const SAID: f32 = 190.0;
const LEAST_SLIDER: f32 = 80.0;
const MOST_SLIDER: f32 = 520.0;

/// To the moments before and after, to trying it another way, and back to the debrief.
pub(crate) fn ways(ui: &mut Ui, view: &AgainView, plays: bool, page: &mut Page<'_>) {
    ui.horizontal_wrapped(|ui| {
        let to = |place: usize| Wish::Again(Some(place));
        if view.place < view.last {
            let later = page.say("window-watch-later");
            page.lead(ui, &later, || to(view.place + 1));
        }
        if view.place > 0 {
            let earlier = page.say("window-watch-earlier");
            page.button(ui, &earlier, || to(view.place - 1));
        }
        // After the last moment nothing follows.
        if plays || view.place < view.last {
            let plays = if plays {
                "window-watch-pause"
            } else {
                "window-watch-play"
            };
            let plays = page.say(plays);
            page.button(ui, &plays, || Wish::Play);
        }
        let here = page.say("window-from-here");
        let at = DrillTime::from_millis(view.clock_ms);
        page.button(ui, &here, || Wish::Do(Command::Rewind(Rewind::To(at))));
        let end = page.say("window-watch-end");
        page.button(ui, &end, || Wish::Again(None));
    });
    moments(ui, view, page);
}

/// What was found at the moment, and below it all that had been done and had happened.
pub(crate) fn told(ui: &mut Ui, view: &AgainView, page: &Page<'_>) {
    found(ui, view, page);
    subheading(ui, &page.say("window-log"));
    log::lines(ui, &view.log, page);
}

/// The same as a part of a page, what happened last first.
pub(crate) fn told_in_page(ui: &mut Ui, view: &AgainView, page: &Page<'_>) {
    found(ui, view, page);
    subheading(ui, &page.say("window-log"));
    for line in view.log.iter().rev() {
        log::one(ui, line, page);
    }
}

fn found(ui: &mut Ui, view: &AgainView, page: &Page<'_>) {
    if !view.found.is_empty() {
        card(ui, theme::PURPLE, |ui| {
            subheading(ui, &page.say("window-watch-found"));
            for found in &view.found {
                body(ui, found);
            }
        });
        ui.add_space(6.0);
    }
}
