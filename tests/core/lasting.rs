//! What stands when a run ends counts as it stands, however briefly.

use outage_drill::drill::{Event, Phase, Trace};
use outage_drill::marking::{Rule, mark};
use outage_drill::units::DrillTime;

use crate::playing::{list, play_text, shipped};

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
