//! What furnishes rooms without using power: walls and what hangs on them, furniture where things leave room.
//!
//! Calm and low in contrast: wires, people and what has power are seen first.
//! All of it stands still. It does not cover windows and doors: see [`super::openings`].

use bevy::math::{Rect, Vec2};

use crate::session::view::{Building, Room, StreetView};
use crate::window::theme;
use crate::window::theme::Ink;

use super::brush::Brush;
use super::house::lit;
use super::rooms::{CELLAR_CEILING, CELLAR_FLOOR, COUNTER, Chamber, FLOOR, House, RIGHT};

/// A room with its light.
#[derive(Clone, Copy)]
struct Inside {
    rect: Rect,
    wall: Ink,
    bright: f32,
}

impl Inside {
    fn of(street: &StreetView, chamber: &Chamber) -> Self {
        let bright = lit(street, chamber.room);
        Self {
            rect: chamber.rect,
            wall: theme::ROOM_DARK.mix(theme::ROOM_LIT, bright),
            bright,
        }
    }

    /// A color on the wall: only a little of it.
    fn tone(&self, ink: Ink, share: f32) -> Ink {
        self.wall.mix(ink, share)
    }

    /// The color of a thing in the light of the room.
    fn dim(&self, ink: Ink) -> Ink {
        ink.mix(theme::ROOM_DARK, 0.5 * (1.0 - self.bright.min(1.0)))
    }

    /// A rectangle on the wall.
    fn on_wall(&self, brush: &mut Brush, [x, y, w, h]: [f32; 4], ink: Ink, share: f32) {
        brush.rect(x, y, w, h, self.tone(ink, share));
    }
}

/// Paints the rooms of a house.
pub(super) fn rooms(brush: &mut Brush, street: &StreetView, house: &House) {
    for chamber in &house.chambers {
        let inside = Inside::of(street, chamber);
        let hall = house.building == Building::Hall;
        match chamber.room {
            Room::Garage | Room::Basement | Room::Outside => continue,
            Room::Kitchen | Room::Living | Room::Bedroom | Room::Bathroom => {
                wall(brush, inside);
            }
        }
        match chamber.room {
            Room::Kitchen => kitchen(brush, inside),
            Room::Living if !hall => living(brush, inside),
            Room::Bedroom => bedroom(brush, inside),
            Room::Bathroom => bathroom(brush, inside),
            Room::Living | Room::Garage | Room::Basement | Room::Outside => {}
        }
    }
}

/// A wall with its base, and the floor's edge.
fn wall(brush: &mut Brush, inside: Inside) {
    let Rect { min, max } = inside.rect;
    let ink = inside.wall;
    brush.shade(
        [min, Vec2::new(max.x, min.y), max, Vec2::new(min.x, max.y)],
        ink.mix(theme::CREAM, 0.06 * inside.bright),
        ink.mix(theme::FLOOR, 0.2),
    );
    let width = max.x - min.x;
    brush.rect(min.x, max.y - 9.0, width, 5.0, ink.mix(theme::ENAMEL, 0.16));
    brush.rect(min.x, max.y - 4.0, width, 4.0, ink.mix(theme::WOOD, 0.5));
}

/// Tiles behind the counter, a cupboard over it, a towel.
fn kitchen(brush: &mut Brush, inside: Inside) {
    let (left, right) = (inside.rect.min.x + 2.0, inside.rect.max.x - 2.0);
    let (top, low) = (FLOOR - COUNTER - 33.0, FLOOR - COUNTER);
    inside.on_wall(
        brush,
        [left, top, right - left, low - top],
        theme::PORCELAIN,
        0.22,
    );
    let joint = inside.tone(theme::STEEL, 0.34);
    for row in [top, top + 11.0, top + 22.0] {
        brush.line(&[Vec2::new(left, row), Vec2::new(right, row)], 1.0, joint);
    }
    let mut across = left + 6.0;
    while across < right {
        brush.line(
            &[Vec2::new(across, top), Vec2::new(across, low)],
            1.0,
            joint,
        );
        across += 13.0;
    }
    let cupboard = [right - 46.0, inside.rect.min.y + 6.0, 44.0, 28.0];
    inside.on_wall(brush, cupboard, theme::WOOD, 0.42);
    let [x, y, w, h] = cupboard;
    for dx in [2.0, w / 2.0 + 1.0] {
        inside.on_wall(
            brush,
            [x + dx, y + 2.0, w / 2.0 - 3.0, h - 4.0],
            theme::WOOD,
            0.3,
        );
    }
    for dx in [-4.0, 3.0] {
        brush.disk(
            Vec2::new(x + w / 2.0 + dx, y + h - 7.0),
            1.0,
            inside.tone(theme::RUBBER, 0.5),
        );
    }
}

/// A picture, a shelf with books, a rug.
fn living(brush: &mut Brush, inside: Inside) {
    let left = inside.rect.min.x;
    picture(
        brush,
        inside,
        Vec2::new(left + 14.0, 414.0),
        Vec2::new(30.0, 22.0),
    );
    let shelf = left + 12.0;
    inside.on_wall(brush, [shelf, 460.0, 44.0, 2.6], theme::WOOD, 0.55);
    let books: [(f32, f32, Ink); 6] = [
        (3.0, 11.0, theme::SOFA),
        (8.0, 13.0, theme::CLOTH),
        (13.5, 10.0, theme::LEAF),
        (19.0, 12.0, theme::WOOD),
        (24.0, 11.0, theme::SOFA),
        (36.0, 8.0, theme::CLOTH),
    ];
    for (dx, high, ink) in books {
        inside.on_wall(brush, [shelf + dx, 460.0 - high, 4.4, high], ink, 0.42);
    }
    let rug = inside.dim(theme::CLOTH).mix(inside.wall, 0.45);
    brush.ellipse(
        Vec2::new(left + 52.0, FLOOR - 2.0),
        Vec2::new(50.0, 2.6),
        rug,
    );
}

fn picture(brush: &mut Brush, inside: Inside, at: Vec2, size: Vec2) {
    inside.on_wall(
        brush,
        [at.x - 1.8, at.y - 1.8, size.x + 3.6, size.y + 3.6],
        theme::WOOD,
        0.5,
    );
    inside.on_wall(brush, [at.x, at.y, size.x, size.y], theme::SOFA, 0.3);
    let low = at + Vec2::new(0.0, size.y);
    let hill = [
        low,
        low - Vec2::new(-size.x * 0.3, size.y * 0.5),
        low - Vec2::new(-size.x * 0.55, size.y * 0.22),
        low - Vec2::new(-size.x * 0.8, size.y * 0.4),
        low + Vec2::new(size.x, 0.0),
    ];
    brush.fill(&hill, inside.tone(theme::LEAF, 0.4));
}

/// A picture and a rug.
fn bedroom(brush: &mut Brush, inside: Inside) {
    picture(
        brush,
        inside,
        Vec2::new(inside.rect.max.x - 46.0, inside.rect.min.y + 28.0),
        Vec2::new(28.0, 18.0),
    );
    let rug = inside.dim(theme::SOFA).mix(inside.wall, 0.5);
    let at = Vec2::new(inside.rect.max.x - 46.0, inside.rect.max.y - 2.0);
    brush.ellipse(at, Vec2::new(46.0, 2.4), rug);
}

/// Tiles half-way up, a mirror over a basin, a towel on its rail.
fn bathroom(brush: &mut Brush, inside: Inside) {
    let Rect { min, max } = inside.rect;
    let top = min.y + 58.0;
    let low = max.y - 9.0;
    inside.on_wall(
        brush,
        [min.x, top, max.x - min.x, low - top],
        theme::PORCELAIN,
        0.2,
    );
    let joint = inside.tone(theme::STEEL, 0.3);
    let mut y = top;
    while y < low {
        brush.line(&[Vec2::new(min.x, y), Vec2::new(max.x, y)], 1.0, joint);
        y += 11.5;
    }
    let mirror = Vec2::new(min.x + 34.0, min.y + 36.0);
    brush.ellipse(
        mirror,
        Vec2::new(12.0, 15.0),
        inside.tone(theme::STEEL, 0.55),
    );
    brush.ellipse(
        mirror,
        Vec2::new(10.0, 13.0),
        inside.tone(theme::SKY_BLUE, 0.3),
    );
    let rail = Vec2::new(min.x + 68.0, min.y + 50.0);
    brush.rect(rail.x, rail.y, 22.0, 1.8, inside.tone(theme::STEEL, 0.7));
    inside.on_wall(
        brush,
        [rail.x + 4.0, rail.y + 1.0, 14.0, 22.0],
        theme::CLOTH,
        0.4,
    );
    inside.on_wall(
        brush,
        [rail.x + 4.0, rail.y + 18.0, 14.0, 2.0],
        theme::CREAM,
        0.4,
    );
}

/// Paints what stands on the floors, where things leave room for it.
pub(super) fn furniture(brush: &mut Brush, street: &StreetView, house: &House) {
    let inside = |room: Room| {
        let chamber = house.chambers.iter().find(|c| c.room == room);
        chamber.map(|chamber| Inside::of(street, chamber))
    };
    let free = |room: Room, width: f32| {
        let (left, right) = house.free.get(&room).copied()?;
        (right - left >= width).then_some((inside(room)?, left, right))
    };
    if let Some((room, _, right)) = free(Room::Bedroom, 74.0) {
        bed(brush, right - 70.0, room);
    }
    if let Some((room, left, right)) = free(Room::Living, 60.0)
        && house.building == Building::House
    {
        sofa(brush, (left, right), room);
    }
    if let Some((room, left, right)) = free(Room::Bathroom, 72.0) {
        tub(brush, right, room);
        if right - left > 120.0 {
            basin(brush, room);
        }
    }
    for (left, right, floor) in &house.counters {
        let kitchen = *floor >= FLOOR - 1.0 && *left < 628.0;
        let room = if kitchen { Room::Kitchen } else { Room::Living };
        if let Some(room) = inside(room) {
            counter(brush, (*left, *right), *floor, room);
        }
    }
    if let Some((room, left, right)) = free(Room::Kitchen, 26.0) {
        counter(brush, (left - 4.0, right + 4.0), FLOOR, room);
    }
}

fn sofa(brush: &mut Brush, (left, right): (f32, f32), room: Inside) {
    let ink = room.dim(theme::SOFA);
    let width = (right - left - 4.0).min(92.0);
    for dx in [8.0, width - 8.0] {
        brush.rect(left + dx, 513.0, 4.0, 5.0, room.dim(theme::WOOD));
    }
    brush.round_rect(
        Vec2::new(left + 6.0, 472.0),
        Vec2::new(width - 8.0, 30.0),
        8.0,
        ink.mix(theme::CREAM, 0.14),
    );
    let half = (width - 16.0) / 2.0;
    for i in 0..2_u8 {
        let x = left + 9.0 + (half + 1.0) * f32::from(i);
        let cushion = Vec2::new(half - 1.0, 11.0);
        brush.round_rect(
            Vec2::new(x, 490.0),
            cushion,
            4.0,
            ink.mix(theme::CREAM, 0.07),
        );
    }
    brush.round_rect(
        Vec2::new(left + 2.0, 499.0),
        Vec2::new(width, 15.0),
        6.0,
        ink,
    );
    for x in [left + 1.0, left + width - 7.0] {
        brush.round_rect(
            Vec2::new(x, 487.0),
            Vec2::new(10.0, 27.0),
            5.0,
            ink.mix(theme::INK, 0.1),
        );
    }
}

fn bed(brush: &mut Brush, x: f32, room: Inside) {
    let wood = room.dim(theme::WOOD);
    let quilt = room.dim(theme::BLUE.mix(theme::CREAM, 0.45));
    brush.round_rect(Vec2::new(x + 66.0, 338.0), Vec2::new(5.0, 44.0), 2.0, wood);
    brush.round_rect(Vec2::new(x + 2.0, 352.0), Vec2::new(66.0, 18.0), 5.0, quilt);
    brush.rect(x + 44.0, 352.0, 3.0, 15.0, quilt.mix(theme::CREAM, 0.3));
    let pillow = room.dim(theme::CREAM);
    brush.round_rect(
        Vec2::new(x + 48.0, 344.0),
        Vec2::new(19.0, 11.0),
        5.0,
        pillow,
    );
    brush.rect(x, 366.0, 70.0, 8.0, wood);
    for leg in [2.0, 64.0] {
        brush.rect(x + leg, 374.0, 4.0, 8.0, wood);
    }
}

fn tub(brush: &mut Brush, right: f32, room: Inside) {
    let ink = room.dim(theme::ENAMEL);
    let steel = room.dim(theme::STEEL);
    brush.stroke(
        &[
            Vec2::new(right - 6.0, 350.0),
            Vec2::new(right - 6.0, 336.0),
            Vec2::new(right - 14.0, 336.0),
            Vec2::new(right - 14.0, 340.0),
        ],
        2.4,
        steel,
    );
    brush.round_rect(
        Vec2::new(right - 66.0, 352.0),
        Vec2::new(64.0, 26.0),
        9.0,
        ink,
    );
    let rim = ink.mix(theme::ENAMEL_LINE, 0.4);
    brush.rect(right - 68.0, 350.0, 68.0, 5.0, rim);
    for dx in [-56.0, -14.0] {
        brush.rect(right + dx, 377.0, 5.0, 4.0, rim);
    }
}

fn basin(brush: &mut Brush, room: Inside) {
    let at = Vec2::new(room.rect.min.x + 34.0, room.rect.min.y + 66.0);
    let ink = room.dim(theme::ENAMEL);
    let steel = room.dim(theme::STEEL);
    brush.stroke(
        &[at + Vec2::new(0.0, 10.0), at + Vec2::new(0.0, 42.0)],
        4.0,
        steel,
    );
    brush.stroke(
        &[at, at - Vec2::Y * 7.0, at + Vec2::new(6.0, -7.0)],
        2.2,
        steel,
    );
    brush.round_rect(at - Vec2::new(16.0, 0.0), Vec2::new(32.0, 12.0), 5.0, ink);
    brush.rect(
        at.x - 17.0,
        at.y - 1.0,
        34.0,
        3.5,
        ink.mix(theme::ENAMEL_LINE, 0.3),
    );
}

fn counter(brush: &mut Brush, (left, right): (f32, f32), floor: f32, room: Inside) {
    let top = floor - COUNTER;
    let wood = room.dim(theme::WOOD);
    brush.rect(left, top + 5.0, right - left, COUNTER - 9.0, wood);
    let doors = ((right - left) / 30.0).floor().max(1.0);
    let wide = (right - left) / doors;
    let mut x = left;
    while x + wide <= right + 0.5 {
        let (corner, size) = (
            Vec2::new(x + 2.5, top + 9.0),
            Vec2::new(wide - 5.0, COUNTER - 16.0),
        );
        brush.round_rect(corner, size, 1.5, wood.mix(theme::CREAM, 0.08));
        brush.rect(
            corner.x + size.x - 4.0,
            corner.y + 5.0,
            1.6,
            6.0,
            wood.mix(theme::RUBBER, 0.5),
        );
        x += wide;
    }
    brush.rect(left, top, right - left, 6.0, room.dim(theme::CREAM));
    brush.rect(
        left,
        top + 5.0,
        right - left,
        1.4,
        wood.mix(theme::RUBBER, 0.3),
    );
}

/// The cellar's wall of blocks, and a shelf with jars where nothing stands.
pub(super) fn cellar(brush: &mut Brush, ink: Ink, house: &House) {
    let joint = ink.mix(theme::INK, 0.16);
    let (left, right) = (466.0, RIGHT - 9.0);
    let mut odd = false;
    let mut y = CELLAR_CEILING + 19.0;
    while y < CELLAR_FLOOR - 2.0 {
        brush.line(&[Vec2::new(left, y), Vec2::new(right, y)], 1.0, joint);
        let mut x = left + if odd { 18.0 } else { 36.0 };
        while x < right {
            brush.line(
                &[Vec2::new(x, y), Vec2::new(x, (y + 19.0).min(CELLAR_FLOOR))],
                1.0,
                joint,
            );
            x += 36.0;
        }
        odd = !odd;
        y += 19.0;
    }
    brush.rect(
        left,
        CELLAR_FLOOR - 3.0,
        right - left,
        3.0,
        ink.mix(theme::INK, 0.3),
    );
    let free = house.free.get(&Room::Basement).copied();
    if let Some((from, to)) = free.filter(|(from, to)| to - from >= 50.0) {
        shelf(brush, ink, (from + 6.0, (to - 6.0).min(from + 70.0)));
    }
}

fn shelf(brush: &mut Brush, wall: Ink, (left, right): (f32, f32)) {
    let wood = wall.mix(theme::WOOD, 0.5);
    for (row, y) in [(0_u8, 600.0), (1, 626.0)] {
        brush.rect(left, y, right - left, 3.0, wood);
        let mut x = left + 5.0;
        let mut i = row;
        while x + 8.0 < right {
            let ink = match i % 3 {
                0 => theme::CLOTH,
                1 => theme::LEAF,
                _ => theme::LEAD,
            };
            let high = 10.0 + f32::from(i % 2) * 3.0;
            brush.round_rect(
                Vec2::new(x, y - high),
                Vec2::new(7.0, high),
                2.0,
                wall.mix(ink, 0.34),
            );
            x += 11.0;
            i += 1;
        }
    }
    for x in [left, right - 2.5] {
        brush.rect(x, 584.0, 2.5, CELLAR_FLOOR - 587.0, wood);
    }
}
