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

/// Share of a normal distribution that lies below `z` standard deviations from its middle, 0 to 1.
pub fn normal_share(z: f64) -> f64 {
    0.5 * libm::erfc(-z / core::f64::consts::SQRT_2)
}

/// The value at `x` of a curve through points in order of *x*: straight between them on logarithmic axes, flat beyond them.
/// All numbers above 0; no number for no points.
pub fn log_curve(points: &[(f64, f64)], x: f64) -> f64 {
    let mut below: Option<(f64, f64)> = None;
    for &(at, value) in points {
        if x <= at {
            return below.map_or(value, |(from, start)| {
                let share = ln(x / from) / ln(at / from);
                start * power(value / start, share)
            });
        }
        below = Some((at, value));
    }
    below.map_or(f64::NAN, |(_, value)| value)
}

/// Where a quantity that obeys *x'* = `source` - `rate` *x* stands after `seconds`, when it stands at `value` now.
///
/// Heat in a breaker, a cord's temperature and gas in a room all follow this law.
/// A negative rate is a runaway and grows; a rate of zero is a ramp.
/// Exact but for rounding, so advancing twice lands where one long advance lands.
pub fn first_order(value: f64, source: f64, rate: f64, seconds: f64) -> f64 {
    let gain = if rate == 0.0 {
        seconds
    } else {
        -libm::expm1(-rate * seconds) / rate
    };
    value + (source - rate * value) * gain
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
        assert!(
            (magnitude(c) - 120.0).abs() < 1e-12,
            "magnitude {}",
            magnitude(c)
        );
        assert!(
            (angle_deg(c) + 120.0).abs() < 1e-12,
            "angle {}",
            angle_deg(c)
        );
    }

    #[test]
    fn a_normal_share_is_a_half_in_the_middle_and_mirrors_about_it() {
        assert!((normal_share(0.0) - 0.5).abs() < 1e-15);
        for z in [0.3, 1.0, 2.5, 6.0] {
            let both = normal_share(z) + normal_share(-z);
            assert!((both - 1.0).abs() < 1e-15, "{z}: {both}");
        }
        let one = normal_share(1.0) - normal_share(-1.0);
        assert!((one - 0.682_689_492_137_086).abs() < 1e-14, "{one}");
    }

    #[test]
    fn a_first_order_quantity_settles_ramps_or_runs_away_and_may_be_advanced_in_parts() {
        let settled = first_order(5.0, 2.0, 0.5, 1000.0);
        assert!(
            (settled - 4.0).abs() < 1e-12,
            "settles at source / rate: {settled}"
        );
        let ramp = first_order(5.0, 2.0, 0.0, 10.0);
        assert!(
            (ramp - 25.0).abs() < 1e-12,
            "without a rate it ramps: {ramp}"
        );
        let away = first_order(1.0, 0.0, -1.0, 1.0);
        assert!(
            (away - core::f64::consts::E).abs() < 1e-12,
            "a negative rate grows: {away}"
        );
        for rate in [0.5, 0.0, -0.2, 1e-4, 1e-18] {
            let parts = first_order(first_order(3.0, 0.7, rate, 0.4), 0.7, rate, 0.6);
            let whole = first_order(3.0, 0.7, rate, 1.0);
            assert!(
                (parts - whole).abs() < 1e-14,
                "rate {rate}: {parts} in parts, {whole} at once"
            );
        }
    }
}
