//! The scale of a source's EMFs under its ceilings, in closed form.
//!
//! With everything else as it is, every terminal voltage is A + k B and every current C + k D in the scale k, so the
//! regulated voltage squared, the power and each current squared are quadratics in k.
//! The field sets k so that the voltage is held, within what it can; then power and current pull it down.
//! Several such sources are taken in turn until none moves.

use crate::circuit::source::{Ceiling, Limit};
use crate::units::Complex;
use crate::units::portable::magnitude;

/// One port of the source as a function of its own scale.
#[derive(Debug, Clone, Copy)]
pub(super) struct PortLine {
    /// Terminal volts that the others make, in the source's own group.
    pub(super) others_v: Complex,
    /// Terminal volts per unit of scale.
    pub(super) own_v: Complex,
    /// EMF per unit of scale.
    pub(super) emf_v: Complex,
    pub(super) y: Complex,
}

/// A quadratic a k² + b k + c.
#[derive(Debug, Clone, Copy, Default)]
struct Quadratic {
    a: f64,
    b: f64,
    c: f64,
}

/// What the ports of a source add up to as functions of its scale.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Sums {
    voltage: (Complex, Complex),
    others_voltage_squared: f64,
    power: Quadratic,
}

/// How much more than its ceiling counts as more: rounding of the sums.
const SLACK: f64 = 1e-12;

impl PortLine {
    fn current_line(&self) -> (Complex, Complex) {
        (-self.y * self.others_v, self.y * (self.emf_v - self.own_v))
    }

    /// The square of the port's current, with `foreign_squared` from sources of other groups.
    fn current_squared(&self, foreign_squared: f64) -> Quadratic {
        let (c, d) = self.current_line();
        square(c, d, foreign_squared)
    }

    /// The direction in which the port's voltage counts: turned back by the angle of its EMF.
    pub(super) fn turned_back(&self) -> Complex {
        let size = magnitude(self.emf_v);
        if size > 0.0 {
            self.emf_v.conj() / size
        } else {
            Complex::ONE
        }
    }
}

impl Sums {
    /// Adds a port.
    pub(super) fn add(&mut self, line: &PortLine) {
        let back = line.turned_back();
        self.voltage.0 += back * line.others_v;
        self.voltage.1 += back * line.own_v;
        let (c, d) = line.current_line();
        self.power.a += real_product(line.own_v, d);
        self.power.b += real_product(line.others_v, d) + real_product(line.own_v, c);
        self.power.c += real_product(line.others_v, c);
    }

    /// Adds what one group of sources that aren't synchronized with it makes: the sum of its turned-back voltages, and
    /// the power at the ports.
    pub(super) fn add_foreign(&mut self, voltage: Complex, power_w: f64) {
        self.others_voltage_squared += voltage.norm_sqr();
        self.power.c += power_w;
    }

    /// The scale under field and power, and what holds it.
    pub(super) fn scale(&self, ceiling: &Ceiling) -> (f64, Option<Limit>) {
        let (a, b) = self.voltage;
        let voltage = square(a, b, self.others_voltage_squared);
        let (k, limit) = voltage.rise_to(ceiling.set_v * ceiling.set_v, ceiling.emf_max_pu);
        match self.power.fall_to(ceiling.power_max_w, k) {
            Some(lower) => (lower, Some(Limit::Power)),
            None => (k, limit),
        }
    }
}

/// The scale lowered from `k` so that a port's current keeps its ceiling; none if it does already.
pub(super) fn lower_for_current(
    line: &PortLine,
    foreign_squared: f64,
    ceiling: &Ceiling,
    k: f64,
) -> Option<f64> {
    let most = ceiling.current_max_a * ceiling.current_max_a;
    line.current_squared(foreign_squared).fall_to(most, k)
}

fn real_product(a: Complex, b: Complex) -> f64 {
    a.re * b.re + a.im * b.im
}

/// |p + k q|² + rest.
fn square(p: Complex, q: Complex, rest: f64) -> Quadratic {
    Quadratic {
        a: q.norm_sqr(),
        b: 2.0 * real_product(p, q),
        c: p.norm_sqr() + rest,
    }
}

impl Quadratic {
    fn at(&self, k: f64) -> f64 {
        (self.a * k + self.b) * k + self.c
    }

    /// The two places where it has a value, ascending; none if it hasn't.
    fn places(&self, value: f64) -> Option<(f64, f64)> {
        let discriminant = self.b * self.b - 4.0 * self.a * (self.c - value);
        if self.a <= 0.0 || discriminant < 0.0 {
            return None;
        }
        // the root without cancellation first, the other by the product of the roots
        let root = discriminant.sqrt();
        let q = -0.5 * (self.b + if self.b < 0.0 { -root } else { root });
        if q == 0.0 {
            return Some((0.0, 0.0));
        }
        let (first, second) = (q / self.a, (self.c - value) / q);
        Some((first.min(second), first.max(second)))
    }

    /// The highest scale up to `most` at which the value is reached while rising.
    /// Held by the field where it isn't reached; at the lowest point where it is exceeded everywhere.
    fn rise_to(&self, value: f64, most: f64) -> (f64, Option<Limit>) {
        match self.places(value) {
            Some((_, high)) if high <= most => (high.max(0.0), None),
            None if self.a > 0.0 => ((-0.5 * self.b / self.a).clamp(0.0, most), None),
            Some(_) | None => (most, Some(Limit::Field)),
        }
    }

    /// The highest scale below `from` at which the value isn't exceeded; none if it isn't at `from`.
    /// The lowest point where it is exceeded everywhere.
    fn fall_to(&self, value: f64, from: f64) -> Option<f64> {
        if self.at(from) <= value * (1.0 + SLACK) {
            return None;
        }
        if self.a <= 0.0 {
            return Some(if self.b > 0.0 {
                ((value - self.c) / self.b).clamp(0.0, from)
            } else {
                0.0
            });
        }
        let lowest = -0.5 * self.b / self.a;
        let k = self
            .places(value)
            .map_or(lowest, |(_, high)| if high < from { high } else { lowest });
        Some(k.clamp(0.0, from))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// 100 V behind 1 ohm into 9 ohms: 90 k volts, 10 k amps, 900 k² watts.
    fn line() -> PortLine {
        let real = |re| Complex::new(re, 0.0);
        PortLine {
            others_v: Complex::ZERO,
            own_v: real(90.0),
            emf_v: real(100.0),
            y: real(1.0),
        }
    }

    #[test]
    fn the_field_holds_the_voltage_within_its_reach() {
        let mut sums = Sums::default();
        sums.add(&line());
        let (k, limit) = sums.scale(&Ceiling::field(99.0, 1.2));
        assert!((k - 1.1).abs() < 1e-12 && limit.is_none(), "{k} {limit:?}");
        assert_eq!(
            sums.scale(&Ceiling::field(99.0, 1.05)),
            (1.05, Some(Limit::Field))
        );
    }

    #[test]
    fn power_and_current_pull_the_scale_down_to_their_ceiling() {
        let mut sums = Sums::default();
        sums.add(&line());
        let engine = Ceiling {
            power_max_w: 400.0,
            ..Ceiling::field(90.0, 1.2)
        };
        let (k, limit) = sums.scale(&engine);
        assert!(
            (k - 2.0 / 3.0).abs() < 1e-12 && limit == Some(Limit::Power),
            "{k} {limit:?}"
        );
        let current = Ceiling {
            current_max_a: 5.0,
            ..Ceiling::field(90.0, 1.2)
        };
        let lowered = lower_for_current(&line(), 0.0, &current, 1.0).unwrap();
        assert!((lowered - 0.5).abs() < 1e-12, "{lowered}");
        assert_eq!(lower_for_current(&line(), 0.0, &current, 0.4), None);
    }
}
