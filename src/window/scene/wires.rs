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
const PITCH: f32 = 25.0;
/// How far marks keep from the ends of a line in the house.
const CLEAR: f32 = 9.0;

/// A line to be drawn.
struct Strand<'a> {
    points: &'a [Vec2],
    fed: Fed,
    flow: Flow,
    size: f32,
    /// How far from the beginning of its course it begins.
    from: f32,
    /// How far along it others go with it.
    thick: f32,
}

/// Paints all conductors; `phase` moves the marks along, in plan units.
pub(super) fn paint(brush: &mut Brush, street: &StreetView, plan: &Plan, phase: f32) {
    let mut strands = strands(street, plan);
    strands.retain(|strand| brush.wants(strand.flow != Flow::None));
    // What is live lies on what is not.
    strands.sort_by_key(|strand| strand.fed != Fed::Dead);
    for strand in &strands {
        ground(brush, strand);
    }
    for strand in &strands {
        conductor(brush, strand, phase);
    }
    for (end, sign) in signs(street, plan) {
        frayed(brush, end);
        caution(brush, sign);
    }
}

/// All that is drawn of the conductors.
fn strands<'a>(street: &'a StreetView, plan: &'a Plan) -> Vec<Strand<'a>> {
    let mut strands = Vec::new();
    let mut before: Option<&WireView> = None;
    for wire in &street.wires {
        let Some(route) = plan.routes.get(&wire.id) else {
            continue;
        };
        let strand = |points: &'a [Vec2], wire: &WireView| Strand {
            points,
            fed: wire.fed,
            flow: wire.flow,
            size: size_of(wire.kind),
            from: 0.0,
            thick: 0.0,
        };
        if wire.kind == WireKind::Branch {
            strands.extend(route.stretches.iter().map(|stretch| Strand {
                from: stretch.from,
                thick: stretch.thick,
                ..strand(&stretch.points, wire)
            }));
            continue;
        }
        for (i, piece) in route.pieces.iter().enumerate() {
            // A span has the state of its far pole, so what still hangs on the near one is as the span before.
            let span = wire.kind == WireKind::Span;
            let near = (span && route.pieces.len() > 1 && i == 0)
                .then_some(before)
                .flatten();
            let mut strand = strand(piece, near.unwrap_or(wire));
            if street.fallen_spans.contains(&wire.id) && strand.fed == Fed::Dead {
                strand.fed = Fed::Unknown;
            }
            strands.push(strand);
        }
        before = (wire.kind == WireKind::Span).then_some(wire);
    }
    strands
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

/// What lies under all conductors: a dark edge, so that a bright one stands out from bright rooms as well as from the night.
fn ground(brush: &mut Brush, strand: &Strand<'_>) {
    let (width, opacity) = match theme::fed_pattern(strand.fed) {
        Pattern::Thin => (4.2, 0.6),
        Pattern::Dots => (4.2, 0.55),
        Pattern::Ticks => return,
        Pattern::Beads | Pattern::Chevrons | Pattern::Mixed | Pattern::Rings | Pattern::Blocks => {
            (6.0, 0.55)
        }
    };
    let ink = theme::INK.alpha(opacity);
    brush.stroke(strand.points, width * strand.size, ink);
    if strand.thick > 0.0 {
        let bundle = first(strand.points, strand.thick);
        brush.stroke(&bundle, (width + BUNDLE) * strand.size, ink);
    }
}

/// How much thicker a lane is that many circuits share.
const BUNDLE: f32 = 2.2;

/// A conductor from its first point to its last.
fn conductor(brush: &mut Brush, strand: &Strand<'_>, phase: f32) {
    let (size, ink) = (strand.size, theme::fed_ink(strand.fed));
    let flows = strand.flow != Flow::None;
    let pattern = theme::fed_pattern(strand.fed);
    line(brush, strand, pattern, ink);
    let pitch = PITCH * size;
    // Marks keep step with those of the lane it comes from.
    let (points, shift) = match strand.flow {
        Flow::None => (strand.points.to_vec(), -strand.from),
        Flow::Forward => (strand.points.to_vec(), phase - strand.from),
        Flow::Backward => {
            let back: Vec<Vec2> = strand.points.iter().rev().copied().collect();
            let whole = strand.from + length(&back);
            (back, phase + whole)
        }
    };
    let shift = shift.rem_euclid(pitch * 2.0);
    let clear = if strand.size < 1.0 { CLEAR * size } else { 0.0 };
    match pattern {
        Pattern::Thin => {}
        Pattern::Dots => {
            for (at, _) in along(&points, 9.0 * size, 0.0) {
                brush.disk(at, 1.7 * size, ink);
            }
        }
        Pattern::Ticks => {
            for (at, direction) in marks(&points, pitch, 0.0, clear) {
                let across = direction.perp() * 7.0 * size;
                brush.stroke(&[at - across, at + across], 2.4 * size, ink);
            }
        }
        Pattern::Beads => brush.moving(flows, |brush| {
            for (at, _) in marks(&points, pitch, shift, clear) {
                brush.disk(at, 4.6 * size, ink);
            }
        }),
        Pattern::Chevrons => brush.moving(flows, |brush| {
            for (at, direction) in marks(&points, pitch, shift, clear) {
                mark(brush, at, direction, flows, (size, ink));
            }
        }),
        Pattern::Rings | Pattern::Blocks => brush.moving(flows, |brush| {
            for (at, direction) in marks(&points, pitch, shift, clear) {
                cell(brush, at, direction, (size, strand.fed));
            }
        }),
        Pattern::Mixed => mixed(brush, &points, (size, shift, flows)),
    }
}

/// The line itself, without its marks.
fn line(brush: &mut Brush, strand: &Strand<'_>, pattern: Pattern, ink: Ink) {
    let width = match pattern {
        Pattern::Thin => {
            brush.line(strand.points, 1.6, ink);
            return;
        }
        Pattern::Dots => return,
        Pattern::Ticks | Pattern::Rings | Pattern::Blocks => 2.4,
        Pattern::Beads | Pattern::Chevrons => 2.6,
        Pattern::Mixed => 4.0,
    };
    brush.stroke(strand.points, width * strand.size, ink);
    if strand.thick > 0.0 {
        let bundle = first(strand.points, strand.thick);
        brush.stroke(&bundle, (width + BUNDLE) * strand.size, ink);
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

/// The same, kept clear of both ends, so that no mark stands on a stub or on a corner where lines part.
fn marks(points: &[Vec2], pitch: f32, shift: f32, clear: f32) -> Vec<(Vec2, Vec2)> {
    let mut all = along(points, pitch, shift);
    if let (Some(first), Some(last)) = (points.first(), points.last()) {
        all.retain(|(at, _)| at.distance(*first) >= clear && at.distance(*last) >= clear);
    }
    all
}

fn length(points: &[Vec2]) -> f32 {
    let pairs = points.iter().zip(points.iter().skip(1));
    pairs.map(|(a, b)| a.distance(*b)).sum()
}

/// The beginning of a line, up to a length.
fn first(points: &[Vec2], mut left: f32) -> Vec<Vec2> {
    let mut out: Vec<Vec2> = points.first().copied().into_iter().collect();
    for (a, b) in points.iter().zip(points.iter().skip(1)) {
        let step = a.distance(*b);
        if left <= step {
            out.push(*a + (*b - *a) * (left / step.max(1e-3)));
            return out;
        }
        out.push(*b);
        left -= step;
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
    fn no_mark_stands_on_a_stub() {
        let stub = [Vec2::ZERO, Vec2::new(12.0, 0.0)];
        assert!(marks(&stub, 10.0, 1.0, 7.0).is_empty());
        assert_eq!(first(&stub, 5.0), [Vec2::ZERO, Vec2::new(5.0, 0.0)]);
    }

    #[test]
    fn marks_move_with_the_phase_and_come_round() {
        let points = [Vec2::ZERO, Vec2::new(100.0, 0.0)];
        let first = |shift: f32| along(&points, 10.0, shift).first().map(|(p, _)| p.x);
        assert_eq!(first(3.0), Some(3.0));
        assert_eq!(first(20.0), Some(0.0));
    }
}
