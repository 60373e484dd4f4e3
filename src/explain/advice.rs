//! What to do now: chosen by how things stand now, so that one order is given and not one for each case.
//!
//! Read from the positions and readings that the drill has come to: who feeds the house, how the main stands, what feeds bare metal or a plug, whether grounds are still fed.
//! Not covered: what the learner knows of it; the debrief and the coach speak of what is true.

use crate::drill::Drill;
use crate::marking::{Finding, Rule, still_joined};
use crate::words::{Arg, Message};

/// The message of what to do now, with how things stand.
pub(super) fn now(drill: &Drill, finding: &Finding, message: Message) -> Message {
    let word = if finding.rule == Rule::NoTransferEquipment {
        house(drill)
    } else if [Rule::LiveBlades, Rule::LivePlug, Rule::PlugUnderLoad].contains(&finding.rule) {
        fed(drill, finding.reaches.as_deref().unwrap_or_default())
    } else if finding.rule == Rule::GroundsLeft {
        let point = finding.reaches.as_deref().unwrap_or_default();
        let live = drill.readings().point(point).fed.utility;
        if live { "live" } else { "dead" }
    } else if finding.rule == Rule::CaughtByEngine {
        starter(drill)
    } else if finding.rule == Rule::WireHot {
        feeds_inside(drill)
    } else if finding.rule == Rule::Collision {
        let moment = drill.trace().moments.last();
        let joined = moment.is_some_and(|m| still_joined(drill.site(), m));
        if joined { "joined" } else { "apart" }
    } else if finding.rule == Rule::SourcesMeet {
        let runs = drill.conditions().engine.running_since.is_some();
        if runs { "runs" } else { "still" }
    } else if finding.rule == Rule::Touch {
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

/// What takes power off the wires in the walls at once: the panel breaker that the generator feeds, or its own; for other power, the breaker of the circuit.
fn feeds_inside(drill: &Drill) -> &'static str {
    let own = drill.readings().point("bus").fed.customer();
    match drill.site().panel.backfeed {
        Some(_) if own => "backfed",
        None if own => "own",
        _ => "circuit",
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
