//! Questions about bodies and shocks.
//!
//! What `hazard::body`, `hazard::shock`, `hazard::let_go` and `hazard::step_touch` answer.

use crate::hazard::body::Path;
use crate::hazard::body::Percentile;
use crate::hazard::body::Skin;
use crate::hazard::body::body_ohm;
use crate::hazard::body::path_ohm;
use crate::hazard::let_go::Adult;
use crate::hazard::let_go::Effect;
use crate::hazard::shock;
use crate::hazard::shock::Zone;
use crate::hazard::step_touch::permissible_touch_v;
use serde::Deserialize;

#[derive(Debug, Deserialize)]
pub(super) enum Ask {
    BodyOhm {
        volts: f64,
        #[serde(with = "PercentileName")]
        percentile: Percentile,
    },
    BodyMa {
        volts: f64,
        #[serde(with = "PercentileName")]
        percentile: Percentile,
    },
    PathOhm {
        volts: f64,
        #[serde(with = "PercentileName")]
        percentile: Percentile,
        #[serde(with = "PathName")]
        path: Path,
    },
    HeartFactor(#[serde(with = "PathName")] Path),
    /// The curve that ends a zone, found from the zones themselves.
    ZoneEndsMa {
        #[serde(with = "ZoneName")]
        zone: Zone,
        duration_s: f64,
    },
    FibrillationMa {
        duration_s: f64,
        body_kg: f64,
    },
    ReferenceMa {
        milliamps: f64,
        #[serde(with = "PathName")]
        path: Path,
    },
    PermissibleTouchV(f64),
    SurelyLetsGoMa(#[serde(with = "AdultName")] Adult),
    HalfLetGoMa(#[serde(with = "AdultName")] Adult),
    HalfFeelMa(#[serde(with = "AdultName")] Adult),
    EffectBeginsMa(#[serde(with = "EffectName")] Effect),
    /// Ohms of half of people with this skin on this path.
    SkinOhm {
        volts: f64,
        #[serde(with = "PathName")]
        path: Path,
        #[serde(with = "SkinName")]
        skin: Skin,
    },
}

#[derive(Deserialize)]
#[serde(remote = "Adult")]
enum AdultName {
    Woman,
    Man,
}

#[derive(Deserialize)]
#[serde(remote = "Effect")]
enum EffectName {
    None,
    Felt,
    Held,
    BreathStops,
    Fibrillation,
    Standstill,
}

#[derive(Deserialize)]
#[serde(remote = "Skin")]
enum SkinName {
    Dry,
    Wet,
    Salty,
}

#[derive(Deserialize)]
#[serde(remote = "Percentile")]
enum PercentileName {
    P5,
    P50,
    P95,
}

#[derive(Deserialize)]
#[serde(remote = "Path")]
enum PathName {
    LeftHandToFeet,
    RightHandToFeet,
    BothHandsToFeet,
    HandToHand,
    FootToFoot,
    LeftHandToBack,
    RightHandToBack,
    LeftHandToChest,
    RightHandToChest,
    HandsToSeat,
}

#[derive(Deserialize)]
#[serde(remote = "Zone")]
enum ZoneName {
    Ac1,
    Ac2,
    Ac3,
    Ac41,
    Ac42,
    Ac43,
}

impl Ask {
    pub(super) fn ours(&self) -> f64 {
        match self {
            Self::BodyOhm { volts, percentile } => body_ohm(*volts, *percentile),
            Self::BodyMa { volts, percentile } => volts / body_ohm(*volts, *percentile) * 1000.0,
            Self::PathOhm {
                volts,
                percentile,
                path,
            } => path_ohm(*volts, *percentile, *path),
            Self::HeartFactor(path) => path.heart_factor(),
            Self::ZoneEndsMa { zone, duration_s } => end_of_zone_ma(*zone, *duration_s),
            Self::FibrillationMa {
                duration_s,
                body_kg,
            } => shock::fibrillation_limit_ma(*duration_s, *body_kg),
            Self::ReferenceMa { milliamps, path } => shock::reference_ma(*milliamps, *path),
            Self::PermissibleTouchV(duration_s) => permissible_touch_v(*duration_s),
            Self::SurelyLetsGoMa(who) => who.surely_lets_go_ma(),
            Self::HalfLetGoMa(who) => who.half_let_go_ma(),
            Self::HalfFeelMa(who) => who.half_feel_ma(),
            Self::EffectBeginsMa(effect) => effect.begins_ma(),
            Self::SkinOhm { volts, path, skin } => {
                path_ohm(*volts, Percentile::P50, *path) * skin.factor(*volts)
            }
        }
    }
}

/// The greatest current that is still in the zone, by halving.
fn end_of_zone_ma(zone: Zone, duration_s: f64) -> f64 {
    let (mut within, mut beyond) = (0.0, 100_000.0);
    for _ in 0..80 {
        let middle = f64::midpoint(within, beyond);
        if shock::zone(middle, duration_s) <= zone {
            within = middle;
        } else {
            beyond = middle;
        }
    }
    within
}
