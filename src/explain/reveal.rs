//! How a number or an outcome that was foretold comes about, told from the drill that was played on to it.
//!
//! Each function takes the drill as it then stands and gives the stages in the order in which one follows from the other.
//! Every number is a reading, a rating or a part of the site; nothing is computed here but a ratio of two readings, and the rest of a whole.

use crate::drill::Drill;
use crate::site::{ApplianceReading, Supply};
use crate::units::DrillTime;
use crate::words::{Arg, Message, Unit};

use super::cause::halves;
use super::way::{Flow, along, holds, makes_v, on_line, source};
use super::{Stage, value};

/// Amps and volts that are not worth a word.
const LEAST: f64 = 0.05;

/// Volts at a point: the way from the set and what each stage makes of them, or what else feeds it.
pub fn volts(drill: &Drill, point: &str) -> Vec<Stage> {
    let readings = drill.readings();
    let at = readings.point(point);
    let own = at.fed.generator && !readings.generator.tied;
    let stands = (drill.positions(), readings);
    let from = Supply::Generator;
    let way = own
        .then(|| drill.plant().way(stands, from, point, &|_| false))
        .flatten();
    let mut stages = Vec::new();
    if let Some(way) = way {
        let flow = Flow {
            outward: point == "service" || on_line(drill, point),
            to_earth: false,
        };
        stages.push(source(drill, readings, from));
        stages.extend(along(drill, readings, &way, flow));
    }
    if let Some(index) = stages.iter().position(|s| s.at == "transformer") {
        stages.insert(index + 1, ratio(drill));
    }
    stages.extend(halves(drill, (drill.positions(), readings)));
    stages.extend(live(drill, point));
    stages
}

/// What a tester shows at a point; where that is nothing, first what keeps the volts of each source from it.
pub fn live(drill: &Drill, point: &str) -> Vec<Stage> {
    let mut stages = if drill.readings().point(point).fed.any() {
        Vec::new()
    } else {
        held_back(drill, point)
    };
    stages.push(reading(drill, point));
    stages
}

/// What keeps the volts of each source from a point that nothing feeds: the source, and each open contact on the way from it.
fn held_back(drill: &Drill, point: &str) -> Vec<Stage> {
    let readings = drill.readings();
    let flow = Flow {
        outward: false,
        to_earth: false,
    };
    let mut stages = Vec::new();
    for from in [Supply::Utility, Supply::Generator, Supply::Battery] {
        let way = drill
            .plant()
            .way((drill.positions(), readings), from, point, &|id| {
                holds(drill, id)
            });
        let way = way.filter(|_| makes_v(drill, readings, from) > LEAST);
        let along = way.map(|way| along(drill, readings, &way, flow));
        let open = |stage: &Stage| stage.text.id == "stage-open";
        let held: Vec<Stage> = along.into_iter().flatten().filter(open).collect();
        if !held.is_empty() {
            stages.push(source(drill, readings, from));
            stages.extend(held);
        }
    }
    stages
}

/// What the transformer makes of each volt on the house's side.
fn ratio(drill: &Drill) -> Stage {
    let line = &drill.site().line;
    let high = line.poles.get(line.transformer_pole);
    let high = high.map_or(0.0, |p| drill.readings().point(&p.name).volts);
    let low = drill.readings().point("service").volts_across;
    let times = high / low;
    Stage {
        at: "transformer".to_owned(),
        text: Message::new("stage-ratio").quantity("ratio", times, Unit::Plain),
        value: value(times, Unit::Plain),
    }
}

/// What a tester shows at a point, and what feeds it.
pub fn reading(drill: &Drill, point: &str) -> Stage {
    let at = drill.readings().point(point);
    let volts = if at.volts < LEAST { 0.0 } else { at.volts };
    Stage {
        at: point.to_owned(),
        text: Message::new("stage-reading")
            .name("name", point)
            .said("fed", Message::new(format!("answer-{}", at.fed.word())))
            .quantity("volts", volts, Unit::Volts),
        value: value(volts, Unit::Volts),
    }
}

/// What the loads ask of the set, one by one, and what it is rated for.
pub fn watts(drill: &Drill) -> Vec<Stage> {
    let mut stages = loads(drill, |r, _| r.fed.generator);
    let generator = drill.readings().generator;
    let rated = drill.site().generator.spec_at(drill.positions()).rated_w;
    stages.push(Stage {
        at: "generator".to_owned(),
        text: Message::new("stage-asked")
            .quantity("asked", generator.asked_w.max(0.0), Unit::Watts)
            .quantity("rated", rated, Unit::Watts),
        value: value(generator.asked_w.max(0.0), Unit::Watts),
    });
    stages
}

/// What the loads behind a guard draw, one by one, and what passes it; of a cord, what it carries.
pub fn amps(drill: &Drill, thing: &str) -> Vec<Stage> {
    let site = drill.site();
    let passes = drill.readings().amps_of(thing);
    let guards = |circuit: usize| site.circuits.get(circuit).is_some_and(|c| c.guard == thing);
    let own = (0..site.circuits.len()).any(guards);
    let cord = site.cords.iter().find(|c| c.name == thing);
    let mut stages = match (cord, own) {
        (Some(_), _) => Vec::new(),
        (None, true) => loads(drill, |_, circuit| guards(circuit)),
        (None, false) => loads(drill, |r, _| r.fed.generator),
    };
    let guard = site.guards().find(|(_, c, _)| c.name == thing);
    let rated = guard.map_or(0.0, |(_, c, _)| f64::from(c.plate.rating_a));
    let rated = cord.map_or(rated, |c| c.make.ampacity_a());
    stages.push(Stage {
        at: thing.to_owned(),
        text: Message::new("stage-passes")
            .name("name", thing)
            .quantity("amps", passes, Unit::Amps)
            .quantity("rated", rated, Unit::Amps),
        value: value(passes, Unit::Amps),
    });
    stages
}

/// The loads that draw something, of those that are meant: by their readings and the index of their circuit.
fn loads(drill: &Drill, meant: impl Fn(&ApplianceReading, usize) -> bool) -> Vec<Stage> {
    let appliances = drill.site().appliances.iter().enumerate();
    appliances
        .map(|(index, a)| (a, drill.readings().appliance(index)))
        .filter(|(a, r)| r.amps >= LEAST && meant(r, a.circuit))
        .map(|(appliance, r)| Stage {
            at: appliance.name.clone(),
            text: Message::new("stage-load")
                .name("name", &appliance.name)
                .quantity("watts", r.watts, Unit::Watts)
                .quantity("amps", r.amps, Unit::Amps)
                .quantity("volts", r.volts, Unit::Volts),
            value: value(r.watts, Unit::Watts),
        })
        .collect()
}

/// Where the set stands, whether it runs, and what the air indoors holds by now.
pub fn room(drill: &Drill) -> Stage {
    let place = drill.site().generator_place(drill.positions());
    let runs = drill.conditions().engine.running_since.is_some();
    let id = if runs {
        "stage-room"
    } else {
        "stage-room-still"
    };
    let ppm = drill.conditions().ppm();
    Stage {
        at: "house".to_owned(),
        text: Message::new(id)
            .name("place", place.map_or("", |p| p.name.as_str()))
            .quantity("ppm", ppm, Unit::Ppm),
        value: value(ppm, Unit::Ppm),
    }
}

/// How the gas indoors grows, in thirds of the time foretold.
pub fn gas(from: &Drill, ahead: &Drill) -> Vec<Stage> {
    let started = from.now();
    let length = ahead.now().since(started);
    let mut stages = vec![room(from)];
    for part in 1..=3 {
        let after = DrillTime::from_millis(length.millis() * part / 3);
        let mut moments = ahead.trace().moments.iter();
        let last = moments.rfind(|m| m.at <= started + after);
        let ppm = if part == 3 {
            ahead.conditions().ppm()
        } else {
            last.map_or(0.0, |m| m.conditions.ppm())
        };
        stages.push(Stage {
            at: "house".to_owned(),
            text: Message::new("stage-gas")
                .with("time", Arg::lasting(after))
                .quantity("ppm", ppm, Unit::Ppm),
            value: value(ppm, Unit::Ppm),
        });
    }
    stages
}

/// A cord's amps and the volts lost along it, what they make together, and how warm it has got.
pub fn cord(drill: &Drill, index: usize) -> Vec<Stage> {
    let Some(cord) = drill.site().cords.get(index) else {
        return Vec::new();
    };
    let condition = drill.conditions().cord(index);
    let amps = drill.readings().amps_of(&cord.name);
    let lost = cord.make.voltage_drop_v(amps, condition.celsius);
    let heat = drill.cord_heat_w(index);
    let hottest = condition.hottest_c();
    let stage = |text: Message, shown: Message| Stage {
        at: cord.name.clone(),
        text: text.name("name", &cord.name),
        value: shown,
    };
    vec![
        stage(
            Message::new("stage-cord-loses")
                .quantity("amps", amps, Unit::Amps)
                .quantity("lost", lost, Unit::Volts)
                .quantity("heat", heat, Unit::Watts),
            value(heat, Unit::Watts),
        ),
        stage(
            Message::new("stage-cord-warm")
                .quantity("celsius", hottest, Unit::Celsius)
                .quantity("rated", cord.make.rated_c(), Unit::Celsius),
            value(hottest, Unit::Celsius),
        ),
    ]
}
