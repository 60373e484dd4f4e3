//! Questions about carbon monoxide.
//!
//! What `hazard::monoxide` answers.

use crate::hazard::monoxide;
use serde::Deserialize;

#[derive(Debug, Deserialize)]
pub(super) enum Ask {
    CohbPercent {
        start_pct: f64,
        ppm: f64,
        minutes: f64,
    },
    CohbHalfLifeMin {
        start_pct: f64,
    },
    PpmOfMgPerM3(f64),
    AlarmS(f64),
    StockEmission,
}

impl Ask {
    pub(super) fn ours(&self) -> f64 {
        match self {
            Self::CohbPercent {
                start_pct,
                ppm,
                minutes,
            } => monoxide::cohb_after(*start_pct, *ppm, minutes * 60.0),
            Self::CohbHalfLifeMin { start_pct } => half_life_min(*start_pct),
            // So many milligrams let into one sealed cubic meter in an hour.
            Self::PpmOfMgPerM3(milligrams) => {
                monoxide::ppm_after(0.0, milligrams / 1000.0, 1.0, 0.0, 3600.0)
            }
            Self::AlarmS(ppm) => monoxide::alarm_in_s(0.0, *ppm).unwrap_or(f64::INFINITY),
            Self::StockEmission => monoxide::STOCK_EMISSION_G_PER_H,
        }
    }
}

/// Minutes in clean air until half is left, by halving.
fn half_life_min(start_pct: f64) -> f64 {
    let (mut early, mut late) = (0.0, 10_000.0);
    for _ in 0..60 {
        let middle = f64::midpoint(early, late);
        if monoxide::cohb_after(start_pct, 0.0, middle * 60.0) > start_pct / 2.0 {
            early = middle;
        } else {
            late = middle;
        }
    }
    late
}
