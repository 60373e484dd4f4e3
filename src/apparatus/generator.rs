//! A generator as the circuit sees it: volts, watts, impedance, limits, speed, fuel, and which kind it is.
//!
//! The kinds, each in a file of its own: `conventional` (engine and wound machine), `inverter` (electronics make the wave), `standby` (bolted down, on gas, started by a controller).
//! This file is what they have in common, how they differ where the drill asks, and how long an exhaust stays hot.
//! Makers publish few of these figures for household sets: all but volts, watts and amps here are typical values from memory, with the range they are met in.
//! So an answer that hangs on them is shown as a range.
//! Not covered: negative-sequence currents, saturation, engine wear.

use crate::units::Complex;
use crate::units::portable;

use super::conventional::{self, Conventional, LoadStep};
use super::fuel::{Fuel, FuelCurve};
use super::inverter::Inverter;
use super::standby::Standby;
use super::waveform::{NOMINAL_HZ, Waveform};

/// What a set is made of.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GeneratorSpec {
    /// Watts that it delivers for hours.
    pub rated_w: f64,
    /// Watts that it delivers for the seconds of a motor's start.
    pub surge_w: f64,
    /// Rated volts between the two hots.
    pub rated_v: f64,
    /// Volts that the regulator holds between the two hots while it can.
    pub set_v: f64,
    /// Reactance of the first cycles, per unit on rated watts and volts.
    pub x_subtransient_pu: f64,
    /// Reactance after the first cycles, per unit.
    pub x_transient_pu: f64,
    /// Winding resistance, per unit.
    pub r_pu: f64,
    /// Most EMF that the field can make, per unit of rated volts.
    pub field_max_pu: f64,
    /// Rating of the main breaker on the set, amps.
    pub main_breaker_a: f64,
    /// Seconds to run unloaded after the start.
    pub warmup_s: f64,
    /// Seconds to run unloaded before the stop.
    pub cooldown_s: f64,
    /// Fuel that the tank holds, US gallons; infinite for a set on piped gas.
    pub tank_gal: f64,
    /// What it burns by its load, in gallons, or in cubic feet of piped gas.
    pub burn: FuelCurve,
    /// Frequency without load, hertz.
    pub no_load_hz: f64,
    /// Frequency at rated load, hertz.
    pub full_load_hz: f64,
    /// Which kind of set it is.
    pub kind: GeneratorKind,
}

/// The kinds of set.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum GeneratorKind {
    /// Engine on a governor, wound machine on a regulator.
    Conventional(Conventional),
    /// Engine at any speed, electronics make the wave.
    Inverter(Inverter),
    /// Bolted down outside, on gas, started by its controller.
    Standby(Standby),
}

/// Which reactance stands between a set's EMF and its terminals.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Reactance {
    /// For the first few cycles of a change.
    Subtransient,
    /// For the second or so after that, as in a motor's start.
    Transient,
}

/// What gives when more is asked of a set than it carries.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum GivesWay {
    /// The engine stalls after so many seconds.
    Stall(f64),
    /// The electronics shut their output off after so many seconds; the engine runs on.
    ShutOff(f64),
}

impl GivesWay {
    /// Seconds until it does.
    pub fn seconds(self) -> f64 {
        match self {
            Self::Stall(seconds) | Self::ShutOff(seconds) => seconds,
        }
    }
}

impl GeneratorSpec {
    /// A typical household set of these rated and surge watts, with a 30 A outlet for the house.
    ///
    /// From memory, with the range met: x'' 0.10–0.20 and x' 0.20–0.30 pu; field ceiling 1.3–1.8 pu; 62–63 Hz without load and 58.5–60 Hz at full; fuel 0.06–0.08 gal/h per rated kW idling and 0.13–0.17 at full load.
    /// Warm-up and cool-down of a few minutes are common practice.
    pub fn conventional(rated_w: f64, surge_w: f64) -> Self {
        Self {
            rated_w,
            surge_w,
            rated_v: 240.0,
            set_v: 240.0,
            x_subtransient_pu: 0.15,
            x_transient_pu: 0.25,
            r_pu: 0.03,
            field_max_pu: 1.5,
            main_breaker_a: 30.0,
            warmup_s: 120.0,
            cooldown_s: 180.0,
            tank_gal: 7.0,
            burn: FuelCurve {
                fuel: Fuel::Gasoline,
                no_load_per_h: 0.065 * rated_w / 1000.0,
                full_per_h: 0.15 * rated_w / 1000.0,
            },
            no_load_hz: 62.5,
            full_load_hz: 59.5,
            kind: GeneratorKind::Conventional(Conventional {
                field_s: 0.5,
                distortion_pct: 12.0,
                idle: None,
            }),
        }
    }

    /// A typical household inverter set with 120/240 V electronics.
    ///
    /// From memory: the electronics hold volts and hertz to a percent; 0.10–0.14 gal/h per rated kW at full load.
    pub fn inverter(rated_w: f64, surge_w: f64) -> Self {
        Self {
            x_subtransient_pu: 0.02,
            x_transient_pu: 0.02,
            r_pu: 0.01,
            field_max_pu: 1.05,
            warmup_s: 60.0,
            cooldown_s: 120.0,
            tank_gal: 3.5,
            burn: FuelCurve {
                fuel: Fuel::Gasoline,
                no_load_per_h: 0.06 * rated_w / 1000.0,
                full_per_h: 0.125 * rated_w / 1000.0,
            },
            no_load_hz: NOMINAL_HZ,
            full_load_hz: NOMINAL_HZ,
            kind: GeneratorKind::Inverter(Inverter::USUAL),
            ..Self::conventional(rated_w, surge_w)
        }
    }

    /// A standby set in air of this temperature, °C; `tank_gal` is left aside for piped gas.
    ///
    /// From memory: an electronic governor holds 60 Hz within a quarter of a hertz; surge 1.15 to 1.3 times the rating; the set's breaker about 1.25 times its rated amps.
    pub fn standby(standby: Standby, tank_gal: f64, air_c: f64) -> Self {
        let rated_w = standby.rated_w(air_c);
        let base = Self::conventional(rated_w, 1.2 * rated_w);
        Self {
            main_breaker_a: 1.25 * rated_w / base.rated_v,
            warmup_s: 10.0,
            cooldown_s: 60.0,
            tank_gal: if standby.fuel == Fuel::NaturalGas {
                f64::INFINITY
            } else {
                tank_gal
            },
            burn: standby.burn(),
            no_load_hz: 60.25,
            full_load_hz: 59.75,
            kind: GeneratorKind::Standby(standby),
            ..base
        }
    }

    /// The same two sets joined by the kit that is listed for them, with this many of them running; one at least.
    #[must_use]
    pub fn times(self, running: u8) -> Self {
        let times = super::inverter::parallel_times(running.max(1));
        Self {
            rated_w: self.rated_w * times,
            surge_w: self.surge_w * times,
            burn: FuelCurve {
                no_load_per_h: self.burn.no_load_per_h * times,
                full_per_h: self.burn.full_per_h * times,
                ..self.burn
            },
            ..self
        }
    }

    /// The set while its idle control holds the engine at its slow speed; unchanged if it has none or that is off.
    /// The regulator lets the volts fall with the speed, as under-frequency limits do (common practice), so that a motor sees its volts per hertz.
    #[must_use]
    pub fn at_slow_speed(self) -> Self {
        let GeneratorKind::Conventional(Conventional {
            idle: Some(idle), ..
        }) = self.kind
        else {
            return self;
        };
        Self {
            set_v: self.set_v * idle.hz / self.no_load_hz,
            no_load_hz: idle.hz,
            full_load_hz: idle.hz,
            ..self
        }
    }

    /// Rated amps at full volts and a power factor of one.
    pub fn rated_a(&self) -> f64 {
        self.rated_w / self.rated_v
    }

    /// Most amps of each hot while the voltage is held: the limit of an inverter's electronics; infinite for the others, whose breaker and engine are the limit.
    pub fn current_max_a(&self) -> f64 {
        match self.kind {
            GeneratorKind::Inverter(_) => self.surge_w / self.rated_v,
            GeneratorKind::Conventional(_) | GeneratorKind::Standby(_) => f64::INFINITY,
        }
    }

    /// Impedance between the EMF and the two hots, ohms; each half of the winding has half of it.
    pub fn impedance(&self, which: Reactance) -> Complex {
        let x_pu = match which {
            Reactance::Subtransient => self.x_subtransient_pu,
            Reactance::Transient => self.x_transient_pu,
        };
        Complex::new(self.r_pu, x_pu) * (self.rated_v * self.rated_v / self.rated_w)
    }

    /// Frequency at a steady load of `load_w` watts, hertz: a straight droop, carried on above the rating.
    pub fn frequency_hz(&self, load_w: f64) -> f64 {
        self.no_load_hz - (self.no_load_hz - self.full_load_hz) * load_w / self.rated_w
    }

    /// The step of voltage when the load changes from what draws `before` to what draws `after` volt-amperes, each with the volts it was drawn at.
    /// `None` for electronics, which hold their volts up to their limit.
    /// The load is taken as even on both legs: on one leg alone the dip is deeper there.
    pub fn load_step(&self, before: (Complex, f64), after: (Complex, f64)) -> Option<LoadStep> {
        let field_s = match self.kind {
            GeneratorKind::Conventional(set) => set.field_s,
            GeneratorKind::Standby(_) => STANDBY_FIELD_S,
            GeneratorKind::Inverter(_) => return None,
        };
        let admittance = |(va, volts): (Complex, f64)| va.conj() / (volts * volts);
        Some(LoadStep {
            source: self.impedance(Reactance::Transient),
            before: admittance(before),
            after: admittance(after),
            set_v: self.set_v,
            emf_max_v: self.field_max_pu * self.rated_v,
            field_s,
        })
    }

    /// Frequency and distortion at a steady load of `load_w` watts.
    pub fn waveform(&self, load_w: f64) -> Waveform {
        let distortion_pct = match self.kind {
            GeneratorKind::Conventional(set) => set.distortion_pct,
            GeneratorKind::Inverter(set) => set.distortion_pct,
            GeneratorKind::Standby(set) => set.distortion_pct,
        };
        Waveform {
            hz: self.frequency_hz(load_w),
            distortion_pct,
        }
    }

    /// Burned in an hour at a steady load of `load_w` watts: gallons, or cubic feet of piped gas.
    pub fn fuel_gal_per_h(&self, load_w: f64) -> f64 {
        let share = (load_w / self.rated_w).max(0.0);
        let full_speed = self.burn.per_hour(share);
        match self.kind {
            GeneratorKind::Inverter(set) => full_speed * set.fuel_share(share),
            GeneratorKind::Conventional(_) | GeneratorKind::Standby(_) => full_speed,
        }
    }

    /// What gives, and when, under a steady load of `watts` on a warm engine; `None` if it carries them.
    pub fn gives_way(&self, watts: f64) -> Option<GivesWay> {
        match self.kind {
            GeneratorKind::Inverter(set) => set
                .seconds_to_shut_off(self.rated_w, self.surge_w, watts)
                .map(GivesWay::ShutOff),
            GeneratorKind::Conventional(_) | GeneratorKind::Standby(_) => {
                conventional::seconds_to_stall(self.rated_w, self.surge_w, watts)
                    .map(GivesWay::Stall)
            }
        }
    }

    /// Seconds until the set gives way under a steady load of `watts`; `None` if it carries them.
    pub fn seconds_to_stall(&self, watts: f64) -> Option<f64> {
        self.gives_way(watts).map(GivesWay::seconds)
    }
}

/// Time constant of the field of a standby set under load, seconds; from memory, 0.2 to 0.5.
const STANDBY_FIELD_S: f64 = 0.3;

/// Surface temperature of the muffler `seconds_since_stop` after the engine stopped, °C, on a mild day.
///
/// Assumption: 400 °C at the stop, cooling with a time constant of 400 s, so that it takes the ten to fifteen minutes of common practice to be safe.
pub fn exhaust_c(seconds_since_stop: f64) -> f64 {
    let rate = EXHAUST_AIR_C / EXHAUST_S;
    portable::first_order(EXHAUST_C, rate, 1.0 / EXHAUST_S, seconds_since_stop)
}

/// Muffler at the stop, °C: assumption.
const EXHAUST_C: f64 = 400.0;
/// Air around it, °C: assumption.
const EXHAUST_AIR_C: f64 = 20.0;
/// Time constant of its cooling, seconds: assumption.
const EXHAUST_S: f64 = 400.0;
/// Temperature from which down it is safe to touch or to pour beside, °C: assumption.
pub const EXHAUST_COOL_C: f64 = 100.0;

/// Whether spilled gasoline may flash or a hand be burned on the muffler that long after the stop: above 100 °C.
pub fn exhaust_hot(seconds_since_stop: f64) -> bool {
    exhaust_c(seconds_since_stop) > EXHAUST_COOL_C
}

/// Seconds after the stop for which the muffler stays hot.
pub fn exhaust_hot_s() -> f64 {
    let above = (EXHAUST_C - EXHAUST_AIR_C) / (EXHAUST_COOL_C - EXHAUST_AIR_C);
    EXHAUST_S * portable::ln(above)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn set() -> GeneratorSpec {
        GeneratorSpec::conventional(7200.0, 9000.0)
    }

    fn every_kind() -> [GeneratorSpec; 3] {
        let gas = Standby::usual(18_000.0, Fuel::NaturalGas, 1000.0);
        [
            set(),
            GeneratorSpec::inverter(3200.0, 4000.0),
            GeneratorSpec::standby(gas, 0.0, 15.0),
        ]
    }

    #[test]
    fn a_muffler_is_hot_until_the_second_that_is_told() {
        let hot_s = exhaust_hot_s();
        assert!((600.0..900.0).contains(&hot_s), "ten to fifteen minutes");
        assert!(exhaust_hot(hot_s - 0.01) && !exhaust_hot(hot_s + 0.01));
    }

    #[test]
    fn every_kind_carries_its_rating_and_gives_way_beyond_its_surge_within_a_second() {
        for set in every_kind() {
            assert_eq!(set.gives_way(set.rated_w), None);
            let seconds = set.seconds_to_stall(1.01 * set.surge_w).unwrap();
            assert!(seconds <= 1.0, "{seconds} s");
        }
    }

    #[test]
    fn only_electronics_limit_the_current_and_shut_off_where_engines_stall() {
        let [plain, inverter, standby] = every_kind();
        assert!(plain.current_max_a().is_infinite() && standby.current_max_a().is_infinite());
        assert!((inverter.current_max_a() - 4000.0 / 240.0).abs() < 1e-12);
        assert!(matches!(plain.gives_way(8000.0), Some(GivesWay::Stall(_))));
        assert!(matches!(
            inverter.gives_way(3600.0),
            Some(GivesWay::ShutOff(_))
        ));
        assert!(matches!(standby.gives_way(1e5), Some(GivesWay::Stall(_))));
    }

    #[test]
    fn speed_sags_and_fuel_rises_with_load() {
        for set in every_kind() {
            assert!((set.frequency_hz(0.0) - set.no_load_hz).abs() < 1e-12);
            assert!((set.frequency_hz(set.rated_w) - set.full_load_hz).abs() < 1e-12);
            let mut before = 0.0;
            for tenth in 0..=10 {
                let burnt = set.fuel_gal_per_h(set.rated_w * f64::from(tenth) / 10.0);
                assert!(burnt > before, "idling burns fuel, load more");
                before = burnt;
            }
        }
    }

    #[test]
    fn the_electronics_make_the_cleanest_wave_and_the_steadiest_speed() {
        let [plain, inverter, standby] = every_kind();
        let pct = |set: GeneratorSpec| set.waveform(0.0).distortion_pct;
        assert!(pct(inverter) < pct(standby) && pct(standby) < pct(plain));
        assert!(inverter.waveform(3000.0).clean() && !plain.waveform(3000.0).clean());
        assert!(inverter.waveform(0.0).backup_accepts() && !plain.waveform(0.0).backup_accepts());
    }

    #[test]
    fn at_its_slow_speed_a_set_keeps_its_volts_per_hertz() {
        let set = set();
        assert_eq!(set.at_slow_speed(), set, "none without idle control");
        let mut slow = set;
        if let GeneratorKind::Conventional(own) = &mut slow.kind {
            own.idle = Some(conventional::IdleDown::USUAL);
        }
        let slow = slow.at_slow_speed();
        let ratio = |s: GeneratorSpec| s.set_v / s.frequency_hz(0.0);
        assert!(slow.set_v < 0.75 * set.set_v && (ratio(slow) - ratio(set)).abs() < 1e-12);
    }

    #[test]
    fn a_tank_lasts_about_as_long_as_such_sets_do() {
        let [plain, inverter, standby] = every_kind();
        let hours = |set: GeneratorSpec| set.tank_gal / set.fuel_gal_per_h(0.5 * set.rated_w);
        assert!(
            (7.0..12.0).contains(&hours(plain)),
            "{} h at half load",
            hours(plain)
        );
        assert!(
            (8.0..18.0).contains(&hours(inverter)),
            "{} h",
            hours(inverter)
        );
        assert!(hours(standby).is_infinite(), "piped gas has no tank");
    }

    #[test]
    fn no_set_makes_more_electricity_than_a_third_of_its_fuel() {
        for set in every_kind() {
            let efficiency = set.burn.efficiency(set.rated_w, 1.0);
            assert!(
                (0.12..0.30).contains(&efficiency),
                "efficiency {efficiency} at full load"
            );
        }
    }

    #[test]
    fn a_pair_carries_what_one_cannot_and_one_of_it_its_own() {
        let one = GeneratorSpec::inverter(3200.0, 4000.0);
        let (pair, single) = (one.times(2), one.times(1));
        assert_eq!(single, one);
        assert!(one.gives_way(6000.0).is_some() && pair.gives_way(6000.0).is_none());
        assert!((pair.current_max_a() - 2.0 * one.current_max_a()).abs() < 1e-12);
        let half = |set: GeneratorSpec| set.impedance(Reactance::Transient).im;
        assert!(
            (half(pair) - 0.5 * half(one)).abs() < 1e-12,
            "two in parallel"
        );
    }

    #[test]
    fn the_first_cycles_see_less_reactance_than_the_next_second() {
        let set = set();
        let (first, next) = (
            set.impedance(Reactance::Subtransient),
            set.impedance(Reactance::Transient),
        );
        assert!(first.im < next.im && first.re.to_bits() == next.re.to_bits());
        assert!(
            (first.im - 0.15 * 8.0).abs() < 1e-12,
            "base 240²/7200 = 8 ohm: {first}"
        );
    }

    #[test]
    fn the_exhaust_is_hot_at_the_stop_and_safe_after_a_quarter_of_an_hour() {
        assert!(exhaust_hot(0.0) && exhaust_hot(300.0));
        assert!(!exhaust_hot(900.0), "{} °C", exhaust_c(900.0));
    }
}
