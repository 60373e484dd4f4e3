//! What a careful person sees to beyond the plan by positions: what drifts, loads that are too much for a battery, an engine's fuel, a controller that was left off, gas in the house.
//!
//! Each is looked for as things are, done on the drill that is walked, and judged with the rest of the way when it is marked.

use std::sync::Arc;

use crate::drill::{Action, Callee, Event, IndoorsEvent, ProtectionEvent, What, take_place};
use crate::marking::{Finding, mark_so_far, supplied_since};
use crate::scenario::{Criterion, Happening};
use crate::site::{
    Appliance, Bus, ControlId, Kind, Moved, Plug, PositionId, Positions, Site, Transfer, Work,
};
use crate::units::DrillTime;

use super::plan::{TooLarge, sun_pushes};
use super::prepare::preparations;
use super::step::Aim;
use super::walk::{Care, Leg, Planned, Walk};

/// Fuel for less than this, in hours, is seen to before the engine stops from under its load.
const FUEL_LOW_H: f64 = 0.75;
/// Longer than the exhaust of any set stays hot enough to light fuel.
const EXHAUST_COLD: DrillTime = DrillTime::from_secs(900);
/// The share of its rated watts that a battery is left with, so that motors have room to start.
const SPARED_TO: f64 = 0.5;

impl Walk<'_> {
    /// Ends at once what is found unsafe, and what would be as soon as the utility is back, if there is a way.
    pub(super) fn make_safe(&mut self) -> Planned {
        let (site, judge) = (&self.scenario.site, self.judge);
        let safe = |p: &Positions| !judge.stand(p).breach() && !sun_pushes(judge, site, p);
        let told = self.drill.conditions().story_done;
        let dark = self.drill.trace().outage_at().is_some();
        let stays_safe = |p: &Positions| {
            let mut ahead = p.clone();
            for timed in self.scenario.story.iter().skip(told).filter(|_| dark) {
                take_place(site, timed.what, &mut ahead);
            }
            safe(p) && !judge.stand(&ahead).breach()
        };
        let here = self.drill.positions().clone();
        if stays_safe(&here) {
            return Planned::Done;
        }
        let (branches, also) = (self.branches(), self.also(Leg::There, 0));
        // A main that goes off and on again brings everything back at once.
        let main = vec![site.panel.main];
        let still: &[Vec<ControlId>] = if self.spares() {
            &[main, Vec::new()]
        } else {
            &[Vec::new()]
        };
        let planned = match self.plan_to(&branches, &also, still, stays_safe) {
            Ok(None) if safe(&here) => return Planned::Done,
            Ok(None) => self.plan_to(&branches, &also, still, safe),
            planned => planned,
        };
        match planned {
            Ok(Some(way)) => {
                for (control, position) in way {
                    self.act(Action::Set(control, position));
                }
                Planned::Done
            }
            Ok(None) => Planned::None,
            Err(TooLarge) => Planned::TooLarge,
        }
    }

    /// Turns off branches on a battery that aren't asked for, the largest first, until it has room for what is left.
    pub(super) fn spare_battery(&mut self) {
        let scenario = Arc::clone(self.scenario);
        let site = &scenario.site;
        let Some(battery) = &site.battery else {
            return;
        };
        let taken_over = |bus: Bus| {
            let mut transfers = site.transfers.iter().filter(|t| t.automatic);
            transfers.any(|t| match t.load {
                Moved::MainPanel => bus == Bus::Main,
                Moved::Subpanel(index) => bus == Bus::Sub(index),
                Moved::Circuit(_) => false,
            })
        };
        let room_w = SPARED_TO * battery.rated_w;
        let watts = |circuit: usize| -> f64 {
            let on = site.appliances.iter().filter(|a| a.circuit == circuit);
            on.map(running_w).sum()
        };
        let circuits = site.circuits.iter().enumerate();
        let on = |breaker| self.drill.positions().get(breaker) == PositionId(1);
        let taken = circuits.filter(|(_, c)| taken_over(c.bus) && on(c.breaker));
        let mut taken: Vec<(usize, ControlId, f64)> =
            taken.map(|(i, c)| (i, c.breaker, watts(i))).collect();
        taken.sort_by(|a, b| b.2.total_cmp(&a.2));
        let mut sum_w: f64 = taken.iter().map(|(.., w)| w).sum();
        let wanted = self.branches();
        for (circuit, breaker, watts) in taken {
            if sum_w > room_w && !wanted.contains(&circuit) {
                self.act(Action::Set(breaker, PositionId(0)));
                sum_w -= watts;
            }
        }
    }

    /// Turns off, for one move of a sparing walk, what would harm meanwhile: the branch whose outlet a machine is unplugged from, the branches of all motors but one that would start at the same instant.
    /// Says which, and how they stood.
    pub(super) fn hold(
        &mut self,
        control: ControlId,
        to: PositionId,
    ) -> Vec<(ControlId, PositionId)> {
        let site = Arc::clone(&self.scenario.site);
        let kind = site.control(control).map(|c| c.kind);
        let held = match kind.filter(|_| self.spares()) {
            Some(Kind::Plug) => self.outlet_of(control).into_iter().collect(),
            Some(Kind::Main | Kind::Backfed | Kind::Output) if to == PositionId(1) => {
                self.starting_at_once(control, to)
            }
            _ => Vec::new(),
        };
        for (handle, _) in &held {
            self.turn_off(*handle);
        }
        held
    }

    /// The breaker of the outlet that a machine's plug is in, and how it stands.
    fn outlet_of(&self, plug: ControlId) -> Option<(ControlId, PositionId)> {
        let site = &self.scenario.site;
        let positions = self.drill.positions();
        let at_wall = |a: &&Appliance| match &a.plug {
            Plug::Cord { control, wall, .. } => *control == plug && positions.get(plug) == *wall,
            Plug::Wired => false,
        };
        let appliance = site.appliances.iter().find(at_wall)?;
        let breaker = site.circuits.get(appliance.circuit)?.breaker;
        Some((breaker, positions.get(breaker)))
    }

    /// What all motors but one hang on that would start at the same instant, and how it stands.
    fn starting_at_once(&self, control: ControlId, to: PositionId) -> Vec<(ControlId, PositionId)> {
        let site = &self.scenario.site;
        let before = self.drill.trace().moments.len();
        let mut ahead = self.drill.clone();
        ahead.act(&Action::Set(control, to));
        let moments = ahead.trace().moments.iter().skip(before);
        let starting = moments.filter(|m| m.at == ahead.now()).filter_map(|m| {
            let What::Happened(Event::Starting { appliance, .. }) = m.what else {
                return None;
            };
            site.appliances.get(appliance)
        });
        let positions = self.drill.positions();
        let mut held: Vec<(ControlId, PositionId)> = starting
            .filter_map(|a| {
                let handle = branch_handle(site, positions, a.circuit)?;
                Some((handle, positions.get(handle)))
            })
            .collect();
        held.dedup();
        held.split_off(held.len().min(1))
    }

    /// Lets appliances rest that have had power, one after the other, until this move is too much for nothing till the utility is back.
    pub(super) fn take_turns(&mut self, control: ControlId, to: PositionId) {
        if self.care != Care::InTurns {
            return;
        }
        let site = Arc::clone(&self.scenario.site);
        let before = std::mem::replace(&mut self.aim, Aim::Spare);
        for index in self.asked.clone() {
            if self.bears(control, to) {
                break;
            }
            let positions = self.drill.positions();
            let had = supplied_since(self.drill.trace(), index).is_some();
            let circuit = site.appliances.get(index).map(|a| a.circuit);
            let handle = circuit.and_then(|c| branch_handle(&site, positions, c));
            if let Some(handle) = handle.filter(|h| had && *h != control) {
                self.resting.push(index);
                self.turn_off(handle);
            }
        }
        self.aim = before;
    }

    /// Whether nothing more is overloaded or starved to the end of the story once this is moved.
    fn bears(&self, control: ControlId, to: PositionId) -> bool {
        let before = mark_so_far(self.scenario, self.drill.trace());
        let mut ahead = self.drill.clone();
        ahead.act(&Action::Set(control, to));
        let last = self.scenario.story.last().map(|t| t.at);
        ahead.act(&Action::Wait(last.unwrap_or_default().since(ahead.now())));
        let known = |f: &Finding| before.iter().any(|b| (b.rule, b.at) == (f.rule, f.at));
        let later = mark_so_far(self.scenario, ahead.trace());
        let mut later = later.iter().filter(|f| f.breach && !known(f));
        later.all(|f| f.rule.criterion() != Criterion::Load)
    }

    /// Lets a set that runs give all it can: electronics that have shut off are reset with its output off, and a sparing walk joins the second set.
    pub(super) fn ready_set(&mut self) {
        let site = Arc::clone(&self.scenario.site);
        let machine = &site.generator.machine;
        let positions = self.drill.positions();
        let running = self.judge.running(positions);
        let stopped = |second: &ControlId| positions.get(*second) == PositionId(0);
        let second = machine
            .second
            .filter(|id| self.spares() && running && stopped(id));
        let shut = machine
            .output_switch
            .filter(|_| !machine.lets_out(positions));
        if second.is_none() && shut.is_none() {
            return;
        }
        self.turn_off(site.generator.output);
        if let Some(second) = second {
            self.act(Action::Set(second, PositionId(1)));
        }
        if let Some(switch) = shut {
            self.act(Action::Set(switch, PositionId(0)));
        }
    }

    /// Turns off a breaker, or the handle of one circuit.
    pub(super) fn turn_off(&mut self, control: ControlId) {
        let off = self
            .scenario
            .site
            .control(control)
            .and_then(|c| c.position("off"));
        if let Some(off) = off.filter(|off| self.drill.positions().get(control) != *off) {
            self.act(Action::Set(control, off));
        }
    }

    /// Brings a set that starts by itself to where its controller can start it: cover shut, oil full, nothing locked out.
    pub(super) fn hand_over(&mut self) {
        let scenario = Arc::clone(self.scenario);
        let site = &scenario.site;
        let Some(automatic) = site.generator.machine.automatic else {
            return;
        };
        let ready = |p: &Positions| {
            let lock_out = automatic.lock_out(p, site.generator.output);
            let oil_low = site.generator.machine.oil_low(p);
            let locked = lock_out.controller_off || lock_out.breaker_open || lock_out.battery_off;
            !(oil_low || locked || automatic.open(p))
        };
        if ready(self.drill.positions()) {
            return;
        }
        let n_goals = 2 + scenario.goal.at_end.len();
        let (branches, also) = (self.branches(), self.also(Leg::Back, n_goals));
        if let Ok(Some(way)) = self.plan_to(&branches, &also, &[Vec::new()], ready) {
            for (control, position) in way {
                self.step(control, position);
            }
        }
    }

    /// Fills the tank before it is empty: stops the set, lets it go cold, pours, and brings back what it carried.
    pub(super) fn keep_fueled(&mut self) {
        let site = Arc::clone(&self.scenario.site);
        let (drill, poured) = (&self.drill, site.generator.spec.burn.fuel.is_poured());
        let left = drill
            .conditions()
            .fuel_hours(&site, drill.positions(), drill.readings());
        if !poured || left.is_none_or(|hours| hours > FUEL_LOW_H) {
            return;
        }
        let before = std::mem::replace(&mut self.aim, Aim::Refuel);
        let engine = site.generator.engine;
        let still = |p: &Positions| !self.judge.running(p);
        let (branches, also) = (self.branches(), self.also(Leg::Back, 0));
        if let Ok(Some(way)) = self.plan_to(&branches, &also, &[Vec::new()], still) {
            for (control, position) in way {
                self.step(control, position);
            }
        } else {
            self.step(engine, PositionId(0));
        }
        self.wait(EXHAUST_COLD);
        self.act(Action::Refuel);
        self.aim = Aim::There;
        if self.plan_all(Leg::There) == Planned::Done {
            self.aim = before;
        }
    }

    /// Sees to what drifts: where the set stands, how cords lie, the alarm, the fuel, the window.
    pub(super) fn prepare(&mut self) {
        let site = Arc::clone(&self.scenario.site);
        let wanted = preparations(self.scenario, self.drill.positions());
        let mut stopped = self.drill.positions().clone();
        stopped.set(site.generator.engine, PositionId(0));
        let mut apart = stopped.clone();
        for cord in &site.cords {
            apart.set(cord.near, PositionId(0));
        }
        let kind = |action: &Action| kind_of(&site, action);
        let asks_still = |action: &Action| match kind(action) {
            Some(Kind::Plug) => !self.is_refused(action, &stopped),
            Some(Kind::Placement) => !self.is_refused(action, &apart),
            _ => false,
        };

        if self.judge.running(self.drill.positions()) && wanted.iter().any(asks_still) {
            self.aim = Aim::Halt;
            self.halt();
        }
        self.aim = Aim::Prepare;
        for action in wanted {
            if self.hurries() && kind(&action).is_some_and(can_wait) {
                continue;
            }
            // A set is carried without its cords.
            let carried = kind(&action) == Some(Kind::Placement);
            if carried && self.is_refused(&action, self.drill.positions()) {
                self.take_cords_off();
            }
            self.act(action);
        }
    }

    /// Starts an engine that has nothing to carry yet before anything else, where time is short.
    pub(super) fn start_early(&mut self) {
        let site = Arc::clone(&self.scenario.site);
        let by_itself = site.generator.machine.automatic.is_some();
        if !self.hurries() || by_itself || self.judge.running(self.drill.positions()) {
            return;
        }
        self.aim = Aim::There;
        self.turn_off(site.generator.output);
        self.step(site.generator.engine, PositionId(1));
    }

    /// Sees to what was put off while time was short.
    pub(super) fn prepare_the_rest(&mut self) {
        if !self.hurries() {
            return;
        }
        self.aim = Aim::Prepare;
        let site = Arc::clone(&self.scenario.site);
        for action in preparations(self.scenario, self.drill.positions()) {
            if kind_of(&site, &action).is_some_and(can_wait) {
                self.act(action);
            }
        }
    }

    /// Stops the engine, freed of its load first if there is a careful way.
    fn halt(&mut self) {
        let engine = self.scenario.site.generator.engine;
        let still = |p: &Positions| !self.judge.running(p);
        let (branches, also) = (self.branches(), self.also(Leg::Back, 0));
        match self.plan_to(&branches, &also, &[Vec::new()], still) {
            Ok(Some(way)) => {
                for (control, position) in way {
                    self.step(control, position);
                }
            }
            Ok(None) | Err(TooLarge) => self.step(engine, PositionId(0)),
        }
    }

    /// Feeds nothing and calls an electrician: the set stands still, and whoever knows such equipment comes.
    pub(super) fn stop_safely(&mut self) {
        if self.judge.running(self.drill.positions()) {
            self.aim = Aim::Halt;
            self.halt();
        }
        self.aim = Aim::SafeStop;
        let call = Action::Call(Callee::Electrician);
        if !self.drill.run().actions.iter().any(|a| a.action == call) {
            self.act(call);
        }
    }

    /// Takes the cords off a set that stands still, so that it can be carried.
    pub(super) fn take_cords_off(&mut self) {
        let site = Arc::clone(&self.scenario.site);
        for end in site.cords.iter().map(|c| c.near) {
            let positions = self.drill.positions();
            if !self.judge.running(positions) && positions.get(end) != PositionId(0) {
                self.act(Action::Set(end, PositionId(0)));
            }
        }
    }

    /// Fills a tank that has run dry, once the engine is cold.
    pub(super) fn fill_up(&mut self) {
        let conditions = self.drill.conditions();
        let poured = self.scenario.site.generator.spec.burn.fuel.is_poured();
        if !poured || conditions.fuel_gal > 0.0 {
            return;
        }
        let stopped = conditions.engine.stopped_at.unwrap_or_default();
        let cold = EXHAUST_COLD.since(self.drill.now().since(stopped));
        self.aim = Aim::Refuel;
        self.wait(cold);
        self.act(Action::Refuel);
    }

    /// Where the house's drop loses its neutral: the main is off within seconds, the utility is called, and the branches wait to come back one by one.
    pub(super) fn end_wrong_volts(&mut self) {
        const LOOK: DrillTime = DrillTime::from_secs(1);
        let scenario = Arc::clone(self.scenario);
        let story = &scenario.story;
        let mended = |e: &Event| *e == Event::Protection(ProtectionEvent::DropMended);
        let Some(lost) = story.iter().find(|t| t.what == Happening::NeutralLost) else {
            return;
        };
        if self.happened(mended) {
            return;
        }
        let latest = lost.at + DrillTime::from_secs(u64::from(lost.spread_s));
        self.aim = Aim::Outage;
        let lost = |e: &Event| *e == Event::Protection(ProtectionEvent::NeutralLost);
        while !self.happened(lost) && self.drill.now() < latest {
            self.wait(LOOK);
        }
        self.aim = Aim::Safe;
        let main = scenario.site.panel.main;
        if self.drill.positions().get(main) == PositionId(1) {
            self.act(Action::Set(main, PositionId(0)));
        }
        let call = Action::Call(Callee::Utility);
        if !self.drill.run().actions.iter().any(|a| a.action == call) {
            self.act(call);
        }
        self.aim = Aim::Shed;
        for breaker in scenario.site.circuits.iter().map(|c| c.breaker) {
            if self.drill.positions().get(breaker) == PositionId(1) {
                self.act(Action::Set(breaker, PositionId(0)));
            }
        }
    }

    /// Shuts what is open over the lugs of a transfer switch, before a source comes to them.
    pub(super) fn shut_covers(&mut self) {
        let site = Arc::clone(&self.scenario.site);
        self.aim = Aim::Safe;
        for cover in site.transfers.iter().filter_map(|t| t.cover) {
            if self.drill.positions().get(cover) != PositionId(0) {
                self.act(Action::Set(cover, PositionId(0)));
            }
        }
    }

    /// Once there is a sign of gas: everybody out, and help is called from there.
    pub(super) fn get_out(&mut self) {
        let moments = &self.drill.trace().moments;
        let is_sign = |what: &What| {
            matches!(
                what,
                What::Happened(Event::Alarm { .. } | Event::Indoors(IndoorsEvent::Unwell { .. }))
            )
        };
        let Some(sign) = moments.iter().position(|m| is_sign(&m.what)) else {
            return;
        };
        let call = Action::Call(Callee::Emergency);
        let mut since = moments.iter().skip(sign);
        let called = since.any(|m| m.what == What::Did(call.clone()));
        let site = Arc::clone(&self.scenario.site);
        self.aim = Aim::GetOut;
        let asleep = site.indoors.people.iter().map(|p| p.control);
        for control in asleep.chain(site.control_id("household")) {
            let outside = site.control(control).and_then(|c| c.position("outside"));
            if let Some(to) = outside.filter(|to| self.drill.positions().get(control) != *to) {
                self.act(Action::Set(control, to));
            }
        }
        if !called {
            self.act(call);
        }
    }
}

/// The kind of what an action moves.
fn kind_of(site: &Site, action: &Action) -> Option<Kind> {
    let Action::Set(control, _) = action else {
        return None;
    };
    site.control(*control).map(|c| c.kind)
}

/// Whether a preparation can wait until there is power: how a cord lies, what gas would come in by from a set that stands far away.
fn can_wait(kind: Kind) -> bool {
    matches!(kind, Kind::Lay | Kind::Opening)
}

/// What takes one circuit off the source that feeds it: its own handle where that stands on a generator, else its breaker.
pub(super) fn branch_handle(
    site: &Site,
    positions: &Positions,
    circuit: usize,
) -> Option<ControlId> {
    let own = |t: &&Transfer| t.load == Moved::Circuit(circuit) && !t.automatic;
    let handle = site.transfers.iter().find(own).map(|t| t.handle);
    let handle = handle.filter(|h| positions.get(*h) == PositionId(2));
    handle.or(site.circuits.get(circuit).map(|c| c.breaker))
}

/// Appliances by what they take at a standstill, the heaviest motor first and what has no motor last.
pub(super) fn heaviest_first(site: &Site, appliances: &[usize]) -> Vec<usize> {
    let starting_a = |index: &usize| match site.appliances.get(*index).map(|a| &a.work) {
        Some(Work::Motor(motor)) => motor.locked_rotor_amps(),
        Some(Work::Resistive { .. } | Work::Electronic { .. }) | None => 0.0,
    };
    let mut sorted = appliances.to_vec();
    sorted.sort_by(|a, b| starting_a(b).total_cmp(&starting_a(a)));
    sorted
}

/// What an appliance takes while it runs, watts.
fn running_w(appliance: &Appliance) -> f64 {
    match &appliance.work {
        Work::Resistive { watts } | Work::Electronic { watts, .. } => *watts,
        Work::Motor(motor) => motor.running_w,
    }
}
