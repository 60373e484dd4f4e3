//! How badly people came to harm is a value that marking gives, and what can hurt people is told where nobody was hurt.

use outage_drill::hazard::body::Path;
use outage_drill::hazard::shock::{Zone, reference_ma, zone};
use outage_drill::marking::{Finding, Harm, Rule};
use outage_drill::words::Arg;

use crate::told_advice::all;

/// The number of a piece of evidence, the lower of a range.
fn number(finding: &Finding, name: &str) -> f64 {
    let (_, arg) = finding
        .evidence
        .iter()
        .find(|(own, _)| *own == name)
        .unwrap();
    match arg {
        Arg::Quantity(value, _) | Arg::Range(value, ..) => *value,
        Arg::Verbatim(_) | Arg::Said(_) | Arg::Count(_) | Arg::Clock(_) => panic!("{name}"),
    }
}

/// The zone that a finding's own milliamps and seconds fall into.
fn zone_of(finding: &Finding, ma: f64) -> Zone {
    zone(
        reference_ma(ma, Path::LeftHandToFeet),
        number(finding, "seconds"),
    )
}

#[test]
fn harm_to_people_goes_with_the_zone_of_the_current_and_never_with_a_word() {
    let mut seen = [0, 0, 0];
    for (name, _, findings) in all() {
        for finding in findings {
            let zone = if finding.rule == Rule::Touch {
                Some(zone_of(finding, number(finding, "body")))
            } else {
                let ma = (finding.rule == Rule::Shock).then(|| 1000.0 * number(finding, "amps"));
                ma.map(|ma| zone_of(finding, ma))
            };
            let heart = zone.is_some_and(|zone| zone >= Zone::Ac41);
            let harm = if heart || finding.rule == Rule::Overcome {
                Some(Harm::MayHaveKilled)
            } else {
                let hurt = zone == Some(Zone::Ac3) || finding.rule == Rule::CaughtByEngine;
                hurt.then_some(Harm::Hurt)
            };
            assert_eq!(finding.harm, harm, "{name}: {:?}", finding.rule);
            // Who is harmed is harmed as a breach, by what ends a run; a fire is told as a fire.
            let ends = finding.breach && finding.rule.harms() && !finding.rule.burns();
            assert_eq!(finding.harm.is_some(), ends, "{name}: {:?}", finding.rule);
            if let (Some(harm), rule) = (harm, finding.rule) {
                seen[0] += u32::from(harm == Harm::Hurt && rule == Rule::Touch);
                seen[1] += u32::from(harm == Harm::MayHaveKilled && zone.is_some());
                seen[2] += u32::from(zone.is_none());
            }
        }
    }
    assert!(seen.iter().all(|n| *n > 0), "{seen:?}");
}
