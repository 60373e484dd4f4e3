//! Orders and faults fit how a run ended: what still feeds a victim is named, nothing is asked for that would be wrong then, and what was right counts against nobody.
//!
//! Laws over all lists of `tests/drills`.

use outage_drill::explain::explain;
use outage_drill::marking::{Rule, mark, pressing};
use outage_drill::scenario::Criterion;
use outage_drill::site::Kind;
use outage_drill::words::Arg;

use crate::told_advice::{all, say, word};

/// Kinds of controls that are as they should be at any time, whether the street is lit or not.
const AT_ANY_TIME: [Kind; 4] = [Kind::People, Kind::Placement, Kind::Lock, Kind::Opening];

#[test]
fn who_is_hurt_on_the_line_gets_an_order_that_says_whether_the_source_is_on() {
    let mut seen = 0;
    for (name, drill, findings) in all() {
        for shock in findings.iter().filter(|f| f.rule == Rule::Shock) {
            let site = drill.site();
            let pole = &site.line.poles[site.line.crew_pole].name;
            let fed = drill.readings().point(pole).fed;
            let now = say(&explain(drill, shock).now);
            if site.line_work.is_some() {
                assert_eq!(now.contains("still live"), fed.any(), "{name}: {now}");
                assert!(now.contains("ground around"), "{name}: {now}");
                assert!(now.contains("CPR"), "{name}: {now}");
            } else {
                let feeds = now.contains("still feeds the line");
                assert_eq!(feeds, fed.customer(), "{name}: {now}");
                let on = site.stands(drill.positions(), site.panel.main, "on");
                let asked = now.contains("Turn the main breaker off");
                assert_eq!(asked, on, "{name}: {now}");
            }
            seen += 1;
        }
    }
    assert!(seen > 3, "{seen}");
}

#[test]
fn while_the_street_is_dark_nothing_of_the_way_back_is_called_undone() {
    let mut seen = 0;
    for (name, drill, findings) in all() {
        let street = drill.readings().point("service").fed.utility;
        let crew = drill.site().line_work.is_some();
        let back = findings.iter().find(|f| f.rule == Rule::NotBack);
        let Some(back) = back.filter(|_| !crew) else {
            continue;
        };
        let early = back.evidence.contains(&("early", Arg::Count(1)));
        assert_eq!(early, !street, "{name}");
        let what = say(&explain(drill, back).what);
        assert_eq!(what.contains("The run ended before"), early, "{name}");
        let left = findings.iter().filter(|f| f.rule == Rule::NotRestored);
        for own in left.filter(|_| early).filter_map(|f| word(f, "control")) {
            let mut controls = drill.site().controls.iter();
            let control = controls.find(|c| format!("name-{}", c.name) == own);
            let kind = control.map(|c| c.kind);
            assert!(
                kind.is_some_and(|k| AT_ANY_TIME.contains(&k)),
                "{name}: {own}"
            );
        }
        seen += usize::from(early);
    }
    assert!(seen > 5, "{seen}");
}

#[test]
fn to_stop_where_somebody_is_hurt_is_no_fault_and_shows_nothing_of_the_rest_either() {
    let (mut stopped, mut went_on) = (0, 0);
    for (name, drill, findings) in all() {
        let ends = ["hurt", "engine", "gas", "fire"];
        let mut left = findings.iter().filter(|f| f.rule == Rule::NotRestored);
        let Some(left) = left.find(|f| word(f, "harm").is_some_and(|h| ends.contains(&h))) else {
            continue;
        };
        let on = left.evidence.contains(&("after", Arg::Count(1)));
        assert_eq!(left.breach, on, "{name}");
        let verdict = mark(drill.scenario(), drill.trace());
        let restored = |(c, met): &(Criterion, bool)| *c == Criterion::Restoration && *met;
        assert!(!verdict.criteria.iter().any(restored), "{name}");
        if on {
            went_on += 1;
        } else {
            stopped += 1;
        }
    }
    assert!(stopped > 3 && went_on > 0, "{stopped} {went_on}");
}

#[test]
fn what_heat_or_too_much_voltage_has_spoiled_has_its_order_now() {
    let mut seen = 0;
    for (name, drill, findings) in all() {
        let soft = ("ruined", Arg::Count(1));
        let spoiled = findings.iter().filter(|f| f.breach).find(|f| {
            matches!(f.rule, Rule::PlugHot | Rule::Damaged) || f.evidence.contains(&soft)
        });
        if spoiled.is_none() {
            continue;
        }
        let asked = pressing(drill.site(), drill.trace(), findings);
        assert!(asked.is_some(), "{name}: nothing now");
        seen += 1;
    }
    assert!(seen > 4, "{seen}");
}

#[test]
fn nobody_is_sent_into_gas_or_behind_a_cover_to_find_out() {
    for (name, drill, findings) in all() {
        for finding in findings {
            let told = explain(drill, finding);
            let said = [say(&told.now), say(&told.instead)].join(" ");
            for wrong in ["until everybody is out", "Test first", "the cover shut if"] {
                assert!(!said.contains(wrong), "{name}: {said}");
            }
            if finding.rule == Rule::LiveLugs {
                let until = "until the utility has cut them off";
                assert!(said.contains(until), "{name}: {said}");
            }
        }
    }
}

#[test]
fn whoever_turns_a_main_off_on_a_broken_neutral_is_told_how_to_touch_it() {
    let mut seen = 0;
    for (name, drill, findings) in all() {
        for finding in findings.iter().filter(|f| f.rule == Rule::WrongVolts) {
            let told = explain(drill, finding);
            for said in [say(&told.now), say(&told.instead)] {
                assert!(said.contains("dry hand"), "{name}: {said}");
                assert!(said.contains("plastic handle only"), "{name}: {said}");
            }
            seen += 1;
        }
    }
    assert!(seen > 1, "{seen}");
}
