//! The standby set: bolted down outside, on piped gas or a propane tank, started by its controller.
//!
//! Its rating by fuel, height and heat, what it burns, how it holds its speed, and the class of a supply by how long a load may stand dead.
//! Fuel lines of the 25 kW set are a maker's published figures (checked in a copy that quotes them); other sizes are scaled from them.
//! What gas takes from the propane rating, and the reactances, are typical, from memory.
//! Not covered: gas pressure and pipe size, a block heater, the alternator's and the battery's own upkeep.

use super::fuel::{Derating, Fuel, FuelCurve};

/// What only a standby set has.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Standby {
    /// Watts on its plate, for propane at sea level on a mild day.
    pub plate_w: f64,
    /// What it burns.
    pub fuel: Fuel,
    /// How thin and hot air are counted.
    pub derating: Derating,
    /// Height of the site, feet.
    pub altitude_ft: f64,
    /// Total harmonic distortion of the voltage, percent; 3 to 10 is met, from memory.
    pub distortion_pct: f64,
}

/// Share of the propane rating that the same engine has on natural gas; from memory, 0.85 to 1.
pub const NATURAL_GAS_SHARE: f64 = 0.9;

impl Standby {
    /// A set of this plate on this fuel at this height, by the rule that makers of such sets print.
    pub fn usual(plate_w: f64, fuel: Fuel, altitude_ft: f64) -> Self {
        Self {
            plate_w,
            fuel,
            derating: Derating::STANDBY,
            altitude_ft,
            distortion_pct: 5.0,
        }
    }

    /// Watts that it carries for hours in air of this temperature, °C.
    pub fn rated_w(&self, air_c: f64) -> f64 {
        let by_fuel = if self.fuel == Fuel::NaturalGas {
            NATURAL_GAS_SHARE
        } else {
            1.0
        };
        self.plate_w * by_fuel * self.derating.share(self.altitude_ft, air_c)
    }

    /// What it burns, scaled from the published figures of a 25 kW set: propane 1.5 gal/h idling and 4.3 at full load, natural gas 136 and 368 ft³/h.
    /// Maker's manual, checked in a copy that quotes it.
    /// For other fuels the heat of the propane line.
    pub fn burn(&self) -> FuelCurve {
        let (no_load, full) = match self.fuel {
            Fuel::NaturalGas => (136.0, 368.0),
            Fuel::Propane => (1.5, 4.3),
            other @ (Fuel::Gasoline | Fuel::Diesel) => {
                let same_heat = Fuel::Propane.heat_btu() / other.heat_btu();
                (1.5 * same_heat, 4.3 * same_heat)
            }
        };
        let size = self.plate_w / 25_000.0;
        FuelCurve {
            fuel: self.fuel,
            no_load_per_h: no_load * size,
            full_per_h: full * size,
        }
    }
}

/// How long the load of a standby supply may stand without power.
/// NFPA 110 types, checked in a copy that quotes them; NEC 700 asks for 10 s, 701 for 60 s, 702 for nothing.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum SupplyType {
    /// Type 10: emergency supplies (NEC 700).
    Ten,
    /// Type 60: legally required standby (NEC 701).
    Sixty,
    /// Type 120.
    HundredTwenty,
    /// Optional standby (NEC 702) and type M: no limit.
    NoLimit,
}

impl SupplyType {
    /// The strictest type that a supply meets which leaves its load dead for `seconds`.
    pub fn of(seconds: f64) -> Self {
        [Self::Ten, Self::Sixty, Self::HundredTwenty]
            .into_iter()
            .find(|t| seconds <= t.most_s())
            .unwrap_or(Self::NoLimit)
    }

    /// Longest time without acceptable power, seconds.
    pub fn most_s(self) -> f64 {
        match self {
            Self::Ten => 10.0,
            Self::Sixty => 60.0,
            Self::HundredTwenty => 120.0,
            Self::NoLimit => f64::INFINITY,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn gas_height_and_heat_each_take_from_the_plate() {
        let low = Standby::usual(18_000.0, Fuel::Propane, 0.0);
        assert!((low.rated_w(15.0) - 18_000.0).abs() < 1e-9);
        assert!(
            (low.rated_w(35.0) - 18_000.0 * 0.982).abs() < 1e-6,
            "10 K above 25 °C"
        );
        let gas = Standby::usual(18_000.0, Fuel::NaturalGas, 0.0);
        assert!((gas.rated_w(15.0) - 16_200.0).abs() < 1e-9);
        let high = Standby::usual(18_000.0, Fuel::NaturalGas, 5000.0);
        assert!((high.rated_w(15.0) - 16_200.0 * 0.85).abs() < 1e-9);
    }

    #[test]
    fn the_published_set_burns_what_is_published() {
        let gas = Standby::usual(25_000.0, Fuel::NaturalGas, 0.0).burn();
        assert!(
            (gas.per_hour(0.5) - 252.0).abs() < 1e-9,
            "halfway, as published"
        );
        let propane = Standby::usual(25_000.0, Fuel::Propane, 0.0).burn();
        assert!(
            (propane.per_hour(0.5) - 2.9).abs() < 1e-9,
            "halfway, as published"
        );
        let diesel = Standby::usual(25_000.0, Fuel::Diesel, 0.0).burn();
        let heat = |burn: FuelCurve| burn.per_hour(0.7) * burn.fuel.heat_btu();
        assert!((heat(diesel) - heat(propane)).abs() < 1e-6);
    }

    #[test]
    fn the_shorter_the_gap_the_stricter_the_type() {
        assert_eq!(SupplyType::of(8.0), SupplyType::Ten);
        assert_eq!(SupplyType::of(10.0), SupplyType::Ten);
        assert_eq!(SupplyType::of(25.0), SupplyType::Sixty);
        assert_eq!(SupplyType::of(100.0), SupplyType::HundredTwenty);
        assert_eq!(SupplyType::of(600.0), SupplyType::NoLimit);
    }
}
