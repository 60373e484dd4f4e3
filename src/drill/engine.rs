//! The engine: one drill from its start to now, advanced by time and by actions.

use std::sync::Arc;

use crate::circuit::NetworkError;
use crate::scenario::Scenario;
use crate::scenario::chance::{Purpose, draw};
use crate::scenario::variation;
use crate::site::{Body, Drive, Felt, Plant, Positions, Readings, Site};
use crate::units::DrillTime;

use super::action::{Action, duration};
use super::conditions::Conditions;
use super::event::Event;
use super::run::{Run, Timed};
use super::trace::{Moment, Trace, What};

/// How often a moment is recorded although nothing changes, milliseconds.
const SAMPLE_MS: u64 = 10_000;

/// What became of an action.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Outcome {
    /// It was done.
    Done,
    /// The world refused it; the message id says why.
    Refused(String),
    /// The drill is over; nothing was done.
    Over,
}

/// A drill in progress.
#[derive(Debug, Clone)]
pub struct Drill {
    scenario: Arc<Scenario>,
    run: Run,
    plant: Plant,
    pub(super) positions: Positions,
    pub(super) conditions: Conditions,
    readings: Arc<Readings>,
    /// When each of the story's happenings is due, before delays.
    pub(super) story_at: Vec<DrillTime>,
    /// The angle at which two sources meet, degrees.
    pub(super) closing_angle_deg: f64,
    committed: DrillTime,
    /// When state is committed next, as far as that is known: a frame that passes between two such instants asks nothing.
    stop: Option<DrillTime>,
    now: DrillTime,
    trace: Trace,
}

impl Drill {
    /// The drill that this seed gives, at its start.
    ///
    /// # Errors
    /// When the site can't be wired, which a checked file rules out.
    pub fn start(scenario: &Arc<Scenario>, seed: u64) -> Result<Self, NetworkError> {
        let scenario = &variation::variant(scenario, seed);
        let site = &scenario.site;
        let mut plant = Plant::new(site)?;
        let mut conditions = Conditions::begin(site, &scenario.start);
        conditions.machine.found(scenario, seed);
        conditions.fuel_gal = scenario.fuel_gal.unwrap_or(conditions.fuel_gal);
        plant.set_cords(site, &conditions.cord_states());
        let drive = Drive {
            running: false,
            ..Drive::default()
        };
        let readings = plant.read(site, &scenario.start, &[], drive, Body { touching: false });
        let spreads: Vec<u32> = scenario.story.iter().map(|t| t.spread_s).collect();
        let story_at = scenario
            .story
            .iter()
            .zip(draw(seed, Purpose::Story, &spreads));
        let angle = draw(seed, Purpose::ClosingAngle, &[359])
            .first()
            .copied()
            .unwrap_or_default();
        let mut drill = Self {
            scenario: Arc::clone(scenario),
            run: Run::new(&scenario.name, &scenario.digest, seed),
            plant,
            positions: scenario.start.clone(),
            conditions,
            readings: Arc::new(readings),
            story_at: story_at
                .map(|(t, late)| t.at + DrillTime::from_secs(u64::from(late)))
                .collect(),
            closing_angle_deg: f64::from(angle),
            committed: DrillTime::ZERO,
            stop: None,
            now: DrillTime::ZERO,
            trace: Trace::default(),
        };
        let ran_before = drill.scenario.ran_before;
        if let Some(ran) = ran_before {
            drill.has_run(ran);
        }
        drill.settle_quietly();
        drill.record(What::Began);
        if ran_before.is_some() {
            drill.happen(Event::Outage);
        }
        Ok(drill)
    }

    /// The scenario: the variant that the seed gave.
    pub fn scenario(&self) -> &Arc<Scenario> {
        &self.scenario
    }

    /// What is built.
    pub fn site(&self) -> &Site {
        &self.scenario.site
    }

    /// The drill clock.
    pub fn now(&self) -> DrillTime {
        self.now
    }

    /// How everything stands.
    pub fn positions(&self) -> &Positions {
        &self.positions
    }

    /// What has drifted how far, as last committed.
    pub fn conditions(&self) -> &Conditions {
        &self.conditions
    }

    /// What the solver says.
    pub fn readings(&self) -> &Readings {
        &self.readings
    }

    /// The run so far: all that has to be stored.
    pub fn run(&self) -> &Run {
        &self.run
    }

    /// The run played out so far.
    pub fn trace(&self) -> &Trace {
        &self.trace
    }

    /// This drill as it stood in one moment of its trace, to be looked at: within an instant much may follow from one deed.
    #[must_use]
    pub fn stood_at(mut self, moment: usize) -> Self {
        if let Some(stood) = self.trace.moments.get(moment) {
            self.positions = stood.positions.clone();
            self.conditions = Conditions::clone(&stood.conditions);
            self.readings = Arc::clone(&stood.readings);
        }
        self
    }

    /// The plant, for the ways that energy takes.
    pub fn plant(&self) -> &Plant {
        &self.plant
    }

    /// Whether the drill has come to its end by itself.
    pub fn over(&self) -> bool {
        self.now >= self.scenario.ends_at
    }

    /// Lets time pass.
    pub fn advance(&mut self, by: DrillTime) {
        let target = (self.now + by).min(self.scenario.ends_at);
        loop {
            let stop = self.stop();
            if stop > target {
                break;
            }
            self.commit(stop);
            self.fire_due();
            if self.committed.millis().is_multiple_of(SAMPLE_MS) {
                self.record(What::Sampled);
            }
        }
        self.now = target;
        self.run.ended_at = self.now;
    }

    /// Lets time pass until something happens, `at_most` at the longest.
    pub fn advance_to_event(&mut self, at_most: DrillTime) {
        let target = (self.now + at_most).min(self.scenario.ends_at);
        let seen = self.trace.events().count();
        while self.now < target && self.trace.events().count() == seen {
            let step = self.stop().since(self.now).min(target.since(self.now));
            self.advance(step);
        }
    }

    /// Does an action that takes its usual time.
    pub fn act(&mut self, action: &Action) -> Outcome {
        let takes = duration(self.site(), action);
        self.advance(takes);
        self.apply(action)
    }

    /// Does an action whose effect comes at this instant of the drill clock, or now if that is past.
    pub fn act_at(&mut self, at: DrillTime, action: &Action) -> Outcome {
        self.advance(at.since(self.now));
        self.apply(action)
    }

    /// Commits what has drifted and records how things stand: the last moment of a run.
    pub fn end(&mut self) {
        let now = self.now;
        self.commit(now);
        self.fire_due();
        self.run.ended_at = now;
        self.record(What::Sampled);
    }

    fn apply(&mut self, action: &Action) -> Outcome {
        if self.over() {
            return Outcome::Over;
        }
        let now = self.now;
        self.commit(now);
        self.run.actions.push(Timed {
            at: now,
            action: action.clone(),
        });
        self.perform(action)
    }

    /// The instant up to which state is committed.
    pub(super) fn committed_at(&self) -> DrillTime {
        self.committed
    }

    /// The next instant at which state is committed, asked once for each committed state.
    fn stop(&mut self) -> DrillTime {
        let stop = self.stop.unwrap_or_else(|| self.next_stop());
        self.stop = Some(stop);
        stop
    }

    /// Lets state drift to an instant and commits it.
    fn commit(&mut self, at: DrillTime) {
        self.stop = None;
        let seconds = at.since(self.committed).seconds();
        if seconds > 0.0 {
            let site = Arc::clone(&self.scenario.site);
            self.conditions
                .drift(&site, &self.positions, &self.readings, seconds);
        }
        self.committed = at;
        self.now = self.now.max(at);
    }

    /// Asks the solver anew.
    pub(super) fn read(&mut self, angle_deg: f64) {
        let readings = self.read_at(angle_deg);
        self.readings = Arc::new(readings);
    }

    /// Tells the solver how warm the cords are, and which of them have shorted.
    pub(super) fn solve_cords(&mut self) {
        let states = self.conditions.cord_states();
        self.plant.set_cords(&self.scenario.site, &states);
    }

    /// What the solver would say at this angle between the sources.
    pub(super) fn read_at(&mut self, angle_deg: f64) -> Readings {
        let loads = self.load_states();
        let drive = Drive {
            running: self.conditions.engine.running_since.is_some()
                && self.site().generator.machine.lets_out(&self.positions),
            angle_deg,
            slow: self.conditions.machine.slow,
            battery: self.conditions.battery.carries,
            solar_w: self.conditions.solar.watts,
            charge_w: self.charge_w(),
        };
        let body = Body {
            touching: self.crew_touches(),
        };
        self.plant
            .read(&self.scenario.site, &self.positions, &loads, drive, body)
    }

    /// What a hand on a frame meets as things stand, by the frame's name.
    pub(super) fn touch_frame(&mut self, frame: &str) -> Option<Felt> {
        self.read(self.angle_deg());
        self.plant.touch_frame(frame)
    }

    /// Records a moment.
    pub(super) fn record(&mut self, what: What) {
        self.trace.moments.push(Moment {
            at: self.committed,
            what,
            positions: self.positions.clone(),
            readings: Arc::clone(&self.readings),
            conditions: Arc::new(self.conditions.clone()),
        });
    }

    /// Records that something happened.
    pub(super) fn happen(&mut self, event: Event) {
        self.record(What::Happened(event));
    }
}
