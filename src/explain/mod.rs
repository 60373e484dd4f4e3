//! Explanations: a finding and the trace it comes from, turned into messages with numbers.
//!
//! What happened, the way of energy from source to harm in the order in which it travels, why it matters, what to do now and next time, and the source.
//! The way is found in the site's graph for the positions of that moment, never scripted; every number is a reading, a rating or a cited value.

mod cord;
pub mod reveal;

use crate::drill::{Drill, Moment};
use crate::marking::{Finding, Rule};
use crate::site::Readings;
use crate::words::{Message, Unit};

/// One stage of the way.
#[derive(Debug, Clone, PartialEq)]
pub struct Stage {
    /// The thing it passes.
    pub at: String,
    /// What happens there.
    pub text: Message,
    /// The number that matters there.
    pub value: Message,
}

/// A finding, explained.
#[derive(Debug, Clone, PartialEq)]
pub struct Explanation {
    /// What happened.
    pub what: Message,
    /// The way of energy.
    pub path: Vec<Stage>,
    /// Why it matters.
    pub why: Message,
    /// What to do now.
    pub now: Message,
    /// What to do instead, next time.
    pub instead: Message,
    /// Where the rule comes from.
    pub source: Message,
}

/// Explains a finding of a drill.
pub fn explain(drill: &Drill, finding: &Finding) -> Explanation {
    let part = |part: &str| {
        let id = format!("finding-{}-{part}", finding.rule.name());
        Message {
            id,
            args: finding.evidence.clone(),
        }
    };
    Explanation {
        what: part("what"),
        path: path(drill, finding),
        why: part("why"),
        now: part("now"),
        instead: part("instead"),
        source: Message::new(format!("source-{}", finding.rule.name())),
    }
}

fn path(drill: &Drill, finding: &Finding) -> Vec<Stage> {
    if finding.rule == Rule::CordHot {
        return cord::path(finding);
    }
    let Some(moment) = drill.trace().moments.get(finding.moment) else {
        return Vec::new();
    };
    // Two sources that are tied push power both ways: that is told by the collision, not as one way.
    if moment.readings.generator.tied {
        return Vec::new();
    }
    let way = if matches!(finding.rule, Rule::LineFed | Rule::Shock) {
        drill.plant().way_to_crew(&moment.positions)
    } else if finding.rule == Rule::NoTransferEquipment {
        drill.plant().way_to_point(&moment.positions, "bus")
    } else {
        None
    };
    way.map(|way| line_path(drill, moment, &way, finding))
        .unwrap_or_default()
}

/// The stages along the things that energy passes.
fn line_path(drill: &Drill, moment: &Moment, way: &[&str], finding: &Finding) -> Vec<Stage> {
    let readings = &moment.readings;
    let mut stages = along(drill, readings, way);
    let lit: Vec<&str> = drill
        .site()
        .neighbors
        .iter()
        .filter(|n| readings.point(&n.name).fed.generator)
        .map(|n| n.name.as_str())
        .collect();
    for name in lit {
        let volts = readings.point(name).volts;
        stages.push(Stage {
            at: name.to_owned(),
            text: Message::new("stage-neighbor").name("name", name).quantity(
                "volts",
                volts,
                Unit::Volts,
            ),
            value: value(volts, Unit::Volts),
        });
    }
    if finding.rule == Rule::Shock {
        let text = Message {
            id: "stage-crew".to_owned(),
            args: finding.evidence.clone(),
        };
        let value = Message {
            id: "stage-crew-value".to_owned(),
            args: finding.evidence.clone(),
        };
        stages.push(Stage {
            at: "crew".to_owned(),
            text,
            value,
        });
    }
    stages
}

/// The generator, then the things of a way from it.
fn along(drill: &Drill, readings: &Readings, way: &[&str]) -> Vec<Stage> {
    let passed = way.iter().filter_map(|thing| stage(drill, readings, thing));
    std::iter::once(generator_stage(readings))
        .chain(passed)
        .collect()
}

fn generator_stage(readings: &Readings) -> Stage {
    let generator = readings.generator;
    Stage {
        at: "generator".to_owned(),
        text: Message::new("stage-generator")
            .quantity("volts", generator.volts, Unit::Volts)
            .quantity("watts", generator.watts, Unit::Watts)
            .quantity("asked", generator.asked_w, Unit::Watts),
        value: value(generator.volts, Unit::Volts),
    }
}

/// A stage at a thing; the generator's own breaker is told with the generator.
fn stage(drill: &Drill, readings: &Readings, thing: &str) -> Option<Stage> {
    const LEAST_A: f64 = 0.05;
    let circuits = &drill.site().circuits;
    let branch = thing.strip_prefix("branch-");
    let circuit = branch.and_then(|name| circuits.iter().find(|c| c.name == name));
    let amps = readings.amps_of(circuit.map_or(thing, |c| &c.guard));
    let with = |id: &str| {
        Message::new(id)
            .name("name", thing)
            .quantity("amps", amps, Unit::Amps)
    };
    let (text, value) = match thing {
        "generator-output" => return None,
        _ if amps < LEAST_A && !on_the_line(thing) => {
            let volts = readings.generator.volts;
            let text = Message::new("stage-live").name("name", thing);
            (text, value(volts, Unit::Volts))
        }
        "transformer" => {
            let line = &drill.site().line;
            let high = line
                .poles
                .get(line.transformer_pole)
                .map_or(0.0, |p| readings.point(&p.name).volts);
            let low = readings.point("service").volts_across;
            let text = Message::new("stage-transformer")
                .quantity("low", low, Unit::Volts)
                .quantity("high", high, Unit::Volts);
            (text, value(high, Unit::Volts))
        }
        "main" => (with("stage-main"), value(amps, Unit::Amps)),
        "drop" => (with("stage-drop"), value(amps, Unit::Amps)),
        "inlet" => (with("stage-inlet"), value(amps, Unit::Amps)),
        _ if thing.starts_with("span-") => {
            let line = &drill.site().line;
            let volts = line
                .poles
                .get(line.crew_pole)
                .map_or(0.0, |p| readings.point(&p.name).volts);
            let text = Message::new("stage-span").name("name", thing).quantity(
                "volts",
                volts,
                Unit::Volts,
            );
            (text, value(volts, Unit::Volts))
        }
        _ if drill.site().cords.iter().any(|c| c.name == thing) => {
            (with("stage-cord"), value(amps, Unit::Amps))
        }
        _ if thing.starts_with("branch-") => (with("stage-branch"), value(amps, Unit::Amps)),
        _ => (with("stage-breaker"), value(amps, Unit::Amps)),
    };
    Some(Stage {
        at: thing.to_owned(),
        text,
        value,
    })
}

/// Whether a thing's stage speaks of volts, which need no current.
fn on_the_line(thing: &str) -> bool {
    thing == "transformer" || thing.starts_with("span-")
}

fn value(value: f64, unit: Unit) -> Message {
    Message::new("value").quantity("value", value, unit)
}
