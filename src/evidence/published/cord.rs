//! Questions about flexible cord.
//!
//! What `apparatus::cord`, `cord_lay`, `connection` and the cord letters answer.

use crate::apparatus::ampacity::company_factor;
use crate::apparatus::conductor::Awg;
use crate::apparatus::connection::Connection;
use crate::apparatus::connection::Contact;
use crate::apparatus::cord::Cord;
use crate::apparatus::cord::Loaded;
use crate::apparatus::cord::ampacity_a;
use crate::apparatus::cord::heater_ampacity_a;
use crate::apparatus::cord_lay::Lay;
use crate::apparatus::cord_letters::CordType;
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
    HeaterAmpacityA(#[serde(deserialize_with = "parsed")] Awg),
    /// Share of the tabled amps that settles at the cord's rating.
    ShareLeft {
        #[serde(with = "LoadedName")]
        loaded: Loaded,
        ambient_c: f64,
        #[serde(with = "LayName")]
        lay: Lay,
    },
    /// Amps of a heater cord among so many loaded conductors.
    HeaterTogetherA {
        #[serde(deserialize_with = "parsed")]
        awg: Awg,
        n_loaded: u32,
    },
    HeatW {
        #[serde(deserialize_with = "parsed")]
        awg: Awg,
        length_ft: f64,
        amps: f64,
        temperature_c: f64,
    },
    /// Kelvin over the air, of a sound plug and receptacle.
    ConnectionRiseK {
        rated_a: f64,
        amps: f64,
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
    Bundled { others: u32 },
    Covered,
    Coil { turns: u32 },
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
            Self::HeaterAmpacityA(awg) => heater_ampacity_a(*awg).unwrap_or(f64::NAN),
            Self::ShareLeft {
                loaded,
                ambient_c,
                lay,
            } => cord(Awg::N12, 100.0, *loaded).map_or(f64::NAN, |cord| {
                cord.ampacity_here_a(*ambient_c, *lay) / cord.ampacity_a()
            }),
            Self::HeaterTogetherA { awg, n_loaded } => {
                heater_ampacity_a(*awg).unwrap_or(f64::NAN) * company_factor(*n_loaded)
            }
            Self::HeatW {
                awg,
                length_ft,
                amps,
                temperature_c,
            } => cord(*awg, *length_ft, Loaded::Two)
                .map_or(f64::NAN, |cord| cord.heat_w(*amps, *temperature_c)),
            Self::ConnectionRiseK { rated_a, amps } => Connection {
                rated_a: *rated_a,
                contact: Contact::Sound,
            }
            .settle_c(*amps, 0.0),
            Self::RatedV(kind) => kind.rated_v(),
            Self::Outdoor(kind) => f64::from(u8::from(kind.outdoor)),
        }
    }
}

fn cord(awg: Awg, length_ft: f64, loaded: Loaded) -> Option<Cord> {
    Cord::new("SJTW".parse().ok()?, awg, length_ft, loaded)
}
