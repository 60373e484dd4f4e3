//! A cord that a neighbor lends: their own set, their cord, and its end within the learner's reach.
//!
//! The set stands at the neighbor's and runs all along; nobody here can stop it, and its cord ends at a connector for one plug.
//! It is a source of 120 V of its own, not in step with the house's generator.
//! Its volts sag when it is asked for more than it has, as its ceilings say.
//! Not covered: its shutting off by itself, its fuel and exhaust, and how warm its cord gets.

use crate::apparatus::cord;
use crate::apparatus::generator::{GeneratorSpec, Reactance};
use crate::circuit::Ceiling;
use crate::units::Complex;

/// Volts that it is lent at.
pub(super) const LENT_V: f64 = 120.0;

/// A neighbor's set with the cord that is lent.
#[derive(Debug, Clone, PartialEq)]
pub struct Lent {
    /// Name of the cord, and of its end as a point.
    pub name: String,
    /// What the set's plate says.
    pub spec: GeneratorSpec,
    /// The cord's type, gauge and length.
    pub make: cord::Cord,
}

impl Lent {
    /// Impedance between its EMF and the plug of its cord, ohms: all of its watts come at one outlet of 120 V.
    pub(super) fn impedance(&self, which: Reactance) -> Complex {
        let share = LENT_V / self.spec.rated_v;
        self.spec.impedance(which) * (share * share)
    }

    /// What holds it while it stands alone.
    pub(super) fn ceiling(&self) -> Ceiling {
        Ceiling {
            set_v: LENT_V,
            emf_max_pu: self.spec.field_max_pu,
            power_max_w: self.spec.surge_w,
            current_max_a: self.spec.surge_w / LENT_V,
        }
    }
}
