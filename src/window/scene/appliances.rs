//! Things that use power, in flat simple shapes whose state shows: lit, dark, spinning, filling.
//!
//! Each is drawn from its view alone, by its kind; what is of no kind known here is a plain box with a lamp.
//! Shapes are our own and of no maker's product.
//! It does not cover their words: see the callouts.

use bevy::math::Vec2;

use crate::session::view::{ApplianceKind, ApplianceState, ApplianceView, StreetView};
use crate::window::theme;
use crate::window::theme::Ink;

use super::brush::Brush;
use super::plan::Plan;
use super::rooms::{Mount, RIGHT, Spot};
use super::things;

/// Paints all of them; `turn` goes round while something moves.
pub(super) fn paint(brush: &mut Brush, street: &StreetView, plan: &Plan, turn: f32) {
    for appliance in &street.appliances {
        if let Some(spot) = plan.house.spots.get(&appliance.id) {
            brush.at_size(spot.at, Vec2::splat(spot.scale), |brush| {
                one(brush, appliance, spot, turn);
            });
            trouble(brush, appliance, spot);
        }
    }
}

fn one(brush: &mut Brush, a: &ApplianceView, spot: &Spot, turn: f32) {
    use ApplianceKind as K;
    let (at, on, runs) = (spot.at, theme::powered(a.state), turns(a));
    let turn = runs.then_some(turn);
    match a.kind {
        K::Lamp => lamp(brush, at, a),
        K::Fridge => fridge(brush, at, on, a.worry),
        K::Freezer => things::freezer(brush, at, on, a.worry),
        K::Microwave => microwave(brush, at, a),
        K::Countertop => things::countertop(brush, at, runs),
        K::Furnace => furnace(brush, spot, on, turn),
        K::WaterHeater => water_heater(brush, spot, runs),
        K::Heater => things::heater(brush, at, runs),
        K::Drum => drum(brush, at, on, turn),
        K::Sump if spot.mount == Mount::Pit => sump(brush, spot, a),
        K::Well => things::well(brush, at, runs),
        K::AirConditioner => air_conditioner(brush, at, turn),
        K::Range => range(brush, at, runs),
        K::Fan => things::fan_on_foot(brush, at, turn),
        K::Television => television(brush, at, on),
        K::Computer => things::computer(brush, at, on),
        K::Medical => things::medical(brush, at, on, a.worry),
        K::Machine | K::Sump => things::machine(brush, at, on, turn),
        K::Charger => things::charger(brush, at, a),
        K::Device => things::device(brush, at, on),
    }
}

/// Whether its motor turns or its heater glows.
pub(super) fn turns(a: &ApplianceView) -> bool {
    use ApplianceState as S;
    matches!(a.state, S::Running | S::Starting | S::Strained)
}

pub(super) fn enamel(on: bool) -> Ink {
    if on {
        theme::ENAMEL
    } else {
        theme::ENAMEL.mix(theme::ROOM_DARK, 0.35)
    }
}

/// A small lamp that says "has power".
pub(super) fn pilot(brush: &mut Brush, at: Vec2, on: bool) {
    if on {
        brush.glow(at, Vec2::splat(9.0), theme::YELLOW.alpha(0.5));
    }
    brush.disk(at, 2.6, if on { theme::YELLOW } else { theme::RUBBER });
}

fn lamp(brush: &mut Brush, at: Vec2, view: &ApplianceView) {
    let glow = view.glow;
    if glow > 0.0 {
        let strength = 0.1 + 0.42 * glow;
        let reach = Vec2::new(0.0, 104.0);
        brush.shade(
            [
                at + Vec2::new(-12.0, 26.0),
                at + Vec2::new(12.0, 26.0),
                at + reach + Vec2::new(46.0, 0.0),
                at + reach + Vec2::new(-46.0, 0.0),
            ],
            theme::YELLOW.alpha(strength),
            theme::YELLOW.alpha(0.0),
        );
        brush.glow(
            at + Vec2::Y * 24.0,
            Vec2::splat(34.0),
            theme::YELLOW.alpha(strength),
        );
    }
    brush.stroke(&[at, at + Vec2::Y * 12.0], 1.6, theme::RUBBER);
    let dark = theme::STEEL.mix(theme::ROOM_DARK, 0.4);
    brush.convex(
        &[
            at + Vec2::new(-5.0, 11.0),
            at + Vec2::new(5.0, 11.0),
            at + Vec2::new(14.0, 25.0),
            at + Vec2::new(-14.0, 25.0),
        ],
        dark.mix(theme::YELLOW, glow.sqrt()),
    );
}

fn fridge(brush: &mut Brush, at: Vec2, on: bool, worry: f32) {
    let body = enamel(on);
    let corner = at - Vec2::new(19.0, 92.0);
    brush.round_rect(corner, Vec2::new(38.0, 92.0), 4.0, body);
    brush.line(
        &[
            corner + Vec2::new(0.0, 30.0),
            corner + Vec2::new(38.0, 30.0),
        ],
        1.8,
        theme::ENAMEL_LINE,
    );
    for (y, h) in [(10.0, 14.0), (36.0, 20.0)] {
        brush.rect(corner.x + 31.0, corner.y + y, 3.0, h, theme::ENAMEL_LINE);
    }
    // A warmth bar in the door: it fills as the food warms.
    let bar = Vec2::new(corner.x + 7.0, corner.y + 42.0);
    brush.round_rect(bar, Vec2::new(7.0, 40.0), 3.0, theme::ROOM_DARK);
    let level = 40.0 * worry.clamp(0.0, 1.0);
    if level > 1.0 {
        brush.round_rect(
            bar + Vec2::new(0.0, 40.0 - level),
            Vec2::new(7.0, level),
            3.0,
            theme::VERMILION,
        );
    }
    pilot(brush, corner + Vec2::new(10.0, 12.0), on);
}

fn microwave(brush: &mut Brush, at: Vec2, view: &ApplianceView) {
    let (on, runs) = (theme::powered(view.state), turns(view));
    let corner = at - Vec2::new(20.0, 22.0);
    brush.round_rect(corner, Vec2::new(40.0, 22.0), 3.0, enamel(on));
    let door = if runs { theme::YELLOW } else { theme::INK };
    brush.round_rect(corner + Vec2::splat(4.0), Vec2::new(22.0, 14.0), 2.0, door);
    pilot(brush, corner + Vec2::new(33.0, 8.0), on);
}

pub(super) fn fan(brush: &mut Brush, at: Vec2, radius: f32, turn: Option<f32>) {
    brush.disk(at, radius, theme::INK);
    let (moves, turn) = (turn.is_some(), turn.unwrap_or_default());
    brush.moving(moves, |brush| {
        for i in 0..4_u8 {
            let angle = turn * 6.0 + f32::from(i) * std::f32::consts::FRAC_PI_2;
            let tip = Vec2::from_angle(angle) * (radius - 2.0);
            let side = Vec2::from_angle(angle + 0.6) * (radius - 3.0);
            brush.convex(&[at, at + tip, at + side], theme::PORCELAIN);
        }
        brush.disk(at, radius * 0.2, theme::STEEL);
    });
}

/// The ceiling above a thing, in the units it is drawn in.
fn ceiling(spot: &Spot) -> f32 {
    spot.at.y - (spot.at.y - spot.ceiling) / spot.scale
}

fn furnace(brush: &mut Brush, spot: &Spot, on: bool, turn: Option<f32>) {
    let at = spot.at;
    let corner = at - Vec2::new(23.0, 84.0);
    let top = ceiling(spot);
    brush.rect(
        at.x - 7.0,
        top,
        14.0,
        corner.y - top + 2.0,
        theme::STEEL.mix(theme::INK, 0.3),
    );
    brush.round_rect(
        corner,
        Vec2::new(46.0, 84.0),
        4.0,
        enamel(on).mix(theme::CLOTH, 0.28),
    );
    for y in [10.0, 16.0, 22.0] {
        brush.line(
            &[corner + Vec2::new(8.0, y), corner + Vec2::new(38.0, y)],
            1.8,
            theme::RUBBER,
        );
    }
    fan(brush, corner + Vec2::new(23.0, 56.0), 16.0, turn);
    pilot(brush, corner + Vec2::new(38.0, 33.0), on);
}

fn water_heater(brush: &mut Brush, spot: &Spot, runs: bool) {
    let at = spot.at;
    let top = ceiling(spot);
    let corner = at - Vec2::new(14.0, 82.0);
    for dx in [-6.0, 6.0] {
        brush.stroke(
            &[Vec2::new(at.x + dx, top), Vec2::new(at.x + dx, corner.y)],
            2.5,
            theme::CLOTH,
        );
    }
    brush.round_rect(
        corner,
        Vec2::new(28.0, 82.0),
        9.0,
        enamel(runs).mix(theme::STEEL, 0.3),
    );
    brush.rect(corner.x, corner.y + 56.0, 28.0, 3.0, theme::ENAMEL_LINE);
    pilot(brush, corner + Vec2::new(14.0, 70.0), runs);
}

fn drum(brush: &mut Brush, at: Vec2, on: bool, turn: Option<f32>) {
    let corner = at - Vec2::new(23.0, 54.0);
    brush.round_rect(corner, Vec2::new(46.0, 54.0), 4.0, enamel(on));
    let center = corner + Vec2::new(23.0, 32.0);
    brush.disk(center, 16.0, theme::ENAMEL_LINE);
    brush.disk(center, 12.5, theme::INK);
    let (moves, turn) = (turn.is_some(), turn.unwrap_or_default());
    brush.moving(moves, |brush| {
        for i in 0..3_u8 {
            let angle = turn * 3.0 + f32::from(i) * 2.1;
            brush.disk(center + Vec2::from_angle(angle) * 7.0, 3.2, theme::SOFA);
        }
    });
    pilot(brush, corner + Vec2::new(38.0, 8.0), on);
}

fn sump(brush: &mut Brush, spot: &Spot, view: &ApplianceView) {
    let at = spot.at;
    let wall = at.x + (RIGHT - at.x) / spot.scale;
    let (on, runs, worry) = (theme::powered(view.state), turns(view), view.worry);
    let pit = Vec2::new(at.x - 16.0, at.y);
    brush.rect(pit.x, pit.y, 32.0, 28.0, theme::INK);
    let depth = 28.0 * worry.clamp(0.04, 1.0);
    brush.rect(pit.x, pit.y + 28.0 - depth, 32.0, depth, theme::WATER);
    brush.line(
        &[
            Vec2::new(pit.x, pit.y + 28.0 - depth),
            Vec2::new(pit.x + 32.0, pit.y + 28.0 - depth),
        ],
        2.0,
        theme::SKY_BLUE,
    );
    if worry >= 0.999 {
        let left = at.x - 98.0;
        brush.rect(left, at.y - 5.0, wall - 9.0 - left, 5.0, theme::WATER);
    }
    brush.stroke(
        &[
            Vec2::new(at.x + 4.0, at.y + 12.0),
            Vec2::new(at.x + 4.0, at.y - 64.0),
            Vec2::new(wall, at.y - 64.0),
        ],
        4.0,
        theme::PORCELAIN,
    );
    brush.round_rect(
        Vec2::new(at.x - 8.0, at.y + 8.0),
        Vec2::new(16.0, 18.0),
        4.0,
        if runs { theme::VEST } else { theme::ENGINE },
    );
    // A dipstick with the level from 0 to full, for the back of the room.
    let gauge = Vec2::new(at.x + 15.0, at.y - 46.0);
    brush.round_rect(gauge, Vec2::new(7.0, 44.0), 3.0, theme::INK);
    let level = 44.0 * worry.clamp(0.0, 1.0);
    brush.rect(
        gauge.x,
        gauge.y + 44.0 - level,
        7.0,
        level,
        theme::WATER.mix(theme::CREAM, 0.2),
    );
    pilot(brush, Vec2::new(at.x - 14.0, at.y - 12.0), on);
}

fn air_conditioner(brush: &mut Brush, at: Vec2, turn: Option<f32>) {
    let corner = at - Vec2::new(19.0, 38.0);
    brush.round_rect(
        corner,
        Vec2::new(38.0, 38.0),
        4.0,
        theme::STEEL.mix(theme::INK, 0.25),
    );
    fan(brush, corner + Vec2::new(19.0, 19.0), 14.0, turn);
}

fn range(brush: &mut Brush, at: Vec2, runs: bool) {
    let corner = at - Vec2::new(16.0, 42.0);
    brush.round_rect(corner, Vec2::new(32.0, 42.0), 3.0, enamel(runs));
    brush.rect(
        corner.x + 5.0,
        corner.y + 14.0,
        22.0,
        18.0,
        if runs { theme::ORANGE } else { theme::INK },
    );
}

fn television(brush: &mut Brush, at: Vec2, on: bool) {
    let corner = at - Vec2::new(18.0, 42.0);
    brush.round_rect(corner, Vec2::new(36.0, 24.0), 2.0, theme::RUBBER);
    let screen = if on {
        theme::SKY_BLUE.mix(theme::CREAM, 0.3)
    } else {
        theme::INK
    };
    brush.rect(corner.x + 3.0, corner.y + 3.0, 30.0, 18.0, screen);
    brush.rect(at.x - 14.0, at.y - 16.0, 28.0, 14.0, theme::WOOD);
}

/// Strained and broken things carry a mark of their own shape beside the word.
fn trouble(brush: &mut Brush, a: &ApplianceView, spot: &Spot) {
    let cover = spot.cover();
    let mark = Vec2::new(
        cover.max.x - 4.0,
        cover.min.y.max(cover.max.y - 62.0) + 10.0,
    );
    match a.state {
        ApplianceState::Strained | ApplianceState::Still => {
            brush.convex(
                &[
                    mark + Vec2::new(0.0, -11.0),
                    mark + Vec2::new(11.0, 8.0),
                    mark + Vec2::new(-11.0, 8.0),
                ],
                theme::YELLOW,
            );
            brush.stroke(
                &[mark + Vec2::new(0.0, -4.0), mark + Vec2::new(0.0, 2.0)],
                2.5,
                theme::RUBBER,
            );
            brush.disk(mark + Vec2::new(0.0, 5.5), 1.5, theme::RUBBER);
        }
        ApplianceState::Broken => {
            brush.disk(mark, 10.0, theme::INK);
            for s in [-1.0, 1.0] {
                brush.stroke(
                    &[
                        mark + Vec2::new(-5.0, -5.0 * s),
                        mark + Vec2::new(5.0, 5.0 * s),
                    ],
                    3.0,
                    theme::PURPLE,
                );
            }
        }
        ApplianceState::NoPower
        | ApplianceState::Ready
        | ApplianceState::Starting
        | ApplianceState::Running => {}
    }
}
