//! Wires in walls: how warm each branch circuit and each inlet's wire gets.
//!
//! `apparatus::branch_wire` in closed form for the amps of the stretch; no integration error but rounding.
//! They only matter where a breaker is too big for its wire or does not trip; the circuit itself keeps them at the 75 °C of the resistance tables.
//! Not covered: feeders of subpanels, splices and terminals, wires in thermal insulation, aluminum.

use crate::site::{Readings, Site};

use super::conditions::Conditions;

/// Air around a wire in a wall, °C: a heated house.
pub const WALL_C: f64 = 20.0;

impl Conditions {
    /// Temperature of a wire by its index among [`Site::wires`], °C.
    pub fn wire_c(&self, index: usize) -> f64 {
        self.wires.get(index).copied().unwrap_or(WALL_C)
    }

    pub(super) fn drift_wires(&mut self, site: &Site, readings: &Readings, seconds: f64) {
        for (wire, celsius) in site.wires().zip(&mut self.wires) {
            let heat = wire.heat;
            let amps = readings.amps_of(&wire.meter);
            let idle = amps < 1e-9 && (*celsius - WALL_C).abs() < 1e-9;
            if let Some(heat) = heat.filter(|_| !idle) {
                *celsius = heat.temperature_after(*celsius, amps, WALL_C, seconds);
            }
        }
    }
}
