//! Sources that are not in step: each at its own frequency, combined by root-sum-square where their neutrals are joined.
//!
//! An interlock leaves both neutrals on one bar, so in the correct state utility and generator still share the drop's neutral and the ground.

use outage_drill::site::{Body, Drive, LoadState, Plant, PointReading, Positions, Site};

use crate::playing::shipped;

/// A house whose interlocked panel is on the generator, while the utility is or isn't in the street and the engine does or doesn't run.
fn reads(site: &Site, start: &Positions, [utility, running]: [bool; 2]) -> PointReading {
    let mut plant = Plant::new(site).unwrap();
    let mut positions = start.clone();
    let mut set = |control: &str, position: &str| {
        let id = site.control_id(control).unwrap();
        let position = site.control(id).unwrap().position(position).unwrap();
        positions.set(id, position);
    };
    set("main", "off");
    set("generator-breaker", "on");
    set("generator-output", "on");
    set("inlet-cord-house-end", "inlet");
    set("inlet-cord-generator-end", "generator");
    set("breaker-water-heater", "off");
    set("feeder", if utility { "closed" } else { "open" });
    let loads = site.appliances.iter().map(|a| match a.name.as_str() {
        "kitchen-lights" | "bedroom-lights" => LoadState::Running,
        _ => LoadState::Off,
    });
    let loads: Vec<LoadState> = loads.collect();
    let drive = Drive {
        running,
        ..Drive::default()
    };
    let body = Body { touching: false };
    let readings = plant.read(site, &positions, &loads, drive, body);
    assert!(readings.converged && !readings.generator.tied);
    readings.point("bus")
}

#[test]
fn what_the_street_lifts_a_joined_neutral_by_adds_to_the_generators_volts_by_squares() {
    let scenario = shipped("there-and-back");
    let (site, start) = (&scenario.site, &scenario.start);
    let volts = |utility, running| {
        let reading = reads(site, start, [utility, running]);
        reading.volts_to_earth.unwrap()
    };
    let (street, own, both) = (volts(true, false), volts(false, true), volts(true, true));
    assert!(
        (0.01..5.0).contains(&street),
        "the street lifts the neutral: {street} V"
    );
    assert!(
        (110.0..125.0).contains(&own),
        "the generator feeds the leg: {own} V"
    );
    let lifted = (both * both - own * own).max(0.0).sqrt();
    assert!(
        (lifted / street - 1.0).abs() < 1e-3,
        "{both} V on the leg: lifted by {lifted} V, the street alone lifts by {street} V"
    );
    assert!(
        both - own < 0.01 * street,
        "in step they would add to {} V",
        own + street
    );
}
