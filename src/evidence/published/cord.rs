//! Questions about flexible cord.
//!
//! What `apparatus::cord` answers.

use crate::apparatus::conductor::Awg;
use crate::apparatus::cord::Cord;
use crate::apparatus::cord::CordType;
use crate::apparatus::cord::Lay;
use crate::apparatus::cord::Loaded;
use crate::apparatus::cord::ampacity_a;
use serde::Deserialize;

use super::parsed;

#[derive(Debug, Deserialize)]
pub(super) enum Ask {
    DropV {
        #[serde(deserialize_with = "parsed")]
        awg: Awg,
        length_ft: f64,
        amps: f64,
        temperature_c: f64,
    },
    AmpacityA {
        #[serde(deserialize_with = "parsed")]
        awg: Awg,
        #[serde(with = "LoadedName")]
        loaded: Loaded,
    },
    SettlesC {
        #[serde(deserialize_with = "parsed")]
        awg: Awg,
        #[serde(with = "LoadedName")]
        loaded: Loaded,
        amps: f64,
        ambient_c: f64,
        #[serde(with = "LayName")]
        lay: Lay,
    },
    RatedV(#[serde(deserialize_with = "parsed")] CordType),
    /// 1 for yes, 0 for no.
    Outdoor(#[serde(deserialize_with = "parsed")] CordType),
}

#[derive(Deserialize)]
#[serde(remote = "Loaded")]
enum LoadedName {
    Two,
    Three,
}

#[derive(Deserialize)]
#[serde(remote = "Lay")]
enum LayName {
    Straight,
    Coiled,
}

impl Ask {
    pub(super) fn ours(&self) -> f64 {
        match self {
            Self::DropV {
                awg,
                length_ft,
                amps,
                temperature_c,
            } => cord(*awg, *length_ft, Loaded::Two)
                .map_or(f64::NAN, |cord| cord.voltage_drop_v(*amps, *temperature_c)),
            Self::AmpacityA { awg, loaded } => ampacity_a(*awg, *loaded).unwrap_or(f64::NAN),
            Self::SettlesC {
                awg,
                loaded,
                amps,
                ambient_c,
                lay,
            } => cord(*awg, 100.0, *loaded)
                .map_or(f64::NAN, |cord| cord.settle_c(*amps, *ambient_c, *lay)),
            Self::RatedV(kind) => kind.rated_v(),
            Self::Outdoor(kind) => f64::from(u8::from(kind.outdoor)),
        }
    }
}

fn cord(awg: Awg, length_ft: f64, loaded: Loaded) -> Option<Cord> {
    Cord::new("SJTW".parse().ok()?, awg, length_ft, loaded)
}
