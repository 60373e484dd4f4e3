//! The last stage of a way: what the energy meets, and what it does there.

use crate::marking::{Finding, Rule};
use crate::site::Readings;
use crate::words::{Message, Unit};

use super::way::volts_at;
use super::{Stage, of_evidence, value};

/// The last stage of each rule: where, what is said, and the number of the finding that is shown; where none is, the volts at the point that is reached.
const HARMS: &[(Rule, &str, &str, &str)] = &[
    (Rule::LineFed, "crew", "stage-line-live", "volts"),
    (Rule::NoTransferEquipment, "main", "stage-handles", "volts"),
    (Rule::Collision, "generator", "stage-meet", "amps"),
    (
        Rule::SourcesMeet,
        "generator",
        "stage-sources-meet",
        "volts",
    ),
    (Rule::Shock, "crew", "stage-crew", "amps"),
    (Rule::Touch, "hand", "stage-hand", "body"),
    (Rule::NothingBonds, "generator", "stage-no-bond", "leg"),
    (Rule::LiveBlades, "hand", "stage-bare", "volts"),
    (Rule::WetPanel, "hand", "stage-wet-hand", "volts"),
    (Rule::LiveLugs, "hand", "stage-lug", "volts"),
    (Rule::HandTransferLive, "hand", "stage-parts", "volts"),
    (Rule::NotTested, "crew", "stage-work", "volts"),
    (Rule::TesterUnproved, "crew", "stage-work", "volts"),
    (Rule::NotGrounded, "crew", "stage-work", "volts"),
    (Rule::GroundsWrong, "crew", "stage-work", "volts"),
    (Rule::NoVisibleBreak, "crew", "stage-work", "volts"),
    (Rule::LiveEnd, "crew", "stage-gap", "volts"),
    (Rule::GroundsLeft, "crew", "stage-grounds", "amps"),
    (Rule::PlugUnderLoad, "hand", "stage-plug-load", "amps"),
    (Rule::LivePlug, "hand", "stage-plug", "volts"),
    (Rule::WrongVolts, "house", "stage-wrong-volts", "volts"),
    (Rule::Damaged, "house", "stage-burnt", "volts"),
    (Rule::GroundFault, "house", "stage-astray", "residual"),
    (Rule::ResetIntoFault, "house", "stage-astray", "residual"),
    (Rule::TwoBonds, "house", "stage-two-bonds", "took"),
    (Rule::GroundCarries, "cord", "stage-ground-wire", "amps"),
    (Rule::SunOnGenerator, "generator", "stage-sun-joins", "sun"),
    (Rule::PushedBack, "generator", "stage-pushed", "watts"),
    (Rule::WrongEndFirst, "", "stage-blades", ""),
    (Rule::NotAsked, "", "stage-customers", ""),
    (Rule::SaidDead, "", "stage-said-dead", ""),
    (Rule::CordUnfit, "", "stage-unfit", ""),
    (Rule::BlindReturn, "", "stage-blind", ""),
];

/// The last stage: what the energy meets, and what it does there.
pub(super) fn stage(finding: &Finding, readings: Option<&Readings>) -> Option<Stage> {
    let (_, at, id, shown) = HARMS.iter().find(|(rule, ..)| *rule == finding.rule)?;
    if shown.is_empty() {
        return Some(at_the_end(finding, readings, id));
    }
    of_evidence(finding, at, id, shown)
}

/// A last stage that shows the volts at the point that is reached.
fn at_the_end(finding: &Finding, readings: Option<&Readings>, id: &str) -> Stage {
    let to = finding.reaches.as_deref().unwrap_or_default();
    let volts = readings.map_or(0.0, |readings| volts_at(readings, to));
    Stage {
        at: to.to_owned(),
        text: Message {
            id: id.to_owned(),
            args: finding.evidence.clone(),
        }
        .quantity("stands", volts, Unit::Volts),
        value: value(volts, Unit::Volts),
    }
}

/// Whether a rule is about hands or clamps on the line, which meet its volts to earth.
pub(super) fn to_earth(rule: Rule) -> bool {
    let harm = HARMS.iter().find(|(own, ..)| *own == rule);
    harm.is_some_and(|(_, _, id, _)| ["stage-work", "stage-gap", "stage-grounds"].contains(id))
}
