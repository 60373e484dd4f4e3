//! Loads: nothing, an impedance, or constant power with a floor below which it becomes an impedance.
//!
//! The constant-power load enters the matrix as the impedance that takes its power at rated voltage; what it takes
//! beyond that is injected and iterated, so the factor is reused.
//! Below the floor it is the impedance that takes its power *at the floor*, so power is continuous there and the
//! iteration has nothing to chatter about.
//! Hysteresis is within one solve: fallen back, it takes power again only 2 % above the floor.
//! No memory is kept between solves: every solve starts from rated voltage, so an answer depends on the network as it
//! stands and not on how it came to be.

use crate::units::Complex;

/// The floor of a constant-power load where nothing else is stated, per unit of its rated voltage.
/// Below it most small loads are closer to an impedance (common practice).
pub const FLOOR_PU: f64 = 0.8;

/// How far above its floor a fallen load takes constant power again, as a factor.
const RECOVERY: f64 = 1.02;

/// What a load takes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Load {
    /// Switched off: absent.
    Off,
    /// Ohms; the resistance must not be negative.
    Impedance(Complex),
    /// Constant power within reach of its voltage.
    ConstantPower {
        /// Watts and vars taken at any voltage above the floor; negative watts are delivered.
        va: Complex,
        /// Volts at which `va` is taken as an impedance to start from.
        rated_v: f64,
        /// Where it becomes an impedance, per unit of `rated_v`, in 0.01 to 1.
        floor_pu: f64,
    },
}

impl Load {
    /// Constant power with the usual floor.
    pub fn constant_power(va: Complex, rated_v: f64) -> Self {
        Self::ConstantPower {
            va,
            rated_v,
            floor_pu: FLOOR_PU,
        }
    }

    /// The admittance that stands in the matrix, none for a load with a value out of range.
    pub(super) fn nominal(self) -> Option<Complex> {
        match self {
            Self::Off => Some(Complex::ZERO),
            Self::Impedance(z) => passive_admittance(z),
            Self::ConstantPower {
                va,
                rated_v,
                floor_pu,
            } => {
                let in_range = va.is_finite()
                    && rated_v.is_finite()
                    && rated_v > 0.0
                    && (0.01..=1.0).contains(&floor_pu);
                in_range.then(|| va.conj() / (rated_v * rated_v))
            }
        }
    }

    pub(super) fn is_present(self) -> bool {
        match self {
            Self::Off => false,
            Self::Impedance(_) => true,
            Self::ConstantPower { va, .. } => va != Complex::ZERO,
        }
    }
}

/// The admittance of a passive impedance, none if it isn't one: not finite, zero, or with a negative resistance.
pub(super) fn passive_admittance(z: Complex) -> Option<Complex> {
    let y = z.inv();
    (z.is_finite() && z.re >= 0.0 && z != Complex::ZERO && y.is_finite()).then_some(y)
}

/// A constant-power load in the course of an iteration.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Compensated {
    pub(super) va: Complex,
    pub(super) rated_v: f64,
    pub(super) floor_pu: f64,
    pub(super) fallen: bool,
    /// The voltage that it sees.
    pub(super) volts: f64,
}

impl Compensated {
    /// The admittance that the load shows at its voltage, having decided whether it falls back.
    pub(super) fn respond(&mut self) -> Complex {
        let floor_v = self.floor_pu * self.rated_v;
        self.fallen = self.volts
            < if self.fallen {
                floor_v * RECOVERY
            } else {
                floor_v
            };
        let at_v = if self.fallen { floor_v } else { self.volts };
        self.va.conj() / (at_v * at_v)
    }
}
