//! What builds up over time in a drill, part by part: what can be said of every run by a bound alone, and what can't, with the reason.
//!
//! The bounds take everything at its worst at once, so they hold of every run whatever its order and its waits:
//! fuel and oil as if the set ran and gave all it can from the first second to the last, load as if everything in the house ran while the largest motor started.
//! Where a bound doesn't suffice nothing is proved: runs are marked by what they do, and the second judge of the tests looks at samples.

use crate::scenario::Scenario;
use crate::site::{Place, Site, Work};

use super::Standing;

/// Something that builds up, or that hangs on when things are done.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Part {
    /// The engine runs out of neither fuel nor oil.
    Fuel,
    /// The set is never asked for more than it gives.
    Overload,
    /// No gas gathers in the house.
    Gas,
    /// No cord and no wire grows too warm.
    Heat,
    /// What hangs on the order of moves and the time between them.
    Order,
}

impl Part {
    /// Its name in reports and word files.
    pub fn name(self) -> &'static str {
        match self {
            Self::Fuel => "fuel",
            Self::Overload => "overload",
            Self::Gas => "gas",
            Self::Heat => "heat",
            Self::Order => "order",
        }
    }
}

/// Each part and how far it is established of a drill.
pub fn drift(scenario: &Scenario) -> Vec<(Part, Standing)> {
    vec![
        (Part::Fuel, fuel(scenario)),
        (Part::Overload, overload(scenario)),
        (Part::Gas, gas(scenario)),
        (Part::Heat, heat(scenario)),
        (Part::Order, Standing::NotCovered("proof-order")),
    ]
}

/// Whether tank and oil last from start to end at all that the set can give; two sets burn twice as much.
fn fuel(scenario: &Scenario) -> Standing {
    let machine = &scenario.site.generator.machine;
    let spec = &scenario.site.generator.spec;
    let sets = if machine.second.is_some() { 2.0 } else { 1.0 };
    let hours = scenario.ends_at.seconds() / 3600.0;
    let has_gal = scenario.fuel_gal.unwrap_or(spec.tank_gal);
    let burnt_gal = spec.fuel_gal_per_h(spec.surge_w) * sets * hours;
    if burnt_gal > has_gal {
        Standing::NotCovered("proof-fuel")
    } else if oil_hours(scenario).is_some_and(|lasts| hours >= lasts) {
        Standing::NotCovered("proof-oil")
    } else {
        Standing::Proved
    }
}

/// Hours of running that the oil lasts at least; none where nobody has to look at it.
/// Where it is low at the start, the engine can't run until it is filled.
fn oil_hours(scenario: &Scenario) -> Option<f64> {
    let machine = &scenario.site.generator.machine;
    let full = machine.oil?.hours;
    let left = scenario
        .oil_hours
        .filter(|_| !machine.oil_low(&scenario.start));
    Some(left.map_or(full, |left| full.min(left)))
}

fn overload(scenario: &Scenario) -> Standing {
    if carries(&scenario.site) {
        Standing::Proved
    } else {
        Standing::NotCovered("proof-overload")
    }
}

/// Whether the set carries everything in the house at once, the largest motor starting.
pub(super) fn carries(site: &Site) -> bool {
    let running = site.appliances.iter().map(|a| match &a.work {
        Work::Motor(motor) => motor.running_va().re,
        Work::Resistive { watts } | Work::Electronic { watts, .. } => *watts,
    });
    let starting = site.appliances.iter().filter_map(|a| match &a.work {
        Work::Motor(motor) => Some(motor.locked_rotor_amps() * motor.volts),
        Work::Resistive { .. } | Work::Electronic { .. } => None,
    });
    let asked_w = running.sum::<f64>() + starting.fold(0.0, f64::max);
    asked_w <= site.generator.spec.rated_w
}

/// No bound is drawn for gas: a share of it is drawn in from anywhere outdoors. What differs is whether the engine can be run where it gathers.
fn gas(scenario: &Scenario) -> Standing {
    let site = &scenario.site;
    let mut usable = site.generator.places.iter().filter(|p| p.usable);
    if usable.any(Place::lets_gas_in) {
        Standing::NotCovered("proof-gas-near")
    } else {
        Standing::NotCovered("proof-gas-far")
    }
}

/// Warmth hangs on what is plugged in where and for how long; wires that are all guarded for their size leave only cords.
fn heat(scenario: &Scenario) -> Standing {
    if scenario.site.cords.is_empty() {
        Standing::NotCovered("proof-heat-wires")
    } else {
        Standing::NotCovered("proof-heat-cords")
    }
}
