//! The single steps of an automatic transfer controller, one function for each state that has more than a time to wait for.
//!
//! What it covers and what not is said in `auto_transfer`, which calls these.

use crate::units::DrillTime;

use super::auto_transfer::{
    Contacts, Controller, Fault, Mode, Order, Phase, Purpose, Sensed, State,
};

impl Controller {
    pub(super) fn switched_off(
        &self,
        state: State,
        sensed: Sensed,
        now: DrillTime,
    ) -> Option<State> {
        let healthy = sensed.utility_pu >= self.timers.back_pu;
        let at_rest = State {
            fault: None,
            ..state.ordering(Order::Stop)
        };
        match (state.phase, state.contacts) {
            (Phase::ToUtility, _) if now.since(state.since) >= self.timers.dead_gap => {
                Some(at_rest.to(Phase::Waiting, now).on(Contacts::Utility))
            }
            (Phase::ToUtility, _) => (at_rest != state).then_some(at_rest),
            (_, Contacts::Generator | Contacts::Open) if healthy => {
                Some(at_rest.to(Phase::ToUtility, now).on(Contacts::Open))
            }
            (Phase::Waiting, _) => (at_rest != state).then_some(at_rest),
            _ => Some(at_rest.to(Phase::Waiting, now)),
        }
    }

    pub(super) fn while_waiting(
        &self,
        state: State,
        wanted: bool,
        mode: Mode,
        now: DrillTime,
    ) -> Option<State> {
        // Switched off with the load left on a dead set, or on neither side: it is brought to the utility first.
        if state.contacts != Contacts::Utility && !wanted {
            return Some(state.to(Phase::ToUtility, now).on(Contacts::Open));
        }
        if mode == Mode::Test {
            return Some(Self::start(state, Purpose::Test, now));
        }
        if wanted {
            return Some(state.to(Phase::LossSeen, now));
        }
        // Due only if it began while the controller waited, so that one run is made of one time.
        let begun = self.exerciser.and_then(|e| e.running_since(now))?;
        (begun > state.since || begun == now).then(|| Self::start(state, Purpose::Exercise, now))
    }

    /// The loss didn't last.
    pub(super) fn stand_down(state: State, now: DrillTime) -> State {
        if state.order == Order::Run {
            state.to(Phase::CoolingDown, now)
        } else {
            state.to(Phase::Waiting, now)
        }
    }

    pub(super) fn start(state: State, purpose: Purpose, now: DrillTime) -> State {
        // A load left on a dead set is taken off it, so that the engine warms up without load.
        let contacts = match state.contacts {
            Contacts::Utility => Contacts::Utility,
            Contacts::Open | Contacts::Generator => Contacts::Open,
        };
        let state = State {
            purpose,
            contacts,
            fault: None,
            ..state
        };
        if state.order == Order::Run {
            state.to(Phase::WarmingUp, now)
        } else {
            state.to(Phase::StartDelay, now)
        }
    }

    pub(super) fn while_cranking(
        &self,
        state: State,
        attempt: u8,
        sensed: Sensed,
        now: DrillTime,
    ) -> Option<State> {
        if sensed.engine_runs {
            return Some(state.to(Phase::WarmingUp, now).ordering(Order::Run));
        }
        if now.since(state.since) < self.timers.crank {
            None
        } else if attempt < self.timers.attempts {
            Some(state.to(Phase::Resting(attempt), now).ordering(Order::Stop))
        } else {
            Some(Self::give_up(state, Fault::Overcrank, now))
        }
    }

    pub(super) fn while_warming_up(
        &self,
        state: State,
        mode: Mode,
        sensed: Sensed,
        now: DrillTime,
    ) -> Option<State> {
        let timers = &self.timers;
        let elapsed = now.since(state.since);
        let wanted = self.wanted(mode, sensed);
        if elapsed < timers.warm_up {
            return None;
        }
        if !wanted && state.contacts != Contacts::Utility {
            return Some(state.to(Phase::ToUtility, now).on(Contacts::Open));
        }
        if !wanted {
            let phase = if state.purpose == Purpose::Exercise {
                Phase::Exercising
            } else {
                Phase::CoolingDown
            };
            return Some(state.to(phase, now));
        }
        let ready =
            sensed.generator_pu >= timers.ready_pu && sensed.generator_hz >= timers.ready_hz;
        if ready {
            let purpose = Purpose::called(mode);
            let state = State { purpose, ..state };
            return Some(state.to(Phase::ToGenerator, now).on(Contacts::Open));
        }
        (elapsed >= timers.warm_up + timers.not_ready)
            .then(|| Self::give_up(state, Fault::NotReady, now))
    }

    pub(super) fn while_on_generator(
        &self,
        state: State,
        mode: Mode,
        sensed: Sensed,
        now: DrillTime,
    ) -> Option<State> {
        let tested =
            state.purpose != Purpose::Test || now.since(state.since) >= self.timers.test_at_least;
        let back = mode == Mode::Auto && sensed.utility_pu >= self.timers.back_pu && tested;
        back.then(|| state.to(Phase::BackSeen, now))
    }

    pub(super) fn going_back(&self, state: State, wanted: bool, now: DrillTime) -> Option<State> {
        let elapsed = now.since(state.since);
        if wanted {
            return Some(state.to(Phase::OnGenerator, now));
        }
        if state.phase == Phase::BackSeen {
            (elapsed >= self.timers.back_sense).then(|| state.to(Phase::RetransferDelay, now))
        } else {
            (elapsed >= self.timers.retransfer_delay)
                .then(|| state.to(Phase::ToUtility, now).on(Contacts::Open))
        }
    }

    pub(super) fn arrived_at_utility(state: State, now: DrillTime) -> State {
        let state = state.on(Contacts::Utility);
        match (state.fault, state.order) {
            (Some(fault), _) => state.to(Phase::Failed(fault), now),
            (None, Order::Run) => state.to(Phase::CoolingDown, now),
            (None, Order::Stop | Order::Crank) => state.to(Phase::Waiting, now),
        }
    }

    pub(super) fn while_exercising(
        &self,
        state: State,
        wanted: bool,
        now: DrillTime,
    ) -> Option<State> {
        if wanted {
            return Some(state.to(Phase::LossSeen, now));
        }
        let going_on = self.exerciser.and_then(|e| e.running_since(now)).is_some();
        (!going_on).then(|| state.to(Phase::CoolingDown, now))
    }

    /// The utility is taken at once if it is there: no delay protects a load that hangs on a dead set.
    pub(super) fn while_failed(
        &self,
        state: State,
        sensed: Sensed,
        now: DrillTime,
    ) -> Option<State> {
        let healthy = sensed.utility_pu >= self.timers.back_pu;
        (healthy && state.contacts != Contacts::Utility)
            .then(|| state.to(Phase::ToUtility, now).on(Contacts::Open))
    }

    pub(super) fn give_up(state: State, fault: Fault, now: DrillTime) -> State {
        State {
            fault: Some(fault),
            ..state.to(Phase::Failed(fault), now).ordering(Order::Stop)
        }
    }
}
