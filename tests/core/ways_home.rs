//! Ways home from where learners get a drill: each state is one in which guided help has to see to something beyond the plan by positions.

use outage_drill::drill::{Action, Drill};
use outage_drill::file::{Library, Source, read_actions};
use outage_drill::marking::{Verdict, mark};
use outage_drill::proof::{Advice, Guide, lead, too_late};
use outage_drill::scenario::variation::{AS_WRITTEN, named};
use outage_drill::site::PositionId;

/// A drill as written, played up to the end of these lines.
fn stood(name: &str, text: &str) -> Drill {
    stood_in(name, AS_WRITTEN, text)
}

/// The same in a variant of it.
fn stood_in(name: &str, variant: &str, text: &str) -> Drill {
    let (library, faults) = Library::shipped();
    assert!(faults.is_empty(), "{faults:?}");
    let scenario = named(library.scenario(name).unwrap(), variant).unwrap();
    let source = Source { file: name, text };
    let mut drill = Drill::start(&scenario, 1).unwrap();
    for line in read_actions(source, &scenario).unwrap() {
        match line.at {
            Some(at) => drill.act_at(at, &line.action),
            None => drill.act(&line.action),
        };
    }
    drill
}

/// What comes of doing what the guide says from there.
fn led(mut drill: Drill) -> Verdict {
    lead(&mut drill);
    drill.end();
    mark(drill.scenario(), drill.trace())
}

/// What the guide says is to be moved from there, in order.
fn moves(drill: &Drill) -> Vec<Action> {
    let guide = Guide::new(drill);
    let Advice::Steps(steps) = guide.advice() else {
        return Vec::new();
    };
    let moves = steps.iter().map(|s| s.action.clone());
    moves.filter(|a| matches!(a, Action::Set(..))).collect()
}

#[test]
fn a_panel_goes_back_to_the_utility_before_the_engine_cools() {
    let drill = stood("ramp-return", "@4:30 look street");
    let site = drill.site();
    let at = |name: &str, position: u8| {
        let control = site.control_id(name).unwrap();
        let wanted = Action::Set(control, PositionId(position));
        moves(&drill).iter().position(|a| *a == wanted).unwrap()
    };
    assert!(at("essentials-transfer", 0) < at("engine", 0));
    assert!(led(drill).passed);
}

#[test]
fn a_battery_that_was_turned_off_is_turned_on_so_that_it_takes_over() {
    let drill = stood("battery-night", "@2:30 set battery off\nwait 30s");
    let battery = drill.site().control_id("battery").unwrap();
    assert!(moves(&drill).contains(&Action::Set(battery, PositionId(1))));
    let verdict = led(drill);
    assert!(verdict.passed, "{:?}", verdict.findings);
}

#[test]
fn a_set_that_begins_its_weekly_run_meanwhile_is_let_finish_it() {
    let locked_out =
        "set controller off\nset generator-output off\nset starter-battery disconnected\n";
    let drill = stood("open-the-box", &format!("{locked_out}@3:30 look house"));
    let verdict = led(drill);
    assert!(verdict.passed, "{:?}", verdict.findings);
}

#[test]
fn where_time_is_short_an_engine_warms_up_while_handles_and_cords_are_seen_to() {
    let drill = stood("card-writer", "wait 11m4s");
    assert!(!too_late(&drill));
    let verdict = led(drill);
    assert!(verdict.passed, "{:?}", verdict.findings);
}

#[test]
fn where_time_is_short_cords_are_plugged_in_while_the_engine_warms_up_with_its_output_off() {
    let ready = "set generator-place back-lot\nset yellow-cord-lay flat\nset orange-cord-lay flat\nset fridge-plug yellow-cord\n";
    let drill = stood(
        "up-the-stairs",
        &format!("{ready}@19:24 look house\nset window open"),
    );
    assert!(!too_late(&drill));
    let verdict = led(drill);
    assert!(verdict.passed, "{:?}", verdict.findings);
}

#[test]
fn wrong_volts_that_nobody_can_end_in_time_rule_a_pass_out_and_are_ended_all_the_same() {
    let before = "@1:50 set main off\ncall utility\nset breaker-fridge off\nset breaker-sump off\nset main on\n";
    let in_time = stood("no-neutral", &format!("{before}wait 50s"));
    assert!(!too_late(&in_time));
    let verdict = led(in_time);
    assert!(verdict.passed, "{:?}", verdict.findings);
    let late = stood("no-neutral", &format!("{before}wait 1m"));
    assert!(too_late(&late));
    let main = late.site().panel.main;
    assert_eq!(
        moves(&late).first(),
        Some(&Action::Set(main, PositionId(0)))
    );
}

#[test]
fn where_power_comes_too_late_a_drill_is_stopped_safely() {
    let drill = stood("loose-slide", "@25:00 look house");
    assert!(!too_late(&drill));
    let verdict = led(drill);
    assert!(verdict.passed, "{:?}", verdict.findings);
}

#[test]
fn a_set_that_runs_short_of_oil_is_cooled_and_locked_out_in_the_middle_of_an_outage() {
    let drill = stood(
        "lock-the-standby",
        "@0:30 look generator\nset breaker-heat-strips off\n@12:00 look generator",
    );
    let verdict = led(drill);
    let mut findings = verdict.findings.iter();
    assert!(verdict.passed && !findings.any(|f| f.breach));
}

#[test]
fn a_crew_that_is_to_be_away_goes_away_from_wherever_it_stands() {
    for stands in ["testing", "clear"] {
        let drill = stood("dead-or-not", &format!("@0:10 set crew {stands}"));
        let crew = drill.site().line.crew;
        assert!(moves(&drill).contains(&Action::Set(crew, PositionId(0))));
        let verdict = led(drill);
        assert!(verdict.passed, "{:?}", verdict.findings);
    }
}

#[test]
fn where_time_is_short_an_engine_warms_up_while_what_a_battery_feeds_is_seen_to() {
    let drill = stood(
        "forgotten-sun",
        "@2:00 set generator-place yard\nset inlet-cord-lay flat\n@18:02 look house",
    );
    assert!(!too_late(&drill));
    let verdict = led(drill);
    assert!(verdict.passed, "{:?}", verdict.findings);
}

#[test]
fn what_is_unsafe_only_once_the_utility_is_back_is_ended_before_that() {
    let drill = stood(
        "no-slide",
        "@1:00 look street\nset generator-breaker on\nwait 10s",
    );
    let site = drill.site();
    let ends = [
        site.panel.main,
        site.control_id("generator-breaker").unwrap(),
    ];
    let ends = ends.map(|handle| Action::Set(handle, PositionId(0)));
    assert!(moves(&drill).first().is_some_and(|a| ends.contains(a)));
    let verdict = led(drill);
    assert!(verdict.passed, "{:?}", verdict.findings);
}

#[test]
fn where_only_cords_bring_power_all_are_plugged_in_before_the_set_gives_any() {
    let drill = stood(
        "no-slide",
        "@1:00 look street\nset generator-place yard\nset extension-b-generator-end extension-a\n@18:30 look house",
    );
    let output = drill.site().generator.output;
    let way = moves(&drill);
    let on = way
        .iter()
        .filter(|a| **a == Action::Set(output, PositionId(1)));
    assert_eq!(on.count(), 1);
    let verdict = led(drill);
    assert!(verdict.passed, "{:?}", verdict.findings);
}

#[test]
fn it_is_too_late_once_what_the_end_asks_takes_longer_than_the_drill_lasts() {
    let before = "@0:30 look generator\nset breaker-heat-strips off\n@58:00 look street\n";
    let in_time = stood(
        "lock-the-standby",
        &format!("{before}@59:15 look generator"),
    );
    assert!(!too_late(&in_time));
    let late = stood(
        "lock-the-standby",
        &format!("{before}@59:30 look generator"),
    );
    assert!(too_late(&late));
    assert!(!led(late).passed);
}

#[test]
fn it_is_too_late_where_an_engine_starts_by_itself_before_anybody_can_see_to_the_alarm() {
    let in_time = stood("standby-side-yard", "wait 3m30s");
    assert!(!too_late(&in_time));
    let verdict = led(in_time);
    assert!(verdict.passed, "{:?}", verdict.findings);
    let late = stood("standby-side-yard", "wait 3m59s");
    assert!(too_late(&late));
    assert!(!led(late).passed);
}

#[test]
fn customers_are_asked_again_where_a_line_was_opened_after_they_were() {
    let text = include_str!("../drills/ground-order-safe.actions");
    let drill = stood("ground-order", &format!("{text}set disconnect open\n"));
    let verdict = led(drill);
    assert!(verdict.passed, "{:?}", verdict.findings);
}

#[test]
fn where_all_at_once_is_too_much_for_a_set_what_has_had_power_rests() {
    let before = "@1:00 look street\nset generator-place yard\nset inlet-cord-lay flat\n";
    let cord = "set inlet-cord-house-end inlet\nset inlet-cord-generator-end generator\n";
    let early = "set engine running\nset generator-output on\nset handle-fridge generator\n";
    let found = "wait 10s\nlook house\nset handle-microwave generator\nwait 10s\n";
    let text = format!("{before}{cord}{early}{found}");
    let drill = stood_in("six-handles", "mislabeled+cold-night", &text);
    let verdict = led(drill);
    assert!(verdict.passed, "{:?}", verdict.findings);
}
