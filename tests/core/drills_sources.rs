//! Lists of actions on drills with further sources, and with an interlock that can't be trusted.

use std::collections::BTreeSet;

use outage_drill::drill::{Action, Event, Follows, SourceEvent, What};
use outage_drill::marking::Rule::{
    self, BatteryOverloaded, Collision, LineFed, NoTransferEquipment, PushedBack, SunOnGenerator,
};
use outage_drill::units::DrillTime;
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

#[test]
fn sun_and_generator_are_kept_apart_by_breaker_or_by_disconnect() {
    finds("sun-breaker-off", true, &[]);
    finds("sun-disconnect", true, &[]);
}

/// When the first event that `is` takes happened.
fn when(played: &Played, is: impl Fn(&SourceEvent) -> bool) -> DrillTime {
    let mut events = played.drill.trace().events();
    let found = events.find(|(_, e)| matches!(e, Event::Source(s) if is(s)));
    found.expect("it happens").0.at
}

/// When a control was set to a position first.
fn set_at(played: &Played, control: &str, position: &str) -> DrillTime {
    let site = played.drill.site();
    let control = site.control_id(control).unwrap();
    let position = site.control(control).unwrap().position(position).unwrap();
    let mut moments = played.drill.trace().moments.iter();
    let did = moments.find(|m| m.what == What::Did(Action::Set(control, position)));
    did.expect("it is done").at
}

#[test]
fn sun_and_battery_come_back_three_hundred_seconds_after_the_utility_feeds_their_side() {
    for seed in SEEDS {
        let played = play("sun-breaker-off", seed);
        let main_on = set_at(&played, "main", "on");
        let mut events = played.drill.trace().events();
        let gave_back = |e: &Event| matches!(e, Event::Source(SourceEvent::BatteryGaveBack));
        let (back, _) = events
            .find(|(m, e)| m.at > main_on && gave_back(e))
            .unwrap();
        assert_eq!(back.at, main_on + DrillTime::from_secs(300), "the battery");
        let sun_on = set_at(&played, "solar-breaker", "on");
        let joined = when(&played, |e| {
            *e == SourceEvent::SolarJoined {
                grid: Follows::Utility,
            }
        });
        assert_eq!(joined, sun_on + DrillTime::from_secs(300), "the sun");
        let watts_at = |seconds: u64| {
            let at = joined + DrillTime::from_secs(seconds);
            let moments = played.drill.trace().moments.iter();
            let moment = moments.rev().find(|m| m.at <= at).unwrap();
            moment.conditions.solar.watts
        };
        // A tenth of 6 000 W every thirty seconds.
        for (seconds, watts) in [
            (29, 0.0),
            (45, 600.0),
            (165, 3000.0),
            (299, 5400.0),
            (310, 6000.0),
        ] {
            assert!(
                (watts_at(seconds) - watts).abs() < 1e-9,
                "{seconds} s: {} W",
                watts_at(seconds)
            );
        }
    }
}

#[test]
fn the_battery_takes_its_circuits_within_its_transfer_time_and_the_sun_leaves_within_two_seconds() {
    for seed in SEEDS {
        let played = play("sun-breaker-off", seed);
        let mut events = played.drill.trace().events();
        let out = events.find(|(_, e)| **e == Event::Outage).unwrap().0.at;
        let took = when(&played, |e| matches!(e, SourceEvent::BatteryTook));
        assert_eq!(took.since(out), DrillTime::from_millis(100));
        let left = when(&played, |e| matches!(e, SourceEvent::SolarLeft { .. }));
        assert_eq!(left.since(out), DrillTime::from_secs(2));
        let fridge = played.drill.site().appliance_index("fridge").unwrap();
        let gave = when(&played, |e| *e == SourceEvent::BatteryGaveBack);
        let moments = played.drill.trace().moments.iter();
        let gaps = moments.filter(|m| m.at > took && m.at < gave);
        for moment in gaps {
            assert!(moment.readings.appliance(fridge).pu > 0.9, "{}", moment.at);
        }
    }
}

#[test]
fn what_the_battery_loses_is_what_it_delivers_over_its_efficiency_and_its_own_watts() {
    let played = play("sun-breaker-off", 1);
    let took = when(&played, |e| matches!(e, SourceEvent::BatteryTook));
    let back = when(&played, |e| matches!(e, SourceEvent::BatteryGaveBack));
    let moments = &played.drill.trace().moments;
    let (mut stretches, mut lost_wh) = (0, 0.0);
    for pair in moments
        .windows(2)
        .filter(|p| p[0].at >= took && p[1].at < back)
    {
        let hours = pair[1].at.since(pair[0].at).seconds() / 3600.0;
        let by_hand = (pair[0].readings.battery.watts / 0.95 + 40.0) * hours;
        let energy = |n: usize| pair[n].conditions.battery.energy_wh;
        let lost = energy(0) - energy(1);
        assert!(
            (lost - by_hand).abs() < 1e-6,
            "{} to {}: {lost} Wh, by hand {by_hand} Wh",
            pair[0].at,
            pair[1].at
        );
        stretches += 1;
        lost_wh += lost;
    }
    assert!(
        stretches > 50 && lost_wh > 50.0,
        "{stretches} stretches, {lost_wh} Wh"
    );
}

#[test]
fn a_battery_asked_for_too_much_shuts_off_when_computed_and_its_switch_brings_it_back() {
    let played = play("sun-battery-overloaded", 1);
    assert!(played.found().contains(&(BatteryOverloaded, true)));
    let on = set_at(&played, "microwave-switch", "on");
    let mut events = played.drill.trace().events();
    let (moment, watts) = events
        .find_map(|(m, e)| {
            if let Event::Source(SourceEvent::BatteryOverloaded { watts }) = e {
                Some((m, *watts))
            } else {
                None
            }
        })
        .expect("it shuts off");
    // Ten seconds at 7 500 W above the 5 000 W that it carries.
    let by_hand = 10.0 * 2500.0 / (watts - 5000.0);
    let took = moment.at.since(on).seconds();
    assert!(
        (took - by_hand).abs() < 0.2,
        "{took} s at {watts} W, by hand {by_hand} s"
    );
    let carries = |at: DrillTime| {
        let moments = played.drill.trace().moments.iter();
        moments
            .rev()
            .find(|m| m.at <= at)
            .unwrap()
            .conditions
            .battery
            .carries
    };
    assert!(!carries(moment.at + DrillTime::from_secs(5)));
    let again = set_at(&played, "battery", "on") + DrillTime::from_secs(5);
    assert!(carries(again), "after its switch was turned off and on");
}

#[test]
fn a_forgotten_sun_takes_the_generator_for_the_utility_and_breaks_it() {
    finds("sun-forgotten", false, &[SunOnGenerator, PushedBack]);
    for seed in SEEDS {
        let played = play("sun-forgotten", seed);
        let fed = set_at(&played, "generator-breaker", "on");
        let joined = when(&played, |e| {
            *e == SourceEvent::SolarJoined {
                grid: Follows::Generator,
            }
        });
        assert_eq!(joined, fed + DrillTime::from_secs(300), "seed {seed}");
        let pushed = |e: &Event| {
            if let Event::Source(SourceEvent::GeneratorPushed { watts }) = e {
                Some(*watts)
            } else {
                None
            }
        };
        let mut events = played.drill.trace().events();
        let (moment, watts) = events.find_map(|(m, e)| pushed(e).map(|w| (m, w))).unwrap();
        let readings = &moment.readings;
        // What the roof gives is what the house takes and what the set is pushed with.
        let taken: f64 = readings.appliances.iter().map(|a| a.watts).sum();
        let by_hand = readings.solar_w - taken - readings.battery.charge_w;
        assert!(
            (watts - by_hand).abs() < 0.02 * readings.solar_w,
            "seed {seed}: {watts} W, by hand {by_hand} W"
        );
        assert!(moment.at > joined && readings.generator.watts < 0.0);
        let engine = played.drill.conditions().engine;
        assert!(engine.broken && engine.running_since.is_none());
    }
}

#[test]
fn the_battery_takes_a_sagging_generator_for_a_bad_utility_and_feeds_its_circuits_itself() {
    let played = play("sun-breaker-off", 1);
    let fed = set_at(&played, "generator-breaker", "on");
    let gave = when(&played, |e| *e == SourceEvent::BatteryGaveBack);
    assert_eq!(
        gave,
        fed + DrillTime::from_secs(300),
        "it took the generator for the utility"
    );
    let mut events = played.drill.trace().events();
    let took = |e: &Event| matches!(e, Event::Source(SourceEvent::BatteryTook));
    let (moment, _) = events.find(|(m, e)| m.at > gave && took(e)).unwrap();
    let moments = played.drill.trace().moments.iter();
    let sagged = moments.rev().find(|m| m.at < moment.at && m.at > gave);
    let volts = sagged.unwrap().readings.point("bus").volts_across;
    assert!(
        volts < 0.88 * 240.0,
        "a motor's start pulled it down to {volts} V"
    );
}
