//! Cords in the readings of a site: what each carries and loses, and the temperature it settles at.
//!
//! There is no time here, so every cord is taken as warm as its amps leave it in the end, and the circuit is solved with that.
//! Two passes settle both on each other to a tenth of a volt; a cord that runs away is held at the temperature where it chars.

use crate::apparatus::insulation::CHARRING_C;
use crate::site::{CordState, Positions, Readings, Site};
use crate::words::{Arg, Message, Unit, Words, name_of};

/// Passes that settle cords and circuit on each other.
pub(super) const PASSES: usize = 2;
/// Below this, amps are not worth a word.
const LEAST_A: f64 = 0.05;

/// What is read of a cord in use.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct CordRead {
    /// Name of the cord.
    pub id: String,
    /// Amps along it.
    pub amps: f64,
    /// Volts lost along it.
    pub lost_v: f64,
    /// Temperature that its conductors settle at, °C; infinite if they run away.
    pub settles_c: f64,
    /// Amps that the table lets it carry, laid out straight.
    pub ampacity_a: f64,
    /// In a sentence.
    pub sentence: String,
}

/// The cords as warm as these readings leave them.
pub(super) fn states(site: &Site, positions: &Positions, readings: &Readings) -> Vec<CordState> {
    (0..site.cords.len())
        .map(|index| CordState {
            celsius: settles_c(site, positions, readings, index).min(CHARRING_C),
            spot_k: 0.0,
            shorted: false,
        })
        .collect()
}

/// What is read of each cord that carries something.
pub(super) fn cords(
    site: &Site,
    positions: &Positions,
    readings: &Readings,
    words: &Words,
) -> Vec<CordRead> {
    let mut found = Vec::new();
    for (index, cord) in site.cords.iter().enumerate() {
        let amps = readings.amps_of(&cord.name);
        if amps < LEAST_A {
            continue;
        }
        let end = |end: &str| {
            let reading = readings.point(&format!("{}-{end}", cord.name));
            reading.volts_across.max(reading.volts)
        };
        let lost_v = (end("near-end") - end("far-end")).abs();
        let settles_c = settles_c(site, positions, readings, index);
        let lasts = settles_c < CHARRING_C;
        let id = if lasts {
            "read-cord"
        } else {
            "read-cord-burns"
        };
        let mut message = Message::new(id)
            .with("name", Arg::Verbatim(words.label(&name_of(&cord.name))))
            .quantity("amps", amps, Unit::Amps)
            .quantity("carries", cord.make.ampacity_a(), Unit::Amps)
            .quantity("lost", lost_v, Unit::Volts);
        if lasts {
            message = message.quantity("celsius", settles_c, Unit::Celsius);
        }
        found.push(CordRead {
            id: cord.name.clone(),
            amps,
            lost_v,
            settles_c,
            ampacity_a: cord.make.ampacity_a(),
            sentence: words.say(&message),
        });
    }
    found
}

fn settles_c(site: &Site, positions: &Positions, readings: &Readings, index: usize) -> f64 {
    let Some(cord) = site.cords.get(index) else {
        return site.ambient_c;
    };
    let amps = readings.amps_of(&cord.name);
    cord.make.settle_c(
        amps,
        cord.air_c(site.ambient_c),
        site.lay_of(positions, index),
    )
}
