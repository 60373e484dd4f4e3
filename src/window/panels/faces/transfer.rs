//! Handles between two sources: one lever with its contacts, or a row of small handles, one to a circuit.
//!
//! The first stop is the utility's, the last one the other source's, the middle one neither's; the words stand beside them.
//! Contacts are drawn as a scheme, not as a maker's mechanism.

use std::sync::Arc;

use bevy_egui::egui::text::LayoutJob;
use bevy_egui::egui::{
    Align, Align2, Button, CornerRadius, Galley, Painter, Rect, Sense, Stroke, StrokeKind, Ui,
    Vec2, WidgetInfo, WidgetType, pos2, vec2,
};

use crate::session::view::{ChoiceView, ControlView, EndView, FaceView};
use crate::window::both;
use crate::window::fonts;
use crate::window::panels::{Page, aside, close, timeline};
use crate::window::theme;

use super::{Look, stop};

/// Height of one stop of a lever: more than the 24 that a target needs at least.
const STOP: f32 = 28.0;
/// The widest that the words beside a lever's stops may be.
const WORDS: f32 = 96.0;
/// Least height of a small handle.
const SMALL: f32 = 28.0;

/// All handles of a face, each with the breaker of its own if it has one.
pub(super) fn handles(
    ui: &mut Ui,
    face: &FaceView,
    (handles, rest): (&[&ControlView], &[&ControlView]),
    page: &mut Page<'_>,
) {
    match handles {
        [] => {}
        [one] => lever(ui, one, &face.ends, page),
        many => {
            for handle in many {
                let breaker = rest.iter().find(|c| is_breaker_of(c, handle));
                row(ui, handle, breaker.copied(), page);
            }
            told(ui, &face.ends);
        }
    }
}

/// Whether a control is the breaker that belongs to a handle.
pub(super) fn is_breaker_of(control: &ControlView, handle: &ControlView) -> bool {
    control.id.strip_suffix("-breaker") == Some(handle.id.as_str())
}

fn number(n: usize) -> f32 {
    u8::try_from(n).map_or(f32::from(u8::MAX), f32::from)
}

/// One lever with a scheme of its contacts beside it.
fn lever(ui: &mut Ui, handle: &ControlView, ends: &[EndView], page: &mut Page<'_>) {
    let painter = ui.painter().clone();
    let words = words(&painter, handle);
    let step = words.iter().fold(STOP, |step, word| {
        step.max(if word.rows.len() > 2 {
            word.size().y + 2.0
        } else {
            STOP
        })
    });
    let size = vec2(ui.available_width(), step * 3.0 + 14.0);
    let (rect, _) = ui.allocate_exact_size(size, Sense::hover());
    let slot = Rect::from_min_size(rect.min + vec2(WORDS, 7.0), vec2(44.0, step * 3.0));
    for (n, word) in words.into_iter().enumerate() {
        let at = pos2(slot.left() - 8.0, slot.top() + step * (number(n) + 0.5));
        let rect = Align2::RIGHT_CENTER.anchor_size(at, word.size());
        painter.galley(rect.min, word, theme::CREAM.egui());
    }
    let stops = draw_slot(&painter, slot, vec2(0.0, step));
    for (i, at) in stops.iter().enumerate() {
        stop(ui, (handle, i), *at, Look::Marked, page);
    }
    scheme(
        &painter,
        (slot.right() + 30.0, rect.right()),
        &stops,
        handle,
        ends,
    );
    told(ui, ends);
}

/// Lines to the lever's contacts, each with what feeds it.
fn scheme(
    painter: &Painter,
    (left, right): (f32, f32),
    stops: &[Rect; 3],
    handle: &ControlView,
    ends: &[EndView],
) {
    let [top, middle, bottom] = [stops[0], stops[1], stops[2]].map(|r| r.center().y);
    // Each line is as long as the room lets it be, the blade between them always the same.
    let length = ((right - left - 60.0) / 2.0).clamp(30.0, 110.0);
    let contact_x = left + length;
    let pivot = pos2(contact_x + 52.0, middle);
    let stands = handle.choices.iter().position(|c| c.current).unwrap_or(1);
    let points = [pos2(contact_x, top), pos2(contact_x, bottom)];
    for (end, at) in ends.iter().zip(points) {
        timeline::pattern(painter, pos2(left, at.y), at.x - 4.0, end.fed);
    }
    if let Some(load) = ends.get(2) {
        timeline::pattern(
            painter,
            pos2(pivot.x + 4.0, pivot.y),
            pivot.x + length,
            load.fed,
        );
    }
    let tip = match stands {
        0 => points[0],
        2 => points[1],
        _ => pos2(contact_x + 6.0, middle),
    };
    painter.line_segment([pivot, tip], Stroke::new(4.0, theme::CREAM.egui()));
    for at in points.into_iter().chain([pivot]) {
        painter.circle_filled(at, 4.5, theme::STEEL.egui());
    }
}

/// A small handle: what it moves and its breaker, and below them its stops from the utility's to the other source's, each with its word.
fn row(ui: &mut Ui, handle: &ControlView, breaker: Option<&ControlView>, page: &mut Page<'_>) {
    ui.spacing_mut().item_spacing.y = 4.0;
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().interact_size.y = 26.0;
        ui.label(both::written(
            &handle.label,
            fonts::bold(14.5),
            theme::CREAM,
        ));
        if let Some(breaker) = breaker {
            ui.spacing_mut().button_padding.y = 2.0;
            small_breaker(ui, breaker, page);
        }
    });
    let painter = ui.painter().clone();
    let width = ui.available_width() / 3.0;
    let words: Vec<_> = handle
        .choices
        .iter()
        .map(|choice| {
            let ink = if choice.current {
                theme::DARK_TEXT
            } else {
                theme::CREAM
            };
            let job = |size: f32| {
                let (text, font) = (choice.label.clone(), fonts::regular(size));
                let mut job = LayoutJob::simple(text, font, ink.egui(), width - 8.0);
                job.halign = Align::Center;
                painter.layout_job(job)
            };
            // A little smaller on one line is better than on two: all handles are to be in sight.
            let usual = job(13.0);
            let small = job(12.0);
            let fits = usual.rows.len() <= small.rows.len();
            (if fits { usual } else { small }, ink)
        })
        .collect();
    let high = words.iter().map(|(galley, _)| galley.size().y);
    let height = high.fold(SMALL, |most, one| most.max(one + 8.0));
    let size = vec2(ui.available_width(), height);
    let (slot, _) = ui.allocate_exact_size(size, Sense::hover());
    let stops = draw_slot(&painter, slot, vec2(width, 0.0));
    for ((n, at), (galley, ink)) in stops.into_iter().enumerate().zip(words) {
        stop(ui, (handle, n), at, Look::Bare, page);
        let top = at.center().y - galley.size().y / 2.0;
        painter.galley(pos2(at.center().x, top), galley, ink.egui());
    }
}

/// The breaker of one handle: what it is, its rating and how it stands; pressing it turns it over.
fn small_breaker(ui: &mut Ui, breaker: &ControlView, page: &mut Page<'_>) {
    let ink = if breaker.position_id == "tripped" {
        theme::YELLOW
    } else {
        theme::CREAM
    };
    let what = page.say("window-breaker");
    let text = both::each(
        [&what, &breaker.rating, &breaker.position],
        |[what, rating, stands]| format!("{what} {rating}: {stands}"),
    );
    let button = Button::new(both::written(&text, fonts::regular(13.5), ink)).wrap();
    let response = ui.push_id(&breaker.id, |ui| ui.add(button)).inner;
    let words = both::each([&breaker.label, &breaker.position], |parts| {
        parts.join(": ")
    });
    response.widget_info(|| WidgetInfo::labeled(WidgetType::Button, true, &words));
    if let Some(other) = breaker.choices.iter().find(|c| !c.current) {
        page.on(&response, || close::operate(breaker, &other.id));
    }
    response.on_hover_text(&breaker.sentence);
}

/// The slot a handle moves in; its three stops.
fn draw_slot(painter: &Painter, slot: Rect, step: Vec2) -> [Rect; 3] {
    painter.rect_filled(slot, CornerRadius::same(6), theme::INK.egui());
    let edge = Stroke::new(1.5, theme::STEEL.egui());
    painter.rect_stroke(slot, CornerRadius::same(6), edge, StrokeKind::Inside);
    let size = slot.size() - step * 2.0;
    [0.0, 1.0, 2.0].map(|n| Rect::from_min_size(slot.min + step * n, size))
}

/// The words for the stops, which stand to the left of a lever's slot.
fn words(painter: &Painter, handle: &ControlView) -> Vec<Arc<Galley>> {
    let word = |choice: &ChoiceView| {
        let ink = if choice.current {
            theme::LEAD
        } else {
            theme::MUTED
        };
        let font = fonts::regular(12.5);
        painter.layout(choice.label.clone(), font, ink.egui(), WORDS - 8.0)
    };
    handle.choices.iter().map(word).collect()
}

/// What feeds each side, a line each with its pattern.
pub(super) fn told(ui: &mut Ui, ends: &[EndView]) {
    for end in ends {
        ui.horizontal_top(|ui| {
            let (rect, _) = ui.allocate_exact_size(vec2(46.0, 18.0), Sense::hover());
            let y = rect.center().y;
            timeline::pattern(ui.painter(), pos2(rect.left(), y), rect.right(), end.fed);
            let told = both::each([&end.label, &end.word], |parts| parts.join(": "));
            ui.vertical(|ui| aside(ui, &told));
        });
    }
}
