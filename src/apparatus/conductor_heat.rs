//! The thermal balance of a current-carrying conductor in its insulation, cord or building wire.
//!
//! *C dT/dt = I² r(T) - (T - T*ambient*)/R*: heat of the current, whose resistance rises with temperature, against heat given off.
//! *R* follows from one published point: at the tabled current, in the table's ambient, laid as the table means it, the conductor settles at its rated temperature.
//! Both sides are linear in *T*, so a stretch at constant amps has a closed form: no integration error but rounding, heating or cooling, settling or running away.
//! A gross overload has no settling point, because the resistance rises faster than heat is given off.
//! Range: conductors from ambient to about 250 °C; above that insulation burns and adds heat of its own.
//! Not covered: sun and wind (give them as ambient), conduction to plugs, give-off that grows with the rise, as of free convection: far above the rating, settled rises come out up to a quarter too high, the safe side.
//! Accuracy: settled temperatures near the rating as good as the table they come from; times ± 50 %, from the heat that insulation stores.

use super::conductor::Awg;
use super::conductor::Material;
use super::conductor::Strand;
use super::conductor::resistance_ohm_per_km;
use crate::units::portable;

/// One published point: these amps in this ambient settle at this temperature.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tabled {
    /// Amps of the table, above 0.
    pub amps: f64,
    /// Temperature that the table lets the conductor reach, °C.
    pub rated_c: f64,
    /// Ambient of the table, °C, below the rating.
    pub ambient_c: f64,
}

/// What is around a conductor.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Around {
    /// Temperature of the air, °C.
    pub ambient_c: f64,
    /// Thermal resistance to the air as a multiple of the one the table means, 1 or more.
    pub heat_factor: f64,
}

impl Around {
    /// Laid as the table means it, in air of `ambient_c` °C.
    pub const fn free(ambient_c: f64) -> Self {
        Self {
            ambient_c,
            heat_factor: 1.0,
        }
    }
}

/// A conductor that warms and cools.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ConductorHeat {
    tabled: Tabled,
    material: Material,
    time_constant_s: f64,
}

impl ConductorHeat {
    /// A conductor whose insulation and idle neighbors store `stored_multiple` times what its own metal does, the metal included.
    pub fn new(
        tabled: Tabled,
        awg: Awg,
        material: Material,
        strand: Strand,
        stored_multiple: f64,
    ) -> Self {
        let stored_j_per_k_m = stored_multiple * joules_per_k_cm3(material) * awg.area_mm2();
        let ohm_per_m = resistance_ohm_per_km(awg, material, strand, tabled.rated_c) / 1000.0;
        let given_off_w_per_m = tabled.amps * tabled.amps * ohm_per_m;
        Self {
            tabled,
            material,
            time_constant_s: stored_j_per_k_m * (tabled.rated_c - tabled.ambient_c)
                / given_off_w_per_m,
        }
    }

    /// The point it is calibrated on.
    pub fn tabled(&self) -> Tabled {
        self.tabled
    }

    /// Seconds in which it covers 63 % of the way to where it settles, laid as the table means it, at a small current.
    pub fn time_constant_s(&self) -> f64 {
        self.time_constant_s
    }

    /// Temperature that steady `amps` settle at, °C; infinite if they run away.
    pub fn settle_c(&self, amps: f64, around: Around) -> f64 {
        let (source, rate) = self.law(amps, around);
        if rate <= 0.0 {
            return f64::INFINITY;
        }
        source / rate
    }

    /// Temperature in °C after `seconds` at `amps`, from `t_c`.
    pub fn temperature_after(&self, t_c: f64, amps: f64, around: Around, seconds: f64) -> f64 {
        let (source, rate) = self.law(amps, around);
        portable::first_order(t_c, source, rate, seconds)
    }

    /// Seconds at `amps` until the temperature passes from `from_c` to `to_c`; `None` if it never does.
    pub fn seconds_to_reach(
        &self,
        from_c: f64,
        to_c: f64,
        amps: f64,
        around: Around,
    ) -> Option<f64> {
        let (source, rate) = self.law(amps, around);
        let slope = source - rate * from_c;
        let way = to_c - from_c;
        if way == 0.0 {
            return Some(0.0);
        }
        // The share of the slope that is left at the goal: T' falls linearly with T.
        let left = 1.0 - rate * way / slope;
        let seconds = if rate == 0.0 {
            way / slope
        } else {
            -portable::ln(left) / rate
        };
        (seconds > 0.0 && seconds.is_finite()).then_some(seconds)
    }

    /// Steady amps that settle at `t_c` °C, 0 where the air is as hot.
    pub fn amps_that_settle_at(&self, t_c: f64, around: Around) -> f64 {
        let rise = (t_c - around.ambient_c).max(0.0);
        let resistance = self.material.resistance_ratio(t_c, self.tabled.rated_c);
        let per_k = 1.0 / (self.tabled_rise_k() * around.heat_factor * resistance);
        self.tabled.amps * (rise * per_k).sqrt()
    }

    /// Source and rate of *T'* = source - rate × *T*, kelvin a second.
    fn law(&self, amps: f64, around: Around) -> (f64, f64) {
        let multiple = amps / self.tabled.amps;
        let heat = self.tabled_rise_k() * multiple * multiple * around.heat_factor;
        let per_k = self.rise_per_k();
        let tau = self.time_constant_s * around.heat_factor;
        let source = (around.ambient_c + heat * (1.0 - per_k * self.tabled.rated_c)) / tau;
        (source, (1.0 - heat * per_k) / tau)
    }

    fn tabled_rise_k(&self) -> f64 {
        self.tabled.rated_c - self.tabled.ambient_c
    }

    /// Rise of resistance per kelvin, of the resistance at the rated temperature.
    fn rise_per_k(&self) -> f64 {
        let rated_c = self.tabled.rated_c;
        self.material.resistance_ratio(rated_c + 1.0, rated_c) - 1.0
    }
}

/// Heat that a metal stores, joules per kelvin and cubic centimeter: numerically joules per kelvin, meter and square millimeter.
/// Density times specific heat at 20 °C; handbook figures, from memory.
fn joules_per_k_cm3(material: Material) -> f64 {
    match material {
        Material::Copper => 3.45,
        Material::Aluminum => 2.43,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn heat(amps: f64) -> ConductorHeat {
        let tabled = Tabled {
            amps,
            rated_c: 60.0,
            ambient_c: 30.0,
        };
        ConductorHeat::new(tabled, Awg::N12, Material::Copper, Strand::Stranded, 8.0)
    }

    /// The same law stepped by the classic fourth-order method, its resistance asked of the conductor itself.
    fn stepped(heat: &ConductorHeat, from_c: f64, amps: f64, around: Around, steps: u32) -> f64 {
        let per_k_s = 1.0 / (heat.time_constant_s() * around.heat_factor);
        let slope = |t_c: f64| {
            let ohm = |c| resistance_ohm_per_km(Awg::N12, Material::Copper, Strand::Stranded, c);
            let watts = amps * amps * ohm(t_c);
            let tabled = heat.tabled();
            let tabled_watts = tabled.amps * tabled.amps * ohm(tabled.rated_c);
            let drive =
                (tabled.rated_c - tabled.ambient_c) * around.heat_factor * watts / tabled_watts;
            (around.ambient_c + drive - t_c) * per_k_s
        };
        let dt = 1800.0 / f64::from(steps);
        (0..steps).fold(from_c, |t, _| {
            let a = slope(t);
            let b = slope(t + a * dt / 2.0);
            let c = slope(t + b * dt / 2.0);
            let d = slope(t + c * dt);
            t + dt / 6.0 * (a + 2.0 * b + 2.0 * c + d)
        })
    }

    #[test]
    fn the_closed_form_is_what_a_fine_integration_of_the_balance_gives() {
        let heat = heat(25.0);
        for (amps, heat_factor) in [(0.0, 1.0), (25.0, 1.0), (40.0, 4.0), (100.0, 1.0)] {
            let around = Around {
                ambient_c: 21.0,
                heat_factor,
            };
            let ours = heat.temperature_after(90.0, amps, around, 1800.0);
            let fine = stepped(&heat, 90.0, amps, around, 20_000);
            assert!(
                (ours - fine).abs() < 1e-7 * fine.abs(),
                "{amps} A, factor {heat_factor}: ours {ours} °C, stepped {fine} °C"
            );
        }
    }

    #[test]
    fn the_time_to_a_temperature_is_the_one_after_which_it_is_reached() {
        let heat = heat(25.0);
        let around = Around::free(20.0);
        for (from_c, to_c, amps) in [(20.0, 55.0, 30.0), (80.0, 40.0, 5.0), (20.0, 150.0, 120.0)] {
            let seconds = heat.seconds_to_reach(from_c, to_c, amps, around).unwrap();
            let there = heat.temperature_after(from_c, amps, around, seconds);
            assert!(
                (there - to_c).abs() < 1e-9,
                "{there} °C for {to_c} °C after {seconds} s"
            );
        }
        assert_eq!(
            heat.seconds_to_reach(20.0, 70.0, 25.0, around),
            None,
            "settles below"
        );
        assert_eq!(
            heat.seconds_to_reach(40.0, 50.0, 0.0, around),
            None,
            "cools away from it"
        );
        assert_eq!(heat.seconds_to_reach(40.0, 40.0, 9.0, around), Some(0.0));
    }

    #[test]
    fn the_amps_that_settle_at_a_temperature_settle_there() {
        let heat = heat(25.0);
        let around = Around {
            ambient_c: 40.0,
            heat_factor: 2.0,
        };
        for t_c in [45.0, 60.0, 90.0] {
            let amps = heat.amps_that_settle_at(t_c, around);
            let settled = heat.settle_c(amps, around);
            assert!(
                (settled - t_c).abs() < 1e-9,
                "{amps} A settle at {settled} °C, not {t_c}"
            );
        }
        assert!(
            heat.amps_that_settle_at(39.0, around) < 1e-12,
            "hotter air leaves no room"
        );
    }

    #[test]
    fn a_conductor_without_current_cools_to_the_air_and_no_further() {
        let heat = heat(25.0);
        let mut before = 90.0;
        for _ in 0..60 {
            let now = heat.temperature_after(before, 0.0, Around::free(15.0), 120.0);
            assert!(15.0 <= now && now < before, "{before} °C then {now} °C");
            before = now;
        }
        assert!(before - 15.0 < 0.01, "after two hours {before} °C");
    }
}
