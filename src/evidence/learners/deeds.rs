//! What learners do instead of what a list has: whatever comes to hand, or the same with one known mistake.
//!
//! A list may give no room for a mistake: there is no cord to choose, nothing is asked.

use crate::drill::{Action, CALLEES, LISTENERS, Line, SIGHTS, Sight};
use crate::scenario::Scenario;
use crate::site::{ControlId, Cord, Kind, Operator, Plug, PositionId, Site, Spot};
use crate::units::DrillTime;

use super::Chance;

/// Seconds of the longest wait between two deeds: somebody in a hurry, at ease, slow, and gone for a while.
const PACES_S: [usize; 4] = [3, 20, 90, 400];
/// Most deeds that are drawn.
const MOST_DEEDS: usize = 12;

/// The first part of a list, and then whatever comes to hand.
pub(super) fn at_random(scenario: &Scenario, lines: &[Line], chance: &mut Chance) -> Vec<Line> {
    let all = whatever(scenario);
    let cut = chance.below(lines.len() + 1);
    let mut done: Vec<Line> = lines.iter().take(cut).cloned().collect();
    let pace_s = PACES_S[chance.below(PACES_S.len())];
    for _ in 0..=chance.below(MOST_DEEDS) {
        done.push(wait(chance.below(1000 * pace_s)));
        let Some(action) = all.get(chance.below(all.len())) else {
            break;
        };
        done.push(at_once(action.clone()));
    }
    done.push(wait(chance.below(1000 * 1800)));
    done
}

fn at_once(action: Action) -> Line {
    Line { at: None, action }
}

fn wait(millis: usize) -> Line {
    let millis = u64::try_from(millis).unwrap_or_default();
    at_once(Action::Wait(DrillTime::from_millis(millis)))
}

/// Everything that a learner's hand can do; a handle comes up three times as often as a word.
fn whatever(scenario: &Scenario) -> Vec<Action> {
    let site = &scenario.site;
    let own = (0..).map(ControlId).zip(&site.controls);
    let own = own.filter(|(_, c)| c.operator != Operator::World);
    let moves = own.flat_map(|(id, control)| {
        let positions = (0..).map(PositionId).zip(&control.positions);
        positions.map(move |(position, _)| Action::Set(id, position))
    });
    let moves: Vec<Action> = moves.collect();
    let mut all = [moves.clone(), moves.clone(), moves].concat();
    all.extend([Action::Refuel, Action::Refuel]);
    all.extend(SIGHTS.map(Action::Look));
    all.extend(CALLEES.map(Action::Call));
    all.extend(LISTENERS.map(Action::Tell));
    all.extend(site.point_names().into_iter().map(Action::Test));
    for question in &scenario.questions {
        let answers = question.about.answers(site).into_iter();
        all.extend(answers.map(|a| Action::Say(question.name.clone(), a)));
    }
    all
}

/// A list with one mistake in it; none where the list gives no room for it.
type Mistake = fn(&Scenario, &[Line]) -> Option<Vec<Line>>;

/// The mistakes that any list may be played with.
const MISTAKES: [(&str, Mistake); 6] = [
    ("no-cool-down", no_cool_down),
    ("main-before-generator-off", main_first),
    ("engine-near-opening", engine_near),
    ("thin-cord", thin_cord),
    ("no-look", no_look),
    ("wrong-answer", wrong_answer),
];

/// The list with the mistake of this number; none where it gives no room for it.
pub(super) fn wrong(
    scenario: &Scenario,
    lines: &[Line],
    number: usize,
) -> Option<(&'static str, Vec<Line>)> {
    let (name, mistake) = MISTAKES.get(number % MISTAKES.len())?;
    Some((name, mistake(scenario, lines)?))
}

/// Index of the line that brings a control of this kind into this position.
fn brings(scenario: &Scenario, lines: &[Line], kind: Kind, position: &str) -> Option<usize> {
    let site = &scenario.site;
    lines.iter().rposition(|line| {
        let Action::Set(id, to) = &line.action else {
            return false;
        };
        let control = site.control(*id).filter(|c| c.kind == kind);
        control.is_some_and(|c| c.position(position) == Some(*to))
    })
}

/// The engine is stopped as soon as it is thought of: before all waits that lead up to it.
fn no_cool_down(scenario: &Scenario, lines: &[Line]) -> Option<Vec<Line>> {
    let at = brings(scenario, lines, Kind::Engine, "stopped")?;
    let mut done = lines.to_vec();
    let stop = done.remove(at);
    let waits = |l: &Line| matches!(l.action, Action::Wait(_));
    let before = done.iter().take(at).rposition(|l| !waits(l));
    let early = before.map_or(0, |b| b + 1);
    done.insert(early, at_once(stop.action));
    (early < at || stop.at.is_some()).then_some(done)
}

/// The main is closed before the generator's breaker is open.
fn main_first(scenario: &Scenario, lines: &[Line]) -> Option<Vec<Line>> {
    let main = brings(scenario, lines, Kind::Main, "on")?;
    let breaker = brings(scenario, lines, Kind::Backfed, "off").filter(|b| *b < main)?;
    let mut done = lines.to_vec();
    let early = done.remove(main);
    done.insert(breaker, early);
    Some(done)
}

/// The engine is put in the place that is nearest to an opening.
fn engine_near(scenario: &Scenario, lines: &[Line]) -> Option<Vec<Line>> {
    let set = &scenario.site.generator;
    let usable = set.places.iter().enumerate().filter(|(_, p)| p.usable);
    let (near, _) = usable.min_by(|(_, a), (_, b)| a.opening_ft.total_cmp(&b.opening_ft))?;
    let near = PositionId(u8::try_from(near).ok()?);
    replaced(lines, |action| {
        let Action::Set(id, to) = action else {
            return None;
        };
        let farther = *id == set.placement && *to != near;
        farther.then_some(Action::Set(*id, near))
    })
}

/// Another cord is taken that does the same and is thinner.
fn thin_cord(scenario: &Scenario, lines: &[Line]) -> Option<Vec<Line>> {
    let site = &scenario.site;
    let used = |cord: &Cord| {
        let near = |l: &Line| matches!(l.action, Action::Set(id, _) if id == cord.near);
        lines.iter().any(near)
    };
    let cords = || site.cords.iter().enumerate();
    let (thick, thin) = cords().filter(|(_, c)| used(c)).find_map(|thick| {
        let does = |c: &Cord| {
            let ends = std::mem::discriminant(&c.far) == std::mem::discriminant(&thick.1.far);
            let goes = |s: &Spot| *s == Spot::Stowed || c.near_spots.contains(s);
            let goes = thick.1.near_spots.iter().take(2).all(goes);
            ends && goes && c.make.awg() > thick.1.make.awg()
        };
        Some((thick, cords().find(|(_, c)| does(c) && !used(c))?))
    })?;
    replaced(lines, |action| {
        let Action::Set(id, to) = action else {
            return None;
        };
        other_cord(site, (thick, thin), *id, *to)
    })
}

/// The same done with another cord: its own ends, or an appliance's plug in it.
fn other_cord(
    site: &Site,
    ((_, thick), (thin_at, thin)): ((usize, &Cord), (usize, &Cord)),
    id: ControlId,
    to: PositionId,
) -> Option<Action> {
    if id == thick.near {
        let spot = thick.near_spots.get(usize::from(to.0))?;
        let same = thin.near_spots.iter().position(|s| s == spot)?;
        return Some(Action::Set(thin.near, PositionId(u8::try_from(same).ok()?)));
    }
    if id == thick.lay {
        return Some(Action::Set(thin.lay, to));
    }
    site.appliances.iter().find_map(|a| {
        let Plug::Cord { control, cords, .. } = &a.plug else {
            return None;
        };
        let at = |cord: usize| cords.iter().find(|(c, _)| *c == cord).map(|(_, p)| *p);
        let thick_at = site.cords.iter().position(|c| c.near == thick.near)?;
        let meant = *control == id && at(thick_at) == Some(to);
        meant.then_some(Action::Set(id, at(thin_at)?))
    })
}

/// Nobody looks at the street.
fn no_look(_: &Scenario, lines: &[Line]) -> Option<Vec<Line>> {
    let looks = |l: &&Line| l.action == Action::Look(Sight::Street);
    let done: Vec<Line> = lines.iter().filter(|l| !looks(l)).cloned().collect();
    (done.len() < lines.len()).then_some(done)
}

/// Every answer is another one.
fn wrong_answer(scenario: &Scenario, lines: &[Line]) -> Option<Vec<Line>> {
    replaced(lines, |action| {
        let Action::Say(name, answer) = action else {
            return None;
        };
        let question = scenario.questions.iter().find(|q| q.name == *name)?;
        let answers = question.about.answers(&scenario.site);
        let other = answers.into_iter().find(|a| a != answer)?;
        Some(Action::Say(name.clone(), other))
    })
}

/// The list with some actions replaced; none if none is.
fn replaced(lines: &[Line], other: impl Fn(&Action) -> Option<Action>) -> Option<Vec<Line>> {
    let mut any = false;
    let done = lines.iter().map(|line| {
        let action = other(&line.action);
        any |= action.is_some();
        Line {
            at: line.at,
            action: action.unwrap_or_else(|| line.action.clone()),
        }
    });
    let done = done.collect();
    any.then_some(done)
}
