//! The letters printed on a flexible cord, and what they say.
//!
//! NEC Table 400.4: letter codes and W checked in a copy that quotes it; which service counts as how hard a use, and the heater and range cords, from memory.
//! Covered: the S family with J, V, P, RD; E or T; O or OO; W; the thickness of parallel cord; H for heater cord.
//! Not covered: elevator, portable-power, stage-lighting and lamp cords (types E, G, W, PPE, C, PD), tinsel cords.
//! Accuracy: letters are letters; a cord's rated temperature is printed on it and not told by them.

use core::fmt;
use core::str::FromStr;

/// What the letters printed on a cord say.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct CordType {
    /// Which service it is made for.
    pub service: Service,
    /// What insulation and jacket are made of.
    pub material: CordMaterial,
    /// Letters O and OO: what of it resists oil.
    pub oil: Oil,
    /// Letter W: made for wet places and sunlight.
    pub outdoor: bool,
    /// Letter H in front: insulation for heating appliances.
    pub heater: bool,
}

/// The service a cord is made for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Service {
    /// S: service cord, 600 V.
    Hard,
    /// SJ: junior service cord, 300 V.
    Junior,
    /// SV: vacuum-cleaner cord, 300 V, light and limp.
    Vacuum,
    /// SP: parallel cord of lamps and clocks, 300 V.
    Parallel,
    /// SRD: cord of ranges and dryers, 300 V.
    RangeDryer,
}

/// What a cord is made of.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum CordMaterial {
    /// No letter: thermoset, as rubber.
    Thermoset,
    /// E: thermoplastic elastomer.
    Elastomer,
    /// T: thermoplastic.
    Thermoplastic,
}

/// What of a cord resists oil.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Oil {
    /// Nothing.
    None,
    /// O: the jacket.
    Jacket,
    /// OO: jacket and insulation.
    JacketAndInsulation,
}

/// How rough a use a cord may have.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Usage {
    /// Lamps, clocks, vacuum cleaners: not where people walk or things are dragged.
    Light,
    /// Around the house and the yard.
    Hard,
    /// Workshops and building sites.
    ExtraHard,
}

impl CordType {
    /// Rated volts of the insulation; NEC Table 400.4, checked in a copy that quotes it.
    pub fn rated_v(self) -> f64 {
        match self.service {
            Service::Hard => 600.0,
            Service::Junior | Service::Vacuum | Service::Parallel | Service::RangeDryer => 300.0,
        }
    }

    /// How rough a use the table gives it; from memory.
    pub fn usage(self) -> Usage {
        match self.service {
            Service::Hard => Usage::ExtraHard,
            Service::Junior => Usage::Hard,
            Service::Vacuum | Service::Parallel | Service::RangeDryer => Usage::Light,
        }
    }

    /// What each of its letters means, in the order they are printed.
    pub fn letters(self) -> Vec<Letters> {
        let service = match self.service {
            Service::Hard => [Some(Letters::Service), None],
            Service::Junior => [Some(Letters::Service), Some(Letters::Junior)],
            Service::Vacuum => [Some(Letters::Service), Some(Letters::Vacuum)],
            Service::Parallel => [Some(Letters::Service), Some(Letters::Parallel)],
            Service::RangeDryer => [Some(Letters::Service), Some(Letters::RangeDryer)],
        };
        let material = match self.material {
            CordMaterial::Thermoset => None,
            CordMaterial::Elastomer => Some(Letters::Elastomer),
            CordMaterial::Thermoplastic => Some(Letters::Thermoplastic),
        };
        let oil = match self.oil {
            Oil::None => None,
            Oil::Jacket => Some(Letters::OilJacket),
            Oil::JacketAndInsulation => Some(Letters::OilAll),
        };
        let heater = self.heater.then_some(Letters::Heater);
        let outdoor = self.outdoor.then_some(Letters::Outdoor);
        [heater, service[0], service[1], material, oil, outdoor]
            .into_iter()
            .flatten()
            .collect()
    }
}

/// One letter or group of letters that has a meaning of its own.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Letters {
    /// H in front: heater cord, hotter insulation.
    Heater,
    /// S: service cord; alone, hard service and 600 V.
    Service,
    /// J: junior service, 300 V.
    Junior,
    /// V: vacuum-cleaner cord, 300 V.
    Vacuum,
    /// P: parallel conductors, lamps and clocks, 300 V.
    Parallel,
    /// RD: range and dryer cord, 300 V.
    RangeDryer,
    /// E: thermoplastic elastomer.
    Elastomer,
    /// T: thermoplastic, as PVC.
    Thermoplastic,
    /// O: the jacket resists oil.
    OilJacket,
    /// OO: jacket and insulation resist oil.
    OilAll,
    /// W: wet places and sunlight.
    Outdoor,
}

impl Letters {
    /// As printed on the cord.
    pub fn printed(self) -> &'static str {
        LETTERS
            .iter()
            .find(|(one, _)| *one == self)
            .map_or("", |(_, printed)| printed)
    }
}

/// Every group of letters, as printed.
pub const LETTERS: &[(Letters, &str)] = &[
    (Letters::Heater, "H"),
    (Letters::Service, "S"),
    (Letters::Junior, "J"),
    (Letters::Vacuum, "V"),
    (Letters::Parallel, "P"),
    (Letters::RangeDryer, "RD"),
    (Letters::Elastomer, "E"),
    (Letters::Thermoplastic, "T"),
    (Letters::OilJacket, "O"),
    (Letters::OilAll, "OO"),
    (Letters::Outdoor, "W"),
];

/// As printed on a cord, without the thickness of a parallel cord.
impl fmt::Display for CordType {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.letters()
            .into_iter()
            .try_for_each(|letters| f.write_str(letters.printed()))
    }
}

/// What is wrong with a text that should be the type letters of a cord.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct NotACordType;

impl fmt::Display for NotACordType {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(
            "cord letters start with S, SJ, SV, SP or SRD, then may have E or T, O or OO, and W: SJTW, SOOW, STW",
        )
    }
}

impl core::error::Error for NotACordType {}

/// From the letters: `SJTW`, `SOOW`, `STW`, `SPT-2`, `HSJO`.
impl FromStr for CordType {
    type Err = NotACordType;

    fn from_str(text: &str) -> Result<Self, NotACordType> {
        let (heater, letters) = peel(text.trim(), "H");
        let letters = letters.strip_prefix('S').ok_or(NotACordType)?;
        let named = [
            ("J", Service::Junior),
            ("V", Service::Vacuum),
            ("P", Service::Parallel),
            ("RD", Service::RangeDryer),
        ];
        let (service, letters) = named
            .iter()
            .find_map(|(prefix, service)| Some((*service, letters.strip_prefix(prefix)?)))
            .unwrap_or((Service::Hard, letters));
        let (elastomer, letters) = peel(letters, "E");
        let (thermoplastic, letters) = peel(letters, "T");
        let material = match (elastomer, thermoplastic) {
            (true, true) => return Err(NotACordType),
            (true, false) => CordMaterial::Elastomer,
            (false, true) => CordMaterial::Thermoplastic,
            (false, false) => CordMaterial::Thermoset,
        };
        let (oil, letters) = match (letters.strip_prefix("OO"), letters.strip_prefix('O')) {
            (Some(rest), _) => (Oil::JacketAndInsulation, rest),
            (None, Some(rest)) => (Oil::Jacket, rest),
            (None, None) => (Oil::None, letters),
        };
        let (outdoor, letters) = peel(letters, "W");
        let thickness = service == Service::Parallel && ["-1", "-2", "-3"].contains(&letters);
        if letters.is_empty() || thickness {
            Ok(Self {
                service,
                material,
                oil,
                outdoor,
                heater,
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

#[cfg(test)]
mod tests {
    use super::*;

    fn tells(text: &str) -> CordType {
        text.parse().unwrap_or_else(|why| panic!("{text}: {why}"))
    }

    #[test]
    fn the_letters_of_a_cord_say_what_it_is_made_for() {
        let yard = tells("SJTW");
        assert!(yard.outdoor && yard.material == CordMaterial::Thermoplastic);
        assert_eq!((yard.service, yard.oil), (Service::Junior, Oil::None));
        assert!(!tells("SJT").outdoor);
        assert_eq!(tells("SPT-2").service, Service::Parallel);
        assert_eq!(tells("SOOW").oil, Oil::JacketAndInsulation);
        assert!((tells("SOOW").rated_v() - 600.0).abs() < 1e-9);
        assert_eq!(tells("STOW").oil, Oil::Jacket);
        assert_eq!(tells("SJEOW").material, CordMaterial::Elastomer);
        assert_eq!(tells("SVT").service, Service::Vacuum);
        assert_eq!(tells("SRDT").service, Service::RangeDryer);
        assert!(tells("HSJO").heater && !tells("SJO").heater);
    }

    #[test]
    fn what_is_not_a_cord_is_refused() {
        for text in [
            "", "J", "SJTX", "WS", "SJTWW", "sjtw", "SOOOW", "SJET", "SJT-2", "SPT-4", "H",
        ] {
            assert_eq!(text.parse::<CordType>(), Err(NotACordType), "{text:?}");
        }
    }

    #[test]
    fn a_cord_prints_as_it_is_read_and_every_letter_has_a_meaning() {
        for text in [
            "S", "SO", "SOO", "SOOW", "ST", "STW", "STOW", "STOOW", "SE", "SEOOW", "SJ", "SJO",
            "SJOOW", "SJT", "SJTW", "SJTOW", "SJEOW", "SV", "SVO", "SVT", "SVTOO", "SVE", "SP",
            "SPT", "SPE", "SRD", "SRDE", "SRDT", "HSJ", "HSJO", "HSJOO",
        ] {
            assert_eq!(tells(text).to_string(), text);
        }
        let printed = |text: &str| {
            let letters = tells(text).letters();
            letters.iter().map(|l| l.printed()).collect::<Vec<_>>()
        };
        assert_eq!(printed("SJTOOW"), ["S", "J", "T", "OO", "W"]);
        for (letters, printed) in LETTERS {
            assert_eq!(letters.printed(), *printed);
        }
    }

    #[test]
    fn harder_use_never_has_fewer_volts() {
        assert!(tells("SOOW").usage() > tells("SJOOW").usage());
        assert!(tells("SJT").usage() > tells("SVT").usage());
    }
}
