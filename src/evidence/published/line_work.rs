//! Questions about the ground under a crew and the distances it keeps.
//!
//! What `hazard::step_touch` and `hazard::approach` answer; NaN where a table has no row.

use crate::hazard::approach;
use crate::hazard::approach::Exposure;
use crate::hazard::step_touch::Rod;
use crate::hazard::step_touch::Surface;
use serde::Deserialize;

#[derive(Debug, Deserialize)]
pub(super) enum Ask {
    ApproachM {
        kv: f64,
        #[serde(with = "ExposureName")]
        exposure: Exposure,
    },
    ApproachFt {
        kv: f64,
        #[serde(with = "ExposureName")]
        exposure: Exposure,
    },
    UnqualifiedFt(f64),
    EquipmentFt(f64),
    LimitedFt(f64),
    RestrictedFt(f64),
    Derating(Ground),
    BearableTouchV {
        ground: Ground,
        duration_s: f64,
        body_kg: f64,
    },
    BearableStepV {
        ground: Ground,
        duration_s: f64,
        body_kg: f64,
    },
    RodOhm {
        length_m: f64,
        diameter_m: f64,
        soil_ohm_m: f64,
    },
}

/// Soil and layer in ohm-meters, and the layer's thickness in meters.
#[derive(Debug, Clone, Copy, Deserialize)]
pub(super) struct Ground(f64, f64, f64);

#[derive(Deserialize)]
#[serde(remote = "Exposure")]
enum ExposureName {
    PhaseToGround,
    PhaseToPhase,
}

impl Ask {
    pub(super) fn ours(&self) -> f64 {
        match self {
            Self::ApproachM { kv, exposure } => {
                approach::qualified_m(*kv, *exposure).unwrap_or(f64::NAN)
            }
            Self::ApproachFt { kv, exposure } => {
                let nearest = approach::qualified(*kv, *exposure);
                nearest.feet().unwrap_or(f64::NAN)
            }
            Self::UnqualifiedFt(kv) => approach::unqualified_ft(*kv),
            Self::EquipmentFt(kv) => approach::equipment_ft(*kv).unwrap_or(f64::NAN),
            Self::LimitedFt(volts) => {
                approach::boundaries(*volts).map_or(f64::NAN, |b| b.limited_ft)
            }
            // "Avoid contact" is no distance at all.
            Self::RestrictedFt(volts) => {
                approach::boundaries(*volts).map_or(f64::NAN, |b| b.restricted_ft.unwrap_or(0.0))
            }
            Self::Derating(ground) => surface(*ground).derating(),
            Self::BearableTouchV {
                ground,
                duration_s,
                body_kg,
            } => surface(*ground).bearable_touch_v(*duration_s, *body_kg),
            Self::BearableStepV {
                ground,
                duration_s,
                body_kg,
            } => surface(*ground).bearable_step_v(*duration_s, *body_kg),
            Self::RodOhm {
                length_m,
                diameter_m,
                soil_ohm_m,
            } => {
                let rod = Rod {
                    length_m: *length_m,
                    radius_mm: diameter_m * 500.0,
                    soil_ohm_m: *soil_ohm_m,
                };
                rod.resistance_ohm()
            }
        }
    }
}

fn surface(ground: Ground) -> Surface {
    Surface {
        soil_ohm_m: ground.0,
        layer_ohm_m: ground.1,
        layer_cm: ground.2 * 100.0,
    }
}
