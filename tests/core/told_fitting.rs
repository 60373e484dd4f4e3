//! What a reader refused once and is not told again: orders that would repeat a mistake, causes that were not the cause, criteria that were met by a mistake.
//!
//! Laws over all lists of `tests/drills`; where no list may speak otherwise, the words are looked for in each.

use outage_drill::apparatus::cord_choice::delivery;
use outage_drill::apparatus::cord_lay::Lay;
use outage_drill::drill::{Drill, Event};
use outage_drill::explain::{Explanation, explain};
use outage_drill::marking::{Finding, Rule, mark, pressing};
use outage_drill::scenario::Criterion;
use outage_drill::site::Cord;
use outage_drill::words::{Arg, OFFERED, Words};

use crate::told_advice::{all, say, told, word};

fn has(finding: &Finding, name: &'static str, count: i64) -> bool {
    finding.evidence.contains(&(name, Arg::Count(count)))
}

/// The cord that a finding is about.
fn cord<'a>(drill: &'a Drill, finding: &Finding) -> Option<(usize, &'a Cord)> {
    let named = word(finding, "cord")?;
    let mut cords = drill.site().cords.iter().enumerate();
    cords.find(|(_, c)| format!("name-{}", c.name) == named)
}

/// Each finding of some rules over all lists, explained.
fn each(rules: &[Rule], mut holds: impl FnMut(&str, &Drill, &Finding, &Explanation)) -> usize {
    let mut seen = 0;
    for (name, drill, findings) in all() {
        for finding in findings.iter().filter(|f| rules.contains(&f.rule)) {
            holds(name, drill, finding, &explain(drill, finding));
            seen += 1;
        }
    }
    seen
}

#[test]
fn who_fed_a_panel_past_all_transfer_equipment_is_never_told_to_feed_it_another_way() {
    let wrong = [
        "before the generator feeds the house",
        "bring it on one thing at a time",
        "largest motor first, alone",
    ];
    let mut seen = 0;
    for (name, drill, findings) in all() {
        let unguarded =
            |f: &&Finding| f.breach && matches!(f.rule, Rule::LineFed | Rule::NoTransferEquipment);
        let Some(first) = findings.iter().find(unguarded) else {
            continue;
        };
        for finding in findings.iter().filter(|f| f.at >= first.at) {
            let instead = say(&explain(drill, finding).instead);
            for words in wrong {
                assert!(!instead.contains(words), "{name}: {instead}");
            }
            let street = word(finding, "cause") == Some("street");
            if finding.rule == Rule::AllAtOnce || street {
                assert!(instead.contains("Run extension cords"), "{name}: {instead}");
                seen += 1;
            }
        }
    }
    assert!(seen > 1, "{seen}");
}

#[test]
fn a_panel_on_an_adapter_is_not_to_be_fed_so_again() {
    let seen = each(&[Rule::Starved, Rule::WireHot], |name, _, finding, told| {
        if word(finding, "cause") == Some("adapter") {
            let instead = say(&told.instead);
            assert!(instead.starts_with("Feed no panel"), "{name}: {instead}");
        }
    });
    assert!(seen > 1, "{seen}");
}

#[test]
fn an_order_about_a_spoiled_cord_fits_how_it_stands_and_never_brings_it_back() {
    let mut now_dead = 0;
    let seen = each(
        &[Rule::CordHot, Rule::PlugHot],
        |name, drill, finding, told| {
            let now = say(&told.now);
            if finding.rule == Rule::PlugHot {
                assert!(now.contains("Never use this cord again"), "{name}: {now}");
            } else if !has(finding, "ruined", 1) {
                return;
            }
            let (_, cord) = cord(drill, finding).unwrap();
            let near = drill.readings().point(&format!("{}-near-end", cord.name));
            let dead = now.contains("It has no power any more");
            assert_eq!(dead, !near.fed.any(), "{name}: {now}");
            let pulled = drill.site().stands(drill.positions(), cord.near, "stowed");
            assert!(!pulled || !now.contains("ull "), "{name}: {now}");
            now_dead += u32::from(dead);
        },
    );
    assert!(seen > 3 && now_dead > 1, "{seen} {now_dead}");
}

#[test]
fn a_cord_is_too_long_only_where_it_would_be_so_laid_out_flat() {
    let mut held = 0;
    let seen = each(&[Rule::Starved], |name, drill, finding, told| {
        let (Some(rated), Some((_, cord))) = (finding.quantity("rated"), cord(drill, finding))
        else {
            return;
        };
        let Some("cord") = word(finding, "cause") else {
            return;
        };
        let number = |name| finding.quantity(name).unwrap();
        let air = cord.air_c(drill.site().ambient_c);
        let flat = delivery(
            &cord.make,
            number("amps"),
            number("near"),
            air,
            Lay::Straight,
        );
        let would_do = number("near") - flat.lost_v >= 0.9 * rated;
        let what = say(&told.what);
        if word(finding, "basis") == Some("lay") && would_do {
            assert!(
                what.contains("could not give off its heat"),
                "{name}: {what}"
            );
            held += 1;
        }
        if what.contains("too long") {
            // No more than one volt in twenty is lost at the length that is named, and more at five feet more.
            let a_foot = flat.lost_v / number("length") / number("near");
            assert!(a_foot * number("would") <= 0.05 + 1e-9, "{name}");
            assert!(a_foot * (number("would") + 5.0) > 0.05, "{name}");
        }
    });
    assert!(seen > 3 && held > 0, "{seen} {held}");
}

#[test]
fn a_step_out_of_turn_leaves_the_order_unmet() {
    let mut seen = 0;
    for (name, drill, findings) in all() {
        let by = |f: &Finding| matches!(word(f, "by"), Some("main" | "set"));
        let wrong = findings.iter().any(|f| {
            f.rule == Rule::PlugUnderLoad && f.breach || f.rule == Rule::Collision && by(f)
        });
        if wrong {
            let verdict = mark(drill.scenario(), drill.trace());
            let met = (Criterion::Order, true);
            assert!(!verdict.criteria.contains(&met), "{name}");
            seen += 1;
        }
    }
    assert!(seen > 4, "{seen}");
}

#[test]
fn a_tripped_set_is_switched_on_again_with_nothing_on_behind_it() {
    let seen = each(
        &[Rule::NotRestored, Rule::NotBack],
        |name, _, finding, told| {
            let tripped = ["loaded", "stands"].map(|own| word(finding, own));
            if tripped.contains(&Some("tripped")) {
                let instead = say(&told.instead);
                assert!(
                    instead.starts_with("Turn off all loads first"),
                    "{name}: {instead}"
                );
            }
        },
    );
    assert!(seen > 9, "{seen}");
}

#[test]
fn only_two_sources_are_told_to_be_out_of_step() {
    for (name, drill, findings) in all() {
        let met = |(_, e): (_, &Event)| matches!(e, Event::Collision { .. });
        if drill.trace().events().any(met) {
            continue;
        }
        for finding in findings.iter().filter(|f| f.rule != Rule::SourcesMeet) {
            let told = explain(drill, finding);
            let path = told.path.iter().map(|s| say(&s.text));
            let texts = path.chain([&told.what, &told.why, &told.instead].map(say));
            for text in texts {
                assert!(!text.contains("out of step"), "{name}: {text}");
            }
        }
    }
}

#[test]
fn what_was_there_on_arrival_is_told_so_and_nothing_else_is() {
    let mut seen = 0;
    let rules = [Rule::LineFed, Rule::NoTransferEquipment, Rule::LiveBlades];
    each(&rules, |name, _, finding, told| {
        let what = say(&told.what);
        let came = what.contains("when you came");
        assert_eq!(came, finding.at.millis() == 0, "{name}: {what}");
        seen += u32::from(came);
    });
    assert!(seen > 3, "{seen}");
}

#[test]
fn what_asks_for_something_now_is_the_first_of_its_kind() {
    let mut seen = 0;
    for (name, drill, findings) in all() {
        let Some(index) = pressing(drill.site(), drill.trace(), findings) else {
            continue;
        };
        let class = |f: &Finding| {
            let critical = f.breach && f.rule.criterion().is_critical();
            (f.breach && f.rule.harms(), critical)
        };
        let own = class(&findings[index]);
        let before = findings.iter().take(index);
        let alike = before.filter(|f| class(f) == own).count();
        assert_eq!(alike, 0, "{name}: {:?}", findings[index].rule);
        seen += 1;
    }
    assert!(seen > 9, "{seen}");
}

#[test]
fn a_loss_is_told_by_what_came_of_it_in_the_words_of_the_log() {
    for offered in OFFERED {
        let words = Words::new(offered.tag);
        let seen = each(&[Rule::Lost], |name, _, finding, told| {
            let came = word(finding, "came").unwrap();
            let said = words.say_id(came);
            let why = words.say(&told.why);
            assert!(why.contains(&said), "{name}: {why}");
        });
        assert!(seen > 4, "{seen}");
    }
}

#[test]
fn a_house_with_no_safe_way_by_its_panel_is_told_why_a_cord_is_shown() {
    let told = told("no-slide", "collision-main-closed", Rule::GoalLate);
    let path: Vec<&str> = told.path.iter().map(|s| s.text.id.as_str()).collect();
    assert_eq!(path.get(1), Some(&"stage-by-cord"), "{path:?}");
    each(&[Rule::GoalLate], |name, drill, _, told| {
        let site = drill.site();
        if site.panel.backfeed.is_none() && site.subpanels.is_empty() {
            let said = told.path.iter().any(|s| s.text.id == "stage-by-cord");
            assert!(!said, "{name}");
        }
    });
}
