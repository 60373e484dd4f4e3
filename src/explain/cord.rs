//! The chain of a hot cord: from its gauge to the cord that would do.
//!
//! Gauge and length give ohms, ohms and amps give the volts lost, volts lost and amps give watts, watts and time give degrees; then the limit, and what would have done.
//! Every number is in the finding; nothing is computed here.

use crate::marking::Finding;
use crate::words::Message;

use super::Stage;

/// The stages, in the order in which one follows from the other, and which number of the finding each one shows.
const CHAIN: [(&str, &str); 6] = [
    ("stage-cord-wire", "ohm"),
    ("stage-cord-lost", "lost"),
    ("stage-cord-heat", "heat"),
    ("stage-cord-heated", "reached"),
    ("stage-cord-limit", "rated"),
    ("stage-cord-does", "carries"),
];

/// The stages of a finding about a hot cord.
pub(super) fn path(finding: &Finding) -> Vec<Stage> {
    let number = |name: &str| {
        let found = finding.evidence.iter().find(|(n, _)| *n == name);
        found.map(|(_, arg)| arg.clone())
    };
    let stage = |(id, shown): &(&str, &str)| {
        Some(Stage {
            at: "cord".to_owned(),
            text: Message {
                id: (*id).to_owned(),
                args: finding.evidence.clone(),
            },
            value: Message::new("value").with("value", number(shown)?),
        })
    };
    CHAIN.iter().filter_map(stage).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::Arg;

    #[test]
    fn a_stage_whose_number_is_missing_is_left_out() {
        let finding = Finding {
            rule: crate::marking::Rule::CordHot,
            at: crate::units::DrillTime::ZERO,
            lasted: crate::units::DrillTime::ZERO,
            moment: 0,
            breach: true,
            evidence: vec![("lost", Arg::Count(9))],
        };
        let ids: Vec<String> = path(&finding).into_iter().map(|s| s.text.id).collect();
        assert_eq!(ids, ["stage-cord-lost"]);
    }
}
