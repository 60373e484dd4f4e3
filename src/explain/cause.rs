//! What on a way of energy is not as it should be: the cause, and not only a thing that is passed.
//!
//! Read from how things stand in the moment of the way: a neutral that is broken, contacts that are welded, a jumper around an open break, a cord with a plug at each end.
//! Not covered: wires swapped inside a panel, which the drill lets the learner find.

use crate::drill::{Drill, Moment};
use crate::site::{FarEnd, PositionId, Positions, Readings, Spot};
use crate::words::{Arg, Message, Unit};

use super::{Stage, value};

/// The stages of a way, with what is the cause said where it is passed.
pub(super) fn named(drill: &Drill, moment: &Moment, way: Vec<Stage>) -> Vec<Stage> {
    let mut stages = Vec::with_capacity(way.len() + 1);
    for mut stage in way {
        if let Some(id) = hidden(drill, moment, &stage) {
            id.clone_into(&mut stage.text.id);
        }
        let after = match stage.at.as_str() {
            "drop" => halves(drill, (&moment.positions, &moment.readings)),
            thing => two_plugs(drill, moment, thing),
        };
        stages.push(stage);
        stages.extend(after);
    }
    stages
}

/// Of a break on the line with a jumper, or a switch that stands open and carries current all the same: what is said instead.
fn hidden(drill: &Drill, moment: &Moment, stage: &Stage) -> Option<&'static str> {
    let thing = stage.at.as_str();
    let site = drill.site();
    let work = site.line_work.as_ref()?;
    let stands = |id| moment.positions.get(id);
    let own = work.breaks.iter().find(|b| b.name == thing);
    if let Some(own) = own.filter(|b| stands(b.jumper) != PositionId(0)) {
        let open = own.is_jumped(&moment.positions);
        return Some(if open {
            "stage-jumper"
        } else {
            "stage-jumper-besides"
        });
    }
    let open = stands(site.line.feeder) == PositionId(0);
    let welded = stands(work.head_contacts) != PositionId(0);
    let carries = thing == "feeder" && stage.text.id == "stage-carries";
    (carries && open && welded).then_some("stage-welded")
}

/// Share of the volts between the hots from which those of the two sides plainly add up to more: a motor's lie out of step.
const SHIFTED: f64 = 1.005;

/// What a broken neutral of the drop makes of the two sides of the house, while more than nothing stands between the hots.
pub(super) fn halves(
    drill: &Drill,
    (positions, readings): (&Positions, &Readings),
) -> Option<Stage> {
    let line = &drill.site().line;
    let broken = positions.get(line.drop_neutral) != PositionId(0);
    let house = readings.point("bus");
    let rest = house.legs_v[0].min(house.legs_v[1]);
    let more = house.volts + rest > SHIFTED * house.volts_across;
    (broken && house.volts_across > house.volts).then(|| Stage {
        at: "drop".to_owned(),
        text: Message::new("stage-halves")
            .quantity("across", house.volts_across, Unit::Volts)
            .quantity("high", house.volts, Unit::Volts)
            .with("more", Arg::Count(i64::from(more)))
            .quantity("rest", rest, Unit::Volts),
        value: value(house.volts, Unit::Volts),
    })
}

/// Of a cord with a plug at each end, both plugged in: what its blades would stand at.
fn two_plugs(drill: &Drill, moment: &Moment, thing: &str) -> Option<Stage> {
    let cord = drill.site().cords.iter().find(|c| c.name == thing)?;
    let FarEnd::Blades(end, _) = cord.far else {
        return None;
    };
    let in_set = matches!(cord.near_spot(&moment.positions), Spot::Receptacle(_));
    let in_wall = moment.positions.get(end) != PositionId(0);
    let blades = moment.readings.point(&format!("{thing}-far-end"));
    let volts = blades.volts.max(blades.volts_across);
    (in_set && in_wall && blades.fed.customer()).then(|| Stage {
        at: thing.to_owned(),
        text: Message::new("stage-two-plugs").quantity("volts", volts, Unit::Volts),
        value: value(volts, Unit::Volts),
    })
}
