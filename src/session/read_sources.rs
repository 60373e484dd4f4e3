//! Solar and battery in readings of a site: as they stand a long while after the positions were set.
//!
//! The inverter gives all its sun to whatever feeds its terminals; the battery makes its grid where its transfer stands on it.
//! The drill knows when they join and leave, and what they take for the utility; see `drill`.

use crate::site::{Drive, OtherSide, Positions, Readings, Site};
use crate::words::{Message, Unit, Words};

/// How a site's own sources are driven in these positions; the sun joins in [`with_sun`].
pub(super) fn drive(site: &Site, positions: &Positions) -> Drive {
    let on_battery = site
        .transfers
        .iter()
        .any(|t| t.other == OtherSide::Battery && site.stands(positions, t.handle, "generator"));
    let battery = site.battery.as_ref();
    let switched_on = battery.is_some_and(|b| site.stands(positions, b.switch, "on"));
    Drive {
        running: site.stands(positions, site.generator.engine, "running")
            && site.generator.machine.lets_out(positions),
        battery: switched_on && on_battery,
        ..Drive::default()
    }
}

/// The same drive with the sun on what feeds the inverter's terminals; `None` where nothing does.
pub(super) fn with_sun(site: &Site, readings: &Readings, drive: Drive) -> Option<Drive> {
    let solar = site.solar.as_ref()?;
    let fed = readings.point("solar-terminals").fed.any();
    fed.then_some(Drive {
        solar_w: solar.watts,
        ..drive
    })
}

/// What solar and battery give, a sentence each.
pub(super) fn sentences(site: &Site, readings: &Readings, words: &Words) -> Vec<String> {
    let solar = site.solar.as_ref().map(|_| ("solar", readings.solar_w));
    let battery = site.battery.as_ref();
    let battery = battery.map(|_| ("battery", readings.battery.watts));
    let told = [solar, battery].into_iter().flatten();
    told.map(|(name, watts)| {
        let message = Message::new("read-source").name("name", name);
        words.label(&message.quantity("watts", watts, Unit::Watts))
    })
    .collect()
}
