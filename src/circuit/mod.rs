//! The mathematics of networks: steady-state phasors at one frequency, every conductor and earth included.
//!
//! Complex nodal analysis with a sparse L D Lᵀ factor of fixed order; a load change computes only the columns that
//! depend on it, and gives the bits of a fresh solve.
//! Nothing is at 0 V by assumption but remote earth: neutrals and grounds are conductors like any other.
//! An island without a path to earth is found by the graph and solved against a node of its own.
//!
//! Not covered: harmonics, transients, saturation, frequency droop, arcs.
//! Accuracy: ten digits against two independent general-purpose solvers on split-phase networks (in the tests);
//! Kirchhoff's current law to 1e-9 per unit in every answer called converged.
//! Small admittances beside a closed switch keep their digits too.
//! The volts to earth of an island that hangs on earth by R ohms alone carry rounding of about 1e-12 A times R.

mod assembly;
mod audit;
mod dense;
mod error;
mod factor;
mod islands;
mod layout;
mod load;
mod network;
mod ordering;
mod regulate;
mod solution;
mod solve;
mod solver;
mod source;
mod windings;
mod work;

pub use error::NetworkError;
pub use islands::SourceSet;
pub use load::{FLOOR_PU, Load};
pub use network::{BranchId, Conductor, Network, NodeId};
pub use solution::Solution;
pub use solver::Solver;
pub use source::{Ceiling, Group, Limit, MAX_GROUPS, MAX_SOURCES, Port, SourceSpec};
pub use windings::{CenterTapped, Windings};
pub use work::Work;
