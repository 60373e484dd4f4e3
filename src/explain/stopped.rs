//! A hot engine that was stopped with its load just gone: what it carried, how long it rested, and how long its metal stays hot.
//!
//! The load is read from the moments before the stop; the times and the heat are marking's.
//! Not covered: how hot one load makes an engine beside another; the muffler of any engine that ran counts as equally hot.

use crate::drill::{Drill, Moment};
use crate::marking::Finding;
use crate::words::{Message, Unit};

use super::{Stage, of_evidence, value};

/// Watts from which a set counts as one that carries load, as the drill counts it.
const CARRIES_W: f64 = 1.0;

/// Stages after the load, and the number of the finding that each one shows.
const RESTED: [(&str, &str); 3] = [
    ("stage-rested", "missing"),
    ("stage-muffler", "surface"),
    ("stage-muffler-cools", "hot"),
];

/// The stages of a finding about an engine that was stopped hot.
pub(super) fn stages(drill: &Drill, finding: &Finding) -> Vec<Stage> {
    let before = drill.trace().moments.get(..finding.moment);
    let loaded = |m: &&Moment| m.readings.generator.watts > CARRIES_W;
    let mut before = before.unwrap_or_default().iter().rev();
    let Some(last) = before.find(loaded) else {
        return Vec::new();
    };
    let watts = last.readings.generator.watts;
    let rated = drill.site().generator.spec_at(&last.positions).rated_w;
    let text = Message::new("stage-last-load")
        .quantity("watts", watts, Unit::Watts)
        .quantity("share", 100.0 * watts / rated, Unit::Percent);
    let carried = Stage {
        at: "generator".to_owned(),
        text,
        value: value(watts, Unit::Watts),
    };
    let rested = RESTED
        .iter()
        .filter_map(|(id, shown)| of_evidence(finding, "generator", id, shown));
    [carried].into_iter().chain(rested).collect()
}
