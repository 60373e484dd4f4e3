//! A drill in progress: actions in, events out, on one event-driven clock.
//!
//! State is committed at actions, at events and at whole seconds counted from the start, never at a frame.
//! So advancing by *a* and then by *b* gives the same bits as advancing by *a + b*.
//! Covers one house and its line; doesn't cover several learners at once.

mod action;
mod air;
mod auto_transfer;
mod collision;
mod conditions;
mod cords;
mod engine;
mod event;
mod foresee;
mod indoors;
mod known;
mod line_work;
mod machine;
mod next;
mod one_by_one;
mod protection;
mod run;
mod second_source;
mod settle;
mod signed;
mod stored;
mod story;
mod sun;
mod touch;
mod trace;
mod turn;
mod wires;
mod world;

pub use action::{
    Action, CALLEES, Callee, Expected, LISTENERS, Line, Listener, NotAnAction, SIGHTS, Sight,
    duration, parse_clock, parse_length, parse_line, write_action,
};
pub use air::GasFlow;
pub use conditions::{
    AMBIENT_C, ApplianceCondition, Conditions, EngineCondition, Joined, OVERCOME_PCT, Phase,
};
pub use cords::{CordCondition, CordHarm, Fate};
pub use engine::{Drill, Outcome};
pub use event::Event;
pub use indoors::{IndoorsCondition, IndoorsEvent, NextDoorCondition, PersonCondition};
pub use known::{Known, Learnt};
pub use line_work::{LineCondition, LineEvent};
pub use machine::{MachineCondition, MachineEvent};
pub use next::whole_millis;
pub use one_by_one::{BroughtOn, OneByOne, TooMuch};
pub use protection::{Astray, ProtectionEvent};
pub use run::{Beside, Practice, Run, Timed};
pub use second_source::{BatteryCondition, Follows, SolarCondition, SourceEvent};
pub use signed::{Seated, Signed};
pub use story::{event_of, take_place};
pub use touch::{Metal, Touched};
pub use trace::{Moment, Trace, What};
pub use turn::{TURNS, Turn};
pub use wires::WALL_C;
