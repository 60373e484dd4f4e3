//! A house that runs on cords: what a good one carries, what a bad one does, and every number of it by hand.
//!
//! Figures of the hand calculations: NEC Chapter 9, Table 8 (16 AWG stranded 4.99 ohm/kft, 12 AWG 1.98, at 75 °C), copper's 0.393 % per kelvin at 20 °C, NEC Table 400.5(A)(1).

use std::sync::Arc;

use outage_drill::apparatus::branch_wire::{BranchWire, Run};
use outage_drill::apparatus::conductor::Material;
use outage_drill::apparatus::cord_lay::Lay;
use outage_drill::drill::{Event, Fate, Moment};
use outage_drill::explain::explain;
use outage_drill::marking::Rule::{CordHot, WireHot};
use outage_drill::scenario::Scenario;
use outage_drill::site::{Body, Drive, LoadState, Plant, Positions, Work};
use outage_drill::words::{Arg, Words};

use crate::playing::{Played, list, play_text, shipped};

fn play(name: &str, seed: u64) -> Played {
    play_text(&shipped("right-cord"), seed, &list(name))
}

/// Index of a cord in the drill's site.
fn cord(played: &Played, name: &str) -> usize {
    let cords = &played.drill.site().cords;
    cords.iter().position(|c| c.name == name).unwrap()
}

fn amps(moment: &Moment, cord: &str) -> f64 {
    moment.readings.amps_of(cord)
}

fn lost(moment: &Moment, cord: &str) -> f64 {
    let volts = |end: &str| moment.readings.point(&format!("{cord}-{end}")).volts;
    volts("near-end") - volts("far-end")
}

fn number(evidence: &[(&'static str, Arg)], name: &str) -> f64 {
    let (_, arg) = evidence.iter().find(|(n, _)| *n == name).unwrap();
    let Arg::Quantity(value, _) = arg else {
        panic!("{name} is {arg:?}");
    };
    *value
}

#[test]
fn a_cord_loses_the_volts_that_its_ohms_at_its_temperature_cost() {
    let played = play("right-cord-joined", 1);
    let (thin, heavy) = (cord(&played, "orange-cord"), cord(&played, "yellow-cord"));
    let mut n_seen = 0;
    for moment in &played.drill.trace().moments {
        let a = amps(moment, "orange-cord");
        if a < 5.0 || moment.readings.generator.tied {
            continue;
        }
        n_seen += 1;
        for (name, index, kft, ohm_per_kft) in [
            ("orange-cord", thin, 0.1, 4.99),
            ("yellow-cord", heavy, 0.05, 1.98),
        ] {
            let t_c = moment.conditions.cord(index).solved_c;
            let warm = (1.0 + 0.003_93 * (t_c - 20.0)) / (1.0 + 0.003_93 * 55.0);
            // Two wires, and the two contacts of a sound 15 A plug: 30 K × 0.06 W/K at 15 A.
            let ohm = 2.0 * kft * ohm_per_kft * warm + 30.0 * 0.06 / (15.0 * 15.0);
            let by_hand = ohm * amps(moment, name);
            let ours = lost(moment, name);
            // Closed contacts of 1 mΩ and a little reactance are not in the hand calculation.
            assert!(
                (ours - by_hand).abs() < 0.06,
                "{name} at {}: {ours} V, by hand {by_hand} V",
                moment.at
            );
        }
    }
    assert!(n_seen > 100, "{n_seen} moments with the heater on");
}

#[test]
fn the_circuit_never_knows_a_cord_more_than_five_kelvin_wrong() {
    for name in [
        "right-cord-safe",
        "right-cord-lamp-cord",
        "right-cord-joined",
    ] {
        let played = play(name, 7);
        for moment in &played.drill.trace().moments {
            for cord in &moment.conditions.cords {
                let off = (cord.celsius - cord.solved_c).abs();
                // An action may come up to a second after the last fixed instant.
                assert!(off < 5.5, "{name} at {}: {off} K off", moment.at);
            }
        }
    }
}

#[test]
fn a_cord_warms_under_its_load_nears_where_it_settles_and_cools_after_it() {
    let played = play("right-cord-lamp-cord", 1);
    let index = cord(&played, "brown-cord");
    let cord = &played.drill.site().cords[index];
    let moments = &played.drill.trace().moments;
    let celsius = |m: &Moment| m.conditions.cord(index).celsius;
    let on = |m: &&Moment| amps(m, "brown-cord") > 5.0;
    let last_on = moments.iter().rfind(on).unwrap();
    let lay = played.drill.site().lay_of(&last_on.positions, index);
    let settles = cord.make.settle_c(amps(last_on, "brown-cord"), 15.0, lay);
    let reached = celsius(last_on);
    assert!(
        reached < settles + 1.0 && reached > settles - 8.0,
        "after an hour {reached} °C, settles at {settles} °C"
    );
    let after = moments.iter().filter(|m| m.at > last_on.at);
    let cooling: Vec<f64> = after.map(celsius).collect();
    assert!(cooling.windows(2).all(|pair| pair[1] <= pair[0] + 1e-9));
    assert!(cooling.last().unwrap() + 30.0 < reached, "{cooling:?}");
}

#[test]
fn the_chain_of_a_hot_cord_follows_from_one_number_to_the_next() {
    for name in [
        "right-cord-lamp-cord",
        "right-cord-lamp-cord-coiled",
        "right-cord-joined",
    ] {
        let played = play(name, 1);
        let finding = played
            .verdict
            .findings
            .iter()
            .find(|f| f.rule == CordHot)
            .unwrap();
        let get = |name: &str| number(&finding.evidence, name);
        let (ohm, amps, lost) = (get("ohm"), get("amps"), get("lost"));
        assert!(
            (ohm * amps - lost).abs() < 1e-9,
            "{name}: {ohm} Ω × {amps} A, {lost} V"
        );
        assert!(
            (lost * amps - get("heat")).abs() < 1e-9,
            "{name}: {} W",
            get("heat")
        );
        assert!(get("reached") > get("rated"), "{name}");
        let told = explain(&played.drill, finding);
        assert_eq!(told.path.len(), 7, "{name}");
        let ids: Vec<&str> = told.path.iter().map(|s| s.text.id.as_str()).collect();
        let warmed = ids.iter().position(|id| *id == "stage-cord-warmed");
        assert_eq!(warmed, Some(3), "{name}: {ids:?}");
        for language in ["en", "es"] {
            let words = Words::new(language);
            for stage in &told.path {
                let text = words.say(&stage.text);
                assert!(!text.contains('{') && !text.contains('['), "{text}");
            }
        }
    }
}

#[test]
fn a_coiled_lamp_cord_under_a_heater_softens_then_burns_and_takes_the_engine_down() {
    let played = play("right-cord-lamp-cord-coiled", 1);
    let at = |pick: fn(&Event) -> bool| {
        let mut events = played.drill.trace().events();
        events.find(|(_, e)| pick(e)).map(|(m, _)| m.at.seconds())
    };
    let soft = at(|e| matches!(e, Event::CordSoft { .. })).unwrap();
    let fire = at(|e| matches!(e, Event::CordFire { .. })).unwrap();
    let stalled = at(|e| matches!(e, Event::EngineStalled { .. })).unwrap();
    // 18 AWG, 50 ft in 12 turns: 45 % of 10 A would be right, it carries 11 to 12 A; τ is 278 s × 4.94 / (1 - 0.67).
    assert!((600.0..1_500.0).contains(&soft), "soft after {soft} s");
    assert!(soft + 600.0 < fire && fire < 3_600.0, "fire after {fire} s");
    assert!(
        (0.0..2.0).contains(&(stalled - fire)),
        "stalls at {stalled} s"
    );
    let last = played.drill.conditions().cord(cord(&played, "brown-cord"));
    assert_eq!(last.harm.fate, Fate::Burning, "nothing heals");
}

#[test]
fn crushed_wires_that_meet_trip_the_outlet_they_hang_on_and_no_other() {
    let played = play("right-cord-crushed", 1);
    let site = played.drill.site();
    let tripped: Vec<&str> = played
        .drill
        .trace()
        .events()
        .filter_map(|(_, e)| {
            let Event::Tripped { control, .. } = e else {
                return None;
            };
            Some(site.control(*control).unwrap().name.as_str())
        })
        .collect();
    assert_eq!(tripped, ["left-socket-breaker"]);
    let fridge = site.appliance_index("fridge").unwrap();
    let fed = played
        .drill
        .trace()
        .moments
        .iter()
        .filter(|m| (2_200.0..3_600.0).contains(&m.at.seconds()));
    for moment in fed {
        let pu = moment.readings.appliance(fridge).pu;
        assert!(pu > 0.85, "the fridge at {}: {pu}", moment.at);
    }
}

/// The drill with a heater whose worn insulation leaks onto its frame, on a set that joins neutral and frame.
fn leaking() -> Arc<Scenario> {
    let mut scenario = shipped("right-cord").as_ref().clone();
    let mut site = scenario.site.as_ref().clone();
    let heater = site.appliance_index("space-heater").unwrap();
    site.appliances[heater].leak_ohm = Some(20_000.0);
    site.generator.bond = outage_drill::site::Bond::Bonded;
    scenario.site = Arc::new(site);
    Arc::new(scenario)
}

/// Volts of the heater's frame to its own neutral while it runs on this list, and milliamps through a hand on it that stands on earth.
fn frame(scenario: &Arc<Scenario>, name: &str) -> (f64, f64) {
    let played = play_text(scenario, 1, &list(name));
    let heater = scenario.site.appliance_index("space-heater").unwrap();
    let on = |m: &&Moment| m.readings.appliance(heater).amps > 5.0 && m.at.seconds() < 3_000.0;
    let moment = played.drill.trace().moments.iter().rfind(on).unwrap();
    let mut plant = Plant::new(&scenario.site).unwrap();
    let mut loads = vec![LoadState::Off; scenario.site.appliances.len()];
    loads[heater] = LoadState::Running;
    let drive = Drive {
        running: true,
        ..Drive::default()
    };
    let body = Body { touching: false };
    plant.read(&scenario.site, &moment.positions, &loads, drive, body);
    let amps = plant.touch_frame("space-heater-frame").unwrap().amps;
    let volts = moment.readings.point("space-heater-frame").volts;
    (volts, amps * 1000.0)
}

#[test]
fn without_a_ground_wire_the_frame_of_a_leaking_heater_floats() {
    let scenario = leaking();
    let grounded = frame(&scenario, "right-cord-safe");
    let floating = frame(&scenario, "right-cord-lamp-cord");
    // With a ground wire what is left is the volts lost along the neutral: 12 A through 50 ft of 12 AWG, about 1.1 V.
    assert!(
        (0.5..1.6).contains(&grounded.0),
        "with one {} V",
        grounded.0
    );
    assert!(floating.0 > 100.0, "without one {} V", floating.0);
    // Yet a hand feels nothing: the set stands on its tires and nothing else leads from earth back to it.
    assert!(
        grounded.1 < 0.5 && floating.1 < 0.5,
        "{grounded:?} and {floating:?}"
    );
}

/// The drill without a storm, its bedroom wired with 14 AWG and with this heater behind this breaker.
fn bedroom(watts: f64, breaker_a: u16) -> Arc<Scenario> {
    let mut scenario = shipped("right-cord").as_ref().clone();
    scenario.story.clear();
    let mut site = scenario.site.as_ref().clone();
    let heater = site.appliance_index("space-heater").unwrap();
    site.appliances[heater].work = Work::Resistive { watts };
    let circuit = site
        .circuits
        .iter_mut()
        .find(|c| c.name == "bedroom")
        .unwrap();
    circuit.awg = "14".parse().unwrap();
    circuit.heat = BranchWire::new(circuit.awg, Material::Copper, Run::Hollow);
    let breaker = usize::from(circuit.breaker.0);
    site.controls[breaker].plate.rating_a = breaker_a;
    scenario.site = Arc::new(site);
    Arc::new(scenario)
}

#[test]
fn a_breaker_too_big_for_its_wire_lets_it_pass_its_insulation_and_the_right_one_does_not() {
    let hottest = |played: &Played| {
        let moments = played.drill.trace().moments.iter();
        moments.map(|m| m.conditions.wire_c(1)).fold(0.0, f64::max)
    };
    let big = play_text(&bedroom(3_600.0, 30), 1, "wait 80m\n");
    assert!(big.found().contains(&(WireHot, true)), "{:?}", big.found());
    assert!(hottest(&big) > 90.0, "{} °C", hottest(&big));
    let right = play_text(&bedroom(3_600.0, 15), 1, "wait 80m\n");
    assert!(
        !right.found().contains(&(WireHot, true)),
        "{:?}",
        right.found()
    );
    assert!(hottest(&right) < 75.0, "{} °C", hottest(&right));
}

#[test]
fn cords_that_are_tied_together_count_each_other_and_no_others() {
    let scenario = shipped("right-cord");
    let site = &scenario.site;
    let mut positions = scenario.start.clone();
    let lay = |positions: &Positions, name: &str| {
        let index = site.cords.iter().position(|c| c.name == name).unwrap();
        site.lay_of(positions, index)
    };
    let mut tie = |name: &str| {
        let control = site.control_id(&format!("{name}-lay")).unwrap();
        let tied = site.control(control).unwrap().position("bundled").unwrap();
        positions.set(control, tied);
        positions.clone()
    };
    let one = tie("yellow-cord");
    assert_eq!(lay(&one, "yellow-cord"), Lay::Bundled { others: 0 });
    let both = tie("blue-cord");
    for name in ["yellow-cord", "blue-cord"] {
        assert_eq!(lay(&both, name), Lay::Bundled { others: 1 });
    }
    assert_eq!(lay(&both, "orange-cord"), Lay::Coil { turns: 25 });
}
