//! Conductors, drawn by what energizes them: a color, a pattern and (in the callouts) a word.
//!
//! Beads are the utility's, chevrons a generator's and point the way power goes, rings the solar panels', blocks a battery's;
//! beads and chevrons by turns stand where two sources meet, cross-ticks for grounds,
//! dots where nothing was tested, a bare thin line where a test found nothing.
//! Motion only repeats what the shapes say and can be switched off.

use bevy::math::Vec2;

use crate::session::view::{Fed, Flow, StreetView, WireKind, WireView};
use crate::window::theme;
use crate::window::theme::{Ink, Pattern};

use super::brush::Brush;
use super::plan::{GROUND, Plan};

/// How far above the ground a wire that hangs down counts as lying on it, plan units.
const NEAR_GROUND: f32 = 20.0;
/// Distance between two marks of a pattern on the line, plan units.
const PITCH: f32 = 22.0;

/// Paints all conductors; `phase` moves the marks along, in plan units.
pub(super) fn paint(brush: &mut Brush, street: &StreetView, plan: &Plan, phase: f32) {
    let mut before: Option<&WireView> = None;
    for wire in &street.wires {
        let Some(route) = plan.routes.get(&wire.id) else {
            continue;
        };
        let size = size_of(wire.kind);
        for (i, piece) in route.pieces.iter().enumerate() {
            // A span has the state of its far pole, so what still hangs on the near one is as the span before.
            let span = wire.kind == WireKind::Span;
            let near = (span && route.pieces.len() > 1 && i == 0)
                .then_some(before)
                .flatten();
            let shown = near.unwrap_or(wire);
            let fallen = street.fallen_spans.contains(&wire.id);
            if fallen && shown.fed == Fed::Dead {
                let not_known = WireView {
                    fed: Fed::Unknown,
                    ..shown.clone()
                };
                conductor(brush, piece, &not_known, phase, size);
            } else {
                conductor(brush, piece, shown, phase, size);
            }
        }
        before = (wire.kind == WireKind::Span).then_some(wire);
    }
    for (end, sign) in signs(street, plan) {
        frayed(brush, end);
        caution(brush, sign);
    }
}

/// The ends of broken wires, and the middles of the signs beside them.
pub(super) fn signs(street: &StreetView, plan: &Plan) -> Vec<(Vec2, Vec2)> {
    let broken = street.broken_spans.iter();
    let pieces = broken.filter_map(|id| plan.routes.get(id));
    let ends = pieces.flat_map(|route| &route.pieces);
    let ends = ends.filter_map(|piece| piece.last().copied());
    ends.map(|end| {
        let on_ground = end.y > GROUND - NEAR_GROUND;
        let sign = if on_ground { GROUND } else { end.y };
        (end, Vec2::new(end.x, sign - 34.0))
    })
    .collect()
}

/// House wiring and other people's drops are drawn lighter than the line.
fn size_of(kind: WireKind) -> f32 {
    match kind {
        WireKind::Span | WireKind::Drop | WireKind::Cord => 1.0,
        WireKind::NeighborDrop
        | WireKind::Bus
        | WireKind::Inlet
        | WireKind::Feeder
        | WireKind::Branch => 0.72,
    }
}

/// A conductor from its first point to its last.
fn conductor(brush: &mut Brush, points: &[Vec2], wire: &WireView, phase: f32, size: f32) {
    let ink = theme::fed_ink(wire.fed);
    let reversed: Vec<Vec2>;
    let (points, flows) = match wire.flow {
        Flow::None => (points, false),
        Flow::Forward => (points, true),
        Flow::Backward => {
            reversed = points.iter().rev().copied().collect();
            (reversed.as_slice(), true)
        }
    };
    let shift = if flows {
        phase.rem_euclid(PITCH * 2.0 * size)
    } else {
        0.0
    };
    match theme::fed_pattern(wire.fed) {
        Pattern::Thin => {
            // A dark edge, so that it is seen before a bright sky as well.
            brush.stroke(points, 4.2 * size, theme::INK.alpha(0.6));
            brush.line(points, 1.6, ink);
        }
        Pattern::Dots => {
            casing(brush, points, 0.7 * size);
            for (at, _) in along(points, 9.0 * size, 0.0) {
                brush.disk(at, 1.7 * size, ink);
            }
        }
        Pattern::Ticks => {
            brush.line(points, 2.4 * size, ink);
            for (at, direction) in along(points, PITCH * size, 0.0) {
                let across = direction.perp() * 7.0 * size;
                brush.stroke(&[at - across, at + across], 2.4 * size, ink);
            }
        }
        Pattern::Beads => {
            casing(brush, points, size);
            brush.stroke(points, 2.6 * size, ink);
            brush.moving(flows, |brush| {
                for (at, _) in along(points, PITCH * size, shift) {
                    brush.disk(at, 4.6 * size, ink);
                }
            });
        }
        Pattern::Chevrons => {
            casing(brush, points, size);
            brush.stroke(points, 2.6 * size, ink);
            brush.moving(flows, |brush| {
                for (at, direction) in along(points, PITCH * size, shift) {
                    mark(brush, at, direction, flows, (size, ink));
                }
            });
        }
        Pattern::Rings | Pattern::Blocks => {
            casing(brush, points, size);
            brush.stroke(points, 2.4 * size, ink);
            brush.moving(flows, |brush| {
                for (at, direction) in along(points, PITCH * size, shift) {
                    cell(brush, at, direction, (size, wire.fed));
                }
            });
        }
        Pattern::Mixed => {
            casing(brush, points, size);
            brush.stroke(points, 4.0 * size, ink);
            mixed(brush, points, (size, shift, flows));
        }
    }
}

/// The marks of two sources by turns.
fn mixed(brush: &mut Brush, points: &[Vec2], (size, shift, flows): (f32, f32, bool)) {
    let first_is_bead = shift <= PITCH * size;
    brush.moving(flows, |brush| {
        let marks = along(points, PITCH * size, shift);
        for (i, (at, direction)) in marks.into_iter().enumerate() {
            if (i % 2 == 0) == first_is_bead {
                brush.disk(at, 4.6 * size, theme::SKY_BLUE);
            } else {
                mark(brush, at, direction, flows, (size, theme::ORANGE));
            }
        }
    });
}

/// A dark casing lets a bright conductor stand out from bright rooms as well as from the night.
fn casing(brush: &mut Brush, points: &[Vec2], size: f32) {
    brush.stroke(points, 6.0 * size, theme::INK.alpha(0.55));
}

/// A chevron where current flows, a lozenge where there is voltage without flow.
fn mark(brush: &mut Brush, at: Vec2, direction: Vec2, flows: bool, (size, ink): (f32, Ink)) {
    let across = direction.perp();
    let p = |x: f32, y: f32| at + (direction * x + across * y) * size;
    if flows {
        brush.stroke(&[p(-4.5, -6.5), p(4.5, 0.0), p(-4.5, 6.5)], 3.2 * size, ink);
    } else {
        brush.convex(&[p(-7.6, 0.0), p(0.0, -6.2), p(7.6, 0.0), p(0.0, 6.2)], ink);
    }
}

/// A ring for the sun, a block for a battery's cell.
fn cell(brush: &mut Brush, at: Vec2, direction: Vec2, (size, fed): (f32, Fed)) {
    let ink = theme::fed_ink(fed);
    if theme::fed_pattern(fed) == Pattern::Rings {
        brush.disk(at, 5.6 * size, ink);
        brush.disk(at, 3.2 * size, theme::INK);
    } else {
        let (x, y) = (direction * 6.0 * size, direction.perp() * 4.4 * size);
        brush.convex(&[at - x - y, at + x - y, at + x + y, at - x + y], ink);
    }
}

fn frayed(brush: &mut Brush, end: Vec2) {
    for (x, y) in [(-6.0, 7.0), (0.0, 10.0), (6.0, 7.0)] {
        brush.line(&[end, end + Vec2::new(x, y)], 1.6, theme::CREAM);
    }
}

/// A caution sign beside what nobody goes near: a broken wire counts as live whatever fed it.
fn caution(brush: &mut Brush, at: Vec2) {
    let corners = |size: f32| {
        let [x, y] = [size * 0.92, size * 0.62];
        [
            at + Vec2::new(0.0, -size),
            at + Vec2::new(x, y),
            at + Vec2::new(-x, y),
        ]
    };
    brush.convex(&corners(17.0), theme::INK);
    brush.convex(&corners(13.5), theme::YELLOW);
    brush.stroke(
        &[at + Vec2::new(0.0, -6.0), at + Vec2::new(0.0, 1.5)],
        2.6,
        theme::INK,
    );
    brush.disk(at + Vec2::new(0.0, 5.2), 1.7, theme::INK);
}

/// Points every `pitch` along a line, from `shift` on, with the direction there.
fn along(points: &[Vec2], pitch: f32, shift: f32) -> Vec<(Vec2, Vec2)> {
    let mut out = Vec::new();
    let mut next = shift.rem_euclid(pitch * 2.0);
    if next > pitch {
        next -= pitch;
    }
    let mut done = 0.0;
    for pair in points.windows(2) {
        let [from, to] = pair else { continue };
        let length = from.distance(*to);
        let direction = (*to - *from).normalize_or_zero();
        while next <= done + length {
            out.push((*from + direction * (next - done), direction));
            next += pitch;
        }
        done += length;
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn marks_are_evenly_spaced_and_stay_on_the_line() {
        let points = [Vec2::ZERO, Vec2::new(100.0, 0.0), Vec2::new(100.0, 50.0)];
        let marks = along(&points, 10.0, 5.0);
        assert_eq!(marks.len(), 15);
        assert!(marks.iter().all(|(p, _)| (p.y.abs() < 1e-4 && p.x <= 100.0)
            || ((p.x - 100.0).abs() < 1e-4 && p.y <= 50.0)));
    }

    #[test]
    fn marks_move_with_the_phase_and_come_round() {
        let points = [Vec2::ZERO, Vec2::new(100.0, 0.0)];
        let first = |shift: f32| along(&points, 10.0, shift).first().map(|(p, _)| p.x);
        assert_eq!(first(3.0), Some(3.0));
        assert_eq!(first(20.0), Some(0.0));
    }
}
