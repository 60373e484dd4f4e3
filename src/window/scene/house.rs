//! The house in section: walls, roof, cellar and garage, the wiring chase, where circuits end.
//!
//! It does not cover what is in the rooms: see [`super::inside`] and [`super::appliances`].

use bevy::math::Vec2;

use crate::session::view::{ApplianceKind, Building, Room, StreetView};
use crate::window::theme;
use crate::window::theme::Light;

use super::brush::Brush;
use super::plan::{GROUND, Plan};
use super::rooms::{
    CEILING, CELLAR_CEILING, CELLAR_FLOOR, FLOOR, House, LEFT, Mount, RIGHT, UPPER_FLOOR,
};
use super::sizes::Plate;
use super::street::outdoors;
use super::{hall, inside, openings, sizes};

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
    if house.building == Building::Hall {
        hall::roof(brush, street, house);
    }
    inside::rooms(brush, street, house);
    if house.building == Building::Hall {
        hall::room(brush, street, house);
    }
    let slab = theme::FLOOR.mix(theme::INK, 0.38);
    if house.building == Building::House {
        brush.rect(LEFT, UPPER_FLOOR, RIGHT - LEFT, CEILING - UPPER_FLOOR, slab);
    }
    brush.rect(LEFT, FLOOR, RIGHT - LEFT, CELLAR_CEILING - FLOOR, slab);
    let chase = theme::INK.mix(wall, 0.22);
    brush.rect(457.0, eaves, 22.0, CELLAR_CEILING - eaves, chase);
    openings::windows(brush, street, house, light);
    inside::furniture(brush, street, house);
    if house.right > RIGHT {
        openings::house_door(brush, street.house_door, wall);
    }
    outlets(brush, street, plan);
    entrance(brush, light);
}

/// How brightly a room is lit, 0 to 1: a lamp shines there, a screen glows, or light comes in from next door.
pub(super) fn lit(street: &StreetView, room: Room) -> f32 {
    let here = |kind| {
        let things = street.appliances.iter();
        things.filter(move |a| a.room == room && a.kind == kind)
    };
    let lamps = here(ApplianceKind::Lamp)
        .map(|a| a.glow)
        .fold(0.0, f32::max);
    let screen = here(ApplianceKind::Television).any(|a| theme::powered(a.state));
    // A hall is one room; a bathroom gets some light from next door.
    let next_door = if room == Room::Bathroom {
        lit(street, Room::Bedroom) * 0.35
    } else if room == Room::Kitchen && street.building == Building::Hall {
        lit(street, Room::Living)
    } else {
        0.0
    };
    let screen = if screen { 0.45 } else { 0.0 };
    lamps.max(screen).max(next_door)
}

fn roof(brush: &mut Brush, house: &House, light: Light) {
    let tile = outdoors(theme::ROOF, light);
    let eaves = house.eaves();
    let apex = Vec2::new(618.0, eaves - 114.0);
    let brick = outdoors(theme::CLOTH, light);
    if house.building == Building::House {
        brush.rect(692.0, eaves - 104.0, 24.0, 60.0, brick);
        for y in [eaves - 94.0, eaves - 84.0, eaves - 74.0] {
            let joint = [Vec2::new(692.0, y), Vec2::new(716.0, y)];
            brush.line(&joint, 1.0, brick.mix(theme::RUBBER, 0.25));
        }
        let cap = brick.mix(theme::RUBBER, 0.3);
        brush.rect(689.0, eaves - 108.0, 30.0, 6.0, cap);
    }
    brush.convex(
        &[
            Vec2::new(430.0, eaves + 4.0),
            apex,
            Vec2::new(806.0, eaves + 4.0),
        ],
        tile,
    );
    courses(brush, apex, eaves + 4.0, tile);
    brush.rect(430.0, eaves, 376.0, 7.0, tile.mix(theme::RUBBER, 0.35));
    downspout(brush, house, light);
    let head = house.weatherhead();
    brush.stroke(
        &[head + Vec2::new(0.0, 22.0), head - Vec2::Y * 6.0],
        5.0,
        theme::STEEL,
    );
    brush.disk(head - Vec2::new(3.0, 6.0), 6.0, theme::STEEL);
}

/// Courses of tiles, each a little apart from the next.
fn courses(brush: &mut Brush, apex: Vec2, low: f32, tile: theme::Ink) {
    const ROWS: u8 = 8;
    let joint = tile.mix(theme::RUBBER, 0.17);
    for i in 1..=ROWS {
        let t = f32::from(i) / f32::from(ROWS);
        let (y, half) = (apex.y + (low - apex.y) * t, 188.0 * t);
        if i < ROWS {
            let ends = [Vec2::new(apex.x - half, y), Vec2::new(apex.x + half, y)];
            brush.line(&ends, 1.0, joint);
        }
        let above = y - (low - apex.y) / f32::from(ROWS);
        let mut x = apex.x - half + if i % 2 == 0 { 14.0 } else { 25.0 };
        while x < apex.x + half - 12.0 {
            let narrow = (x - apex.x).abs() < half - 24.0;
            if narrow {
                brush.line(&[Vec2::new(x, above + 2.0), Vec2::new(x, y)], 1.0, joint);
            }
            x += 22.0;
        }
    }
    // A ridge of light along both edges.
    let edge = tile.mix(theme::CREAM, 0.1);
    let ends = [
        Vec2::new(apex.x - 188.0, low),
        apex,
        Vec2::new(apex.x + 188.0, low),
    ];
    brush.stroke(&ends, 3.0, edge);
}

/// From the gutter down the outer wall.
fn downspout(brush: &mut Brush, house: &House, light: Light) {
    let steel = outdoors(theme::STEEL, light).mix(theme::INK, 0.25);
    let low = if house.right > RIGHT {
        398.0
    } else {
        GROUND - 2.0
    };
    let pipe = [
        Vec2::new(796.0, house.eaves() + 6.0),
        Vec2::new(796.0, house.eaves() + 11.0),
        Vec2::new(RIGHT + 3.0, house.eaves() + 20.0),
        Vec2::new(RIGHT + 3.0, low),
    ];
    brush.stroke(&pipe, 3.4, steel);
}

fn cellar(brush: &mut Brush, street: &StreetView, plan: &Plan) {
    let brightness = lit(street, Room::Basement);
    let wall = theme::STEEL.mix(theme::SOIL, 0.55);
    brush.rect(
        LEFT,
        GROUND,
        RIGHT - LEFT,
        CELLAR_FLOOR + 12.0 - GROUND,
        wall,
    );
    let ink = theme::CELLAR_DARK.mix(theme::CELLAR_LIT, brightness);
    let [left, right] = [466.0, RIGHT - 9.0];
    brush.shade(
        [
            Vec2::new(left, CELLAR_CEILING),
            Vec2::new(right, CELLAR_CEILING),
            Vec2::new(right, CELLAR_FLOOR),
            Vec2::new(left, CELLAR_FLOOR),
        ],
        ink.mix(theme::CREAM, 0.05),
        ink.mix(theme::INK, 0.12),
    );
    inside::cellar(brush, ink, &plan.house);
    // A sump pit goes below the floor.
    for spot in plan.house.spots.values().filter(|s| s.mount == Mount::Pit) {
        let width = 42.0 * spot.scale;
        let depth = 34.0 * spot.scale;
        brush.rect(
            spot.at.x - width / 2.0,
            CELLAR_FLOOR - 2.0,
            width,
            depth,
            wall,
        );
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
    openings::big_door(brush, street.garage_door, house, (ink, light));
}

/// Where circuits end: outlets on the walls, boxes at what is wired for good.
fn outlets(brush: &mut Brush, street: &StreetView, plan: &Plan) {
    for outlet in &street.outlets {
        for end in sizes::ends(street, plan, outlet) {
            let at = end.at;
            let corner = |half: Vec2| (at - half, half * 2.0);
            match end.plate {
                Plate::Outlet => {
                    let (corner, size) = corner(Vec2::new(3.5, 5.0));
                    brush.round_rect(corner, size, 2.0, theme::ENAMEL);
                    for dy in [-2.0, 2.0] {
                        brush.disk(at + Vec2::Y * dy, 1.1, theme::RUBBER);
                    }
                }
                Plate::Box => {
                    let (corner, size) = corner(Vec2::new(4.5, 3.5));
                    brush.round_rect(corner, size, 1.5, theme::STEEL);
                }
                Plate::None => {}
            }
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
