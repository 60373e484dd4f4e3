//! The least time that a goal takes: nobody can be quicker than the sum of what the fewest quick moves take, whatever else they do.
//!
//! Only moves are counted: no looking, no warming up, no waiting, and every device does at once what it may do by itself.
//! So a goal that is due earlier than that is out of reach; one that is due later may be too.

use std::collections::BTreeMap;
use std::iter::once;

use crate::drill::{Action, Callee, Drill, Event, Listener, Sight, duration};
use crate::marking::{Finding, mark, mark_so_far, may_pass, supplied_since};
use crate::scenario::{Criterion, Happening, Scenario};
use crate::site::{ControlId, Plug, PositionId, Positions, Site};
use crate::units::DrillTime;

use super::joints::Place;
use super::judge::Judge;
use super::model::Move;
use super::plan::exposed;
use super::space::Space;
use super::table::Table;

/// States that are looked at before it is left open.
const MOST_STATES: usize = 500_000;

/// When an appliance can hang on a source of the house's own at the earliest.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Earliest {
    /// Not before this time.
    From(DrillTime),
    /// Whatever is moved, and whatever devices do by themselves.
    Never,
    /// That was not found out.
    Unknown,
}

/// Whether some appliance of the goal can't have power when it is due: never, or not so soon, by whoever is quickest.
/// The utility may bring it too, if it comes back before; and a drill that may be stopped safely asks for none.
pub(super) fn out_of_reach(scenario: &Scenario, judge: &Judge<'_>) -> bool {
    let goal = &scenario.goal;
    let due = latest_outage(scenario) + goal.within;
    let from = From {
        positions: &scenario.start,
        at: DrillTime::ZERO,
    };
    !goal.safe_stop
        && !utility_brings(scenario, due)
        && goal
            .appliances
            .iter()
            .any(|a| is_after(scenario, judge, from, *a, due))
}

/// Whether it is too late for a drill's goal already: food or a basement is lost, or some appliance had no power when it was due, or can't have it by then any more, by whoever is quickest from here.
/// A drill that may be stopped safely is too late for none of that.
/// It is too late too where a rule that a pass can't do without is broken before even the shortest deed has its effect, and ending the drill by then is no pass either, and where the drill is over before everything can stand as the end asks.
pub fn too_late(drill: &Drill) -> bool {
    let scenario = drill.scenario();
    if is_ruled_out(drill) || is_over_first(drill) {
        return true;
    }
    let due = due(drill);
    if is_past(drill) || scenario.goal.safe_stop || utility_brings(scenario, due) {
        return is_past(drill);
    }
    let judge = Judge::new(scenario);
    let from = From {
        positions: drill.positions(),
        at: drill.now(),
    };
    dark(drill).any(|a| is_after(scenario, &judge, from, a, due))
}

/// Whether nobody can do anything soon enough: a pass is ruled out before even the shortest deed has its effect, and whoever ends the drill by then doesn't pass either.
/// Between two moments things stand as they did at the first of them, and more can only be found.
fn is_ruled_out(drill: &Drill) -> bool {
    let scenario = drill.scenario();
    let ahead = just_before_any_deed(drill);
    let passes_at = |at: DrillTime| {
        let mut ended = drill.clone();
        ended.act(&Action::Wait(at.since(drill.now())));
        ended.end();
        mark(scenario, ended.trace()).passed
    };
    let later = ahead.trace().moments.iter().map(|m| m.at);
    let later = later.filter(|at| *at > drill.now());
    !may_pass(scenario, &mark_so_far(scenario, ahead.trace()))
        && !once(drill.now()).chain(later).any(passes_at)
}

/// Whether the drill is over before everything can stand as its end asks, by whoever is quickest and never puts hands into a set that can start: either fails a run.
fn is_over_first(drill: &Drill) -> bool {
    let scenario = drill.scenario();
    let site = &scenario.site;
    let goal = &scenario.goal;
    let needed = [Criterion::People, Criterion::Restoration];
    if site.line_work.is_some() || !needed.iter().all(|c| scenario.criteria.contains(c)) {
        return false;
    }
    let asked = || goal.at_end.iter().map(|(control, _)| *control);
    let automatic = site.generator.machine.automatic.iter();
    let locks_out = automatic.flat_map(|a| [a.switch, a.battery, a.cover, site.generator.output]);
    let also: Vec<ControlId> = asked().chain(locks_out).collect();
    let circuits = (0..).zip(&site.circuits);
    let named = circuits.filter(|(_, c)| asked().any(|control| control == c.breaker));
    let branches: Vec<usize> = named.map(|(index, _)| index).collect();
    let judge = Judge::new(scenario);
    let from = From {
        positions: drill.positions(),
        at: drill.now(),
    };
    let Some(space) = Space::new(scenario, &judge, &branches, &also, from.positions) else {
        return false;
    };
    let restored = |p: &Positions| {
        let mut asked = goal.at_end.iter();
        asked.all(|(control, wanted)| wanted.iter().any(|w| w == site.position_name(p, *control)))
    };
    let open = |p: &Positions| !exposed(site, p);
    match quickest(&space, from, scenario.ends_at, open, restored) {
        Earliest::From(at) => at > scenario.ends_at,
        Earliest::Never | Earliest::Unknown => false,
    }
}

/// What is found in a drill before anything that is done from here on can have an effect: until then only the world goes on.
pub fn before_any_deed(drill: &Drill) -> Vec<Finding> {
    mark_so_far(drill.scenario(), just_before_any_deed(drill).trace())
}

fn just_before_any_deed(drill: &Drill) -> Drill {
    let mut ahead = drill.clone();
    let wait = shortest(drill.site()).since(DrillTime::from_millis(1));
    ahead.act(&Action::Wait(wait));
    ahead
}

/// What the shortest deed takes.
fn shortest(site: &Site) -> DrillTime {
    let words = [
        Action::Look(Sight::Street),
        Action::Test(String::new()),
        Action::Say(String::new(), String::new()),
        Action::Call(Callee::Utility),
        Action::Tell(Listener::Neighbors),
        Action::Refuel,
    ];
    let moves = (0..).map(ControlId).zip(&site.controls);
    let moves = moves.map(|(control, _)| Action::Set(control, PositionId(0)));
    let takes = moves.chain(words).map(|deed| duration(site, &deed));
    takes.min().unwrap_or_default()
}

/// Whether food or a basement is lost, or some appliance had no power when it was due.
pub(super) fn is_past(drill: &Drill) -> bool {
    let lost = |e: &Event| matches!(e, Event::Lost { .. });
    let late = drill.now() > due(drill) && dark(drill).next().is_some();
    !drill.scenario().goal.safe_stop && (late || drill.trace().events().any(|(_, e)| lost(e)))
}

/// When the goal has to be met, as far as that is known.
fn due(drill: &Drill) -> DrillTime {
    let scenario = drill.scenario();
    let outage = drill.trace().outage_at();
    outage.unwrap_or_else(|| latest_outage(scenario)) + scenario.goal.within
}

/// Appliances of the goal that haven't had power in time.
fn dark(drill: &Drill) -> impl Iterator<Item = usize> + '_ {
    let due = due(drill);
    let in_time = move |a: &usize| supplied_since(drill.trace(), *a).is_some_and(|at| at <= due);
    let goal = drill.scenario().goal.appliances.iter().copied();
    goal.filter(move |a| !in_time(a))
}

/// When the outage comes at the latest.
fn latest_outage(scenario: &Scenario) -> DrillTime {
    let outage = scenario.story.iter().find(|t| t.what == Happening::Outage);
    outage.map_or(DrillTime::ZERO, |t| {
        t.at + DrillTime::from_secs(u64::from(t.spread_s))
    })
}

/// Whether the utility may be back when the goal is due.
fn utility_brings(scenario: &Scenario, due: DrillTime) -> bool {
    let brings = |what| matches!(what, Happening::UtilityReturns | Happening::DropMended);
    let mut story = scenario.story.iter();
    story.any(|t| brings(t.what) && t.at <= due)
}

/// Whether an appliance can have power at the earliest after it is due.
fn is_after(
    scenario: &Scenario,
    judge: &Judge<'_>,
    from: From<'_>,
    appliance: usize,
    due: DrillTime,
) -> bool {
    match earliest(scenario, judge, from, appliance, due) {
        Earliest::From(at) => at > due,
        Earliest::Never => true,
        Earliest::Unknown => false,
    }
}

/// Where somebody who is quick begins.
#[derive(Debug, Clone, Copy)]
struct From<'a> {
    positions: &'a Positions,
    at: DrillTime,
}

/// Whether the drill is over before the utility, which the house has to be on at the end, is back.
pub(super) fn over_before(scenario: &Scenario) -> bool {
    let story = scenario.story.iter().rev();
    let mut returns = story.filter(|t| t.what == Happening::UtilityReturns);
    let back = scenario.goal.back_on_utility && !scenario.goal.safe_stop;
    back && returns.next().is_some_and(|t| t.at >= scenario.ends_at)
}

/// By the quickest moves; once that is after it is due, it isn't asked how long.
fn earliest(
    scenario: &Scenario,
    judge: &Judge<'_>,
    from: From<'_>,
    appliance: usize,
    due: DrillTime,
) -> Earliest {
    let site = &scenario.site;
    let Some(appliance) = site.appliances.get(appliance) else {
        return Earliest::Unknown;
    };
    let mut also = Vec::new();
    let mut places = vec![];
    match &appliance.plug {
        Plug::Wired => places.push((None, Place::Outlet(appliance.circuit))),
        Plug::Cord {
            control,
            wall,
            cords,
            lent,
        } => {
            also.push(*control);
            also.extend(
                cords
                    .iter()
                    .filter_map(|(c, _)| Some(site.cords.get(*c)?.near)),
            );
            places.push((Some((*control, *wall)), Place::Outlet(appliance.circuit)));
            let ends = cords
                .iter()
                .map(|(c, at)| (Some((*control, *at)), Place::Far(*c)));
            places.extend(ends);
            places.extend(lent.map(|at| (Some((*control, at)), Place::Lent)));
        }
    }
    let Some(space) = Space::new(scenario, judge, &[appliance.circuit], &also, from.positions)
    else {
        return Earliest::Unknown;
    };
    let supplied = |positions: &Positions| {
        places.iter().any(|(plug, place)| {
            let plugged = plug.is_none_or(|(control, p)| positions.get(control) == p);
            plugged && judge.own_reaches(positions, *place)
        })
    };
    quickest(&space, from, due, |_| true, supplied)
}

/// When things can stand so that they will do, by the quickest moves, each taking its usual time, through nothing that isn't open; beyond a time that is enough it isn't asked how long.
fn quickest(
    space: &Space<'_>,
    from: From<'_>,
    enough: DrillTime,
    open: impl Fn(&Positions) -> bool,
    will_do: impl Fn(&Positions) -> bool,
) -> Earliest {
    let site = &space.scenario.site;
    let mut due: BTreeMap<DrillTime, Vec<u64>> = BTreeMap::new();
    let mut done = Table::new();
    due.insert(from.at, vec![space.code(from.positions, 0)]);
    while let Some((at, codes)) = due.pop_first() {
        if at > enough {
            return Earliest::From(at);
        }
        for code in codes {
            if !done.insert(code).1 {
                continue;
            }
            let positions = space.decode(code).0;
            if will_do(&positions) {
                return Earliest::From(at);
            }
            if !open(&positions) {
                continue;
            }
            space.moves_of_devices(code, |step, to| {
                let takes = match step {
                    Move::Set(c, p) => duration(site, &Action::Set(c, p)),
                    Move::Device(..) | Move::Story => DrillTime::ZERO,
                };
                due.entry(at + takes).or_default().push(to);
            });
        }
        if done.keys().len() > MOST_STATES {
            return Earliest::Unknown;
        }
    }
    Earliest::Never
}
