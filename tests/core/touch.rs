//! Hands on worn appliances: what is felt with and without a ground, behind a ground-fault device, and on a set that floats.

use std::sync::Arc;

use outage_drill::drill::Event;
use outage_drill::hazard::shock::{Zone, zone};
use outage_drill::marking::{Rule, mark};
use outage_drill::scenario::Scenario;
use outage_drill::site::{
    Bond, Control, ControlId, Kind, Operator, Plate, PositionId, Positions, Site,
};

use crate::playing::{Played, list, play_text, shipped};

/// Ohms of worn insulation: far too much to trip a breaker, far too little to stop a shock.
const WORN_OHM: f64 = 100.0;

/// A touch that is told: volts, amps, seconds, and the device that opened.
type Touched = (f64, f64, f64, Option<ControlId>);

/// The shipped drill without a slide, its site changed.
fn changed(change: impl Fn(&mut Site, &mut Positions)) -> Arc<Scenario> {
    let mut scenario = shipped("no-slide").as_ref().clone();
    let mut site = scenario.site.as_ref().clone();
    change(&mut site, &mut scenario.start);
    scenario.site = Arc::new(site);
    Arc::new(scenario)
}

fn worn(site: &mut Site, grounded: bool) {
    let fridge = site.appliance_index("fridge").unwrap();
    site.appliances[fridge].leak_ohm = Some(WORN_OHM);
    site.appliances[fridge].grounded = grounded;
}

/// Puts a ground-fault device at the refrigerator's outlet, set.
fn guarded(site: &mut Site, start: &mut Positions) -> ControlId {
    let id = ControlId(u16::try_from(site.controls.len()).unwrap());
    site.controls.push(Control {
        name: "gfci-fridge".to_owned(),
        kind: Kind::Gfci,
        positions: vec!["tripped".to_owned(), "set".to_owned()],
        operator: Operator::Learner,
        place: "house".to_owned(),
        plate: Plate::default(),
    });
    let mut longer = Positions::first(site.controls.len());
    for index in 0..id.0 {
        longer.set(ControlId(index), start.get(ControlId(index)));
    }
    longer.set(id, PositionId(1));
    *start = longer;
    let circuit = site.appliances[site.appliance_index("fridge").unwrap()].circuit;
    site.circuits[circuit].gfci = Some(id);
    id
}

fn touched(played: &Played) -> Vec<Touched> {
    let events = played.drill.trace().events();
    let touches = events.filter_map(|(_, event)| {
        if let Event::Touched(t) = event {
            Some((t.volts, t.amps, t.seconds, t.cleared_by))
        } else {
            None
        }
    });
    touches.collect()
}

/// Whether a touch is found, and whether as a breach.
fn found(played: &Played) -> Option<bool> {
    let findings = mark(played.drill.scenario(), played.drill.trace()).findings;
    let touch = findings.iter().find(|f| f.rule == Rule::Touch);
    touch.map(|f| f.breach)
}

#[test]
fn a_worn_case_without_a_ground_shocks_the_hand_on_the_plug_and_fails_the_run() {
    let scenario = changed(|site, _| worn(site, false));
    let played = play_text(&scenario, 1, &list("touch-unplugs-a-worn-case"));
    let [(volts, amps, seconds, device)] = touched(&played)[..] else {
        panic!("{:?}", touched(&played));
    };
    // 119 V over worn insulation, a body of about 1 250 ohms and damp ground of 150: by hand.
    let by_hand = 119.0 / (WORN_OHM + volts / amps + 150.0);
    assert!((amps / by_hand - 1.0).abs() < 0.02, "{amps} A, {by_hand} A");
    assert!((85.0..105.0).contains(&volts), "{volts} V");
    assert_eq!(device, None);
    assert_eq!(zone(amps * 1000.0, seconds), Zone::Ac42);
    assert_eq!(found(&played), Some(true));
    assert!(!played.verdict.passed);
}

#[test]
fn a_sound_ground_keeps_the_worn_case_near_zero_and_nothing_is_felt() {
    let scenario = changed(|site, _| worn(site, true));
    let played = play_text(&scenario, 1, &list("touch-unplugs-a-worn-case"));
    assert_eq!(touched(&played), []);
    let before = &played.drill.trace().moments[0].readings;
    let volts = before.point("fridge-frame").volts_to_earth.unwrap();
    assert!(volts < 3.0, "{volts} V");
}

#[test]
fn a_breaker_turned_off_first_leaves_nothing_to_feel() {
    let scenario = changed(|site, _| worn(site, false));
    let played = play_text(&scenario, 1, &list("touch-breaker-first"));
    assert_eq!(touched(&played), []);
}

#[test]
fn a_ground_fault_device_cuts_the_same_shock_to_a_start() {
    let scenario = changed(|site, start| {
        worn(site, false);
        guarded(site, start);
    });
    let played = play_text(&scenario, 1, &list("touch-unplugs-a-worn-case"));
    let [(_, amps, seconds, device)] = touched(&played)[..] else {
        panic!("{:?}", touched(&played));
    };
    assert!(amps > 0.05 && seconds <= 0.025, "{amps} A for {seconds} s");
    assert!(zone(amps * 1000.0, seconds) <= Zone::Ac2);
    assert_eq!(found(&played), Some(false), "a warning, not a breach");
    let device = device.expect("the device opens");
    assert_eq!(played.drill.positions().get(device), PositionId(0));
}

#[test]
fn on_a_set_that_floats_one_worn_case_finds_no_way_back_through_earth() {
    for bond in [Bond::Floating, Bond::Bonded] {
        let scenario = changed(|site, _| {
            worn(site, false);
            site.generator.bond = bond;
        });
        let played = play_text(&scenario, 1, &list("touch-on-the-set"));
        // Only the pull at the wall, before the outage is over, may be felt: the utility is gone by then.
        assert_eq!(touched(&played), [], "{bond:?}");
    }
}
