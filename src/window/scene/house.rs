//! The house in section: rooms that are lit or dark, the wiring chase, the panel on the cellar wall.
//!
//! It does not cover the things in the rooms: see [`super::appliances`].

use bevy::math::Vec2;

use crate::session::view::{ApplianceKind, ApplianceView, Room, StreetView};
use crate::window::theme;
use crate::window::theme::Light;

use super::brush::Brush;
use super::plan::{GROUND, Plan};
use super::rooms::{CEILING, COUNTER, FLOOR, House, LEFT, Mount, RIGHT, UPPER_FLOOR};
use super::street::outdoors;

/// Paints the house.
pub(super) fn paint(brush: &mut Brush, street: &StreetView, plan: &Plan, light: Light) {
    let house = &plan.house;
    let wall = outdoors(theme::PLASTER, light);
    if house.right > RIGHT {
        garage(brush, street, house, light);
    }
    cellar(brush, street, plan);
    let eaves = house.eaves();
    brush.rect(LEFT, eaves, RIGHT - LEFT, GROUND - eaves, wall);
    roof(brush, house, light);
    for chamber in &house.chambers {
        let brightness = lit(street, chamber.room);
        match chamber.room {
            Room::Garage | Room::Basement | Room::Outside => {}
            Room::Kitchen | Room::Living | Room::Bedroom | Room::Bathroom => {
                let size = chamber.rect.size();
                room(
                    brush,
                    [chamber.rect.min.x, chamber.rect.min.y, size.x, size.y],
                    brightness,
                );
            }
        }
    }
    for y in [UPPER_FLOOR, FLOOR] {
        let slab = theme::FLOOR.mix(theme::INK, 0.25);
        brush.rect(LEFT, y, RIGHT - LEFT, CEILING - UPPER_FLOOR, slab);
    }
    let chase = theme::INK.mix(wall, 0.22);
    brush.rect(457.0, eaves, 22.0, FLOOR - eaves, chase);
    windows(brush, street, house, light);
    furniture(brush, street, house);
    outlets(brush, street, plan);
    entrance(brush, light);
}

/// How brightly a room is lit, 0 to 1: a lamp there is on, a screen glows, or light comes in from next door.
fn lit(street: &StreetView, room: Room) -> f32 {
    let here = |kind| {
        let mut things = street.appliances.iter();
        things.any(|a| a.room == room && a.kind == kind && lamp_on(a))
    };
    if here(ApplianceKind::Lamp) {
        1.0
    } else if here(ApplianceKind::Television) {
        0.45
    } else if room == Room::Bathroom {
        lit(street, Room::Bedroom) * 0.35
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

fn roof(brush: &mut Brush, house: &House, light: Light) {
    let tile = outdoors(theme::ROOF, light);
    let eaves = house.eaves();
    let apex = Vec2::new(618.0, eaves - 114.0);
    brush.rect(
        692.0,
        eaves - 104.0,
        24.0,
        60.0,
        outdoors(theme::CLOTH, light),
    );
    brush.convex(
        &[
            Vec2::new(430.0, eaves + 4.0),
            apex,
            Vec2::new(806.0, eaves + 4.0),
        ],
        tile,
    );
    for i in 1..5_u8 {
        let t = f32::from(i) / 5.0;
        let y = apex.y + (eaves + 4.0 - apex.y) * t;
        let half = 188.0 * t;
        brush.line(
            &[Vec2::new(618.0 - half, y), Vec2::new(618.0 + half, y)],
            1.0,
            tile.mix(theme::RUBBER, 0.22),
        );
    }
    brush.rect(430.0, eaves, 376.0, 7.0, tile.mix(theme::RUBBER, 0.35));
    let head = house.weatherhead();
    brush.stroke(
        &[head + Vec2::new(0.0, 22.0), head - Vec2::Y * 6.0],
        5.0,
        theme::STEEL,
    );
    brush.disk(head - Vec2::new(3.0, 6.0), 6.0, theme::STEEL);
}

fn cellar(brush: &mut Brush, street: &StreetView, plan: &Plan) {
    let brightness = lit(street, Room::Basement);
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
    // A sump pit goes below the floor.
    for spot in plan.house.spots.values().filter(|s| s.mount == Mount::Pit) {
        let width = 42.0 * spot.scale;
        let depth = 34.0 * spot.scale;
        brush.rect(spot.at.x - width / 2.0, 650.0, width, depth, wall);
    }
}

fn garage(brush: &mut Brush, street: &StreetView, house: &House, light: Light) {
    let wall = outdoors(theme::PLASTER, light).mix(light.hill, 0.06);
    let width = house.right - RIGHT;
    brush.rect(RIGHT, 432.0, width, GROUND - 432.0, wall);
    let overhang = house.right + 12.0;
    brush.convex(
        &[
            Vec2::new(RIGHT, 396.0),
            Vec2::new(overhang, 428.0),
            Vec2::new(overhang, 436.0),
            Vec2::new(RIGHT, 436.0),
        ],
        outdoors(theme::ROOF, light),
    );
    let brightness = lit(street, Room::Garage);
    let ink = theme::CELLAR_DARK.mix(theme::CELLAR_LIT, brightness);
    brush.rect(787.0, 440.0, width - 14.0, 80.0, ink);
    brush.rect(
        RIGHT,
        FLOOR,
        width,
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

fn windows(brush: &mut Brush, street: &StreetView, house: &House, light: Light) {
    let night = light.middle.mix(light.bottom, 0.5);
    let frame = theme::ENAMEL.mix(theme::ROOM_DARK, 0.3);
    for (x, y, w, h) in [
        (498.0, 296.0, 34.0, 40.0),
        (718.0, 296.0, 34.0, 40.0),
        (700.0, 424.0, 40.0, 40.0),
    ] {
        if y < UPPER_FLOOR && !house.upper {
            continue;
        }
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

/// What only furnishes a room stands where its things leave room.
fn furniture(brush: &mut Brush, street: &StreetView, house: &House) {
    let dim = |ink: theme::Ink, room: Room| {
        ink.mix(theme::ROOM_DARK, 0.45 * (1.0 - lit(street, room).min(1.0)))
    };
    let free = |room: Room, width: f32| {
        let (left, right) = house.free.get(&room).copied()?;
        (right - left >= width).then_some((left, right))
    };
    if let Some((_, right)) = free(Room::Bedroom, 74.0) {
        bed(brush, right - 70.0, &|ink| dim(ink, Room::Bedroom));
    }
    if let Some((left, right)) = free(Room::Living, 60.0) {
        let sofa = dim(theme::SOFA, Room::Living);
        let width = (right - left - 4.0).min(90.0);
        brush.round_rect(
            Vec2::new(left + 6.0, 474.0),
            Vec2::new(width - 8.0, 26.0),
            8.0,
            sofa.mix(theme::CREAM, 0.18),
        );
        brush.round_rect(
            Vec2::new(left + 2.0, 492.0),
            Vec2::new(width, 24.0),
            8.0,
            sofa,
        );
    }
    if let Some((_, right)) = free(Room::Bathroom, 72.0) {
        let tub = dim(theme::ENAMEL, Room::Bathroom);
        brush.round_rect(
            Vec2::new(right - 66.0, 352.0),
            Vec2::new(64.0, 26.0),
            9.0,
            tub,
        );
        brush.rect(
            right - 68.0,
            350.0,
            68.0,
            5.0,
            tub.mix(theme::ENAMEL_LINE, 0.4),
        );
    }
    for (left, right, floor) in &house.counters {
        let kitchen = *floor >= FLOOR - 1.0 && *left < 628.0;
        let room = if kitchen { Room::Kitchen } else { Room::Living };
        counter(brush, (*left, *right), *floor, &|ink| dim(ink, room));
    }
    if let Some((left, right)) = free(Room::Kitchen, 26.0) {
        counter(brush, (left - 4.0, right + 4.0), FLOOR, &|ink| {
            dim(ink, Room::Kitchen)
        });
    }
}

fn bed(brush: &mut Brush, x: f32, dim: &dyn Fn(theme::Ink) -> theme::Ink) {
    let quilt = dim(theme::BLUE.mix(theme::CREAM, 0.45));
    brush.round_rect(Vec2::new(x + 2.0, 352.0), Vec2::new(66.0, 18.0), 5.0, quilt);
    brush.round_rect(
        Vec2::new(x + 48.0, 344.0),
        Vec2::new(20.0, 11.0),
        5.0,
        dim(theme::CREAM),
    );
    brush.rect(x, 366.0, 70.0, 8.0, dim(theme::WOOD));
    for leg in [2.0, 64.0] {
        brush.rect(x + leg, 374.0, 4.0, 8.0, dim(theme::WOOD));
    }
}

fn counter(
    brush: &mut Brush,
    (left, right): (f32, f32),
    floor: f32,
    dim: &dyn Fn(theme::Ink) -> theme::Ink,
) {
    let top = floor - COUNTER;
    brush.rect(
        left,
        top + 5.0,
        right - left,
        COUNTER - 9.0,
        dim(theme::WOOD),
    );
    brush.rect(left, top, right - left, 6.0, dim(theme::CREAM));
    let middle = left.midpoint(right);
    brush.line(
        &[Vec2::new(middle, top + 7.0), Vec2::new(middle, floor - 4.0)],
        1.2,
        dim(theme::RUBBER).alpha(0.5),
    );
}

/// Outlets that nothing stands before.
fn outlets(brush: &mut Brush, street: &StreetView, plan: &Plan) {
    let empty = street.outlets.iter().filter(|o| o.appliances.is_empty());
    for at in empty.filter_map(|o| plan.anchors.get(&o.id)) {
        brush.round_rect(
            *at - Vec2::new(3.5, 5.0),
            Vec2::new(7.0, 10.0),
            2.0,
            theme::ENAMEL,
        );
        for dy in [-2.0, 2.0] {
            brush.disk(*at + Vec2::Y * dy, 1.1, theme::RUBBER);
        }
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
