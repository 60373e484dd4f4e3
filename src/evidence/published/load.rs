//! Questions about loads: what they take, what they stand, how they start.
//!
//! What `apparatus::household`, `apparatus::tolerance`, `apparatus::resistive` and `apparatus::motor_start` answer.

use crate::apparatus::household;
use crate::apparatus::household::Household;
use crate::apparatus::household::Sized;
use crate::apparatus::motor_start;
use crate::apparatus::motor_start::Supply;
use crate::apparatus::resistive;
use crate::apparatus::tolerance;
use serde::Deserialize;

#[derive(Debug, Deserialize)]
pub(super) enum Ask {
    RunningFromW(Kind),
    RunningToW(Kind),
    StartingFromW(Kind),
    StartingToW(Kind),
    /// Running and starting watts of each load.
    TogetherRunningW(Vec<(f64, f64)>),
    WorstStartW(Vec<(f64, f64)>),
    LeastRatingW(Vec<(f64, f64)>),
    HighestPercent {
        seconds: f64,
    },
    LowestPercent {
        seconds: f64,
    },
    AllowedS {
        percent: f64,
    },
    StartTorqueShare {
        v_pu: f64,
        f_pu: f64,
    },
    HeaterShare(f64),
    FilamentWattsShare(f64),
    FilamentLightShare(f64),
    FilamentLifeTimes(f64),
}

/// Loads of the charts.
#[derive(Debug, Clone, Copy, Deserialize)]
pub(super) enum Kind {
    Refrigerator,
    Freezer,
    FurnaceFan,
    WellPump,
    SumpPump,
    RoomAirConditioner,
    Microwave,
    CentralAirConditioner,
    WaterHeater,
    CoffeeMaker,
    SpaceHeater,
    ClothesWasher,
    GarageDoor,
    LedLamp,
}

impl Ask {
    pub(super) fn ours(&self) -> f64 {
        match self {
            Self::RunningFromW(kind) => *kind.load().chart_watts().running.start(),
            Self::RunningToW(kind) => *kind.load().chart_watts().running.end(),
            Self::StartingFromW(kind) => *kind.load().chart_watts().starting.start(),
            Self::StartingToW(kind) => *kind.load().chart_watts().starting.end(),
            Self::TogetherRunningW(loads) => household::running_w(&sized(loads)),
            Self::WorstStartW(loads) => household::worst_start_w(&sized(loads)),
            Self::LeastRatingW(loads) => household::least_rating_w(&sized(loads)),
            Self::HighestPercent { seconds } => tolerance::highest_pu(*seconds) * 100.0,
            Self::LowestPercent { seconds } => tolerance::lowest_pu(*seconds) * 100.0,
            Self::AllowedS { percent } => tolerance::allowed_s(percent / 100.0),
            Self::StartTorqueShare { v_pu, f_pu } => motor_start::start_torque_pu(Supply {
                v_pu: *v_pu,
                f_pu: *f_pu,
            }),
            Self::HeaterShare(v_pu) => resistive::heater_watts(*v_pu),
            Self::FilamentWattsShare(v_pu) => resistive::filament(*v_pu).watts,
            Self::FilamentLightShare(v_pu) => resistive::filament(*v_pu).light,
            Self::FilamentLifeTimes(v_pu) => resistive::filament(*v_pu).life,
        }
    }
}

impl Kind {
    fn load(self) -> Household {
        match self {
            Self::Refrigerator => Household::Refrigerator,
            Self::Freezer => Household::Freezer,
            Self::FurnaceFan => Household::FurnaceFan,
            Self::WellPump => Household::WellPump,
            Self::SumpPump => Household::SumpPump,
            Self::RoomAirConditioner => Household::RoomAirConditioner,
            Self::Microwave => Household::Microwave,
            Self::CentralAirConditioner => Household::CentralAirConditioner,
            Self::WaterHeater => Household::WaterHeater,
            Self::CoffeeMaker => Household::CoffeeMaker,
            Self::SpaceHeater => Household::SpaceHeater,
            Self::ClothesWasher => Household::ClothesWasher,
            Self::GarageDoor => Household::GarageDoor,
            Self::LedLamp => Household::LedLamp,
        }
    }
}

fn sized(loads: &[(f64, f64)]) -> Vec<Sized> {
    let sized = |(running_w, starting_w): &(f64, f64)| Sized {
        running_w: *running_w,
        starting_w: *starting_w,
    };
    loads.iter().map(sized).collect()
}
