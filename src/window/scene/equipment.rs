//! Panels and transfer switches on the basement wall; solar panels on the roof, their inverter and the battery outside.
//!
//! Handles show where they stand; a tag hangs where a lock is fitted.
//! Shapes are our own and of no maker's product.

use bevy::math::{Rect, Vec2};

use crate::session::view::{EquipmentKind, EquipmentView, Side, StreetView};
use crate::window::theme;
use crate::window::theme::Light;

use super::brush::Brush;
use super::plan::{GROUND, Plan};
use super::rooms::{House, RIGHT};
use super::street::outdoors;

/// Between two boxes on the wall.
const GAP: f32 = 14.0;
/// Where the row on the wall begins, and where boxes end below.
const ROW: (f32, f32) = (477.0, 648.0);

/// Where what hangs in the basement is: in a row, in the order in which energy passes.
pub(super) fn on_wall(street: &StreetView) -> Vec<(String, Rect)> {
    let mut x = ROW.0;
    let mut hang = |id: &str, kind| {
        let size = size(kind);
        let rect = Rect::new(x, ROW.1 - size.y, x + size.x, ROW.1);
        x += size.x + GAP;
        (id.to_owned(), rect)
    };
    if street.equipment.is_empty() {
        return vec![hang("panel", EquipmentKind::Panel)];
    }
    let all = street.equipment.iter().filter(|e| !is_outside(e.kind));
    all.map(|e| hang(&e.id, e.kind)).collect()
}

/// How much of the yard the equipment takes that stands outside.
pub(super) fn beside(street: &StreetView) -> f32 {
    let has = |kind| street.equipment.iter().any(|e| e.kind == kind);
    match (has(EquipmentKind::Solar), has(EquipmentKind::Battery)) {
        (_, true) => 64.0,
        (true, false) => 30.0,
        (false, false) => 0.0,
    }
}

/// Where equipment outside is: the inverter on the outer wall, the battery beside it.
pub(super) fn outside(street: &StreetView, right: f32) -> Vec<(String, Rect)> {
    let all = street.equipment.iter().filter(|e| is_outside(e.kind));
    all.map(|e| {
        let size = size(e.kind);
        let corner = if e.kind == EquipmentKind::Solar {
            Vec2::new(right + 2.0, 486.0 - size.y)
        } else {
            Vec2::new(right + 34.0, GROUND - 3.0 - size.y)
        };
        (e.id.clone(), Rect::from_corners(corner, corner + size))
    })
    .collect()
}

fn is_outside(kind: EquipmentKind) -> bool {
    matches!(kind, EquipmentKind::Solar | EquipmentKind::Battery)
}

fn size(kind: EquipmentKind) -> Vec2 {
    match kind {
        EquipmentKind::Panel => Vec2::new(38.0, 84.0),
        EquipmentKind::Subpanel | EquipmentKind::Battery => Vec2::new(30.0, 66.0),
        EquipmentKind::Transfer => Vec2::new(34.0, 62.0),
        EquipmentKind::AutoTransfer => Vec2::new(38.0, 72.0),
        EquipmentKind::Solar => Vec2::new(26.0, 46.0),
    }
}

/// Paints the boxes.
pub(super) fn paint(brush: &mut Brush, street: &StreetView, plan: &Plan) {
    if street.equipment.is_empty() {
        for rect in plan.boxes.values() {
            panel(brush, *rect, 6);
        }
    }
    for equipment in &street.equipment {
        let Some(rect) = plan.boxes.get(&equipment.id).copied() else {
            continue;
        };
        match equipment.kind {
            EquipmentKind::Panel => panel(brush, rect, 6),
            EquipmentKind::Subpanel => panel(brush, rect, 4),
            EquipmentKind::Transfer => handles(brush, rect, &equipment.sides),
            EquipmentKind::AutoTransfer => automatic(brush, rect, equipment),
            EquipmentKind::Solar => inverter(brush, rect, equipment.active),
            EquipmentKind::Battery => battery(brush, rect, equipment),
        }
        if equipment.tagged {
            tag(brush, Vec2::new(rect.max.x - 4.0, rect.min.y + 12.0));
        }
    }
}

/// Paints solar panels on the roof, with the pipe that leads down to their inverter.
pub(super) fn on_roof(brush: &mut Brush, plan: &Plan, light: Light) {
    let Some(inverter) = plan.boxes.get("solar") else {
        return;
    };
    let pipe = outdoors(theme::STEEL, light).mix(theme::INK, 0.25);
    let (down, top) = (RIGHT + 8.0, plan.house.eaves());
    let into = Vec2::new(inverter.center().x, inverter.min.y);
    let low = Vec2::new(down, into.y.min(424.0) - 4.0);
    let over = Vec2::new(into.x, into.y - 10.0);
    brush.stroke(&[Vec2::new(down, top), low, over, into], 3.0, pipe);
    array(brush, &plan.house, light);
}

/// Two rows of panels that lie on the roof's slope, below its ridge.
fn array(brush: &mut Brush, house: &House, light: Light) {
    let cell = outdoors(theme::BLUE, light).mix(theme::INK, 0.45);
    let joint = cell.mix(theme::SKY_BLUE, 0.45);
    let rim = outdoors(theme::STEEL, light).mix(theme::INK, 0.2);
    let eaves = house.eaves();
    // The slope grows wider towards the eaves, and so do panels that lie nearer.
    for (n, top, low, narrow, wide) in [(3_u8, 82.0, 53.0, 25.0, 28.0), (5, 49.0, 18.0, 29.0, 32.0)]
    {
        for i in 0..n {
            let from = f32::from(i) - f32::from(n) / 2.0;
            let at = |share: f32, wide: f32, up: f32| {
                Vec2::new(618.0 + (from + share) * wide, eaves - up)
            };
            let panel = |edge: f32| {
                [
                    at(edge, narrow, top - edge * 24.0),
                    at(1.0 - edge, narrow, top - edge * 24.0),
                    at(1.0 - edge, wide, low + edge * 24.0),
                    at(edge, wide, low + edge * 24.0),
                ]
            };
            brush.convex(&panel(0.02), rim);
            brush.convex(&panel(0.06), cell);
            let middle = f32::midpoint(narrow, wide);
            let across = [
                at(0.06, middle, f32::midpoint(top, low)),
                at(0.94, middle, f32::midpoint(top, low)),
            ];
            brush.line(&across, 1.0, joint);
            for share in [0.35, 0.65] {
                let down = [at(share, narrow, top - 2.0), at(share, wide, low + 2.0)];
                brush.line(&down, 1.0, joint);
            }
        }
    }
}

fn case(brush: &mut Brush, rect: Rect) {
    let edge = Vec2::splat(2.0);
    brush.round_rect(
        rect.min - edge,
        rect.size() + edge * 2.0,
        4.0,
        theme::RUBBER,
    );
    brush.round_rect(
        rect.min,
        rect.size(),
        3.0,
        theme::STEEL.mix(theme::INK, 0.35),
    );
}

fn panel(brush: &mut Brush, rect: Rect, rows: u8) {
    case(brush, rect);
    let width = (rect.width() - 18.0) / 2.0;
    for row in 0..rows {
        let y = rect.max.y - 9.0 - 9.5 * f32::from(row);
        for x in [rect.min.x + 5.0, rect.max.x - 5.0 - width] {
            brush.rect(x, y, width, 6.0, theme::INK);
            brush.rect(x + 2.5, y + 1.5, width - 5.0, 3.0, theme::PORCELAIN);
        }
    }
}

/// A transfer switch: one lever, or a small one for each circuit; up is the utility, down the other source.
fn handles(brush: &mut Brush, rect: Rect, sides: &[Side]) {
    case(brush, rect);
    let n = sides.len().max(1);
    let columns = if n > 3 { n.div_ceil(2) } else { n };
    let pitch = super::plan::count(columns).recip() * (rect.width() - 6.0);
    let rows = super::plan::count(n.div_ceil(columns));
    let tall = (rect.height() - 10.0) / rows;
    for (i, side) in sides.iter().enumerate() {
        let corner = rect.min
            + Vec2::new(
                3.0 + pitch * super::plan::count(i % columns),
                5.0 + tall * super::plan::count(i / columns),
            );
        let slot = Vec2::new((pitch * 0.62).min(13.0), tall - 4.0);
        let left = corner.x + (pitch - slot.x) / 2.0;
        brush.round_rect(Vec2::new(left, corner.y + 2.0), slot, 2.5, theme::INK);
        let share = match side {
            Side::Utility => 0.0,
            Side::Off => 0.5,
            Side::Other => 1.0,
        };
        let knob = Vec2::new(slot.x - 2.0, (slot.y * 0.3).max(4.0));
        let y = corner.y + 3.0 + (slot.y - knob.y - 2.0) * share;
        let ink = if *side == Side::Other {
            theme::ORANGE
        } else {
            theme::CREAM
        };
        brush.round_rect(Vec2::new(left + 1.0, y), knob, 1.5, ink);
    }
}

/// An automatic transfer switch: a small screen, two lamps, and where its contacts are.
fn automatic(brush: &mut Brush, rect: Rect, view: &EquipmentView) {
    case(brush, rect);
    let screen = rect.min + Vec2::new(6.0, 7.0);
    brush.round_rect(
        screen,
        Vec2::new(rect.width() - 12.0, 15.0),
        2.0,
        theme::INK,
    );
    for (dy, width) in [(4.0, 16.0), (9.0, 10.0)] {
        brush.rect(screen.x + 4.0, screen.y + dy, width, 2.0, theme::SKY_BLUE);
    }
    let lower = Rect::new(
        rect.min.x + 8.0,
        rect.min.y + 26.0,
        rect.max.x - 8.0,
        rect.max.y,
    );
    handles(brush, lower.inflate(-3.0), &view.sides);
}

fn inverter(brush: &mut Brush, rect: Rect, gives: bool) {
    case(brush, rect);
    let at = rect.center() - Vec2::Y * 8.0;
    let ink = if gives { theme::YELLOW } else { theme::INK };
    brush.disk(at, 6.0, ink);
    for i in 0..8_u8 {
        let way = Vec2::from_angle(f32::from(i) * std::f32::consts::FRAC_PI_4);
        brush.stroke(&[at + way * 7.5, at + way * 10.0], 1.6, ink);
    }
    brush.rect(
        rect.min.x + 6.0,
        rect.max.y - 12.0,
        rect.width() - 12.0,
        3.0,
        theme::INK,
    );
}

fn battery(brush: &mut Brush, rect: Rect, view: &EquipmentView) {
    case(brush, rect);
    let gauge = Rect::new(
        rect.min.x + 8.0,
        rect.min.y + 12.0,
        rect.max.x - 8.0,
        rect.max.y - 10.0,
    );
    brush.round_rect(gauge.min, gauge.size(), 2.0, theme::INK);
    let cells: u8 = 5;
    let pitch = gauge.height() / f32::from(cells);
    let ink = if view.active {
        theme::BLUISH_GREEN
    } else {
        theme::ENGINE
    };
    for i in 0..cells {
        let full = view.level * f32::from(cells) >= f32::from(cells - i) - 0.5;
        if full {
            let y = gauge.min.y + pitch * f32::from(i) + 1.5;
            brush.rect(gauge.min.x + 2.5, y, gauge.width() - 5.0, pitch - 3.0, ink);
        }
    }
    brush.rect(
        rect.center().x - 5.0,
        rect.min.y + 5.0,
        10.0,
        4.0,
        theme::PORCELAIN,
    );
}

/// A padlock with its tag.
fn tag(brush: &mut Brush, at: Vec2) {
    brush.ring(at, 4.0, 2.0, theme::PORCELAIN);
    brush.round_rect(
        at + Vec2::new(-5.0, 1.0),
        Vec2::new(10.0, 8.0),
        1.5,
        theme::LEAD,
    );
    brush.round_rect(
        at + Vec2::new(-4.0, 10.0),
        Vec2::new(13.0, 17.0),
        2.0,
        theme::VERMILION,
    );
    brush.rect(at.x - 2.0, at.y + 14.0, 9.0, 10.0, theme::LEAD);
}
