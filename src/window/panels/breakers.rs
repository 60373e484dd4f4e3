//! The face of a panel: two columns of breakers by their slots, the main on top, the slide between main and generator breaker.
//!
//! A handle tells its position three ways: where its knob is, the word beside it, and for "tripped" a place of its own in the middle.
//! The face is our own drawing and of no maker's panel.
//! It does not cover covers, screws and wires behind the face.

use std::sync::Arc;

use bevy_egui::egui;
use bevy_egui::egui::text::{LayoutJob, TextFormat};
use bevy_egui::egui::{
    Align, Align2, Color32, CornerRadius, Galley, Pos2, Rect, Response, Sense, Stroke, StrokeKind,
    Ui, pos2, vec2,
};

use crate::session::Command;
use crate::session::view::{ControlKind, ControlView};
use crate::window::fonts;
use crate::window::link::Wish;
use crate::window::theme;
use crate::window::theme::Ink;

use super::{Page, card, close, faces, follow_focus, outline_focus};

/// Least height of one slot, points: more than the 24 that a target needs at least.
/// Where a label takes more lines, all slots of the face are higher.
const SLOT: f32 = 31.0;
/// Height of the main breaker.
const MAIN: f32 = 54.0;
/// Room for the slide between main and generator breaker.
const GAP: f32 = 16.0;
/// Size of a handle's recess.
const HANDLE: egui::Vec2 = vec2(50.0, 20.0);
/// Where the handles of main and generator breaker stand, as a share of the face's width.
const MIDDLE: f32 = 0.58;

/// Whether a control belongs on a panel's face.
pub(super) fn on_face(control: &ControlView) -> bool {
    match control.kind {
        ControlKind::Main | ControlKind::BackfedBreaker => true,
        ControlKind::Breaker => control.slot != (0, 0),
        ControlKind::Lock
        | ControlKind::Plug
        | ControlKind::Placement
        | ControlKind::Engine
        | ControlKind::Valve
        | ControlKind::Switch
        | ControlKind::Lay
        | ControlKind::Opening
        | ControlKind::People
        | ControlKind::Gfci
        | ControlKind::Transfer
        | ControlKind::Disconnect
        | ControlKind::Fuse
        | ControlKind::Mode => false,
    }
}

/// Draws the face and lets its handles be operated.
pub(super) fn face(ui: &mut Ui, controls: &[&ControlView], interlock: bool, page: &mut Page<'_>) {
    let width = ui.available_width();
    let painter = ui.painter().clone();
    let slot = slot_height(&painter, controls, (width - 18.0) / 2.0 - 4.0);
    // A panel without a main breaker begins with its first row.
    let has_main = controls.iter().any(|c| c.slot.0 == 0);
    let raised = if has_main { 0.0 } else { MAIN + GAP };
    let bottom = controls
        .iter()
        .map(|c| place(Rect::ZERO, slot, c).bottom() - raised)
        .fold(0.0, f32::max);
    let height = bottom + 20.0;
    let (rect, _) = ui.allocate_exact_size(vec2(width, height), Sense::hover());
    painter.rect_filled(
        rect,
        CornerRadius::same(8),
        theme::STEEL.mix(theme::INK, 0.62).egui(),
    );
    painter.rect_stroke(
        rect,
        CornerRadius::same(8),
        Stroke::new(2.0, theme::STEEL.egui()),
        StrokeKind::Inside,
    );
    let inner = rect.shrink(9.0);
    let unfold_id = ui.id().with("unfolded");
    let unfolded: Option<String> = ui.data(|d| d.get_temp(unfold_id));
    let mut unfold = unfolded.clone();
    for control in controls {
        let place = place(inner, slot, control).translate(vec2(0.0, -raised));
        let response = breaker(ui, &painter, place, control);
        page.focus_first(&response);
        follow_focus(&response);
        if response.clicked() {
            let mut others = control.choices.iter().filter(|c| !c.current);
            match (others.next(), others.next()) {
                (Some(only), None) => page.out.push(close::operate(control, &only.id)),
                (Some(_), Some(_)) => unfold = Some(control.id.clone()),
                (None, _) => {}
            }
        }
        response.on_hover_text(&control.sentence);
    }
    if interlock {
        slide(ui, &painter, (inner, slot), controls, page);
    }
    if let Some(control) = controls.iter().find(|c| Some(&c.id) == unfold.as_ref()) {
        card(ui, theme::YELLOW, |ui| {
            faces::positions(ui, control, page);
        });
        if control.choices.iter().filter(|c| !c.current).count() < 2 {
            unfold = None;
        }
    }
    if unfold != unfolded {
        ui.data_mut(|d| {
            if let Some(id) = unfold {
                d.insert_temp(unfold_id, id);
            } else {
                d.remove::<String>(unfold_id);
            }
        });
    }
}

/// Where a breaker is on the face.
fn place(inner: Rect, slot: f32, control: &ControlView) -> Rect {
    if control.kind == ControlKind::Main {
        return Rect::from_min_size(inner.min, vec2(inner.width(), MAIN - 6.0));
    }
    let half = inner.width() / 2.0;
    let (column, row) = control.slot;
    let y = inner.top()
        + MAIN
        + GAP
        + slot * f32::from(row.saturating_sub(1))
        + if row > 1 { 14.0 } else { 0.0 };
    if column == 0 {
        return Rect::from_min_size(pos2(inner.left(), y), vec2(inner.width(), SLOT + 10.0));
    }
    let x = if column == 1 {
        inner.left()
    } else {
        inner.left() + half
    };
    Rect::from_min_size(
        pos2(x, y),
        vec2(half, slot * f32::from(control.poles.max(1))),
    )
    .shrink2(vec2(2.0, 1.5))
}

fn breaker(ui: &Ui, painter: &egui::Painter, rect: Rect, control: &ControlView) -> Response {
    let response = ui.interact(rect, ui.id().with(&control.id), Sense::click());
    response.widget_info(|| {
        egui::WidgetInfo::labeled(egui::WidgetType::Button, true, &control.sentence)
    });
    let ground = if response.hovered() {
        theme::BUTTON_HOVER
    } else {
        theme::RAISED
    };
    painter.rect_filled(rect, CornerRadius::same(4), ground.egui());
    let edge = if control.kind == ControlKind::Main {
        Stroke::new(2.0, theme::SKY_BLUE.egui())
    } else if control.kind == ControlKind::BackfedBreaker {
        Stroke::new(2.0, theme::ORANGE.egui())
    } else {
        Stroke::new(1.0, theme::HAIRLINE.egui())
    };
    painter.rect_stroke(rect, CornerRadius::same(4), edge, StrokeKind::Inside);
    let right_column = control.slot.0 > 1;
    // Handles stand towards the middle of the panel, labels towards its edge.
    let wide = control.slot.0 == 0;
    let handle_x = if wide {
        rect.left() + rect.width() * MIDDLE - HANDLE.x / 2.0
    } else if right_column {
        rect.left() + 5.0
    } else {
        rect.right() - 5.0 - HANDLE.x
    };
    let handle = Rect::from_min_size(pos2(handle_x, rect.center().y - HANDLE.y / 2.0), HANDLE);
    draw_handle(painter, handle, control, right_column);
    label(painter, rect, handle, control, right_column);
    outline_focus(ui, &response);
    response
}

/// The knob is toward the middle of the panel when on, toward its edge when off, and between when tripped.
fn draw_handle(painter: &egui::Painter, rect: Rect, control: &ControlView, right_column: bool) {
    painter.rect_filled(rect, CornerRadius::same(4), theme::INK.egui());
    let on = control.position_id == "on";
    let tripped = control.position_id == "tripped";
    let knob_left = on == right_column;
    let knob_width = 25.0;
    let (x, ink) = if tripped {
        (rect.center().x - knob_width / 2.0, theme::YELLOW)
    } else if knob_left {
        (
            rect.left() + 2.0,
            if on { theme::CREAM } else { theme::STEEL },
        )
    } else {
        (
            rect.right() - 2.0 - knob_width,
            if on { theme::CREAM } else { theme::STEEL },
        )
    };
    let knob = Rect::from_min_size(
        pos2(x, rect.top() + 2.0),
        vec2(knob_width, rect.height() - 4.0),
    );
    painter.rect_filled(knob, CornerRadius::same(3), ink.egui());
    for dx in [-4.0, 0.0, 4.0] {
        let c = knob.center();
        painter.line_segment(
            [pos2(c.x + dx, c.y - 4.0), pos2(c.x + dx, c.y + 4.0)],
            Stroke::new(1.3, theme::DARK_TEXT.egui()),
        );
    }
    if on && !tripped {
        let free = if knob_left {
            knob.right() + 17.0
        } else {
            knob.left() - 17.0
        };
        painter.line_segment(
            [
                pos2(free, rect.center().y - 5.0),
                pos2(free, rect.center().y + 5.0),
            ],
            Stroke::new(2.4, theme::CREAM.egui()),
        );
    } else if !tripped {
        let free = if knob_left {
            knob.right() + 17.0
        } else {
            knob.left() - 17.0
        };
        painter.circle_stroke(
            pos2(free, rect.center().y),
            5.0,
            Stroke::new(2.0, theme::MUTED.egui()),
        );
    }
}

/// The height of a slot in which every label of a face finds room beside its handle.
fn slot_height(painter: &egui::Painter, controls: &[&ControlView], width: f32) -> f32 {
    let branch = controls.iter().filter(|c| c.slot.0 > 0);
    let needed = branch.map(|c| {
        let poles = f32::from(c.poles.max(1));
        (words(painter, c, width, Align::LEFT).size().y + 6.0) / poles
    });
    needed.fold(SLOT, f32::max)
}

/// What a branch breaker feeds, how it stands and its rating, in as many lines as its room asks for.
fn words(painter: &egui::Painter, control: &ControlView, width: f32, align: Align) -> Arc<Galley> {
    let mut job = LayoutJob::default();
    job.wrap.max_width = (width - HANDLE.x - 12.0).max(20.0);
    job.halign = align;
    let mut add = |text: &str, size, ink: Ink| {
        job.append(
            text,
            0.0,
            TextFormat::simple(fonts::regular(size), ink.egui()),
        );
    };
    add(&control.label, 12.5, theme::CREAM);
    let under = if control.rating.is_empty() {
        control.position.clone()
    } else {
        format!("{} · {}", control.position, control.rating)
    };
    add(&format!("\n{under}"), 11.0, word_ink(control));
    painter.layout_job(job)
}

fn word_ink(control: &ControlView) -> Ink {
    if control.position_id == "tripped" {
        theme::YELLOW
    } else {
        theme::MUTED
    }
}

fn label(
    painter: &egui::Painter,
    rect: Rect,
    handle: Rect,
    control: &ControlView,
    right_column: bool,
) {
    if control.slot.0 == 0 {
        let y = rect.center().y;
        text(
            painter,
            pos2(rect.left() + 10.0, y),
            Align2::LEFT_CENTER,
            &control.label,
            (15.0, theme::CREAM, handle.left() - rect.left() - 18.0),
        );
        let room = rect.right() - handle.right() - 16.0;
        for (dy, what, size) in [
            (-8.0, &control.position, 14.0),
            (9.0, &control.rating, 12.5),
        ] {
            text(
                painter,
                pos2(handle.right() + 10.0, y + dy),
                Align2::LEFT_CENTER,
                what,
                (size, word_ink(control), room),
            );
        }
        return;
    }
    let (x, align) = if right_column {
        (handle.right() + 6.0, Align::LEFT)
    } else {
        (handle.left() - 6.0, Align::RIGHT)
    };
    let galley = words(painter, control, rect.width(), align);
    let y = rect.center().y - galley.size().y / 2.0;
    painter.galley(pos2(x, y), galley, theme::CREAM.egui());
}

/// Text in as many lines as its room asks for.
fn text(
    painter: &egui::Painter,
    at: Pos2,
    align: Align2,
    what: &str,
    (size, ink, room): (f32, Ink, f32),
) {
    let job = LayoutJob::simple(what.to_owned(), fonts::regular(size), ink.egui(), room);
    let galley = painter.layout_job(job);
    let rect = align.anchor_size(at, galley.size());
    painter.galley(rect.min, galley, Color32::PLACEHOLDER);
}

/// The plate that lets only one of main and generator breaker be on.
fn slide(
    ui: &Ui,
    painter: &egui::Painter,
    (inner, slot): (Rect, f32),
    controls: &[&ControlView],
    page: &mut Page<'_>,
) {
    let find = |kind: ControlKind| controls.iter().find(|c| c.kind == kind);
    let (Some(main), Some(generator)) =
        (find(ControlKind::Main), find(ControlKind::BackfedBreaker))
    else {
        return;
    };
    let (top, bottom) = (place(inner, slot, main), place(inner, slot, generator));
    // With the generator's breaker on, the plate is up and stands in the main's way; otherwise it is down.
    let up = generator.position_id == "on";
    let x = inner.left() + inner.width() * MIDDLE;
    let middle = f32::midpoint(top.bottom(), bottom.top());
    let shift = if up { -3.0 } else { 3.0 };
    let plate = Rect::from_center_size(pos2(x, middle + shift), vec2(HANDLE.x + 16.0, 12.0));
    painter.rect_filled(plate, CornerRadius::same(3), theme::LEAD.egui());
    painter.rect_stroke(
        plate,
        CornerRadius::same(3),
        Stroke::new(1.5, theme::DARK_TEXT.egui()),
        StrokeKind::Inside,
    );
    for dx in [-28.0, 28.0] {
        painter.circle_filled(pos2(x + dx, plate.center().y), 2.4, theme::DARK_TEXT.egui());
    }
    let tip = if up {
        plate.center_top() - vec2(0.0, 5.0)
    } else {
        plate.center_bottom() + vec2(0.0, 5.0)
    };
    let base = plate.center();
    painter.add(egui::Shape::convex_polygon(
        vec![tip, pos2(base.x + 7.0, base.y), pos2(base.x - 7.0, base.y)],
        theme::LEAD.egui(),
        Stroke::NONE,
    ));
    let id = if up {
        "window-slide-up"
    } else {
        "window-slide-down"
    };
    let name = page.say(id);
    let grip = plate.expand2(vec2(0.0, 6.0));
    let response = ui.interact(grip, ui.id().with("slide"), Sense::click());
    response.widget_info(|| egui::WidgetInfo::labeled(egui::WidgetType::Button, true, &name));
    outline_focus(ui, &response);
    // The slide moves with the handles alone: a press is answered with why it stays.
    page.on(&response, || {
        Wish::Do(Command::Do(["set", "slide"].join(" ")))
    });
    response.on_hover_text(name);
    let at = pos2(plate.left() - 8.0, middle);
    text(
        painter,
        at,
        Align2::RIGHT_CENTER,
        &page.say("window-slide"),
        (12.0, theme::LEAD, plate.left() - inner.left() - 16.0),
    );
}
