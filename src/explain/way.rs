//! The way of energy from its source to the harm, in the order in which it travels.
//!
//! Walked over the wiring with the contacts and the currents of the finding's moment: what feeds the point, and which things carry it there.
//! Where nothing feeds the point, the way with the fewest open contacts is told, and these as what holds the energy back.
//! Volts and amps are readings; what a stage cannot say, such as the amps of a ground-fault device, it leaves out.

use crate::drill::{Drill, Moment};
use crate::marking::{Finding, Rule};
use crate::site::{CARRIES_A, ControlId, Kind, Passed, Readings, Supply};
use crate::words::{Arg, Message, Unit};

use super::cause::named;
use super::{Stage, harm, no_value, of_evidence, value};

/// Volts below which a point counts as dead.
const LEAST_V: f64 = 1.0;

/// Watts below which a set counts as one that nothing draws from.
const LEAST_W: f64 = 0.5;

/// A way that was found: whose energy, in which moment, past what.
struct Way<'a> {
    from: Supply,
    moment: &'a Moment,
    passed: Vec<Passed<'a>>,
    /// Whether it leads from a source of the house to the utility's side.
    outward: bool,
}

/// The stages of a finding about energy that reaches something, and their heading with the one moment that they all show.
pub(super) fn stages(drill: &Drill, finding: &Finding) -> (Message, Vec<Stage>) {
    let to = match finding.reaches.as_deref().unwrap_or_default() {
        _ if met(drill, finding) => "generator-outlet",
        point => point,
    };
    let straight = find(drill, finding, to);
    let by_frame = straight.is_none() && to == "generator-frame";
    let found = if by_frame {
        find(drill, finding, "generator-outlet")
    } else {
        straight
    };
    let to_earth = harm::to_earth(finding.rule);
    let mut stages = found
        .as_ref()
        .map_or_else(Vec::new, |way| told(drill, way, to_earth));
    if let (true, Some(way)) = (by_frame, &found) {
        stages.push(frame(&way.moment.readings, to));
    }
    if let (Rule::LineFed, Some(way)) = (finding.rule, &found)
        && !way.moment.readings.generator.tied
    {
        stages.extend(neighbors(drill, &way.moment.readings));
    }
    let readings = found.as_ref().map(|way| &*way.moment.readings);
    if let (Rule::PushedBack, Some(readings)) = (finding.rule, readings) {
        stages.extend(used(finding, readings));
    }
    stages.extend(harm::stage(finding, readings));
    if finding.rule == Rule::SourcesMeet {
        stages.extend(of_evidence(
            finding,
            "generator",
            "stage-surge-held",
            "opens",
        ));
    }
    (heading(finding, found.as_ref()), stages)
}

/// What becomes of the sun's watts before the rest goes into a set: a battery that charges, and what is on.
fn used(finding: &Finding, readings: &Readings) -> Option<Stage> {
    let pushed = finding.quantity("watts")?;
    let charge = readings.battery.charge_w;
    let rest = readings.solar_w - charge - pushed;
    let text = Message::new("stage-sun-used")
        .with("charges", Arg::Count(i64::from(charge >= LEAST_W)))
        .quantity("charge", charge, Unit::Watts)
        .quantity("rest", rest, Unit::Watts);
    Some(Stage {
        at: "house".to_owned(),
        text,
        value: value(rest, Unit::Watts),
    })
}

/// Whether a set and the utility were one in the moment of a finding about what the set feeds: then it is the utility that drives the current, down to the set.
fn met(drill: &Drill, finding: &Finding) -> bool {
    let outward = [Rule::LineFed, Rule::NoTransferEquipment].contains(&finding.rule);
    let moment = drill.trace().moments.get(finding.moment);
    outward && moment.is_some_and(|m| m.readings.generator.tied)
}

/// What the stages are headed with: the moment that they show, or that it is the one just before the finding.
fn heading(finding: &Finding, found: Option<&Way<'_>>) -> Message {
    match found.map(|way| way.moment.at) {
        None => Message::new("told-way"),
        Some(at) if at < finding.at => {
            Message::new("told-way-before").with("at", Arg::Clock(finding.at))
        }
        Some(at) => Message::new("told-way-at").with("at", Arg::Clock(at)),
    }
}

/// A frame that no hot wire reaches: what its neutral and ground wires put on it.
fn frame(readings: &Readings, point: &str) -> Stage {
    let volts = readings.point(point).volts_to_earth.unwrap_or_default();
    Stage {
        at: point.to_owned(),
        text: Message::new("stage-frame").quantity("volts", volts, Unit::Volts),
        value: value(volts, Unit::Volts),
    }
}

/// Moments that one deed and what follows from it at once may take.
const OF_ONE_DEED: usize = 4;

/// The way to a point: closed if there is one, just before the moment too, for what a deed has parted.
fn find<'a>(drill: &'a Drill, finding: &Finding, to: &str) -> Option<Way<'a>> {
    let moments = drill.trace().moments.get(..=finding.moment)?;
    let at = moments.last()?;
    let mut around: Vec<&Moment> = moments.iter().rev().take(OF_ONE_DEED).collect();
    if finding.rule == Rule::PlugUnderLoad {
        let watts = |m: &Moment| m.readings.generator.watts;
        around.sort_by(|a, b| watts(b).total_cmp(&watts(a)));
    }
    let supplies = if met(drill, finding) {
        &[Supply::Utility]
    } else {
        supplies(finding.rule)
    };
    let way = |from: Supply, moment: &'a Moment, crosses: &dyn Fn(ControlId) -> bool| {
        let stands = (&moment.positions, &*moment.readings);
        let passed = drill.plant().way(stands, from, to, crosses)?;
        Some(Way {
            from,
            moment,
            passed,
            outward: from != Supply::Utility && (on_line(drill, to) || to == "service"),
        })
    };
    let on = |from: &Supply, moment: &Moment| makes_v(drill, &moment.readings, *from) >= LEAST_V;
    let closed = around.into_iter().find_map(|moment| {
        let mut alive = supplies.iter().filter(|s| on(s, moment));
        alive.find_map(|s| way(*s, moment, &|_| false))
    });
    closed.or_else(|| {
        let all = supplies
            .iter()
            .filter_map(|s| way(*s, at, &|id| holds(drill, id)));
        all.min_by_key(|way| {
            let open = way.passed.iter().filter(|p| p.open).count();
            (open, !on(&way.from, at))
        })
    })
}

/// The sources that a rule asks about, the likeliest first.
fn supplies(rule: Rule) -> &'static [Supply] {
    const OF_THE_HOUSE: [Rule; 4] = [
        Rule::LineFed,
        Rule::NoTransferEquipment,
        Rule::NothingBonds,
        Rule::CordUnfit,
    ];
    const OF_THE_UTILITY: [Rule; 4] = [
        Rule::Collision,
        Rule::GroundsLeft,
        Rule::NotAsked,
        Rule::BlindReturn,
    ];
    const OF_THE_SUN: [Rule; 2] = [Rule::SunOnGenerator, Rule::PushedBack];
    if rule == Rule::SourcesMeet {
        &[Supply::Lent]
    } else if OF_THE_HOUSE.contains(&rule) {
        &[Supply::Generator, Supply::Battery, Supply::Lent]
    } else if OF_THE_UTILITY.contains(&rule) {
        &[Supply::Utility]
    } else if OF_THE_SUN.contains(&rule) {
        &[Supply::Sun]
    } else {
        &[
            Supply::Generator,
            Supply::Battery,
            Supply::Lent,
            Supply::Utility,
        ]
    }
}

/// Whether an open contact of this control holds energy back: a switch and not a plug.
pub(super) fn holds(drill: &Drill, id: ControlId) -> bool {
    let kind = drill.site().control(id).map(|c| c.kind);
    kind.is_some_and(|kind| {
        matches!(
            kind,
            Kind::Breaker
                | Kind::Main
                | Kind::Backfed
                | Kind::Output
                | Kind::Gfci
                | Kind::Transfer
                | Kind::Disconnect
                | Kind::Line
        )
    })
}

/// Volts that a source makes.
pub(super) fn makes_v(drill: &Drill, readings: &Readings, from: Supply) -> f64 {
    match from {
        Supply::Generator => readings.generator.volts,
        Supply::Battery => readings.battery.volts,
        Supply::Sun => volts_at(readings, "solar-terminals"),
        Supply::Lent => volts_at(readings, lent(drill)),
        // Behind the open head switch the utility stands at the line's own volts.
        Supply::Utility => drill.site().line.volts,
    }
}

/// Whether a point is one of the line's.
pub(super) fn on_line(drill: &Drill, point: &str) -> bool {
    drill.site().line.poles.iter().any(|p| p.name == point)
}

/// Whether a neighbor's set and the house's own fight at a point: on the side that both feed, which they drag down.
fn lent_and_tied(readings: &Readings, point: &str) -> bool {
    let reading = readings.point(point);
    readings.generator.tied && reading.fed.lent && reading.volts_across >= LEAST_V
}

/// The name of the cord that a neighbor lends, and of its end as a point.
fn lent(drill: &Drill) -> &str {
    drill.site().lent.as_ref().map_or("", |l| l.name.as_str())
}

/// The higher of the volts at a point: between its hots, or of one to neutral.
pub(super) fn volts_at(readings: &Readings, point: &str) -> f64 {
    let reading = readings.point(point);
    reading.volts_across.max(reading.volts)
}

/// The source, then the things of a way from it.
fn told(drill: &Drill, way: &Way<'_>, to_earth: bool) -> Vec<Stage> {
    let readings = &way.moment.readings;
    let flow = Flow {
        outward: way.outward && !readings.generator.tied,
        to_earth,
    };
    let mut stages = vec![source(drill, readings, way.from)];
    stages.extend(along(drill, readings, &way.passed, flow));
    named(drill, way.moment, stages)
}

/// How the things of a way are told.
#[derive(Clone, Copy)]
pub(super) struct Flow {
    /// Whether current leaves the house by them, or flows the wrong way.
    pub(super) outward: bool,
    /// Whether the volts of the line are those to earth, which hands on it meet, and not those to its neutral.
    pub(super) to_earth: bool,
}

/// The things of a way, each with what it carries; a source's own breaker is told with the source.
pub(super) fn along(
    drill: &Drill,
    readings: &Readings,
    way: &[Passed<'_>],
    flow: Flow,
) -> Vec<Stage> {
    let own = |p: &&Passed<'_>| p.open || way.len() == 1 || p.thing != "generator-output";
    let passed = way.iter().filter(own).enumerate();
    let mut held = false;
    let mut reached = None;
    let guards_behind =
        |index: usize, guard: &str| way.iter().skip(index).any(|p| p.thing == guard);
    let stages = passed.map(|(index, passed)| {
        let circuits = &drill.site().circuits;
        let branch = passed.thing.strip_prefix("branch-");
        let circuit = branch.and_then(|name| circuits.iter().find(|c| c.name == name));
        // Current that meets the wire of a circuit before its breaker flows the wrong way.
        let backward = circuit.is_some_and(|c| guards_behind(index, &c.guard));
        held |= passed.open;
        let flow = Flow {
            outward: flow.outward || backward,
            ..flow
        };
        // With no current in it, a thing stands at the volts of the point before it.
        let idle = amps_of(drill, readings, passed.thing).is_some_and(|a| a < CARRIES_A);
        let before = reached.filter(|_| idle && !passed.open);
        let here = Passed {
            point: passed.point.or(before),
            ..*passed
        };
        reached = here.point.or(reached).filter(|_| !passed.open);
        stage(drill, readings, &here, (flow, held))
    });
    stages.collect()
}

/// Where the energy comes from.
pub(super) fn source(drill: &Drill, readings: &Readings, from: Supply) -> Stage {
    let volts = makes_v(drill, readings, from);
    let (at, text) = match from {
        Supply::Generator if volts < LEAST_V => {
            ("generator", Message::new("stage-generator-still"))
        }
        Supply::Generator if readings.generator.tied => (
            "generator",
            Message::new("stage-generator-tied").quantity("volts", volts, Unit::Volts),
        ),
        Supply::Generator if readings.generator.watts < LEAST_W => (
            "generator",
            Message::new("stage-generator-idle").quantity("volts", volts, Unit::Volts),
        ),
        Supply::Generator => (
            "generator",
            Message::new("stage-generator")
                .quantity("volts", volts, Unit::Volts)
                .quantity("watts", readings.generator.watts, Unit::Watts)
                .quantity("asked", readings.generator.asked_w, Unit::Watts),
        ),
        Supply::Battery => (
            "battery",
            Message::new("stage-battery")
                .quantity("volts", volts, Unit::Volts)
                .quantity("watts", readings.battery.watts, Unit::Watts),
        ),
        Supply::Sun => (
            "solar",
            Message::new("stage-sun")
                .quantity("volts", volts, Unit::Volts)
                .quantity("watts", readings.solar_w, Unit::Watts),
        ),
        Supply::Lent => (
            lent(drill),
            Message::new("stage-lent").quantity("volts", volts, Unit::Volts),
        ),
        Supply::Utility => (
            "feeder",
            Message::new("stage-utility").quantity("volts", volts, Unit::Volts),
        ),
    };
    let shown = if volts < LEAST_V {
        no_value()
    } else {
        value(volts, Unit::Volts)
    };
    Stage {
        at: at.to_owned(),
        text,
        value: shown,
    }
}

/// Amps of a thing, where it has a meter.
fn amps_of(drill: &Drill, readings: &Readings, thing: &str) -> Option<f64> {
    let meter = meter_of(drill, thing);
    if readings.names.things.contains(&meter) {
        return Some(readings.amps_of(&meter));
    }
    let appliance = drill.site().appliance_index(thing)?;
    Some(readings.appliance(appliance).amps)
}

/// The meter that tells what a thing carries: a circuit's is at its guard, a feeder's at its breaker.
fn meter_of(drill: &Drill, thing: &str) -> String {
    if let Some(sub) = thing.strip_prefix("feeder-") {
        return format!("breaker-{sub}");
    }
    let branch = thing.strip_prefix("branch-");
    let mut circuits = drill.site().circuits.iter();
    let circuit = branch.and_then(|name| circuits.find(|c| c.name == name));
    circuit.map_or(thing, |c| c.guard.as_str()).to_owned()
}

/// Whether a thing is a breaker, which is said to be on where it is passed.
fn is_on(drill: &Drill, thing: &str) -> bool {
    let mut controls = drill.site().controls.iter();
    controls.any(|c| c.name == thing && c.is_breaker())
}

/// Share of the busier leg's amps from which the other leg carries as much.
const AS_MUCH: f64 = 0.95;

/// What a thing carries: of two legs that differ, each.
fn carries(
    readings: &Readings,
    with_amps: impl Fn(&str, f64) -> (Message, Message),
    (meter, amps): (Option<&str>, f64),
    volts: f64,
) -> (Message, Message) {
    let other = meter.map_or(amps, |meter| readings.less_of(meter));
    let id = if other < AS_MUCH * amps {
        "stage-carries-sides"
    } else {
        "stage-carries"
    };
    let (text, shown) = with_amps(id, amps);
    let text = text.quantity("volts", volts, Unit::Volts);
    (text.quantity("other", other, Unit::Amps), shown)
}

/// A stage at a thing; `held` behind an open contact.
fn stage(
    drill: &Drill,
    readings: &Readings,
    passed: &Passed<'_>,
    (Flow { outward, to_earth }, held): (Flow, bool),
) -> Stage {
    let thing = passed.thing;
    let volts = passed
        .point
        .map(|p| match readings.point(p).volts_to_earth {
            Some(volts) if to_earth && on_line(drill, p) => volts,
            _ if lent_and_tied(readings, p) => {
                let legs_v = readings.point(p).legs_v;
                legs_v[0].min(legs_v[1])
            }
            _ => volts_at(readings, p),
        });
    let amps = amps_of(drill, readings, thing);
    let with_volts = |id: &str, volts: f64| {
        let text = Message::new(id).name("name", thing);
        (
            text.quantity("volts", volts, Unit::Volts),
            value(volts, Unit::Volts),
        )
    };
    let with_amps = |id: &str, amps: f64| {
        let text = Message::new(id).name("name", thing);
        (
            text.quantity("amps", amps, Unit::Amps),
            value(amps, Unit::Amps),
        )
    };
    // Where nothing is measured, no number is shown: a naught would say that it is dead.
    let bare = |id: &str| {
        let here = volts.map_or_else(no_value, |volts| value(volts, Unit::Volts));
        (Message::new(id).name("name", thing), here)
    };
    let strays = thing.ends_with("-frame") || thing.ends_with("-joint");
    let (text, value) = match (amps, volts) {
        _ if passed.open => bare("stage-open"),
        (_, Some(v)) if strays => with_volts("stage-strays", v),
        _ if held || volts.is_some_and(|v| v < LEAST_V) => bare(if is_on(drill, thing) {
            "stage-behind-on"
        } else {
            "stage-behind"
        }),
        _ if thing == "transformer" && readings.point("service").volts_across < LEAST_V => {
            bare("stage-behind")
        }
        _ if thing == "transformer" => transformer(drill, readings, outward),
        (_, Some(v)) if thing.starts_with("span-") && to_earth => {
            with_volts("stage-span-to-earth", v)
        }
        (_, Some(v)) if thing.starts_with("span-") => with_volts("stage-span", v),
        (Some(a), _) if a < CARRIES_A => {
            volts.map_or_else(|| bare("stage-live"), |v| with_volts("stage-live-at", v))
        }
        (Some(a), _) if outward && thing == "main" => with_amps("stage-main", a),
        (Some(a), _) if outward && thing == "drop" => with_amps("stage-drop", a),
        (Some(a), _) if outward && thing.starts_with("branch-") => with_amps("stage-branch", a),
        (Some(a), Some(v)) => {
            let two = |p: &&str| readings.point(p).volts_across >= LEAST_V;
            let meter = passed.point.filter(two).map(|_| meter_of(drill, thing));
            carries(readings, with_amps, (meter.as_deref(), a), v)
        }
        (Some(a), None) => with_amps("stage-breaker", a),
        (None, _) => bare("stage-behind"),
    };
    Stage {
        at: thing.to_owned(),
        text,
        value,
    }
}

/// What the transformer makes of the volts, in the direction of the energy.
fn transformer(drill: &Drill, readings: &Readings, outward: bool) -> (Message, Message) {
    let line = &drill.site().line;
    let pole = line.poles.get(line.transformer_pole);
    let high = pole.map_or(0.0, |p| readings.point(&p.name).volts);
    let low = readings.point("service").volts_across;
    // Behind its open cutout no current flows in it, and its high side stands at what its turns make.
    let high = if outward && high < LEAST_V {
        low * line.transformer.primary_v / (2.0 * line.transformer.half_v)
    } else {
        high
    };
    let (id, shown) = if outward {
        ("stage-transformer", high)
    } else {
        ("stage-transformer-down", low)
    };
    let text =
        Message::new(id)
            .quantity("low", low, Unit::Volts)
            .quantity("high", high, Unit::Volts);
    (text, value(shown, Unit::Volts))
}

/// The neighbors that a source of the house reaches.
fn neighbors(drill: &Drill, readings: &Readings) -> Vec<Stage> {
    let all = drill.site().neighbors.iter();
    let lit = all.filter(|n| readings.point(&n.name).fed.customer());
    let stage = |name: &str| {
        let volts = readings.point(name).volts;
        Stage {
            at: name.to_owned(),
            text: Message::new("stage-neighbor").name("name", name).quantity(
                "volts",
                volts,
                Unit::Volts,
            ),
            value: value(volts, Unit::Volts),
        }
    };
    lit.map(|n| stage(&n.name)).collect()
}
