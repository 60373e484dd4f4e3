//! A hall where people meet: one room up to the roof, a stage with its curtain, rows of chairs.
//!
//! It has the shape of the house from outside, so that wires and things find their places in both.
//! It does not cover what hangs and stands there for power.

use bevy::math::Vec2;

use crate::session::view::{Room, StreetView};
use crate::window::theme;

use super::brush::Brush;
use super::house::lit;
use super::rooms::{CEILING, FLOOR, House};

/// Left and right end of the room.
const ENDS: (f32, f32) = (480.0, 773.0);

/// Paints the open roof over the room: its underside, beams and rafters.
pub(super) fn roof(brush: &mut Brush, street: &StreetView, house: &House) {
    let bright = lit(street, Room::Living);
    let wall = theme::ROOM_DARK.mix(theme::ROOM_LIT, bright * 0.85);
    let apex = Vec2::new(618.0, house.eaves() - 92.0);
    let [left, right] = [ENDS.0, ENDS.1];
    let low = house.eaves() - 5.0;
    let gable = [
        Vec2::new(left, CEILING),
        Vec2::new(left, low),
        apex,
        Vec2::new(right - 8.0, low),
        Vec2::new(right, CEILING),
    ];
    brush.convex(&gable, wall.mix(theme::FLOOR, 0.1));
    let wood = theme::WOOD.mix(theme::ROOM_DARK, 0.3 * (1.0 - bright));
    for end in [Vec2::new(left, low), Vec2::new(right - 8.0, low)] {
        brush.stroke(&[end, apex], 5.0, wood);
        let foot = apex.lerp(end, 0.52);
        brush.stroke(&[foot, Vec2::new(apex.x, CEILING - 4.0)], 3.0, wood);
    }
    brush.stroke(&[apex, Vec2::new(apex.x, CEILING)], 4.0, wood);
    brush.rect(left, CEILING - 7.0, right - left, 7.0, wood);
}

/// Paints stage, curtain and chairs.
pub(super) fn room(brush: &mut Brush, street: &StreetView, house: &House) {
    let Some(chamber) = house.chamber(Room::Living) else {
        return;
    };
    let bright = lit(street, Room::Living);
    let dim = |ink: theme::Ink| ink.mix(theme::ROOM_DARK, 0.5 * (1.0 - bright));
    let right = chamber.max.x;
    let curtain = dim(theme::CLOTH).mix(theme::ROOM_DARK, 0.25);
    for i in 0..4_u8 {
        let x = right - 34.0 + 8.5 * f32::from(i);
        let fold = curtain.mix(theme::INK, 0.08 * f32::from(i % 2));
        brush.rect(x, CEILING, 8.5, FLOOR - CEILING - 16.0, fold);
    }
    brush.rect(
        right - 52.0,
        CEILING,
        52.0,
        9.0,
        curtain.mix(theme::INK, 0.12),
    );
    brush.rect(right - 58.0, FLOOR - 18.0, 58.0, 14.0, dim(theme::WOOD));
    brush.rect(right - 60.0, FLOOR - 20.0, 60.0, 3.5, dim(theme::FLOOR));
    brush.rect(
        right - 68.0,
        FLOOR - 11.0,
        10.0,
        7.0,
        dim(theme::WOOD).mix(theme::INK, 0.15),
    );
    let chair = dim(theme::FLOOR).mix(theme::STEEL, 0.2);
    let mut x = chamber.min.x + 8.0;
    while x < right - 84.0 {
        brush.stroke(
            &[Vec2::new(x, FLOOR - 36.0), Vec2::new(x + 2.0, FLOOR - 4.0)],
            2.6,
            chair,
        );
        brush.stroke(
            &[
                Vec2::new(x + 13.0, FLOOR - 18.0),
                Vec2::new(x + 14.0, FLOOR - 4.0),
            ],
            2.6,
            chair,
        );
        brush.round_rect(
            Vec2::new(x - 1.0, FLOOR - 37.0),
            Vec2::new(3.6, 15.0),
            1.5,
            chair,
        );
        brush.round_rect(Vec2::new(x, FLOOR - 20.0), Vec2::new(15.0, 3.6), 1.5, chair);
        x += 21.0;
    }
}
