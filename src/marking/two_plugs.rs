//! A cord with two plugs, taken away in the wrong order.
//!
//! Its house end comes first, after the outlet is dead and the set is off: whichever end stays in last leaves bare blades on the other.
//! Judged by what an end that is pulled leaves behind, live or not: the utility may return while the hand is on the blades.
//! Not covered: blades that are live already, which is a finding about people, and a plug that is moved live, which has its own.
//! Source: common practice.

use crate::drill::{Action, Moment, Trace, What};
use crate::scenario::Scenario;
use crate::site::{FarEnd, PositionId, Site, Spot};
use crate::words::{Arg, name_of};

use super::finding::{Finding, Rule};

pub(super) fn findings(scenario: &Scenario, trace: &Trace) -> Vec<Finding> {
    let mut found = Vec::new();
    for (index, pair) in trace.moments.windows(2).enumerate() {
        let [before, after] = pair else { continue };
        if matches!(after.what, What::Did(Action::Set(..))) {
            found.extend(pulled(&scenario.site, index + 1, before, after));
        }
    }
    found
}

/// What is wrong with how an end was pulled, if one was.
fn pulled(site: &Site, index: usize, before: &Moment, after: &Moment) -> Option<Finding> {
    for cord in &site.cords {
        let FarEnd::Blades(end, circuit) = cord.far else {
            continue;
        };
        let in_wall = |m: &Moment| m.positions.get(end).0 != 0;
        let in_set = |m: &Moment| cord.near_spot(&m.positions) != Spot::Stowed;
        let breaker = site.circuits.get(circuit)?.breaker;
        let on = |control| before.positions.get(control) == PositionId(1);
        // 1 the wrong end, 2 the outlet can become live, 3 the set can.
        let fault = if in_set(before) && !in_set(after) && in_wall(after) {
            1
        } else if !in_wall(before) || in_wall(after) {
            continue;
        } else if on(breaker) {
            2
        } else if in_set(before) && on(site.generator.output) {
            3
        } else {
            continue;
        };
        let finding = Finding::breach(Rule::WrongEndFirst, after.at, index)
            .with("cord", Arg::Said(Box::new(name_of(&cord.name))))
            .with("fault", Arg::Count(fault))
            .reaching(match fault {
                1 => format!("{}-near-end", cord.name),
                2 => format!("outlet-{}", site.circuits.get(circuit)?.name),
                _ => format!("{}-far-end", cord.name),
            });
        return Some(finding);
    }
    None
}
