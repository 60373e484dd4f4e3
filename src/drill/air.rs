//! The air of house and garage, the blood of those inside, and the alarm in the hall.
//!
//! Exhaust goes where the generator stands; doors and window decide what passes; the engine gives gas and takes oxygen by its load.
//! Steps end at whole seconds and at actions, so a stretch may be cut anywhere on the grid without changing a bit.
//! Not covered: the learner's own breathing beside the engine, people who walk from room to room, an alarm in the garage; those who sleep and the home next door are in `indoors`.

use crate::hazard::air::{self, Air, Exchange, Outlet, Rooms};
use crate::hazard::blood::{Activity, cohb_after};
use crate::hazard::emission::{Engine, FRESH_O2, Make};
use crate::hazard::monoxide::{MG_PER_M3_PER_PPM, Placement, alarm_after, drawn_in};
use crate::site::{Place, Positions, Readings, Site};

use super::conditions::Conditions;

/// The room that stands for a garage where there is none: nothing passes its walls.
const NO_GARAGE_M3: f64 = 1.0;

/// What an engine gives off at a moment, and where it goes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GasFlow {
    /// Where the exhaust goes.
    pub outlet: Outlet,
    /// Carbon monoxide given off, grams an hour.
    pub gives_g_per_h: f64,
    /// What the same engine gives off in fresh air, grams an hour.
    pub fresh_g_per_h: f64,
    /// What of it gets into the house, grams an hour: out of the garage less what comes back.
    pub enters_g_per_h: f64,
    /// What leaves the garage for the open, grams an hour.
    pub leaves_g_per_h: f64,
}

impl GasFlow {
    /// Of an engine outdoors; one with another outlet lets nothing in from there.
    pub(super) fn outdoors(engine: Engine, outlet: Outlet) -> Self {
        let gives = engine.exhaust(FRESH_O2).co_g_per_h;
        let enters = match outlet {
            Outlet::Outdoors(share) => share * gives,
            Outlet::Garage | Outlet::House => 0.0,
        };
        Self {
            outlet,
            gives_g_per_h: gives,
            fresh_g_per_h: gives,
            enters_g_per_h: enters,
            leaves_g_per_h: 0.0,
        }
    }
}

impl Conditions {
    /// What the house's own engine gives off as things stand, while it runs.
    pub fn gas_flow(
        &self,
        site: &Site,
        positions: &Positions,
        readings: &Readings,
    ) -> Option<GasFlow> {
        let (engine, outlet) = self.exhaust(site, positions, readings)?;
        let flow = GasFlow::outdoors(engine, outlet);
        let Air { garage, house } = self.air;
        let exchange = exchange(site, positions);
        let grams = |m3_per_h: f64, ppm: f64| m3_per_h * ppm * MG_PER_M3_PER_PPM / 1000.0;
        Some(match outlet {
            Outlet::Outdoors(_) => flow,
            Outlet::House => {
                let gives = engine.exhaust(house.o2).co_g_per_h;
                GasFlow {
                    gives_g_per_h: gives,
                    enters_g_per_h: gives,
                    ..flow
                }
            }
            Outlet::Garage => GasFlow {
                gives_g_per_h: engine.exhaust(garage.o2).co_g_per_h,
                enters_g_per_h: grams(exchange.between, garage.co_ppm - house.co_ppm),
                leaves_g_per_h: grams(exchange.garage_out, garage.co_ppm),
                ..flow
            },
        })
    }

    /// Carbon monoxide in the house, parts per million.
    pub fn ppm(&self) -> f64 {
        self.air.house.co_ppm
    }

    /// Lets the air drift, and with it the blood of those inside and the alarm.
    pub(super) fn drift_air(
        &mut self,
        site: &Site,
        positions: &Positions,
        readings: &Readings,
        seconds: f64,
    ) {
        let engine = self.exhaust(site, positions, readings);
        let drawn_in = self.indoors.neighbors_gas();
        let drawn_in = drawn_in.map_or(0.0, |gas| gas.enters_g_per_h);
        let before = self.ppm();
        if engine.is_some() || drawn_in > 0.0 || self.air != Air::FRESH {
            let mut exchange = exchange(site, positions);
            exchange.drawn_in_g_per_h = drawn_in;
            self.air = air::after(self.air, rooms(site), exchange, engine, seconds);
        }
        let inside = site.household_inside(positions);
        // Blood and alarm see the middle of the stretch, which is a second long at most.
        let middle = f64::midpoint(before, self.ppm());
        let breathed = if inside { middle } else { 0.0 };
        self.cohb_pct = cohb_after(self.cohb_pct, breathed, seconds, Activity::Sedentary);
        self.alarm_dose = alarm_after(self.alarm_dose, middle, seconds);
        let engine = engine.map(|(engine, _)| engine);
        self.drift_indoors(site, positions, engine, middle, seconds);
    }

    /// The engine and where its exhaust goes, while it runs.
    pub(super) fn exhaust(
        &self,
        site: &Site,
        positions: &Positions,
        readings: &Readings,
    ) -> Option<(Engine, Outlet)> {
        self.engine.running_since?;
        let place = site.generator_place(positions)?;
        let placement = if window_open(site, positions) {
            place.exposure.1
        } else {
            place.exposure.0
        };
        let placement = match placement {
            Placement::Garage if site.garage.is_none() => Placement::House,
            Placement::Garage
            | Placement::House
            | Placement::NearOpening
            | Placement::TwentyFeetAway => placement,
        };
        let spec = site.generator.spec_at(positions);
        let now = spec.fuel_gal_per_h(readings.generator.watts.max(0.0));
        let half_load = spec.fuel_gal_per_h(spec.rated_w / 2.0);
        let engine = Engine::gasoline(Make::Stock, now, half_load);
        let outlet = match placement.outlet() {
            Outlet::Outdoors(share) => {
                Outlet::Outdoors(drawn_in(share, more_air(site, positions, place)))
            }
            Outlet::Garage => Outlet::Garage,
            Outlet::House => Outlet::House,
        };
        Some((engine, outlet))
    }
}

/// How many times the air of a shut house comes in where the engine stands, if it stands near an opening with the window shut too.
fn more_air(site: &Site, positions: &Positions, place: &Place) -> f64 {
    let near = place.exposure.0 == Placement::NearOpening;
    let (shut, open) = site.air_changes_per_h;
    if near && window_open(site, positions) {
        open / shut
    } else {
        1.0
    }
}

fn window_open(site: &Site, positions: &Positions) -> bool {
    site.control_id("window")
        .is_some_and(|id| site.stands(positions, id, "open"))
}

fn rooms(site: &Site) -> Rooms {
    Rooms {
        garage_m3: site.garage.map_or(NO_GARAGE_M3, |g| g.air_m3),
        house_m3: site.air_m3,
    }
}

/// What passes the openings as they stand.
fn exchange(site: &Site, positions: &Positions) -> Exchange {
    let pick = |pair: (f64, f64), open: bool| if open { pair.1 } else { pair.0 };
    let changes = pick(site.air_changes_per_h, window_open(site, positions));
    let (garage_out, between) = site.garage.map_or((0.0, 0.0), |garage| {
        let changes = match site.position_name(positions, garage.big_door) {
            "open" => garage.changes_per_h.1,
            "half" => garage.half_changes_per_h,
            _ => garage.changes_per_h.0,
        };
        let door = site.stands(positions, garage.house_door, "open");
        let out = changes * garage.air_m3;
        (out, pick(garage.to_house_m3_per_h, door))
    });
    Exchange {
        garage_out,
        house_out: changes * site.air_m3,
        between,
        drawn_in_g_per_h: 0.0,
    }
}
