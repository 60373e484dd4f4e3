//! Further things that use power: small and rarer ones, each a few flat shapes.
//!
//! `at` is the middle of a thing's foot.
//! Shapes are our own and of no maker's product.

use bevy::math::Vec2;

use crate::session::view::ApplianceView;
use crate::window::theme;

use super::appliances::{enamel, fan, pilot, turns};
use super::brush::Brush;

/// A chest freezer with the same warmth bar as a fridge.
pub(super) fn freezer(brush: &mut Brush, at: Vec2, on: bool, worry: f32) {
    let corner = at - Vec2::new(25.0, 38.0);
    brush.round_rect(corner, Vec2::new(50.0, 36.0), 4.0, enamel(on));
    brush.rect(corner.x, corner.y + 9.0, 50.0, 2.0, theme::ENAMEL_LINE);
    let bar = corner + Vec2::new(8.0, 20.0);
    brush.round_rect(bar, Vec2::new(28.0, 7.0), 3.0, theme::ROOM_DARK);
    let level = 28.0 * worry.clamp(0.0, 1.0);
    if level > 1.0 {
        brush.round_rect(bar, Vec2::new(level, 7.0), 3.0, theme::VERMILION);
    }
    pilot(brush, corner + Vec2::new(43.0, 23.0), on);
}

/// Something small on a counter: a kettle's shape.
pub(super) fn countertop(brush: &mut Brush, at: Vec2, runs: bool) {
    let p = |x: f32, y: f32| at + Vec2::new(x, y);
    brush.stroke(
        &[p(6.0, -16.0), p(11.0, -13.0), p(9.0, -5.0)],
        2.0,
        theme::RUBBER,
    );
    brush.convex(
        &[p(-7.0, 0.0), p(-5.0, -17.0), p(5.0, -17.0), p(7.0, 0.0)],
        enamel(runs),
    );
    brush.disk(p(0.0, -18.5), 2.0, theme::RUBBER);
    pilot(brush, p(0.0, -4.0), runs);
}

/// A heater with bars that glow.
pub(super) fn heater(brush: &mut Brush, at: Vec2, runs: bool) {
    let corner = at - Vec2::new(17.0, 32.0);
    for dx in [5.0, 25.0] {
        brush.rect(corner.x + dx, at.y - 4.0, 4.0, 4.0, theme::RUBBER);
    }
    brush.round_rect(
        corner,
        Vec2::new(34.0, 29.0),
        5.0,
        enamel(runs).mix(theme::STEEL, 0.4),
    );
    let bar = if runs { theme::VERMILION } else { theme::INK };
    for i in 0..5_u8 {
        brush.rect(
            corner.x + 5.0 + 5.2 * f32::from(i),
            corner.y + 5.0,
            3.0,
            19.0,
            bar,
        );
    }
}

/// A wellhead with its pipe going down.
pub(super) fn well(brush: &mut Brush, at: Vec2, runs: bool) {
    brush.rect(
        at.x - 4.0,
        at.y,
        8.0,
        96.0,
        theme::STEEL.mix(theme::SOIL, 0.5),
    );
    if runs {
        brush.rect(at.x - 1.5, at.y, 3.0, 96.0, theme::WATER);
    }
    brush.round_rect(
        at - Vec2::new(9.0, 26.0),
        Vec2::new(18.0, 27.0),
        3.0,
        theme::STEEL,
    );
    brush.round_rect(
        at - Vec2::new(12.0, 31.0),
        Vec2::new(24.0, 8.0),
        3.0,
        theme::WATER,
    );
    pilot(brush, at - Vec2::new(0.0, 13.0), runs);
}

/// A fan on a foot.
pub(super) fn fan_on_foot(brush: &mut Brush, at: Vec2, turn: Option<f32>) {
    brush.stroke(
        &[at - Vec2::Y * 2.0, at - Vec2::Y * 24.0],
        3.0,
        theme::STEEL,
    );
    brush.ellipse(at - Vec2::Y * 2.5, Vec2::new(10.0, 2.5), theme::STEEL);
    fan(brush, at - Vec2::Y * 31.0, 13.0, turn);
    brush.ring(at - Vec2::Y * 31.0, 13.0, 1.5, theme::PORCELAIN);
}

/// A computer on a desk.
pub(super) fn computer(brush: &mut Brush, at: Vec2, on: bool) {
    let desk = at.y - 22.0;
    brush.rect(at.x - 22.0, desk, 44.0, 4.0, theme::WOOD);
    for dx in [-20.0, 17.0] {
        brush.rect(at.x + dx, desk + 4.0, 3.0, 18.0, theme::WOOD);
    }
    brush.rect(at.x - 2.0, desk - 5.0, 4.0, 5.0, theme::STEEL);
    let corner = Vec2::new(at.x - 14.0, desk - 25.0);
    brush.round_rect(corner, Vec2::new(28.0, 20.0), 2.0, theme::RUBBER);
    let screen = if on {
        theme::SKY_BLUE.mix(theme::CREAM, 0.5)
    } else {
        theme::INK
    };
    brush.rect(corner.x + 2.5, corner.y + 2.5, 23.0, 15.0, screen);
    if on {
        for (dy, width) in [(5.0, 14.0), (9.0, 18.0), (13.0, 10.0)] {
            brush.rect(
                corner.x + 5.0,
                corner.y + dy,
                width,
                1.5,
                theme::INK.alpha(0.6),
            );
        }
    }
}

/// A medical device on a table: a plain case with a pulse drawn on it, and a bar that fills while it is missed.
pub(super) fn medical(brush: &mut Brush, at: Vec2, on: bool, worry: f32) {
    brush.rect(at.x - 16.0, at.y - 20.0, 32.0, 4.0, theme::WOOD);
    for dx in [-13.0, 10.0] {
        brush.rect(at.x + dx, at.y - 16.0, 3.0, 16.0, theme::WOOD);
    }
    let corner = at - Vec2::new(14.0, 45.0);
    brush.round_rect(corner, Vec2::new(28.0, 25.0), 4.0, enamel(on));
    let trace = if on { theme::BLUE } else { theme::ENAMEL_LINE };
    let p = |x: f32, y: f32| corner + Vec2::new(x, y);
    let pulse = [
        p(4.0, 11.0),
        p(9.0, 11.0),
        p(12.0, 4.0),
        p(15.0, 17.0),
        p(18.0, 11.0),
        p(24.0, 11.0),
    ];
    brush.stroke(&pulse, 1.8, trace);
    let level = 20.0 * worry.clamp(0.0, 1.0);
    brush.rect(corner.x + 4.0, corner.y + 20.0, 20.0, 2.5, theme::ROOM_DARK);
    if level > 1.0 {
        brush.rect(
            corner.x + 4.0,
            corner.y + 20.0,
            level,
            2.5,
            theme::VERMILION,
        );
    }
}

/// A motor on its feet.
pub(super) fn machine(brush: &mut Brush, at: Vec2, on: bool, turn: Option<f32>) {
    for dx in [-12.0, 8.0] {
        brush.rect(at.x + dx, at.y - 5.0, 6.0, 5.0, theme::RUBBER);
    }
    brush.round_rect(
        at - Vec2::new(17.0, 31.0),
        Vec2::new(34.0, 26.0),
        7.0,
        theme::ENGINE,
    );
    fan(brush, at - Vec2::new(5.0, 18.0), 9.0, turn);
    brush.rect(at.x + 17.0, at.y - 20.0, 3.0, 5.0, theme::STEEL);
    pilot(brush, at + Vec2::new(11.0, -25.0), on);
}

/// A charger on the wall with its cable.
pub(super) fn charger(brush: &mut Brush, at: Vec2, view: &ApplianceView) {
    let (on, runs) = (theme::powered(view.state), turns(view));
    let corner = at - Vec2::new(9.0, 52.0);
    let p = |x: f32, y: f32| corner + Vec2::new(x, y);
    brush.stroke(
        &[
            p(9.0, 24.0),
            p(6.0, 40.0),
            p(12.0, 46.0),
            p(16.0, 36.0),
            p(17.0, 14.0),
        ],
        2.2,
        theme::RUBBER,
    );
    brush.round_rect(corner, Vec2::new(18.0, 26.0), 4.0, enamel(on));
    let lamp = if runs {
        theme::BLUISH_GREEN
    } else {
        theme::ENAMEL_LINE
    };
    brush.rect(corner.x + 4.0, corner.y + 15.0, 10.0, 3.0, lamp);
    pilot(brush, p(9.0, 7.0), on);
}

/// A plain box with a lamp on a low stand: anything else.
pub(super) fn device(brush: &mut Brush, at: Vec2, on: bool) {
    for dx in [-11.0, 8.0] {
        brush.rect(at.x + dx, at.y - 9.0, 3.0, 9.0, theme::WOOD);
    }
    brush.rect(at.x - 14.0, at.y - 11.0, 28.0, 3.0, theme::WOOD);
    brush.round_rect(
        at - Vec2::new(12.0, 33.0),
        Vec2::new(24.0, 22.0),
        4.0,
        enamel(on),
    );
    brush.rect(at.x - 8.0, at.y - 18.0, 16.0, 3.0, theme::ENAMEL_LINE);
    pilot(brush, at - Vec2::new(0.0, 25.0), on);
}
