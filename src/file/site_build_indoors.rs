//! From a site file to what gas and fuel reach indoors: the alarm, those who sleep, the home next door, the can of fuel, the window that cords pass.
//!
//! Everything here may be left out: an alarm that nobody handles works, and nobody sleeps.
//! Not covered: more than one alarm, a can that is moved by others.

use serde::Deserialize;

use crate::site::{CanRoom, Cord, FuelCan, Indoors, Kind, NextDoor, Person, Spot};

use super::site_build::Build;
use super::site_file::AirFile;

/// What an alarm is like.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Deserialize)]
pub(super) enum AlarmFile {
    /// It works, and nobody handles it.
    #[default]
    BuiltIn,
    /// It takes a battery and can be silenced.
    Battery,
}

#[derive(Debug, Clone, Copy, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct NextDoorFile {
    /// Air in it, cubic meters.
    cubic_meters: f64,
    /// Air changes an hour.
    changes_per_hour: f64,
}

/// A place where the can of fuel can be kept.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct CanPlaceFile {
    /// Name, small letters and hyphens.
    name: String,
    /// The floor of the room; outdoors or in a shed of its own when left out.
    #[serde(default)]
    floor_square_meters: Option<f64>,
    /// Whether a pilot light or a burner is in it.
    #[serde(default)]
    flame: bool,
}

impl Build<'_> {
    /// The window, which may let cords through, and the people who are awake.
    pub(super) fn window(&mut self, file: &AirFile, cords: &[Cord]) {
        let positions: &[&str] = if file.window_takes_cords {
            &["shut", "open", "sealed"]
        } else {
            &["shut", "open"]
        };
        let f = &mut self.furnishing;
        let window = f.add("window", Kind::Opening, positions, "house", 0);
        for cord in cords.iter().filter(|_| file.window_takes_cords) {
            for (position, spot) in (0_u8..).zip(&cord.near_spots) {
                if matches!(spot, Spot::Receptacle(_)) {
                    f.not_both((cord.near, position), (window, 0), "refused-window-cord");
                }
            }
        }
    }

    /// Checks what a file says of those indoors, and builds it.
    pub(super) fn indoors(&mut self, file: &AirFile) -> Indoors {
        let f = &mut self.furnishing;
        let alarm = (file.alarm == AlarmFile::Battery).then(|| {
            let positions = ["no-battery", "silenced", "tested"];
            f.add("gas-alarm", Kind::Switch, &positions, "house", 2)
        });
        let people = file.sleepers.iter().map(|name| Person {
            name: name.clone(),
            control: f.add(name, Kind::People, &["asleep", "outside"], "house", 0),
        });
        let people = people.collect();
        let next_door = file.next_door.map(|home| NextDoor {
            air_m3: self.positive(&["next_door", "cubic_meters"], home.cubic_meters),
            changes_per_h: self.positive(&["next_door", "changes_per_hour"], home.changes_per_hour),
        });
        Indoors {
            alarm,
            people,
            next_door,
            can: self.fuel_can(&file.fuel_can),
        }
    }

    fn fuel_can(&mut self, places: &[CanPlaceFile]) -> Option<FuelCan> {
        let names: Vec<&str> = places.iter().map(|p| p.name.as_str()).collect();
        if names.is_empty() {
            return None;
        }
        let mut rooms = Vec::new();
        for place in places {
            let own = format!("(name: \"{}\"", place.name);
            rooms.push(place.floor_square_meters.map(|floor_m2| CanRoom {
                floor_m2: self.positive(&["fuel_can", &own, "floor_square_meters"], floor_m2),
                flame: place.flame,
            }));
        }
        let f = &mut self.furnishing;
        let control = f.add("fuel-can", Kind::Placement, &names, "house", 0);
        Some(FuelCan { control, rooms })
    }
}
