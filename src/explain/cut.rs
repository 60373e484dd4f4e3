//! Where the way of energy to what was wanted is cut: the source, what still stands under volts, each open contact, and what is left at the end.
//!
//! Walked over the contacts as they stand at one moment: when power was due, when something was lost, or at the end of the run.
//! A way that no transfer equipment guards is never told as one that power should take: of a house that has no other, the way from the utility is told.
//! Not covered: a plug that would have to be moved to another outlet, and wires swapped inside a panel.

use crate::drill::{Drill, Event, Moment, What};
use crate::marking::{Finding, Rule, SUPPLIED_PU, supplied_since};
use crate::site::{
    Control, ControlId, Cord, FarEnd, Kind, Passed, Plug, Positions, Site, Supply, Transfer,
};
use crate::units::DrillTime;
use crate::words::{Arg, Message, Unit, name_of};

use super::cause::named;
use super::way::{Flow, along, holds, source, volts_at};
use super::{Stage, no_value, value};

/// The stages of a finding about power that was wanted, and their heading with the one moment that they show.
pub(super) fn stages(drill: &Drill, finding: &Finding) -> (Message, Vec<Stage>) {
    let id = if finding.rule == Rule::NotRestored {
        "told-left-at"
    } else {
        "told-cut-at"
    };
    let heading = Message::new(id).with("at", Arg::Clock(finding.at));
    let Some(moment) = drill.trace().moments.get(finding.moment) else {
        return (heading, Vec::new());
    };
    let stages = if finding.rule == Rule::GoalLate {
        late(drill, finding, moment)
    } else if finding.rule == Rule::NotBack {
        not_back(drill, moment)
    } else {
        left(drill, finding, moment)
    };
    (heading, stages)
}

/// The thing that a piece of evidence names, among these.
pub(super) fn named_in<'a>(
    finding: &Finding,
    evidence: &'static str,
    mut names: impl Iterator<Item = &'a str>,
) -> Option<&'a str> {
    let is_it = |name: &&str| {
        let said = Arg::Said(Box::new(name_of(name)));
        finding.evidence.contains(&(evidence, said))
    };
    names.find(is_it)
}

/// Power that came too late or never: where its way was cut when it was due, and when it came.
fn late(drill: &Drill, finding: &Finding, moment: &Moment) -> Vec<Stage> {
    let site = drill.site();
    let names = site.appliances.iter().map(|a| a.name.as_str());
    let name = named_in(finding, "appliance", names);
    // Before the outage, and in the instant of it, it is still fed: nothing is cut.
    let fed = |index: &usize| moment.readings.appliance(*index).pu >= SUPPLIED_PU;
    let index = name.and_then(|name| site.appliance_index(name));
    let Some(index) = index.filter(|index| !fed(index)) else {
        return Vec::new();
    };
    let mut stages = to_appliance(drill, moment, index);
    stages.push(came_at(drill, finding, index));
    stages
}

/// When power came after all, or that it never did.
fn came_at(drill: &Drill, finding: &Finding, appliance: usize) -> Stage {
    let supplied = supplied_since(drill.trace(), appliance);
    let at = supplied.unwrap_or_else(|| drill.trace().end());
    let late = Arg::lasting(at.since(finding.at));
    let text = Message::new("stage-came")
        .with("came", Arg::Count(i64::from(supplied.is_some())))
        .with("at", Arg::Clock(at))
        .with("late", late);
    Stage {
        at: "house".to_owned(),
        text,
        value: Message::new("value").with("value", Arg::Clock(at)),
    }
}

/// The way to an appliance as things stand, and the volts that it gets.
pub(super) fn to_appliance(drill: &Drill, moment: &Moment, index: usize) -> Vec<Stage> {
    let site = drill.site();
    let Some(appliance) = site.appliances.get(index) else {
        return Vec::new();
    };
    let (to, plugged) = place(site, &moment.positions, index);
    let cord = by_cord(drill, moment, (index, &to));
    let moved = cord.is_some() && plugged;
    let mut stages = cord.map_or_else(
        || to_point(drill, moment, &to),
        |(from, way)| {
            let mut stages = told(drill, moment, (from, &way), false);
            if site.has_unguarded_inlet() {
                stages.insert(1, no_safe_way());
            }
            stages
        },
    );
    let reading = moment.readings.appliance(index);
    let how = if !plugged {
        "unplugged"
    } else if moved {
        "elsewhere"
    } else if reading.pu > 0.0 && reading.pu < SUPPLIED_PU {
        "low"
    } else {
        "gets"
    };
    let rated_v = reading.volts / reading.pu;
    stages.push(Stage {
        at: appliance.name.clone(),
        text: Message::new("stage-gets")
            .name("name", &appliance.name)
            .with("how", Arg::Verbatim(how.to_owned()))
            .quantity("volts", reading.volts, Unit::Volts)
            .quantity(
                "least",
                if reading.pu > 0.0 {
                    SUPPLIED_PU * rated_v
                } else {
                    0.0
                },
                Unit::Volts,
            ),
        value: value(reading.volts, Unit::Volts),
    });
    stages
}

/// Why the way by a cord is told of a house whose panel a generator could be joined to by a handle alone.
fn no_safe_way() -> Stage {
    Stage {
        at: "panel".to_owned(),
        text: Message::new("stage-by-cord"),
        value: no_value(),
    }
}

/// The point that an appliance is plugged in at, and whether it is plugged in at all.
fn place(site: &Site, positions: &Positions, index: usize) -> (String, bool) {
    let Some(appliance) = site.appliances.get(index) else {
        return (String::new(), false);
    };
    let circuit = site.circuits.get(appliance.circuit);
    let outlet = circuit.map_or(String::new(), |c| format!("outlet-{}", c.name));
    let Plug::Cord {
        control,
        wall,
        lent,
        ..
    } = &appliance.plug
    else {
        return (outlet, true);
    };
    let at = positions.get(*control);
    let cord = appliance.cord(positions).and_then(|i| site.cords.get(i));
    let borrowed = site.lent.as_ref().filter(|_| *lent == Some(at));
    match (cord, borrowed) {
        (Some(cord), _) => (format!("{}-far-end", cord.name), true),
        (None, Some(lent)) => (lent.name.clone(), true),
        (None, None) => (outlet, at == *wall),
    }
}

/// Without the utility, and where no guarded way of the house's own leads to where an appliance is plugged in: the way by a cord that it could be plugged into.
fn by_cord<'a>(
    drill: &'a Drill,
    moment: &Moment,
    (index, to): (usize, &str),
) -> Option<(Supply, Vec<Passed<'a>>)> {
    let site = drill.site();
    let own = [Supply::Generator, Supply::Battery];
    let here = |from: &Supply| guarded(drill, moment, *from, to).is_some();
    if moment.readings.point("service").fed.utility || own.iter().any(here) {
        return None;
    }
    let Plug::Cord { cords, lent, .. } = &site.appliances.get(index)?.plug else {
        return None;
    };
    let cords = cords.iter().filter_map(|(i, _)| site.cords.get(*i));
    let ends = cords
        .filter(|cord| !bare(cord))
        .map(|cord| format!("{}-far-end", cord.name));
    let of_own = ends.map(|end| (Supply::Generator, end));
    let of_lent = site.lent.iter().filter(|_| lent.is_some());
    let all = of_own.chain(of_lent.map(|l| (Supply::Lent, l.name.clone())));
    let taken = |end: &str| {
        let mut others = (0..site.appliances.len()).filter(|i| *i != index);
        others.any(|i| place(site, &moment.positions, i) == (end.to_owned(), true))
    };
    let ways = all.filter_map(|(from, end)| {
        let way = guarded(drill, moment, from, &end)?;
        Some((taken(&end), from, way))
    });
    // An end that nothing else is plugged into comes first.
    let n_open = |way: &[Passed<'_>]| way.iter().filter(|p| p.open).count();
    let best = ways.min_by_key(|(taken, _, way)| (*taken, n_open(way)));
    best.map(|(_, from, way)| (from, way))
}

/// The way to a point: from the utility while that is there, else from the house's own source where one guarded way leads from it.
fn to_point(drill: &Drill, moment: &Moment, to: &str) -> Vec<Stage> {
    let back = moment.readings.point("service").fed.utility;
    let own = || {
        let all = [Supply::Generator, Supply::Battery].into_iter();
        let ways = all.filter_map(|from| Some((from, guarded(drill, moment, from, to)?)));
        ways.min_by_key(|(_, way)| way.iter().filter(|p| p.open).count())
    };
    let utility = || {
        let way = way(drill, moment, Supply::Utility, to, &|id| holds(drill, id))?;
        Some((Supply::Utility, way))
    };
    let found = if back {
        utility().or_else(own)
    } else {
        own().or_else(utility)
    };
    found.map_or_else(Vec::new, |(from, way)| {
        told(drill, moment, (from, &way), false)
    })
}

fn way<'a>(
    drill: &'a Drill,
    moment: &Moment,
    from: Supply,
    to: &str,
    crosses: &dyn Fn(ControlId) -> bool,
) -> Option<Vec<Passed<'a>>> {
    let stands = (&moment.positions, &*moment.readings);
    drill.plant().way(stands, from, to, crosses)
}

/// Whether a cord has a plug at its far end too.
fn bare(cord: &Cord) -> bool {
    matches!(cord.far, FarEnd::Blades(..) | FarEnd::Strip(_))
}

/// The way from a source of the house, over open switches and over cords that have only to be plugged in; none that transfer equipment doesn't guard.
fn guarded<'a>(
    drill: &'a Drill,
    moment: &Moment,
    from: Supply,
    to: &str,
) -> Option<Vec<Passed<'a>>> {
    let site = drill.site();
    let plug = |id: ControlId| {
        let mut cords = site.cords.iter().filter(|c| !bare(c));
        cords.any(|c| c.near == id || c.far.control() == Some(id))
    };
    let street = |id: ControlId| {
        let kind = site.control(id).map(|c| c.kind);
        matches!(kind, Some(Kind::Main | Kind::Line))
    };
    let open = |id: ControlId| {
        let switch = holds(drill, id) && !street(id);
        (switch || plug(id)) && !unguarded(site).contains(&id)
    };
    let passed = way(drill, moment, from, to, &open)?;
    let of_unguarded = |thing: &str| {
        let mut cords = site.cords.iter().filter(|c| bare(c));
        let mut pins = site.backfed().filter(|(_, held)| !held.blocks());
        let pin = pins.any(|(i, _)| site.inlets.get(i).is_some_and(|own| own.name == thing));
        pin || cords.any(|c| c.name == thing)
    };
    let safe = passed.iter().all(|p| !of_unguarded(p.thing));
    safe.then_some(passed)
}

/// Breakers that bring a generator's power in with nothing that keeps it from meeting the utility's.
fn unguarded(site: &Site) -> Vec<ControlId> {
    let main = site.panel.backfeed.iter();
    let main = main.filter(|b| !b.interlock.blocks()).map(|b| b.breaker);
    let pairs = site.subpanels.iter().filter_map(|s| s.pair);
    let pairs = pairs.filter(|p| !p.interlock.blocks());
    main.chain(pairs.map(|p| p.generator)).collect()
}

/// When an engine that stands still in a moment stalled under its load; none where somebody stopped it since, or it never did.
fn stalled_at(drill: &Drill, moment: &Moment) -> Option<DrillTime> {
    let stopped = moment.conditions.engine.stopped_at?;
    let moments = drill.trace().moments.iter().rev();
    let mut then = moments.filter(|m| m.at == stopped);
    let stalls = |m: &Moment| matches!(m.what, What::Happened(Event::EngineStalled { .. }));
    then.any(stalls).then_some(stopped)
}

/// Of a way: its source, the last thing before the first open contact that still stands under volts, each open contact, and where it `ends` at a handle, that.
fn told(
    drill: &Drill,
    moment: &Moment,
    (from, way): (Supply, &[Passed<'_>]),
    ends: bool,
) -> Vec<Stage> {
    let readings = &moment.readings;
    let flow = Flow {
        outward: false,
        to_earth: false,
    };
    let passed = named(drill, moment, along(drill, readings, way, flow));
    let is_open = |s: &Stage| s.text.id == "stage-open";
    let first = passed.iter().position(is_open).unwrap_or(passed.len());
    let before = first.checked_sub(1);
    let live = |s: &Stage| !s.text.id.starts_with("stage-behind");
    let end = passed.len().checked_sub(1).filter(|_| ends);
    let cords = || drill.site().cords.iter();
    let mut stages = vec![source(drill, readings, from)];
    if let (Some(still), Some(at)) = (stages.first_mut(), stalled_at(drill, moment))
        && still.text.id == "stage-generator-still"
    {
        still.text = Message::new("stage-generator-stalled").with("at", Arg::Clock(at));
    }
    for (index, mut stage) in passed.into_iter().enumerate() {
        let before = Some(index) == before && live(&stage);
        let kept = is_open(&stage) || before || Some(index) == end;
        if !kept {
            continue;
        }
        if is_open(&stage) && cords().any(|c| c.name == stage.at) {
            "stage-unplugged".clone_into(&mut stage.text.id);
        } else if is_open(&stage) && waits(drill.site(), moment, from, &stage.at) {
            "stage-controller-off".clone_into(&mut stage.text.id);
        }
        stages.push(stage);
    }
    stages
}

/// Whether a transfer switch stands away from the set only because the set's controller is off: it is where it should be then.
fn waits(site: &Site, moment: &Moment, from: Supply, thing: &str) -> bool {
    let set = &site.generator;
    let off = set
        .machine
        .automatic
        .is_some_and(|own| own.lock_out(&moment.positions, set.output).controller_off);
    let transfer = site.transfers.iter().any(|t| t.name == thing);
    transfer && off && from == Supply::Generator
}

/// A house that isn't on the utility at the end: where the utility's way to it is cut, and what it gets.
fn not_back(drill: &Drill, moment: &Moment) -> Vec<Stage> {
    let readings = &moment.readings;
    let way = way(drill, moment, Supply::Utility, "bus", &|id| {
        holds(drill, id)
    });
    let way = way.unwrap_or_default();
    let mut stages = told(drill, moment, (Supply::Utility, &way), false);
    let volts = volts_at(readings, "bus");
    let own = readings.point("bus").fed.customer();
    let subpanels = drill.site().subpanels.iter();
    let buses = subpanels.map(|s| format!("bus-{}", s.name));
    let of_own = buses.filter(|bus| readings.point(bus).fed.customer());
    let part = of_own.map(|bus| volts_at(readings, &bus)).reduce(f64::max);
    let crew = drill.site().line_work.is_some();
    let word = match (crew, own, part) {
        (true, ..) => "crew",
        (false, true, _) => "own",
        (false, false, Some(_)) => "part",
        (false, false, None) if street_alone(drill, moment) => "street",
        (false, false, None) => "dark",
    };
    let shown = if word == "street" {
        no_value()
    } else {
        value(volts, Unit::Volts)
    };
    stages.push(Stage {
        at: "house".to_owned(),
        text: Message::new("stage-house-then")
            .with("fed", Arg::Verbatim(word.to_owned()))
            .quantity("part", part.unwrap_or_default(), Unit::Volts)
            .quantity("volts", volts, Unit::Volts),
        value: shown,
    });
    stages
}

/// Whether nothing but the utility may feed the wires of a house: its own source reaches its loads by cords alone, so no volts on its wires are missing but the street's.
/// A set that is built in feeds them, by whatever handle it is kept off now.
fn street_alone(drill: &Drill, moment: &Moment) -> bool {
    if drill.site().generator.machine.automatic.is_some() {
        return false;
    }
    let circuits = drill.site().circuits.iter();
    let outlets = circuits.map(|c| format!("outlet-{}", c.name));
    let mut points = outlets.chain(["bus".to_owned()]);
    let own = [Supply::Generator, Supply::Battery];
    !points.any(|to| {
        own.iter()
            .any(|from| guarded(drill, moment, *from, &to).is_some())
    })
}

/// A handle that stands wrong at the end: what it lets through or holds back; nothing of one that no energy passes.
fn left(drill: &Drill, finding: &Finding, moment: &Moment) -> Vec<Stage> {
    let site = drill.site();
    let names = site.controls.iter().map(|c| c.name.as_str());
    let id = named_in(finding, "control", names).and_then(|name| site.control_id(name));
    let Some((id, control)) = id.and_then(|id| Some((id, site.control(id)?))) else {
        return Vec::new();
    };
    if control.kind == Kind::Engine {
        return engine(drill, moment);
    }
    let Some((from, passed)) = past(drill, moment, (id, control)) else {
        return Vec::new();
    };
    let stages = told(drill, moment, (from, &passed), true);
    if stages.len() > 1 { stages } else { Vec::new() }
}

/// Whether a handle is there to bring the utility's power, whatever stands under volts behind it.
fn of_utility(site: &Site, (id, control): (ControlId, &Control)) -> bool {
    let mut pairs = site.subpanels.iter().filter_map(|s| s.pair);
    matches!(control.kind, Kind::Main | Kind::Line) || pairs.any(|p| p.utility == id)
}

/// The way that leads to a handle: of one that brings the utility's power from there, else from what feeds it.
fn past<'a>(
    drill: &'a Drill,
    moment: &Moment,
    (id, control): (ControlId, &'a Control),
) -> Option<(Supply, Vec<Passed<'a>>)> {
    let site = drill.site();
    let of_cord = |c: &&Cord| c.near == id || c.far.control() == Some(id);
    let cord = site.cords.iter().find(of_cord);
    let transfer = |t: &&Transfer| t.handle == id;
    let transfer = site.transfers.iter().find(transfer);
    let thing = cord.map(|c| c.name.as_str());
    let thing = thing.or(transfer.map(|t| t.name.as_str()));
    let thing = thing.unwrap_or(&control.name);
    let outlets = site.circuits.iter().map(|c| format!("outlet-{}", c.name));
    let subpanels = site.subpanels.iter().map(|s| format!("bus-{}", s.name));
    let ends = cord.iter().map(|c| format!("{}-far-end", c.name));
    let fixed = ["bus", "generator-outlet"].map(str::to_owned).into_iter();
    let points: Vec<String> = fixed.chain(ends).chain(subpanels).chain(outlets).collect();
    let crosses = |own: ControlId| holds(drill, own) || own == id;
    let supplies: &[Supply] = if of_utility(site, (id, control)) {
        &[Supply::Utility]
    } else {
        &[
            Supply::Utility,
            Supply::Generator,
            Supply::Battery,
            Supply::Lent,
        ]
    };
    let ways = supplies.iter().map(|from| {
        let all = points.iter();
        let all = all.filter_map(|to| way(drill, moment, *from, to, &crosses));
        all.filter_map(|mut passed| {
            let at = passed.iter().position(|p| p.thing == thing)?;
            passed.truncate(at + 1);
            Some((*from, passed))
        })
        .collect::<Vec<_>>()
    });
    // What feeds it now is told, or the source with the fewest open contacts before it.
    let n_open = |way: &[Passed<'_>]| way.iter().filter(|p| p.open).count();
    let feeds = |from: Supply, way: &[Passed<'_>]| {
        let point = way.last().and_then(|p| p.point);
        point.is_some_and(|p| from.feeds(moment.readings.point(p).fed))
    };
    ways.flatten()
        .min_by_key(|(from, way)| (n_open(way), !feeds(*from, way), way.len()))
}

/// An engine that was left as it should not be: what it makes, and what it burns for that or what the house gets without it.
fn engine(drill: &Drill, moment: &Moment) -> Vec<Stage> {
    let site = drill.site();
    let readings = &moment.readings;
    let conditions = &moment.conditions;
    let hours = conditions.fuel_hours(site, &moment.positions, readings);
    let runs = source(drill, readings, Supply::Generator);
    let end = match hours {
        Some(hours) if conditions.fuel_gal.is_finite() => {
            let rate = conditions.fuel_gal / hours;
            Stage {
                at: "generator".to_owned(),
                text: Message::new("stage-still-burns").quantity("rate", rate, Unit::Gallons),
                value: value(rate, Unit::Gallons),
            }
        }
        Some(_) => return Vec::new(),
        None => {
            let volts = volts_at(readings, "bus");
            Stage {
                at: "house".to_owned(),
                text: Message::new("stage-without-it").quantity("volts", volts, Unit::Volts),
                value: value(volts, Unit::Volts),
            }
        }
    };
    vec![runs, end]
}
