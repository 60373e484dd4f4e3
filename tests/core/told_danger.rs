//! How badly people came to harm is a value that marking gives, and what can hurt people is told where nobody was hurt.

use outage_drill::explain::explain;
use outage_drill::hazard::body::Path;
use outage_drill::hazard::shock::{Zone, reference_ma, zone};
use outage_drill::marking::{Finding, Harm, Rule};
use outage_drill::scenario::Criterion;
use outage_drill::site::PositionId;
use outage_drill::units::DrillTime;
use outage_drill::words::Arg;

use crate::answers::debrief;
use crate::told_advice::{all, say, word};

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
            let own = finding.harm.filter(|h| *h > Harm::CanHurt);
            assert_eq!(own, harm, "{name}: {:?}", finding.rule);
            // Who is harmed is harmed as a breach, by what ends a run; a fire is told as a fire.
            let ends = finding.breach && finding.rule.harms() && !finding.rule.burns();
            assert_eq!(own.is_some(), ends, "{name}: {:?}", finding.rule);
            if let (Some(harm), rule) = (harm, finding.rule) {
                seen[0] += u32::from(harm == Harm::Hurt && rule == Rule::Touch);
                seen[1] += u32::from(harm == Harm::MayHaveKilled && zone.is_some());
                seen[2] += u32::from(zone.is_none());
            }
        }
    }
    assert!(seen.iter().all(|n| *n > 0), "{seen:?}");
}

/// What the debrief of a list says beside people.
fn people(drill: &str, actions: &str) -> (bool, String) {
    let (session, view) = debrief(drill, actions);
    let title = session.say("criterion-people-title");
    let own = view
        .criteria
        .into_iter()
        .find(|c| c.title == title)
        .unwrap();
    (own.met, own.text)
}

#[test]
fn where_nobody_was_hurt_what_can_hurt_people_is_told_beside_them_with_its_moments() {
    for (drill, actions, at) in [
        ("cords-only-night", "cords-only-night-frayed", "5:40"),
        ("tingle", "tingle-no-pin", "4:32"),
        ("no-slide", "main-off-one-handle", "5:09"),
        ("visible-break", "visible-break-one-word", ""),
    ] {
        let (met, told) = people(drill, actions);
        let can = told.contains("can hurt people") && told.contains(at);
        assert_eq!(can, met, "{actions}: {told}");
    }
    // A cord that is only too long, and one in good order, put nobody in danger.
    for (drill, actions) in [
        ("there-and-back", "slide-branches-first"),
        ("first-return", "first-return-stopped-hot"),
    ] {
        let (met, told) = people(drill, actions);
        assert!(met && !told.contains("can hurt"), "{actions}: {told}");
    }
}

#[test]
fn what_is_filed_under_people_needs_no_word_that_it_can_hurt_them() {
    let mut seen = 0;
    for (name, _, findings) in all() {
        for finding in findings {
            let can = finding.harm == Some(Harm::CanHurt);
            let people = finding.rule.criterion() == Criterion::People;
            assert!(!(can && people), "{name}: {:?}", finding.rule);
            seen += u32::from(can);
        }
    }
    assert!(seen > 50, "{seen}");
}

#[test]
fn a_damaged_cord_is_told_as_a_shock_to_the_hand_on_it_and_not_only_as_heat() {
    let mut seen = 0;
    for (name, drill, findings) in all() {
        for finding in findings.iter().filter(|f| f.rule == Rule::CordUnfit) {
            let told = say(&explain(drill, finding).why);
            let damaged = word(finding, "fault") == Some("damaged");
            assert_eq!(told.contains("gets a shock"), damaged, "{name}: {told}");
            seen += u32::from(damaged);
        }
    }
    assert!(seen > 1, "{seen}");
}

#[test]
fn grounds_that_carried_a_fault_go_out_of_service_and_a_fault_that_lasted_is_told_with_what_did_not_end_it()
 {
    let (mut lasted, mut ended) = (0, 0);
    for (name, drill, findings) in all() {
        for finding in findings.iter().filter(|f| f.rule == Rule::GroundsLeft) {
            let told = explain(drill, finding);
            assert!(say(&told.instead).contains("out of service"), "{name}");
            assert!(say(&told.source).contains("F855"), "{name}");
            let why = say(&told.why);
            let stood = finding.lasted > DrillTime::ZERO;
            let welded = why.contains("are welded") && why.contains("station");
            assert_eq!(welded, stood, "{name}: {why}");
            // Nothing but welded contacts leaves a fault standing.
            let work = drill.site().line_work.as_ref().unwrap();
            let shown = &drill.trace().moments[finding.moment];
            let head = shown.positions.get(work.head_contacts);
            assert!(!stood || head != PositionId(0), "{name}");
            lasted += u32::from(stood);
            ended += u32::from(!stood);
        }
    }
    assert!(lasted > 0 && ended > 0, "{lasted} {ended}");
}
