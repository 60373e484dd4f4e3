//! The way that energy takes from a source to a point, over the contacts as they stand and by what carries current.
//!
//! Walked over the wiring of a site with the readings of one moment; never written down.
//! Where several ways lead there, the one that carries current is told.
//! Where none is closed, the one with the fewest open contacts is: these are what holds the energy back.

use super::control::{ControlId, Positions};
use super::edges::Walk;
use super::plant::Plant;
use super::readings::{Fed, Readings};

/// Amps below which a thing counts as carrying nothing.
pub const CARRIES_A: f64 = 0.05;

/// A source that energy can come from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Supply {
    /// The utility.
    Utility,
    /// The generator.
    Generator,
    /// The battery's inverter.
    Battery,
    /// The sun on the roof.
    Sun,
    /// The set of a neighbor who lends a cord.
    Lent,
}

impl Supply {
    /// Whether it is among what feeds a conductor; the sun never is, for it feeds nothing by itself.
    pub fn feeds(self, fed: Fed) -> bool {
        match self {
            Self::Utility => fed.utility,
            Self::Generator => fed.generator,
            Self::Battery => fed.battery,
            Self::Sun => false,
            Self::Lent => fed.lent,
        }
    }
}

/// A thing that energy passes.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Passed<'a> {
    /// The thing.
    pub thing: &'a str,
    /// Whether it stands open and holds the energy back.
    pub open: bool,
    /// The last point on its way where a tester can be held.
    pub point: Option<&'a str>,
}

impl Plant {
    /// The things passed on the way from a source to a point, nearest the source first; `crosses` says which open contacts may lie on it.
    pub fn way(
        &self,
        (positions, readings): (&Positions, &Readings),
        from: Supply,
        to: &str,
        crosses: &dyn Fn(ControlId) -> bool,
    ) -> Option<Vec<Passed<'_>>> {
        let wiring = &self.wiring;
        let sun = wiring.points.iter().find(|p| p.name == "solar-terminals");
        let starts = match from {
            Supply::Utility => wiring.feeds.as_slice(),
            Supply::Generator => &wiring.generator_hots,
            Supply::Battery => wiring.battery.as_ref().map_or(&[][..], |(_, hots)| hots),
            Supply::Sun => sun.map_or(&[][..], |p| &p.hots),
            Supply::Lent => wiring.lent.as_ref().map_or(&[][..], |(_, hot)| hot),
        };
        let end = wiring.points.iter().find(|p| p.name == to)?;
        let metered = |thing: &str| wiring.meters.iter().any(|m| m.thing == thing);
        let walk = Walk {
            positions,
            carries: &|thing| !metered(thing) || readings.amps_of(thing) >= CARRIES_A,
            crosses,
        };
        let mut way: Vec<Passed<'_>> = Vec::new();
        for step in wiring.edges.way(&walk, starts, &end.hots)? {
            let mut points = wiring.points.iter();
            let point = points.find(|p| p.hots.contains(&step.end));
            let point = point.map(|p| p.name.as_str());
            match way.last_mut() {
                Some(last) if last.thing == step.thing => {
                    last.open |= step.open;
                    last.point = point.or(last.point);
                }
                _ => way.push(Passed {
                    thing: step.thing,
                    open: step.open,
                    point,
                }),
            }
        }
        Some(way)
    }
}
