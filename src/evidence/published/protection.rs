//! Questions about fuses and ground-fault interrupters.
//!
//! What `apparatus::fuse` and `apparatus::gfci` answer; seconds are infinite where a device holds.

use crate::apparatus::fuse::Delay;
use crate::apparatus::fuse::Fuse;
use crate::apparatus::gfci;
use crate::apparatus::gfci::Gfci;
use crate::units::Complex;
use crate::units::portable;
use serde::Deserialize;

#[derive(Debug, Deserialize)]
pub(super) enum Ask {
    /// From cold.
    FuseS {
        rating_a: f64,
        multiple: f64,
        kind: Kind,
        device: Bound,
    },
    /// Residual milliamps.
    GfciS {
        milliamps: f64,
        device: Bound,
    },
    GfciUsualS {
        milliamps: f64,
    },
    /// Amps out and back through the window.
    ResidualMilliamps(Vec<f64>),
}

#[derive(Debug, Clone, Copy, Deserialize)]
pub(super) enum Kind {
    Fast,
    TimeDelay,
}

#[derive(Debug, Clone, Copy, Deserialize)]
pub(super) enum Bound {
    Earliest,
    Latest,
}

impl Ask {
    pub(super) fn ours(&self) -> f64 {
        match self {
            Self::FuseS {
                rating_a,
                multiple,
                kind,
                device,
            } => fuse_s(*rating_a, *multiple, *kind, *device),
            Self::GfciS { milliamps, device } => {
                let window = Gfci::USUAL.trip_window(milliamps / 1000.0);
                let seconds = match device {
                    Bound::Earliest => window.earliest_s,
                    Bound::Latest => window.latest_s,
                };
                seconds.unwrap_or(f64::INFINITY)
            }
            Self::GfciUsualS { milliamps } => {
                let seconds = Gfci::USUAL.seconds_to_trip(milliamps / 1000.0);
                seconds.unwrap_or(f64::INFINITY)
            }
            Self::ResidualMilliamps(amps) => {
                let through = amps.iter().map(|a| Complex::new(*a, 0.0));
                portable::magnitude(gfci::residual(through)) * 1000.0
            }
        }
    }
}

fn fuse_s(rating_a: f64, multiple: f64, kind: Kind, device: Bound) -> f64 {
    let delay = match kind {
        Kind::Fast => Delay::Fast,
        Kind::TimeDelay => Delay::TimeDelay,
    };
    let window = Fuse { rating_a, delay }.window(0.0, multiple * rating_a);
    let seconds = match device {
        Bound::Earliest => window.earliest_s,
        Bound::Latest => window.latest_s,
    };
    seconds.unwrap_or(f64::INFINITY)
}
