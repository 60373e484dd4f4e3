//! Questions about the wiring of a building: ampacity, the breaker it needs, how hot it gets.
//!
//! What `apparatus::ampacity` and `apparatus::branch_wire` answer.

use crate::apparatus::ampacity;
use crate::apparatus::ampacity::Column;
use crate::apparatus::branch_wire::BranchWire;
use crate::apparatus::branch_wire::Run;
use crate::apparatus::conductor::Awg;
use crate::apparatus::conductor::Material;
use crate::apparatus::cord_choice;
use crate::apparatus::motor_voltage::at_low_voltage;
use serde::Deserialize;

use super::parsed;

#[derive(Debug, Deserialize)]
pub(super) enum Ask {
    AluminumA {
        #[serde(deserialize_with = "parsed")]
        awg: Awg,
        #[serde(with = "ColumnName")]
        column: Column,
    },
    /// Amps that the thermal balance settles at a temperature.
    SettlingA {
        #[serde(deserialize_with = "parsed")]
        awg: Awg,
        #[serde(with = "RunName")]
        run: Run,
        settles_c: f64,
        ambient_c: f64,
    },
    AluminumLimitA(#[serde(deserialize_with = "parsed")] Awg),
    CompanyFactor(u32),
    AmbientFactor {
        rated_c: f64,
        ambient_c: f64,
    },
    ContinuousA(f64),
    BranchDrop,
    TotalDrop,
    TorqueShare(f64),
}

#[derive(Deserialize)]
#[serde(remote = "Column")]
enum ColumnName {
    C60,
    C75,
    C90,
}

#[derive(Deserialize)]
#[serde(remote = "Run")]
enum RunName {
    Hollow,
    Insulated,
}

impl Ask {
    pub(super) fn ours(&self) -> f64 {
        match self {
            Self::AluminumA { awg, column } => {
                ampacity::allowable_a(*awg, Material::Aluminum, *column).unwrap_or(f64::NAN)
            }
            Self::SettlingA {
                awg,
                run,
                settles_c,
                ambient_c,
            } => BranchWire::new(*awg, Material::Copper, *run).map_or(f64::NAN, |wire| {
                wire.amps_that_settle_at(*settles_c, *ambient_c)
            }),
            Self::AluminumLimitA(awg) => {
                ampacity::small_conductor_limit_a(*awg, Material::Aluminum).unwrap_or(f64::NAN)
            }
            Self::CompanyFactor(n_loaded) => ampacity::company_factor(*n_loaded),
            Self::AmbientFactor { rated_c, ambient_c } => {
                ampacity::ambient_factor(*ambient_c, *rated_c)
            }
            Self::ContinuousA(rating_a) => ampacity::continuous_a(*rating_a),
            Self::BranchDrop => cord_choice::BRANCH_DROP,
            Self::TotalDrop => cord_choice::TOTAL_DROP,
            Self::TorqueShare(v_pu) => at_low_voltage(*v_pu).torque,
        }
    }
}
