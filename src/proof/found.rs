//! What the searches of a drill have found: where it can't go on, where marking and judge differ, where the line is fed.

use crate::drill::{Action, duration};
use crate::scenario::{Scenario, Timed};
use crate::site::FarEnd;
use crate::units::DrillTime;

use super::bench::Bench;
use super::model::Move;
use super::search::Reachable;
use super::space::Space;
use super::{Marker, Standing};

/// What the searches have found, the first of each kind with the way to it.
#[derive(Debug, Default)]
pub(super) struct Found {
    pub(super) too_large: bool,
    stuck: Option<Vec<Action>>,
    disagrees: Option<Vec<Action>>,
    feeds_line: Option<Vec<Action>>,
}

impl Found {
    /// Looks through everything that was reached.
    pub(super) fn look(
        &mut self,
        space: &Space<'_>,
        reached: &Reachable,
        bench: &mut Bench<'_>,
        marker: Marker<'_>,
    ) {
        let scenario = space.scenario;
        let judge = space.judge;
        for (index, code, facts) in reached.classes() {
            if facts.stand.line_fed && self.feeds_line.is_none() {
                self.feeds_line = Some(actions(scenario, &reached.way_to(index)));
            }
            let moment = bench.moment(judge, &space.decode(code).0);
            if marker(scenario, &moment) != facts.stand && self.disagrees.is_none() {
                self.disagrees = Some(actions(scenario, &reached.way_to(index)));
            }
        }
        let states = reached.states().iter().zip(reached.facts());
        let goals: Vec<bool> = states.map(|(c, f)| space.ends_well(*c, f)).collect();
        let unharmed: Vec<bool> = reached.facts().map(|f| !f.stand.shock).collect();
        let leads = reached.leads_to(&goals, &unharmed);
        let mut all = leads.iter().zip(&unharmed);
        let stuck = all.position(|(leads, unharmed)| *unharmed && !leads);
        if let (Some(index), None) = (stuck, &self.stuck) {
            self.stuck = Some(actions(scenario, &reached.way_to(index)));
        }
    }

    fn of(&self, found: Option<&Vec<Action>>, otherwise: Standing) -> Standing {
        match found {
            Some(way) => Standing::Broken(way.clone()),
            None if self.too_large => Standing::NotCovered("proof-too-large"),
            None => otherwise,
        }
    }

    pub(super) fn goes_on(&self) -> Standing {
        self.of(self.stuck.as_ref(), Standing::ProvedForPositions)
    }

    pub(super) fn agrees(&self) -> Standing {
        self.of(self.disagrees.as_ref(), Standing::ProvedForPositions)
    }

    pub(super) fn by_construction(&self, scenario: &Scenario) -> Standing {
        let site = &scenario.site;
        if site.line_work.is_some() {
            return Standing::NotCovered("proof-line-customers");
        }
        let mut cords = site.cords.iter();
        let two_plugs = cords.any(|c| matches!(c.far, FarEnd::Blades(..)));
        let guarded = !site.has_unguarded_inlet();
        match &self.feeds_line {
            Some(way) if two_plugs || !guarded => Standing::Declared(way.clone()),
            way => self.of(way.as_ref(), Standing::Proved),
        }
    }
}

/// A way as actions: the learner's moves, and waiting until the story has come as far as it has in the way.
/// A move that takes longer than the story leaves comes later than in the way; what devices do by themselves is not among the actions.
fn actions(scenario: &Scenario, way: &[Move]) -> Vec<Action> {
    let mut actions = Vec::new();
    let mut now = DrillTime::ZERO;
    let mut story = scenario.story.iter();
    for step in way {
        let action = match step {
            Move::Set(control, position) => Action::Set(*control, *position),
            Move::Device(..) => continue,
            Move::Story => {
                let latest = |t: &Timed| t.at + DrillTime::from_secs(u64::from(t.spread_s) + 1);
                let wait = story.next().map(latest).unwrap_or_default().since(now);
                if wait == DrillTime::ZERO {
                    continue;
                }
                Action::Wait(wait)
            }
        };
        now = now + duration(&scenario.site, &action);
        match (actions.last_mut(), &action) {
            (Some(Action::Wait(before)), Action::Wait(more)) => *before = *before + *more,
            _ => actions.push(action),
        }
    }
    actions
}
