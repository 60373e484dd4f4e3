//! The model that a proof is about, written plainly: what a drill starts from, what may follow from each state, and what holds in it.
//!
//! A state is how everything stands and how far the world's story has come.
//! What drifts is over-approximated: the story goes on at any time, any closed breaker may open, any ground-fault device may trip, a controller may bring its contactor anywhere.
//! A tripped breaker is written as an open one: both part the same contacts, and what is possible from the one is possible from the other after a reset.
//! `space` searches the same model with states packed into numbers; a test and a general-purpose model checker hold the two against each other.
//! Time is not in it, nor anything that builds up with time.

use crate::circuit::NetworkError;
use crate::drill::take_place;
use crate::scenario::{Happening, Scenario};
use crate::site::{Control, ControlId, Kind, Operator, PositionId, Positions, Site};

use super::bench::Bench;
use super::joints::Place;
use super::judge::{Judge, Stand};
use super::marked;

/// How one state leads to another.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Move {
    /// The learner brings a control into a position.
    Set(ControlId, PositionId),
    /// A device comes to stand so by itself.
    Device(ControlId, PositionId),
    /// The story goes on.
    Story,
}

/// A state of a drill: how everything stands, and how many of the story's happenings have taken place.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct State {
    /// How everything stands; a tripped breaker as an open one.
    pub positions: Positions,
    /// How far the story has come.
    pub stage: usize,
}

/// A drill as states and moves, all of it at once, without anything left out that a hand can move.
#[derive(Debug, Clone)]
pub struct Model<'a> {
    scenario: &'a Scenario,
    judge: Judge<'a>,
    counted: Vec<ControlId>,
}

impl<'a> Model<'a> {
    /// The model of a drill.
    pub fn of(scenario: &'a Scenario) -> Self {
        Self {
            scenario,
            judge: Judge::new(scenario),
            counted: everything(&scenario.site),
        }
    }

    /// The state that a drill starts from.
    pub fn initial(&self) -> State {
        let mut positions = self.scenario.start.clone();
        for id in &self.counted {
            if let Some(control) = self.scenario.site.control(*id) {
                positions.set(*id, as_written(control, positions.get(*id)));
            }
        }
        State {
            positions,
            stage: 0,
        }
    }

    /// Everything that may follow a state.
    pub fn moves(&self, state: &State) -> Vec<(Move, State)> {
        let site = &self.scenario.site;
        let mut moves = Vec::new();
        for id in &self.counted {
            let Some(control) = site.control(*id) else {
                continue;
            };
            let here = state.positions.get(*id);
            for to in (0..radix(control)).map(PositionId).filter(|to| *to != here) {
                let mut next = state.clone();
                next.positions.set(*id, to);
                let mut constraints = site.constraints.iter();
                let free = constraints.all(|c| c.refuses(&state.positions, *id, to).is_none());
                if free && by_hand(control, to) {
                    moves.push((Move::Set(*id, to), next));
                } else if by_itself(control, to) || to > here && wears(site, *id) {
                    moves.push((Move::Device(*id, to), next));
                }
            }
        }
        if let Some(happening) = self.scenario.story.get(state.stage) {
            let held = happening.what == Happening::CrewTakesHold;
            if !held || self.judge.line_dead(&state.positions) {
                let mut next = state.clone();
                take_place(site, happening.what, &mut next.positions);
                next.stage += 1;
                moves.push((Move::Story, next));
            }
        }
        moves
    }

    /// What holds in a state, by the judge that reads the parts of the site alone.
    pub fn stand(&self, state: &State) -> Stand {
        self.judge.stand(&state.positions)
    }

    /// Whether the utility reaches a pole of the line, by the same judge.
    pub fn utility_at_pole(&self, state: &State, pole: usize) -> bool {
        self.judge
            .utility_reaches(&state.positions, Place::Pole(pole))
    }

    /// Whether a source of the house's own reaches a pole of the line, by the same judge.
    pub fn own_at_pole(&self, state: &State, pole: usize) -> bool {
        self.judge.own_reaches(&state.positions, Place::Pole(pole))
    }

    /// Whether the utility reaches the wires from the street, by the same judge.
    pub fn utility_serves(&self, state: &State) -> bool {
        self.judge.utility_reaches(&state.positions, Place::Service)
    }

    /// Whether a drill may end well in a state: the story told, everything as it should stand, nothing critical broken.
    pub fn ends_well(&self, state: &State) -> bool {
        let goal = &self.scenario.goal;
        let site = &self.scenario.site;
        let back = !goal.back_on_utility || self.judge.on_utility(&state.positions);
        let mut asked = goal.at_end.iter();
        state.stage == self.scenario.story.len()
            && back
            && !self.stand(state).breach()
            && asked.all(|(control, wanted)| {
                let stands = site.position_name(&state.positions, *control);
                wanted.iter().any(|w| w == stands)
            })
    }

    /// A solver that says how the marking of every run finds a state.
    ///
    /// # Errors
    /// When the site can't be wired, which a checked file rules out.
    pub fn marker(&self) -> Result<ModelMarker<'a>, NetworkError> {
        Ok(ModelMarker {
            bench: Bench::new(self.scenario)?,
            judge: Judge::new(self.scenario),
        })
    }
}

/// The marking that everyone uses, asked of single states.
#[derive(Debug)]
pub struct ModelMarker<'a> {
    bench: Bench<'a>,
    judge: Judge<'a>,
}

impl ModelMarker<'_> {
    /// How the marking finds a state.
    pub fn stand(&mut self, state: &State) -> Stand {
        let moment = self.bench.moment(&self.judge, &state.positions);
        marked(self.bench.scenario, &moment)
    }
}

/// All controls but those of the line that stand as the story has them.
pub(super) fn everything(site: &Site) -> Vec<ControlId> {
    let ids = (0..).map(ControlId).zip(&site.controls);
    let own = ids.filter(|(id, _)| !told_by_the_story(site, *id) && !left_to_customers(site, *id));
    own.map(|(id, _)| id).collect()
}

/// How many positions of a control are told apart: `tripped` is written as `off`.
pub(super) fn radix(control: &Control) -> u8 {
    let positions = u8::try_from(control.positions.len()).unwrap_or(u8::MAX);
    if control.is_breaker() {
        positions.min(2)
    } else {
        positions
    }
}

/// A position as it is written in a state.
pub(super) fn as_written(control: &Control, position: PositionId) -> PositionId {
    if position.0 < radix(control) {
        position
    } else {
        PositionId(0)
    }
}

/// Whether a hand may choose this position: not the tripped one of a ground-fault device.
pub(super) fn by_hand(control: &Control, to: PositionId) -> bool {
    let opens_by_itself_only = control.kind == Kind::Gfci && to.0 == 0;
    control.operator != Operator::World && !opens_by_itself_only
}

/// Whether a device may come to stand so without a hand.
pub(super) fn by_itself(control: &Control, to: PositionId) -> bool {
    let opens = to.0 == 0;
    let by_the_world = control.operator != Operator::Learner;
    if control.is_breaker() || control.kind == Kind::Gfci {
        opens
    } else if control.kind == Kind::Engine {
        opens || by_the_world
    } else {
        control.kind == Kind::Transfer && by_the_world
    }
}

/// Whether a control goes from each position to the next by wear: the oil of an engine.
pub(super) fn wears(site: &Site, control: ControlId) -> bool {
    let oil = site.generator.machine.oil.as_ref();
    oil.is_some_and(|oil| oil.level == control)
}

/// What stands in a customer's house while the learner works the line: all but the engine stays as it is found.
/// A breaker that opens there only takes a source off the line, as the engine does when it stops.
pub(super) fn left_to_customers(site: &Site, control: ControlId) -> bool {
    let house = |c: &Control| c.operator == Operator::World && c.kind != Kind::Engine;
    site.line_work.is_some() && site.control(control).is_some_and(house)
}

/// The line's own parts stand as the story has them.
pub(super) fn told_by_the_story(site: &Site, control: ControlId) -> bool {
    let line = |c: &Control| c.kind == Kind::Line && c.operator == Operator::World;
    site.control(control).is_some_and(line)
}
