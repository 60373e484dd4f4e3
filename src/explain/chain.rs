//! The chain of a conductor that gets too hot: from its gauge to the one that would do.
//!
//! Gauge and length give ohms, ohms and amps give the volts lost, volts lost and amps give watts, watts and time give degrees; then the limit, and what would have done.
//! The numbers are in the finding; how long it took to warm is read from the trace.

use crate::drill::{Drill, Moment};
use crate::marking::{Finding, Rule};
use crate::site::CARRIES_A;
use crate::words::{Arg, Message, Unit, name_of};

use super::{Stage, of_evidence, value};

/// Stages, in the order in which one follows from the other, and which number of the finding each one shows.
type Chain = &'static [(&'static str, &'static str)];

const CORD: Chain = &[
    ("stage-cord-wire", "ohm"),
    ("stage-cord-lost", "lost"),
    ("stage-cord-heat", "heat"),
    (WARMED, "reached"),
    ("stage-cord-heated", "reached"),
    ("stage-cord-limit", "rated"),
    ("stage-cord-does", "carries"),
];
const PLUG: Chain = &[
    ("stage-plug-ohm", "ohm"),
    ("stage-plug-heat", "heat"),
    ("stage-plug-reached", "reached"),
    ("stage-plug-limit", "limit"),
];
const WIRE: Chain = &[
    ("stage-wire-adapter", "near"),
    ("stage-wire-shared", "one-amps"),
    ("stage-wire-made", "breaker"),
    ("stage-wire-carries", "amps"),
    ("stage-wire-reached", "reached"),
    ("stage-wire-limit", "limit"),
];

/// The stage that is read from the trace: how long a cord took to warm to its limit.
const WARMED: &str = "stage-cord-warmed";

/// The stages of a finding about a conductor that is too hot.
pub(super) fn stages(drill: &Drill, finding: &Finding) -> Vec<Stage> {
    let (at, chain) = if finding.rule == Rule::PlugHot {
        ("cord", PLUG)
    } else if finding.rule == Rule::WireHot {
        ("house", WIRE)
    } else {
        ("cord", CORD)
    };
    let stage = |(id, shown): &(&str, &str)| {
        if *id == WARMED {
            warmed(drill, finding)
        } else {
            of_evidence(finding, at, id, shown)
        }
    };
    chain.iter().filter_map(stage).collect()
}

/// How long a cord had carried current when it passed its limit, and how cool it was before.
fn warmed(drill: &Drill, finding: &Finding) -> Option<Stage> {
    let site = drill.site();
    let (_, said) = finding.evidence.iter().find(|(name, _)| *name == "cord")?;
    let named = |name: &str| Arg::Said(Box::new(name_of(name)));
    let index = site.cords.iter().position(|c| *said == named(&c.name))?;
    let cord = site.cords.get(index)?;
    let rated = cord.make.rated_c();
    let before = drill.trace().moments.get(..=finding.moment)?;
    let hot = |m: &&Moment| m.conditions.cord(index).hottest_c() > rated;
    let past = before.iter().rev().skip_while(hot);
    let carried = |m: &&Moment| m.readings.amps_of(&cord.name) >= CARRIES_A;
    let from = past.take_while(carried).last()?;
    let limit = before.iter().rev().take_while(hot).last()?;
    let start = from.conditions.cord(index).hottest_c();
    Some(Stage {
        at: "cord".to_owned(),
        text: Message::new(WARMED)
            .quantity("start", start, Unit::Celsius)
            .quantity("rated", rated, Unit::Celsius)
            .with("time", Arg::lasting(limit.at.since(from.at))),
        value: value(rated, Unit::Celsius),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::DrillTime;

    #[test]
    fn a_stage_whose_number_is_missing_is_left_out() {
        let finding = Finding {
            rule: Rule::CordHot,
            at: DrillTime::ZERO,
            lasted: DrillTime::ZERO,
            moment: 0,
            breach: true,
            harm: None,
            evidence: vec![("lost", Arg::Count(9))],
            reaches: None,
        };
        let shown = CORD.iter().filter(|(id, _)| *id != WARMED);
        let stages = shown.filter_map(|(id, shown)| of_evidence(&finding, "cord", id, shown));
        let ids: Vec<String> = stages.map(|s| s.text.id).collect();
        assert_eq!(ids, ["stage-cord-lost"]);
    }
}
