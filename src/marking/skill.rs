//! The skill that each rule asks for: what to practice after it was broken.
//!
//! This project's own list, as the outcomes of a course are; every rule has exactly one.

use crate::scenario::course::Outcome;

use super::finding::Rule;

impl Rule {
    /// The skill whose practice keeps it from being broken.
    pub fn skill(self) -> Outcome {
        match self {
            Self::LineFed | Self::Shock | Self::LiveBlades => Outcome::Isolate,
            Self::NoTransferEquipment | Self::SaidFit | Self::WetPanel | Self::WrongVolts => {
                Outcome::Recognize
            }
            Self::Indoors | Self::TooNear | Self::GasNextDoor | Self::NoAlarm => {
                Outcome::PlaceEngine
            }
            Self::Gas | Self::Overcome | Self::StayedIn | Self::NotCalled => Outcome::Emergency,
            Self::Collision | Self::BlindReturn | Self::NotRestored | Self::NotBack => {
                Outcome::GoBack
            }
            Self::NothingBonds
            | Self::Touch
            | Self::GroundFault
            | Self::ResetIntoFault
            | Self::TwoBonds
            | Self::GroundCarries => Outcome::Grounding,
            Self::NotLockedOut | Self::CaughtByEngine | Self::LiveLugs | Self::HandTransferLive => {
                Outcome::LockOut
            }
            Self::NotTested
            | Self::TesterUnproved
            | Self::NotGrounded
            | Self::GroundsWrong
            | Self::NoVisibleBreak
            | Self::LiveEnd => Outcome::DeadLine,
            Self::GroundsLeft | Self::NotAsked => Outcome::Release,
            Self::PlugUnderLoad
            | Self::LivePlug
            | Self::WrongEndFirst
            | Self::CordHot
            | Self::CordFire
            | Self::PlugHot
            | Self::CordUnfit => Outcome::ChooseCords,
            Self::StartUnderLoad
            | Self::NotSettled
            | Self::NoCoolDown
            | Self::RanDry
            | Self::FuelIndoors
            | Self::FuelFire => Outcome::RunEngine,
            Self::AllAtOnce
            | Self::Overload
            | Self::TooSmallForMotor
            | Self::ShutOff
            | Self::Tripped
            | Self::FuseBlown
            | Self::Damaged
            | Self::Starved
            | Self::WireHot
            | Self::BatteryOverloaded
            | Self::BatterySpent
            | Self::GoalLate
            | Self::Lost => Outcome::ChooseLoads,
            Self::SunOnGenerator | Self::PushedBack | Self::SourcesMeet => Outcome::SecondSource,
            Self::SaidDead | Self::SaidWrong | Self::Unanswered => Outcome::ShowSource,
        }
    }
}
