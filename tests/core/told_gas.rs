//! The way of gas that is told is the one that the drill's own air took, with the numbers of its moment; and so is how fuel caught fire.

use std::collections::BTreeMap;

use outage_drill::drill::{Drill, Event, IndoorsEvent, Moment, OVERCOME_PCT};
use outage_drill::explain::{Explanation, Stage, explain};
use outage_drill::file::Library;
use outage_drill::hazard::blood::{Activity, cohb_after};
use outage_drill::hazard::monoxide::{CLEAN_PPM, MG_PER_M3_PER_PPM};
use outage_drill::marking::{Finding, Rule};
use outage_drill::units::DrillTime;
use outage_drill::words::{Arg, REFERENCE, Unit, Words};

use crate::explained::found;
use crate::playing::{Played, list, play_text, shipped};
use crate::protection_drills::changed;

/// The ids of the stages.
fn ids(told: &Explanation) -> Vec<&str> {
    told.path.iter().map(|s| s.text.id.as_str()).collect()
}

/// A quantity of a stage.
fn number(stage: &Stage, name: &str) -> f64 {
    let arg = stage.text.args.iter().find(|(own, _)| *own == name);
    let Some((_, Arg::Quantity(number, _))) = arg else {
        panic!("{name} in {stage:?}");
    };
    *number
}

/// A quantity of the first stage of this id.
fn of(told: &Explanation, id: &str, name: &str) -> f64 {
    let stage = told.path.iter().find(|s| s.text.id == id);
    number(stage.unwrap_or_else(|| panic!("{id} in {told:?}")), name)
}

/// The moment that a way of gas is headed with.
fn shown<'a>(drill: &'a Drill, told: &Explanation) -> &'a Moment {
    let Some((_, Arg::Clock(at))) = told.heading.args.first() else {
        panic!("{:?}", told.heading);
    };
    let moments = &drill.trace().moments;
    moments.iter().rfind(|m| m.at == *at).unwrap()
}

/// The first finding of a rule in a list, with its drill and as it is told.
fn told(drill: &str, actions: &str, rule: Rule) -> (Drill, Finding, Explanation) {
    let (drill, finding) = found(drill, actions, rule);
    let told = explain(&drill, &finding);
    (drill, finding, told)
}

fn close(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-9 * b.abs()
}

/// Each step of a way with its order, what comes last being those who breathe it.
const OUTDOORS: [&str; 6] = [
    "stage-exhaust",
    "stage-drawn-in",
    "stage-house-air",
    "stage-alarm-sounded",
    "stage-blood",
    "stage-blood",
];

#[test]
fn the_way_from_an_engine_under_the_window_leads_to_the_blood_of_both_who_are_in_with_the_run_s_numbers()
 {
    for actions in ["window-cord-open", "window-cord-near"] {
        for rule in [Rule::Gas, Rule::StayedIn, Rule::TooNear] {
            let (drill, finding, told) = told("window-cord", actions, rule);
            assert_eq!(ids(&told), OUTDOORS, "{actions} {rule:?}");
            let moment = shown(&drill, &told);
            assert!(moment.at >= finding.at && moment.at <= finding.at + finding.lasted);
            let spec = drill.site().generator.spec_at(&moment.positions);
            let watts = moment.readings.generator.watts;
            let burns = spec.fuel_gal_per_h(watts) / spec.fuel_gal_per_h(spec.rated_w / 2.0);
            let gives = of(&told, "stage-exhaust", "fresh");
            assert!(close(of(&told, "stage-exhaust", "watts"), watts));
            assert!(close(gives, 500.0 * burns), "{gives} g/h");
            let place = drill.site().generator_place(&moment.positions).unwrap();
            assert!(close(of(&told, "stage-drawn-in", "feet"), place.opening_ft));
            let enters = of(&told, "stage-drawn-in", "enters");
            let share = of(&told, "stage-drawn-in", "share");
            assert!(close(enters, gives * share / 100.0), "{enters} g/h");
            let ppm = of(&told, "stage-house-air", "ppm");
            assert!(close(ppm, moment.conditions.ppm()));
            let person = moment.conditions.indoors.people[0];
            for (stage, cohb, at) in [
                (&told.path[4], moment.conditions.cohb_pct, "household"),
                (&told.path[5], person.cohb_pct, "child"),
            ] {
                assert!(close(number(stage, "cohb"), cohb));
                assert_eq!(stage.at, at);
                assert!(close(number(stage, "start"), 0.8));
                assert!(number(stage, "cohb") > 0.8);
            }
        }
    }
}

#[test]
fn gas_next_door_is_told_from_the_engine_to_the_blood_of_whoever_is_in_there() {
    let (drill, finding, told) = told(
        "where-to-put-it",
        "where-to-put-it-back-step",
        Rule::GasNextDoor,
    );
    let way = [
        "stage-exhaust",
        "stage-drawn-in-next-door",
        "stage-air-next-door",
        "stage-alarm-sounded",
        "stage-blood",
    ];
    assert_eq!(ids(&told)[..5], way);
    let moments = &drill.trace().moments;
    let moment = shown(&drill, &told);
    assert_eq!(moment.at, finding.at);
    let home = drill.site().indoors.next_door.unwrap();
    let next_door = moment.conditions.indoors.next_door;
    let ppm = of(&told, "stage-air-next-door", "ppm");
    assert!(close(ppm, next_door.ppm));
    let place = drill.site().generator_place(&moment.positions).unwrap();
    let feet = of(&told, "stage-drawn-in-next-door", "feet");
    assert!(close(feet, place.next_door.unwrap().0));
    // What is drawn in is what the air there gains and loses.
    let before = moments.iter().rfind(|m| m.at < moment.at).unwrap();
    let then = before.conditions.indoors.next_door.ppm;
    let hours = moment.at.since(before.at).seconds() / 3600.0;
    let grams = |ppm: f64| home.air_m3 * ppm * MG_PER_M3_PER_PPM / 1000.0;
    let moved = grams(ppm - then) / hours + home.changes_per_h * grams(f64::midpoint(ppm, then));
    let enters = of(&told, "stage-drawn-in-next-door", "enters");
    assert!(
        (moved - enters).abs() < 0.01 * enters,
        "{moved} of {enters} g/h"
    );
    let share = of(&told, "stage-drawn-in-next-door", "share");
    let gives = of(&told, "stage-exhaust", "fresh");
    assert!(
        close(enters, gives * share / 100.0),
        "{enters} of {gives} g/h"
    );
    // The blood lies between that of clean air and that of the last air from the start.
    let cohb = of(&told, "stage-blood", "cohb");
    let start = of(&told, "stage-blood", "start");
    let all_along = cohb_after(start, ppm, moment.at.seconds(), Activity::Sedentary);
    assert!(
        start < cohb && cohb < all_along,
        "{start} {cohb} {all_along}"
    );
}

#[test]
fn what_a_sealed_gap_lets_in_is_what_the_air_of_the_house_gains_and_loses() {
    let (drill, finding, told) = told("window-cord", "window-cord-near", Rule::StayedIn);
    let moments = &drill.trace().moments;
    let moment = &moments[finding.moment];
    let before = moments.iter().rfind(|m| m.at < moment.at).unwrap();
    let hours = moment.at.since(before.at).seconds() / 3600.0;
    let grams = |m3: f64, ppm: f64| m3 * ppm * MG_PER_M3_PER_PPM / 1000.0;
    let site = drill.site();
    let (ppm, then) = (moment.conditions.ppm(), before.conditions.ppm());
    let gained = grams(site.air_m3, ppm - then) / hours;
    let middle = f64::midpoint(ppm, then);
    let to_garage = site.garage.unwrap().to_house_m3_per_h.0;
    let lost = grams(site.air_m3 * site.air_changes_per_h.0, middle)
        + grams(to_garage, middle - moment.conditions.air.garage.co_ppm);
    let enters = of(&told, "stage-drawn-in", "enters");
    assert!(
        (gained + lost - enters).abs() < 0.01 * enters,
        "{gained} and {lost} of {enters} g/h"
    );
}

#[test]
fn in_a_garage_what_is_given_off_leaves_passes_on_or_stays() {
    let (drill, finding, told) = told("garage-door-open", "garage-door-open-shut", Rule::Gas);
    assert_eq!(
        ids(&told)[..5],
        [
            "stage-exhaust",
            "stage-exhaust-starved",
            "stage-garage-air",
            "stage-garage-passes",
            "stage-house-air"
        ]
    );
    let moments = &drill.trace().moments;
    let moment = &moments[finding.moment];
    let before = moments.iter().rfind(|m| m.at < moment.at).unwrap();
    let hours = moment.at.since(before.at).seconds() / 3600.0;
    let garage = moment.conditions.air.garage;
    let gained = garage.co_ppm - before.conditions.air.garage.co_ppm;
    let air_m3 = drill.site().garage.unwrap().air_m3;
    let stays = air_m3 * gained * MG_PER_M3_PER_PPM / 1000.0 / hours;
    let gives = of(&told, "stage-exhaust-starved", "gives");
    let leaves = of(&told, "stage-garage-air", "leaves");
    let enters = of(&told, "stage-garage-passes", "enters");
    let sum = stays + leaves + enters;
    assert!((sum - gives).abs() < 0.01 * gives, "{sum} of {gives} g/h");
    assert!(
        gives > of(&told, "stage-exhaust", "fresh"),
        "short of oxygen"
    );
    assert!(close(
        of(&told, "stage-exhaust-starved", "oxygen"),
        garage.o2 * 100.0
    ));
    assert!(close(of(&told, "stage-garage-air", "ppm"), garage.co_ppm));
}

#[test]
fn an_engine_in_a_house_without_a_garage_gives_all_of_it_to_the_house() {
    let scenario = changed(&[(", garage_cubic_meters: 90.0", "")], &[]);
    let played = play_text(&scenario, 1, &list("slide-garage"));
    let told = first(&played, Rule::Indoors);
    let enters = of(&told, "stage-all-in-house", "enters");
    assert!(enters > of(&told, "stage-exhaust", "fresh"));
    assert!(close(enters, of(&told, "stage-exhaust-starved", "gives")));
}

/// The first finding of a rule in a play, as it is told.
fn first(played: &Played, rule: Rule) -> Explanation {
    let mut findings = played.verdict.findings.iter();
    explain(&played.drill, findings.find(|f| f.rule == rule).unwrap())
}

#[test]
fn a_neighbor_s_engine_leads_to_the_one_who_was_left_in_and_not_to_those_outside() {
    let (drill, finding, told) = told("headache", "headache-child-left", Rule::StayedIn);
    assert_eq!(
        ids(&told),
        [
            "stage-exhaust-neighbor",
            "stage-house-air",
            "stage-alarm-cannot",
            "stage-blood"
        ]
    );
    let moment = &drill.trace().moments[finding.moment];
    let last = told.path.last().unwrap();
    let child = moment.conditions.indoors.people[0].cohb_pct;
    assert_eq!(last.at, "child");
    assert!(close(number(last, "cohb"), child));
    // Those who went out have more of it in their blood, and are not the ones who are told of.
    assert!(moment.conditions.cohb_pct > child);
    let most = finding.evidence.iter().find(|(name, _)| *name == "cohb");
    assert_eq!(most.unwrap().1, Arg::Quantity(child, Unit::Percent));
    let said = Words::new(REFERENCE).say(&explain(&drill, &finding).instead);
    assert!(said.contains("Nobody goes back, not for the engine either"));
    assert!(said.contains("from outside"), "{said}");
}

#[test]
fn what_is_advised_after_a_neighbor_s_gas_is_about_the_neighbor_s_engine() {
    let say = |drill, actions| {
        let (_, _, told) = told(drill, actions, Rule::Gas);
        Words::new(REFERENCE).say(&told.instead)
    };
    let theirs = say("headache", "headache-stayed");
    assert!(theirs.contains("your neighbors"), "{theirs}");
    let own = say("window-cord", "window-cord-near");
    assert!(!own.contains("neighbors"), "{own}");
}

#[test]
fn whoever_was_left_in_is_told_helpless_when_the_run_had_it_and_nobody_else_is() {
    let (drill, _, told) = told("window-cord", "window-cord-in-the-garage", Rule::StayedIn);
    let helpless = told.path.iter().filter(|s| s.text.id == "stage-helpless");
    let at = |s: &Stage| match s.text.args.first() {
        Some((_, Arg::Clock(at))) => (s.at.clone(), *at),
        _ => panic!("{s:?}"),
    };
    let said: Vec<(String, DrillTime)> = helpless.map(at).collect();
    let who = |e: &Event| {
        if matches!(e, Event::Indoors(IndoorsEvent::PersonOvercome { .. })) {
            Some("child".to_owned())
        } else {
            matches!(e, Event::Overcome { .. }).then(|| "household".to_owned())
        }
    };
    let events = drill.trace().events();
    let happened = events.filter_map(|(m, e)| who(e).map(|who| (who, m.at)));
    assert_eq!(said, happened.collect::<Vec<_>>());
    assert_eq!(said.len(), 2);
    let (_, _, mild) = self::told("headache", "headache-stayed", Rule::StayedIn);
    assert!(ids(&mild).iter().all(|id| !id.contains("helpless")));
}

#[test]
fn how_soon_somebody_would_be_helpless_is_what_the_blood_does_in_that_air() {
    let (drill, finding, told) = told("garage-door-open", "garage-door-open-shut", Rule::StayedIn);
    let ahead = told
        .path
        .iter()
        .find(|s| s.text.id == "stage-helpless-ahead");
    let shown = ahead.map(|s| s.text.args.iter().find(|(name, _)| *name == "time"));
    let conditions = &drill.trace().moments[finding.moment].conditions;
    let after = |minutes: f64| {
        let (cohb, ppm) = (conditions.cohb_pct, conditions.ppm());
        cohb_after(cohb, ppm, minutes * 60.0, Activity::Sedentary)
    };
    let minutes = (1..=480).map(f64::from).find(|m| after(*m) >= OVERCOME_PCT);
    // Told to the nearest minute.
    let near = [-1.0, 0.0].map(|off| {
        let secs = (minutes.unwrap() + off) * 60.0;
        Arg::lasting(DrillTime::from_hours(secs / 3600.0 + 1e-9).unwrap())
    });
    let told = &shown.unwrap().unwrap().1;
    assert!(near.contains(told), "{told:?} beside {near:?}");
}

#[test]
fn the_alarm_is_told_with_the_published_times_of_the_level_that_was_reached() {
    let (_, _, told) = told("window-cord", "window-cord-in-the-garage", Rule::StayedIn);
    let said = told.path.iter().find(|s| s.at == "gas-alarm").unwrap();
    let said = Words::new(REFERENCE).say(&said.text);
    assert!(
        said.contains("400\u{a0}ppm") && said.contains("4 to 15 minutes"),
        "{said}"
    );
    assert!(said.contains("31:08"), "{said}");
}

#[test]
fn an_empty_house_ends_with_nobody() {
    let text = list("garage-door-open-half").replace(
        "@1:00 look street",
        "@1:00 look street\nset child outside\nset household outside",
    );
    let played = play_text(&shipped("garage-door-open"), 1, &text);
    for rule in [Rule::Indoors, Rule::Gas] {
        let told = first(&played, rule);
        assert_eq!(ids(&told).last(), Some(&"stage-nobody"), "{rule:?}");
        assert!(!ids(&told).contains(&"stage-blood"), "{rule:?}");
    }
}

#[test]
fn a_way_of_gas_is_told_where_the_house_had_bad_air_while_it_lasted_and_nowhere_else() {
    let (library, _) = Library::shipped();
    let mut n_clean = 0;
    for (drill, actions) in [
        // The engine is far off, or the window shut before much got in.
        ("up-the-stairs", "up-the-stairs-no-battery"),
        ("there-and-back", "slide-patio"),
        ("there-and-back", "slide-garage-aired"),
        ("six-handles", "handles-porch"),
        ("there-and-back", "slide-garage"),
        ("where-to-put-it", "where-to-put-it-back-step"),
        ("standby-side-yard", "standby-side-yard-window-open"),
        ("window-cord", "window-cord-open-silent"),
    ] {
        assert!(library.scenario(drill).is_some(), "{drill}");
        let played = play_text(&shipped(drill), 1, &list(actions));
        let about_air = |f: &&Finding| {
            let rules = [Rule::Indoors, Rule::TooNear, Rule::NoAlarm, Rule::Gas];
            rules.contains(&f.rule)
        };
        let mut findings = played.verdict.findings.iter().filter(about_air).peekable();
        assert!(findings.peek().is_some(), "{actions}");
        for finding in findings {
            let moments = &played.drill.trace().moments[finding.moment..];
            let during = moments
                .iter()
                .take_while(|m| m.at <= finding.at + finding.lasted);
            let most = during.map(|m| m.conditions.ppm()).fold(0.0, f64::max);
            let told = explain(&played.drill, finding);
            assert_eq!(
                told.path.is_empty(),
                most < CLEAN_PPM,
                "{actions} {:?}: {most} ppm",
                finding.rule
            );
            n_clean += u32::from(told.path.is_empty());
        }
    }
    assert!(n_clean >= 4, "{n_clean}");
}

#[test]
fn a_fire_is_told_by_the_metal_s_heat_beside_what_lights_gasoline() {
    let hot = list("hot-refuel-in-a-rush");
    for (wait, running, said) in [
        ("wait 1s\n", false, "this muffler is hotter"),
        ("wait 5m\n", false, "to be on the safe side"),
        ("", true, "by its sparks"),
    ] {
        let stopped = if running { "" } else { "set engine stopped\n" };
        let text = hot.replace(
            "set engine stopped\nrefuel",
            &format!("{stopped}{wait}refuel"),
        );
        let played = play_text(&shipped("hot-refuel"), 1, &text);
        let mut events = played.drill.trace().events();
        let burnt = events.find_map(|(m, e)| {
            if let Event::FuelFire { celsius } = e {
                Some((m, *celsius))
            } else {
                None
            }
        });
        let (moment, celsius) = burnt.unwrap();
        let told = first(&played, Rule::FuelFire);
        assert_eq!(
            ids(&told),
            ["stage-fuel-metal", "stage-fuel-vapor", "stage-fuel-lit"]
        );
        assert!(close(number(&told.path[0], "surface"), celsius));
        let engine = moment.conditions.engine;
        assert_eq!(engine.running_since.is_some(), running);
        if let (false, Some(stopped)) = (running, engine.stopped_at) {
            let time = ("time", Arg::lasting(moment.at.since(stopped)));
            assert!(told.path[0].text.args.contains(&time), "{told:?}");
        }
        let least = number(&told.path[2], "least");
        assert!((celsius >= least) != said.contains("safe side"));
        let lit = Words::new(REFERENCE).say(&told.path[2].text);
        assert!(lit.contains(said), "{lit}");
    }
}

#[test]
fn gas_indoors_never_falls_where_only_an_opening_near_the_engine_grows() {
    let text = list("window-cord-near");
    let air = |window: &str| {
        let text = text.replace("set window sealed", window);
        let played = play_text(&shipped("window-cord"), 1, &text);
        let moments = played.drill.trace().moments.iter();
        let runs = moments.filter(|m| m.conditions.engine.running_since.is_some());
        let runs = runs.map(|m| (m.at, m.conditions.ppm()));
        runs.collect::<BTreeMap<DrillTime, f64>>()
    };
    let (sealed, open) = (air("set window sealed"), air("set window open"));
    let mut compared = 0;
    for (at, ppm) in &sealed {
        let Some(wide) = open.get(at) else { continue };
        // The wider opening follows the engine's load sooner, up and down: by a twentieth at most here.
        assert!(
            *wide >= 0.95 * ppm,
            "{at:?}: {wide} ppm open, {ppm} ppm sealed"
        );
        compared += u32::from(*ppm > 50.0);
    }
    assert!(compared > 100, "{compared}");
    let most = |of: &BTreeMap<DrillTime, f64>| of.values().copied().fold(0.0, f64::max);
    assert!(most(&open) > most(&sealed));
}
