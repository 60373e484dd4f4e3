//! What is mounted on poles to open the line: the recloser in its tank, and blades whose break can be seen.
//!
//! Open and closed differ by form: a blade that stands up from its jaw, a bar in the recloser's window.
//! Shapes are our own and of no maker's product. It does not cover cutouts.

use std::collections::BTreeMap;

use bevy::math::{Rect, Vec2};

use crate::session::view::{DeviceKind, DeviceState, DeviceView, StreetView};
use crate::window::theme;
use crate::window::theme::{Ink, Light};

use super::brush::{Brush, hang};
use super::plan::{NEUTRAL, PHASE, Plan};
use super::street::outdoors;

/// From a pole to the jaw and to the hinge of its blades, and how far these stand above the phase wire.
const JAW: f32 = 7.0;
const HINGE: f32 = 38.0;
const ABOVE: f32 = 9.0;

/// Where each device is.
pub(super) fn places(street: &StreetView, plan: &Plan) -> BTreeMap<String, Rect> {
    let place = |device: &DeviceView| {
        let (_, x) = plan.poles.iter().find(|(id, _)| *id == device.pole)?;
        let size = plan.pole_scale;
        let rect = match device.kind {
            DeviceKind::Recloser => {
                let carries = |pole: &crate::session::view::PoleView| {
                    pole.id == device.pole && pole.transformer
                };
                let left = if street.poles.iter().any(carries) {
                    x - 9.0 - 26.0 * size
                } else {
                    x + 9.0
                };
                Rect::new(left, NEUTRAL - 54.0, left + 26.0 * size, NEUTRAL - 14.0)
            }
            DeviceKind::Switch => Rect::new(
                x + JAW * size,
                PHASE - ABOVE - 26.0,
                x + HINGE * size,
                PHASE + 4.0,
            ),
        };
        Some((device.id.clone(), rect))
    };
    street.devices.iter().filter_map(place).collect()
}

/// Where the wire of a span begins whose near end sits at blades.
pub(super) fn beginning(street: &StreetView, plan: &Plan, span: &str) -> Option<Vec2> {
    let device = street.devices.iter().find(|device| device.span == span)?;
    let (_, x) = plan.poles.iter().find(|(id, _)| *id == device.pole)?;
    Some(Vec2::new(x + HINGE * plan.pole_scale, PHASE - ABOVE))
}

/// Paints all of them.
pub(super) fn paint(brush: &mut Brush, street: &StreetView, plan: &Plan, light: Light) {
    for device in &street.devices {
        let pole = plan.poles.iter().find(|(id, _)| *id == device.pole);
        let (Some((_, x)), Some(rect)) = (pole, plan.devices.get(&device.id)) else {
            continue;
        };
        match device.kind {
            DeviceKind::Recloser => recloser(brush, device.state, (*x, *rect), light),
            DeviceKind::Switch => switch(brush, device, (*x, *rect), light),
        }
    }
}

/// A tank with two bushings, and a window in which a bar lies across or stands up.
fn recloser(brush: &mut Brush, state: DeviceState, (x, rect): (f32, Rect), light: Light) {
    let steel = outdoors(theme::STEEL, light);
    let dark = steel.mix(theme::RUBBER, 0.4);
    let (left, right) = (rect.min.x, rect.max.x);
    let wire = outdoors(theme::NEUTRAL, light);
    for (dx, y) in [(0.28, PHASE + 14.0), (0.72, PHASE + 2.0)] {
        let at = Vec2::new(left + rect.width() * dx, rect.min.y);
        brush.line(&[at - Vec2::Y * 12.0, Vec2::new(x, y)], 1.5, wire);
        let porcelain = outdoors(theme::PORCELAIN, light);
        let corner = at + Vec2::new(-2.5, -13.0);
        brush.round_rect(corner, Vec2::new(5.0, 15.0), 2.0, porcelain);
    }
    for dy in [9.0, 28.0] {
        let (from, to) = (left.min(x), right.max(x));
        brush.rect(from, rect.min.y + dy, to - from, 3.5, dark);
    }
    brush.round_rect(rect.min, rect.size(), 7.0, steel);
    brush.rect(left - 1.0, rect.min.y + 4.0, rect.width() + 2.0, 3.0, dark);
    if state == DeviceState::Unknown {
        return;
    }
    let inside = Vec2::new(rect.width() - 8.0, 17.0);
    let corner = Vec2::new(left + 4.0, rect.min.y + 13.0);
    brush.round_rect(corner, inside, 2.0, theme::INK);
    let from = corner + Vec2::new(3.0, 12.0);
    let to = corner + Vec2::new(inside.x - 3.0, 12.0);
    contacts(brush, (from, to), state == DeviceState::Open, theme::CREAM);
}

/// Two contacts and the bar between them: across, or standing up from the second.
fn contacts(brush: &mut Brush, (from, to): (Vec2, Vec2), open: bool, ink: Ink) {
    let end = if open {
        to + (from - to).rotate(Vec2::from_angle(0.95))
    } else {
        from
    };
    brush.stroke(&[to, end], 2.2, ink);
    for at in [from, to] {
        brush.disk(at, 2.2, ink);
    }
}

/// Blades on two insulators: lying in their jaw, or standing up from it.
fn switch(brush: &mut Brush, device: &DeviceView, (x, rect): (f32, Rect), light: Light) {
    let steel = outdoors(theme::STEEL, light).mix(theme::CREAM, 0.45);
    let porcelain = outdoors(theme::PORCELAIN, light);
    let high = PHASE - ABOVE;
    let (jaw, hinge) = (Vec2::new(rect.min.x, high), Vec2::new(rect.max.x, high));
    let base = Vec2::new(rect.min.x - 3.0, PHASE + 1.0);
    brush.round_rect(
        base,
        Vec2::new(rect.width() + 6.0, 4.0),
        1.5,
        steel.mix(theme::RUBBER, 0.4),
    );
    let wire = outdoors(theme::NEUTRAL, light);
    brush.line(&[Vec2::new(x, PHASE), jaw], 2.0, wire);
    if device.span.is_empty() {
        // The way to the second feed, which leaves the picture.
        brush.line(&hang(hinge, hinge + Vec2::new(26.0, -4.0), 3.0), 2.0, wire);
    }
    for at in [jaw, hinge] {
        brush.round_rect(
            at + Vec2::new(-3.0, 1.0),
            Vec2::new(6.0, 10.0),
            2.0,
            porcelain,
        );
    }
    if device.jumped {
        let around = hang(jaw, hinge, 24.0);
        brush.stroke(&around, 4.5, theme::INK);
        brush.stroke(&around, 2.6, theme::PORCELAIN);
    }
    let lifted = device.state == DeviceState::Open;
    let end = if lifted {
        hinge + (jaw - hinge).rotate(Vec2::from_angle(1.05))
    } else {
        jaw
    };
    brush.stroke(&[hinge, end], 5.5, theme::INK);
    brush.stroke(&[hinge, end], 3.4, steel);
    for at in [jaw, hinge] {
        brush.disk(at, 3.6, theme::INK);
        brush.disk(at, 2.6, steel);
    }
    if device.tagged {
        let at = Vec2::new(rect.center().x, PHASE + 5.0);
        brush.line(&[at, at + Vec2::Y * 5.0], 1.2, theme::CREAM);
        let corner = at + Vec2::new(-5.0, 4.0);
        brush.round_rect(corner, Vec2::new(10.0, 13.0), 1.5, theme::YELLOW);
        for dy in [4.0, 7.5] {
            brush.rect(corner.x + 2.0, corner.y + dy, 6.0, 1.4, theme::INK);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::session::view::PoleView;

    #[test]
    fn a_device_hangs_at_its_pole_and_a_span_begins_behind_its_blades() {
        let pole = |n: u8| PoleView {
            id: format!("pole-{n}"),
            at_ft: f32::from(n) * 150.0,
            ..PoleView::default()
        };
        let device = |id: &str, kind, span: &str| DeviceView {
            id: id.to_owned(),
            kind,
            pole: "pole-1".to_owned(),
            span: span.to_owned(),
            ..DeviceView::default()
        };
        let street = StreetView {
            poles: (1..5).map(pole).collect(),
            devices: vec![
                device("recloser", DeviceKind::Recloser, ""),
                device("disconnect", DeviceKind::Switch, "span-1"),
            ],
            ..StreetView::default()
        };
        let plan = Plan::new(&street);
        let places: Vec<&Rect> = plan.devices.values().collect();
        assert_eq!(places.len(), 2);
        assert!(places.iter().all(|rect| rect.min.x < plan.poles[1].1));
        let from = beginning(&street, &plan, "span-1");
        assert!(from.is_some_and(|at| at.x > plan.poles[0].1));
        assert_eq!(beginning(&street, &plan, "span-2"), None);
    }
}
