//! Fuels: the heat in them, how much a set burns by its load, and how much power thin or hot air takes from an engine.
//!
//! Heat contents of fuels as the United States government publishes them (checked in a copy that quotes them).
//! Consumption is a straight line from no load to full load; the published figures of five sets lie on it within their rounding, one doesn't (7 % off in the middle).
//! Derating rules are the ones that makers print; they disagree with each other by a few percent, so the rule is data of the set.
//! Not covered: winter blends, ethanol, the vapor that a cold propane tank can no longer give, gas pressure.

/// What an engine burns.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Fuel {
    /// Gasoline, in US gallons.
    Gasoline,
    /// Diesel oil, in US gallons.
    Diesel,
    /// Propane, in US gallons of liquid.
    Propane,
    /// Natural gas from the street, in cubic feet.
    NaturalGas,
}

/// Cubic feet of vapor from a gallon of liquid propane; makers' manuals, checked in a copy that quotes them.
pub const PROPANE_FT3_PER_GAL: f64 = 36.4;
/// Pounds of a gallon of liquid propane; as above.
pub const PROPANE_LB_PER_GAL: f64 = 4.24;
/// British thermal units of a kilowatt-hour.
const BTU_PER_KWH: f64 = 3412.14;
/// Grams of a pound.
const G_PER_LB: f64 = 453.592;

impl Fuel {
    /// Heat of one gallon, or of one cubic foot of natural gas, Btu.
    ///
    /// Federal Register 2007, factors of the monthly energy review, checked in a copy that quotes it; natural gas from the list of the Department of Energy, checked likewise.
    pub fn heat_btu(self) -> f64 {
        match self {
            Self::Gasoline => 120_333.0,
            Self::Diesel => 137_381.0,
            Self::Propane => 91_333.0,
            Self::NaturalGas => 1_027.0,
        }
    }

    /// Grams of one gallon, or of one cubic foot of natural gas; all but propane's from memory, within 3 %.
    pub fn grams(self) -> f64 {
        match self {
            Self::Gasoline => 2_800.0,
            Self::Diesel => 3_200.0,
            Self::Propane => PROPANE_LB_PER_GAL * G_PER_LB,
            Self::NaturalGas => 20.0,
        }
    }

    /// Whether it is carried to the set in cans, so that somebody pours it.
    pub fn is_poured(self) -> bool {
        matches!(self, Self::Gasoline | Self::Diesel)
    }
}

/// Share of the fuel's heat that becomes electricity: watts out for Btu an hour in.
pub fn efficiency(watts: f64, btu_per_h: f64) -> f64 {
    watts / 1000.0 * BTU_PER_KWH / btu_per_h
}

/// What a set burns by its load, in the unit of its fuel.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FuelCurve {
    /// The fuel.
    pub fuel: Fuel,
    /// Burned in an hour at rated speed without load.
    pub no_load_per_h: f64,
    /// Burned in an hour at rated load.
    pub full_per_h: f64,
}

impl FuelCurve {
    /// The straight line through two published points, each a share of rated load with what is burned in an hour there.
    /// The shares must differ.
    pub fn through(fuel: Fuel, one: (f64, f64), other: (f64, f64)) -> Self {
        let slope = (other.1 - one.1) / (other.0 - one.0);
        let no_load_per_h = one.1 - slope * one.0;
        Self {
            fuel,
            no_load_per_h,
            full_per_h: no_load_per_h + slope,
        }
    }

    /// Burned in an hour at a share of rated load, 0 and up.
    pub fn per_hour(&self, share: f64) -> f64 {
        self.no_load_per_h + (self.full_per_h - self.no_load_per_h) * share.max(0.0)
    }

    /// Hours that a store lasts at a share of rated load; infinite if nothing is burned.
    pub fn hours(&self, store: f64, share: f64) -> f64 {
        store / self.per_hour(share)
    }

    /// Share of the heat that becomes electricity at a share of `rated_w`.
    pub fn efficiency(&self, rated_w: f64, share: f64) -> f64 {
        efficiency(rated_w * share, self.per_hour(share) * self.fuel.heat_btu())
    }

    /// Grams burned for a kilowatt-hour at a share of `rated_w`.
    pub fn grams_per_kwh(&self, rated_w: f64, share: f64) -> f64 {
        self.per_hour(share) * self.fuel.grams() / (rated_w * share / 1000.0)
    }
}

/// How much power an engine loses in thin and in hot air.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Derating {
    /// Height up to which nothing is lost, feet.
    pub free_ft: f64,
    /// Share lost in each thousand feet above that.
    pub per_1000_ft: f64,
    /// Temperature up to which nothing is lost, °C.
    pub free_c: f64,
    /// Share lost by each kelvin above that.
    pub per_k: f64,
}

/// Feet of a meter.
const FT_PER_M: f64 = 1.0 / 0.3048;

impl Derating {
    /// A carbureted portable, even with its jet changed: 3.5 % in each 1000 ft. Maker's manual, checked in a copy that quotes it.
    pub const CARBURETED: Self = Self {
        free_ft: 0.0,
        per_1000_ft: 0.035,
        free_c: f64::INFINITY,
        per_k: 0.0,
    };

    /// 3 % in each 1000 ft, and 1 % by each 10 °F above 77 °F. Maker's manual, checked in a copy that quotes it.
    pub const STANDBY: Self = Self {
        free_ft: 0.0,
        per_1000_ft: 0.03,
        free_c: 25.0,
        per_k: 0.01 * 1.8 / 10.0,
    };

    /// 3 % in each 500 m above 1000 m, and 3 % by each 5 °C above 40 °C. Maker's manual, checked in a copy that quotes it.
    pub const ABOVE_1000_M: Self = Self {
        free_ft: 1000.0 * FT_PER_M,
        per_1000_ft: 0.03 * 1000.0 / (500.0 * FT_PER_M),
        free_c: 40.0,
        per_k: 0.03 / 5.0,
    };

    /// 3.5 % in each 300 m above 1500 m, and 3 % by each 5 °C above 40 °C. Maker's manual, checked in a copy that quotes it.
    pub const ABOVE_1500_M: Self = Self {
        free_ft: 1500.0 * FT_PER_M,
        per_1000_ft: 0.035 * 1000.0 / (300.0 * FT_PER_M),
        free_c: 40.0,
        per_k: 0.03 / 5.0,
    };

    /// Share of its rated power that an engine has at this height, feet, and in air of this temperature, °C; 0 at least.
    pub fn share(&self, altitude_ft: f64, air_c: f64) -> f64 {
        let thin = (altitude_ft - self.free_ft).max(0.0) / 1000.0 * self.per_1000_ft;
        let hot = if air_c > self.free_c {
            (air_c - self.free_c) * self.per_k
        } else {
            0.0
        };
        (1.0 - thin - hot).max(0.0)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_line_through_two_points_meets_both() {
        let line = FuelCurve::through(Fuel::Diesel, (0.25, 0.6), (1.0, 1.6));
        assert!((line.per_hour(0.25) - 0.6).abs() < 1e-12);
        assert!((line.per_hour(1.0) - 1.6).abs() < 1e-12);
        assert!(line.no_load_per_h > 0.0, "idling burns fuel");
        assert!((line.hours(8.0, 1.0) - 5.0).abs() < 1e-12);
    }

    #[test]
    fn no_engine_turns_more_than_a_third_of_its_fuel_into_electricity() {
        for (line, rated_w) in [
            (
                FuelCurve::through(Fuel::Diesel, (0.25, 0.6), (1.0, 1.6)),
                20_000.0,
            ),
            (
                FuelCurve::through(Fuel::Propane, (0.0, 1.5), (1.0, 4.3)),
                25_000.0,
            ),
            (
                FuelCurve::through(Fuel::NaturalGas, (0.0, 136.0), (1.0, 368.0)),
                25_000.0,
            ),
        ] {
            let mut before = 0.0;
            for tenth in 1..=10 {
                let share = f64::from(tenth) / 10.0;
                let efficiency = line.efficiency(rated_w, share);
                assert!(
                    efficiency > before && efficiency < 0.34,
                    "{:?} at {share}: {efficiency}",
                    line.fuel
                );
                before = efficiency;
            }
        }
    }

    #[test]
    fn thin_and_hot_air_take_power_and_neither_gives_any() {
        for rule in [
            Derating::CARBURETED,
            Derating::STANDBY,
            Derating::ABOVE_1000_M,
            Derating::ABOVE_1500_M,
        ] {
            assert!((rule.share(0.0, 15.0) - 1.0).abs() < 1e-12);
            assert!(
                (rule.share(-300.0, -20.0) - 1.0).abs() < 1e-12,
                "below the sea, in frost"
            );
            let mut before = 1.0;
            for thousand in 1..=12 {
                let share = rule.share(f64::from(thousand) * 1000.0, 45.0);
                assert!((0.0..=before).contains(&share), "{share} after {before}");
                before = share;
            }
            assert!(
                rule.share(1e6, 45.0).abs() < 1e-12,
                "nothing burns in no air"
            );
        }
    }
}
