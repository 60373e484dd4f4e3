//! The controller of an automatic transfer switch: a machine of states that looks at both sources and a clock.
//!
//! It senses the loss, starts the engine in a few attempts, lets it come up, takes the load over with a gap in which the load hangs on neither side, waits for the utility, goes back, cools the engine down and stops it.
//! Its contacts stand on one side or on neither; that they could be on both has no value here.
//! Time is whole milliseconds and every state knows when it ends, so asking more often changes nothing: a test says so.
//! Times and thresholds are the table's of `transfer_timers`.
//! Not covered: closed transition, load shedding, a watch on the set's volts once it carries load (its breaker does that).

use crate::units::DrillTime;

use super::transfer_timers::{Exerciser, Timers};

/// How the controller's switch stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Mode {
    /// It does what it is there for.
    Auto,
    /// It starts nothing, and stops what runs.
    Off,
    /// It acts as if the utility were lost.
    Test,
}

/// Which side the load hangs on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Contacts {
    /// On the utility.
    Utility,
    /// On neither.
    Open,
    /// On the set.
    Generator,
}

/// What the engine is told.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Order {
    /// Stand still.
    Stop,
    /// The starter turns.
    Crank,
    /// Run.
    Run,
}

/// Why it gave up.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Fault {
    /// The engine didn't catch in all its attempts.
    Overcrank,
    /// The engine stopped by itself.
    Stopped,
    /// It ran, but its volts or its speed never came up.
    NotReady,
}

/// Why it runs the engine.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Purpose {
    /// The utility is lost.
    Outage,
    /// Somebody switched it to test.
    Test,
    /// It is time for exercise.
    Exercise,
}

/// What the controller is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Phase {
    /// All is well, the load is on the utility.
    Waiting,
    /// The utility is lost; it is waiting whether it stays so.
    LossSeen,
    /// It has decided to start.
    StartDelay,
    /// The starter turns, in the attempt of this number, from 1.
    Cranking(u8),
    /// The starter rests after the attempt of this number.
    Resting(u8),
    /// The engine runs without load.
    WarmingUp,
    /// The contacts are on their way to the set.
    ToGenerator,
    /// The load is on the set.
    OnGenerator,
    /// The utility is back; it is waiting whether it stays so.
    BackSeen,
    /// The utility is back for good; the load stays on the set for a while.
    RetransferDelay,
    /// The contacts are on their way to the utility.
    ToUtility,
    /// The engine runs without load before it stops.
    CoolingDown,
    /// The engine runs for exercise.
    Exercising,
    /// It gave up and waits for somebody to switch it off and on.
    Failed(Fault),
}

/// Where the controller stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct State {
    /// What it is about.
    pub phase: Phase,
    /// Since when.
    pub since: DrillTime,
    /// Where its contacts are.
    pub contacts: Contacts,
    /// What the engine is told.
    pub order: Order,
    /// Why it runs the engine; without meaning while it doesn't.
    pub purpose: Purpose,
    /// What it gave up for, kept while the contacts go back.
    pub fault: Option<Fault>,
}

/// What the controller sees.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sensed {
    /// The utility's volts, per unit.
    pub utility_pu: f64,
    /// The set's volts, per unit.
    pub generator_pu: f64,
    /// The set's frequency, hertz.
    pub generator_hz: f64,
    /// Whether the engine runs by itself.
    pub engine_runs: bool,
}

/// A controller.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Controller {
    /// Its times and thresholds.
    pub timers: Timers,
    /// Its exerciser, if it has one.
    pub exerciser: Option<Exerciser>,
}

impl Purpose {
    /// Why it starts when the utility is lost or its switch says so.
    pub(super) fn called(mode: Mode) -> Self {
        if mode == Mode::Test {
            Self::Test
        } else {
            Self::Outage
        }
    }
}

impl State {
    /// The load on the utility and the engine at rest.
    pub const BEGIN: Self = Self {
        phase: Phase::Waiting,
        since: DrillTime::ZERO,
        contacts: Contacts::Utility,
        order: Order::Stop,
        purpose: Purpose::Outage,
        fault: None,
    };

    pub(super) fn to(self, phase: Phase, now: DrillTime) -> Self {
        Self {
            phase,
            since: now,
            ..self
        }
    }

    pub(super) fn ordering(self, order: Order) -> Self {
        Self { order, ..self }
    }

    pub(super) fn on(self, contacts: Contacts) -> Self {
        Self { contacts, ..self }
    }
}

impl Default for State {
    fn default() -> Self {
        Self::BEGIN
    }
}

impl Controller {
    /// Where it goes from a state at once, `None` if it stays.
    /// Ask again until it stays: a state of no length is passed at the same instant.
    pub fn next(&self, state: State, mode: Mode, sensed: Sensed, now: DrillTime) -> Option<State> {
        if mode == Mode::Off {
            return self.switched_off(state, sensed, now);
        }
        let timers = &self.timers;
        let elapsed = now.since(state.since);
        let wanted = self.wanted(mode, sensed);
        match state.phase {
            Phase::Waiting => self.while_waiting(state, wanted, mode, now),
            Phase::LossSeen if !wanted => Some(Self::stand_down(state, now)),
            Phase::LossSeen => (elapsed >= timers.sense || mode == Mode::Test)
                .then(|| Self::start(state, Purpose::called(mode), now)),
            Phase::StartDelay => (elapsed >= timers.start_delay)
                .then(|| state.to(Phase::Cranking(1), now).ordering(Order::Crank)),
            Phase::Cranking(attempt) => self.while_cranking(state, attempt, sensed, now),
            Phase::Resting(attempt) => (elapsed >= timers.rest).then(|| {
                state
                    .to(Phase::Cranking(attempt + 1), now)
                    .ordering(Order::Crank)
            }),
            Phase::WarmingUp
            | Phase::OnGenerator
            | Phase::BackSeen
            | Phase::RetransferDelay
            | Phase::CoolingDown
            | Phase::Exercising
            | Phase::ToGenerator
                if !sensed.engine_runs =>
            {
                Some(Self::give_up(state, Fault::Stopped, now))
            }
            Phase::WarmingUp => self.while_warming_up(state, mode, sensed, now),
            Phase::ToGenerator => (elapsed >= timers.dead_gap)
                .then(|| state.to(Phase::OnGenerator, now).on(Contacts::Generator)),
            Phase::OnGenerator => self.while_on_generator(state, mode, sensed, now),
            Phase::BackSeen | Phase::RetransferDelay => self.going_back(state, wanted, now),
            Phase::ToUtility => {
                (elapsed >= timers.dead_gap).then(|| Self::arrived_at_utility(state, now))
            }
            Phase::CoolingDown if wanted => Some(state.to(Phase::LossSeen, now)),
            Phase::CoolingDown => (elapsed >= timers.cool_down)
                .then(|| state.to(Phase::Waiting, now).ordering(Order::Stop)),
            Phase::Exercising => self.while_exercising(state, wanted, now),
            Phase::Failed(_) => self.while_failed(state, sensed, now),
        }
    }

    /// Whether the load is wanted on the set.
    pub(super) fn wanted(&self, mode: Mode, sensed: Sensed) -> bool {
        mode == Mode::Test || sensed.utility_pu < self.timers.loss_pu
    }

    /// When it has to be asked again although nothing it sees changes.
    pub fn deadline(&self, state: State, mode: Mode, now: DrillTime) -> Option<DrillTime> {
        let timers = &self.timers;
        let after = |length: DrillTime| Some(state.since + length);
        let due = match state.phase {
            _ if mode == Mode::Off && state.phase != Phase::ToUtility => None,
            Phase::Waiting => self.exerciser.map(|e| e.next_after(now)),
            Phase::LossSeen => after(timers.sense),
            Phase::StartDelay => after(timers.start_delay),
            Phase::Cranking(_) => after(timers.crank),
            Phase::Resting(_) => after(timers.rest),
            Phase::WarmingUp => {
                let warm = state.since + timers.warm_up;
                Some(if warm > now {
                    warm
                } else {
                    warm + timers.not_ready
                })
            }
            Phase::ToGenerator | Phase::ToUtility => after(timers.dead_gap),
            Phase::OnGenerator if state.purpose == Purpose::Test => after(timers.test_at_least),
            Phase::BackSeen => after(timers.back_sense),
            Phase::RetransferDelay => after(timers.retransfer_delay),
            Phase::CoolingDown => after(timers.cool_down),
            Phase::Exercising => self
                .exerciser
                .and_then(|e| e.running_since(now).map(|begun| begun + e.lasts)),
            Phase::OnGenerator | Phase::Failed(_) => None,
        };
        due.filter(|at| *at > now)
    }
}
