//! Questions about the controller of an automatic transfer switch.
//!
//! What `apparatus::auto_transfer` and `apparatus::transfer_timers` answer: times are read from the controller itself, played against an outage.

use serde::Deserialize;

use crate::apparatus::auto_transfer::{Contacts, Controller, Fault, Mode, Phase, State};
use crate::apparatus::auto_transfer_story::{Stretch, first, first_on, play};
use crate::apparatus::standby::SupplyType;
use crate::apparatus::transfer_timers::{Exerciser, LockOut, Timers};
use crate::units::DrillTime;

#[derive(Debug, Deserialize)]
pub(super) enum Ask {
    /// Seconds after the utility falls to so many volts per unit; infinite if it never comes.
    AfterLossS {
        table: Table,
        utility_pu: f64,
        until: Moment,
    },
    /// Seconds from the utility's return at so many volts per unit; infinite if it never comes.
    AfterReturnS {
        table: Table,
        utility_pu: f64,
        until: Moment,
    },
    /// Seconds from the utility's return to the load's, after the set has failed under load.
    AfterFailureS(Table),
    /// Seconds without load between the load's return and the stop of the engine.
    CoolDownS(Table),
    /// Seconds without load between the start of the engine and its load.
    WarmUpS(Table),
    /// Seconds that a test leaves the load on the set.
    TestS(Table),
    /// Seconds until it gives up an engine that doesn't catch, from the first turn.
    OvercrankS(Table),
    /// The longest gap of the strictest type that the supply meets, seconds.
    SupplyTypeS(Table),
    ExerciseS,
    ExerciseEveryS,
    ExerciseLeastPercent,
    /// Of the three (controller off, breaker open, battery off), with how many a set is safe for hands at least.
    LockOutSteps,
}

#[derive(Debug, Clone, Copy, Deserialize)]
pub(super) enum Table {
    Home,
    Nfpa110,
}

#[derive(Debug, Clone, Copy, Deserialize)]
pub(super) enum Moment {
    FirstCrank,
    LoadOnGenerator,
    BackBelieved,
    LoadOnUtility,
}

/// An hour of story is longer than any of the times asked for but the return's.
const HOUR: DrillTime = DrillTime::from_secs(3600);
/// The engine catches three seconds after the starter begins to turn: a household engine in order.
const CATCHES: DrillTime = DrillTime::from_secs(3);

impl Ask {
    pub(super) fn ours(&self) -> f64 {
        self.seconds().unwrap_or(f64::INFINITY)
    }

    /// What the controller takes; `None` for what never comes.
    fn seconds(&self) -> Option<f64> {
        match self {
            Self::AfterLossS {
                table,
                utility_pu,
                until,
            } => {
                let states = table.play(&[stretch(1, *utility_pu, true)]);
                until.first(&states).map(DrillTime::seconds)
            }
            Self::AfterReturnS {
                table,
                utility_pu,
                until,
            } => {
                let states = table.play(&[stretch(1, 0.0, true), stretch(3, *utility_pu, true)]);
                let at = until.first(&states)?;
                Some(at.since(HOUR).seconds())
            }
            Self::AfterFailureS(table) => {
                let failing = stretch(2, 0.0, false);
                let states = table.play(&[stretch(1, 0.0, true), failing, stretch(3, 1.0, false)]);
                let back = states.iter().rfind(|s| s.contacts == Contacts::Utility)?;
                Some(back.since.since(failing.until).seconds())
            }
            Self::CoolDownS(table) => {
                let states = table.play(&[stretch(1, 0.0, true), stretch(3, 1.0, true)]);
                let cooling = first(&states, Phase::CoolingDown)?;
                Some(first(&states, Phase::Waiting)?.since(cooling).seconds())
            }
            Self::WarmUpS(table) => {
                let states = table.play(&[stretch(1, 0.0, true)]);
                let warming = first(&states, Phase::WarmingUp)?;
                Some(first(&states, Phase::ToGenerator)?.since(warming).seconds())
            }
            Self::TestS(table) => {
                let test = Stretch {
                    until: DrillTime::from_secs(60),
                    mode: Mode::Test,
                    ..stretch(1, 1.0, true)
                };
                let states = table.play(&[test, stretch(3, 1.0, true)]);
                let on = first(&states, Phase::OnGenerator)?;
                Some(first(&states, Phase::ToUtility)?.since(on).seconds())
            }
            Self::OvercrankS(table) => {
                let states = table.play(&[stretch(1, 0.0, false)]);
                let begun = first(&states, Phase::Cranking(1))?;
                let given_up = first(&states, Phase::Failed(Fault::Overcrank))?;
                Some(given_up.since(begun).seconds())
            }
            Self::SupplyTypeS(table) => {
                let states = table.play(&[stretch(1, 0.0, true)]);
                let dead_s = first_on(&states, Contacts::Generator)?.seconds();
                Some(SupplyType::of(dead_s).most_s())
            }
            Self::ExerciseS => Some(Exerciser::NFPA_110.lasts.seconds()),
            Self::ExerciseEveryS => Some(Exerciser::NFPA_110.every.seconds()),
            Self::ExerciseLeastPercent => Some(f64::from(Exerciser::NFPA_110.least_load_pct)),
            Self::LockOutSteps => Some(lock_out_steps()),
        }
    }
}

/// Until this hour of the story, with the switch on auto.
fn stretch(until_h: u64, utility_pu: f64, engine_sound: bool) -> Stretch {
    Stretch {
        until: DrillTime::from_secs(3600 * until_h),
        mode: Mode::Auto,
        utility_pu,
        engine_sound,
    }
}

fn lock_out_steps() -> f64 {
    let every = (0..8_u8).map(|bits| {
        let lock_out = LockOut {
            controller_off: bits & 1 != 0,
            breaker_open: bits & 2 != 0,
            battery_off: bits & 4 != 0,
        };
        (lock_out, bits.count_ones())
    });
    let safe = every.filter(|(lock_out, _)| lock_out.safe_for_service());
    safe.map(|(_, steps)| f64::from(steps))
        .fold(f64::INFINITY, f64::min)
}

impl Table {
    fn play(self, story: &[Stretch]) -> Vec<State> {
        let timers = match self {
            Self::Home => Timers::HOME,
            Self::Nfpa110 => Timers::NFPA_110,
        };
        let controller = Controller {
            timers,
            exerciser: None,
        };
        play(controller, story, CATCHES, HOUR)
    }
}

impl Moment {
    fn first(self, states: &[State]) -> Option<DrillTime> {
        match self {
            Self::FirstCrank => first(states, Phase::Cranking(1)),
            Self::LoadOnGenerator => first(states, Phase::OnGenerator),
            Self::BackBelieved => first(states, Phase::RetransferDelay),
            Self::LoadOnUtility => first(states, Phase::CoolingDown),
        }
    }
}
