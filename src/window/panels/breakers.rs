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
use crate::window::both;
use crate::window::fonts;
use crate::window::link::Wish;
use crate::window::mirror;
use crate::window::theme;
use crate::window::theme::Ink;

use super::{Page, card, close, faces, follow_focus, outline_focus};

/// Least height of one slot, points: more than the 24 that a target needs at least.
/// Where a label takes more lines, all slots of the face are higher.
const SLOT: f32 = 31.0;
/// Least height of the main breaker and of the generator breaker below it.
const WIDE: f32 = 44.0;
/// Least room between the two, for the slide.
const GAP: f32 = 20.0;
/// Size of a handle's recess.
const HANDLE: egui::Vec2 = vec2(50.0, 20.0);
/// Where the handles of main and generator breaker stand, as a share of the face's width.
const MIDDLE: f32 = 0.58;

/// The same in this layout: names are read from the right in one that is turned over, so the handles make room there.
fn middle(painter: &egui::Painter) -> f32 {
    if mirror::from_right(painter.ctx()) {
        1.0 - MIDDLE
    } else {
        MIDDLE
    }
}

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
    let rows = Rows::of(&painter, controls, width - 18.0, &page.say("window-slide"));
    let bottom = controls
        .iter()
        .map(|c| rows.place(Rect::ZERO, c).bottom())
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
        let place = rows.place(inner, control);
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
        slide(ui, &painter, (inner, &rows), controls, page);
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

/// How high the rows of a face are, points.
struct Rows {
    /// One slot.
    slot: f32,
    /// Main and generator breaker.
    wide: f32,
    /// From the top to what stands below the main breaker.
    below_main: f32,
    /// From the top to the first row of branch breakers.
    branches: f32,
    /// The number of that row.
    first_row: u8,
}

impl Rows {
    /// Rows in which every word of a face this wide finds room.
    fn of(painter: &egui::Painter, controls: &[&ControlView], width: f32, slide: &str) -> Self {
        let room = width * MIDDLE - HANDLE.x / 2.0;
        let height = |what: &str, size, room| {
            let font = fonts::regular(size);
            let job = LayoutJob::simple(what.to_owned(), font, Color32::PLACEHOLDER, room);
            painter.layout_job(job).size().y
        };
        let wide = controls.iter().filter(|c| c.slot.0 == 0);
        let wide = wide.map(|c| {
            let label = height(&c.label, name_size(c), room - 18.0);
            if !both::is_both(&c.position) {
                return label + 10.0;
            }
            let beside = how_it_stands(painter, c, width - room - HANDLE.x - 16.0);
            label.max(beside.above + beside.below + 24.0) + 10.0
        });
        let wide = wide.fold(WIDE, f32::max);
        let gap = (height(slide, 12.0, room - 18.0) + 4.0).max(GAP);
        // A panel without a main breaker begins with its first row.
        let is_main = |c: &ControlView| c.kind == ControlKind::Main;
        let below_main = if controls.iter().any(|c| is_main(c)) {
            wide + gap
        } else {
            0.0
        };
        let under = controls.iter().any(|c| c.slot.0 == 0 && !is_main(c));
        let rows = controls.iter().filter(|c| c.slot.0 > 0).map(|c| c.slot.1);
        Self {
            slot: slot_height(painter, controls, width / 2.0 - 4.0),
            wide,
            below_main,
            branches: below_main + if under { wide + 12.0 } else { 0.0 },
            first_row: rows.min().unwrap_or_default(),
        }
    }

    /// Where a breaker is on the face.
    fn place(&self, inner: Rect, control: &ControlView) -> Rect {
        let wide = vec2(inner.width(), self.wide);
        if control.kind == ControlKind::Main {
            return Rect::from_min_size(inner.min, wide);
        }
        let half = inner.width() / 2.0;
        let (column, row) = control.slot;
        if column == 0 {
            return Rect::from_min_size(inner.min + vec2(0.0, self.below_main), wide);
        }
        let nth = f32::from(row.saturating_sub(self.first_row));
        let y = inner.top() + self.branches + self.slot * nth;
        let x = if column == 1 {
            inner.left()
        } else {
            inner.left() + half
        };
        Rect::from_min_size(
            pos2(x, y),
            vec2(half, self.slot * f32::from(control.poles.max(1))),
        )
        .shrink2(vec2(2.0, 1.5))
    }
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
        rect.left() + rect.width() * middle(painter) - HANDLE.x / 2.0
    } else if right_column {
        rect.left() + 5.0
    } else {
        rect.right() - 5.0 - HANDLE.x
    };
    let handle = Rect::from_min_size(pos2(handle_x, rect.center().y - HANDLE.y / 2.0), HANDLE);
    if wide || control.poles < 2 {
        draw_handle(painter, handle, control, right_column);
    } else {
        // Two poles have a handle each, and a bar that moves both.
        let apart = vec2(0.0, rect.height() / 4.0);
        let knobs = [-apart, apart]
            .map(|by| draw_handle(painter, handle.translate(by), control, right_column));
        let [upper, lower] = knobs.map(|knob| knob.center());
        let bar = Rect::from_two_pos(upper - vec2(4.0, 0.0), lower + vec2(4.0, 0.0));
        painter.rect_filled(bar, CornerRadius::same(2), theme::DARK_TEXT.egui());
    }
    label(painter, rect, handle, control, right_column);
    outline_focus(ui, &response);
    response
}

/// The knob is toward the middle of the panel when on, toward its edge when off, and between when tripped; says where it is.
fn draw_handle(
    painter: &egui::Painter,
    rect: Rect,
    control: &ControlView,
    right_column: bool,
) -> Rect {
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
    if control.tagged {
        lock(painter, knob);
    }
    knob
}

/// A padlock on a handle, and the tag that hangs from it.
fn lock(painter: &egui::Painter, knob: Rect) {
    let at = knob.center();
    let shackle = Rect::from_center_size(at - vec2(0.0, 6.0), vec2(11.0, 14.0));
    painter.rect_stroke(
        shackle,
        CornerRadius::same(5),
        Stroke::new(2.5, theme::PORCELAIN.egui()),
        StrokeKind::Inside,
    );
    let body = Rect::from_center_size(at + vec2(0.0, 3.0), vec2(17.0, 13.0));
    painter.rect_filled(body, CornerRadius::same(2), theme::LEAD.egui());
    painter.circle_filled(body.center(), 2.0, theme::INK.egui());
    let tag = Rect::from_min_size(body.center_bottom() - vec2(20.0, 1.0), vec2(16.0, 11.0));
    painter.rect_filled(tag, CornerRadius::same(2), theme::VERMILION.egui());
    painter.rect_filled(tag.shrink(3.0), CornerRadius::same(1), theme::LEAD.egui());
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

/// Sizes of type for what a branch breaker feeds, and for how it stands with its rating, points: larger where a high window has the room.
fn branch_sizes(painter: &egui::Painter) -> (f32, f32) {
    if painter.ctx().content_rect().height() >= HIGH {
        (14.5, 13.5)
    } else {
        (12.5, 11.0)
    }
}

/// A window from this height on is high, points.
const HIGH: f32 = 860.0;

/// What a branch breaker feeds, how it stands and its rating, in as many lines as its room asks for.
fn words(painter: &egui::Painter, control: &ControlView, width: f32, align: Align) -> Arc<Galley> {
    let (name, under_size) = branch_sizes(painter);
    let room = (width - HANDLE.x - 18.0).max(20.0);
    let mut job = LayoutJob::default();
    job.wrap.max_width = room;
    job.halign = align;
    let mut add = |text: &str, size, ink: Ink| {
        job.append(
            text,
            0.0,
            TextFormat::simple(fonts::regular(size), ink.egui()),
        );
    };
    add(&control.label, name, theme::CREAM);
    let position = both::in_one_line(&control.position);
    let in_one = format!("{position} · {}", control.rating);
    let fits = |text: &String| {
        let font = fonts::regular(under_size);
        let galley = painter.layout_no_wrap(text.clone(), font, theme::MUTED.egui());
        galley.size().x <= room
    };
    let under = if control.rating.is_empty() {
        position
    } else if fits(&in_one) {
        in_one
    } else {
        format!("{position}\n{}", control.rating)
    };
    add(&format!("\n{under}"), under_size, word_ink(control));
    painter.layout_job(job)
}

fn word_ink(control: &ControlView) -> Ink {
    if control.position_id == "tripped" {
        theme::YELLOW
    } else {
        theme::MUTED
    }
}

/// The size of the name of a main or generator breaker, points.
fn name_size(control: &ControlView) -> f32 {
    if both::is_both(&control.label) {
        14.0
    } else {
        15.0
    }
}

/// How a main or generator breaker stands, and how far that and its rating are from its middle, points.
struct Beside {
    position: String,
    above: f32,
    below: f32,
}

/// Two languages take one line where there is room.
fn how_it_stands(painter: &egui::Painter, control: &ControlView, room: f32) -> Beside {
    let line = both::in_one_line(&control.position);
    let font = fonts::regular(14.0);
    let galley = painter.layout_no_wrap(line.clone(), font, theme::MUTED.egui());
    let fits = galley.size().x <= room;
    if both::is_both(&control.position) && !fits {
        Beside {
            position: control.position.clone(),
            above: 9.5,
            below: 19.0,
        }
    } else {
        Beside {
            position: line,
            above: 8.0,
            below: 9.0,
        }
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
        let (before, after) = (handle.left() - rect.left(), rect.right() - handle.right());
        // The name stands at the side from which it is read, the state at the other.
        let (side, name, state) = if mirror::from_right(painter.ctx()) {
            let name = (rect.right() - 10.0, after);
            (Align2::RIGHT_CENTER, name, (handle.left() - 10.0, before))
        } else {
            let name = (rect.left() + 10.0, before);
            (Align2::LEFT_CENTER, name, (handle.right() + 10.0, after))
        };
        text(
            painter,
            pos2(name.0, y),
            side,
            &control.label,
            (name_size(control), theme::CREAM, name.1 - 18.0),
        );
        let beside = how_it_stands(painter, control, state.1 - 16.0);
        for (dy, what, size) in [
            (-beside.above, &beside.position, 14.0),
            (beside.below, &control.rating, 12.5),
        ] {
            text(
                painter,
                pos2(state.0, y + dy),
                side,
                what,
                (size, word_ink(control), state.1 - 16.0),
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

/// Size of the slide's plate.
const PLATE: egui::Vec2 = vec2(31.0, 34.0);

/// The plate that lets only one of main and generator breaker be on: it lies over the way of the handle that it holds.
fn slide(
    ui: &Ui,
    painter: &egui::Painter,
    (inner, rows): (Rect, &Rows),
    controls: &[&ControlView],
    page: &mut Page<'_>,
) {
    let find = |kind: ControlKind| controls.iter().find(|c| c.kind == kind);
    let (Some(main), Some(generator)) =
        (find(ControlKind::Main), find(ControlKind::BackfedBreaker))
    else {
        return;
    };
    let (top, bottom) = (rows.place(inner, main), rows.place(inner, generator));
    let is_on = |control: &ControlView| control.position_id == "on";
    // A handle of these two goes right to be on: there the plate slides, and over what it keeps off.
    let share = middle(painter);
    let x = inner.left() + inner.width() * share + HANDLE.x / 2.0 - 12.0;
    let middle_y = f32::midpoint(top.bottom(), bottom.top());
    let (y, id) = match (is_on(main), is_on(generator)) {
        (true, false) => (bottom.center().y, "window-slide-down"),
        (false, true) => (top.center().y, "window-slide-up"),
        (true, true) | (false, false) => (middle_y, "window-slide-free"),
    };
    let past = HANDLE.y / 2.0 + 2.0;
    let rail = top.center().y + past..=bottom.center().y - past;
    let rail = Rect::from_x_y_ranges(x - 3.0..=x + 3.0, rail);
    painter.rect_filled(rail, CornerRadius::same(3), theme::STEEL.egui());
    let plate = Rect::from_center_size(pos2(x, y), PLATE);
    painter.rect_filled(plate, CornerRadius::same(4), theme::LEAD.egui());
    painter.rect_stroke(
        plate,
        CornerRadius::same(4),
        Stroke::new(2.0, theme::DARK_TEXT.egui()),
        StrokeKind::Inside,
    );
    for dy in [-10.0, 10.0] {
        painter.circle_filled(plate.center() + vec2(0.0, dy), 2.6, theme::DARK_TEXT.egui());
    }
    let name = page.say(id);
    let response = ui.interact(plate, ui.id().with("slide"), Sense::click());
    response.widget_info(|| egui::WidgetInfo::labeled(egui::WidgetType::Button, true, &name));
    outline_focus(ui, &response);
    // The slide moves with the handles alone: a press is answered with why it stays.
    page.on(&response, || {
        Wish::Do(Command::Do(["set", "slide"].join(" ")))
    });
    response.on_hover_text(name);
    let half = HANDLE.x / 2.0 + 8.0;
    let at = inner.left() + inner.width() * share;
    let (at, align) = if mirror::from_right(ui.ctx()) {
        (at + half, Align2::LEFT_CENTER)
    } else {
        (at - half, Align2::RIGHT_CENTER)
    };
    let room = inner.width() * MIDDLE - half - 10.0;
    text(
        painter,
        pos2(at, middle_y),
        align,
        &page.say("window-slide"),
        (12.0, theme::LEAD, room),
    );
}
