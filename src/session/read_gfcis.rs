//! Ground-fault devices in the readings of a site: what goes astray at each, and whether it would open.

use crate::apparatus::gfci;
use crate::apparatus::gfci::Gfci;
use crate::site::{Readings, Site};
use crate::words::{Arg, Message, Unit, Words, name_of};

/// What is read of a ground-fault device.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct GfciRead {
    /// Name of the device.
    pub id: String,
    /// Milliamps that go another way.
    pub residual_ma: f64,
    /// Ohms of the loop through the neutral behind it and a ground, while it is fed; `None` if there is no loop.
    pub neutral_loop_ohm: Option<f64>,
    /// Whether it opens.
    pub opens: bool,
    /// In a sentence.
    pub sentence: String,
}

/// What is read of each ground-fault device.
pub(super) fn gfcis(site: &Site, readings: &Readings, words: &Words) -> Vec<GfciRead> {
    let devices = readings.names.gfcis.iter();
    devices
        .filter_map(|device| {
            let id = site.control(*device)?.name.clone();
            let (residual_a, neutral_loop_ohm) = readings.ground_fault(*device);
            let grounded = neutral_loop_ohm.is_some_and(gfci::sees_grounded_neutral);
            let opens = grounded || Gfci::USUAL.seconds_to_trip(residual_a).is_some();
            let message = Message::new(match (opens, grounded) {
                (true, true) => "read-gfci-two-bonds",
                (true, false) => "read-gfci-opens",
                (false, _) => "read-gfci-holds",
            });
            let residual_ma = residual_a * 1000.0;
            let message = message
                .with("name", Arg::Verbatim(words.label(&name_of(&id))))
                .quantity("residual", residual_ma, Unit::Milliamps);
            Some(GfciRead {
                sentence: words.say(&message),
                id,
                residual_ma,
                neutral_loop_ohm,
                opens,
            })
        })
        .collect()
}
