//! Touch: nobody who handles a thing gets a current that holds the hand or endangers the heart.
//!
//! A tingle that is let go at once, and a shock that a ground-fault device cuts short, are told as a warning; beyond curve b of IEC 60479-1 it is a breach.
//! Sources: IEC 60479-1 for body and zones; IEEE Std 80 for the limit of the heart; UL 943 for what a class A device cuts short.

use crate::drill::{Event, Metal, Moment, Touched, Trace, What};
use crate::hazard::body::Path;
use crate::hazard::shock::{reference_ma, stated_s, times_lethal, zone};
use crate::scenario::Scenario;
use crate::site::{CARRIES_A, Rest, Site};
use crate::words::{Arg, Unit, name_of};

use super::finding::{Finding, Harm, Rule};
use super::people::beside_stated;

/// Body for which the limit of the heart is stated, kilograms: the lighter of the two of IEEE Std 80.
const BODY_KG: f64 = 50.0;

pub(super) fn findings(scenario: &Scenario, trace: &Trace) -> Vec<Finding> {
    let site = &scenario.site;
    let mut found = Vec::new();
    for (index, moment) in trace.moments.iter().enumerate() {
        let What::Happened(Event::Touched(touched)) = moment.what else {
            continue;
        };
        let Touched {
            metal,
            volts,
            amps,
            seconds,
            cleared_by,
        } = touched;
        let heart_ma = reference_ma(amps * 1000.0, Path::LeftHandToFeet);
        let of_limit = times_lethal(heart_ma, seconds, BODY_KG) * 100.0;
        let zone = zone(heart_ma, seconds);
        let finding = Finding {
            breach: zone.harms(),
            harm: Harm::of_current(zone),
            ..Finding::breach(Rule::Touch, moment.at, index)
        };
        found.push(
            finding
                .with("metal", Arg::Said(Box::new(name_of(&metal.point(site)))))
                .with("volts", Arg::Quantity(volts, Unit::Volts))
                .with("body", Arg::Quantity(amps * 1000.0, Unit::Milliamps))
                .with("seconds", Arg::Quantity(seconds, Unit::Seconds))
                .with("limit", Arg::Quantity(of_limit, Unit::Percent))
                .with("stated", Arg::Quantity(stated_s(seconds), Unit::Seconds))
                .with("beside", Arg::Verbatim(beside_stated(seconds).to_owned()))
                .with("zone", Arg::Said(Box::new(name_of(zone.name()))))
                .with("cleared", Arg::Count(i64::from(cleared_by.is_some())))
                .with(
                    "cause",
                    Arg::Verbatim(cause(site, moment, metal).to_owned()),
                )
                .reaching(metal.point(site)),
        );
    }
    found
}

/// What put the metal at some volts: the wet joint itself, what leaks at a wet joint elsewhere, worn insulation, or the load of the neutral that a frame is joined to.
fn cause(site: &Site, moment: &Moment, metal: Metal) -> &'static str {
    let leaks = |index: usize| site.appliances.get(index).map(|a| a.leak_ohm.is_some());
    match metal {
        Metal::Joint(_) => return "wet",
        Metal::Appliance(index) if leaks(index) == Some(true) => return "worn",
        Metal::Appliance(_) | Metal::Generator => {}
    }
    let fed = |name: &str| moment.readings.point(&format!("{name}-near-end")).fed.any();
    let wet = site
        .cords
        .iter()
        .any(|c| c.rest(&moment.positions) == Rest::InPuddle && fed(&c.name));
    let worn =
        |index| leaks(index) == Some(true) && moment.readings.appliance(index).amps >= CARRIES_A;
    if wet {
        "leak"
    } else if (0..site.appliances.len()).any(worn) {
        "worn"
    } else {
        "neutral"
    }
}
