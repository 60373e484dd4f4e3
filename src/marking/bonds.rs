//! A set that feeds a house while nothing joins its neutral to ground: the first fault to a frame is silent, and no breaker clears it.
//!
//! The house's ground wires stay on their earth rod. So such a fault leaves the frame near earth, and lifts the neutral and the other hot wire instead.
//!
//! Judged by cords, switches and the set's own bond, and only while the set makes volts.
//! A set with appliances on cords of their own is not meant: its frame and its neutral may be apart.
//! Two bonds are another thing: what they do is in `protection`.
//! Sources: NEC 250.4(A)(5), 250.30(A) and 702.11 (from memory).

use crate::drill::{Moment, Trace};
use crate::scenario::Scenario;
use crate::site::Site;
use crate::words::{Arg, Unit, name_of};

use super::episode::episodes;
use super::finding::{Finding, Rule};

pub(super) fn findings(scenario: &Scenario, trace: &Trace) -> Vec<Finding> {
    let site = &scenario.site;
    let found = episodes(trace, |m| nothing_bonds(site, m));
    let found = found.into_iter().map(|episode| {
        let volts = |m: &Moment| m.readings.point("generator-outlet").volts_across;
        // A worn machine that is fed shows what the missing bond does.
        let shown = episode.most(trace, |m| match worn(site, m) {
            Some(_) => 2.0 * volts(m),
            None => volts(m),
        });
        let machine = trace.moments.get(shown).and_then(|m| worn(site, m));
        let at = |read: &dyn Fn(&Moment) -> f64| trace.moments.get(shown).map_or(0.0, read);
        // To earth: the case that a worn hot wire touches, and the higher hot wire. From the case to the neutral: the leg.
        let case = format!("{}-frame", machine.unwrap_or_default());
        let outlet = |m: &Moment| m.readings.point("generator-outlet");
        let leg = |m: &Moment| match machine {
            Some(_) => m.readings.point(&case).volts,
            None => outlet(m).volts,
        };
        let frame = |m: &Moment| m.readings.point(&case).volts_to_earth.unwrap_or_default();
        let other = |m: &Moment| outlet(m).volts_to_earth.unwrap_or_default();
        Finding {
            lasted: episode.length(),
            ..Finding::breach(Rule::NothingBonds, episode.from, shown)
        }
        .with("volts", Arg::Quantity(at(&volts), Unit::Volts))
        .with("worn", Arg::Count(i64::from(machine.is_some())))
        .with(
            "machine",
            Arg::Said(Box::new(name_of(machine.unwrap_or_default()))),
        )
        .with("leg", Arg::Quantity(at(&leg), Unit::Volts))
        .with("frame", Arg::Quantity(at(&frame), Unit::Volts))
        .with("other", Arg::Quantity(at(&other), Unit::Volts))
        .with("lasted", Arg::lasting(episode.length()))
        .reaching(fed_inlet(site, trace.moments.get(shown)))
    });
    found.collect()
}

/// A machine with worn insulation that the set feeds in a moment.
fn worn<'a>(site: &'a Site, moment: &Moment) -> Option<&'a str> {
    let mut all = site.appliances.iter().enumerate();
    let fed = |index: usize| moment.readings.appliance(index).fed.generator;
    let worn = all.find(|(index, a)| a.leak_ohm.is_some() && fed(*index));
    worn.map(|(_, a)| a.name.as_str())
}

/// The inlet that the set feeds in a moment.
fn fed_inlet(site: &Site, moment: Option<&Moment>) -> String {
    let fed = |name: &str| moment.is_some_and(|m| m.readings.point(name).fed.generator);
    let inlet = site.inlets.iter().find(|i| fed(&i.name));
    inlet.map(|i| i.name.clone()).unwrap_or_default()
}

/// Whether the set feeds the house's wiring with no bond anywhere.
fn nothing_bonds(site: &Site, moment: &Moment) -> bool {
    let positions = &moment.positions;
    let mut inlets = site.inlets.iter();
    let wired = site.set_on_house(positions) && site.set_bonds(positions) == 0;
    wired && inlets.any(|i| moment.readings.point(&i.name).fed.generator)
}
