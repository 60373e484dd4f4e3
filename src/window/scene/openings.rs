//! Windows and doors: shut or open is to be seen from afar, and so is an engine's gas behind them.
//!
//! A shut window has its cross and straight curtains; an open one is dark, its sashes swung in, its curtains blown.
//! The garage's big door is seen from within: panels down, half up or rolled up under the ceiling.
//! It does not cover how much air passes: that is the model's.

use bevy::math::{Rect, Vec2};

use crate::session::view::{Building, Doorway, Room, StreetView};
use crate::window::theme;
use crate::window::theme::{Ink, Light};

use super::brush::Brush;
use super::house::lit;
use super::plan::GROUND;
use super::rooms::{FLOOR, House, RIGHT};

/// Windows of a house: corner, size, room.
const OF_HOUSE: [(Rect, Room); 3] = [
    (
        Rect {
            min: Vec2::new(498.0, 294.0),
            max: Vec2::new(534.0, 336.0),
        },
        Room::Bedroom,
    ),
    (
        Rect {
            min: Vec2::new(718.0, 292.0),
            max: Vec2::new(750.0, 328.0),
        },
        Room::Bathroom,
    ),
    (
        Rect {
            min: Vec2::new(706.0, 412.0),
            max: Vec2::new(750.0, 456.0),
        },
        Room::Living,
    ),
];

/// Paints the windows.
pub(super) fn windows(brush: &mut Brush, street: &StreetView, house: &House, light: Light) {
    let outside = light.middle.mix(light.bottom, 0.5);
    if house.building == Building::Hall {
        for x in [652.0, 688.0] {
            let rect = Rect::new(x, 412.0, x + 20.0, 454.0);
            let open = street.window_open && x > 660.0;
            window(brush, (rect, open), outside);
        }
    } else {
        for (rect, room) in OF_HOUSE {
            if rect.min.y < 384.0 && !house.upper {
                continue;
            }
            // The window near the patio is the one that is opened.
            let open = street.window_open && room == Room::Living;
            window(brush, (rect, open), outside);
            curtains(brush, (rect, open), lit(street, room));
        }
    }
    if house.right <= RIGHT {
        side_window(brush, street.window_open, outside);
    }
}

fn frame_ink() -> Ink {
    theme::ENAMEL.mix(theme::ROOM_DARK, 0.3)
}

fn window(brush: &mut Brush, (rect, open): (Rect, bool), outside: Ink) {
    let frame = frame_ink();
    let (size, at) = (rect.size(), rect.min);
    let edge = Vec2::splat(3.0);
    brush.round_rect(at - edge, size + edge * 2.0, 1.5, frame);
    brush.rect(at.x, at.y, size.x, size.y, outside);
    if open {
        // Nothing between inside and out, and both sashes swung in.
        brush.rect(at.x, at.y, size.x, size.y, outside.mix(theme::INK, 0.35));
        for (x, way) in [(rect.min.x, -1.0), (rect.max.x, 1.0)] {
            let tip = x + way * size.x * 0.36;
            let sash = [
                Vec2::new(x, at.y - 2.0),
                Vec2::new(tip, at.y + 5.0),
                Vec2::new(tip, rect.max.y + 7.0),
                Vec2::new(x, rect.max.y + 2.0),
            ];
            brush.convex(&sash, frame.mix(theme::ENAMEL, 0.6));
            let middle = sash.iter().sum::<Vec2>() / 4.0;
            let pane = sash.map(|p| middle + (p - middle) * 0.7);
            brush.convex(&pane, outside.mix(theme::CREAM, 0.25));
        }
    } else {
        brush.rect(rect.center().x - 1.2, at.y, 2.4, size.y, frame);
        brush.rect(at.x, at.y + size.y * 0.42, size.x, 2.0, frame);
    }
    brush.rect(at.x - 6.0, rect.max.y + 2.0, size.x + 12.0, 3.5, frame);
}

/// Curtains at both sides: straight, or blown in.
fn curtains(brush: &mut Brush, (rect, open): (Rect, bool), bright: f32) {
    let cloth = theme::CLOTH
        .mix(theme::CREAM, 0.5)
        .mix(theme::ROOM_DARK, 0.62 - 0.3 * bright);
    let (top, low) = (rect.min.y - 6.0, rect.max.y - 6.0);
    brush.rect(
        rect.min.x - 9.0,
        top - 1.5,
        rect.width() + 18.0,
        2.0,
        cloth.mix(theme::RUBBER, 0.3),
    );
    let blown = if open { 11.0 } else { 0.0 };
    for (x, way) in [(rect.min.x, 1.0), (rect.max.x, -1.0)] {
        let points = [
            Vec2::new(x - 7.0 * way, top),
            Vec2::new(x + 5.0 * way, top),
            Vec2::new(x + 2.0 * way - blown, low - 10.0),
            Vec2::new(x - 1.0 * way - blown, low),
            Vec2::new(x - 8.0 * way - blown, low),
        ];
        brush.fill(&points, cloth);
    }
}

/// The window towards the patio, seen edge-on: shut it is flush with the wall, open it swings out.
fn side_window(brush: &mut Brush, open: bool, outside: Ink) {
    let frame = frame_ink();
    brush.rect(772.0, 424.0, 9.0, 40.0, frame);
    if open {
        brush.rect(772.0, 428.0, 9.0, 32.0, outside.mix(theme::INK, 0.35));
        let leaf = [
            Vec2::new(779.0, 426.0),
            Vec2::new(806.0, 414.0),
            Vec2::new(806.0, 450.0),
            Vec2::new(779.0, 462.0),
        ];
        brush.convex(&leaf, frame);
        let middle = leaf.iter().sum::<Vec2>() / 4.0;
        let pane = leaf.map(|p| middle + (p - middle) * 0.72);
        brush.convex(&pane, outside.mix(theme::CREAM, 0.25));
    }
}

/// The garage's big door as it is seen from within, and what stands outside behind it.
pub(super) fn big_door(
    brush: &mut Brush,
    stands: Doorway,
    house: &House,
    (wall, light): (Ink, Light),
) {
    let right = house.right - 12.0;
    let width = (house.right - RIGHT - 28.0).min(104.0);
    let (left, top) = (right - width, 448.0);
    let rows: u8 = 4;
    let row = (FLOOR - top) / f32::from(rows);
    let down = match stands {
        // A door that nobody can move is shut.
        Doorway::None | Doorway::Shut => rows,
        Doorway::Half => rows / 2,
        Doorway::Open => 0,
    };
    let frame = wall.mix(theme::INK, 0.45);
    brush.rect(left - 4.0, top - 5.0, width + 8.0, FLOOR - top + 5.0, frame);
    if down < rows {
        // Sky, a hill, grass: the way out.
        let sky = [
            Vec2::new(left, top),
            Vec2::new(right, top),
            Vec2::new(right, FLOOR),
            Vec2::new(left, FLOOR),
        ];
        brush.shade(sky, light.middle, light.bottom);
        brush.rect(left, FLOOR - 22.0, width, 14.0, light.hill);
        brush.rect(left, FLOOR - 9.0, width, 9.0, light.grass);
    }
    let panel = theme::ENAMEL.mix(wall, 0.42);
    for i in 0..down {
        let y = top + row * f32::from(i);
        brush.rect(left, y, width, row - 1.6, panel);
        brush.rect(left + 4.0, y + 4.0, width - 8.0, 2.0, panel.mix(wall, 0.45));
    }
    let edge = top + row * f32::from(down);
    if down > 0 {
        brush.rect(
            left + width / 2.0 - 7.0,
            edge - 6.0,
            14.0,
            3.0,
            theme::RUBBER,
        );
    }
    if down < rows {
        // The rest of it lies rolled up under the ceiling.
        let rolled = 5.0 + 2.5 * f32::from(rows - down);
        brush.round_rect(
            Vec2::new(left - 4.0, top - 5.0),
            Vec2::new(width + 8.0, rolled),
            3.0,
            panel.mix(theme::STEEL, 0.3),
        );
    }
}

/// The door between garage and house, in the wall between them.
pub(super) fn house_door(brush: &mut Brush, stands: Doorway, wall: Ink) {
    let wood = theme::WOOD.mix(wall, 0.25);
    let top = FLOOR - 66.0;
    match stands {
        Doorway::None => {}
        Doorway::Shut => {
            brush.rect(773.0, top, 13.0, 66.0, wood.mix(theme::INK, 0.3));
            brush.rect(776.0, top + 2.0, 7.0, 64.0, wood);
            brush.disk(Vec2::new(784.0, top + 36.0), 1.8, theme::LEAD);
        }
        Doorway::Half | Doorway::Open => {
            brush.rect(772.0, top, 16.0, 66.0, theme::INK);
            let leaf = [
                Vec2::new(786.0, top),
                Vec2::new(808.0, top + 5.0),
                Vec2::new(808.0, GROUND - 6.0),
                Vec2::new(786.0, FLOOR),
            ];
            brush.convex(&leaf, wood);
            brush.disk(Vec2::new(804.0, top + 38.0), 1.8, theme::LEAD);
        }
    }
}
