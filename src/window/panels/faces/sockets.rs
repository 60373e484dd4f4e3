//! Outlets on a face: what is plugged in, the breaker and the ground-fault device of each.
//!
//! A round outlet offers both legs, a square one a single leg; the words say volts and amps.

use bevy_egui::egui::{CornerRadius, Rect, RichText, Sense, Stroke, Ui, vec2};

use crate::session::view::{ControlView, FaceView, SocketView};
use crate::window::fonts;
use crate::window::panels::{Page, aside, card};
use crate::window::theme;

use super::positions;

/// All outlets of a face, one under the other.
pub(super) fn sockets(
    ui: &mut Ui,
    face: &FaceView,
    controls: &[&ControlView],
    page: &mut Page<'_>,
) {
    for socket in &face.sockets {
        card(ui, theme::HAIRLINE, |ui| {
            ui.horizontal(|ui| {
                symbol(ui, socket);
                ui.vertical(|ui| {
                    ui.spacing_mut().item_spacing.y = 1.0;
                    ui.label(
                        RichText::new(&socket.label)
                            .font(fonts::bold(14.5))
                            .color(theme::CREAM.egui()),
                    );
                    aside(ui, &socket.rating);
                    aside(ui, &socket.plugged);
                });
            });
            for id in [&socket.breaker, &socket.gfci] {
                if let Some(control) = controls.iter().find(|c| c.id == *id) {
                    positions(ui, control, page);
                }
            }
        });
    }
}

fn symbol(ui: &mut Ui, socket: &SocketView) {
    let (rect, _) = ui.allocate_exact_size(vec2(40.0, 44.0), Sense::hover());
    let painter = ui.painter();
    let body = Rect::from_center_size(rect.center(), vec2(36.0, 40.0));
    painter.rect_filled(body, CornerRadius::same(5), theme::INK.egui());
    let hole = |at, size| {
        let slot = Rect::from_center_size(at, size);
        painter.rect_filled(slot, CornerRadius::same(1), theme::PORCELAIN.egui());
    };
    let at = body.center();
    if socket.both_legs {
        painter.circle_stroke(at, 14.0, Stroke::new(2.0, theme::PORCELAIN.egui()));
        for turn in 0..4_u8 {
            let angle = f32::from(turn) * std::f32::consts::FRAC_PI_2 + 0.4;
            painter.circle_filled(
                at + vec2(angle.cos(), angle.sin()) * 8.0,
                2.4,
                theme::PORCELAIN.egui(),
            );
        }
    } else {
        for dy in [-9.0, 9.0] {
            hole(at + vec2(-5.0, dy - 1.0), vec2(2.6, 8.0));
            hole(at + vec2(5.0, dy - 1.0), vec2(2.6, 6.0));
            painter.circle_filled(at + vec2(0.0, dy + 5.0), 2.0, theme::PORCELAIN.egui());
        }
    }
    if socket.taken {
        let plug = Rect::from_center_size(at, vec2(22.0, 18.0));
        painter.rect_filled(plug, CornerRadius::same(5), theme::ORANGE.egui());
        painter.line_segment(
            [plug.center_bottom(), plug.center_bottom() + vec2(0.0, 12.0)],
            Stroke::new(5.0, theme::ORANGE.egui()),
        );
    }
}
