//! Questions about breakers, transformers and motors.
//!
//! What `apparatus::breaker`, `apparatus::transformer` and `apparatus::motor` answer.

use crate::apparatus::breaker::Breaker;
use crate::apparatus::motor::CodeLetter;
use crate::apparatus::motor::locked_rotor_amps;
use crate::apparatus::transformer::CenterTapped;
use crate::units::Complex;
use crate::units::portable;
use serde::Deserialize;
use serde::Deserializer;
use serde::de::Error as _;

#[derive(Debug, Deserialize)]
pub(super) enum Ask {
    /// From cold; infinite if it never trips.
    TripS {
        rating_a: f64,
        multiple: f64,
        device: Device,
    },
    WindingRPercent(usize),
    PairLeakagePercent(usize),
    ImpedancePercent,
    XOverR,
    CoreLossOhm,
    MagnetizingOhm,
    TurnsRatio,
    BoltedFaultA {
        halves: u8,
    },
    CodeFrom(#[serde(deserialize_with = "code")] CodeLetter),
    CodeBelow(#[serde(deserialize_with = "code")] CodeLetter),
    LockedRotorA {
        hp: f64,
        volts: f64,
        #[serde(deserialize_with = "code")]
        letter: CodeLetter,
    },
}

#[derive(Debug, Clone, Copy, Deserialize)]
pub(super) enum Device {
    Earliest,
    Usual,
    Latest,
}

const POLE: CenterTapped = CenterTapped::POLE_25_KVA;

impl Ask {
    pub(super) fn ours(&self) -> f64 {
        match self {
            Self::TripS {
                rating_a,
                multiple,
                device,
            } => trip_s(*rating_a, *multiple, *device),
            Self::WindingRPercent(index) => percent(&POLE.winding_r_pu(), *index),
            Self::PairLeakagePercent(index) => percent(&POLE.pair_leakage_pu(), *index),
            Self::ImpedancePercent => {
                portable::magnitude(Complex::new(POLE.r_pu, POLE.x_pu)) * 100.0
            }
            Self::XOverR => POLE.x_pu / POLE.r_pu,
            Self::CoreLossOhm => POLE.core_loss_ohm(),
            Self::MagnetizingOhm => POLE.magnetizing_ohm(),
            Self::TurnsRatio => POLE.turns_ratio(),
            Self::BoltedFaultA { halves } => bolted_fault_a(f64::from(*halves)),
            Self::CodeFrom(letter) => letter.kva_per_hp().0,
            Self::CodeBelow(letter) => letter.kva_per_hp().1.unwrap_or(f64::INFINITY),
            Self::LockedRotorA { hp, volts, letter } => locked_rotor_amps(*hp, *volts, *letter),
        }
    }
}

fn code<'de, D: Deserializer<'de>>(file: D) -> Result<CodeLetter, D::Error> {
    let letter = char::deserialize(file)?;
    CodeLetter::new(letter).ok_or_else(|| D::Error::custom(format!("no code letter {letter}")))
}

fn percent(per_unit: &[f64], index: usize) -> f64 {
    per_unit.get(index).map_or(f64::NAN, |pu| pu * 100.0)
}

fn trip_s(rating_a: f64, multiple: f64, device: Device) -> f64 {
    let breaker = Breaker { rating_a };
    let amps = multiple * rating_a;
    let window = breaker.trip_window(0.0, amps);
    let seconds = match device {
        Device::Earliest => window.earliest_s,
        Device::Usual => breaker.seconds_to_trip(0.0, amps),
        Device::Latest => window.latest_s,
    };
    seconds.unwrap_or(f64::INFINITY)
}

/// A short across one half or both, the high winding on a stiff line.
fn bolted_fault_a(halves: f64) -> f64 {
    let [high, first, second] = POLE.winding_impedance_ohm();
    let ratio = halves / POLE.turns_ratio();
    let low = if halves > 1.5 { first + second } else { first };
    halves * POLE.half_v / portable::magnitude(high * (ratio * ratio) + low)
}
