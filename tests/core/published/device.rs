//! Questions about breakers, transformers and motors.

use outage_drill::apparatus::breaker::Breaker;
use outage_drill::apparatus::motor::CodeLetter;
use outage_drill::apparatus::motor::locked_rotor_amps;
use outage_drill::apparatus::transformer::CenterTapped;
use outage_drill::units::portable;
use serde::Deserialize;

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
    CoreLossOhm,
    MagnetizingOhm,
    TurnsRatio,
    BoltedFaultA {
        halves: u8,
    },
    CodeFrom(char),
    CodeBelow(char),
    LockedRotorA {
        hp: f64,
        volts: f64,
        letter: char,
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
            Self::WindingRPercent(index) => POLE.winding_r_pu()[*index] * 100.0,
            Self::PairLeakagePercent(index) => POLE.pair_leakage_pu()[*index] * 100.0,
            Self::CoreLossOhm => POLE.core_loss_ohm(),
            Self::MagnetizingOhm => POLE.magnetizing_ohm(),
            Self::TurnsRatio => POLE.turns_ratio(),
            Self::BoltedFaultA { halves } => bolted_fault_a(f64::from(*halves)),
            Self::CodeFrom(code) => letter(*code).kva_per_hp().0,
            Self::CodeBelow(code) => letter(*code).kva_per_hp().1.unwrap_or(f64::INFINITY),
            Self::LockedRotorA {
                hp,
                volts,
                letter: code,
            } => locked_rotor_amps(*hp, *volts, letter(*code)),
        }
    }
}

fn letter(code: char) -> CodeLetter {
    CodeLetter::new(code).unwrap()
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
