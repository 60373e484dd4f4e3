//! What stands when a run ends counts as it stands, however briefly; power that fails again at once doesn't count as power.

use outage_drill::drill::{Event, Phase, Trace};
use outage_drill::explain::explain;
use outage_drill::marking::{Rule, SUPPLIED_PU, mark, supplied_since};
use outage_drill::units::DrillTime;

use crate::playing::{list, play_text, shipped};
use crate::told_advice::{all, say};

#[test]
fn what_asks_for_too_much_when_a_run_ends_is_judged_however_short_it_has_stood() {
    let text = list("hall-night-third-urn");
    let (before, _) = text.split_once("set breaker-urn-c on\n").unwrap();
    let drill = shipped("hall-night");
    for end in ["", "wait 2s\n", "wait 9s\n", "wait 40s\n"] {
        let played = play_text(&drill, 1, &format!("{before}set breaker-urn-c on\n{end}"));
        let findings = played.verdict.findings.iter();
        let over: Vec<_> = findings.filter(|f| f.rule == Rule::Overload).collect();
        assert_eq!(over.len(), 1, "{end:?}: {over:?}");
        assert!(over.iter().all(|f| f.breach), "{end:?}: {over:?}");
    }
    let played = play_text(&drill, 1, before);
    assert!(!played.found().contains(&(Rule::Overload, true)));
}

#[test]
fn a_run_cut_off_at_any_moment_is_overloaded_as_that_moment_stands_and_not_by_a_motor_that_starts()
{
    let brief = DrillTime::from_secs(10);
    let (mut judged, mut starting) = (0, 0);
    for (drill, actions) in [
        ("hall-night", "hall-night-third-urn"),
        ("big-three", "big-three-together"),
        ("ready-panel", "ready-panel-branches-on"),
    ] {
        let played = play_text(&shipped(drill), 1, &list(actions));
        let (scenario, moments) = (played.drill.scenario(), &played.drill.trace().moments);
        let asks = |i: usize| {
            let m = &moments[i];
            let rated = scenario.site.generator.spec_at(&m.positions).rated_w;
            m.readings.generator.asked_w > rated && !m.readings.generator.tied
        };
        for last in 0..moments.len() {
            let cut = Trace {
                moments: moments[..=last].to_vec(),
            };
            let first = (0..=last).rev().take_while(|i| asks(*i)).last();
            let short = first.is_some_and(|f| moments[last].at < moments[f].at + brief);
            let mut phases = moments[last].conditions.appliances.iter();
            let starts = phases.any(|c| c.phase == Phase::Starting);
            if !short {
                continue;
            }
            let stalled = cut
                .events()
                .any(|(_, e)| matches!(e, Event::EngineStalled { .. }));
            let at = moments[first.unwrap()].at;
            let verdict = mark(scenario, &cut);
            let mut found = verdict.findings.iter();
            let found = found.any(|f| f.rule == Rule::Overload && f.at == at);
            assert!(
                stalled || found != starts,
                "{actions}, {:?}",
                moments[last].at
            );
            judged += u32::from(!starts);
            starting += u32::from(starts);
        }
    }
    assert!(judged > 3 && starting > 3, "{judged} {starting}");
}

/// When power that lasts first came, read from stretches: those that are no further apart than a start takes are one.
fn first_that_lasts(trace: &Trace, appliance: usize) -> Option<DrillTime> {
    let outage = trace.outage_at()?;
    let after: Vec<_> = trace.moments.iter().filter(|m| m.at > outage).collect();
    let had = |i: usize| after[i].readings.appliance(appliance).pu >= SUPPLIED_PU;
    let mut stretches: Vec<(DrillTime, DrillTime)> = Vec::new();
    for i in (0..after.len()).filter(|i| had(*i)) {
        let from = after[i].at;
        let until = after.get(i + 1).map_or(from, |m| m.at);
        match stretches.last_mut() {
            Some(last) if from <= last.1 + DrillTime::from_secs(10) => last.1 = until,
            _ => stretches.push((from, until)),
        }
    }
    let stands = !after.is_empty() && had(after.len() - 1);
    let last = stretches.len().saturating_sub(1);
    let lasts = |i: usize, (from, until): (DrillTime, DrillTime)| {
        until >= from + DrillTime::from_secs(10) || (i == last && stands)
    };
    let mut stretches = stretches.into_iter().enumerate();
    stretches.find(|(i, s)| lasts(*i, *s)).map(|(_, s)| s.0)
}

#[test]
fn power_counts_once_it_has_stood_for_longer_than_a_start_or_stands_still() {
    let (mut seen, mut brief) = (0, 0);
    for (name, drill, _) in all() {
        let trace = drill.trace();
        for appliance in &drill.scenario().goal.appliances {
            let since = supplied_since(trace, *appliance);
            assert_eq!(
                since,
                first_that_lasts(trace, *appliance),
                "{name}: {appliance}"
            );
            let outage = trace.outage_at().unwrap_or(trace.end());
            let mut after = trace.moments.iter().filter(|m| m.at > outage);
            let ever = after.find(|m| m.readings.appliance(*appliance).pu >= SUPPLIED_PU);
            seen += u32::from(since.is_some());
            brief += u32::from(ever.is_some_and(|m| since != Some(m.at)));
        }
    }
    assert!(seen > 100 && brief > 0, "{seen} {brief}");
}

#[test]
fn a_set_that_stops_in_the_second_in_which_it_took_all_has_powered_nothing_in_time() {
    let played = play_text(
        &shipped("shed-for-the-set"),
        1,
        &list("shed-for-the-set-all-on"),
    );
    let late = played
        .verdict
        .findings
        .iter()
        .filter(|f| f.rule == Rule::GoalLate);
    let told: Vec<String> = late.map(|f| say(&explain(&played.drill, f).what)).collect();
    assert!(!told.is_empty());
    let had = told.iter().filter(|t| t.contains("It had power before"));
    assert!(had.count() > 0, "{told:?}");
}
