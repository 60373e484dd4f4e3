//! Flexible cord: type letters, ampacity, voltage drop, and how hot its conductors get.
//!
//! Ampacity from NEC Table 400.5(A)(1); the two columns are for two and for three current-carrying conductors.
//! Temperature by a thermal balance whose thermal resistance follows from that table: at the tabled current, straight, in 30 °C, a conductor settles at the cord's 60 °C.
//! Heating counts the rise of resistance with temperature, so a gross overload has no settling point and runs away.
//! Not covered: damage, plugs and receptacles (often the hotter part), sun, wind, 75 °C and hotter cords.
//! Accuracy: settled temperatures are as good as the table (it rounds to whole amps); the time to get there is ± 50 %; the factor for a coil is an assumption.

use core::fmt;
use core::str::FromStr;

use crate::apparatus::conductor::Awg;
use crate::apparatus::conductor::Material;
use crate::apparatus::conductor::Strand;
use crate::apparatus::conductor::conductor_impedance;
use crate::apparatus::conductor::resistance_ohm_per_km;
use crate::units::Complex;
use crate::units::portable;

/// Temperature that the ampacity table lets a general-use cord reach, °C.
pub const RATED_C: f64 = 60.0;

/// Ambient temperature of the ampacity table, °C; NEC Article 400, checked in a copy that quotes it.
pub const TABLE_AMBIENT_C: f64 = 30.0;

/// Temperature at which a thermoplastic cord softens so that conductors can move through it, °C.
/// Assumption; published softening points of flexible PVC lie between 80 and 120 °C (from memory).
pub const SOFTENING_C: f64 = 100.0;

/// Temperature at which the insulation chars and what lies against it may catch fire, °C.
/// Assumption; flexible PVC decomposes from about 200 °C (from memory).
pub const CHARRING_C: f64 = 200.0;

/// What the letters printed on a cord say.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct CordType {
    /// Letters S without J: hard service, 600 V; SJ: junior hard service, 300 V; SP: parallel, 300 V.
    pub service: Service,
    /// Letter T: thermoplastic; without it, rubber.
    pub thermoplastic: bool,
    /// Letter O: the jacket resists oil.
    pub oil_resistant: bool,
    /// Letter W: made for wet places and sunlight.
    pub outdoor: bool,
}

/// How rough a use a cord is made for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Service {
    /// S: hard service, 600 V.
    Hard,
    /// SJ: junior hard service, 300 V.
    Junior,
    /// SP: parallel cord of lamps and clocks, 300 V.
    Parallel,
}

impl CordType {
    /// Rated volts of the insulation; NEC Table 400.4, checked in a copy that quotes it.
    pub fn rated_v(self) -> f64 {
        match self.service {
            Service::Hard => 600.0,
            Service::Junior | Service::Parallel => 300.0,
        }
    }
}

/// What is wrong with a text that should be the type letters of a cord.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct NotACordType;

impl fmt::Display for NotACordType {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(
            "cord letters start with S, SJ or SP, then may have T, O or OO, and W: SJTW, SOOW, STW",
        )
    }
}

impl core::error::Error for NotACordType {}

/// From the letters: `SJTW`, `SOOW`, `STW`, `SPT`.
impl FromStr for CordType {
    type Err = NotACordType;

    fn from_str(text: &str) -> Result<Self, NotACordType> {
        let letters = text.trim().strip_prefix('S').ok_or(NotACordType)?;
        let (service, letters) = match (letters.strip_prefix('J'), letters.strip_prefix('P')) {
            (Some(rest), _) => (Service::Junior, rest),
            (None, Some(rest)) => (Service::Parallel, rest),
            (None, None) => (Service::Hard, letters),
        };
        let (thermoplastic, letters) = peel(letters, "T");
        let (oil_resistant, letters) = peel(letters, "O");
        let (_insulation_too, letters) = if oil_resistant {
            peel(letters, "O")
        } else {
            (false, letters)
        };
        let (outdoor, letters) = peel(letters, "W");
        if letters.is_empty() {
            Ok(Self {
                service,
                thermoplastic,
                oil_resistant,
                outdoor,
            })
        } else {
            Err(NotACordType)
        }
    }
}

fn peel<'a>(letters: &'a str, letter: &str) -> (bool, &'a str) {
    letters
        .strip_prefix(letter)
        .map_or((false, letters), |rest| (true, rest))
}

/// How many conductors of a cord carry current and so heat it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Loaded {
    /// Two: a 120 V cord, or a 120/240 V cord with balanced legs. Column B of the table.
    Two,
    /// Three: a 120/240 V cord whose neutral counts too, the safe choice for a household. Column A of the table.
    Three,
}

/// How a cord lies while it works.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Lay {
    /// Uncoiled in free air.
    Straight,
    /// Left on its reel or in a tight coil.
    Coiled,
}

impl Lay {
    /// Thermal resistance to the air as a multiple of that of a straight cord.
    ///
    /// The code asks for a coil to be derated and gives no figure.
    /// Assumption: a coil counts as a bundle of ten or more loaded conductors, which Table 400.5(A)(3) derates to 50 %, and half the current at the same temperature is four times the resistance to heat.
    /// A loose coil may be near 1.6 (80 %), a full reel above 6.
    pub fn heat_factor(self) -> f64 {
        match self {
            Self::Straight => 1.0,
            Self::Coiled => 4.0,
        }
    }
}

/// What the insulation of a cord suffers at a conductor temperature.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Insulation {
    /// Within its rating.
    Sound,
    /// Above its rating: it ages fast.
    Overheated,
    /// Soft: conductors can move through it and touch.
    Softening,
    /// Charring: what lies against it may catch fire.
    Charring,
}

/// The state of the insulation at a conductor temperature of `t_c` °C.
pub fn insulation_at(t_c: f64) -> Insulation {
    if t_c >= CHARRING_C {
        Insulation::Charring
    } else if t_c >= SOFTENING_C {
        Insulation::Softening
    } else if t_c > RATED_C + 1e-6 {
        Insulation::Overheated
    } else {
        Insulation::Sound
    }
}

/// Ampacity of a copper cord, amps; `None` for a gauge that the table doesn't print.
///
/// NEC Table 400.5(A)(1), 30 °C ambient.
/// Two loaded: 18 to 12 AWG checked in a copy that quotes it, thicker from memory.
/// Three loaded: 18 and 16 AWG checked, thicker from memory.
pub fn ampacity_a(awg: Awg, loaded: Loaded) -> Option<f64> {
    let (_, three, two) = TABLE_400_5
        .iter()
        .find(|(number, ..)| *number == awg.number())?;
    Some(match loaded {
        Loaded::Two => *two,
        Loaded::Three => *three,
    })
}

/// A cord of stranded copper, of a gauge that the ampacity table prints.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cord {
    kind: CordType,
    awg: Awg,
    length_ft: f64,
    ampacity_a: f64,
}

impl Cord {
    /// A cord of this type, gauge and length in feet; `None` if the ampacity table has no such gauge, or the length isn't above zero.
    pub fn new(kind: CordType, awg: Awg, length_ft: f64, loaded: Loaded) -> Option<Self> {
        let ampacity_a = ampacity_a(awg, loaded)?;
        (length_ft > 0.0 && length_ft.is_finite()).then_some(Self {
            kind,
            awg,
            length_ft,
            ampacity_a,
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

    /// What it may carry by the table, amps.
    pub fn ampacity_a(&self) -> f64 {
        self.ampacity_a
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

    /// Conductor temperature that steady `amps` settle at, °C; infinite if they run away.
    pub fn settle_c(&self, amps: f64, ambient_c: f64, lay: Lay) -> f64 {
        let heat = self.heating_k(amps) * lay.heat_factor();
        let slope = 1.0 - heat * rise_per_k();
        if slope <= 0.0 {
            return f64::INFINITY;
        }
        (ambient_c + heat * (1.0 - rise_per_k() * RATED_C)) / slope
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
        let heat = self.heating_k(amps) * lay.heat_factor();
        let tau = self.time_constant_s() * lay.heat_factor();
        let source = (ambient_c + heat * (1.0 - rise_per_k() * RATED_C)) / tau;
        let rate = (1.0 - heat * rise_per_k()) / tau;
        portable::first_order(t_c, source, rate, seconds)
    }

    /// Seconds in which a straight cord covers 63 % of the way to where it settles.
    ///
    /// Heat stored over heat given off at the table's balance.
    /// Assumption: jacket, insulation and idle conductors store seven times what the loaded copper does (from typical dimensions, ± 50 %).
    pub fn time_constant_s(&self) -> f64 {
        let stored_j_per_k_m = 8.0 * COPPER_J_PER_K_CM3 * self.awg.area_mm2();
        let ohm_per_m =
            resistance_ohm_per_km(self.awg, Material::Copper, Strand::Stranded, RATED_C) / 1000.0;
        let given_off_w_per_m = self.ampacity_a * self.ampacity_a * ohm_per_m;
        stored_j_per_k_m * (RATED_C - TABLE_AMBIENT_C) / given_off_w_per_m
    }

    /// Rise over ambient in kelvin that `amps` would give if the resistance stayed as at 60 °C.
    fn heating_k(&self, amps: f64) -> f64 {
        let multiple = amps / self.ampacity_a;
        (RATED_C - TABLE_AMBIENT_C) * multiple * multiple
    }
}

/// Rise of copper's resistance per kelvin, of the resistance at 60 °C.
fn rise_per_k() -> f64 {
    Material::Copper.resistance_ratio(RATED_C + 1.0, RATED_C) - 1.0
}

/// Heat that copper stores, joules per kelvin and cubic centimeter: numerically joules per kelvin, meter and square millimeter.
const COPPER_J_PER_K_CM3: f64 = 3.45;

/// NEC Table 400.5(A)(1): gauge number, column A (three loaded), column B (two loaded), amps.
const TABLE_400_5: &[(i8, f64, f64)] = &[
    (18, 7.0, 10.0),
    (16, 10.0, 13.0),
    (14, 15.0, 18.0),
    (12, 20.0, 25.0),
    (10, 25.0, 30.0),
    (8, 35.0, 40.0),
    (6, 45.0, 55.0),
    (4, 60.0, 70.0),
    (2, 80.0, 95.0),
];

#[cfg(test)]
mod tests {
    use super::*;

    fn cord(awg: &str, loaded: Loaded) -> Cord {
        Cord::new("SJTW".parse().unwrap(), awg.parse().unwrap(), 100.0, loaded).unwrap()
    }

    #[test]
    fn the_letters_of_a_cord_say_what_it_is_made_for() {
        let tells = |text: &str| text.parse::<CordType>().unwrap();
        assert!(
            tells("SJTW").outdoor && tells("SJTW").thermoplastic && !tells("SJTW").oil_resistant
        );
        assert_eq!(tells("SJTW").service, Service::Junior);
        assert!(!tells("SJT").outdoor);
        assert_eq!(tells("SPT").service, Service::Parallel);
        assert!((tells("SOOW").rated_v() - 600.0).abs() < 1e-9 && !tells("SOOW").thermoplastic);
        assert!(tells("STOW").oil_resistant && tells("STOW").outdoor);
        for text in ["", "J", "SJTX", "WS", "SJTWW", "sjtw", "SOOOW"] {
            assert_eq!(text.parse::<CordType>(), Err(NotACordType), "{text:?}");
        }
    }

    #[test]
    fn at_the_tabled_current_every_cord_settles_at_its_rating() {
        for (number, ..) in TABLE_400_5 {
            for loaded in [Loaded::Two, Loaded::Three] {
                let cord = cord(&number.to_string(), loaded);
                let t_c = cord.settle_c(cord.ampacity_a(), TABLE_AMBIENT_C, Lay::Straight);
                assert!(
                    (t_c - RATED_C).abs() < 1e-9,
                    "{number} AWG {loaded:?} settles at {t_c} °C"
                );
                assert_eq!(insulation_at(t_c), Insulation::Sound);
            }
        }
    }

    #[test]
    fn a_coil_at_half_the_tabled_current_is_as_hot_as_a_straight_cord_at_all_of_it() {
        let cord = cord("12", Loaded::Two);
        let t_c = cord.settle_c(12.5, TABLE_AMBIENT_C, Lay::Coiled);
        assert!((t_c - RATED_C).abs() < 1e-9, "{t_c} °C");
    }

    #[test]
    fn a_thin_coiled_cord_under_a_space_heater_goes_soft() {
        let thin = cord("16", Loaded::Two);
        let hot = thin.temperature_after(25.0, 12.5, 25.0, Lay::Coiled, 3.0 * 3600.0);
        assert!(
            insulation_at(hot) >= Insulation::Softening,
            "coiled {hot} °C"
        );
        let straight = thin.temperature_after(25.0, 12.5, 25.0, Lay::Straight, 3.0 * 3600.0);
        assert_eq!(
            insulation_at(straight),
            Insulation::Sound,
            "straight {straight} °C"
        );
    }

    #[test]
    fn insulation_gets_worse_with_heat_and_softens_within_the_published_range() {
        let states = [60.0, 79.0, 120.0, 199.0, 200.0].map(insulation_at);
        let expected = [
            Insulation::Sound,
            Insulation::Overheated,
            Insulation::Softening,
            Insulation::Softening,
            Insulation::Charring,
        ];
        assert_eq!(states, expected);
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
        let at =
            |t_c: f64, seconds: f64| cord.temperature_after(t_c, 28.0, 15.0, Lay::Coiled, seconds);
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
}
