//! The only caller of transcendental functions: the same bits on every platform, in every profile.
//!
//! Covers what the models need and no more.
//! Square roots are exact by IEEE 754 and may be taken anywhere; everything else goes through here.

use crate::units::Complex;

/// *e* to the power `x`.
pub fn exp(x: f64) -> f64 {
    libm::exp(x)
}

/// Natural logarithm of `x`.
pub fn ln(x: f64) -> f64 {
    libm::log(x)
}

/// `x` to the power `y`.
pub fn power(x: f64, y: f64) -> f64 {
    libm::pow(x, y)
}

/// Magnitude of a phasor.
/// Not `hypot`: for the magnitudes met here (1e-12 to 1e6) the plain form neither overflows nor loses digits.
pub fn magnitude(c: Complex) -> f64 {
    c.norm_sqr().sqrt()
}

/// Angle of a phasor in degrees, in the range -180 to 180.
pub fn angle_deg(c: Complex) -> f64 {
    libm::atan2(c.im, c.re) * (180.0 / core::f64::consts::PI)
}

/// The phasor with this magnitude and this angle in degrees.
pub fn phasor(magnitude: f64, angle_deg: f64) -> Complex {
    let angle = angle_deg * (core::f64::consts::PI / 180.0);
    Complex::new(magnitude * libm::cos(angle), magnitude * libm::sin(angle))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_phasor_keeps_its_magnitude_and_angle() {
        let c = phasor(120.0, -120.0);
        assert!((magnitude(c) - 120.0).abs() < 1e-12, "magnitude {}", magnitude(c));
        assert!((angle_deg(c) + 120.0).abs() < 1e-12, "angle {}", angle_deg(c));
    }
}
