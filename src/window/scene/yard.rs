//! The yard: patio, fence, shed, the generator where it stands and its gas.
//!
//! The engine's housing is our own plain shape and of no maker's product.
//! It does not cover wind.

use bevy::math::Vec2;

use crate::session::view::{GeneratorForm, GeneratorView, Room, StreetView};
use crate::window::theme;
use crate::window::theme::Light;

use super::brush::Brush;
use super::measure;
use super::plan::{GROUND, Plan};
use super::rooms::SHED;
use super::street::outdoors;

/// Paints the yard behind the generator.
pub(super) fn paint(brush: &mut Brush, plan: &Plan, light: Light) {
    let house = &plan.house;
    let stone = outdoors(theme::STEEL, light).mix(theme::SOIL, 0.35);
    fence(brush, house.right + 30.0, light);
    for i in 0..3_u8 {
        let x = house.right + 8.0 + 21.0 * f32::from(i);
        brush.rect(x, GROUND - 4.0, 20.0, 7.0, stone);
    }
    if house.shed {
        shed(brush, light);
    }
    for at in plan.inlets.values() {
        inlet(brush, *at, light);
    }
    measure::bar(brush, plan);
}

/// A low fence at the far end of the yard.
fn fence(brush: &mut Brush, from: f32, light: Light) {
    let wood = outdoors(theme::WOOD, light).mix(light.hill, 0.62);
    let end = brush.frame().bounds().max.x;
    for dy in [24.0, 11.0] {
        brush.rect(from, GROUND - dy, (end - from).max(0.0), 2.6, wood);
    }
    let mut x = from;
    while x < end {
        let picket = [
            Vec2::new(x, GROUND),
            Vec2::new(x, GROUND - 28.0),
            Vec2::new(x + 2.6, GROUND - 31.0),
            Vec2::new(x + 5.2, GROUND - 28.0),
            Vec2::new(x + 5.2, GROUND),
        ];
        brush.convex(&picket, wood);
        x += 12.0;
    }
}

fn shed(brush: &mut Brush, light: Light) {
    let wood = outdoors(theme::WOOD, light).mix(light.hill, 0.15);
    let shade = wood.mix(theme::RUBBER, 0.35);
    brush.rect(SHED + 4.0, GROUND - 84.0, 58.0, 84.0, wood);
    for i in 0..5_u8 {
        let x = SHED + 14.0 + f32::from(i) * 10.5;
        brush.line(
            &[Vec2::new(x, GROUND - 84.0), Vec2::new(x, GROUND)],
            1.0,
            shade,
        );
    }
    brush.convex(
        &[
            Vec2::new(SHED - 4.0, GROUND - 82.0),
            Vec2::new(SHED + 33.0, GROUND - 116.0),
            Vec2::new(SHED + 70.0, GROUND - 82.0),
        ],
        outdoors(theme::ROOF, light).mix(theme::WOOD, 0.4),
    );
    let door = wood.mix(theme::RUBBER, 0.45);
    brush.rect(SHED + 14.0, GROUND - 62.0, 36.0, 62.0, door);
    brush.rect(SHED + 12.0, GROUND - 65.0, 40.0, 3.5, shade);
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
        let inside = at.x < plan.house.right;
        // Outdoors they drift away from the house; under a roof they rise and stay.
        let drift = if inside { -1.4 } else { 1.0 };
        let muffler = at + Vec2::new(if inside { 34.0 } else { 44.0 }, -32.0);
        brush.moving(true, |brush| fumes(brush, muffler, (turn, drift)));
    }
}

/// The gas of an engine that runs in the garage: it fills the room from its ceiling down.
pub(super) fn haze(brush: &mut Brush, street: &StreetView, plan: &Plan) {
    let g = &street.generator;
    let here = g.stands.iter().find(|stand| stand.id == g.place);
    if !g.running || here.is_none_or(|stand| stand.room != Room::Garage) {
        return;
    }
    let Some(garage) = plan.house.chamber(Room::Garage) else {
        return;
    };
    let (low, thick) = (theme::MUTED.alpha(0.1), theme::MUTED.alpha(0.55));
    let corners = [
        garage.max,
        Vec2::new(garage.min.x, garage.max.y),
        garage.min,
        Vec2::new(garage.max.x, garage.min.y),
    ];
    brush.shade(corners, low, thick);
    let width = garage.width();
    for (share, dy, size) in [(0.18, 13.0, 1.0), (0.5, 18.0, 1.25), (0.82, 12.0, 1.0)] {
        let at = garage.min + Vec2::new(width * share, dy);
        let half = Vec2::new(width * 0.2, 9.0) * size;
        brush.ellipse(at, half, theme::MUTED.alpha(0.4));
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

fn fumes(brush: &mut Brush, at: Vec2, (turn, way): (f32, f32)) {
    for i in 0..3_u8 {
        let t = (turn * 0.5 + f32::from(i) / 3.0).fract();
        let drift = at
            + Vec2::new(
                (8.0 + 26.0 * t) * way,
                -22.0 * t + (turn + f32::from(i)).sin() * 2.0,
            );
        brush.disk(drift, 4.0 + 7.0 * t, theme::MUTED.alpha(0.34 * (1.0 - t)));
    }
}
