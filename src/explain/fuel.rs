//! How spilled fuel caught fire: the metal's heat, what gasoline gives off in that air, and what lights it; and how fuel that is kept indoors can.
//!
//! All of it is of the moment of the fire, or of the room in which the can stood; the limits are published ranges, taken at the end that is worse.
//! Not covered: how a fire spreads, and vapor that leaks from a can that nobody spills.

use crate::drill::{Drill, Event, Moment, What};
use crate::hazard::fuel_vapor::{FLASH_POINT_C, Igniter, LEAST_IGNITION_C, Pour, igniter};
use crate::marking::Finding;
use crate::units::DrillTime;
use crate::words::{Arg, Message, Unit};

use super::{Stage, of_evidence, value};

/// The stages of a finding about fuel that burns.
pub(super) fn stages(drill: &Drill, finding: &Finding) -> Vec<Stage> {
    let moment = drill.trace().moments.get(finding.moment);
    let Some((What::Happened(Event::FuelFire { celsius }), moment)) =
        moment.map(|moment| (&moment.what, moment))
    else {
        return Vec::new();
    };
    burns(drill, moment, *celsius)
}

/// Stages of a can that is kept indoors, and the number of the finding that each one shows.
const KEPT: [(&str, &str); 4] = [
    ("stage-can", "lasted"),
    ("stage-cup", "grams"),
    ("stage-floor-air", "mix"),
    ("stage-can-lit", "burns"),
];

/// The stages of a finding about fuel that is kept indoors: the room, what a cup of it gives off, what that makes of the air at the floor, and what lights it.
pub(super) fn kept(drill: &Drill, finding: &Finding) -> Vec<Stage> {
    let can = drill.site().indoors.can.as_ref();
    let control = can.and_then(|can| drill.site().control(can.control));
    let at = control.map_or("house", |c| c.name.as_str());
    KEPT.iter()
        .filter_map(|(id, shown)| of_evidence(finding, at, id, shown))
        .collect()
}

/// From metal at this temperature to the fire.
fn burns(drill: &Drill, moment: &Moment, celsius: f64) -> Vec<Stage> {
    let engine = moment.conditions.engine;
    let running = engine.running_since.is_some();
    let stopped = engine.stopped_at.unwrap_or(moment.at);
    let time = if running {
        DrillTime::ZERO
    } else {
        moment.at.since(stopped)
    };
    let pour = Pour {
        muffler_c: celsius,
        running,
        flame: false,
    };
    let by = match igniter(&pour) {
        Igniter::Engine => "engine",
        Igniter::HotSurface => "metal",
        Igniter::Flame | Igniter::Nothing => "margin",
    };
    let stage = |text: Message, shown: f64| Stage {
        at: "generator".to_owned(),
        text,
        value: value(shown, Unit::Celsius),
    };
    let how = if running { "running" } else { "stopped" };
    vec![
        stage(
            Message::new("stage-fuel-metal")
                .with("how", Arg::Verbatim(how.to_owned()))
                .with("time", Arg::lasting(time))
                .quantity("surface", celsius, Unit::Celsius),
            celsius,
        ),
        stage(
            Message::new("stage-fuel-vapor")
                .quantity("flash", FLASH_POINT_C, Unit::Celsius)
                .quantity("air", drill.site().ambient_c, Unit::Celsius),
            FLASH_POINT_C,
        ),
        stage(
            Message::new("stage-fuel-lit")
                .with("by", Arg::Verbatim(by.to_owned()))
                .quantity("least", LEAST_IGNITION_C, Unit::Celsius),
            LEAST_IGNITION_C,
        ),
    ]
}
