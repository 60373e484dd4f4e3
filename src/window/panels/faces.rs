//! Faces of equipment: title, tag, lights, gauges, and what is special to each kind.
//!
//! A light is told by its shape and its words as well as by its color; a gauge by its number as well as by its bar.
//! All faces are our own drawing and of no maker's product.
//! It does not cover the panel's breakers: see [`super::breakers`].

mod cord;
mod sockets;
mod transfer;

use bevy_egui::egui;
use bevy_egui::egui::{
    Atom, Button, CornerRadius, Id, Response, RichText, Sense, Stroke, StrokeKind, Ui, WidgetText,
    pos2, vec2,
};

use crate::session::view::{
    ChoiceView, CloseView, ControlKind, ControlView, FaceKind, FaceView, GaugeView, LightView,
};
use crate::window::both;
use crate::window::fonts;
use crate::window::mirror;
use crate::window::theme;

use super::{Page, aside, breakers, card, close, outline_focus};

/// Draws a face and lets what sits on it be operated.
pub(super) fn face(ui: &mut Ui, face: &FaceView, view: &CloseView, page: &mut Page<'_>) {
    let here = |id: &String| view.controls.iter().find(|c| c.id == *id);
    let controls: Vec<&ControlView> = face.controls.iter().filter_map(here).collect();
    card(ui, theme::STEEL, |ui| {
        ui.spacing_mut().item_spacing.y = 5.0;
        if face.title != view.title {
            ui.label(both::written(&face.title, fonts::bold(16.0), theme::CREAM));
        }
        tag(ui, &face.tag);
        if face.kind == FaceKind::Controller {
            display(ui, &face.notes);
        }
        lights(ui, &face.lights);
        gauges(ui, &face.gauges);
        match face.kind {
            FaceKind::Panel => {
                let (slots, rest): (Vec<_>, Vec<_>) =
                    controls.iter().partition(|c| breakers::on_face(c));
                if !slots.is_empty() {
                    mirror::steady(ui, |ui| breakers::face(ui, &slots, false, page));
                }
                rows(ui, &rest, page);
            }
            FaceKind::Transfer => {
                let (handles, rest): (Vec<_>, Vec<_>) = controls
                    .iter()
                    .partition(|c| c.kind == ControlKind::Transfer);
                mirror::steady(ui, |ui| {
                    transfer::handles(ui, face, (&handles, &rest), page);
                });
                let drawn = |c: &&&ControlView| {
                    handles.len() > 1 && handles.iter().any(|h| transfer::is_breaker_of(c, h))
                };
                let rest: Vec<_> = rest.iter().filter(|c| !drawn(c)).copied().collect();
                rows(ui, &rest, page);
            }
            FaceKind::Generator => {
                let on_socket = |c: &&&ControlView| {
                    let mut sockets = face.sockets.iter();
                    sockets.any(|s| s.breaker == c.id || s.gfci == c.id)
                };
                notes(ui, &face.notes);
                let (_, rest): (Vec<_>, Vec<_>) = controls.iter().partition(on_socket);
                rows(ui, &rest, page);
                sockets::sockets(ui, face, &controls, page);
            }
            FaceKind::Cord => {
                mirror::steady(ui, |ui| cord::strip(ui, face, &controls, view));
                cord::ends(ui, face, &controls);
                notes(ui, &face.notes);
                rows(ui, &controls, page);
            }
            FaceKind::Controller | FaceKind::Inverter => {
                transfer::told(ui, &face.ends);
                rows(ui, &controls, page);
            }
        }
    });
}

fn notes(ui: &mut Ui, notes: &[String]) {
    for note in notes {
        aside(ui, note);
    }
}

/// The small screen of a controller: what it is about.
fn display(ui: &mut Ui, notes: &[String]) {
    egui::Frame::new()
        .fill(theme::INK.egui())
        .stroke(Stroke::new(1.0, theme::STEEL.egui()))
        .corner_radius(CornerRadius::same(4))
        .inner_margin(egui::Margin::symmetric(9, 6))
        .show(ui, |ui| {
            ui.set_width(ui.available_width());
            for note in notes {
                ui.label(
                    RichText::new(note)
                        .font(fonts::regular(14.5))
                        .color(theme::SKY_BLUE.egui()),
                );
            }
        });
}

/// Controls one under the other, each with all its positions in a row.
fn rows(ui: &mut Ui, controls: &[&ControlView], page: &mut Page<'_>) {
    for control in controls {
        positions(ui, control, page);
    }
}

/// A control with its positions side by side: the one it stands in is framed and marked, the others can be pressed.
pub(super) fn positions(ui: &mut Ui, control: &ControlView, page: &mut Page<'_>) {
    ui.horizontal_wrapped(|ui| {
        ui.label(both::written(
            &control.label,
            fonts::bold(14.5),
            theme::CREAM,
        ));
        if !control.rating.is_empty() {
            ui.label(
                RichText::new(&control.rating)
                    .font(fonts::regular(13.5))
                    .color(theme::MUTED.egui()),
            );
        }
        let offered = control.choices.iter().any(|c| c.current);
        if offered {
            // The positions keep their ids when the mark below comes or goes, and with them the keyboard's focus.
            ui.skip_ahead_auto_ids(1);
        } else {
            // How it stands can't be chosen: it was tripped.
            mark(ui, &control.position, theme::YELLOW);
        }
        let (cords, others): (Vec<_>, Vec<_>) = control.choices.iter().partition(|c| c.cord);
        keep_together(ui, &others);
        for choice in others {
            position(ui, control, choice, page);
        }
        if !cords.is_empty() {
            ui.end_row();
            aside(ui, &page.say("window-into-cord"));
        }
        for choice in cords {
            position(ui, control, choice, page);
        }
    });
}

/// Begins a new row where the positions fit into one, but not behind what stands in this one.
fn keep_together(ui: &mut Ui, choices: &[&ChoiceView]) {
    let (padding, gap) = (ui.spacing().button_padding.x, ui.spacing().item_spacing.x);
    let wide = |choice: &&ChoiceView| {
        let marked = if choice.current { "• " } else { "" };
        let text = both::each([&choice.label], |[label]| format!("{marked}{label}"));
        let galley = ui
            .painter()
            .layout_no_wrap(text, fonts::bold(14.5), theme::CREAM.egui());
        let caution = if choice.caution.is_empty() || choice.current {
            0.0
        } else {
            let font = fonts::bold(13.0);
            let painter = ui.painter();
            let word = painter.layout_no_wrap(choice.caution.clone(), font, theme::YELLOW.egui());
            word.size().x + SIGN + 2.0 * gap
        };
        galley.size().x + caution + 2.0 * padding + gap
    };
    let all: f32 = choices.iter().map(wide).sum();
    let left = ui.available_size_before_wrap().x;
    if all > left && all <= ui.max_rect().width() {
        ui.end_row();
    }
}

/// One position: framed and marked where the control stands in it, a button otherwise.
fn position(ui: &mut Ui, control: &ControlView, choice: &ChoiceView, page: &mut Page<'_>) {
    if choice.current {
        mark(ui, &choice.label, theme::LEAD);
    } else {
        let text: WidgetText = if both::is_both(&choice.label) {
            both::written(&choice.label, fonts::regular(14.5), theme::CREAM)
        } else {
            RichText::new(&choice.label)
                .font(fonts::regular(14.5))
                .into()
        };
        let response = if choice.caution.is_empty() {
            ui.add(Button::new(text))
        } else {
            cautioned(ui, text, choice)
        };
        page.focus_first(&response);
        page.on(&response, || close::operate(control, &choice.id));
        response.on_hover_text(&control.sentence);
    }
}

/// Size of the sign of an act that touches a line, points.
const SIGN: f32 = 16.0;

/// A position that brings a body onto a line: a triangle and a word of caution, the same whatever is true of the line.
fn cautioned(ui: &mut Ui, text: WidgetText, choice: &ChoiceView) -> Response {
    let caution = both::written(&choice.caution, fonts::bold(13.0), theme::YELLOW);
    let sign = Id::new("caution");
    let button = Button::new((text, Atom::custom(sign, vec2(SIGN, SIGN)), caution));
    let drawn = button.atom_ui(ui);
    if let Some(rect) = drawn.rect(sign) {
        let (at, ink) = (rect.center(), Stroke::new(1.8, theme::YELLOW.egui()));
        let corners = [(0.0, -6.5), (7.0, 6.0), (-7.0, 6.0)];
        let corners = corners.map(|(x, y)| at + vec2(x, y)).to_vec();
        let painter = ui.painter();
        painter.add(egui::Shape::closed_line(corners, ink));
        painter.line_segment([at - vec2(0.0, 2.5), at + vec2(0.0, 1.5)], ink);
        painter.circle_filled(at + vec2(0.0, 4.0), 1.1, ink.color);
    }
    drawn.response
}

/// The position a control stands in: with a dot and framed, and nothing to press; what is filled can be pressed.
/// The keyboard's focus stays on it once it was chosen there, so that the next key goes on from it and a second press moves nothing.
fn mark(ui: &mut Ui, text: &str, ink: theme::Ink) {
    let was_chosen = ui.memory(|memory| memory.has_focus(ui.next_auto_id()));
    let sense = if was_chosen {
        Sense::focusable_noninteractive()
    } else {
        Sense::hover()
    };
    let text = both::each([text], |[text]| format!("• {text}"));
    let text = both::written(&text, fonts::bold(14.5), ink);
    let stands = Button::new(text)
        .fill(theme::INK.egui())
        .stroke(Stroke::new(1.5, ink.egui()))
        .sense(sense);
    let response = ui.add(stands);
    outline_focus(ui, &response);
}

/// A tag that hangs on the equipment: a card with a hole and a string.
pub(super) fn tag(ui: &mut Ui, words: &str) {
    if words.is_empty() {
        return;
    }
    egui::Frame::new()
        .fill(theme::LEAD.egui())
        .stroke(Stroke::new(2.0, theme::VERMILION.egui()))
        .corner_radius(CornerRadius::same(5))
        .inner_margin(egui::Margin::symmetric(10, 6))
        .show(ui, |ui| {
            ui.horizontal_wrapped(|ui| {
                let (hole, _) = ui.allocate_exact_size(vec2(16.0, 16.0), Sense::hover());
                ui.painter()
                    .circle_filled(hole.center(), 5.0, theme::INK.egui());
                ui.painter().circle_stroke(
                    hole.center(),
                    6.5,
                    Stroke::new(1.5, theme::DARK_TEXT.egui()),
                );
                ui.label(
                    RichText::new(words)
                        .font(fonts::bold(14.5))
                        .color(theme::DARK_TEXT.egui()),
                );
            });
        });
}

/// Lights with their words: filled when lit, a ring when not, a triangle when a lit one warns.
fn lights(ui: &mut Ui, lights: &[LightView]) {
    if lights.is_empty() {
        return;
    }
    for light in lights {
        ui.horizontal(|ui| {
            ui.spacing_mut().item_spacing.x = 5.0;
            ui.spacing_mut().interact_size.y = 18.0;
            let (rect, _) = ui.allocate_exact_size(vec2(15.0, 18.0), Sense::hover());
            let at = rect.center();
            let painter = ui.painter();
            let ink = match (light.lit, light.warns) {
                (true, true) => theme::VERMILION.mix(theme::CREAM, 0.25),
                (true, false) => theme::BLUISH_GREEN.mix(theme::CREAM, 0.35),
                (false, _) => theme::MUTED,
            };
            if light.lit && light.warns {
                let corners = vec![
                    at + vec2(0.0, -7.0),
                    at + vec2(7.0, 6.0),
                    at + vec2(-7.0, 6.0),
                ];
                painter.add(egui::Shape::convex_polygon(
                    corners,
                    ink.egui(),
                    Stroke::NONE,
                ));
            } else if light.lit {
                painter.circle_filled(at, 5.5, ink.egui());
            } else {
                painter.circle_stroke(at, 5.0, Stroke::new(1.6, ink.egui()));
            }
            let text = RichText::new(&light.sentence)
                .font(fonts::regular(13.5))
                .color(
                    if light.lit {
                        theme::CREAM
                    } else {
                        theme::MUTED
                    }
                    .egui(),
                );
            ui.label(text);
        });
    }
}

/// Gauges: label, value, and a bar with the limit's mark where there is a scale.
fn gauges(ui: &mut Ui, gauges: &[GaugeView]) {
    for gauge in gauges {
        ui.horizontal(|ui| {
            ui.spacing_mut().item_spacing.x = 8.0;
            ui.spacing_mut().interact_size.y = 18.0;
            let label = RichText::new(&gauge.label)
                .font(fonts::regular(13.5))
                .color(theme::MUTED.egui());
            let value = RichText::new(&gauge.value)
                .font(fonts::bold(14.5))
                .color(theme::LEAD.egui());
            ui.label(label);
            ui.label(value);
            if let Some(share) = gauge.share {
                bar(ui, share, gauge.limit);
            }
        });
    }
}

fn bar(ui: &mut Ui, share: f32, limit: Option<f32>) {
    let width = ui.available_width().clamp(40.0, 150.0);
    let (rect, _) = ui.allocate_exact_size(vec2(width, 12.0), Sense::hover());
    let painter = ui.painter();
    painter.rect_filled(rect, CornerRadius::same(3), theme::INK.egui());
    let over = limit.is_some_and(|limit| share > limit);
    let ink = if over {
        theme::VERMILION
    } else {
        theme::SKY_BLUE
    };
    let mut filled = rect.shrink(2.0);
    filled.max.x = filled.min.x + filled.width() * share.clamp(0.0, 1.0);
    painter.rect_filled(filled, CornerRadius::same(2), ink.egui());
    if let Some(limit) = limit {
        let x = rect.left() + rect.width() * limit.clamp(0.0, 1.0);
        painter.line_segment(
            [pos2(x, rect.top() - 3.0), pos2(x, rect.bottom() + 3.0)],
            Stroke::new(2.0, theme::CREAM.egui()),
        );
    }
    painter.rect_stroke(
        rect,
        CornerRadius::same(3),
        Stroke::new(1.0, theme::HAIRLINE.egui()),
        StrokeKind::Inside,
    );
}

/// Whether a stop bears marks of its own, or leaves its room to a word.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Look {
    Marked,
    Bare,
}

impl Look {
    /// Where the grooves of a knob are.
    fn grooves(self) -> &'static [f32] {
        match self {
            Self::Marked => &[-4.0, 0.0, 4.0],
            Self::Bare => &[],
        }
    }
}

/// One position of a handle: a place that can be pressed, with the knob on it if the handle stands there.
fn stop(
    ui: &Ui,
    (control, choice): (&ControlView, usize),
    rect: egui::Rect,
    look: Look,
    page: &mut Page<'_>,
) {
    let Some(choice) = control.choices.get(choice) else {
        return;
    };
    let painter = ui.painter().clone();
    if choice.current {
        let knob = rect.shrink2(vec2(3.0, 3.0));
        painter.rect_filled(knob, CornerRadius::same(4), theme::CREAM.egui());
        for dy in look.grooves() {
            let c = knob.center();
            let half = knob.width() * 0.25;
            painter.line_segment(
                [pos2(c.x - half, c.y + dy), pos2(c.x + half, c.y + dy)],
                Stroke::new(1.4, theme::DARK_TEXT.egui()),
            );
        }
        return;
    }
    let id = ui.id().with((&control.id, &choice.id));
    let response = ui.interact(rect, id, Sense::click());
    let words = both::each([&control.label, &choice.label], |parts| parts.join(": "));
    response.widget_info(|| egui::WidgetInfo::labeled(egui::WidgetType::Button, true, &words));
    if response.hovered() {
        let ground = theme::BUTTON_HOVER.egui();
        painter.rect_filled(rect.shrink(3.0), CornerRadius::same(4), ground);
    }
    if look == Look::Marked {
        painter.circle_stroke(rect.center(), 4.0, Stroke::new(1.6, theme::OUTLINE.egui()));
    }
    page.focus_first(&response);
    page.on(&response, || close::operate(control, &choice.id));
    outline_focus(ui, &response);
    response.on_hover_text(words);
}
