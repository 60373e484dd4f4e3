//! The space that is searched: which controls count, how a state is written as one number, and what leads from one to the next.
//!
//! A state is how the counted controls stand and how far the world's story has come.
//! What drifts is over-approximated: the story goes on at any time, any closed breaker may open, any ground-fault device may trip, a controller may bring its contactor anywhere.
//! A tripped breaker is written as an open one: both part the same contacts, and what is possible from the one is possible from the other after a reset.
//!
//! Left out of a search, and why that is sound:
//! - controls on which no joint hangs and that no constraint ties to one that counts: they change nothing here;
//! - a branch that touches the trunk at its panel only: no way from one source to another leads through it;
//! - all other branches while one is searched that touches the trunk twice: a way through two of them would need a cord from one to the other, and then both are searched together;
//! - constraints with a control that is left out: without them more is possible, never less.

use crate::drill::take_place;
use crate::scenario::{Happening, Scenario};
use crate::site::{
    Constraint, Control, ControlId, FarEnd, Kind, Operator, PositionId, Positions, Site, Spot,
};

use super::judge::Judge;

/// A state as a number: positions of the counted controls and the stage of the story, in mixed radix.
pub(super) type Code = u64;

/// How one state leads to another.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Move {
    /// The learner brings a control into a position.
    Set(ControlId, PositionId),
    /// The world does: the story goes on, or a device acts by itself.
    World,
}

/// One counted control.
#[derive(Debug, Clone, Copy)]
struct Digit {
    control: ControlId,
    /// How many positions are told apart.
    radix: u64,
    /// By how much a code changes from one position to the next.
    weight: u64,
}

/// A space of states.
#[derive(Debug)]
pub(super) struct Space<'a> {
    pub(super) scenario: &'a Scenario,
    pub(super) judge: &'a Judge<'a>,
    digits: Vec<Digit>,
    constraints: Vec<&'a Constraint>,
    stage_weight: u64,
    size: u64,
    /// The controls that are left out stand so.
    rest: Positions,
}

impl<'a> Space<'a> {
    /// The space of the trunk, of these branches and of controls that are to count besides; everything left out stands as `rest`, its branches open.
    /// `None` when it has more states than can be numbered.
    pub(super) fn new(
        scenario: &'a Scenario,
        judge: &'a Judge<'a>,
        branches: &[usize],
        also: &[ControlId],
        rest: &Positions,
    ) -> Option<Self> {
        let site = &scenario.site;
        let mut counted = judge.joints.controls(None);
        for branch in branches {
            counted.extend(judge.joints.controls(Some(*branch)));
        }
        counted.retain(|c| !leads_nowhere(site, *c));
        counted.push(site.generator.engine);
        counted.extend(also);
        counted.extend(tied(site, &counted));
        counted.retain(|c| !told_by_the_story(site, *c));
        counted.sort_unstable();
        counted.dedup();
        let mut size: u64 = 1;
        let mut digits = Vec::new();
        for control in counted {
            let radix = u64::try_from(radix(site.control(control)?)).ok()?;
            digits.push(Digit {
                control,
                radix,
                weight: size,
            });
            size = size.checked_mul(radix)?;
        }
        let stage_weight = size;
        size = size.checked_mul(u64::try_from(scenario.story.len()).ok()? + 1)?;
        let counts = |c: ControlId| digits.iter().any(|d| d.control == c);
        let constraints = site
            .constraints
            .iter()
            .filter(|c| controls_of(c).into_iter().all(counts))
            .collect();
        let mut rest = rest.clone();
        for circuit in site.circuits.iter().map(|c| c.breaker) {
            if !counts(circuit) {
                rest.set(circuit, PositionId(0));
            }
        }
        Some(Self {
            scenario,
            judge,
            digits,
            constraints,
            stage_weight,
            size,
            rest,
        })
    }

    /// How many numbers a state may have.
    pub(super) fn size(&self) -> u64 {
        self.size
    }

    /// The number of a state.
    pub(super) fn code(&self, positions: &Positions, stage: usize) -> Code {
        let digits = self.digits.iter().map(|d| {
            let at = u64::from(positions.get(d.control).0);
            (if at < d.radix { at } else { 0 }) * d.weight
        });
        digits.sum::<u64>() + u64::try_from(stage).unwrap_or_default() * self.stage_weight
    }

    /// The positions and the stage that a number stands for.
    pub(super) fn decode(&self, code: Code) -> (Positions, usize) {
        let mut positions = self.rest.clone();
        let stage = usize::try_from(code / self.stage_weight).unwrap_or_default();
        for happening in self.scenario.story.iter().take(stage) {
            take_place(&self.scenario.site, happening.what, &mut positions);
        }
        for digit in &self.digits {
            let at = code / digit.weight % digit.radix;
            positions.set(
                digit.control,
                PositionId(u8::try_from(at).unwrap_or_default()),
            );
        }
        (positions, stage)
    }

    /// Everything that may follow, in a fixed order: the learner's moves first.
    pub(super) fn moves(&self, code: Code) -> Vec<(Move, Code)> {
        let (positions, stage) = self.decode(code);
        let mut moves = Vec::new();
        for digit in &self.digits {
            let Some(control) = self.scenario.site.control(digit.control) else {
                continue;
            };
            let here = positions.get(digit.control);
            for at in 0..u8::try_from(digit.radix).unwrap_or_default() {
                let to = PositionId(at);
                if to == here {
                    continue;
                }
                let next = code - u64::from(here.0) * digit.weight + u64::from(at) * digit.weight;
                let free = |c: &&Constraint| c.refuses(&positions, digit.control, to).is_some();
                let by_hand =
                    control.operator == Operator::Learner && !self.constraints.iter().any(free);
                if by_hand && !opens_by_itself_only(control, to) {
                    moves.push((Move::Set(digit.control, to), next));
                } else if by_itself(control, to)
                    || to > here && wears(&self.scenario.site, digit.control)
                {
                    moves.push((Move::World, next));
                }
            }
        }
        let next = self.scenario.story.get(stage);
        if next
            .is_some_and(|h| h.what != Happening::CrewTakesHold || self.judge.line_dead(&positions))
        {
            moves.push((Move::World, code + self.stage_weight));
        }
        moves
    }

    /// The state that stands for all that are the same to a solver: the same contacts, the same engine, the same stage.
    pub(super) fn electrical(&self, code: Code) -> Code {
        let (mut positions, stage) = self.decode(code);
        for digit in &self.digits {
            let kind = self.scenario.site.control(digit.control).map(|c| c.kind);
            if matches!(kind, Some(Kind::Lock | Kind::Placement)) {
                positions.set(digit.control, PositionId(0));
            }
        }
        self.code(&positions, stage)
    }
}

/// Positions of a control that are told apart: `tripped` is written as `off`.
fn radix(control: &Control) -> usize {
    let positions = control.positions.len();
    if control.is_breaker() {
        positions.min(2)
    } else {
        positions
    }
}

/// Whether a device may come to stand so without a hand.
fn by_itself(control: &Control, to: PositionId) -> bool {
    let opens = to.0 == 0;
    let by_the_world = control.operator == Operator::World;
    if control.is_breaker() || control.kind == Kind::Gfci {
        opens
    } else if control.kind == Kind::Engine {
        opens || by_the_world
    } else {
        control.kind == Kind::Transfer && by_the_world
    }
}

/// Whether a control goes from each position to the next by wear: the oil of an engine.
fn wears(site: &Site, control: ControlId) -> bool {
    let oil = site.generator.machine.oil.as_ref();
    oil.is_some_and(|oil| oil.level == control)
}

/// Whether a position is one that a hand doesn't choose: a ground-fault device's tripped one.
fn opens_by_itself_only(control: &Control, to: PositionId) -> bool {
    control.kind == Kind::Gfci && to.0 == 0
}

/// The line's own parts stand as the story has them.
fn told_by_the_story(site: &Site, control: ControlId) -> bool {
    let line = |c: &Control| c.kind == Kind::Line && c.operator == Operator::World;
    site.control(control).is_some_and(line)
}

/// An end of a cord that only appliances can be plugged into: nothing is reached through it.
fn leads_nowhere(site: &Site, control: ControlId) -> bool {
    let cord = site.cords.iter().find(|c| c.near == control);
    cord.is_some_and(|c| {
        c.far == FarEnd::Connector && !c.near_spots.iter().any(|s| matches!(s, Spot::Outlet(_)))
    })
}

/// Controls that constraints tie to those that count: locks, places, plugs that take the same outlet.
fn tied(site: &Site, counted: &[ControlId]) -> Vec<ControlId> {
    let mut more: Vec<ControlId> = Vec::new();
    for constraint in &site.constraints {
        let controls = controls_of(constraint);
        if controls.iter().any(|c| counted.contains(c)) {
            more.extend(controls.into_iter().filter(|c| !leads_nowhere(site, *c)));
        }
    }
    more
}

fn controls_of(constraint: &Constraint) -> [ControlId; 2] {
    match constraint {
        Constraint::NotBoth { one, other, .. } => [one.0, other.0],
        Constraint::Needs { this, other, .. } => [this.0, other.0],
        Constraint::Holds { holder, held, .. } => [holder.0, *held],
    }
}
