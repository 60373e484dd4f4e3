//! Laws of a line that a crew works, asked of the network in given positions: what a customer's set does to it, and what grounds do to that; and of its proof, that a lenient marking is caught.

use std::sync::Arc;

use outage_drill::drill::Moment;
use outage_drill::proof::{Marker, Property, Standing, marked, prove};
use outage_drill::scenario::Scenario;
use outage_drill::site::{Body, Constraint, Drive, LoadState, Plant, Positions, Readings, Site};

use crate::playing::shipped;

/// The engine at speed, and the engine still.
const RUNNING: Drive = Drive {
    running: true,
    angle_deg: 0.0,
    slow: false,
    battery: false,
    solar_w: 0.0,
    charge_w: 0.0,
};
const STILL: Drive = Drive {
    running: false,
    ..RUNNING
};

/// Readings of the line of a drill with these controls moved and nobody near it.
fn read(drill: &str, moved: &[(&str, &str)], drive: Drive) -> Readings {
    solve(drill, moved, drive, Body { touching: false })
}

/// Readings with a worker's hand on the wire at the crew's pole.
fn held(drill: &str, moved: &[(&str, &str)], drive: Drive) -> Readings {
    solve(drill, moved, drive, Body { touching: true })
}

fn solve(drill: &str, moved: &[(&str, &str)], drive: Drive, body: Body) -> Readings {
    let scenario = shipped(drill);
    let site = &scenario.site;
    let positions = stand(site, &scenario.start, moved);
    let mut plant = Plant::new(site).unwrap();
    let loads = vec![LoadState::Off; site.appliances.len()];
    let readings = plant.read(site, &positions, &loads, drive, body);
    assert!(readings.converged);
    readings
}

fn stand(site: &Site, start: &Positions, moved: &[(&str, &str)]) -> Positions {
    let mut positions = start.clone();
    for (control, position) in moved {
        let id = site.control_id(control).unwrap();
        let control = site.control(id).unwrap();
        positions.set(id, control.position(position).unwrap());
    }
    positions
}

const ROAD: &str = "engine-on-the-road";

#[test]
fn one_set_behind_its_transformer_brings_a_line_left_alone_to_its_full_volts() {
    let readings = read(ROAD, &[], RUNNING);
    let volts = readings.point("pole-3").volts;
    assert!((6_800.0..7_400.0).contains(&volts), "{volts} V");
    assert!(readings.point("pole-3").fed.customer());
    assert!(!readings.point("pole-2").fed.any(), "beyond the break");
    let open = read(ROAD, &[("cutout-pole-5", "open")], RUNNING);
    assert!(!open.point("pole-3").fed.any(), "behind an open cutout");
}

#[test]
fn the_same_set_into_grounds_gives_amps_and_no_volts() {
    let readings = held(ROAD, &[("grounds-pole-3", "both-ends")], RUNNING);
    let volts = readings.point("pole-3").volts;
    assert!(volts < 1.0, "{volts} V");
    let ratio = 7_200.0 / 240.0;
    let set_a = readings.generator.amps;
    let lead_a = readings.amps_of("grounds-pole-3");
    assert!(set_a > 3.0 * 25.0, "{set_a} A from a set of 25 A");
    assert!(
        (lead_a * ratio / set_a - 1.0).abs() < 0.1,
        "{lead_a} A in the lead, {set_a} A in the set"
    );
    assert!(readings.shock.is_none(), "hands on a grounded wire");
}

#[test]
fn a_hand_on_the_line_with_no_grounds_drags_the_set_down_and_is_lethal_all_the_same() {
    let shock = held(ROAD, &[], RUNNING).shock.unwrap();
    assert!(shock.amps.low > 1.0, "{shock:?}");
    assert!(shock.volts.high < 7_200.0, "{shock:?}");
}

#[test]
fn the_utility_into_grounds_is_a_fault_that_spares_only_who_stands_on_them() {
    let live = [("feeder", "closed"), ("broken-span", "whole")];
    let zone = [live.as_slice(), &[("grounds-pole-3", "both-ends")]].concat();
    let readings = held(ROAD, &zone, STILL);
    assert!(
        readings.amps_of("feeder") > 1_000.0,
        "{} A",
        readings.amps_of("feeder")
    );
    assert!(readings.shock.is_none(), "{:?}", readings.shock);
    let elsewhere = [live.as_slice(), &[("grounds-pole-4", "both-ends")]].concat();
    let shock = held(ROAD, &elsewhere, STILL).shock.unwrap();
    assert!(shock.volts.high > 100.0, "{shock:?}");
}

#[test]
fn welded_contacts_and_a_jumper_carry_past_handles_that_say_open() {
    let line = [("broken-span", "whole"), ("disconnect", "open")];
    assert!(
        read("visible-break", &line, STILL)
            .point("pole-3")
            .fed
            .utility
    );
    let seen = [line.as_slice(), &[("jumper-disconnect", "absent")]].concat();
    assert!(
        !read("visible-break", &seen, STILL)
            .point("pole-3")
            .fed
            .any()
    );
}

#[test]
fn a_loop_is_fed_from_either_end() {
    let none = read("two-feeds", &[], STILL);
    assert!(!none.point("pole-4").fed.any());
    let tie = read("two-feeds", &[("tie", "closed")], STILL);
    assert!(tie.point("pole-4").fed.utility && !tie.point("pole-3").fed.any());
    let head = read("two-feeds", &[("feeder", "closed")], STILL);
    assert!(head.point("pole-3").fed.utility && !head.point("pole-4").fed.any());
}

/// The proof of a drill with a marking of its own: how far marking and judge agree.
fn agreement(drill: &str, marker: Marker<'_>) -> Standing {
    let proof = prove(&shipped(drill), marker).unwrap();
    proof.standing(Property::MarkingAgrees).unwrap().clone()
}

#[test]
fn a_marking_that_takes_grounds_anywhere_for_grounds_at_the_work_is_caught() {
    let lenient = |scenario: &Scenario, moment: &Moment| {
        let work = scenario.site.line_work.as_ref().unwrap();
        let some = work.sets_on(&moment.positions) > 0;
        let mut stand = marked(scenario, moment);
        stand.out_of_zone &= !some;
        stand
    };
    assert!(matches!(
        agreement("return-of-grounds", &lenient),
        Standing::Broken(_)
    ));
}

#[test]
fn a_marking_that_trusts_an_open_handle_without_a_tag_is_caught() {
    let trusting = |scenario: &Scenario, moment: &Moment| {
        let site = &scenario.site;
        let open = site.control_id("disconnect").unwrap();
        let mut stand = marked(scenario, moment);
        stand.unbarred &= !site.stands(&moment.positions, open, "open");
        stand
    };
    assert!(matches!(
        agreement("return-of-grounds", &trusting),
        Standing::Broken(_)
    ));
}

#[test]
fn a_line_whose_tag_does_not_hold_its_handle_is_still_judged_by_its_blades() {
    let mut scenario = shipped("return-of-grounds").as_ref().clone();
    let mut site = scenario.site.as_ref().clone();
    site.constraints
        .retain(|c| !matches!(c, Constraint::Holds { why, .. } if why == "refused-tagged"));
    scenario.site = Arc::new(site);
    let proof = prove(&Arc::new(scenario), &marked).unwrap();
    let agrees = proof.standing(Property::MarkingAgrees);
    assert_eq!(agrees, Some(&Standing::ProvedForPositions));
}
