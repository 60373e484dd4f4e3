//! Air: the engine never runs indoors, whatever doors stand open.
//!
//! A rule and not a measurement: the gas in the house depends on doors, cracks and luck, and whoever goes to the engine breathes the garage's air.
//! What the air came to is told with it.
//! Sources: CPSC, never in a garage, even with doors open (checked in a copy); NIOSH, immediately dangerous from 1 200 ppm (checked in a copy that quotes it, part from memory).

use crate::drill::{Moment, Trace};
use crate::scenario::Scenario;
use crate::site::Site;
use crate::words::{Arg, Unit};

use super::episode::episodes;
use super::finding::{Finding, Rule};

/// Parts per million that are immediately dangerous to life.
const DANGEROUS_PPM: f64 = 1200.0;

pub(super) fn findings(scenario: &Scenario, trace: &Trace) -> Vec<Finding> {
    let site = &scenario.site;
    let mut found = Vec::new();
    for episode in episodes(trace, |m| runs_indoors(site, m)) {
        let moments = episode.moments(trace);
        let most = |ppm: fn(&Moment) -> f64| moments.iter().map(ppm).fold(0.0, f64::max);
        let beside = most(|m| m.conditions.air.garage.co_ppm.max(m.conditions.ppm()));
        let oxygen = |m: &Moment| m.conditions.air.garage.o2.min(m.conditions.air.house.o2);
        let least = moments.iter().map(oxygen).fold(1.0, f64::min);
        found.push(
            Finding {
                lasted: episode.length(),
                ..Finding::breach(Rule::Indoors, episode.from, episode.first)
            }
            .with("lasted", Arg::lasting(episode.length()))
            .with("gathered", Arg::Verbatim(gathered(beside).to_owned()))
            .with("beside", Arg::Quantity(beside, Unit::Ppm))
            .with(
                "house",
                Arg::Quantity(most(|m| m.conditions.ppm()), Unit::Ppm),
            )
            .with("oxygen", Arg::Quantity(least * 100.0, Unit::Percent))
            .with("dangerous", Arg::Quantity(DANGEROUS_PPM, Unit::Ppm))
            .with("over", Arg::Count(i64::from(beside >= DANGEROUS_PPM))),
        );
    }
    found
}

/// Whether there is a number to tell yet: in its first seconds the gas rounds to none.
fn gathered(ppm: f64) -> &'static str {
    if ppm < 1.0 { "hardly" } else { "some" }
}

/// Whether the engine runs in a place that has no way to the open: its distance to the nearest opening is 0.
fn runs_indoors(site: &Site, moment: &Moment) -> bool {
    let place = site.generator_place(&moment.positions);
    moment.conditions.engine.running_since.is_some() && place.is_some_and(|p| p.opening_ft <= 0.0)
}
