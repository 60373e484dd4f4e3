//! The yard: garage front, patio, shed, the generator where it stands, the distance to the nearest opening.
//!
//! The engine's housing is our own plain shape and of no maker's product.
//! It does not cover wind.

use bevy::math::Vec2;

use crate::session::view::{GeneratorForm, GeneratorView, StreetView};
use crate::window::theme;
use crate::window::theme::Light;

use super::brush::Brush;
use super::plan::{GROUND, Plan};
use super::street::outdoors;

/// Paints the yard behind the generator.
pub(super) fn paint(brush: &mut Brush, plan: &Plan, light: Light) {
    let house = &plan.house;
    let stone = outdoors(theme::STEEL, light).mix(theme::SOIL, 0.35);
    brush.rect(house.right + 8.0, GROUND - 4.0, 62.0, 8.0, stone);
    if house.shed {
        shed(brush, light);
    }
    for at in plan.inlets.values() {
        inlet(brush, *at, light);
    }
}

fn shed(brush: &mut Brush, light: Light) {
    let wood = outdoors(theme::WOOD, light).mix(light.hill, 0.15);
    brush.rect(1052.0, GROUND - 84.0, 62.0, 84.0, wood);
    for i in 0..5_u8 {
        let x = 1062.0 + f32::from(i) * 11.0;
        brush.line(
            &[Vec2::new(x, GROUND - 84.0), Vec2::new(x, GROUND)],
            1.0,
            wood.mix(theme::RUBBER, 0.35),
        );
    }
    brush.convex(
        &[
            Vec2::new(1044.0, GROUND - 82.0),
            Vec2::new(1083.0, GROUND - 116.0),
            Vec2::new(1122.0, GROUND - 82.0),
        ],
        outdoors(theme::ROOF, light).mix(theme::WOOD, 0.4),
    );
    brush.rect(
        1066.0,
        GROUND - 62.0,
        34.0,
        62.0,
        wood.mix(theme::RUBBER, 0.45),
    );
}

fn inlet(brush: &mut Brush, at: Vec2, light: Light) {
    let box_ink = outdoors(theme::STEEL, light);
    brush.round_rect(
        at + Vec2::new(-5.0, -13.0),
        Vec2::new(16.0, 26.0),
        3.0,
        box_ink,
    );
    brush.disk(at + Vec2::new(4.0, 0.0), 5.0, theme::RUBBER);
    brush.ring(at + Vec2::new(4.0, 0.0), 5.0, 1.6, theme::PORCELAIN);
}

/// Paints the generator and its fumes; `turn` goes round with the engine.
pub(super) fn generator(brush: &mut Brush, street: &StreetView, plan: &Plan, turn: f32) {
    let g = &street.generator;
    let at = plan.generator;
    match g.form {
        GeneratorForm::Portable => {
            portable(brush, g, at);
            let shake = if g.running {
                (turn * 19.0).sin() * 0.8
            } else {
                0.0
            };
            brush.moving(g.running, |brush| engine(brush, at + Vec2::Y * shake));
        }
        GeneratorForm::Inverter => {
            if let Some(runs) = g.second {
                let second = GeneratorView {
                    running: runs,
                    ..g.clone()
                };
                suitcase(brush, &second, at - Vec2::X * 72.0);
            }
            suitcase(brush, g, at);
        }
        GeneratorForm::Standby => cabinet(brush, g, at),
    }
    if g.running {
        let muffler = at + Vec2::new(44.0, -32.0);
        brush.moving(true, |brush| fumes(brush, muffler, turn));
    }
    let stored = g.stands.iter().any(|s| s.id == g.place && s.store);
    if g.opening_ft > 0.0 && !stored {
        distance(brush, plan.house.right + 8.0, at.x - 34.0);
    }
}

/// What shakes when it runs: the engine with its fins, the starter's cord and the muffler.
fn engine(brush: &mut Brush, at: Vec2) {
    let p = |x: f32, y: f32| at + Vec2::new(x, y);
    let tube = theme::ENGINE.mix(theme::RUBBER, 0.4);
    let block = theme::ENGINE.mix(theme::RUBBER, 0.18);
    brush.round_rect(p(0.0, -43.0), Vec2::new(30.0, 30.0), 3.0, block);
    for y in [-40.0, -36.0] {
        brush.rect(at.x + 3.0, at.y + y, 24.0, 1.8, tube);
    }
    brush.disk(p(15.0, -22.5), 8.5, tube);
    brush.ring(p(15.0, -22.5), 5.0, 1.4, theme::STEEL);
    brush.rect(at.x + 12.0, at.y - 16.0, 6.0, 2.6, theme::CREAM);
    brush.stroke(&[p(30.0, -36.0), p(41.0, -36.0)], 5.0, theme::STEEL);
}

/// An open frame of tube around tank, engine and sockets, on one pair of wheels and a foot.
fn portable(brush: &mut Brush, g: &GeneratorView, at: Vec2) {
    let p = |x: f32, y: f32| at + Vec2::new(x, y);
    let housing = theme::ENGINE;
    let tube = housing.mix(theme::RUBBER, 0.4);
    brush.disk(at + Vec2::new(-22.0, -9.0), 9.0, theme::RUBBER);
    brush.disk(at + Vec2::new(-22.0, -9.0), 3.5, theme::STEEL);
    brush.rect(at.x + 20.0, at.y - 12.0, 7.0, 12.0, theme::RUBBER);
    // The panel: a gauge, a lamp and two outlets.
    brush.round_rect(p(-29.0, -44.0), Vec2::new(27.0, 32.0), 3.0, theme::INK);
    gauge(brush, p(-17.5, -33.0), g.load, g.running);
    let lamp = if g.running {
        theme::YELLOW
    } else {
        theme::HAIRLINE
    };
    brush.disk(p(-5.5, -40.0), 1.8, lamp);
    for x in [-26.0, -14.0] {
        brush.round_rect(p(x, -20.5), Vec2::new(9.0, 6.5), 2.0, theme::PORCELAIN);
        for slot in [2.5, 5.5] {
            brush.rect(at.x + x + slot, at.y - 19.0, 1.2, 3.2, theme::INK);
        }
    }
    // The tank with its cap, and the frame over all.
    let tank = theme::CLOTH.mix(theme::ENGINE, 0.25);
    brush.rect(at.x + 6.0, at.y - 63.0, 10.0, 5.0, theme::RUBBER);
    brush.round_rect(p(-27.0, -59.0), Vec2::new(54.0, 14.0), 5.0, tank);
    let frame = [
        p(-33.0, -11.0),
        p(-33.0, -57.0),
        p(-28.0, -62.0),
        p(28.0, -62.0),
        p(33.0, -57.0),
        p(33.0, -11.0),
    ];
    brush.stroke(&frame, 3.6, tube);
    brush.stroke(&[p(-34.5, -11.0), p(34.5, -11.0)], 3.6, tube);
    brush.stroke(&[p(33.0, -48.0), p(44.0, -48.0), p(47.0, -45.0)], 3.0, tube);
}

/// A case with a handle: an inverter generator.
fn suitcase(brush: &mut Brush, g: &GeneratorView, at: Vec2) {
    let p = |x: f32, y: f32| at + Vec2::new(x, y);
    let housing = theme::CLOTH.mix(theme::ENGINE, 0.45);
    brush.stroke(
        &[
            p(-16.0, -40.0),
            p(-14.0, -49.0),
            p(14.0, -49.0),
            p(16.0, -40.0),
        ],
        5.0,
        housing.mix(theme::RUBBER, 0.45),
    );
    for dx in [-18.0, 12.0] {
        brush.rect(at.x + dx, at.y - 5.0, 7.0, 5.0, theme::RUBBER);
    }
    brush.round_rect(p(-25.0, -42.0), Vec2::new(50.0, 38.0), 11.0, housing);
    brush.round_rect(p(-20.0, -34.0), Vec2::new(22.0, 24.0), 4.0, theme::INK);
    for (i, dy) in [-28.0, -20.0].into_iter().enumerate() {
        let lamp = if g.running && i == 0 {
            theme::YELLOW
        } else {
            theme::HAIRLINE
        };
        brush.disk(p(-15.0, dy), 2.4, lamp);
        brush.disk(p(-6.0, dy), 3.0, theme::ENGINE);
    }
    gauge(brush, p(13.0, -24.0), g.load, g.running);
    brush.stroke(&[p(25.0, -22.0), p(33.0, -22.0)], 5.0, theme::STEEL);
}

/// A cabinet on a pad: a standby set, which stays where it is.
fn cabinet(brush: &mut Brush, g: &GeneratorView, at: Vec2) {
    let p = |x: f32, y: f32| at + Vec2::new(x, y);
    brush.rect(
        at.x - 44.0,
        at.y - 5.0,
        88.0,
        7.0,
        theme::STEEL.mix(theme::SOIL, 0.4),
    );
    let housing = theme::ENAMEL.mix(theme::ENGINE, 0.35);
    brush.round_rect(p(-40.0, -56.0), Vec2::new(80.0, 51.0), 5.0, housing);
    brush.rect(
        at.x - 42.0,
        at.y - 60.0,
        84.0,
        7.0,
        housing.mix(theme::RUBBER, 0.3),
    );
    for i in 0..5_u8 {
        let y = at.y - 44.0 + 6.0 * f32::from(i);
        brush.rect(at.x + 8.0, y, 26.0, 2.5, theme::RUBBER);
    }
    brush.round_rect(p(-34.0, -46.0), Vec2::new(30.0, 26.0), 3.0, theme::INK);
    let lamp = if g.running {
        theme::YELLOW
    } else {
        theme::HAIRLINE
    };
    brush.disk(p(-28.0, -40.0), 2.6, lamp);
    gauge(brush, p(-17.0, -30.0), g.load, g.running);
    brush.stroke(&[p(38.0, -18.0), p(46.0, -18.0)], 6.0, theme::STEEL);
}

/// Load against rating: a needle on an arc that ends at the rating.
fn gauge(brush: &mut Brush, at: Vec2, load: f32, running: bool) {
    brush.disk(at, 11.0, theme::CREAM);
    let arc = |from: f32, to: f32| -> Vec<Vec2> {
        (0..=8_u8)
            .map(|i| {
                let angle = (from + (to - from) * f32::from(i) / 8.0).to_radians();
                at + Vec2::from_angle(angle) * 8.0
            })
            .collect()
    };
    brush.stroke(&arc(180.0, 320.0), 2.0, theme::ENAMEL_LINE);
    brush.stroke(&arc(320.0, 360.0), 3.5, theme::VERMILION);
    let share = if running { load.clamp(0.0, 1.25) } else { 0.0 };
    let angle = (180.0 + share * 140.0).to_radians();
    brush.stroke(
        &[at, at + Vec2::from_angle(angle) * 8.5],
        2.0,
        theme::RUBBER,
    );
}

fn fumes(brush: &mut Brush, at: Vec2, turn: f32) {
    for i in 0..3_u8 {
        let t = (turn * 0.5 + f32::from(i) / 3.0).fract();
        let drift = at
            + Vec2::new(
                8.0 + 26.0 * t,
                -22.0 * t + (turn + f32::from(i)).sin() * 2.0,
            );
        brush.disk(drift, 4.0 + 7.0 * t, theme::MUTED.alpha(0.34 * (1.0 - t)));
    }
}

fn distance(brush: &mut Brush, from: f32, to: f32) {
    if to - from < 12.0 {
        return;
    }
    let y = GROUND + 24.0;
    let ink = theme::CREAM;
    brush.line(&[Vec2::new(from, y), Vec2::new(to, y)], 2.0, ink);
    for x in [from, to] {
        brush.line(&[Vec2::new(x, y - 6.0), Vec2::new(x, y + 6.0)], 2.0, ink);
    }
}
