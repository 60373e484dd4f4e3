//! Where everything of the street stands: one section from the substation end to the yard, in the order in which energy travels.
//!
//! The plan is made from the views alone, without the engine, so that the scene, its labels and its tests share one set of places.
//! Units: the plan is 1 120 wide and 720 high with y downward; a [`super::frame::Frame`] fits it into the window.
//! It does not draw to scale: heights and distances are chosen to be read from the back of a hall; lengths stand in words.

use std::collections::BTreeMap;

use bevy::math::Vec2;

use crate::session::view::{ControlView, StreetView, WireView};

use super::brush::{hang, rounded};

/// Where the ground is.
pub(super) const GROUND: f32 = 530.0;
/// Height of the phase wire on poles.
pub(super) const PHASE: f32 = 206.0;
/// Height of the neutral on poles.
pub(super) const NEUTRAL: f32 = 300.0;
/// Where the service drop meets the house.
pub(super) const WEATHERHEAD: Vec2 = Vec2::new(464.0, 250.0);
/// Middle of the main panel's top edge.
pub(super) const PANEL_TOP: Vec2 = Vec2::new(496.0, 556.0);
/// Middle of the main panel's bottom edge.
pub(super) const PANEL_BOTTOM: Vec2 = Vec2::new(496.0, 640.0);
/// The inlet on the outer wall.
pub(super) const INLET: Vec2 = Vec2::new(876.0, 486.0);

/// A conductor's course.
#[derive(Debug, Clone, Default)]
pub(crate) struct Route {
    /// Pieces: one, or two where the conductor is broken.
    pub(crate) pieces: Vec<Vec<Vec2>>,
}

impl Route {
    fn one(points: Vec<Vec2>) -> Self {
        Self {
            pieces: vec![points],
        }
    }

    /// A point on the first piece, in the middle of a hanging wire.
    pub(crate) fn middle(&self) -> Vec2 {
        self.pieces
            .first()
            .and_then(|p| p.get((p.len() / 2).min(9)))
            .copied()
            .unwrap_or_default()
    }
}

/// Where everything stands.
#[derive(Debug, Clone, Default)]
pub(crate) struct Plan {
    /// Poles: id and x.
    pub(super) poles: Vec<(String, f32)>,
    /// X of the pole with the transformer.
    pub(super) transformer: f32,
    /// X of each neighbor's house.
    pub(super) neighbors: Vec<f32>,
    /// The generator's feet.
    pub(super) generator: Vec2,
    /// Conductors.
    pub(crate) routes: BTreeMap<String, Route>,
    /// A point for each id that can be pointed at.
    pub(crate) anchors: BTreeMap<String, Vec2>,
}

impl Plan {
    /// The plan of a street; the controls of its plugs say where the ends of cords are.
    pub(crate) fn new(street: &StreetView, plugs: &[ControlView]) -> Self {
        let mut plan = Self {
            generator: stand(&street.generator.place),
            ..Self::default()
        };
        plan.place_poles(street);
        plan.place_appliances(street);
        plan.place_people(street);
        for (track, wire) in street.wires.iter().enumerate() {
            if let Some(route) = plan.route(wire, track, street, plugs) {
                plan.anchors.insert(wire.id.clone(), route.middle());
                plan.routes.insert(wire.id.clone(), route);
            }
        }
        for (id, at) in [
            ("generator", plan.generator + Vec2::new(0.0, -30.0)),
            ("panel", PANEL_TOP.midpoint(PANEL_BOTTOM)),
            ("main", PANEL_TOP + Vec2::Y * 14.0),
            ("generator-breaker", PANEL_TOP + Vec2::Y * 20.0),
            ("house", Vec2::new(620.0, 330.0)),
            (
                "transformer",
                Vec2::new(plan.transformer + 18.0, NEUTRAL - 24.0),
            ),
        ] {
            plan.anchors.insert(id.to_owned(), at);
        }
        plan
    }

    fn place_poles(&mut self, street: &StreetView) {
        const LEFT: f32 = 40.0;
        const RIGHT: f32 = 392.0;
        let last = street.poles.iter().map(|p| p.at_ft).fold(1.0, f32::max);
        for pole in &street.poles {
            let x = LEFT + (RIGHT - LEFT) * pole.at_ft / last;
            self.poles.push((pole.id.clone(), x));
            self.anchors.insert(pole.id.clone(), Vec2::new(x, PHASE));
            if pole.transformer {
                self.transformer = x;
            }
        }
        for (i, neighbor) in (0_u8..).zip(&street.neighbors) {
            let x = self.transformer - 62.0 - 92.0 * f32::from(i);
            self.neighbors.push(x);
            self.anchors
                .insert(neighbor.id.clone(), Vec2::new(x, GROUND - 50.0));
        }
    }

    fn place_appliances(&mut self, street: &StreetView) {
        let mut spare = (0_u8..).map(|i| Vec2::new(640.0 + 36.0 * f32::from(i % 4), 384.0));
        for appliance in &street.appliances {
            let at = spot(&appliance.id)
                .or_else(|| spare.next())
                .unwrap_or_default();
            self.anchors.insert(appliance.id.clone(), at);
        }
    }

    fn place_people(&mut self, street: &StreetView) {
        for person in &street.people {
            let pole = self
                .poles
                .iter()
                .find(|(id, _)| *id == person.place)
                .map(|(_, x)| *x);
            let at = match (pole, person.place.as_str(), person.id.as_str()) {
                (Some(x), _, _) => Vec2::new(x + 34.0, PHASE + 10.0),
                (None, "house", "learner") => Vec2::new(536.0, 652.0),
                (None, "house", _) => Vec2::new(690.0, 520.0),
                (None, "away", _) => continue,
                (None, _, "learner") => Vec2::new(936.0, GROUND),
                (None, _, _) => Vec2::new(972.0, GROUND),
            };
            self.anchors.insert(person.id.clone(), at);
        }
    }

    fn route(
        &self,
        wire: &WireView,
        track: usize,
        street: &StreetView,
        plugs: &[ControlView],
    ) -> Option<Route> {
        let secondary = Vec2::new(self.transformer + 20.0, NEUTRAL + 4.0);
        match wire.id.as_str() {
            "drop" => {
                let mut points = hang(secondary, WEATHERHEAD, 16.0);
                points.extend(rounded(
                    &[
                        Vec2::new(446.0, 262.0),
                        Vec2::new(446.0, 600.0),
                        Vec2::new(477.0, 600.0),
                    ],
                    6.0,
                ));
                Some(Route::one(points))
            }
            "bus" => Some(Route::one(vec![
                PANEL_TOP + Vec2::Y * 10.0,
                PANEL_BOTTOM - Vec2::Y * 8.0,
            ])),
            "inlet" => Some(Route::one(rounded(
                &[
                    INLET,
                    Vec2::new(862.0, 486.0),
                    Vec2::new(862.0, 531.0),
                    Vec2::new(508.0, 531.0),
                    Vec2::new(508.0, PANEL_TOP.y),
                ],
                6.0,
            ))),
            id => {
                if let Some(number) = id.strip_prefix("span-") {
                    self.span(number, street)
                } else if let Some(name) = id.strip_prefix("drop-") {
                    let x = self.anchors.get(name)?.x;
                    Some(Route::one(hang(
                        secondary,
                        Vec2::new(x + 26.0, GROUND - 92.0),
                        14.0,
                    )))
                } else if let Some(name) = id.strip_prefix("branch-") {
                    Some(Route::one(branch(self.circuit_end(name, street), track)))
                } else {
                    self.cord(id, plugs)
                }
            }
        }
    }

    fn span(&self, number: &str, street: &StreetView) -> Option<Route> {
        let index: usize = number.parse::<usize>().ok()?.checked_sub(1)?;
        let n_spans = street
            .wires
            .iter()
            .filter(|w| w.id.starts_with("span-"))
            .count();
        let tie = |i: usize| self.poles.get(i).map(|(_, x)| Vec2::new(*x, PHASE));
        let (from, to) = if n_spans >= self.poles.len() {
            (
                index
                    .checked_sub(1)
                    .map_or(Some(Vec2::new(-20.0, PHASE - 8.0)), tie)?,
                tie(index)?,
            )
        } else {
            (tie(index)?, tie(index + 1)?)
        };
        let id = format!("span-{number}");
        if !street.broken_spans.contains(&id) {
            return Some(Route::one(hang(from, to, 20.0)));
        }
        // The storm took it down in the middle: each piece hangs from its pole.
        let width = to.x - from.x;
        let near = [
            from,
            from + Vec2::new(width * 0.10, 46.0),
            from + Vec2::new(width * 0.20, 210.0),
            Vec2::new(from.x + width * 0.30, GROUND + 2.0),
        ];
        let far = [
            to,
            to - Vec2::new(width * 0.12, -40.0),
            to - Vec2::new(width * 0.22, -150.0),
            to - Vec2::new(width * 0.24, -236.0),
        ];
        Some(Route {
            pieces: vec![rounded(&near, 40.0), rounded(&far, 40.0)],
        })
    }

    /// Where a circuit ends: at its appliance, or at an outlet on the wall.
    fn circuit_end(&self, circuit: &str, street: &StreetView) -> Vec2 {
        street
            .appliances
            .iter()
            .find(|a| {
                a.id == circuit || a.id.starts_with(circuit) || circuit.starts_with(a.id.as_str())
            })
            .and_then(|a| self.anchors.get(&a.id).copied())
            .or_else(|| spot(circuit))
            .unwrap_or(Vec2::new(744.0, 500.0))
    }

    /// A cord that is plugged in anywhere; a stowed one is in the shed and out of sight.
    fn cord(&self, id: &str, plugs: &[ControlView]) -> Option<Route> {
        let (near, far) = ends(id, plugs);
        if near.is_none() && far.is_none() {
            return None;
        }
        let start = near.map_or(Vec2::new(1036.0, GROUND - 4.0), |_| {
            self.generator + Vec2::new(-22.0, -22.0)
        });
        let end = far.map_or(Some(Vec2::new(896.0, GROUND - 4.0)), |place| match place {
            "inlet" => Some(INLET),
            place => {
                let thing = place.strip_suffix("-outlet").unwrap_or(place);
                let at = self.anchors.get(thing).copied().or_else(|| spot(thing))?;
                Some(at + Vec2::new(0.0, -18.0))
            }
        })?;
        let floor = GROUND + 3.0;
        let along = if end.y > GROUND {
            vec![
                start,
                Vec2::new(start.x - 14.0, floor),
                Vec2::new(782.0, floor),
                Vec2::new(760.0, 566.0),
                end,
            ]
        } else {
            vec![
                start,
                Vec2::new(start.x - 14.0, floor),
                Vec2::new(end.x + 14.0, floor),
                end,
            ]
        };
        Some(Route::one(rounded(&along, 12.0)))
    }
}

/// What the two ends of a cord are plugged into, generator's end first.
/// A cord with a connector is in use where the plug of an appliance stands at it.
fn ends<'a>(cord: &str, plugs: &'a [ControlView]) -> (Option<&'a str>, Option<&'a str>) {
    let find = |end: &str| {
        let control = plugs
            .iter()
            .find(|c| c.id.strip_prefix(cord) == Some(end))?;
        Some(control.position_id.as_str()).filter(|position| *position != "stowed")
    };
    let appliance = plugs
        .iter()
        .find(|c| c.position_id == cord)
        .and_then(|c| c.id.strip_suffix("-plug"));
    (find("-generator-end"), find("-house-end").or(appliance))
}

/// Where the generator stands: its feet.
fn stand(place: &str) -> Vec2 {
    match place {
        "garage" => Vec2::new(822.0, 520.0),
        "patio" => Vec2::new(912.0, GROUND),
        "yard" => Vec2::new(1006.0, GROUND),
        _ => Vec2::new(1082.0, GROUND),
    }
}

/// Where a thing that uses power stands, by what its id says it is: the middle of its foot, or of its ceiling.
fn spot(id: &str) -> Option<Vec2> {
    const SPOTS: [(&str, Vec2); 24] = [
        ("kitchen-light", Vec2::new(556.0, 400.0)),
        ("living-light", Vec2::new(698.0, 400.0)),
        ("bedroom-light", Vec2::new(546.0, 270.0)),
        ("hall-light", Vec2::new(694.0, 270.0)),
        ("basement-light", Vec2::new(590.0, 537.0)),
        ("garage-light", Vec2::new(822.0, 436.0)),
        ("fridge", Vec2::new(503.0, 520.0)),
        ("freezer", Vec2::new(796.0, 520.0)),
        ("microwave", Vec2::new(566.0, 470.0)),
        ("range", Vec2::new(604.0, 520.0)),
        ("furnace", Vec2::new(574.0, 652.0)),
        ("water-heater", Vec2::new(624.0, 652.0)),
        ("dryer", Vec2::new(678.0, 652.0)),
        ("washer", Vec2::new(632.0, 652.0)),
        ("sump", Vec2::new(738.0, 652.0)),
        ("well", Vec2::new(894.0, GROUND)),
        ("air-conditioner", Vec2::new(420.0, GROUND)),
        ("television", Vec2::new(752.0, 500.0)),
        ("living", Vec2::new(752.0, 500.0)),
        ("bathroom", Vec2::new(700.0, 372.0)),
        ("garage", Vec2::new(806.0, 500.0)),
        ("bedroom", Vec2::new(590.0, 372.0)),
        ("kitchen", Vec2::new(540.0, 480.0)),
        ("light", Vec2::new(698.0, 400.0)),
    ];
    SPOTS
        .iter()
        .find(|(word, _)| id.contains(word))
        .map(|(_, at)| *at)
}

/// A branch circuit's way through walls and floors: each has a track of its own.
fn branch(end: Vec2, track: usize) -> Vec<Vec2> {
    #[expect(clippy::cast_precision_loss, reason = "a remainder below eight")]
    let lane = (track % 8) as f32;
    if end.y > GROUND + 10.0 {
        let ceiling = 541.0 + lane * 2.5;
        let side = Vec2::new(PANEL_TOP.x + 19.0, 574.0 + lane * 6.0);
        let rise = Vec2::new(521.0 + lane * 2.5, side.y);
        let drop = if end.y < 545.0 { 6.0 } else { 84.0 };
        let top = Vec2::new(end.x, end.y - drop);
        return rounded(
            &[
                side,
                rise,
                Vec2::new(rise.x, ceiling),
                Vec2::new(end.x, ceiling),
                top,
            ],
            3.0,
        );
    }
    let chase = 460.0 + lane * 2.4;
    let out = Vec2::new(PANEL_TOP.x - 19.0, 566.0 + lane * 4.0);
    if end.x < 440.0 {
        return rounded(
            &[
                out,
                Vec2::new(chase, out.y),
                Vec2::new(chase, 540.0),
                Vec2::new(end.x, 540.0),
                end,
            ],
            3.0,
        );
    }
    let joist = if end.y < 386.0 {
        if end.y < 300.0 { 264.0 } else { 389.0 + lane }
    } else if end.y < 410.0 {
        388.0 + lane
    } else {
        523.0 + lane
    };
    let mut points = vec![
        out,
        Vec2::new(chase, out.y),
        Vec2::new(chase, joist),
        Vec2::new(end.x, joist),
    ];
    if (end.y - joist).abs() > 8.0 {
        points.push(end - Vec2::Y * 12.0);
    }
    rounded(&points, 3.0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::session::view::{ApplianceView, NeighborView, PoleView};

    fn street() -> StreetView {
        let wire = |id: &str| WireView {
            id: id.to_owned(),
            ..WireView::default()
        };
        StreetView {
            poles: (0_u8..4)
                .map(|i| PoleView {
                    id: format!("pole-{}", i + 1),
                    at_ft: f32::from(i) * 150.0,
                    transformer: i == 3,
                    ..PoleView::default()
                })
                .collect(),
            wires: [
                "span-1",
                "span-2",
                "span-3",
                "drop",
                "inlet",
                "bus",
                "branch-fridge",
                "drop-neighbor-1",
            ]
            .map(wire)
            .to_vec(),
            broken_spans: vec!["span-2".to_owned()],
            neighbors: vec![NeighborView {
                id: "neighbor-1".to_owned(),
                ..NeighborView::default()
            }],
            appliances: vec![ApplianceView {
                id: "fridge".to_owned(),
                ..ApplianceView::default()
            }],
            ..StreetView::default()
        }
    }

    #[test]
    fn every_conductor_of_the_street_has_a_course() {
        let street = street();
        let plan = Plan::new(&street, &[]);
        for wire in &street.wires {
            let route = plan.routes.get(&wire.id);
            assert!(
                route.is_some_and(|r| r.pieces.iter().all(|p| p.len() >= 2)),
                "{}",
                wire.id
            );
        }
    }

    #[test]
    fn a_broken_span_is_two_pieces_and_others_are_one() {
        let plan = Plan::new(&street(), &[]);
        for (id, n) in [("span-1", 1), ("span-2", 2), ("span-3", 1)] {
            assert_eq!(plan.routes.get(id).map(|r| r.pieces.len()), Some(n), "{id}");
        }
    }
}
