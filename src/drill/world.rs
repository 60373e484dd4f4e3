//! The world's part: the story, what is due, and what an action does.

use std::sync::Arc;

use crate::apparatus::generator::{exhaust_c, exhaust_hot};
use crate::scenario::Happening;
use crate::site::{ControlId, Kind, PositionId, Site};
use crate::units::DrillTime;

use super::action::{Action, Callee, Listener, Sight};
use super::engine::{Drill, Outcome};
use super::event::Event;
use super::known::Learnt;
use super::story::{event_of, take_place};
use super::touch::Metal;
use super::trace::{Moment, What};

/// How long a crew that found the line live, or was warned by the learner's call, waits before it tries again.
const STAND_BACK: DrillTime = DrillTime::from_secs(600);

impl Drill {
    /// When the story goes on, if it does.
    pub(super) fn next_happening_at(&self) -> Option<DrillTime> {
        if self.conditions.crew_harmed {
            return None;
        }
        let at = self.story_at.get(self.conditions.story_done)?;
        Some(*at + self.conditions.delay)
    }

    /// Fires what is due at the committed instant.
    pub(super) fn fire_due(&mut self) {
        let mut changed = self.fire_story();
        changed |= self.fire_customers();
        changed |= self.fire_breakers();
        changed |= self.fire_engine();
        changed |= self.fire_appliances();
        changed |= self.fire_second_sources();
        changed |= self.fire_cords();
        self.fire_air();
        if changed {
            self.settle();
        }
        self.follow_controller();
    }

    /// Lets the controller act on what has settled, and what it does settle.
    fn follow_controller(&mut self) {
        if self.fire_controller() {
            self.settle();
        }
    }

    fn fire_story(&mut self) -> bool {
        let due = self
            .next_happening_at()
            .is_some_and(|at| at <= self.committed_at());
        if !due {
            return false;
        }
        let Some(what) = self
            .scenario()
            .story
            .get(self.conditions.story_done)
            .map(|t| t.what)
        else {
            return false;
        };
        let site = Arc::clone(&self.scenario().site);
        if what == Happening::CrewTakesHold {
            let pole = site.line.poles.get(site.line.crew_pole);
            let reading = self.readings().point(pole.map_or("", |p| p.name.as_str()));
            if reading.fed.any() {
                self.conditions.delay = self.conditions.delay + STAND_BACK;
                self.happen(Event::CrewFoundLive {
                    volts: reading.volts,
                });
                return false;
            }
        }
        if what == Happening::CustomerStarts && !self.customer_starts() {
            self.conditions.story_done += 1;
            return false;
        }
        let tie = self.tie_event();
        take_place(&site, what, &mut self.positions);
        self.conditions.indoors.neighbor_runs |= what == Happening::NeighborRuns;
        if what == Happening::CustomerStarts {
            self.start_engine();
        }
        let event = if what == Happening::TieCloses {
            Event::Line(tie)
        } else {
            event_of(what)
        };
        self.happen(event);
        self.conditions.story_done += 1;
        true
    }

    /// Opens the breakers whose bimetals let go, one after the other: what one opens spares the others.
    fn fire_breakers(&mut self) -> bool {
        let site = Arc::clone(&self.scenario().site);
        let mut changed = false;
        while let Some((control, amps)) = self.breaker_that_lets_go(&site) {
            self.trip(control, amps);
            self.read(self.angle_deg());
            changed = true;
        }
        changed
    }

    /// The closed breaker that is furthest past its trip heat and still carries what bends it further.
    fn breaker_that_lets_go(&self, site: &Site) -> Option<(ControlId, f64)> {
        self.weakest_breaker(site, |id, breaker, amps| {
            let heat = self.conditions.heat_of(id);
            let multiple = amps / breaker.rating_a();
            let past = heat / breaker.opening_heat();
            (past >= 1.0 && multiple * multiple >= breaker.opening_heat()).then_some(past)
        })
    }

    /// Says whether an appliance has to be followed: its motor is at speed, its protector acts, its float or thermostat turns.
    fn fire_appliances(&mut self) -> bool {
        let mut lost = Vec::new();
        for (index, condition) in self.conditions.appliances.iter_mut().enumerate() {
            if condition.level >= 1.0 - 1e-9 && !condition.lost {
                condition.lost = true;
                lost.push(index);
            }
        }
        for appliance in lost {
            self.happen(Event::Lost { appliance });
        }
        self.fire_damage();
        self.wants_following()
    }

    /// Does an action at the committed instant.
    pub(super) fn perform(&mut self, action: &Action) -> Outcome {
        let refused = self.refusal(action);
        if let Some(why) = refused {
            self.record(What::Refused(action.clone(), why.clone()));
            return Outcome::Refused(why);
        }
        let handled = Metal::handled(self.site(), action);
        let before = handled.map(|metal| (metal, self.feel(metal)));
        match action {
            Action::Set(control, position) => self.set(*control, *position),
            Action::Refuel => {
                self.conditions.fuel_gal = self.site().generator.spec.tank_gal;
            }
            Action::Happen(_)
            | Action::Look(_)
            | Action::Test(_)
            | Action::Call(_)
            | Action::Tell(_)
            | Action::Say(..)
            | Action::Wait(_) => {}
        }
        self.settle_after(action);
        if let Some((metal, felt)) = before {
            self.touch(metal, felt);
        }
        self.follow_controller();
        Outcome::Done
    }

    fn settle_after(&mut self, action: &Action) {
        match action {
            Action::Set(..) => {
                // The deed first, then what follows from it.
                self.read(self.angle_deg());
                self.record(What::Did(action.clone()));
                self.miss_start();
                self.settle();
            }
            Action::Refuel => {
                self.record(What::Did(action.clone()));
                self.check_hot_fuel();
            }
            Action::Look(sight) => {
                self.record(What::Did(action.clone()));
                self.learn_sight(*sight);
            }
            Action::Test(point) => {
                self.record(What::Did(action.clone()));
                if !self.test_line(point) {
                    let reading = self.readings().point(point);
                    self.record(What::Learnt(Learnt::Tested {
                        point: point.clone(),
                        reading,
                    }));
                }
            }
            Action::Call(callee) => {
                self.record(What::Did(action.clone()));
                self.call(*callee);
            }
            Action::Tell(listener) => {
                self.record(What::Did(action.clone()));
                self.tell(*listener);
            }
            Action::Happen(turn) => {
                self.record(What::Did(action.clone()));
                self.turn(*turn);
                self.settle();
                self.fire_due();
            }
            Action::Say(..) | Action::Wait(_) => self.record(What::Did(action.clone())),
        }
    }

    /// Why an action can't be done, by what is built and by how things are.
    pub(super) fn refusal(&self, action: &Action) -> Option<String> {
        let site = self.site();
        if *action == Action::Refuel && !site.generator.spec.burn.fuel.is_poured() {
            return Some("refused-no-tank".to_owned());
        }
        if Metal::handled(site, action) == Some(Metal::Generator) && self.burns() {
            return Some("refused-burning".to_owned());
        }
        if let Action::Happen(turn) = action {
            return (!self.can_turn(*turn)).then(|| "refused-no-turn".to_owned());
        }
        let Action::Set(control, position) = action else {
            return None;
        };
        let now = site.position_name(&self.positions, *control);
        let wanted = site
            .control(*control)
            .and_then(|c| c.positions.get(usize::from(position.0)))?;
        if now == wanted {
            return Some("refused-already".to_owned());
        }
        if now == "blown" && wanted == "in" {
            return Some("refused-fuse-out-first".to_owned());
        }
        if now == "tripped" && wanted == "on" {
            return Some("refused-reset-first".to_owned());
        }
        if now == "tripped" && self.too_hot_to_latch(*control) {
            return Some("refused-breaker-hot".to_owned());
        }
        if *control == site.generator.engine && wanted == "running" {
            if self.conditions.engine.broken {
                return Some("refused-engine-broken".to_owned());
            }
            if self.conditions.fuel_gal <= 0.0 {
                return Some("refused-no-fuel".to_owned());
            }
            if site.generator.machine.oil_low(&self.positions) {
                return Some("refused-low-oil".to_owned());
            }
        }
        site.refusal(&self.positions, *control, *position)
            .map(str::to_owned)
    }

    /// Whether fuel has caught fire on the set: from then on nobody goes near it.
    fn burns(&self) -> bool {
        let fire = |m: &Moment| matches!(m.what, What::Happened(Event::FuelFire { .. }));
        self.trace().moments.iter().any(fire)
    }

    fn set(&mut self, control: ControlId, position: PositionId) {
        self.positions.set(control, position);
        self.moved_by_hand(control, position);
        self.fill_oil(control);
        self.renew_fuse(control, position);
        if self.site().control(control).map(|c| c.kind) == Some(Kind::Engine) {
            if position != PositionId(1) {
                self.stop_engine();
            } else if self.conditions.machine.misses == 0 {
                self.start_engine();
            }
        }
    }

    fn check_hot_fuel(&mut self) {
        let engine = self.conditions.engine;
        let since_stop = match (engine.running_since, engine.stopped_at) {
            (Some(_), _) => Some(0.0),
            (None, Some(stopped)) => Some(self.committed_at().since(stopped).seconds()),
            (None, None) => None,
        };
        if let Some(seconds) = since_stop.filter(|s| exhaust_hot(*s)) {
            self.happen(Event::FuelFire {
                celsius: exhaust_c(seconds),
            });
        }
    }

    fn learn_sight(&mut self, sight: Sight) {
        let lit = self
            .site()
            .neighbors
            .iter()
            .any(|n| self.readings().point(&n.name).volts > NEIGHBOR_LIT_V);
        self.record(What::Learnt(Learnt::Saw {
            sight,
            neighbors_lit: lit,
        }));
    }

    fn call(&mut self, callee: Callee) {
        let site = self.site();
        let line = &site.line;
        let crew_at_work = ["testing", "hands-on"]
            .iter()
            .any(|p| site.stands(&self.positions, line.crew, p));
        let in_service = site.stands(&self.positions, line.feeder, "closed");
        let point = line
            .poles
            .get(line.crew_pole)
            .map_or("", |p| p.name.as_str());
        let live = self.readings().point(point).fed.customer();
        let learnt = Learnt::Told {
            by: callee,
            crew_at_work,
            in_service,
            drop_loose: [line.drop_neutral, line.drop_leg]
                .into_iter()
                .any(|wire| self.positions.get(wire) != PositionId(0)),
        };
        let crew = line.crew;
        let testing = self.site().stands(&self.positions, crew, "testing");
        if callee == Callee::Utility && live && testing {
            self.conditions.delay = self.conditions.delay + STAND_BACK;
        }
        self.record(What::Learnt(learnt));
    }

    fn tell(&mut self, listener: Listener) {
        self.record(What::Learnt(Learnt::Spread { to: listener }));
        if listener == Listener::Neighbors {
            self.ask_customers();
        }
    }
}

/// Volts on a neighbor's leg above which its lamps are seen to glow.
const NEIGHBOR_LIT_V: f64 = 30.0;
