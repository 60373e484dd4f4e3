//! Marking: what a trace shows, judged by rules that read readings and events and never a list of clicks.
//!
//! Any safe order passes.
//! An unsafe one fails because the model found the line fed, a body in the way or a machine pulled down.
//! Five kinds of criteria; critical ones are conjunctive.
//! A rule is a function from scenario and trace to findings, in the file of its criterion.

mod air;
mod answers;
mod bonds;
mod calibration;
mod cords;
mod episode;
mod finding;
mod indoors;
mod isolation;
mod line;
mod live_end;
mod load;
mod motors;
mod objective;
mod order;
mod people;
mod protection;
mod restoration;
mod second_source;
mod service;
mod skill;
mod spacing;
mod starved;
mod touch;
mod two_plugs;
mod wet_panel;
mod wires;

use crate::apparatus::auto_transfer::Phase;
use crate::drill::{Moment, Trace};
use crate::hazard::monoxide::CLEAN_PPM;
use crate::scenario::{Criterion, Scenario};
use crate::site::{PositionId, Site};
use crate::units::DrillTime;
use crate::words::Arg;

pub use calibration::{Calibration, Forecast, GUESS, Lean, SURE, calibration, is_right};
pub use finding::{Finding, Harm, Rule};
pub use objective::Objective;
pub use restoration::{SUPPLIED_PU, supplied_since};
pub use spacing::{Memory, WANTED};

/// What a run comes to.
#[derive(Debug, Clone, PartialEq)]
pub struct Verdict {
    /// Whether it passes.
    pub passed: bool,
    /// Each criterion and whether it is met.
    pub criteria: Vec<(Criterion, bool)>,
    /// Findings: what harms somebody first, then what fails a run alone, then the rest; each in order of time, but for what asks for something now, which comes first of its kind.
    pub findings: Vec<Finding>,
}

/// Marks a trace.
pub fn mark(scenario: &Scenario, trace: &Trace) -> Verdict {
    let mut findings = mark_so_far(scenario, trace);
    findings.extend(load::at_end(scenario, trace));
    let left = restoration::findings(scenario, trace, &findings);
    findings.extend(left);
    findings.extend(answers::unanswered(scenario, trace));
    let harms = |f: &Finding| f.breach && f.rule.harms();
    let critical = |f: &Finding| f.breach && f.rule.criterion().is_critical();
    let class = |f: &Finding| (!harms(f), !critical(f));
    findings.sort_by_key(|f| (class(f), f.at, f.rule));
    // Of its class, what asks for something now comes first: nobody reads on to find it.
    if let Some(index) = pressing(&scenario.site, trace, &findings)
        && let Some(own) = findings.get(index).map(class)
        && let Some(first) = findings.iter().position(|f| class(f) == own)
        && let Some(of_class) = findings.get_mut(first..=index)
    {
        of_class.rotate_right(1);
    }
    let criteria = criteria(scenario, &findings);
    let passed = passes(&criteria, scenario.share);
    Verdict {
        passed,
        criteria,
        findings,
    }
}

/// Whether a run in which this is found before its end can still pass.
pub fn may_pass(scenario: &Scenario, so_far: &[Finding]) -> bool {
    let criteria = criteria(scenario, so_far);
    passes(&criteria, scenario.share)
}

/// Each criterion of a drill and whether it is met with these findings.
fn criteria(scenario: &Scenario, findings: &[Finding]) -> Vec<(Criterion, bool)> {
    let met = |criterion: Criterion| !findings.iter().any(|f| speaks_against(f, criterion));
    scenario.criteria.iter().map(|c| (*c, met(*c))).collect()
}

/// Whether a finding leaves a criterion unmet: a breach does, and so does what was rightly left undone, which was not shown all the same.
/// Two sources that fight, wrong volts and a fault through grounds strain machines too, whatever else they break.
/// What a step out of turn brought about speaks against the order too: a handle that joined two sources, a plug that was moved under load.
pub fn speaks_against(finding: &Finding, criterion: Criterion) -> bool {
    let strains = [
        Rule::Collision,
        Rule::SourcesMeet,
        Rule::WrongVolts,
        Rule::GroundsLeft,
    ];
    let of_machines = criterion == Criterion::Load && strains.contains(&finding.rule);
    let by = |name: &str| {
        finding
            .evidence
            .contains(&("by", Arg::Verbatim(name.to_owned())))
    };
    let joined = finding.rule == Rule::Collision && (by("main") || by("set"));
    let of_order = criterion == Criterion::Order && (joined || finding.rule == Rule::PlugUnderLoad);
    let own = finding.rule.criterion() == criterion;
    (own || of_machines || of_order) && (finding.breach || finding.rule == Rule::NotRestored)
}

/// What a trace shows before its end, in order of time: all findings but those of restoration and what stands at the end, which only the end can judge.
/// A coach speaks of these as they happen.
/// On a line that a crew works only the crew's own doing is judged: what customers do there is the story's.
pub fn mark_so_far(scenario: &Scenario, trace: &Trace) -> Vec<Finding> {
    let mut findings = isolation::findings(scenario, trace);
    findings.extend(people::findings(scenario, trace));
    if scenario.site.line_work.is_some() {
        findings.retain(|f| matches!(f.rule, Rule::Collision | Rule::Shock));
        findings.extend(line::findings(scenario, trace));
        findings.extend(answers::findings(scenario, trace));
        findings.sort_by_key(|f| (f.at, f.rule));
        return findings;
    }
    findings.extend(touch::findings(scenario, trace));
    findings.extend(air::findings(scenario, trace));
    findings.extend(indoors::findings(scenario, trace));
    findings.extend(order::findings(scenario, trace));
    findings.extend(bonds::findings(scenario, trace));
    findings.extend(two_plugs::findings(scenario, trace));
    findings.extend(load::findings(scenario, trace));
    findings.extend(starved::findings(scenario, trace));
    findings.extend(motors::findings(scenario, trace));
    findings.extend(wet_panel::findings(scenario, trace));
    findings.extend(second_source::findings(scenario, trace));
    findings.extend(protection::findings(scenario, trace));
    findings.extend(cords::findings(scenario, trace));
    findings.extend(service::findings(scenario, trace));
    findings.extend(wires::findings(scenario, trace));
    findings.extend(answers::findings(scenario, trace));
    findings.sort_by_key(|f| (f.at, f.rule));
    findings
}

/// The one finding, by index, whose danger still stands at the end and asks for something now; two orders at once could speak against each other.
/// Who is hurt needs help whatever stands, and who breathes gas has to get out; a wire in a wall that is hot can burn the house.
pub fn pressing(site: &Site, trace: &Trace, findings: &[Finding]) -> Option<usize> {
    let end = trace.moments.last();
    let gas =
        end.is_some_and(|m| site.n_inside(&m.positions) > 0 && m.conditions.ppm() >= CLEAN_PPM);
    // What the last deed of all has brought about has not lasted yet, and stands all the same.
    let broken = end.map_or_else(Vec::new, |m| standing(site, m));
    let now = |holds: fn(&Site, &Moment) -> bool| end.is_some_and(|m| holds(site, m));
    let stands = |f: &Finding| {
        let to_the_end = f.at + f.lasted >= trace.end();
        let lasts = to_the_end && (f.lasted > DrillTime::ZERO || broken.contains(&f.rule));
        let breathes = gas && matches!(f.rule, Rule::Gas | Rule::StayedIn);
        let of = |rule: Rule, holds: bool| f.rule == rule && holds;
        let critical = f.rule.criterion().is_critical();
        let asks = critical && (lasts || f.rule.harms() || breathes)
            || of(Rule::WireHot, lasts)
            || scorched(f)
            || of(Rule::PushedBack, true)
            || of(Rule::SunOnGenerator, now(solar_joined))
            || of(Rule::GroundsLeft, now(grounds_on))
            || of(Rule::NoAlarm, now(alarm_is_mute))
            || of(Rule::Overload, now(given_up))
            || of(Rule::WrongVolts, now(on_broken_neutral))
            || of(
                Rule::Collision,
                now(still_joined) || site.line_work.is_some(),
            )
            || of(Rule::NotRestored, now(restoration::live_through_welded));
        // What burned out can burn on, whoever brought it about.
        (f.breach || f.rule == Rule::Damaged) && asks
    };
    let told = findings.iter().enumerate().filter(|(_, f)| stands(f));
    told.min_by_key(|(index, f)| (f.rule.urgency(), *index))
        .map(|(index, _)| index)
}

/// What heat or too much voltage has spoiled can smolder after its current is gone, and is to be taken out of use.
fn scorched(finding: &Finding) -> bool {
    let soft = ("ruined", Arg::Count(1));
    let ruined = finding.rule == Rule::CordHot && finding.evidence.contains(&soft);
    ruined || matches!(finding.rule, Rule::PlugHot | Rule::Damaged)
}

/// Whether a solar inverter is still joined to what the household's engine feeds.
fn solar_joined(site: &Site, moment: &Moment) -> bool {
    let mut suns = site.solar.iter();
    let runs = moment.conditions.engine.running_since.is_some();
    runs && suns.any(|s| site.stands(&moment.positions, s.breaker, "on"))
}

/// Whether the controller of a set that is built in has given up, so that the next outage finds it dead.
fn given_up(_: &Site, moment: &Moment) -> bool {
    matches!(moment.conditions.controller.phase, Phase::Failed(_))
}

/// Whether a carbon monoxide alarm is there and can't sound.
fn alarm_is_mute(site: &Site, moment: &Moment) -> bool {
    site.indoors.alarm.is_some() && !site.alarm_works(&moment.positions)
}

/// Whether grounds still hang on a line that a crew works.
fn grounds_on(site: &Site, moment: &Moment) -> bool {
    let work = site.line_work.as_ref();
    work.is_some_and(|w| w.sets_on(&moment.positions) > 0)
}

/// Whether the house hangs on a utility whose neutral is broken, with its main on.
pub fn on_broken_neutral(site: &Site, moment: &Moment) -> bool {
    let broken = moment.positions.get(site.line.drop_neutral) != PositionId(0);
    broken && moment.readings.point("bus").fed.utility
}

/// Whether the handles of a panel still join what the generator feeds to the street.
pub fn still_joined(site: &Site, moment: &Moment) -> bool {
    let on = |control| site.stands(&moment.positions, control, "on");
    let backfeed = site.panel.backfeed.as_ref();
    site.line_work.is_none() && on(site.panel.main) && backfeed.is_some_and(|b| on(b.breaker))
}

/// The critical rules that a moment breaks by how things stand in it; events and doses aside.
pub fn standing(site: &Site, moment: &Moment) -> Vec<Rule> {
    let broken = if site.line_work.is_some() {
        vec![
            (Rule::NoVisibleBreak, line::no_visible_break(site, moment)),
            (Rule::NotGrounded, line::out_of_zone(site, moment)),
        ]
    } else {
        house_standing(site, moment)
    };
    broken
        .into_iter()
        .filter(|(_, b)| *b)
        .map(|(r, _)| r)
        .collect()
}

fn house_standing(site: &Site, moment: &Moment) -> Vec<(Rule, bool)> {
    vec![
        (Rule::LineFed, isolation::line_fed(site, moment)),
        (
            Rule::NoTransferEquipment,
            isolation::unguarded_volts(site, moment).is_some(),
        ),
        (Rule::SourcesMeet, isolation::sources_meet(moment)),
        (Rule::LiveBlades, people::bare_contacts(site, moment)),
    ]
}

fn passes(criteria: &[(Criterion, bool)], share: f64) -> bool {
    let needed = criteria
        .iter()
        .filter(|(c, _)| c.is_needed())
        .all(|(_, met)| *met);
    let others: Vec<bool> = criteria
        .iter()
        .filter(|(c, _)| !c.is_needed())
        .map(|(_, met)| *met)
        .collect();
    let n_met = others.iter().filter(|met| **met).count();
    needed && as_f64(n_met) >= share * as_f64(others.len())
}

/// A small count as a number.
fn as_f64(count: usize) -> f64 {
    u32::try_from(count).map_or(f64::INFINITY, f64::from)
}
