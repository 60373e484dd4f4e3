//! Questions about generators and their fuel.
//!
//! What `apparatus::fuel`, `apparatus::standby` and `apparatus::generator` answer.

use serde::Deserialize;

use crate::apparatus::fuel::{
    Derating, Fuel, FuelCurve, PROPANE_FT3_PER_GAL, PROPANE_LB_PER_GAL, efficiency,
};
use crate::apparatus::generator::GeneratorSpec;
use crate::apparatus::standby::Standby;

#[derive(Debug, Deserialize)]
pub(super) enum Ask {
    HeatBtu(Kind),
    PropaneBtuPerFt3,
    PropaneBtuPerLb,
    /// Of 25 kW at this many Btu an hour, percent.
    EfficiencyPercent {
        watts: f64,
        btu_per_h: f64,
    },
    /// In an hour at a share of the rated load, on the line through two published points.
    BurnPerH {
        fuel: Kind,
        through: ((f64, f64), (f64, f64)),
        share: f64,
    },
    /// Of a standby set of 25 kW.
    StandbyBurnPerH {
        fuel: Kind,
        share: f64,
    },
    /// Of a household set at its rated load.
    PortableGramsPerKwh,
    /// What an engine of so many watts has left.
    DeratedW {
        watts: f64,
        rule: Rule,
        altitude_ft: f64,
        air_c: f64,
    },
}

#[derive(Debug, Clone, Copy, Deserialize)]
pub(super) enum Kind {
    Gasoline,
    Diesel,
    Propane,
    NaturalGas,
}

#[derive(Debug, Clone, Copy, Deserialize)]
pub(super) enum Rule {
    Carbureted,
    Standby,
    Above1000M,
    Above1500M,
}

impl Ask {
    pub(super) fn ours(&self) -> f64 {
        match self {
            Self::HeatBtu(kind) => kind.fuel().heat_btu(),
            Self::PropaneBtuPerFt3 => Fuel::Propane.heat_btu() / PROPANE_FT3_PER_GAL,
            Self::PropaneBtuPerLb => Fuel::Propane.heat_btu() / PROPANE_LB_PER_GAL,
            Self::EfficiencyPercent { watts, btu_per_h } => 100.0 * efficiency(*watts, *btu_per_h),
            Self::BurnPerH {
                fuel,
                through,
                share,
            } => FuelCurve::through(fuel.fuel(), through.0, through.1).per_hour(*share),
            Self::StandbyBurnPerH { fuel, share } => Standby::usual(25_000.0, fuel.fuel(), 0.0)
                .burn()
                .per_hour(*share),
            Self::PortableGramsPerKwh => {
                let set = GeneratorSpec::conventional(5000.0, 6250.0);
                set.burn.grams_per_kwh(set.rated_w, 1.0)
            }
            Self::DeratedW {
                watts,
                rule,
                altitude_ft,
                air_c,
            } => watts * rule.derating().share(*altitude_ft, *air_c),
        }
    }
}

impl Kind {
    fn fuel(self) -> Fuel {
        match self {
            Self::Gasoline => Fuel::Gasoline,
            Self::Diesel => Fuel::Diesel,
            Self::Propane => Fuel::Propane,
            Self::NaturalGas => Fuel::NaturalGas,
        }
    }
}

impl Rule {
    fn derating(self) -> Derating {
        match self {
            Self::Carbureted => Derating::CARBURETED,
            Self::Standby => Derating::STANDBY,
            Self::Above1000M => Derating::ABOVE_1000_M,
            Self::Above1500M => Derating::ABOVE_1500_M,
        }
    }
}
