//! A panel that stands in water: nobody's hand goes to it.
//!
//! While wires in it are live it is a breach that puts the hand in the way of harm; while they are dead it is advice, because the utility can be back at any moment.
//! Live is judged by the volts at the wires from the street and at the bars, just before the deed and right after it.
//! Not covered: how much current the water takes, where it stands, and what it has done to the breakers.
//! Source: stay out of flooded rooms with live equipment and let the utility disconnect it, advice of many utilities (from memory); 50 V as for other live parts, 29 CFR 1910.303(g)(2) (from memory).

use crate::drill::{Action, Moment, Trace, What};
use crate::scenario::Scenario;
use crate::site::Site;
use crate::words::{Arg, Unit, name_of};

use super::finding::{Finding, Rule};

/// Volts from which wires in the panel count as live.
const LIVE_V: f64 = 50.0;

pub(super) fn findings(scenario: &Scenario, trace: &Trace) -> Vec<Finding> {
    if !scenario.wet_panel {
        return Vec::new();
    }
    let site = &scenario.site;
    let mut found = Vec::new();
    for (index, pair) in trace.moments.windows(2).enumerate() {
        let [before, after] = pair else { continue };
        let What::Did(Action::Set(control, _)) = &after.what else {
            continue;
        };
        let Some(moved) = site.control(*control).filter(|c| c.place == "panel") else {
            continue;
        };
        let (volts, point) = live(site, after);
        let (volts_before, point_before) = live(site, before);
        let (volts, point) = if volts_before > volts {
            (volts_before, point_before)
        } else {
            (volts, point)
        };
        found.push(
            Finding {
                breach: volts >= LIVE_V,
                ..Finding::breach(Rule::WetPanel, after.at, index + 1)
            }
            .with("control", Arg::Said(Box::new(name_of(&moved.name))))
            .with("live", Arg::Count(i64::from(volts >= LIVE_V)))
            .with("volts", Arg::Quantity(volts, Unit::Volts))
            .reaching(point),
        );
    }
    found
}

/// The highest volts in the panel, and where they stand.
fn live(site: &Site, moment: &Moment) -> (f64, String) {
    let subs = site.subpanels.iter().map(|s| format!("bus-{}", s.name));
    let points = ["service".to_owned(), "bus".to_owned()].into_iter();
    let volts = points.chain(subs).map(|point| {
        let reading = moment.readings.point(&point);
        (reading.volts.max(reading.volts_across), point)
    });
    let service = (0.0, "service".to_owned());
    volts.fold(
        service,
        |most, next| if next.0 > most.0 { next } else { most },
    )
}
