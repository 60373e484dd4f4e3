//! What of a home gas and fuel reach besides its air: the alarm, those who sleep, the home next door, the can of fuel.
//!
//! Plain data of what is built; the gas itself is in `hazard::air`, and how long an alarm takes in `hazard::monoxide`.
//! Not covered: more than one alarm, rooms of one home that are shut off from each other, people who wake by themselves.

use super::control::{ControlId, Positions};
use super::parts::Site;

/// What gas and fuel reach in and around a home.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Indoors {
    /// The carbon monoxide alarm that can be handled: `no-battery`, `silenced`, `tested`; without one it works by itself.
    pub alarm: Option<ControlId>,
    /// People who have to be woken and led out, each by themselves.
    pub people: Vec<Person>,
    /// The home next door.
    pub next_door: Option<NextDoor>,
    /// The can of fuel.
    pub can: Option<FuelCan>,
}

/// Somebody who sleeps in the house.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Person {
    /// Name, which is also that of the control.
    pub name: String,
    /// Where they are: `asleep` in the house, `outside`.
    pub control: ControlId,
}

/// A home wall to wall with this one: one well-mixed room of its own.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct NextDoor {
    /// Its air, cubic meters.
    pub air_m3: f64,
    /// Air changes an hour with its window open, as it stands.
    pub changes_per_h: f64,
}

/// The can of fuel and the places where it can be kept.
#[derive(Debug, Clone, PartialEq)]
pub struct FuelCan {
    /// Where it stands.
    pub control: ControlId,
    /// The rooms of those positions that are indoors; `None` for those in the open or in a shed.
    pub rooms: Vec<Option<CanRoom>>,
}

/// A room in which a can of fuel can stand.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CanRoom {
    /// Its floor, square meters.
    pub floor_m2: f64,
    /// Whether a pilot light or a burner is in it.
    pub flame: bool,
}

impl Site {
    /// Whether the carbon monoxide alarm can sound.
    pub fn alarm_works(&self, positions: &Positions) -> bool {
        let alarm = self.indoors.alarm;
        alarm.is_none_or(|id| self.stands(positions, id, "tested"))
    }

    /// Whether those who are awake are in the house.
    pub fn household_inside(&self, positions: &Positions) -> bool {
        let household = self.control_id("household");
        household.is_none_or(|id| self.stands(positions, id, "inside"))
    }

    /// How many people are in the house: those who are awake count as one.
    pub fn n_inside(&self, positions: &Positions) -> usize {
        let people = self.indoors.people.iter();
        let asleep = people.filter(|p| !self.stands(positions, p.control, "outside"));
        asleep.count() + usize::from(self.household_inside(positions))
    }

    /// The room in which the can of fuel stands, if it stands indoors.
    pub fn fuel_room(&self, positions: &Positions) -> Option<CanRoom> {
        let can = self.indoors.can.as_ref()?;
        let at = usize::from(positions.get(can.control).0);
        can.rooms.get(at).copied().flatten()
    }
}
