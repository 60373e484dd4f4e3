//! The legend: what feeds the conductors that are on the street now, as samples with their words.
//!
//! A generator has two marks, and so two lines: one where current flows, one where there is voltage without a flow.
//! It does not cover what a callout says of one conductor.

use std::sync::Arc;

use bevy::math::Vec2;
use bevy_egui::egui;
use bevy_egui::egui::{
    Align2, Galley, Painter, Pos2, Rect, RichText, Sense, Stroke, Ui, pos2, vec2,
};

use crate::session::view::{Fed, Flow, StreetView};
use crate::window::both;
use crate::window::both::Side;
use crate::window::fonts;
use crate::window::mirror;
use crate::window::panels::{Page, timeline};
use crate::window::theme;

use super::callouts::{LEAST_TYPE, ground, point, screen};
use super::frame::Frame;

/// A line of the legend.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
struct Entry {
    fed: Fed,
    /// Whether it is drawn as having voltage without a flow; only a generator's differs by that.
    at_rest: bool,
}

impl Entry {
    /// Message id of its word.
    fn word(self) -> &'static str {
        if self.at_rest {
            "window-fed-at-rest"
        } else {
            theme::fed_word(self.fed)
        }
    }
}

/// What the legend explains: what is on the street now.
fn entries(street: &StreetView) -> Vec<Entry> {
    let mut entries = Vec::new();
    for fed in Fed::ALL {
        let mut here = street.wires.iter().filter(|wire| wire.fed == fed);
        let there = here.clone().next().is_some();
        let flows = here.clone().any(|wire| wire.flow != Flow::None);
        let rests = fed == Fed::Generator && here.any(|wire| wire.flow == Flow::None);
        if there && (flows || !rests) {
            let at_rest = false;
            entries.push(Entry { fed, at_rest });
        }
        if rests {
            let at_rest = true;
            entries.push(Entry { fed, at_rest });
        }
    }
    entries
}

/// Length of a sample, and of the gap to its word, points.
const SAMPLE: f32 = 38.0;
const SAMPLE_GAP: f32 = 8.0;

/// The legend in the lower corner of the scene; says what it covers.
/// Not where it would be too small to read, or where it has a bar of its own.
pub(super) fn corner(
    painter: &Painter,
    street: &StreetView,
    frame: Frame,
    page: &Page<'_>,
) -> Option<Rect> {
    let whole = frame.whole();
    let entries = entries(street);
    let pitch = whole.points(if entries.len() > 6 { 18.4 } else { 25.0 });
    // A hall reads it too: there the street is smaller than its words.
    let pitch = if page.is_in_two() && entries.len() < 4 {
        pitch.max(13.2)
    } else {
        pitch * whole.words()
    };
    let size = (pitch * 0.92).min(13.5 * whole.words());
    if size < LEAST_TYPE || whole.is_narrow() || entries.is_empty() {
        return None;
    }
    let words = |say: &dyn Fn(&str) -> String| -> Vec<Arc<Galley>> {
        let texts = entries.iter().map(|entry| say(&page.say(entry.word())));
        let layout = |text| painter.layout_no_wrap(text, fonts::regular(size), theme::CREAM.egui());
        texts.map(layout).collect()
    };
    let widest = |words: &[Arc<Galley>]| words.iter().map(|g| g.size().x).fold(0.0, f32::max);
    // Two languages stand here only where there is room for both of every line; the callouts have both anyway.
    let room = screen(frame);
    let in_both = words(&both::in_one_line);
    let words = if widest(&in_both) <= room.width() * 0.4 {
        in_both
    } else {
        words(&|text| both::side(text, Side::First).to_owned())
    };
    let left = point(whole, Vec2::new(whole.bounds().min.x + 14.0, 0.0)).x;
    let lines = words.iter().fold(0.0, |n, _| n + 1.0);
    let top = room.bottom() - 8.0 - pitch * lines;
    let width = SAMPLE + SAMPLE_GAP + widest(&words);
    let ink_rect = Rect::from_min_size(pos2(left, top), vec2(width, pitch * lines));
    let rect = ink_rect.expand2(vec2(8.0, 3.0)).intersect(room);
    if frame.sight().is_part() {
        ground(painter, rect);
    }
    let mut y = top + pitch / 2.0;
    for (entry, galley) in entries.into_iter().zip(words) {
        let line = Rect::from_min_size(pos2(left, y), vec2(width, 0.0));
        // Each line is read from its sample on; the corner is the one that the yard leaves free.
        let placed = |x: f32, size: egui::Vec2| {
            let rect = Align2::LEFT_CENTER.anchor_size(pos2(left + x, y), size);
            mirror::across(painter.ctx(), rect, line)
        };
        sample(painter, placed(0.0, vec2(SAMPLE, 0.0)).min, entry);
        let at = placed(SAMPLE + SAMPLE_GAP, galley.size());
        painter.galley(at.min, galley, theme::CREAM.egui());
        y += pitch;
    }
    Some(rect)
}

/// The same in rows: where the sky has no room for it.
pub(crate) fn row(ui: &mut Ui, street: &StreetView, page: &Page<'_>) {
    ui.spacing_mut().item_spacing = vec2(6.0, 2.0);
    ui.spacing_mut().interact_size.y = 16.0;
    ui.horizontal_wrapped(|ui| {
        for entry in entries(street) {
            ui.horizontal(|ui| {
                let (rect, _) = ui.allocate_exact_size(vec2(SAMPLE, 16.0), Sense::hover());
                sample(ui.painter(), rect.left_center(), entry);
                let word = page.say(entry.word());
                let word = RichText::new(both::side(&word, Side::First));
                ui.label(word.font(fonts::regular(12.5)).color(theme::CREAM.egui()));
                ui.add_space(6.0);
            });
        }
    });
}

/// A sample of a conductor.
fn sample(painter: &Painter, from: Pos2, entry: Entry) {
    if !entry.at_rest {
        timeline::pattern(painter, from, from.x + SAMPLE, entry.fed);
        return;
    }
    let ink = theme::fed_ink(entry.fed).egui();
    let to = from + vec2(SAMPLE, 0.0);
    painter.line_segment([from, to], Stroke::new(2.0, ink));
    for share in [0.15, 0.5, 0.85] {
        let at = from.lerp(to, share);
        let corners = [(-6.0, 0.0), (0.0, -4.6), (6.0, 0.0), (0.0, 4.6)];
        let corners = corners.map(|(x, y)| at + vec2(x, y)).to_vec();
        painter.add(egui::Shape::convex_polygon(corners, ink, Stroke::NONE));
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::session::view::WireView;

    #[test]
    fn a_generator_has_a_line_for_each_of_its_marks_that_is_there() {
        let wire = |fed: Fed, flow: Flow| WireView {
            fed,
            flow,
            ..WireView::default()
        };
        let told = |wires: Vec<WireView>| {
            let street = StreetView {
                wires,
                ..StreetView::default()
            };
            let told = entries(&street).into_iter();
            told.map(|entry| (entry.fed, entry.at_rest))
                .collect::<Vec<_>>()
        };
        let (set, utility) = (Fed::Generator, Fed::Utility);
        assert_eq!(told(vec![wire(set, Flow::None)]), [(set, true)]);
        let all = vec![
            wire(set, Flow::None),
            wire(utility, Flow::None),
            wire(set, Flow::Forward),
        ];
        assert_eq!(told(all), [(utility, false), (set, false), (set, true)]);
    }
}
