//! The distance from the nearest opening to an engine in the yard: a bar under the grass, with its figure beside it.
//!
//! A foot is as long in every picture; where the yard is too small or too full, two strokes break the bar: not to scale.
//! It does not cover the rule how far is far enough.

use bevy::math::Vec2;
use bevy_egui::egui::{Painter, Rect, pos2, vec2};

use crate::session::view::StreetView;
use crate::window::fonts;
use crate::window::theme;

use super::brush::Brush;
use super::callouts::{LEAST_TYPE, point, screen};
use super::frame::Frame;
use super::plan::{GROUND, Plan};

/// Height of the bar.
const BAR: f32 = GROUND + 19.0;

/// Paints the bar.
pub(super) fn bar(brush: &mut Brush, plan: &Plan) {
    let Some(distance) = plan.distance else {
        return;
    };
    let ink = theme::CREAM;
    let at = |x: f32, dy: f32| Vec2::new(x, BAR + dy);
    let (from, to) = (distance.from, distance.to);
    for x in [from, to] {
        brush.line(&[at(x, -5.5), at(x, 5.5)], 2.0, ink);
    }
    if distance.broken {
        let middle = from.midpoint(to);
        for (a, b) in [(from, middle - 4.0), (middle + 4.0, to)] {
            brush.line(&[at(a, 0.0), at(b, 0.0)], 2.0, ink);
        }
        for x in [middle - 4.0, middle + 4.0] {
            brush.line(&[at(x - 3.0, 6.0), at(x + 3.0, -6.0)], 2.0, ink);
        }
    } else {
        brush.line(&[at(from, 0.0), at(to, 0.0)], 2.0, ink);
    }
}

/// Writes the figure of the bar where nothing else is written; says where it stands.
pub(super) fn figure(
    painter: &Painter,
    street: &StreetView,
    plan: &Plan,
    (frame, taken): (Frame, &[Rect]),
) -> Option<Rect> {
    let distance = plan.distance?;
    let words = &street.generator.opening_words;
    let middle = distance.from.midpoint(distance.to);
    if words.is_empty() || !frame.seen().contains(Vec2::new(middle, BAR)) {
        return None;
    }
    let size = frame.points(19.0).clamp(LEAST_TYPE, 13.5);
    let galley = painter.layout_no_wrap(words.clone(), fonts::bold(size), theme::CREAM.egui());
    // Below the bar, else at its end. Never under the house, where walls are.
    let end = point(frame, Vec2::new(distance.to, BAR));
    let low = point(frame, Vec2::new(plan.house.right + 5.0, BAR + 6.0));
    let room = screen(frame).shrink(4.0);
    let most = room.right() - galley.size().x;
    let rect = [
        pos2((end.x - galley.size().x).max(low.x).min(most), low.y),
        end + vec2(6.0, -galley.size().y / 2.0),
    ]
    .map(|corner| Rect::from_min_size(corner, galley.size()))
    .into_iter()
    .find(|rect| room.contains_rect(*rect) && !taken.iter().any(|t| t.intersects(*rect)))?;
    painter.galley(rect.min, galley, theme::CREAM.egui());
    Some(rect)
}
