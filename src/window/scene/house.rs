//! The house in section: rooms that are lit or dark, the wiring chase, the panel on the cellar wall.
//!
//! It does not cover the things in the rooms: see [`super::appliances`].

use bevy::math::Vec2;

use crate::session::view::{ApplianceView, StreetView};
use crate::window::theme;
use crate::window::theme::Light;

use super::brush::Brush;
use super::plan::{GROUND, PANEL_BOTTOM, PANEL_TOP, WEATHERHEAD};
use super::street::outdoors;

/// Left and right face of the house.
const LEFT: f32 = 455.0;
const RIGHT: f32 = 781.0;

/// Paints the house.
pub(super) fn paint(brush: &mut Brush, street: &StreetView, light: Light) {
    let wall = outdoors(theme::PLASTER, light);
    garage(brush, street, light);
    cellar(brush, street);
    brush.rect(LEFT, 262.0, RIGHT - LEFT, GROUND - 262.0, wall);
    roof(brush, light);
    let kitchen = lit(street, "kitchen");
    let bedroom = lit(street, "bedroom");
    let living = lit(street, "living").max(0.45 * glow_of(street, "television"));
    let hall = lit(street, "hall").max(bedroom * 0.35);
    room(brush, [480.0, 272.0, 128.0, 112.0], bedroom);
    room(brush, [616.0, 272.0, 157.0, 112.0], hall);
    room(brush, [480.0, 402.0, 144.0, 118.0], kitchen);
    room(brush, [632.0, 402.0, 141.0, 118.0], living);
    brush.rect(
        LEFT,
        384.0,
        RIGHT - LEFT,
        18.0,
        theme::FLOOR.mix(theme::INK, 0.25),
    );
    brush.rect(
        LEFT,
        520.0,
        RIGHT - LEFT,
        18.0,
        theme::FLOOR.mix(theme::INK, 0.25),
    );
    brush.rect(457.0, 262.0, 22.0, 258.0, theme::INK.mix(wall, 0.22));
    windows(brush, street, light);
    furniture(brush, [bedroom, living, kitchen]);
    entrance(brush, light);
    panel(brush);
}

/// How brightly a room is lit, 0 to 1: any lamp whose id speaks of it has power and is on.
fn lit(street: &StreetView, room: &str) -> f32 {
    let mut lamps = street
        .appliances
        .iter()
        .filter(|a| a.id.contains(room) && a.id.contains("light"));
    if lamps.any(lamp_on) { 1.0 } else { 0.0 }
}

/// A screen lights a room a little.
fn glow_of(street: &StreetView, id: &str) -> f32 {
    if street.appliances.iter().any(|a| a.id == id && lamp_on(a)) {
        1.0
    } else {
        0.0
    }
}

/// Whether a lamp gives light.
pub(super) fn lamp_on(lamp: &ApplianceView) -> bool {
    use crate::session::view::ApplianceState as S;
    match lamp.state {
        S::Running | S::Strained | S::Starting => true,
        S::NoPower | S::Ready | S::Broken => false,
    }
}

fn room(brush: &mut Brush, [x, y, width, height]: [f32; 4], brightness: f32) {
    let ink = theme::ROOM_DARK.mix(theme::ROOM_LIT, brightness);
    brush.shade(
        [
            Vec2::new(x, y),
            Vec2::new(x + width, y),
            Vec2::new(x + width, y + height),
            Vec2::new(x, y + height),
        ],
        ink.mix(theme::CREAM, 0.06 * brightness),
        ink.mix(theme::FLOOR, 0.22),
    );
    brush.rect(x, y + height - 4.0, width, 4.0, ink.mix(theme::WOOD, 0.5));
}

fn roof(brush: &mut Brush, light: Light) {
    let tile = outdoors(theme::ROOF, light);
    let apex = Vec2::new(618.0, 148.0);
    brush.rect(692.0, 158.0, 24.0, 60.0, outdoors(theme::CLOTH, light));
    brush.convex(
        &[Vec2::new(430.0, 266.0), apex, Vec2::new(806.0, 266.0)],
        tile,
    );
    for i in 1..5_u8 {
        let t = f32::from(i) / 5.0;
        let y = apex.y + (266.0 - apex.y) * t;
        let half = 188.0 * t;
        brush.line(
            &[Vec2::new(618.0 - half, y), Vec2::new(618.0 + half, y)],
            1.0,
            tile.mix(theme::RUBBER, 0.22),
        );
    }
    brush.rect(430.0, 262.0, 376.0, 7.0, tile.mix(theme::RUBBER, 0.35));
    brush.stroke(
        &[
            WEATHERHEAD + Vec2::new(0.0, 22.0),
            WEATHERHEAD - Vec2::Y * 6.0,
        ],
        5.0,
        theme::STEEL,
    );
    brush.disk(WEATHERHEAD - Vec2::new(3.0, 6.0), 6.0, theme::STEEL);
}

fn cellar(brush: &mut Brush, street: &StreetView) {
    let brightness = lit(street, "basement").max(lit(street, "cellar"));
    let wall = theme::STEEL.mix(theme::SOIL, 0.55);
    brush.rect(LEFT, GROUND, RIGHT - LEFT, 134.0, wall);
    let ink = theme::CELLAR_DARK.mix(theme::CELLAR_LIT, brightness);
    brush.shade(
        [
            Vec2::new(466.0, 538.0),
            Vec2::new(772.0, 538.0),
            Vec2::new(772.0, 652.0),
            Vec2::new(466.0, 652.0),
        ],
        ink.mix(theme::CREAM, 0.05),
        ink.mix(theme::INK, 0.12),
    );
    // The sump pit goes below the floor.
    brush.rect(718.0, 650.0, 42.0, 34.0, wall);
}

fn garage(brush: &mut Brush, street: &StreetView, light: Light) {
    let wall = outdoors(theme::PLASTER, light).mix(light.hill, 0.06);
    brush.rect(RIGHT, 432.0, 95.0, GROUND - 432.0, wall);
    brush.convex(
        &[
            Vec2::new(RIGHT, 396.0),
            Vec2::new(888.0, 428.0),
            Vec2::new(888.0, 436.0),
            Vec2::new(RIGHT, 436.0),
        ],
        outdoors(theme::ROOF, light),
    );
    let brightness = lit(street, "garage");
    let ink = theme::CELLAR_DARK.mix(theme::CELLAR_LIT, brightness);
    brush.rect(787.0, 440.0, 81.0, 80.0, ink);
    brush.rect(
        RIGHT,
        520.0,
        95.0,
        10.0,
        theme::STEEL.mix(theme::SOIL, 0.55),
    );
    for y in [452.0, 462.0] {
        brush.line(
            &[Vec2::new(792.0, y), Vec2::new(830.0, y)],
            1.5,
            ink.mix(theme::CREAM, 0.18),
        );
    }
}

fn windows(brush: &mut Brush, street: &StreetView, light: Light) {
    let night = light.middle.mix(light.bottom, 0.5);
    let frame = theme::ENAMEL.mix(theme::ROOM_DARK, 0.3);
    for (x, y, w, h) in [
        (498.0, 296.0, 34.0, 40.0),
        (718.0, 296.0, 34.0, 40.0),
        (700.0, 424.0, 40.0, 40.0),
    ] {
        brush.rect(x - 3.0, y - 3.0, w + 6.0, h + 6.0, frame);
        brush.rect(x, y, w, h, night);
        brush.rect(x + w / 2.0 - 1.0, y, 2.0, h, frame);
    }
    // The side window towards the patio, seen edge-on: shut it is flush with the wall, open it swings out.
    brush.rect(772.0, 424.0, 9.0, 40.0, frame);
    if street.window_open {
        brush.stroke(
            &[Vec2::new(779.0, 424.0), Vec2::new(800.0, 414.0)],
            4.0,
            frame,
        );
        brush.rect(774.0, 430.0, 5.0, 30.0, night);
    }
}

fn furniture(brush: &mut Brush, [bedroom, living, kitchen]: [f32; 3]) {
    let dim = |ink: theme::Ink, light: f32| ink.mix(theme::ROOM_DARK, 0.45 * (1.0 - light));
    // A bed.
    let quilt = dim(theme::BLUE.mix(theme::CREAM, 0.45), bedroom);
    brush.round_rect(Vec2::new(538.0, 352.0), Vec2::new(66.0, 18.0), 5.0, quilt);
    brush.round_rect(
        Vec2::new(584.0, 344.0),
        Vec2::new(20.0, 11.0),
        5.0,
        dim(theme::CREAM, bedroom),
    );
    brush.rect(536.0, 366.0, 70.0, 8.0, dim(theme::WOOD, bedroom));
    brush.rect(538.0, 374.0, 4.0, 8.0, dim(theme::WOOD, bedroom));
    brush.rect(600.0, 374.0, 4.0, 8.0, dim(theme::WOOD, bedroom));
    // A sofa.
    let sofa = dim(theme::SOFA, living);
    brush.round_rect(
        Vec2::new(642.0, 474.0),
        Vec2::new(82.0, 26.0),
        8.0,
        sofa.mix(theme::CREAM, 0.18),
    );
    brush.round_rect(Vec2::new(638.0, 492.0), Vec2::new(90.0, 24.0), 8.0, sofa);
    // A kitchen counter.
    brush.rect(530.0, 484.0, 90.0, 32.0, dim(theme::WOOD, kitchen));
    brush.rect(526.0, 479.0, 98.0, 6.0, dim(theme::CREAM, kitchen));
    for x in [556.0, 588.0] {
        brush.line(
            &[Vec2::new(x, 486.0), Vec2::new(x, 516.0)],
            1.2,
            dim(theme::RUBBER, kitchen).alpha(0.5),
        );
    }
}

fn entrance(brush: &mut Brush, light: Light) {
    let meter = Vec2::new(446.0, 456.0);
    brush.round_rect(
        meter - Vec2::new(9.0, 12.0),
        Vec2::new(18.0, 28.0),
        4.0,
        outdoors(theme::STEEL, light),
    );
    brush.disk(meter, 7.0, theme::CREAM);
    brush.ring(meter, 7.0, 1.5, theme::RUBBER);
    brush.line(
        &[Vec2::new(440.0, GROUND), Vec2::new(440.0, GROUND + 40.0)],
        2.0,
        theme::NEUTRAL,
    );
}

fn panel(brush: &mut Brush) {
    let corner = Vec2::new(PANEL_TOP.x - 19.0, PANEL_TOP.y);
    let size = Vec2::new(38.0, PANEL_BOTTOM.y - PANEL_TOP.y);
    brush.round_rect(
        corner - Vec2::splat(2.0),
        size + Vec2::splat(4.0),
        4.0,
        theme::RUBBER,
    );
    brush.round_rect(corner, size, 3.0, theme::STEEL.mix(theme::INK, 0.35));
    for row in 0..6_u8 {
        let y = corner.y + 22.0 + f32::from(row) * 9.5;
        for dx in [5.0, 23.0] {
            brush.rect(corner.x + dx, y, 10.0, 6.0, theme::INK);
            brush.rect(corner.x + dx + 3.0, y + 1.5, 4.0, 3.0, theme::PORCELAIN);
        }
    }
}
