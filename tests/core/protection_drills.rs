//! Ground-fault devices in drills: what opens them, what they can't see, and what a frame carries without them.
//!
//! Nothing here is told to a device: bonds, leaks and bodies are in the site, and the circuit does the rest.

use std::fs;
use std::sync::Arc;

use outage_drill::apparatus::gfci::{MUST_TRIP_A, longest_s};
use outage_drill::drill::{Astray, Drill, Event, ProtectionEvent};
use outage_drill::file::Library;
use outage_drill::marking::Rule;
use outage_drill::scenario::Scenario;
use outage_drill::session::read;
use outage_drill::site::FEET_OHM;
use outage_drill::units::{DrillTime, portable};
use outage_drill::words::Words;

use crate::playing::{Played, list, play_text, shipped};

const SITE: &str = include_str!("../../scenarios/sites/two-gables.ron");
const SLIDE: &str = include_str!("../../scenarios/drills/there-and-back.ron");

/// A shipped drill on a house with these changes.
pub(crate) fn changed(site: &[(&str, &str)], drill: &[(&str, &str)]) -> Arc<Scenario> {
    Arc::clone(&library(site, drill).scenarios[0])
}

fn library(site: &[(&str, &str)], drill: &[(&str, &str)]) -> Library {
    let replaced = |text: &str, changes: &[(&str, &str)]| {
        changes.iter().fold(text.to_owned(), |text, (from, to)| {
            assert!(text.contains(from), "{from} isn't in the file");
            text.replace(from, to)
        })
    };
    let folder = tempfile::tempdir().unwrap();
    for (kind, text) in [
        ("sites", replaced(SITE, site)),
        ("drills", replaced(SLIDE, drill)),
    ] {
        fs::create_dir_all(folder.path().join(kind)).unwrap();
        fs::write(folder.path().join(kind).join("changed.ron"), text).unwrap();
    }
    let (library, faults) = Library::load(folder.path());
    assert!(faults.is_empty(), "{faults:?}");
    library
}

/// What stands in the site file, and what replaces it: how the generator is built.
const PLATE: &str = "output_breaker_amps: 30,";
const BONDED_GUARDED: &str = "output_breaker_amps: 30, neutral: Bonded, receptacles: [(name: \"generator\", leg: Both, gfci: true), (name: \"small\", leg: Leg1, gfci: true)],";
const FLOATING_GUARDED: &str = "output_breaker_amps: 30, receptacles: [(name: \"generator\", leg: Both, gfci: true), (name: \"small\", leg: Leg1, gfci: true)],";
const BONDED_BARE: &str = "output_breaker_amps: 30, neutral: Bonded,";

/// A transfer switch for the whole house in place of the backfed breaker.
fn with_transfer(generator: &'static str, neutral: &str) -> Arc<Scenario> {
    let transfer = format!(
        "transfers: [(name: \"transfer\", moves: MainPanel, other: Inlet(\"inlet\"), neutral: {neutral})],\n  appliances: ["
    );
    changed(
        &[
            (PLATE, generator),
            ("backfeed: (breaker_amps: 30, inlet: \"inlet\"),", ""),
            ("appliances: [", &transfer),
        ],
        &[("      \"generator-breaker\": [\"off\"],\n", "")],
    )
}

/// A worn fridge: this many ohms from hot to frame.
fn with_worn_fridge(generator: &'static str, ohm: &str) -> Arc<Scenario> {
    let worn = format!("(name: \"fridge\", circuit: \"fridge\", leak_ohm: {ohm}, plug: Plug,");
    changed(
        &[
            (PLATE, generator),
            ("(name: \"fridge\", circuit: \"fridge\", plug: Plug,", &worn),
        ],
        &[("[\"inlet-cord\"]", "[\"inlet-cord\", \"extension-a\"]")],
    )
}

fn play(scenario: &Arc<Scenario>, name: &str) -> Played {
    play_text(scenario, 1, &list(name))
}

/// Every opening of a ground-fault device: residual amps and where they went.
fn openings(played: &Played) -> Vec<(f64, Astray)> {
    let events = played.drill.trace().events();
    let opened = events.filter_map(|(_, event)| {
        if let Event::Protection(ProtectionEvent::GroundFault {
            residual_a, astray, ..
        }) = event
        {
            Some((*residual_a, *astray))
        } else {
            None
        }
    });
    opened.collect()
}

fn finds(played: &Played, rule: Rule) -> Option<bool> {
    let mut found = played.verdict.findings.iter();
    found.find(|f| f.rule == rule).map(|f| f.breach)
}

fn runs(played: &Played, appliance: &str) -> bool {
    let index = played.drill.site().appliance_index(appliance).unwrap();
    played.drill.readings().appliance(index).watts > 1.0
}

/// Runs that find what no shipped drill does: a device set again, a ground that carries, a fuse that blows.
pub(crate) fn found_by_no_shipped_drill() -> [Played; 3] {
    let bare = changed(&[(PLATE, BONDED_BARE)], &[]);
    [
        play(
            &with_worn_fridge(BONDED_GUARDED, "2000.0"),
            "ground-fault-set-again",
        ),
        play(&bare, "ground-fault-house"),
        play(&with_fused_furnace("Fast"), "fuse-replaced"),
    ]
}

#[test]
fn a_bonded_generator_on_a_bonded_panel_opens_its_device_with_no_fault_at_all() {
    let scenario = changed(&[(PLATE, BONDED_GUARDED)], &[]);
    let played = play(&scenario, "ground-fault-house");
    let opened = openings(&played);
    assert_eq!(opened.len(), 1, "{opened:?}");
    assert_eq!(opened[0].1, Astray::TwoBonds);
    assert_eq!(
        finds(&played, Rule::TwoBonds),
        Some(false),
        "explained, not a fault"
    );
    assert_eq!(finds(&played, Rule::GroundFault), None);
    assert!(!runs(&played, "furnace"), "the house stays dark");
}

#[test]
fn a_floating_neutral_cures_it() {
    let scenario = changed(&[(PLATE, FLOATING_GUARDED)], &[]);
    let played = play(&scenario, "ground-fault-house");
    assert_eq!(openings(&played), []);
    assert!(runs(&played, "furnace"));
    assert_eq!(finds(&played, Rule::TwoBonds), None);
    assert_eq!(finds(&played, Rule::GroundCarries), None);
}

#[test]
fn a_transfer_switch_that_moves_the_neutral_cures_it_and_one_with_a_solid_neutral_does_not() {
    let switched = play(
        &with_transfer(BONDED_GUARDED, "Switched"),
        "ground-fault-transfer",
    );
    assert_eq!(openings(&switched), []);
    assert!(runs(&switched, "furnace"));
    let solid = play(
        &with_transfer(BONDED_GUARDED, "Solid"),
        "ground-fault-transfer",
    );
    assert_eq!(
        openings(&solid).first().map(|o| o.1),
        Some(Astray::TwoBonds)
    );
    assert!(!runs(&solid, "furnace"));
}

#[test]
fn without_a_device_two_bonds_put_part_of_the_load_on_the_ground_of_the_cord() {
    let scenario = changed(&[(PLATE, BONDED_BARE)], &[]);
    let played = play(&scenario, "ground-fault-house");
    assert_eq!(openings(&played), []);
    assert!(runs(&played, "furnace"));
    assert_eq!(finds(&played, Rule::GroundCarries), Some(false));
    let readings = played.drill.readings();
    let ground = readings.amps_of("inlet-cord-ground");
    // Two equal wires from panel to generator, neutral and ground, with the inlet's ground joined to the neutral bar: the unbalance halves.
    let unbalance = unbalance_a(&played);
    assert!(
        (ground / (unbalance / 2.0) - 1.0).abs() < 0.05,
        "{ground} A on the ground, {unbalance} A not balanced between the legs"
    );
    let frame = readings.point("generator-frame").volts_to_earth.unwrap();
    assert!(frame > 0.0, "{frame} V on the frame");
    let floating = play(&changed(&[], &[]), "ground-fault-house");
    let quiet = floating.drill.readings().amps_of("inlet-cord-ground");
    assert!(quiet < 0.01, "{quiet} A with a floating neutral");
}

/// The phasor sum of what the 120 V loads take from the two legs, by hand from watts and power factors.
fn unbalance_a(played: &Played) -> f64 {
    let of = |name: &str, pf: f64| {
        let index = played.drill.site().appliance_index(name).unwrap();
        let amps = played.drill.readings().appliance(index).amps;
        (amps * pf, -amps * (1.0 - pf * pf).sqrt())
    };
    let leg_1 = [of("fridge", 0.75)];
    let leg_2 = [of("furnace", 0.8), of("sump", 0.8)];
    let sum = |loads: &[(f64, f64)]| {
        let re: f64 = loads.iter().map(|l| l.0).sum();
        let im: f64 = loads.iter().map(|l| l.1).sum();
        (re, im)
    };
    let ((a, b), (c, d)) = (sum(&leg_1), sum(&leg_2));
    ((a - c) * (a - c) + (b - d) * (b - d)).sqrt()
}

#[test]
fn worn_insulation_opens_the_device_and_setting_it_again_is_a_breach() {
    let scenario = with_worn_fridge(BONDED_GUARDED, "2000.0");
    let right = play(&scenario, "ground-fault-worn-fridge");
    let opened = openings(&right);
    assert_eq!(opened.len(), 1, "{opened:?}");
    // 120 V over 2 000 ohms; wires and bond are small beside it.
    assert!((opened[0].0 - 0.060).abs() < 0.001, "{opened:?}");
    assert_eq!(opened[0].1, Astray::Fault);
    assert_eq!(finds(&right, Rule::GroundFault), Some(false));
    assert_eq!(finds(&right, Rule::ResetIntoFault), None);
    let wrong = play(&scenario, "ground-fault-set-again");
    assert_eq!(openings(&wrong).len(), 2);
    assert_eq!(finds(&wrong, Rule::ResetIntoFault), Some(true));
}

#[test]
fn leakage_below_the_band_is_let_pass_and_above_it_never() {
    for (ohm, opens) in [("40000.0", false), ("15000.0", true)] {
        let played = play(
            &with_worn_fridge(BONDED_GUARDED, ohm),
            "ground-fault-worn-fridge",
        );
        let opened = openings(&played);
        assert_eq!(!opened.is_empty(), opens, "{ohm} ohms: {opened:?}");
        for (residual, _) in opened {
            assert!(residual >= MUST_TRIP_A && longest_s(residual).is_some());
        }
    }
}

#[test]
fn a_source_with_no_path_back_leaves_a_first_fault_unseen() {
    let scenario = with_worn_fridge(FLOATING_GUARDED, "2000.0");
    let played = play(&scenario, "ground-fault-worn-fridge");
    assert_eq!(openings(&played), []);
}

#[test]
fn a_body_between_hot_and_neutral_is_not_seen_and_one_between_hot_and_frame_is() {
    // 1 000 ohms each: 14.4 W at 120 V is a resistor of 1 000 ohms from hot to neutral.
    let between = "appliances: [\n    (name: \"body\", circuit: \"fridge\", plug: Plug, grounded: false, work: Resistive(watts: 14.4), demand: Switch(on_at_start: true)),";
    let drill = [("[\"inlet-cord\"]", "[\"inlet-cord\", \"extension-a\"]")];
    let list = list("ground-fault-worn-fridge").replace("fridge-plug", "body-plug");
    let list = list.replace("set body-plug unplugged", "");
    let scenario = changed(
        &[(PLATE, BONDED_GUARDED), ("appliances: [", between)],
        &drill,
    );
    let played = play_text(&scenario, 1, &list);
    let index = played.drill.site().appliance_index("body").unwrap();
    let amps = played.drill.readings().appliance(index).amps;
    assert!((amps - 0.12).abs() < 0.002, "{amps} A through it");
    assert_eq!(openings(&played), [], "it comes back on the neutral");
    let device = played.drill.site().control_id("small-gfci").unwrap();
    let (residual, _) = played.drill.readings().ground_fault(device);
    assert!(residual < 1e-6, "{residual} A");
    let to_frame = play(
        &with_worn_fridge(BONDED_GUARDED, "1000.0"),
        "ground-fault-worn-fridge",
    );
    let opened = openings(&to_frame);
    assert!((opened[0].0 - 0.12).abs() < 0.002, "{opened:?}");
}

#[test]
fn a_hand_on_the_frame_of_a_worn_machine_without_a_ground_is_felt_on_the_utility_only() {
    let worn =
        "(name: \"fridge\", circuit: \"fridge\", leak_ohm: 500.0, grounded: false, plug: Plug,";
    let changes = [
        (PLATE, BONDED_GUARDED),
        ("(name: \"fridge\", circuit: \"fridge\", plug: Plug,", worn),
    ];
    let scenario = changed(
        &changes,
        &[("[\"inlet-cord\"]", "[\"inlet-cord\", \"extension-a\"]")],
    );
    let felt = |played: &Played| {
        let mut plant = played.drill.plant().clone();
        plant.touch_frame("fridge-frame").unwrap()
    };
    let mut at_the_wall = Drill::start(&scenario, 1).unwrap();
    at_the_wall.advance(DrillTime::from_secs(5));
    let mut plant = at_the_wall.plant().clone();
    let hand = plant.touch_frame("fridge-frame").unwrap();
    let amps = hand.amps;
    // One loop: 120 V through 500 ohms of insulation, the body, the ground under the feet, and the electrodes.
    let by_hand = 120.0 / (500.0 + hand.volts / amps + FEET_OHM);
    assert!(
        (amps / by_hand - 1.0).abs() < 0.05,
        "{amps} A, by hand {by_hand}"
    );
    assert!(amps > 6.0 * MUST_TRIP_A, "a device would see {amps} A");
    // A generator that stands on nothing but its tires has no way back for that current, bonded or not.
    let left_on = list("ground-fault-worn-fridge").replace("set fridge-plug unplugged", "");
    let amps = felt(&play_text(&scenario, 1, &left_on)).amps;
    assert!(amps < 1e-6, "{amps} A");
}

/// The shipped house with a drop that comes loose half a minute after the start.
fn with_loose_drop(what: &str) -> Arc<Scenario> {
    let story = format!("(minute: 0, second: 30, what: {what}),");
    changed(&[], &[("(minute: 0, second: 30, what: Outage),", &story)])
}

/// Appliances destroyed, with the volts they got.
fn destroyed(played: &Played) -> Vec<(String, f64)> {
    let events = played.drill.trace().events();
    let destroyed = events.filter_map(|(_, event)| {
        if let Event::Protection(ProtectionEvent::Damaged { appliance, volts }) = event {
            let name = &played.drill.site().appliances[*appliance].name;
            Some((name.clone(), *volts))
        } else {
            None
        }
    });
    destroyed.collect()
}

/// Findings of destroyed electronics: whether each is a breach.
fn damage_found(played: &Played) -> Vec<bool> {
    let findings = played.verdict.findings.iter();
    let damaged = findings.filter(|f| f.rule == Rule::Damaged);
    damaged.map(|f| f.breach).collect()
}

#[test]
fn after_a_lost_neutral_a_house_that_is_off_within_seconds_keeps_its_electronics() {
    let played = play(&with_loose_drop("NeutralLost"), "lost-neutral-main-off");
    assert_eq!(destroyed(&played), []);
    assert!(damage_found(&played).is_empty());
}

#[test]
fn a_lost_neutral_burns_out_what_is_on_the_light_leg_and_leaving_it_on_is_a_breach() {
    let scenario = with_loose_drop("NeutralLost");
    let left_on = play(&scenario, "lost-neutral-left-on");
    let first = destroyed(&left_on)[0].clone();
    assert_eq!(first.0, "bedroom-lights", "40 W on the light leg");
    assert!(first.1 > 1.3 * 120.0 && first.1 < 240.0, "{first:?}");
    assert!(damage_found(&left_on).contains(&true));
    // Events of ten minutes stay few: nothing flickers between on and off.
    let moments = left_on.drill.trace().moments.len();
    assert!(moments < 300, "{moments} moments");
    // The microwave makes that leg the heavy one: now the other leg's electronics go, at more than 200 V.
    let switched = play(&scenario, "lost-neutral-microwave");
    let names: Vec<_> = destroyed(&switched).into_iter().map(|d| d.0).collect();
    assert_eq!(names, ["kitchen-lights", "television"]);
    assert!(destroyed(&switched).iter().all(|d| d.1 > 200.0));
    assert_eq!(damage_found(&switched), [true, true]);
}

#[test]
fn a_lost_leg_is_fed_through_what_hangs_between_the_legs_and_burns_nothing() {
    let played = play(&with_loose_drop("LegLost"), "lost-leg");
    assert_eq!(destroyed(&played), []);
    let site = played.drill.site();
    let volts = |at: usize, name: &str| {
        let moments = &played.drill.trace().moments;
        let index = site.appliance_index(name).unwrap();
        moments[at].readings.appliance(index).volts
    };
    let moments = &played.drill.trace().moments;
    let look = moments.iter().position(|m| m.at.seconds() > 39.0).unwrap();
    // 40 W of lamps behind the water heater's 12.8 ohms: nearly all of leg 1's volts.
    assert!(
        volts(look, "bedroom-lights") > 105.0,
        "{}",
        volts(look, "bedroom-lights")
    );
    assert!(
        volts(look, "water-heater") < 15.0,
        "{}",
        volts(look, "water-heater")
    );
    assert!((volts(look, "television") - 119.0).abs() < 3.0);
    let stalled = played.drill.trace().events();
    let stalled = stalled
        .filter(|(_, e)| matches!(e, Event::Stalled { .. }))
        .count();
    assert!(
        stalled > 0,
        "a motor on that leg can't start through a heater"
    );
}

/// The shipped house with a heater on the garage's circuit, and the cords that are taken.
fn with_heater(circuit: &str, watts: &str, cords: &str) -> Arc<Scenario> {
    let heater = format!(
        "appliances: [\n    (name: \"heater\", circuit: \"{circuit}\", plug: Plug, work: Resistive(watts: {watts}), demand: Switch(on_at_start: true)),"
    );
    changed(
        &[("appliances: [", &heater)],
        &[
            ("[\"inlet-cord\"]", cords),
            ("(minute: 0, second: 30, what: Outage),", ""),
        ],
    )
}

/// Names of the breakers that tripped, with the amps and the second at which each did.
fn tripped(played: &Played) -> Vec<(String, f64, f64)> {
    let events = played.drill.trace().events();
    let tripped = events.filter_map(|(m, event)| {
        if let Event::Tripped { control, amps } = event {
            let name = &played.drill.site().control(*control)?.name;
            Some((name.clone(), *amps, m.at.seconds()))
        } else {
            None
        }
    });
    tripped.collect()
}

#[test]
fn a_breaker_that_has_cooled_is_reset_and_holds_once_the_load_is_off() {
    let played = play(
        &with_heater("garage", "3600.0", "[\"inlet-cord\"]"),
        "breaker-reset-cool",
    );
    let trips = tripped(&played);
    assert_eq!(trips.len(), 1, "{trips:?}");
    let (name, amps, seconds) = &trips[0];
    assert_eq!(name, "breaker-garage");
    // From cold: 118.2 s x ln(i^2 / (i^2 - 1.44)), with i in multiples of 20 A; 30 A less what the wire takes.
    // The volts move a little as other things start, and so do the amps.
    let square = (amps / 20.0) * (amps / 20.0);
    let by_hand = 118.2 * portable::ln(square / (square - 1.44));
    assert!(
        (seconds / by_hand - 1.0).abs() < 0.03,
        "{trips:?}, by hand {by_hand} s"
    );
    assert!((26.0..30.0).contains(amps), "{amps} A");
    assert_eq!(played.refused(), [] as [String; 0]);
}

#[test]
fn a_breaker_reset_hot_does_not_latch_and_one_reset_into_the_load_trips_again() {
    let played = play(
        &with_heater("garage", "3600.0", "[\"inlet-cord\"]"),
        "breaker-reset-hot",
    );
    assert_eq!(played.refused(), ["refused-breaker-hot"]);
    let trips = tripped(&played);
    assert_eq!(trips.len(), 2, "{trips:?}");
    // The second time it starts warm: sooner than the first.
    let second = trips[1].2 - 240.0;
    assert!(second < trips[0].2, "{trips:?}");
    assert_eq!(finds(&played, Rule::Tripped), Some(true));
}

#[test]
fn an_overload_on_one_leg_opens_both_poles() {
    let scenario = with_heater(
        "fridge",
        "5600.0",
        "[\"inlet-cord\", \"extension-a\", \"extension-b\"]",
    );
    let played = play(&scenario, "breaker-common-trip");
    let trips = tripped(&played);
    assert!(
        trips.iter().any(|(name, ..)| name == "generator-output"),
        "{trips:?}"
    );
    let outlet = played.drill.readings().point("generator-outlet");
    assert!(
        outlet.volts < 1.0,
        "{} V on the leg that wasn't overloaded",
        outlet.volts
    );
    assert!(
        played.drill.readings().generator.volts > 200.0,
        "the engine runs on"
    );
}

#[test]
fn the_readings_of_a_site_tell_what_each_device_sees_and_what_the_ground_carries() {
    let sets = [
        "main=off",
        "inlet-cord-house-end=inlet",
        "inlet-cord-generator-end=generator",
        "engine=running",
        "generator-output=on",
        "generator-breaker=on",
    ]
    .map(str::to_owned);
    let words = Words::new("en");
    let guarded = library(&[(PLATE, BONDED_GUARDED)], &[]);
    let view = read(&guarded, "two-gables", &sets, &words).unwrap();
    let device = view
        .gfcis
        .iter()
        .find(|g| g.id == "generator-gfci")
        .unwrap();
    assert!(device.opens && device.residual_ma > 1000.0, "{device:?}");
    assert!(device.neutral_loop_ohm.unwrap() < 0.5, "{device:?}");
    let ground = view.things.iter().find(|t| t.id == "inlet-cord-ground");
    assert!(
        ground.unwrap().sentence.starts_with("Ground wire"),
        "{ground:?}"
    );
    let floating = library(&[(PLATE, FLOATING_GUARDED)], &[]);
    let view = read(&floating, "two-gables", &sets, &words).unwrap();
    let device = view
        .gfcis
        .iter()
        .find(|g| g.id == "generator-gfci")
        .unwrap();
    assert!(
        !device.opens && device.neutral_loop_ohm.is_none(),
        "{device:?}"
    );
}

/// The furnace on a plug fuse of 8 A, with no outage.
fn with_fused_furnace(kind: &str) -> Arc<Scenario> {
    let fused = format!(
        "(name: \"furnace\", breaker_amps: 8, fuse: {kind}, gauge: \"14\", length_ft: 30.0"
    );
    changed(
        &[(
            "(name: \"furnace\", breaker_amps: 15, gauge: \"14\", length_ft: 30.0",
            &fused,
        )],
        &[
            ("(minute: 0, second: 30, what: Outage),", ""),
            (
                "\"breaker-furnace\": [\"on\"]",
                "\"fuse-furnace\": [\"in\"]",
            ),
        ],
    )
}

#[test]
fn a_motor_s_start_blows_a_fast_fuse_and_each_new_one_and_a_time_delay_fuse_holds() {
    let fast = play(&with_fused_furnace("Fast"), "fuse-replaced");
    let blown = tripped(&fast);
    assert_eq!(blown.len(), 2, "{blown:?}");
    assert!(
        blown.iter().all(|(name, ..)| name == "fuse-furnace"),
        "{blown:?}"
    );
    // 28 A of standstill on 8 A: within the 1.5 s that the fan needs to reach its speed.
    assert!((25.0..29.0).contains(&blown[0].1), "{blown:?}");
    assert_eq!(fast.refused(), ["refused-fuse-out-first"]);
    assert_eq!(finds(&fast, Rule::FuseBlown), Some(true));
    assert_eq!(finds(&fast, Rule::Tripped), None);
    let slow = play(&with_fused_furnace("TimeDelay"), "fuse-left-alone");
    assert!(tripped(&slow).is_empty());
    assert!(runs(&slow, "furnace"));
}

#[test]
fn only_a_set_and_a_switch_that_both_leave_the_bond_to_the_other_are_found_without_one() {
    for (set, neutral, bare) in [
        (PLATE, "Switched", true),
        (PLATE, "Solid", false),
        (BONDED_BARE, "Switched", false),
        (BONDED_BARE, "Solid", false),
    ] {
        let played = play(&with_transfer(set, neutral), "ground-fault-transfer");
        let found = played.found().iter().any(|f| f.0 == Rule::NothingBonds);
        assert_eq!(found, bare, "{set} on {neutral}");
    }
}

#[test]
fn a_shared_neutral_carries_the_difference_of_two_legs_and_the_sum_of_legs_that_are_tied() {
    let breakers = ["breaker-microwave", "breaker-space-heater"];
    let on_utility = "set space-heater-switch on\nset microwave-switch on\nwait 10s\n";
    let tied = list("half-the-house-sum");
    for (text, fewest, most) in [(on_utility, 0.0, 6.0), (tied.as_str(), 27.0, 31.0)] {
        let played = play_text(&shipped("half-the-house"), 1, text);
        let moments = played.drill.trace().moments.iter();
        let both = moments.filter(|m| breakers.iter().all(|b| m.readings.amps_of(b) > 12.0));
        let neutral: Vec<f64> = both
            .map(|m| m.readings.amps_of("neutral-microwave"))
            .collect();
        assert!(!neutral.is_empty());
        let within = |a: &f64| (fewest..most).contains(a);
        assert!(neutral.iter().all(within), "{neutral:?}");
    }
}
