//! Questions about flexible cord.

use outage_drill::apparatus::cord::Cord;
use outage_drill::apparatus::cord::CordType;
use outage_drill::apparatus::cord::Lay;
use outage_drill::apparatus::cord::Loaded;
use outage_drill::apparatus::cord::ampacity_a;
use serde::Deserialize;

use super::wire::gauge;

#[derive(Debug, Deserialize)]
pub(super) enum Ask {
    DropV {
        awg: String,
        length_ft: f64,
        amps: f64,
        temperature_c: f64,
    },
    AmpacityA {
        awg: String,
        #[serde(with = "LoadedName")]
        loaded: Loaded,
    },
    SettlesC {
        awg: String,
        #[serde(with = "LoadedName")]
        loaded: Loaded,
        amps: f64,
        ambient_c: f64,
        #[serde(with = "LayName")]
        lay: Lay,
    },
    RatedV(String),
    /// 1 for yes, 0 for no.
    Outdoor(String),
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
            } => cord(awg, *length_ft, Loaded::Two).voltage_drop_v(*amps, *temperature_c),
            Self::AmpacityA { awg, loaded } => ampacity_a(gauge(awg), *loaded).unwrap(),
            Self::SettlesC {
                awg,
                loaded,
                amps,
                ambient_c,
                lay,
            } => cord(awg, 100.0, *loaded).settle_c(*amps, *ambient_c, *lay),
            Self::RatedV(letters) => kind(letters).rated_v(),
            Self::Outdoor(letters) => f64::from(u8::from(kind(letters).outdoor)),
        }
    }
}

fn kind(letters: &str) -> CordType {
    letters
        .parse()
        .unwrap_or_else(|why| panic!("{letters}: {why}"))
}

fn cord(awg: &str, length_ft: f64, loaded: Loaded) -> Cord {
    Cord::new(kind("SJTW"), gauge(awg), length_ft, loaded).unwrap()
}
