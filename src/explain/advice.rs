//! What to do now: chosen by how things stand now, so that one order is given and not one for each case.
//!
//! Read from the positions and readings that the drill has come to: who feeds the house or a line that hurt somebody, how the main stands, what feeds bare metal or a plug, whether grounds are still fed.
//! Not covered: what the learner knows of it; the debrief and the coach speak of what is true.

use crate::drill::Drill;
use crate::marking::{Finding, Rule, on_broken_neutral, still_joined};
use crate::site::{ControlId, FarEnd, Fed, PositionId};
use crate::words::{Arg, Message};

use super::cut::named_in;

/// The message of what to do now, with how things stand.
pub(super) fn now(drill: &Drill, finding: &Finding, message: Message) -> Message {
    let rule = finding.rule;
    let message = with_names(drill, finding, message);
    let word = if rule == Rule::NoTransferEquipment {
        house(drill)
    } else if rule == Rule::Shock {
        after_shock(drill)
    } else if [Rule::LiveBlades, Rule::LivePlug, Rule::PlugUnderLoad].contains(&rule) {
        fed(drill, finding.reaches.as_deref().unwrap_or_default())
    } else if rule == Rule::GroundsLeft {
        let point = finding.reaches.as_deref().unwrap_or_default();
        let live = drill.readings().point(point).fed.utility;
        if live { "live" } else { "dead" }
    } else if rule == Rule::CaughtByEngine {
        starter(drill)
    } else if rule == Rule::WireHot {
        feeds_inside(drill)
    } else if rule == Rule::Damaged {
        let moment = drill.trace().moments.last();
        let broken = moment.is_some_and(|m| on_broken_neutral(drill.site(), m));
        if broken { "fed" } else { "over" }
    } else if rule == Rule::Collision {
        let moment = drill.trace().moments.last();
        let joined = moment.is_some_and(|m| still_joined(drill.site(), m));
        if joined { "joined" } else { "apart" }
    } else if rule == Rule::Overload {
        if drill.gave_up() { "failed" } else { "works" }
    } else if [Rule::CordHot, Rule::PlugHot].contains(&rule) {
        hot_cord(drill, finding)
    } else if rule == Rule::SourcesMeet {
        engine(drill)
    } else if rule == Rule::Touch {
        let point = finding.reaches.as_deref().unwrap_or_default();
        match (finding.breach, drill.readings().point(point).fed.any()) {
            (true, false) => "over",
            (true, true) => "held",
            (false, _) => "let-go",
        }
    } else {
        return message;
    };
    message.with("stands", Arg::Verbatim(word.to_owned()))
}

/// The message with the handles that it may name: the breaker by which the household's own power enters, the cutout of the house on a line that is worked, whose power was on that line, and whether the utility feeds the house by now.
fn with_names(drill: &Drill, finding: &Finding, message: Message) -> Message {
    let site = drill.site();
    let name = |control: ControlId| site.control(control).map_or("", |c| c.name.as_str());
    let cutout = site.line_work.as_ref().map_or("", |w| name(w.home_cutout));
    let shown = drill.trace().moments.get(finding.moment);
    let reached = finding.reaches.as_deref().unwrap_or_default();
    let by_customer = shown.is_some_and(|m| m.readings.point(reached).fed.customer());
    let by = if by_customer { "customer" } else { "utility" };
    let later = drill.readings().point("bus").fed.utility;
    message
        .with("later", Arg::Count(i64::from(later)))
        .name("breaker", name(entry(drill)))
        .name("cutout", cutout)
        .with("by", Arg::Verbatim(by.to_owned()))
        .with("engine", Arg::Verbatim(engine(drill).to_owned()))
}

/// The breaker of the panel by which the household's own power enters it past all transfer equipment; the set's own where there is none.
fn entry(drill: &Drill) -> ControlId {
    let site = drill.site();
    let outlet = site.cords.iter().find_map(|cord| {
        let FarEnd::Blades(end, circuit) = cord.far else {
            return None;
        };
        let plugged = drill.positions().get(end) != PositionId(0);
        let circuit = site.circuits.get(circuit).filter(|_| plugged);
        circuit.map(|c| c.breaker)
    });
    let panel = site.panel.backfeed.as_ref().map(|b| b.breaker);
    outlet.or(panel).unwrap_or(site.generator.output)
}

/// Whether the line that somebody had in hand is live; from a house, whether its main still leads there.
fn after_shock(drill: &Drill) -> &'static str {
    let site = drill.site();
    let pole = site.line.poles.get(site.line.crew_pole);
    let fed = pole.map(|p| drill.readings().point(&p.name).fed);
    let live = |own: fn(&Fed) -> bool| fed.as_ref().is_some_and(own);
    if site.line_work.is_some() {
        if live(|f| f.any()) { "live" } else { "dead" }
    } else if live(|f| f.customer()) {
        "live"
    } else if site.stands(drill.positions(), site.panel.main, "on") {
        "main-on"
    } else {
        "main-off"
    }
}

/// Whether the household's engine turns.
fn engine(drill: &Drill) -> &'static str {
    if drill.conditions().engine.running_since.is_some() {
        "runs"
    } else {
        "still"
    }
}

/// How a cord that got hot stands now: under volts, plugged in without any, or put away.
fn hot_cord(drill: &Drill, finding: &Finding) -> &'static str {
    let site = drill.site();
    let names = site.cords.iter().map(|c| c.name.as_str());
    let name = named_in(finding, "cord", names);
    let Some(cord) = site.cords.iter().find(|c| Some(c.name.as_str()) == name) else {
        return "live";
    };
    let near = drill.readings().point(&format!("{}-near-end", cord.name));
    if near.fed.any() {
        "live"
    } else if site.stands(drill.positions(), cord.near, "stowed") {
        "away"
    } else {
        "dead"
    }
}

/// How a house that a source of its own feeds stands to the street.
fn house(drill: &Drill) -> &'static str {
    let main = drill.site().panel.main;
    if drill.readings().point("bus").fed.utility {
        "joined"
    } else if drill.site().stands(drill.positions(), main, "on") {
        "main-on"
    } else {
        "main-off"
    }
}

/// Whether a set's starter still turns its engine or can turn it again.
fn starter(drill: &Drill) -> &'static str {
    let runs = drill.conditions().engine.running_since.is_some();
    let positions = drill.positions();
    let machine = &drill.site().generator.machine;
    let wakes = machine.automatic.is_some_and(|automatic| {
        !automatic.asleep(positions)
            && !automatic
                .lock_out(positions, drill.site().generator.output)
                .controller_off
    });
    if runs || wakes { "turns" } else { "still" }
}

/// What takes power off the wires in the walls at once: for the household's own, the set itself, as what lies before a panel's breaker may be what is hot; for other power, the breaker of the circuit.
fn feeds_inside(drill: &Drill) -> &'static str {
    if drill.readings().point("bus").fed.customer() {
        "own"
    } else {
        "circuit"
    }
}

/// What feeds a bare contact or a plug; a source of the household where nothing does.
fn fed(drill: &Drill, point: &str) -> &'static str {
    let fed = drill.readings().point(point).fed;
    match (fed.utility, fed.customer()) {
        (true, true) => "both",
        (true, false) => "utility",
        (false, _) => "own",
    }
}
