//! Networks that tests and timings share: those that the program itself is held to, and a complex number.

use outage_drill::units::Complex;

pub(crate) use outage_drill::evidence::networks::{Case, split_phase};
pub(crate) use outage_drill::evidence::networks::{excite, fixed, transformer};

/// A complex number.
pub(crate) fn c(re: f64, im: f64) -> Complex {
    Complex::new(re, im)
}
