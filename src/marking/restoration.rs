//! Restoration: the goal was met in time, and everything stands as it should at the end.
//!
//! A scenario may say that a safe stop is as good: nothing fed, and an electrician called.
//! What was left undone is told in an order that is safe to follow; once somebody is hurt or something burns, no handle is worth naming.

use crate::drill::{Action, Callee, Event, Moment, Trace, What};
use crate::scenario::Scenario;
use crate::site::{ControlId, Cord, FarEnd, Kind, PositionId, Site};
use crate::units::DrillTime;
use crate::words::{Arg, Message, name_of};

use super::finding::{Finding, Rule};
use super::load::BRIEF;
use super::on_broken_neutral;

/// Fraction of rated volts from which an appliance counts as supplied: NEMA MG 1-12.44 tolerance, checked.
pub const SUPPLIED_PU: f64 = 0.9;

/// What is left at the end; `so_far` is all that was found before.
pub(super) fn findings(scenario: &Scenario, trace: &Trace, so_far: &[Finding]) -> Vec<Finding> {
    let stopped = scenario.goal.safe_stop && stopped_safely(scenario, trace);
    let harm = so_far.iter().find(|f| f.breach && f.rule.harms());
    let mut found = Vec::new();
    let mut waits = false;
    if !stopped {
        let (late, later) = goal_late(scenario, trace, so_far)
            .into_iter()
            .partition(|f| harm.is_none_or(|harm| harm.at > f.at));
        found = late;
        // Once somebody is hurt, power can wait.
        waits = !Vec::is_empty(&later);
        found.extend(lost(scenario, trace));
    }
    let Some(last) = trace.moments.len().checked_sub(1) else {
        return found;
    };
    let Some(end) = trace.moments.get(last) else {
        return found;
    };
    let mut undone = left_undone(scenario, last, end);
    if scenario.goal.back_on_utility && !stopped && !end.readings.point("bus").fed.utility {
        let early = street_is_dark(&scenario.site, end);
        if early {
            // Nothing of the way back can rightly be done before there is something to go back to.
            undone.retain(|(id, _)| !id.is_some_and(|id| of_way_back(&scenario.site, id)));
        }
        if arced(so_far) {
            undone.retain(|(id, _)| !id.is_some_and(|id| locked_out(&scenario.site, id)));
        }
        undone.push((None, not_back(scenario, so_far, (last, end), early)));
    }
    let Some(harm) = harm else {
        if let Some(sign) = so_far.iter().find(|f| f.breach && f.rule == Rule::StayedIn) {
            let n_all = undone.len();
            undone.retain(|(id, _)| id.is_some_and(|id| of_people(&scenario.site, id)));
            if undone.len() < n_all || moved_since(&scenario.site, sign, trace) {
                let aside = unfinished("air", sign.moment, sign.at);
                found.push(Finding {
                    breach: false,
                    ..aside
                });
            }
        }
        found.extend(undone.into_iter().map(|(_, finding)| finding));
        return found;
    };
    let after = after_harm(&scenario.site, harm, trace);
    if after.breach || waits || !undone.is_empty() {
        found.push(after);
    }
    found
}

/// A house that isn't on the utility at the end, or a line whose customers aren't; `early` where the street was still dark.
fn not_back(
    scenario: &Scenario,
    so_far: &[Finding],
    (last, end): (usize, &Moment),
    early: bool,
) -> Finding {
    let site = &scenario.site;
    let lit = |name: &str| end.readings.point(name).fed.customer();
    let lit = site.neighbors.iter().any(|n| lit(&n.name));
    Finding::breach(Rule::NotBack, end.at, last)
        .with("crew", crew(scenario))
        .with("lit", Arg::Count(i64::from(lit)))
        .with("early", Arg::Count(i64::from(early)))
        .with(
            "stands",
            Arg::Verbatim(fed_by(site, end, so_far).to_owned()),
        )
}

/// Whether the household waits for a utility that isn't there; a crew on the line brings it back itself.
fn street_is_dark(site: &Site, end: &Moment) -> bool {
    site.line_work.is_none() && !end.readings.point("service").fed.utility
}

/// Whether a control of this kind is moved on the way back to the utility; people, places, locks and openings are as they should be at any time.
fn of_way_back(site: &Site, id: ControlId) -> bool {
    !matches!(
        site.control(id).map(|c| c.kind),
        Some(Kind::People | Kind::Placement | Kind::Lock | Kind::Opening)
    )
}

/// Whether contacts drew an arc when a hand moved them: nobody brings them back to use before an electrician has looked at them.
fn arced(so_far: &[Finding]) -> bool {
    let carried = ("carried", Arg::Count(1));
    so_far
        .iter()
        .any(|f| f.rule == Rule::HandTransferLive && f.evidence.contains(&carried))
}

/// Whether a control is one of those by which a set that moves the contacts of a transfer switch is locked out.
fn locked_out(site: &Site, id: ControlId) -> bool {
    let automatic = site.generator.machine.automatic;
    automatic.is_some_and(|own| [own.switch, own.battery, site.generator.output].contains(&id))
}

/// What stands otherwise than it should, in an order that is safe to follow, each with its control.
fn left_undone(
    scenario: &Scenario,
    last: usize,
    end: &Moment,
) -> Vec<(Option<ControlId>, Finding)> {
    let site = &scenario.site;
    let wrong = scenario.goal.at_end.iter().filter(|(control, positions)| {
        let stands = site.position_name(&end.positions, *control);
        !positions.iter().any(|p| p == stands)
    });
    let mut wrong: Vec<(ControlId, &str)> = wrong
        .map(|(control, positions)| (*control, positions.first().map_or("", String::as_str)))
        .collect();
    let all = wrong.len();
    if on_broken_neutral(site, end) {
        wrong.retain(|(control, _)| !of_own_source(site, *control));
    }
    let kept = (wrong.len() < all).then(|| unfinished("neutral", last, end.at));
    wrong.sort_by_key(|(control, wanted)| turn(site, *control, wanted));
    let told = wrong.iter().enumerate().map(|(index, (id, wanted))| {
        let control = site.control(*id);
        let name = control.map_or("", |c| c.name.as_str());
        let said = |position| control.map_or(position, |c| c.said(position));
        let stands = said(site.position_name(&end.positions, *id));
        let finding = Finding::breach(Rule::NotRestored, end.at, last)
            .with("harm", Arg::Verbatim("none".to_owned()))
            .with("control", Arg::Said(Box::new(name_of(name))))
            .with("stands", Arg::Said(Box::new(name_of(stands))))
            .with("wanted", Arg::Said(Box::new(name_of(said(wanted)))))
            .with("first", Arg::Count(i64::from(index == 0)))
            .with("welded", Arg::Count(i64::from(welded(site, end, *id))))
            .with(
                "live",
                Arg::Count(i64::from(live_through_welded(site, end))),
            )
            .with(
                "loaded",
                Arg::Verbatim(loaded(site, end, (*id, wanted)).to_owned()),
            )
            .with("back", Arg::Verbatim(walked(scenario).to_owned()))
            .with("crew", crew(scenario));
        (Some(*id), finding)
    });
    told.chain(kept.map(|finding| (None, finding))).collect()
}

/// What a house that isn't on the utility at the end can do: leave its own source, go back to a utility that is there, leave that to its controller, bring its own power back after too much was asked of it, or wait in the dark.
fn fed_by(site: &Site, end: &Moment, so_far: &[Finding]) -> &'static str {
    let found = |rules: &[Rule]| so_far.iter().any(|f| f.breach && rules.contains(&f.rule));
    let stands = |control, position| site.stands(&end.positions, control, position);
    let set = &site.generator;
    let mut appliances = end.readings.appliances.iter();
    if appliances.any(|r| r.fed.customer()) {
        // A source that endangers people is off as soon as that is seen: nobody waits on it for the street.
        if so_far.iter().any(ends_own_source) {
            "dark"
        } else {
            "own"
        }
    } else if end.readings.point("service").fed.utility {
        if set.machine.automatic.is_none() {
            "there"
        } else if arced(so_far) {
            "moved"
        } else if stands(site.panel.main, "on") {
            "automatic"
        } else {
            "main"
        }
    } else if !found(&[Rule::Overload, Rule::AllAtOnce, Rule::Tripped]) {
        "dark"
    } else if stands(set.output, "tripped") {
        "tripped"
    } else if stands(set.engine, "stopped") && stands(set.output, "on") {
        "stalled"
    } else {
        "dark"
    }
}

/// What is walked over at the end of a job: a unit that is built in, the way back, or the way out.
fn walked(scenario: &Scenario) -> &'static str {
    if scenario.site.generator.machine.automatic.is_some() {
        "standby"
    } else if scenario.goal.back_on_utility {
        "back"
    } else {
        "out"
    }
}

/// Whether a control is of the household's own source, which nobody takes away while the utility is unsound.
fn of_own_source(site: &Site, control: ControlId) -> bool {
    let kind = site.control(control).map(|c| c.kind);
    matches!(kind, Some(Kind::Engine | Kind::Plug))
}

/// Whether a finding asks for the household's own source to be taken away at once.
fn ends_own_source(finding: &Finding) -> bool {
    let hurts = finding.rule.criterion().is_critical() || finding.harm.is_some();
    finding.breach && (hurts || finding.rule == Rule::PushedBack)
}

/// Whether a control says where people are.
fn of_people(site: &Site, id: ControlId) -> bool {
    site.control(id).map(|c| c.kind) == Some(Kind::People)
}

/// Whether a handle was moved after a finding, and not only somebody brought out.
fn moved_since(site: &Site, finding: &Finding, trace: &Trace) -> bool {
    let mut later = trace.moments.iter().skip(finding.moment + 1);
    later.any(|m| {
        let What::Did(Action::Set(id, _)) = &m.what else {
            return false;
        };
        !of_people(site, *id)
    })
}

/// Seconds in which whoever sees harm has called for help: assumption.
const CALLED_IN: DrillTime = DrillTime::from_secs(60);

/// Told in place of all that was left undone, once somebody is hurt or something burns.
/// To leave the rest as it stood is right, and so is to take away power; what else was moved counts, and what somebody tried to move.
fn after_harm(site: &Site, harm: &Finding, trace: &Trace) -> Finding {
    let harms = if harm.rule.burns() {
        "fire"
    } else if harm.rule == Rule::Overcome {
        "gas"
    } else if harm.rule == Rule::CaughtByEngine {
        "engine"
    } else {
        "hurt"
    };
    let mut later = trace.moments.iter().enumerate().skip(harm.moment + 1);
    let called = |(_, m): (usize, &Moment)| m.what == What::Did(Action::Call(Callee::Emergency));
    let called = later.clone().any(called);
    let soon_over = trace.end() <= harm.at + CALLED_IN;
    let first = later.find(|(_, m)| went_on(site, harm, m));
    let (index, at) = first.map_or((harm.moment, harm.at), |(index, m)| (index, m.at));
    Finding {
        breach: first.is_some(),
        ..unfinished(harms, index, at)
    }
    .with("after", Arg::Count(i64::from(first.is_some())))
    .with("called", Arg::Count(i64::from(called || soon_over)))
}

/// Whether somebody moved or tried to move, after harm was done, what does not end it.
/// From fuel that burns on a set everybody goes away, and no handle is worth a moment there.
fn went_on(site: &Site, harm: &Finding, moment: &Moment) -> bool {
    let (What::Did(action) | What::Refused(action, _)) = &moment.what else {
        return false;
    };
    let Action::Set(id, position) = action else {
        return *action == Action::Refuel;
    };
    site.control(*id).is_some_and(|control| {
        let to = control.positions.get(usize::from(position.0));
        let cuts = to.is_some_and(|to| CUTS.contains(&to.as_str()));
        let leaves = of_people(site, *id);
        !(cuts && (leaves || harm.rule != Rule::FuelFire))
    })
}

/// Positions that take power away or bring somebody out of danger, whoever moves a handle there.
const CUTS: [&str; 6] = ["off", "stopped", "open", "outside", "clear", "away"];

/// Work that is rightly left undone, and what forbids it.
fn unfinished(why: &str, index: usize, at: DrillTime) -> Finding {
    Finding::breach(Rule::NotRestored, at, index).with("harm", Arg::Verbatim(why.to_owned()))
}

/// Whether power from the utility stands on a line whose head is welded: no handle takes it off.
pub(super) fn live_through_welded(site: &Site, moment: &Moment) -> bool {
    let Some(work) = &site.line_work else {
        return false;
    };
    let point = site.line.poles.get(site.line.crew_pole);
    let live = point.is_some_and(|p| moment.readings.point(&p.name).fed.utility);
    live && moment.positions.get(work.head_contacts) != PositionId(0)
}

/// Whether a control is the switch at the head of the line and its contacts are welded: then no handle is to be trusted with it.
fn welded(site: &Site, moment: &Moment, control: ControlId) -> bool {
    let work = site.line_work.as_ref();
    let welded = work.is_some_and(|w| moment.positions.get(w.head_contacts) != PositionId(0));
    welded && control == site.line.feeder
}

/// Why a step back to the household's own power begins with taking load off: an engine that stands behind a breaker that is on, or a breaker that tripped.
fn loaded(site: &Site, moment: &Moment, (control, wanted): (ControlId, &str)) -> &'static str {
    let set = &site.generator;
    let stands = |wanted| site.stands(&moment.positions, control, wanted);
    let on = site.stands(&moment.positions, set.output, "on");
    if wanted == "running" && control == set.engine && stands("stopped") && on {
        "engine"
    } else if wanted == "on" && control == set.output && stands("tripped") {
        "tripped"
    } else {
        "none"
    }
}

/// The place of a handle in an order that is safe: people first, then what takes power away, from the loads to the engine, then what brings it back, the head of the line last.
fn turn(site: &Site, id: ControlId, wanted: &str) -> (bool, u8) {
    if id == site.line.feeder {
        return (true, u8::MAX);
    }
    let takes = [
        "off", "stopped", "open", "stowed", "clear", "absent", "away", "shut", "whole",
    ];
    let brings = !takes.contains(&wanted);
    let own = |c: &Cord| match c.far {
        FarEnd::Blades(end, _) | FarEnd::Inlet(end) | FarEnd::Strip(end) => end == id,
        FarEnd::Connector => false,
    };
    let house_end = site.cords.iter().any(own);
    let kind = site.control(id).map(|c| c.kind);
    let place = match kind {
        Some(Kind::People) => 0,
        Some(Kind::Breaker | Kind::Switch) if !brings => 1,
        Some(Kind::Backfed) if !brings => 2,
        Some(Kind::Output | Kind::Gfci) if !brings => 3,
        Some(Kind::Engine) => 4,
        Some(Kind::Output | Kind::Gfci) => 5,
        Some(Kind::Plug) if house_end => 6,
        Some(Kind::Plug) => 7,
        Some(Kind::Main | Kind::Disconnect | Kind::Transfer | Kind::Line) => 8,
        Some(Kind::Backfed) => 9,
        Some(Kind::Breaker) => 10,
        Some(Kind::Lock | Kind::Placement | Kind::Switch | Kind::Lay | Kind::Opening) | None => 11,
    };
    // A cord is plugged in before the engine turns; an engine is rid of its load before it stops, and stopped before it is unplugged.
    let place = if brings && kind == Some(Kind::Plug) {
        0
    } else {
        place
    };
    (brings, place)
}

/// Whether the learner is a line crew, as a count for the words.
fn crew(scenario: &Scenario) -> Arg {
    Arg::Count(i64::from(scenario.site.line_work.is_some()))
}

/// Whether an electrician was called, no source of the house ever reached its wiring, and the engine stands still at the end.
fn stopped_safely(scenario: &Scenario, trace: &Trace) -> bool {
    let site = &scenario.site;
    let called = |m: &Moment| matches!(m.what, What::Did(Action::Call(Callee::Electrician)));
    let fed = |m: &Moment| m.readings.point("bus").fed.customer();
    let stands = trace.moments.last().is_some_and(|m| {
        let engine = site.generator.engine;
        site.stands(&m.positions, engine, "stopped")
    });
    stands && trace.moments.iter().any(called) && !trace.moments.iter().any(fed)
}

/// When an appliance first had power after the outage that lasted, or that still stands; power that fails before that helps nobody.
///
/// It has lasted once it has stood for longer than a motor takes to start, an assumption: a set that is asked for far too much stops sooner.
/// A dip that is no longer than such a start doesn't break it.
pub fn supplied_since(trace: &Trace, appliance: usize) -> Option<DrillTime> {
    let outage = trace.outage_at()?;
    let (mut since, mut dark): (Option<DrillTime>, Option<DrillTime>) = (None, None);
    for moment in trace.moments.iter().filter(|m| m.at > outage) {
        if dark.is_some_and(|then| moment.at > then + BRIEF) {
            (since, dark) = (None, None);
        }
        if has_power(moment, appliance) {
            since = since.or(Some(moment.at));
            dark = None;
        } else if since.is_some() {
            dark = dark.or(Some(moment.at));
        }
        let stood_until = dark.unwrap_or(moment.at);
        if since.is_some_and(|from| stood_until >= from + BRIEF) {
            return since;
        }
    }
    since.filter(|_| dark.is_none())
}

/// Whether an appliance gets volts enough, whether or not it draws anything.
fn has_power(moment: &Moment, appliance: usize) -> bool {
    moment.readings.appliance(appliance).pu >= SUPPLIED_PU
}

/// Appliances of the goal that had no power in time.
/// An outage that hasn't come yet leaves nothing to be judged but the goal itself.
fn goal_late(scenario: &Scenario, trace: &Trace, so_far: &[Finding]) -> Vec<Finding> {
    let site = &scenario.site;
    let outage = trace.outage_at();
    let mut found = Vec::new();
    for index in &scenario.goal.appliances {
        let supplied = supplied_since(trace, *index);
        let due = outage.unwrap_or_default() + scenario.goal.within;
        if supplied.is_none_or(|at| at > due) {
            let name = site.appliances.get(*index).map_or("", |a| a.name.as_str());
            let at = due.min(trace.end());
            let ended = match outage {
                None => 2,
                Some(_) => i64::from(trace.end() < due),
            };
            let moment = trace
                .moments
                .iter()
                .rposition(|m| m.at <= at)
                .unwrap_or_default();
            let until = trace.moments.get(..=moment).unwrap_or_default();
            let mut then = until.iter().filter(|m| outage.is_some_and(|o| m.at > o));
            let had = then.any(|m| has_power(m, *index));
            found.push(
                Finding::breach(Rule::GoalLate, at, moment)
                    .with("had", Arg::Count(i64::from(had)))
                    .with("appliance", Arg::Said(Box::new(name_of(name))))
                    .with("within", Arg::lasting(scenario.goal.within))
                    .with("ended", Arg::Count(ended))
                    .with(
                        "cause",
                        Arg::Verbatim(why_late(site, trace, moment, so_far).to_owned()),
                    ),
            );
        }
    }
    found
}

/// What is found where a set fed past all transfer equipment: its power has to go by cords.
const UNGUARDED: [Rule; 3] = [Rule::LineFed, Rule::NoTransferEquipment, Rule::Collision];
/// What is found where a device opens for a fault or for how grounds are joined.
const OPENED: [Rule; 3] = [Rule::TwoBonds, Rule::NothingBonds, Rule::GroundFault];

/// What is found where more was asked of a set than it gives.
const TOO_MUCH: [Rule; 4] = [
    Rule::Overload,
    Rule::Tripped,
    Rule::TooSmallForMotor,
    Rule::ShutOff,
];

/// Why there was no power by a moment: an outage that has not come, a set that stood open or off, a device that opened, too much at once, a set that ran with nothing brought on, or nothing of that.
fn why_late(site: &Site, trace: &Trace, until: usize, so_far: &[Finding]) -> &'static str {
    let before = trace.moments.get(..=until).unwrap_or_default();
    let by = before.last().map(|m| m.at);
    let found = |rules: &[Rule]| {
        so_far
            .iter()
            .any(|f| Some(f.at) <= by && rules.contains(&f.rule))
    };
    if let (Some(automatic), Some(then)) = (&site.generator.machine.automatic, before.last()) {
        let lock_out = automatic.lock_out(&then.positions, site.generator.output);
        return if before.iter().any(|m| automatic.open(&m.positions)) {
            "cover"
        } else if lock_out.controller_off {
            "off"
        } else if found(&TOO_MUCH) {
            "shed"
        } else {
            "standby"
        };
    }
    let runs = |m: &Moment| m.readings.point("generator-outlet").fed.generator;
    if trace.outage_at().is_none() && site.has_unguarded_inlet() {
        "before-unguarded"
    } else if trace.outage_at().is_none() {
        "before"
    } else if before.iter().any(runs) && found(&UNGUARDED) || found(&OPENED) {
        "device"
    } else if found(&TOO_MUCH) {
        "load"
    } else if before.iter().any(runs) {
        "waits"
    } else {
        "cords"
    }
}

fn lost(scenario: &Scenario, trace: &Trace) -> Vec<Finding> {
    let mut found = Vec::new();
    for (index, moment) in trace.moments.iter().enumerate() {
        if let What::Happened(Event::Lost { appliance }) = moment.what {
            let name = scenario
                .site
                .appliances
                .get(appliance)
                .map_or("", |a| a.name.as_str());
            found.push(
                Finding::breach(Rule::Lost, moment.at, index)
                    .with("appliance", Arg::Said(Box::new(name_of(name))))
                    .with("came", Arg::Said(Box::new(came_of(name)))),
            );
        }
    }
    found
}

/// What came of it, in the words of the log.
fn came_of(appliance: &str) -> Message {
    Message::new(format!("event-lost-{appliance}"))
}
