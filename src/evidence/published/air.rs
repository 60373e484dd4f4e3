//! Questions about carbon monoxide and gasoline.
//!
//! What `hazard::air`, `hazard::blood`, `hazard::emission`, `hazard::monoxide` and `hazard::fuel_vapor` answer.

use crate::hazard::air;
use crate::hazard::air::Air;
use crate::hazard::air::Exchange;
use crate::hazard::air::Outlet;
use crate::hazard::air::Rooms;
use crate::hazard::blood;
use crate::hazard::blood::Activity;
use crate::hazard::emission::Engine;
use crate::hazard::emission::FRESH_O2;
use crate::hazard::emission::Make;
use crate::hazard::fuel_vapor;
use crate::hazard::monoxide;
use serde::Deserialize;

#[derive(Debug, Deserialize)]
pub(super) enum Ask {
    CohbPercent {
        start_pct: f64,
        ppm: f64,
        minutes: f64,
        #[serde(default = "sedentary", with = "ActivityName")]
        activity: Activity,
    },
    CohbHalfLifeMin {
        start_pct: f64,
        #[serde(default = "sedentary", with = "ActivityName")]
        activity: Activity,
    },
    PpmOfMgPerM3(f64),
    AlarmS(f64),
    /// Grams an hour at half load, at this share of oxygen or in fresh air.
    EmissionGPerH {
        #[serde(with = "MakeName")]
        make: Make,
        #[serde(default = "fresh")]
        o2: f64,
    },
    /// Highest concentration in the house in so many hours, for a set that emits this share of a stock one.
    HousePeakPpm {
        hours: u32,
        share_of_stock: f64,
        #[serde(with = "ExchangeName")]
        exchange: Exchange,
    },
    FlashPointF,
    LeastIgnitionF,
    BurnsFromPct,
    BurnsToPct,
    VaporDensity,
    DisplacedMgPerL,
    SpilledMgPerL,
    /// Cubic meters that a liter makes just burnable.
    BurnableM3PerL,
}

#[derive(Deserialize)]
#[serde(remote = "Activity")]
enum ActivityName {
    Rest,
    Sedentary,
    LightWork,
    HeavyWork,
}

#[derive(Deserialize)]
#[serde(remote = "Make")]
enum MakeName {
    Stock,
    LimitedSmall,
    LimitedOneCylinder,
    LimitedTwoCylinders,
}

#[derive(Deserialize)]
#[serde(remote = "Exchange")]
struct ExchangeName {
    garage_out: f64,
    house_out: f64,
    between: f64,
    #[serde(default)]
    drawn_in_g_per_h: f64,
}

fn sedentary() -> Activity {
    Activity::Sedentary
}

fn fresh() -> f64 {
    FRESH_O2
}

/// A garage for one car and a house of one story.
const ROOMS: Rooms = Rooms {
    garage_m3: 90.0,
    house_m3: 300.0,
};

/// Gallons an hour of a set of 7.5 kW at half load.
const HALF_LOAD_GAL_PER_H: f64 = 0.85;

const L_PER_GAL: f64 = 3.785_411_784;

impl Ask {
    pub(super) fn ours(&self) -> f64 {
        match self {
            Self::CohbPercent {
                start_pct,
                ppm,
                minutes,
                activity,
            } => blood::cohb_after(*start_pct, *ppm, minutes * 60.0, *activity),
            Self::CohbHalfLifeMin {
                start_pct,
                activity,
            } => half_life_min(*start_pct, *activity),
            // So many milligrams let into one sealed cubic meter in an hour.
            Self::PpmOfMgPerM3(milligrams) => {
                monoxide::ppm_after(0.0, milligrams / 1000.0, 1.0, 0.0, 3600.0)
            }
            Self::AlarmS(ppm) => monoxide::alarm_in_s(0.0, *ppm).unwrap_or(f64::INFINITY),
            Self::EmissionGPerH { make, o2 } => {
                let engine = Engine::gasoline(*make, HALF_LOAD_GAL_PER_H, HALF_LOAD_GAL_PER_H);
                engine.exhaust(*o2).co_g_per_h
            }
            Self::HousePeakPpm {
                hours,
                share_of_stock,
                exchange,
            } => house_peak_ppm(*hours, *share_of_stock, *exchange),
            Self::FlashPointF => fuel_vapor::FLASH_POINT_C * 1.8 + 32.0,
            Self::LeastIgnitionF => fuel_vapor::LEAST_IGNITION_C * 1.8 + 32.0,
            Self::BurnsFromPct => fuel_vapor::BURNS_PCT.0,
            Self::BurnsToPct => fuel_vapor::BURNS_PCT.1,
            Self::VaporDensity => fuel_vapor::VAPOR_DENSITY,
            Self::DisplacedMgPerL => fuel_vapor::displaced_g(1.0) * 1000.0 / L_PER_GAL,
            Self::SpilledMgPerL => fuel_vapor::spilled_g(1.0) * 1000.0 / L_PER_GAL,
            Self::BurnableM3PerL => fuel_vapor::burnable_m3(740.0),
        }
    }
}

fn house_peak_ppm(hours: u32, share_of_stock: f64, exchange: Exchange) -> f64 {
    let stock = Engine::gasoline(Make::Stock, HALF_LOAD_GAL_PER_H, HALF_LOAD_GAL_PER_H);
    let engine = Engine {
        fresh_g_per_h: stock.fresh_g_per_h * share_of_stock,
        ..stock
    };
    let (mut now, mut peak) = (Air::FRESH, 0.0_f64);
    for _ in 0..hours * 60 {
        now = air::after(now, ROOMS, exchange, Some((engine, Outlet::Garage)), 60.0);
        peak = peak.max(now.house.co_ppm);
    }
    peak
}

/// Minutes in clean air until half is left, by halving.
fn half_life_min(start_pct: f64, activity: Activity) -> f64 {
    let (mut early, mut late) = (0.0, 10_000.0);
    for _ in 0..60 {
        let middle = f64::midpoint(early, late);
        if blood::cohb_after(start_pct, 0.0, middle * 60.0, activity) > start_pct / 2.0 {
            early = middle;
        } else {
            late = middle;
        }
    }
    late
}
