//! What equipment that works by itself asks of a walk: it is serviced in time, spared what is too much for it, woken when it has given up, and otherwise left to its work.

use std::sync::Arc;

use crate::drill::{Action, whole_millis};
use crate::site::{ControlId, Legs, PositionId, Transfer};
use crate::units::DrillTime;

use super::drift::carries;
use super::step::Aim;
use super::walk::{AT_ONCE, COOLING_MARGIN, Leg, Planned, Walk};

impl Walk<'_> {
    /// Sees to equipment that works by itself before the outage: what the end asks of it can be done while the utility feeds the house.
    pub(super) fn is_serviced(&mut self) -> Planned {
        if self.scenario.site.generator.machine.automatic.is_none() {
            return Planned::Done;
        }
        self.plan_all(Leg::Back)
    }

    /// Takes off what isn't asked for, where a set that starts by itself can't carry all at once; says what that is.
    pub(super) fn spare(&mut self) -> Vec<ControlId> {
        let site = Arc::clone(&self.scenario.site);
        let by_itself = site.generator.machine.automatic.is_some();
        if !by_itself || carries(&site) || self.is_good_again() {
            return Vec::new();
        }
        let asked = |circuit: usize| {
            let mut asked = self.scenario.goal.appliances.iter();
            asked.any(|a| {
                site.appliances
                    .get(*a)
                    .is_some_and(|a| a.circuit == circuit)
            })
        };
        let positions = self.drill.positions();
        let spared = site.circuits.iter().enumerate();
        let spared = spared.filter(|(index, c)| {
            c.legs == Legs::Both && !asked(*index) && positions.get(c.breaker) == PositionId(1)
        });
        let spared: Vec<ControlId> = spared.map(|(_, c)| c.breaker).collect();
        self.aim = Aim::Spare;
        for breaker in &spared {
            self.act(Action::Set(*breaker, PositionId(0)));
        }
        spared
    }

    /// Wakes a controller that has given up, so that it tries again.
    pub(super) fn reset(&mut self) {
        let automatic = self.scenario.site.generator.machine.automatic;
        if let Some(automatic) = automatic.filter(|_| self.drill.gave_up()) {
            let before = std::mem::replace(&mut self.aim, Aim::Reset);
            self.hand_over();
            self.act(Action::Set(automatic.switch, PositionId(1)));
            self.act(Action::Set(automatic.switch, PositionId(0)));
            self.aim = before;
        }
    }

    /// Fills the oil of a set that starts by itself and runs, where what is left doesn't last: freed of its load, cooled and locked out, then handed back.
    pub(super) fn keep_oiled(&mut self) {
        let site = Arc::clone(&self.scenario.site);
        let generator = &site.generator;
        let (Some(automatic), Some(oil)) = (generator.machine.automatic, generator.machine.oil)
        else {
            return;
        };
        let ahead = self.scenario.ends_at.since(self.drill.now());
        let left = DrillTime::from_hours(self.drill.conditions().machine.oil_h);
        let lasts = left.is_none_or(|left| left > ahead);
        let full = self.drill.positions().get(oil.level) == PositionId(0);
        if lasts || full || !self.judge.running(self.drill.positions()) {
            return;
        }
        let before = std::mem::replace(&mut self.aim, Aim::Oil);
        self.turn_off(generator.output);
        self.aim = Aim::Cool;
        self.wait(whole_millis(generator.spec.cooldown_s) + COOLING_MARGIN);
        self.aim = Aim::Oil;
        let (first, second) = (PositionId(0), PositionId(1));
        let moves = [
            (automatic.switch, second),
            (automatic.battery, second),
            (automatic.cover, second),
            (oil.level, first),
            (automatic.cover, first),
            (automatic.battery, first),
            (generator.output, second),
            (automatic.switch, first),
        ];
        for (control, to) in moves {
            self.act(Action::Set(control, to));
        }
        self.aim = Aim::ByItself;
        self.wait(AT_ONCE);
        self.aim = before;
    }

    /// Turns on the branches of what is asked for, so that it has power as soon as a source comes.
    fn turn_on_asked(&mut self) {
        let site = Arc::clone(&self.scenario.site);
        let asked = self.asked.clone();
        let circuits = asked.iter().filter_map(|a| site.appliances.get(*a));
        let circuits = circuits.filter_map(|a| site.circuits.get(a.circuit));
        for breaker in circuits.map(|c| c.breaker) {
            if self.drill.positions().get(breaker) != PositionId(1) {
                self.step(breaker, PositionId(1));
            }
        }
    }

    /// Turns on a battery that was left off: nothing takes over from it by itself else.
    fn turn_on_battery(&mut self) {
        let switch = self.scenario.site.battery.as_ref().map(|b| b.switch);
        if let Some(switch) = switch.filter(|s| self.drill.positions().get(*s) == PositionId(0)) {
            self.act(Action::Set(switch, PositionId(1)));
        }
    }

    /// When a battery was turned on last.
    fn battery_on_at(&self) -> Option<DrillTime> {
        let switch = self.scenario.site.battery.as_ref()?.switch;
        let mut actions = self.drill.run().actions.iter().rev();
        let turned = actions.find(|t| t.action == Action::Set(switch, PositionId(1)));
        turned.map(|t| t.at)
    }

    /// Gives equipment that works by itself the time to do so, as long as the goal leaves.
    pub(super) fn let_it_work(&mut self, leg: Leg, n_goals: usize) {
        const STEP: DrillTime = DrillTime::from_secs(30);
        let scenario = Arc::clone(self.scenario);
        let site = &scenario.site;
        if !site.transfers.iter().any(|t| t.automatic) {
            return;
        }
        let own_start = site.generator.machine.automatic.is_some();
        if leg == Leg::There {
            let before = std::mem::replace(&mut self.aim, Aim::There);
            self.turn_on_battery();
            self.turn_on_asked();
            self.aim = before;
        }
        let trace = self.drill.trace();
        let (outage, returned) = (trace.outage_at().unwrap_or_default(), trace.return_at());
        // A controller that starts an engine needs its time; a battery's transfer is done at once.
        let until = match leg {
            // One that has just been handed over gets the time to start.
            Leg::There if own_start => {
                (outage + scenario.goal.within).max(self.drill.now() + AT_ONCE)
            }
            Leg::Back if own_start => scenario.ends_at,
            Leg::There | Leg::Back => {
                let since = returned.unwrap_or(outage);
                self.battery_on_at().map_or(since, |on| on.max(since)) + AT_ONCE
            }
        };
        while self.drill.now() + STEP < until {
            let positions = self.drill.positions();
            // Once the set feeds what it is built to feed, the rest comes by hand.
            let at_work = |t: &Transfer| {
                t.automatic
                    && positions.get(t.handle) == PositionId(2)
                    && self.judge.running(positions)
            };
            let done = match leg {
                Leg::There => {
                    site.transfers.iter().any(at_work)
                        || self.supplied(positions, n_goals, |_| true)
                }
                Leg::Back => self.restored(positions, 2),
            };
            if done {
                return;
            }
            self.reset();
            self.wait(STEP);
        }
    }
}
