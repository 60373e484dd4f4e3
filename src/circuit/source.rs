//! Sources: EMFs behind impedances, with what limits them.
//!
//! A source switched off is absent, EMF and impedance both: a stopped machine loads nothing here.
//! Not covered: the machine's own dynamics; ceilings are a sizing limit, not a machine model.

use crate::circuit::network::NodeId;
use crate::units::Complex;

/// The most groups of sources that aren't synchronized with each other.
pub const MAX_GROUPS: usize = 4;

/// The most sources of one network.
pub const MAX_SOURCES: usize = 64;

/// A frequency group, 0 to 3.
/// Sources of one group are tied in step; sources of different groups are not synchronized, so each group is solved
/// with the EMFs of the others at zero and magnitudes are combined by root-sum-square.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Group(pub u8);

/// One EMF of a source.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Port {
    /// The positive terminal.
    pub a: NodeId,
    /// The negative terminal.
    pub b: NodeId,
    /// EMF in volts, RMS phasor.
    pub emf_v: Complex,
    /// Impedance behind which the EMF stands, ohms.
    pub z: Complex,
}

/// What limits a source that regulates its voltage.
///
/// The regulated voltage is the magnitude of the sum of the terminal voltages of all ports, each turned back by the
/// angle of its own EMF: 240 V for two halves of 120 V in series, three times one phase for three balanced phases.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ceiling {
    /// Regulated voltage to hold, volts.
    pub set_v: f64,
    /// The highest scale of the EMFs: what the field can do.
    pub emf_max_pu: f64,
    /// The most power that all ports together deliver, watts; infinite for none.
    pub power_max_w: f64,
    /// The most current of any port, amps; infinite for none.
    pub current_max_a: f64,
}

/// Which ceiling holds a source back from its regulated voltage.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Limit {
    /// The field: the EMF can't be raised further.
    Field,
    /// The engine: the power that it can deliver.
    Power,
    /// The current that it can deliver.
    Current,
}

/// A source as it is added to a network.
#[derive(Debug, Clone, PartialEq)]
pub struct SourceSpec {
    /// Its EMFs; all are scaled by one factor.
    pub ports: Vec<Port>,
    /// What it is synchronized with.
    pub group: Group,
    /// Running.
    pub on: bool,
    /// Its limits; without them the EMFs are fixed.
    pub ceiling: Option<Ceiling>,
}

impl Ceiling {
    /// Regulated voltage and field alone, without limits of power and current.
    pub fn field(set_v: f64, emf_max_pu: f64) -> Self {
        Self {
            set_v,
            emf_max_pu,
            power_max_w: f64::INFINITY,
            current_max_a: f64::INFINITY,
        }
    }

    pub(super) fn is_valid(&self) -> bool {
        let positive = |v: f64| v > 0.0;
        self.set_v.is_finite()
            && self.emf_max_pu.is_finite()
            && [
                self.set_v,
                self.emf_max_pu,
                self.power_max_w,
                self.current_max_a,
            ]
            .into_iter()
            .all(positive)
    }
}
