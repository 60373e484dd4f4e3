//! Simulated learners: the two judges agree on what they do, rules broken on purpose are caught, and a seed gives the same runs again.

use std::thread;

use outage_drill::evidence::learners::broken::broken_rules;
use outage_drill::evidence::learners::led::{AFTER_PCT, End, Led, led};
use outage_drill::evidence::learners::{
    Kind, Outcome, Stock, agreement, counts, mark_again, not_judged, passed_with_a_breach,
};

use crate::terminal::drill;

/// Runs of this many come by each kept list that fails at least once.
const RUNS: usize = 1200;

/// Runs of these numbers, on two threads.
fn played(seed: u64, numbers: std::ops::Range<usize>) -> Vec<Outcome> {
    let stock = Stock::of(seed).unwrap();
    let half = numbers.start + numbers.len() / 2;
    let play = |numbers: std::ops::Range<usize>| -> Vec<Outcome> {
        numbers.filter_map(|number| stock.play(number)).collect()
    };
    thread::scope(|scope| {
        let other = scope.spawn(|| play(half..numbers.end));
        let mut all = play(numbers.start..half);
        all.extend(other.join().unwrap());
        all
    })
}

#[test]
fn the_two_judges_agree_on_every_learner_and_each_rule_broken_on_purpose_is_caught() {
    let outcomes = played(1, 0..RUNS);
    assert_eq!(outcomes.len(), RUNS);
    let (rules, disagreements) = agreement(&outcomes);
    assert!(disagreements.is_empty(), "{disagreements:#?}");
    assert_eq!(passed_with_a_breach(&outcomes), 0);
    for rule in rules {
        assert!(rule.both > 0, "{rule:?} is met");
        assert!(rule.unsure <= RUNS / 20, "{rule:?}");
    }
    for broken in broken_rules(&outcomes) {
        assert!(broken.caught_in > 0, "{broken:?}");
    }
    // The heat of a cord hangs on hours of current and on how it lies: `cords` holds it to small steps, the second judge has no arithmetic for it.
    let unknown: Vec<&str> = not_judged(&outcomes).into_keys().collect();
    assert_eq!(unknown, ["cord-fire"], "critical and not judged");
    let counts = counts(&outcomes);
    let failed = |kind: Kind| -> usize {
        let own = counts.iter().filter(|((of, _), _)| *of == kind);
        own.map(|(_, count)| count.failed).sum()
    };
    assert_eq!(failed(Kind::Expert), 0, "{counts:?}");
    for kind in [Kind::Random, Kind::CarefulButWrong, Kind::Forgetful] {
        assert!(failed(kind) > RUNS / 16, "{kind:?}: {counts:?}");
    }
}

#[test]
fn guided_help_leads_to_a_pass_from_every_safe_state_within_a_run_unless_it_is_too_late() {
    let numbers: Vec<usize> = (0..600).step_by(7).collect();
    let stock = Stock::of(1).unwrap();
    let led_from = |numbers: &[usize]| -> Vec<Led> {
        let outcomes = numbers.iter().filter_map(|number| stock.play(*number));
        let states = outcomes.flat_map(|o| AFTER_PCT.map(|after_pct| led(&o, after_pct)));
        states.flatten().collect()
    };
    let (some, others) = numbers.split_at(numbers.len() / 2);
    let all = thread::scope(|scope| {
        let others = scope.spawn(|| led_from(others));
        [led_from(some), others.join().unwrap()].concat()
    });
    for led in &all {
        assert!(!matches!(led.end, End::Failed(_)), "{led:?}");
        assert_eq!(led.broken, [""; 0], "{led:?}");
    }
    let passed = all.iter().filter(|l| l.end == End::Passed).count();
    assert!(
        passed >= 2 * numbers.len() && passed * 20 >= all.len() * 19,
        "passes from {passed} of {} states",
        all.len()
    );
}

#[test]
fn too_few_runs_to_catch_each_rule_broken_on_purpose_are_no_pass() {
    let answered = drill(&["evidence", "learners", "--runs", "4"]);
    assert_eq!(answered.status, Some(1), "{}", answered.out);
    let missed = "shock, never found: no run gives it away.";
    assert!(answered.err.contains(missed), "{}", answered.err);
}

#[test]
fn a_seed_gives_the_same_runs_again_and_another_gives_others() {
    let one = played(7, 40..60);
    assert_eq!(one, played(7, 40..60));
    assert_ne!(one, played(8, 40..60));
    assert!(one.iter().all(mark_again), "marked again the same");
}

#[test]
fn a_marking_that_differs_from_the_second_judge_is_named_with_drill_seed_and_rule() {
    let mut outcomes = played(1, 0..4);
    outcomes[3].marked.insert("shock");
    let (_, disagreements) = agreement(&outcomes);
    let [only] = disagreements.as_slice() else {
        panic!("{disagreements:?}");
    };
    let outcome = &outcomes[3];
    assert_eq!((only.rule, only.marked), ("shock", true));
    assert_eq!(only.seed, outcome.run.seed);
    assert!(only.drill.starts_with(&outcome.scenario.name), "{only:?}");
    assert!(!mark_again(outcome), "and it is not marked so again");
}
