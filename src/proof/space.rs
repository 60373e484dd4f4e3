//! The space that is searched: which controls count, how a state of the `model` is packed into one number, and what leads from one to the next.
//!
//! Each counted control has its own bits, the story's stage the highest ones.
//! What the constraints refuse is worked out once, by asking each of them about each pair of positions: a move is then allowed or not by looking at a few bits.
//!
//! Left out of a search, and why that is sound:
//! - controls on which no joint hangs and that no constraint ties to one that counts: they change nothing here;
//! - a branch that touches the trunk at its panel only: no way from one source to another leads through it;
//! - all other branches while one is searched that touches the trunk twice: a way through two of them would need a cord from one to the other, and then both are searched together;
//! - constraints with a control that is left out: without them more is possible, never less.
//!
//! Symmetry is not made use of: two circuits of a house differ in leg, wire and what hangs on them, and two cords in length.
//! States that differ only in what moves no contact (locks, places) are of one electrical class: a class is judged and solved once.

use crate::drill::take_place;
use crate::scenario::{Happening, Scenario};
use crate::site::{
    Constraint, ControlId, FarEnd, Kind, Moved, PositionId, Positions, Site, Spot, Transfer,
};

use super::judge::{Judge, Stand};
use super::model::{self, Move};

/// A state packed into a number.
pub(super) type Code = u64;

/// Positions that a control may have, so that a set of them fits into a number.
const MOST_POSITIONS: u8 = 64;

/// One counted control and its bits.
#[derive(Debug, Clone, Copy)]
struct Digit {
    control: ControlId,
    shift: u32,
    /// Its bits, all ones, at the low end.
    mask: Code,
}

impl Digit {
    fn of(self, code: Code) -> PositionId {
        PositionId(u8::try_from(code >> self.shift & self.mask).unwrap_or_default())
    }

    fn with(self, code: Code, position: PositionId) -> Code {
        code & !(self.mask << self.shift) | u64::from(position.0) << self.shift
    }
}

/// One position that a control may be brought into, by a hand or by the world.
#[derive(Debug, Clone)]
struct Choice {
    digit: Digit,
    to: PositionId,
    by_hand: bool,
    by_itself: bool,
    wears: bool,
    /// Digits that forbid it to a hand, each with the positions in which it does, one bit a position.
    refused: Vec<(Digit, u64)>,
}

/// What a drill asks for at its end of one control.
#[derive(Debug, Clone, Copy)]
struct Asked {
    digit: Digit,
    /// The positions that will do, one bit a position.
    good: u64,
}

/// What holds in all states of an electrical class.
#[derive(Debug, Clone, Copy)]
pub(super) struct Facts {
    /// What the judge finds.
    pub(super) stand: Stand,
    /// Whether the house is on the utility.
    on_utility: bool,
    /// Whether the crew finds the line dead.
    line_dead: bool,
}

/// A space of states.
#[derive(Debug)]
pub(super) struct Space<'a> {
    pub(super) scenario: &'a Scenario,
    pub(super) judge: &'a Judge<'a>,
    digits: Vec<Digit>,
    choices: Vec<Choice>,
    asked: Vec<Asked>,
    /// For each stage, whether what is asked of controls that are left out holds.
    rest_good: Vec<bool>,
    stage_shift: u32,
    /// The bits that tell one electrical class from another.
    electrical: Code,
    /// How the controls that are left out stand, for each stage of the story.
    rest: Vec<Positions>,
}

impl<'a> Space<'a> {
    /// The space of the trunk, of these branches and of controls that are to count besides; everything left out stands as `rest`, its branches open.
    /// `None` when a state doesn't fit into a number.
    pub(super) fn new(
        scenario: &'a Scenario,
        judge: &'a Judge<'a>,
        branches: &[usize],
        also: &[ControlId],
        rest: &Positions,
    ) -> Option<Self> {
        let site = &scenario.site;
        let counted = counted(scenario, judge, branches, also);
        let mut digits = Vec::new();
        let mut shift = 0;
        for control in counted {
            let radix = model::radix(site.control(control)?);
            (radix <= MOST_POSITIONS).then_some(())?;
            let bits = u8::BITS - radix.saturating_sub(1).leading_zeros();
            let mask = (1 << bits) - 1;
            digits.push(Digit {
                control,
                shift,
                mask,
            });
            shift += bits;
        }
        let stages = u32::try_from(scenario.story.len()).ok()? + 1;
        let whole = shift + u32::BITS - stages.leading_zeros();
        (whole < Code::BITS).then_some(())?;
        let moves_no_contact = |d: &&Digit| {
            let kind = site.control(d.control).map(|c| c.kind);
            matches!(kind, Some(Kind::Lock | Kind::Placement))
        };
        let still = digits.iter().filter(moves_no_contact);
        let electrical = still.fold(Code::MAX, |all, d| all & !(d.mask << d.shift));
        let mut space = Self {
            scenario,
            judge,
            digits,
            choices: Vec::new(),
            asked: Vec::new(),
            rest_good: Vec::new(),
            stage_shift: shift,
            electrical,
            rest: Vec::new(),
        };
        space.lay_rest(rest);
        space.choices = space.choices();
        space.ask();
        Some(space)
    }

    fn digit(&self, control: ControlId) -> Option<Digit> {
        let found = self.digits.binary_search_by_key(&control, |d| d.control);
        self.digits.get(found.ok()?).copied()
    }

    /// How the controls that are left out stand at each stage.
    fn lay_rest(&mut self, rest: &Positions) {
        let site = &self.scenario.site;
        let mut rest = rest.clone();
        for circuit in site.circuits.iter().map(|c| c.breaker) {
            // On a line that a crew works the house is the customers' and stands as it is found.
            if self.digit(circuit).is_none() && site.line_work.is_none() {
                rest.set(circuit, PositionId(0));
            }
        }
        self.rest.push(rest.clone());
        for happening in &self.scenario.story {
            take_place(site, happening.what, &mut rest);
            self.rest.push(rest.clone());
        }
    }

    /// Every position that something can be brought into, in the order of the controls.
    fn choices(&self) -> Vec<Choice> {
        let site = &self.scenario.site;
        let mut choices = Vec::new();
        for digit in &self.digits {
            let Some(control) = site.control(digit.control) else {
                continue;
            };
            for to in (0..model::radix(control)).map(PositionId) {
                choices.push(Choice {
                    digit: *digit,
                    to,
                    by_hand: model::by_hand(control, to),
                    by_itself: model::by_itself(control, to),
                    wears: model::wears(site, digit.control),
                    refused: self.refused(*digit, to),
                });
            }
        }
        choices
    }

    /// What forbids a position, asked of each constraint with each position of its other control.
    fn refused(&self, digit: Digit, to: PositionId) -> Vec<(Digit, u64)> {
        let site = &self.scenario.site;
        let mut refused: Vec<(Digit, u64)> = Vec::new();
        for constraint in &site.constraints {
            let [one, other] = controls_of(constraint);
            let (Some(one), Some(other)) = (self.digit(one), self.digit(other)) else {
                continue;
            };
            let by = match (one.control == digit.control, other.control == digit.control) {
                (true, _) => other,
                (_, true) => one,
                _ => continue,
            };
            let mut positions = Positions::first(site.controls.len());
            // From anywhere but where it is going.
            positions.set(digit.control, PositionId(u8::from(to == PositionId(0))));
            let mut bits = 0;
            for at in 0..=u8::try_from(by.mask).unwrap_or_default() {
                positions.set(by.control, PositionId(at));
                if constraint.refuses(&positions, digit.control, to).is_some() {
                    bits |= 1 << at;
                }
            }
            if bits != 0 {
                refused.push((by, bits));
            }
        }
        refused
    }

    /// Works out what is asked for at the end: of counted controls by bits, of others for each stage.
    /// Branch breakers that are left out are left open there; whoever can reach them can close them.
    /// The same goes for the handles of single circuits: nothing ties one of them to another.
    fn ask(&mut self) {
        let site = &self.scenario.site;
        let own_handle = |t: &Transfer| matches!(t.load, Moved::Circuit(_)) && !t.automatic;
        let leaf = |control| {
            let mut handles = site.transfers.iter().filter(|t| own_handle(t));
            site.circuits.iter().any(|c| c.breaker == control)
                || handles.any(|t| t.handle == control)
        };
        self.rest_good = vec![true; self.rest.len()];
        for (id, wanted) in &self.scenario.goal.at_end {
            let Some(control) = site.control(*id) else {
                continue;
            };
            let names = (0_u8..).zip(&control.positions);
            let will_do = names.filter(|(_, name)| wanted.contains(name));
            let good = will_do.fold(0, |bits, (at, _)| bits | 1 << at);
            if let Some(digit) = self.digit(*id) {
                self.asked.push(Asked { digit, good });
            } else if !leaf(*id) {
                for (rest, holds) in self.rest.iter().zip(&mut self.rest_good) {
                    *holds &= good >> rest.get(*id).0 & 1 == 1;
                }
            }
        }
    }

    /// The number of a state.
    pub(super) fn code(&self, positions: &Positions, stage: usize) -> Code {
        let stage = u64::try_from(stage).unwrap_or_default() << self.stage_shift;
        let site = &self.scenario.site;
        let digits = self.digits.iter().filter_map(|digit| {
            let control = site.control(digit.control)?;
            Some((
                digit,
                model::as_written(control, positions.get(digit.control)),
            ))
        });
        digits.fold(stage, |code, (digit, at)| digit.with(code, at))
    }

    fn stage(&self, code: Code) -> usize {
        usize::try_from(code >> self.stage_shift).unwrap_or_default()
    }

    /// The positions and the stage that a number stands for.
    pub(super) fn decode(&self, code: Code) -> (Positions, usize) {
        let stage = self.stage(code);
        let rest = self.rest.get(stage).or(self.rest.last()).cloned();
        let mut positions = rest.unwrap_or_else(|| self.scenario.start.clone());
        for digit in &self.digits {
            positions.set(digit.control, digit.of(code));
        }
        (positions, stage)
    }

    /// The number that stands for all that are of the same electrical class.
    pub(super) fn electrical(&self, code: Code) -> Code {
        code & self.electrical
    }

    /// What holds in the class of a state.
    pub(super) fn facts(&self, code: Code) -> Facts {
        let (positions, _) = self.decode(code);
        Facts {
            stand: self.judge.stand(&positions),
            on_utility: self.judge.on_utility(&positions),
            line_dead: self.judge.line_dead(&positions),
        }
    }

    /// Everything that may follow, in a fixed order: control by control, the story last.
    pub(super) fn moves(&self, code: Code, facts: Facts, mut found: impl FnMut(Move, Code)) {
        self.moves_of_devices(code, &mut found);
        let stage = self.stage(code);
        if let Some(happening) = self.scenario.story.get(stage)
            && (happening.what != Happening::CrewTakesHold || facts.line_dead)
        {
            let (mut positions, _) = self.decode(code);
            take_place(&self.scenario.site, happening.what, &mut positions);
            found(Move::Story, self.code(&positions, stage + 1));
        }
    }

    /// Everything that may follow while the story stays where it is.
    pub(super) fn moves_of_devices(&self, code: Code, mut found: impl FnMut(Move, Code)) {
        for choice in &self.choices {
            let here = choice.digit.of(code);
            if here == choice.to {
                continue;
            }
            let next = choice.digit.with(code, choice.to);
            let mut refused = choice.refused.iter();
            let free = choice.by_hand && refused.all(|(d, bits)| bits >> d.of(code).0 & 1 == 0);
            if free {
                found(Move::Set(choice.digit.control, choice.to), next);
            } else if choice.by_itself || choice.wears && choice.to > here {
                found(Move::Device(choice.digit.control, choice.to), next);
            }
        }
    }

    /// Whether a drill may end well in a state: the story told, everything counted as it should stand, nothing critical broken.
    pub(super) fn ends_well(&self, code: Code, facts: Facts) -> bool {
        let stage = self.stage(code);
        let goal = &self.scenario.goal;
        let mut asked = self.asked.iter();
        stage == self.scenario.story.len()
            && !facts.stand.breach()
            && (facts.on_utility || !goal.back_on_utility)
            && self.rest_good.get(stage).copied().unwrap_or_default()
            && asked.all(|a| a.good >> a.digit.of(code).0 & 1 == 1)
    }
}

/// The controls that count, in order.
pub(super) fn counted(
    scenario: &Scenario,
    judge: &Judge<'_>,
    branches: &[usize],
    also: &[ControlId],
) -> Vec<ControlId> {
    let site = &scenario.site;
    let mut counted = judge.joints.controls(None);
    for branch in branches {
        counted.extend(judge.joints.controls(Some(*branch)));
    }
    counted.retain(|c| !leads_nowhere(site, *c));
    counted.push(site.generator.engine);
    counted.extend(also);
    let grounds = site.line_work.iter().flat_map(|w| &w.grounds);
    counted.extend(grounds.map(|g| g.control));
    counted.extend(found_amiss(scenario));
    counted.extend(tied(site, &counted));
    counted.retain(|c| !model::told_by_the_story(site, *c) && !model::left_to_customers(site, *c));
    counted.sort_unstable();
    counted.dedup();
    counted
}

/// Controls that are found otherwise than they have to stand at the end: somebody has to move them.
/// Branch breakers are left to whoever can reach them.
fn found_amiss(scenario: &Scenario) -> impl Iterator<Item = ControlId> + '_ {
    let site = &scenario.site;
    let leaf = |control| site.circuits.iter().any(|c| c.breaker == control);
    let amiss = move |(id, wanted): &&(ControlId, Vec<String>)| {
        let stands = site.position_name(&scenario.start, *id);
        !leaf(*id) && !wanted.iter().any(|w| w == stands)
    };
    scenario.goal.at_end.iter().filter(amiss).map(|(id, _)| *id)
}

/// An end of a cord that only appliances can be plugged into: nothing is reached through it.
fn leads_nowhere(site: &Site, control: ControlId) -> bool {
    let cord = site.cords.iter().find(|c| c.near == control);
    // Where a neighbor lends a cord, a strip may bring a second source to any connector.
    let one_source = site.lent.is_none();
    cord.is_some_and(|c| {
        one_source
            && c.far == FarEnd::Connector
            && !c.near_spots.iter().any(|s| matches!(s, Spot::Outlet(_)))
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
