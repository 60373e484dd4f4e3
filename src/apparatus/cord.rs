//! Flexible cord: ampacity, voltage drop, and how hot its conductors get.
//!
//! Ampacity from NEC Table 400.5(A)(1): columns for two and for three current-carrying conductors, and for heater cords.
//! Temperature by the thermal balance of `conductor_heat`, calibrated on that table: at the tabled current, straight, in 30 °C, a conductor settles at the cord's 60 °C (90 °C for heater cords).
//! How it lies is `cord_lay`, what is damaged `cord_damage`, plugs are `connection`, what heat does to it `insulation`, which cord would do `cord_choice`.
//! Not covered: cords marked for 75 or 105 °C (taken as 60 °C, the safe side), the shorter ratings that a listing gives ready-made sets of 50 and 100 ft.
//! Accuracy: settled temperatures are as good as the table (it rounds to whole amps); the time to get there is ± 50 %; see `conductor_heat` for the law and its limits.

use super::conductor::Awg;
use super::conductor::Material;
use super::conductor::Strand;
use super::conductor::conductor_impedance;
use super::conductor_heat::Around;
use super::conductor_heat::ConductorHeat;
use super::conductor_heat::Tabled;
use super::cord_lay::Lay;
use super::cord_letters::CordType;
use crate::units::Complex;

/// Temperature that the ampacity table lets a general-use cord reach, °C.
pub const RATED_C: f64 = 60.0;

/// Temperature that the ampacity table lets a heater cord reach, °C; NEC Table 400.4, from memory.
pub const HEATER_RATED_C: f64 = 90.0;

/// Ambient temperature of the ampacity table, °C; NEC Article 400, checked in a copy that quotes it.
pub const TABLE_AMBIENT_C: f64 = 30.0;

/// How many conductors of a cord carry current and so heat it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Loaded {
    /// Two: a 120 V cord, or a 120/240 V cord with balanced legs. Column B of the table.
    Two,
    /// Three: a 120/240 V cord whose neutral counts too, the safe choice for a household. Column A of the table.
    Three,
}

impl Loaded {
    /// How many.
    pub fn count(self) -> u32 {
        match self {
            Self::Two => 2,
            Self::Three => 3,
        }
    }
}

/// Ampacity of a copper cord for general use, amps; `None` for a gauge that the table doesn't print.
///
/// NEC Table 400.5(A)(1), 30 °C ambient.
/// Two loaded: 18 to 12 AWG checked in a copy that quotes it, thicker from memory.
/// Three loaded: 18 and 16 AWG checked, thicker from memory.
pub fn ampacity_a(awg: Awg, loaded: Loaded) -> Option<f64> {
    let row = row(awg)?;
    Some(match loaded {
        Loaded::Two => row.two,
        Loaded::Three => row.three,
    })
}

/// Ampacity of a heater cord (HSJ, HSJO, HPN), amps; `None` for a gauge that the table doesn't print.
/// NEC Table 400.5(A)(1): 10 AWG checked in a copy that quotes it, others from memory.
pub fn heater_ampacity_a(awg: Awg) -> Option<f64> {
    row(awg)?.heater
}

/// Gauges that cords are made in, thinnest first.
pub fn gauges() -> impl Iterator<Item = Awg> {
    TABLE_400_5.iter().filter_map(|row| Awg::new(row.number))
}

/// A cord of stranded copper, of a gauge that the ampacity table prints.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cord {
    kind: CordType,
    awg: Awg,
    length_ft: f64,
    loaded: Loaded,
    heat: ConductorHeat,
}

impl Cord {
    /// A cord of this type, gauge and length in feet; `None` if the ampacity table has no such gauge, or the length isn't above zero.
    ///
    /// Assumption: jacket, insulation and idle conductors store seven times what the loaded copper does (from typical dimensions, ± 50 %).
    pub fn new(kind: CordType, awg: Awg, length_ft: f64, loaded: Loaded) -> Option<Self> {
        let general = ampacity_a(awg, loaded)?;
        let heater = heater_ampacity_a(awg).filter(|_| kind.heater && loaded == Loaded::Two);
        let tabled = Tabled {
            amps: heater.unwrap_or(general),
            rated_c: if heater.is_some() {
                HEATER_RATED_C
            } else {
                RATED_C
            },
            ambient_c: TABLE_AMBIENT_C,
        };
        let heat = ConductorHeat::new(tabled, awg, Material::Copper, Strand::Stranded, 8.0);
        (length_ft > 0.0 && length_ft.is_finite()).then_some(Self {
            kind,
            awg,
            length_ft,
            loaded,
            heat,
        })
    }

    /// What its letters say.
    pub fn kind(&self) -> CordType {
        self.kind
    }

    /// Its gauge.
    pub fn awg(&self) -> Awg {
        self.awg
    }

    /// Its length, feet.
    pub fn length_ft(&self) -> f64 {
        self.length_ft
    }

    /// How many of its conductors carry current.
    pub fn loaded(&self) -> Loaded {
        self.loaded
    }

    /// What it may carry by the table, amps.
    pub fn ampacity_a(&self) -> f64 {
        self.heat.tabled().amps
    }

    /// Temperature that the table lets it reach, °C.
    pub fn rated_c(&self) -> f64 {
        self.heat.tabled().rated_c
    }

    /// Resistance of one conductor, one way, at a conductor temperature of `t_c` °C, ohms.
    pub fn resistance_ohm(&self, t_c: f64) -> f64 {
        self.impedance_ohm(t_c).re
    }

    /// Impedance of one conductor, one way, at 60 Hz and `t_c` °C, ohms.
    /// Reactance as for building wire, which is a little high for conductors that lie in one jacket.
    pub fn impedance_ohm(&self, t_c: f64) -> Complex {
        conductor_impedance(self.awg, Strand::Stranded, self.length_ft, t_c)
    }

    /// Volts lost there and back at `amps` of a load without reactance, conductors at `t_c` °C.
    pub fn voltage_drop_v(&self, amps: f64, t_c: f64) -> f64 {
        2.0 * amps * self.resistance_ohm(t_c)
    }

    /// Watts that `amps` turn into heat along it, in two conductors at `t_c` °C.
    pub fn heat_w(&self, amps: f64, t_c: f64) -> f64 {
        amps * self.voltage_drop_v(amps, t_c)
    }

    /// Amps that settle at its rated temperature, as it lies, in air of `ambient_c` °C.
    pub fn ampacity_here_a(&self, ambient_c: f64, lay: Lay) -> f64 {
        self.heat
            .amps_that_settle_at(self.rated_c(), self.around(ambient_c, lay))
    }

    /// Conductor temperature that steady `amps` settle at, °C; infinite if they run away.
    pub fn settle_c(&self, amps: f64, ambient_c: f64, lay: Lay) -> f64 {
        self.heat.settle_c(amps, self.around(ambient_c, lay))
    }

    /// Conductor temperature in °C after `seconds` at `amps`, from `t_c`.
    pub fn temperature_after(
        &self,
        t_c: f64,
        amps: f64,
        ambient_c: f64,
        lay: Lay,
        seconds: f64,
    ) -> f64 {
        self.heat
            .temperature_after(t_c, amps, self.around(ambient_c, lay), seconds)
    }

    /// Seconds at `amps` until the conductor passes from `from_c` to `to_c` °C; `None` if it never does.
    pub fn seconds_to_reach(
        &self,
        (from_c, to_c): (f64, f64),
        amps: f64,
        ambient_c: f64,
        lay: Lay,
    ) -> Option<f64> {
        self.heat
            .seconds_to_reach(from_c, to_c, amps, self.around(ambient_c, lay))
    }

    /// Seconds in which a straight cord covers 63 % of the way to where it settles.
    pub fn time_constant_s(&self) -> f64 {
        self.heat.time_constant_s()
    }

    /// Heat given off by one of its conductors, laid straight, watts per kelvin and meter.
    pub fn given_off_w_per_k_m(&self) -> f64 {
        let tabled = self.heat.tabled();
        let ohm_per_m = self.resistance_ohm(tabled.rated_c) / (self.length_ft * METERS_PER_FOOT);
        tabled.amps * tabled.amps * ohm_per_m / (tabled.rated_c - tabled.ambient_c)
    }

    fn around(&self, ambient_c: f64, lay: Lay) -> Around {
        Around {
            ambient_c,
            heat_factor: lay.heat_factor(self.loaded),
        }
    }
}

/// Meters in a foot.
const METERS_PER_FOOT: f64 = 0.3048;

/// One row of NEC Table 400.5(A)(1): gauge number, amps by column.
struct Row {
    number: i8,
    /// Column A, three loaded.
    three: f64,
    /// Column B, two loaded.
    two: f64,
    /// Heater cords.
    heater: Option<f64>,
}

const fn gauge(number: i8, three: f64, two: f64, heater: Option<f64>) -> Row {
    Row {
        number,
        three,
        two,
        heater,
    }
}

const TABLE_400_5: &[Row] = &[
    gauge(18, 7.0, 10.0, Some(10.0)),
    gauge(16, 10.0, 13.0, Some(15.0)),
    gauge(14, 15.0, 18.0, Some(20.0)),
    gauge(12, 20.0, 25.0, Some(30.0)),
    gauge(10, 25.0, 30.0, Some(35.0)),
    gauge(8, 35.0, 40.0, None),
    gauge(6, 45.0, 55.0, None),
    gauge(4, 60.0, 70.0, None),
    gauge(2, 80.0, 95.0, None),
];

fn row(awg: Awg) -> Option<&'static Row> {
    TABLE_400_5.iter().find(|row| row.number == awg.number())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::apparatus::ampacity::company_factor;
    use crate::apparatus::insulation::CHARRING_C;
    use crate::apparatus::insulation::SOFTENING_C;

    fn cord(awg: &str, loaded: Loaded) -> Cord {
        Cord::new("SJTW".parse().unwrap(), awg.parse().unwrap(), 100.0, loaded).unwrap()
    }

    #[test]
    fn at_the_tabled_current_every_cord_settles_at_its_rating() {
        for gauge in gauges() {
            for loaded in [Loaded::Two, Loaded::Three] {
                let cord = cord(&gauge.to_string(), loaded);
                let t_c = cord.settle_c(cord.ampacity_a(), TABLE_AMBIENT_C, Lay::Straight);
                assert!(
                    (t_c - RATED_C).abs() < 1e-9,
                    "{gauge} AWG {loaded:?} settles at {t_c} °C"
                );
            }
        }
    }

    #[test]
    fn a_coil_at_half_the_tabled_current_is_as_hot_as_a_straight_cord_at_all_of_it() {
        let cord = cord("12", Loaded::Two);
        let t_c = cord.settle_c(12.5, TABLE_AMBIENT_C, Lay::Coil { turns: 8 });
        assert!((t_c - RATED_C).abs() < 1e-9, "{t_c} °C");
    }

    #[test]
    fn a_thin_coiled_cord_under_a_space_heater_goes_soft() {
        let thin = cord("16", Loaded::Two);
        let hot = thin.temperature_after(25.0, 12.5, 25.0, Lay::Coil { turns: 8 }, 3.0 * 3600.0);
        assert!(hot >= SOFTENING_C, "coiled {hot} °C");
        let straight = thin.temperature_after(25.0, 12.5, 25.0, Lay::Straight, 3.0 * 3600.0);
        assert!(straight <= RATED_C, "straight {straight} °C");
    }

    #[test]
    fn a_cord_nears_where_it_settles_and_never_passes_it() {
        let cord = cord("14", Loaded::Two);
        let settled = cord.settle_c(20.0, 20.0, Lay::Straight);
        let mut before = 20.0;
        for minute in 1..120_i32 {
            let now =
                cord.temperature_after(20.0, 20.0, 20.0, Lay::Straight, f64::from(minute) * 60.0);
            assert!(
                before < now && now < settled,
                "minute {minute}: {before} then {now}, settles at {settled}"
            );
            before = now;
        }
        assert!(
            settled - before < 0.1,
            "after two hours {before}, settles at {settled}"
        );
    }

    #[test]
    fn a_gross_overload_never_settles() {
        let cord = cord("16", Loaded::Two);
        assert!(cord.settle_c(60.0, 20.0, Lay::Straight).is_infinite());
        assert!(cord.temperature_after(20.0, 60.0, 20.0, Lay::Straight, 1800.0) > CHARRING_C);
    }

    #[test]
    fn warming_in_two_parts_is_warming_at_once() {
        let cord = cord("10", Loaded::Three);
        let at = |t_c: f64, seconds: f64| {
            cord.temperature_after(t_c, 28.0, 15.0, Lay::Coil { turns: 8 }, seconds)
        };
        let (parts, whole) = (at(at(15.0, 130.0), 470.0), at(15.0, 600.0));
        assert!(
            (parts - whole).abs() < 1e-11,
            "{parts} in parts, {whole} at once"
        );
    }

    #[test]
    fn a_gauge_off_the_table_and_a_length_of_nothing_make_no_cord() {
        let kind: CordType = "SJTW".parse().unwrap();
        assert!(Cord::new(kind, "1/0".parse().unwrap(), 50.0, Loaded::Two).is_none());
        for length_ft in [0.0, -5.0, f64::NAN, f64::INFINITY] {
            assert!(
                Cord::new(kind, "10".parse().unwrap(), length_ft, Loaded::Two).is_none(),
                "{length_ft} ft"
            );
        }
    }

    #[test]
    fn a_heater_cord_carries_more_because_it_may_get_hotter() {
        let make = |letters: &str| {
            Cord::new(
                letters.parse().unwrap(),
                "10".parse().unwrap(),
                6.0,
                Loaded::Two,
            )
            .unwrap()
        };
        let (heater, general) = (make("HSJO"), make("SJO"));
        assert!(
            (heater.ampacity_a() - 35.0).abs() < 1e-12 && (heater.rated_c() - 90.0).abs() < 1e-12
        );
        assert!(
            (general.ampacity_a() - 30.0).abs() < 1e-12 && (general.rated_c() - 60.0).abs() < 1e-12
        );
        let six = company_factor(6) * heater.ampacity_a();
        assert!((six - 28.0).abs() < 1e-12, "six loaded conductors: {six} A");
    }

    #[test]
    fn watts_along_a_cord_are_what_its_volts_lost_make_of_its_amps() {
        let thin = cord("16", Loaded::Two);
        let (volts, watts) = (thin.voltage_drop_v(12.5, 75.0), thin.heat_w(12.5, 75.0));
        assert!(
            (volts - 12.475).abs() < 1e-9,
            "100 ft of 16 AWG lose {volts} V"
        );
        assert!((watts - 155.9).abs() < 0.1, "and warm with {watts} W");
    }

    #[test]
    fn a_coil_may_carry_what_the_table_leaves_of_it() {
        let cord = cord("12", Loaded::Two);
        let amps = cord.ampacity_here_a(TABLE_AMBIENT_C, Lay::Coil { turns: 4 });
        assert!(
            (amps - 0.70 * 25.0).abs() < 1e-9,
            "eight conductors: {amps} A"
        );
        assert!(cord.ampacity_here_a(45.0, Lay::Straight) < 0.72 * 25.0);
    }
}
