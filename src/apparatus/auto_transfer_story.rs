//! A controller played against a made-up story of the utility, its switch and an engine: what its times add up to.
//!
//! Serves the comparison with published times and the laws of the controller; in a drill the engine and the utility are the drill's own.
//! The engine here catches after a given time of cranking, if it is sound, and its volts and hertz are right as soon as it runs.

use crate::units::DrillTime;

use super::auto_transfer::{Contacts, Controller, Mode, Order, Phase, Sensed, State};

/// A stretch of a story.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stretch {
    /// Until when.
    pub until: DrillTime,
    /// How the controller's switch stands.
    pub mode: Mode,
    /// The utility's volts, per unit.
    pub utility_pu: f64,
    /// Whether the engine can run.
    pub engine_sound: bool,
}

/// Every state that a controller enters in a story, in order, from the load on the utility and the engine at rest.
///
/// The engine catches `catches` after the starter begins to turn.
/// It is asked at each change, at each of its deadlines, and at whole multiples of `poll` besides, which changes nothing.
pub fn play(
    controller: Controller,
    story: &[Stretch],
    catches: DrillTime,
    poll: DrillTime,
) -> Vec<State> {
    let mut state = State::BEGIN;
    let mut now = DrillTime::ZERO;
    let mut entered = Vec::new();
    let poll_ms = poll.millis().max(1);
    for stretch in story {
        while now < stretch.until {
            let sensed = stretch.sensed(state, catches, now);
            if let Some(next) = controller.next(state, stretch.mode, sensed, now) {
                state = next;
                entered.push(state);
                continue;
            }
            let caught = (state.order == Order::Crank).then(|| state.since + catches);
            let polled = DrillTime::from_millis((now.millis() / poll_ms + 1) * poll_ms);
            now = [
                controller.deadline(state, stretch.mode, now),
                caught,
                Some(polled),
            ]
            .into_iter()
            .flatten()
            .filter(|at| *at > now)
            .fold(stretch.until, DrillTime::min);
        }
    }
    entered
}

/// When a phase was entered first.
pub fn first(states: &[State], phase: Phase) -> Option<DrillTime> {
    states.iter().find(|s| s.phase == phase).map(|s| s.since)
}

/// When the contacts came to a side first.
pub fn first_on(states: &[State], contacts: Contacts) -> Option<DrillTime> {
    states
        .iter()
        .find(|s| s.contacts == contacts)
        .map(|s| s.since)
}

impl Stretch {
    fn sensed(&self, state: State, catches: DrillTime, now: DrillTime) -> Sensed {
        let cranked = state.order == Order::Crank && now.since(state.since) >= catches;
        let engine_runs = self.engine_sound && (cranked || state.order == Order::Run);
        let pu = if engine_runs { 1.0 } else { 0.0 };
        Sensed {
            utility_pu: self.utility_pu,
            generator_pu: pu,
            generator_hz: 60.0 * pu,
            engine_runs,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::apparatus::auto_transfer::Fault;
    use crate::apparatus::transfer_timers::{Exerciser, Timers};

    /// Until when in ms, the switch, the utility's volts, whether the engine can run.
    type Line = (u64, Mode, f64, bool);

    const HOME: Controller = Controller {
        timers: Timers::HOME,
        exerciser: None,
    };

    fn second(seconds: u64) -> DrillTime {
        DrillTime::from_secs(seconds)
    }

    /// Played with an engine that catches after two seconds.
    fn play(controller: Controller, lines: &[Line], poll_ms: u64) -> Vec<State> {
        let story: Vec<Stretch> = lines
            .iter()
            .map(|(until_ms, mode, utility_pu, engine_sound)| Stretch {
                until: DrillTime::from_millis(*until_ms),
                mode: *mode,
                utility_pu: *utility_pu,
                engine_sound: *engine_sound,
            })
            .collect();
        let states = super::play(
            controller,
            &story,
            second(2),
            DrillTime::from_millis(poll_ms),
        );
        let mut before = State::BEGIN;
        for state in &states {
            let moved = before.contacts != state.contacts;
            assert!(
                !moved || [before.contacts, state.contacts].contains(&Contacts::Open),
                "from side to side without a gap: {before:?} to {state:?}"
            );
            before = *state;
        }
        states
    }

    fn when(states: &[State], phase: Phase) -> Option<DrillTime> {
        first(states, phase)
    }

    fn outage(until_ms: u64, end_ms: u64) -> Vec<Line> {
        vec![
            (5_000, Mode::Auto, 1.0, true),
            (until_ms, Mode::Auto, 0.0, true),
            (end_ms, Mode::Auto, 1.0, true),
        ]
    }

    #[test]
    fn an_outage_is_bridged_and_ends_where_it_began() {
        let states = play(HOME, &outage(600_000, 900_000), 1000);
        let at = |phase| when(&states, phase).unwrap().millis();
        assert_eq!(at(Phase::LossSeen), 5_000);
        assert_eq!(at(Phase::Cranking(1)), 15_000);
        assert_eq!(at(Phase::WarmingUp), 17_000);
        assert_eq!(at(Phase::ToGenerator), 27_000);
        assert_eq!(at(Phase::OnGenerator), 27_100, "a gap of 0.1 s");
        assert_eq!(at(Phase::BackSeen), 600_000);
        assert_eq!(at(Phase::ToUtility), 615_000);
        assert_eq!(at(Phase::CoolingDown), 615_100);
        let last = states.last().unwrap();
        assert_eq!((last.phase, last.since.millis()), (Phase::Waiting, 675_100));
        assert_eq!(
            (last.contacts, last.order),
            (Contacts::Utility, Order::Stop)
        );
    }

    #[test]
    fn asking_more_often_changes_nothing() {
        let story = outage(600_000, 900_000);
        let seldom = play(HOME, &story, 1_000_000);
        for poll in [1000, 700, 37] {
            assert_eq!(play(HOME, &story, poll), seldom, "asked every {poll} ms");
        }
    }

    #[test]
    fn a_flicker_starts_nothing() {
        let states = play(HOME, &outage(12_000, 60_000), 1000);
        assert_eq!(when(&states, Phase::StartDelay), None);
        assert_eq!(states.last().unwrap().phase, Phase::Waiting);
        assert!(states.iter().all(|s| s.order == Order::Stop));
    }

    #[test]
    fn a_utility_that_is_back_before_the_load_is_moved_keeps_it() {
        let states = play(HOME, &outage(20_000, 200_000), 1000);
        assert!(states.iter().all(|s| s.contacts == Contacts::Utility));
        assert_eq!(when(&states, Phase::CoolingDown).unwrap(), second(27));
    }

    #[test]
    fn an_engine_that_never_catches_is_given_up_with_the_load_where_it_was() {
        let story = [
            (1000, Mode::Auto, 1.0, true),
            (600_000, Mode::Auto, 0.0, false),
        ];
        let states = play(HOME, &story, 1000);
        let failed = states.last().unwrap();
        assert_eq!(failed.phase, Phase::Failed(Fault::Overcrank));
        assert_eq!(failed.since, second(1 + 10 + 5 * 15 + 4 * 10));
        assert_eq!(
            (failed.contacts, failed.order),
            (Contacts::Utility, Order::Stop)
        );
    }

    #[test]
    fn a_set_that_dies_gives_the_load_back_as_soon_as_the_utility_is_there() {
        let nfpa = Controller {
            timers: Timers::NFPA_110,
            exerciser: None,
        };
        let story = [
            (1_000, Mode::Auto, 1.0, true),
            (100_000, Mode::Auto, 0.0, true),
            (200_000, Mode::Auto, 0.0, false),
            (300_000, Mode::Auto, 1.0, false),
        ];
        let states = play(nfpa, &story, 1000);
        assert_eq!(
            when(&states, Phase::Failed(Fault::Stopped)),
            Some(second(100))
        );
        assert_eq!(
            when(&states, Phase::ToUtility),
            Some(second(200)),
            "no 30 minutes of delay"
        );
        let last = states.last().unwrap();
        assert_eq!(
            (last.phase, last.contacts),
            (Phase::Failed(Fault::Stopped), Contacts::Utility)
        );
    }

    #[test]
    fn a_set_that_is_started_again_warms_up_without_the_load_it_had() {
        let story = [
            (1_000, Mode::Auto, 1.0, true),
            (100_000, Mode::Auto, 0.0, true),
            (150_000, Mode::Auto, 0.0, false),
            (160_000, Mode::Off, 0.0, false),
            (175_000, Mode::Auto, 0.0, true),
            (300_000, Mode::Auto, 1.0, true),
        ];
        let states = play(HOME, &story, 1000);
        let again = states.iter().filter(|s| s.since >= second(160));
        assert!(again.clone().count() > 3);
        for state in again {
            assert!(
                state.phase != Phase::WarmingUp || state.contacts == Contacts::Open,
                "{state:?}"
            );
        }
        assert_eq!(states.last().unwrap().contacts, Contacts::Utility);
    }

    #[test]
    fn switched_off_it_stops_the_engine_and_starts_nothing_even_in_an_outage() {
        let story = [
            (1_000, Mode::Auto, 1.0, true),
            (100_000, Mode::Auto, 0.0, true),
            (200_000, Mode::Off, 0.0, true),
            (300_000, Mode::Off, 1.0, true),
        ];
        let states = play(HOME, &story, 1000);
        let off: Vec<&State> = states.iter().filter(|s| s.since >= second(100)).collect();
        assert!(off.iter().all(|s| s.order == Order::Stop));
        assert_eq!(
            off.last().unwrap().contacts,
            Contacts::Utility,
            "back once it is there"
        );
        let dark = [(500_000, Mode::Off, 0.0, true)];
        assert!(play(HOME, &dark, 1000).is_empty());
    }

    #[test]
    fn a_test_moves_the_load_and_gives_it_back_after_its_shortest_time() {
        let nfpa = Controller {
            timers: Timers::NFPA_110,
            exerciser: None,
        };
        let story = [
            (1_000, Mode::Auto, 1.0, true),
            (60_000, Mode::Test, 1.0, true),
            (5_000_000, Mode::Auto, 1.0, true),
        ];
        let states = play(nfpa, &story, 1000);
        let moved = when(&states, Phase::OnGenerator).unwrap();
        let back = when(&states, Phase::BackSeen).unwrap();
        assert_eq!(back.since(moved), second(1200));
        assert_eq!(states.last().unwrap().phase, Phase::Waiting);
    }

    #[test]
    fn an_outage_shorter_than_a_test_is_not_held_to_its_time() {
        let nfpa = Controller {
            timers: Timers::NFPA_110,
            exerciser: None,
        };
        let states = play(nfpa, &outage(60_000, 120_000), 1000);
        assert_eq!(when(&states, Phase::BackSeen), Some(second(60)));
    }

    #[test]
    fn exercise_runs_the_engine_without_moving_the_load_once_each_time() {
        let controller = Controller {
            exerciser: Some(Exerciser {
                first: second(100),
                every: second(1000),
                lasts: second(300),
                least_load_pct: 0,
            }),
            ..HOME
        };
        let states = play(controller, &[(2_000_000, Mode::Auto, 1.0, true)], 1000);
        let begun = states.iter().filter(|s| s.phase == Phase::Exercising);
        assert_eq!(begun.count(), 2);
        assert!(states.iter().all(|s| s.contacts == Contacts::Utility));
        assert_eq!(when(&states, Phase::CoolingDown), Some(second(400)));
        let lost = [
            (200_000, Mode::Auto, 1.0, true),
            (400_000, Mode::Auto, 0.0, true),
        ];
        let states = play(controller, &lost, 1000);
        let moved = when(&states, Phase::ToGenerator).unwrap();
        assert_eq!(
            moved,
            second(200 + 10 + 10),
            "it runs already, so it needs no start"
        );
    }
}
