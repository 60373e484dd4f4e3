//! Where everything of the street stands: one section from the substation end to the yard, in the order in which energy travels.
//!
//! The plan is made from the views alone, without the engine, so that the scene, its labels and its tests share one set of places.
//! Poles, neighbors, places for the generator and things in the house may be any number: what doesn't fit at its usual size is drawn smaller.
//! Units: the plan is 1 120 wide and 720 high with y downward; a [`super::frame::Frame`] fits it into the window.
//! It does not draw to scale: heights and distances are chosen to be read from the back of a hall; lengths stand in words.

use std::collections::BTreeMap;

use bevy::math::{Rect, Vec2};

use crate::session::view::{GeneratorView, PersonState, Room, StreetView, WireKind};

use super::equipment;
use super::rooms::{CELLAR_FLOOR, FLOOR, House, LEFT};
use super::routes;
use super::routes::Route;

/// Where the ground is.
pub(super) const GROUND: f32 = 530.0;
/// Height of the phase wire on poles.
pub(super) const PHASE: f32 = 206.0;
/// Height of the neutral on poles.
pub(super) const NEUTRAL: f32 = 300.0;
/// Left and right end of the line of poles.
const POLES: (f32, f32) = (40.0, 392.0);

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
    /// Power inlets on the outer wall, by their ids.
    pub(super) inlets: BTreeMap<String, Vec2>,
    /// The generator's feet.
    pub(super) generator: Vec2,
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
        let mut plan = Self {
            generator: stand(&street.generator, &house),
            inlets: inlets.collect(),
            boxes: boxes.into_iter().collect(),
            house,
            pole_scale: 1.0,
            ..Self::default()
        };
        plan.place_poles(street);
        plan.place_things(street);
        plan.place_people(street);
        plan.anchors.extend(plan.inlets.clone());
        plan.routes = routes::routes(street, &plan);
        for (id, route) in &plan.routes {
            plan.anchors.insert(id.clone(), route.middle());
        }
        for (id, rect) in &plan.boxes {
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
        // An outlet is behind the thing that belongs there, or on its room's wall.
        let mut on_wall: BTreeMap<Room, f32> = BTreeMap::new();
        for outlet in &street.outlets {
            let spots = outlet.appliances.iter();
            let at = spots
                .filter_map(|id| self.house.spots.get(id))
                .map(super::rooms::Spot::socket)
                .next()
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
                (None, "house", _) => Vec2::new(690.0, FLOOR),
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

/// Where the generator stands: its feet.
/// Places out of doors follow each other by their distance from the house.
fn stand(generator: &GeneratorView, house: &House) -> Vec2 {
    let here = generator.stands.iter().find(|s| s.id == generator.place);
    let Some(here) = here else {
        return Vec2::new(house.yard.0.midpoint(house.yard.1), GROUND);
    };
    match here.room {
        _ if here.store => Vec2::new(1082.0, GROUND),
        Room::Outside => {
            let mut outside: Vec<_> = generator
                .stands
                .iter()
                .filter(|s| s.room == Room::Outside && !s.store)
                .collect();
            outside.sort_by(|a, b| a.opening_ft.total_cmp(&b.opening_ft));
            let nth = outside.iter().position(|s| s.id == here.id).unwrap_or(0);
            let (left, right) = (house.yard.0 + 26.0, house.yard.1 - 40.0);
            let share = if outside.len() > 1 {
                count(nth) / count(outside.len() - 1)
            } else {
                0.7
            };
            Vec2::new(left + (right - left).max(0.0) * share, GROUND)
        }
        Room::Garage => Vec2::new(house.right - 46.0, FLOOR),
        Room::Living | Room::Kitchen | Room::Bedroom | Room::Bathroom | Room::Basement => {
            let chamber = house.chamber(here.room);
            chamber.map_or(Vec2::new(700.0, FLOOR), |r| {
                Vec2::new(r.max.x - 46.0, r.max.y)
            })
        }
    }
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
}
