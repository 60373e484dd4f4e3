//! What the solver says for a site in given positions: volts, amps, watts, and what each conductor is fed by.
//!
//! Derived, never stored in a file; a number here counts only while `converged` holds.

use std::sync::Arc;

use crate::units::Complex;

use super::control::ControlId;

/// Names of the places and things that readings are kept for.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Names {
    /// Points: where a tester can be held.
    pub points: Vec<String>,
    /// Things with a current: breakers, cords, spans, drops.
    pub things: Vec<String>,
    /// Ground-fault devices.
    pub gfcis: Vec<ControlId>,
}

/// Which sources reach a conductor, by the graph.
#[expect(clippy::struct_excessive_bools, reason = "one flag a source")]
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub struct Fed {
    /// The utility does.
    pub utility: bool,
    /// The generator does.
    pub generator: bool,
    /// The battery does.
    pub battery: bool,
    /// The set of a neighbor who lends a cord does.
    pub lent: bool,
}

/// A range from low to high.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Range {
    /// The least.
    pub low: f64,
    /// The most.
    pub high: f64,
}

/// Readings at a point.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct PointReading {
    /// The higher of its hots' volts to neutral.
    pub volts: f64,
    /// Volts to neutral of its first and its second hot; 0 for one that isn't there.
    pub legs_v: [f64; 2],
    /// Volts between its two hots; 0 where there is one.
    pub volts_across: f64,
    /// Volts to neutral of its two hots as phasors of one frequency; `None` where there is one, or where sources that aren't synchronized meet.
    pub phasors: Option<[Complex; 2]>,
    /// The higher of its hots' volts to remote earth; `None` where its island isn't referenced to earth.
    pub volts_to_earth: Option<f64>,
    /// What feeds it.
    pub fed: Fed,
}

/// Readings of an appliance.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct ApplianceReading {
    /// Volts across it.
    pub volts: f64,
    /// Volts as a fraction of its rated volts.
    pub pu: f64,
    /// Amps through it.
    pub amps: f64,
    /// Watts it takes.
    pub watts: f64,
    /// What feeds it.
    pub fed: Fed,
}

/// Readings of the generator.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct GeneratorReading {
    /// Volts between its two hots.
    pub volts: f64,
    /// Amps through the busier half.
    pub amps: f64,
    /// Watts it delivers; negative when it is driven.
    pub watts: f64,
    /// Reactive volt-amperes it delivers.
    pub vars: f64,
    /// Watts it is asked for: more than it delivers while its engine holds it down.
    pub asked_w: f64,
    /// Hertz that it makes; 0 while it makes no volts.
    pub hz: f64,
    /// Whether a ceiling of field, engine or current holds it down.
    pub limited: bool,
    /// Whether it is tied to a source that isn't the house's own, hot to hot: the utility, or a neighbor's set.
    pub tied: bool,
}

/// Readings of the battery's inverter.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct BatteryReading {
    /// Volts between its two hots.
    pub volts: f64,
    /// Watts it delivers; negative when the sun charges it.
    pub watts: f64,
    /// Watts it is asked for: more than it delivers while it is held down.
    pub asked_w: f64,
    /// Watts it charges with from the side of the utility.
    pub charge_w: f64,
}

/// What a body at the line has across and through it, as a range over unknown constants.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Shock {
    /// Touch voltage, volts.
    pub volts: Range,
    /// Amps through the body.
    pub amps: Range,
}

/// Everything the solver says.
#[derive(Debug, Clone, PartialEq)]
pub struct Readings {
    /// Whether the solution converged and its balances hold.
    pub converged: bool,
    /// Points, in the order of the names.
    pub points: Vec<PointReading>,
    /// Amps of things, in the order of the names: of the leg that carries more.
    pub amps: Vec<f64>,
    /// Amps of the leg that carries less; the same where there is one leg.
    pub less_a: Vec<f64>,
    /// Amps of both legs as phasors, turning with those of the volts, in the order of the names; `None` where there is one leg, or where sources that aren't synchronized meet.
    pub legs_a: Vec<Option<[Complex; 2]>>,
    /// Amps that pass each ground-fault device one way only, in the order of the names.
    pub residual_a: Vec<f64>,
    /// Ohms of the loop that each ground-fault device sees through the neutral behind it and a ground, while it is fed; in the order of the names.
    pub neutral_loop_ohm: Vec<Option<f64>>,
    /// Appliances, in the order of the site's.
    pub appliances: Vec<ApplianceReading>,
    /// The generator.
    pub generator: GeneratorReading,
    /// The battery; zeros where there is none.
    pub battery: BatteryReading,
    /// Watts that the solar inverter delivers.
    pub solar_w: f64,
    /// The worker's body, when it touches the line and something feeds it.
    pub shock: Option<Shock>,
    /// Names of points and things.
    pub names: Arc<Names>,
}

impl Readings {
    /// Readings at a point; zeros for a name that isn't there.
    pub fn point(&self, name: &str) -> PointReading {
        let index = self.names.points.iter().position(|p| p == name);
        index
            .and_then(|i| self.points.get(i))
            .copied()
            .unwrap_or_default()
    }

    /// Amps of a thing, of the leg that carries more; 0 for a name that isn't there.
    pub fn amps_of(&self, thing: &str) -> f64 {
        self.of_thing(&self.amps, thing)
    }

    /// Amps of the leg of a thing that carries less; 0 for a name that isn't there.
    pub fn less_of(&self, thing: &str) -> f64 {
        self.of_thing(&self.less_a, thing)
    }

    /// Amps of both legs of a thing as phasors; `None` for a name that isn't there, or as said at [`Self::legs_a`].
    pub fn phasors_of(&self, thing: &str) -> Option<[Complex; 2]> {
        let index = self.names.things.iter().position(|t| t == thing)?;
        self.legs_a.get(index).copied().flatten()
    }

    fn of_thing(&self, amps: &[f64], thing: &str) -> f64 {
        let index = self.names.things.iter().position(|t| t == thing);
        let amps = index.and_then(|i| amps.get(i));
        amps.copied().unwrap_or_default()
    }

    /// What a ground-fault device sees: residual amps, and the ohms of the loop through neutral and ground if there is one.
    pub fn ground_fault(&self, device: ControlId) -> (f64, Option<f64>) {
        let index = self.names.gfcis.iter().position(|g| *g == device);
        let residual = index.and_then(|i| self.residual_a.get(i)).copied();
        let ohm = index.and_then(|i| self.neutral_loop_ohm.get(i)).copied();
        (residual.unwrap_or_default(), ohm.flatten())
    }

    /// An appliance's readings; zeros for an index that isn't there.
    pub fn appliance(&self, index: usize) -> ApplianceReading {
        self.appliances.get(index).copied().unwrap_or_default()
    }
}
