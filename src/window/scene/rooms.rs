//! The shape of the house, and a spot in it for everything that uses power.
//!
//! A house has the floors, the garage and the shed that its things speak of; things are stood side by side, each in its room or, where that is full, in another.
//! If they don't fit anywhere they are all drawn smaller.
//! Units are those of [`super::plan`].
//! It does not know doors, stairs or the depth of a room.

use std::collections::BTreeMap;

use bevy::math::{Rect, Vec2};

use crate::session::view::{ApplianceKind, ApplianceView, Building, Room, StreetView};

use super::plan::GROUND;
use super::sizes::footprint;

/// Left and right face of the house, without a garage.
pub(super) const LEFT: f32 = 455.0;
pub(super) const RIGHT: f32 = 781.0;
/// Floor of the ground floor, of the upper floor, of the basement.
pub(super) const FLOOR: f32 = 520.0;
pub(super) const UPPER_FLOOR: f32 = 384.0;
pub(super) const CELLAR_FLOOR: f32 = 656.0;
/// Ceilings of the same.
pub(super) const CEILING: f32 = 402.0;
pub(super) const UPPER_CEILING: f32 = 272.0;
pub(super) const CELLAR_CEILING: f32 = 542.0;
/// Right end of the yard.
const YARD_END: f32 = 1112.0;
/// Where the shed begins, if there is one.
pub(super) const SHED: f32 = 1046.0;
/// Between two things side by side.
const GAP: f32 = 8.0;
/// Sizes that are tried, the largest first.
const SCALES: [f32; 5] = [1.0, 0.85, 0.7, 0.55, 0.4];

/// A room.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Chamber {
    pub(super) room: Room,
    /// From its ceiling's left end to its floor's right end.
    pub(super) rect: Rect,
}

/// What a thing stands on or hangs from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Mount {
    Floor,
    Pit,
    Counter,
    Ceiling,
    Ground,
}

/// A thing's place.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Spot {
    /// The middle of its foot, or of where it hangs.
    pub(super) at: Vec2,
    /// Its size against the usual.
    pub(super) scale: f32,
    /// The ceiling above it; the sky counts as far away.
    pub(super) ceiling: f32,
    /// What it stands on or hangs from.
    pub(super) mount: Mount,
    size: Vec2,
}

impl Spot {
    /// What it covers.
    pub(super) fn cover(&self) -> Rect {
        let half = self.size.x * self.scale / 2.0;
        let height = self.size.y * self.scale;
        if self.mount == Mount::Ceiling {
            Rect::new(
                self.at.x - half,
                self.at.y,
                self.at.x + half,
                self.at.y + height,
            )
        } else {
            Rect::new(
                self.at.x - half,
                self.at.y - height,
                self.at.x + half,
                self.at.y,
            )
        }
    }

    /// Where a plug meets it.
    pub(super) fn socket(&self) -> Vec2 {
        if self.mount == Mount::Ceiling {
            self.at
        } else {
            let up = (12.0 * self.scale).min(self.size.y * self.scale * 0.6);
            Vec2::new(self.cover().max.x - 3.0, self.at.y - up)
        }
    }
}

/// The house with everything in it.
#[derive(Debug, Clone, Default)]
pub(crate) struct House {
    pub(super) chambers: Vec<Chamber>,
    /// What kind of building it is.
    pub(super) building: Building,
    /// Whether it has an upper floor.
    pub(super) upper: bool,
    /// Whether a shed stands in the yard.
    pub(super) shed: bool,
    /// Its outer face towards the yard.
    pub(super) right: f32,
    /// Where the yard is free of things that use power, from left to right.
    pub(super) yard: (f32, f32),
    /// Places by the id of the appliance.
    pub(super) spots: BTreeMap<String, Spot>,
    /// Tops on which small things stand: left and right end, height of the floor below.
    pub(super) counters: Vec<(f32, f32, f32)>,
    /// What is left free of each room's floor.
    pub(super) free: BTreeMap<Room, (f32, f32)>,
}

/// A stretch of floor, ceiling or ground that is filled from one end.
#[derive(Debug, Clone)]
struct Row {
    room: Room,
    hangs: bool,
    left: f32,
    right: f32,
    y: f32,
    ceiling: f32,
    /// Kept free under the ceiling, for a lamp.
    clear: f32,
    from_right: bool,
}

impl House {
    /// The house of a street; the panel and what hangs beside it take the basement's wall up to `wall_end`, other equipment takes the yard's first `beside`.
    pub(super) fn new(street: &StreetView, wall_end: f32, beside: f32) -> Self {
        let speaks_of = |room: Room| {
            street.appliances.iter().any(|a| a.room == room)
                || street.outlets.iter().any(|o| o.room == room)
        };
        let stands = &street.generator.stands;
        let engine_inside = stands.iter().any(|s| s.room == Room::Garage);
        let right = if engine_inside || speaks_of(Room::Garage) {
            let things = street.appliances.iter().filter(|a| a.room == Room::Garage);
            let wanted: f32 = things.map(|a| footprint(a.kind).0.x + GAP).sum();
            let engine = if engine_inside { 70.0 } else { 0.0 };
            RIGHT + (wanted + engine + 26.0).clamp(95.0, 150.0)
        } else {
            RIGHT
        };
        let upper = speaks_of(Room::Bedroom) || speaks_of(Room::Bathroom);
        let furnished = |upper: bool| {
            let mut house = Self {
                chambers: chambers(upper, right, street.building),
                building: street.building,
                upper,
                shed: stands.iter().any(|s| s.store),
                right,
                ..Self::default()
            };
            for scale in SCALES {
                if house.furnish(&street.appliances, (wall_end, right + beside), scale) {
                    break;
                }
            }
            house
        };
        let house = furnished(upper);
        // What a full cellar leaves over stands in a bathroom rather than among people.
        if !upper && street.building == Building::House && house.is_crowded(&street.appliances) {
            furnished(true)
        } else {
            house
        }
    }

    /// Whether something of the cellar stands on the ground floor.
    fn is_crowded(&self, things: &[ApplianceView]) -> bool {
        let mut cellar = things.iter().filter(|t| t.room == Room::Basement);
        cellar.any(|thing| self.spots.get(&thing.id).is_some_and(|s| s.at.y < GROUND))
    }

    /// Where the service drop meets the house.
    pub(super) fn weatherhead(&self) -> Vec2 {
        Vec2::new(LEFT + 9.0, self.eaves() - 12.0)
    }

    /// Height of the eaves.
    pub(super) fn eaves(&self) -> f32 {
        if self.upper { 262.0 } else { 384.0 }
    }

    /// The nth inlet on the outer wall, from 0.
    pub(super) fn inlet(&self, nth: f32) -> Vec2 {
        Vec2::new(self.right, 505.0 - 30.0 * nth)
    }

    /// The box of a room; rooms that this house doesn't have are looked for downstairs.
    pub(super) fn chamber(&self, room: Room) -> Option<Rect> {
        let find = |room: Room| self.chambers.iter().find(|c| c.room == room);
        find(room).or_else(|| find(Room::Living)).map(|c| c.rect)
    }

    /// Stands everything somewhere; false if a thing found no room.
    fn furnish(
        &mut self,
        things: &[ApplianceView],
        (wall_end, yard): (f32, f32),
        scale: f32,
    ) -> bool {
        self.spots.clear();
        self.counters.clear();
        let yard_end = if self.shed { SHED } else { YARD_END };
        let lamp = |t: &ApplianceView| t.kind == ApplianceKind::Lamp && t.room == Room::Garage;
        let mut rows = rows(&self.chambers, wall_end, (yard, yard_end));
        if !things.iter().any(lamp) {
            // A garage is low: without a lamp of its own, what stands there may reach its ceiling.
            rows.retain(|r| !(r.hangs && r.room == Room::Garage));
            for row in rows.iter_mut().filter(|r| r.room == Room::Garage) {
                row.clear = 6.0;
            }
        }
        let mut all = true;
        for mount in [
            Mount::Pit,
            Mount::Floor,
            Mount::Counter,
            Mount::Ceiling,
            Mount::Ground,
        ] {
            for thing in things.iter().filter(|t| footprint(t.kind).1 == mount) {
                let spot = stand(&mut rows, thing, scale);
                all &= spot.is_some();
                if let Some(spot) = spot {
                    if spot.mount == Mount::Counter {
                        let half = spot.cover().half_size().x + GAP / 2.0;
                        let ends = (spot.at.x - half, spot.at.x + half);
                        self.counters
                            .push((ends.0, ends.1, spot.at.y + COUNTER * spot.scale));
                    }
                    self.spots.insert(thing.id.clone(), spot);
                }
            }
        }
        self.spread_lamps(things, wall_end);
        self.free = rows
            .iter()
            .filter(|r| !r.hangs && r.room != Room::Outside)
            .map(|r| (r.room, (r.left, r.right)))
            .collect();
        let yard_row = rows.iter().rfind(|r| r.room == Room::Outside);
        self.yard = yard_row.map_or((yard, yard_end), |r| (r.left, r.right));
        all
    }

    /// Lamps of a room hang evenly over it.
    fn spread_lamps(&mut self, things: &[ApplianceView], wall_end: f32) {
        for chamber in &self.chambers {
            let right = chamber.rect.max.x;
            let left = if chamber.room == Room::Basement {
                wall_end
            } else {
                chamber.rect.min.x
            };
            let hung: Vec<&String> = things
                .iter()
                .map(|t| &t.id)
                .filter(|id| {
                    self.spots.get(*id).is_some_and(|s| {
                        s.mount == Mount::Ceiling && chamber.rect.contains(s.at + Vec2::Y)
                    })
                })
                .collect();
            let (mut i, n) = (0.5, u8::try_from(hung.len()).map_or(1.0, f32::from));
            for id in hung {
                if let Some(spot) = self.spots.get_mut(id) {
                    spot.at.x = left + (right - left) * i / n;
                }
                i += 1.0;
            }
        }
    }
}

/// Height of a counter.
pub(super) const COUNTER: f32 = 41.0;

fn chambers(upper: bool, right: f32, building: Building) -> Vec<Chamber> {
    // A hall is one room: where its kitchen ends, no wall stands.
    let (kitchen_end, living) = match building {
        Building::House => (624.0, 632.0),
        Building::Hall => (640.0, 640.0),
    };
    let chamber = |room, x0, y0, x1, y1| Chamber {
        room,
        rect: Rect::new(x0, y0, x1, y1),
    };
    let mut all = vec![
        chamber(Room::Kitchen, 480.0, CEILING, kitchen_end, FLOOR),
        chamber(Room::Living, living, CEILING, 773.0, FLOOR),
        chamber(Room::Basement, 466.0, CELLAR_CEILING, 772.0, CELLAR_FLOOR),
    ];
    if upper {
        all.push(chamber(
            Room::Bedroom,
            480.0,
            UPPER_CEILING,
            608.0,
            UPPER_FLOOR,
        ));
        all.push(chamber(
            Room::Bathroom,
            616.0,
            UPPER_CEILING,
            773.0,
            UPPER_FLOOR,
        ));
    }
    if right > RIGHT {
        all.push(chamber(Room::Garage, 787.0, 440.0, right - 8.0, FLOOR));
    }
    all
}

fn rows(chambers: &[Chamber], wall_end: f32, yard: (f32, f32)) -> Vec<Row> {
    let mut rows = Vec::new();
    for Chamber { room, rect } in chambers {
        let cellar = *room == Room::Basement;
        let row = |hangs, left: f32, y| Row {
            room: *room,
            hangs,
            left,
            right: rect.max.x - 6.0,
            y,
            ceiling: rect.min.y,
            clear: 30.0,
            from_right: *room == Room::Living,
        };
        let left = if cellar { wall_end } else { rect.min.x + 4.0 };
        rows.push(row(false, left, rect.max.y));
        rows.push(row(true, left, rect.min.y));
    }
    for (left, right, from_right) in [(402.0, 444.0, true), (yard.0 + 10.0, yard.1, false)] {
        rows.push(Row {
            room: Room::Outside,
            hangs: false,
            left,
            right,
            y: GROUND,
            ceiling: 0.0,
            clear: 0.0,
            from_right,
        });
    }
    rows
}

/// Finds a thing a place: in its room, else in the others in turn.
fn stand(rows: &mut [Row], thing: &ApplianceView, scale: f32) -> Option<Spot> {
    const TURN: [Room; 6] = [
        Room::Living,
        Room::Basement,
        Room::Kitchen,
        Room::Bathroom,
        Room::Bedroom,
        Room::Garage,
    ];
    const FROM_CELLAR: [Room; 6] = [
        Room::Bathroom,
        Room::Garage,
        Room::Kitchen,
        Room::Living,
        Room::Bedroom,
        Room::Basement,
    ];
    let (size, mount) = footprint(thing.kind);
    let turn = if thing.room == Room::Basement {
        FROM_CELLAR
    } else {
        TURN
    };
    let rooms = std::iter::once(thing.room).chain(turn);
    for room in rooms {
        let fits = rows
            .iter_mut()
            .filter(|r| r.room == room && r.hangs == (mount == Mount::Ceiling))
            .filter(|_| mount != Mount::Pit || room == Room::Basement)
            .find_map(|row| put(row, size, mount, scale));
        if fits.is_some() {
            return fits;
        }
    }
    // A pit has to be in the basement: elsewhere the thing stands on the floor.
    let mut floors = rows.iter_mut().filter(|r| !r.hangs);
    (mount == Mount::Pit).then(|| floors.find_map(|row| put(row, size, Mount::Floor, scale)))?
}

fn put(row: &mut Row, size: Vec2, mount: Mount, scale: f32) -> Option<Spot> {
    // A tall thing leaves room for a lamp above it.
    let stands_on = if mount == Mount::Counter {
        COUNTER
    } else {
        0.0
    };
    let tall = (row.y - row.ceiling - row.clear) / (size.y + stands_on);
    let scale = if row.hangs { scale } else { scale.min(tall) };
    let width = size.x * scale;
    if row.right - row.left < width {
        return None;
    }
    let x = if row.from_right || mount == Mount::Pit {
        row.right -= width + GAP;
        row.right + GAP + width / 2.0
    } else {
        row.left += width + GAP;
        row.left - GAP - width / 2.0
    };
    Some(Spot {
        at: Vec2::new(x, row.y - stands_on * scale),
        scale,
        ceiling: row.ceiling,
        mount: if mount == Mount::Ground && row.room != Room::Outside {
            Mount::Floor
        } else {
            mount
        },
        size,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::session::view::{GeneratorView, StandView};

    const KINDS: [ApplianceKind; 20] = [
        ApplianceKind::Device,
        ApplianceKind::Lamp,
        ApplianceKind::Fridge,
        ApplianceKind::Freezer,
        ApplianceKind::Microwave,
        ApplianceKind::Countertop,
        ApplianceKind::Range,
        ApplianceKind::Furnace,
        ApplianceKind::WaterHeater,
        ApplianceKind::Heater,
        ApplianceKind::Drum,
        ApplianceKind::Sump,
        ApplianceKind::Well,
        ApplianceKind::AirConditioner,
        ApplianceKind::Fan,
        ApplianceKind::Television,
        ApplianceKind::Computer,
        ApplianceKind::Medical,
        ApplianceKind::Machine,
        ApplianceKind::Charger,
    ];
    const ROOMS: [Room; 7] = [
        Room::Living,
        Room::Kitchen,
        Room::Bedroom,
        Room::Bathroom,
        Room::Basement,
        Room::Garage,
        Room::Outside,
    ];

    /// Numbers that look random and repeat.
    struct Dice(u32);

    impl Dice {
        fn below(&mut self, n: usize) -> usize {
            self.0 = self.0.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
            usize::try_from(self.0 >> 8).unwrap_or(0) % n
        }
    }

    fn any_street(dice: &mut Dice) -> StreetView {
        let n = dice.below(17);
        let appliances = (0..n).map(|i| ApplianceView {
            id: format!("thing-{i}"),
            kind: KINDS[dice.below(KINDS.len())],
            room: ROOMS[dice.below(ROOMS.len())],
            ..ApplianceView::default()
        });
        let appliances = appliances.collect();
        let n_stands = 1 + dice.below(5);
        let stands = (0..n_stands).map(|i| StandView {
            id: format!("place-{i}"),
            opening_ft: [0.0, 6.0, 20.0, 40.0][dice.below(4)],
            store: dice.below(4) == 0,
            room: [Room::Outside, Room::Garage][dice.below(2)],
        });
        StreetView {
            appliances,
            generator: GeneratorView {
                stands: stands.collect(),
                ..GeneratorView::default()
            },
            ..StreetView::default()
        }
    }

    #[test]
    fn any_things_in_any_rooms_stand_apart_and_inside_the_frame() {
        let frame = Rect::new(395.0, 140.0, 1120.0, 720.0);
        let mut dice = Dice(7);
        for round in 0..600 {
            let street = any_street(&mut dice);
            let wall_end = [530.0, 575.0, 630.0][dice.below(3)];
            let house = House::new(&street, wall_end, [0.0, 64.0][dice.below(2)]);
            for thing in &street.appliances {
                assert!(house.spots.contains_key(&thing.id), "{round}: {thing:?}");
            }
            let spots: Vec<_> = house.spots.iter().collect();
            for (i, (id, spot)) in spots.iter().enumerate() {
                let cover = spot.cover();
                assert!(
                    frame.contains(cover.min) && frame.contains(cover.max),
                    "{round}: {id} {cover:?}"
                );
                for (other_id, other) in spots.iter().skip(i + 1) {
                    let both = cover.inflate(-0.5).intersect(other.cover());
                    assert!(both.is_empty(), "{round}: {id} and {other_id} at {both:?}");
                }
            }
        }
    }

    #[test]
    fn things_stand_in_the_room_they_name_while_it_has_room() {
        let thing = |id: &str, kind, room| ApplianceView {
            id: id.to_owned(),
            kind,
            room,
            ..ApplianceView::default()
        };
        let street = StreetView {
            appliances: vec![
                thing("fridge", ApplianceKind::Fridge, Room::Kitchen),
                thing("sump", ApplianceKind::Sump, Room::Basement),
                thing("hall-lamp", ApplianceKind::Lamp, Room::Bathroom),
                thing("odd", ApplianceKind::Device, Room::Garage),
            ],
            ..StreetView::default()
        };
        let house = House::new(&street, 530.0, 0.0);
        for thing in &street.appliances {
            let chamber = house.chamber(thing.room).expect("the room is there");
            let at = house.spots.get(&thing.id).expect("it has a place").at;
            let inside = chamber.inflate(1.0).contains(at);
            assert!(inside, "{}: {at} outside {chamber:?}", thing.id);
        }
    }

    #[test]
    fn a_house_has_the_parts_its_things_speak_of() {
        let bare = House::new(&StreetView::default(), 530.0, 0.0);
        assert!(!bare.upper && !bare.shed && bare.right <= RIGHT);
        let mut dice = Dice(3);
        for _ in 0..200 {
            let street = any_street(&mut dice);
            let house = House::new(&street, 530.0, 0.0);
            let speaks_of = |room| street.appliances.iter().any(|a| a.room == room);
            assert!(house.upper || !speaks_of(Room::Bedroom));
            assert!(house.right > RIGHT || !speaks_of(Room::Garage));
        }
    }
}
