//! Restoration: the goal was met in time, and everything stands as it should at the end.
//!
//! A scenario may say that a safe stop is as good: nothing fed, and an electrician called.

use crate::drill::{Action, Callee, Event, Moment, Trace, What};
use crate::scenario::Scenario;
use crate::words::{Arg, name_of};

use super::finding::{Finding, Rule};

/// Fraction of rated volts from which an appliance counts as supplied: NEMA MG 1-12.44 tolerance, checked.
const SUPPLIED_PU: f64 = 0.9;

pub(super) fn findings(scenario: &Scenario, trace: &Trace) -> Vec<Finding> {
    let stopped = scenario.goal.safe_stop && stopped_safely(scenario, trace);
    let mut found = Vec::new();
    if !stopped {
        found.extend(goal_late(scenario, trace));
        found.extend(lost(scenario, trace));
    }
    let Some(last) = trace.moments.len().checked_sub(1) else {
        return found;
    };
    let Some(end) = trace.moments.get(last) else {
        return found;
    };
    for (control, positions) in &scenario.goal.at_end {
        let stands = scenario.site.position_name(&end.positions, *control);
        if !positions.iter().any(|p| p == stands) {
            let control = scenario.site.control(*control);
            let name = control.map_or("", |c| c.name.as_str());
            let wanted = positions.first().map_or("", String::as_str);
            let said = |position| control.map_or(position, |c| c.said(position));
            found.push(
                Finding::breach(Rule::NotRestored, end.at, last)
                    .with("control", Arg::Said(Box::new(name_of(name))))
                    .with("stands", Arg::Said(Box::new(name_of(said(stands)))))
                    .with("wanted", Arg::Said(Box::new(name_of(said(wanted)))))
                    .with("crew", crew(scenario)),
            );
        }
    }
    if scenario.goal.back_on_utility && !stopped && !end.readings.point("bus").fed.utility {
        let finding = Finding::breach(Rule::NotBack, end.at, last);
        found.push(finding.with("crew", crew(scenario)));
    }
    found
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

/// Appliances of the goal that had no power in time.
/// An outage that hasn't come yet leaves nothing to be judged but the goal itself.
fn goal_late(scenario: &Scenario, trace: &Trace) -> Vec<Finding> {
    let site = &scenario.site;
    let outage = trace.outage_at();
    let standby = site.generator.machine.automatic.is_some();
    let mut found = Vec::new();
    for index in &scenario.goal.appliances {
        let supplied = trace.moments.iter().find(|m| {
            let after = outage.is_some_and(|at| m.at > at);
            after && m.readings.appliance(*index).pu >= SUPPLIED_PU
        });
        let due = outage.unwrap_or_default() + scenario.goal.within;
        if supplied.is_none_or(|m| m.at > due) {
            let name = site.appliances.get(*index).map_or("", |a| a.name.as_str());
            let at = due.min(trace.end());
            let moment = trace
                .moments
                .iter()
                .rposition(|m| m.at <= at)
                .unwrap_or_default();
            found.push(
                Finding::breach(Rule::GoalLate, at, moment)
                    .with("appliance", Arg::Said(Box::new(name_of(name))))
                    .with("within", Arg::lasting(scenario.goal.within))
                    .with("standby", Arg::Count(i64::from(standby))),
            );
        }
    }
    found
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
                    .with("appliance", Arg::Said(Box::new(name_of(name)))),
            );
        }
    }
    found
}
