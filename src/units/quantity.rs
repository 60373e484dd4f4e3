//! Quantities at module borders: one newtype a unit, only the operators that mean something.
//!
//! Display is for logs and tests; what a learner reads is formatted by `words` in their own language.

use core::fmt;
use core::ops::{Add, Mul, Sub};

macro_rules! quantity {
    ($(#[$doc:meta])* $name:ident, $unit:literal) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Default)]
        pub struct $name(pub f64);

        impl Add for $name {
            type Output = Self;
            fn add(self, other: Self) -> Self {
                Self(self.0 + other.0)
            }
        }

        impl Sub for $name {
            type Output = Self;
            fn sub(self, other: Self) -> Self {
                Self(self.0 - other.0)
            }
        }

        impl Mul<f64> for $name {
            type Output = Self;
            fn mul(self, factor: f64) -> Self {
                Self(self.0 * factor)
            }
        }

        impl fmt::Display for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                write!(f, concat!("{} ", $unit), self.0)
            }
        }
    };
}

quantity! {
    /// Volts, RMS magnitude.
    Volts, "V"
}
quantity! {
    /// Amps, RMS magnitude.
    Amps, "A"
}
quantity! {
    /// Ohms.
    Ohms, "Ω"
}
quantity! {
    /// Watts.
    Watts, "W"
}
quantity! {
    /// Degrees Celsius.
    Celsius, "°C"
}
quantity! {
    /// Parts per million by volume, of carbon monoxide in air.
    Ppm, "ppm"
}
