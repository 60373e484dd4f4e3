//! Things that use power, in flat simple shapes whose state shows: lit, dark, spinning, filling.
//!
//! Each is drawn from its view alone; an id that speaks of nothing known gets a plain box with a lamp.
//! It does not cover their words: see the callouts.

use bevy::math::Vec2;

use crate::session::view::{ApplianceState, ApplianceView, StreetView};
use crate::window::theme;
use crate::window::theme::Ink;

use super::brush::Brush;
use super::house::lamp_on;
use super::plan::Plan;

/// Paints all of them; `turn` goes round while something moves.
pub(super) fn paint(brush: &mut Brush, street: &StreetView, plan: &Plan, turn: f32) {
    for appliance in &street.appliances {
        let Some(at) = plan.anchors.get(&appliance.id).copied() else {
            continue;
        };
        one(brush, appliance, at, turn);
        trouble(brush, appliance, at);
    }
}

fn one(brush: &mut Brush, a: &ApplianceView, at: Vec2, turn: f32) {
    let on = theme::powered(a.state);
    let runs = turns(a.state);
    let has = |word: &str| a.id.contains(word);
    if has("light") || has("lamp") {
        lamp(brush, at, a);
    } else if has("fridge") || has("freezer") {
        fridge(brush, at, on, a.worry);
    } else if has("microwave") {
        microwave(brush, at, a.state);
    } else if has("furnace") || has("blower") {
        furnace(brush, at, on, if runs { turn } else { 0.0 });
    } else if has("heater") {
        water_heater(brush, at, runs);
    } else if has("dryer") || has("washer") {
        drum(brush, at, on, if runs { turn } else { 0.0 });
    } else if has("sump") {
        sump(brush, at, a);
    } else if has("condition") {
        air_conditioner(brush, at, if runs { turn } else { 0.0 });
    } else if has("range") || has("oven") {
        range(brush, at, runs);
    } else if has("television") || has("living") {
        television(brush, at, on);
    } else {
        plain(brush, at, on);
    }
}

/// Whether its motor turns or its heater glows.
fn turns(state: ApplianceState) -> bool {
    matches!(
        state,
        ApplianceState::Running | ApplianceState::Starting | ApplianceState::Strained
    )
}

fn enamel(on: bool) -> Ink {
    if on {
        theme::ENAMEL
    } else {
        theme::ENAMEL.mix(theme::ROOM_DARK, 0.35)
    }
}

/// A small lamp that says "has power".
fn pilot(brush: &mut Brush, at: Vec2, on: bool) {
    if on {
        brush.glow(at, Vec2::splat(9.0), theme::YELLOW.alpha(0.5));
    }
    brush.disk(at, 2.6, if on { theme::YELLOW } else { theme::RUBBER });
}

fn lamp(brush: &mut Brush, at: Vec2, view: &ApplianceView) {
    let lit = lamp_on(view);
    let dim = view.state == ApplianceState::Strained;
    if lit {
        let strength = if dim { 0.25 } else { 0.55 };
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
    let shade = if lit {
        theme::YELLOW
    } else {
        theme::STEEL.mix(theme::ROOM_DARK, 0.4)
    };
    brush.convex(
        &[
            at + Vec2::new(-5.0, 11.0),
            at + Vec2::new(5.0, 11.0),
            at + Vec2::new(14.0, 25.0),
            at + Vec2::new(-14.0, 25.0),
        ],
        shade,
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

fn microwave(brush: &mut Brush, at: Vec2, state: ApplianceState) {
    let (on, runs) = (theme::powered(state), turns(state));
    let corner = at - Vec2::new(20.0, 14.0);
    brush.round_rect(corner, Vec2::new(40.0, 22.0), 3.0, enamel(on));
    let door = if runs { theme::YELLOW } else { theme::INK };
    brush.round_rect(corner + Vec2::splat(4.0), Vec2::new(22.0, 14.0), 2.0, door);
    pilot(brush, corner + Vec2::new(33.0, 8.0), on);
}

fn fan(brush: &mut Brush, at: Vec2, radius: f32, turn: f32) {
    brush.disk(at, radius, theme::INK);
    for i in 0..4_u8 {
        let angle = turn * 6.0 + f32::from(i) * std::f32::consts::FRAC_PI_2;
        let tip = Vec2::from_angle(angle) * (radius - 2.0);
        let side = Vec2::from_angle(angle + 0.6) * (radius - 3.0);
        brush.convex(&[at, at + tip, at + side], theme::PORCELAIN);
    }
    brush.disk(at, radius * 0.2, theme::STEEL);
}

fn furnace(brush: &mut Brush, at: Vec2, on: bool, turn: f32) {
    let corner = at - Vec2::new(23.0, 84.0);
    brush.rect(
        at.x - 7.0,
        538.0,
        14.0,
        corner.y - 538.0 + 2.0,
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

fn water_heater(brush: &mut Brush, at: Vec2, runs: bool) {
    let corner = at - Vec2::new(14.0, 82.0);
    for dx in [-6.0, 6.0] {
        brush.stroke(
            &[Vec2::new(at.x + dx, 540.0), Vec2::new(at.x + dx, corner.y)],
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

fn drum(brush: &mut Brush, at: Vec2, on: bool, turn: f32) {
    let corner = at - Vec2::new(23.0, 54.0);
    brush.round_rect(corner, Vec2::new(46.0, 54.0), 4.0, enamel(on));
    let center = corner + Vec2::new(23.0, 32.0);
    brush.disk(center, 16.0, theme::ENAMEL_LINE);
    brush.disk(center, 12.5, theme::INK);
    for i in 0..3_u8 {
        let angle = turn * 3.0 + f32::from(i) * 2.1;
        brush.disk(center + Vec2::from_angle(angle) * 7.0, 3.2, theme::SOFA);
    }
    pilot(brush, corner + Vec2::new(38.0, 8.0), on);
}

fn sump(brush: &mut Brush, at: Vec2, view: &ApplianceView) {
    let (on, runs, worry) = (theme::powered(view.state), turns(view.state), view.worry);
    let pit = Vec2::new(at.x - 16.0, 652.0);
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
        brush.rect(640.0, 647.0, 132.0, 5.0, theme::WATER);
    }
    brush.stroke(
        &[
            Vec2::new(at.x + 4.0, 664.0),
            Vec2::new(at.x + 4.0, 588.0),
            Vec2::new(781.0, 588.0),
        ],
        4.0,
        theme::PORCELAIN,
    );
    brush.round_rect(
        Vec2::new(at.x - 8.0, 660.0),
        Vec2::new(16.0, 18.0),
        4.0,
        if runs { theme::VEST } else { theme::ENGINE },
    );
    // A dipstick with the level from 0 to full, for the back of the room.
    let gauge = Vec2::new(at.x + 24.0, 606.0);
    brush.round_rect(gauge, Vec2::new(7.0, 44.0), 3.0, theme::INK);
    let level = 44.0 * worry.clamp(0.0, 1.0);
    brush.rect(
        gauge.x,
        gauge.y + 44.0 - level,
        7.0,
        level,
        theme::WATER.mix(theme::CREAM, 0.2),
    );
    pilot(brush, Vec2::new(at.x - 14.0, 640.0), on);
}

fn air_conditioner(brush: &mut Brush, at: Vec2, turn: f32) {
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
    let corner = at - Vec2::new(18.0, 26.0);
    brush.round_rect(corner, Vec2::new(36.0, 24.0), 2.0, theme::RUBBER);
    let screen = if on {
        theme::SKY_BLUE.mix(theme::CREAM, 0.3)
    } else {
        theme::INK
    };
    brush.rect(corner.x + 3.0, corner.y + 3.0, 30.0, 18.0, screen);
    brush.rect(at.x - 14.0, at.y + 2.0, 28.0, 14.0, theme::WOOD);
}

fn plain(brush: &mut Brush, at: Vec2, on: bool) {
    brush.round_rect(
        at - Vec2::new(13.0, 28.0),
        Vec2::new(26.0, 28.0),
        4.0,
        enamel(on),
    );
    pilot(brush, at - Vec2::new(0.0, 20.0), on);
}

/// Strained and broken things carry a mark of their own shape beside the word.
fn trouble(brush: &mut Brush, a: &ApplianceView, at: Vec2) {
    let mark = at + Vec2::new(16.0, -40.0);
    match a.state {
        ApplianceState::Strained => {
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
