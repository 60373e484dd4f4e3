//! What a generator's engine gives to the air and takes from it: carbon monoxide out, oxygen in.
//!
//! A stock carbureted set gives about 500 g of carbon monoxide an hour in fresh air and nearly 4 000 as the room's oxygen falls to 17 %; below that it fades (NIST, checked).
//! Between those figures a straight line; below 17 % a straight line to an engine that dies at 14 % (assumption).
//! With load it goes as the fuel does (assumption; the published figures are means over loads).
//! Oxygen follows from the fuel by mass balance, less what the carbon monoxide leaves unburned.
//! Accuracy: sets differ by a factor of two, and so does one set between its first hour and its last.
//! Not covered: soot, unburned fuel in the exhaust, catalysts that age, sets that shut themselves off.

/// Oxygen of fresh air, share by volume.
pub const FRESH_O2: f64 = 0.209;

/// An engine at work.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Engine {
    /// Carbon monoxide at this load in fresh air, grams an hour.
    pub fresh_g_per_h: f64,
    /// Fuel burned at this load in fresh air, grams an hour.
    pub fuel_g_per_h: f64,
}

/// What an engine gives and takes in one state of the air.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Exhaust {
    /// Carbon monoxide given, grams an hour.
    pub co_g_per_h: f64,
    /// Oxygen taken, grams an hour.
    pub o2_g_per_h: f64,
}

/// Which set it is, by what it emits in fresh air at half load.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Make {
    /// A stock carbureted set: 500 g/h (NIST, checked).
    Stock,
    /// A set within the limit proposed for handheld and Class I engines: 75 g/h (16 CFR 1241, proposed 2016; checked).
    LimitedSmall,
    /// The same for one-cylinder Class II engines: 150 g/h.
    LimitedOneCylinder,
    /// The same for two-cylinder Class II engines: 300 g/h.
    LimitedTwoCylinders,
}

impl Make {
    /// Carbon monoxide in fresh air at half load, grams an hour.
    pub fn fresh_g_per_h(self) -> f64 {
        match self {
            Self::Stock => 500.0,
            Self::LimitedSmall => 75.0,
            Self::LimitedOneCylinder => 150.0,
            Self::LimitedTwoCylinders => 300.0,
        }
    }
}

impl Engine {
    /// An engine that burns `fuel_gal_per_h` gallons of gasoline an hour now and `half_load_gal_per_h` at half load.
    pub fn gasoline(make: Make, fuel_gal_per_h: f64, half_load_gal_per_h: f64) -> Self {
        Self {
            fresh_g_per_h: make.fresh_g_per_h() * fuel_gal_per_h / half_load_gal_per_h,
            fuel_g_per_h: fuel_gal_per_h * GASOLINE_G_PER_GAL,
        }
    }

    /// What it gives and takes in air with this share of oxygen.
    pub fn exhaust(&self, o2: f64) -> Exhaust {
        let breath = ((o2 - DIES_O2) / (STARVED_O2 - DIES_O2)).clamp(0.0, 1.0);
        let starved = ((FRESH_O2 - o2) / (FRESH_O2 - STARVED_O2)).clamp(0.0, 1.0);
        let rich = self.fresh_g_per_h * (1.0 + (STARVED_TIMES - 1.0) * starved);
        let co_g_per_h = rich.min(CO_PER_GASOLINE_MOST * self.fuel_g_per_h) * breath;
        let wanted = O2_PER_GASOLINE * self.fuel_g_per_h * breath;
        Exhaust {
            co_g_per_h,
            o2_g_per_h: (wanted - O2_SPARED_PER_CO * co_g_per_h).max(0.0),
        }
    }
}

/// Oxygen at which the emission is greatest: NIST, checked.
const STARVED_O2: f64 = 0.17;

/// Oxygen at which the engine dies: assumption, 0.13 to 0.15.
const DIES_O2: f64 = 0.14;

/// Emission there over that in fresh air: nearly 4 000 g/h over about 500.
const STARVED_TIMES: f64 = 8.0;

/// Most grams of monoxide from a gram of gasoline: nine tenths of its carbon (assumption; the whole is a bound by mass).
/// The published 4 000 g/h so needs a set that burns 0.8 gal/h or more.
const CO_PER_GASOLINE_MOST: f64 = 0.9 * 28.01 / 13.875;

/// Grams of a gallon of gasoline: 0.74 kg/L.
const GASOLINE_G_PER_GAL: f64 = 0.74 * 3_785.411_784;

/// Grams of oxygen that a gram of gasoline (CH1.85) needs: (1 + 1.85/4) of 32 over 13.86.
const O2_PER_GASOLINE: f64 = 1.4625 * 31.998 / 13.875;

/// Grams of oxygen spared by each gram of carbon that leaves as monoxide: half a molecule for each.
const O2_SPARED_PER_CO: f64 = 16.0 / 28.01;

#[cfg(test)]
mod tests {
    use super::*;

    fn stock() -> Engine {
        Engine::gasoline(Make::Stock, 0.85, 0.85)
    }

    #[test]
    fn less_oxygen_gives_more_gas_down_to_17_percent_and_less_below() {
        let mut before = stock().exhaust(0.21).co_g_per_h;
        for tenth in (140..=209_i32).rev() {
            let o2 = f64::from(tenth) / 1000.0;
            let now = stock().exhaust(o2).co_g_per_h;
            if tenth >= 170 {
                assert!(now >= before, "{o2}: {now} after {before} g/h");
            } else {
                assert!(now < before, "{o2}: {now} after {before} g/h");
            }
            before = now;
        }
        assert!(stock().exhaust(0.14).co_g_per_h.abs() < 1e-9);
    }

    #[test]
    fn an_engine_never_makes_oxygen_and_takes_most_in_fresh_air() {
        let fresh = stock().exhaust(FRESH_O2).o2_g_per_h;
        for tenth in 100..210_i32 {
            let taken = stock().exhaust(f64::from(tenth) / 1000.0).o2_g_per_h;
            assert!((0.0..=fresh).contains(&taken), "{taken} of {fresh} g/h");
        }
        assert!((7500.0..8000.0).contains(&fresh), "{fresh} g/h");
    }

    #[test]
    fn no_more_carbon_leaves_than_the_fuel_has() {
        let engine = stock();
        let small = Engine {
            fuel_g_per_h: engine.fuel_g_per_h / 3.0,
            ..engine
        };
        for engine in [engine, small] {
            let carbon = engine.exhaust(STARVED_O2).co_g_per_h * 12.011 / 28.01;
            assert!(
                carbon < engine.fuel_g_per_h * 12.011 / 13.875,
                "{carbon} g/h of carbon"
            );
        }
    }

    #[test]
    fn half_the_fuel_is_half_the_gas() {
        let half = Engine::gasoline(Make::Stock, 0.425, 0.85);
        let (a, b) = (half.exhaust(0.18), stock().exhaust(0.18));
        assert!((b.co_g_per_h / a.co_g_per_h - 2.0).abs() < 1e-12);
        assert!((b.o2_g_per_h / a.o2_g_per_h - 2.0).abs() < 1e-12);
    }
}
