//! Generators by kind, and the controller of an automatic transfer switch, in whole drills: what passes, what is found, and when things happen.
//!
//! The lock-out is judged a second time here, from the names and positions of controls alone.

use std::collections::BTreeSet;

use outage_drill::apparatus::auto_transfer::{Contacts, Phase};
use outage_drill::drill::{Action, Drill, Event, MachineEvent, Moment, What};
use outage_drill::marking::Rule::{
    self, CaughtByEngine, HandTransferLive, LiveLugs, NotLockedOut, NotRestored, RanDry, ShutOff,
};
use outage_drill::marking::mark;
use outage_drill::scenario::Scenario;
use outage_drill::site::{Operator, PositionId};
use outage_drill::units::DrillTime;

use crate::playing::{Dice, Played, list, play_text, shipped};

const SEEDS: [u64; 3] = [1, 7, 2_026];
const DRILLS: &[(&str, &str)] = &[
    ("inverter-", "small-and-quiet"),
    ("standby-service-", "hands-off"),
    ("standby-outage-", "by-itself"),
];

fn play(name: &str, seed: u64) -> Played {
    let (_, drill) = DRILLS
        .iter()
        .find(|(first, _)| name.starts_with(first))
        .unwrap();
    play_text(&shipped(drill), seed, &list(name))
}

/// Plays a list and holds it to the rules that have to be found, all of them breaches, and no others.
fn finds(name: &str, passes: bool, rules: &[Rule]) {
    for seed in SEEDS {
        let played = play(name, seed);
        let wanted: BTreeSet<(Rule, bool)> = rules.iter().map(|r| (*r, true)).collect();
        assert_eq!(played.found(), wanted, "{name}, seed {seed}");
        assert_eq!(played.verdict.passed, passes, "{name}, seed {seed}");
    }
}

/// When an event comes first.
fn first(played: &Played, is: impl Fn(&Event) -> bool) -> Option<DrillTime> {
    let mut events = played.drill.trace().events();
    events.find(|(_, e)| is(e)).map(|(m, _)| m.at)
}

#[test]
fn an_inverter_carries_what_is_put_on_it_one_by_one() {
    finds("inverter-one-at-a-time", true, &[]);
}

#[test]
fn one_leg_over_its_current_shuts_the_output_off_while_the_engine_runs_on() {
    let played = play("inverter-too-much", 1);
    let events = played.drill.trace().events();
    let shut_off = events.filter_map(|(m, e)| {
        if let Event::Machine(MachineEvent::ShutOff { most_a, .. }) = e {
            most_a.map(|amps| (m, amps))
        } else {
            None
        }
    });
    let (moment, most_a) = shut_off.min_by_key(|(m, _)| m.at).unwrap();
    // Half of 7 000 W at 120 V.
    assert!((most_a - 29.17).abs() < 0.01, "{most_a} A");
    assert!(moment.conditions.engine.running_since.is_some());
    let last = played.drill.trace().moments.last().unwrap();
    assert!(last.readings.generator.volts < 1.0 && last.readings.generator.hz < 1.0);
    let started = first(&played, |e| matches!(e, Event::Stalled { .. })).unwrap();
    let held = moment.at.since(started).seconds();
    assert!(
        (0.29..0.32).contains(&held),
        "held at its limit for {held} s"
    );
}

#[test]
fn after_the_reset_an_inverter_goes_on_and_with_a_second_set_it_never_stops() {
    finds("inverter-reset", true, &[ShutOff]);
    finds("inverter-pair", true, &[]);
}

#[test]
fn a_start_that_misses_is_told_and_the_next_pull_catches() {
    let missed: Vec<bool> = (0..12)
        .map(|seed| {
            let played = play("inverter-one-at-a-time", seed);
            let missed = first(&played, |e| *e == Event::Machine(MachineEvent::NoStart)).is_some();
            let runs = first(&played, |e| *e == Event::EngineReady).is_some();
            assert!(runs, "seed {seed}");
            assert_eq!(
                played.refused().contains(&"refused-already".to_owned()),
                !missed
            );
            missed
        })
        .collect();
    assert!(
        missed.contains(&true) && missed.contains(&false),
        "{missed:?}"
    );
}

#[test]
fn a_set_that_is_locked_out_in_three_steps_can_be_filled_and_given_back() {
    finds("standby-service-locked-out", true, &[]);
}

#[test]
fn one_switch_is_no_lock_out() {
    finds("standby-service-one-step", false, &[NotLockedOut]);
}

#[test]
fn a_set_that_nobody_locked_out_starts_under_the_hands() {
    finds(
        "standby-service-hands-in",
        false,
        &[NotLockedOut, CaughtByEngine, NotRestored],
    );
}

#[test]
fn a_standby_set_with_its_oil_looked_at_works_by_itself() {
    finds("standby-outage-watched", true, &[]);
    finds("standby-outage-ran-dry", true, &[RanDry]);
}

#[test]
fn the_controller_keeps_its_times_in_a_drill() {
    let played = play("standby-outage-watched", 1);
    let at = |phase: Phase| {
        first(&played, |e| {
            *e == Event::Machine(MachineEvent::Controller(phase))
        })
    };
    let outage = first(&played, |e| *e == Event::Outage).unwrap();
    let seconds = |later: DrillTime| later.since(outage).millis();
    let lost = played.drill.trace().events().find(|(m, e)| {
        m.at >= outage && **e == Event::Machine(MachineEvent::Controller(Phase::LossSeen))
    });
    assert_eq!(seconds(lost.unwrap().0.at), 0, "the loss is seen at once");
    // 10 s of sensing, 2 s of cranking, 10 s of warm-up, 0.1 s of gap; one more try takes 25 s.
    let missed = first(&played, |e| {
        *e == Event::Machine(MachineEvent::Controller(Phase::Cranking(2)))
    });
    let more = if missed.is_some_and(|at| at > outage) {
        25_000
    } else {
        0
    };
    assert_eq!(seconds(at(Phase::OnGenerator).unwrap()), 22_100 + more);
    let returned = first(&played, |e| *e == Event::UtilityReturned).unwrap();
    assert_eq!(at(Phase::BackSeen).unwrap(), returned);
    let cooling = played.drill.trace().events().find(|(m, e)| {
        m.at > returned && **e == Event::Machine(MachineEvent::Controller(Phase::CoolingDown))
    });
    let back_ms = cooling.unwrap().0.at.since(returned).millis();
    assert_eq!(back_ms, 15_100, "15 s of sensing and the gap");
}

#[test]
fn the_exercise_runs_the_engine_and_leaves_the_house_where_it_is() {
    let played = play("standby-outage-ran-dry", 1);
    let begun = first(&played, |e| {
        *e == Event::Machine(MachineEvent::Controller(Phase::Exercising))
    })
    .unwrap();
    assert!(begun >= DrillTime::from_secs(240), "{begun}");
    let during = |m: &&Moment| m.at >= begun && m.at < DrillTime::from_secs(420);
    for moment in played.drill.trace().moments.iter().filter(during) {
        assert_eq!(moment.conditions.controller.contacts, Contacts::Utility);
        assert!(moment.readings.point("bus").fed.utility, "{}", moment.at);
        assert!(moment.readings.generator.watts.abs() < 1.0);
    }
}

#[test]
fn a_standby_set_on_gas_has_less_than_its_plate_and_no_tank() {
    let scenario = shipped("hands-off");
    let spec = scenario.site.generator.spec;
    // 18 kW for propane at sea level; 0.9 of it on natural gas, less 3 % in 1000 ft at 900 ft.
    assert!((spec.rated_w - 18_000.0 * 0.9 * (1.0 - 0.027)).abs() < 1e-6);
    assert!(spec.tank_gal.is_infinite());
    let played = play_text(&scenario, 1, "refuel\n");
    assert_eq!(played.refused(), ["refused-no-tank"]);
}

/// The lock-out from the names of controls: open, and not all three steps done.
fn exposed(scenario: &Scenario, moment: &Moment) -> bool {
    let site = &scenario.site;
    let is = |control: &str, position: &str| {
        let id = site.control_id(control).unwrap();
        site.position_name(&moment.positions, id) == position
    };
    let three = is("controller", "off")
        && !is("generator-output", "on")
        && is("starter-battery", "disconnected");
    is("generator-cover", "open") && !three
}

#[test]
fn whatever_is_done_the_contacts_pass_through_open_and_every_exposed_hand_is_found() {
    const RUNS: u32 = 60;
    let scenario = shipped("hands-off");
    let moves: Vec<Action> = (0_u16..)
        .map(outage_drill::site::ControlId)
        .zip(&scenario.site.controls)
        .filter(|(_, c)| c.operator == Operator::Learner && c.place == "generator")
        .flat_map(|(id, c)| {
            let n = u8::try_from(c.positions.len()).unwrap();
            (0..n).map(move |p| Action::Set(id, PositionId(p)))
        })
        .collect();
    let mut dice = Dice::new(44);
    let (mut exposed_runs, mut moved) = (0, 0);
    for run in 0..RUNS {
        let mut drill = Drill::start(&scenario, u64::from(run)).unwrap();
        for _ in 0..40 {
            drill.act(dice.pick(&moves));
            drill.advance(DrillTime::from_millis(dice.below(60_000)));
        }
        drill.end();
        let moments = &drill.trace().moments;
        for pair in moments.windows(2) {
            let sides = [&pair[0], &pair[1]].map(|m| m.conditions.controller.contacts);
            let jumped = sides[0] != sides[1] && !sides.contains(&Contacts::Open);
            assert!(!jumped, "run {run}: {sides:?} at {}", pair[1].at);
            moved += u32::from(sides[0] != sides[1]);
            assert!(!pair[1].readings.generator.tied, "run {run}");
        }
        let own = moments.iter().any(|m| exposed(&scenario, m));
        exposed_runs += u32::from(own);
        let verdict = mark(&scenario, drill.trace());
        let marked = verdict.findings.iter().any(|f| f.rule == NotLockedOut);
        assert_eq!(marked, own, "run {run}");
        assert!(
            !(own && verdict.passed),
            "run {run} passes with hands in it"
        );
    }
    assert!(
        exposed_runs >= 20 && moved >= 10,
        "{exposed_runs} runs, {moved} moves"
    );
}

#[test]
fn whatever_is_done_behind_the_cover_live_lugs_are_found_and_no_such_run_passes() {
    const RUNS: u32 = 60;
    let scenario = shipped("open-the-box");
    let site = &scenario.site;
    let cover = site.control_id("house-transfer-cover").unwrap();
    let handle = site.control_id("house-transfer").unwrap();
    let moves: Vec<Action> = (0_u16..)
        .map(outage_drill::site::ControlId)
        .zip(&site.controls)
        .filter(|(_, c)| c.operator != Operator::World)
        .filter(|(_, c)| ["generator", "transfer"].contains(&c.place.as_str()))
        .flat_map(|(id, c)| {
            let n = u8::try_from(c.positions.len()).unwrap();
            (0..n).map(move |p| Action::Set(id, PositionId(p)))
        })
        .collect();
    let mut dice = Dice::new(45);
    let (mut open_runs, mut moved_runs) = (0, 0);
    for run in 0..RUNS {
        let mut drill = Drill::start(&scenario, u64::from(run)).unwrap();
        for _ in 0..30 {
            drill.act(dice.pick(&moves));
            drill.advance(DrillTime::from_millis(dice.below(40_000)));
        }
        drill.end();
        // The utility never fails here, so its lugs are live at every moment.
        let moments = &drill.trace().moments;
        let is_open = |m: &Moment| m.positions.get(cover) == PositionId(1);
        let by_hand = |m: &Moment| matches!(m.what, What::Did(Action::Set(c, _)) if c == handle);
        let open = moments.iter().any(is_open);
        let moved = moments
            .iter()
            .filter(|m| by_hand(m))
            .inspect(|m| assert!(is_open(m)));
        let moved = moved.count();
        let verdict = mark(&scenario, drill.trace());
        let found = |rule| verdict.findings.iter().filter(|f| f.rule == rule).count();
        assert_eq!(found(LiveLugs) > 0, open, "run {run}");
        assert_eq!(found(HandTransferLive), moved, "run {run}");
        assert!(
            !(open && verdict.passed),
            "run {run} passes with hands beside live lugs"
        );
        open_runs += u32::from(open);
        moved_runs += u32::from(moved > 0);
    }
    assert!(
        open_runs >= 20 && moved_runs >= 10,
        "{open_runs} runs, {moved_runs} moved"
    );
}
