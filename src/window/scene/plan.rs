//! Where everything of the street stands: one section from the substation end to the yard, in the order in which energy travels.
//!
//! The plan is made from the views alone, without the engine, so that the scene, its labels and its tests share one set of places.
//! Poles, neighbors, places for the generator and things in the house may be any number: what doesn't fit at its usual size is drawn smaller.
//! Units: the plan is 1 120 wide and 720 high with y downward; a [`super::frame::Frame`] fits it into the window.
//! It does not draw to scale: heights and distances are chosen to be read from the back of a hall; lengths stand in words.

use std::collections::BTreeMap;

use bevy::math::{Rect, Vec2};

use crate::session::view::{GeneratorForm, GeneratorView, PersonState, Room, StreetView, WireKind};

use super::rooms::{CELLAR_FLOOR, FLOOR, House, LEFT, SHED};
use super::routes;
use super::routes::Route;
use super::sizes;
use super::{devices, equipment};

/// Where the ground is.
pub(super) const GROUND: f32 = 530.0;
/// Height of the phase wire on poles.
pub(super) const PHASE: f32 = 206.0;
/// Height of the neutral on poles.
pub(super) const NEUTRAL: f32 = 300.0;
/// Left and right end of the line of poles.
const POLES: (f32, f32) = (40.0, 392.0);

/// Units of the yard to a foot: the same in every picture.
const FOOT: f32 = 2.9;

/// The way from the nearest opening to an engine in the yard.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Distance {
    pub(super) from: f32,
    pub(super) to: f32,
    /// Whether the yard is too small or too full for its scale.
    pub(super) broken: bool,
}

/// Where everything stands.
#[derive(Debug, Clone, Default)]
pub(crate) struct Plan {
    /// Poles: id and x.
    pub(super) poles: Vec<(String, f32)>,
    /// Size of poles and their crossarms against the usual.
    pub(super) pole_scale: f32,
    /// X of the pole with the transformer.
    pub(super) transformer: f32,
    /// X of each neighbor's house, and its size against the usual.
    pub(super) neighbors: Vec<(f32, f32)>,
    /// The house.
    pub(super) house: House,
    /// Equipment on the basement's wall, by its id.
    pub(super) boxes: BTreeMap<String, Rect>,
    /// What is mounted on poles to open the line, by its id.
    pub(super) devices: BTreeMap<String, Rect>,
    /// Power inlets on the outer wall, by their ids.
    pub(super) inlets: BTreeMap<String, Vec2>,
    /// The generator's feet.
    pub(super) generator: Vec2,
    /// From the house to the engine, where it stands in the yard.
    pub(super) distance: Option<Distance>,
    /// Conductors.
    pub(crate) routes: BTreeMap<String, Route>,
    /// A point for each id that can be pointed at.
    pub(crate) anchors: BTreeMap<String, Vec2>,
}

impl Plan {
    /// The plan of a street.
    pub(crate) fn new(street: &StreetView) -> Self {
        let mut boxes = equipment::on_wall(street);
        let wall_end = boxes.last().map_or(LEFT, |(_, rect)| rect.max.x + 14.0);
        let house = House::new(street, wall_end, equipment::beside(street));
        boxes.extend(equipment::outside(street, house.right));
        let inlets = street.wires.iter().filter(|w| w.kind == WireKind::Inlet);
        let inlets = inlets
            .enumerate()
            .map(|(i, w)| (w.from.clone(), house.inlet(count(i))));
        let (generator, distance) = stand(&street.generator, &house);
        let mut plan = Self {
            generator,
            distance,
            inlets: inlets.collect(),
            boxes: boxes.into_iter().collect(),
            house,
            pole_scale: 1.0,
            ..Self::default()
        };
        plan.place_poles(street);
        plan.devices = devices::places(street, &plan);
        plan.place_things(street);
        plan.place_people(street);
        plan.anchors.extend(plan.inlets.clone());
        plan.routes = routes::routes(street, &plan);
        for (id, route) in &plan.routes {
            plan.anchors.insert(id.clone(), route.middle());
        }
        for (id, rect) in plan.boxes.iter().chain(&plan.devices) {
            plan.anchors.insert(id.clone(), rect.center());
        }
        let panel = plan.box_of("panel");
        for (id, at) in [
            ("generator", plan.generator + Vec2::new(0.0, -30.0)),
            ("main", panel.min + Vec2::new(19.0, 14.0)),
            ("generator-breaker", panel.min + Vec2::new(19.0, 20.0)),
            ("house", Vec2::new(620.0, plan.house.eaves() + 68.0)),
            (
                "transformer",
                Vec2::new(plan.transformer + 18.0, NEUTRAL - 24.0),
            ),
        ] {
            plan.anchors.insert(id.to_owned(), at);
        }
        plan
    }

    /// The box of a piece of equipment; that of the panel for what has none.
    pub(super) fn box_of(&self, id: &str) -> Rect {
        let found = self.boxes.get(id).or_else(|| self.boxes.get("panel"));
        found
            .copied()
            .unwrap_or(Rect::new(477.0, 556.0, 515.0, 640.0))
    }

    fn place_poles(&mut self, street: &StreetView) {
        let (left, right) = POLES;
        let last = street.poles.iter().map(|p| p.at_ft).fold(1.0, f32::max);
        let by_feet = street
            .poles
            .iter()
            .map(|p| left + (right - left) * p.at_ft / last);
        let mut xs: Vec<f32> = by_feet.collect();
        let closest = |xs: &[f32]| {
            let gaps = xs.windows(2).map(|w| match w {
                [a, b] => b - a,
                _ => 0.0,
            });
            gaps.fold(f32::INFINITY, f32::min)
        };
        let even = (right - left) / count(xs.len().saturating_sub(1)).max(1.0);
        // Poles that would stand too close for their crossarms stand evenly instead.
        if closest(&xs) < even.min(58.0) {
            xs = (0..xs.len()).map(|i| left + even * count(i)).collect();
        }
        self.pole_scale = (closest(&xs) / 58.0).clamp(0.4, 1.0);
        for (pole, x) in street.poles.iter().zip(xs) {
            self.poles.push((pole.id.clone(), x));
            self.anchors.insert(pole.id.clone(), Vec2::new(x, PHASE));
            if pole.transformer {
                self.transformer = x;
            }
        }
        let n = count(street.neighbors.len());
        let room = (self.transformer - 62.0 + 46.0).max(92.0);
        let pitch = (room / n.max(1.0)).min(92.0);
        for (i, neighbor) in street.neighbors.iter().enumerate() {
            let x = self.transformer - 62.0 - pitch * count(i);
            self.neighbors.push((x, pitch / 92.0));
            self.anchors
                .insert(neighbor.id.clone(), Vec2::new(x, GROUND - 50.0));
        }
    }

    fn place_things(&mut self, street: &StreetView) {
        for (id, spot) in &self.house.spots {
            self.anchors.insert(id.clone(), spot.at);
        }
        // An outlet is beside the thing that belongs there, or on its room's wall.
        let mut on_wall: BTreeMap<Room, f32> = BTreeMap::new();
        for outlet in &street.outlets {
            let at = outlet
                .appliances
                .iter()
                .find_map(|id| {
                    let thing = street.appliances.iter().find(|a| a.id == *id)?;
                    Some(sizes::end(thing.kind, self.house.spots.get(id)?).at)
                })
                .unwrap_or_else(|| {
                    let nth = on_wall.entry(outlet.room).or_default();
                    *nth += 1.0;
                    self.on_wall(outlet.room, *nth)
                });
            self.anchors.insert(outlet.id.clone(), at);
        }
    }

    /// The place of the nth free outlet on a room's wall.
    fn on_wall(&self, room: Room, nth: f32) -> Vec2 {
        if room == Room::Outside {
            return Vec2::new(self.house.right - 4.0, GROUND - 20.0 * nth);
        }
        let floor = self.house.chamber(room).map_or(FLOOR, |r| r.max.y);
        let (left, right) = self
            .house
            .free
            .get(&room)
            .or_else(|| self.house.free.get(&Room::Living))
            .copied()
            .unwrap_or((640.0, 760.0));
        let x = (left + 14.0 * nth).min(right.max(left + 4.0));
        Vec2::new(x, floor - 24.0)
    }

    /// Where those at home stand: in the room of the ground floor that leaves them most room.
    fn at_home(&self) -> Vec2 {
        const WANTED: f32 = 62.0;
        let free = |room| self.house.free.get(&room).copied().unwrap_or_default();
        let wide = |(left, right): (f32, f32)| right - left;
        let (living, kitchen) = (free(Room::Living), free(Room::Kitchen));
        let (left, right) = if wide(living) >= WANTED || wide(living) >= wide(kitchen) {
            living
        } else {
            kitchen
        };
        let x = (left + 54.0).min(right - 12.0).max(left + 30.0);
        Vec2::new(x, FLOOR)
    }

    fn place_people(&mut self, street: &StreetView) {
        for person in &street.people {
            let pole = self
                .poles
                .iter()
                .find(|(id, _)| *id == person.place)
                .map(|(_, x)| *x);
            let at = match (pole, person.place.as_str(), person.id.as_str()) {
                (Some(x), _, _) => match person.state {
                    PersonState::Working | PersonState::Harmed | PersonState::Unwell => {
                        Vec2::new(x + 34.0 * crew_side(x), PHASE + 10.0)
                    }
                    PersonState::Well | PersonState::Back => {
                        Vec2::new(x - 26.0 * crew_side(x), GROUND - 40.0)
                    }
                },
                (None, "house", "learner") => Vec2::new(536.0, CELLAR_FLOOR),
                (None, "house", _) => self.at_home(),
                (None, "away", _) => continue,
                (None, _, "learner") => Vec2::new(self.generator.x - 70.0, GROUND),
                (None, _, _) => Vec2::new(self.generator.x - 40.0, GROUND),
            };
            self.anchors.insert(person.id.clone(), at);
        }
    }
}

/// On which side of its pole the crew's truck stands: 1 towards the house, -1 where the house is too near.
pub(super) fn crew_side(x: f32) -> f32 {
    if x + 120.0 > LEFT - 10.0 { -1.0 } else { 1.0 }
}

/// Where the generator stands: its feet, and how far from the house if that is in the yard.
fn stand(generator: &GeneratorView, house: &House) -> (Vec2, Option<Distance>) {
    let here = generator.stands.iter().find(|s| s.id == generator.place);
    let Some(here) = here else {
        let middle = house.yard.0.midpoint(house.yard.1);
        return (Vec2::new(middle, GROUND), None);
    };
    match here.room {
        _ if here.store => (Vec2::new(SHED + 26.0, GROUND), None),
        Room::Outside => in_yard(generator, here.opening_ft, house),
        Room::Garage => (Vec2::new(house.right - 54.0, FLOOR), None),
        Room::Living | Room::Kitchen | Room::Bedroom | Room::Bathroom | Room::Basement => {
            let chamber = house.chamber(here.room);
            let at = chamber.map_or(Vec2::new(700.0, FLOOR), |r| {
                Vec2::new(r.max.x - 46.0, r.max.y)
            });
            (at, None)
        }
    }
}

/// A place in the yard, to scale as far as the yard reaches.
fn in_yard(generator: &GeneratorView, feet: f32, house: &House) -> (Vec2, Option<Distance>) {
    // From the feet to the side towards the house.
    let reach = match (generator.form, generator.second) {
        (GeneratorForm::Portable, _) => 37.0,
        (GeneratorForm::Inverter, None) => 26.0,
        (GeneratorForm::Inverter, Some(_)) => 98.0,
        (GeneratorForm::Standby, _) => 45.0,
    };
    let from = house.right + 8.0;
    let true_x = from + feet * FOOT + reach;
    let x = true_x.min(house.yard.1 - 34.0).max(house.yard.0 + reach);
    let distance = Distance {
        from,
        to: x - reach,
        broken: (x - true_x).abs() > 0.5,
    };
    (Vec2::new(x, GROUND), Some(distance))
}

/// A small number as a length.
#[expect(
    clippy::cast_precision_loss,
    reason = "a street has a few dozen things"
)]
pub(super) fn count(n: usize) -> f32 {
    n as f32
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::session::view::{NeighborView, PoleView, StandView};

    #[test]
    fn any_number_of_poles_and_neighbors_stand_apart_and_in_order() {
        for n in 1..=12_u8 {
            let street = StreetView {
                poles: (0..n)
                    .map(|i| PoleView {
                        id: format!("pole-{i}"),
                        at_ft: f32::from(i) * if i > 4 { 400.0 } else { 40.0 },
                        transformer: i + 1 == n,
                        ..PoleView::default()
                    })
                    .collect(),
                neighbors: (0..n)
                    .map(|i| NeighborView {
                        id: format!("neighbor-{i}"),
                        ..NeighborView::default()
                    })
                    .collect(),
                ..StreetView::default()
            };
            let plan = Plan::new(&street);
            let crossarm = 52.0 * plan.pole_scale;
            for pair in plan.poles.windows(2) {
                let gap = pair[1].1 - pair[0].1;
                assert!(gap >= crossarm.min(25.0), "{n} poles, {gap} apart");
            }
            for pair in plan.neighbors.windows(2) {
                let gap = pair[0].0 - pair[1].0;
                assert!(gap >= 80.0 * pair[0].1, "{n} neighbors, {gap} apart");
            }
            if n > 1 {
                assert!(plan.neighbors.iter().all(|(x, _)| *x > -60.0), "{n}");
            }
        }
    }

    #[test]
    fn places_of_the_generator_stand_apart_by_their_distance() {
        let stand = |id: &str, opening_ft| StandView {
            id: id.to_owned(),
            opening_ft,
            room: Room::Outside,
            ..StandView::default()
        };
        let stands = vec![stand("far", 40.0), stand("near", 6.0), stand("mid", 20.0)];
        let at = |id: &str| {
            let street = StreetView {
                generator: GeneratorView {
                    place: id.to_owned(),
                    stands: stands.clone(),
                    ..GeneratorView::default()
                },
                ..StreetView::default()
            };
            Plan::new(&street).generator.x
        };
        assert!(at("near") + 40.0 < at("mid") && at("mid") + 40.0 < at("far"));
    }

    #[test]
    fn a_foot_of_yard_is_as_long_in_every_picture_or_the_bar_is_broken() {
        let bar = |form, feet: f32, second: Option<bool>| {
            let street = StreetView {
                generator: GeneratorView {
                    place: "yard".to_owned(),
                    form,
                    second,
                    stands: vec![StandView {
                        id: "yard".to_owned(),
                        opening_ft: feet,
                        room: Room::Outside,
                        ..StandView::default()
                    }],
                    ..GeneratorView::default()
                },
                ..StreetView::default()
            };
            Plan::new(&street).distance.expect("it stands in the yard")
        };
        for form in [
            GeneratorForm::Portable,
            GeneratorForm::Inverter,
            GeneratorForm::Standby,
        ] {
            for feet in [6.0, 24.0, 40.0, 400.0] {
                let bar = bar(form, feet, Some(true));
                let true_length = (bar.to - bar.from - feet * FOOT).abs() < 0.6;
                assert!(true_length != bar.broken, "{form:?} {feet} ft: {bar:?}");
                assert!(bar.broken == (feet > 100.0), "{form:?} {feet} ft: {bar:?}");
            }
        }
    }
}
