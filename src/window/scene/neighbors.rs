//! Houses next door: two plain shapes by turns, with windows that shine as bright as their volts let them.
//!
//! It does not cover what is inside.

use bevy::math::Vec2;

use crate::session::view::StreetView;
use crate::window::theme;
use crate::window::theme::{Ink, Light};

use super::brush::Brush;
use super::plan::{GROUND, Plan, count};
use super::street::outdoors;

/// Paints all of them.
pub(super) fn paint(brush: &mut Brush, street: &StreetView, plan: &Plan, light: Light) {
    let all = street.neighbors.iter().zip(&plan.neighbors);
    for (nth, (neighbor, (x, size))) in all.enumerate() {
        let at = Vec2::new(*x, GROUND);
        brush.at_size(at, Vec2::splat(*size), |brush| {
            let look = Look::new(light, neighbor.glow);
            if nth % 2 == 0 {
                gable(brush, *x, &look);
            } else {
                porch(brush, *x, &look);
            }
        });
    }
}

/// Colors of a house in the light of the hour.
struct Look {
    wall: Ink,
    roof: Ink,
    trim: Ink,
    pane: Ink,
    glow: f32,
}

impl Look {
    fn new(light: Light, glow: f32) -> Self {
        let dark = theme::ROOM_DARK.mix(light.hill, 0.35);
        Self {
            wall: outdoors(theme::PLASTER, light).mix(light.hill, 0.28),
            roof: outdoors(theme::ROOF, light).mix(light.hill, 0.3),
            trim: outdoors(theme::ENAMEL, light).mix(light.hill, 0.25),
            pane: dark.mix(theme::YELLOW.mix(theme::ROOM_LIT, 0.45), glow),
            glow,
        }
    }
}

/// The end of a house with its gable towards the street.
fn gable(brush: &mut Brush, x: f32, look: &Look) {
    let p = |dx: f32, dy: f32| Vec2::new(x + dx, GROUND - dy);
    brush.rect(
        x + 14.0,
        GROUND - 112.0,
        10.0,
        26.0,
        look.roof.mix(theme::RUBBER, 0.2),
    );
    brush.convex(
        &[
            p(-32.0, 74.0),
            p(0.0, 106.0),
            p(32.0, 74.0),
            p(32.0, 0.0),
            p(-32.0, 0.0),
        ],
        look.wall,
    );
    brush.rect(
        x - 32.0,
        GROUND - 7.0,
        64.0,
        7.0,
        look.wall.mix(theme::RUBBER, 0.22),
    );
    brush.fill(
        &[
            p(-41.0, 68.0),
            p(0.0, 112.0),
            p(41.0, 68.0),
            p(35.0, 66.0),
            p(0.0, 102.0),
            p(-35.0, 66.0),
        ],
        look.roof,
    );
    window(brush, p(-6.0, 88.0), Vec2::new(12.0, 13.0), look);
    for dx in [-23.0, 9.0] {
        window(brush, p(dx, 60.0), Vec2::new(14.0, 17.0), look);
    }
    window(brush, p(-23.0, 31.0), Vec2::new(14.0, 17.0), look);
    door(brush, p(9.0, 0.0), look);
}

/// The side of a house, with a porch before it.
fn porch(brush: &mut Brush, x: f32, look: &Look) {
    let p = |dx: f32, dy: f32| Vec2::new(x + dx, GROUND - dy);
    brush.rect(
        x - 24.0,
        GROUND - 110.0,
        10.0,
        24.0,
        look.roof.mix(theme::RUBBER, 0.2),
    );
    brush.rect(x - 34.0, GROUND - 68.0, 68.0, 68.0, look.wall);
    brush.rect(
        x - 34.0,
        GROUND - 7.0,
        68.0,
        7.0,
        look.wall.mix(theme::RUBBER, 0.22),
    );
    brush.convex(
        &[
            p(-40.0, 66.0),
            p(-24.0, 102.0),
            p(24.0, 102.0),
            p(40.0, 66.0),
        ],
        look.roof,
    );
    for dx in [-27.0, -7.0, 13.0] {
        window(brush, p(dx, 59.0), Vec2::new(13.0, 14.0), look);
    }
    window(brush, p(-26.0, 30.0), Vec2::new(18.0, 16.0), look);
    door(brush, p(8.0, 0.0), look);
    brush.convex(
        &[p(-38.0, 36.0), p(-30.0, 43.0), p(30.0, 43.0), p(38.0, 36.0)],
        look.roof.mix(theme::RUBBER, 0.15),
    );
    for dx in [-34.0, 31.0] {
        brush.rect(
            x + dx,
            GROUND - 36.0,
            3.0,
            36.0,
            look.trim.mix(look.wall, 0.3),
        );
    }
}

fn window(brush: &mut Brush, at: Vec2, size: Vec2, look: &Look) {
    if look.glow > 0.0 {
        let around = Vec2::splat(size.y * 1.6);
        brush.glow(
            at + size / 2.0,
            around,
            theme::YELLOW.alpha(0.3 * look.glow),
        );
    }
    let edge = Vec2::splat(1.6);
    let corner = at - edge;
    brush.rect(
        corner.x,
        corner.y,
        size.x + 3.2,
        size.y + 3.2,
        look.trim.mix(look.wall, 0.45),
    );
    brush.rect(at.x, at.y, size.x, size.y, look.pane);
    let bar = look.trim.mix(look.wall, 0.6);
    brush.rect(at.x + size.x / 2.0 - 0.7, at.y, 1.4, size.y, bar);
    brush.rect(at.x, at.y + size.y * 0.45, size.x, 1.4, bar);
}

fn door(brush: &mut Brush, at: Vec2, look: &Look) {
    let ink = look.roof.mix(theme::RUBBER, 0.3);
    brush.rect(
        at.x - 1.5,
        at.y - 34.0,
        16.0,
        34.0,
        look.trim.mix(look.wall, 0.5),
    );
    brush.rect(at.x, at.y - 32.0, 13.0, 32.0, ink);
    for i in 0..2_usize {
        let y = at.y - 28.0 + 13.0 * count(i);
        brush.rect(at.x + 2.5, y, 8.0, 9.0, ink.mix(look.wall, 0.14));
    }
    brush.rect(
        at.x - 4.0,
        at.y - 3.0,
        21.0,
        3.0,
        look.wall.mix(theme::RUBBER, 0.3),
    );
}
