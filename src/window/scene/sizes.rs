//! How much room each kind of thing takes, what it stands on, and where its circuit's wire ends beside it.
//!
//! What is wired for good has a box, what is plugged in an outlet on the wall; a lamp hangs from its own wire.
//! Sizes are chosen to be told apart from afar: it does not draw to scale.

use bevy::math::Vec2;

use crate::session::view::{ApplianceKind, OutletView, StreetView};

use super::plan::{GROUND, Plan};
use super::rooms::{Mount, Spot};

/// What a wire ends at.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Plate {
    /// An outlet on the wall.
    Outlet,
    /// A box of what is wired for good.
    Box,
    /// The thing itself.
    None,
}

/// Where a wire ends: the middle of its plate.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct End {
    pub(super) at: Vec2,
    pub(super) plate: Plate,
    /// Whether it hangs from a ceiling.
    pub(super) hangs: bool,
}

/// Ends of a circuit: one beside each of its things, or the outlet on the wall where nothing is.
pub(super) fn ends(street: &StreetView, plan: &Plan, outlet: &OutletView) -> Vec<End> {
    let things = outlet.appliances.iter().filter_map(|id| {
        let thing = street.appliances.iter().find(|a| a.id == *id)?;
        Some(end(thing.kind, plan.house.spots.get(id)?))
    });
    let mut ends: Vec<End> = things.collect();
    if ends.is_empty() {
        let wall = plan.anchors.get(&outlet.id).copied();
        ends.push(on_wall(wall));
    }
    ends
}

/// An outlet on the wall with nothing before it.
pub(super) fn on_wall(at: Option<Vec2>) -> End {
    End {
        at: at.unwrap_or(Vec2::new(744.0, 500.0)),
        plate: Plate::Outlet,
        hangs: false,
    }
}

/// Where a thing's wire ends.
pub(super) fn end(kind: ApplianceKind, spot: &Spot) -> End {
    use ApplianceKind as K;
    let (at, cover, scale) = (spot.at, spot.cover(), spot.scale);
    let beside = |up: f32| Vec2::new(cover.max.x + 4.0, at.y - up * scale);
    let below = at.y > GROUND + 10.0;
    let on_top = |dx: f32| Vec2::new(at.x + dx * scale, cover.min.y - 1.0);
    let (at, plate) = match (spot.mount, kind) {
        (Mount::Ceiling, _) => (at, Plate::None),
        (Mount::Ground, _) => (at - Vec2::Y, Plate::Box),
        (Mount::Pit, _) => (at - Vec2::new(16.0, 42.0) * scale, Plate::Outlet),
        (Mount::Counter, _) => (beside(11.0), Plate::Outlet),
        (Mount::Floor, K::Furnace) if below => (on_top(15.0), Plate::Box),
        (Mount::Floor, K::WaterHeater) if below => (on_top(0.0), Plate::Box),
        (Mount::Floor, K::Charger) => (beside(30.0), Plate::Box),
        (Mount::Floor, _) if below => (beside(34.0), Plate::Outlet),
        (Mount::Floor, _) => (beside(15.0), Plate::Outlet),
    };
    End {
        at,
        plate,
        hangs: spot.mount == Mount::Ceiling,
    }
}

/// How much room a kind takes, and what it stands on.
pub(super) fn footprint(kind: ApplianceKind) -> (Vec2, Mount) {
    use ApplianceKind as K;
    let floor = |x: f32, y: f32| (Vec2::new(x, y), Mount::Floor);
    match kind {
        K::Lamp => (Vec2::new(30.0, 26.0), Mount::Ceiling),
        K::Fridge => floor(38.0, 92.0),
        K::Freezer => floor(50.0, 40.0),
        K::Microwave => (Vec2::new(40.0, 24.0), Mount::Counter),
        K::Countertop => (Vec2::new(24.0, 22.0), Mount::Counter),
        K::Range => floor(34.0, 42.0),
        K::Furnace => floor(46.0, 84.0),
        K::WaterHeater => floor(28.0, 82.0),
        K::Heater => floor(34.0, 34.0),
        K::Drum => floor(46.0, 54.0),
        K::Sump => (Vec2::new(46.0, 64.0), Mount::Pit),
        K::Well => (Vec2::new(28.0, 34.0), Mount::Ground),
        K::AirConditioner => (Vec2::new(38.0, 38.0), Mount::Ground),
        K::Fan => floor(28.0, 46.0),
        K::Television => floor(38.0, 46.0),
        K::Computer => floor(44.0, 50.0),
        K::Medical => floor(32.0, 46.0),
        K::Machine => floor(38.0, 34.0),
        K::Charger => floor(22.0, 52.0),
        K::Device => floor(28.0, 34.0),
    }
}
