//! No order puts anybody in the way of harm, no two speak against each other, and what was done after harm is told as it was.
//!
//! Laws over all lists of `tests/drills`.

use outage_drill::drill::{Action, Callee, Drill, Moment, What};
use outage_drill::explain::explain;
use outage_drill::marking::{Finding, Rule, mark, pressing, supplied_since};
use outage_drill::scenario::Criterion;
use outage_drill::site::Kind;
use outage_drill::units::DrillTime;
use outage_drill::words::{Arg, Unit};

use crate::told_advice::{all, one, say, word};

fn count(finding: &Finding, name: &str) -> Option<i64> {
    finding.evidence.iter().find_map(|(own, arg)| {
        let Arg::Count(n) = arg else { return None };
        (*own == name).then_some(*n)
    })
}

fn number(args: &[(&'static str, Arg)], name: &str) -> f64 {
    let found = args.iter().find_map(|(own, arg)| {
        let Arg::Quantity(n, _) = arg else {
            return None;
        };
        (*own == name).then_some(*n)
    });
    found.unwrap_or_else(|| panic!("{name}: {args:?}"))
}

/// What a finding orders, now and next time.
fn orders(drill: &Drill, finding: &Finding) -> String {
    let told = explain(drill, finding);
    [say(&told.now), say(&told.instead)].join(" ")
}

#[test]
fn nobody_of_a_household_is_sent_to_test_the_street_s_wires() {
    let mut seen = 0;
    for (name, drill, findings) in all() {
        if drill.site().line_work.is_some() {
            continue;
        }
        for finding in findings {
            let said = orders(drill, finding);
            if finding.rule == Rule::SaidDead {
                assert!(said.contains("Open no"), "{name}: {said}");
                if finding.reaches.as_deref() == Some("service") {
                    assert!(!said.contains("a tester"), "{name}: {said}");
                    seen += 1;
                }
            }
            assert!(!said.contains("a test with a tester"), "{name}: {said}");
        }
    }
    assert!(seen > 0);
}

#[test]
fn a_controller_goes_back_to_auto_only_after_a_look_for_locks_covers_and_people() {
    let mut seen = 0;
    for (name, drill, findings) in all() {
        for finding in findings {
            let said = orders(drill, finding);
            if said.contains(" to auto") {
                let looks = ["lock", "cover"].into_iter().all(|w| said.contains(w));
                assert!(looks, "{name}: {said}");
                seen += 1;
            }
        }
    }
    assert!(seen > 1, "{seen}");
}

#[test]
fn a_set_that_was_asked_for_too_much_is_not_sent_to_be_serviced_for_it() {
    let mut seen = 0;
    for (name, drill, findings) in all() {
        let Some(over) = findings.iter().find(|f| f.rule == Rule::Overload) else {
            continue;
        };
        let late = findings.iter().filter(|f| f.rule == Rule::GoalLate);
        for late in late.filter(|f| f.at >= over.at) {
            let said = orders(drill, late);
            assert!(!said.contains("serviced"), "{name}: {said}");
            seen += 1;
        }
    }
    assert!(seen > 0);
}

/// Whether somebody moved or tried to move something that isn't a person.
fn handled(drill: &Drill, moment: &Moment) -> bool {
    let (What::Did(action) | What::Refused(action, _)) = &moment.what else {
        return false;
    };
    if let Action::Set(id, _) = action {
        let control = drill.site().control(*id);
        control.map(|c| c.kind) != Some(Kind::People)
    } else {
        *action == Action::Refuel
    }
}

#[test]
fn work_is_called_ended_as_it_should_only_where_nothing_was_moved_and_help_was_not_long_in_coming()
{
    let (mut praised, mut blamed) = (0, 0);
    for (name, drill, findings) in all() {
        let harm = findings.iter().find(|f| f.breach && f.rule.harms());
        let Some(harm) = harm else { continue };
        let trace = drill.trace();
        let later = &trace.moments[harm.moment + 1..];
        let left = findings.iter().find(|f| f.rule == Rule::NotRestored);
        let what = left.map(|f| say(&explain(drill, f).what));
        let what = what.unwrap_or_default();
        let called = later
            .iter()
            .any(|m| m.what == What::Did(Action::Call(Callee::Emergency)));
        let long = trace.end() > harm.at + DrillTime::from_secs(60);
        if what.contains("as it should") {
            assert!(called || !long, "{name}: {what}");
            praised += 1;
        }
        if harm.rule == Rule::FuelFire && later.iter().any(|m| handled(drill, m)) {
            assert!(left.is_some_and(|f| f.breach), "{name}: {what}");
            blamed += 1;
        }
        if left.is_some_and(|f| !f.breach) {
            assert_eq!(left.unwrap().at, harm.at, "{name}: {what}");
        }
    }
    assert!(praised > 2 && blamed > 0, "{praised} {blamed}");
}

#[test]
fn power_that_came_too_late_is_never_called_in_time_whoever_was_hurt() {
    let mut harmed = 0;
    for (name, drill, findings) in all() {
        let (scenario, trace) = (drill.scenario(), drill.trace());
        let Some(outage) = trace.outage_at().filter(|_| !scenario.goal.safe_stop) else {
            continue;
        };
        let due = outage + scenario.goal.within;
        let late = |a: &usize| supplied_since(trace, *a).is_none_or(|at| at > due);
        if !scenario.goal.appliances.iter().any(late) {
            continue;
        }
        let met = |(c, met): &(Criterion, bool)| *c == Criterion::Restoration && *met;
        let verdict = mark(scenario, trace);
        assert!(!verdict.criteria.iter().any(met), "{name}");
        harmed += usize::from(findings.iter().any(|f| f.breach && f.rule.harms()));
    }
    assert!(harmed > 0);
}

#[test]
fn a_house_is_kept_on_its_own_source_only_where_no_other_order_takes_that_away() {
    let mut seen = 0;
    for (name, drill, findings) in all() {
        let back = findings.iter().find(|f| f.rule == Rule::NotBack);
        let Some(back) = back.map(|f| orders(drill, f)) else {
            continue;
        };
        if !back.contains("Take the house off the generator first") {
            continue;
        }
        for other in findings.iter().filter(|f| f.breach) {
            let said = orders(drill, other).to_lowercase();
            for wrong in [
                "stop the engine and",
                "and stop the engine",
                "keep the engine off",
            ] {
                assert!(!said.contains(wrong), "{name}: {said}");
            }
        }
        seen += 1;
    }
    assert!(seen > 0);
}

#[test]
fn a_set_whose_contacts_drew_an_arc_stays_locked_out() {
    let mut seen = 0;
    for (name, drill, findings) in all() {
        let arc = |f: &Finding| f.rule == Rule::HandTransferLive && count(f, "carried") == Some(1);
        let set = &drill.site().generator;
        let (true, Some(own)) = (findings.iter().any(arc), set.machine.automatic) else {
            continue;
        };
        let asked: Vec<&str> = findings.iter().filter_map(|f| word(f, "control")).collect();
        for id in [own.switch, own.battery, set.output] {
            let control = &drill.site().control(id).unwrap().name;
            let control = format!("name-{control}");
            assert!(!asked.contains(&control.as_str()), "{name}: {asked:?}");
        }
        seen += 1;
    }
    assert!(seen > 0);
}

#[test]
fn who_should_be_out_of_the_house_is_asked_for_no_handle_in_it() {
    let mut seen = 0;
    for (name, drill, findings) in all() {
        if !findings
            .iter()
            .any(|f| f.breach && f.rule == Rule::StayedIn)
        {
            continue;
        }
        for other in findings {
            assert_ne!(other.rule, Rule::NotBack, "{name}");
            let asked = word(other, "control");
            let mut controls = drill.site().controls.iter();
            let control = controls.find(|c| Some(format!("name-{}", c.name).as_str()) == asked);
            let people = control.map(|c| c.kind) == Some(Kind::People);
            assert!(asked.is_none() || people, "{name}: {other:?}");
        }
        let stayed = findings.iter().find(|f| f.rule == Rule::StayedIn).unwrap();
        let later = &drill.trace().moments[stayed.moment + 1..];
        if later
            .iter()
            .any(|m| matches!(m.what, What::Did(Action::Set(..))) && handled(drill, m))
        {
            let met = |(c, met): &(Criterion, bool)| *c == Criterion::Restoration && *met;
            let verdict = mark(drill.scenario(), drill.trace());
            assert!(!verdict.criteria.iter().any(met), "{name}");
            seen += 1;
        }
    }
    assert!(seen > 0);
}

#[test]
fn an_alarm_that_still_cannot_sound_at_the_end_has_its_order_now() {
    let mut seen = 0;
    for (name, drill, findings) in all() {
        let site = drill.site();
        let mute = !site.alarm_works(drill.positions());
        if !mute || !findings.iter().any(|f| f.rule == Rule::NoAlarm) {
            continue;
        }
        let asked = pressing(site, drill.trace(), findings);
        let now = asked.map(|i| say(&explain(drill, &findings[i]).now));
        let now = now.unwrap_or_else(|| panic!("{name}: nothing now"));
        let runs = drill.conditions().engine.running_since.is_some();
        if now.contains("fresh battery") {
            assert_eq!(now.contains("Stop the engine"), runs, "{name}: {now}");
            seen += 1;
        }
    }
    assert!(seen > 0);
}

#[test]
fn what_the_sun_gives_adds_up_with_what_takes_it() {
    let mut seen = 0;
    for (name, drill, findings) in all() {
        for finding in findings.iter().filter(|f| f.rule == Rule::PushedBack) {
            let told = explain(drill, finding);
            let stage = |id: &str| {
                let stage = told.path.iter().find(|s| s.text.id == id);
                stage.unwrap_or_else(|| panic!("{name}: {id}"))
            };
            let sun = number(&stage("stage-sun").text.args, "watts");
            let used = &stage("stage-sun-used").text.args;
            let sum = number(used, "charge") + number(used, "rest");
            let pushed = number(&finding.evidence, "watts");
            assert!(
                (sum + pushed - sun).abs() < 0.01 * sun,
                "{name}: {sum} {pushed} {sun}"
            );
            assert!(number(used, "rest") > 0.0, "{name}");
            seen += 1;
        }
    }
    assert!(seen > 0);
}

#[test]
fn what_is_wrong_with_a_generator_can_wait_once_the_utility_feeds_the_house() {
    let mut seen = 0;
    for (name, drill, findings) in all() {
        let back = drill.readings().point("bus").fed.utility;
        for finding in findings.iter().filter(|f| f.rule == Rule::PushedBack) {
            let now = say(&explain(drill, finding).now);
            assert_eq!(now.starts_with("Before"), back, "{name}: {now}");
            seen += 1;
        }
    }
    assert!(seen > 0);
}

#[test]
fn a_plug_that_was_dead_until_it_went_in_is_told_with_what_it_made_live() {
    let (drill, findings) = one("neighbor-helps-two-sources");
    let plug = findings.iter().find(|f| f.rule == Rule::LivePlug).unwrap();
    let told = explain(drill, plug);
    assert!(
        say(&told.what).contains("other plug"),
        "{}",
        say(&told.what)
    );
    for (name, drill, findings) in all() {
        for plug in findings.iter().filter(|f| f.rule == Rule::LivePlug) {
            let told = explain(drill, plug);
            let strip = say(&told.what).contains("other plug");
            assert_eq!(strip, count(plug, "strip") == Some(1), "{name}");
        }
    }
}

#[test]
fn two_sources_count_as_joined_from_when_a_strip_joins_them() {
    let mut seen = 0;
    for (name, drill, findings) in all() {
        for finding in findings.iter().filter(|f| f.rule == Rule::SourcesMeet) {
            let joined = |m: &&Moment| m.readings.point("generator-outlet").fed.lent;
            let moments = &drill.trace().moments;
            let from = moments.iter().find(joined).map(|m| m.at).unwrap();
            let parted = moments.iter().find(|m| m.at > from && !joined(m));
            let until = parted.map_or(drill.trace().end(), |m| m.at);
            let lasted = ("lasted", Arg::lasting(until.since(from)));
            assert!(finding.evidence.contains(&lasted), "{name}: {finding:?}");
            seen += 1;
        }
    }
    assert!(seen > 0);
}

#[test]
fn a_cup_of_gasoline_is_as_heavy_as_one() {
    let mut seen = 0;
    for (name, _, findings) in all() {
        for finding in findings.iter().filter(|f| f.rule == Rule::FuelIndoors) {
            // 237 mL of 0.73 to 0.75 g each.
            let grams = ("grams", Arg::Quantity(175.0, Unit::Grams));
            assert!(finding.evidence.contains(&grams), "{name}: {finding:?}");
            seen += 1;
        }
    }
    assert!(seen > 0);
}
