//! Lists of actions on drills with further sources, and with an interlock that can't be trusted.

use std::collections::BTreeSet;

use outage_drill::drill::Event;
use outage_drill::marking::Rule::{self, Collision, LineFed, NoTransferEquipment};
use outage_drill::words::Arg;

use crate::playing::{Played, list, play_text, shipped};

const SEEDS: [u64; 3] = [1, 7, 2_026];

const DRILLS: &[(&str, &str)] = &[("loose-", "loose-slide"), ("sun-", "forgotten-sun")];

fn play(name: &str, seed: u64) -> Played {
    let drill = DRILLS.iter().find(|(first, _)| name.starts_with(first));
    play_text(
        &shipped(drill.expect("a drill of this file").1),
        seed,
        &list(name),
    )
}

/// Plays a list and holds it to the rules that have to be found as breaches, and no others.
fn finds(name: &str, passes: bool, rules: &[Rule]) {
    for seed in SEEDS {
        let played = play(name, seed);
        let found: BTreeSet<Rule> = played.found().into_iter().map(|(r, _)| r).collect();
        assert_eq!(
            found,
            rules.iter().copied().collect(),
            "{name}, seed {seed}"
        );
        assert_eq!(played.verdict.passed, passes, "{name}, seed {seed}");
    }
}

#[test]
fn a_slide_that_does_not_reach_is_left_alone_by_running_cords_or_by_calling_an_electrician() {
    finds("loose-cords", true, &[]);
    finds("loose-called", true, &[]);
}

#[test]
fn the_electrician_alone_is_no_safe_stop_where_the_drill_does_not_say_so() {
    let played = play_text(&shipped("there-and-back"), 1, &list("loose-called"));
    assert!(!played.verdict.passed);
}

#[test]
fn relying_on_a_slide_that_does_not_reach_is_found_with_its_reason_though_nothing_happened() {
    let played = play("loose-relied", 1);
    assert!(!played.verdict.passed);
    let finding = played
        .verdict
        .findings
        .iter()
        .find(|f| f.rule == NoTransferEquipment)
        .expect("it is found");
    assert!(finding.breach);
    let reason = finding
        .evidence
        .iter()
        .find(|(name, _)| *name == "interlock");
    assert!(matches!(reason, Some((_, Arg::Count(1)))), "{reason:?}");
    assert!(!played.found().iter().any(|(r, _)| *r == LineFed));
}

#[test]
fn a_slide_that_does_not_reach_lets_the_main_on_and_two_sources_meet() {
    for seed in SEEDS {
        let played = play("loose-main-on", seed);
        let found: BTreeSet<Rule> = played.found().into_iter().map(|(r, _)| r).collect();
        for rule in [NoTransferEquipment, Collision, LineFed] {
            assert!(
                found.contains(&rule),
                "seed {seed}: {rule:?} is missing from {found:?}"
            );
        }
        let met = played.drill.trace().events().find_map(|(_, e)| {
            if let Event::Collision {
                slip_hz, torque, ..
            } = e
            {
                Some((*slip_hz, *torque))
            } else {
                None
            }
        });
        let (slip_hz, torque) = met.expect("they meet");
        assert!((-0.5..2.6).contains(&slip_hz), "seed {seed}: {slip_hz} Hz");
        // (3 + 2 root 2) over the set's 0.15 per unit, less what lies between.
        assert!(
            (28.0..38.9).contains(&torque.high),
            "seed {seed}: {torque:?}"
        );
        assert!(torque.low <= torque.high);
    }
}
