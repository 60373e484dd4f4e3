//! Questions about bodies, shocks and distances.
//!
//! What `hazard::body`, `hazard::shock` and `hazard::approach` answer.

use crate::hazard::approach;
use crate::hazard::body::Path;
use crate::hazard::body::Percentile;
use crate::hazard::body::body_ohm;
use crate::hazard::body::path_ohm;
use crate::hazard::shock;
use crate::hazard::shock::Zone;
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
    ApproachM,
    ApproachFt,
    UnqualifiedFt,
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
            Self::ApproachM => approach::QUALIFIED_M,
            Self::ApproachFt => approach::QUALIFIED_FT,
            Self::UnqualifiedFt => approach::UNQUALIFIED_FT,
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
