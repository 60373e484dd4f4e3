//! Questions about sources beside the utility: when they leave it, when they come back, and what an island does.
//!
//! What `apparatus::interconnection`, `apparatus::solar`, `apparatus::closing` and `apparatus::transformer` answer.

use crate::apparatus::closing::InStep;
use crate::apparatus::interconnection::Grid;
use crate::apparatus::interconnection::ISLAND_S;
use crate::apparatus::interconnection::Profile;
use crate::apparatus::interconnection::Watch;
use crate::apparatus::solar::LocalLoad;
use crate::apparatus::solar::Solar;
use crate::apparatus::solar::island;
use crate::apparatus::transformer::CenterTapped;
use crate::units::DrillTime;
use serde::Deserialize;

#[derive(Debug, Deserialize)]
pub(super) enum Ask {
    /// Seconds within which it must be off at these volts and hertz; infinite if it may stay.
    ClearsS {
        #[serde(with = "ProfileName")]
        profile: Profile,
        v_pu: f64,
        hz: f64,
    },
    /// The volts or hertz past which it must be off within `clears_s`.
    Limit {
        #[serde(with = "ProfileName")]
        profile: Profile,
        toward: Toward,
        clears_s: f64,
    },
    /// The volts or hertz past which it may not come back.
    ReturnLimit {
        #[serde(with = "ProfileName")]
        profile: Profile,
        toward: Toward,
    },
    /// Seconds on a good grid until it comes back.
    ReturnDelayS(#[serde(with = "ProfileName")] Profile),
    /// Seconds from coming back to full power.
    RampS(#[serde(with = "ProfileName")] Profile),
    /// Power given up at a frequency, percent of the rating.
    GivenUpPercent {
        hz: f64,
    },
    /// Longest time alone on an island, seconds.
    IslandS,
    /// Percent more load than the inverter makes at which the volts of its island stand at a limit.
    LoadMismatchPercent {
        v_pu: f64,
    },
    /// Vars left over, as percent of the watts, at which the frequency of its island stands at a limit.
    VarMismatchPercent {
        quality: f64,
        hz: f64,
    },
    InStepHz(f64),
    InStepPercent(f64),
    InStepDeg(f64),
    /// Volts on the line behind a pole transformer that is fed from the house.
    BackfedLineV(f64),
    /// Amps in the house for each amp of the line.
    HouseAmpsPerLineAmp,
}

#[derive(Debug, Clone, Copy, Deserialize)]
pub(super) enum Toward {
    HighVolts,
    LowVolts,
    HighHertz,
    LowHertz,
}

#[derive(Deserialize)]
#[serde(remote = "Profile")]
enum ProfileName {
    CategoryI,
    CategoryII,
    CategoryIII,
    Before2018,
}

const GOOD: Grid = Grid {
    v_pu: 1.0,
    hz: 60.0,
};

impl Ask {
    pub(super) fn ours(&self) -> f64 {
        match self {
            Self::ClearsS { profile, v_pu, hz } => {
                let grid = Grid {
                    v_pu: *v_pu,
                    hz: *hz,
                };
                profile.clearing_s(grid).unwrap_or(f64::INFINITY)
            }
            Self::Limit {
                profile,
                toward,
                clears_s,
            } => toward.end_of(|grid| {
                let clears = profile.clearing_s(grid);
                clears.is_none_or(|s| s > *clears_s)
            }),
            Self::ReturnLimit { profile, toward } => {
                toward.end_of(|grid| profile.comes_back().fits(grid))
            }
            Self::ReturnDelayS(profile) => {
                let mut watch = Watch::default();
                watch.see(*profile, GOOD, DrillTime::ZERO);
                watch
                    .next(*profile, false)
                    .map_or(f64::NAN, |(at, _)| at.seconds())
            }
            Self::RampS(profile) => ramp_s(&roof(*profile)),
            Self::GivenUpPercent { hz } => roof(Profile::CategoryIII).given_up(*hz) * 100.0,
            Self::IslandS => ISLAND_S,
            Self::LoadMismatchPercent { v_pu } => load_mismatch_percent(*v_pu),
            Self::VarMismatchPercent { quality, hz } => var_mismatch_percent(*quality, *hz),
            Self::InStepHz(kva) => InStep::of_kva(*kva).hz,
            Self::InStepPercent(kva) => InStep::of_kva(*kva).v_pu * 100.0,
            Self::InStepDeg(kva) => InStep::of_kva(*kva).deg,
            Self::BackfedLineV(house_v) => house_v * house_amps_per_line_amp(),
            Self::HouseAmpsPerLineAmp => house_amps_per_line_amp(),
        }
    }
}

impl Toward {
    fn grid(self, far: f64) -> Grid {
        match self {
            Self::HighVolts => Grid {
                v_pu: 1.0 + far,
                ..GOOD
            },
            Self::LowVolts => Grid {
                v_pu: 1.0 - far,
                ..GOOD
            },
            Self::HighHertz => Grid {
                hz: 60.0 * (1.0 + far),
                ..GOOD
            },
            Self::LowHertz => Grid {
                hz: 60.0 * (1.0 - far),
                ..GOOD
            },
        }
    }

    /// How far from a good grid `holds` holds, as volts per unit or hertz, by halving.
    fn end_of(self, holds: impl Fn(Grid) -> bool) -> f64 {
        let far = halve(1.0, |far| holds(self.grid(far)));
        let end = self.grid(far);
        match self {
            Self::HighVolts | Self::LowVolts => end.v_pu,
            Self::HighHertz | Self::LowHertz => end.hz,
        }
    }
}

/// The greatest value below `most` up to which `holds` holds.
fn halve(most: f64, holds: impl Fn(f64) -> bool) -> f64 {
    let (mut within, mut beyond) = (0.0, most);
    for _ in 0..80 {
        let middle = f64::midpoint(within, beyond);
        if holds(middle) {
            within = middle;
        } else {
            beyond = middle;
        }
    }
    within
}

fn roof(profile: Profile) -> Solar {
    Solar {
        rated_w: 6000.0,
        rated_v: 240.0,
        profile,
    }
}

fn ramp_s(solar: &Solar) -> f64 {
    let mut seconds = 0.0;
    while let Some(next) = solar.next_stair_s(seconds) {
        seconds = next;
    }
    seconds
}

/// Load less production as percent of production, where the island's volts reach `v_pu`.
fn load_mismatch_percent(v_pu: f64) -> f64 {
    let volts = |load_pu: f64| {
        let load = LocalLoad {
            watts: load_pu,
            inductive_var: 0.0,
            capacitive_var: 0.0,
        };
        island(1.0, load).map_or(f64::INFINITY, |grid| grid.v_pu)
    };
    (halve(4.0, |load_pu| volts(load_pu) > v_pu) - 1.0) * 100.0
}

/// Inductive less capacitive vars as percent of the watts, where the island's frequency reaches `hz`.
fn var_mismatch_percent(quality: f64, hz: f64) -> f64 {
    let settles_hz = |capacitive_var: f64| {
        let load = LocalLoad {
            watts: 1.0,
            inductive_var: quality,
            capacitive_var,
        };
        island(1.0, load).map_or(f64::INFINITY, |grid| grid.hz)
    };
    (quality - halve(4.0 * quality, |var| settles_hz(var) > hz)) * 100.0
}

fn house_amps_per_line_amp() -> f64 {
    CenterTapped::POLE_25_KVA.turns_ratio() / 2.0
}
