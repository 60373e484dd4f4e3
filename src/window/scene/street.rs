//! The line: substation end, poles, transformer, the crew's truck.
//!
//! Shapes are our own and of no maker's product.
//! It does not cover the conductors: see [`super::wires`].

use bevy::math::Vec2;

use crate::session::view::{PersonState, StreetView};
use crate::window::theme;
use crate::window::theme::{Ink, Light};

use super::brush::{Brush, hang};
use super::plan::{GROUND, NEUTRAL, PHASE, Plan, crew_side};
use super::{devices, neighbors};

/// Paints the line's things.
pub(super) fn paint(brush: &mut Brush, street: &StreetView, plan: &Plan, light: Light) {
    neighbors::paint(brush, street, plan, light);
    substation(brush, light);
    for (id, x) in &plan.poles {
        let transformer = street.poles.iter().any(|p| p.id == *id && p.transformer);
        pole(brush, (*x, plan.pole_scale), transformer, light);
    }
    neutral(brush, plan, light);
    devices::paint(brush, street, plan, light);
    if let Some(crew) = street.people.iter().find(|p| p.id == "crew") {
        let Some(x) = plan
            .poles
            .iter()
            .find(|(id, _)| *id == crew.place)
            .map(|(_, x)| *x)
        else {
            return;
        };
        let up = matches!(
            crew.state,
            PersonState::Working | PersonState::Harmed | PersonState::Unwell
        );
        let side = Vec2::new(crew_side(x), 1.0);
        brush.at_size(Vec2::new(x, GROUND), side, |brush| {
            truck(brush, x, up.then_some(x), light);
        });
    }
}

/// A color by the light of the hour.
pub(super) fn outdoors(ink: Ink, light: Light) -> Ink {
    ink.mix(light.hill, 0.42 * light.dark + 0.05)
}

fn substation(brush: &mut Brush, light: Light) {
    let steel = outdoors(theme::STEEL, light);
    let left = brush.frame().bounds().min.x - 20.0;
    for x in [left, 6.0] {
        brush.stroke(
            &[Vec2::new(x, GROUND), Vec2::new(x, PHASE - 30.0)],
            5.0,
            steel,
        );
    }
    brush.stroke(
        &[Vec2::new(left, PHASE - 26.0), Vec2::new(14.0, PHASE - 26.0)],
        6.0,
        steel,
    );
    let rungs: [f32; 6] = [0.0, 1.0, 2.0, 3.0, 4.0, 5.0];
    for rung in rungs {
        let y = PHASE + 10.0 + rung * 52.0;
        brush.stroke(&[Vec2::new(left, y), Vec2::new(6.0, y + 40.0)], 2.0, steel);
    }
}

fn pole(brush: &mut Brush, (x, size): (f32, f32), transformer: bool, light: Light) {
    let wood = outdoors(theme::WOOD, light);
    let shade = wood.mix(theme::RUBBER, 0.3);
    let steel = outdoors(theme::STEEL, light).mix(wood, 0.3);
    let foot = GROUND + 4.0;
    // A pole is a little thicker at its foot.
    let sides = |left: f32, right: f32| {
        [
            Vec2::new(x + left * 0.8, PHASE - 34.0),
            Vec2::new(x + right * 0.8, PHASE - 34.0),
            Vec2::new(x + right * 1.15, foot),
            Vec2::new(x + left * 1.15, foot),
        ]
    };
    brush.convex(&sides(-5.0, 5.0), wood);
    brush.convex(&sides(1.8, 5.0), shade);
    brush.rect(x - 5.0, PHASE - 36.0, 10.0, 4.0, steel);
    // Braces, the arm and its bolt.
    for side in [-1.0, 1.0] {
        let brace = [
            Vec2::new(x + 17.0 * size * side, PHASE + 12.0),
            Vec2::new(x, PHASE + 30.0),
        ];
        brush.stroke(&brace, 2.0, steel);
    }
    let arm = 26.0 * size;
    brush.rect(x - arm, PHASE + 6.0, arm * 2.0, 7.0, wood);
    brush.rect(x - arm, PHASE + 11.0, arm * 2.0, 2.0, shade);
    brush.disk(Vec2::new(x, PHASE + 9.5), 2.0, steel);
    for dx in [-22.0 * size, 0.0, 22.0 * size] {
        let porcelain = outdoors(theme::PORCELAIN, light);
        let y = if dx == 0.0 { PHASE - 44.0 } else { PHASE - 5.0 };
        brush.rect(x + dx - 1.0, y + 8.0, 2.0, 5.0, steel);
        brush.round_rect(
            Vec2::new(x + dx - 3.0, y),
            Vec2::new(6.0, 7.0),
            2.5,
            porcelain,
        );
        let skirt = Vec2::new(x + dx - 4.2, y + 5.0);
        brush.round_rect(skirt, Vec2::new(8.4, 4.2), 2.0, porcelain);
    }
    let tie = outdoors(theme::PORCELAIN, light);
    brush.disk(Vec2::new(x, NEUTRAL), 4.0, tie);
    brush.line(
        &[
            Vec2::new(x - 7.0, NEUTRAL),
            Vec2::new(x - 7.0, GROUND + 16.0),
        ],
        1.5,
        outdoors(theme::NEUTRAL, light),
    );
    // Its plate, and a guard over the wire that goes to earth.
    let plate = Vec2::new(x - 3.0, GROUND - 96.0);
    brush.round_rect(plate, Vec2::new(6.0, 9.0), 1.0, steel);
    brush.rect(x - 8.5, GROUND - 58.0, 3.0, 60.0, steel.mix(shade, 0.4));
    if transformer {
        can(brush, x, light);
    }
}

fn can(brush: &mut Brush, x: f32, light: Light) {
    let steel = outdoors(theme::STEEL, light);
    let at = Vec2::new(x + 6.0, NEUTRAL - 56.0);
    for dx in [9.0, 22.0] {
        brush.round_rect(
            at + Vec2::new(dx - 2.5, -16.0),
            Vec2::new(5.0, 18.0),
            2.0,
            outdoors(theme::PORCELAIN, light),
        );
    }
    brush.round_rect(at, Vec2::new(31.0, 58.0), 6.0, steel);
    for dy in [14.0, 44.0] {
        brush.rect(x, at.y + dy, 8.0, 4.0, steel.mix(theme::RUBBER, 0.45));
    }
    brush.rect(
        at.x - 1.0,
        at.y + 5.0,
        33.0,
        4.0,
        steel.mix(theme::RUBBER, 0.35),
    );
    for i in 0..3_u8 {
        let fin = at.x + 4.0 + 5.0 * f32::from(i);
        brush.rect(fin, at.y + 15.0, 2.0, 38.0, steel.mix(theme::RUBBER, 0.16));
    }
    brush.round_rect(
        at + Vec2::new(21.0, 4.0),
        Vec2::new(7.0, 50.0),
        3.0,
        steel.mix(theme::RUBBER, 0.2),
    );
    brush.line(
        &[Vec2::new(x + 1.0, PHASE), at + Vec2::new(9.0, -14.0)],
        1.5,
        outdoors(theme::NEUTRAL, light),
    );
}

fn neutral(brush: &mut Brush, plan: &Plan, light: Light) {
    let ink = outdoors(theme::NEUTRAL, light);
    let mut from = Vec2::new(brush.frame().bounds().min.x, NEUTRAL);
    for (_, x) in &plan.poles {
        let to = Vec2::new(*x, NEUTRAL);
        brush.line(&hang(from, to, 12.0), 1.5, ink);
        from = to;
    }
}

/// The truck stands beside the crew's pole; the boom reaches up while somebody is in the bucket.
fn truck(brush: &mut Brush, x: f32, up: Option<f32>, light: Light) {
    let body = outdoors(theme::ENAMEL, light);
    let cab = outdoors(theme::STEEL, light);
    let left = x + 14.0;
    let deck = GROUND - 20.0;
    brush.round_rect(
        Vec2::new(left, deck - 26.0),
        Vec2::new(78.0, 26.0),
        4.0,
        body,
    );
    brush.rect(left, deck - 12.0, 78.0, 5.0, outdoors(theme::VEST, light));
    brush.round_rect(
        Vec2::new(left + 72.0, deck - 40.0),
        Vec2::new(34.0, 40.0),
        6.0,
        cab,
    );
    brush.round_rect(
        Vec2::new(left + 84.0, deck - 35.0),
        Vec2::new(17.0, 15.0),
        3.0,
        theme::ROOM_DARK,
    );
    for dx in [20.0, 84.0] {
        brush.disk(Vec2::new(left + dx, GROUND - 12.0), 12.0, theme::RUBBER);
        brush.disk(Vec2::new(left + dx, GROUND - 12.0), 4.5, cab);
    }
    let foot = Vec2::new(left + 26.0, deck - 26.0);
    brush.round_rect(
        foot + Vec2::new(-8.0, -8.0),
        Vec2::new(16.0, 10.0),
        3.0,
        cab,
    );
    let elbow = if up.is_some() {
        Vec2::new(left + 64.0, PHASE + 190.0)
    } else {
        foot + Vec2::new(62.0, -26.0)
    };
    brush.stroke(&[foot, elbow], 9.0, body);
    if let Some(pole) = up {
        let bucket = Vec2::new(pole + 34.0, PHASE + 62.0);
        brush.stroke(&[elbow, bucket], 7.0, body);
    } else {
        brush.stroke(&[elbow, elbow + Vec2::new(-48.0, -6.0)], 7.0, body);
        brush.round_rect(
            elbow + Vec2::new(-66.0, -24.0),
            Vec2::new(22.0, 24.0),
            4.0,
            outdoors(theme::PAPER, light),
        );
    }
    brush.disk(elbow, 6.0, cab);
}
