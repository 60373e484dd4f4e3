//! What a walk is after, one thing of the goal after the other: what has to be moved for it, what is left alone meanwhile, and whether it is reached.

use std::sync::Arc;

use crate::site::{ControlId, Cord, FarEnd, Moved, Plug, PositionId, Positions, Site, Spot};

use super::joints::Place;
use super::walk::{Leg, Walk};

impl Walk<'_> {
    /// Cord ends and plugs that are left where they are, one choice after the other; at last none.
    /// With few of them in hand a plan is found at once where it would be lost among all ways to lay all cords.
    pub(super) fn left_alone(&self, leg: Leg, reached: usize) -> Vec<Vec<ControlId>> {
        let site = &self.scenario.site;
        let goal = &self.scenario.goal;
        let plugs = site.appliances.iter().filter_map(|a| match &a.plug {
            Plug::Cord { control, .. } => Some(*control),
            Plug::Wired => None,
        });
        let all: Vec<ControlId> = plugs.chain(site.cords.iter().map(|c| c.near)).collect();
        let but = |wanted: &[ControlId]| -> Vec<ControlId> {
            let others = all.iter().filter(|c| !wanted.contains(c));
            others.copied().collect()
        };
        let mut choices = Vec::new();
        match leg {
            Leg::There => {
                let appliance = reached.checked_sub(1).and_then(|i| self.asked.get(i));
                let plug = appliance
                    .and_then(|a| site.appliances.get(*a))
                    .map(|a| &a.plug);
                if let Some(Plug::Cord { control, cords, .. }) = plug {
                    let n_cords = cords.len();
                    let turned = cords.iter().cycle().skip(self.turn).take(n_cords);
                    let ends = turned.filter_map(|(cord, _)| site.cords.get(*cord));
                    choices.extend(ends.map(|cord| but(&[*control, cord.near])));
                }
            }
            Leg::Back => {
                let asked = reached.checked_sub(3).and_then(|i| goal.at_end.get(i));
                choices.extend(asked.map(|(control, _)| but(&[*control])));
            }
        }
        choices.push(Vec::new());
        choices
    }

    /// Where only cords bring power: plugs in all that is asked for before the set gives any, so that it needn't stop for each; what has no place is left to the plans that follow.
    pub(super) fn lay_cords(&mut self) {
        let site = Arc::clone(&self.scenario.site);
        let unguarded = |inlet: usize| {
            let mut backfed = site.backfed();
            backfed.any(|(own, held)| own == inlet && !held.blocks())
        };
        // An inlet that no transfer equipment guards brings none.
        if !(0..site.inlets.len()).all(unguarded) || site.lent.is_some() {
            return;
        }
        for reached in 1..=self.asked.len() {
            let (branches, also) = (self.branches(), self.also(Leg::There, reached));
            let still = self.left_alone(Leg::There, reached);
            let laid = |p: &Positions| {
                let mut asked = self.asked.iter().take(reached);
                asked.all(|index| is_laid(&site, p, *index))
            };
            if let Ok(Some(way)) = self.plan_to(&branches, &also, &still, laid) {
                for (control, position) in way {
                    self.step(control, position);
                }
            }
        }
    }

    /// Controls that the plan needs besides, for as much of the goal as is to be reached: plugs and the cords to plug them into, what the end asks for, the sun's own breakers, and what locks a set out.
    pub(super) fn also(&self, leg: Leg, reached: usize) -> Vec<ControlId> {
        let site = &self.scenario.site;
        let goal = &self.scenario.goal;
        let mut also = Vec::new();
        let n_appliances = match leg {
            Leg::There => reached,
            Leg::Back => goal.appliances.len(),
        };
        for index in self.asked.iter().take(n_appliances) {
            if let Some(Plug::Cord { control, cords, .. }) =
                site.appliances.get(*index).map(|a| &a.plug)
            {
                also.push(*control);
                let cords = cords.iter().filter_map(|(cord, _)| site.cords.get(*cord));
                also.extend(cords.map(|c| c.near));
            }
        }
        if leg == Leg::Back {
            let asked = goal.at_end.iter().take(reached.saturating_sub(2));
            also.extend(asked.map(|(control, _)| *control));
        }
        also.extend(site.solar.iter().flat_map(|s| [s.breaker, s.disconnect]));
        let automatic = site.generator.machine.automatic.iter();
        also.extend(automatic.flat_map(|a| [a.switch, a.battery, a.cover]));
        also
    }

    /// Circuits that the plan has to move: those of the goal, and those that a cord with two plugs is in.
    pub(super) fn branches(&self) -> Vec<usize> {
        let site = &self.scenario.site;
        let goal = &self.scenario.goal;
        let mut branches: Vec<usize> = goal
            .appliances
            .iter()
            .filter_map(|a| site.appliances.get(*a))
            .map(|a| a.circuit)
            .collect();
        let named = |c: usize| {
            let breaker = site.circuits.get(c).map(|c| c.breaker);
            goal.at_end
                .iter()
                .any(|(control, _)| Some(*control) == breaker)
        };
        branches.extend((0..site.circuits.len()).filter(|c| named(*c)));
        let plugged = site.cords.iter().filter_map(|cord| match cord.far {
            FarEnd::Blades(end, circuit) => {
                let out = self.drill.positions().get(end) != PositionId(0);
                out.then_some(circuit)
            }
            FarEnd::Connector | FarEnd::Inlet(_) | FarEnd::Strip(_) => None,
        });
        branches.extend(plugged);
        branches.sort_unstable();
        branches.dedup();
        branches
    }

    /// Whether the first `reached` appliances that are asked for hang on a source of the house's own, by cords that will do.
    pub(super) fn supplied(
        &self,
        positions: &Positions,
        reached: usize,
        will_do: fn(&Cord) -> bool,
    ) -> bool {
        let site = &self.scenario.site;
        let resting = |index: &&usize| self.resting.contains(index);
        let mut goal = self.asked.iter().take(reached).filter(|i| !resting(i));
        goal.all(|index| {
            let appliance = site.appliances.get(*index);
            appliance.is_some_and(|a| {
                let place = match &a.plug {
                    Plug::Wired => Some(Place::Outlet(a.circuit)),
                    Plug::Cord { control, wall, .. } if positions.get(*control) == *wall => {
                        Some(Place::Outlet(a.circuit))
                    }
                    Plug::Cord { control, lent, .. } if Some(positions.get(*control)) == *lent => {
                        Some(Place::Lent)
                    }
                    Plug::Cord { control, cords, .. } => {
                        let at = cords.iter().find(|(_, p)| positions.get(*control) == *p);
                        let at = at.filter(|(cord, _)| site.cords.get(*cord).is_some_and(will_do));
                        at.map(|(cord, _)| Place::Far(*cord))
                    }
                };
                place.is_some_and(|p| self.judge.own_reaches(positions, p))
            })
        })
    }

    /// Whether the first `reached` things hold of the end: on the utility if that is asked for, with every panel that is switched as a whole, so that nothing waits in the dark while an engine cools; the engine still unless the end asks for it; then each control as it should stand.
    pub(super) fn restored(&self, positions: &Positions, reached: usize) -> bool {
        let site = &self.scenario.site;
        let goal = &self.scenario.goal;
        let on = !goal.back_on_utility || self.judge.on_utility(positions);
        let engine = site.generator.engine;
        let goes_on = |(control, wanted): &(ControlId, Vec<String>)| {
            *control == engine && wanted.iter().any(|w| w == "running")
        };
        let still =
            reached < 2 || goal.at_end.iter().any(goes_on) || !self.judge.running(positions);
        let mut named = goal.at_end.iter().take(reached.saturating_sub(2));
        let mut switched = site.transfers.iter().filter(|t| {
            let whole = !matches!(t.load, Moved::Circuit(_)) && !t.automatic;
            let asked = goal.at_end.iter().find(|(control, _)| *control == t.handle);
            whole && asked.is_some_and(|(_, wanted)| wanted.iter().all(|w| w == "utility"))
        });
        let switched = switched.all(|t| positions.get(t.handle) == PositionId(0));
        on && switched
            && still
            && named.all(|(control, wanted)| {
                let stands = site.position_name(positions, *control);
                wanted.iter().any(|w| w == stands)
            })
    }
}

/// Whether an appliance's plug is in a fit cord that is in the set.
fn is_laid(site: &Site, positions: &Positions, appliance: usize) -> bool {
    let appliance = site.appliances.get(appliance);
    let cord = appliance.and_then(|a| site.cords.get(a.cord(positions)?));
    cord.is_some_and(|c| c.is_fit() && matches!(c.near_spot(positions), Spot::Receptacle(_)))
}
