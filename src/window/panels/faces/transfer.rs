//! Handles between two sources: one lever with its contacts, or a row of small handles, one to a circuit.
//!
//! The upper stop is the utility's, the lower one the other source's, the middle one neither's; the words stand beside them.
//! Contacts are drawn as a scheme, not as a maker's mechanism.

use bevy_egui::egui::{
    Align2, CornerRadius, Painter, Pos2, Rect, Sense, Stroke, StrokeKind, Ui, pos2, vec2,
};

use crate::session::view::{ControlView, EndView, FaceView};
use crate::window::fonts;
use crate::window::panels::{Page, aside, timeline};
use crate::window::theme;
use crate::window::theme::Ink;

use super::stop;

/// Height of one stop of a handle: more than the 24 that a target needs at least.
const STOP: f32 = 28.0;
/// Width of the words beside the stops.
const WORDS: f32 = 88.0;
/// The least width of a small handle.
const NARROW: f32 = 50.0;

/// All handles of a face.
pub(super) fn handles(ui: &mut Ui, face: &FaceView, handles: &[&ControlView], page: &mut Page<'_>) {
    match handles {
        [] => {}
        [one] => lever(ui, one, &face.ends, page),
        many => {
            let room = ui.available_width() - WORDS;
            let mut in_row = 1;
            while in_row < many.len() && NARROW * number(in_row + 1) <= room {
                in_row += 1;
            }
            for part in many.chunks(in_row) {
                row(ui, part, page);
            }
            told(ui, &face.ends);
        }
    }
}

fn number(n: usize) -> f32 {
    u8::try_from(n).map_or(f32::from(u8::MAX), f32::from)
}

/// One lever with a scheme of its contacts beside it.
fn lever(ui: &mut Ui, handle: &ControlView, ends: &[EndView], page: &mut Page<'_>) {
    let height = STOP * 3.0 + 14.0;
    let size = vec2(ui.available_width(), height);
    let (rect, _) = ui.allocate_exact_size(size, Sense::hover());
    let painter = ui.painter().clone();
    let slot = Rect::from_min_size(rect.min + vec2(WORDS, 7.0), vec2(44.0, STOP * 3.0));
    words(&painter, slot, handle);
    let stops = draw_slot(&painter, slot);
    for (i, at) in stops.iter().enumerate() {
        stop(ui, (handle, i), *at, page);
    }
    let left = slot.right() + 24.0;
    scheme(&painter, (left, rect.right()), &stops, handle, ends);
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
    let contact_x = left + 62.0;
    let pivot = pos2(contact_x + 46.0, middle);
    let stands = handle.choices.iter().position(|c| c.current).unwrap_or(1);
    let points = [pos2(contact_x, top), pos2(contact_x, bottom)];
    for (end, at) in ends.iter().zip(points) {
        timeline::pattern(painter, pos2(left, at.y), at.x - 4.0, end.fed);
    }
    if let Some(load) = ends.get(2) {
        timeline::pattern(
            painter,
            pos2(pivot.x + 4.0, pivot.y),
            pivot.x + 40.0,
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
    let said = [
        (contact_x + 12.0, top),
        (contact_x + 12.0, bottom),
        (pivot.x + 46.0, middle),
    ];
    for (end, (x, y)) in ends.iter().zip(said) {
        let ink = theme::fed_ink(end.fed).mix(theme::CREAM, 0.35);
        let room = right - x;
        line(painter, pos2(x, y - 7.0), &end.label, (theme::MUTED, room));
        line(painter, pos2(x, y + 7.0), &end.word, (ink, room));
    }
}

/// A row of small handles, the words for their stops at its left end.
fn row(ui: &mut Ui, handles: &[&ControlView], page: &mut Page<'_>) {
    let label_room = 32.0;
    let size = vec2(ui.available_width(), label_room + STOP * 3.0 + 8.0);
    let (rect, _) = ui.allocate_exact_size(size, Sense::hover());
    let painter = ui.painter().clone();
    let pitch = ((rect.width() - WORDS) / number(handles.len())).min(92.0);
    for (i, handle) in handles.iter().enumerate() {
        let middle = rect.left() + WORDS + pitch * (number(i) + 0.5);
        let slot = Rect::from_min_size(
            pos2(middle - 17.0, rect.top() + label_room),
            vec2(34.0, STOP * 3.0),
        );
        if i == 0 {
            words(&painter, slot, handle);
        }
        let galley = painter.layout(
            handle.label.clone(),
            fonts::regular(11.5),
            theme::CREAM.egui(),
            pitch - 4.0,
        );
        let clip = painter.with_clip_rect(Rect::from_center_size(
            pos2(middle, rect.top() + label_room / 2.0),
            vec2(pitch - 2.0, label_room - 2.0),
        ));
        let at = pos2(middle - galley.size().x / 2.0, rect.top());
        clip.galley(at, galley, theme::CREAM.egui());
        for (n, stop_at) in draw_slot(&painter, slot).into_iter().enumerate() {
            stop(ui, (handle, n), stop_at, page);
        }
    }
}

/// The slot a handle moves in; its three stops.
fn draw_slot(painter: &Painter, slot: Rect) -> [Rect; 3] {
    painter.rect_filled(slot, CornerRadius::same(6), theme::INK.egui());
    let edge = Stroke::new(1.5, theme::STEEL.egui());
    painter.rect_stroke(slot, CornerRadius::same(6), edge, StrokeKind::Inside);
    [0.0, 1.0, 2.0].map(|n| {
        let corner = slot.min + vec2(0.0, STOP * n);
        Rect::from_min_size(corner, vec2(slot.width(), STOP))
    })
}

/// The words for the stops, to the left of a slot.
fn words(painter: &Painter, slot: Rect, handle: &ControlView) {
    for (i, choice) in handle.choices.iter().enumerate() {
        let y = slot.top() + STOP * (number(i) + 0.5);
        let ink = if choice.current {
            theme::LEAD
        } else {
            theme::MUTED
        };
        painter.text(
            pos2(slot.left() - 8.0, y),
            Align2::RIGHT_CENTER,
            &choice.label,
            fonts::regular(13.0),
            ink.egui(),
        );
    }
}

/// What feeds each side, a line each with its pattern.
pub(super) fn told(ui: &mut Ui, ends: &[EndView]) {
    for end in ends {
        ui.horizontal(|ui| {
            let (rect, _) = ui.allocate_exact_size(vec2(46.0, 14.0), Sense::hover());
            let y = rect.center().y;
            timeline::pattern(ui.painter(), pos2(rect.left(), y), rect.right(), end.fed);
            aside(ui, &format!("{}: {}", end.label, end.word));
        });
    }
}

/// Text on one line, cut where it does not fit.
fn line(painter: &Painter, at: Pos2, text: &str, (ink, room): (Ink, f32)) {
    let mut job = bevy_egui::egui::text::LayoutJob::simple_singleline(
        text.to_owned(),
        fonts::regular(12.5),
        ink.egui(),
    );
    job.wrap = bevy_egui::egui::text::TextWrapping::truncate_at_width(room.max(20.0));
    let galley = painter.layout_job(job);
    let rect = Align2::LEFT_CENTER.anchor_size(at, galley.size());
    painter.galley(rect.min, galley, ink.egui());
}
