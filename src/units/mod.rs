//! Quantities, drill time, complex numbers and portable mathematics.
//!
//! Everything that a module border carries has a unit: a newtype here, or the unit as the last word of a name inside a solver's loop.
//! This module knows nothing of circuits or of people.
//! Accuracy: `f64` throughout; [`portable`] gives the same bits on every platform because it goes through one pure-Rust library.

mod day;
pub mod portable;
mod quantity;
mod time;

pub use day::Day;
pub use num_complex::Complex64 as Complex;
pub use quantity::{Amps, Celsius, Ohms, Ppm, Volts, Watts};
pub use time::DrillTime;
