//! Sky, hills, ground: the light of the hour, never black.
//!
//! Stars stand where they always stand, so that pictures repeat.
//! Weather: a storm's clouds and rain, which stand still; lightning would flash, so there is none.

use bevy::math::Vec2;

use crate::window::theme;
use crate::window::theme::Light;

use super::brush::Brush;
use super::plan::GROUND;

/// Paints everything behind the street.
pub(super) fn paint(brush: &mut Brush, light: Light, storm: bool) {
    let b = brush.frame().bounds();
    let (left, right) = (b.min.x, b.max.x);
    let band = |top: f32, bottom: f32| {
        [
            Vec2::new(left, top),
            Vec2::new(right, top),
            Vec2::new(right, bottom),
            Vec2::new(left, bottom),
        ]
    };
    let middle = 250.0;
    brush.shade(band(b.min.y, middle), light.top, light.middle);
    brush.shade(band(middle, GROUND), light.middle, light.bottom);
    if storm {
        bank(brush, light);
    } else {
        stars(brush, light);
        moon(brush, light);
        clouds(brush, light);
    }
    ridge(
        brush,
        432.0,
        34.0,
        0.011,
        light.hill.mix(light.bottom, 0.45),
    );
    ridge(brush, 470.0, 26.0, 0.017, light.hill);
    trees(brush, light);
    if storm {
        rain(brush, light);
    }
    brush.shade(
        band(GROUND, GROUND + 14.0),
        light.grass,
        light.grass.mix(theme::SOIL, 0.5),
    );
    let soil = theme::SOIL.mix(theme::INK, 0.12 + 0.2 * light.dark);
    brush.shade(
        band(GROUND + 14.0, b.max.y),
        soil,
        soil.mix(theme::INK, 0.35),
    );
    strata(brush, soil);
    pebbles(brush, light);
    tufts(brush, light);
}

/// Layers of the soil, each a little other than the one above.
fn strata(brush: &mut Brush, soil: theme::Ink) {
    let b = brush.frame().bounds();
    for (depth, sway, step, ink) in [
        (64.0, 5.0, 0.013, soil.mix(theme::WOOD, 0.07)),
        (112.0, 7.0, 0.009, soil.mix(theme::INK, 0.24)),
        (168.0, 5.0, 0.012, soil.mix(theme::STEEL, 0.05)),
    ] {
        let mut points = vec![Vec2::new(b.min.x, b.max.y)];
        for i in 0..=40_u8 {
            let x = b.min.x + b.width() * f32::from(i) / 40.0;
            let y = GROUND + depth + sway * (x * step + depth).sin();
            points.push(Vec2::new(x, y.min(b.max.y)));
        }
        points.push(b.max);
        brush.fill(&points, ink);
    }
}

/// Tufts of grass, some here and some there.
fn tufts(brush: &mut Brush, light: Light) {
    let b = brush.frame().bounds();
    let ink = light.grass.mix(theme::LEAF, 0.25);
    for i in 0..34_u16 {
        let at = Vec2::new(b.min.x + b.width() * scatter(i, 419, 991), GROUND + 2.0);
        let high = 5.0 + 5.0 * scatter(i, 67, 101);
        for lean in [-3.2, 0.0, 2.8] {
            let tip = at + Vec2::new(lean, -high + lean.abs() * 0.7);
            brush.convex(&[at - Vec2::X * 1.2, tip, at + Vec2::X * 1.2], ink);
        }
    }
}

fn stars(brush: &mut Brush, light: Light) {
    if light.dark < 0.6 {
        return;
    }
    let b = brush.frame().bounds();
    let strength = (light.dark - 0.5) * 1.5;
    for i in 0..70_u16 {
        let spread = scatter(i, 7919, 1000);
        let height = scatter(i, 104, 331);
        let at = Vec2::new(
            b.min.x + b.width() * spread,
            b.min.y + (330.0 - b.min.y) * height,
        );
        let size = 0.7 + f32::from(i % 3) * 0.45;
        brush.disk(
            at,
            size,
            theme::CREAM.alpha(strength * (0.25 + 0.4 * (1.0 - height))),
        );
    }
}

fn moon(brush: &mut Brush, light: Light) {
    if light.dark < 0.6 {
        return;
    }
    let at = Vec2::new(905.0, 158.0);
    brush.glow(at, Vec2::splat(110.0), theme::CREAM.alpha(0.16));
    let arc = |center: Vec2, radius: f32, from: f32, to: f32| {
        (0..=20_u8).map(move |i| {
            let angle = (from + (to - from) * f32::from(i) / 20.0).to_radians();
            center + Vec2::from_angle(angle) * radius
        })
    };
    // Two arcs that meet at the horns.
    let mut points: Vec<Vec2> = arc(at, 24.0, -70.0, -290.0).collect();
    points.extend(arc(at + Vec2::new(16.4, 0.0), 23.95, -250.0, -110.0));
    brush.fill(&points, theme::CREAM.mix(light.middle, 0.08));
}

fn clouds(brush: &mut Brush, light: Light) {
    let ink = light
        .middle
        .mix(theme::CREAM, 0.10 + 0.35 * (1.0 - light.dark))
        .alpha(0.75);
    for (x, y, size) in [
        (150.0, 132.0, 1.0),
        (330.0, 96.0, 0.7),
        (930.0, 246.0, 0.8),
        (1080.0, 120.0, 1.1),
    ] {
        for (dx, dy, w, h) in [
            (-46.0, 4.0, 46.0, 10.0),
            (0.0, -6.0, 52.0, 17.0),
            (44.0, 3.0, 50.0, 11.0),
        ] {
            let at = Vec2::new(x + dx * size, y + dy * size);
            brush.ellipse(at, Vec2::new(w, h) * size, ink);
        }
    }
}

/// The clouds of a storm: two rows of them from side to side.
fn bank(brush: &mut Brush, light: Light) {
    let b = brush.frame().bounds();
    for (row, y, size) in [(0_u16, 196.0, 0.8), (1, 128.0, 1.2), (2, 62.0, 1.5)] {
        let ink = light.top.mix(light.middle, 0.55 - 0.25 * f32::from(row));
        for i in 0..14_u16 {
            let x = b.min.x + b.width() * (f32::from(i) + scatter(i + row * 5, 53, 97)) / 13.0;
            let dip = 26.0 * scatter(i + row * 3, 31, 89);
            let half = Vec2::new(92.0 + 40.0 * scatter(i, 17, 61), 34.0 + dip * 0.5);
            brush.ellipse(Vec2::new(x, y + dip), half * size, ink);
        }
        brush.rect(b.min.x, b.min.y, b.width(), y - b.min.y, ink);
    }
}

/// Rain, driven by the wind.
fn rain(brush: &mut Brush, light: Light) {
    let b = brush.frame().bounds();
    let ink = light.bottom.mix(theme::CREAM, 0.4).alpha(0.3);
    for i in 0..150_u16 {
        let from = Vec2::new(
            b.min.x + b.width() * scatter(i, 7919, 1000),
            210.0 + (GROUND - 240.0) * scatter(i, 104, 331),
        );
        let fall = Vec2::new(-7.0, 24.0);
        let side = Vec2::new(0.6, 0.0);
        brush.convex(
            &[
                from - side,
                from + side,
                from + fall + side,
                from + fall - side,
            ],
            ink,
        );
    }
}

fn ridge(brush: &mut Brush, base: f32, height: f32, step: f32, ink: theme::Ink) {
    let b = brush.frame().bounds();
    let mut points = vec![Vec2::new(b.min.x, GROUND)];
    for i in 0..=40_u8 {
        let x = b.min.x + b.width() * f32::from(i) / 40.0;
        let y = base - height * (x * step).sin() - height * 0.5 * (x * step * 2.3 + 1.0).sin();
        points.push(Vec2::new(x, y));
    }
    points.push(Vec2::new(b.max.x, GROUND));
    brush.fill(&points, ink);
}

fn trees(brush: &mut Brush, light: Light) {
    let leaf = theme::LEAF.mix(light.hill, 0.35 + 0.35 * light.dark);
    let trunk = theme::WOOD.mix(light.hill, 0.5 + 0.3 * light.dark);
    for (x, size) in [
        (14.0, 0.9),
        (118.0, 0.7),
        (436.0, 0.6),
        (900.0, 0.75),
        (948.0, 1.05),
        (1108.0, 0.9),
    ] {
        brush.rect(
            x - 3.0 * size,
            GROUND - 48.0 * size,
            6.0 * size,
            48.0 * size,
            trunk,
        );
        for (dx, dy, r) in [
            (-16.0, -58.0, 20.0),
            (14.0, -62.0, 22.0),
            (0.0, -84.0, 22.0),
        ] {
            brush.disk(Vec2::new(x + dx * size, GROUND + dy * size), r * size, leaf);
        }
    }
}

fn pebbles(brush: &mut Brush, light: Light) {
    let b = brush.frame().bounds();
    let ink = theme::FLOOR
        .mix(theme::SOIL, 0.8 + 0.1 * light.dark)
        .alpha(0.5);
    for i in 0..40_u16 {
        let x = b.min.x + b.width() * scatter(i, 617, 997);
        let y = GROUND + 26.0 + scatter(i, 389, 155) * 155.0;
        brush.ellipse(Vec2::new(x, y), Vec2::new(2.0 + f32::from(i % 4), 1.6), ink);
    }
}

/// A share from 0 to 1 that looks like chance and never changes.
fn scatter(index: u16, step: u32, modulo: u16) -> f32 {
    let rest = u32::from(index) * step % u32::from(modulo);
    u16::try_from(rest).map_or(0.0, f32::from) / f32::from(modulo)
}
